/** Beam clamps and beam trolleys: what hangs a hoist from a flange. */
import type { GearKind } from "./kind";
import { BELOW_THE_HOOK, hardwareChecks, hardwareOnSight, practiceWear, removedOnSight, seen, seenIfFitted } from "./shared/records";

const DOE = ["DOE 1090", "14.2.5.3 c, applied to beam clamps"] as const;
export const beamClamp: GearKind = {
  id: "beam clamp",
  plural: "beam clamps and trolleys",
  names: ["beam clamp", "girder clamp", "beam trolley", "trolley", "girder trolley", "push trolley", "geared trolley", "plain trolley"],
  parts: { jaw: "moderate", spindle: "moderate", bail: "moderate", wheel: "moderate", body: "moderate" },
  partNames: { shackle: "bail", screw: "spindle", roller: "wheel", plate: "body" },
  checks: [
    { kind: "loss", name: "bail wear", part: "bail", original: "sectionNew", measured: "sectionNow", required: true, general: true },
    { kind: "loss", name: "pin wear", part: "spindle", original: "pinNew", measured: "pinNow", required: false },
    seen("fit on the flange", "jaw", "pinSeated", true),
    seenIfFitted("wheels", "wheel", "wheels", true),
    seenIfFitted("threads", "spindle", "threads", false),
    seen("jaws and linkages", "jaw", "pads", false),
    seen("attaching points", "bail", "attachPoints", false),
    seen("fasteners", "spindle", "fasteners", true),
    ...hardwareChecks("body", true).filter((c) => c.name !== "nick"),
  ],
  criteria: [
    ...practiceWear("beam-clamp", ["bail wear", "pin wear"], ["most"]),
    ...removedOnSight("beam-clamp", "fit on the flange", { practice: ["practice", ""] }),
    ...removedOnSight("beam-clamp", "wheels", { standard: DOE, practice: ["practice", ""] }),
    ...removedOnSight("beam-clamp", "threads", { standard: ["WAC 33900", BELOW_THE_HOOK], practice: ["practice", ""] }),
    ...removedOnSight("beam-clamp", "jaws and linkages", { standard: DOE, practice: ["practice", ""] }),
    ...removedOnSight("beam-clamp", "attaching points", { standard: DOE, practice: ["practice", ""] }),
    ...removedOnSight("beam-clamp", "fasteners", { standard: DOE, practice: ["practice", ""] }),
    ...hardwareOnSight("beam-clamp", BELOW_THE_HOOK),
  ],
};

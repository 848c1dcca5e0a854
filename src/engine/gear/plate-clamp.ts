/** Plate clamps, vertical and horizontal. */
import type { GearKind } from "./kind";
import { BELOW_THE_HOOK, CHECKED, from, hardwareChecks, hardwareOnSight, practiceWear, removedOnSight, seen } from "./shared/records";

/** The list of a federal agency: loose fasteners; worn gears, sheaves and chains; friction pads and linkages; attaching points, shackles and pins. */
const DOE = ["DOE 1090", "14.2.5.3 c"] as const;
export const plateClamp: GearKind = {
  id: "plate clamp",
  plural: "plate clamps",
  names: ["plate clamp", "lifting clamp"],
  parts: { tooth: "moderate", frame: "moderate", pin: "moderate", body: "moderate" },
  partNames: { teeth: "tooth", cam: "tooth", pad: "tooth", shackle: "frame" },
  checks: [
    { kind: "loss", name: "tooth wear", part: "tooth", original: "toothNew", measured: "toothNow", required: true },
    { kind: "loss", name: "section wear", part: "frame", original: "sectionNew", measured: "sectionNow", required: true, general: true },
    { kind: "loss", name: "pin wear", part: "pin", original: "pinNew", measured: "pinNow", required: false },
    seen("lock", "frame", "latch", true),
    seen("fasteners", "pin", "fasteners", true),
    seen("friction pads and linkages", "tooth", "pads", false),
    seen("attaching points", "frame", "attachPoints", false),
    ...hardwareChecks("frame", true).filter((c) => c.name !== "nick"),
  ],
  criteria: [
    {
      id: "plate-clamp.tooth-wear.practice",
      check: "tooth wear",
      basis: "practice",
      limit: { word: "above", share: "0.50" },
      beyond: "REMOVE",
      source: from("practice", "(a clamp maker's manual)"),
      status: "practice",
      checked: CHECKED,
    },
    ...practiceWear("plate-clamp", ["section wear", "pin wear"], ["most"]),
    ...removedOnSight("plate-clamp", "lock", { practice: ["practice", ""] }),
    ...removedOnSight("plate-clamp", "fasteners", { standard: DOE, practice: ["practice", ""] }),
    ...removedOnSight("plate-clamp", "friction pads and linkages", { standard: DOE, practice: ["practice", ""] }),
    ...removedOnSight("plate-clamp", "attaching points", { standard: DOE, practice: ["practice", ""] }),
    ...hardwareOnSight("plate-clamp", BELOW_THE_HOOK),
  ],
};

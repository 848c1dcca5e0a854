/** Turnbuckles. */
import type { GearKind } from "./kind";
import { dressing, hardwareChecks, hardwareOnSight, hardwareWear, practiceWear, removedOnSight, seen } from "./shared/records";

export const turnbuckle: GearKind = {
  id: "turnbuckle",
  plural: "turnbuckles",
  names: ["turnbuckle", "rigging screw", "bottle screw", "hook turnbuckle", "hook eye turnbuckle"],
  parts: { "end fitting": "moderate", pin: "moderate", frame: "moderate", body: "moderate" },
  partNames: { jaw: "end fitting", eye: "end fitting", thread: "frame" },
  checks: [
    {
      kind: "loss",
      name: "end fitting wear",
      part: "end fitting",
      original: "sectionNew",
      measured: "sectionNow",
      acrossOriginal: "acrossNew",
      acrossMeasured: "acrossNow",
      required: true,
      general: true,
    },
    { kind: "loss", name: "pin wear", part: "pin", original: "pinNew", measured: "pinNow", required: false },
    seen("threads", "frame", "threads", true),
    seen("fasteners", "end fitting", "fasteners", true),
    ...hardwareChecks("frame", true),
  ],
  criteria: [
    ...hardwareWear("turnbuckle", ["end fitting wear", "pin wear"]),
    ...practiceWear("turnbuckle", ["end fitting wear"], ["most", "two ways"]),
    ...practiceWear("turnbuckle", ["pin wear"], ["most"]),
    ...removedOnSight("turnbuckle", "threads", { standard: ["WAC 33900", ""], practice: ["practice", ""] }),
    ...removedOnSight("turnbuckle", "fasteners", { standard: ["WAC 33900", ""], practice: ["practice", ""] }),
    ...hardwareOnSight("turnbuckle"),
    dressing("turnbuckle", "practice", "0.05", ["practice", ""]),
  ],
};

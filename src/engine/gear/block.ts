/** Rigging blocks: snatch blocks and other blocks with sheaves. */
import type { GearKind } from "./kind";
import { shipsGear } from "./shared/jurisdictions";
import { dressing, hardwareChecks, hardwareOnSight, hardwareWear, practiceWear, removedOnSight, seen } from "./shared/records";

export const block: GearKind = {
  id: "block",
  plural: "rigging blocks",
  names: ["block", "blk", "snatch block", "pulley block", "sheave block", "pulley", "fibre rope block", "fiber rope block"],
  parts: { shell: "moderate", pin: "moderate", sheave: "moderate", body: "moderate" },
  partNames: { cheek: "shell", "side plate": "shell", axle: "pin", "center pin": "pin", "centre pin": "pin" },
  checks: [
    {
      kind: "loss",
      name: "section wear",
      part: "shell",
      original: "sectionNew",
      measured: "sectionNow",
      acrossOriginal: "acrossNew",
      acrossMeasured: "acrossNow",
      required: true,
      general: true,
    },
    { kind: "loss", name: "pin wear", part: "pin", original: "pinNew", measured: "pinNow", required: false },
    seen("sheave", "sheave", "sheaveTrue", true),
    seen("fasteners", "pin", "fasteners", true),
    seen("groove corrugation", "sheave", "grooveRidged", false),
    seen("threads", "pin", "threads", false),
    ...hardwareChecks("shell", true),
  ],
  criteria: [
    ...hardwareWear("block", ["section wear", "pin wear"]),
    ...practiceWear("block", ["section wear"], ["block and tackle", "two ways"]),
    ...practiceWear("block", ["pin wear"], ["block and tackle"]),
    ...removedOnSight("block", "sheave", { standard: ["WAC 33900", ""], practice: ["practice", ""] }),
    ...removedOnSight("block", "fasteners", { standard: ["WAC 33900", ""], practice: ["practice", ""] }),
    ...removedOnSight("block", "groove corrugation", { standard: ["WAC 33900", ""], practice: ["practice", ""] }),
    ...removedOnSight("block", "threads", { standard: ["WAC 33900", ""], practice: ["practice", ""] }),
    ...hardwareOnSight("block"),
    dressing("block", "practice", "0.05", ["practice", ""]),
    ...shipsGear("block", ["section wear"], ["pin wear"]),
  ],
};

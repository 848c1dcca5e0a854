/** Vacuum lifters. The rate at which they may lose vacuum is their maker's. */
import type { GearKind } from "./kind";
import { BELOW_THE_HOOK, removedOnSight, seen } from "./shared/records";

const DOE = ["DOE 1090", "14.3.4.2"] as const;
const LISTED = ["deformation", "cracks", "wear of structure and points", "pads and seals", "lines and reservoir", "vacuum loss"];
export const vacuumLifter: GearKind = {
  id: "vacuum lifter",
  plural: "vacuum lifters",
  names: ["vacuum lifter", "vacuum lifting device", "vacuum pad lifter", "vacuum beam", "glass vacuum lifter"],
  parts: { frame: "moderate", pad: "moderate", line: "moderate", gauge: "moderate", body: "moderate" },
  partNames: { seal: "pad", hose: "line", reservoir: "line" },
  checks: [
    seen("deformation", "frame", "deformed", true, true),
    seen("cracks", "frame", "cracks", true),
    seen("wear of structure and points", "frame", "attachPoints", true),
    seen("pads and seals", "pad", "seals", true),
    seen("lines and reservoir", "line", "vacuumLines", true),
    seen("vacuum loss", "gauge", "vacuumHolds", true),
    seen("indicator", "gauge", "indicator", true),
    seen("controls", "gauge", "controls", false),
    seen("fasteners", "frame", "fasteners", false),
    seen("identification", "frame", "tag", true),
    seen("corrosion", "frame", "corrosion", false),
    seen("heat damage", "frame", "heat", false),
    seen("field weld or change", "frame", "fieldChange", false),
  ],
  criteria: [
    ...LISTED.flatMap((check) => removedOnSight("vacuum-lifter", check, { standard: DOE, practice: ["practice", ""] })),
    ...["indicator", "controls", "fasteners"].flatMap((check) => removedOnSight("vacuum-lifter", check, { practice: ["practice", ""] })),
    ...["identification", "corrosion", "heat damage", "field weld or change"].flatMap((check) =>
      removedOnSight("vacuum-lifter", check, { standard: ["WAC 33900", BELOW_THE_HOOK], practice: ["practice", ""] }),
    ),
  ],
};

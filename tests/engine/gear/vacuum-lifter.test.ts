import { kindTests, onSight, PRACTICE } from "../helpers";

const DOE = "DOE-STD-1090-96 14.3.4.2";
const TABLE_19 = "WAC 296-155-33900 Table 19, applied to below-the-hook devices";

kindTests(
  "vacuum lifter",
  [],
  [
    ...onSight("vacuum-lifter", "deformation", "deformed", { standard: DOE, practice: PRACTICE }),
    ...onSight("vacuum-lifter", "cracks", "cracks", { standard: DOE, practice: PRACTICE }),
    ...onSight("vacuum-lifter", "wear of structure and points", "attachPoints", { standard: DOE, practice: PRACTICE }),
    ...onSight("vacuum-lifter", "pads and seals", "seals", { standard: DOE, practice: PRACTICE }),
    ...onSight("vacuum-lifter", "lines and reservoir", "vacuumLines", { standard: DOE, practice: PRACTICE }),
    ...onSight("vacuum-lifter", "vacuum loss", "vacuumHolds", { standard: DOE, practice: PRACTICE }),
    ...onSight("vacuum-lifter", "indicator", "indicator", { practice: PRACTICE }),
    ...onSight("vacuum-lifter", "controls", "controls", { practice: PRACTICE }),
    ...onSight("vacuum-lifter", "fasteners", "fasteners", { practice: PRACTICE }),
    ...onSight("vacuum-lifter", "identification", "tag", { standard: TABLE_19, practice: PRACTICE }),
    ...onSight("vacuum-lifter", "corrosion", "corrosion", { standard: TABLE_19, practice: PRACTICE }),
    ...onSight("vacuum-lifter", "heat damage", "heat", { standard: TABLE_19, practice: PRACTICE }),
    ...onSight("vacuum-lifter", "field weld or change", "fieldChange", { standard: TABLE_19, practice: PRACTICE }),
  ],
);

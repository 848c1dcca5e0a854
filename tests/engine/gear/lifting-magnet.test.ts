import { kindTests, onSight, PRACTICE } from "../helpers";

const DOE = "DOE-STD-1090-96 14.4.4.2";
const TABLE_19 = "WAC 296-155-33900 Table 19, applied to below-the-hook devices";

kindTests(
  "lifting magnet",
  [],
  [
    ...onSight("lifting-magnet", "face", "magnetFace", { standard: DOE, practice: PRACTICE }),
    ...onSight("lifting-magnet", "bail or suspension", "attachPoints", { standard: DOE, practice: PRACTICE }),
    ...onSight("lifting-magnet", "handle", "controls", { standard: DOE, practice: PRACTICE }),
    ...onSight("lifting-magnet", "indicator", "indicator", { standard: DOE, practice: PRACTICE }),
    ...onSight("lifting-magnet", "labels", "tag", { standard: DOE, practice: PRACTICE }),
    ...onSight("lifting-magnet", "conductors and battery", "wiring", { standard: DOE, practice: PRACTICE }),
    ...onSight("lifting-magnet", "cracks", "cracks", { standard: TABLE_19, practice: PRACTICE }),
    ...onSight("lifting-magnet", "deformation", "deformed", { standard: TABLE_19, practice: PRACTICE }),
    ...onSight("lifting-magnet", "fasteners", "fasteners", { standard: TABLE_19, practice: PRACTICE }),
    ...onSight("lifting-magnet", "corrosion", "corrosion", { standard: TABLE_19, practice: PRACTICE }),
    ...onSight("lifting-magnet", "heat damage", "heat", { standard: TABLE_19, practice: PRACTICE }),
    ...onSight("lifting-magnet", "field weld or change", "fieldChange", { standard: TABLE_19, practice: PRACTICE }),
  ],
);

import { kindTests, onEveryFitting, onSight, PRACTICE, tenPercent } from "../helpers";

const DOE = "DOE-STD-1090-96 14.2.5.3 c, applied to beam clamps";
const TABLE_19 = "WAC 296-155-33900 Table 19, applied to below-the-hook devices";

kindTests(
  "beam clamp",
  [
    tenPercent("beam-clamp.bail-wear.practice", PRACTICE, "from"),
    tenPercent("beam-clamp.pin-wear.practice", PRACTICE, "from", "pinNew", "pinNow"),
  ],
  [
    ...onSight("beam-clamp", "fit on the flange", "pinSeated", { practice: PRACTICE }),
    ...onSight("beam-clamp", "wheels", "wheels", { standard: DOE, practice: PRACTICE }),
    ...onSight("beam-clamp", "threads", "threads", { standard: TABLE_19, practice: PRACTICE }),
    ...onSight("beam-clamp", "jaws and linkages", "pads", { standard: DOE, practice: PRACTICE }),
    ...onSight("beam-clamp", "attaching points", "attachPoints", { standard: DOE, practice: PRACTICE }),
    ...onSight("beam-clamp", "fasteners", "fasteners", { standard: DOE, practice: PRACTICE }),
    ...onEveryFitting("beam-clamp", TABLE_19),
  ],
);

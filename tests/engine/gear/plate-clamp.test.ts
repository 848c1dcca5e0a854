import { kindTests, onEveryFitting, onSight, PRACTICE, tenPercent } from "../helpers";

/** The removal list of clamps was not read: Table 19 of rigging hardware stands for it. */
const DOE = "DOE-STD-1090-96 14.2.5.3 c";
const AS_HARDWARE = "WAC 296-155-33900 Table 19, applied to below-the-hook devices";

kindTests(
  "plate clamp",
  [
    // Teeth 4 mm high as new: half is 2 mm. 3 mm has used half of that.
    {
      criterion: "plate-clamp.tooth-wear.practice",
      source: "a clamp maker's manual: any one tooth worn or chipped more than 50 %",
      inside: [{ toothNow: 3 }, "KEEP"],
      edge: [{ toothNow: 2 }, "WATCH"],
      past: [{ toothNow: 1.99 }, "REMOVE"],
    },
    tenPercent("plate-clamp.section-wear.practice", PRACTICE, "from"),
    tenPercent("plate-clamp.pin-wear.practice", PRACTICE, "from", "pinNew", "pinNow"),
  ],
  [
    ...onSight("plate-clamp", "lock", "latch", { practice: PRACTICE }),
    ...onSight("plate-clamp", "fasteners", "fasteners", { standard: DOE, practice: PRACTICE }),
    ...onSight("plate-clamp", "friction pads and linkages", "pads", { standard: DOE, practice: PRACTICE }),
    ...onSight("plate-clamp", "attaching points", "attachPoints", { standard: DOE, practice: PRACTICE }),
    ...onEveryFitting("plate-clamp", AS_HARDWARE),
  ],
);

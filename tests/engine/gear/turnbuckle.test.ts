import { fivePercentNick, kindTests, onEveryFitting, onSight, PRACTICE, tenPercent, twoWays } from "../helpers";

const TABLE_19 = "WAC 296-155-33900 Table 19, text of ASME B30.26";

kindTests(
  "turnbuckle",
  [
    tenPercent("turnbuckle.end-fitting-wear.standard", TABLE_19, "from"),
    tenPercent("turnbuckle.end-fitting-wear.practice", PRACTICE, "from"),
    twoWays("turnbuckle.end-fitting-wear.practice-two-ways"),
    fivePercentNick("turnbuckle.nick.practice", "end fitting"),
    tenPercent("turnbuckle.pin-wear.standard", TABLE_19, "from", "pinNew", "pinNow"),
    tenPercent("turnbuckle.pin-wear.practice", PRACTICE, "from", "pinNew", "pinNow"),
  ],
  [
    ...onSight("turnbuckle", "threads", "threads", { standard: TABLE_19, practice: PRACTICE }),
    ...onSight("turnbuckle", "fasteners", "fasteners", { standard: TABLE_19, practice: PRACTICE }),
    ...onEveryFitting("turnbuckle", TABLE_19),
  ],
);

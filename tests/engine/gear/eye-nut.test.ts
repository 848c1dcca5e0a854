import { fivePercentNick, kindTests, onEveryFitting, onSight, PRACTICE, tenPercent, twoWays } from "../helpers";

const TABLE_19 = "WAC 296-155-33900 Table 19, text of ASME B30.26";

kindTests(
  "eye nut",
  [
    tenPercent("eye-nut.eye-wear.standard", TABLE_19, "from"),
    tenPercent("eye-nut.eye-wear.practice", PRACTICE, "from"),
    twoWays("eye-nut.eye-wear.practice-two-ways"),
    fivePercentNick("eye-nut.nick.practice", "eye"),
  ],
  [...onSight("eye-nut", "threads", "threads", { standard: TABLE_19, practice: PRACTICE }), ...onEveryFitting("eye-nut", TABLE_19)],
);

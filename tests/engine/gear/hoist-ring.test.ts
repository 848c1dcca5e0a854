import { fivePercentNick, kindTests, onEveryFitting, onSight, PRACTICE, tenPercent, twoWays } from "../helpers";

const TABLE_19 = "WAC 296-155-33900 Table 19, text of ASME B30.26";

kindTests(
  "hoist ring",
  [
    tenPercent("hoist-ring.bail-wear.standard", TABLE_19, "from"),
    tenPercent("hoist-ring.bail-wear.practice", PRACTICE, "from"),
    twoWays("hoist-ring.bail-wear.practice-two-ways"),
    fivePercentNick("hoist-ring.nick.practice", "bail"),
  ],
  [
    ...onSight("hoist-ring", "turning freely", "turnsFreely", {
      standard: `${TABLE_19}: cannot freely rotate or pivot`,
      practice: PRACTICE,
    }),
    ...onSight("hoist-ring", "threads", "threads", { standard: TABLE_19, practice: PRACTICE }),
    ...onEveryFitting("hoist-ring", TABLE_19),
  ],
);

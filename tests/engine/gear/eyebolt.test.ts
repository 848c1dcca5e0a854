import { fivePercentNick, kindTests, onEveryFitting, onSight, PRACTICE, tenPercent, twoWays } from "../helpers";

const TABLE_19 = "WAC 296-155-33900 Table 19, text of ASME B30.26";

kindTests(
  "eyebolt",
  [
    tenPercent("eyebolt.eye-wear.standard", TABLE_19, "from"),
    tenPercent("eyebolt.eye-wear.practice", PRACTICE, "from"),
    twoWays("eyebolt.eye-wear.practice-two-ways"),
    fivePercentNick("eyebolt.nick.practice", "eye"),
    // Table 19 takes a bent fitting out; a care booklet, with no document behind it, allows 15 degrees.
    {
      criterion: "eyebolt.shank-bend.standard",
      source: `${TABLE_19}: bent`,
      inside: [{ bendAngle: "none" }, "KEEP"],
      edge: [{ bendAngle: 0 }, "KEEP"],
      past: [{ bendAngle: 0.5 }, "REMOVE"],
    },
    {
      criterion: "eyebolt.shank-bend.practice",
      source: "a sling maker's care booklet: bent more than 15 degrees",
      inside: [{ bendAngle: 5 }, "KEEP"],
      edge: [{ bendAngle: 15 }, "WATCH"],
      past: [{ bendAngle: 15.1 }, "REMOVE"],
    },
  ],
  [...onSight("eyebolt", "threads", "threads", { standard: TABLE_19, practice: PRACTICE }), ...onEveryFitting("eyebolt", TABLE_19)],
);

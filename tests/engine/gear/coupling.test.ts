import { describe, expect, it } from "vitest";
import { fivePercentNick, good, judged, kindTests, onEveryFitting, onSight, PRACTICE, tenPercent, twoWays } from "../helpers";

const TABLE_19 = "WAC 296-155-33900 Table 19";

kindTests(
  "coupling",
  [
    tenPercent("coupling.body-wear.standard", TABLE_19, "from"),
    tenPercent("coupling.body-wear.practice", PRACTICE, "from"),
    twoWays("coupling.body-wear.practice-two-ways"),
    tenPercent("coupling.pin-wear.standard", TABLE_19, "from", "pinNew", "pinNow"),
    tenPercent("coupling.pin-wear.practice", PRACTICE, "from", "pinNew", "pinNow"),
    fivePercentNick("coupling.nick.practice", "body"),
  ],
  [
    ...onSight("coupling", "fasteners", "fasteners", { standard: TABLE_19, practice: PRACTICE }),
    ...onSight("coupling", "lock", "lock", { practice: PRACTICE }),
    ...onSight("coupling", "hinging", "turnsFreely", { standard: "WAC 296-155-55800 Table 12", practice: PRACTICE }),
    ...onEveryFitting("coupling", TABLE_19),
  ],
);

describe("coupling and shortening parts", () => {
  it.each(["coupling link", "connecting link", "shortening clutch", "chain shortener"])("%s is one", (gear) => {
    expect(judged({ ...good("coupling"), gear }).decision).toBe("KEEP");
    expect(judged({ ...good("coupling"), gear, fasteners: "no" }).decision).toBe("REMOVE");
  });
});

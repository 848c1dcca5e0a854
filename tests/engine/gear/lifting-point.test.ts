import { describe, expect, it } from "vitest";
import { fivePercentNick, good, judged, kindTests, onEveryFitting, onSight, PRACTICE, tenPercent, twoWays } from "../helpers";

const TABLE_19 = "WAC 296-155-33900 Table 19";

kindTests(
  "lifting point",
  [
    tenPercent("lifting-point.bail-wear.standard", TABLE_19, "from"),
    tenPercent("lifting-point.bail-wear.practice", PRACTICE, "from"),
    twoWays("lifting-point.bail-wear.practice-two-ways"),
    fivePercentNick("lifting-point.nick.practice", "bail"),
  ],
  [
    ...onSight("lifting-point", "threads", "threads", { standard: TABLE_19, practice: PRACTICE }),
    ...onSight("lifting-point", "weld seam", "weldSeam", { practice: PRACTICE }),
    ...onSight("lifting-point", "seating on the load", "pinSeated", { practice: PRACTICE }),
    ...onSight("lifting-point", "turning freely", "turnsFreely", { standard: TABLE_19, practice: PRACTICE }),
    ...onEveryFitting("lifting-point", TABLE_19),
  ],
);

describe("a lifting point", () => {
  it("welded on has no thread, bolted on no seam: each says none required", () => {
    const point = good("lifting point");
    expect(judged({ ...point, gear: "weld-on lifting point", threads: "none required", weldSeam: "yes" }).decision).toBe("KEEP");
    expect(judged({ ...point, gear: "bolt-on lifting point", weldSeam: "" }).decision).toBe("NO VERDICT");
  });
});

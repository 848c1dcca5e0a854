import { describe, expect, it } from "vitest";
import { good, judged, kindTests, onEveryFitting, onSight, PRACTICE, tenPercent, twoWays, type Expected, type LimitCase } from "../helpers";

/** The removal list of beams was not read: Table 19 of rigging hardware stands for it. */
const DOE = "DOE-STD-1090-96 14.2.5.3 c";
const AS_HARDWARE = "WAC 296-155-33900 Table 19, applied to below-the-hook devices";
const BEND = "DOE-STD-1090-96 15.4.8 a.2: more than 1/2 in in 10 ft";

kindTests(
  "lifting beam",
  [
    // Span 120 in (10 ft): 1/2 in. 0.25 in is half of it.
    {
      criterion: "lifting-beam.permanent-bend.standard",
      source: BEND,
      inside: [{ bend: 0.25 }, "KEEP"],
      edge: [{ bend: "1/2" }, "WATCH"],
      past: [{ bend: 0.501 }, "REMOVE"],
    },
    inMillimetres(tenPercent("lifting-beam.eye-wear.practice", PRACTICE, "from")),
    inMillimetres(twoWays("lifting-beam.eye-wear.practice-two-ways")),
  ],
  [
    ...onSight("lifting-beam", "fasteners", "fasteners", { standard: DOE, practice: PRACTICE }),
    ...onSight("lifting-beam", "friction pads and linkages", "pads", { standard: DOE, practice: PRACTICE }),
    ...onSight("lifting-beam", "attaching points", "attachPoints", { standard: DOE, practice: PRACTICE }),
    ...onEveryFitting("lifting-beam", AS_HARDWARE),
  ],
);

/** The good beam's span is in inches; in a millimetre row 10 ft are 3048 mm. */
function inMillimetres(made: LimitCase): LimitCase {
  const as = ([cells, decision]: Expected): Expected => [{ ...cells, span: "3048 mm" }, decision];
  return { ...made, inside: as(made.inside), edge: as(made.edge), past: as(made.past) };
}

describe("the permanent bend of a beam scales with its span (computed from the rule; the text names 10 ft only)", () => {
  const beam = good("lifting beam");
  // 8 ft is 96 in: 0.4 in. 20 ft is 240 in: 1 in. 3 m: 12.5 mm.
  const cases: [span: string, bend: string, decision: string][] = [
    ["96 in", "0.4 in", "WATCH"],
    ["96 in", "0.401 in", "REMOVE"],
    ["20'", "1 in", "WATCH"],
    ["20'", "1.001 in", "REMOVE"],
    ["3 m", "12.5 mm", "WATCH"],
    ["3 m", "12.51 mm", "REMOVE"],
    ["3 m", "none", "KEEP"],
  ];
  for (const [span, bend, decision] of cases)
    it(`${bend} over ${span}: ${decision}`, () => {
      expect(judged({ ...beam, span, bend }, "standard,practice").decision).toBe(decision);
    });
  it("says the rule in words of the span", () => {
    expect(judged({ ...beam, bend: 0.6 }).reason).toContain("it comes out above 0.5 in (0.4167 % of span)");
  });
  it("is a sign of overload", () => {
    expect(judged({ ...beam, bend: 0.6 }).reason).toContain("sign of overload");
  });
});

import { describe, expect, it } from "vitest";
import { GROOVES } from "../../fixtures/grooves";
import { good, judged, kindTests, onSight, PRACTICE } from "../helpers";

const HANDBOOK = "wire rope handbooks: nominal rope and half of its allowed oversize";
const TABLE_19 = "WAC 296-155-33900 Table 19, blocks";

kindTests(
  "sheave",
  [
    // Rope 1/2 in: worn out below 0.5125 in (+2.5 %), new 0.53 in (+6 %). 0.52 in has used 0.01 of 0.0175 in.
    {
      criterion: "sheave.groove-diameter.standard",
      source: `Wire Rope Technical Board oversize; ${HANDBOOK}`,
      inside: [{ groove: 0.52 }, "KEEP"],
      edge: [{ groove: 0.5125 }, "WATCH"],
      past: [{ groove: 0.5124 }, "REMOVE"],
    },
    {
      criterion: "sheave.groove-diameter.practice",
      source: HANDBOOK,
      inside: [{ groove: 0.52 }, "KEEP"],
      edge: [{ groove: 0.5125 }, "WATCH"],
      past: [{ groove: 0.5124 }, "REMOVE"],
    },
    // A new groove may be as wide as +10 %, 0.55 in: it is kept, not watched. Wider is machined again.
    {
      criterion: "sheave.groove-width.standard",
      source: "groove-gauge text: loose on the +10 % gauge",
      inside: [{ groove: 0.545 }, "KEEP"],
      edge: [{ groove: 0.55 }, "KEEP"],
      past: [{ groove: 0.551 }, "EXAMINE"],
    },
    {
      criterion: "sheave.groove-width.practice",
      source: "groove-gauge text: loose on the +10 % gauge",
      inside: [{ groove: 0.545 }, "KEEP"],
      edge: [{ groove: 0.55 }, "KEEP"],
      past: [{ groove: 0.551 }, "EXAMINE"],
    },
    // 18 x 1/2 in is 9 in (the worked product of TB 43-0142 Table A-1).
    {
      criterion: "sheave.sheave-diameter.standard",
      source: "ASME B30.5 load hoist, restated; TB 43-0142 Table A-1",
      inside: [{ sheave: 10 }, "KEEP"],
      edge: [{ sheave: 9 }, "KEEP"],
      past: [{ sheave: 8.99 }, "EXAMINE"],
    },
  ],
  [
    ...onSight("sheave", "running true", "sheaveTrue", { standard: TABLE_19, practice: PRACTICE }),
    ...onSight("sheave", "cracks", "cracks", { standard: "TB 43-0142 App. A", practice: PRACTICE }),
    ...onSight("sheave", "groove corrugation", "grooveRidged", { standard: TABLE_19, practice: PRACTICE }),
    ...onSight("sheave", "corrosion", "corrosion", { standard: TABLE_19 }),
    ...onSight("sheave", "fasteners", "fasteners", { standard: TABLE_19 }),
  ],
);

describe("the worn groove of a sheave", () => {
  const sheave = good("sheave");
  for (const { rope, worn } of GROOVES)
    it(`for ${rope} in rope: ${String(worn)} in stays, a millionth less is REMOVE`, () => {
      expect(judged({ ...sheave, size: rope, groove: worn }).decision).toBe("WATCH");
      expect(judged({ ...sheave, size: rope, groove: Number((worn - 0.000001).toFixed(8)) }).decision).toBe("REMOVE");
    });
  // Metric ropes have the printed metric ends of the bands: 8.0 mm still has 6 %, so 8 x 1.03 = 8.24 mm. 8.1 mm has 5 %: 8.3025 mm.
  for (const [rope, worn, less] of [
    ["3.2 mm", "3.328 mm", "3.327 mm"],
    ["4.8 mm", "4.968 mm", "4.967 mm"],
    ["8 mm", "8.24 mm", "8.239 mm"],
    ["8.1 mm", "8.3025 mm", "8.302 mm"],
    ["16 mm", "16.4 mm", "16.399 mm"],
  ] as const)
    it(`for ${rope} rope: ${worn} stays, ${less} is REMOVE`, () => {
      expect(judged({ ...sheave, size: rope, groove: worn }).decision).toBe("WATCH");
      expect(judged({ ...sheave, size: rope, groove: less }).decision).toBe("REMOVE");
    });
  it("that is far wider than its rope is out of use, and the sizes are doubted", () => {
    const verdict = judged({ ...sheave, groove: 0.75 });
    expect(verdict.decision).toBe("EXAMINE");
    expect(verdict.reason).toContain("check size and unit");
  });
  it("without the rope's size is NO VERDICT and names the heading", () => {
    expect(judged({ ...sheave, size: "" }).reason).toContain('"Size"');
  });
});

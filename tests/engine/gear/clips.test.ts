import { describe, expect, it } from "vitest";
import { CALIFORNIA_8497, FEDERAL_1918 } from "../../fixtures/clips";
import { good, judged, kindTests, onEveryFitting, onSight, PRACTICE } from "../helpers";

const FEDERAL = "29 CFR Part 1918 Appendix II Table 1";
const TABLE_19 = "WAC 296-155-33900 Table 19, compression hardware";

kindTests(
  "clips",
  [
    // Rope 3/4 in: 4 drop-forged clips, 4 1/2 in apart, 18 in turned back.
    ...(["law", "standard"] as const).flatMap((basis) => [
      { criterion: `clips.clip-count.${basis}`, source: FEDERAL, inside: [{ clips: 5 }, "KEEP"], edge: [{ clips: 4 }, "KEEP"], past: [{ clips: 3 }, "REMOVE"] } as const,
      { criterion: `clips.clip-spacing.${basis}`, source: FEDERAL, inside: [{ clipSpacing: 6 }, "KEEP"], edge: [{ clipSpacing: "4 1/2" }, "KEEP"], past: [{ clipSpacing: 4.49 }, "REMOVE"] } as const,
    ]),
    { criterion: "clips.turn-back.standard", source: "Cal. 8 CCR 8497 Table 1", inside: [{ turnBack: 20 }, "KEEP"], edge: [{ turnBack: 18 }, "KEEP"], past: [{ turnBack: 17.9 }, "REMOVE"] },
  ],
  [
    ...onSight("clips", "saddle on live end", "liveEnd", { standard: "WAC 296-155-33915(1)(b)", practice: PRACTICE }),
    ...onSight("clips", "fasteners", "fasteners", { standard: TABLE_19, practice: PRACTICE }),
    ...onEveryFitting("clips", TABLE_19),
  ],
);

const clips = good("clips");

describe("the federal clip table", () => {
  for (const row of FEDERAL_1918) {
    it(`${row.rope} in rope: ${String(row.forged)} clips ${row.spacing} in apart stay, one fewer or a hundredth nearer is REMOVE (${FEDERAL})`, () => {
      const item = { ...clips, size: row.rope, clips: row.forged, clipSpacing: row.spacing };
      expect(judged(item, "law").findings.filter((f) => f.check.startsWith("clip ")).map((f) => f.decision)).toEqual(["KEEP", "KEEP"]);
      expect(judged({ ...item, clips: row.forged - 1 }, "law").decision).toBe("REMOVE");
      expect(judged({ ...item, clipSpacing: row.inches - 0.01 }, "law").decision).toBe("REMOVE");
    });
    it(`${String(row.cm * 10)} mm rope: the same count, ${String(row.spacingCm)} cm apart`, () => {
      const item = { ...clips, unit: "mm", size: `${String(row.cm * 10)} mm`, clips: row.forged, clipSpacing: `${String(row.spacingCm)} cm` };
      expect(judged(item, "law").findings.filter((f) => f.check.startsWith("clip ")).map((f) => f.decision)).toEqual(["KEEP", "KEEP"]);
      expect(judged({ ...item, clips: row.forged - 1 }, "law").decision).toBe("REMOVE");
      expect(judged({ ...item, clipSpacing: `${String(row.spacingCm * 10 - 0.1)} mm` }, "law").decision).toBe("REMOVE");
    });
  }
  it("has one row for 1/2 in and less: 3 clips 3 in apart on 3/8 in rope, although six diameters are 2 1/4 in", () => {
    expect(judged({ ...clips, size: "3/8", clips: 3, clipSpacing: 3 }).decision).toBe("KEEP");
    expect(judged({ ...clips, size: "3/8", clips: 2, clipSpacing: 3 }).decision).toBe("REMOVE");
    expect(judged({ ...clips, size: "3/8", clips: 3, clipSpacing: 2.5 }).decision).toBe("REMOVE");
  });
  for (const size of ["9/16", "1 5/8", "17 mm"])
    it(`has no row for ${size}: NO VERDICT, never the neighbour's`, () => {
      const verdict = judged({ ...clips, size, clips: 9, clipSpacing: 20 });
      expect(verdict.decision).toBe("NO VERDICT");
      expect(verdict.reason).toContain("is not in the federal clip table");
    });
});

describe("the California clip table", () => {
  for (const row of CALIFORNIA_8497)
    it(`${row.rope} in rope: ${row.turnBack} in turned back stays, a tenth less is REMOVE (Cal. 8 CCR 8497 Table 1)`, () => {
      const turned = (turnBack: unknown): readonly string[] => judged({ ...clips, size: row.rope, turnBack: turnBack as string }, "standard").findings.filter((f) => f.criterion === "clips.turn-back.standard").map((f) => f.decision);
      expect(turned(row.turnBack)).toEqual(["KEEP"]);
      expect(turned(row.inches - 0.1)).toEqual(["REMOVE"]);
    });
});

describe("the spacing of clips and the gauge", () => {
  it("far more than enough is enough, whatever the tape reads to", () => {
    expect(judged({ ...clips, clipSpacing: 6, gauge: "1/4" }).decision).toBe("KEEP");
  });
  it("within half of the tape's resolution of the least is EXAMINE", () => {
    expect(judged({ ...clips, clipSpacing: 4.55, gauge: "1/4" }).decision).toBe("EXAMINE");
    expect(judged({ ...clips, clipSpacing: 4.45, gauge: "1/4" }).decision).toBe("EXAMINE");
    expect(judged({ ...clips, clipSpacing: 4.3, gauge: "1/4" }).decision).toBe("REMOVE");
  });
});

/** A judge that has judged other rows says of a row what a new judge says: what it remembers stands for the cells that it came from. */
import { describe, expect, it } from "vitest";
import { LineJudge } from "../../src/engine/item/line-judge";
import { matchHeadings } from "../../src/engine/log/match-headings";
import type { CellValue } from "../../src/engine/reading/cell-value";
import { DEFAULT_BASIS } from "../../src/engine/rules/rule-sets";

const HEADINGS = [
  "Id", "Gear", "Unit", "Gauge reads to", "Construction", "Throat as-new", "Throat now", "Section as-new", "Section now",
  "Across as-new", "Across now", "Section now 2", "Size", "Twist deg", "Nick depth", "Nick at", "Broken wires in a lay", "Cracks",
  "Cracks seen", "Latch works", "Identification legible", "Tagged out", "Result", "Remarks", "Inspected", "Wobble factor",
]; // prettier-ignore
const headings = matchHeadings(HEADINGS);
const judging = { basis: DEFAULT_BASIS, asOf: 46_200 };
const newJudge = (): LineJudge => new LineJudge(headings, judging);
/** What is asked of a verdict, in full. */
function said(judge: LineJudge, line: readonly CellValue[], overload: number | null = null): unknown {
  const {
    decision,
    reason,
    short,
    share,
    comesOut,
    source,
    overload: sign,
    kind,
    tagged,
    needed,
    lacking,
    missing,
    notes,
  } = judge.judge(line, overload);
  return { decision, reason, short, share, comesOut, source, sign, kind, tagged, needed, lacking, missing, notes };
}
const CHOICES: Readonly<Record<string, readonly CellValue[]>> = {
  Id: ["A-1", "A-2", "A-3"],
  Gear: ["hook", "shackle", "wire rope sling", "chain sling", "anvil", "swivel", "cable laid sling"],
  Unit: ["in", "mm", "", "cm"],
  "Gauge reads to": ["", "", 0.001, "0.5 mm", "coarse"],
  Construction: ["", "strand laid", "cable laid", "braided", "18x7", "what"],
  "Throat as-new": [2, "2", "50 mm", "", 50],
  "Throat now": [2.05, 2.2, "2.05", "51 mm", "", "worn", 0],
  "Section as-new": [1.5, "1 1/2", 38, ""],
  "Section now": [1.45, 1.2, "1.45 in", "", { serial: 45_000 }, 36],
  "Across as-new": ["", "", 1.5],
  "Across now": ["", "", 1.44],
  "Section now 2": ["", "", 1.1, "?"],
  Size: ["", "3/8", "10 mm"],
  "Twist deg": [0, "none", 11, ""],
  "Nick depth": ["", "", 0.02],
  "Nick at": ["", "", "saddle", "nowhere"],
  "Broken wires in a lay": [0, 12, ""],
  Cracks: ["none", "found", "", "perhaps"],
  "Cracks seen": ["", "", "hairline"],
  "Latch works": ["yes", "no", "", "none required"],
  "Identification legible": ["yes", "no"],
  "Tagged out": ["", "", "", "2026-01-05", "no"],
  Result: ["", "ok", "failed", "cracked", "see note"],
  Remarks: ["", "cleaned", "do not use", "x".repeat(300)],
  Inspected: [46_100, "2026-03-31", 46_300, ""],
  "Wobble factor": ["", "", 7],
};
function rows(count: number, seed: number): readonly (readonly CellValue[])[] {
  let state = seed;
  const next = (most: number): number => (state = (state * 48_271) % 2_147_483_647) % most;
  return Array.from({ length: count }, () => HEADINGS.map((heading) => (CHOICES[heading] ?? [""])[next(CHOICES[heading]?.length ?? 1)]));
}

describe("a judge that has judged before", () => {
  it("says the same as a new one, in any order and however often", () => {
    const lines = rows(150, 7);
    const fresh = lines.map((line) => said(newJudge(), line));
    const judge = newJudge();
    for (let round = 0; round < 3; round += 1) lines.forEach((line, at) => expect(said(judge, line)).toEqual(fresh[at]));
    [...lines.entries()].reverse().forEach(([at, line]) => expect(said(judge, line)).toEqual(fresh[at]));
  });
  it("says the same of rows that differ in one cell only", () => {
    const judge = newJudge();
    for (const [base = []] of [rows(1, 11), rows(1, 23)])
      HEADINGS.forEach((heading, column) => {
        for (const cell of CHOICES[heading] ?? []) {
          const line = base.map((other, at) => (at === column ? cell : other));
          for (let round = 0; round < 2; round += 1) expect(said(judge, line), heading).toEqual(said(newJudge(), line));
        }
      });
  });
  it("keeps an assembly's overload to the row that it is told of", () => {
    const judge = newJudge();
    const [line = []] = rows(1, 5);
    const alone = said(judge, line);
    expect(said(judge, line, 46_150)).not.toEqual(alone);
    expect(said(judge, line)).toEqual(alone);
  });
  it("hands out findings that stay as they are when other rows are judged", () => {
    const judge = newJudge();
    const [first = [], second = []] = rows(2, 3);
    const verdict = judge.judge(first);
    const before = JSON.stringify(verdict.findings.map((f) => [f.check, f.decision, f.measured, f.heading]));
    judge.judge(second);
    expect(JSON.stringify(verdict.findings.map((f) => [f.check, f.decision, f.measured, f.heading]))).toBe(before);
    expect(verdict.reason).toBe(newJudge().judge(first).reason);
  });
});

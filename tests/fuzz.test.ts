/**
 * A bounded run of the generator: logs with planted truth over every kind of gear, judged by the built functions. The oracle
 * is in tools/fuzz and never asks the engine. `npm run fuzz -- --seed N --minutes M` runs longer and shrinks what fails.
 */
import { existsSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { loadJudge } from "../tools/fuzz/judge.mjs";
import { notHeld, summary } from "../tools/fuzz/report.mjs";
import { type Report, run } from "../tools/fuzz/run.mjs";

/** What the engine does not hold yet in this run. What is mended has to be taken off. */
const NOT_YET_HELD: readonly string[] = [];
const SEED = 20261128;
const JUDGEMENTS = 12_000;

const BUILT = fileURLToPath(new URL("../dist/functions.js", import.meta.url));
function bounded(most: number): Report {
  if (!existsSync(BUILT)) throw new Error("dist/functions.js is not built; run npm run build");
  return run({ judge: loadJudge(BUILT), seed: SEED, judgements: JUDGEMENTS, most });
}

describe("logs with planted truth", () => {
  const report = bounded(1);

  it("cover every kind of gear", () => {
    expect(Object.keys(report.kinds)).toHaveLength(35);
    expect(Math.min(...Object.values(report.kinds))).toBeGreaterThan(10);
  });

  it("hold what has to hold, but for the list of what is not held yet", () => {
    expect(notHeld(report), summary(report)).toEqual(NOT_YET_HELD);
  });

  it("come out the same from the same seed", () => {
    const judge = (_headings: readonly unknown[], rows: readonly (readonly unknown[])[]) =>
      rows.map((row) => ({ decision: "KEEP", reason: JSON.stringify(row), more: [] }));
    const once = run({ judge, seed: 7, judgements: 500, most: 0 });
    expect(summary(run({ judge, seed: 7, judgements: 500, most: 0 }))).toBe(summary(once));
    expect(summary(run({ judge, seed: 8, judgements: 500, most: 0 }))).not.toBe(summary(once));
  });

  it("notice an engine that keeps everything, and one that keeps nothing", () => {
    const always = (decision: string) => (_: readonly unknown[], rows: readonly (readonly unknown[])[]) =>
      rows.map(() => ({ decision, reason: 'Type a size in "Section now".', more: [] }));
    expect(notHeld(run({ judge: always("KEEP"), seed: 1, judgements: 2000, most: 0 }))).toContain("false KEEP, WATCH or DRESS");
    expect(notHeld(run({ judge: always("NO VERDICT"), seed: 1, judgements: 2000, most: 0 }))).toEqual(
      expect.arrayContaining(["alarms: clean", "alarms: described", "alarms: turned"]),
    );
  });
});

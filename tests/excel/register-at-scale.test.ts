/**
 * A register with all its formulas worked out grows with its rows, assemblies with a sign of overload among them. Processor
 * time is compared within one run, so that neither the machine nor what else runs on it decides.
 */
import { expect, it } from "vitest";
import { DEFAULT_BASIS } from "../../src/engine/rules/rule-sets";
import { HEADING_ROW, REGISTER_SHEET } from "../../src/excel/kit/sheets";
import { excelPort } from "../../src/excel/workbook";
import { openBook } from "../setup-excel";
import { AS_OF, book, calculator, HOOK_HEADINGS, hookRow, records } from "./books";

/** One hook in 25 is stretched; three make an assembly. Milliseconds of processor time. */
async function built(count: number): Promise<number> {
  const rows = Array.from({ length: count }, (_, i) =>
    hookRow(`H-${String(i)}`, i % 25 === 7 ? "2.2" : "2.01", { assembly: `Tackle ${String(Math.floor(i / 3))}` }),
  );
  const made = book({ "Gear log": [[...HOOK_HEADINGS], ...rows] });
  openBook(made, { calculator: calculator() });
  const log = await excelPort.read({ from: "auto", basis: DEFAULT_BASIS, asOf: AS_OF, choices: {} });
  const before = process.cpuUsage();
  await excelPort.build(log, () => undefined, new AbortController().signal);
  const { user, system } = process.cpuUsage(before);
  const told = records(made.sheet(REGISTER_SHEET)!, HEADING_ROW - 1).map((record) => record["Verdict"]);
  const signs = Math.floor((count - 8) / 25) + 1;
  expect(told).toHaveLength(count);
  expect(told.filter((verdict) => verdict === "REMOVE")).toHaveLength(signs);
  expect(told.filter((verdict) => verdict === "EXAMINE")).toHaveLength(2 * signs);
  return (user + system) / 1000;
}

it("five times the rows take less than nine times as long", { timeout: 180_000 }, async () => {
  // The first one pays for the start.
  await built(300);
  const small = await built(300);
  const large = await built(1500);
  console.info(`register of 300 rows ${small.toFixed(0)} ms, of 1,500 rows ${large.toFixed(0)} ms`);
  expect(large / small).toBeLessThan(9);
});

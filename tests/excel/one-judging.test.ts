/** A reading that is typed in the register makes its own row be judged again, and no other, assemblies or not. */
import { expect, it } from "vitest";
import { DEFAULT_BASIS } from "../../src/engine/rules/rule-sets";
import { HEADING_ROW, REGISTER_SHEET } from "../../src/excel/kit/sheets";
import { excelPort } from "../../src/excel/workbook";
import { openBook } from "../setup-excel";
import { AS_OF, book, calculator, HOOK_HEADINGS, hookRow, records } from "./books";

/** GEAR_ROWS takes another number of rows; the count does not depend on it. */
const ROWS = Number(process.env["GEAR_ROWS"] ?? 120);

it("a typed reading judges one row, and reaches the other parts of its assembly", { timeout: 600_000 }, async () => {
  const rows = Array.from({ length: ROWS }, (_, i) =>
    hookRow(`H-${String(i)}`, "2.01", { assembly: `Tackle ${String(Math.floor(i / 3))}` }),
  );
  const made = book({ "Gear log": [[...HOOK_HEADINGS], ...rows] });
  const calls = new Map<string, number>();
  const calc = calculator(undefined, (name) => calls.set(name, (calls.get(name) ?? 0) + 1));
  openBook(made, { calculator: calc });
  const log = await excelPort.read({ from: "auto", basis: DEFAULT_BASIS, asOf: AS_OF, choices: {} });
  await excelPort.build(log, () => undefined, new AbortController().signal);
  const sheet = made.sheet(REGISTER_SHEET)!;
  const throat = Array.from({ length: 60 }, (_, c) => sheet.cell(HEADING_ROW - 1, c)?.value).indexOf("Throat now");
  calls.clear();
  // 2.2 in from 2 in is beyond 2.1 in, a sign of overload.
  sheet.at(HEADING_ROW + 4, throat).value = "2.2";
  await calc.recalculate(made);
  expect([...calls]).toEqual([["GEAR.JUDGEROW", 1]]);
  const told = records(sheet, HEADING_ROW - 1);
  expect([2, 3, 4, 5, 6].map((i) => told[i]?.["Verdict"])).toEqual(["KEEP", "EXAMINE", "REMOVE", "EXAMINE", "KEEP"]);
  expect(told[3]?.["Why"]).toBe("H-4 was stretched: look at this part too");
  expect(sheet.cell(1, 4)?.value).toMatch(/1 out, 2 to examine/);
});

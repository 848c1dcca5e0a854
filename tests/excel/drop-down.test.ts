/** The drop-down of gear kinds: from cells, since all kinds do not fit into a rule, which takes 255 characters. */
import { describe, expect, it } from "vitest";
import { GEAR } from "../../src/engine/gear/index";
import { DEFAULT_BASIS } from "../../src/engine/rules/rule-sets";
import { KINDS } from "../../src/excel/kit/kinds-list";
import { HEADING_ROW, HOUSE_SHEET, REGISTER_SHEET, TYPES_SHEET } from "../../src/excel/kit/sheets";
import { excelPort } from "../../src/excel/workbook";
import { type Book, type Sheet } from "../../src/trial/book/book";
import { listAt, offered, refusal } from "../../src/trial/view/lists";
import { openBook } from "../setup-excel";
import { AS_OF, book, calculator, hookLog } from "./books";

const offeredAt = (made: Book, sheet: Sheet, row: number, heading: string, headingRow: number): string[] => {
  const column = Array.from({ length: 80 }, (_, at) => at).find((at) => sheet.cell(headingRow, at)?.value === heading)!;
  return offered(made, sheet, listAt(sheet, row, column)!);
};

describe("the drop-down of gear kinds", () => {
  it("offers every kind in the register, in house limits and in gear types, in the order of their letters", async () => {
    const made = book({ "Gear log": hookLog(2) });
    openBook(made, { calculator: calculator() });
    const log = await excelPort.read({ from: "auto", basis: DEFAULT_BASIS, asOf: AS_OF, choices: {} });
    await excelPort.build(log, () => undefined, new AbortController().signal);
    await excelPort.makeHouseSheet();
    await excelPort.makeTypesSheet(log);
    expect([...KINDS].sort()).toEqual(GEAR.map(({ id }) => id).sort());
    expect(KINDS.join(",").length).toBeGreaterThan(255);
    expect(offeredAt(made, made.sheet(REGISTER_SHEET)!, HEADING_ROW, "Gear", HEADING_ROW - 1)).toEqual(KINDS);
    expect(offeredAt(made, made.sheet(HOUSE_SHEET)!, 8, "Gear", 7)).toEqual(KINDS);
    expect(offeredAt(made, made.sheet(TYPES_SHEET)!, 7, "Gear", 6)).toEqual(KINDS);
    // Another spelling is not stopped.
    expect(refusal(made, made.sheet(REGISTER_SHEET)!, HEADING_ROW, 2, "Eye hook")).toBeNull();
    // The lists beside them are neither limits nor types.
    const again = await excelPort.read({ from: "auto", basis: DEFAULT_BASIS, asOf: AS_OF, choices: {} });
    expect([again.refusedLimits, again.report.types?.refused]).toEqual([[], []]);
  });
});

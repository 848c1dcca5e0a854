/** House limits in the workbook: template, reading, the register's formulas. The limits are an invented yard's own. */
import { describe, expect, it } from "vitest";
import { DEFAULT_BASIS } from "../../src/engine/bases";
import { HOUSE_HEADINGS } from "../../src/engine/house";
import { excelPort } from "../../src/excel/excel";
import { HEADING_ROW, HOUSE_SHEET, REGISTER_SHEET } from "../../src/excel/layout";
import type { ReadLog } from "../../src/excel/port";
import type { Book } from "../../src/trial/book";
import { openBook } from "../setup-excel";
import { AS_OF, book, calculator, hookLog, hookRow, records } from "./books";

const read = (): Promise<ReadLog> => excelPort.read({ from: "auto", basis: DEFAULT_BASIS, asOf: AS_OF, choices: {} });
const build = async (log: ReadLog): Promise<unknown> => excelPort.build(log, () => undefined, new AbortController().signal);
const decisions = (log: ReadLog): string[] => log.report.items.map((i) => i.verdict.decision);
const cells = (made: Book): unknown[] => records(made.sheet(REGISTER_SHEET)!, HEADING_ROW - 1).map((r) => r["Verdict"]);

/** A throat at 3 %: 2.065 in from 2 in has grown 3.25 %. */
const opened = (): Book => book({ "Gear log": [...hookLog(0), hookRow("H-1", "2.05"), hookRow("H-2", "2.065")] });
const LIMIT = ["hook", "throat opening", "above", "3", "%", "Yard order 7", ""];

function limit(made: Book, row: readonly string[], at = 8): void {
  row.forEach((value, column) => {
    if (value !== "") made.sheet(HOUSE_SHEET)!.at(at, column).value = value;
  });
}

describe("the sheet of house limits", () => {
  it("is made with headings, drop-downs and text columns, once", async () => {
    const made = opened();
    openBook(made);
    await excelPort.makeHouseSheet();
    const sheet = made.sheet(HOUSE_SHEET)!;
    expect(HOUSE_HEADINGS.map((_, column) => sheet.cell(7, column)?.value)).toEqual([...HOUSE_HEADINGS]);
    expect(sheet.validations.length).toBe(4);
    limit(made, LIMIT);
    await expect(excelPort.makeHouseSheet()).rejects.toMatchObject({ kind: "other shape", message: expect.stringContaining("left as it is") });
    expect(sheet.cell(8, 0)?.value).toBe("hook");
  });

  it("is in force as soon as it is there, and without limits changes nothing", async () => {
    const made = opened();
    openBook(made);
    expect(decisions(await read())).toEqual(["KEEP", "KEEP"]);
    await excelPort.makeHouseSheet();
    const log = await read();
    expect([log.place.sheet, log.report.basis, decisions(log)]).toEqual(["Gear log", ["standard", "practice", "house"], ["KEEP", "KEEP"]]);
    limit(made, LIMIT);
    expect(decisions(await read())).toEqual(["WATCH", "REMOVE"]);
  });

  it("is read by the register's formulas beside the rule sets of the register", async () => {
    const made = opened();
    const calc = calculator();
    openBook(made, { calculator: calc });
    await excelPort.makeHouseSheet();
    limit(made, LIMIT);
    await build(await read());
    expect(cells(made)).toEqual(["WATCH", "REMOVE"]);
    expect(made.sheet(REGISTER_SHEET)!.cell(1, 1)?.value).toBe("standard,practice,house");
    expect(await excelPort.checkRegister(DEFAULT_BASIS, AS_OF)).toMatchObject({ check: { disagreeing: [] } });
    // A limit that is changed on its sheet is followed at once.
    made.sheet(HOUSE_SHEET)!.at(8, 3).value = "2";
    await calc.recalculate(made);
    expect(cells(made)).toEqual(["REMOVE", "REMOVE"]);
    // Law has no limit for the worn saddle, so the first hook is open under law; the house takes the second one out.
    made.sheet(REGISTER_SHEET)!.at(1, 1).value = "law,house";
    made.sheet(HOUSE_SHEET)!.at(8, 3).value = "3";
    await calc.recalculate(made);
    expect(cells(made)).toEqual(["NO VERDICT", "REMOVE"]);
  });

  it("with a row that cannot be read leaves its kind without a verdict, in pane and cells", async () => {
    const made = opened();
    openBook(made, { calculator: calculator() });
    await excelPort.makeHouseSheet();
    limit(made, ["hook", "throat opening", "above", "some", "%", "Yard order 7"]);
    const log = await read();
    expect(decisions(log)).toEqual(["NO VERDICT", "NO VERDICT"]);
    expect(log.report.items[0]!.verdict.reason).toMatch(/House limits, row 9 \(hook, throat opening\): the limit "some" is not a figure/);
    await build(log);
    expect(cells(made)).toEqual(["NO VERDICT", "NO VERDICT"]);
  });

  it("that is protected is left alone, and nothing is written", async () => {
    const made = opened();
    openBook(made);
    await excelPort.makeHouseSheet();
    const log = await read();
    made.sheet(HOUSE_SHEET)!.protected = true;
    await expect(build(log)).rejects.toMatchObject({ kind: "protected", message: expect.stringContaining(HOUSE_SHEET) });
    expect(made.sheet(REGISTER_SHEET)).toBeUndefined();
  });
});

/** House limits in the workbook: template, reading, the register's formulas. The limits are an invented yard's own. */
import { describe, expect, it } from "vitest";
import { DEFAULT_BASIS } from "../../src/engine/rules/rule-sets";
import { HOUSE_HEADINGS, LIMIT_HEADING } from "../../src/engine/house/read-limits";
import { excelPort } from "../../src/excel/workbook";
import { HEADING_ROW, HOUSE_SHEET, REGISTER_SHEET } from "../../src/excel/kit/sheets";
import { type ReadLog } from "../../src/excel/port";
import { type Book } from "../../src/trial/book/book";
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
    expect(HOUSE_HEADINGS.map((_, column) => sheet.cell(7, column)?.value)).toEqual(
      HOUSE_HEADINGS.map((h) => (h === "Limit" ? LIMIT_HEADING : h)),
    );
    expect(sheet.validations.length).toBe(4);
    limit(made, LIMIT);
    await expect(excelPort.makeHouseSheet()).rejects.toMatchObject({
      kind: "other shape",
      message: expect.stringContaining("left as it is"),
    });
    expect(sheet.cell(8, 0)?.value).toBe("hook");
  });

  it("explains itself in wrapped lines no wider than its columns, with an example that is no limit", async () => {
    const made = opened();
    openBook(made);
    await excelPort.makeHouseSheet();
    const sheet = made.sheet(HOUSE_SHEET)!;
    const widths = HOUSE_HEADINGS.map((_, column) => sheet.columnWidths.get(column) ?? 0);
    expect(widths.reduce((sum, width) => sum + width, 0)).toBeLessThan(760);
    for (let row = 2; row < 7; row += 1) {
      const text = String(sheet.cell(row, 0)?.value);
      expect(sheet.merges, text).toContainEqual({ row, column: 0, rows: 1, columns: 7 });
      expect(sheet.cell(row, 0)?.style, text).toMatchObject({ wrap: true, valign: "Top" });
      expect(sheet.rowHeights.get(row), text).toBeGreaterThanOrEqual(15 * Math.ceil(text.length / 130));
    }
    expect(sheet.cell(5, 0)?.value).toMatch(/^Example, which is not read as a limit: hook, throat opening/);
    expect((await read()).refusedLimits).toEqual([]);
    expect(decisions(await read())).toEqual(["KEEP", "KEEP"]);
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
    expect(made.sheet(REGISTER_SHEET)!.cell(1, 1)?.value).toBe("Standard + Practice + House");
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

  it("with a size in place of the change, or rule sets that are not understood, leaves no verdict in pane and cells", async () => {
    const made = opened();
    openBook(made, { calculator: calculator() });
    await excelPort.makeHouseSheet();
    limit(made, ["hook", "throat opening", "above", "2.1", "in", "Maker's manual", "yes"]);
    const log = await read();
    expect(decisions(log)).toEqual(["NO VERDICT", "NO VERDICT"]);
    expect(log.report.items[0]!.verdict.reason).toMatch(
      /House limits, row 9 \(hook, throat opening\): 2\.1 in is more than 20 % of as-new 2 in/,
    );
    await build(log);
    expect(cells(made)).toEqual(["NO VERDICT", "NO VERDICT"]);
    made.sheet(HOUSE_SHEET)!.at(8, 3).value = "0.1";
    expect(decisions(await read())).toEqual(["KEEP", "KEEP"]);
    made.sheet(HOUSE_SHEET)!.at(2, 0).value = "Rule sets: strict";
    const unread = await read();
    expect(decisions(unread)).toEqual(["NO VERDICT", "NO VERDICT"]);
    expect(unread.report.items[0]!.verdict.reason).toContain("House limits, row 3");
  });

  it("is taken as a range by every function, as texts and single cells are", async () => {
    const made = opened();
    const calc = calculator();
    openBook(made, { calculator: calc });
    await excelPort.makeHouseSheet();
    [
      LIMIT,
      ["hook", "section wear", "above", "1", "mm", "Yard order 7"],
      ["hook", "twist", "above", "8", "degrees", "Maker's manual", "yes"],
      ["swivel", "shoulder clearance", "above", "3/32", "in", "Yard order 7"],
      ["chain sling", "link thickness", "above", "3 %", "", "Yard order 7"],
      ["wire rope sling", "broken wires in a lay", "from", "3", "wires", "Yard order 7"],
      ["running rope", "diameter loss", "above", "1 %", "", "Yard order 7"],
      ["sheave", "groove diameter", "above", "1 %", "", "Yard order 7"],
    ].forEach((row, index) => limit(made, row, 8 + index));
    const tried = made.addSheet("Tried");
    tried.at(0, 1).value = "law";
    const CASES: readonly (readonly [call: string, without: unknown, house: unknown, law: unknown])[] = [
      ['THROATVERDICT(2,2.07,"in",', "KEEP", "REMOVE", "KEEP"],
      ['WEARVERDICT("hook","saddle",40,38.5,,,', "KEEP", "REMOVE", "NO VERDICT"],
      ["TWISTVERDICT(5", "REMOVE", "KEEP", "KEEP"],
      ['SWIVELVERDICT(0.1,"in"', "WATCH", "REMOVE", "NO VERDICT"],
      ['CHAINVERDICT("1/2",0.48,"in"', "KEEP", "REMOVE", "KEEP"],
      ['CHAINMIN("1/2","in"', 0.443, "#N/A", 25 / 64],
      ['WIREVERDICT("strand laid",3,0', "KEEP", "REMOVE", "KEEP"],
      ['ROPEVERDICT("1/2",0.49,"in"', "KEEP", "REMOVE", "KEEP"],
      ['GROOVEVERDICT("1/2",0.52,"in"', "KEEP", "REMOVE", "NO VERDICT"],
      ['REMOVEAT("hook","throat opening",2,"in"', 2.1, 2.06, 2.3],
      ['DRESSLEFT("hook","saddle",40,40', 2, "#N/A", "#N/A"],
      ['NEXTDUE("hook","normal",46000', 46365, 46365, 46031],
    ];
    CASES.forEach(([call], row) => {
      ["", ",'House limits'!$A$1:$G$200", ',"law"', ",$B$1", ",$Z$99"].forEach((basis, column) => {
        tried.at(row + 1, column).formula = `=GEAR.${call}${basis})`;
      });
    });
    await calc.recalculate(made);
    const shown = (row: number, column: number): unknown => tried.cell(row, column)?.error ?? tried.cell(row, column)?.value;
    CASES.forEach(([call, without, house, law], row) => {
      expect(
        [0, 1, 2, 3, 4].map((column) => shown(row + 1, column)),
        call,
      ).toEqual([without, house, law, law, without]);
    });
    // A row that cannot be read reaches every function of its kind.
    made.sheet(HOUSE_SHEET)!.at(8, 3).value = "some";
    await calc.recalculate(made);
    expect([0, 1, 2, 9, 10, 11].map((row) => shown(row + 1, 1))).toEqual([
      "NO VERDICT",
      "NO VERDICT",
      "NO VERDICT",
      "#VALUE!",
      "#VALUE!",
      "#VALUE!",
    ]);
    expect(tried.cell(10, 1)?.message).toContain("House limits, row 9 (hook, throat opening)");
  });
});

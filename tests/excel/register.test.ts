import { describe, expect, it } from "vitest";
import { DEFAULT_BASIS, type BasisId } from "../../src/engine/rules/rule-sets";
import { FIELD_IDS } from "../../src/engine/columns";
import { readLength } from "../../src/engine/reading/length";
import { columnLetters } from "../../src/excel/kit/addresses";
import { excelPort } from "../../src/excel/workbook";
import { AS_OF_CELL, HEADING_ROW, HOUSE_SHEET, NOTES_SHEET, REGISTER_SHEET } from "../../src/excel/kit/sheets";
import { RESULT_COLUMNS, ROW_HEIGHT } from "../../src/excel/register/columns";
import { CELL_COLORS } from "../../src/excel/kit/tints";
import { written } from "../../src/excel/register/written-cell";
import { type BuildResult, type ReadLog } from "../../src/excel/port";
import { type Book } from "../../src/trial/book/book";
import { MINIMUM_REQUIREMENTS, type Host } from "../../src/trial/host/host";
import { openBook } from "../setup-excel";
import { AS_OF, book, calculator, fill, HOOK_HEADINGS, hookLog, hookRow, records, type Value } from "./books";

const read = (): Promise<ReadLog> => excelPort.read({ from: "auto", basis: DEFAULT_BASIS, asOf: AS_OF, choices: {} });
const build = async (): Promise<BuildResult> => excelPort.build(await read(), () => undefined, new AbortController().signal);
const register = (made: Book): Record<string, unknown>[] => records(made.sheet(REGISTER_SHEET)!, HEADING_ROW - 1);
const snapshot = (made: Book, name: string): string => JSON.stringify([...made.sheet(name)!.rows].map(([r, cells]) => [r, [...cells]]));

describe("building a register", () => {
  it("writes verdicts, dates and due states as live formulas beside the inputs", async () => {
    const made = book({ "Gear log": [["Tern Point Yard"], [], ...hookLog(3), ["Total", 3]] });
    const before = snapshot(made, "Gear log");
    openBook(made, { calculator: calculator() });
    const result = await build();
    expect(result).toMatchObject({ sheet: REGISTER_SHEET, items: 3, added: 3, kept: 0 });
    const rows = register(made);
    // 2.15 in from 2 in is 7.5 % (above 5 %); 2.01 in is 0.5 %.
    expect(rows.map((r) => [r["Id"], r["Verdict"], r["Due state"], r["Flag"]])).toEqual([
      ["H-1", "REMOVE", "CURRENT", "✖ REMOVE"],
      ["H-2", "KEEP", "CURRENT", "✔ KEEP"],
      ["H-3", "KEEP", "CURRENT", "✔ KEEP"],
    ]);
    // 5 October 2026 (46300) plus 12 months is 5 October 2027.
    expect(rows[0]!["Next due"]).toBe(46300 + 365);
    expect(rows[0]!["Reason"]).toMatch(/2\.15 in.*above 2\.1 in.*standard/i);
    expect(String(rows[1]!["Comes out at"])).toContain("throat opening above 2.1 in");
    expect(rows[1]!["Used"]).toBeCloseTo(0.16, 6);
    expect(snapshot(made, "Gear log")).toBe(before);
    expect(made.sheet(NOTES_SHEET)).toBeDefined();
  });

  it("flags an inspection or a release that is dated after the day of judging", async () => {
    const made = book({
      "Gear log": [
        [...HOOK_HEADINGS],
        hookRow("H-1", "2"),
        hookRow("H-2", "2", { inspected: { date: AS_OF + 1 } }),
        hookRow("H-3", "2.15", { inspected: { date: AS_OF + 1 } }),
      ],
    });
    openBook(made, { calculator: calculator() });
    const log = await read();
    expect(log.report.items.map((i) => [i.verdict.decision, i.dueState])).toEqual([
      ["KEEP", "CURRENT"],
      ["NO VERDICT", "NO DATE"],
      ["REMOVE", "NO DATE"],
    ]);
    await excelPort.build(log, () => undefined, new AbortController().signal);
    expect(register(made).map((r) => [r["Flag"], r["Due state"]])).toEqual([
      ["✔ KEEP", "CURRENT"],
      ["? DATE AHEAD", "NO DATE"],
      ["✖ REMOVE, no date", "NO DATE"],
    ]);
  });

  it("flags gear without a date of inspection, with an unknown service or without a day to judge by, as not current, and tints its date as overdue", async () => {
    const special = hookRow("H-4", "2").map((cell) => (cell === "normal" ? "special" : cell));
    const made = book({
      "Gear log": [
        [...HOOK_HEADINGS],
        hookRow("H-1", "2"),
        hookRow("H-2", "2", { inspected: null }),
        hookRow("H-3", "2", { inspected: "last spring" }),
        special,
        hookRow("H-5", "2.15", { inspected: null }),
        hookRow("H-6", "2.09", { inspected: null }),
      ],
    });
    const calc = calculator();
    openBook(made, { calculator: calc });
    await build();
    const flags = (): unknown[] => register(made).map((r) => r["Flag"]);
    expect(flags()).toEqual(["✔ KEEP", "! KEEP, no date", "! KEEP, no date", "! KEEP, no date", "✖ REMOVE, no date", "! WATCH, no date"]);
    const sheet = made.sheet(REGISTER_SHEET)!;
    const [noDate, overdue] = ["NO DATE", "OVERDUE"].map((word) => sheet.rules.find((rule) => rule.formula.includes(`="${word}",`)));
    expect(noDate).toMatchObject({ fill: overdue!.fill, color: overdue!.color });
    Object.assign(sheet.at(1, 3), { value: "some day", formula: undefined });
    await calc.recalculate(made);
    expect(flags()).toEqual([
      "! KEEP, no date",
      "! KEEP, no date",
      "! KEEP, no date",
      "! KEEP, no date",
      "✖ REMOVE, no date",
      "! WATCH, no date",
    ]);
  });

  it("follows a reading that is typed in the register", async () => {
    const made = book({ "Gear log": hookLog(2) });
    const calc = calculator();
    openBook(made, { calculator: calc });
    await build();
    const sheet = made.sheet(REGISTER_SHEET)!;
    const column = Array.from({ length: 60 }, (_, c) => sheet.cell(HEADING_ROW - 1, c)?.value).indexOf("Throat now");
    sheet.at(HEADING_ROW + 1, column).value = "2.2";
    await calc.recalculate(made);
    expect(register(made)[1]!["Verdict"]).toBe("REMOVE");
  });

  it("carries an overload to the other parts of the assembly, in the sheet as in the pane", async () => {
    const rows: Value[][] = [
      [...HOOK_HEADINGS],
      hookRow("H-1", "2.15", { assembly: "Gantry" }),
      hookRow("H-2", "2", { assembly: "Gantry" }),
      hookRow("H-3", "2", { assembly: "Gantry", inspected: { date: 46301 } }),
      hookRow("H-4", "2", { assembly: "Slipway" }),
    ];
    const made = book({ "Gear log": rows });
    openBook(made, { calculator: calculator() });
    const log = await read();
    expect(log.report.items.map((i) => i.verdict.decision)).toEqual(["REMOVE", "EXAMINE", "KEEP", "KEEP"]);
    await excelPort.build(log, () => undefined, new AbortController().signal);
    expect(register(made).map((r) => r["Verdict"])).toEqual(["REMOVE", "EXAMINE", "KEEP", "KEEP"]);
    const checked = await excelPort.checkRegister(DEFAULT_BASIS, AS_OF);
    expect(checked?.check).toEqual({ disagreeing: [], apart: [], builtUnder: null, functionsMissing: false, withoutHouse: false });
  });

  it("says under which rules and for which day it was built where the pane has others", async () => {
    const made = book({ "Gear log": hookLog(2) });
    openBook(made, { calculator: calculator() });
    await build();
    const under = async (basis: readonly BasisId[], asOf: number): Promise<unknown> =>
      (await excelPort.checkRegister(basis, asOf))?.check.builtUnder;
    expect(await under(DEFAULT_BASIS, AS_OF)).toBeNull();
    expect(await under(["practice", "standard"], AS_OF)).toBeNull();
    const built = { rules: ["standard", "practice"], asOf: AS_OF };
    expect(await under(["law"], AS_OF)).toEqual(built);
    expect(await under(["standard"], AS_OF)).toEqual(built);
    expect(await under(DEFAULT_BASIS, AS_OF + 30)).toEqual(built);
    Object.assign(made.sheet(REGISTER_SHEET)!.at(1, 3), { value: "some day", formula: undefined });
    made.sheet(REGISTER_SHEET)!.at(1, 1).value = "my rules";
    expect(await under(DEFAULT_BASIS, AS_OF)).toEqual({ rules: null, asOf: null });
  });

  it("built before there were house limits is told from one that reads them, whatever stands in its first verdict cell", async () => {
    const made = book({ "Gear log": hookLog(2) });
    const calc = calculator();
    openBook(made, { calculator: calc });
    await build();
    const withoutHouse = async (): Promise<boolean | undefined> =>
      (await excelPort.checkRegister(DEFAULT_BASIS, AS_OF))?.check.withoutHouse;
    expect(await withoutHouse()).toBe(false);
    await excelPort.makeHouseSheet();
    expect(await withoutHouse()).toBe(true);
    await build();
    expect(await withoutHouse()).toBe(false);
    const sheet = made.sheet(REGISTER_SHEET)!;
    const verdict = Array.from({ length: 60 }, (_, c) => sheet.cell(HEADING_ROW - 1, c)?.value).indexOf("Verdict");
    Object.assign(sheet.at(HEADING_ROW, verdict), { value: "KEEP", formula: undefined });
    expect(await withoutHouse()).toBe(false);
  });

  it("says which rows of the house limits cannot be used, for the log and for the register", async () => {
    const made = book({ "Gear log": hookLog(1) });
    openBook(made, { calculator: calculator() });
    await excelPort.makeHouseSheet();
    ["hook", "throat opening", "above", "some", "%", "Yard order 7"].forEach((value, column) => {
      made.sheet(HOUSE_SHEET)!.at(8, column).value = value;
    });
    const refused = [expect.stringMatching(/^House limits, row 9 \(hook, throat opening\): the limit "some" is not a figure/)];
    expect((await read()).refusedLimits).toEqual(refused);
    await build();
    expect((await excelPort.checkRegister(DEFAULT_BASIS, AS_OF))?.log.refusedLimits).toEqual(refused);
  });

  it("names the house limits once when the rules in force name them too", async () => {
    openBook(book({ "Gear log": hookLog(1) }));
    await excelPort.makeHouseSheet();
    const log = await excelPort.read({ from: "auto", basis: ["law", "house"], asOf: AS_OF, choices: {} });
    expect(log.report.basis).toEqual(["law", "house"]);
  });

  it("says the same about due dates as GEAR.DUESTATE, and no function of the add-in hangs on TODAY()", async () => {
    const days = [AS_OF - 400, AS_OF - 366, AS_OF - 365, AS_OF - 336, AS_OF - 335, AS_OF - 334, AS_OF, "last spring", null];
    const made = book({
      "Gear log": [
        [...HOOK_HEADINGS],
        ...days.map((day, i) => hookRow(`H-${String(i)}`, "2.01", { inspected: typeof day === "number" ? { date: day } : day })),
      ],
    });
    openBook(made, { calculator: calculator() });
    const log = await read();
    await excelPort.build(log, () => undefined, new AbortController().signal);
    expect(register(made).map((r) => r["Due state"])).toEqual(log.report.items.map((i) => i.dueState));
    expect(new Set(log.report.items.map((i) => i.dueState))).toEqual(new Set(["OVERDUE", "DUE SOON", "CURRENT", "NO DATE"]));
    const place = { judged: "=GEAR.JUDGEROW(A1)", fields: new Set(FIELD_IDS), assemblies: 50 };
    const calls = RESULT_COLUMNS.map(({ formula }) => formula?.(place) ?? "").filter((formula) => formula.includes("GEAR."));
    expect(calls.length).toBe(1);
    for (const formula of calls) expect(formula).not.toContain(AS_OF_CELL);
  });

  it("an undated overload holds for the whole assembly", async () => {
    const made = book({
      "Gear log": [
        [...HOOK_HEADINGS],
        hookRow("H-1", "2.15", { assembly: "Gantry", inspected: "last spring" }),
        hookRow("H-2", "2", { assembly: "Gantry" }),
      ],
    });
    openBook(made, { calculator: calculator() });
    await build();
    expect(register(made).map((r) => [r["Verdict"], r["Overload in assembly"]])).toEqual([
      ["REMOVE", ""],
      ["EXAMINE", "undated"],
    ]);
  });

  it("shows all that is looked for beside an open pane on 1366 pixels, folded columns aside", async () => {
    const made = book({ "Gear log": hookLog(3) });
    openBook(made);
    await build();
    const sheet = made.sheet(REGISTER_SHEET)!;
    const shown = ["Flag", "Id", "Gear", "Place", "Why", "Next due", "Comes out at", "Used"];
    const headings = Array.from({ length: 60 }, (_, column) => String(sheet.cell(HEADING_ROW - 1, column)?.value ?? ""));
    const points = shown.reduce((sum, heading) => sum + (sheet.columnWidths.get(headings.indexOf(heading)) ?? Number.NaN), 0);
    // 1366 pixels less a pane of 326 and the row numbers' 44; three points are four pixels.
    expect((points * 4) / 3).toBeLessThanOrEqual(1366 - 326 - 44);
  });

  it("keeps text as text: =1+1, 3/4, 1-2 and @x in ids and remarks", async () => {
    const made = book({
      "Gear log": [[...HOOK_HEADINGS], ...["=1+1", "3/4", "1-2", "@x"].map((id) => hookRow(id, "2.01", { remarks: `${id} see file` }))],
    });
    openBook(made, { calculator: calculator() });
    await build();
    const sheet = made.sheet(REGISTER_SHEET)!;
    expect(register(made).map((r) => [r["Id"], r["Remarks"]])).toEqual(["=1+1", "3/4", "1-2", "@x"].map((id) => [id, `${id} see file`]));
    for (let row = 0; row < 4; row += 1) expect(sheet.cell(HEADING_ROW + row, 1)?.formula).toBeUndefined();
  });

  it("keeps the unit of a heading with each figure where rows have different units", async () => {
    const headings = [
      "Id",
      "Gear",
      "Throat as-new (in)",
      "Throat now (in)",
      "Pin as-new (mm)",
      "Pin now (mm)",
      "Section as-new (in)",
      "Section now (in)",
    ];
    const made = book({ "Gear log": [headings, ["H-1", "hook", "2", "2.01 see note", "20", "19.8", "1 7/8", "1⅞"]] });
    openBook(made);
    await build();
    const [row] = register(made);
    expect(["Throat now", "Pin now", "Section as-new", "Section now"].map((h) => row![h])).toEqual([
      "2.01 in see note",
      "19.8 mm",
      "1 7/8 in",
      "1⅞ in",
    ]);
  });

  it("makes no inches of a fraction that stood under a heading in mm", () => {
    const kept = written("pinNow", "1/4", "mm", "in");
    expect(kept).toBe("1/4 (in or mm?)");
    expect(readLength(kept, { assume: "in" }).kind).toBe("refused");
    expect(written("pinNow", "1/4", "in", "mm")).toBe("1/4 in");
    expect(written("pinNow", "1/4 in", "mm", "in")).toBe("1/4 in");
    expect(written("pinNow", "1/4", "mm", "mm")).toBe("1/4");
  });

  it("tints flag and line of reason by what decides, the date where it is late, and nothing else of what was worked out", async () => {
    const made = book({ "Gear log": hookLog(3) });
    openBook(made);
    await build();
    const sheet = made.sheet(REGISTER_SHEET)!;
    const at = (heading: string): number => Array.from({ length: 80 }, (_, c) => sheet.cell(HEADING_ROW - 1, c)?.value).indexOf(heading);
    const wordsAt = (heading: string): unknown[] =>
      sheet.rules.filter(({ box }) => box.column === at(heading)).map((rule) => /="([A-Z ]+)",N\(/.exec(rule.formula)?.[1]);
    for (const heading of ["Flag", "Why"])
      expect(new Set(wordsAt(heading)), heading).toEqual(new Set(["REMOVE", "EXAMINE", "NO VERDICT", "DRESS", "WATCH", "KEEP"]));
    expect(new Set(wordsAt("Next due"))).toEqual(new Set(["OVERDUE", "NO DATE"]));
    for (const heading of ["Id", "Gear", "Place", "Comes out at", "Used", "Verdict", "Reason", "Remarks"])
      expect(wordsAt(heading), heading).toEqual([]);
    expect(sheet.rules.every(({ box }) => box.columns === 1 && box.rows === 3)).toBe(true);
  });

  it("shades cells that the kind of gear does not read, and marks those that it needs and that are blank", async () => {
    const shackle = HOOK_HEADINGS.map(
      (heading) => ({ Id: "S-1", Gear: "shackle", Unit: "in", "Throat now": "2" })[heading as string] ?? null,
    );
    const made = book({ "Gear log": [[...HOOK_HEADINGS], hookRow("H-1", "2.01").map((v, i) => (i === 9 ? null : v)), shackle] });
    const sheetLooks: string[] = [];
    const calc = calculator((sheet) => sheetLooks.push(sheet.name));
    openBook(made, { calculator: calc });
    await build();
    const sheet = made.sheet(REGISTER_SHEET)!;
    const at = (heading: string): number => Array.from({ length: 80 }, (_, c) => sheet.cell(HEADING_ROW - 1, c)?.value).indexOf(heading);
    const fill = (row: number, heading: string): string | undefined => calc.rulesAt(sheet, row, at(heading))[0]?.fill;
    expect([fill(HEADING_ROW, "Cracks"), fill(HEADING_ROW, "Throat now"), fill(HEADING_ROW, "Pin fully seated")]).toEqual([
      CELL_COLORS.missing,
      undefined,
      CELL_COLORS.notNeeded,
    ]);
    expect([fill(HEADING_ROW + 1, "Cracks"), fill(HEADING_ROW + 1, "Pin now"), fill(HEADING_ROW + 1, "Twist deg")]).toEqual([
      CELL_COLORS.missing,
      CELL_COLORS.missing,
      CELL_COLORS.notNeeded,
    ]);
    expect(sheetLooks).toContain(REGISTER_SHEET);
  });

  it("has rows of one line, and folds what stands behind the answer", async () => {
    const made = book({ "Gear log": hookLog(3) });
    openBook(made, { calculator: calculator() });
    await build();
    const sheet = made.sheet(REGISTER_SHEET)!;
    const headings = Array.from({ length: 60 }, (_, c) => String(sheet.cell(HEADING_ROW - 1, c)?.value ?? "")).filter((h) => h !== "");
    expect(headings.filter((_, c) => sheet.cell(HEADING_ROW, c)?.style?.wrap === true)).toEqual([]);
    expect([HEADING_ROW, HEADING_ROW + 2].map((row) => sheet.rowHeights.get(row))).toEqual([ROW_HEIGHT, ROW_HEIGHT]);
    const shown = headings.filter((_, c) => !sheet.hiddenColumns.has(c));
    expect(shown.slice(0, 9)).toEqual(["Flag", "Id", "Gear", "Place", "Why", "Next due", "Comes out at", "Used", "Size"]);
    // Groups that touch would fold as one; the button of each stands over a column that is in sight.
    const levels = headings.map((_, c) => sheet.columnLevels.get(c) ?? 0);
    expect(headings.filter((_, c) => levels[c] === 0)).toEqual(
      expect.arrayContaining(["Flag", "Id", "Why", "Used", "Assembly", "Twist deg", "Identification legible", "Remarks"]),
    );
    levels.forEach((level, c) => {
      if (level === 0 || levels[c + 1] !== 0) return;
      expect(sheet.hiddenColumns.has(c + 1), headings[c + 1]).toBe(false);
    });
    expect(sheet.columnWidths.get(headings.indexOf("Reason"))).toBe(420);
    expect(sheet.cell(2, headings.indexOf("Throat as-new"))?.value).toBe("sizes");
  });

  it("says once above the table how many are out or late, and whose gauge is not known", async () => {
    const made = book({ "Gear log": hookLog(12) });
    openBook(made, { calculator: calculator() });
    await build();
    const sheet = made.sheet(REGISTER_SHEET)!;
    expect(sheet.cell(1, 4)?.value).toBe(
      "12 items: 2 out, 0 to examine, 0 without verdict, 0 late · no gauge is recorded: readings are taken as they stand",
    );
    expect(sheet.cell(0, 4)?.value).toMatch(/competent person/);
  });

  it("sets drop-downs, freezes the headings and sets up the print", async () => {
    const made = book({ "Gear log": hookLog(3) });
    openBook(made, { calculator: calculator() });
    await build();
    const sheet = made.sheet(REGISTER_SHEET)!;
    expect([sheet.frozenRows, sheet.frozenColumns]).toEqual([HEADING_ROW, 3]);
    expect(sheet.validations.length).toBeGreaterThan(3);
    expect(sheet.page).toMatchObject({ orientation: "Landscape", fitWide: 1, titleRows: "$1:$4" });
    // What is printed is the first screen: the columns behind it are folded.
    const used = Array.from({ length: 80 }, (_, c) => sheet.cell(HEADING_ROW - 1, c)?.value).indexOf("Used");
    expect(sheet.page).toMatchObject({ printArea: `A:${columnLetters(used)}` });
    // The three parts of the footer do not run into each other: no line longer than its share of the page at 8 points.
    const foot = [sheet.page.leftFooter, sheet.page.centerFooter, sheet.page.rightFooter].map(
      (part) => part?.replace("&8", "").split("\n") ?? [],
    );
    expect(foot.map((lines) => Math.max(...lines.map((l) => l.length))).map((length, part) => length <= (part === 1 ? 90 : 50))).toEqual([
      true,
      true,
      true,
    ]);
    expect(foot.flat().join(" ")).toMatch(/Rules in force: Standard \+ Practice.*competent person.*&D.*Page &P of &N/);
    expect(made.tables.map((t) => [t.name, t.sheet.name])).toEqual([["GearRegister", REGISTER_SHEET]]);
  });

  it("judges a part by its own row and not by words: no sign of overload typed in one shackle leaves its neighbour alone", async () => {
    const HEADINGS = [
      "Id",
      "Gear",
      "Unit",
      "Bow as-new",
      "Bow now",
      "Pin as-new",
      "Pin now",
      "Pin seated",
      "Deformed",
      "Cracks",
      "Identification legible",
      "Inspected",
      "Assembly",
    ];
    const shackle = (id: string, deformed: string): Value[] => [
      id,
      "shackle",
      "in",
      "1",
      "0.99",
      "1",
      "0.99",
      "yes",
      deformed,
      "none",
      "yes",
      { date: 46300 },
      "Gantry",
    ];
    const made = book({ "Gear log": [HEADINGS, shackle("S-1", "no sign of overload"), shackle("S-2", "none")] });
    openBook(made, { calculator: calculator() });
    const log = await read();
    await excelPort.build(log, () => undefined, new AbortController().signal);
    expect(log.report.items[1]?.verdict.decision).toBe("KEEP");
    expect(register(made).map((r) => [r["Id"], r["Verdict"], r["Overload sign"]])).toEqual([
      ["S-1", log.report.items[0]?.verdict.decision, ""],
      ["S-2", "KEEP", ""],
    ]);
  });
});

describe.each(["1.12", "1.14"])("rebuilding a register where the workbook has ExcelApi %s", (version) => {
  const typed = async (): Promise<{ made: Book; host: Host }> => {
    const made = book({ "Gear log": hookLog(3), Other: [["private"]] });
    const host = openBook(made, { calculator: calculator(), requirements: { ...MINIMUM_REQUIREMENTS, ExcelApi: version } });
    await build();
    return { made, host };
  };
  const at = (made: Book, heading: string): number =>
    Array.from({ length: 80 }, (_, c) => made.sheet(REGISTER_SHEET)!.cell(HEADING_ROW - 1, c)?.value).indexOf(heading);

  it("keeps what people typed, matched by id, and says where the log differs", async () => {
    const { made } = await typed();
    const sheet = made.sheet(REGISTER_SHEET)!;
    sheet.at(HEADING_ROW + 1, at(made, "Throat now")).value = "2.2";
    sheet.at(HEADING_ROW + 1, at(made, "Remarks")).value = "seen on the bench";
    const log = made.sheet("Gear log")!;
    fill(log, [hookRow("H-9", "2.02")], 4);
    // The log is sorted the other way round: rows are matched by id, not by place.
    const second = log.rows.get(1),
      third = log.rows.get(2);
    log.rows.set(1, third!);
    log.rows.set(2, second!);
    const result = await build();
    expect(result).toMatchObject({ items: 4, added: 1, kept: 3 });
    expect(result.differing).toEqual([{ id: "H-2", heading: "Throat now", register: "2.2", log: "2.01" }]);
    const row = register(made).find((r) => r["Id"] === "H-2")!;
    expect([row["Throat now"], row["Remarks"], row["Verdict"]]).toEqual(["2.2", "seen on the bench", "REMOVE"]);
  });

  it("keeps items that left the log, and columns that people added", async () => {
    const { made } = await typed();
    const sheet = made.sheet(REGISTER_SHEET)!;
    const table = made.tables[0]!;
    const extra = table.box.column + table.box.columns;
    sheet.at(HEADING_ROW - 1, extra).value = "Crate";
    sheet.at(HEADING_ROW, extra).value = "red";
    table.box = { ...table.box, columns: table.box.columns + 1 };
    made.sheet("Gear log")!.rows.delete(3);
    const result = await build();
    expect(result.onlyInRegister).toEqual(["H-3"]);
    const rows = register(made);
    expect(rows.map((r) => r["Id"])).toEqual(["H-1", "H-2", "H-3"]);
    expect(rows[0]!["Crate"]).toBe("red");
  });

  it("never touches another sheet", async () => {
    const { made } = await typed();
    const before = [snapshot(made, "Gear log"), snapshot(made, "Other")];
    await build();
    expect([snapshot(made, "Gear log"), snapshot(made, "Other")]).toEqual(before);
  });
});

describe("round trips", () => {
  it("grow only with the megabytes of 5,000 rows against 50, each request and answer under 5 MB", { timeout: 240_000 }, async () => {
    const counts: number[][] = [];
    let bytes = 0;
    for (const size of [50, 5000]) {
      const made = book({ "Gear log": hookLog(size) });
      const host = openBook(made);
      await build();
      const once = host.requests.length;
      await build();
      expect(Math.max(...host.requests.map((r) => r.bytes))).toBeLessThan(5_000_000);
      expect(Math.max(...host.requests.map((r) => r.answered))).toBeLessThan(5_000_000);
      counts.push([once, host.requests.length - once]);
      bytes = host.requests.reduce((sum, r) => sum + r.bytes + r.answered, 0);
    }
    const more = (counts[1]?.[0] ?? 0) + (counts[1]?.[1] ?? 0) - (counts[0]?.[0] ?? 0) - (counts[0]?.[1] ?? 0);
    expect(more).toBeLessThanOrEqual(Math.ceil(bytes / 2_000_000));
  });
});

describe("bad input gives one sentence with the next step, and nothing is written", () => {
  const refused = async (made: Book, step: () => Promise<unknown> = build): Promise<{ kind: string; message: string }> => {
    const before = made.sheets.map((s) => [s.name, snapshot(made, s.name)]);
    const fault = await step().then(
      () => {
        throw new Error("was not refused");
      },
      (e: unknown) => e as { kind: string; message: string },
    );
    expect(made.sheets.map((s) => [s.name, snapshot(made, s.name)])).toEqual(before);
    return fault;
  };

  it("no log", async () => {
    const made = book({ Phones: [["Crane foreman", "ext. 12"]] });
    openBook(made);
    expect(await refused(made)).toMatchObject({ kind: "no log", message: expect.stringContaining("Use selection") });
  });

  it("a selection without headings", async () => {
    const made = book({ Phones: [["Crane foreman", "ext. 12"]], "Gear log": hookLog(3) });
    openBook(made);
    expect(await refused(made, () => excelPort.read({ from: "selection", basis: DEFAULT_BASIS, asOf: AS_OF, choices: {} }))).toMatchObject({
      kind: "no log",
    });
  });

  it("headings without items", async () => {
    const made = book({ "Gear log": hookLog(0) });
    openBook(made);
    expect(await refused(made)).toMatchObject({ kind: "no log", message: expect.stringContaining("no items") });
  });

  it("an id that stands twice, a heading that stands twice", async () => {
    const twice = book({ "Gear log": [...hookLog(2), hookRow("H-1", "2")] });
    openBook(twice);
    expect(await refused(twice)).toMatchObject({ kind: "duplicate", message: expect.stringContaining('"H-1"') });
    const heading = book({ "Gear log": hookLog(2).map((row, i) => [...row, i === 0 ? "Throat now" : "2.01"]) });
    openBook(heading);
    expect(await refused(heading)).toMatchObject({ kind: "duplicate", message: expect.stringContaining('"Throat now"') });
  });

  it("a protected register, a protected note sheet", async () => {
    for (const name of [REGISTER_SHEET, NOTES_SHEET]) {
      const made = book({ "Gear log": hookLog(2) });
      openBook(made);
      await build();
      made.sheet(name)!.protected = true;
      expect(await refused(made)).toMatchObject({ kind: "protected", message: expect.stringContaining(name) });
    }
  });

  it("a sheet of the register's name that is no register", async () => {
    const made = book({ "Gear log": hookLog(2), [REGISTER_SHEET]: [["my own notes"]] });
    openBook(made);
    expect(await refused(made)).toMatchObject({ kind: "other shape", message: expect.stringContaining("Rename") });
  });

  it("a cell that is being edited", async () => {
    const made = book({ "Gear log": hookLog(2) });
    const host = openBook(made);
    const log = await read();
    host.editing = true;
    expect(await refused(made, () => excelPort.build(log, () => undefined, new AbortController().signal))).toMatchObject({
      kind: "editing",
      message: expect.stringContaining("Esc"),
    });
  });

  it("stopped before anything is written", async () => {
    const made = book({ "Gear log": hookLog(2) });
    openBook(made);
    const log = await read();
    const stop = new AbortController();
    stop.abort();
    expect(await refused(made, () => excelPort.build(log, () => undefined, stop.signal))).toMatchObject({ kind: "stopped" });
  });
});

describe("finding the log", () => {
  it("prefers the sheet that looks most like a log, and its table where there is one", async () => {
    const made = book({
      Phones: [
        ["Id", "Place", "Unit"],
        ["1", "x", "y"],
      ],
      "Gear log": hookLog(3),
    });
    const sheet = made.sheet("Gear log")!;
    made.tables.push({
      id: "7",
      name: "Log",
      sheet,
      box: { row: 0, column: 0, rows: 4, columns: HOOK_HEADINGS.length },
      style: "",
      showBanded: true,
      filters: new Map(),
    });
    openBook(made);
    expect((await read()).place).toMatchObject({ sheet: "Gear log", address: "A1:O4", how: "table", table: "Log" });
  });

  it("names the other sheets that look like a log, whichever is read; its own sheets are none", async () => {
    const made = book({
      Shackles: hookLog(2),
      "Gear log": hookLog(5),
      Phones: [
        ["Id", "Place"],
        ["1", "x"],
      ],
      Hidden: hookLog(1),
    });
    made.sheet("Hidden")!.visibility = "Hidden";
    openBook(made);
    await build();
    await excelPort.makeHouseSheet();
    const log = await read();
    expect([log.place.sheet, log.others]).toEqual(["Gear log", ["Shackles"]]);
    const other = await excelPort.read({
      from: { ...log.place, sheet: "Shackles", sheetId: undefined, address: "A1:O3" },
      basis: DEFAULT_BASIS,
      asOf: AS_OF,
      choices: {},
    });
    expect(other.others).toEqual(["Gear log"]);
  });

  it("reads a place again as far as the log reaches now: rows typed below, a table that grew", async () => {
    const made = book({ "Gear log": hookLog(3) });
    openBook(made);
    const place = { sheet: "Gear log", address: "A1:O4", how: "selection", table: "" } as const;
    fill(made.sheet("Gear log")!, [hookRow("H-9", "2.2")], 4);
    const again = await excelPort.read({ from: place, basis: DEFAULT_BASIS, asOf: AS_OF, choices: {} });
    expect(again.place.address).toBe("A1:O5");
    expect(again.report.items.map((i) => i.id)).toEqual(["H-1", "H-2", "H-3", "H-9"]);
    made.tables.push({
      id: "7",
      name: "Log",
      sheet: made.sheet("Gear log")!,
      box: { row: 0, column: 0, rows: 5, columns: HOOK_HEADINGS.length },
      style: "",
      showBanded: true,
      filters: new Map(),
    });
    const table = await excelPort.read({ from: { ...place, how: "table", table: "Log" }, basis: DEFAULT_BASIS, asOf: AS_OF, choices: {} });
    expect(table.place.address).toBe("A1:O5");
    made.sheets.splice(0, 1);
    made.addSheet("Other");
    await expect(excelPort.read({ from: place, basis: DEFAULT_BASIS, asOf: AS_OF, choices: {} })).rejects.toMatchObject({
      kind: "no log",
      message: expect.stringContaining("gone"),
    });
  });

  it("follows a sheet that was renamed, by its id, and says so when it was deleted, though another takes its name", async () => {
    const made = book({ "Gear log": hookLog(3) });
    const host = openBook(made);
    const { place } = await read();
    const again = (): Promise<ReadLog> => excelPort.read({ from: place, basis: DEFAULT_BASIS, asOf: AS_OF, choices: {} });
    const heard: unknown[] = [];
    const stop = await excelPort.watch((event) => heard.push(event));
    await Excel.run(async (context) => {
      const { worksheets } = context.workbook;
      worksheets.getItem("Gear log").name = "Log 2026";
      worksheets.add("Gear log");
      await context.sync();
    });
    fill(made.sheet("Log 2026")!, [hookRow("H-9", "2.2")], 4);
    const renamed = await again();
    expect([renamed.place.sheet, renamed.place.sheetId, renamed.report.items.length]).toEqual(["Log 2026", place.sheetId, 4]);
    await excelPort.show(place, 1);
    expect(made.active.name).toBe("Log 2026");
    await host.type("Log 2026", "A1", "Id");
    await expect.poll(() => heard).toContainEqual({ kind: "changed", remote: false, sheet: "Log 2026", sheetId: place.sheetId });
    await Excel.run(async (context) => {
      context.workbook.worksheets.getItem("Log 2026").delete();
      await context.sync();
    });
    await expect.poll(() => heard).toContainEqual({ kind: "changed", remote: false, sheet: "", sheetId: place.sheetId });
    await expect(again()).rejects.toMatchObject({ kind: "no log", message: expect.stringContaining("gone or empty") });
    await stop();
  });

  it("hears of changes on a sheet that was made after it began to listen, by its name now", async () => {
    const made = book({ "Gear log": hookLog(2) });
    const host = openBook(made);
    const heard: unknown[] = [];
    const stop = await excelPort.watch((event) => heard.push(event));
    made.addSheet("Later");
    await host.type("Later", "A1", "x", "coauthor");
    await expect.poll(() => heard).toContainEqual({ kind: "changed", remote: true, sheet: "Later", sheetId: made.sheet("Later")!.id });
    await stop();
  });

  it("remembers corrected headings with the workbook", async () => {
    const made = book({ "Gear log": hookLog(2) });
    openBook(made);
    await excelPort.save({ basis: ["strict"], choices: { "throat now": null }, place: null });
    const state = await excelPort.load();
    expect(state).toEqual({ basis: ["strict"], choices: { "throat now": null }, place: null });
    const log = await excelPort.read({ from: "auto", basis: state.basis, asOf: AS_OF, choices: state.choices });
    expect(log.report.headings.find((h) => h.heading === "Throat now")?.field).toBeNull();
    expect(log.report.items[0]?.verdict.decision).toBe("NO VERDICT");
  });

  it("shows an item's row and filters the register to removals", async () => {
    const made = book({ "Gear log": hookLog(12) });
    openBook(made, { calculator: calculator() });
    const log = await read();
    await excelPort.show(log.place, log.report.items[4]!.row);
    expect([made.active.name, made.selection.row]).toEqual(["Gear log", 5]);
    await build();
    await excelPort.filterRegister(["REMOVE"]);
    expect(12 - made.sheet(REGISTER_SHEET)!.hiddenRows.size).toBe(2);
    await excelPort.filterRegister([]);
    expect(made.sheet(REGISTER_SHEET)!.hiddenRows.size).toBe(0);
  });
});

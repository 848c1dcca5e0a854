/** As-new sizes by type in the workbook: template, reading, the build and the next build. The types are an invented yard's own. */
import { describe, expect, it } from "vitest";
import { DEFAULT_BASIS } from "../../src/engine/rules/rule-sets";
import { HEADING_ROW, REGISTER_SHEET, TYPES_SHEET } from "../../src/excel/kit/sheets";
import { MARKS } from "../../src/excel/kit/marks";
import type { BuildResult, ReadLog } from "../../src/excel/port";
import { excelPort } from "../../src/excel/workbook";
import type { Book } from "../../src/trial/book/book";
import { openBook } from "../setup-excel";
import { AS_OF, book, calculator, records, type Value } from "./books";

const read = (from: "auto" | ReadLog["place"] = "auto"): Promise<ReadLog> =>
  excelPort.read({ from, basis: DEFAULT_BASIS, asOf: AS_OF, choices: {} });
const build = async (log?: ReadLog): Promise<BuildResult> =>
  excelPort.build(log ?? (await read()), () => undefined, new AbortController().signal);
const register = (made: Book): Record<string, unknown>[] => records(made.sheet(REGISTER_SHEET)!, HEADING_ROW - 1);
const decisions = (log: ReadLog): string[] => log.report.items.map((i) => i.verdict.decision);

const LOG_HEADINGS = [
  "Id",
  "Gear",
  "Type",
  "Unit",
  "Throat now",
  "Section now",
  "Twist deg",
  "Latch works",
  "Cracks",
  "Tag legible",
  "Service",
  "Inspected",
];
const hook = (id: string, throatNow: string, type = "TP-H5", more: readonly Value[] = []): Value[] => [
  id,
  "hook",
  type,
  "in",
  throatNow,
  "1.86",
  0,
  "yes",
  "none",
  "yes",
  "normal",
  { date: 46300 },
  ...more,
];
const HEAD = ["Type", "Gear", "Size", "Throat as-new", "Section as-new", "Unit", "Where read"];
const H5: Value[] = ["TP-H5", "hook", null, "2", "1 7/8", "in", "yard drawing 14"];
const typed = (...rows: Value[][]): Value[][] => [["Gear types"], HEAD, ...rows];
const opened = (rows: Value[][], log: Value[][] = [hook("H-1", "2.01"), hook("H-2", "2.125")]): Book =>
  book({ "Gear log": [LOG_HEADINGS, ...log], [TYPES_SHEET]: rows });

describe("the sheet of gear types", () => {
  it("is made with the columns that the log's kinds read and a row for each type that lacks sizes, marked, once", async () => {
    const made = book({ "Gear log": [LOG_HEADINGS, hook("H-1", "2.01"), hook("H-2", "2.01"), hook("H-3", "2", "TP-H6")] });
    openBook(made);
    await excelPort.makeTypesSheet(await read());
    const sheet = made.sheet(TYPES_SHEET)!;
    const head = Array.from({ length: 20 }, (_, column) => sheet.cell(6, column)?.value).filter(
      (value) => value !== undefined && value !== "",
    );
    expect(head.slice(0, 5)).toEqual(["Type", "Gear", "Size", "Throat as-new", "Section as-new"]);
    expect(head.slice(-2)).toEqual(["Unit", "Where read"]);
    expect([7, 8].map((row) => [0, 1].map((column) => sheet.cell(row, column)?.value))).toEqual([
      ["TP-H5", "hook"],
      ["TP-H6", "hook"],
    ]);
    expect(made.names.get(MARKS.types)).toBeDefined();
    expect(sheet.cell(7, 3)?.format).toBe("@");
    await expect(excelPort.makeTypesSheet(null)).rejects.toMatchObject({ message: expect.stringContaining("left as it is") });
    // Nothing is refused before somebody fills it in, and it is never taken for a log.
    const log = await read();
    expect([log.place.sheet, log.report.types?.refused, log.others]).toEqual(["Gear log", [], []]);
    expect(log.report.types?.unmet).toEqual([
      'The type "TP-H5" stands in row 8 of Gear types, which has no sizes yet: H-1, H-2.',
      'The type "TP-H6" stands in row 9 of Gear types, which has no sizes yet: H-3.',
    ]);
  });

  it("filled in, is in force at once and follows its sheet under another name", async () => {
    const made = book({ "Gear log": [LOG_HEADINGS, hook("H-1", "2.01"), hook("H-2", "2.125")] });
    openBook(made);
    expect(decisions(await read())).toEqual(["NO VERDICT", "NO VERDICT"]);
    await excelPort.makeTypesSheet(await read());
    const sheet = made.sheet(TYPES_SHEET)!;
    const head = Array.from({ length: 20 }, (_, column) => String(sheet.cell(6, column)?.value ?? ""));
    const put = (heading: string, value: string): void => {
      sheet.at(7, head.indexOf(heading)).value = value;
    };
    put("Throat as-new", "2");
    put("Section as-new", "1 7/8");
    put("Unit", "in");
    put("Where read", "yard drawing 14");
    expect(decisions(await read())).toEqual(["KEEP", "REMOVE"]);
    await Excel.run(async (context) => {
      context.workbook.worksheets.getItem(TYPES_SHEET).name = "Our types";
      await context.sync();
    });
    const log = await read();
    expect([decisions(log), log.others]).toEqual([["KEEP", "REMOVE"], []]);
  });

  it("of somebody else's, without its headings, is neither read nor written", async () => {
    const made = book({ "Gear log": [LOG_HEADINGS, hook("H-1", "2.01")], [TYPES_SHEET]: [["our own list"], ["hooks"]] });
    openBook(made);
    expect((await read()).report.types).toBeUndefined();
    await expect(excelPort.makeTypesSheet(null)).rejects.toMatchObject({ message: expect.stringContaining("is not the add-in's") });
    expect(made.sheet(TYPES_SHEET)!.cell(0, 0)?.value).toBe("our own list");
    await build();
    expect(made.sheet(TYPES_SHEET)!.used()).toMatchObject({ rows: 2, columns: 1 });
  });
});

describe("a build with gear types", () => {
  it("fills the as-new columns, says whose sizes they are, and cells and pane agree", async () => {
    const made = opened(typed(H5));
    openBook(made, { calculator: calculator() });
    await build();
    expect(register(made).map((r) => [r["Throat as-new"], r["Section as-new"], r["As-new from"], r["Verdict"]])).toEqual([
      ["2 in", "1 7/8 in", "Gear types, row 3 (TP-H5): yard drawing 14", "KEEP"],
      ["2 in", "1 7/8 in", "Gear types, row 3 (TP-H5): yard drawing 14", "REMOVE"],
    ]);
    expect(register(made)[0]!["Reason"]).toContain("As-new from Gear types, row 3 (TP-H5): yard drawing 14.");
    const check = await excelPort.checkRegister(DEFAULT_BASIS, AS_OF, await read());
    expect(check?.check).toMatchObject({ disagreeing: [], apart: [] });
  });

  it("follows a corrected row at the next build, and leaves a size of the item's own", async () => {
    const made = opened(typed(H5));
    const calc = calculator();
    openBook(made, { calculator: calc });
    await build();
    // The second hook gets a size of its own in the register: 2.05 in carries 2.1525 in.
    const sheet = made.sheet(REGISTER_SHEET)!;
    const column = Object.keys(register(made)[0]!).indexOf("Throat as-new");
    sheet.at(HEADING_ROW + 1, column).value = "2.05";
    made.sheet(TYPES_SHEET)!.at(2, 3).value = "1.9";
    const log = await read();
    expect((await excelPort.checkRegister(DEFAULT_BASIS, AS_OF, log))?.check.apart.map(({ id, cells }) => [id, cells])).toEqual([
      ["H-1", ["Throat as-new: register 2 in, log 1.9 in"]],
    ]);
    await build(log);
    // 1.9 in carries 1.995 in, so 2.01 in comes out.
    expect(register(made).map((r) => [r["Throat as-new"], r["Verdict"]])).toEqual([
      ["1.9 in", "REMOVE"],
      ["2.05", expect.stringMatching(/WATCH|KEEP/)],
    ]);
    expect(register(made).map((r) => r["Log differs"] ?? "")).toEqual(["", ""]);
  });

  it("gives way to a size that the log is given, and empties what a type no longer lends", async () => {
    const made = opened(typed(H5), [hook("H-1", "2.01")]);
    openBook(made, { calculator: calculator() });
    await build();
    made.sheet(TYPES_SHEET)!.at(2, 4).value = "";
    const log = made.sheet("Gear log")!;
    log.at(0, 12).value = "Throat as-new";
    log.at(1, 12).value = "1.99";
    log.at(1, 12).format = "@";
    await build();
    expect(register(made).map((r) => [r["Throat as-new"], r["Section as-new"], r["Verdict"], r["Log differs"]])).toEqual([
      ["1.99", null, "NO VERDICT", null],
    ]);
  });

  it("keeps what was lent when the sheet is gone, and the log's verdict counts", async () => {
    const made = opened(typed(H5), [hook("H-1", "2.01")]);
    openBook(made, { calculator: calculator() });
    await build();
    await Excel.run(async (context) => {
      context.workbook.worksheets.getItem(TYPES_SHEET).delete();
      await context.sync();
    });
    await build();
    expect(register(made).map((r) => [r["Throat as-new"], r["Verdict"]])).toEqual([["2 in", "NO VERDICT"]]);
    expect(String(register(made)[0]!["Log differs"])).toMatch(/^NO VERDICT: so says the log/);
  });

  it("serves a register that is its own log: a new row is filled, and a corrected type is followed", async () => {
    const made = opened(typed(H5), [hook("H-1", "2.01")]);
    openBook(made, { calculator: calculator() });
    await build();
    await Excel.run(async (context) => {
      context.workbook.worksheets.getItem("Gear log").delete();
      await context.sync();
    });
    const own = await read();
    expect(own.place.how).toBe("register");
    made.sheet(TYPES_SHEET)!.at(2, 3).value = "1.9";
    await build(await read());
    expect(register(made).map((r) => [r["Throat as-new"], r["Verdict"]])).toEqual([["1.9 in", "REMOVE"]]);
    made.sheet(TYPES_SHEET)!.at(2, 3).value = "2";
    await build(await read());
    expect(register(made).map((r) => [r["Throat as-new"], r["Verdict"]])).toEqual([["2 in", "KEEP"]]);
  });

  it("leaves an item alone whose type cannot be read, and the pane is told first", async () => {
    const made = opened(typed(["TP-H5", "hook", null, "2", "1 7/8", null, "yard drawing 14"]), [hook("H-1", "2.01")]);
    openBook(made, { calculator: calculator() });
    const log = await read();
    expect(log.report.types?.refused[0]).toMatch(/^Gear types, row 3 \(TP-H5, hook\): "2" under "Throat as-new" cannot be used/);
    await build(log);
    expect(register(made).map((r) => [r["Throat as-new"], r["As-new from"] ?? "", r["Verdict"]])).toEqual([[null, "", "NO VERDICT"]]);
  });
});

describe("what a build keeps of a log in which nothing is measured yet", () => {
  it("is the unit of its headings: a size typed later is read in it", async () => {
    const made = book({
      "Gear log": [
        ["Id", "Gear", "Size (mm)", "Inspected"],
        ["H-1", "hook", 20, { date: 46300 }],
        ["H-2", "hook", null, { date: 46300 }],
      ],
    });
    openBook(made);
    await build();
    expect(register(made).map((r) => [r["Size"], r["Unit"]])).toEqual([
      ["20", "mm"],
      [null, "mm"],
    ]);
  });
  it("is the unit of a size beside readings in another", async () => {
    const made = book({
      "Gear log": [
        ["Id", "Gear", "Size (in)", "Throat as-new (mm)", "Throat now (mm)"],
        ["H-1", "hook", "3/4", "50", "51"],
      ],
    });
    openBook(made);
    await build();
    expect(register(made).map((r) => [r["Size"], r["Unit"], r["Throat now"]])).toEqual([["3/4 in", "mm", "51"]]);
  });
  it("is what is wrong with a date", async () => {
    const dates: Value[] = [2026, { date: 2026 }, "2026", "31/02/2026", "03/04/2026", 20261101];
    const made = book({ "Gear log": [LOG_HEADINGS, ...dates.map((date, i) => [...hook(`H-${String(i)}`, "2.01").slice(0, 11), date])] });
    openBook(made, { calculator: calculator() });
    const said = (log: ReadLog): string[] =>
      log.report.items.map(
        ({ verdict }) => /cannot be used: (.*?);/.exec(verdict.parts.notes.join(" "))?.[1] ?? verdict.parts.notes.join(" "),
      );
    const before = said(await read());
    await build();
    const after = said((await excelPort.checkRegister(DEFAULT_BASIS, AS_OF))!.log);
    expect(before.slice(0, 3)).toEqual(Array(3).fill("it looks like a year without day and month"));
    expect(after.slice(0, 5)).toEqual(before.slice(0, 5));
    for (const row of register(made)) expect(row["Next due"], String(row["Id"])).toBe("");
  });
});

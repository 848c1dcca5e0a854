/** What people do to a register, and what a rebuild keeps of it, through the real client library. Reads like a list. */
import { describe, expect, it } from "vitest";
import { DEFAULT_BASIS } from "../../src/engine/rules/rule-sets";
import { COPIED_SHEET, HEADING_ROW, HOUSE_SHEET, NOTES_SHEET, REGISTER_SHEET } from "../../src/excel/kit/sheets";
import { type BuildResult, type ReadLog } from "../../src/excel/port";
import { nameBack } from "../../src/excel/register/build-register";
import { excelPort } from "../../src/excel/workbook";
import { type Book, type Cell, type Sheet, type Table } from "../../src/trial/book/book";
import { MINIMUM_REQUIREMENTS, type Host } from "../../src/trial/host/host";
import { openBook } from "../setup-excel";
import { AS_OF, book, calculator, fill, HOOK_HEADINGS, hookRow, records } from "./books";
import { oldHook, oldRegister } from "./old-register";

const LOG = "Gear log";
const ROWS = [hookRow("H-1", "2.01"), hookRow("H-2", "2.01"), hookRow("H-3", "2.01")];
const read = (): Promise<ReadLog> => excelPort.read({ from: "auto", basis: DEFAULT_BASIS, asOf: AS_OF, choices: {} });
const build = async (): Promise<BuildResult> => excelPort.build(await read(), () => undefined, new AbortController().signal);

/** A built register with its sheet, its table and the way to a cell of it. */
class Built {
  readonly made: Book;
  readonly host: Host;
  constructor(made: Book, host: Host) {
    this.made = made;
    this.host = host;
  }
  get table(): Table {
    return this.made.tables.find(({ name }) => name === "GearRegister")!;
  }
  get sheet(): Sheet {
    return this.table.sheet;
  }
  column(heading: string): number {
    return Array.from({ length: 80 }, (_, c) => this.sheet.cell(HEADING_ROW - 1, c)?.value).indexOf(heading);
  }
  row(id: string): number {
    return HEADING_ROW + Array.from({ length: 20 }, (_, r) => this.sheet.cell(HEADING_ROW + r, this.column("Id"))?.value).indexOf(id);
  }
  cell(id: string, heading: string): Cell {
    return this.sheet.at(this.row(id), this.column(heading));
  }
  /** A column of somebody's own at the right end. */
  addColumn(heading: string, cells: readonly Partial<Cell>[]): void {
    const column = this.table.box.column + this.table.box.columns;
    this.sheet.at(HEADING_ROW - 1, column).value = heading;
    cells.forEach((cell, row) => Object.assign(this.sheet.at(HEADING_ROW + row, column), cell));
    this.table.box = { ...this.table.box, columns: this.table.box.columns + 1 };
  }
  log(row: number, heading: (typeof HOOK_HEADINGS)[number], value: string): void {
    this.made.sheet(LOG)!.at(row, HOOK_HEADINGS.indexOf(heading)).value = value;
  }
  /** A further item, which needs a column that the register does not have yet. */
  addItem(): void {
    const log = this.made.sheet(LOG)!;
    fill(log, [[...HOOK_HEADINGS, "Pin as-new", "Pin now"]]);
    fill(
      log,
      [["S-9", "shackle", "in", null, null, "1", "0.99", null, null, "none", "yes", "normal", { date: 46300 }, null, null, "1", "0.99"]],
      4,
    );
  }
}
async function built(version = "1.14"): Promise<Built> {
  const made = book({ [LOG]: [[...HOOK_HEADINGS], ...ROWS] });
  const host = openBook(made, { requirements: { ...MINIMUM_REQUIREMENTS, ExcelApi: version } });
  await build();
  return new Built(made, host);
}
const everything = (made: Book): string =>
  JSON.stringify(
    made.sheets.map((s) => [
      s.name,
      [...s.rows].map(([r, cells]) => [r, [...cells]]),
      s.rules,
      s.validations,
      [...s.columnWidths],
      [...s.rowHeights],
    ]),
  );

describe.each(["1.12", "1.14"])("a rebuild keeps (ExcelApi %s)", (version) => {
  it("what was typed, with its item, though the log is sorted another way and the register by hand", async () => {
    const on = await built(version);
    on.cell("H-2", "Throat now").value = "2.2";
    on.cell("H-2", "Remarks").value = "seen on the bench";
    const [first, third] = [on.sheet.rows.get(HEADING_ROW)!, on.sheet.rows.get(HEADING_ROW + 2)!];
    on.sheet.rows.set(HEADING_ROW, third).set(HEADING_ROW + 2, first);
    on.addItem();
    await build();
    expect(records(on.sheet, HEADING_ROW - 1).map((r) => r["Id"])).toEqual(["H-3", "H-2", "H-1", "S-9"]);
    expect([on.cell("H-2", "Throat now").value, on.cell("H-2", "Remarks").value]).toEqual(["2.2", "seen on the bench"]);
    expect(on.cell("S-9", "Pin now").value).toBe("0.99");
  });

  it("notes, fills and links on the cells of their item", async () => {
    const on = await built(version);
    Object.assign(on.cell("H-2", "Remarks"), {
      value: "see file",
      note: "ask the rigger",
      link: "https://example.org",
      style: { fill: "#FFFF00" },
    });
    on.addItem();
    await build();
    expect(on.cell("H-2", "Remarks")).toMatchObject({
      value: "see file",
      note: "ask the rigger",
      link: "https://example.org",
      style: { fill: "#FFFF00" },
    });
    for (const id of ["H-1", "H-3", "S-9"]) expect(on.cell(id, "Remarks").note, id).toBeUndefined();
  });

  it("widths, heights, hidden columns, the frozen panes, the page and the table's style", async () => {
    const on = await built(version);
    on.sheet.columnWidths.set(on.column("Remarks"), 333);
    on.sheet.hiddenColumns.add(on.column("Rated load"));
    on.sheet.rowHeights.set(HEADING_ROW, 60);
    on.sheet.frozenColumns = 1;
    on.sheet.page.orientation = "Portrait";
    on.table.style = "TableStyleMedium2";
    on.addItem();
    await build();
    expect(on.sheet.columnWidths.get(on.column("Remarks"))).toBe(333);
    expect(on.sheet.hiddenColumns.has(on.column("Rated load"))).toBe(true);
    expect([on.sheet.rowHeights.get(HEADING_ROW), on.sheet.frozenColumns, on.sheet.page.orientation, on.table.style]).toEqual([
      60,
      1,
      "Portrait",
      "TableStyleMedium2",
    ]);
  });

  it("a filter", async () => {
    const on = await built(version);
    on.table.filters.set(on.column("Gear"), ["hook"]);
    on.log(1, "Cracks", "hairline");
    await build();
    expect([...on.table.filters]).toEqual([[on.column("Gear"), ["hook"]]]);
  });

  it("people's own conditional formats and drop-downs", async () => {
    const on = await built(version);
    const box = { row: HEADING_ROW, column: on.column("Place"), rows: 3, columns: 1 };
    on.sheet.rules.push({ id: "{mine}", box, formula: '=$D5="Slip"', fill: "#00FF00", stopIfTrue: false });
    on.sheet.validations.push({ box, rule: { list: { inCellDropDown: true, source: "Slip,Gantry" } }, ignoreBlanks: true });
    on.addItem();
    await build();
    expect(on.sheet.rules.filter(({ id }) => id === "{mine}")).toMatchObject([{ formula: '=$D5="Slip"', fill: "#00FF00" }]);
    expect(on.sheet.validations.some(({ rule }) => JSON.stringify(rule).includes("Slip,Gantry"))).toBe(true);
    const own = on.sheet.rules.filter(({ id }) => id !== "{mine}").map(({ formula, box: at }) => `${formula} ${String(at.column)}`);
    expect(new Set(own).size).toBe(own.length);
  });

  it("added columns as what they are: 00123, 3/4, 1-2 and text =1+1 stay text, formulas stay formulas", async () => {
    const on = await built(version);
    on.addColumn(
      "Crate",
      ["00123", "3/4", "1-2"].map((value) => ({ value, format: "@" })),
    );
    on.addColumn("Sum", [{ value: "=1+1", format: "@" }, { value: null, formula: "=[@Used]*2" }, { value: 7 }]);
    on.addItem();
    await build();
    expect(["H-1", "H-2", "H-3"].map((id) => on.cell(id, "Crate").value)).toEqual(["00123", "3/4", "1-2"]);
    expect(on.cell("H-1", "Sum")).toMatchObject({ value: "=1+1" });
    expect(on.cell("H-1", "Sum").formula).toBeUndefined();
    expect(on.cell("H-2", "Sum").formula).toBe("=[@Used]*2");
    expect(on.cell("H-3", "Sum").value).toBe(7);
  });

  it("formulas in input columns, judged by their value", async () => {
    const on = await built(version);
    Object.assign(on.cell("H-2", "Throat now"), { value: "2.2", formula: '=TEXT(2.2,"0.0")' });
    on.log(2, "Throat now", "2.03");
    await build();
    expect(on.cell("H-2", "Throat now").formula).toBe('=TEXT(2.2,"0.0")');
    expect(on.cell("H-2", "Log differs").value).toMatch(/^KEEP: so says the log/);
  });

  it("what stands under the table and beside it", async () => {
    const on = await built(version);
    const right = on.table.box.columns + 1;
    on.sheet.at(HEADING_ROW + 3, 1).value = "my note";
    on.sheet.at(HEADING_ROW, right).value = "beside";
    on.sheet.at(0, 6).value = "my title";
    on.log(1, "Cracks", "hairline");
    await build();
    expect([on.sheet.cell(HEADING_ROW + 3, 1)?.value, on.sheet.cell(HEADING_ROW, right)?.value, on.sheet.cell(0, 6)?.value]).toEqual([
      "my note",
      "beside",
      "my title",
    ]);
    const before = everything(on.made);
    on.addItem();
    const withItem = everything(on.made);
    await expect(build()).rejects.toMatchObject({ kind: "other shape", message: expect.stringMatching(/B8.*room.*nothing was written/) });
    expect(everything(on.made)).toBe(withItem);
    expect(before).not.toBe(withItem);
  });

  it("a total row", async () => {
    const on = await built(version);
    const bottom = HEADING_ROW + 3;
    on.sheet.at(bottom, 0).value = "Total";
    Object.assign(on.sheet.at(bottom, 1), { formula: "=SUBTOTAL(103,[Id])", value: 3 });
    Object.assign(on.table, { box: { ...on.table.box, rows: 5 }, totals: true });
    on.cell("H-3", "Remarks").value = "last one";
    on.addItem();
    await build();
    expect([on.table.totals, on.table.box.rows]).toEqual([true, 6]);
    expect(
      records(on.sheet, HEADING_ROW - 1)
        .map((r) => r["Id"])
        .slice(0, 4),
    ).toEqual(["H-1", "H-2", "H-3", "S-9"]);
    expect(on.sheet.cell(bottom + 1, 1)?.formula).toBe("=SUBTOTAL(103,[Id])");
    expect(on.cell("H-3", "Remarks").value).toBe("last one");
  });

  it("formulas elsewhere that name the table's columns or its cells", async () => {
    const on = await built(version);
    const other = on.made.addSheet("Summary");
    other.at(0, 0).formula = '=COUNTIF(GearRegister[Verdict],"REMOVE")';
    other.at(1, 0).formula = "=GearRegister[[#Headers],[Remarks]]";
    on.addItem();
    const remarks = on.column("Remarks");
    await build();
    expect(on.column("Remarks")).toBeGreaterThan(remarks);
    expect([0, 1].map((row) => other.cell(row, 0)?.formula)).toEqual([
      '=COUNTIF(GearRegister[Verdict],"REMOVE")',
      "=GearRegister[[#Headers],[Remarks]]",
    ]);
  });

  it("everything, when nothing changed: no cell is written", async () => {
    const on = await built(version);
    const before = everything(on.made);
    const told: string[] = [];
    const stop = on.made.listen((change) => told.push(change.kind));
    await build();
    stop();
    expect(everything(on.made)).toBe(before);
    expect(told.filter((kind) => kind !== "select")).toEqual([]);
  });
});

describe("a rebuild finds", () => {
  it("the register whose sheet was renamed, and builds no second one", async () => {
    const on = await built();
    on.sheet.name = "Rigging 2026";
    on.cell("H-2", "Remarks").value = "seen";
    expect((await build()).sheet).toBe("Rigging 2026");
    expect(on.made.tables.map(({ name }) => name)).toEqual(["GearRegister"]);
    expect(on.cell("H-2", "Remarks").value).toBe("seen");
  });

  it("the log, and never a copy of the register", async () => {
    const on = await built();
    const copy = on.made.addSheet("Gear register (2)");
    for (const [row, cells] of on.sheet.rows) copy.rows.set(row, new Map([...cells].map(([column, cell]) => [column, { ...cell }])));
    on.made.tables.push({ ...on.table, id: "99", name: "GearRegister2", sheet: copy });
    expect((await read()).place.sheet).toBe(LOG);
    expect((await read()).others).toEqual([]);
  });

  it("a log whose table is named Gear no hindrance", async () => {
    const made = book({ [LOG]: [[...HOOK_HEADINGS], ...ROWS] });
    made.tables.push({
      id: "7",
      name: "Gear",
      sheet: made.sheet(LOG)!,
      box: { row: 0, column: 0, rows: 4, columns: HOOK_HEADINGS.length },
      style: "",
      showBanded: true,
      filters: new Map(),
    });
    openBook(made);
    await build();
    expect(made.tables.map(({ name }) => name).sort()).toEqual(["Gear", "GearRegister"]);
  });
});

describe("a rebuild refuses by name, and writes nothing", () => {
  const refused = async (on: Built): Promise<{ kind: string; message: string; renamed: unknown }> => {
    const before = everything(on.made);
    const fault = await build().then(
      () => {
        throw new Error("was not refused");
      },
      (e: unknown) => e as { kind: string; message: string; renamed: unknown },
    );
    expect(everything(on.made)).toBe(before);
    expect(fault.message).toMatch(/nothing was written/);
    return fault;
  };

  it("the same id on two rows", async () => {
    const on = await built();
    on.cell("H-3", "Id").value = "h-1";
    on.sheet.at(HEADING_ROW, on.column("Cracks")).value = "hairline";
    expect(await refused(on)).toMatchObject({ kind: "duplicate", message: expect.stringMatching(/"H-1" stands on rows 5 and 7/) });
  });

  it("a heading that was renamed over readings, which it offers to name back", async () => {
    const on = await built();
    on.cell("H-2", "Throat now").value = "2.2";
    on.sheet.at(HEADING_ROW - 1, on.column("Throat now")).value = "Mouth by Jo";
    expect(await refused(on)).toMatchObject({ kind: "renamed", renamed: [{ now: "Mouth by Jo", was: "Throat now" }] });
    expect(await nameBack()).toBe(1);
    await build();
    expect(on.cell("H-2", "Throat now").value).toBe("2.2");
  });

  it("a column of its own that bears the name of one of the register's", async () => {
    const made = book({ [LOG]: [[...HOOK_HEADINGS], ...ROWS] });
    const { sheet, table } = oldRegister(made, [oldHook("H-1", "2.01")]);
    sheet.at(3, table.box.columns - 1).value = "Why";
    openBook(made);
    const before = everything(made);
    await expect(build()).rejects.toMatchObject({ kind: "other shape" });
    expect(everything(made)).toBe(before);
  });
});

describe("sheets of other people", () => {
  it("that are called Gear notes or House limits are never written", async () => {
    const made = book({
      [LOG]: [[...HOOK_HEADINGS], ...ROWS],
      [NOTES_SHEET]: [["Phone list"], ["Crane foreman"]],
      [HOUSE_SHEET]: [["Rooms"], ["Attic", "3 m"]],
    });
    openBook(made);
    const before = [NOTES_SHEET, HOUSE_SHEET].map((name) => JSON.stringify([...made.sheet(name)!.rows].map(([r, c]) => [r, [...c]])));
    const result = await build();
    expect([NOTES_SHEET, HOUSE_SHEET].map((name) => JSON.stringify([...made.sheet(name)!.rows].map(([r, c]) => [r, [...c]])))).toEqual(
      before,
    );
    expect(result.sentences.join(" ")).toMatch(/"Gear notes" is not the add-in's/);
  });
});

describe("a register of the earlier form", () => {
  it.each([true, false])(
    "is converted where it stands: typed cells, own columns and other formulas stay (flag first: %s)",
    async (flagFirst) => {
      const made = book({ [LOG]: [[...HOOK_HEADINGS], hookRow("H-1", "2.01"), hookRow("H-2", "2.01")] });
      const { sheet, table } = oldRegister(
        made,
        [
          oldHook("H-1", "2.01", { Place: "Slip", Crate: "00123" }),
          oldHook("H-2", "2.2", { Remarks: "seen on the bench", Cracks: "none" }),
        ],
        flagFirst,
      );
      const summary = made.addSheet("Summary");
      summary.at(0, 0).formula = '=COUNTIF(Gear[Verdict],"REMOVE")';
      summary.at(1, 0).formula = "=Gear[[#Headers],[Place]]";
      const calc = calculator();
      openBook(made, { calculator: calc });
      const on = new Built(made, undefined as never);
      await build();
      await calc.recalculate(made);
      expect(table.name).toBe("GearRegister");
      expect(
        records(sheet, HEADING_ROW - 1).map((r) => [
          r["Id"],
          r["Verdict"],
          r["Place"] ?? "",
          r["Remarks"] ?? "",
          r["Throat now"],
          r["Crate"] ?? "",
        ]),
      ).toEqual([
        ["H-1", "KEEP", "Slip", "", "2.01", "00123"],
        ["H-2", "REMOVE", "", "seen on the bench", "2.2", ""],
      ]);
      expect([0, 1].map((row) => summary.cell(row, 0)?.formula)).toEqual([
        '=COUNTIF(GearRegister[Verdict],"REMOVE")',
        "=GearRegister[[#Headers],[Place]]",
      ]);
      expect([0, 1].map((row) => summary.cell(row, 0)?.value)).toEqual([1, "Place"]);
      expect(sheet.rules.some(({ id }) => id === "{old}")).toBe(false);
      expect(on.cell("H-1", "Judged").formula).toContain("GEAR.JUDGEROW(");
      // Once: the next build finds nothing to convert.
      const before = everything(made);
      await build();
      expect(JSON.parse(everything(made))).toEqual(JSON.parse(before));
      expect(made.sheet(COPIED_SHEET)).toBeDefined();
      expect(made.sheet(REGISTER_SHEET)).toBe(sheet);
    },
  );
});

/**
 * Carrying out a register plan. Typed cells never move: columns and rows are added through the table, and only cells that
 * differ are written, so that a request that fails leaves each cell under its own heading, and the next build goes on
 * from there.
 */
import type { CellValue } from "../../engine/reading/cell-value";
import { readText } from "../../engine/reading/text";
import type { BasisId } from "../../engine/rules/rule-sets";
import { areaAddress } from "../kit/addresses";
import { type CellWrite, type Sending, sizeOf, writeBlock, writeCells, writeDifferences, type Written } from "../kit/in-parts";
import { KINDS, kindsAt } from "../kit/kinds-list";
import { putMark, takeMark } from "../kit/marks";
import { neighbours, readRows } from "../kit/read-in-parts";
import { BASIS_CELL, HEADING_ROW, REGISTER_TABLE } from "../kit/sheets";
import type { Progress } from "../port";
import { type FormulaPlace, HOUSE_LAST, LOG_DIFFERS } from "./columns";
import { copiedRows } from "./copied-sheet";
import { dressColumn, dressHeadings, dressSheet, foldColumns, widthsOf } from "./dress";
import type { FoundRegister } from "./find-register";
import { addHighlights, highlightsFor, standingHighlights } from "./highlights";
import { judgedFormula, type LayoutColumn } from "./layout";
import { writeNotes } from "./notes-sheet";
import type { RegisterPlan } from "./plan";
import type { OwnSheet, Standing } from "./read-register";
import { writeTop } from "./top";
import { houseRange, KINDS_COLUMN, linesFor, signature, WIDTH, workingsCells } from "./workings";

const HEAD = HEADING_ROW - 1;
const BODY = HEADING_ROW;
export interface WriteOptions {
  readonly basis: readonly BasisId[];
  /** Serial day to judge by, or null for today as the workbook counts it. */
  readonly asOf: number | null;
  readonly onProgress: (progress: Progress) => void;
}
export async function writeRegister(
  context: Excel.RequestContext,
  plan: RegisterPlan,
  now: Standing,
  options: WriteOptions,
  sending: Sending,
): Promise<void> {
  const say = (done: number, step: string): void => {
    options.onProgress({ done, of: plan.rows.length, step });
  };
  const lines = linesFor(plan.assemblies);
  const house = options.basis.includes("house") ? (now.house?.name ?? null) : null;
  const rules = house === null ? BASIS_CELL : houseRange(house, HOUSE_LAST);
  const place: FormulaPlace = { judged: judgedFormula(plan.layout, rules), fields: new Set(plan.fields), assemblies: lines };
  // What has to be known of the register as it is; nothing is written before.
  const before = now.found === null ? null : await readBefore(context, plan, now.found, place);
  const dressing = now.found === null || now.unfinished || plan.layout.old;

  say(0, "Setting up the sheet");
  const sheets = ownSheets(context, now, dressing);
  const table = now.found === null ? placeTable(sheets.register, plan) : await growTable(sending, sheets.register, plan, now.found);
  for (const [column, heading] of plan.renames) sheets.register.getRangeByIndexes(HEAD, column, 1, 1).values = [[heading]];
  if (before !== null && before.widths !== null) widthsOf(sheets.register, plan.layout, before.widths);
  const count = Math.max(1, plan.rows.length);
  const isNew = (column: LayoutColumn): boolean => column.from === null;
  const kinds = kindsAt(now.workings.name, KINDS_COLUMN);
  const rows = rowsToDress(plan, now, before?.rows ?? 0);
  plan.layout.columns.forEach((column, index) => {
    if (isNew(column) || now.unfinished) dressColumn(sheets.register, column, index, { from: 0, count }, kinds, true);
    else for (const run of rows) dressColumn(sheets.register, column, index, run, kinds, false);
  });
  if (dressing || plan.layout.columns.some(isNew)) dressHeadings(sheets.register, plan.layout);
  // Before the formulas, which read the rule sets and the day there.
  await writeTop(sending, sheets.register, plan.layout, { ...options, fresh: dressing });
  await writeTyped(sending, sheets.register, plan, before?.rows ?? 0, (done) => {
    say(done, "Writing rows");
  });
  say(plan.rows.length, "Writing formulas, lists and colours");
  // The list of assemblies reads the columns that the register is given next; both stand in the same request where they fit.
  await writeWorkings(context, sending, sheets.workings, now, lines, house);
  await writeResults(sending, sheets.register, plan, place, before);
  if (now.house !== null && house !== null) followRules(context, now.house.name, sheets.registerName);
  if (dressing) {
    table.style = "TableStyleLight1";
    dressSheet(sheets.register, plan.layout, options.basis, count);
  }
  writeHighlights(sheets.register, plan, before, count);
  const notesWritten = await writeNotes(context, sheets.notes, plan, now.notes?.exists === true);
  if (notesWritten) await sending.send();
  if (!now.register.exists || now.sheets.named(sheets.registerName)?.visible === true) {
    sheets.register.activate();
    if (dressing) sheets.register.getRange(`A${String(HEADING_ROW)}`).select();
  }
  await sending.send();
  if (dressing || plan.layout.columns.some(isNew))
    await foldColumns(context, sheets.register, plan.layout, dressing, now.found?.headings ?? null);
  // Last: if this were written and the rows were not, old readings would pass for what people typed.
  await writeDifferences(
    sending,
    sheets.copied,
    copiedRows(
      plan.copied,
      now.copiedGrid,
      plan.layout.columns.map(({ heading }, column) => plan.renames.get(column) ?? heading),
    ),
    now.copiedGrid.cells,
  );
  if (dressing) takeMark(context, "building");
  await sending.send();
  say(plan.rows.length, "Done");
}
/**
 * Rows that are new, and rows of items of which nothing was copied yet: a build that was broken off may have added them
 * without their formats, and text would turn into dates.
 */
function rowsToDress(plan: RegisterPlan, now: Standing, stood: number): readonly { readonly from: number; readonly count: number }[] {
  const known = now.copied.rows;
  return neighbours(
    plan.rows.flatMap(({ item }, index) => (index >= stood || (known.size > 0 && item !== "" && !known.has(item)) ? [index] : [])),
  );
}
interface Before {
  readonly rows: number;
  /** Formulas of the worked-out columns, by heading; a column that is new has none. */
  readonly formulas: ReadonlyMap<string, readonly string[]>;
  readonly logDiffers: readonly string[];
  readonly highlights: Awaited<ReturnType<typeof standingHighlights>>;
  /** Widths and hidden columns by heading, where columns are going to be added; else null. */
  readonly widths: ReadonlyMap<string, { readonly width: number; readonly hidden: boolean }> | null;
}
async function readBefore(context: Excel.RequestContext, plan: RegisterPlan, found: FoundRegister, place: FormulaPlace): Promise<Before> {
  const body = found.table.getDataBodyRange();
  const formulas = new Map<string, readonly string[]>();
  const results = plan.layout.columns.flatMap((c) =>
    c.role.kind === "result" && c.from !== null ? [{ result: c.role.result, from: c.from }] : [],
  );
  // Formulas are read over neighbouring columns; how long they are is known.
  for (const run of neighbours(results.map(({ from }) => from))) {
    const here = results.filter(({ from }) => from >= run.from && from < run.from + run.count);
    const perRow = here.reduce((sum, { result }) => sum + (result.formula?.(place).length ?? 80) + 60, 0);
    const read = await readRows(context, body.getColumn(run.from), { rows: found.rows, columns: run.count, perRow }, "formulas");
    for (const { result, from } of here)
      formulas.set(
        result.heading,
        read.map((line) => textOf(line[from - run.from])),
      );
  }
  const grows = plan.layout.columns.some(({ from }) => from === null);
  const looks = grows
    ? found.headings.map((heading, index) => {
        const range = body.getColumn(index);
        range.load("columnHidden");
        range.format.load("columnWidth");
        return { heading, range };
      })
    : null;
  const highlights = await standingHighlights(context, body);
  if (looks !== null) await context.sync();
  return {
    rows: found.rows,
    formulas,
    logDiffers: formulas.get(LOG_DIFFERS) ?? [],
    highlights,
    widths:
      looks === null
        ? null
        : new Map(looks.map(({ heading, range }) => [heading, { width: range.format.columnWidth, hidden: range.columnHidden }])),
  };
}
interface OwnSheets {
  readonly register: Excel.Worksheet;
  readonly registerName: string;
  readonly notes: Excel.Worksheet | null;
  readonly copied: Excel.Worksheet;
  readonly workings: Excel.Worksheet;
}
/** A formula, or what was typed over it. */
const textOf = (cell: CellValue): string => (typeof cell === "string" ? cell : readText(cell));
/** The sheets of the add-in, made and marked where they are not there yet. In the first request, so that a workbook that takes no new sheets refuses before anything is written. */
function ownSheets(context: Excel.RequestContext, now: Standing, dressing: boolean): OwnSheets {
  const { worksheets } = context.workbook;
  const take = (sheet: OwnSheet, mark: "register" | "notes" | "copied" | "workings"): Excel.Worksheet => {
    const taken = sheet.exists ? worksheets.getItem(sheet.name) : worksheets.add(sheet.name);
    if (!sheet.marked) putMark(context, taken, mark, sheet.hasLostMark);
    return taken;
  };
  const register = take(now.register, "register");
  if (dressing && !now.unfinished) putMark(context, register, "building", false);
  const copied = take(now.copiedSheet, "copied");
  const workings = take(now.workings, "workings");
  // Hiding a sheet takes back what could be undone, so it is done once.
  if (!now.copiedSheet.exists) copied.visibility = Excel.SheetVisibility.veryHidden;
  if (!now.workings.exists) workings.visibility = Excel.SheetVisibility.veryHidden;
  if (now.house !== null && !now.house.marked) putMark(context, worksheets.getItem(now.house.name), "house", now.house.hasLostMark);
  return {
    register,
    registerName: now.register.name,
    notes: now.notes === null ? null : take(now.notes, "notes"),
    copied,
    workings,
  };
}
/** A table over headings and empty rows; formats come before values, so that no text turns into a date or a formula. */
function placeTable(sheet: Excel.Worksheet, plan: RegisterPlan): Excel.Table {
  const width = plan.layout.columns.length;
  const count = Math.max(1, plan.rows.length);
  // What a build left that was broken off.
  sheet.getRange().clear();
  const headings = sheet.getRangeByIndexes(HEAD, 0, 1, width);
  headings.numberFormat = "@" as unknown as string[][];
  headings.values = [plan.layout.columns.map(({ heading }) => heading)];
  const table = sheet.tables.add(areaAddress(HEAD, 0, count + 1, width), true);
  table.name = REGISTER_TABLE;
  return table;
}
/** Columns and rows that the register lacks, through the table: what stands moves aside together with what refers to it. */
async function growTable(sending: Sending, sheet: Excel.Worksheet, plan: RegisterPlan, found: FoundRegister): Promise<Excel.Table> {
  const { table } = found;
  if (found.name !== REGISTER_TABLE) table.name = REGISTER_TABLE;
  plan.layout.columns.forEach(({ heading, from }, index) => {
    if (from === null) table.columns.add(index, undefined, heading);
  });
  const more = plan.rows.length - found.rows;
  if (more <= 0) return table;
  const width = plan.layout.columns.length;
  if (!found.totals && Office.context.requirements.isSetSupported("ExcelApi", "1.13")) {
    table.resize(areaAddress(HEAD, 0, plan.rows.length + 1, width));
    return table;
  }
  // Above a total row, and where a table can't be given another size, rows are added one by one.
  const blank = Array.from({ length: width }, () => "");
  const step = 10_000;
  for (let done = 0; done < more; done += step) {
    const rows = Array.from({ length: Math.min(step, more - done) }, () => blank);
    await sending.room(rows.length * sizeOf(blank));
    table.rows.add(undefined, rows);
  }
  return sheet.tables.getItem(REGISTER_TABLE);
}
/** Cells of old rows that differ, and the rows of new items. */
async function writeTyped(
  sending: Sending,
  sheet: Excel.Worksheet,
  plan: RegisterPlan,
  oldRows: number,
  wrote: (rows: number) => void,
): Promise<void> {
  const single: CellWrite[] = [];
  plan.rows.slice(0, oldRows).forEach((row, index) => {
    for (const [column, value] of row.cells) single.push({ row: BODY + index, column, value });
  });
  await writeCells(sending, sheet, single, "values");
  const added = plan.rows.slice(oldRows);
  if (added.length === 0) return;
  const typed = plan.layout.columns.flatMap(({ role }, column) => (role.kind === "input" || role.kind === "carried" ? [column] : []));
  const runs = neighbours(typed);
  for (const { from, count } of runs) {
    const rows = added.map(({ cells }) => Array.from({ length: count }, (_, i): Written => cells.get(from + i) ?? ""));
    await writeBlock(sending, sheet, { row: BODY + oldRows, column: from }, rows, "values", (done) => {
      wrote(oldRows + done);
    });
  }
}
async function writeResults(
  sending: Sending,
  sheet: Excel.Worksheet,
  plan: RegisterPlan,
  place: FormulaPlace,
  before: Before | null,
): Promise<void> {
  const count = Math.max(1, plan.rows.length);
  const single: CellWrite[] = [];
  const texts: CellWrite[] = [];
  for (const [column, { role, from }] of plan.layout.columns.entries()) {
    if (role.kind !== "result") continue;
    const formula = role.result.formula?.(place);
    if (formula === undefined) {
      plan.rows.forEach(({ logDiffers }, row) => {
        if (logDiffers !== (from === null ? "" : (before?.logDiffers[row] ?? "")))
          texts.push({ row: BODY + row, column, value: logDiffers });
      });
      continue;
    }
    const stands = from === null ? undefined : before?.formulas.get(role.result.heading);
    const differing =
      stands === undefined ? count : Array.from({ length: count }, (_, row) => row).filter((row) => stands[row] !== formula).length;
    await sending.room(formula.length + 200);
    if (differing === count) sheet.getRangeByIndexes(BODY, column, count, 1).formulas = formula as unknown as string[][];
    else if (differing > 0)
      for (let row = 0; row < count; row += 1) if (stands?.[row] !== formula) single.push({ row: BODY + row, column, value: formula });
  }
  await writeCells(sending, sheet, single, "formulas");
  await writeCells(sending, sheet, texts, "values");
}
async function writeWorkings(
  context: Excel.RequestContext,
  sending: Sending,
  sheet: Excel.Worksheet,
  now: Standing,
  lines: number,
  house: string | null,
): Promise<void> {
  if (now.workings.exists) {
    const state = sheet.getRange("C1");
    state.load("values");
    await context.sync();
    if (state.values[0]?.[0] === signature(lines, house)) return;
    sheet.getRange().clear();
  }
  const cells = workingsCells(lines, house);
  // The state is written last: without it the sheet is made anew.
  const [first = [], ...others] = cells;
  await writeBlock(
    sending,
    sheet,
    { row: 0, column: KINDS_COLUMN },
    KINDS.map((kind) => [kind]),
    "values",
  );
  await writeBlock(sending, sheet, { row: 1, column: 0 }, others, "formulas");
  await writeBlock(sending, sheet, { row: 0, column: 0 }, [first.slice(0, WIDTH)], "values");
}
/** The rule sets that stand beside the house limits are those of the register. */
function followRules(context: Excel.RequestContext, house: string, register: string): void {
  const cell = context.workbook.worksheets.getItem(house).getRange("B2");
  cell.numberFormat = "General" as unknown as string[][];
  cell.formulas = [[`='${register.replaceAll("'", "''")}'!${BASIS_CELL}`]];
}
function writeHighlights(sheet: Excel.Worksheet, plan: RegisterPlan, before: Before | null, count: number): void {
  const wanted = highlightsFor(plan.layout, count);
  const words = (rules: readonly { readonly address: string; readonly formula: string }[]): string =>
    JSON.stringify(rules.map(({ address, formula }) => `${address} ${formula}`).sort());
  if (before !== null && plan.layout.columns.every(({ from }) => from !== null) && words(before.highlights) === words(wanted)) return;
  // By its id, in the rows and columns that the register has now: rules move with the cells that they are for.
  const { conditionalFormats } = sheet.getRangeByIndexes(BODY, 0, count, plan.layout.columns.length);
  for (const { id } of before?.highlights ?? []) conditionalFormats.getItem(id).delete();
  addHighlights(sheet, wanted);
}

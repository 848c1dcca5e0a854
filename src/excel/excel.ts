/** The workbook as the pane sees it, through the spreadsheet's client library. */
import * as z from "zod/mini";
import { BASIS_IDS, DEFAULT_BASIS, readBasis, type BasisId } from "../engine/bases";
import { readText } from "../engine/cell";
import { FIELD_IDS, type FieldId } from "../engine/fields";
import { key } from "../engine/headings";
import type { CellValue, Report } from "../engine/model";
import { reportOn } from "../engine/report";
import { asGrid } from "../engine/sheet";
import { withoutSheet } from "./address";
import { asWorkbookError, inWorkbook } from "./host";
import { againstLog, countedAnew, withNote } from "./against-log";
import { copiedFrom, loadCopied, NOTHING_COPIED, type Copied } from "./copied";
import { AS_OF_CELL, BASIS_CELL, HEADING_ROW, HOUSE_SHEET, LOG_DIFFERS, NOTES_SHEET, REGISTER_SHEET, REGISTER_TABLE, RESULT_HEADINGS } from "./layout";
import { planRegister, shapeOf, type OldRegister } from "./plan";
import { WorkbookError, type BuildResult, type LogPlace, type Progress, type ReadLog, type RegisterCheck, type SavedState, type WorkbookEvent, type WorkbookPort } from "./port";
import { makeHouseSheet, readHouseSheet } from "./house-sheet";
import { readLog, refusedLimits, withHouse } from "./read";
import { otherShape, writeRegister } from "./write";

interface Standing {
  readonly sheet: boolean;
  readonly notes: boolean;
  readonly table: (OldRegister & { readonly rows: number; readonly columns: number; readonly row: number; readonly column: number }) | null;
  readonly copied: Copied;
  /** True when there is a sheet for what was copied. */
  readonly keeps: boolean;
  readonly why: string;
}

/** The register as it stands; three round trips. */
async function standing(context: Excel.RequestContext): Promise<Standing> {
  const sheet = context.workbook.worksheets.getItemOrNullObject(REGISTER_SHEET);
  const table = sheet.tables.getItemOrNullObject(REGISTER_TABLE);
  const elsewhere = context.workbook.tables.getItemOrNullObject(REGISTER_TABLE);
  sheet.load("name");
  table.load("name");
  elsewhere.load("name");
  sheet.protection.load("protected");
  const notes = context.workbook.worksheets.getItemOrNullObject(NOTES_SHEET);
  notes.load("name");
  notes.protection.load("protected");
  const house = context.workbook.worksheets.getItemOrNullObject(HOUSE_SHEET);
  house.load("name");
  house.protection.load("protected");
  const copying = loadCopied(context);
  await context.sync();
  const copied = copiedFrom(copying);
  const keeps = !copying.sheet.isNullObject;
  if (!notes.isNullObject && notes.protection.protected) throw new WorkbookError("protected", `The sheet "${NOTES_SHEET}" is protected. Unprotect it under Review, then build again; nothing was written.`);
  if (!house.isNullObject && house.protection.protected) throw new WorkbookError("protected", `The sheet "${HOUSE_SHEET}" is protected. Unprotect it under Review, then build again; nothing was written.`);
  if (sheet.isNullObject) {
    if (!elsewhere.isNullObject) throw otherShape(`a table named "${REGISTER_TABLE}" stands on another sheet`);
    return { sheet: false, notes: !notes.isNullObject, copied: NOTHING_COPIED, keeps, table: null, why: "" };
  }
  if (sheet.protection.protected) throw new WorkbookError("protected", `The sheet "${REGISTER_SHEET}" is protected. Unprotect it under Review, then build again; nothing was written.`);
  if (table.isNullObject) return { sheet: true, notes: !notes.isNullObject, copied, keeps, table: null, why: `it has no table named "${REGISTER_TABLE}"` };
  const range = table.getRange();
  range.load("rowIndex,columnIndex,rowCount,columnCount");
  const first = table.getHeaderRowRange();
  first.load("values");
  await context.sync();
  const headings = ((first.values as CellValue[][])[0] ?? []).map(readText);
  const { columns, formulas } = await readColumns(context, table, headings);
  return {
    sheet: true, notes: !notes.isNullObject, copied, keeps, why: "",
    table: { headings, values: columns, formulas, rows: range.rowCount - 1, columns: range.columnCount, row: range.rowIndex, column: range.columnIndex },
  };
}

const RESULTS = new Set(RESULT_HEADINGS.map(key));

/**
 * The typed columns of the register: values of the input columns, formulas of those that people added, and where the log
 * differs. The worked-out columns hold long sentences and are not read.
 */
async function readColumns(context: Excel.RequestContext, table: Excel.Table, headings: readonly string[]): Promise<{ columns: CellValue[][]; formulas: CellValue[][] }> {
  const body = table.getDataBodyRange();
  body.load("rowCount");
  const runs = typedRuns(headings).map(({ from, count }) => {
    const cells = body.getColumn(from).getResizedRange(0, count - 1);
    cells.load("values,formulas");
    return { from, cells };
  });
  await context.sync();
  const columns: CellValue[][] = Array.from({ length: body.rowCount }, () => headings.map(() => ""));
  const formulas: CellValue[][] = Array.from({ length: body.rowCount }, () => headings.map(() => ""));
  for (const { from, cells } of runs)
    for (const [row, values] of cells.values.entries())
      for (const [column, value] of values.entries()) {
        (columns[row] ?? [])[from + column] = value as CellValue;
        (formulas[row] ?? [])[from + column] = cells.formulas[row]?.[column] as CellValue;
      }
  return { columns, formulas };
}

/** Runs of neighbouring columns that are not worked out. */
function typedRuns(headings: readonly string[]): readonly { readonly from: number; readonly count: number }[] {
  const runs: { from: number; count: number }[] = [];
  headings.forEach((heading, column) => {
    if (RESULTS.has(key(heading)) && key(heading) !== key(LOG_DIFFERS)) return;
    const last = runs.at(-1);
    if (last && last.from + last.count === column) last.count += 1;
    else runs.push({ from: column, count: 1 });
  });
  return runs;
}

/** Serial day on the user's clock, as TODAY() counts it. */
const today = (): number => Math.floor(Date.now() / 86_400_000 - new Date().getTimezoneOffset() / 1440) + 25569;

async function build(log: ReadLog, onProgress: (progress: Progress) => void, signal: AbortSignal): Promise<BuildResult> {
  if (log.report.items.length === 0) throw new WorkbookError("no log", `The log on ${log.place.sheet} has headings and no items under them. Fill in a row, then read it again; nothing was written.`);
  if (log.report.problems.length > 0) throw new WorkbookError("duplicate", `${log.report.problems.join(" ")} Put that right, then build again; nothing was written.`);
  return inWorkbook(async (context) => {
    onProgress({ done: 0, of: log.report.items.length, step: "Looking for a register" });
    const now = await standing(context);
    if (now.sheet && now.table === null) throw otherShape(now.why);
    if (now.table !== null) {
      const shape = shapeOf(now.table);
      if (!shape.ok) throw otherShape(shape.why);
      if (now.table.row !== HEADING_ROW - 1 || now.table.column !== 0) throw otherShape(`its headings do not stand in row ${String(HEADING_ROW)} from column A on`);
    }
    const plan = planRegister(log.report, log.place, { register: now.table, copied: now.copied });
    if (signal.aborted) throw new WorkbookError("stopped", "Stopped before anything was written.");
    await writeRegister(context, plan, {
      basis: log.report.basis, asOf: log.report.asOf === today() ? null : log.report.asOf, exists: now.table !== null, notesExist: now.notes, copiedExist: now.keeps,
      oldRows: now.table?.rows ?? 0, oldColumns: now.table?.columns ?? 0, onProgress,
    });
    return { sheet: REGISTER_SHEET, items: plan.rows.length, added: plan.added, kept: plan.kept, differing: plan.differing, onlyInRegister: plan.onlyInRegister, sentences: plan.sentences };
  });
}

async function checkRegister(basis: readonly BasisId[], asOf: number, other: ReadLog | null = null): ReturnType<WorkbookPort["checkRegister"]> {
  return inWorkbook(async (context) => {
    const sheet = context.workbook.worksheets.getItemOrNullObject(REGISTER_SHEET);
    const table = sheet.tables.getItemOrNullObject(REGISTER_TABLE);
    sheet.load("id,name");
    table.load("name");
    await context.sync();
    if (sheet.isNullObject || table.isNullObject) return null;
    const range = table.getRange();
    range.load("address");
    const first = table.getHeaderRowRange();
    first.load("values");
    await context.sync();
    const headings = ((first.values as CellValue[][])[0] ?? []).map(readText);
    if (!headings.some((heading) => key(heading) === "verdict")) return null;
    const verdicts = table.columns.getItem("Verdict").getDataBodyRange();
    verdicts.load("values");
    // The formulas of one row tell what the whole register reads; a cell that was typed over does not change that.
    const row = table.getDataBodyRange().getRow(0);
    row.load("formulas");
    const copying = loadCopied(context);
    const rules = sheet.getRange(BASIS_CELL);
    rules.load("values");
    const day = sheet.getRange(AS_OF_CELL);
    day.load("values,formulas");
    await context.sync();
    const readsHouse = (row.formulas as CellValue[][]).flat().some((cell) => readText(cell).includes(`'${HOUSE_SHEET}'!`));
    const { columns, formulas } = await readColumns(context, table, headings);
    const grid = asGrid([headings, ...columns]);
    const house = await readHouseSheet(context);
    const report = reportOn(grid, withHouse({ basis, asOf }, house));
    if (report === null) return null;
    const noted = headings.findIndex((heading) => key(heading) === key(LOG_DIFFERS));
    const own = report.items.map((item) => withNote(item, readText(columns[item.row - 1]?.[noted])));
    const saysOf = (row: number): string => readText((verdicts.values as CellValue[][])[row - 1]?.[0]);
    const log = other === null || other.place.sheet === REGISTER_SHEET ? null : other;
    const { items, apart } = log === null ? { items: own, apart: [] } : againstLog(own, log.report, planRegister(log.report, log.place, { register: { headings, values: columns, formulas }, copied: copiedFrom(copying) }).changes);
    const place: LogPlace = { sheet: REGISTER_SHEET, sheetId: sheet.id, address: withoutSheet(range.address), how: "register", table: REGISTER_TABLE };
    // A cell is right when it says what the register's own rows say, with the log as it was when they were built.
    const disagree = own.filter((item) => saysOf(item.row) !== item.verdict.decision && !saysOf(item.row).startsWith("#"));
    const shown = items.map((item) => (saysOf(item.row) === item.verdict.decision ? item : { ...item, cellSays: saysOf(item.row) }));
    return {
      log: { place, refusedLimits: refusedLimits(house), report: countedAnew(report, shown) },
      check: {
        disagreeing: disagree.map((item) => ({ id: item.id, cell: saysOf(item.row), judged: item.verdict.decision })),
        apart,
        builtUnder: builtUnder(report, { rules: rules.values as CellValue[][], day: day.values as CellValue[][], formula: day.formulas as CellValue[][] }, house !== null && !readsHouse),
        functionsMissing: report.items.some((item) => saysOf(item.row).startsWith("#NAME")),
        withoutHouse: house !== null && !readsHouse,
      },
    };
  });
}

/** What the register names where it is not what it is judged by here. House limits that it does not read are told apart. */
function builtUnder({ basis, asOf }: Report, cells: Readonly<Record<"rules" | "day" | "formula", readonly (readonly CellValue[])[]>>, withoutHouse: boolean): RegisterCheck["builtUnder"] {
  const named = readBasis(cells.rules[0]?.[0]);
  const rules = named.ok ? named.ids : null;
  const day = cells.day[0]?.[0];
  const serial = typeof day === "number" ? Math.floor(day) : null;
  const here = basis.filter((id) => !(withoutHouse && id === "house"));
  const sameRules = rules !== null && rules.length === here.length && rules.every((id) => here.includes(id));
  // A workbook that stayed open overnight works TODAY() out with the next edit.
  const sameDay = serial === asOf || (asOf === today() && /TODAY\(\)/i.test(readText(cells.formula[0]?.[0])));
  return sameRules && sameDay ? null : { rules, asOf: serial };
}

async function filterRegister(decisions: readonly string[]): Promise<void> {
  await inWorkbook(async (context) => {
    const sheet = context.workbook.worksheets.getItemOrNullObject(REGISTER_SHEET);
    const table = sheet.tables.getItemOrNullObject(REGISTER_TABLE);
    table.load("name");
    await context.sync();
    if (table.isNullObject) throw new WorkbookError("no log", "There is no register yet. Press Build register first, then filter it.");
    if (decisions.length === 0) table.clearFilters();
    else table.columns.getItem("Verdict").filter.applyValuesFilter([...decisions]);
    sheet.activate();
    await context.sync();
  });
}

async function show(place: LogPlace, row: number): Promise<void> {
  await inWorkbook(async (context) => {
    const sheet = context.workbook.worksheets.getItem(place.sheetId ?? place.sheet);
    sheet.activate();
    sheet.getRange(place.address).getRow(row).select();
    await context.sync();
  });
}

const SETTING = "gearVerdicts";

const SAVED = z.object({
  basis: z.array(z.enum(BASIS_IDS as [BasisId, ...BasisId[]])),
  choices: z.record(z.string(), z.union([z.enum(FIELD_IDS as [FieldId, ...FieldId[]]), z.null()])),
  place: z.union([z.object({ sheet: z.string(), address: z.string(), how: z.enum(["table", "selection", "found", "register"]), table: z.string(), sheetId: z.optional(z.string()) }), z.null()]),
});

const FRESH: SavedState = { basis: DEFAULT_BASIS, choices: {}, place: null };

/** What an earlier version or another program left in the settings is checked before it is used. */
function load(): Promise<SavedState> {
  const parsed = SAVED.safeParse(Office.context.document.settings.get(SETTING));
  return Promise.resolve(parsed.success && parsed.data.basis.length > 0 ? parsed.data : FRESH);
}

function save(state: SavedState): Promise<void> {
  const { settings } = Office.context.document;
  settings.set(SETTING, JSON.parse(JSON.stringify(state)));
  return new Promise((resolve, reject) => {
    settings.saveAsync((result) => {
      if (result.status === Office.AsyncResultStatus.Succeeded) resolve();
      else reject(new WorkbookError("host", `The choices could not be kept in the workbook (${result.error.message}). They hold until the pane is closed.`));
    });
  });
}

/** Where the selection stands; null while a cell is edited, since the move is told again when editing ends. */
async function selectedRow(): Promise<WorkbookEvent | null> {
  try {
    return await Excel.run(async (context) => {
      const cell = context.workbook.getActiveCell();
      cell.load("rowIndex");
      const sheet = context.workbook.worksheets.getActiveWorksheet();
      sheet.load("id,name");
      await context.sync();
      return { kind: "selected", sheet: sheet.name, sheetId: sheet.id, row: cell.rowIndex };
    });
  } catch (fault) {
    if (asWorkbookError(fault).kind === "editing") return null;
    throw fault;
  }
}

/** Changes come in bursts: their sheets are looked up together after this time. */
const BURST_MS = 150;

/** Tells which sheets changed, by the names that they have now. */
function changeTeller(listener: (event: WorkbookEvent) => void): (sheetId: string, remote: boolean) => void {
  const waiting = new Map<string, boolean>();
  const flush = async (): Promise<void> => {
    const ids = [...waiting];
    waiting.clear();
    await Excel.run(async (context) => {
      const sheets = ids.map(([id, remote]) => ({ sheet: context.workbook.worksheets.getItemOrNullObject(id), remote }));
      for (const { sheet } of sheets) sheet.load("id,name");
      await context.sync();
      for (const { sheet, remote } of sheets) if (!sheet.isNullObject) listener({ kind: "changed", remote, sheet: sheet.name, sheetId: sheet.id });
    }).catch((fault: unknown) => {
      // While a cell is edited the workbook does not answer; the burst is looked up again.
      if (asWorkbookError(fault).kind !== "editing") throw fault;
      for (const [id, remote] of ids) note(id, remote);
    });
  };
  const note = (id: string, remote: boolean): void => {
    if (waiting.size === 0) setTimeout(() => void flush(), BURST_MS);
    waiting.set(id, remote || waiting.get(id) === true);
  };
  return note;
}

async function watch(listener: (event: WorkbookEvent) => void): Promise<() => Promise<void>> {
  return inWorkbook(async (context) => {
    const { workbook } = context;
    const tell = changeTeller(listener);
    const changed = workbook.worksheets.onChanged.add((event) => {
      tell(event.worksheetId, event.source === Excel.EventSource.remote);
      return Promise.resolve();
    });
    // A sheet that is gone has no name any more, and nobody has to be asked before it is missed.
    const deleted = workbook.worksheets.onDeleted.add((event) => {
      listener({ kind: "changed", remote: false, sheet: "", sheetId: event.worksheetId });
      return Promise.resolve();
    });
    const selected = workbook.onSelectionChanged.add(async () => {
      const event = await selectedRow();
      if (event !== null) listener(event);
    });
    await context.sync();
    return async () => {
      await Excel.run(changed.context, async (own) => {
        changed.remove();
        deleted.remove();
        await own.sync();
      });
      await Excel.run(selected.context, async (own) => {
        selected.remove();
        await own.sync();
      });
    };
  });
}

/** Only a lift needs it, so it is fetched with the first one. */
const writeLift: WorkbookPort["writeLift"] = async (lift) => (await import(/* webpackChunkName: "lift-sheet" */ "./lift-write")).writeLift(lift);

export const excelPort: WorkbookPort = { read: readLog, build, checkRegister, filterRegister, show, writeLift, makeHouseSheet, load, save, watch };


/** The register as it stands, and what else a build has to know before it writes. */
import type { CellValue } from "../../engine/reading/cell-value";
import { readText } from "../../engine/reading/text";
import { key } from "../../engine/log/match-headings";
import { type Mark, readSheets, type SheetName, type Sheets } from "../kit/marks";
import { readRows } from "../kit/read-in-parts";
import { CAUTION, COPIED_SHEET, HOUSE_SHEET, NOTES_SHEET, REGISTER_SHEET, WORKINGS_SHEET } from "../kit/sheets";
import { WorkbookError } from "../kit/workbook-error";
import { LOG_DIFFERS, RESULT_HEADINGS } from "./columns";
import { type Copied, type CopiedGrid, copiedGrid, NOTHING_COPIED } from "./copied-sheet";
import { findRegister, type FoundRegister } from "./find-register";
import { type OldRegister, otherShape, shapeOf } from "./shape";

/** A sheet of the add-in's own: its name now, or the name under which it will be made; null where a sheet of that name is somebody else's. */
export interface OwnSheet {
  readonly name: string;
  readonly exists: boolean;
  readonly marked: boolean;
  /** The mark stands and leads nowhere. */
  readonly hasLostMark: boolean;
}
export interface Standing {
  readonly sheets: Sheets;
  readonly register: OwnSheet;
  readonly notes: OwnSheet | null;
  readonly copiedSheet: OwnSheet;
  readonly workings: OwnSheet;
  /** The house limits, where they stand on a sheet that the add-in made. */
  readonly house: OwnSheet | null;
  readonly found: FoundRegister | null;
  readonly table: OldRegister | null;
  readonly copied: Copied;
  readonly copiedGrid: CopiedGrid;
  /** A first build or a conversion was broken off. */
  readonly unfinished: boolean;
}
const TITLES: Readonly<Partial<Record<Mark, (cells: readonly string[]) => boolean>>> = {
  // Earlier versions wrote no marks.
  notes: ([title, caution]) => title === "Gear notes" && caution === CAUTION,
  house: ([title]) => title === "House limits",
};
/** Reads all that a build has to know; as many round trips as the register's size asks for, and eight beside. */
export async function standing(context: Excel.RequestContext): Promise<Standing> {
  const sheets = await readSheets(context);
  const found = await findRegister(context);
  const tops = new Map<Mark, Excel.Range>();
  for (const [name, sheet] of [
    ["notes", sheets.marked("notes") ?? sheets.named(NOTES_SHEET)],
    ["house", sheets.marked("house") ?? sheets.named(HOUSE_SHEET)],
  ] as const) {
    if (sheet === null) continue;
    const top = context.workbook.worksheets.getItem(sheet.id).getRange("A1:A2");
    top.load("values");
    tops.set(name, top);
  }
  const own = sheets.marked("register") ?? sheets.named(REGISTER_SHEET);
  const place = found?.sheet ?? own;
  const used = place === null ? null : context.workbook.worksheets.getItem(place.id).getUsedRangeOrNullObject(false);
  used?.load("address");
  const guarded = [place, sheets.marked("notes") ?? sheets.named(NOTES_SHEET), sheets.marked("house") ?? sheets.named(HOUSE_SHEET)]
    .filter((sheet) => sheet !== null)
    .map(({ id, name }) => {
      const { protection } = context.workbook.worksheets.getItem(id);
      protection.load("protected");
      return { name, protection };
    });
  await context.sync();

  const ownSheet = (mark: Mark, name: string): OwnSheet | null => {
    const marked = sheets.marked(mark);
    const sheet = marked ?? sheets.named(name);
    const state = { marked: marked !== null, hasLostMark: marked === null && sheets.stands(mark) };
    if (sheet === null) return { name, exists: false, ...state };
    const top = tops.get(mark);
    const texts = ((top?.values ?? []) as CellValue[][]).map((line) => readText(line[0]));
    const blank = top !== undefined && texts.every((text) => text === "");
    if (marked === null && top !== undefined && !blank && TITLES[mark]?.(texts) !== true) return null;
    return { name: sheet.name, exists: true, ...state };
  };
  const notes = ownSheet("notes", NOTES_SHEET);
  const house = ownSheet("house", HOUSE_SHEET);
  for (const { name, protection } of guarded) {
    const concerned = name === place?.name || (name === notes?.name && notes.exists) || (name === house?.name && house.exists);
    if (concerned && protection.protected)
      throw new WorkbookError(
        "protected",
        `The sheet "${name}" is protected. Unprotect it under Review, then build again; nothing was written.`,
      );
  }
  const unfinished = sheets.stands("building");
  const copying = await copiedGrid(context, sheets.marked("copied") ?? sheets.named(COPIED_SHEET));
  const copiedSheet = ownSheet("copied", COPIED_SHEET) ?? { name: COPIED_SHEET, exists: false, marked: false, hasLostMark: false };
  const workings = ownSheet("workings", WORKINGS_SHEET) ?? { name: WORKINGS_SHEET, exists: false, marked: false, hasLostMark: false };
  const base = { sheets, notes, copiedSheet, workings, house: house?.exists === true ? house : null, unfinished };
  if (found === null) {
    const register = registerSheet(own, used, sheets, unfinished);
    return { ...base, register, found, table: null, copied: NOTHING_COPIED, copiedGrid: copying };
  }
  const shape = shapeOf(found);
  if (!shape.ok) throw otherShape(shape.why, found.sheet.name);
  const marked = sheets.marked("register")?.id === found.sheet.id;
  return {
    ...base,
    register: { name: found.sheet.name, exists: true, marked, hasLostMark: !marked && sheets.stands("register") },
    found,
    table: await readTyped(context, found),
    copied: copying.copied,
    copiedGrid: copying,
  };
}
/** The sheet for a first register: none yet, an empty one, or one whose first build was broken off. */
function registerSheet(own: SheetName | null, used: Excel.Range | null, sheets: Sheets, unfinished: boolean): OwnSheet {
  const marked = sheets.marked("register") !== null;
  const state = { marked, hasLostMark: !marked && sheets.stands("register") };
  if (own === null) return { name: REGISTER_SHEET, exists: false, ...state };
  const begun = unfinished && (marked || sheets.marked("building")?.id === own.id);
  if (!begun && used?.isNullObject === false) throw otherShape("it has no table of a register", own.name);
  return { name: own.name, exists: true, ...state };
}
const RESULTS = new Set(RESULT_HEADINGS.map(key));
/**
 * The typed columns of the register: values of the input columns and of those that people added, and where the log differs.
 * The worked-out columns hold long sentences and are not read. Formulas are read first; values only of columns that hold one.
 */
export async function readTyped(
  context: Excel.RequestContext,
  { table, headings, rows, name }: Pick<FoundRegister, "table" | "headings" | "rows" | "name">,
): Promise<OldRegister> {
  if (name === "") throw new Error("A table has a name.");
  const values: CellValue[][] = Array.from({ length: Math.max(0, rows) }, () => headings.map(() => ""));
  const formulas = new Set<string>();
  const body = table.getDataBodyRange();
  for (const { from, count } of typedRuns(headings)) {
    const block = body.getColumn(from);
    const read = await readRows(context, block, { rows, columns: count }, "formulas");
    const suspect = new Set<number>();
    read.forEach((line, row) => {
      line.forEach((cell, column) => {
        (values[row] ?? [])[from + column] = cell;
        if (typeof cell === "string" && cell.startsWith("=")) suspect.add(from + column);
      });
    });
    for (const column of suspect) {
      const shown = await readRows(context, body.getColumn(column), { rows, columns: 1 }, "values");
      shown.forEach(([cell], row) => {
        // Text that looks like a formula reads the same both ways.
        if (cell !== values[row]?.[column]) formulas.add(`${String(row)} ${String(column)}`);
        (values[row] ?? [])[column] = cell;
      });
    }
  }
  return { headings, values, isFormula: (row, column) => formulas.has(`${String(row)} ${String(column)}`) };
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

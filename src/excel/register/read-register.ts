import { key } from "../../engine/log/match-headings";
import type { CellValue } from "../../engine/reading/cell-value";
import { readText } from "../../engine/reading/text";
import { HOUSE_SHEET, NOTES_SHEET, REGISTER_SHEET, REGISTER_TABLE } from "../kit/sheets";
import { WorkbookError } from "../kit/workbook-error";
import { LOG_DIFFERS, RESULT_HEADINGS } from "./columns";
import { type Copied, copiedFrom, loadCopied, NOTHING_COPIED } from "./copied-sheet";
import { type OldRegister, otherShape } from "./shape";

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
export async function standing(context: Excel.RequestContext): Promise<Standing> {
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
  if (!notes.isNullObject && notes.protection.protected)
    throw new WorkbookError(
      "protected",
      `The sheet "${NOTES_SHEET}" is protected. Unprotect it under Review, then build again; nothing was written.`,
    );
  if (!house.isNullObject && house.protection.protected)
    throw new WorkbookError(
      "protected",
      `The sheet "${HOUSE_SHEET}" is protected. Unprotect it under Review, then build again; nothing was written.`,
    );
  if (sheet.isNullObject) {
    if (!elsewhere.isNullObject) throw otherShape(`a table named "${REGISTER_TABLE}" stands on another sheet`);
    return { sheet: false, notes: !notes.isNullObject, copied: NOTHING_COPIED, keeps, table: null, why: "" };
  }
  if (sheet.protection.protected)
    throw new WorkbookError(
      "protected",
      `The sheet "${REGISTER_SHEET}" is protected. Unprotect it under Review, then build again; nothing was written.`,
    );
  if (table.isNullObject)
    return { sheet: true, notes: !notes.isNullObject, copied, keeps, table: null, why: `it has no table named "${REGISTER_TABLE}"` };
  const range = table.getRange();
  range.load("rowIndex,columnIndex,rowCount,columnCount");
  const first = table.getHeaderRowRange();
  first.load("values");
  await context.sync();
  const headings = ((first.values as CellValue[][])[0] ?? []).map(readText);
  const { columns, formulas } = await readColumns(context, table, headings);
  return {
    sheet: true,
    notes: !notes.isNullObject,
    copied,
    keeps,
    why: "",
    table: {
      headings,
      values: columns,
      formulas,
      rows: range.rowCount - 1,
      columns: range.columnCount,
      row: range.rowIndex,
      column: range.columnIndex,
    },
  };
}
const RESULTS = new Set(RESULT_HEADINGS.map(key));
/**
 * The typed columns of the register: values of the input columns, formulas of those that people added, and where the log
 * differs. The worked-out columns hold long sentences and are not read.
 */
export async function readColumns(
  context: Excel.RequestContext,
  table: Excel.Table,
  headings: readonly string[],
): Promise<{ columns: CellValue[][]; formulas: CellValue[][] }> {
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

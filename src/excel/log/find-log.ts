import { findLog } from "../../engine/log/find-log";
import { asGrid } from "../../engine/log/grid";
import { areaAddress, withoutSheet } from "../kit/addresses";
import { readSheets } from "../kit/marks";
import { COPIED_SHEET, HOUSE_SHEET, WORKINGS_SHEET } from "../kit/sheets";
import { WorkbookError } from "../kit/workbook-error";
import type { LogPlace } from "../log-place";
import type { ReadRequest } from "../port";
import { findRegister } from "../register/find-register";
import { looksLikeRegister } from "../register/shape";
import { typesSheet } from "../types/types-sheet";

/** Rows at the top of each sheet in which a heading row is looked for. */
const HEAD = 45;
/** Columns at the left in which it is looked for; a stray cell at the sheet's edge does not make the answer too large. */
const WIDEST = 4000;
export const NO_LOG =
  "No gear log was found. Select the log with its headings, then press Use selection; it needs a heading for the id or for the gear, and two others that are known.";
interface Candidate {
  readonly sheet: string;
  readonly sheetId: string;
  readonly address: string;
  readonly row: number;
  readonly column: number;
  readonly rows: number;
  readonly columns: number;
}
/** Sheets whose tops look like a log, the likeliest first; the register only when there is no other. */
export async function findLogs(context: Excel.RequestContext, request: ReadRequest): Promise<readonly { readonly place: LogPlace }[]> {
  const { worksheets } = context.workbook;
  const tables = context.workbook.tables;
  tables.load("items/name");
  const sheets = await readSheets(context);
  const register = await findRegister(context);
  const types = await typesSheet(context, sheets);
  const ours = [
    ...[...sheets.ours].filter((id) => id !== sheets.marked("register")?.id && id !== sheets.marked("building")?.id),
    sheets.marked("house") ?? sheets.named(HOUSE_SHEET),
    types,
    sheets.marked("listOut"),
    sheets.marked("listExamine"),
    sheets.marked("listLate"),
    sheets.marked("copied") ?? sheets.named(COPIED_SHEET),
    sheets.marked("workings") ?? sheets.named(WORKINGS_SHEET),
  ].flatMap((sheet) => (sheet === null ? [] : [typeof sheet === "string" ? sheet : sheet.id]));
  const used = sheets.all
    .filter(({ id, visible }) => visible && !ours.includes(id))
    .map(({ id, name }) => {
      const sheet = worksheets.getItem(id);
      const range = sheet.getUsedRangeOrNullObject(true);
      range.load("address,rowIndex,columnIndex,rowCount,columnCount");
      return { id, name, sheet, range };
    });
  const tableRanges = tables.items.map((table) => {
    const range = table.getRange();
    range.load("address,rowIndex,columnIndex,rowCount,columnCount");
    table.worksheet.load("name");
    return { table, range };
  });
  await context.sync();

  const heads = used
    .filter(({ range }) => !range.isNullObject)
    .map(({ id, name, sheet, range }) => {
      const head = sheet.getRangeByIndexes(
        range.rowIndex,
        range.columnIndex,
        Math.min(HEAD, range.rowCount),
        Math.min(WIDEST, range.columnCount),
      );
      head.load("values");
      return {
        candidate: {
          sheet: name,
          sheetId: id,
          address: withoutSheet(range.address),
          row: range.rowIndex,
          column: range.columnIndex,
          rows: range.rowCount,
          columns: range.columnCount,
        } satisfies Candidate,
        head,
      };
    });
  await context.sync();

  return heads
    .flatMap(({ candidate, head }) => {
      const found = findLog(asGrid(head.values), request.choices);
      if (found === null) return [];
      // A register that was copied is no log: what is typed in the real one would go unseen.
      const copy = candidate.sheetId !== register?.sheet.id && looksLikeRegister(found.headings.matches.map(({ heading }) => heading));
      return copy ? [] : [{ candidate, found }];
    })
    .sort(
      (a, b) =>
        Number(a.candidate.sheetId === register?.sheet.id) - Number(b.candidate.sheetId === register?.sheet.id) ||
        b.found.score - a.found.score ||
        b.candidate.rows - a.candidate.rows,
    )
    .map(({ candidate, found }) => {
      const { sheet, sheetId, address } = candidate;
      const headingRow = candidate.row + found.headingRow;
      const table = tableRanges.find(
        ({ table: t, range }) => t.worksheet.name === sheet && headingRow >= range.rowIndex && headingRow < range.rowIndex + range.rowCount,
      );
      const isRegister = sheetId === register?.sheet.id;
      if (table)
        return {
          place: {
            sheet,
            sheetId,
            address: withoutSheet(table.range.address),
            how: isRegister ? "register" : "table",
            table: table.table.name,
          },
        };
      return { place: { sheet, sheetId, address, how: isRegister ? "register" : "found", table: "" } };
    });
}
/** A place that was read before, under the name that its sheet has now and as far as the log reaches: rows are added at its end, tables grow and move. */
export async function grownPlace(context: Excel.RequestContext, before: LogPlace): Promise<LogPlace> {
  const sheet = await sheetOf(context, before);
  if (sheet === null) throw gone(before);
  const used = sheet.getUsedRangeOrNullObject(true);
  used.load("address,rowIndex,rowCount");
  const table = sheet.tables.getItemOrNullObject(before.table === "" ? "-" : before.table);
  table.load("name");
  await context.sync();
  if (used.isNullObject) throw gone(before);
  const place: LogPlace = { ...before, sheet: sheet.name, sheetId: sheet.id };
  if (place.how === "found") return { ...place, address: withoutSheet(used.address) };
  const range = table.isNullObject ? sheet.getRange(place.address) : table.getRange();
  range.load("address,rowIndex,columnIndex,rowCount,columnCount");
  await context.sync();
  if (!table.isNullObject) return { ...place, address: withoutSheet(range.address) };
  const bottom = Math.max(range.rowIndex + range.rowCount, used.rowIndex + used.rowCount);
  return { ...place, address: areaAddress(range.rowIndex, range.columnIndex, bottom - range.rowIndex, range.columnCount) };
}
/** The sheet of a place: by its id, which a new name does not change; by its name where an earlier version or another program gave the ids. */
async function sheetOf(context: Excel.RequestContext, { sheet, sheetId }: LogPlace): Promise<Excel.Worksheet | null> {
  const { worksheets } = context.workbook;
  const byId = worksheets.getItemOrNullObject(sheetId ?? sheet);
  const byName = worksheets.getItemOrNullObject(sheet);
  byId.load("id,name");
  byName.load("id,name");
  await context.sync();
  return !byId.isNullObject ? byId : byName.isNullObject ? null : byName;
}
function gone(place: LogPlace): WorkbookError {
  return new WorkbookError(
    "no log",
    `The sheet ${place.sheet} with the log is gone or empty. Find the log again, or select it and press Use selection.`,
  );
}
/** The selected range; a single cell stands for the table around it, else for all that its sheet holds. */
export async function selectionPlace(context: Excel.RequestContext): Promise<LogPlace> {
  const selected = context.workbook.getSelectedRange();
  selected.load("address,cellCount,rowCount,rowIndex,columnIndex");
  // A selection is always on the active sheet.
  const active = context.workbook.worksheets.getActiveWorksheet();
  active.load("id,name");
  const used = active.getUsedRangeOrNullObject(true);
  used.load("address,rowIndex,rowCount");
  const { tables } = context.workbook.worksheets.getActiveWorksheet();
  tables.load("items/name");
  await context.sync();
  const ranges = tables.items.map((table) => {
    const range = table.getRange();
    range.load("address,rowIndex,columnIndex,rowCount,columnCount");
    return { name: table.name, range };
  });
  const trimmed = used.isNullObject ? null : selected.getIntersectionOrNullObject(used);
  trimmed?.load("address");
  await context.sync();

  const { name: sheet, id: sheetId } = active;
  if (used.isNullObject || trimmed === null)
    throw new WorkbookError("no log", "The sheet is empty. Open or type the log first, then select it.");
  const around = ranges.find(
    ({ range }) =>
      selected.rowIndex >= range.rowIndex &&
      selected.rowIndex < range.rowIndex + range.rowCount &&
      selected.columnIndex >= range.columnIndex &&
      selected.columnIndex < range.columnIndex + range.columnCount,
  );
  if (selected.rowCount > 1 && !trimmed.isNullObject)
    return { sheet, sheetId, address: withoutSheet(trimmed.address), how: "selection", table: "" };
  if (around) return { sheet, sheetId, address: withoutSheet(around.range.address), how: "table", table: around.name };
  return { sheet, sheetId, address: withoutSheet(used.address), how: "selection", table: "" };
}

/** The table of the history: found, made, read, added to. Nothing here changes a row that stands. */
import { HISTORY_HEADINGS, historyRow, type HistoryRow } from "../../engine/programme/history";
import type { CellValue } from "../../engine/reading/cell-value";
import { readText } from "../../engine/reading/text";
import { areaAddress, columnLetters } from "../kit/addresses";
import { REQUEST_SIZE, type Sending, sizeOf } from "../kit/in-parts";
import { putMark, type Sheets } from "../kit/marks";
import { readRows } from "../kit/read-in-parts";
import { CAUTION, HISTORY_SHEET, HISTORY_TABLE } from "../kit/sheets";
import { WorkbookError } from "../kit/workbook-error";

const HEAD = 3;
const WIDTHS: Readonly<Partial<Record<(typeof HISTORY_HEADINGS)[number], number>>> = {
  Number: 50,
  Date: 66,
  Id: 70,
  Check: 130,
  Reading: 150,
  Figure: 56,
  Unit: 40,
  Limit: 120,
  Document: 160,
  Clause: 90,
  "Rule sets": 90,
  By: 90,
  Joins: 90,
  Seal: 110,
};
/** Characters of a row in an answer. */
const PER_ROW = 900;
export interface History {
  readonly exists: boolean;
  /** Sheet that a first posting began and did not finish; "" where there is none. */
  readonly begun: string;
  readonly rows: readonly HistoryRow[];
}
/** `known` tells whether the workbook has noted a posting: then a history that is no table any more is not made anew. */
export async function readHistory(context: Excel.RequestContext, sheets: Sheets, known: boolean): Promise<History> {
  const table = context.workbook.tables.getItemOrNullObject(HISTORY_TABLE);
  table.load("name");
  await context.sync();
  if (table.isNullObject) return { exists: false, begun: await begun(context, sheets, known), rows: [] };
  const range = table.getRange();
  range.load("rowCount,columnCount");
  const head = table.getHeaderRowRange();
  head.load("values");
  table.worksheet.load("name");
  await context.sync();
  const headings = ((head.values as CellValue[][])[0] ?? []).map(readText);
  const lost = HISTORY_HEADINGS.filter((heading) => !headings.includes(heading));
  if (lost.length > 0)
    throw new WorkbookError(
      "other shape",
      `The history has no column ${lost.join(", ")}. Put the heading back, then try again; nothing was written.`,
    );
  const size = { rows: range.rowCount - 1, columns: range.columnCount, perRow: PER_ROW };
  const values = await readRows(context, table.getDataBodyRange(), size, "values");
  const rows = values.map((line) => historyRow(Object.fromEntries(HISTORY_HEADINGS.map((h) => [h, cellOf(line[headings.indexOf(h)])]))));
  return { exists: true, begun: "", rows: rows.filter((row) => Object.values(row).some((text) => text !== "")) };
}
async function begun(context: Excel.RequestContext, sheets: Sheets, known: boolean): Promise<string> {
  const found = sheets.marked("history") ?? sheets.named(HISTORY_SHEET);
  if (found === null) return "";
  const sheet = context.workbook.worksheets.getItem(found.id);
  const used = sheet.getUsedRangeOrNullObject(true);
  used.load("address");
  const title = sheet.getRange("A1");
  title.load("values");
  await context.sync();
  if (used.isNullObject) return found.id;
  if (known)
    throw new WorkbookError(
      "other shape",
      `The table of the sheet "${found.name}" is gone. Select its rows with the headings, insert a table there, and name it ${HISTORY_TABLE}; nothing was written.`,
    );
  if (readText((title.values as CellValue[][])[0]?.[0]) !== HISTORY_SHEET)
    throw new WorkbookError(
      "other shape",
      `The sheet "${found.name}" is not the add-in's. Rename it, then try again; nothing was written.`,
    );
  return found.id;
}
/** A cell as it was sealed: all of them were written as text. */
const cellOf = (cell: CellValue): string => (typeof cell === "string" ? cell : readText(cell));
/** Adds rows at the end: through the table, so that rows that somebody else adds meanwhile stay as well. */
export async function addHistory(
  context: Excel.RequestContext,
  sending: Sending,
  sheets: Sheets,
  history: History,
  rows: readonly HistoryRow[],
): Promise<void> {
  const cells = rows.map((row) => HISTORY_HEADINGS.map((heading) => row[heading]));
  let from = 0;
  const part = (): string[][] => {
    let [size, end] = [0, from];
    while (end < cells.length && (end === from || size < REQUEST_SIZE)) size += sizeOf(cells[end++] ?? []);
    const rowsOfPart = cells.slice(from, end);
    from = end;
    return rowsOfPart;
  };
  if (!history.exists) {
    makeTable(context, sheets, history.begun, part());
    await sending.send();
  }
  while (from < cells.length) {
    const some = part();
    context.workbook.tables.getItem(HISTORY_TABLE).rows.add(undefined, some);
    await sending.send();
  }
}
function makeTable(context: Excel.RequestContext, sheets: Sheets, begunSheet: string, rows: string[][]): void {
  const { worksheets } = context.workbook;
  const sheet = worksheets.add(begunSheet === "" ? HISTORY_SHEET : undefined);
  // What a first posting left that was broken off: none of its rows was noted, and all of them are written now.
  if (begunSheet !== "") {
    worksheets.getItem(begunSheet).delete();
    sheet.name = HISTORY_SHEET;
  }
  putMark(context, sheet, "history", sheets.stands("history"));
  const width = HISTORY_HEADINGS.length;
  // Whole columns, so that rows to come are text as well: a size never turns into a date, and what was sealed reads back as it was.
  sheet.getRange(`A:${columnLetters(width - 1)}`).numberFormat = "@" as unknown as string[][];
  sheet.getRange("A1:A2").values = [
    [HISTORY_SHEET],
    [
      `Posting a round adds rows here. They are sealed: "Check history" in the pane names a row that was changed, taken out, put in or moved. ${CAUTION}`,
    ],
  ];
  sheet.getRange("A1").format.font.bold = true;
  sheet.getRange("A1").format.font.size = 14;
  const headings = sheet.getRangeByIndexes(HEAD, 0, 1, width);
  headings.values = [[...HISTORY_HEADINGS]];
  headings.format.font.bold = true;
  sheet.getRangeByIndexes(HEAD + 1, 0, rows.length, width).values = rows;
  const table = sheet.tables.add(areaAddress(HEAD, 0, rows.length + 1, width), true);
  table.name = HISTORY_TABLE;
  table.style = "TableStyleLight1";
  HISTORY_HEADINGS.forEach((heading, column) => {
    sheet.getRangeByIndexes(HEAD, column, 1, 1).format.columnWidth = WIDTHS[heading] ?? 70;
  });
  sheet.freezePanes.freezeRows(HEAD + 1);
  const page = sheet.pageLayout;
  page.orientation = Excel.PageOrientation.landscape;
  page.zoom = { horizontalFitToPages: 1, verticalFitToPages: 0 };
  page.setPrintTitleRows(`$${String(HEAD + 1)}:$${String(HEAD + 1)}`);
}

/** What a sheet looks like around its cells: widths, heights, hidden lines, frozen panes, merged cells, tab, page. */
import type ExcelJS from "exceljs";
import type { Sheet } from "../book/book";
import { fileColor, readColor } from "./colors";
import { readPage, readProtection, writePage, writeProtection } from "./page";
import { readStyle, writeStyle } from "./styles";

/** A file counts widths in characters of seven pixels; a pixel is three quarters of a point. */
const POINTS_PER_CHARACTER = 5.25;
/** Stands for "no width of its own" when the library writes a column that has only a style. */
const LIBRARY_STANDARD_WIDTH = 9;
export function readLayout(from: ExcelJS.Worksheet, to: Sheet, theme: readonly string[]): void {
  to.visibility = from.state === "veryHidden" ? "VeryHidden" : from.state === "hidden" ? "Hidden" : "Visible";
  to.tabColor = readColor(from.properties.tabColor, theme) ?? "";
  const view = (from.views as ExcelJS.Worksheet["views"] | null)?.[0];
  if (view?.state === "frozen") {
    to.frozenRows = view.ySplit ?? 0;
    to.frozenColumns = view.xSplit ?? 0;
  }
  if (view?.showGridLines === false) to.showGridlines = false;
  for (const [at, column] of columnsOf(from).entries()) {
    if (column?.width !== undefined && column.width !== LIBRARY_STANDARD_WIDTH)
      to.columnWidths.set(at, column.width * POINTS_PER_CHARACTER);
    if (column?.hidden) to.hiddenColumns.add(at);
    if ((column?.outlineLevel ?? 0) > 0) to.columnLevels.set(at, column?.outlineLevel ?? 0);
    const style = column ? readStyle(column.style ?? {}, theme) : null;
    const format: unknown = column?.numFmt;
    const own = typeof format === "string" && format !== "General" ? format : undefined;
    if (style || own !== undefined) to.columnDefaults.set(at, { ...(style && { style }), ...(own !== undefined && { format: own }) });
  }
  readPage(from, to);
  readProtection(from, to);
}
/** The library leaves null where a sheet has no columns. */
function columnsOf(from: ExcelJS.Worksheet): (Partial<ExcelJS.Column> | undefined)[] {
  const { columns } = from as unknown as { columns: (Partial<ExcelJS.Column> | undefined)[] | null };
  return columns ?? [];
}
export function writeLayout(from: Sheet, to: ExcelJS.Worksheet, active: boolean): void {
  if (from.tabColor !== "") to.properties.tabColor = fileColor(from.tabColor);
  const frozen = from.frozenRows > 0 || from.frozenColumns > 0;
  const split = { state: "frozen", ySplit: from.frozenRows, xSplit: from.frozenColumns };
  // Only one sheet may be marked as chosen, else typing would go into all of them.
  to.views = [
    {
      ...(frozen ? split : { state: "normal" }),
      showGridLines: from.showGridlines,
      ...(active && { tabSelected: true }),
    } as unknown as ExcelJS.WorksheetView,
  ];
  for (const [at, { format, style }] of from.columnDefaults) to.getColumn(at + 1).style = writeStyle(style, format);
  for (const [at, points] of from.columnWidths) to.getColumn(at + 1).width = points / POINTS_PER_CHARACTER;
  for (const at of from.hiddenColumns) to.getColumn(at + 1).hidden = true;
  for (const [at, level] of from.columnLevels) to.getColumn(at + 1).outlineLevel = level;
  for (const [at, points] of from.rowHeights) to.getRow(at + 1).height = points;
  for (const at of from.hiddenRows) to.getRow(at + 1).hidden = true;
  writePage(from, to);
  writeProtection(from, to);
}

/** Sizes, hidden lines, frozen panes and merged cells of a sheet, as the grid keeps them. Points become pixels. */
import { BooleanNumber, type IFreeze, type IRange, type IWorksheetData, type Worksheet } from "@univerjs/core";
import type { Box, Sheet } from "../book/book";

const PIXELS_PER_POINT = 4 / 3;
const DEFAULT_WIDTH = 72;
const DEFAULT_HEIGHT = 21;
/** About what a character of the grid's font takes, for the height of wrapped texts that a file gives none for. */
const CHARACTER_WIDTH = 6.2;
/** Everything but what the grid itself has given up and fills in. */
type SheetData = Omit<IWorksheetData, "zoomRatio" | "scrollTop" | "scrollLeft">;
export function sheetData(id: string, sheet: Sheet): SheetData {
  const counts = countsOf(sheet);
  return {
    id,
    name: sheet.name,
    tabColor: sheet.tabColor,
    hidden: sheet.visibility === "Visible" ? BooleanNumber.FALSE : BooleanNumber.TRUE,
    freeze: freezeOf(sheet),
    ...counts,
    defaultColumnWidth: DEFAULT_WIDTH,
    defaultRowHeight: DEFAULT_HEIGHT,
    mergeData: sheet.merges.map(rangeOf),
    cellData: {},
    rowData: lines(rowsOf(sheet), sheet.hiddenRows, "h"),
    columnData: lines(widths(sheet), sheet.hiddenColumns, "w"),
    rowHeader: { width: 44 },
    columnHeader: { height: 22 },
    showGridlines: sheet.showGridlines ? BooleanNumber.TRUE : BooleanNumber.FALSE,
    rightToLeft: BooleanNumber.FALSE,
  };
}
/** Brings a sheet that is shown already up to date. */
export function configureSheet(worksheet: Worksheet, sheet: Sheet): void {
  const config = worksheet.getConfig();
  const data = sheetData(config.id, sheet);
  replace(config.rowData, data.rowData);
  replace(config.columnData, data.columnData);
  config.freeze = data.freeze;
  config.showGridlines = data.showGridlines;
  config.rowCount = Math.max(config.rowCount, data.rowCount);
  config.columnCount = Math.max(config.columnCount, data.columnCount);
  if (JSON.stringify(config.mergeData) !== JSON.stringify(data.mergeData)) {
    config.mergeData = data.mergeData;
    worksheet.getSpanModel().rebuild(data.mergeData);
  }
}
function countsOf(sheet: Sheet): { rowCount: number; columnCount: number } {
  const used = sheet.used();
  return {
    rowCount: Math.max(120, used ? used.row + used.rows + 60 : 0),
    columnCount: Math.max(26, used ? used.column + used.columns + 6 : 0),
  };
}
function freezeOf(sheet: Sheet): IFreeze {
  const { frozenRows: rows, frozenColumns: columns } = sheet;
  return { ySplit: rows, xSplit: columns, startRow: rows > 0 ? rows : -1, startColumn: columns > 0 ? columns : -1 };
}
function widths(sheet: Sheet): Map<number, number> {
  return new Map([...sheet.columnWidths].map(([column, points]) => [column, points * PIXELS_PER_POINT]));
}
function rowsOf(sheet: Sheet): Map<number, number> {
  const heights = new Map([...sheet.rowHeights].map(([row, points]) => [row, points * PIXELS_PER_POINT]));
  for (const [row, cells] of sheet.rows) {
    if (heights.has(row)) continue;
    let tallest = 1;
    for (const [column, { value, style }] of cells) {
      if (!style?.wrap || typeof value !== "string") continue;
      const width = (sheet.columnWidths.get(column) ?? DEFAULT_WIDTH * 0.75) * PIXELS_PER_POINT - 6;
      const perLine = Math.max(1, Math.floor(width / ((CHARACTER_WIDTH * (style.size ?? 10)) / 10)));
      const wrapped = value.split("\n").reduce((sum, part) => sum + Math.max(1, Math.ceil(part.length / perLine)), 0);
      tallest = Math.max(tallest, wrapped);
    }
    const largest = Math.max(10, ...[...cells.values()].map((cell) => cell.style?.size ?? 10));
    if (tallest > 1 || largest > 11) heights.set(row, Math.max(DEFAULT_HEIGHT, tallest * largest * 1.55 + 4));
  }
  return heights;
}
function lines(sizes: ReadonlyMap<number, number>, hidden: ReadonlySet<number>, size: "h" | "w"): Record<number, Record<string, number>> {
  const result: Record<number, Record<string, number>> = {};
  for (const [line, pixels] of sizes) result[line] = { [size]: pixels, ...(size === "h" ? { ia: BooleanNumber.FALSE } : {}) };
  for (const line of hidden) result[line] = { ...result[line], hd: BooleanNumber.TRUE };
  return result;
}
function replace(into: Record<number, unknown>, from: Record<number, unknown>): void {
  for (const line of Object.keys(into)) if (!(line in from)) Reflect.deleteProperty(into, line);
  Object.assign(into, from);
}
function rangeOf(box: Box): IRange {
  return { startRow: box.row, endRow: box.row + box.rows - 1, startColumn: box.column, endColumn: box.column + box.columns - 1 };
}

import { asGrid, type Grid } from "../../engine/log/grid";
import type { CellValue } from "../../engine/reading/cell-value";
import { areaAddress } from "../kit/addresses";
import { neighbours, readRows } from "../kit/read-in-parts";
import type { LogPlace } from "../log-place";

/** Cells of a part; what fits into one answer is read at once. */
const CELLS_AT_ONCE = 180_000;
/** Days from 1930 to 2059: numbers that may be dates by their format. */
const mayBeDate = (value: unknown): boolean => typeof value === "number" && value >= 10959 && value <= 58440;
/** Empty rows after which a log has ended: what stands further down is a stray cell, or another matter. */
const END = 1000;
/** A place with more columns than this is looked at first, so that a stray cell far to the right does not widen every row. */
const WIDE = 200;
/** Rows at the top that hold the headings. */
const HEAD = 45;
export interface ReadGrid {
  readonly grid: Grid;
  /** As far as the log reaches. */
  readonly address: string;
  /** True when more stands below the empty rows at its end. */
  readonly more: boolean;
}
const isBlankRow = (row: readonly unknown[]): boolean => row.every((value) => value === "" || value === null);
/** All cells of a place, as far as the log in it reaches; numbers in date formats are told apart. */
export async function readGrid(context: Excel.RequestContext, place: LogPlace): Promise<ReadGrid> {
  const range = context.workbook.worksheets.getItem(place.sheet).getRange(place.address);
  range.load("rowIndex,columnIndex,rowCount,columnCount");
  await context.sync();
  const { rowCount, columnCount: whole } = range;
  const columnCount = whole > WIDE ? await usedWidth(context, range, whole, Math.min(HEAD, rowCount)) : whole;
  const { values, more } = await readToEnd(context, range, rowCount, columnCount);
  const rows = values.length;
  const columns = Array.from({ length: columnCount }, (_, column) => column).filter((column) =>
    values.some((row) => mayBeDate(row[column])),
  );
  for (const run of neighbours(columns)) {
    const formats = await readRows(context, range.getColumn(run.from), { rows, columns: run.count }, "numberFormat");
    for (const [index, row] of values.entries())
      for (let at = 0; at < run.count; at += 1) {
        const value = row[run.from + at];
        if (mayBeDate(value) && isDateFormat(formatOf(formats[index]?.[at]))) row[run.from + at] = { serial: value as number };
      }
  }
  return { grid: asGrid(values), address: areaAddress(range.rowIndex, range.columnIndex, rows, columnCount), more };
}
async function usedWidth(context: Excel.RequestContext, range: Excel.Range, columns: number, rows: number): Promise<number> {
  const head = await readRows(context, range, { rows, columns, perRow: columns * 4 }, "values");
  let width = columns;
  while (width > 1 && head.every((row) => row[width - 1] === "" || row[width - 1] === null)) width -= 1;
  return width;
}
/** Rows from the top, part by part, until the end or until a log has ended. */
async function readToEnd(
  context: Excel.RequestContext,
  range: Excel.Range,
  rows: number,
  columns: number,
): Promise<{ values: CellValue[][]; more: boolean }> {
  const values: CellValue[][] = [];
  const part = Math.max(END, Math.floor(CELLS_AT_ONCE / columns));
  let filled = 0;
  while (values.length < rows) {
    const count = Math.min(part, rows - values.length);
    const block = range.getCell(values.length, 0).getResizedRange(count - 1, columns - 1);
    for (const row of await readRows(context, block, { rows: count, columns }, "values")) {
      values.push(row);
      if (!isBlankRow(row)) filled = values.length;
      else if (values.length - filled >= END) return { values: values.slice(0, Math.max(1, filled)), more: true };
    }
  }
  return { values, more: false };
}
const formatOf = (cell: CellValue): string => (typeof cell === "string" ? cell : "");
/** A number format that shows a date: day, month or year outside quotes, brackets and escapes. */
export function isDateFormat(format: string): boolean {
  const bare = format.replace(/"[^"]*"|\\.|\[[^\]]*\]|_.|\*./g, "");
  return !/^general$/i.test(bare) && /[dy]|m{3}|m[/.-]|[/.-]m/i.test(bare);
}

import { asGrid, type Grid } from "../../engine/log/grid";
import type { CellValue } from "../../engine/reading/cell-value";
import type { LogPlace } from "../log-place";

/** Days from 1930 to 2059: numbers that may be dates by their format. */
const mayBeDate = (value: unknown): boolean => typeof value === "number" && value >= 10959 && value <= 58440;
/** All cells of a place; numbers in date formats are told apart. */
export async function readGrid(context: Excel.RequestContext, place: LogPlace): Promise<Grid> {
  const range = context.workbook.worksheets.getItem(place.sheet).getRange(place.address);
  range.load("values,rowCount,columnCount");
  await context.sync();
  const values = range.values as CellValue[][];
  const columns = Array.from({ length: range.columnCount }, (_, column) => column).filter((column) =>
    values.some((row) => mayBeDate(row[column])),
  );
  const formats = columns.map((column) => {
    const cells = range.getColumn(column);
    cells.load("numberFormat");
    return { column, cells };
  });
  await context.sync();
  for (const { column, cells } of formats)
    for (const [index, row] of values.entries()) {
      const value = row[column];
      if (mayBeDate(value) && isDateFormat((cells.numberFormat as string[][])[index]?.[0] ?? "")) row[column] = { serial: value as number };
    }
  return asGrid(values);
}
/** A number format that shows a date: day, month or year outside quotes, brackets and escapes. */
export function isDateFormat(format: string): boolean {
  const bare = format.replace(/"[^"]*"|\\.|\[[^\]]*\]|_.|\*./g, "");
  return !/^general$/i.test(bare) && /[dy]|m{3}|m[/.-]|[/.-]m/i.test(bare);
}

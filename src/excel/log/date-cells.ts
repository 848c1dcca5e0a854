import { asGrid, type Grid } from "../../engine/log/grid";
import { neighbours, readRows } from "../kit/read-in-parts";
import type { LogPlace } from "../log-place";

/** Days from 1930 to 2059: numbers that may be dates by their format. */
const mayBeDate = (value: unknown): boolean => typeof value === "number" && value >= 10959 && value <= 58440;
/** All cells of a place; numbers in date formats are told apart. */
export async function readGrid(context: Excel.RequestContext, place: LogPlace): Promise<Grid> {
  const range = context.workbook.worksheets.getItem(place.sheet).getRange(place.address);
  range.load("rowCount,columnCount");
  await context.sync();
  const { rowCount: rows, columnCount } = range;
  const values = await readRows(context, range, { rows, columns: columnCount }, "values");
  const columns = Array.from({ length: columnCount }, (_, column) => column).filter((column) =>
    values.some((row) => mayBeDate(row[column])),
  );
  for (const run of neighbours(columns)) {
    const formats = await readRows(context, range.getColumn(run.from), { rows, columns: run.count }, "numberFormat");
    for (const [index, row] of values.entries())
      for (let at = 0; at < run.count; at += 1) {
        const value = row[run.from + at];
        if (mayBeDate(value) && isDateFormat(String(formats[index]?.[at] ?? ""))) row[run.from + at] = { serial: value as number };
      }
  }
  return asGrid(values);
}
/** A number format that shows a date: day, month or year outside quotes, brackets and escapes. */
export function isDateFormat(format: string): boolean {
  const bare = format.replace(/"[^"]*"|\\.|\[[^\]]*\]|_.|\*./g, "");
  return !/^general$/i.test(bare) && /[dy]|m{3}|m[/.-]|[/.-]m/i.test(bare);
}

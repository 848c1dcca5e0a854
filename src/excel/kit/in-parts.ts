/** A cell to write; text begins with an apostrophe where the column is not a text column. */
export type Written = string | number | boolean;
/** Characters of cell text in one request: well below the 5 MB limit of the web host. */
export const REQUEST_SIZE = 2_500_000;
/** Text cells from A1 on; the sheet held the same sort of cells before. */
export async function writeInParts(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  rows: readonly (readonly string[])[],
): Promise<void> {
  sheet.getRange().clear();
  const width = rows[0]?.length ?? 1;
  sheet.getRangeByIndexes(0, 0, rows.length, width).numberFormat = "@" as unknown as string[][];
  let start = 0;
  while (start < rows.length) {
    let size = 0,
      end = start;
    while (end < rows.length && size < REQUEST_SIZE) size += sizeOf(rows[end++] ?? []);
    sheet.getRangeByIndexes(start, 0, end - start, width).values = rows.slice(start, end) as string[][];
    // As for the rows of the register.
    // eslint-disable-next-line office-addins/no-context-sync-in-loop
    await context.sync();
    start = end;
  }
}
export const sizeOf = (row: readonly Written[]): number =>
  row.reduce((sum: number, cell) => sum + (typeof cell === "string" ? cell.length + 3 : 8), 2);

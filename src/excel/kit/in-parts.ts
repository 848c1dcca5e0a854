/** Writing by requests that stay below the limit of the web host. */

/** A cell to write; text begins with an apostrophe where the column is not a text column. */
export type Written = string | number | boolean;
/** Characters of cell text in one request: well below the 5 MB limit of the web host. */
export const REQUEST_SIZE = 2_500_000;
export const sizeOf = (row: readonly Written[]): number =>
  row.reduce((sum: number, cell) => sum + (typeof cell === "string" ? cell.length + 3 : 8), 2);
/** Collects writes until a request is full. */
export class Sending {
  /** True once a request that writes was sent, whatever came back. */
  wrote = false;
  private readonly context: Excel.RequestContext;
  private size = 0;

  constructor(context: Excel.RequestContext) {
    this.context = context;
  }

  /** Makes room for a write of about so many characters. */
  async room(size: number): Promise<void> {
    if (this.size > 0 && this.size + size > REQUEST_SIZE) await this.send();
    this.size += size;
  }

  async send(): Promise<void> {
    this.wrote = true;
    this.size = 0;
    await this.context.sync();
  }
}
/** A value for one cell of a grid. */
export interface CellWrite {
  readonly row: number;
  readonly column: number;
  readonly value: Written;
}
/** Writes single cells, those that stand below each other at once; `as` tells whether texts may become formulas. */
export async function writeCells(
  sending: Sending,
  sheet: Excel.Worksheet,
  writes: readonly CellWrite[],
  as: "values" | "formulas",
): Promise<void> {
  const sorted = [...writes].sort((a, b) => a.column - b.column || a.row - b.row);
  let start = 0;
  while (start < sorted.length) {
    const first = sorted[start];
    if (first === undefined) return;
    let end = start + 1;
    let size = sizeOf([first.value]);
    for (
      let next = sorted[end];
      next?.column === first.column && next.row === first.row + end - start && size < REQUEST_SIZE;
      next = sorted[end]
    ) {
      size += sizeOf([next.value]);
      end += 1;
    }
    await sending.room(size + 200);
    sheet.getRangeByIndexes(first.row, first.column, end - start, 1)[as] = sorted.slice(start, end).map(({ value }) => [value]);
    start = end;
  }
}
/** Rows of a block from a cell on. */
export async function writeBlock(
  sending: Sending,
  sheet: Excel.Worksheet,
  at: { readonly row: number; readonly column: number },
  rows: readonly (readonly Written[])[],
  as: "values" | "formulas",
  wrote?: (rows: number) => void,
): Promise<void> {
  let start = 0;
  while (start < rows.length) {
    let size = 0,
      end = start;
    while (end < rows.length && size < REQUEST_SIZE) size += sizeOf(rows[end++] ?? []);
    await sending.room(size);
    const width = rows[start]?.length ?? 1;
    sheet.getRangeByIndexes(at.row + start, at.column, end - start, width)[as] = rows.slice(start, end) as Written[][];
    start = end;
    wrote?.(end);
  }
}
/** Text cells from A1 on, those that differ from what stands. */
export async function writeDifferences(
  sending: Sending,
  sheet: Excel.Worksheet,
  rows: readonly (readonly string[])[],
  before: readonly (readonly string[])[],
): Promise<void> {
  const fresh = before.length === 0;
  const width = rows[0]?.length ?? 1;
  if (fresh || rows.length > before.length || width > (before[0]?.length ?? 0))
    sheet.getRangeByIndexes(0, 0, rows.length, width).numberFormat = "@" as unknown as string[][];
  if (fresh) return writeBlock(sending, sheet, { row: 0, column: 0 }, rows, "values");
  const writes = rows
    .slice(0, before.length)
    .flatMap((line, row) => line.flatMap((value, column) => (value === (before[row]?.[column] ?? "") ? [] : [{ row, column, value }])));
  await writeCells(sending, sheet, writes, "values");
  if (rows.length > before.length) await writeBlock(sending, sheet, { row: before.length, column: 0 }, rows.slice(before.length), "values");
}

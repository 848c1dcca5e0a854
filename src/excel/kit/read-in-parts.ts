/** Reading many rows by requests whose answers stay below the limit of the web host. */
import type { CellValue } from "../../engine/reading/cell-value";

/** Characters that an answer is planned to hold: well below the 5 MB limit. */
const ANSWER_SIZE = 4_000_000;
/** What a cell that people type takes in an answer, before anything is known of it. */
const TYPED_CELL = 22;
/** Whether the workbook refused because its answer would have been too large. */
const tooLarge = (fault: unknown): boolean =>
  typeof fault === "object" && fault !== null && "code" in fault && fault.code === "ResponsePayloadSizeLimitExceeded";
/**
 * Reads the rows of a block. One request where they fit into an answer; where they don't, as many as are needed, and a part
 * that is refused as too large is halved.
 */
export async function readRows(
  context: Excel.RequestContext,
  block: Excel.Range,
  size: { readonly rows: number; readonly columns: number; readonly perRow?: number },
  what: "values" | "formulas" | "numberFormat",
): Promise<CellValue[][]> {
  const read: CellValue[][] = [];
  let step = Math.max(1, Math.min(size.rows, Math.floor(ANSWER_SIZE / (size.perRow ?? size.columns * TYPED_CELL))));
  while (read.length < size.rows) {
    const count = Math.min(step, size.rows - read.length);
    const part = block.getCell(read.length, 0).getResizedRange(count - 1, size.columns - 1);
    // Which property it is, the caller says.
    // eslint-disable-next-line office-addins/no-empty-load
    part.load(what);
    try {
      // One request for each few megabytes.
      // eslint-disable-next-line office-addins/no-context-sync-in-loop
      await context.sync();
    } catch (fault) {
      if (!tooLarge(fault) || count === 1) throw fault;
      step = Math.ceil(count / 2);
      continue;
    }
    // eslint-disable-next-line office-addins/load-object-before-read
    for (const row of part[what] as CellValue[][]) read.push(row);
  }
  return read;
}
/** Runs of neighbouring columns. */
export function neighbours(columns: readonly number[]): readonly { readonly from: number; readonly count: number }[] {
  const runs: { from: number; count: number }[] = [];
  for (const column of [...columns].sort((a, b) => a - b)) {
    const last = runs.at(-1);
    if (last && last.from + last.count === column) last.count += 1;
    else runs.push({ from: column, count: 1 });
  }
  return runs;
}

/** Verdict cells that read #NAME? because the functions were loaded after the workbook: their formulas are written again. */
import type { CellValue } from "../../engine/reading/cell-value";
import { readText } from "../../engine/reading/text";
import { inWorkbook } from "../kit/run";
import { findRegister } from "./find-register";

/** Formulas in one request: each is some 200 characters long, the web host takes 5 MB. */
const CELLS = 5000;
/** Writes formulas that read #NAME? anew and no other cell; returns how many. */
export async function rewriteFormulas(): Promise<number> {
  return inWorkbook(async (context) => {
    const found = await findRegister(context);
    if (found === null) return 0;
    const body = found.table.getDataBodyRange();
    body.load("rowCount");
    const first = body.getRow(0);
    first.load("formulas");
    await context.sync();
    // A register's result columns hold a formula in every row; the typed columns are not touched.
    const columns = ((first.formulas as CellValue[][])[0] ?? []).flatMap((cell, column) =>
      readText(cell).startsWith("=") ? [column] : [],
    );
    let written = 0;
    for (const column of columns)
      for (let row = 0; row < body.rowCount; row += CELLS) {
        const part = body.getCell(row, column).getResizedRange(Math.min(CELLS, body.rowCount - row) - 1, 0);
        part.load("values,formulas");
        // Read and written by parts, so that a long register keeps below the host's limit.
        // eslint-disable-next-line office-addins/no-context-sync-in-loop
        await context.sync();
        const formulas = part.formulas as CellValue[][];
        const runs = namelessRuns(part.values as CellValue[][], formulas);
        for (const { from, count } of runs) {
          part.getCell(from, 0).getResizedRange(count - 1, 0).formulas = formulas.slice(from, from + count);
          written += count;
        }
        // eslint-disable-next-line office-addins/no-context-sync-in-loop
        if (runs.length > 0) await context.sync();
      }
    return written;
  });
}
/** Neighbouring cells with a formula that reads #NAME?. */
function namelessRuns(values: readonly (readonly CellValue[])[], formulas: readonly (readonly CellValue[])[]) {
  const runs: { from: number; count: number }[] = [];
  values.forEach(([value = ""], row) => {
    if (!readText(value).startsWith("#NAME") || !readText(formulas[row]?.[0] ?? "").startsWith("=")) return;
    const last = runs.at(-1);
    if (last && last.from + last.count === row) last.count += 1;
    else runs.push({ from: row, count: 1 });
  });
  return runs;
}

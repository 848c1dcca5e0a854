/** The selected rows of the register that are in sight, and writing a date and a name into them. */
import { field } from "../../engine/columns";
import { key } from "../../engine/log/match-headings";
import type { CellValue } from "../../engine/reading/cell-value";
import { readText } from "../../engine/reading/text";
import { inWorkbook } from "../kit/run";
import { WorkbookError } from "../kit/workbook-error";
import { findRegister, type FoundRegister } from "../register/find-register";
import type { Stamp } from "./plan-stamp";

/** Rows looked at in one go: whether each is hidden is asked row by row. */
const MOST = 1000;
const NO_REGISTER = "There is no register yet. Press Build register first.";
/** Rows of the register's table that are selected and not hidden; the headings count as row 0. */
export async function selectedRows(): Promise<readonly number[]> {
  return inWorkbook(async (context) => {
    const register = await theRegister(context);
    const selected = context.workbook.getSelectedRange();
    selected.load("rowIndex,rowCount");
    const active = context.workbook.worksheets.getActiveWorksheet();
    active.load("id");
    await context.sync();
    if (active.id !== register.sheet.id)
      throw new WorkbookError("no log", `Select rows on the sheet "${register.sheet.name}", then press the button again.`);
    const first = Math.max(selected.rowIndex, register.row + 1);
    const last = Math.min(selected.rowIndex + selected.rowCount - 1, register.row + register.rows);
    if (last < first)
      throw new WorkbookError("no log", "No row of the register is selected. Select rows with items, then press the button again.");
    if (last - first >= MOST)
      throw new WorkbookError("too large", `Select at most ${MOST.toLocaleString("en-US")} rows at once, then press the button again.`);
    const sheet = context.workbook.worksheets.getItem(register.sheet.id);
    const rows = Array.from({ length: last - first + 1 }, (_, index) => {
      const line = sheet.getRangeByIndexes(first + index, register.column, 1, 1);
      line.load("rowHidden");
      return { row: first + index - register.row, line };
    });
    await context.sync();
    return rows.filter(({ line }) => !line.rowHidden).map(({ row }) => row);
  });
}
/** Writes date and name; a row in which another id stands by now stops it before anything is written. */
export async function writeStamp({ rows, day, name }: Stamp): Promise<number> {
  return inWorkbook(async (context) => {
    const register = await theRegister(context);
    const at = (id: "id" | "inspected" | "inspector"): number =>
      register.headings.findIndex((heading) => key(heading) === key(field(id).heading));
    const [ids, dates, names] = [at("id"), at("inspected"), at("inspector")];
    const missing = [...(dates < 0 ? [field("inspected").heading] : []), ...(names < 0 ? [field("inspector").heading] : [])];
    if (missing.length > 0)
      throw new WorkbookError(
        "other shape",
        `The register has no column ${missing.join(" and ")}. Rebuild it, then try again; nothing was written.`,
      );
    const sheet = context.workbook.worksheets.getItem(register.sheet.id);
    const cell = (row: number, column: number): Excel.Range => sheet.getRangeByIndexes(register.row + row, register.column + column, 1, 1);
    const held = rows.map(({ row, id }) => {
      const range = cell(row, ids);
      range.load("values");
      return { id, range };
    });
    await context.sync();
    if (held.some(({ id, range }) => readText((range.values as CellValue[][])[0]?.[0]) !== id))
      throw new WorkbookError("other shape", "The register's rows were moved meanwhile. Select them again; nothing was written.");
    for (const { row } of rows) {
      const date = cell(row, dates);
      date.numberFormat = "yyyy-mm-dd" as unknown as string[][];
      date.values = [[day]];
      const by = cell(row, names);
      by.numberFormat = "@" as unknown as string[][];
      by.values = [[name]];
    }
    await context.sync();
    return rows.length;
  });
}
async function theRegister(context: Excel.RequestContext): Promise<FoundRegister> {
  const found = await findRegister(context);
  if (found === null) throw new WorkbookError("no log", NO_REGISTER);
  return found;
}

/** Putting values into the book, with what Excel does by itself around it: headings kept unique, tables grown. */
import { intersection } from "../../book/address";
import type { Box, Cell, Sheet, Table } from "../../book/book";
import type { HostState } from "../protocol/state";
import { enter, requireCellValue, requireMovable, requireUnlocked, spread } from "./cells";
import { growTables } from "./grow";
import { headingsOf, mendHeadings } from "./headings";

/** Writes `given`, one value or rows of values, into a box. */
export function writeValues(
  state: HostState,
  sheet: Sheet,
  box: Box,
  given: unknown,
  by: "user" | "coauthor" | "add-in",
  location: string,
): void {
  if (given === null) return;
  requireMovable(given, box, location);
  const rows = spread(given, box, location);
  for (const row of rows) for (const value of row) requireCellValue(value, location);
  requireUnlocked(sheet, box, location);
  const before = box.rows * box.columns === 1 ? copyOf(sheet.cell(box.row, box.column)) : undefined;
  const headed = tablesHeadedIn(state, sheet, box);
  const year = state.year();
  for (const [down, row] of rows.entries()) {
    for (const [right, value] of row.entries()) {
      const place = [box.row + down, box.column + right] as const;
      // Nothing is made only to be empty.
      if (value !== null && (value !== "" || sheet.cell(...place))) enter(sheet.at(...place), value, year);
    }
  }
  for (const { table, headings } of headed) mendHeadings(state, table, headings);
  growTables(state, sheet, box);
  state.tellCells(sheet, box, by, before);
}
function copyOf(cell: Cell | undefined): Cell {
  return cell ? { ...cell } : { value: null };
}
function tablesHeadedIn(state: HostState, sheet: Sheet, box: Box): { table: Table; headings: string[] }[] {
  return state.book.tables
    .filter((table) => table.sheet === sheet && intersection({ ...table.box, rows: 1 }, box) !== null)
    .map((table) => ({ table, headings: headingsOf(table) }));
}

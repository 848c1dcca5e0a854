/** Styles of a box: one answer when all cells agree, null when they don't. */
import { bottomOf, isWholeColumns, rightOf } from "../../book/address";
import type { Box, Cell, CellStyle, Sheet } from "../../book/book";
import type { HostState } from "../protocol/state";
import { cellCount, forEachCell, forFormat, requireUnlocked, tellable } from "./cells";

type Read<T> = (style: CellStyle | undefined) => T;
/** What `read` finds in every cell of the box, or null when cells differ. */
export function sharedStyle<T>(sheet: Sheet, box: Box, read: Read<T>): T | null {
  const found = new Set<T>();
  let cells = 0;
  forEachCell(sheet, box, (cell) => {
    cells += 1;
    found.add(read(cell.style));
  });
  if (cells < cellCount(box)) {
    // Cells that were never touched look as their column says.
    const columns =
      isWholeColumns(box) || sheet.columnDefaults.size > 0
        ? Array.from({ length: Math.min(box.columns, 16_384) }, (_, at) => box.column + at)
        : [];
    if (columns.length === 0) found.add(read(undefined));
    for (const column of columns) if (untouchedIn(sheet, box, column)) found.add(read(sheet.columnDefaults.get(column)?.style));
  }
  return found.size === 1 ? ([...found][0] ?? null) : null;
}
function untouchedIn(sheet: Sheet, box: Box, column: number): boolean {
  if (box.rows > sheet.rows.size) return true;
  for (let row = box.row; row <= bottomOf(box); row += 1) if (!sheet.cell(row, column)) return true;
  return false;
}
export function restyle(state: HostState, sheet: Sheet, box: Box, location: string, change: (style: CellStyle) => void): void {
  requireFormatAllowed(sheet, box, location);
  forFormat(sheet, box, location, (target: Pick<Cell, "style">) => {
    target.style ??= {};
    change(target.style);
  });
  state.book.tell({ kind: "style", sheet, box: tellable(sheet, box) });
}
export function requireFormatAllowed(sheet: Sheet, box: Box, location: string): void {
  if (sheet.protection?.options["allowFormatCells"] !== true) requireUnlocked(sheet, box, location);
}
/** The rows or columns of a box, for widths and heights. */
export function linesOf(first: number, count: number): number[] {
  return Array.from({ length: count }, (_, at) => first + at);
}
export function columnsOf(box: Box): number[] {
  return linesOf(box.column, rightOf(box) - box.column + 1);
}

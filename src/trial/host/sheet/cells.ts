/** Reading and writing the cells of a box. */
import { bottomOf, boxBetween, isWholeColumns, rightOf } from "../../book/address";
import type { Box, Cell, Sheet } from "../../book/book";
import { isTextFormat, readEntry } from "../../book/entry";
import { accessDenied, HostError, invalidArgument, notModelled } from "../../book/errors";
import { faultOf, hasRelativeReference } from "../../book/formula-text";

/** More cells than this are not handed out at once; Excel answers null then. */
export const MOST_CELLS = 5_000_000;
export const LONGEST_TEXT = 32_767;
export function cellCount(box: Box): number {
  return box.rows * box.columns;
}
/** Rows of `of(cell)`, or null when the box is too large to answer. */
export function gridOf<T>(sheet: Sheet, box: Box, of: (cell: Cell | undefined, row: number, column: number) => T): T[][] | null {
  if (cellCount(box) > MOST_CELLS) return null;
  const rows: T[][] = [];
  for (let row = box.row; row <= bottomOf(box); row += 1) {
    const cells = sheet.rows.get(row);
    const line: T[] = [];
    for (let column = box.column; column <= rightOf(box); column += 1) line.push(of(cells?.get(column), row, column));
    rows.push(line);
  }
  return rows;
}
/** Visits the cells that exist. */
export function forEachCell(sheet: Sheet, box: Box, visit: (cell: Cell, row: number, column: number) => void): void {
  const each = (row: number, cells: Map<number, Cell>): void => {
    for (const [column, cell] of cells) if (column >= box.column && column <= rightOf(box)) visit(cell, row, column);
  };
  if (box.rows > sheet.rows.size) {
    for (const [row, cells] of sheet.rows) if (row >= box.row && row <= bottomOf(box)) each(row, cells);
    return;
  }
  for (let row = box.row; row <= bottomOf(box); row += 1) {
    const cells = sheet.rows.get(row);
    if (cells) each(row, cells);
  }
}
export function isBlank(cell: Cell | undefined): boolean {
  return !cell || (cell.value === null && cell.error === undefined && cell.formula === undefined);
}
export function isFormatted(cell: Cell): boolean {
  return (cell.format !== undefined && cell.format !== "General") || (cell.style !== undefined && Object.keys(cell.style).length > 0);
}
/** The part of `box` in use: with a value or a formula, or, unless `valuesOnly`, with a format. */
export function usedBox(sheet: Sheet, box: Box, valuesOnly: boolean): Box | null {
  let top = Infinity,
    left = Infinity,
    bottom = -1,
    right = -1;
  forEachCell(sheet, box, (cell, row, column) => {
    if (isBlank(cell) && (valuesOnly || !isFormatted(cell))) return;
    top = Math.min(top, row);
    bottom = Math.max(bottom, row);
    left = Math.min(left, column);
    right = Math.max(right, column);
  });
  return bottom < 0 ? null : boxBetween(top, left, bottom, right);
}
export function requireUnlocked(sheet: Sheet, box: Box, location: string): void {
  if (!sheet.protected) return;
  if (cellCount(box) > MOST_CELLS) throw accessDenied(location);
  const locked = gridOf(
    sheet,
    box,
    (cell, _row, column) => (cell?.style?.locked ?? sheet.columnDefaults.get(column)?.style?.locked) !== false,
  );
  if (locked?.some((row) => row.includes(true))) throw accessDenied(location);
}
/** Brings an argument to rows and columns: one value stands for every cell. */
export function spread(given: unknown, box: Box, location: string): unknown[][] {
  if (!Array.isArray(given)) {
    if (cellCount(box) > MOST_CELLS) throw notModelled(`${location} with one value for ${String(cellCount(box))} cells`);
    return Array.from({ length: box.rows }, () => Array<unknown>(box.columns).fill(given));
  }
  const rows: unknown[] = given;
  const fits = rows.length === box.rows && rows.every((row) => Array.isArray(row) && row.length === box.columns);
  if (!fits) {
    throw invalidArgument("The number of rows or columns in the input array doesn't match the size or dimensions of the range.", location);
  }
  return rows as unknown[][];
}
/** One value for a whole box can't hold an address that would have to move from cell to cell. */
export function requireMovable(given: unknown, box: Box, location: string): void {
  const scalarFormula = typeof given === "string" && given.startsWith("=") && cellCount(box) > 1;
  if (scalarFormula && hasRelativeReference(given))
    throw notModelled(`${location} with one formula that holds relative addresses (${given})`);
}
/** Throws when `value` is nothing that a cell takes. */
export function requireCellValue(value: unknown, location: string): void {
  if (value === null || typeof value === "boolean") return;
  if (typeof value === "number" && Number.isFinite(value)) return;
  if (typeof value !== "string") throw invalidArgument(undefined, location);
  if (value.length > LONGEST_TEXT) throw invalidArgument(`A cell takes at most ${String(LONGEST_TEXT)} characters.`, location);
  const fault = value.startsWith("=") && value.length > 1 ? faultOf(value) : null;
  if (fault !== null) throw invalidArgument(`Excel can't take the formula ${value}: ${fault}.`, location);
}
/** Empties a cell of value and formula; format and style stay. */
export function emptyCell(cell: Cell): void {
  cell.value = null;
  delete cell.error;
  delete cell.message;
  delete cell.formula;
  delete cell.spill;
}
/** Puts a value into a cell as Excel does; null leaves it alone, "" empties it. */
export function enter(cell: Cell, value: unknown, year: number): void {
  if (value === null) return;
  emptyCell(cell);
  if (value === "") return;
  if (typeof value !== "string") {
    if (typeof value !== "number" && typeof value !== "boolean")
      throw new HostError("GeneralException", `A cell can't hold ${typeof value}.`);
    cell.value = isTextFormat(cell.format) ? String(value).toUpperCase() : value;
    return;
  }
  const entered = readEntry(value, cell.format, year);
  cell.value = entered.value;
  if (entered.error !== undefined) cell.error = entered.error;
  if (entered.format !== undefined) cell.format = entered.format;
  if (entered.formula !== undefined) {
    cell.formula = entered.formula;
    // Shown until a calculator has been here.
    cell.error = "#BUSY!";
  }
}
/** Visits every cell that a format goes to; whole columns also keep the format for cells to come. */
export function forFormat(sheet: Sheet, box: Box, location: string, change: (target: Pick<Cell, "format" | "style">) => void): void {
  if (isWholeColumns(box)) {
    for (let column = box.column; column <= rightOf(box); column += 1) {
      const defaults = sheet.columnDefaults.get(column) ?? {};
      change(defaults);
      sheet.columnDefaults.set(column, defaults);
    }
    forEachCell(sheet, box, change);
    return;
  }
  if (cellCount(box) > MOST_CELLS) throw notModelled(`${location} of ${String(cellCount(box))} cells that are no whole columns`);
  for (let row = box.row; row <= bottomOf(box); row += 1) {
    for (let column = box.column; column <= rightOf(box); column += 1) change(sheet.at(row, column));
  }
}
/** A box for listeners: whole columns and rows are cut down to the cells that exist. */
export function tellable(sheet: Sheet, box: Box): Box {
  if (cellCount(box) <= MOST_CELLS) return box;
  let top = Infinity,
    left = Infinity,
    bottom = -1,
    right = -1;
  forEachCell(sheet, box, (_cell, row, column) => {
    top = Math.min(top, row);
    bottom = Math.max(bottom, row);
    left = Math.min(left, column);
    right = Math.max(right, column);
  });
  return bottom < 0 ? { row: box.row, column: box.column, rows: 1, columns: 1 } : boxBetween(top, left, bottom, right);
}

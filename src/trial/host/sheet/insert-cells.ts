/** Making room in a sheet: cells move to the right within some rows, and all that refers to them follows, as in Excel. */
import { bottomOf, columnLetters, columnNumber, holds, intersection, rightOf } from "../../book/address";
import type { Box, Cell, Sheet } from "../../book/book";
import { invalidArgument } from "../../book/errors";
import { piecesOf } from "../../book/formula-text";
import { changeFormulas } from "../../book/formulas";
import type { HostState } from "../protocol/state";

/** Moves the cells of `band` from its first column on, all the way to the right, by one column. Widths stay with the sheet's columns. */
export function insertColumnOfCells(
  state: HostState,
  sheet: Sheet,
  band: { row: number; rows: number; column: number },
  location: string,
): void {
  const moved: Box = { ...band, columns: 16_384 - band.column };
  const { book } = state;
  for (const table of book.tables) {
    if (table.sheet !== sheet || !intersection(table.box, moved) || table.box.column < band.column) continue;
    if (!holds(moved, table.box)) throw invalidArgument("Cells of a table can't be moved in part.", location);
  }
  for (let row = band.row; row < band.row + band.rows; row += 1) {
    const cells = sheet.rows.get(row);
    if (!cells) continue;
    const shifted = new Map<number, Cell>();
    for (const [column, cell] of cells) shifted.set(column >= band.column ? column + 1 : column, cell);
    sheet.rows.set(row, shifted);
  }
  for (const table of book.tables)
    if (table.sheet === sheet && holds(moved, table.box)) table.box = { ...table.box, column: table.box.column + 1 };
  const stretched = (box: Box): Box => movedBox(box, band);
  for (const rule of sheet.rules) rule.box = stretched(rule.box);
  for (const validation of sheet.validations) validation.box = stretched(validation.box);
  sheet.merges = sheet.merges.map(stretched);
  changeFormulas(book, (formula, on) => movedReferences(formula, on.name, sheet.name, band));
}
function movedBox(box: Box, band: { row: number; rows: number; column: number }): Box {
  if (box.row < band.row || bottomOf(box) >= band.row + band.rows) return box;
  if (box.column >= band.column) return { ...box, column: box.column + 1 };
  return rightOf(box) >= band.column ? { ...box, columns: box.columns + 1 } : box;
}
const AREA = /(?<![\p{L}\p{N}_.$\\])(\$?)([A-Z]{1,3})(\$?)(\d{1,7})(?::(\$?)([A-Z]{1,3})(\$?)(\d{1,7}))?(?![\p{L}\p{N}_.(!\\])/giu;
/** Addresses into the rows that moved; whole columns and rows stay. */
function movedReferences(formula: string, on: string, sheet: string, band: { row: number; rows: number; column: number }): string {
  const pieces = piecesOf(formula);
  if (!pieces) return formula;
  const wanted = sheet.toLowerCase();
  return pieces
    .map(({ kind, text }, at) => {
      if (kind !== "code") return text;
      const before = pieces[at - 1];
      const quoted = before?.kind === "sheet" ? before.text.slice(1, -1).replaceAll("''", "'").toLowerCase() : null;
      return text.replace(AREA, (found: string, ...parts: unknown[]) => {
        const start = parts[8] as number;
        const name = /([\p{L}\p{N}_.]+)!$/u.exec(text.slice(0, start))?.[1]?.toLowerCase();
        const target = text.charAt(start - 1) !== "!" ? on.toLowerCase() : start === 1 && quoted !== null ? quoted : (name ?? "");
        if (target !== wanted) return found;
        const [d1, left = "", d2, top = "", d3, right, d4, bottom] = parts as (string | undefined)[];
        const box: Box = {
          row: Number(top) - 1,
          column: columnNumber(left),
          rows: Number(bottom ?? top) - Number(top) + 1,
          columns: columnNumber(right ?? left) - columnNumber(left) + 1,
        };
        const now = movedBox(box, band);
        const first = `${d1 ?? ""}${columnLetters(now.column)}${d2 ?? ""}${top}`;
        return right === undefined ? first : `${first}:${d3 ?? ""}${columnLetters(rightOf(now))}${d4 ?? ""}${bottom ?? ""}`;
      });
    })
    .join("");
}

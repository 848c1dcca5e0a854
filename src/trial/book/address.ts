/** Cell addresses in A1 style and the boxes they stand for. */
import type { Box } from "./book";

export const LAST_ROW = 1_048_576;
export const LAST_COLUMN = 16_384;
export function columnLetters(column: number): string {
  let letters = "";
  for (let rest = column + 1; rest > 0; rest = Math.floor((rest - 1) / 26)) {
    letters = String.fromCharCode(65 + ((rest - 1) % 26)) + letters;
  }
  return letters;
}
export function columnNumber(letters: string): number {
  let number = 0;
  for (const letter of letters.toUpperCase()) number = number * 26 + letter.charCodeAt(0) - 64;
  return number - 1;
}
interface Corner {
  row: number | null;
  column: number | null;
}
function parseCorner(text: string): Corner | null {
  const parts = /^\$?([A-Z]{1,3})?\$?([1-9]\d{0,6})?$/i.exec(text);
  if (!parts || (parts[1] === undefined && parts[2] === undefined)) return null;
  const corner = {
    row: parts[2] === undefined ? null : Number(parts[2]) - 1,
    column: parts[1] === undefined ? null : columnNumber(parts[1]),
  };
  return (corner.row ?? 0) < LAST_ROW && (corner.column ?? 0) < LAST_COLUMN ? corner : null;
}
/** `B2`, `B2:D9`, whole columns `A:C`, whole rows `2:3`; null when the text is none of these. */
export function parseBox(text: string): Box | null {
  const ends = text.trim().split(":");
  const first = parseCorner(ends[0] ?? "");
  const second = ends.length === 1 ? first : parseCorner(ends[1] ?? "");
  if (!first || !second || ends.length > 2) return null;
  // "A" or "2" alone is no range, and "A:2" mixes two kinds.
  if (ends.length === 1 && (first.row === null || first.column === null)) return null;
  if ((first.row === null) !== (second.row === null) || (first.column === null) !== (second.column === null)) return null;
  const rows = [first.row ?? 0, second.row ?? LAST_ROW - 1];
  const columns = [first.column ?? 0, second.column ?? LAST_COLUMN - 1];
  return boxBetween(Math.min(...rows), Math.min(...columns), Math.max(...rows), Math.max(...columns));
}
export function boxBetween(top: number, left: number, bottom: number, right: number): Box {
  return { row: top, column: left, rows: bottom - top + 1, columns: right - left + 1 };
}
export function isWholeColumns(box: Box): boolean {
  return box.row === 0 && box.rows === LAST_ROW;
}
export function isWholeRows(box: Box): boolean {
  return box.column === 0 && box.columns === LAST_COLUMN;
}
/** The address inside a sheet; `dollars` writes it absolute. */
export function addressOf(box: Box, dollars = false): string {
  const mark = dollars ? "$" : "";
  const left = mark + columnLetters(box.column),
    right = mark + columnLetters(box.column + box.columns - 1);
  const top = mark + String(box.row + 1),
    bottom = mark + String(box.row + box.rows);
  if (isWholeColumns(box)) return `${left}:${right}`;
  if (isWholeRows(box)) return `${top}:${bottom}`;
  return box.rows === 1 && box.columns === 1 ? left + top : `${left}${top}:${right}${bottom}`;
}
/** A sheet name as it stands before "!" in a formula. */
export function quoteSheet(name: string): string {
  const plain = /^[\p{L}_][\p{L}\p{N}_.]*$/u.test(name) && parseBox(name) === null;
  return plain ? name : `'${name.replace(/'/g, "''")}'`;
}
/** Splits `'My sheet'!A1` into sheet name and address; the sheet is null when none is named. */
export function splitSheet(reference: string): { sheet: string | null; address: string } {
  const mark = reference.lastIndexOf("!");
  if (mark < 0) return { sheet: null, address: reference };
  const name = reference.slice(0, mark);
  const quoted = /^'(.*)'$/.exec(name);
  return { sheet: quoted ? (quoted[1] ?? "").replace(/''/g, "'") : name, address: reference.slice(mark + 1) };
}
export function bottomOf(box: Box): number {
  return box.row + box.rows - 1;
}
export function rightOf(box: Box): number {
  return box.column + box.columns - 1;
}
export function sameBox(a: Box, b: Box): boolean {
  return a.row === b.row && a.column === b.column && a.rows === b.rows && a.columns === b.columns;
}
export function holds(outer: Box, inner: Box): boolean {
  return outer.row <= inner.row && outer.column <= inner.column && bottomOf(outer) >= bottomOf(inner) && rightOf(outer) >= rightOf(inner);
}
export function intersection(a: Box, b: Box): Box | null {
  const top = Math.max(a.row, b.row),
    left = Math.max(a.column, b.column);
  const bottom = Math.min(bottomOf(a), bottomOf(b)),
    right = Math.min(rightOf(a), rightOf(b));
  return top > bottom || left > right ? null : boxBetween(top, left, bottom, right);
}
export function boundingBox(a: Box, b: Box): Box {
  return boxBetween(
    Math.min(a.row, b.row),
    Math.min(a.column, b.column),
    Math.max(bottomOf(a), bottomOf(b)),
    Math.max(rightOf(a), rightOf(b)),
  );
}
/** What is left of `box` when `hole` is cut out: up to four boxes. */
export function without(box: Box, hole: Box): Box[] {
  const cut = intersection(box, hole);
  if (!cut) return [box];
  const rest: Box[] = [];
  if (cut.row > box.row) rest.push(boxBetween(box.row, box.column, cut.row - 1, rightOf(box)));
  if (bottomOf(cut) < bottomOf(box)) rest.push(boxBetween(bottomOf(cut) + 1, box.column, bottomOf(box), rightOf(box)));
  if (cut.column > box.column) rest.push(boxBetween(cut.row, box.column, bottomOf(cut), cut.column - 1));
  if (rightOf(cut) < rightOf(box)) rest.push(boxBetween(cut.row, rightOf(cut) + 1, bottomOf(cut), rightOf(box)));
  return rest;
}

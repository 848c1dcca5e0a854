/** Looking things up, and references that are worked out. */
import { parseBox, splitSheet } from "../../book/address";
import type { SheetFunction } from "../compile";
import { order } from "../operators";
import {
  Area,
  type CellSource,
  each,
  Fault,
  first,
  type Item,
  Matrix,
  NA,
  NO_REFERENCE,
  NOT_A_VALUE,
  numberOf,
  OMITTED,
  settled,
  spread,
  textOf,
  type Value,
} from "../values";
import { type Functions, ofValues } from "./by-item";
import { wildcards } from "./criteria";

function whole(value: Value | undefined, otherwise: number): number | Fault {
  if (value === undefined || value === OMITTED) return otherwise;
  const number = numberOf(first(value));
  return typeof number === "number" ? Math.trunc(number) : number;
}
const index = ofValues((from = null, rowGiven?: Value, columnGiven?: Value) => {
  if (from instanceof Fault) return from;
  const block = from instanceof Area || from instanceof Matrix ? from : new Matrix([[from === OMITTED ? null : from]]);
  let row = whole(rowGiven, 0);
  let column = whole(columnGiven, block.width === 1 ? 1 : 0);
  if (row instanceof Fault) return row;
  if (column instanceof Fault) return column;
  // In a single row the one number counts along it.
  if (columnGiven === undefined && block.height === 1 && block.width > 1) [row, column] = [1, row];
  if (row < 0 || column < 0) return NOT_A_VALUE;
  if (row > block.height || column > block.width) return NO_REFERENCE;
  const [top, height] = row === 0 ? [0, block.height] : [row - 1, 1];
  const [left, width] = column === 0 ? [0, block.width] : [column - 1, 1];
  if (block instanceof Area) return new Area(block.source, block.row + top, block.column + left, height, width);
  const rows = block.rows.slice(top, top + height).map((line) => line.slice(left, left + width));
  return height === 1 && width === 1 ? (rows[0]?.[0] ?? null) : new Matrix(rows);
});
function positionOf(wanted: Item, among: Value, kind: number): Item {
  if (wanted instanceof Fault) return wanted;
  const pattern = kind === 0 && typeof wanted === "string" && /[*?~]/.test(wanted) ? wildcards(wanted, "whole") : null;
  let found = -1;
  each(among, (item, at) => {
    if (item === null || item instanceof Fault || typeof item !== typeof (wanted ?? 0)) return undefined;
    if (kind === 0) {
      if (!(pattern === null ? order(item, wanted) === 0 : pattern.test(textOf(item)))) return undefined;
      found = at;
      return true;
    }
    const than = order(item, wanted);
    if (kind > 0 ? than <= 0 : than >= 0) found = at;
    return undefined;
  });
  return found < 0 ? NA : found + 1;
}
const match = ofValues((wanted = null, among = null, kindGiven) => {
  const kind = whole(kindGiven, 1);
  if (kind instanceof Fault) return kind;
  if (among instanceof Fault) return among;
  const value = settled(wanted);
  return value instanceof Matrix ? spread([value], ([item = null]) => positionOf(item, among, kind)) : positionOf(value, among, kind);
});
const offset = ofValues((from = null, down, right, tall, wide) => {
  if (!(from instanceof Area)) return from instanceof Fault ? from : NOT_A_VALUE;
  const [rows, columns, height, width] = [whole(down, 0), whole(right, 0), whole(tall, from.height), whole(wide, from.width)];
  for (const number of [rows, columns, height, width]) if (number instanceof Fault) return number;
  const row = from.row + Number(rows);
  const column = from.column + Number(columns);
  if (row < 0 || column < 0 || Number(height) < 1 || Number(width) < 1) return NO_REFERENCE;
  return new Area(from.source, row, column, Number(height), Number(width));
});
/** `source` finds a sheet by name; null is the formula's own. */
export function lookups(source: (sheet: string | null) => CellSource | null): Functions {
  const indirect: SheetFunction = ([run], spot) => {
    const text = run === undefined ? NOT_A_VALUE : first(run(spot));
    if (text instanceof Fault) return text;
    const { sheet, address } = splitSheet(textOf(text));
    const box = parseBox(address);
    const cells = source(sheet);
    return box === null || cells === null ? NO_REFERENCE : new Area(cells, box.row, box.column, box.rows, box.columns);
  };
  return { INDEX: index, MATCH: match, OFFSET: offset, INDIRECT: indirect };
}

/** Values on their way through a formula, and how one kind of value becomes another, as in Excel. */
import type { Scalar } from "../book/book";
import { readEntry } from "../book/entry";

/** An error value: what the cell shows, and the sentence behind it. */
export class Fault {
  readonly code: string;
  readonly message: string;

  constructor(code: string, message = "") {
    this.code = code;
    this.message = message;
  }
}
/** What one cell can hold; null is a blank. */
export type Item = Scalar | Fault;
/** Rows of items, all of the same length. */
export class Matrix {
  readonly rows: readonly (readonly Item[])[];

  constructor(rows: readonly (readonly Item[])[]) {
    this.rows = rows;
  }

  get height(): number {
    return this.rows.length;
  }

  get width(): number {
    return this.rows[0]?.length ?? 0;
  }
}
/** Cells of one sheet, zero-based; `source` reads them and brings them up to date first. */
export class Area {
  readonly source: CellSource;
  readonly row: number;
  readonly column: number;
  readonly height: number;
  readonly width: number;

  constructor(source: CellSource, row: number, column: number, height: number, width: number) {
    this.source = source;
    this.row = row;
    this.column = column;
    this.height = height;
    this.width = width;
  }

  /** One cell, counted from the area's corner. */
  item(row: number, column: number): Item {
    return this.source.read(this.row + row, this.column + column);
  }
}
export interface CellSource {
  read(row: number, column: number): Item;
  /** One more than the last row and column that hold anything. */
  readonly bottom: number;
  readonly right: number;
  /** Rows that a filter or a person has hidden. */
  isHidden(row: number): boolean;
}
/** An argument that was left out: `F(1,,2)`. */
export const OMITTED = Symbol("omitted");
export type Value = Item | Matrix | Area | typeof OMITTED;

export const NA = new Fault("#N/A");
export const NOT_A_VALUE = new Fault("#VALUE!");
export const NO_NUMBER = new Fault("#NUM!");
export const NO_REFERENCE = new Fault("#REF!");
export const BY_ZERO = new Fault("#DIV/0!");

export const isMany = (value: Value): value is Matrix | Area => value instanceof Matrix || value instanceof Area;
/** Rows of an area that can hold anything: whole columns end where their sheet does. */
export function usedHeight(area: Area): number {
  return area.height < 10_000 ? area.height : Math.max(0, Math.min(area.height, area.source.bottom - area.row));
}
export function usedWidth(area: Area): number {
  return area.width < 1000 ? area.width : Math.max(0, Math.min(area.width, area.source.right - area.column));
}
/** A single item, or several as a matrix; an omitted argument is a blank. */
export function settled(value: Value): Item | Matrix {
  if (value === OMITTED) return null;
  if (!(value instanceof Area)) return value;
  if (value.height === 1 && value.width === 1) return value.item(0, 0);
  return matrixOf(value);
}
export function matrixOf(value: Value): Matrix {
  if (value instanceof Matrix) return value;
  if (!(value instanceof Area)) return new Matrix([[value === OMITTED ? null : value]]);
  const width = usedWidth(value);
  return new Matrix(
    Array.from({ length: usedHeight(value) }, (_, row) => Array.from({ length: width }, (__, column) => value.item(row, column))),
  );
}
/** The top left item. */
export function first(value: Value): Item {
  const one = settled(value);
  return one instanceof Matrix ? (one.rows[0]?.[0] ?? null) : one;
}
/** Each item, row by row; stops where `visit` returns true, or an error, which is the answer. */
export function each(value: Value, visit: (item: Item, index: number) => Fault | boolean | undefined): Fault | null {
  const stops = (answer: Fault | boolean | undefined): boolean => answer !== undefined && answer !== false;
  const told = (answer: Fault | boolean | undefined): Fault | null => (answer instanceof Fault ? answer : null);
  if (value instanceof Area) {
    const height = usedHeight(value);
    const width = usedWidth(value);
    for (let row = 0, index = 0; row < height; row += 1)
      for (let column = 0; column < width; column += 1, index += 1) {
        const answer = visit(value.item(row, column), index);
        if (stops(answer)) return told(answer);
      }
    return null;
  }
  if (!(value instanceof Matrix)) return told(visit(value === OMITTED ? null : value, 0));
  let index = 0;
  for (const row of value.rows)
    for (const item of row) {
      const answer = visit(item, index++);
      if (stops(answer)) return told(answer);
    }
  return null;
}
/** Works out item by item: what is single goes with each, and what lies outside of a smaller block is #N/A. */
export function spread(values: readonly (Item | Matrix)[], work: (items: Item[]) => Item): Item | Matrix {
  if (!values.some((value) => value instanceof Matrix)) return work(values as Item[]);
  const height = Math.max(...values.map((value) => (value instanceof Matrix ? value.height : 1)));
  const width = Math.max(...values.map((value) => (value instanceof Matrix ? value.width : 1)));
  const at = (value: Item | Matrix, row: number, column: number): Item => {
    if (!(value instanceof Matrix)) return value;
    const line = value.rows[value.height === 1 ? 0 : row];
    const item = line?.[value.width === 1 ? 0 : column];
    return item === undefined ? NA : item;
  };
  return new Matrix(
    Array.from({ length: height }, (_, row) =>
      Array.from({ length: width }, (__, column) => work(values.map((value) => at(value, row, column)))),
    ),
  );
}
/** A number as text, with the 15 figures that Excel keeps. */
export function numberText(value: number): string {
  const text = String(Number(value.toPrecision(15)));
  const [mantissa = "", exponent] = text.split("e");
  if (exponent === undefined) return text;
  const power = Number(exponent);
  if (power < 0 && power >= -9) return value.toFixed(15).replace(/0+$/, "");
  return `${mantissa}E${power < 0 ? "-" : "+"}${String(Math.abs(power)).padStart(2, "0")}`;
}
export function textOf(item: Scalar): string {
  if (item === null) return "";
  if (typeof item === "number") return numberText(item);
  return typeof item === "boolean" ? (item ? "TRUE" : "FALSE") : item;
}
const PLAIN_NUMBER = /^[+-]?(?:\d+\.?\d*|\.\d+)$/;
/** A text that reads as a number, a date or a time is that number; a date without a year is of `year`. */
export function numberIn(text: string, year = new Date().getFullYear()): number | null {
  const trimmed = text.trim();
  if (PLAIN_NUMBER.test(trimmed)) return Number(trimmed);
  if (!/\d/.test(trimmed) || trimmed.startsWith("=") || trimmed.startsWith("'")) return null;
  const { value } = readEntry(trimmed, "General", year);
  return typeof value === "number" ? value : null;
}
export function numberOf(item: Item): number | Fault {
  if (typeof item === "number") return item;
  if (item === null) return 0;
  if (typeof item === "boolean") return item ? 1 : 0;
  return typeof item === "string" ? (numberIn(item) ?? NOT_A_VALUE) : item;
}
/** A condition; a text other than TRUE and FALSE is none. */
export function truthOf(item: Item): boolean | Fault {
  if (typeof item === "boolean") return item;
  if (item === null) return false;
  if (typeof item === "number") return item !== 0;
  if (typeof item !== "string") return item;
  const word = item.toUpperCase();
  return word === "TRUE" ? true : word === "FALSE" ? false : NOT_A_VALUE;
}

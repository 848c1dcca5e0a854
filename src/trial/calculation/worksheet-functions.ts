/**
 * The add-in's worksheet functions as a calculation calls them. A function takes what Excel's own runtime hands over (scalars,
 * and two-dimensional arrays for ranges) and returns a scalar or an array, or throws an error with a code.
 */
import type { Scalar } from "../book/book";
import { ERROR_TEXTS } from "../book/entry";
import type { SheetFunction } from "./compile";
import { Fault, type Item, Matrix, matrixOf, NA, NO_NUMBER, NOT_A_VALUE, OMITTED, textOf, type Value } from "./values";

export type WorksheetFunction = (...values: never[]) => unknown;
/** What a blank cell is handed over as: Excel's builds differ, so each of them can be tried. */
export type BlankMode = "null" | "zero" | "empty";
/** One parameter as `functions.json` declares it; what is absent there is `any` and `scalar`. */
export interface ParameterShape {
  readonly type?: string | undefined;
  readonly dimensionality?: string | undefined;
  readonly repeating?: boolean | undefined;
}
/** Declared parameters by full function name such as `GEAR.VERDICT`. */
export type ParameterShapes = ReadonlyMap<string, readonly ParameterShape[]>;
const BLANK: Readonly<Record<BlankMode, Scalar>> = { null: null, zero: 0, empty: "" };
/** An argument: null stands for one that was left out. */
type Handed = Matrix | null;
type Call = (...values: unknown[]) => unknown;
/**
 * One function of ours for the sheet. `blank` is asked at each call, so the mode can change. Without `shapes` a single cell
 * arrives as a scalar and anything larger as an array. An error among the arguments is the result, as in Excel.
 */
export function worksheetFunction(
  name: string,
  run: WorksheetFunction,
  blank: () => BlankMode,
  shapes?: readonly ParameterShape[],
): SheetFunction {
  if (shapes?.some((shape) => shape.repeating)) throw new Error(`${name} has a repeating parameter, which the trial host does not model.`);
  const call = run as Call;
  const least = shapes?.length ?? run.length;
  return (given, spot) => {
    const handed: Handed[] = [];
    for (const argument of given) {
      const value = argument(spot);
      const block = value === OMITTED ? null : matrixOf(value);
      if (block !== null) for (const row of block.rows) for (const item of row) if (item instanceof Fault) return item;
      handed.push(block);
    }
    while (handed.length < least) handed.push(null);
    return shapes
      ? lifted(call, handed, shapes, blank())
      : called(
          call,
          handed.map((block) => plain(block, blank())),
        );
  };
}
function called(call: Call, values: unknown[]): Value {
  try {
    const result = call(...values);
    if (!Array.isArray(result)) return itemOf(result);
    const rows = (result as unknown[]).map((row) => (Array.isArray(row) ? (row as unknown[]) : [row]).map(itemOf));
    const width = Math.max(0, ...rows.map((row) => row.length));
    return new Matrix(rows.map((row) => (row.length === width ? row : [...row, ...Array.from({ length: width - row.length }, () => NA)])));
  } catch (thrown) {
    return faultOf(thrown);
  }
}
function plain(block: Handed, mode: BlankMode): unknown {
  if (block === null) return null;
  const rows = block.rows.map((items) => items.map((item) => coerced(item, "any", mode)));
  return rows.length === 1 && rows[0]?.length === 1 ? rows[0][0] : rows;
}
/** Calls the function once, or, where a range meets scalar parameters, once for each cell of it, as Excel does. */
function lifted(call: Call, handed: readonly Handed[], shapes: readonly ParameterShape[], mode: BlankMode): Value {
  const scalar = (index: number): boolean => shapes[index]?.dimensionality !== "matrix";
  const type = (index: number): string => shapes[index]?.type ?? "any";
  const spread = handed.filter((_, index) => scalar(index));
  const rows = Math.max(1, ...spread.map((block) => block?.height ?? 1));
  const columns = Math.max(1, ...spread.map((block) => block?.width ?? 1));
  const at = (row: number, column: number): Value => {
    const values: unknown[] = [];
    for (const [index, block] of handed.entries()) {
      if (block === null) {
        values.push(scalar(index) ? null : [[null]]);
        continue;
      }
      if (!scalar(index)) {
        const whole = block.rows.map((items) => items.map((item) => coerced(item, type(index), mode)));
        for (const items of whole) for (const item of items) if (item instanceof Fault) return item;
        values.push(whole);
        continue;
      }
      const item = block.rows[block.height === 1 ? 0 : row]?.[block.width === 1 ? 0 : column];
      if (item === undefined) return NA;
      const value = coerced(item, type(index), mode);
      if (value instanceof Fault) return value;
      values.push(value);
    }
    return called(call, values);
  };
  if (rows === 1 && columns === 1) return at(0, 0);
  return new Matrix(
    Array.from({ length: rows }, (_, row) =>
      Array.from({ length: columns }, (__, column) => {
        const value = at(row, column);
        return value instanceof Matrix ? (value.rows[0]?.[0] ?? null) : (value as Item);
      }),
    ),
  );
}
function coerced(item: Item, type: string, mode: BlankMode): Item {
  if (type === "number") {
    if (item === null) return 0;
    const figure = typeof item === "string" && item.trim() === "" ? NaN : Number(item);
    return Number.isNaN(figure) ? NOT_A_VALUE : figure;
  }
  if (type === "string") return item instanceof Fault ? item : textOf(item);
  if (type === "boolean") return typeof item === "string" ? NOT_A_VALUE : item instanceof Fault ? item : Boolean(item);
  return item ?? BLANK[mode];
}
function itemOf(value: unknown): Item {
  if (typeof value === "number") return Number.isFinite(value) ? value : NO_NUMBER;
  if (typeof value === "boolean" || typeof value === "string") return value;
  // A cell shows 0 for null and undefined, as Excel does.
  return value === null || value === undefined ? 0 : faultOf(value);
}
/** Thrown or returned by a function of ours: what the cell shows, and the sentence behind it. */
function faultOf(thrown: unknown): Fault {
  const { code, message } = thrown as { code?: unknown; message?: unknown };
  return new Fault(ERROR_TEXTS.includes(String(code)) ? String(code) : "#VALUE!", typeof message === "string" ? message : String(thrown));
}
/** Serial day of the local date on this machine. */
export function todaySerial(): number {
  const now = new Date();
  return Math.round(Date.UTC(now.getFullYear(), now.getMonth(), now.getDate()) / 86_400_000) + 25_569;
}

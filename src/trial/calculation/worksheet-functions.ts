/**
 * Worksheet functions as the calculation engine wants them. A function of ours takes what Excel's own runtime hands over
 * (scalars, and two-dimensional arrays for ranges) and returns a scalar or an array, or throws an error with a code.
 */
import {
  ArrayValueObject,
  BaseFunction,
  type BaseReferenceObject,
  type BaseValueObject,
  BooleanValueObject,
  ErrorType,
  ErrorValueObject,
  type FunctionVariantType,
  NumberValueObject,
  StringValueObject,
} from "@univerjs/engine-formula";
import type { Scalar } from "../book/book";

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
/** Thrown or returned by a function of ours: what the cell shows, and the sentence behind it. */
interface CellError {
  code: string;
  message?: string;
}
/** A value on its way into a function. An omitted argument is `{ omitted: true }`, a blank cell `{ blank: true }`. */
interface Handed {
  value: unknown;
  blank?: true;
  omitted?: true;
}
const ERRORS: ReadonlyMap<string, ErrorType> = new Map(Object.values(ErrorType).map((type) => [type, type]));
const BLANK: Readonly<Record<BlankMode, Scalar>> = { null: null, zero: 0, empty: "" };
/** Signals an error value among the arguments: as in Excel, it is the result. */
class ErrorArgument extends Error {
  readonly object: BaseValueObject;

  constructor(object: BaseValueObject) {
    super("error argument");
    this.object = object;
  }
}
/**
 * Class for the engine around one function of ours. `blank` is asked at each call, so the mode can change. Without
 * `shapes` a single cell arrives as a scalar and anything larger as an array.
 */
export function worksheetFunction(
  name: string,
  run: WorksheetFunction,
  blank: () => BlankMode,
  shapes?: readonly ParameterShape[],
): new (name: string) => BaseFunction {
  if (shapes?.some((shape) => shape.repeating)) throw new Error(`${name} has a repeating parameter, which the trial host does not model.`);
  const call = run as (...values: unknown[]) => unknown;
  return class extends BaseFunction {
    override minParams = 0;
    override maxParams = 255;

    override calculate(...values: BaseValueObject[]): BaseValueObject {
      const mode = blank();
      try {
        const matrices = values.map(matrixOf);
        while (matrices.length < (shapes?.length ?? run.length)) matrices.push([[{ value: null, omitted: true }]]);
        if (!shapes) return boxed(call(...matrices.map((matrix) => plain(matrix, mode))));
        return lifted(call, matrices, shapes, mode);
      } catch (thrown) {
        return thrown instanceof ErrorArgument ? thrown.object : errorObject(thrown);
      }
    }
  };
}
function matrixOf(value: BaseValueObject): Handed[][] {
  const object = (value as FunctionVariantType).isReferenceObject()
    ? (value as unknown as BaseReferenceObject).toArrayValueObject()
    : value;
  if (!object.isArray()) {
    if (object.isError()) throw new ErrorArgument(object);
    return [[object.isNull() ? { value: null, omitted: true } : { value: object.getValue() }]];
  }
  const array = object as ArrayValueObject;
  const rows: Handed[][] = [];
  for (let row = 0; row < array.getRowCount(); row += 1) {
    const cells: Handed[] = [];
    for (let column = 0; column < array.getColumnCount(); column += 1) {
      const cell = array.get(row, column);
      if (cell?.isError()) throw new ErrorArgument(cell);
      cells.push(!cell || cell.isNull() ? { value: null, blank: true } : { value: cell.getValue() });
    }
    rows.push(cells);
  }
  return rows;
}
function plain(matrix: readonly Handed[][], mode: BlankMode): unknown {
  const rows = matrix.map((cells) => cells.map((cell) => coerced(cell, "any", mode)));
  return rows.length === 1 && rows[0]?.length === 1 ? rows[0][0] : rows;
}
/** Calls the function once, or, where a range meets scalar parameters, once for each cell of it, as Excel does. */
function lifted(
  call: (...values: unknown[]) => unknown,
  matrices: readonly Handed[][][],
  shapes: readonly ParameterShape[],
  mode: BlankMode,
): BaseValueObject {
  const scalar = (index: number): boolean => shapes[index]?.dimensionality !== "matrix";
  const type = (index: number): string => shapes[index]?.type ?? "any";
  const spread = matrices.filter((_, index) => scalar(index));
  const rows = Math.max(1, ...spread.map((matrix) => matrix.length));
  const columns = Math.max(1, ...spread.map((matrix) => matrix[0]?.length ?? 1));
  const at = (row: number, column: number): BaseValueObject => {
    try {
      return boxed(
        call(
          ...matrices.map((matrix, index) => {
            if (!scalar(index)) return matrix.map((cells) => cells.map((cell) => coerced(cell, type(index), mode)));
            const cells = matrix.length === 1 ? matrix[0] : matrix[row];
            const cell = cells?.length === 1 ? cells[0] : cells?.[column];
            if (!cell) throw new ErrorArgument(ErrorValueObject.create(ErrorType.NA));
            return coerced(cell, type(index), mode);
          }),
        ),
      );
    } catch (thrown) {
      return thrown instanceof ErrorArgument ? thrown.object : errorObject(thrown);
    }
  };
  if (rows === 1 && columns === 1) return at(0, 0);
  return boxedArray(Array.from({ length: rows }, (_, row) => Array.from({ length: columns }, (__, column) => at(row, column))));
}
function coerced(cell: Handed, type: string, mode: BlankMode): unknown {
  if (cell.omitted) return null;
  if (type === "number") {
    if (cell.blank) return 0;
    const figure = typeof cell.value === "string" && cell.value.trim() === "" ? NaN : Number(cell.value);
    if (Number.isNaN(figure)) throw new ErrorArgument(ErrorValueObject.create(ErrorType.VALUE));
    return figure;
  }
  if (type === "string") {
    if (cell.blank) return "";
    return typeof cell.value === "boolean" ? String(cell.value).toUpperCase() : String(cell.value);
  }
  if (type === "boolean") {
    if (cell.blank) return false;
    if (typeof cell.value === "string") throw new ErrorArgument(ErrorValueObject.create(ErrorType.VALUE));
    return Boolean(cell.value);
  }
  return cell.blank ? BLANK[mode] : cell.value;
}
function boxed(result: unknown): BaseValueObject {
  if (!Array.isArray(result)) return boxedScalar(result);
  return boxedArray((result as unknown[]).map((row) => (Array.isArray(row) ? (row as unknown[]) : [row]).map(boxedScalar)));
}
function boxedArray(rows: BaseValueObject[][]): BaseValueObject {
  return ArrayValueObject.create({
    calculateValueList: rows,
    rowCount: rows.length,
    columnCount: Math.max(0, ...rows.map((row) => row.length)),
    unitId: "",
    sheetId: "",
    row: -1,
    column: -1,
  });
}
function boxedScalar(value: unknown): BaseValueObject {
  if (typeof value === "number") return Number.isFinite(value) ? NumberValueObject.create(value) : ErrorValueObject.create(ErrorType.NUM);
  if (typeof value === "boolean") return BooleanValueObject.create(value);
  if (typeof value === "string") return StringValueObject.create(value);
  // A cell shows 0 for null and undefined, as Excel does.
  if (value === null || value === undefined) return NumberValueObject.create(0);
  return errorObject(value);
}
function errorObject(thrown: unknown): BaseValueObject {
  const { code, message } = thrown as Partial<CellError>;
  const type = ERRORS.get(String(code)) ?? ErrorType.VALUE;
  return ErrorValueObject.create(type, typeof message === "string" ? message : String(thrown));
}
/** TODAY() with a clock that can be set; the engine's own reads the date in UTC. */
export function todayFunction(today: () => number): new (name: string) => BaseFunction {
  return class extends BaseFunction {
    override minParams = 0;
    override maxParams = 0;

    override calculate(): BaseValueObject {
      return NumberValueObject.create(today());
    }
  };
}
/** Serial day of the local date on this machine. */
export function todaySerial(): number {
  const now = new Date();
  return Math.round(Date.UTC(now.getFullYear(), now.getMonth(), now.getDate()) / 86_400_000) + 25_569;
}

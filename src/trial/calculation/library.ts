/**
 * Functions that the register does not use, taken from Univer's library of worksheet functions and handed values only. It is
 * loaded when a workbook holds a formula with one of them.
 */
import {
  ALL_IMPLEMENTED_FUNCTIONS,
  ArrayValueObject,
  type BaseFunction,
  type BaseReferenceObject,
  type BaseValueObject,
  BooleanValueObject,
  ErrorType,
  ErrorValueObject,
  type FunctionVariantType,
  NullValueObject,
  NumberValueObject,
  StringValueObject,
} from "@univerjs/engine-formula";
import type { SheetFunction } from "./compile";
import { Fault, isMany, type Item, Matrix, matrixOf, NOT_A_VALUE, OMITTED, settled, type Value } from "./values";

const CODES: ReadonlyMap<string, ErrorType> = new Map(Object.values(ErrorType).map((type) => [type, type]));
const CLASSES = new Map((ALL_IMPLEMENTED_FUNCTIONS as [new (name: string) => BaseFunction, string][]).map(([made, name]) => [name, made]));
/** The function of that name; null where the library has none. */
export function fromLibrary(name: string): SheetFunction | null {
  const Made = CLASSES.get(name);
  if (Made === undefined) return null;
  const own = new Made(name);
  if (own.needsReferenceObject || own.needsFormulaDataModel || own.needsSheetsInfo) {
    const fault = new Fault("#VALUE!", `${name} is not worked out on the trial page.`);
    return () => fault;
  }
  return (given, spot) => {
    if (given.length < own.minParams || (own.maxParams >= 0 && given.length > own.maxParams)) return NOT_A_VALUE;
    own.setRefInfo("", "", spot.row, spot.column);
    return unboxed(own.calculate(...given.map((run) => boxed(run(spot)))) as FunctionVariantType);
  };
}
function boxed(value: Value): BaseValueObject {
  if (!isMany(value)) return one(value === OMITTED ? null : value);
  const single = settled(value);
  if (!(single instanceof Matrix)) return one(single);
  const { rows, height, width } = matrixOf(value);
  return ArrayValueObject.create({
    calculateValueList: rows.map((row) => row.map(one)),
    rowCount: height,
    columnCount: width,
    unitId: "",
    sheetId: "",
    row: 0,
    column: 0,
  });
}
function one(item: Item): BaseValueObject {
  if (item === null) return NullValueObject.create();
  if (item instanceof Fault) return ErrorValueObject.create(CODES.get(item.code) ?? ErrorType.VALUE, item.message);
  if (typeof item === "number") return NumberValueObject.create(item);
  return typeof item === "boolean" ? BooleanValueObject.create(item) : StringValueObject.create(item);
}
function unboxed(result: FunctionVariantType): Value {
  const object = result.isReferenceObject() ? (result as BaseReferenceObject).toArrayValueObject() : (result as BaseValueObject);
  if (!object.isArray()) return item(object);
  const array = object as ArrayValueObject;
  return new Matrix(
    Array.from({ length: array.getRowCount() }, (_, row) =>
      Array.from({ length: array.getColumnCount() }, (__, column) => item(array.get(row, column))),
    ),
  );
}
function item(object: ReturnType<ArrayValueObject["get"]>): Item {
  if (!object || object.isNull()) return null;
  if (object.isError()) {
    const failed = object as unknown as ErrorValueObject;
    return new Fault(failed.getErrorType(), failed.getErrorContent());
  }
  return object.getValue();
}

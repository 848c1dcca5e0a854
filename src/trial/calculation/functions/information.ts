/** What a value is, and where it stands. */
import type { SheetFunction } from "../compile";
import { Area, Fault, Matrix, NA, NOT_A_VALUE, OMITTED, type Value } from "../values";
import { type Functions, ofItems, ofValues, withFaults } from "./by-item";

function places(of: (area: Area) => readonly (readonly number[])[], own: (spot: { row: number; column: number }) => number): SheetFunction {
  return ([run], spot) => {
    const value = run?.(spot);
    if (value === undefined || value === OMITTED) return own(spot) + 1;
    if (!(value instanceof Area)) return value instanceof Fault ? value : NOT_A_VALUE;
    const rows = of(value);
    return rows.length === 1 && rows[0]?.length === 1 ? (rows[0][0] ?? 0) : new Matrix(rows);
  };
}
const extent = (of: (value: Area | Matrix) => number): SheetFunction =>
  ofValues((value = null) => (value instanceof Area || value instanceof Matrix ? of(value) : value instanceof Fault ? value : 1));
export const INFORMATION: Functions = {
  ISBLANK: withFaults(1, ([item]) => item === null),
  ISNUMBER: withFaults(1, ([item]) => typeof item === "number"),
  ISTEXT: withFaults(1, ([item]) => typeof item === "string"),
  ISNONTEXT: withFaults(1, ([item]) => typeof item !== "string"),
  ISLOGICAL: withFaults(1, ([item]) => typeof item === "boolean"),
  ISERROR: withFaults(1, ([item]) => item instanceof Fault),
  ISERR: withFaults(1, ([item]) => item instanceof Fault && item.code !== "#N/A"),
  ISNA: withFaults(1, ([item]) => item instanceof Fault && item.code === "#N/A"),
  ISREF: ofValues((value: Value = null) => value instanceof Area),
  N: ofItems(1, ([item = null]) => (typeof item === "number" ? item : item === true ? 1 : 0)),
  T: ofItems(1, ([item = null]) => (typeof item === "string" ? item : "")),
  NA: () => NA,
  ROW: places(
    (area) => Array.from({ length: area.height }, (_, at) => [area.row + at + 1]),
    ({ row }) => row,
  ),
  COLUMN: places(
    (area) => [Array.from({ length: area.width }, (_, at) => area.column + at + 1)],
    ({ column }) => column,
  ),
  ROWS: extent(({ height }) => height),
  COLUMNS: extent(({ width }) => width),
};

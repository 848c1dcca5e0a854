import { field, type FieldId } from "../columns";
import { LEAD_DAYS } from "../due/intervals";
import type { GearKind } from "../gear/kind";
import type { BasisChoice } from "../house/rules-in-force";
import type { Cells } from "../log/cells";
import { exact, type Exact, toNumber } from "../numbers/exact";
import { convert, namedUnit, type NamedUnit, type Unit } from "../numbers/lengths";
import { type Answer, good, none, refusal, unreadable } from "../reading/answer";
import type { CellValue } from "../reading/cell-value";
import { readDate } from "../reading/date";
import { type Length, readLength } from "../reading/length";
import { readCount } from "../reading/number";
import type { Read } from "../reading/read";
import { readText } from "../reading/text";

/** Unit argument, with its multiple: centimetres are tens of millimetres. Blank is an error because a size without a unit says nothing. */
export function unitOf(value: CellValue): Answer<NamedUnit> {
  const text = readText(value);
  const named = text === "" ? null : namedUnit(text);
  return named
    ? good(named)
    : text === ""
      ? none("The unit is missing; type in or mm.")
      : unreadable(`"${text}" is no unit of length; type in or mm.`);
}
export function cells(values: Partial<Record<FieldId, CellValue>>, named: NamedUnit | null, part?: string): Cells {
  return {
    value: (id) => values[id],
    unit: () => named?.unit ?? null,
    heading: (id) => field(id).heading,
    ...(part === undefined ? {} : { part }),
    ...(named === null ? {} : { times: named.times }),
  };
}
/** A length read with a unit argument for bare numbers. */
export const lengthWith = (value: CellValue, named: NamedUnit): Read<Length> =>
  readLength(value, { assume: named.unit, times: named.times });
/** A size in the unit argument's own multiple. */
export const inNamed = (size: Exact, from: Unit, named: NamedUnit): number => toNumber(convert(size, from, named.unit).div(named.times));
const INCHES: NamedUnit = { unit: "in", times: exact(1) };
/**
 * Readings of a pair are in one unit, or each carries its own: a bare one is in the unit that the others carry, and where
 * those differ it is refused. Null where nothing bare has to be assumed, or nothing can be.
 */
export function pairUnit(...readings: readonly CellValue[]): NamedUnit | null {
  const read = readings.filter((r) => readText(r) !== "").map((r) => readLength(r, { assume: null }));
  const carried = new Set(read.flatMap((r) => (r.kind === "value" ? [r.value.unit] : [])));
  const [unit, other] = carried;
  if (unit === undefined) return INCHES;
  return other === undefined && read.some((r) => r.kind === "refused") ? { unit, times: exact(1) } : null;
}
/** Unit that a reading carries in its text, for the gauge beside it. */
export function ownUnit(reading: CellValue): NamedUnit | null {
  const read = readLength(reading, { assume: null });
  return read.kind === "value" ? { unit: read.value.unit, times: exact(1) } : null;
}
/** House limits that are named and not handed over, or that have a row that cannot be read, leave nothing judged. */
export function houseStops(choice: BasisChoice & { readonly ok: true }, kind: GearKind): boolean {
  if (!choice.ids.includes("house")) return false;
  return choice.house === undefined || choice.house.refused.some((row) => row.kind === null || row.kind === kind.id);
}
/** Days ahead that count as due soon; 30 when left out. */
export function leadDaysOf(value: CellValue): Answer<number> {
  const read = readCount(value);
  if (read.kind === "missing") return good(LEAD_DAYS);
  return read.kind === "value" ? good(toNumber(read.value)) : refusal("number of lead days", read);
}
/** A date argument as a serial day. */
export function dateOf(value: CellValue, name: string): Answer<number> {
  const read = readDate(value);
  return read.kind === "value" ? good(read.value) : refusal(name, read);
}

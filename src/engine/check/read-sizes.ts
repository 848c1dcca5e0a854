/** What a check's cells say: readings with their unit, pairs that fit, and the findings where they do not. */
import { field, type FieldId, type FieldType } from "../columns";
import type { Check } from "../gear/kind";
import type { Cells } from "../log/cells";
import { type Exact, ZERO } from "../numbers/exact";
import { convert, showLength, type Unit } from "../numbers/lengths";
import { type Length, readLength } from "../reading/length";
import type { Read } from "../reading/read";
import { fitOf } from "./compare";
import { finding, type Finding } from "./finding";
import type { Situation } from "./in-force";
import { capital } from "../words";

/** What a person types where a reading is missing. */
const TO_TYPE: Readonly<Record<FieldType, string>> = {
  text: "type it",
  choice: "choose it from the list",
  length: "type the size, such as 1 7/8 in or 47.6 mm",
  count: "type a whole number; 0 where there is none",
  angle: "type degrees; 0 where there is none",
  torque: "type the torque, such as 65 lb-ft",
  date: "type the date, such as 2026-03-31",
  sound: "type yes or no",
  fault: "type none or found",
};
export function missingFinding(check: Named, cells: Cells, id: FieldId): Finding {
  return finding("missing", "NO VERDICT", check, { ...columnOf(cells, id), type: TO_TYPE[field(id).type] });
}
export function refusedFinding(check: Named, cells: Cells, id: FieldId, read: { readonly text: string; readonly why: string }): Finding {
  return finding("unreadable", "NO VERDICT", check, { ...columnOf(cells, id), typed: read.text, because: read.why });
}
type Named = Pick<Check, "name" | "part">;
export const columnOf = (cells: Cells, id: FieldId): { readonly field: FieldId; readonly heading: string } => ({
  field: id,
  heading: cells.heading(id),
});
/** The check as it is named for the second direction. */
export const across = (check: Check): Check => ({ ...check, name: `${check.name} across` });
export const length = (cells: Cells, id: FieldId, zero = false): Read<Length> =>
  readLength(cells.value(id), { assume: cells.unit(id), zero, ...(cells.times === undefined ? {} : { times: cells.times }) });
export const lengthShow =
  (unit: Unit) =>
  (value: Exact): string =>
    showLength(value, unit);
/** The reading as a decimal with its unit, and as it was typed where that is a fraction or in feet. */
export const typed = (read: { readonly text: string; readonly value: Length }): string => {
  const figure = showLength(read.value.size, read.value.unit);
  return /\/|\d ?'(?!')/.test(read.text) ? `${figure} (${read.text})` : figure;
};
export interface Pair {
  readonly original: Length;
  readonly measured: Length;
  readonly texts: readonly [string, string];
  readonly notes: readonly string[];
}
/** Findings that stand in the way of a judgement. */
export interface InTheWay {
  readonly inTheWay: readonly Finding[];
}
/** As-new and measured size of one place; what stands in the way comes back as findings, each missing cell by its heading. */
export function readPair(check: Check, cells: Cells, originalId: FieldId, measuredId: FieldId, required: boolean): Pair | InTheWay | null {
  const original = length(cells, originalId);
  const measured = length(cells, measuredId);
  if (!required && measured.kind === "missing" && original.kind !== "refused") return null;
  if (original.kind !== "value" || measured.kind !== "value")
    return { inTheWay: [...unread(check, cells, originalId, original), ...unread(check, cells, measuredId, measured)] };
  const notes = [original.note, measured.note].filter((n) => n !== undefined);
  return { original: original.value, measured: measured.value, texts: [typed(original), typed(measured)], notes };
}
export function unread(check: Check, cells: Cells, id: FieldId, read: Read<Length>): readonly Finding[] {
  if (read.kind === "value") return [];
  return [read.kind === "missing" ? missingFinding(check, cells, id) : refusedFinding(check, cells, id, read)];
}
export const inUnit = (value: Length, unit: Unit): Exact => convert(value.size, value.unit, unit);
export function blurOf(situation: Situation, unit: Unit, readings: 1 | 2): { readonly blur: Exact; readonly gauge: string } {
  if (situation.gauge === null) return { blur: ZERO, gauge: "" };
  const resolution = inUnit(situation.gauge, unit);
  return { blur: readings === 2 ? resolution : resolution.div(2), gauge: showLength(resolution, unit) };
}
/** Change between as-new and measured, or the finding that says why the pair does not fit. */
export function changeOf(
  check: Check,
  cells: Cells,
  original: Length,
  measured: Length,
  texts: readonly [string, string],
  way: "loss" | "growth",
  measuredId: FieldId,
): { readonly used: Exact; readonly unit: Unit; readonly base: Exact; readonly note: string | null } | Finding {
  const unit = original.unit;
  const now = inUnit(measured, unit);
  const fit = fitOf(original.size, now, way === "loss" ? "larger" : "smaller");
  const pair = `${texts[1]} against ${texts[0]} as new`;
  const refused = (why: string): Finding => refusedFinding(check, cells, measuredId, { text: texts[1], why });
  if (fit === "inch in a millimetre column" || fit === "swapped units")
    return refused(`${pair} differ by about 25.4 times, as an inch figure beside a millimetre figure does; check the units`);
  if (fit === "implausible")
    return refused(`${pair} is ${way === "loss" ? "larger" : "smaller"} than new by more than gauge noise; check which column is which`);
  const difference = way === "loss" ? original.size.sub(now) : now.sub(original.size);
  return {
    used: fit === "noise" ? ZERO : difference,
    unit,
    base: original.size,
    note: fit === "noise" ? `${capital(check.name)}: ${pair} is within 2 % gauge noise and counts as no change` : null,
  };
}
/**
 * A share of a size needs no unit: where nothing names one and both figures are bare, they are taken to be in the same.
 * Not with a gauge, whose resolution is in a unit.
 */
export function withoutUnit(
  cells: Cells,
  ids: readonly FieldId[],
  situation: Situation,
): { readonly cells: Cells; readonly free: boolean } {
  if (situation.gauge !== null) return { cells, free: false };
  const given = ids.filter((id) => length(cells, id).kind !== "missing");
  const bare = given.every(
    (id) =>
      cells.unit(id) === null && length(cells, id).kind === "refused" && readLength(cells.value(id), { assume: "in" }).kind === "value",
  );
  if (given.length === 0 || !bare) return { cells, free: false };
  return { cells: { ...cells, unit: (id) => (ids.includes(id) ? "in" : cells.unit(id)) }, free: true };
}

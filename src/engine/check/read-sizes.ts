/** What a check's cells say: readings with their unit, pairs that fit, and the findings where they do not. */
import type { FieldId } from "../columns";
import type { Decision } from "../decision";
import type { Check } from "../gear/kind";
import type { Cells } from "../log/cells";
import { type Exact, ZERO } from "../numbers/exact";
import { convert, showLength, type Unit } from "../numbers/lengths";
import { type Length, readLength } from "../reading/length";
import type { Read } from "../reading/read";
import { fitOf } from "./compare";
import type { Finding } from "./finding";
import type { Situation } from "./in-force";
import { tellMissing, tellRefused } from "./sentences";
import { capital } from "../words";

export function plain(check: Check, decision: Decision, sentence: string, more: Partial<Finding> = {}): Finding {
  return {
    check: check.name,
    part: check.part,
    criterion: null,
    decision,
    measured: null,
    original: null,
    limit: null,
    share: null,
    comesOut: null,
    basis: null,
    source: null,
    overload: false,
    sentence,
    ...more,
  };
}
export function missingFinding(check: Check, cells: Cells, id: FieldId): Finding {
  return plain(check, "NO VERDICT", tellMissing(check.name, cells.heading(id)));
}
export function refusedFinding(check: Check, cells: Cells, id: FieldId, read: { readonly text: string; readonly why: string }): Finding {
  return plain(check, "NO VERDICT", tellRefused(check.name, cells.heading(id), read.text, read.why));
}
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
  const heading = cells.heading(measuredId);
  if (fit === "inch in a millimetre column" || fit === "swapped units")
    return plain(
      check,
      "NO VERDICT",
      tellRefused(
        check.name,
        heading,
        texts[1],
        `${pair} differ by about 25.4 times, as an inch figure beside a millimetre figure does; check the units`,
      ),
    );
  if (fit === "implausible")
    return plain(
      check,
      "NO VERDICT",
      tellRefused(
        check.name,
        heading,
        texts[1],
        `${pair} is ${way === "loss" ? "larger" : "smaller"} than new by more than gauge noise; check which column is which`,
      ),
    );
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

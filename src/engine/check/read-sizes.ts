/** What a check's cells say: readings with their unit, pairs that fit, and the findings where they do not. */
import { field, type FieldId, type FieldType } from "../columns";
import type { Check } from "../gear/kind";
import type { Cells } from "../log/cells";
import { type Exact, ZERO } from "../numbers/exact";
import { convert, showLength, type Unit } from "../numbers/lengths";
import { type Length, readLength } from "../reading/length";
import type { Read } from "../reading/read";
import { Size } from "../reading/size";
import type { Figure } from "./allowance";
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
/** A cell as a size, read once where the row remembers its readings. */
export function sizeOf(cells: Cells, id: FieldId, zero = false): Size {
  if (cells.size !== undefined) return cells.size(id, zero);
  return new Size(
    readLength(cells.value(id), { assume: cells.unit(id), zero, ...(cells.times === undefined ? {} : { times: cells.times }) }),
  );
}
export const length = (cells: Cells, id: FieldId, zero = false): Read<Length> => sizeOf(cells, id, zero).read;
export const lengthShow = (unit: Unit): ((value: Exact) => string) => (unit === "in" ? SHOW_IN : SHOW_MM);
const SHOW_IN = (value: Exact): string => showLength(value, "in");
const SHOW_MM = (value: Exact): string => showLength(value, "mm");
/** The reading as a decimal with its unit, and as it was typed where that is a fraction or in feet. */
export const typed = (read: Read<Length>): string => new Size(read).typed;
/** As-new and measured size of one place. */
export interface Pair {
  readonly original: Size;
  readonly measured: Size;
  readonly was: Length;
  readonly now: Length;
}
/** Findings that stand in the way of a judgement. */
export interface InTheWay {
  readonly inTheWay: readonly Finding[];
}
/** Both sizes of a place; what stands in the way comes back as findings, each missing cell by its heading. */
export function readPair(check: Check, cells: Cells, originalId: FieldId, measuredId: FieldId, required: boolean): Pair | InTheWay | null {
  const original = sizeOf(cells, originalId);
  const measured = sizeOf(cells, measuredId);
  if (original.read.kind === "value" && measured.read.kind === "value")
    return { original, measured, was: original.read.value, now: measured.read.value };
  if (!required && measured.read.kind === "missing" && original.read.kind !== "refused") return null;
  return { inTheWay: [...unread(check, cells, originalId, original.read), ...unread(check, cells, measuredId, measured.read)] };
}
/** Words that stand beside the readings of a pair. */
export function notesOf({ original, measured }: Pair, notes: string[]): void {
  for (const { read } of [original, measured]) if (read.kind === "value" && read.note !== undefined) notes.push(read.note);
}
export function unread(check: Check, cells: Cells, id: FieldId, read: Read<Length>): readonly Finding[] {
  if (read.kind === "value") return [];
  return [read.kind === "missing" ? missingFinding(check, cells, id) : refusedFinding(check, cells, id, read)];
}
export const inUnit = (value: Length, unit: Unit): Exact => convert(value.size, value.unit, unit);
const NO_BLUR = { blur: ZERO, gauge: "" } as const;
export function blurOf({ gauge }: Situation, unit: Unit, readings: 1 | 2): { readonly blur: Exact; readonly gauge: string } {
  if (gauge === null) return NO_BLUR;
  const resolution = inUnit(gauge, unit);
  return { blur: readings === 2 ? resolution : resolution.div(2), gauge: showLength(resolution, unit) };
}
/** Change between as-new and measured, or the finding that says why the pair does not fit. */
export function changeOf(
  check: Check,
  cells: Cells,
  pair: Pair,
  way: "loss" | "growth",
  measuredId: FieldId,
  notes: string[],
): Exact | Finding {
  const { original, measured, was } = pair;
  const now = inUnit(pair.now, was.unit);
  const fit = fitOf(was.size, now, way === "loss" ? "larger" : "smaller");
  if (fit === "as it is") return way === "loss" ? was.size.sub(now) : now.sub(was.size);
  const both = `${measured.typed} against ${original.typed} as new`;
  if (fit === "noise") {
    notes.push(`${capital(check.name)}: ${both} is within 2 % gauge noise and counts as no change`);
    return ZERO;
  }
  const why =
    fit === "slipped point"
      ? `${both} is about ${now.over(was.size) > 50 ? "100" : "10"} times as much, as with a slipped decimal point; check the figure`
      : fit === "implausible"
        ? `${both} is ${way === "loss" ? "larger" : "smaller"} than new by more than gauge noise; check which column is which`
        : `${both} differ by about 25.4 times, as an inch figure beside a millimetre figure does; check the units`;
  return refusedFinding(check, cells, measuredId, { text: measured.typed, why });
}
/** The change of a place that was read when it was new and now, ready to be met with limits. */
export class Change implements Figure {
  readonly used: Exact;
  readonly base: Exact;
  readonly comesOut: "larger" | "smaller";
  readonly unit: Unit;
  readonly show: (value: Exact) => string;
  readonly measured: Size;
  readonly original: Size;
  readonly direction: "across" | undefined;
  readonly on: Size;
  readonly blur: Exact;
  readonly gauge: string;
  constructor(
    { original, measured, was }: Pair,
    used: Exact,
    comesOut: "larger" | "smaller",
    of: Situation,
    direction: "across" | undefined,
  ) {
    const { blur, gauge } = blurOf(of, was.unit, 2);
    this.used = used;
    this.base = was.size;
    this.comesOut = comesOut;
    this.unit = was.unit;
    this.show = lengthShow(was.unit);
    this.measured = measured;
    this.original = original;
    this.direction = direction;
    this.on = original;
    this.blur = blur;
    this.gauge = gauge;
  }
  /** The same for limits whose cap follows a unit of its own; nothing prepared on the size as new holds for it. */
  capped(capUnit: Unit): Figure {
    const { used, base, comesOut, unit, show, measured, original, direction, blur, gauge } = this;
    return { used, base, comesOut, unit, show, measured, original, direction, blur, gauge, capUnit };
  }
}
export const isFinding = (change: Exact | Finding): change is Finding => "why" in change;
/**
 * A share of a size needs no unit: where nothing names one and both figures are bare, they are taken to be in the same.
 * Not with a gauge, whose resolution is in a unit. Null where units are told.
 */
export function withoutUnit(cells: Cells, ids: readonly FieldId[], situation: Situation): Cells | null {
  if (situation.gauge !== null) return null;
  let bare = 0;
  for (const id of ids) {
    const { kind } = length(cells, id);
    if (kind === "missing") continue;
    if (kind === "value" || cells.unit(id) !== null || inInches(cells, id).read.kind !== "value") return null;
    bare += 1;
  }
  if (bare === 0) return null;
  return {
    value: (id) => cells.value(id),
    unit: (id) => (ids.includes(id) ? "in" : cells.unit(id)),
    heading: (id) => cells.heading(id),
    size: (id, zero) => (ids.includes(id) ? inInches(cells, id, zero) : sizeOf(cells, id, zero)),
    ...(cells.part !== undefined && { part: cells.part }),
  };
}
function inInches(cells: Cells, id: FieldId, zero = false): Size {
  return cells.size === undefined ? new Size(readLength(cells.value(id), { assume: "in", zero })) : cells.size(id, zero, "in");
}

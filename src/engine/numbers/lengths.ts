/** Lengths in inches and millimetres, exact in both. */
import { exact, type Exact } from "./exact";

export type Unit = "in" | "mm";
/** 1 in = 25.4 mm exactly (international inch). */
const MM_PER_INCH = exact("25.4");
export interface NamedUnit {
  readonly unit: Unit;
  /** Multiplies the figure as written. */
  readonly times: Exact;
}
const NAMES: ReadonlyMap<string, NamedUnit> = new Map(
  (
    [
      [["in", "ins", "inch", "inches", "in.", '"', "''"], "in", 1],
      [["ft", "foot", "feet", "ft.", "'"], "in", 12],
      [["mm", "mm.", "millimetre", "millimetres", "millimeter", "millimeters"], "mm", 1],
      [["cm", "cm.", "centimetre", "centimetres", "centimeter", "centimeters"], "mm", 10],
      [["m", "metre", "metres", "meter", "meters"], "mm", 1000],
    ] as const
  ).flatMap(([words, unit, times]) => words.map((word) => [word, { unit, times: exact(times) }] as const)),
);
/** Unit named by a word such as `mm`, `"`, `inch` or `cm`; null when the word is no unit. */
export function namedUnit(word: string): NamedUnit | null {
  return NAMES.get(word.trim().toLowerCase()) ?? null;
}
export function convert(value: Exact, from: Unit, to: Unit): Exact {
  if (from === to) return value;
  return from === "in" ? value.mul(MM_PER_INCH) : value.div(MM_PER_INCH);
}
/** Decimals shown: a thousandth of a millimetre, a ten-thousandth of an inch. */
const DECIMALS: Record<Unit, number> = { in: 4, mm: 3 };
/** A length as text with its unit, such as `2.1 in`; trailing zeros are dropped. */
export function showLength(value: Exact, unit: Unit): string {
  return `${showDecimal(value, DECIMALS[unit])} ${unit}`;
}
/** The same, rounded down, for a figure that has to be undercut; null when nothing is left to show. */
export function showFloor(value: Exact, unit: Unit): string | null {
  const shown = value.floor(DECIMALS[unit]);
  return shown.equals(0) ? null : showLength(shown, unit);
}
export function showDecimal(value: Exact, decimals: number): string {
  const text = value.round(decimals).toString(decimals);
  return text.includes("(") ? value.valueOf().toFixed(decimals) : text;
}

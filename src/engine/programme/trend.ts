/** A straight line through dated readings, and the day on which its prediction band can reach a limit. */
import { studentWithin } from "./student";

export interface Reading {
  /** Serial day. */
  readonly day: number;
  readonly value: number;
}
export interface Trend {
  /** Change per day. */
  readonly slope: number;
  readonly readings: number;
  /** First and last day of the readings. */
  readonly from: number;
  readonly to: number;
  /** The line at a day. */
  at(day: number): number;
  /** Half the width of the prediction band of one further reading at a day; 0 where nothing tells the noise, as with two points. */
  band(day: number, confidence: number): number;
}
/** Days of a year, leap years counted. */
export const YEAR = 365.25;
/** What binary fractions may leave of a limit that is met. */
const ROUNDING = 1e-12;
/** Last day that a workbook can hold. */
const LAST_DAY = 2_958_465;
/** The line of least squares; null where fewer than two days are read. */
export function trendOf(readings: readonly Reading[]): Trend | null {
  const n = readings.length;
  const mean = (of: (reading: Reading) => number): number => readings.reduce((sum, reading) => sum + of(reading), 0) / n;
  const [day, value] = [mean((r) => r.day), mean((r) => r.value)];
  let [spread, together, from, to] = [0, 0, Infinity, -Infinity];
  for (const r of readings) {
    spread += (r.day - day) ** 2;
    together += (r.day - day) * (r.value - value);
    from = Math.min(from, r.day);
    to = Math.max(to, r.day);
  }
  if (n < 2 || from === to) return null;
  const slope = together / spread;
  const at = (x: number): number => value + slope * (x - day);
  const residual = readings.reduce((sum, r) => sum + (r.value - at(r.day)) ** 2, 0);
  // Two points say nothing of the noise between them.
  const noise = n > 2 ? Math.sqrt(residual / (n - 2)) : 0;
  const factors = new Map<number, number>();
  const band = (x: number, confidence: number): number => {
    if (noise === 0) return 0;
    let factor = factors.get(confidence);
    if (factor === undefined) factors.set(confidence, (factor = studentWithin(n - 2, confidence)));
    return factor * noise * Math.sqrt(1 + 1 / n + (x - day) ** 2 / spread);
  };
  return { slope, readings: n, from, to, at, band };
}
/**
 * First day, from that of the last reading on, on which the band reaches the limit; null where it does not before the
 * calendar ends. The side of the limit is told by where the line begins. Where the line or a reading is past it, that is the last reading's day.
 */
export function reachesOn(trend: Trend, limit: number, confidence: number): number | null {
  const falls = trend.at(trend.from) > limit;
  const beyond = (day: number): boolean => {
    const edge = trend.band(day, confidence);
    const least = Math.abs(limit) * ROUNDING;
    return falls ? trend.at(day) - edge <= limit + least : trend.at(day) + edge >= limit - least;
  };
  if (beyond(trend.to)) return trend.to;
  // The edge of the band bends towards the limit only: once it is past, it stays there.
  if (!beyond(LAST_DAY)) return null;
  let [before, after] = [trend.to, LAST_DAY];
  while (after - before > 1) {
    const middle = Math.floor((before + after) / 2);
    if (beyond(middle)) after = middle;
    else before = middle;
  }
  return after;
}

/** What the history says of one item: its verdict on a past day as it was recorded, and where its wear leads. Pure. */
import { nextDue as monthsAfter } from "../due/intervals";
import { GEAR } from "../gear/index";
import { exact, toNumber } from "../numbers/exact";
import { convert, showLength, type Unit } from "../numbers/lengths";
import { readDate } from "../reading/date";
import type { ItemResult } from "../report/model";
import { limitWords, lineLimit } from "./comes-out";
import { type HistoryRow, ROUND_HEAD, VERDICT } from "./history";
import { linesOf } from "./lines";
import { isTwoWays, type RoundRequest, situated } from "./round";
import { type Reading, reachesOn, trendOf, YEAR } from "./trend";

export interface PastVerdict {
  readonly verdict: HistoryRow;
  /** What was read and seen for it. */
  readonly readings: readonly HistoryRow[];
}
export const rowsOf = (rows: readonly HistoryRow[], id: string): readonly HistoryRow[] =>
  rows.filter((row) => row.Check !== ROUND_HEAD && row.Id.toLowerCase() === id.toLowerCase());
/** The verdict that stood on a day, never judged anew: the last that is dated on or before it. Null where there is none. */
export function verdictOn(rows: readonly HistoryRow[], id: string, day: number): PastVerdict | null {
  const own = rowsOf(rows, id);
  let found: HistoryRow | null = null;
  let foundDay = -Infinity;
  for (const row of own) {
    const date = readDate(row.Date);
    if (row.Check !== VERDICT || date.kind !== "value" || date.value > day || date.value < foundDay) continue;
    [found, foundDay] = [row, date.value];
  }
  if (found === null) return null;
  const verdict = found;
  return { verdict, readings: own.filter((row) => row.Round === verdict.Round && row.Check !== VERDICT) };
}
export interface CheckTrend {
  readonly check: string;
  readonly unit: Unit;
  /** Readings since the part was new, or since it was replaced. */
  readonly readings: readonly Reading[];
  /** Change per year, in the unit. */
  readonly perYear: number;
  /** Where it comes out, in words; "" where that is not known. */
  readonly limit: string;
  /** First day on which it can reach the limit; null where it does not, or no limit is known. */
  readonly reaches: number | null;
  /** True where a band could be worked out; two readings make a line and nothing more. */
  readonly band: boolean;
  /** The limit can be reached before the next inspection. */
  readonly beforeDue: boolean;
  /** Months after the last reading within which it should be looked at again; null where the next inspection is early enough. */
  readonly months: number | null;
}
const CONFIDENCE = 0.95;
/** Up to 2 % back is the gauge; more is another part. */
const HEALED = exact("0.02");
/** The trends of an item's sizes, those that reach their limit first in front. */
export function trendsOf(
  rows: readonly HistoryRow[],
  item: ItemResult,
  request: Pick<RoundRequest, "headings" | "basis" | "house">,
): readonly CheckTrend[] {
  const kind = GEAR.find(({ id }) => id === item.gear);
  if (kind === undefined) return [];
  const own = rowsOf(rows, item.id);
  const { cells, situation } = situated(item, kind, request);
  const trends = linesOf(kind).flatMap((line): CheckTrend[] => {
    const limit = lineLimit(line, cells, situation, isTwoWays(line, item));
    const larger = line.check.kind === "growth" || line.check.kind === "gap";
    const label = line.label.toLowerCase();
    const mine = own.filter(({ Check }) => Check.toLowerCase() === label || Check.toLowerCase().startsWith(`${label} (`));
    const unit = limit?.unit ?? unitOf(mine);
    if (unit === null) return [];
    const readings = sinceStart(mine, unit, larger);
    const trend = trendOf(readings);
    if (trend === null) return [];
    const reaches = limit === null ? null : reachesOn(trend, toNumber(limit.at), CONFIDENCE);
    const beforeDue = reaches !== null && item.nextDue !== null && reaches <= item.nextDue;
    return [
      {
        check: line.label,
        unit,
        readings,
        perYear: trend.slope * YEAR,
        limit: limit === null ? "" : limitWords(limit, showLength(limit.at, limit.unit)),
        reaches,
        band: trend.band(trend.to, CONFIDENCE) > 0,
        beforeDue,
        months: reaches !== null && beforeDue ? monthsBefore(trend.to, reaches) : null,
      },
    ];
  });
  return trends.sort((a, b) => (a.reaches ?? Infinity) - (b.reaches ?? Infinity));
}
const isUnit = (text: string): text is Unit => text === "in" || text === "mm";
const unitOf = (rows: readonly HistoryRow[]): Unit | null => {
  const last = rows.filter((row) => row.Figure !== "" && isUnit(row.Unit)).at(-1)?.Unit ?? "";
  return isUnit(last) ? last : null;
};
/** Readings in one unit since the last start: another as-new size, or a size that came back, is another part. */
function sinceStart(rows: readonly HistoryRow[], unit: Unit, larger: boolean): readonly Reading[] {
  const dated = rows
    .flatMap((row) => {
      const day = readDate(row.Date);
      if (day.kind !== "value" || row.Figure === "" || !isUnit(row.Unit)) return [];
      return [{ day: day.value, value: toNumber(convert(exact(row.Figure), row.Unit, unit)), asNew: row["As new"] }];
    })
    .sort((a, b) => a.day - b.day);
  // Of several readings of one day the last was posted to put right the others.
  const daily = [...new Map(dated.map((one) => [one.day, one])).values()];
  let start = 0;
  daily.forEach((one, at) => {
    const before = daily[at - 1];
    if (before === undefined) return;
    const back = larger ? before.value - one.value : one.value - before.value;
    if (one.asNew !== before.asNew || back > toNumber(HEALED) * before.value) start = at;
  });
  return daily.slice(start).map(({ day, value }) => ({ day, value }));
}
/** Whole months after a day that end before another; 0 where less than a month is left. */
function monthsBefore(from: number, end: number): number {
  let months = 0;
  while (months < 12 && monthsAfter(from, months + 1) < end) months += 1;
  return months;
}

/** The trend of dated readings, as a worksheet cell asks for it. */
import type { Grid } from "../log/grid";
import { toNumber } from "../numbers/exact";
import { convert, type Unit } from "../numbers/lengths";
import { type Reading, reachesOn, trendOf, type Trend, YEAR } from "../programme/trend";
import { type Answer, good, none, refusal, unreadable } from "../reading/answer";
import type { CellValue } from "../reading/cell-value";
import { readDate } from "../reading/date";
import { type Length, readLength } from "../reading/length";
import { readText } from "../reading/text";

const CONFIDENCE = 0.95;
/** Change per year, in the readings' unit. */
export function wearRate(dates: Grid, readings: Grid): Answer<number> {
  const read = trendFrom(dates, readings, null);
  return read.ok ? good(read.value.trend.slope * YEAR) : read;
}
/** First day on which the trend can reach the limit. */
export function reaches(dates: Grid, readings: Grid, limit: CellValue, confidence: CellValue): Answer<number> {
  const share = confidence === null || confidence === undefined || confidence === "" ? CONFIDENCE : confidence;
  if (typeof share !== "number" || !(share > 0 && share < 1))
    return unreadable("The confidence is a share between 0 and 1, such as 0.95; it may be left out.");
  if (readText(limit) === "") return none("The limit is missing.");
  const read = trendFrom(dates, readings, limit);
  if (!read.ok) return read;
  const day = reachesOn(read.value.trend, read.value.limit, share);
  return day === null
    ? none("By this trend the limit is never reached: the readings move away from it, unless they are past it already.")
    : good(day);
}
type Cells = readonly CellValue[];
/** Bare figures all in one unit, or each with its own: never some of both. */
function trendFrom(dates: Grid, readings: Grid, limit: CellValue): Answer<{ readonly trend: Trend; readonly limit: number }> {
  const [days, values]: [Cells, Cells] = [dates.flat(), readings.flat()];
  if (days.length !== values.length)
    return unreadable(`There are ${String(days.length)} dates and ${String(values.length)} readings; give both over the same rows.`);
  const unit = unitOf([...values, limit]);
  const to = unit ?? "in";
  const points: Reading[] = [];
  for (const [at, cell] of values.entries()) {
    const size = readLength(cell, { assume: unit, zero: typeof cell === "string" });
    // A blank cell may arrive as 0; a 0 that was typed as text is a reading.
    if (size.kind === "missing") continue;
    if (size.kind === "refused") return refusal("reading", size);
    const day = readDate(days[at]);
    if (day.kind === "missing") return none(`The reading "${size.text}" has no date.`);
    if (day.kind === "refused") return refusal("date", day);
    points.push({ day: day.value, value: inUnit(size.value, to) });
  }
  const trend = trendOf(points);
  if (trend === null) return none("A trend needs readings on two days or more.");
  if (limit === null) return good({ trend, limit: 0 });
  const most = readLength(limit, { assume: unit, zero: true });
  return most.kind === "value" ? good({ trend, limit: inUnit(most.value, to) }) : refusal("limit", most);
}
const inUnit = ({ size, unit }: Length, to: Unit): number => toNumber(convert(size, unit, to));
/** The unit that they carry, inches where none does; null where two of them differ, and then a bare figure is refused. */
function unitOf(cells: Cells): Unit | null {
  const carried = new Set<Unit>();
  for (const cell of cells) {
    const read = readLength(cell, { assume: null });
    if (read.kind === "value") carried.add(read.value.unit);
  }
  const [unit = "in", other] = carried;
  return other === undefined ? unit : null;
}

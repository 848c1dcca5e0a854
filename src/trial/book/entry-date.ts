/** Dates and times among the texts put into a cell: month before day, as in the United States. */
import type { Scalar } from "./book";
import { daysInMonth, serialOf } from "./serial";

const MONTHS = ["january", "february", "march", "april", "may", "june", "july", "august", "september", "october", "november", "december"];
export function readDate(text: string, year: number): Entered | null {
  const time = readTime(text);
  if (time) return time;
  // A date and a time, parted by a space.
  const split = /^(.*\d)\s+(\d{1,2}:\d{2}(?::\d{2})?(?:\s*[ap]m)?)$/i.exec(text);
  if (split) {
    const date = readDay(split[1] ?? "", year);
    const clock = readTime(split[2] ?? "");
    if (date && clock) return { value: Number(date.value) + Number(clock.value), format: "m/d/yyyy h:mm" };
    return null;
  }
  return readDay(text, year);
}
function readDay(text: string, year: number): Entered | null {
  return readNumericDate(text, year) ?? readNamedMonth(text, year);
}
function fullYear(text: string): number {
  const number = Number(text);
  if (text.length > 2) return number;
  return number < 30 ? 2000 + number : 1900 + number;
}
function day(year: number, month: number, dayOfMonth: number, format: string): Entered | null {
  if (year < 1900 || year > 9999 || month < 1 || month > 12) return null;
  if (dayOfMonth < 1 || dayOfMonth > daysInMonth(year, month)) return null;
  return { value: serialOf(year, month, dayOfMonth), format };
}
function readNumericDate(text: string, year: number): Entered | null {
  const yearFirst = /^(\d{4})([/-])(\d{1,2})\2(\d{1,2})$/.exec(text);
  if (yearFirst) return day(Number(yearFirst[1]), Number(yearFirst[3]), Number(yearFirst[4]), "m/d/yyyy");
  const full = /^(\d{1,2})([/-])(\d{1,2})\2(\d{4}|\d{1,2})$/.exec(text);
  if (full) return day(fullYear(full[4] ?? ""), Number(full[1]), Number(full[3]), "m/d/yyyy");
  const two = /^(\d{1,2})[/-](\d{1,2}|\d{4})$/.exec(text);
  if (!two) return null;
  const [, first = "", second = ""] = two;
  if (second.length === 4) return day(Number(second), Number(first), 1, "mmm-yy");
  // A number too large for a day is taken for a year: 2/30 is February 1930, 3/64 is March 1964.
  return (
    day(year, Number(first), Number(second), "d-mmm") ??
    (Number(second) > 28 ? day(fullYear(second.padStart(2, "0")), Number(first), 1, "mmm-yy") : null)
  );
}
function monthNamed(word: string): number {
  const name = word.toLowerCase().replace(/\.$/, "");
  const at = MONTHS.findIndex((month) => month === name || month.slice(0, 3) === name || (name === "sept" && month === "september"));
  return at + 1;
}
function readNamedMonth(text: string, year: number): Entered | null {
  const dayFirst = /^(\d{1,2})[ -]?([a-z]{3,9})\.?(?:[ ,-]+(\d{4}|\d{2}))?$/i.exec(text);
  if (dayFirst) {
    const month = monthNamed(dayFirst[2] ?? "");
    if (month === 0) return null;
    const named = dayFirst[3] === undefined;
    return day(named ? year : fullYear(dayFirst[3] ?? ""), month, Number(dayFirst[1]), named ? "d-mmm" : "d-mmm-yy");
  }
  const monthFirst = /^([a-z]{3,9})\.?[ -]*(\d{1,2}|\d{4})(?:(?:, *| +)(\d{4}|\d{2}))?$/i.exec(text);
  if (!monthFirst) return null;
  const [, word = "", first = "", last] = monthFirst;
  const month = monthNamed(word);
  if (month === 0) return null;
  if (last !== undefined) return day(fullYear(last), month, Number(first), "d-mmm-yy");
  if (first.length === 4) return day(Number(first), month, 1, "mmm-yy");
  return day(year, month, Number(first), "d-mmm") ?? day(fullYear(first.padStart(2, "0")), month, 1, "mmm-yy");
}
function readTime(text: string): Entered | null {
  const parts = /^(\d{1,4}):(\d{2})(?::(\d{2}))?(?:\s*([ap])m?)?$/i.exec(text);
  if (!parts) return null;
  const [, hours = "", minutes = "", seconds, half] = parts;
  let hour = Number(hours);
  if (Number(minutes) > 59 || Number(seconds ?? 0) > 59) return null;
  if (half !== undefined) {
    if (hour < 1 || hour > 12) return null;
    hour = (hour % 12) + (half.toLowerCase() === "p" ? 12 : 0);
  }
  const value = hour / 24 + Number(minutes) / 1440 + Number(seconds ?? 0) / 86_400;
  const base = hour > 23 ? "[h]:mm:ss" : seconds === undefined ? "h:mm" : "h:mm:ss";
  return { value, format: half === undefined || hour > 23 ? base : `${base} AM/PM` };
}
export interface Entered {
  value: Scalar;
  error?: string;
  formula?: string;
  /** Number format that Excel gives to a General cell along with the value. */
  format?: string;
}

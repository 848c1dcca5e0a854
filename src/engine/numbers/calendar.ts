/** Calendar days as the workbook counts them: serial 1 is 1 January 1900, with its 29 February 1900 that never was. */

export interface Day {
  readonly year: number;
  readonly month: number;
  readonly day: number;
}
const MONTHS = ["jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"];
export function daysInMonth(year: number, month: number): number {
  if (month === 2) return year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0) ? 29 : 28;
  return month === 4 || month === 6 || month === 9 || month === 11 ? 30 : 31;
}
/** Days since 1 March 0000 (days-from-civil, era arithmetic). */
function civil({ year, month, day }: Day): number {
  const y = month <= 2 ? year - 1 : year;
  const m = (month + 9) % 12;
  return 365 * y + Math.floor(y / 4) - Math.floor(y / 100) + Math.floor(y / 400) + Math.floor((153 * m + 2) / 5) + day - 1;
}
const EPOCH = civil({ year: 1899, month: 12, day: 30 });
/** Serial day of a date from 1 March 1900 on. */
export function toSerial(day: Day): number {
  return civil(day) - EPOCH;
}
export function fromSerial(serial: number): Day {
  const days = Math.floor(serial) + EPOCH;
  let year = Math.floor((days * 400) / 146097);
  while (civil({ year, month: 3, day: 1 }) > days) year -= 1;
  while (civil({ year: year + 1, month: 3, day: 1 }) <= days) year += 1;
  const dayOfYear = days - civil({ year, month: 3, day: 1 });
  const m = Math.floor((5 * dayOfYear + 2) / 153);
  return {
    year: m >= 10 ? year + 1 : year,
    month: m >= 10 ? m - 9 : m + 3,
    day: dayOfYear - Math.floor((153 * m + 2) / 5) + 1,
  };
}
/** Adds calendar months and stays inside the month, as EDATE does: 31 January + 1 month is 28 or 29 February. */
export function addMonths(serial: number, months: number): number {
  const { year, month, day } = fromSerial(serial);
  const index = year * 12 + month - 1 + months;
  const y = Math.floor(index / 12);
  const m = (index % 12) + 1;
  return toSerial({ year: y, month: m, day: Math.min(day, daysInMonth(y, m)) });
}
/** Last day that the workbook can hold, 31 December 9999. */
export const LAST_DAY = 2958465;
/** 2026-03-31; a number that is no day of the workbook stays a number. */
export function showDate(serial: number): string {
  if (!(serial >= 1 && serial <= LAST_DAY + 1)) return String(serial);
  const { year, month, day } = fromSerial(serial);
  return `${String(year)}-${String(month).padStart(2, "0")}-${String(day).padStart(2, "0")}`;
}
const WHICH = "write it as 2026-03-31";
/** A date that someone typed as text; refused when day and month could be read both ways. */
export function readDateText(text: string): number | { readonly why: string } {
  if (/^(?:19|20)\d\d$/.test(text)) return { why: `it looks like a year without day and month; ${WHICH}` };
  const iso = /^(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})(?:[T ].*)?$/.exec(text);
  if (iso) return checked(Number(iso[1]), Number(iso[2]), Number(iso[3]));
  const named =
    /^(?:(\d{1,2})(?:st|nd|rd|th)?[ -]?([a-z]{3,9})\.?,?[ -]?(\d{4}|\d{2})|([a-z]{3,9})\.? (\d{1,2})(?:st|nd|rd|th)?,? (\d{4}))$/i.exec(
      text,
    );
  if (named) {
    const word = (named[2] ?? named[4] ?? "").toLowerCase();
    const month = MONTHS.findIndex((m) => word.startsWith(m)) + 1;
    if (month === 0) return { why: `it is not a date; ${WHICH}` };
    return checked(fullYear(named[3] ?? named[6] ?? ""), month, Number(named[1] ?? named[5]));
  }
  const numbers = /^(\d{1,2})[-/.](\d{1,2})[-/.](\d{4}|\d{2})$/.exec(text);
  if (!numbers) return { why: `it is not a date; ${WHICH}` };
  const first = Number(numbers[1]),
    second = Number(numbers[2]),
    year = fullYear(numbers[3] ?? "");
  if (first > 12) return checked(year, second, first);
  if (second > 12) return checked(year, first, second);
  if (first === second) return checked(year, first, second);
  return { why: `day and month can be read both ways; ${WHICH}` };
}
const fullYear = (text: string): number => (text.length === 2 ? 2000 + Number(text) : Number(text));
function checked(year: number, month: number, day: number): number | { readonly why: string } {
  if (year < 1901 || year > 9999 || month < 1 || month > 12 || day < 1 || day > daysInMonth(year, month))
    return { why: `there is no such day; ${WHICH}` };
  return toSerial({ year, month, day });
}

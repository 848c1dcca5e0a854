/** Serial days of the 1900 date system and calendar days. Excel counts a 29 February 1900 that never was (serial 60). */
const DAY = 86_400_000;
const UNIX_EPOCH = 25_569;
export function serialOf(year: number, month: number, day: number): number {
  const serial = Date.UTC(year, month - 1, day) / DAY + UNIX_EPOCH;
  return serial > 60 ? serial : serial - 1;
}
export interface CalendarDay {
  year: number;
  month: number;
  day: number;
  /** 0 is Sunday. */
  weekday: number;
}
export function dayOf(serial: number): CalendarDay {
  const whole = Math.floor(serial);
  if (whole === 60) return { year: 1900, month: 2, day: 29, weekday: 3 };
  if (whole === 0) return { year: 1900, month: 1, day: 0, weekday: 6 };
  const date = new Date(Math.round((whole < 60 ? whole + 1 : whole) - UNIX_EPOCH) * DAY);
  // Weekdays before March 1900 are one early in Excel, for the same reason.
  return { year: date.getUTCFullYear(), month: date.getUTCMonth() + 1, day: date.getUTCDate(), weekday: (whole + 6) % 7 };
}
export function daysInMonth(year: number, month: number): number {
  return new Date(Date.UTC(year, month, 0)).getUTCDate();
}

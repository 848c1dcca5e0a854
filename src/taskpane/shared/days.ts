/** Serial days of the workbook (day 1 is 1 January 1900) as people write dates. The pane is the only place that asks for today. */

const MS_PER_DAY = 86_400_000;
/** Serial 0 of the 1900 date system as every later day counts it. */
const EPOCH = Date.UTC(1899, 11, 30);
const MONTHS = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"];
/** Serial day of the calendar date on the user's clock. */
export function serialOfToday(now: Date): number {
  return Math.round((Date.UTC(now.getFullYear(), now.getMonth(), now.getDate()) - EPOCH) / MS_PER_DAY);
}
/** Serial day of "2026-03-31", or null when the text is no date that a workbook holds. */
export function serialOfIso(text: string): number | null {
  const parts = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text);
  if (!parts) return null;
  const time = Date.UTC(Number(parts[1]), Number(parts[2]) - 1, Number(parts[3]));
  const serial = Math.round((time - EPOCH) / MS_PER_DAY);
  return serial >= 1 && isoOf(serial) === text ? serial : null;
}
export function isoOf(serial: number): string {
  return new Date(EPOCH + Math.floor(serial) * MS_PER_DAY).toISOString().slice(0, 10);
}
/** A date that reads the same on both sides of the ocean: 31 Mar 2026. */
export function showDay(serial: number): string {
  const day = new Date(EPOCH + Math.floor(serial) * MS_PER_DAY);
  return `${String(day.getUTCDate())} ${MONTHS[day.getUTCMonth()] ?? ""} ${String(day.getUTCFullYear())}`;
}
/** How far a day lies from another, in words: "12 days late", "today", "in 30 days". */
export function showDistance(serial: number, asOf: number): string {
  const days = Math.floor(serial) - Math.floor(asOf);
  if (days === 0) return "today";
  const count = `${String(Math.abs(days))} ${Math.abs(days) === 1 ? "day" : "days"}`;
  return days < 0 ? `${count} late` : `in ${count}`;
}

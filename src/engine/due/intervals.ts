/** When the next periodic inspection is due. */
import { addMonths } from "../numbers/calendar";
import { tidy } from "../reading/text";

export type DueState = "OVERDUE" | "DUE SOON" | "CURRENT" | "NO DATE";
export interface Interval {
  readonly service: string;
  readonly months: number;
  readonly source: string;
}
/**
 * Longest intervals of periodic inspection. Rigging hardware and slings: a year in normal service, a quarter in severe
 * service (WAC 296-155-55800 Table 12, ASME B30.26 26-x.8.3, never more than a year). Idle gear: a month, then
 * inspected before use (34 Pa. Code § 25.43(a)). "heavy", half a year, was read for lifting fixtures; hooks have the class
 * too, but their interval was not read.
 */
export const INTERVALS: readonly Interval[] = [
  { service: "normal", months: 12, source: "WAC 296-155-55800 Table 12; ASME B30.26-2010 26-x.8.3" },
  { service: "heavy", months: 6, source: "DOE-STD-1090-96 s.14.2.5.3, lifting fixtures" },
  { service: "severe", months: 3, source: "WAC 296-155-55800 Table 12" },
  { service: "idle", months: 1, source: "34 Pa. Code § 25.43(a)" },
  { service: "monthly", months: 1, source: "as written" },
  { service: "quarterly", months: 3, source: "as written" },
  { service: "half yearly", months: 6, source: "as written" },
  { service: "semi annual", months: 6, source: "as written" },
  { service: "yearly", months: 12, source: "as written" },
  { service: "annual", months: 12, source: "as written" },
  { service: "annually", months: 12, source: "as written" },
];
/** Months between inspections that a service class or an interval names; or why it names none. */
export function monthsOf(service: string): number | { readonly why: string } {
  const text = tidy(service)
    .toLowerCase()
    .replace(/[-_]/g, " ")
    .replace(/ (service|duty)$/, "");
  if (text === "") return { why: "the service is missing; type normal, severe or an interval such as 6 monthly" };
  const named = INTERVALS.find((i) => i.service === text);
  if (named) return named.months;
  const numbered = /^(?:special,? ?)?(?:every )?(\d{1,2}) ?(?:m|mo|mth|month|months|monthly)$/.exec(text);
  if (numbered) {
    const months = Number(numbered[1]);
    return months >= 1 && months <= 12
      ? months
      : { why: `an interval of ${String(months)} months is not between 1 and 12; no rule allows more than a year` };
  }
  if (text.startsWith("special"))
    return { why: "special service has the interval that a qualified person sets; type it, such as special 6 monthly" };
  return { why: `"${service}" is no service class; type normal, severe, idle or an interval such as 6 monthly` };
}
/** Serial day of the next inspection: calendar months later, inside the month as EDATE counts. */
export function nextDue(last: number, months: number): number {
  return addMonths(last, months);
}
export const LEAD_DAYS = 30;
/** Before `asOf` is overdue; on it or within the lead days is due soon. */
export function dueState(due: number | null, asOf: number, leadDays: number = LEAD_DAYS): DueState {
  if (due === null) return "NO DATE";
  if (due < asOf) return "OVERDUE";
  return due <= asOf + leadDays ? "DUE SOON" : "CURRENT";
}

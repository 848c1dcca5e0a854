/** When the next periodic inspection is due. */
import { addMonths } from "../numbers/calendar";
import { tidy } from "../reading/text";
import { cite } from "../rules/documents";
import type { BasisId } from "../rules/rule-sets";
import { everyMonths, type IntervalCriterion, intervalsOf, type ServiceClass, type UsedOn } from "./interval-criteria";

export type DueState = "OVERDUE" | "DUE SOON" | "CURRENT" | "NO DATE";
interface Named {
  readonly service: string;
  readonly months: number;
  readonly class?: ServiceClass;
}
/**
 * Words of the service column. A class of service has its own criteria by kind and rule set; these months are what common practice takes where none is in
 * force: a year in normal service, a quarter in severe, half a year in heavy and for people, a month for idle gear. The rest is the log's own interval.
 */
export const INTERVALS: readonly Named[] = [
  { service: "normal", months: 12, class: "normal" },
  { service: "heavy", months: 6, class: "heavy" },
  { service: "severe", months: 3, class: "severe" },
  { service: "idle", months: 1, class: "idle" },
  { service: "people", months: 6, class: "people" },
  { service: "persons", months: 6, class: "people" },
  { service: "lifting people", months: 6, class: "people" },
  { service: "lifting persons", months: 6, class: "people" },
  { service: "monthly", months: 1 },
  { service: "quarterly", months: 3 },
  { service: "half yearly", months: 6 },
  { service: "semi annual", months: 6 },
  { service: "yearly", months: 12 },
  { service: "annual", months: 12 },
  { service: "annually", months: 12 },
];
/** Months between inspections that a service class or an interval names; or why it names none. */
export function monthsOf(service: string): number | { readonly why: string } {
  const read = serviceOf(service);
  return "why" in read ? read : read.months;
}
/** What a service says: a class, or an interval of the log's own. */
function serviceOf(service: string): { readonly months: number; readonly class: ServiceClass | null } | { readonly why: string } {
  const text = tidy(service)
    .toLowerCase()
    .replace(/[-_]/g, " ")
    .replace(/ (service|duty)$/, "");
  if (text === "") return { why: "the service is missing; type normal, severe or an interval such as 6 monthly" };
  const named = INTERVALS.find((i) => i.service === text);
  if (named) return { months: named.months, class: named.class ?? null };
  const numbered = /^(?:special,? ?)?(?:every )?(\d{1,2}) ?(?:m|mo|mth|month|months|monthly)$/.exec(text);
  if (numbered) {
    const months = Number(numbered[1]);
    return months >= 1 && months <= 12
      ? { months, class: null }
      : { why: `an interval of ${String(months)} months is not between 1 and 12; no rule allows more than a year` };
  }
  if (text.startsWith("special"))
    return { why: "special service has the interval that a qualified person sets; type it, such as special 6 monthly" };
  return { why: `"${service}" is no service class; type normal, severe, idle or an interval such as 6 monthly` };
}
/** What is asked: the kind, what it is called and works on, its service, the rule sets in force. */
export interface ItemInService {
  readonly kind: string;
  readonly gearText: string;
  readonly usedOn: string;
  readonly service: string;
  readonly bases: ReadonlySet<BasisId>;
}
export interface Interval {
  readonly months: number;
  /** The criterion that decides; null where the log's own interval or common practice does. */
  readonly criterion: IntervalCriterion | null;
  /** Who says so, in words, with the log's own interval where a rule shortens it. */
  readonly words: string;
}
/** The interval of an item: the strictest criterion in force, which the log's own may only shorten. */
export function intervalOf(asked: ItemInService): Interval | { readonly why: string } {
  const service = serviceOf(asked.service);
  if ("why" in service) return service;
  const used = usedOnOf(asked);
  const inForce = intervalsOf(asked.kind).filter(
    (c) =>
      asked.bases.has(c.basis) &&
      (c.usedOn === undefined || used === null || c.usedOn.includes(used)) &&
      (c.service === undefined || c.service === service.class),
  );
  const [strictest] = [...inForce].sort((a, b) => a.months - b.months || Number(b.service !== undefined) - Number(a.service !== undefined));
  const own = service.class === null;
  if (strictest !== undefined && strictest.months <= service.months) {
    const beside = own && strictest.months < service.months ? `, not ${everyMonths(service.months)} as the log says` : "";
    return {
      months: strictest.months,
      criterion: strictest,
      words: `${everyMonths(strictest.months)}${beside} [${strictest.basis}: ${cite(strictest.source)}]`,
    };
  }
  const who = own ? "as the log says" : `by common practice in ${service.class} service`;
  return { months: service.months, criterion: null, words: `${everyMonths(service.months)} ${who}` };
}
/** What gear works on: its column, else its name; null where neither tells, and then every use counts. */
function usedOnOf({ usedOn, gearText }: ItemInService): UsedOn | null {
  const typedUse = tidy(usedOn).toLowerCase();
  const uses = USES.filter((use) => new RegExp(`\\b${use}s?\\b`).test(typedUse));
  if (typedUse !== "") return uses.length === 1 ? (uses[0] ?? null) : null;
  const named = /\b(crane|gantry|overhead)\b/i.test(gearText) ? "crane" : /\b(hoist)\b/i.test(gearText) ? "hoist" : null;
  return named ?? (/\bsling hook\b/i.test(gearText) ? "sling" : null);
}
const USES: readonly UsedOn[] = ["crane", "hoist", "sling", "loose"];
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

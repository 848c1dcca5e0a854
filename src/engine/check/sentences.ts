/** The words of a finding: one template for each decision, always with reading, limit, unit and source. */
import type { Decision } from "../decision";
import { capital, percent } from "../words";

export interface Told {
  /** "Throat opening" */
  readonly label: string;
  /** "2.05 in" */
  readonly measured: string;
  /** What the limit counts from: "as new 2 in"; null where it counts from nothing. */
  readonly from: string | null;
  /** "above 2.1 in" */
  readonly comesOut: string;
  /** "5 % of as-new, at most 1/4 in" */
  readonly rule: string;
  readonly share: number | null;
  readonly source: string;
  readonly basis: string;
  /** What the limit leads to: removal, a closer look, or a shorter interval. */
  readonly beyond: Decision;
}
/** What happens at the limit. */
const leadsTo = (told: Told): string =>
  told.beyond === "WATCH" ? "it is looked at more often" : told.beyond === "EXAMINE" ? "it is examined" : "it comes out";
/** A bare count is set off from its label: "Broken wires in a lay: 11". */
const reading = (told: Told): string =>
  `${capital(told.label)}${/^\d+$/.test(told.measured) ? ":" : ""} ${told.measured}${told.from === null ? "" : `, ${told.from},`}`;
const limit = (told: Told): string =>
  told.comesOut.includes(told.rule) ? `${leadsTo(told)} ${told.comesOut}` : `${leadsTo(told)} ${told.comesOut} (${told.rule})`;
const cited = (told: Told): string => `[${told.basis}: ${told.source}]`;
const used = (told: Told): string => (told.share === null || told.share === 0 ? "" : `, ${percent(told.share)} of the allowance used`);
const INSIDE = "is inside the limit";
const TEMPLATES: Record<Decision, (told: Told) => string> = {
  REMOVE: (told) => `${reading(told)} ${told.share === 1 ? "has reached" : "is beyond"} the limit: ${limit(told)} ${cited(told)}.`,
  EXAMINE: (told) => `${reading(told)} calls for a closer look: ${limit(told)} ${cited(told)}.`,
  "NO VERDICT": (told) => `${reading(told)} cannot be judged: ${told.rule}.`,
  DRESS: (told) => `${reading(told)} can be ground out lengthwise along the contour${used(told)}: ${limit(told)} ${cited(told)}.`,
  WATCH: (told) => `${reading(told)} ${INSIDE} but near it${used(told)}: ${limit(told)} ${cited(told)}.`,
  KEEP: (told) => `${reading(told)} ${INSIDE}${used(told)}: ${limit(told)} ${cited(told)}.`,
};
export function tell(decision: Decision, told: Told): string {
  return TEMPLATES[decision](told);
}
/** The sentence of the reading that is nearest to its limit, where all others are in order as well. */
export const tellNearest = (sentence: string): string => sentence.replace(INSIDE, "is nearest to its limit");
/** Beyond a figure from which a part is only watched. */
export function tellWatched(told: Told): string {
  return `${reading(told)} is beyond the figure at which it is looked at more often: ${told.comesOut} ${cited(told)}.`;
}
export function tellUncertain(told: Told, gauge: string, settledBy: string | null): string {
  const next =
    settledBy === null
      ? "the reading lies on the limit, so no gauge can settle it; have it examined"
      : `measure again with a gauge that reads finer than ${settledBy}`;
  return `${reading(told)} cannot be told from the limit with a gauge that reads to ${gauge}: ${limit(told)}; ${next} ${cited(told)}.`;
}
export function tellSeen(label: string, said: string, source: string, basis: string): string {
  return `${capital(label)}: "${said}" takes the item out of service [${basis}: ${source}].`;
}
export function tellSound(label: string, said: string, source: string | null, basis: string | null): string {
  return `${capital(label)}: "${said}" is in order${source === null || basis === null ? "" : ` [${basis}: ${source}]`}.`;
}
export function tellUnruled(label: string, said: string): string {
  return `${capital(label)}: "${said}" was found and no rule in force names it; a competent person decides.`;
}
export function tellMissing(label: string, heading: string): string {
  return `${capital(label)}: nothing is recorded; fill "${heading}".`;
}
export function tellRefused(label: string, heading: string, text: string, why: string): string {
  return `${capital(label)}: "${text}" in "${heading}" cannot be used: ${why}.`;
}

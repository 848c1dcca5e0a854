/** Items of one place and one kind of gear, and how many stand at each. Pure. */
import { type Decision, DECISIONS, outOfUse } from "../../../engine/decision";
import type { DueState } from "../../../engine/due/intervals";
import type { ItemResult } from "../../../engine/report/model";
import { DUE_STATES, kindOf } from "../words";

export interface Narrowing {
  /** Place as it stands in the log, "" for none given; null for all. */
  readonly place: string | null;
  /** Kind of gear; null for all. */
  readonly gear: string | null;
}
export const ALL: Narrowing = { place: null, gear: null };
export interface Tally {
  readonly name: string;
  readonly items: number;
  /** Out of use by their verdict, or tagged out. */
  readonly out: number;
  readonly late: number;
}
const gearOf = (item: ItemResult): string => item.gear ?? kindOf(item);
export function narrowed(items: readonly ItemResult[], { place, gear }: Narrowing): readonly ItemResult[] {
  if (place === null && gear === null) return items;
  return items.filter((item) => (place === null || samePlace(item.place, place)) && (gear === null || gearOf(item) === gear));
}
/** "place Slip, only shackles"; "" where nothing is narrowed. */
export function narrowedTo({ place, gear }: Narrowing): string {
  return [
    place === null ? "" : place === "" ? "no place given" : `place ${place}`,
    gear === null ? "" : `only ${gear === "" ? "no kind" : gear}`,
  ]
    .filter((text) => text !== "")
    .join(", ");
}
export function countDecisions(items: readonly ItemResult[]): Record<Decision, number> {
  const counts = Object.fromEntries(DECISIONS.map((decision) => [decision, 0])) as Record<Decision, number>;
  for (const { verdict } of items) counts[verdict.decision] += 1;
  return counts;
}
export function countDue(items: readonly ItemResult[]): Record<DueState, number> {
  const counts = Object.fromEntries(DUE_STATES.map((state) => [state, 0])) as Record<DueState, number>;
  for (const { dueState } of items) counts[dueState] += 1;
  return counts;
}
const samePlace = (a: string, b: string): boolean => a.toLowerCase() === b.toLowerCase();
export const byPlace = (items: readonly ItemResult[]): readonly Tally[] => tallied(items, ({ place }) => place);
export const byGear = (items: readonly ItemResult[]): readonly Tally[] => tallied(items, gearOf);
function tallied(items: readonly ItemResult[], nameOf: (item: ItemResult) => string): readonly Tally[] {
  const groups = new Map<string, { name: string; items: number; out: number; late: number }>();
  for (const item of items) {
    const name = nameOf(item);
    let group = groups.get(name.toLowerCase());
    if (group === undefined) groups.set(name.toLowerCase(), (group = { name, items: 0, out: 0, late: 0 }));
    group.items += 1;
    if (item.tagged || outOfUse(item.verdict.decision)) group.out += 1;
    if (item.dueState === "OVERDUE") group.late += 1;
  }
  return [...groups.values()].sort((a, b) => a.name.localeCompare(b.name, "en"));
}

import type { DueState } from "../../engine/due/intervals";
import type { ItemResult } from "../../engine/report/model";
import { type Entry, type Grouping, keyOf } from "../shared/list/entries";
import { DUE_NAMES, DUE_STATES, kindOf } from "../shared/words";

/** The due list: by state, then by place or kind when asked; the earliest date first. */
export function dueEntries(items: readonly ItemResult[], states: readonly DueState[], grouping: Grouping): Entry[] {
  const wanted = DUE_STATES.filter((state) => states.length === 0 || states.includes(state));
  return wanted.flatMap((state) => {
    const those = items.filter((item) => item.dueState === state).sort((a, b) => (a.nextDue ?? 0) - (b.nextDue ?? 0) || a.row - b.row);
    if (those.length === 0) return [];
    const name = DUE_NAMES[state];
    return [{ kind: "heading", key: state, text: name, count: those.length, level: 1 } as const, ...grouped(those, grouping, name)];
  });
}
function grouped(items: readonly ItemResult[], grouping: Grouping, state: string): Entry[] {
  if (grouping === "none") return items.map((item) => ({ kind: "item", key: keyOf(item), item, group: state }));
  const groups = new Map<string, ItemResult[]>();
  for (const item of items) {
    const name = groupName(item, grouping);
    const group = groups.get(name);
    if (group) group.push(item);
    else groups.set(name, [item]);
  }
  return [...groups]
    .sort(([a], [b]) => a.localeCompare(b, "en"))
    .flatMap(([name, group]): Entry[] => [
      { kind: "heading", key: `${state}/${name}`, text: name, count: group.length, level: 2 },
      ...group.map((item): Entry => ({ kind: "item", key: keyOf(item), item, group: `${state}, ${name}` })),
    ]);
}
function groupName(item: ItemResult, grouping: Grouping): string {
  if (grouping === "place") return item.place === "" ? "No place given" : item.place;
  return item.gear ?? kindOf(item);
}

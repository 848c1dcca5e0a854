/** What the lists show: pure questions to a report. */
import type { Decision } from "../../../engine/decision";
import type { ItemResult } from "../../../engine/report/model";

export type Grouping = "none" | "place" | "kind";
/** The places that hold a list of items. */
export type ListName = "items" | "due";
/** A line of a list: a heading over a group, or an item. */
export type Entry =
  | { readonly kind: "heading"; readonly key: string; readonly text: string; readonly count: number; readonly level: 1 | 2 }
  | { readonly kind: "item"; readonly key: string; readonly item: ItemResult; readonly group: string };
/**
 * Items that match the chosen decisions (none chosen: all) and every word of the search; ids that match come first.
 * Gear to be picked is searched by what it is, not by what was found on it.
 */
export function matching(
  items: readonly ItemResult[],
  decisions: readonly Decision[],
  search: string,
  by: "all" | "gear" = "all",
): ItemResult[] {
  const words = search
    .toLowerCase()
    .split(/\s+/)
    .filter((word) => word !== "");
  const chosen = decisions.length === 0 ? [...items] : items.filter((item) => decisions.includes(item.verdict.decision));
  if (words.length === 0) return chosen;
  const found = chosen.filter((item) => {
    const found = by === "gear" ? "" : ` ${item.verdict.decision} ${item.verdict.reason}`;
    const text = `${item.id} ${item.gearText} ${item.gear ?? ""} ${item.place} ${item.assembly}${found}`.toLowerCase();
    return words.every((word) => text.includes(word));
  });
  return found.sort((a, b) => byId(a, words) - byId(b, words));
}
/** 0 for the id itself, 1 for one that begins with what is searched, 2 for one that holds it, 3 for any other item. */
function byId({ id }: ItemResult, words: readonly string[]): number {
  const text = id.toLowerCase();
  const whole = words.join(" ");
  if (text === whole) return 0;
  if (text.startsWith(whole)) return 1;
  return words.every((word) => text.includes(word)) ? 2 : 3;
}
export function itemEntries(items: readonly ItemResult[]): Entry[] {
  return items.map((item) => ({ kind: "item", key: keyOf(item), item, group: "" }));
}
export function keyOf(item: ItemResult): string {
  return `row-${String(item.row)}`;
}

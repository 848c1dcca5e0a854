/** What the lists show: pure questions to a report. */
import type { FieldId } from "../engine/fields";
import type { DueState, ItemResult, Report } from "../engine/model";
import { outOfUse, rank, type Decision } from "../engine/verdict";
import type { LogPlace } from "../excel/port";
import { standsIdle } from "./due/before-use";
import type { Grouping } from "./state";
import { DUE_NAMES, DUE_STATES, kindOf } from "./words";

/** A line of a list: a heading over a group, or an item. */
export type Entry = { readonly kind: "heading"; readonly key: string; readonly text: string; readonly count: number; readonly level: 1 | 2 } | { readonly kind: "item"; readonly key: string; readonly item: ItemResult; readonly group: string };

/** Worst first; among equals the one that has used most of its allowance, then the order of the sheet. */
export function worstFirst(items: readonly ItemResult[]): ItemResult[] {
  return [...items].sort(
    (a, b) => rank(a.verdict.decision) - rank(b.verdict.decision) || byShare(b.verdict.share, a.verdict.share) || a.row - b.row,
  );
}

/** Gear that a lift can take comes first, each group in the order of the sheet; what it refuses in the end comes last. */
export function usableFirst({ items, asOf }: Pick<Report, "items" | "asOf">): ItemResult[] {
  const usable = (item: ItemResult): boolean => item.id !== "" && item.verdict.decision !== "DRESS" && !outOfUse(item.verdict.decision) && standsIdle(item, asOf) === "";
  return [...items].sort((a, b) => Number(usable(b)) - Number(usable(a)) || a.row - b.row);
}

/** An allowance of nothing can be used without end, so shares are compared, never subtracted. */
function byShare(one: number | null, other: number | null): number {
  const [a, b] = [one ?? -1, other ?? -1];
  return a === b ? 0 : a < b ? -1 : 1;
}

/**
 * Items that match the chosen decisions (none chosen: all) and every word of the search; ids that match come first.
 * Gear to be picked is searched by what it is, not by what was found on it.
 */
export function matching(items: readonly ItemResult[], decisions: readonly Decision[], search: string, by: "all" | "gear" = "all"): ItemResult[] {
  const words = search.toLowerCase().split(/\s+/).filter((word) => word !== "");
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

/** The due list: by state, then by place or kind when asked; the earliest date first. */
export function dueEntries(report: Report, states: readonly DueState[], grouping: Grouping): Entry[] {
  const wanted = DUE_STATES.filter((state) => states.length === 0 || states.includes(state));
  return wanted.flatMap((state) => {
    const items = report.items.filter((item) => item.dueState === state).sort((a, b) => (a.nextDue ?? 0) - (b.nextDue ?? 0) || a.row - b.row);
    if (items.length === 0) return [];
    const name = DUE_NAMES[state];
    return [{ kind: "heading", key: state, text: name, count: items.length, level: 1 } as const, ...grouped(items, grouping, name)];
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

/** Row inside a place of a zero-based row of the sheet, or null when it lies outside. */
export function rowInside(place: LogPlace, sheetRow: number): number | null {
  const rows = /^\$?[A-Z]*\$?(\d+)(?::\$?[A-Z]*\$?(\d+))?$/i.exec(place.address);
  if (!rows) return null;
  const first = Number(rows[1]) - 1;
  const last = rows[2] === undefined ? first : Number(rows[2]) - 1;
  return sheetRow < first || sheetRow > last ? null : sheetRow - first;
}

/** Fields that more than one heading is read as. */
export function doubled(report: Report): FieldId[] {
  return [...new Set(report.headings.flatMap(({ also }) => (also === null ? [] : [also])))];
}

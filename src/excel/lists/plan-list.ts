/** A list to hand over, as plain data: what is out, what is late or due soon, what is to be examined. Pure. */
import type { DueState } from "../../engine/due/intervals";
import { showDate } from "../../engine/numbers/calendar";
import { readDate } from "../../engine/reading/date";
import { readText } from "../../engine/reading/text";
import type { ItemResult, Report } from "../../engine/report/model";
import { showRules } from "../../engine/rules/rule-sets";
import { count } from "../../engine/words";
import { CAUTION } from "../kit/sheets";

export type ListKind = "out" | "examine" | "late";
export const LISTS: Readonly<Record<ListKind, { readonly sheet: string; readonly title: string; readonly none: string }>> = {
  out: { sheet: "Gear out", title: "Gear to take out of service", none: "Nothing is to be taken out." },
  examine: { sheet: "Gear to examine", title: "Gear to examine before it is used again", none: "Nothing is to be examined." },
  late: { sheet: "Gear late", title: "Inspections late and due soon", none: "Nothing is late or due soon." },
};
export interface ListToWrite {
  readonly kind: ListKind;
  readonly report: Pick<Report, "items" | "basis" | "asOf">;
  /** The items that the pane is narrowed to, and how, such as "place Slip"; "" for all. */
  readonly items: readonly ItemResult[];
  readonly narrowedTo: string;
}
export interface ListColumn {
  readonly heading: string;
  /** Points; all of them together fit across A4 and Letter, landscape, at full size. */
  readonly width: number;
}
export const LIST_COLUMNS: readonly ListColumn[] = [
  { heading: "Id", width: 58 },
  { heading: "Gear", width: 80 },
  { heading: "Place", width: 74 },
  { heading: "Why", width: 150 },
  { heading: "Comes out at", width: 148 },
  { heading: "Next due", width: 64 },
  { heading: "Inspected", width: 88 },
  { heading: "Tag", width: 68 },
];
/** What fits across the narrower of the two papers with the margins that the sheet is given. */
export const PAGE_WIDTH = 730;
export interface ListPlan {
  readonly sheet: string;
  /** Title, what the list holds, by place, and the caution. */
  readonly top: readonly string[];
  readonly rows: readonly (readonly string[])[];
}
export function planList({ kind, report, items, narrowedTo }: ListToWrite): ListPlan {
  const listed = itemsOf(kind, items);
  const { sheet, title } = LISTS[kind];
  const rules = showRules(report.basis);
  const held = [
    `${count(listed.length, "item")} as of ${showDate(report.asOf)}`,
    `rules in force: ${rules}`,
    ...(narrowedTo === "" ? [] : [narrowedTo]),
  ];
  const away = kind === "late" ? items.filter((item) => isLate(item) && isOut(item)).length : 0;
  return {
    sheet,
    top: [
      title,
      `${held.join(" · ")}.`,
      `${placesOf(listed)}${away === 0 ? "" : ` ${count(away, "late item is", "late items are")} out of service anyway and not listed here.`}`,
      CAUTION,
    ],
    rows: listed.map((item) => [
      item.id === "" ? "no id" : item.id,
      item.gearText,
      item.place,
      whyOf(kind, item),
      item.verdict.comesOut,
      item.nextDue === null ? "no date" : `${showDate(item.nextDue)}${item.dueState === "OVERDUE" ? " late" : ""}`,
      inspectedOf(item),
      tagOf(item),
    ]),
  };
}
/** The items of a list, as they stand in it. */
export function itemsOf(kind: ListKind, items: readonly ItemResult[]): readonly ItemResult[] {
  if (kind === "late") return items.filter((item) => isLate(item) && !isOut(item)).sort(byDate);
  const found = items.filter((item) => (kind === "out" ? isOut(item) : item.verdict.decision === "EXAMINE" && !item.tagged));
  return [...found].sort((a, b) => a.place.localeCompare(b.place, "en") || compareIds(a, b));
}
const isOut = (item: ItemResult): boolean => item.tagged || item.verdict.decision === "REMOVE";
const LATE: readonly DueState[] = ["OVERDUE", "NO DATE", "DUE SOON"];
const isLate = ({ dueState }: ItemResult): boolean => LATE.includes(dueState);
/** What is late comes first, then what has no date, then what is due soon; each by its day. */
const byDate = (a: ItemResult, b: ItemResult): number =>
  LATE.indexOf(a.dueState) - LATE.indexOf(b.dueState) || (a.nextDue ?? 0) - (b.nextDue ?? 0) || compareIds(a, b);
const compareIds = (a: ItemResult, b: ItemResult): number => a.id.localeCompare(b.id, "en", { numeric: true });
/** On the list of late items the decision stands as well: some are out of use for another reason. */
function whyOf(kind: ListKind, { verdict, dueNote, nextDue }: ItemResult): string {
  if (kind !== "late") return verdict.short;
  const date = nextDue === null && dueNote !== "" ? `. No date: ${dueNote}` : "";
  return `${verdict.decision}: ${verdict.short}${date}`;
}
function inspectedOf({ cells }: ItemResult): string {
  const on = readDate(cells.get("inspected"));
  const by = readText(cells.get("inspector"));
  const day = on.kind === "value" ? showDate(on.value) : on.text;
  return [day, by].filter((text) => text !== "").join("\n");
}
function tagOf({ tagged, cells, verdict }: ItemResult): string {
  const on = readDate(cells.get("tagged"));
  if (tagged) return on.kind === "value" ? `tagged out\n${showDate(on.value)}` : "tagged out";
  if (verdict.decision === "REMOVE") return "not tagged yet";
  const released = readDate(cells.get("releasedOn"));
  return readText(cells.get("tagged")) !== "" && released.kind === "value" ? `released\n${showDate(released.value)}` : "";
}
/** "By place: Slip 5, Store 3." */
function placesOf(items: readonly ItemResult[]): string {
  const counts = new Map<string, { readonly name: string; items: number }>();
  for (const { place } of items) {
    const found = counts.get(place.toLowerCase()) ?? { name: place === "" ? "no place given" : place, items: 0 };
    found.items += 1;
    counts.set(place.toLowerCase(), found);
  }
  const named = [...counts.values()].sort((a, b) => b.items - a.items || a.name.localeCompare(b.name, "en"));
  return named.length === 0 ? "" : `By place: ${named.map(({ name, items: n }) => `${name} ${String(n)}`).join(", ")}.`;
}
/** Height of a line, in points. */
const LINE = 12.5;
/** Points that a text surely needs at the size of the list, in whatever font a sheet has. */
function widthOf(text: string): number {
  let width = 0;
  for (const sign of text)
    width += sign === " " ? 2.8 : /\p{Ll}/u.test(sign) ? 4.9 : /\d/.test(sign) ? 5.4 : /\p{L}/u.test(sign) ? 6.3 : 3.4;
  return width;
}
/** Lines that a text takes in a column, broken between words and inside those that are longer than the column. */
export function linesIn(text: string, width: number): number {
  const room = width - 6;
  return text.split("\n").reduce((lines, line) => lines + linesOfOne(line, room), 0);
}
function linesOfOne(text: string, room: number): number {
  let lines = 1,
    used = 0;
  for (const word of text.split(" ")) {
    const needed = widthOf(used === 0 ? word : ` ${word}`);
    if (used + needed <= room) {
      used += needed;
      continue;
    }
    const whole = widthOf(word);
    const broken = Math.max(1, Math.ceil(whole / room));
    lines += used === 0 ? broken - 1 : broken;
    used = whole - (broken - 1) * room;
  }
  return lines;
}
/** Height of a row, in points, in which nothing is cut. */
export function heightOf(row: readonly string[]): number {
  const lines = row.map((text, at) => linesIn(text, LIST_COLUMNS[at]?.width ?? 60));
  return Math.max(1, ...lines) * LINE + 3;
}

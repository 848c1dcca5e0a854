/** What a log lacks, in sentences, and which of its ids stand on more than one row. Pure. */
import { tellLack } from "../../engine/report/lacking";
import type { ItemResult, Report } from "../../engine/report/model";
import { count } from "../../engine/words";

/** Kinds named in one sentence. */
const NAMED = 12;
/** Gear kinds that are not understood, the missing date, then what each kind lacks. */
export function lacksOf({ items, headings, lacking }: Report): readonly string[] {
  const dated = items.length === 0 || headings.some(({ field }) => field === "inspected");
  return [
    ...unknownKinds(items),
    ...(dated ? [] : ["No column for the date of the last inspection: no due dates, no lift."]),
    ...lacking.map(tellLack),
  ];
}
function grouped(items: readonly ItemResult[], key: (item: ItemResult) => string): ItemResult[][] {
  const groups = new Map<string, ItemResult[]>();
  for (const item of items) {
    const group = groups.get(key(item).toLowerCase());
    if (group) group.push(item);
    else groups.set(key(item).toLowerCase(), [item]);
  }
  return [...groups.values()];
}
/** "12 items: kind not understood: “Swvl” on 3 rows, “Web slg” on 9 rows." the most frequent first. */
function unknownKinds(items: readonly ItemResult[]): readonly string[] {
  const unknown = items.filter(({ gear }) => gear === null);
  if (unknown.length === 0) return [];
  const kinds = grouped(unknown, ({ gearText }) => gearText).sort((a, b) => b.length - a.length);
  const named = kinds
    .slice(0, NAMED)
    .map((same) => `${same[0]?.gearText === "" ? "blank" : `“${same[0]?.gearText ?? ""}”`} on ${count(same.length, "row")}`);
  const more = kinds.length > NAMED ? ` and ${count(kinds.length - NAMED, "more", "more")}` : "";
  return [`${count(unknown.length, "item")}: kind not understood: ${named.join(", ")}${more}.`];
}
export interface SameId {
  readonly id: string;
  readonly rows: readonly number[];
}
/** Ids that stand on more than one row, and the rows without one; capitals make no difference. */
export function sameIds(items: readonly ItemResult[]): readonly SameId[] {
  return grouped(items, ({ id }) => id)
    .filter((same) => same.length > 1 || same[0]?.id === "")
    .map((same) => ({ id: same[0]?.id ?? "", rows: same.map(({ row }) => row) }));
}

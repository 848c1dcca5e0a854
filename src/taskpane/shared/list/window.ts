/** Where the lines of a long list stand, and which of them are in sight. Pure. */
import type { ItemResult } from "../../../engine/report/model";
import type { Entry } from "./entries";

export interface Layout {
  /** Top of each line in pixels, and after the last one the whole height. */
  readonly tops: readonly number[];
  readonly height: number;
  /** Indexes of the lines that are items. */
  readonly items: readonly number[];
  /** Place of a line among the items, counted from 0. */
  readonly position: ReadonlyMap<number, number>;
  readonly lineOfRow: ReadonlyMap<number, number>;
}
/** Lines drawn above and below the ones in sight, so that scrolling shows no gap. */
const SPARE = 4;
export function layOut(entries: readonly Entry[], heightOf: (item: ItemResult) => number, headingHeight: number): Layout {
  const tops: number[] = [0];
  const items: number[] = [];
  const position = new Map<number, number>();
  const lineOfRow = new Map<number, number>();
  let top = 0;
  entries.forEach((entry, index) => {
    top += entry.kind === "item" ? heightOf(entry.item) : headingHeight;
    tops.push(top);
    if (entry.kind === "heading") return;
    position.set(index, items.length);
    lineOfRow.set(entry.item.row, index);
    items.push(index);
  });
  return { tops, height: top, items, position, lineOfRow };
}
/** Indexes of the lines to draw between two heights; the line that the keyboard stands on is always among them. */
export function linesBetween(layout: Layout, from: number, to: number, always: number): number[] {
  const last = layout.tops.length - 2;
  const first = Math.max(0, lineAt(layout.tops, from) - SPARE);
  const end = Math.min(last, lineAt(layout.tops, to) + SPARE);
  const lines: number[] = [];
  if (always >= 0 && always < first) lines.push(always);
  for (let index = first; index <= end; index += 1) lines.push(index);
  if (always > end && always <= last) lines.push(always);
  return lines;
}
/** The line that covers a height, found by halving. */
function lineAt(tops: readonly number[], height: number): number {
  let low = 0;
  let high = Math.max(0, tops.length - 2);
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if ((tops[middle] ?? 0) <= height) low = middle;
    else high = middle - 1;
  }
  return low;
}
/** The item line that a key leads to, or null when the key means nothing to the list. */
export function nextItem(items: readonly number[], from: number, key: string, page: number): number | null {
  const at = Math.max(0, items.indexOf(from));
  const steps: Record<string, number> = {
    ArrowDown: at + 1,
    ArrowUp: at - 1,
    PageDown: at + page,
    PageUp: at - page,
    Home: 0,
    End: items.length - 1,
  };
  const to = steps[key];
  if (to === undefined || items.length === 0) return null;
  return items[Math.min(items.length - 1, Math.max(0, to))] ?? null;
}

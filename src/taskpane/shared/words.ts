/** Words that more than one part of the pane says. */
import { DECISIONS } from "../../engine/decision";
import type { DueState } from "../../engine/due/intervals";
import type { ItemResult, Report } from "../../engine/report/model";
import { type BasisId, showRules } from "../../engine/rules/rule-sets";
import { count, showNumber } from "../../engine/words";
import { TYPES_SHEET } from "../../excel/kit/sheets";
import type { LogPlace } from "../../excel/log-place";

export const CAUTION =
  "This supports an inspection by a competent person. It does not replace the maker's instructions, local codes or licensed practice.";
export const DUE_STATES: readonly DueState[] = ["OVERDUE", "DUE SOON", "CURRENT", "NO DATE"];
export const DUE_NAMES: Record<DueState, string> = { OVERDUE: "Overdue", "DUE SOON": "Due soon", CURRENT: "Later", "NO DATE": "No date" };
export const DUE_SYMBOLS: Record<DueState, string> = { OVERDUE: "!", "DUE SOON": "◔", CURRENT: "→", "NO DATE": "–" };
export function showBasis(basis: readonly BasisId[]): string {
  return showRules(basis);
}
export function showPlace(place: LogPlace): string {
  return `${place.sheet}!${place.address}`;
}
/** How the log was found, in words. */
export function showHow(place: LogPlace): string {
  switch (place.how) {
    case "table":
      return `Sheet ${place.sheet}, ${place.address}: the table ${place.table}.`;
    case "selection":
      return `Sheet ${place.sheet}, ${place.address}: your selection.`;
    case "found":
      return `Sheet ${place.sheet}, ${place.address}: found by its headings.`;
    case "register":
      return `Sheet ${place.sheet}, ${place.address}: the register itself.`;
  }
}
/** What to do with a sheet that was just made. */
export function showMade(sheet: string): string {
  return sheet === TYPES_SHEET
    ? `The sheet ${sheet} is made. Write the as-new sizes of each type in its row.`
    : `The sheet ${sheet} is made. Write one limit in a row.`;
}
/** Where a list that was just written stands. */
export function showListed(sheet: string, items: number): string {
  return `The list of ${count(items, "item")} stands on the sheet ${sheet}, one page wide. Print it from there.`;
}
/** A name to read for an item whose id cell is blank. */
export function nameOf(item: ItemResult): string {
  return item.id === "" ? `Row ${String(item.row + 1)} of the log, no id` : item.id;
}
/** The gear kind as it was typed, or what is wrong with it. */
export function kindOf(item: ItemResult): string {
  return item.gearText !== "" ? item.gearText : (item.gear ?? "no gear kind");
}
/** Counts in one breath, for people who listen: "2 REMOVE, 1 KEEP". */
export function showCounts(report: Report): string {
  const parts = DECISIONS.filter((decision) => report.counts[decision] > 0).map(
    (decision) => `${showNumber(report.counts[decision])} ${decision}`,
  );
  return parts.length === 0 ? "no items" : parts.join(", ");
}

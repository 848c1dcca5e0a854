/** What came out, in lines for people or as JSON for programs. */
import { DECISIONS } from "../../engine/decision";
import { showDate } from "../../engine/numbers/calendar";
import { tellLack } from "../../engine/report/lacking";
import { beforeUse, serviceNote } from "../../engine/report/fit-for-use";
import type { ItemResult } from "../../engine/report/model";
import { showRules } from "../../engine/rules/rule-sets";
import { CAUTION } from "../../excel/kit/sheets";
import type { ReadLog } from "../../excel/port";
import { type Output, shownJson } from "./output";

/** One-based sheet row of the first row of a place such as A4:R96. */
const rowOf = (address: string): number => Number(/\d+/.exec(address)?.[0] ?? 1);
/** What is late, due soon or undated, earliest first. */
const dueOnly = (items: readonly ItemResult[]): readonly ItemResult[] =>
  items.filter(({ dueState }) => dueState !== "CURRENT").sort((a, b) => (a.nextDue ?? 0) - (b.nextDue ?? 0) || a.row - b.row);
export function printDue(output: Output, { report }: ReadLog): void {
  const due = dueOnly(report.items);
  for (const item of due) {
    const day = item.nextDue === null ? "no date   " : showDate(item.nextDue);
    output.line(
      `${day}  ${item.dueState.padEnd(8)}  ${item.id.padEnd(12)}  ${item.verdict.decision.padEnd(10)}  ${item.gearText}${item.place === "" ? "" : `, ${item.place}`}`,
    );
  }
  output.line(
    `${String(due.length)} of ${String(report.items.length)} items are late, due within 30 days or undated, as of ${showDate(report.asOf)}.`,
  );
  output.line(CAUTION);
}
export function printJson(output: Output, { place, report }: ReadLog, due: boolean): void {
  const first = rowOf(place.address);
  const items = (due ? dueOnly(report.items) : report.items).map((item) => ({
    row: first + item.row,
    id: item.id,
    gear: item.gear ?? item.gearText,
    decision: item.verdict.decision,
    reason: item.verdict.reason,
    nextDue: item.nextDue === null ? null : showDate(item.nextDue),
    dueState: item.dueState,
    tagged: item.tagged,
  }));
  output.whole(shownJson(items));
}
export function printLines(output: Output, { place, report, refusedLimits = [] }: ReadLog): void {
  const first = rowOf(place.address);
  output.line(
    `${place.sheet}!${place.address}: ${String(report.items.length)} items, rules in force ${showRules(report.basis)}, as of ${showDate(report.asOf)}.`,
  );
  for (const item of report.items) output.line(itemLine(item, first));
  for (const { row, why } of report.passedOver) output.line(`Row ${String(first + row)} passed over: ${why}.`);
  const { refused = [], unmet = [], served = 0 } = report.types ?? {};
  if (served > 0) output.line(`${String(served)} ${served === 1 ? "item takes" : "items take"} as-new sizes from the sheet Gear types.`);
  for (const words of [...refused, ...unmet, ...report.lacking.map(tellLack), ...report.problems, ...refusedLimits]) output.line(words);
  output.line(DECISIONS.map((decision) => `${decision} ${String(report.counts[decision])}`).join(", "));
  output.line(
    Object.entries(report.due)
      .map(([state, count]) => `${state} ${String(count)}`)
      .join(", "),
  );
  const service = serviceNote(report.items);
  if (service !== "") output.line(service);
  output.line(CAUTION);
}
function itemLine(item: ItemResult, firstRow: number): string {
  const due = item.nextDue === null ? "no date" : `${item.dueState.toLowerCase()} ${showDate(item.nextDue)}`;
  const first = beforeUse(item);
  const row = String(firstRow + item.row).padStart(5);
  return `${row}  ${item.id.padEnd(12)}  ${item.verdict.decision.padEnd(10)}  ${due.padEnd(20)}  ${item.gearText}: ${first === "" ? "" : `${first} `}${item.verdict.reason}`;
}

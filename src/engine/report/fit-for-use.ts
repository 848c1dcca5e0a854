/** What the due date asks for before an item is used. Pure; the headless run says the same. */
import { ACTIONS, outOfUse } from "../decision";
import { dueState } from "../due/intervals";
import { readDate } from "../reading/date";
import { showNumber } from "../words";
import type { ItemResult } from "./model";

/** What has to be done before an item whose readings let it stay in use, or "". */
export function beforeUse({ verdict, dueState, cells }: ItemResult): string {
  if (outOfUse(verdict.decision)) return "";
  if (dueState === "OVERDUE") return "Overdue: inspect it before it is used again.";
  if (dueState !== "NO DATE") return "";
  return readDate(cells.get("inspected")).kind === "value"
    ? "The day of its next inspection is not known: inspect it, or put the service right, before it is used."
    : "No date of its last inspection can be used: inspect it, or fill the date, before it is used.";
}
/** Why gear may not be lifted with today, whatever its readings say: tag or date in a word or two, or "". */
export function standsIdle(
  { tagged, nextDue }: Pick<ItemResult, "tagged" | "nextDue">,
  asOf: number,
): "Tagged out" | "Overdue" | "Due today" | "No date" | "" {
  if (tagged) return "Tagged out";
  const state = dueState(nextDue, asOf);
  if (state === "OVERDUE") return "Overdue";
  if (state === "NO DATE") return "No date";
  return dueState(nextDue, asOf + 1) === "OVERDUE" ? "Due today" : "";
}
/** What the user does with the item. Nothing is kept in service while its inspection is late or undated; a nick is still ground out. */
export function actionOf(item: ItemResult): string {
  if (item.tagged) return "Stays out of service; only a qualified person may bring it back.";
  const first = beforeUse(item);
  const action = ACTIONS[item.verdict.decision];
  if (first === "") return action;
  return item.verdict.decision === "DRESS" ? `${first} ${action}` : first;
}
/** Late items that are out of service whatever their date: REMOVE, or tagged out. */
export function lateAndOut(items: readonly ItemResult[]): number {
  return items.filter(({ dueState: state, tagged, verdict }) => state === "OVERDUE" && (tagged || verdict.decision === "REMOVE")).length;
}
/** Says once that blank services were counted as normal, or "". */
export function serviceNote(items: readonly ItemResult[]): string {
  const count = items.filter(({ serviceAssumed }) => serviceAssumed === true).length;
  if (count === 0) return "";
  return `Service is not recorded for ${count === 1 ? "1 item: its date is" : `${showNumber(count)} items: their dates are`} counted as in normal service and may be too late.`;
}

import type { ItemResult } from "../../engine/report/model";
import { capital } from "../../engine/words";
import { showDay, showDistance } from "./days";

/** "31 Mar 2026, 12 days late", or why there is no date. */
export function dueText(item: ItemResult, asOf: number): string {
  if (item.nextDue === null) return item.dueNote === "" ? "No date" : capital(item.dueNote);
  return `${showDay(item.nextDue)}, ${showDistance(item.nextDue, asOf)}`;
}

/** Rows of the log that the register does not hold yet. Pure. */
import { count } from "../../engine/words";
import type { PaneState } from "./state";

/** Ids named at once. */
const NAMED = 3;
/** Names of the log's items that have no row in the register, in the order of the log; none where there is no register beside it. */
export function newRows({ log, register }: Pick<PaneState, "log" | "register">): readonly string[] {
  if (log === null || register === null || log.place.how === "register") return [];
  const there = new Set(register.log.report.items.map(({ id }) => id.toLowerCase()));
  return log.report.items.filter(({ id }) => id !== "" && !there.has(id.toLowerCase())).map(({ id }) => id);
}
/** "2 new rows in the log: TP-8, TP-9". */
export function tellNewRows(ids: readonly string[]): string {
  const named = ids.slice(0, NAMED).join(", ");
  return `${count(ids.length, "new row")} in the log: ${named}${ids.length > NAMED ? ` and ${count(ids.length - NAMED, "more", "more")}` : ""}`;
}

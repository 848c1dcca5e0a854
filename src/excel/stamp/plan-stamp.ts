/** Which of the selected rows of the register may be stamped as inspected today, and why the others may not. Pure. */
import { field } from "../../engine/columns";
import type { ItemResult } from "../../engine/report/model";
import { capital } from "../../engine/words";

export interface StampRow {
  /** Row inside the register's place, and the id that stands in it. */
  readonly row: number;
  readonly id: string;
}
export interface StampPlan {
  readonly rows: readonly StampRow[];
  readonly left: readonly { readonly id: string; readonly why: string }[];
}
export interface Stamp {
  readonly rows: readonly StampRow[];
  /** Serial day. */
  readonly day: number;
  readonly name: string;
}
/** Rows with every reading that their kind needs, not tagged out, and without an overload that a date would lift. */
export function planStamp(items: readonly ItemResult[], selected: readonly number[]): StampPlan {
  const chosen = new Set(selected);
  const rows: StampRow[] = [];
  const left: { id: string; why: string }[] = [];
  for (const item of items) {
    if (!chosen.has(item.row)) continue;
    const why = whyNot(item);
    if (why === null) rows.push({ row: item.row, id: item.id });
    else left.push({ id: item.id === "" ? "no id" : item.id, why });
  }
  return { rows, left };
}
const NAMED = 3;
function whyNot({ id, gear, tagged, verdict }: ItemResult): string | null {
  if (id === "") return "has no id";
  if (gear === null) return "its kind of gear is not known";
  if (tagged) return "is tagged out";
  if (verdict.findings.some(({ why }) => why === "overload"))
    return "another part of its assembly was overloaded: look at this part, then write the date yourself";
  if (verdict.overload) return "shows a sign of overload: write the date yourself";
  const { lacking } = verdict;
  if (lacking.length === 0) return null;
  const named = lacking.slice(0, NAMED).map((one) => field(one).heading);
  return `${capital(named.join(", "))}${lacking.length > NAMED ? ` and ${String(lacking.length - NAMED)} more` : ""} still to record`;
}

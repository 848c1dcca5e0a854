import { outOfUse } from "../../engine/decision";
import { standsIdle } from "../../engine/report/fit-for-use";
import type { ItemResult, Report } from "../../engine/report/model";

/** Gear that a lift can take comes first, each group in the order of the sheet; what it refuses in the end comes last. */
export function usableFirst({ items, asOf }: Pick<Report, "items" | "asOf">): ItemResult[] {
  const usable = (item: ItemResult): boolean =>
    item.id !== "" && item.verdict.decision !== "DRESS" && !outOfUse(item.verdict.decision) && standsIdle(item, asOf) === "";
  return [...items].sort((a, b) => Number(usable(b)) - Number(usable(a)) || a.row - b.row);
}

import type { FieldId } from "../columns";
import type { CellValue } from "../reading/cell-value";
import { readDate } from "../reading/date";
import { readText } from "../reading/text";
import { monthsOf, nextDue } from "./intervals";

/** Next inspection of a row: last inspection and service class; a blank service counts as normal, the longest any rule allows. */
export function dueOf(cells: ReadonlyMap<FieldId, CellValue>, asOf: number): { readonly day: number | null; readonly note: string } {
  const last = readDate(cells.get("inspected"));
  if (last.kind === "missing") return { day: null, note: "no date of the last inspection" };
  if (last.kind === "refused") return { day: null, note: `"${last.text}": ${last.why}` };
  if (last.value > asOf) return { day: null, note: `the inspection date ${last.text} is later than the day of judging` };
  const service = readText(cells.get("service"));
  const months = monthsOf(service === "" ? "normal" : service);
  if (typeof months !== "number") return { day: null, note: months.why };
  return { day: nextDue(last.value, months), note: service === "" ? "service not recorded, counted as normal" : "" };
}

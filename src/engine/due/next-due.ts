import type { FieldId } from "../columns";
import type { CellValue } from "../reading/cell-value";
import { readDate } from "../reading/date";
import { readText } from "../reading/text";
import { type ItemInService, intervalOf, nextDue } from "./intervals";

export interface NextDue {
  readonly day: number | null;
  /** Who sets the interval, or why there is no date. */
  readonly note: string;
  /** The row names no service, and the date rests on normal service. */
  readonly serviceAssumed?: true;
}
/** Next inspection of a row: the last one and the interval in force. A blank service counts as normal. The note says who sets the interval, or why there is none. */
export function dueOf(
  cells: ReadonlyMap<FieldId, CellValue>,
  asOf: number,
  item: Pick<ItemInService, "kind" | "gearText" | "bases">,
): NextDue {
  const last = readDate(cells.get("inspected"));
  if (last.kind === "missing") return { day: null, note: "no date of the last inspection" };
  if (last.kind === "refused") return { day: null, note: `"${last.text}": ${last.why}` };
  if (last.value > asOf) return { day: null, note: `the inspection date ${last.text} is later than the day of judging` };
  const service = readText(cells.get("service"));
  const interval = intervalOf({
    ...item,
    usedOn: readText(cells.get("usedOn")),
    service: service === "" ? "normal" : service,
  });
  if ("why" in interval) return { day: null, note: interval.why };
  const note = `${interval.words}${service === "" ? "; service not recorded, counted as normal" : ""}`;
  return { day: nextDue(last.value, interval.months), note, ...(service === "" ? { serviceAssumed: true } : {}) };
}

/** The items of a log: each with its verdict, its assembly taken into account, and its next inspection. */
import type { FieldId } from "../columns";
import { dueState } from "../due/intervals";
import { dueOf } from "../due/next-due";
import { judgeItem, type Judging } from "../item/judge-item";
import { tagState } from "../item/tag";
import type { ItemVerdict } from "../item/verdict";
import { cellsOf } from "../log/cells";
import { type FoundLog, type ItemRow, itemRows, type Rows } from "../log/find-log";
import type { Grid } from "../log/grid";
import { matchKind } from "../names/gear-name";
import type { CellValue } from "../reading/cell-value";
import { readDate } from "../reading/date";
import { readText } from "../reading/text";
import { inForce } from "../rules/rule-sets";
import type { ItemResult } from "./model";

export interface LogJudging extends Judging {
  readonly asOf: number;
}
/** Judges every item of a log whose headings are known. */
export function judgeItems(
  grid: Grid,
  found: FoundLog,
  request: LogJudging,
): { readonly items: readonly ItemResult[]; readonly passedOver: Rows["passedOver"] } {
  const { items: rows, passedOver } = itemRows(grid, found);
  const overloads = overloadDates(rows, found, request);
  return { items: rows.map((row) => judgeRow(row, found, request, overloads.get(row.row) ?? null)), passedOver };
}
/** Verdict of one row on its own, without the rest of its assembly. */
function verdictOfRow(row: ItemRow, found: Pick<FoundLog, "headings">, judging: Judging): ItemVerdict {
  return judgeItem(row.cells.get("gear"), cellsOf(row.cells, found.headings, undefined, row.besides), judging);
}
/**
 * A part found stretched means that its whole assembly was overloaded. For each other part of that assembly: the day on
 * which the overload was found (the inspection's date, else the day of judging).
 */
function overloadDates(rows: readonly ItemRow[], found: FoundLog, request: LogJudging): ReadonlyMap<number, number> {
  const assemblies = new Map<string, ItemRow[]>();
  for (const row of rows) {
    const name = readText(row.cells.get("assembly")).toLowerCase();
    if (name !== "") assemblies.set(name, [...(assemblies.get(name) ?? []), row]);
  }
  const dates = new Map<number, number>();
  for (const parts of assemblies.values()) {
    if (parts.length < 2) continue;
    const signs = parts.filter((row) => verdictOfRow(row, found, request).findings.some((f) => f.overload));
    for (const sign of signs) {
      const seen = readDate(sign.cells.get("inspected"));
      const day = seen.kind === "value" ? seen.value : request.asOf;
      for (const other of parts) if (other !== sign) dates.set(other.row, Math.max(day, dates.get(other.row) ?? 0));
    }
  }
  return dates;
}
function judgeRow(row: ItemRow, found: FoundLog, request: LogJudging, overload: number | null): ItemResult {
  const values: ReadonlyMap<FieldId, CellValue> = overload === null ? row.cells : new Map(row.cells).set("overload", { serial: overload });
  const cells = cellsOf(values, found.headings, undefined, row.besides);
  const gearText = readText(row.cells.get("gear"));
  const match = matchKind(gearText);
  const due = match.ok
    ? dueOf(row.cells, request.asOf, { kind: match.kind.id, gearText, bases: inForce(request.basis) })
    : { day: null, note: "the gear kind is not known" };
  return {
    row: row.row,
    id: readText(row.cells.get("id")),
    gear: match.ok ? match.kind.id : null,
    gearText,
    place: readText(row.cells.get("place")),
    assembly: readText(row.cells.get("assembly")),
    tagged: tagState(cells, request.asOf).out,
    verdict: judgeItem(row.cells.get("gear"), cells, request),
    nextDue: due.day,
    dueState: dueState(due.day, request.asOf),
    dueNote: due.note,
    cells: row.cells,
    besides: row.besides,
  };
}

/** The items of a log: each with its verdict, its assembly taken into account, and its next inspection. */
import { readDate, readText } from "./cell";
import type { FieldId } from "./fields";
import { matchKind } from "./gear/match";
import { judgeItem, tagState, type Judging } from "./item";
import type { CellValue, ItemResult, ItemVerdict } from "./model";
import { dueState, monthsOf, nextDue } from "./schedule";
import { cellsOf, itemRows, type FoundLog, type Grid, type ItemRow, type Rows } from "./sheet";

export interface LogJudging extends Judging {
  readonly asOf: number;
}

/** Judges every item of a log whose headings are known. */
export function judgeItems(grid: Grid, found: FoundLog, request: LogJudging): { readonly items: readonly ItemResult[]; readonly passedOver: Rows["passedOver"] } {
  const { items: rows, passedOver } = itemRows(grid, found);
  const overloads = overloadDates(rows, found, request);
  return { items: rows.map((row) => judgeRow(row, found, request, overloads.get(row.row) ?? null)), passedOver };
}

/** Verdict of one row on its own, without the rest of its assembly. */
function verdictOfRow(row: ItemRow, found: Pick<FoundLog, "headings">, judging: Judging): ItemVerdict {
  return judgeItem(row.cells.get("gear"), cellsOf(row.cells, found.headings), judging);
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
  const cells = cellsOf(values, found.headings);
  const gearText = readText(row.cells.get("gear"));
  const match = matchKind(gearText);
  const due = match.ok ? dueOf(row.cells, request.asOf) : { day: null, note: "the gear kind is not known" };
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
  };
}

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

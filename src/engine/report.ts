/** A whole log judged: every item, the assemblies, the dates, the counts. */
import { inForce, type BasisId } from "./bases";
import { inUse } from "./check/situation";
import { readDate, readText } from "./cell";
import { FIELD_IDS, type FieldId } from "./fields";
import { GEAR } from "./gear/index";
import { matchKind } from "./gear/match";
import { fieldsOf } from "./gear/fields-of";
import { judgeItem, tagState, type Judging } from "./item";
import type { CellValue, ItemResult, ItemVerdict, Report } from "./model";
import { dueState, monthsOf, nextDue } from "./schedule";
import { cellsOf, findLog, itemRows, type FoundLog, type Grid, type ItemRow } from "./sheet";
import { DECISIONS } from "./verdict";

export interface ReportRequest extends Judging {
  readonly asOf: number;
  readonly choices?: Readonly<Record<string, FieldId | null>>;
}

/** Judges a log; null when no heading row of a log is found in the grid. */
export function reportOn(grid: Grid, request: ReportRequest): Report | null {
  const found = findLog(grid, request.choices);
  return found === null ? null : reportWith(grid, found, request);
}

/** The same for a grid whose headings are known. */
export function reportWith(grid: Grid, found: FoundLog, request: ReportRequest): Report {
  const { items: rows, passedOver } = itemRows(grid, found);
  const overloads = overloadDates(rows, found, request);
  const items = rows.map((row) => judgeRow(row, found, request, overloads.get(row.row) ?? null));
  return {
    items,
    counts: countBy(DECISIONS, items.map((item) => item.verdict.decision)),
    due: countBy(["OVERDUE", "DUE SOON", "CURRENT", "NO DATE"], items.map((item) => item.dueState)),
    headings: found.headings.matches,
    missingChecks: missingChecks(items, new Set(found.headings.columns.keys()), request.basis),
    passedOver,
    problems: [...found.headings.problems, ...doubledIds(items)],
    basis: request.basis,
    asOf: request.asOf,
  };
}

function countBy<K extends string>(keys: readonly K[], values: readonly K[]): Readonly<Record<K, number>> {
  const counts = Object.fromEntries(keys.map((k) => [k, 0])) as Record<K, number>;
  for (const value of values) counts[value] += 1;
  return counts;
}

/** Verdict of one row on its own, without the rest of its assembly. */
export function verdictOfRow(row: ItemRow, found: Pick<FoundLog, "headings">, judging: Judging): ItemVerdict {
  return judgeItem(row.cells.get("gear"), cellsOf(row.cells, found.headings), judging);
}

/**
 * A part found stretched means that its whole assembly was overloaded. For each other part of that assembly: the day on
 * which the overload was found (the inspection's date, else the day of judging).
 */
function overloadDates(rows: readonly ItemRow[], found: FoundLog, request: ReportRequest): ReadonlyMap<number, number> {
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

function judgeRow(row: ItemRow, found: FoundLog, request: ReportRequest, overload: number | null): ItemResult {
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

function doubledIds(items: readonly ItemResult[]): readonly string[] {
  const seen = new Map<string, number>();
  for (const { id } of items) if (id !== "") seen.set(id.toLowerCase(), (seen.get(id.toLowerCase()) ?? 0) + 1);
  const doubled = [...seen].filter(([, count]) => count > 1);
  const first = items.find((item) => item.id.toLowerCase() === doubled[0]?.[0])?.id ?? "";
  const unnamed = items.filter((item) => item.id === "").length;
  return [
    ...(doubled.length === 0 ? [] : [`${doubled.length === 1 ? `The id "${first}" stands` : `${String(doubled.length)} ids, "${first}" first, stand`} on more than one row; give each item an id of its own.`]),
    ...(unnamed === 0 ? [] : [`${String(unnamed)} ${unnamed === 1 ? "row has" : "rows have"} no id; give each item an id.`]),
  ];
}

/** Checks that the kinds in this log need and that no column of the log gives. */
function missingChecks(items: readonly ItemResult[], there: ReadonlySet<FieldId>, basis: readonly BasisId[]): readonly string[] {
  const bases = inForce(basis);
  return GEAR.flatMap((kind) => {
    const count = items.filter((item) => item.gear === kind.id).length;
    if (count === 0) return [];
    const absent = kind.checks.filter((check) => check.required && inUse(check, bases) && fieldsOf(check).slice(0, check.kind === "seen" ? 1 : 2).some((id) => !there.has(id)));
    if (absent.length === 0) return [];
    return [`${String(count)} ${count === 1 ? kind.id : kind.plural}: no column for ${absent.map((c) => c.name).join(", ")}; without ${absent.length === 1 ? "it" : "them"} the best possible is NO VERDICT.`];
  });
}

/** Fields that the kinds in a log read, in register order; the item's own columns come first. */
export function fieldsFor(kinds: ReadonlySet<string>, present: ReadonlySet<FieldId>, basis: readonly BasisId[]): readonly FieldId[] {
  const bases = inForce(basis);
  const used = new Set<FieldId>(GEAR.filter((kind) => kinds.has(kind.id)).flatMap((kind) => kind.checks.flatMap((check) => (check.required && inUse(check, bases) ? [...fieldsOf(check)].filter((id) => id !== "acrossNew" && id !== "acrossNow") : []))));
  const always: readonly FieldId[] = ["id", "gear", "size", "ratedLoad", "unit", "assembly", "place", "service", "inspected", "inspector", "tagged", "releasedBy", "releasedOn", "remarks"];
  return FIELD_IDS.filter((id) => id !== "overload" && (always.includes(id) || used.has(id) || present.has(id)));
}

/** A whole log judged: every item, the counts, what the log lacks and what must be put right. */
import { inUse } from "../check/in-force";
import { FIELD_IDS, type FieldId } from "../columns";
import { DECISIONS } from "../decision";
import { fieldsOf } from "../gear/columns-of";
import { GEAR } from "../gear/index";
import { findLog, type FoundLog } from "../log/find-log";
import type { Grid } from "../log/grid";
import { questionsOf } from "../log/questions";
import type { Unit } from "../numbers/lengths";
import { type BasisId, inForce } from "../rules/rule-sets";
import { judgeItems, type LogJudging } from "./judge-items";
import { lackingOf } from "./lacking";
import type { ItemResult, Report } from "./model";

export interface ReportRequest extends LogJudging {
  readonly choices?: Readonly<Record<string, FieldId | null>>;
  /** Unit of bare sizes that neither heading, Unit column nor cell tells; null leaves them without a verdict. */
  readonly unit?: Unit | null;
}
/** Judges a log; null when no heading row of a log is found in the grid. */
export function reportOn(grid: Grid, request: ReportRequest): Report | null {
  const found = findLog(grid, request.choices, request);
  return found === null ? null : reportWith(grid, found, request);
}
function reportWith(grid: Grid, found: FoundLog, request: ReportRequest): Report {
  const { items, passedOver, types } = judgeItems(grid, found, request);
  return {
    items,
    counts: countBy(
      DECISIONS,
      items.map((item) => item.verdict.decision),
    ),
    due: countBy(
      ["OVERDUE", "DUE SOON", "CURRENT", "NO DATE"],
      items.map((item) => item.dueState),
    ),
    headings: found.headings.matches,
    lacking: lackingOf(items, new Set(found.headings.columns.keys())),
    passedOver,
    questions: questionsOf(items, found.headings),
    ...(types === undefined ? {} : { types }),
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
function doubledIds(items: readonly ItemResult[]): readonly string[] {
  const seen = new Map<string, number>();
  for (const { id } of items) if (id !== "") seen.set(id.toLowerCase(), (seen.get(id.toLowerCase()) ?? 0) + 1);
  const doubled = [...seen].filter(([, count]) => count > 1);
  const first = items.find((item) => item.id.toLowerCase() === doubled[0]?.[0])?.id ?? "";
  const unnamed = items.filter((item) => item.id === "").length;
  return [
    ...(doubled.length === 0
      ? []
      : [
          `${doubled.length === 1 ? `The id "${first}" stands` : `${String(doubled.length)} ids, "${first}" first, stand`} on more than one row; give each item an id of its own.`,
        ]),
    ...(unnamed === 0 ? [] : [`${String(unnamed)} ${unnamed === 1 ? "row has" : "rows have"} no id; give each item an id.`]),
  ];
}
/** Fields that the kinds in a log read, in register order; the item's own columns come first. */
export function fieldsFor(kinds: ReadonlySet<string>, present: ReadonlySet<FieldId>, basis: readonly BasisId[]): readonly FieldId[] {
  const bases = inForce(basis);
  const used = new Set<FieldId>(
    GEAR.filter((kind) => kinds.has(kind.id)).flatMap((kind) =>
      kind.checks.flatMap((check) =>
        check.required && inUse(check, bases) ? [...fieldsOf(check)].filter((id) => id !== "acrossNew" && id !== "acrossNow") : [],
      ),
    ),
  );
  const always: readonly FieldId[] = [
    "id",
    "gear",
    "size",
    "ratedLoad",
    "unit",
    "assembly",
    "place",
    "service",
    "inspected",
    "inspector",
    "tagged",
    "releasedBy",
    "releasedOn",
    "remarks",
  ];
  return FIELD_IDS.filter((id) => id !== "overload" && (always.includes(id) || used.has(id) || present.has(id)));
}

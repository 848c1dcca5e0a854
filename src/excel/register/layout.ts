/**
 * Which columns a register has, in which order. A new one has them by groups. One that stands keeps its columns where they
 * are, whoever moved them: other formulas hang on them, and cells that never move never come to stand under another
 * heading. What is missing is put beside its neighbours. Pure.
 */
import { field, FIELD_IDS, type FieldId } from "../../engine/columns";
import { key } from "../../engine/log/match-headings";
import { REGISTER_TABLE } from "../kit/sheets";
import { RESULT_COLUMNS, type ResultColumn, RESULTS } from "./columns";
import { FRONT_FIELDS, type GroupName, groupOf, inGroups } from "./groups";

export type Role =
  | { readonly kind: "result"; readonly result: ResultColumn }
  | { readonly kind: "input"; readonly field: FieldId }
  /** A column of the log whose heading is not understood: it is judged with the others, so that it asks. */
  | { readonly kind: "carried" }
  /** A column that people added. */
  | { readonly kind: "own" };
export interface LayoutColumn {
  readonly heading: string;
  readonly role: Role;
  /** Its place in the table as it stands, or null where it is new. */
  readonly from: number | null;
}
export interface Layout {
  readonly columns: readonly LayoutColumn[];
  /** True where the table is of the form that earlier versions wrote. */
  readonly old: boolean;
}
const BY_HEADING: ReadonlyMap<string, FieldId> = new Map(FIELD_IDS.map((id) => [key(field(id).heading), id]));
const RESULT_KEYS: ReadonlyMap<string, ResultColumn> = new Map(RESULT_COLUMNS.map((c) => [key(c.heading), c]));
/** What a column of a register is, by its heading. */
export function roleOf(heading: string, carried: ReadonlySet<string> = new Set()): Role {
  const result = RESULT_KEYS.get(key(heading));
  if (result) return { kind: "result", result };
  const id = BY_HEADING.get(key(heading));
  if (id !== undefined) return { kind: "input", field: id };
  return carried.has(heading) ? { kind: "carried" } : { kind: "own" };
}
const resultNamed = (heading: string): ResultColumn => {
  const result = RESULTS.get(heading);
  if (!result) throw new Error(`There is no column ${heading}.`);
  return result;
};
const input = (id: FieldId): LayoutColumn => ({ heading: field(id).heading, role: { kind: "input", field: id }, from: null });
const carriedColumn = (heading: string): LayoutColumn => ({ heading, role: { kind: "carried" }, from: null });
const resultColumn = (result: ResultColumn): LayoutColumn => ({ heading: result.heading, role: { kind: "result", result }, from: null });
/** Columns of a new register: what people look for first, then the input columns group by group. */
export function newLayout(fields: readonly FieldId[], carried: readonly string[]): Layout {
  const ordered = inGroups(fields);
  const front = ordered.filter((id) => FRONT_FIELDS.includes(id));
  const record = ordered.filter((id) => groupOf(id) === "record");
  const before = ordered.filter((id) => !FRONT_FIELDS.includes(id) && groupOf(id) !== "record");
  return {
    old: false,
    columns: [
      resultColumn(resultNamed("Flag")),
      ...front.map(input),
      ...RESULT_COLUMNS.filter(({ heading }) => heading !== "Flag").map(resultColumn),
      ...before.map(input),
      ...carried.map(carriedColumn),
      ...record.map(input),
    ],
  };
}
/** Columns of a register that stands, with those that it lacks. */
export function grownLayout(headings: readonly string[], fields: readonly FieldId[], carried: readonly string[]): Layout {
  const carriedHere = new Set(carried);
  const columns: LayoutColumn[] = headings.map((heading, from) => ({ heading, role: roleOf(heading, carriedHere), from }));
  const old = !columns.some(({ heading }) => heading === "Judged");
  const at = (heading: string): number => columns.findIndex((c) => key(c.heading) === key(heading));
  const put = (column: LayoutColumn, where: number): void => {
    columns.splice(where, 0, column);
  };
  for (const column of newLayout(fields, carried).columns) {
    if (at(column.heading) >= 0) continue;
    if (column.role.kind === "result")
      put(column, old ? placeInOld(column.role.result, columns) : afterNeighbour(column, columns, "result"));
    else put(column, afterNeighbour(column, columns, "typed", fields, carried));
  }
  return { columns, old };
}
/** Where an earlier register takes a new worked-out column: the line that says why before those it had, the rest behind them. */
function placeInOld(result: ResultColumn, columns: readonly LayoutColumn[]): number {
  const at = (heading: string): number => columns.findIndex((c) => c.heading === heading);
  if (result.heading === "Why") {
    const first = columns.findIndex((c, index) => index > at("Id") && c.role.kind === "result");
    return first < 0 ? columns.length : first;
  }
  if (result.heading === "Flag") return 0;
  const last = columns.reduce((found, c, index) => (c.role.kind === "result" ? index : found), -1);
  // Before the state: the button that folds stands over the column behind the folded ones.
  return result.heading === "Judged" && at("Due state") >= 0 ? at("Due state") : last + 1;
}
/** Behind the nearest column that stands before it in a new register and is of its sort here; else before the nearest behind it. */
function afterNeighbour(
  column: LayoutColumn,
  columns: readonly LayoutColumn[],
  sort: "result" | "typed",
  fields: readonly FieldId[] = [],
  carried: readonly string[] = [],
): number {
  const order: readonly LayoutColumn[] =
    sort === "result" ? RESULT_COLUMNS.map(resultColumn) : newLayout(fields, carried).columns.filter(({ role }) => role.kind !== "result");
  const front = (c: LayoutColumn): boolean => c.role.kind === "input" && FRONT_FIELDS.includes(c.role.field);
  const same = order.filter((c) => sort === "result" || front(c) === front(column));
  const index = same.findIndex(({ heading }) => heading === column.heading);
  const at = (c: LayoutColumn): number => columns.findIndex(({ heading }) => key(heading) === key(c.heading));
  for (let i = index - 1; i >= 0; i -= 1) {
    const neighbour = same[i];
    const found = neighbour ? at(neighbour) : -1;
    if (found >= 0) return found + 1;
  }
  for (let i = index + 1; i < same.length; i += 1) {
    const neighbour = same[i];
    const found = neighbour ? at(neighbour) : -1;
    if (found >= 0) return found;
  }
  const last = columns.reduce((found, c, i) => (c.role.kind === "own" ? found : i), -1);
  return last + 1;
}
export interface Run {
  readonly from: number;
  readonly count: number;
}
/** Runs of neighbouring columns that are judged: from the first typed column to the last, without a worked-out one between. */
export function judgedRuns({ columns }: Pick<Layout, "columns">): readonly Run[] {
  const runs: { from: number; to: number }[] = [];
  let open = false;
  columns.forEach(({ role }, index) => {
    if (role.kind === "result") open = false;
    else if (role.kind !== "own") {
      const last = runs.at(-1);
      if (open && last) last.to = index;
      else runs.push({ from: index, to: index });
      open = true;
    }
  });
  return runs.map(({ from, to }) => ({ from, count: to - from + 1 }));
}
const escaped = (heading: string): string => heading.replace(/['[\]#@]/g, "'$&");
/** The call that judges a row over its typed columns; blank cells are guarded, because some hosts hand them over as 0. */
export function judgedFormula(layout: Layout, rules: string): string {
  const [first, second] = judgedRuns(layout).map(({ from, count }) => {
    const [a, b] = [from, from + count - 1].map((index) => `[${escaped(layout.columns[index]?.heading ?? "")}]`);
    const row = `${REGISTER_TABLE}[@${a ?? ""}:${b ?? ""}]`;
    return { headings: `${REGISTER_TABLE}[[#Headers],${a ?? ""}:${b ?? ""}]`, row: `IF(ISBLANK(${row}),"",${row})` };
  });
  const more = second === undefined ? "" : `,${second.headings},${second.row}`;
  return `=GEAR.JUDGEROW(${first?.headings ?? ""},${first?.row ?? ""},${rules}${more})`;
}
export interface Fold extends Run {
  readonly group: GroupName;
}
/** Name of the group that a column stands in. */
function groupName({ role }: LayoutColumn): GroupName {
  switch (role.kind) {
    case "result":
      return role.result.heading === "Flag" ? "the item" : "the answer";
    case "input":
      return groupOf(role.field);
    case "carried":
      return "what was seen";
    default:
      return "your own";
  }
}
/** First column of each group, for the row of names. */
export function groupHeads({ columns }: Layout): readonly { readonly column: number; readonly group: GroupName }[] {
  const heads: { column: number; group: GroupName }[] = [];
  columns.forEach((column, index) => {
    const group = groupName(column);
    if (heads.at(-1)?.group !== group) heads.push({ column: index, group });
  });
  return heads;
}
/** Whether a column is on the first screen, whatever is folded. */
function alwaysShown({ role }: LayoutColumn): boolean {
  if (role.kind === "result") return role.result.sight === "shown";
  return role.kind === "own" || (role.kind === "input" && FRONT_FIELDS.includes(role.field));
}
/**
 * Runs of columns that fold. The sheet's button for a run stands over the column behind it, and runs that touch would be
 * one: so each is followed by a column that stays in sight, if need be its own last one.
 */
export function folds({ columns }: Layout): readonly Fold[] {
  const found: Fold[] = [];
  let index = 0;
  while (index < columns.length) {
    const first = columns[index];
    if (first === undefined || alwaysShown(first) || isHidden(first)) {
      index += 1;
      continue;
    }
    let end = index;
    for (
      let next = columns[end];
      next && !alwaysShown(next) && !isHidden(next) && groupName(next) === groupName(first);
      next = columns[end]
    )
      end += 1;
    const behind = columns[end];
    // At the end of the table the button stands over the empty column behind it.
    const closed = behind === undefined ? groupName(first) === "the answer" : alwaysShown(behind);
    const count = end - index - (closed ? 0 : 1);
    if (count > 0) found.push({ from: index, count, group: groupName(first) });
    index = end;
  }
  return found;
}
export const isHidden = ({ role }: LayoutColumn): boolean => role.kind === "result" && role.result.sight === "hidden";

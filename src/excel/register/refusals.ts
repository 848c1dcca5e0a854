/** What a rebuild refuses by name, before it writes. Pure. */
import { field, type FieldId } from "../../engine/columns";
import { key } from "../../engine/log/match-headings";
import { readText } from "../../engine/reading/text";
import { columnLetters } from "../kit/addresses";
import { HEADING_ROW } from "../kit/sheets";
import { WorkbookError } from "../kit/workbook-error";
import type { Copied } from "./copied-sheet";
import { judgedRuns, type Layout, roleOf } from "./layout";
import { type OldRegister, shapeOf } from "./shape";

/** A heading of the register that somebody changed, with what it was. */
export interface Renamed {
  readonly column: number;
  readonly now: string;
  readonly was: string;
}
/** Worked-out columns that registers of the earlier form had. */
const EARLIER = new Set(
  [
    "Flag",
    "Overload sign",
    "Overload in assembly",
    "Log differs",
    "Verdict",
    "Reason",
    "Comes out at",
    "Used",
    "Next due",
    "Due state",
  ].map(key),
);
/** Throws with a sentence; `sheet` is the register's name now. */
export function refuse(
  old: OldRegister,
  copied: Copied,
  layout: Layout,
  { name: sheet, unfinished }: { readonly name: string; readonly unfinished: boolean },
): void {
  refuseSameIds(old, sheet);
  const renamed = renamedHeadings(old, copied);
  if (renamed.length > 0) throw renamedError(renamed, sheet);
  const clash = layout.columns.find(
    ({ heading, role, from }) => layout.old && !unfinished && role.kind === "result" && from !== null && !EARLIER.has(key(heading)),
  );
  if (clash)
    throw new WorkbookError(
      "other shape",
      `A column of your own in "${sheet}" is named "${clash.heading}", which the register needs for itself. Give yours another name, then build again; nothing was written.`,
    );
  const runs = judgedRuns(layout);
  if (runs.length > 2) {
    const apart = layout.columns[runs[2]?.from ?? 0]?.heading ?? "";
    throw new WorkbookError(
      "other shape",
      `The column "${apart}" of "${sheet}" stands apart from the other input columns, between worked-out ones. Move it back beside them, then build again; nothing was written.`,
    );
  }
}
/** The same id on two rows: which of them counts is not for the add-in to say. */
function refuseSameIds(old: OldRegister, sheet: string): void {
  const shape = shapeOf(old);
  const column = shape.ok ? (shape.columns.get("id") ?? -1) : -1;
  const rows = new Map<string, { readonly id: string; readonly rows: number[] }>();
  old.values.forEach((line, index) => {
    const id = readText(line[column]);
    if (id === "") return;
    const found = rows.get(id.toLowerCase()) ?? { id, rows: [] };
    found.rows.push(HEADING_ROW + 1 + index);
    rows.set(id.toLowerCase(), found);
  });
  const twice = [...rows.values()].filter((found) => found.rows.length > 1);
  const [first] = twice;
  if (first === undefined) return;
  const more = twice.length === 1 ? "" : ` So do ${String(twice.length - 1)} other ids.`;
  throw new WorkbookError(
    "duplicate",
    `The id "${first.id}" stands on rows ${first.rows.join(" and ")} of "${sheet}".${more} Keep one row for each item, then build again; nothing was written.`,
  );
}
/**
 * Input columns that the register had at the last build and has no more, while a column with cells that are not known stands
 * where they stood or holds what they held: its readings would no longer be judged.
 */
export function renamedHeadings(old: OldRegister, copied: Copied): readonly Renamed[] {
  const had = (copied.headings ?? []).length > 0 ? (copied.headings ?? []) : fieldHeadings(copied);
  const now = old.headings;
  const here = new Set(now.map(key));
  const before = new Set(had.map(key));
  const missing = had.filter((heading) => roleOf(heading).kind === "input" && !here.has(key(heading)));
  const unknown = now
    .map((heading, column) => ({ heading, column }))
    .filter(({ heading }) => !before.has(key(heading)) && roleOf(heading).kind !== "result");
  const filled = unknown.filter(({ column }) => old.values.some((line) => readText(line[column]) !== ""));
  return missing.flatMap((was) => {
    const place = had.indexOf(was);
    const beside = (column: number): boolean =>
      ((copied.headings ?? []).length > 0 && place > 0 && key(now[column - 1] ?? "") === key(had[place - 1] ?? "")) ||
      ((copied.headings ?? []).length > 0 && place + 1 < had.length && key(now[column + 1] ?? "") === key(had[place + 1] ?? ""));
    const found = filled.find(({ column }) => beside(column)) ?? filled.find(({ column }) => holdsSame(old, copied, was, column));
    return found === undefined ? [] : [{ column: found.column, now: found.heading, was }];
  });
}
/** Headings of the fields that were copied, where an earlier version kept no list. */
function fieldHeadings(copied: Copied): readonly string[] {
  const ids = new Set<FieldId>([...copied.rows.values()].flatMap((cells) => [...cells.keys()]));
  return [...ids].map((id) => field(id).heading);
}
/** At least half of what was copied stands in the column. */
function holdsSame(old: OldRegister, copied: Copied, was: string, column: number): boolean {
  const role = roleOf(was);
  const shape = shapeOf(old);
  if (role.kind !== "input" || !shape.ok) return false;
  const idColumn = shape.columns.get("id") ?? -1;
  let known = 0,
    same = 0;
  for (const line of old.values) {
    const copy = copied.rows.get(readText(line[idColumn]).toLowerCase())?.get(role.field) ?? "";
    if (copy === "") continue;
    known += 1;
    if (readText(line[column]) === copy) same += 1;
  }
  return known > 0 && same * 2 >= known;
}
function renamedError(renamed: readonly Renamed[], sheet: string): WorkbookError {
  const each = renamed.map(({ now, was, column }) => `"${was}" is called "${now}" now (${columnLetters(column)}${String(HEADING_ROW)})`);
  return new WorkbookError(
    "renamed",
    `In "${sheet}" ${renamed.length === 1 ? "a heading was" : "headings were"} renamed over readings, which are then no longer judged: ${each.join("; ")}. Name ${renamed.length === 1 ? "it" : "them"} back, then build again; nothing was written.`,
    renamed.map(({ now, was }) => ({ now, was })),
  );
}

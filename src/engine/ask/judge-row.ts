/**
 * Everything of one row as one text, for a sheet that asks once for a row and takes the answer apart by built-in formulas.
 * The form is fixed and has a number: a head, then the parts in the order below, each closed by a mark that is taken out of
 * all typed text, so that nothing that people type can stand for a part. The words come first, the long sentence last: an
 * answer that is cut can still be read. Parts are found by their marks, not by counting characters, because programs do
 * not agree on how many characters some signs are.
 */
import { field, type FieldId } from "../columns";
import { dueOf } from "../due/next-due";
import { fieldsOf } from "../gear/columns-of";
import { GEAR } from "../gear/index";
import type { GearKind } from "../gear/kind";
import { readBasis } from "../house/rules-in-force";
import type { ItemVerdict } from "../item/verdict";
import type { Grid } from "../log/grid";
import type { Headings } from "../log/match-headings";
import { rowCells } from "../log/merge-columns";
import type { CellValue } from "../reading/cell-value";
import { readDate } from "../reading/date";
import { readText } from "../reading/text";
import { inForce } from "../rules/rule-sets";
import { headingsOf, judgeRowOf } from "./one-row";

/** Head of the form; the number changes with the form. */
export const ROW_HEAD = "GEAR1";
/** Character that closes each part, behind a space that keeps the words apart for a reader: one that a file can hold and that is no blank. */
export const ROW_MARK = "\u007f";
/** Parts behind the head, in order. */
export const ROW_PARTS = [
  "decision",
  "short",
  /** Millionths of the allowance, "over" beyond any share, or nothing: a decimal point is not read alike everywhere. */
  "share",
  "comesOut",
  /** "sign" where the row shows that the part was overloaded. */
  "overload",
  "kind",
  /** "out" where the item is tagged out. */
  "tag",
  /** Serial days: the inspection as it was read, and the next one. */
  "inspected",
  "due",
  /** The assembly in a form in which no sign means more than itself to a look-up. */
  "assembly",
  /** One figure for each column given: 0 is not read for this kind, 1 is read, 2 is missing or unreadable, - is no reading. */
  "cells",
  /** Headings, each between bars. */
  "needed",
  "missing",
  "reason",
] as const;
export type RowPart = (typeof ROW_PARTS)[number];
/** A cell takes 32,767 characters; this leaves room for the parts before it. */
const LONGEST_REASON = 24_000;
/** Last day a workbook can hold: a cell has no day of judging. */
const NO_DAY = 2_958_465;
/** Columns that some kind's checks read; the others are never called "not needed". */
const READINGS: ReadonlySet<FieldId> = new Set(GEAR.flatMap((kind) => [...readBy(kind)]));
/** Takes out what could stand for a mark, and all else that cannot be seen. */
// eslint-disable-next-line no-control-regex
const plain = (text: string): string => text.replace(/[\u0000-\u001f\u007f-\u009f\u2028\u2029]+/g, " ");
/**
 * Judges one row and says everything in one text. A table whose typed columns stand in two blocks hands over both.
 * @param headers Heading row over the row's columns.
 * @param row One row of cells.
 * @param basis Rule sets, or the range of the house limits.
 * @param headers2 Headings of the second block, or null.
 * @param row2 Cells of the second block, or null.
 */
export function rowText(headers: Grid, row: Grid, basis: unknown, headers2: Grid | null, row2: Grid | null): string {
  const given = beside(headers, headers2);
  const line = beside(row, row2);
  const verdict = judgeRowOf(given, line, basis);
  const [cells = []] = line;
  const headings = headingsOf(given);
  const readable = headings.problems.length === 0 && headings.matches.length === cells.length;
  return written(verdict, readable ? factsOf(verdict, cells, headings, basis) : NO_FACTS);
}
function beside(first: Grid, second: Grid | null): Grid {
  if (second === null) return first;
  return first.map((line, index) => [...line, ...(second[index] ?? [])]);
}
interface Facts {
  readonly inspected: number | null;
  readonly due: number | null;
  readonly assembly: string;
  readonly cells: string;
  readonly needed: readonly string[];
  readonly missing: readonly string[];
}
const NO_FACTS: Facts = { inspected: null, due: null, assembly: "", cells: "", needed: [], missing: [] };
function factsOf(verdict: ItemVerdict, cells: readonly CellValue[], headings: Headings, basis: unknown): Facts {
  const values = rowCells(cells, headings);
  const nameOf = (id: FieldId): string => headings.names.get(id) ?? field(id).heading;
  const inspected = readDate(values.get("inspected"));
  const lacking = new Set(verdict.lacking);
  const rules = readBasis(basis);
  const due =
    verdict.kind === null || !rules.ok
      ? null
      : dueOf(values, NO_DAY, { kind: verdict.kind, gearText: readText(values.get("gear")), bases: inForce(rules.ids) }).day;
  return {
    inspected: inspected.kind === "value" ? inspected.value : null,
    due,
    assembly: lookUpKey(readText(values.get("assembly"))),
    cells: headings.matches.map((match) => signOf(match.field, verdict.kind, lacking)).join(""),
    needed: verdict.needed.map(nameOf),
    missing: verdict.lacking.map(nameOf),
  };
}
/** Columns that say something of an item of this kind. */
function readBy(kind: GearKind): ReadonlySet<FieldId> {
  return new Set([
    ...kind.checks.flatMap((check) => fieldsOf(check)),
    ...(kind.asNew ?? []).flatMap(({ column, when }) => [column, when]),
    ...(kind.variants === undefined ? [] : [kind.variants.field]),
  ]);
}
const READ_BY: ReadonlyMap<string, ReadonlySet<FieldId>> = new Map(GEAR.map((kind) => [kind.id, readBy(kind)]));
function signOf(id: FieldId | null, kind: string | null, lacking: ReadonlySet<FieldId>): string {
  if (id === null || kind === null) return "-";
  if (lacking.has(id)) return "2";
  if (!READINGS.has(id)) return "-";
  return READ_BY.get(kind)?.has(id) === true ? "1" : "0";
}
/** No blank, no number, no wildcard and no comparison, whatever people call an assembly; small letters, as names are compared. */
function lookUpKey(name: string): string {
  if (name === "") return "";
  const signs: Readonly<Record<string, string>> = { "^": "^^", "*": "^s", "?": "^q", "~": "^t" };
  return `a:${plain(name)
    .toLowerCase()
    .replace(/[\^*?~]/g, (sign) => signs[sign] ?? sign)}`;
}
const barred = (names: readonly string[]): string => (names.length === 0 ? "" : `|${names.join("|")}|`);
function shareText(share: number | null): string {
  if (share === null) return "";
  return Number.isFinite(share) ? String(Math.round(share * 1_000_000)) : "over";
}
function written(verdict: ItemVerdict, facts: Facts): string {
  const reason = verdict.reason.length > LONGEST_REASON ? `${verdict.reason.slice(0, LONGEST_REASON)} ...` : verdict.reason;
  const parts: Readonly<Record<RowPart, string>> = {
    decision: verdict.decision,
    short: verdict.short.slice(0, 240),
    share: shareText(verdict.share),
    comesOut: verdict.comesOut.slice(0, 2000),
    overload: verdict.overload ? "sign" : "",
    kind: verdict.kind ?? "",
    tag: verdict.tagged ? "out" : "",
    inspected: facts.inspected === null ? "" : String(facts.inspected),
    due: facts.due === null ? "" : String(facts.due),
    assembly: facts.assembly.slice(0, 200),
    cells: facts.cells,
    needed: barred(facts.needed).slice(0, 2000),
    missing: barred(facts.missing).slice(0, 2000),
    reason,
  };
  return [ROW_HEAD, ...ROW_PARTS.map((part) => plain(parts[part]))].map((part) => `${part} ${ROW_MARK}`).join("");
}

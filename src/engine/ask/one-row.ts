/** Rows handed over by a worksheet function: headings once, then one item or many, all through the log's judge. */
import { type BasisChoice, readBasis } from "../house/rules-in-force";
import { LineJudge } from "../item/line-judge";
import { type ItemVerdict, unjudged } from "../item/verdict";
import { askingColumns, openColumns } from "../log/besides";
import { findLog } from "../log/find-log";
import type { Grid } from "../log/grid";
import { type Headings, matchHeadings } from "../log/match-headings";
import { RowSorter } from "../log/row-sorter";
import { copyOf, sameLines } from "../memory";
import type { CellValue } from "../reading/cell-value";
import { Assemblies } from "../report/assemblies";
import type { HouseLimits } from "../rules/house-limits";
import { Lately } from "./lately";

/** Last day the workbook can hold: without a day of judging, a found overload holds until an inspection is dated. */
const NO_DAY = 2958465;
const widths = (headings: Headings, row: readonly CellValue[]): string =>
  `The headings are ${String(headings.matches.length)} cells wide and the row ${String(row.length)}; give both over the same columns.`;
/** Verdict of one row read by its headings. What was judged lately for the same headings, row and rules is not judged again. */
export function judgeRowOf(headers: Grid, row: Grid, basis: unknown): ItemVerdict {
  const choice = readBasis(basis);
  if (!choice.ok) return unjudged(choice.why);
  const [line] = row;
  if (line === undefined || row.length !== 1) return unjudged("Give one row; GEAR.JUDGE takes many.");
  const headings = headingsOf(headers);
  if (headings.problems.length > 0) return unjudged(headings.problems.join(" "));
  if (headings.matches.length !== line.length) return unjudged(widths(headings, line));
  return judgeFor(headings, choice, null).judgeOnce(line);
}
/** What is made of the verdicts of many rows, assemblies taken into account; one for each row given, blank rows included. */
export function judgeRowsOf(headers: Grid, rows: Grid, basis: unknown): readonly ItemVerdict[];
export function judgeRowsOf<T>(headers: Grid, rows: Grid, basis: unknown, as: (verdict: ItemVerdict) => T): readonly T[];
export function judgeRowsOf<T>(
  headers: Grid,
  rows: Grid,
  basis: unknown,
  as: (verdict: ItemVerdict) => T | ItemVerdict = (verdict) => verdict,
): readonly (T | ItemVerdict)[] {
  const none = (why: string): readonly (T | ItemVerdict)[] => rows.map(() => as(unjudged(why)));
  const choice = readBasis(basis);
  if (!choice.ok) return none(choice.why);
  const headings = headingsOf(headers);
  if (headings.problems.length > 0) return none(headings.problems.join(" "));
  const odd = rows.find((row) => row.length !== headings.matches.length);
  if (odd) return none(widths(headings, odd));
  const { lines } = judgeFor(headings, choice, NO_DAY);
  const heading = [headings.matches.map((m) => m.heading)];
  const asked = openColumns(headings).length === 0 ? undefined : askingColumns(itemLines(headings, heading, rows), headings);
  const sorter = new RowSorter(headings, heading);
  const assemblies = new Assemblies(NO_DAY);
  const assembled = headings.columns.has("assembly");
  const own = new Map<number, readonly CellValue[]>();
  const out = rows.map((row, at) => {
    const why = sorter.passedOver(row);
    if (why !== null) return as(unjudged(why === "" ? "Blank row." : `Not an item: ${why}.`));
    const line = sorter.own(row);
    const verdict = lines.judge(line, null, asked);
    if (assembled) {
      assemblies.add(at, lines.cell("assembly"), lines.cell("inspected"), verdict.overload);
      if (line !== row) own.set(at, line);
    }
    return as(verdict);
  });
  for (const [at, day] of assemblies.overloaded()) {
    const line = own.get(at) ?? rows[at];
    if (line !== undefined) out[at] = as(lines.judge(line, day, asked));
  }
  return out;
}
function itemLines(headings: Headings, heading: Grid, rows: Grid): Grid {
  const sorter = new RowSorter(headings, heading);
  return rows.flatMap((row) => (sorter.passedOver(row) === null ? [sorter.own(row)] : []));
}
/** Headings, rule sets and house limits that are kept ready. */
const KEPT = 50;
const byWords = new Map<string, Headings>();
let lastHeaders: Grid = [];
let lastHeadings: Headings | null = null;
export function headingsOf(headers: Grid): Headings {
  if (lastHeadings !== null && sameLines(headers, lastHeaders)) return lastHeadings;
  const line = headers.length === 1 ? headers[0] : undefined;
  const words = line ? line.map((cell) => (typeof cell === "string" ? cell : "")) : pairOf(headers);
  const id = words.join("\u0001");
  let headings = byWords.get(id);
  if (!headings) {
    if (byWords.size > KEPT) byWords.clear();
    byWords.set(id, (headings = matchHeadings(words)));
  }
  lastHeaders = copyOf(headers);
  return (lastHeadings = headings);
}
/** Two heading rows are read as in a log. */
function pairOf(headers: Grid): string[] {
  const found = findLog(headers);
  if (found) return found.headings.matches.map((m) => m.heading);
  const last = headers[headers.length - 1] ?? [];
  return last.map((cell) => (typeof cell === "string" ? cell : ""));
}
type Chosen = Extract<BasisChoice, { ok: true }>;
/** A judge with the rows that it has judged lately. */
class RowJudge {
  readonly lines: LineJudge;
  private readonly lately = new Lately<ItemVerdict>();
  private readonly id: number;
  constructor(headings: Headings, { ids, house }: Chosen, asOf: number | null) {
    this.lines = new LineJudge(headings, { basis: ids, house, asOf });
    this.id = headings.columns.get("id") ?? 0;
  }
  judgeOnce(line: readonly CellValue[]): ItemVerdict {
    const key = line[this.id];
    const known = this.lately.get(key, line);
    if (known !== null) return known;
    const verdict = this.lines.judge(line);
    this.lately.keep(key, line, verdict);
    return verdict;
  }
}
const judges = new WeakMap<Headings, WeakMap<HouseLimits | Headings, Map<string, RowJudge>>>();
let last: (Chosen & { readonly headings: Headings; readonly asOf: number | null; readonly judge: RowJudge }) | null = null;
function judgeFor(headings: Headings, choice: Chosen, asOf: number | null): RowJudge {
  if (last?.headings === headings && last.ids === choice.ids && last.house === choice.house && last.asOf === asOf) return last.judge;
  // Judges without house limits stand under the headings themselves.
  let byHouse = judges.get(headings);
  if (!byHouse) judges.set(headings, (byHouse = new WeakMap()));
  let byBasis = byHouse.get(choice.house ?? headings);
  if (!byBasis) byHouse.set(choice.house ?? headings, (byBasis = new Map<string, RowJudge>()));
  const key = `${choice.ids.join(",")}|${String(asOf)}`;
  let judge = byBasis.get(key);
  if (!judge) {
    if (byBasis.size > KEPT) byBasis.clear();
    byBasis.set(key, (judge = new RowJudge(headings, choice, asOf)));
  }
  last = { ...choice, headings, asOf, judge };
  return judge;
}

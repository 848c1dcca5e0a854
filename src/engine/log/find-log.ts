/** A sheet as clerks keep it: where the log starts, which rows are items, what each row's cells are. */
import { field, type FieldId } from "../columns";
import { matchKind } from "../names/gear-name";
import type { Unit } from "../numbers/lengths";
import type { CellValue } from "../reading/cell-value";
import { readText } from "../reading/text";
import { askingColumns, type Besides } from "./besides";
import { type Grid, isBlank } from "./grid";
import { type HeadingOptions, type Headings, matchHeadings } from "./match-headings";
import { besidesOf, rowCells } from "./merge-columns";
import { RowSorter } from "./row-sorter";
import type { Language } from "./vocabulary";

export interface FoundLog {
  readonly headings: Headings;
  /** First row of the headings, and how many rows they take. */
  readonly headingRow: number;
  readonly headingRows: 1 | 2;
  readonly score: number;
}
/** Rows at the top in which the headings are looked for. */
const TOP = 40;
/** Headings that must be recognised before a row counts as the heading row of a log. */
const ENOUGH = 3;
/** A heading may be a number or a date, such as the year of a round. */
const texts = (row: readonly CellValue[] | undefined): string[] =>
  (row ?? []).map((cell) => (typeof cell === "string" ? cell : readText(cell)));
/** Text of the upper of two heading rows reaches over the blank cells to its right. */
function joined(upper: readonly CellValue[], lower: readonly CellValue[]): string[] {
  const top = texts(upper),
    below = texts(lower);
  let reach = "";
  return Array.from({ length: Math.max(top.length, below.length) }, (_, i) => {
    const own = (top[i] ?? "").trim();
    if (own !== "") reach = own;
    const under = (below[i] ?? "").trim();
    if (under === "") return own;
    return `${own !== "" ? own : reach} ${under}`.trim();
  });
}
/** What the user answered for a log as a whole. */
export interface LogAnswers {
  /** Unit of bare sizes where neither heading, Unit column nor cell tells it. */
  readonly unit?: Unit | null;
  /** Language of the headings and cells; English when left out. */
  readonly language?: Language;
}
/** The heading row, or pair of rows, in which most headings are recognised; null when nothing looks like a log. */
export function findLog(grid: Grid, choices: Readonly<Record<string, FieldId | null>> = {}, answers: LogAnswers = {}): FoundLog | null {
  const options: HeadingOptions = { bareUnit: answers.unit ?? null, language: answers.language };
  let best: FoundLog | null = null;
  for (let row = 0; row < Math.min(TOP, grid.length); row += 1) {
    const one = texts(grid[row]);
    // Figures alone are no headings.
    if (!(grid[row] ?? []).some((cell) => typeof cell === "string" && cell.trim() !== "")) continue;
    const tries: [string[], 1 | 2][] = [[one, 1]];
    const next = grid[row + 1];
    if (next !== undefined && looksLikeHeadings(next)) tries.push([joined(grid[row] ?? [], next), 2]);
    for (const [headings, rows] of tries) {
      const matched = matchHeadings(headings, choices, options);
      if (matched.columns.size < ENOUGH - 1) continue;
      const withKinds = byContents(matched, grid.slice(row + rows, row + rows + SAMPLE), headings, choices, options);
      const score = withKinds.columns.size;
      const named = withKinds.columns.has("id") || withKinds.columns.has("gear");
      const here: FoundLog = { headings: withKinds, headingRow: row, headingRows: rows, score };
      if (score >= ENOUGH && named && (best === null || better(here, best))) best = here;
    }
  }
  return best;
}
/** Rows in which the gear column is looked for by what stands in it. */
const SAMPLE = 60;
/** Where no heading names the gear, or what stands under it names none: the column in which the kinds of gear stand. */
function byContents(
  matched: Headings,
  rows: Grid,
  headings: readonly string[],
  choices: Readonly<Record<string, FieldId | null>>,
  options: HeadingOptions,
): Headings {
  const named = matched.columns.get("gear");
  if (matched.matches.some(({ field: id, chosen }) => id === "gear" && chosen)) return matched;
  const there = named === undefined ? { share: 0, kinds: 0 } : kindsIn(rows, named);
  // "Type" may name a type of the gear, such as Hook 20, while the kinds stand under a heading that nobody knows.
  if (there.share > FEW && !mayBeType(headings[named ?? -1] ?? "")) return matched;
  const free = matched.matches.filter(
    ({ column, field: id, also, state }) => id === null && also === null && state !== "set aside" && column !== named,
  );
  const best = free
    .map(({ column }) => ({ column, ...kindsIn(rows, column) }))
    .filter(({ share, kinds }) => share >= MOST && kinds >= 2 && (there.share <= FEW || kinds > there.kinds))
    .sort((a, b) => b.kinds - a.kinds || a.column - b.column)[0];
  return best === undefined ? matched : matchHeadings(headings, choices, { ...options, byContents: new Map([[best.column, "gear"]]) });
}
/** Whether a heading, where another names the gear, is read as a type of it. */
const mayBeType = (heading: string): boolean => matchHeadings([heading, field("gear").heading]).columns.get("gearType") === 0;
const FEW = 0.2,
  MOST = 0.6;
function kindsIn(rows: Grid, column: number): { readonly share: number; readonly kinds: number } {
  const filled = rows.flatMap((row) => (typeof row[column] === "string" && readText(row[column]) !== "" ? [readText(row[column])] : []));
  const kinds = filled.filter((text) => matchKind(text).ok).length;
  return { share: filled.length === 0 ? 0 : kinds / filled.length, kinds };
}
/** More headings recognised, then more units named, then fewer rows: a title above the headings is no part of them. */
function better(a: FoundLog, b: FoundLog): boolean {
  if (a.score !== b.score) return a.score > b.score;
  if (a.headings.units.size !== b.headings.units.size) return a.headings.units.size > b.headings.units.size;
  return a.headingRows < b.headingRows;
}
/** A second heading row holds words only; a row that names gear or is full of figures is an item. */
function looksLikeHeadings(row: readonly CellValue[]): boolean {
  const filled = row.filter((cell) => !isBlank(cell));
  if (filled.length === 0 || !filled.every((cell) => typeof cell === "string")) return false;
  const figures = filled.filter((cell) => /\d/.test(readText(cell))).length;
  return figures * 3 <= filled.length && !filled.some((cell) => matchKind(readText(cell)).ok);
}
export interface ItemRow {
  readonly row: number;
  readonly cells: ReadonlyMap<FieldId, CellValue>;
  readonly besides: Besides;
}
export interface Rows {
  readonly items: readonly ItemRow[];
  readonly passedOver: readonly { readonly row: number; readonly why: string }[];
}
/** The rows under the headings, each an item or passed over for a reason that is said. */
export function itemRows(grid: Grid, found: FoundLog): Rows {
  const lines: { row: number; line: readonly CellValue[] }[] = [];
  const passedOver: { row: number; why: string }[] = [];
  const under = found.headingRow + found.headingRows;
  const sorter = new RowSorter(found.headings, grid.slice(found.headingRow, under));
  for (let row = under; row < grid.length; row += 1) {
    const line = grid[row] ?? [];
    const why = sorter.passedOver(line);
    if (why === null) lines.push({ row, line: sorter.own(line) });
    else if (why !== "") passedOver.push({ row, why });
  }
  const asked = askingColumns(
    lines.map(({ line }) => line),
    found.headings,
  );
  const items = lines.map(({ row, line }): ItemRow => {
    const cells = rowCells(line, found.headings);
    return { row, cells, besides: besidesOf(line, found.headings, cells, asked) };
  });
  return { items, passedOver };
}

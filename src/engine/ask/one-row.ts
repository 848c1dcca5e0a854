/** Rows handed over by a worksheet function: headings once, then one item or many. */
import { readBasis } from "../house/rules-in-force";
import { judgeItem } from "../item/judge-item";
import { type ItemVerdict, unjudged } from "../item/verdict";
import { cellsOf } from "../log/cells";
import { findLog, type FoundLog } from "../log/find-log";
import type { Grid } from "../log/grid";
import { type Headings, matchHeadings } from "../log/match-headings";
import { besidesOf, rowCells } from "../log/merge-columns";
import type { CellValue } from "../reading/cell-value";
import { judgeItems } from "../report/judge-items";

/** Last day the workbook can hold: without a day of judging, a found overload holds until an inspection is dated. */
const NO_DAY = 2958465;
const cache = new Map<string, Headings>();
export function headingsOf(headers: Grid): Headings {
  const line = headers.length === 1 ? headers[0] : undefined;
  const words = line ? line.map((cell) => (typeof cell === "string" ? cell : "")) : pairOf(headers);
  const id = words.join("\u0001");
  let headings = cache.get(id);
  if (!headings) {
    if (cache.size > 50) cache.clear();
    cache.set(id, (headings = matchHeadings(words)));
  }
  return headings;
}
/** Two heading rows are read as in a log. */
function pairOf(headers: Grid): string[] {
  const found = findLog(headers);
  if (found) return found.headings.matches.map((m) => m.heading);
  const last = headers[headers.length - 1] ?? [];
  return last.map((cell) => (typeof cell === "string" ? cell : ""));
}
const widths = (headings: Headings, row: readonly CellValue[]): string =>
  `The headings are ${String(headings.matches.length)} cells wide and the row ${String(row.length)}; give both over the same columns.`;
/** Verdict of one row read by its headings. */
export function judgeRowOf(headers: Grid, row: Grid, basis: unknown): ItemVerdict {
  const choice = readBasis(basis);
  if (!choice.ok) return unjudged(choice.why);
  const [line] = row;
  if (line === undefined || row.length !== 1) return unjudged("Give one row; GEAR.JUDGE takes many.");
  const headings = headingsOf(headers);
  if (headings.problems.length > 0) return unjudged(headings.problems.join(" "));
  if (headings.matches.length !== line.length) return unjudged(widths(headings, line));
  const values = rowCells(line, headings);
  return judgeItem(values.get("gear"), cellsOf(values, headings, undefined, besidesOf(line, headings, values)), {
    basis: choice.ids,
    house: choice.house,
    asOf: null,
  });
}
/** Verdicts of many rows, assemblies taken into account; one for each row given, blank rows included. */
export function judgeRowsOf(headers: Grid, rows: Grid, basis: unknown): readonly ItemVerdict[] {
  const choice = readBasis(basis);
  if (!choice.ok) return rows.map(() => unjudged(choice.why));
  const headings = headingsOf(headers);
  if (headings.problems.length > 0) return rows.map(() => unjudged(headings.problems.join(" ")));
  const odd = rows.find((row) => row.length !== headings.matches.length);
  if (odd) return rows.map(() => unjudged(widths(headings, odd)));
  const log: Grid = [headings.matches.map((m) => m.heading), ...rows];
  const found: FoundLog = { headings, headingRow: 0, headingRows: 1, score: headings.columns.size };
  const { items, passedOver } = judgeItems(log, found, { basis: choice.ids, asOf: NO_DAY, house: choice.house });
  const byRow = new Map(items.map((item) => [item.row, item.verdict]));
  const passed = new Map(passedOver.map((p) => [p.row, p.why]));
  return rows.map(
    (_, index) => byRow.get(index + 1) ?? unjudged(passed.has(index + 1) ? `Not an item: ${passed.get(index + 1) ?? ""}.` : "Blank row."),
  );
}

/** What was worked out lately, found again by what it was worked out from: hosts run a function again for equal arguments. */
import type { Grid } from "../log/grid";
import type { CellValue } from "../reading/cell-value";

type Line = readonly CellValue[];
/** Rows remembered; beyond it they are judged again. */
const KEPT = 5000;
/** By a cell that tells rows apart, the last row that had it, whole, and what came of it. */
export class Lately<T> {
  private readonly kept = new Map<CellValue, { readonly line: Line; readonly made: T }>();
  get(key: CellValue, line: Line): T | null {
    const known = this.kept.get(key);
    return known !== undefined && sameLine(known.line, line) ? known.made : null;
  }
  keep(key: CellValue, line: Line, made: T): void {
    if (this.kept.size >= KEPT) this.kept.clear();
    this.kept.set(key, { line: line.slice(), made });
  }
}
/** Whether two rows hold the same cells. Dates that are objects of their own never do. */
export function sameLine(a: Line, b: Line): boolean {
  if (a.length !== b.length) return false;
  for (let at = 0; at < a.length; at += 1) if (a[at] !== b[at]) return false;
  return true;
}
export const sameGrid = (a: Grid, b: Grid): boolean => a.length === b.length && a.every((line, at) => sameLine(line, b[at] ?? []));
/** A copy that stays as it is whatever the host does with its own. */
export const copyOf = (grid: Grid): Grid => grid.map((line) => [...line]);

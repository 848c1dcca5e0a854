/** What was worked out lately, found again by what it was worked out from: hosts run a function again for equal arguments. */
import { type Line, sameLine } from "../memory";
import type { CellValue } from "../reading/cell-value";

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

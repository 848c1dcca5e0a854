/** A round sheet's list of one item, handed over by a worksheet function. */
import type { Decision } from "../decision";
import { readBasis } from "../house/rules-in-force";
import type { Grid } from "../log/grid";
import { judgeList } from "../programme/judge-list";
import type { CellValue } from "../reading/cell-value";

/** Decision of the item; a list whose columns are not equally long, or not one column each, is no verdict. */
export function decisionOfList(gear: CellValue, checks: Grid, asNew: Grid, now: Grid, basis: unknown): Decision {
  const choice = readBasis(basis);
  if (!choice.ok || checks.length !== asNew.length || checks.length !== now.length) return "NO VERDICT";
  if ([checks, asNew].some((column) => column.some((line) => line.length !== 1))) return "NO VERDICT";
  if (now.some((line) => line.length < 1 || line.length > 2)) return "NO VERDICT";
  const lines = checks.map(([check], at) => ({ check, asNew: asNew[at]?.[0], now: now[at]?.[0], found: now[at]?.[1] }));
  return judgeList(gear, lines, { basis: choice.ids, house: choice.house, asOf: null }).decision;
}

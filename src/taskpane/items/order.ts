import { rank } from "../../engine/decision";
import type { ItemResult } from "../../engine/report/model";

/** Worst first; among equals the one that has used most of its allowance, then the order of the sheet. */
export function worstFirst(items: readonly ItemResult[]): ItemResult[] {
  return [...items].sort(
    (a, b) => rank(a.verdict.decision) - rank(b.verdict.decision) || byShare(b.verdict.share, a.verdict.share) || a.row - b.row,
  );
}
/** An allowance of nothing can be used without end, so shares are compared, never subtracted. */
function byShare(one: number | null, other: number | null): number {
  const [a, b] = [one ?? -1, other ?? -1];
  return a === b ? 0 : a < b ? -1 : 1;
}

/** The share of an allowance in words. */
import type { Decision } from "../../engine/decision";
import { percent } from "../../engine/words";

export function percentUsed(share: number): string {
  if (!Number.isFinite(share)) return "nothing is allowed";
  return `${percent(share)} used`;
}
/** What happens at the limit, in one word: "out above 2.1 in". */
export function limitWord(finding: { readonly beyond?: Decision }): string {
  return finding.beyond === "WATCH" ? "watch" : finding.beyond === "EXAMINE" ? "examine" : "out";
}

/** The findings of one check, or of one part of the record, with what is asked of them for every row. */
import { type Decision, rank, worse } from "../decision";
import type { Finding } from "./finding";

export class Outcome {
  readonly findings: readonly Finding[];
  /** Clauses without a full stop. */
  readonly notes: readonly string[];
  /** Where the part comes out, in words, as far as its as-new size is known. */
  readonly comesOut: string | null;
  /** The worst of its findings; null where there are none. */
  readonly decision: Decision | null;
  /** The finding that says most against the item, and the reading nearest to its limit. */
  readonly worst: Finding | null;
  readonly nearest: Finding | null;
  /** Greatest share of an allowance used, or null. */
  readonly share: number | null;
  /** A finding shows that the part was overloaded; one that takes it out of use does. */
  readonly overload: boolean;
  constructor(findings: readonly Finding[], notes: readonly string[] = NO_NOTES, comesOut: string | null = null) {
    let decision: Decision | null = null;
    let worst: Finding | null = null;
    let nearest: Finding | null = null;
    let share: number | null = null;
    let overload = false;
    for (const found of findings) {
      decision = decision === null ? found.decision : worse(found.decision, decision);
      if (worst === null || inOrder(found, worst) < 0) worst = found;
      overload ||= found.overload;
      if (found.share === null) continue;
      if (nearest === null || inOrder(found, nearest) < 0) nearest = found;
      // A figure from which a part is only looked at more often is no allowance.
      if (found.beyond !== "WATCH" && (share === null || found.share > share)) share = found.share;
    }
    this.findings = findings;
    this.notes = notes;
    this.comesOut = comesOut;
    this.decision = decision;
    this.worst = worst;
    this.nearest = nearest;
    this.share = share;
    this.overload = overload;
  }
  /** Whether it says nothing at all. */
  get isSilent(): boolean {
    return this.findings.length === 0 && this.notes.length === 0 && this.comesOut === null;
  }
}
const NO_NOTES: readonly string[] = [];
export const NO_OUTCOME = new Outcome([]);
/** Worst first; of equals the one nearest to its limit, then the one with a limit, then the strictest: nothing used uses no share of any. */
export function inOrder(a: Finding, b: Finding): number {
  return (
    rank(a.decision) - rank(b.decision) ||
    (b.criterion === null ? 0 : 1) - (a.criterion === null ? 0 : 1) ||
    (b.share ?? -1) - (a.share ?? -1) ||
    (a.check === b.check ? (a.allows ?? 0) - (b.allows ?? 0) : 0)
  );
}

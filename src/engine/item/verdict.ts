import type { Finding } from "../check/finding";
import { across, missingFinding } from "../check/read-sizes";
import { tellNearest } from "../check/sentences";
import { type Decision, outOfUse, rank, worstOf } from "../decision";
import { fieldsOf } from "../gear/columns-of";
import type { GearKind } from "../gear/kind";
import type { Cells } from "../log/cells";

/** The judgement of one item. */
export interface ItemVerdict {
  readonly decision: Decision;
  /** One sentence on what decides, then what else counts. */
  readonly reason: string;
  /** Findings, worst first. */
  readonly findings: readonly Finding[];
  /** The finding that decides; null when the item could not be read at all. */
  readonly deciding: Finding | null;
  /** Greatest share of an allowance used, or null. */
  readonly share: number | null;
  /** Where each part comes out, as far as its as-new size is known: "throat opening above 2.1 in; section wear below 1.7813 in". */
  readonly comesOut: string;
  readonly source: string;
  /** What has to be typed before the item can be kept, in words. */
  readonly missing: readonly string[];
  readonly notes: readonly string[];
}
/** Readings that are asked for and are not there, as "throat opening (Throat now)". */
export function missingOf(kind: GearKind, cells: Cells, findings: readonly Finding[]): readonly string[] {
  return kind.checks
    .flatMap((check) => (check.kind === "loss" ? [check, across(check)] : [check]))
    .flatMap((check) =>
      fieldsOf(check)
        .filter((id) => findings.some((f) => f.sentence === missingFinding(check, cells, id).sentence))
        .map((id) => `${check.name} (${cells.heading(id)})`),
    );
}
/** Worst first; of equals the one nearest to its limit, then the one with a limit. */
function order(a: Finding, b: Finding): number {
  return (
    rank(a.decision) - rank(b.decision) || Number(b.criterion !== null) - Number(a.criterion !== null) || (b.share ?? -1) - (a.share ?? -1)
  );
}
/** One finding for each check and sentence: the same limit under two bases is said once, by the stricter. */
export function conclude(all: readonly Finding[], notes: readonly string[], missing: readonly string[], gauged: boolean): ItemVerdict {
  const findings = [...all].sort(order);
  const [deciding = null] = findings;
  const decision = worstOf(findings.map((f) => f.decision));
  // A figure from which a part is only looked at more often is no allowance.
  const shares = findings
    .filter((f) => f.beyond !== "WATCH")
    .map((f) => f.share)
    .filter((s) => s !== null && Number.isFinite(s)) as number[];
  const told = decision === "KEEP" ? nearest(findings) : deciding;
  return {
    decision,
    reason: reasonOf(decision, findings, told, notes, gauged),
    findings,
    deciding,
    share: findings.some((f) => f.share === Infinity && f.beyond !== "WATCH") ? Infinity : shares.length > 0 ? Math.max(...shares) : null,
    comesOut: told?.comesOut ? `${told.check} ${told.comesOut}` : "",
    source: told?.source ?? "",
    missing: [...new Set(missing)],
    notes,
  };
}
/** The limited reading nearest to its limit. */
function nearest(findings: readonly Finding[]): Finding | null {
  return [...findings].filter((f) => f.share !== null).sort((a, b) => (b.share ?? 0) - (a.share ?? 0))[0] ?? findings[0] ?? null;
}
function reasonOf(
  decision: ItemVerdict["decision"],
  findings: readonly Finding[],
  told: Finding | null,
  notes: readonly string[],
  gauged: boolean,
): string {
  const first = told?.sentence ?? "Nothing could be read.";
  // Only a comparison of two sizes depends on the gauge.
  const gauge =
    told?.share != null && told.original !== null && !gauged
      ? ["No gauge resolution is recorded: the readings are taken as they stand."]
      : [];
  const others = findings.filter((f) => f !== told && f.check !== told?.check && f.decision !== "KEEP");
  const seen = new Set<string>();
  const more = others.filter((f) => !seen.has(f.check) && seen.add(f.check)).map((f) => f.sentence);
  const lead = decision === "KEEP" ? `Every required check is in order. ${told?.share ? tellNearest(first) : first}` : first;
  const signs = findings.some((f) => f.overload && outOfUse(f.decision))
    ? ["This is a sign of overload: look at every part that was used with it."]
    : [];
  return [lead, ...more, ...signs, ...gauge, ...[...new Set(notes)].map((n) => `${n}.`)].join(" ");
}

import type { Finding } from "../check/finding";
import { across } from "../check/read-sizes";
import { type Parts, reasonOf, shortReason } from "../check/sentences";
import type { FieldId } from "../columns";
import { type Decision, outOfUse, rank, worstOf } from "../decision";
import { fieldsOf } from "../gear/columns-of";
import type { GearKind } from "../gear/kind";
import type { Cells } from "../log/cells";

/** The judgement of one item. */
export interface ItemVerdict {
  readonly decision: Decision;
  /** One sentence on what decides, then what else counts. */
  readonly reason: string;
  /** A few words that fit a line. */
  readonly short: string;
  /** What the reason is made of. */
  readonly parts: Parts;
  /** Findings, worst first. */
  readonly findings: readonly Finding[];
  /** The finding that decides; null when the item could not be read at all. */
  readonly deciding: Finding | null;
  /** Greatest share of an allowance used, or null. */
  readonly share: number | null;
  /** Where each part comes out, as far as its as-new size is known: "throat opening above 2.1 in; section wear below 1.7813 in". */
  readonly comesOut: string;
  readonly source: string;
  /** A reading shows that the part was overloaded, and with it its assembly. */
  readonly overload: boolean;
  /** Id of the gear kind, or null when it is not known. */
  readonly kind: string | null;
  /** Tagged out and not released. */
  readonly tagged: boolean;
  /** Columns that a kind of this sort needs before it can be kept. */
  readonly needed: readonly FieldId[];
  /** Columns whose reading is missing or cannot be read. */
  readonly lacking: readonly FieldId[];
  /** What has to be typed before the item can be kept, in words. */
  readonly missing: readonly string[];
  readonly notes: readonly string[];
}
/** Readings that are asked for and are not there, as "throat opening (Throat now)". */
export function missingOf(kind: GearKind, cells: Cells, findings: readonly Finding[]): readonly string[] {
  const lacks = findings.filter((f) => f.why === "missing");
  return kind.checks
    .flatMap((check) => (check.kind === "loss" ? [check, across(check)] : [check]))
    .flatMap((check) =>
      fieldsOf(check)
        .filter((id) => lacks.some((f) => f.check === check.name && f.field === id))
        .map((id) => `${check.name} (${cells.heading(id)})`),
    );
}
/** Worst first; of equals the one nearest to its limit, then the one with a limit, then the strictest: nothing used uses no share of any. */
function order(a: Finding, b: Finding): number {
  return (
    rank(a.decision) - rank(b.decision) ||
    Number(b.criterion !== null) - Number(a.criterion !== null) ||
    (b.share ?? -1) - (a.share ?? -1) ||
    (a.check === b.check ? (a.allows ?? 0) - (b.allows ?? 0) : 0)
  );
}
/** What is known of an item beside its findings. */
export interface About {
  readonly kind: string | null;
  readonly tagged: boolean;
  readonly needed: readonly FieldId[];
  readonly missing: readonly string[];
  readonly notes: readonly string[];
  /** Where each part comes out; null where the kind is not known. */
  readonly comesOut: string | null;
  /** A gauge is recorded, or no sizes were compared. */
  readonly gauged: boolean;
}
/** One finding for each check and sentence: the same limit under two bases is said once, by the stricter. */
export function conclude(all: readonly Finding[], about: About): ItemVerdict {
  const findings = [...all].sort(order);
  const [deciding = null] = findings;
  const decision = worstOf(findings.map((f) => f.decision));
  // A figure from which a part is only looked at more often is no allowance.
  const shares = findings
    .filter((f) => f.beyond !== "WATCH")
    .map((f) => f.share)
    .filter((s) => s !== null && Number.isFinite(s)) as number[];
  const parts = partsOf(decision, findings, about);
  const { lead } = parts;
  return {
    decision,
    reason: reasonOf(decision, parts),
    short: shortReason(decision, lead),
    parts,
    findings,
    deciding,
    share: findings.some((f) => f.share === Infinity && f.beyond !== "WATCH") ? Infinity : shares.length > 0 ? Math.max(...shares) : null,
    comesOut: about.comesOut ?? (lead?.comesOut ? `${lead.check} ${lead.comesOut}` : ""),
    source: lead?.criterion == null ? "" : (lead.source ?? ""),
    overload: findings.some((f) => f.overload),
    kind: about.kind,
    tagged: about.tagged,
    needed: about.needed,
    lacking: lackingOf(findings),
    missing: [...new Set(about.missing)],
    notes: about.notes,
  };
}
function lackingOf(findings: readonly Finding[]): readonly FieldId[] {
  return [...new Set(findings.flatMap((f) => ((f.why === "missing" || f.why === "unreadable") && f.field !== undefined ? [f.field] : [])))];
}
/** The limited reading nearest to its limit. */
function nearest(findings: readonly Finding[]): Finding | null {
  return [...findings].filter((f) => f.share !== null).sort((a, b) => (b.share ?? 0) - (a.share ?? 0))[0] ?? findings[0] ?? null;
}
function partsOf(decision: Decision, findings: readonly Finding[], { notes, gauged }: About): Parts {
  const lead = decision === "KEEP" ? nearest(findings) : (findings[0] ?? null);
  const told = new Set(lead === null ? [] : [lead.check]);
  const others = findings.filter((f) => f.decision !== "KEEP" && !told.has(f.check) && told.add(f.check));
  return {
    lead,
    others,
    overload: findings.some((f) => f.overload && outOfUse(f.decision)),
    // Only a comparison of two sizes depends on the gauge.
    ungauged: !gauged && lead?.share != null && lead.original !== null,
    notes: [...new Set(notes)],
  };
}
/** No verdict, for a reason that lies outside the item. */
export function unjudged(why: string): ItemVerdict {
  return {
    decision: "NO VERDICT",
    reason: why,
    short: why,
    parts: { lead: null, others: [], overload: false, ungauged: false, notes: [] },
    findings: [],
    deciding: null,
    share: null,
    comesOut: "",
    source: "",
    overload: false,
    kind: null,
    tagged: false,
    needed: [],
    lacking: [],
    missing: [],
    notes: [],
  };
}

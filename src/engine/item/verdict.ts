import type { Finding } from "../check/finding";
import { across } from "../check/read-sizes";
import { type Parts, reasonOf, shortReason } from "../check/sentences";
import type { FieldId } from "../columns";
import { type Decision, outOfUse, rank, worse } from "../decision";
import { fieldsOf } from "../gear/columns-of";
import type { GearKind } from "../gear/kind";

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
  readonly kind: GearKind | null;
  readonly tagged: boolean;
  readonly needed: readonly FieldId[];
  readonly notes: readonly string[];
  /** Where each part comes out; null where the kind is not known. */
  readonly comesOut: string | null;
  /** A gauge is recorded, or no sizes were compared. */
  readonly gauged: boolean;
}
/** A verdict whose decision is known at once; its order, its parts and its words are made when they are asked for. */
export class JudgedItem implements ItemVerdict {
  readonly decision: Decision;
  private readonly all: readonly Finding[];
  private readonly about: About;
  private sorted: readonly Finding[] | null = null;
  private madeParts: Parts | null = null;
  constructor(findings: readonly Finding[], about: About) {
    let worst: Decision = "KEEP";
    for (const { decision } of findings) if (decision !== "KEEP") worst = worse(worst, decision);
    this.decision = findings.length === 0 ? "NO VERDICT" : worst;
    this.all = findings;
    this.about = about;
  }
  get findings(): readonly Finding[] {
    return (this.sorted ??= [...this.all].sort(order));
  }
  get deciding(): Finding | null {
    return this.findings[0] ?? null;
  }
  get parts(): Parts {
    return (this.madeParts ??= partsOf(this.decision, this.all, this.about));
  }
  get reason(): string {
    return reasonOf(this.decision, this.parts);
  }
  get short(): string {
    return shortReason(this.decision, this.parts.lead);
  }
  get share(): number | null {
    let most: number | null = null;
    // A figure from which a part is only looked at more often is no allowance.
    for (const f of this.all) if (f.share !== null && f.beyond !== "WATCH") most = most === null ? f.share : Math.max(most, f.share);
    return most;
  }
  get comesOut(): string {
    const { lead } = this.parts;
    return this.about.comesOut ?? (lead?.comesOut ? `${lead.check} ${lead.comesOut}` : "");
  }
  get source(): string {
    const { lead } = this.parts;
    return lead?.criterion == null ? "" : (lead.source ?? "");
  }
  get overload(): boolean {
    return this.all.some((f) => f.overload);
  }
  get kind(): string | null {
    return this.about.kind?.id ?? null;
  }
  get tagged(): boolean {
    return this.about.tagged;
  }
  get needed(): readonly FieldId[] {
    return this.about.needed;
  }
  get lacking(): readonly FieldId[] {
    const lacks = this.findings.filter((f) => f.why === "missing" || f.why === "unreadable");
    return [...new Set(lacks.flatMap((f) => f.field ?? []))];
  }
  get missing(): readonly string[] {
    return missingOf(this.about.kind, this.all);
  }
  get notes(): readonly string[] {
    return this.about.notes;
  }
}
/** Readings that are asked for and are not there, as "throat opening (Throat now)". */
function missingOf(kind: GearKind | null, findings: readonly Finding[]): readonly string[] {
  const lacks = findings.filter((f) => f.why === "missing");
  if (kind === null || lacks.length === 0) return [];
  const checks = kind.checks.flatMap((check) => (check.kind === "loss" ? [check, across(check)] : [check]));
  const words = checks.flatMap((check) =>
    fieldsOf(check).flatMap((id) => {
      const lack = lacks.find((f) => f.check === check.name && f.field === id);
      return lack === undefined ? [] : [`${check.name} (${lack.heading ?? ""})`];
    }),
  );
  return [...new Set(words)];
}
function partsOf(decision: Decision, findings: readonly Finding[], { notes, gauged }: About): Parts {
  const lead = decision === "KEEP" ? nearest(findings) : worstFinding(findings);
  return {
    lead,
    others: decision === "KEEP" ? [] : othersOf(findings, lead),
    overload: findings.some((f) => f.overload && outOfUse(f.decision)),
    // Only a comparison of two sizes depends on the gauge.
    ungauged: !gauged && lead?.share != null && lead.original !== null,
    notes: notes.length < 2 ? notes : [...new Set(notes)],
  };
}
/** The limited reading nearest to its limit. */
function nearest(findings: readonly Finding[]): Finding | null {
  let found: Finding | null = null;
  for (const f of findings) if (f.share !== null && (found === null || order(f, found) < 0)) found = f;
  return found ?? worstFinding(findings);
}
function worstFinding(findings: readonly Finding[]): Finding | null {
  let worst: Finding | null = null;
  for (const f of findings) if (worst === null || order(f, worst) < 0) worst = f;
  return worst;
}
/** One finding for each other check that speaks against the item: the same limit under two bases is said once, by the stricter. */
function othersOf(findings: readonly Finding[], lead: Finding | null): readonly Finding[] {
  const against = findings.filter((f) => f.decision !== "KEEP" && f.check !== lead?.check);
  if (against.length < 2) return against;
  const told = new Set<string>();
  return against.sort(order).filter((f) => !told.has(f.check) && told.add(f.check));
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

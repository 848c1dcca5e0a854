import type { Finding } from "../check/finding";
import { inOrder, type Outcome } from "../check/outcome";
import { across } from "../check/read-sizes";
import { type Parts, reasonOf, shortReason } from "../check/sentences";
import type { FieldId } from "../columns";
import { type Decision, outOfUse, worse } from "../decision";
import { fieldsOf } from "../gear/columns-of";
import type { GearKind } from "../gear/kind";
import type { About } from "./kind-judge";

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
/** A verdict whose decision is known at once; its order, its parts and its words are made when they are asked for. */
export class JudgedItem implements ItemVerdict {
  readonly decision: Decision;
  private readonly outcomes: readonly Outcome[];
  private readonly about: About;
  private sorted: readonly Finding[] | null = null;
  private madeParts: Parts | null = null;
  constructor(outcomes: readonly Outcome[], about: About) {
    let decision: Decision | null = null;
    for (const { decision: next } of outcomes)
      if (next !== decision && next !== null) decision = decision === null ? next : worse(decision, next);
    this.decision = decision ?? "NO VERDICT";
    this.outcomes = outcomes;
    this.about = about;
  }
  get findings(): readonly Finding[] {
    return (this.sorted ??= this.outcomes.flatMap(({ findings }) => findings).sort(inOrder));
  }
  get deciding(): Finding | null {
    return this.findings[0] ?? null;
  }
  get parts(): Parts {
    return (this.madeParts ??= partsOf(this.decision, this.outcomes, this.about.facts.gauged, this.notes));
  }
  get reason(): string {
    return reasonOf(this.decision, this.parts);
  }
  get short(): string {
    return shortReason(this.decision, this.parts.lead);
  }
  get share(): number | null {
    let most: number | null = null;
    for (const { share } of this.outcomes) if (share !== null && (most === null || share > most)) most = share;
    return most;
  }
  get comesOut(): string {
    if (this.about.kind === null) {
      const { lead } = this.parts;
      return lead?.comesOut ? `${lead.check} ${lead.comesOut}` : "";
    }
    let words = "";
    for (const { comesOut } of this.outcomes) if (comesOut !== null) words = words === "" ? comesOut : `${words}; ${comesOut}`;
    return words;
  }
  get source(): string {
    const { lead } = this.parts;
    return lead?.criterion == null ? "" : (lead.source ?? "");
  }
  get overload(): boolean {
    for (const { overload } of this.outcomes) if (overload) return true;
    return false;
  }
  get kind(): string | null {
    return this.about.kind?.id ?? null;
  }
  get tagged(): boolean {
    return this.about.tagged;
  }
  get needed(): readonly FieldId[] {
    return this.about.facts.needed;
  }
  get lacking(): readonly FieldId[] {
    const lacks = this.findings.filter((f) => f.why === "missing" || f.why === "unreadable");
    return [...new Set(lacks.flatMap((f) => f.field ?? []))];
  }
  get missing(): readonly string[] {
    return missingOf(this.about.kind, this.findings);
  }
  get notes(): readonly string[] {
    const { facts, more } = this.about;
    let notes: string[] | null = null;
    for (const outcome of this.outcomes) if (outcome.notes.length > 0) (notes ??= []).push(...outcome.notes);
    if (notes === null && facts.assumed.length + more.length === 0) return NO_NOTES;
    return [...(notes ?? []), ...facts.assumed, ...more];
  }
}
const NO_NOTES: readonly string[] = [];
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
function partsOf(decision: Decision, outcomes: readonly Outcome[], gauged: boolean, notes: readonly string[]): Parts {
  const lead = decision === "KEEP" ? nearest(outcomes) : worst(outcomes);
  const kept = decision === "KEEP";
  return {
    lead,
    others: kept ? [] : othersOf(outcomes, lead),
    overload: !kept && outcomes.some(({ overload, findings }) => overload && findings.some((f) => f.overload && outOfUse(f.decision))),
    // Only a comparison of two sizes depends on the gauge.
    ungauged: !gauged && lead?.share != null && lead.original !== null,
    notes: notes.length < 2 ? notes : [...new Set(notes)],
  };
}
/** The limited reading nearest to its limit. */
function nearest(outcomes: readonly Outcome[]): Finding | null {
  let found: Finding | null = null;
  for (const { nearest: next } of outcomes) if (next !== null && (found === null || inOrder(next, found) < 0)) found = next;
  return found ?? worst(outcomes);
}
function worst(outcomes: readonly Outcome[]): Finding | null {
  let found: Finding | null = null;
  for (const { worst: next } of outcomes) if (next !== null && (found === null || inOrder(next, found) < 0)) found = next;
  return found;
}
/** One finding for each other check that speaks against the item: the same limit under two bases is said once, by the stricter. */
function othersOf(outcomes: readonly Outcome[], lead: Finding | null): readonly Finding[] {
  const others: Finding[] = [];
  for (const { decision, findings } of outcomes)
    if (decision !== null && decision !== "KEEP")
      for (const f of findings) if (f.decision !== "KEEP" && f.check !== lead?.check) others.push(f);
  if (others.length < 2) return others;
  const checks = new Set<string>();
  return others.sort(inOrder).filter((f) => !checks.has(f.check) && checks.add(f.check));
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

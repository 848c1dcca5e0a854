/** Every criterion in force against one figure. */
import type { Decision } from "../decision";
import type { Check } from "../gear/kind";
import { toNumber, ZERO } from "../numbers/exact";
import { showFloor } from "../numbers/lengths";
import type { Criterion } from "../rules/criterion";
import { cite } from "../rules/documents";
import type { BasisId } from "../rules/rule-sets";
import { capital } from "../words";
import { type Allowance, allowanceOf, comesOutText, type Figure } from "./allowance";
import { judge, judgeArea, type Judged } from "./compare";
import { finding, type Finding, type Why } from "./finding";
import type { CheckResult } from "./in-force";

/** Why a figure is not judged, and what to do, where no rule set in force has a limit for it. */
export const NO_LIMIT = "the rules in force hold no limit for it";
export const CHOOSE_BASIS = "choose a basis that has one";
/** Every criterion in force against one figure. */
export function meetCriteria(check: Check, figure: Figure, criteria: readonly Criterion[]): CheckResult {
  const notes: string[] = [];
  const findings: Finding[] = [];
  meetAll(check, figure, criteria, findings, notes);
  return { findings, notes };
}
/** The same, into lists at hand. */
export function meetAll(check: Check, figure: Figure, criteria: readonly Criterion[], findings: Finding[], notes: string[]): void {
  const before = findings.length;
  const passed = notes.length;
  for (const { criterion, allowed, limit } of limitsFor(figure, criteria).list) {
    if (limit !== null) findings.push(new LimitFinding(check, figure, limit));
    else if ("none" in allowed && allowed.passOver) notes.push(capital(allowed.none));
    else if ("none" in allowed) findings.push(notInTable(check, figure, criterion, allowed.none));
  }
  if (findings.length === before) findings.push(unlimited(check, figure, notes.slice(passed)));
}
function notInTable(check: Check, figure: Figure, criterion: Criterion, because: string): Finding {
  return finding("not in table", "NO VERDICT", check, {
    because,
    basis: criterion.basis,
    source: cite(criterion.source),
    criterion: criterion.id,
    measured: figure.measured.typed,
  });
}
/** Nothing used is inside any limit; something used without a limit settles nothing. */
function unlimited(check: Check, figure: Figure, notes: readonly string[]): Finding {
  const because = notes.length > 0 ? notes.join("; ") : NO_LIMIT;
  const facts = { because, measured: figure.measured.typed, original: figure.original?.typed ?? null };
  return judge(figure.used, ZERO, "above").beyond
    ? finding("no limit", "NO VERDICT", check, { ...facts, type: CHOOSE_BASIS })
    : finding("no change", "KEEP", check, facts);
}
/** A criterion with what it allows of a size. */
interface Prepared {
  readonly criterion: Criterion;
  readonly allowed: ReturnType<typeof allowanceOf>;
  readonly limit: PreparedLimit | null;
}
/** The criteria in force with what they allow of one size, and where its part comes out. */
export class Limits {
  readonly list: readonly Prepared[];
  private words: string | null | undefined;
  constructor(figure: Figure, criteria: readonly Criterion[]) {
    this.list = criteria.map((criterion) => {
      const allowed = allowanceOf(criterion.limit, figure);
      return { criterion, allowed, limit: "none" in allowed ? null : new PreparedLimit(criterion, allowed, figure) };
    });
  }
  /** Where the part comes out in words, made once. */
  comesOut(make: () => string | null): string | null {
    if (this.words === undefined) this.words = make();
    return this.words;
  }
}
/** Prepared once on the size as new, where there is one. */
function limitsFor(figure: Figure, criteria: readonly Criterion[]): Limits {
  const { on, unit } = figure;
  return on === undefined || unit === null ? new Limits(figure, criteria) : on.once(criteria, unit, () => new Limits(figure, criteria));
}
/** A limit in the figure's own unit, with the words that do not depend on the reading. */
class PreparedLimit {
  readonly criterion: Criterion;
  readonly allowed: Allowance;
  readonly source: string;
  tail: string | null = null;
  from: string | null = null;
  private readonly of: Figure;
  private words: string | null = null;
  constructor(criterion: Criterion, allowed: Allowance, of: Figure) {
    this.criterion = criterion;
    this.allowed = allowed;
    this.source = cite(criterion.source);
    this.of = of;
  }
  get comesOut(): string {
    return (this.words ??= comesOutText(this.of, this.allowed));
  }
}
export function meet(check: Check, figure: Figure, criterion: Criterion, allowed: Allowance): Finding {
  return new LimitFinding(check, figure, new PreparedLimit(criterion, allowed, figure));
}
/** A figure that met a limit: light, its words are made when they are asked for. */
class LimitFinding implements Finding {
  readonly why: Why;
  readonly decision: Decision;
  readonly share: number;
  readonly overload: boolean;
  private readonly of: Check;
  private readonly figure: Figure;
  private readonly met: PreparedLimit;
  /** The allowance is used up, for certain. */
  private readonly isBeyond: boolean;
  constructor(check: Check, figure: Figure, limit: PreparedLimit) {
    const judged = judgedBy(limit.allowed, figure);
    this.of = check;
    this.figure = figure;
    this.met = limit;
    this.isBeyond = judged.beyond;
    this.decision = decide(judged, limit.criterion);
    this.why = judged.uncertain && this.decision === "EXAMINE" ? "gauge" : "limit";
    this.share = judged.share;
    this.overload = check.overload === true && (judged.beyond || judged.past);
  }
  get check(): string {
    return this.of.name;
  }
  get label(): string {
    return labelOf(this.of);
  }
  get part(): string {
    return this.of.part;
  }
  get direction(): "across" | undefined {
    return this.figure.direction;
  }
  get criterion(): string {
    return this.met.criterion.id;
  }
  get measured(): string {
    return this.figure.measured.typed;
  }
  get brief(): string | undefined {
    return this.figure.measured.brief;
  }
  get original(): string | null {
    return this.figure.original?.typed ?? null;
  }
  get countsFrom(): string | undefined {
    const { from, original } = this.figure;
    return from ?? (original === null ? undefined : `as new ${original.typed}`);
  }
  get allows(): number {
    return toNumber(this.met.allowed.allowance);
  }
  get limit(): string {
    return this.met.allowed.rule;
  }
  get beyond(): Decision {
    return this.met.criterion.beyond;
  }
  get watched(): boolean {
    return this.beyond === "WATCH" && this.decision === "WATCH" && this.isBeyond;
  }
  get comesOut(): string {
    return this.met.comesOut;
  }
  get shared(): { tail: string | null; from: string | null } {
    return this.met;
  }
  get gauge(): Finding["gauge"] {
    if (this.why !== "gauge") return undefined;
    const { settledBy } = judgedBy(this.met.allowed, this.figure);
    const { unit, gauge } = this.figure;
    return { reads: gauge, settledBy: settledBy === null || unit === null ? null : showFloor(settledBy, unit) };
  }
  get basis(): BasisId {
    return this.met.criterion.basis;
  }
  get source(): string {
    return this.met.source;
  }
}
function judgedBy({ allowance, word, area }: Allowance, { base, used, blur }: Figure): Judged {
  return area === undefined || base === null ? judge(used, allowance, word, blur) : judgeArea(base, used, area, word, blur);
}
function decide({ uncertain, beyond, nearly }: Judged, criterion: Criterion): Decision {
  if (uncertain) return criterion.beyond === "WATCH" ? "WATCH" : "EXAMINE";
  if (beyond) return criterion.beyond;
  const watched = nearly && (criterion.beyond === "REMOVE" || criterion.beyond === "EXAMINE") && criterion.inside === undefined;
  return watched ? "WATCH" : (criterion.inside ?? "KEEP");
}
/** What was measured: "saddle section" for wear at the saddle, else the check's own name. */
export function labelOf(check: Check): string {
  return check.kind === "loss" ? `${check.part} section` : check.name;
}

/** The judge of one gear kind for the columns of a log: its checks made ready under each gauge and construction that occurs. */
import { type Finding, ofItem } from "../check/finding";
import { inUse, isFor, type Situation } from "../check/in-force";
import { NO_OUTCOME, Outcome } from "../check/outcome";
import { prepareCheck, type PreparedCheck } from "../check/prepared-check";
import { columnOf, refusedFinding } from "../check/read-sizes";
import { field, type FieldId } from "../columns";
import { neededFieldsOf } from "../gear/columns-of";
import type { GearKind } from "../gear/kind";
import type { Row } from "../log/cells";
import type { CellValue } from "../reading/cell-value";
import { type Length, readLength } from "../reading/length";
import { readText } from "../reading/text";
import type { HouseLimits } from "../rules/house-limits";
import { type BasisId, inForce } from "../rules/rule-sets";
import { isLent } from "../types/lent";
import { publishedSizes } from "./published-sizes";
import { type UnreadColumn, unreadColumns, unreadDamage } from "./unread-damage";
import { readVariant, type VariantRead } from "./variant";
import { houseFindings, ruleFinding } from "./whole-item";

/** By which rules an item is judged, and on which day. */
export interface Judging {
  readonly basis: readonly BasisId[];
  /** Limits of the house's own sheet; needed when the basis names them. */
  readonly house?: HouseLimits | undefined;
  /** Serial day of judging: dates after it are wrong. Null in a worksheet cell, which has no day. */
  readonly asOf: number | null;
}
/** What holds of an item beside the findings of its checks. */
export interface KindFacts {
  readonly needed: readonly FieldId[];
  /** A gauge is recorded. */
  readonly gauged: boolean;
  /** What was taken from a table, or for granted: clauses without a full stop. */
  readonly assumed: readonly string[];
}
/** Checks and columns of a kind, ready for one gauge and one construction. */
interface Ready {
  readonly checks: readonly PreparedCheck[];
  readonly unread: readonly UnreadColumn[];
  /** By slot, whether one of these columns stands there; while all are blank they say nothing. */
  readonly readByNone: readonly boolean[];
  /** What holds where nothing is assumed. */
  readonly facts: KindFacts;
  readonly rules: Outcome | null;
}
interface GaugeRead {
  readonly gauge: Length | null;
  readonly finding: Outcome | null;
}
const NO_GAUGE: GaugeRead = { gauge: null, finding: null };
const NOTHING_ASSUMED: readonly string[] = [];
/** Gauges and constructions that are kept ready; beyond it they are made again. */
const KEPT = 200;
const isBlank = (cell: CellValue): boolean => cell === undefined || cell === null || cell === "";

export class KindJudge {
  readonly kind: GearKind;
  /** House limits that cannot be applied, in whatever row. */
  readonly house: Outcome | null;
  private readonly row: Row;
  private readonly judging: Judging;
  private readonly gauges = new Map<string, GaugeRead>();
  private readonly variants = new Map<string, VariantRead>();
  private readonly ready = new Map<string, Ready>();
  private readonly plain: Ready;
  constructor(kind: GearKind, row: Row, judging: Judging) {
    this.kind = kind;
    this.row = row;
    this.judging = judging;
    const house = houseFindings(kind, judging.basis, judging.house);
    this.house = house.length === 0 ? null : new Outcome(house);
    this.plain = this.makeReady(null, null);
  }
  /** Adds what the checks say of the row at hand, its tag after them. */
  judge(outcomes: Outcome[], tag: Outcome | null): KindFacts {
    const { kind, row } = this;
    let sizeNote: string | null = null;
    let sizeFinding: Outcome | null = null;
    const from = row.value("asNewFrom");
    if (typeof from === "string" && isLent(from)) sizeNote = `As-new from ${from}`;
    else if (kind.asNew !== undefined && !isBlank(from)) {
      const published = publishedSizes(kind, row);
      if ("refused" in published) sizeFinding = outcomeOf(ofItem("as-new size", "NO VERDICT", "as-new size", published.refused));
      else {
        for (const [id, size] of published.sizes) row.set(id, size);
        sizeNote = published.note;
      }
    }
    const { gauge, finding: gaugeFinding } = isBlank(row.value("gauge")) ? NO_GAUGE : this.gaugeOf();
    const variant = kind.variants === undefined ? null : this.variantOf();
    const ready = gauge === null && variant?.kind !== "known" ? this.plain : this.readyFor(gauge, variant);
    for (const check of ready.checks) {
      const outcome = check.get();
      if (outcome !== NO_OUTCOME) outcomes.push(outcome);
    }
    if (row.isFilledIn(ready.readByNone)) {
      const shown: Finding[] = [];
      unreadDamage(ready.unread, shown);
      if (shown.length > 0) outcomes.push(new Outcome(shown));
    }
    if (tag !== null) outcomes.push(tag);
    if (sizeFinding !== null) outcomes.push(sizeFinding);
    if (gaugeFinding !== null) outcomes.push(gaugeFinding);
    if (variant?.kind === "refused") outcomes.push(outcomeOf(variantFinding(variant, row)));
    return this.factsWith(ready.facts, sizeNote, variant);
  }
  /** A finding that follows from the rules alone, in whatever row. */
  get rules(): Outcome | null {
    return this.plain.rules;
  }
  private factsWith(facts: KindFacts, size: string | null, variant: VariantRead | null): KindFacts {
    const taken = variant?.kind === "known" ? variant.assumed : null;
    return size === null && taken === null ? facts : { ...facts, assumed: [size, taken].filter((note) => note !== null) };
  }
  private gaugeOf(): GaugeRead {
    const { row } = this;
    const cell = row.value("gauge");
    const unit = row.unit("gauge");
    return keptBy(this.gauges, `${unit ?? ""}|${keyOf(cell)}`, () => {
      const read = readLength(cell, { assume: unit });
      if (read.kind === "value") return { gauge: read.value, finding: null };
      return read.kind === "missing"
        ? NO_GAUGE
        : { gauge: null, finding: outcomeOf(refusedFinding({ name: "gauge", part: "" }, row, "gauge", read)) };
    });
  }
  private variantOf(): VariantRead | null {
    const { variants } = this.kind;
    if (variants === undefined) return null;
    const gear = readText(this.row.value("gear"));
    // No cell holds the sign between the two, so that no typed text can stand for another row's.
    return keptBy(this.variants, `${gear}\u0000${keyOf(this.row.value(variants.field))}`, () => readVariant(variants, this.row, gear));
  }
  private readyFor(gauge: Length | null, read: VariantRead | null): Ready {
    const variant = read?.kind === "known" ? read.variant : null;
    const key = `${gauge === null ? "" : `${gauge.size.toFraction()} ${gauge.unit}`}|${variant ?? ""}`;
    return keptBy(this.ready, key, () => this.makeReady(gauge, variant));
  }
  private makeReady(gauge: Length | null, variant: string | null): Ready {
    const { kind, row } = this;
    const { basis, house } = this.judging;
    const bases = inForce(basis);
    const situation: Situation = { kind, bases, gauge, variant, house: basis.includes("house") ? house : undefined };
    const needing = kind.checks.filter((check) => check.required && inUse(check, bases) && isFor(check, variant));
    const rules = ruleFinding(situation);
    const unread = unreadColumns(situation, row);
    const none = new Set(unread.flatMap(({ slots }) => slots));
    return {
      checks: kind.checks.map((check) => prepareCheck(check, situation, row)).filter((check) => check.always !== NO_OUTCOME),
      unread,
      readByNone: row.values.map((_, slot) => none.has(slot)),
      facts: { needed: [...new Set(needing.flatMap(neededFieldsOf))], gauged: gauge !== null, assumed: NOTHING_ASSUMED },
      rules: rules === null ? null : outcomeOf(rules),
    };
  }
}
const outcomeOf = (found: Finding): Outcome => new Outcome([found]);
function variantFinding({ why, field: id, facts }: VariantRead & { kind: "refused" }, row: Row): Finding {
  return ofItem(why, "NO VERDICT", field(id).heading.toLowerCase(), { ...columnOf(row, id), ...facts });
}
const keyOf = (cell: CellValue): string =>
  typeof cell === "object" && cell !== null ? `date ${String(cell.serial)}` : `${typeof cell} ${String(cell)}`;
function keptBy<T>(kept: Map<string, T>, key: string, make: () => T): T {
  let made = kept.get(key);
  if (made === undefined) {
    if (kept.size >= KEPT) kept.clear();
    kept.set(key, (made = make()));
  }
  return made;
}

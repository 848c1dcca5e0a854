/** The judge of one gear kind for the columns of a log: its checks made ready under each gauge and construction that occurs. */
import { type Finding, ofItem } from "../check/finding";
import { inUse, isFor, type Situation } from "../check/in-force";
import { NO_OUTCOME, Outcome } from "../check/outcome";
import { prepareCheck, type PreparedCheck } from "../check/prepared-check";
import { columnOf, refusedFinding } from "../check/read-sizes";
import { field, type FieldId } from "../columns";
import { neededFieldsOf } from "../gear/columns-of";
import type { GearKind, Variants } from "../gear/kind";
import type { Row } from "../log/cells";
import { RowMemory } from "../memory";
import type { Unit } from "../numbers/lengths";
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
/** What is known of an item beside its findings. */
export interface About {
  /** Null where the gear is not in the catalogue. */
  readonly kind: GearKind | null;
  readonly tagged: boolean;
  readonly facts: KindFacts;
  /** What its date and its tag say: clauses without a full stop. */
  readonly more: readonly string[];
}
/** Checks and columns of a kind, ready for one gauge and one construction. */
interface Ready {
  readonly checks: readonly PreparedCheck[];
  readonly unread: readonly UnreadColumn[];
  /** By slot, whether one of these columns stands there; while all are blank they say nothing. */
  readonly readByNone: readonly boolean[];
  /** What holds where nothing is assumed and nothing else is said. */
  readonly about: About;
  readonly rules: Outcome | null;
}
interface GaugeRead {
  readonly gauge: Length | null;
  readonly finding: Outcome | null;
  /** The kind made ready for this gauge, by variant. */
  readonly ready: Map<string | null, Ready>;
}
/** A gauge that was read, with the cell and the unit that it was read from. */
interface LastGauge extends GaugeRead {
  readonly cell: CellValue;
  readonly unit: Unit | null;
}
const NOTHING_ASSUMED: readonly string[] = [];
const NOTHING_MORE: readonly string[] = [];
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
  private readonly variants: RowMemory<VariantRead>;
  private readonly ungauged: GaugeRead = { gauge: null, finding: null, ready: new Map() };
  private readonly plain: Ready;
  private readonly slots: Readonly<Record<"asNewFrom" | "gauge", number>>;
  private lastGauge: LastGauge | null = null;
  constructor(kind: GearKind, row: Row, judging: Judging) {
    this.kind = kind;
    this.row = row;
    this.judging = judging;
    const house = houseFindings(kind, judging.basis, judging.house);
    this.house = house.length === 0 ? null : new Outcome(house);
    this.plain = this.makeReady(null, null);
    this.slots = { asNewFrom: row.slot("asNewFrom") ?? -1, gauge: row.slot("gauge") ?? -1 };
    // What the gear is called tells its variant as well.
    const deciding = kind.variants === undefined ? [] : [row.slot(kind.variants.field), row.slot("gear")];
    this.variants = new RowMemory(deciding.filter((slot) => slot !== undefined));
  }
  /** Adds what the checks say of the row at hand, its tag after them. */
  judge(outcomes: Outcome[], tag: Outcome | null): About {
    const { kind, row, slots } = this;
    const { values } = row;
    let sizeNote: string | null = null;
    let sizeFinding: Outcome | null = null;
    const from = slots.asNewFrom < 0 ? undefined : values[slots.asNewFrom];
    if (typeof from === "string" && isLent(from)) sizeNote = `As-new from ${from}`;
    else if (kind.asNew !== undefined && !isBlank(from)) {
      const published = publishedSizes(kind, row);
      if ("refused" in published) sizeFinding = outcomeOf(ofItem("as-new size", "NO VERDICT", "as-new size", published.refused));
      else {
        for (const [id, size] of published.sizes) row.set(id, size);
        sizeNote = published.note;
      }
    }
    const gauge = slots.gauge < 0 || isBlank(values[slots.gauge]) ? this.ungauged : this.gaugeOf();
    const variant = kind.variants === undefined ? null : this.variantOf(kind.variants);
    const ready = gauge === this.ungauged && variant?.kind !== "known" ? this.plain : this.readyFor(gauge, variant);
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
    if (gauge.finding !== null) outcomes.push(gauge.finding);
    if (variant?.kind === "refused") outcomes.push(outcomeOf(variantFinding(variant, row)));
    return aboutWith(ready.about, sizeNote, variant);
  }
  /** A finding that follows from the rules alone, in whatever row. */
  get rules(): Outcome | null {
    return this.plain.rules;
  }
  private gaugeOf(): GaugeRead {
    const { row, ungauged } = this;
    const cell = row.value("gauge");
    const unit = row.unit("gauge");
    const last = this.lastGauge;
    if (last !== null && last.cell === cell && last.unit === unit) return last;
    const made = keptBy(this.gauges, `${unit ?? ""}|${keyOf(cell)}`, () => {
      const read = readLength(cell, { assume: unit });
      if (read.kind === "value") return { gauge: read.value, finding: null, ready: new Map() };
      if (read.kind === "missing") return ungauged;
      return { ...ungauged, finding: outcomeOf(refusedFinding({ name: "gauge", part: "" }, row, "gauge", read)) };
    });
    if (made.gauge !== null) this.lastGauge = { ...made, cell, unit };
    return made;
  }
  private variantOf(variants: Variants): VariantRead {
    const { row } = this;
    const known = this.variants.get(row.values);
    if (known !== undefined) return known;
    const made = readVariant(variants, row, readText(row.value("gear")));
    this.variants.set(row.values, made);
    return made;
  }
  private readyFor({ gauge, ready }: GaugeRead, read: VariantRead | null): Ready {
    const variant = read?.kind === "known" ? read.variant : null;
    let made = ready.get(variant);
    if (made === undefined) ready.set(variant, (made = this.makeReady(gauge, variant)));
    return made;
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
      about: {
        kind,
        tagged: false,
        facts: { needed: [...new Set(needing.flatMap(neededFieldsOf))], gauged: gauge !== null, assumed: NOTHING_ASSUMED },
        more: NOTHING_MORE,
      },
      rules: rules === null ? null : outcomeOf(rules),
    };
  }
}
function aboutWith(about: About, size: string | null, variant: VariantRead | null): About {
  const taken = variant?.kind === "known" ? variant.assumed : null;
  if (size === null && taken === null) return about;
  return { ...about, facts: { ...about.facts, assumed: [size, taken].filter((note) => note !== null) } };
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

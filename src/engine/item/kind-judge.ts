/** The judge of one gear kind for the columns of a log: its checks made ready under each gauge and construction that occurs. */
import { type Finding, ofItem } from "../check/finding";
import { inUse, isFor, type Situation } from "../check/in-force";
import { PreparedCheck } from "../check/prepared-check";
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
/** What the checks of a kind say of a row. */
export interface KindOutcome {
  readonly notes: readonly string[];
  readonly comesOut: string;
  readonly needed: readonly FieldId[];
  readonly gauged: boolean;
}
/** Checks and columns of a kind, ready for one gauge and one construction. */
interface Ready {
  readonly checks: readonly PreparedCheck[];
  readonly unread: readonly UnreadColumn[];
  readonly needed: readonly FieldId[];
  readonly rules: Finding | null;
}
interface GaugeRead {
  readonly gauge: Length | null;
  readonly finding: Finding | null;
}
const NO_GAUGE: GaugeRead = { gauge: null, finding: null };
const NO_NOTES: readonly string[] = [];
/** Gauges and constructions that are kept ready; beyond it they are made again. */
const KEPT = 200;
const isBlank = (cell: CellValue): boolean => cell === undefined || cell === null || cell === "";

export class KindJudge {
  readonly kind: GearKind;
  private readonly row: Row;
  private readonly judging: Judging;
  private readonly house: readonly Finding[];
  private readonly gauges = new Map<string, GaugeRead>();
  private readonly variants = new Map<string, VariantRead>();
  private readonly ready = new Map<string, Ready>();
  private readonly plain: Ready;
  constructor(kind: GearKind, row: Row, judging: Judging) {
    this.kind = kind;
    this.row = row;
    this.judging = judging;
    this.house = houseFindings(kind, judging.basis, judging.house);
    this.plain = this.makeReady(null, null);
  }
  /** What the checks say of the row at hand, its tag after them. */
  judge(findings: Finding[], tag: Finding | null): KindOutcome {
    const { kind, row } = this;
    let sizeNote: string | null = null;
    let sizeFinding: Finding | null = null;
    if (kind.asNew !== undefined && !isBlank(row.value("asNewFrom"))) {
      const published = publishedSizes(kind, row);
      if ("refused" in published) sizeFinding = ofItem("as-new size", "NO VERDICT", "as-new size", published.refused);
      else {
        for (const [id, size] of published.sizes) row.set(id, size);
        sizeNote = published.note;
      }
    }
    const { gauge, finding: gaugeFinding } = isBlank(row.value("gauge")) ? NO_GAUGE : this.gaugeOf();
    const variant = kind.variants === undefined ? null : this.variantOf();
    const ready = gauge === null && variant?.kind !== "known" ? this.plain : this.readyFor(gauge, variant);
    const notes: string[] = [];
    let comesOut = "";
    for (const check of ready.checks) {
      const outcome = check.judge();
      for (const found of outcome.findings) findings.push(found);
      for (const note of outcome.notes) notes.push(note);
      if (outcome.comesOut !== null) comesOut = comesOut === "" ? outcome.comesOut : `${comesOut}; ${outcome.comesOut}`;
    }
    if (ready.unread.length > 0) unreadDamage(ready.unread, findings);
    if (tag !== null) findings.push(tag);
    if (sizeFinding !== null) findings.push(sizeFinding);
    if (gaugeFinding !== null) findings.push(gaugeFinding);
    if (variant?.kind === "refused") findings.push(variantFinding(variant, row));
    return { notes: this.notesWith(notes, sizeNote, variant), comesOut, needed: ready.needed, gauged: gauge !== null };
  }
  /** Findings that follow from the rules alone, in whatever row. */
  get rules(): Finding | null {
    return this.plain.rules;
  }
  get houseRules(): readonly Finding[] {
    return this.house;
  }
  private notesWith(notes: string[], size: string | null, variant: VariantRead | null): readonly string[] {
    if (size !== null) notes.push(size);
    if (variant?.kind === "known" && variant.assumed !== null) notes.push(variant.assumed);
    return notes.length === 0 ? NO_NOTES : notes;
  }
  private gaugeOf(): GaugeRead {
    const { row } = this;
    const cell = row.value("gauge");
    const unit = row.unit("gauge");
    return keptBy(this.gauges, `${unit ?? ""}|${keyOf(cell)}`, () => {
      const read = readLength(cell, { assume: unit });
      if (read.kind === "value") return { gauge: read.value, finding: null };
      return read.kind === "missing" ? NO_GAUGE : { gauge: null, finding: refusedFinding({ name: "gauge", part: "" }, row, "gauge", read) };
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
    return {
      checks: kind.checks.map((check) => new PreparedCheck(check, situation, row)),
      unread: unreadColumns(situation, row),
      needed: [...new Set(needing.flatMap(neededFieldsOf))],
      rules: ruleFinding(situation),
    };
  }
}
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

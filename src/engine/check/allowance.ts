/** A figure ready to be met with limits, and what a limit allows of it. */
import { exact, type Exact, fromCell, lesser, toNumber, within } from "../numbers/exact";
import { convert, showLength, type Unit } from "../numbers/lengths";
import type { Length } from "../reading/length";
import type { Size } from "../reading/size";
import type { Limit } from "../rules/criterion";
import { inPercent } from "../rules/limit-in-words";
import { isHouse } from "../rules/house-limits";
import { leastOf, tableName } from "../tables/look-up";
import { percent } from "../words";
import type { Word } from "./compare";

const FIGURES = new Map<string, Exact>();
/** Exact value of a limit's literal; made once. */
export function literal(text: string): Exact {
  let value = FIGURES.get(text);
  if (!value) FIGURES.set(text, (value = exact(text)));
  return value;
}
/** What is told of a reading; its words may be made late. */
export interface Told {
  readonly typed: string;
  /** The same in the fewest words, for a line that has to fit; left out where those are the words. */
  readonly brief?: string;
}
/** A figure ready to be met with limits. */
export interface Figure {
  readonly used: Exact;
  /** As-new or nominal size, for limits that are a share of it. */
  readonly base: Exact | null;
  /** "larger" when the part comes out above a size, "smaller" when below. */
  readonly comesOut: "larger" | "smaller";
  /** Size from which the allowance counts, where it is not the base. */
  readonly start?: Exact;
  readonly unit: Unit | null;
  readonly show: (value: Exact) => string;
  /** The reading in words; the size as new in words, or null where there is none. */
  readonly measured: Told;
  readonly original: Told | null;
  /** The size that base, unit and what else a limit counts from are taken from, where limits prepared on it hold. */
  readonly on?: Size | undefined;
  /** Read at right angles to the first direction. */
  readonly direction?: "across" | undefined;
  /** What the base is, in words, where it is not the size as new. */
  readonly from?: string;
  readonly blur: Exact;
  readonly gauge: string;
  /** What the base is called, where it is neither as-new nor nominal. */
  readonly of?: string;
  /** Unit whose cap counts, where the readings are in two units. */
  readonly capUnit?: Unit;
  /** Chain size, for limits from a table. */
  readonly size?: Length;
}
export interface Allowance {
  readonly allowance: Exact;
  readonly word: Word;
  readonly rule: string;
  /** Set where the limit is a share of the area; `allowance` is then its rounded equal in diameter, for showing. */
  readonly area?: Exact;
}
/** Diameter at which a share of a round section's area is lost, rounded to 12 digits: for showing, never for judging. */
function sideOf(base: Exact, area: string): Exact {
  return fromCell(toNumber(base) * Math.sqrt(1 - toNumber(literal(area))));
}
type Allowed = Allowance | { readonly none: string; readonly passOver: boolean };
/** What a limit allows of a figure, in the figure's unit. */
export function allowanceOf(limit: Limit, figure: Figure): Allowed {
  if (limit.word === "any") return { none: "the limit is an observation", passOver: false };
  if (limit.word === "maker") throw new Error("A maker's figure is met in its own check");
  if (limit.word === "below") {
    if (figure.size === undefined || figure.unit === null || figure.base === null) throw new Error("A table limit needs a nominal size");
    const row = leastOf(limit.table, figure.size.size, figure.size.unit, figure.unit);
    const size = showLength(figure.size.size, figure.size.unit);
    if (row === null)
      return { none: `size ${size} is not in ${tableName(limit.table)}; a neighbouring row is never used`, passOver: false };
    if (!row.confirmed)
      return { none: `the row for ${size} in ${tableName(limit.table)} is unconfirmed and was passed over`, passOver: true };
    return {
      allowance: figure.base.sub(row.least),
      word: "above",
      rule: limit.table === "groove" ? "least groove for the rope" : `least thickness in ${tableName(limit.table)}`,
    };
  }
  if ("table" in limit && limit.table === "rope category") throw new Error("A rope category is met in its own check");
  if (limit.word === "fewer") throw new Error("A least number is met in its own check");
  if ("area" in limit) {
    if (figure.base === null) throw new Error("A share needs an as-new size");
    return {
      allowance: figure.base.sub(sideOf(figure.base, limit.area)),
      word: limit.word,
      rule: `${inPercent(limit.area)} % of the as-new area of a round section`,
      area: literal(limit.area),
    };
  }
  if ("share" in limit) {
    if (figure.base === null) throw new Error("A share needs an as-new size");
    const share = figure.base.mul(literal(limit.share));
    const rule = `${inPercent(limit.share)} % of ${figure.of ?? (figure.size === undefined ? "as-new" : "nominal")}`;
    if (limit.cap === undefined || figure.unit === null)
      return { allowance: share, word: limit.word, rule: limit.share === "0" ? "any measurable change" : rule };
    const capUnit = figure.capUnit ?? figure.unit;
    const cap = convert(literal(limit.cap[capUnit]), capUnit, figure.unit);
    return { allowance: lesser(share, cap), word: limit.word, rule: `${rule}, at most ${limit.cap[capUnit]} ${capUnit}` };
  }
  if ("length" in limit) {
    const row = isHouse(limit) ? `${limit.row}: ` : "";
    if (figure.unit === null)
      return {
        none: `${row}a limit of ${showLength(literal(limit.length), limit.unit)} meets no sizes without a unit; write their unit, or the limit in %`,
        passOver: false,
      };
    const allowance = convert(literal(limit.length), limit.unit, figure.unit);
    if (isHouse(limit) && figure.base !== null && !within(allowance, null, figure.base.mul(limit.most)))
      return {
        none: `${row}${showLength(literal(limit.length), limit.unit)} is more than ${percent(toNumber(limit.most))} of ${figure.of ?? (figure.size === undefined ? "as-new" : "nominal")} ${figure.show(figure.base)}; Limit takes the change (growth or wear), not the size, and the row is not used`,
        passOver: false,
      };
    return { allowance, word: limit.word, rule: `${limit.length} ${limit.unit}` };
  }
  if ("degrees" in limit)
    return {
      allowance: literal(limit.degrees),
      word: limit.word,
      rule: limit.degrees === "0" ? "any visible bend or twist" : `${limit.word} ${limit.degrees} degrees`,
    };
  return {
    allowance: exact(limit.count),
    word: limit.word,
    rule: limit.word === "from" ? `${String(limit.count)} or more` : `more than ${String(limit.count)}`,
  };
}
/** "above 2.1 in", "from 10", "below 0.342 in", "at 0.9 in or less". */
export function comesOutText(figure: Figure, allowed: Allowance): string {
  const at = comesOutAt(figure, allowed);
  if (figure.comesOut === "larger") return allowed.word === "from" ? `at ${figure.show(at)} or more` : `above ${figure.show(at)}`;
  return allowed.word === "above" ? `below ${figure.show(at)}` : `at ${figure.show(at)} or less`;
}
export function comesOutAt(figure: Figure, allowed: Allowance): Exact {
  const start = figure.start ?? figure.base;
  if (start === null) return allowed.allowance;
  return figure.comesOut === "larger" ? start.add(allowed.allowance) : start.sub(allowed.allowance);
}

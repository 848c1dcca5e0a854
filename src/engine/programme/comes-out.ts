/** The figure at which a line comes out, in short words, for a person with the gauge in hand. */
import { comesOutOf, comesOutWords } from "../check/comes-out-at";
import { criteriaFor, type Situation } from "../check/in-force";
import { field } from "../columns";
import type { Check } from "../gear/kind";
import type { Cells } from "../log/cells";
import { exact, type Exact } from "../numbers/exact";
import { convert, showLength, type Unit } from "../numbers/lengths";
import { readChainSize } from "../reading/chain-size";
import { type Length, readLength } from "../reading/length";
import { readText } from "../reading/text";
import type { CheckLine } from "./lines";

/** As far as a size is written out. */
const FINEST: Readonly<Record<Unit, Exact>> = { in: exact("0.0001"), mm: exact("0.001") };
/** A thousandth of an inch, a tenth of a millimetre: what a vernier reads to. */
const STEP: Readonly<Record<Unit, Exact>> = { in: exact("0.001"), mm: exact("0.1") };
/** A size in whole steps, rounded so that what is read off the gauge comes out sooner, never later. */
function inSteps(at: Exact, step: Exact, larger: boolean): Exact {
  const down = at.div(step).floor(0);
  const below = down.mul(step);
  return larger || below.equals(at) ? below : below.add(step);
}
/**
 * Words such as "above 2.1 in (53.3 mm)"; "" where no limit in force can be told. With a gauge the figure is in its unit and to
 * its resolution, rounded to the safe side.
 */
export function lineComesOut(line: CheckLine, cells: Cells, situation: Situation, gauge: Length | null, twoWays: boolean): string {
  const { check } = line;
  if (check.kind === "seen") return seenComesOut(check, situation);
  if (check.kind === "maker") {
    const figure = readText(cells.value(check.figure));
    return figure === "" ? "" : `${check.comesOut === "larger" ? "above" : "below"} ${figure}`;
  }
  if (check.kind === "loss" || check.kind === "growth" || check.kind === "least" || check.kind === "gap") {
    const limit = lineLimit(line, cells, situation, twoWays);
    return limit === null ? "" : limitWords(limit, figures(limit.at, limit.unit, gauge, limit.larger));
  }
  const words = comesOutWords(check, cells, situation);
  if (check.kind === "angle" && words === `${check.name} above 0 degrees`) return "any that is visible";
  return words?.startsWith(`${check.name} `) === true ? words.slice(check.name.length + 1) : (words ?? "");
}
function seenComesOut(check: Check & { kind: "seen" }, situation: Situation): string {
  if (criteriaFor(check, situation, "high", false).length === 0) return "";
  return field(check.measured).type === "sound" ? "no" : "any";
}
/** A size at which a line comes out. */
export interface LineLimit {
  readonly at: Exact;
  readonly unit: Unit;
  /** The part comes out when it is larger; else when it is smaller. */
  readonly larger: boolean;
  /** At the limit itself as well. */
  readonly from: boolean;
}
/** The strictest size in force at which a line comes out; null where none can be told. */
export function lineLimit({ now, asNew, check }: CheckLine, cells: Cells, situation: Situation, twoWays: boolean): LineLimit | null {
  if (check.kind !== "loss" && check.kind !== "growth" && check.kind !== "least" && check.kind !== "gap") return null;
  const read =
    check.kind === "gap" || asNew === null
      ? null
      : check.kind === "least"
        ? readChainSize(cells.value(asNew), cells.unit(asNew), cells.times)
        : readLength(cells.value(asNew), { assume: cells.unit(asNew) });
  if (read !== null && read.kind !== "value") return null;
  const base = read === null ? null : read.value;
  const unit = base?.unit ?? cells.unit(now) ?? "in";
  const stress = check.kind === "loss" ? (situation.kind.parts[check.part] ?? "high") : "high";
  const result = comesOutOf(check, base, unit, situation, stress, twoWays);
  if (!result.ok) return null;
  const larger = check.kind === "growth" || check.kind === "gap";
  const [strictest] = [...result.limits].sort(
    (a, b) =>
      (larger ? a.at.compare(b.at) : b.at.compare(a.at)) ||
      Number(b.criterion.limit.word === "from") - Number(a.criterion.limit.word === "from"),
  );
  return strictest === undefined ? null : { at: strictest.at, unit, larger, from: strictest.criterion.limit.word === "from" };
}
/** A limit as a person reads it: above 2.1 in, 0.9 in or less. */
export const limitWords = ({ larger, from }: LineLimit, size: string): string =>
  larger ? (from ? `${size} or more` : `above ${size}`) : from ? `${size} or less` : `below ${size}`;
function figures(at: Exact, unit: Unit, gauge: Length | null, larger: boolean): string {
  const stepped = (to: Unit, step: Exact): string => showLength(inSteps(convert(at, unit, to), step, larger), to);
  if (gauge !== null && !gauge.size.equals(0)) return stepped(gauge.unit, gauge.size);
  const other: Unit = unit === "in" ? "mm" : "in";
  return `${stepped(unit, FINEST[unit])} (${stepped(other, STEP[other])})`;
}

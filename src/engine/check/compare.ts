/** The only comparison of a reading with a limit. */
import { exact, type Exact, lesser, ZERO } from "../numbers/exact";

/** "above" passes at the limit, "from" fails at the limit. */
export type Word = "above" | "from";
export interface Judged {
  /** The allowance is used up, for certain. */
  readonly beyond: boolean;
  /** The figure as it was read is past the allowance, whatever the gauge. */
  readonly past: boolean;
  /** The limit lies inside the gauge's uncertainty: this measurement cannot settle it. */
  readonly uncertain: boolean;
  /** 80 % or more of the allowance is used. */
  readonly nearly: boolean;
  /** Share of the allowance used, from 0; infinite when nothing is allowed and something is used. */
  readonly share: number;
  /** A gauge finer than this would settle it; null when the reading lies on the limit or nothing is uncertain. */
  readonly settledBy: Exact | null;
}
const { abs, max } = Math;
/** From 80 % of the allowance a part is watched. A share further from it than `NEAR` needs no exact comparison. */
const NEARLY = exact("0.8");
const WATCHED = 0.8;
const NEAR = 0.001;
function meets(used: Exact, allowance: Exact, word: Word): boolean {
  const side = used.compare(allowance);
  return word === "above" ? side > 0 : side >= 0;
}
/**
 * Compares what has been used of an allowance (loss, growth, clearance, count, angle) with the allowance.
 * `blur` is how far the figure may be off either way: the gauge's resolution for a difference of two readings,
 * half of it for one reading (acceptance must be proven, in the manner of ISO 14253-1 and JCGM 106).
 */
export function judge(used: Exact, allowance: Exact, word: Word, blur: Exact = ZERO): Judged {
  const side = used.compare(allowance);
  const met = word === "above" ? side > 0 : side >= 0;
  const sharp = blur === ZERO;
  const low = sharp ? met : meets(used.sub(blur), allowance, word);
  const high = sharp ? met : meets(used.add(blur), allowance, word);
  const share = allowance.compare(ZERO) === 0 ? (used.compare(ZERO) > 0 ? Infinity : 0) : max(0, used.over(allowance));
  return {
    beyond: low,
    past: side > 0,
    uncertain: low !== high,
    nearly: nearlyUsed(used, allowance, share),
    share,
    settledBy: low !== high && side !== 0 ? allowance.sub(used).abs() : null,
  };
}
function nearlyUsed(used: Exact, allowance: Exact, share: number): boolean {
  if (allowance.compare(ZERO) <= 0) return false;
  if (abs(share - WATCHED) > NEAR) return share > WATCHED;
  return used.compare(allowance.mul(NEARLY)) >= 0;
}
/**
 * The same for a limit on the area of a round section: the areas stand to each other as the squares of the diameters, so
 * nothing has to be rounded. `base` is the diameter as new, `used` the diameter lost, `share` the share of the area allowed.
 */
export function judgeArea(base: Exact, used: Exact, share: Exact, word: Word, blur: Exact = ZERO): Judged {
  // More than the whole diameter cannot be lost, however coarse the gauge.
  const lost = (loss: Exact): Exact => {
    const left = base.sub(lesser(loss, base));
    return base.mul(base).sub(left.mul(left));
  };
  const allowance = base.mul(base).mul(share);
  const met = judge(lost(used), allowance, word);
  const low = meets(lost(used.sub(blur)), allowance, word);
  const high = meets(lost(used.add(blur)), allowance, word);
  return { ...met, beyond: low, uncertain: low !== high, settledBy: null };
}
/** How a pair of readings of the same place fits together before any limit is met. */
export type Fit = "as it is" | "noise" | "implausible" | "inch in a millimetre column" | "swapped units" | "slipped point";
const NOISE = exact("0.02");
const INCH = exact("25.4");
const WORN = exact("0.85");
const GROWN = exact("1.2");
/** Sizes that differ by less than 10 times are in one unit for certain: 25.4 times 0.85 is 21.6. */
const SAME_UNIT = 0.1;
/** An opening that reads so many times its size as new: 284 for 28.4. No opening grows so far and is still measured. */
const SLIPPED: readonly (readonly [from: number, to: number])[] = [
  [9.8, 12],
  [98, 120],
];
/**
 * `changed` is how far the reading went the impossible way (a section that grew, a throat that closed).
 * Up to 2 % is gauge noise and counts as no change. A ratio near 25.4 is an inch figure in a millimetre column, an
 * opening near 10 or 100 times its size a slipped decimal point.
 */
export function fitOf(original: Exact, measured: Exact, impossible: "larger" | "smaller"): Fit {
  const ratio = measured.over(original);
  if (impossible === "smaller" && SLIPPED.some(([from, to]) => ratio >= from && ratio <= to)) return "slipped point";
  if (!(ratio > SAME_UNIT && ratio < 1 / SAME_UNIT)) {
    const inMillimetres = measured.mul(INCH);
    if (inMillimetres.compare(original.mul(WORN)) >= 0 && inMillimetres.compare(original.mul(GROWN)) <= 0)
      return "inch in a millimetre column";
    if (measured.compare(original.mul(INCH).mul(WORN)) >= 0 && measured.compare(original.mul(INCH).mul(GROWN)) <= 0) return "swapped units";
  }
  if ((impossible === "larger" ? measured.compare(original) : original.compare(measured)) <= 0) return "as it is";
  const excess = impossible === "larger" ? measured.sub(original) : original.sub(measured);
  return excess.compare(original.mul(NOISE)) <= 0 ? "noise" : "implausible";
}

/** What is true of one item, before anybody writes it down: sizes in the log's unit, counts, and what is in order. */
import { KINDS } from "./kinds.mjs";
import { LIMITS } from "./limits.mjs";

/** As-new sizes stand on a gauge's marks: half millimetres, sixteenths of an inch. */
function asNew(low, high, unit, d) {
  const mm = d.between(low, high, 1);
  return unit === "mm" ? Math.round(mm * 2) / 2 : Math.max(1, Math.round((mm / 25.4) * 16)) / 16;
}
const DIGITS = { mm: 100, in: 1000 };
/** `from` changed by `share`, at a figure a gauge shows; `away` rounds towards more change, so that what is past stays past. */
export function changed(from, share, change, unit, away) {
  const exact = change === "loss" ? from * (1 - share) : from * (1 + share);
  const step = DIGITS[unit];
  if (!away) return Math.round(exact * step) / step;
  return (change === "loss" ? Math.floor(exact * step - 1e-6) : Math.ceil(exact * step + 1e-6)) / step;
}
/** A clean size now: worn by at most what a clean row has; by halves in sixty-fourths, where they show so little. */
function cleanNow(from, { change, limit }, unit, d) {
  const now = changed(from, d.between(0, limit.clean, 5), change, unit, false);
  if (unit === "mm" || d.chance(0.6)) return now;
  const marked = Math.round(now * 64) / 64;
  const share = change === "loss" ? (from - marked) / from : (marked - from) / from;
  return share >= 0 && share <= limit.clean ? marked : now;
}

/** @returns {{kind: string, name: string, is: Record<string, number|string>}} */
export function cleanFacts(kind, unit, d) {
  const { names, sizes, sights, optional, counts = {}, ...more } = KINDS[kind];
  const is = {};
  for (const part of sizes) {
    is[`${part.of}.asNew`] = asNew(part.low, part.high, unit, d);
    is[`${part.of}.now`] = cleanNow(is[`${part.of}.asNew`], part, unit, d);
  }
  if (more.twist) is.twist = 0;
  if (more.clearance)
    is.clearance = changed(d.between(0.2, LIMITS.clearanceStrip.cleanMm, 1) / (unit === "mm" ? 1 : 25.4), 0, "loss", unit);
  for (const [of, { clean }] of Object.entries(counts)) is[of] = d.whole(0, clean);
  if (more.chain) {
    const [inches] = d.pick(more.chain);
    is.chainSize = unit === "mm" ? d.pick([10, 13, 16]) : inches;
    is.link = changed(chainFigure(is.chainSize), d.between(0, LIMITS.chain.clean, 5), "loss", unit);
  }
  if (more.maker) {
    // The maker's own figures: the link may wear to the one, so many links may measure at most the other.
    is.leastLink = asNew(5, 14, unit, d);
    is.link = changed(is.leastLink, d.between(0.06, 0.1, 5), "growth", unit);
    is.gaugedMost = asNew(150, 320, unit, d);
    is.gauged = changed(is.gaugedMost, d.between(0.015, LIMITS.maker.clean, 5), "loss", unit);
  }
  if (more.rope) {
    is.size = asNew(...more.rope, unit, d);
    is.rope = changed(is.size, d.between(0, LIMITS.ropeDiameter.clean, 5), "loss", unit);
  }
  if (more.groove) {
    is.size = asNew(12, 40, unit, d);
    is.groove = changed(is.size, d.between(...LIMITS.groove.clean, 5) - 1, "growth", unit);
  }
  if (more.clips) {
    const [inches, fitted, spacing] = d.pick(LIMITS.clips);
    is.clipSize = inches;
    // One more than for drop forged clips, so that clips of any material are enough.
    is.clipsFitted = fitted + d.whole(1, 2);
    is.spacing = Number(((spacing + d.pick([0, 0.25, 0.5])) * (unit === "mm" ? 25.4 : 1)).toFixed(2)) + (unit === "mm" ? 0.5 : 0);
  }
  if (more.beam) {
    is.span = unit === "mm" ? d.whole(10, 60) * 100 : d.whole(4, 20) * 12;
    is.bend = Math.max(unit === "mm" ? 0.1 : 0.005, changed(is.span * d.between(0.0001, LIMITS.bend.clean, 6), 0, "loss", unit));
  }
  for (const sight of sights) is[sight] = "good";
  for (const sight of optional) if (d.chance(0.25)) is[sight] = "good";
  return { kind, name: d.pick(names), is };
}
export const chainFigure = (size) => (typeof size === "number" ? size : Number(size.split("/")[0]) / Number(size.split("/")[1]));

/** Which of an item's facts a verdict cannot do without. */
export const needed = (kind, of) => !KINDS[kind].optional.includes(of);

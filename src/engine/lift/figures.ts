/** Before the lift: tension in a leg, rated load of a hitch, shares left by heat and side load. */
import { matchKind } from "../names/gear-name";
import { exact, type Exact, fromCell, lesser, same, toNumber, within } from "../numbers/exact";
import type { Answer } from "../reading/answer";
import type { CellValue } from "../reading/cell-value";
import { readText, tidy } from "../reading/text";
import { convert } from "../numbers/lengths";
import type { Length } from "../reading/length";
import {
  type Band,
  CHAIN_CHOKE,
  CHAIN_CHOKE_LEAST,
  CHOKE,
  CHOKER_SHARE,
  EYEBOLT_IN_LINE,
  EYEBOLT_SIDE,
  type EyeboltRow,
  HEAT,
  ROPE_CHOKE,
  SHACKLE_SIDE,
} from "./tables";

const good = <T>(value: T): Answer<T> => ({ ok: true, value });
const none = (why: string): Answer<never> => ({ ok: false, kind: "missing", why });
const unreadable = (why: string): Answer<never> => ({ ok: false, kind: "unreadable", why });
/** Nothing stands in the cell. A typed 0 is a reading, though some hosts hand a blank cell over as 0: it is never taken as blank. */
export const isBlank = (cell: CellValue): boolean => cell !== 0 && readText(cell) === "";
/** A plain number from a cell: a load, an angle, a temperature. */
function number(cell: CellValue, name: string): Answer<Exact> {
  if (typeof cell === "number" && Number.isFinite(cell)) return good(fromCell(cell));
  const text = readText(cell);
  if (text === "") return none(`The ${name} is missing.`);
  const plain = tidy(text).replace(/ ?(°|º|deg(rees)?)$/i, "");
  return /^-?\d+(\.\d+)?$/.test(plain) ? good(exact(plain)) : unreadable(`The ${name} "${text}" is not a plain number.`);
}
const LEAST_ANGLE = exact(30);
const RIGHT = exact(90);
/** Angle of a leg from horizontal, from the convention named, for so many legs or parts. Refused below 30 degrees and above 90. */
function fromHorizontal(angle: CellValue, from: CellValue, parts: number): Answer<Exact> {
  const read = number(angle, "angle");
  if (!read.ok) return read;
  const word = readText(from).toLowerCase() || "horizontal";
  const horizontal =
    word === "horizontal"
      ? read.value
      : word === "vertical"
        ? RIGHT.sub(read.value)
        : word === "included"
          ? RIGHT.sub(read.value.div(2))
          : null;
  // Of four legs, two beside each other stand closer together than two across.
  if (word === "included" && parts > 2)
    return none(
      "The angle between two legs says how three or four of them stand only when it is known which two; measure it from horizontal or vertical.",
    );
  if (horizontal === null) return unreadable(`"${readText(from)}" is no way to measure the angle; type horizontal, vertical or included.`);
  if (!within(horizontal, null, RIGHT))
    return unreadable("The angle is more than 90 degrees from horizontal; check from where it is measured.");
  if (!within(horizontal, LEAST_ANGLE, RIGHT))
    return none(
      "The legs stand at less than 30 degrees from horizontal; slings are not used so flat unless the maker or a qualified person allows it.",
    );
  return good(horizontal);
}
const sine = (degrees: Exact): number => {
  const d = toNumber(degrees);
  // sin 30 and sin 90 are exact; binary arithmetic gives 0.49999999999999994 for the first.
  return d === 30 ? 0.5 : Math.sin((d * Math.PI) / 180);
};
/** Legs that are taken to carry: three of four share a load, the fourth hangs slack. `strict` trusts only two. */
export function carryingLegs(legs: number, strict = false): number {
  return Math.min(legs, strict ? 2 : 3);
}
function legCount(legs: CellValue): Answer<number> {
  const read = number(legs, "number of legs");
  if (!read.ok) return read;
  const count = toNumber(read.value);
  return [1, 2, 3, 4].includes(count) ? good(count) : unreadable("The number of legs is 1, 2, 3 or 4.");
}
function positive(cell: CellValue, name: string): Answer<number> {
  const read = number(cell, name);
  if (!read.ok) return read;
  return within(read.value, exact(0), null) && toNumber(read.value) !== 0
    ? good(toNumber(read.value))
    : unreadable(`The ${name} must be more than zero.`);
}
/** Tension in one leg: load over carrying legs and the sine of their angle from horizontal. */
export function legLoad(load: CellValue, legs: CellValue, angle: CellValue, angleFrom: CellValue, strict = false): Answer<number> {
  const weight = positive(load, "load");
  if (!weight.ok) return weight;
  const count = legCount(legs);
  if (!count.ok) return count;
  const h = fromHorizontal(angle, angleFrom, count.value);
  return h.ok ? good(weight.value / (carryingLegs(count.value, strict) * sine(h.value))) : h;
}
function shareIn(bands: readonly Band[], value: Exact): number | null {
  return bands.find((band) => within(value, null, band.end) && (band.closed || !same(value, band.end)))?.share ?? null;
}
/** Rated load of slings in a hitch, from the vertical rating of one. A basket is two parts; three or four parts count as three. */
export function ratedAt(
  wll: CellValue,
  hitch: CellValue,
  legs: CellValue,
  angle: CellValue,
  angleFrom: CellValue,
  chokeAngle: CellValue,
  strict = false,
): Answer<number> {
  const rating = positive(wll, "working load limit");
  if (!rating.ok) return rating;
  const count = legCount(legs);
  if (!count.ok) return count;
  const word = readText(hitch)
    .toLowerCase()
    .replace(/ hitch$/, "");
  if (!["vertical", "choker", "basket"].includes(word))
    return word === "" ? none("The hitch is missing.") : unreadable(`"${readText(hitch)}" is no hitch; type vertical, choker or basket.`);
  const parts = word === "basket" ? count.value * 2 : count.value;
  const mayBeBlank = count.value === 1 && word !== "basket";
  const h = mayBeBlank && isBlank(angle) ? good(RIGHT) : fromHorizontal(angle, angleFrom, parts);
  if (!h.ok)
    return mayBeBlank && isZero(angle)
      ? none(`${h.why} Where the one leg hangs straight, leave the angle as empty text or type 90; a blank cell can arrive as 0.`)
      : h;
  if (parts > 4) return none("More than two slings in basket hitches need a qualified person's plan.");
  const upright = rating.value * carryingLegs(parts, strict) * sine(h.value);
  if (word !== "choker") return good(upright);
  if (isBlank(chokeAngle)) return good(upright * CHOKER_SHARE);
  // The kind of sling is not asked for, so the strictest of the tables counts.
  const choke = chokeShare(chokeAngle, null);
  return choke.ok ? good(upright * choke.value.ofVertical) : choke;
}
const isZero = (cell: CellValue): boolean => cell === 0 || /^-?0+(\.0+)?$/.test(readText(cell));
export interface ChokeShare {
  /** Share of the vertical rating that is left. */
  readonly ofVertical: number;
  /** Share of the choker rating where the choker table decides; null where the table of chain or of wire rope is stricter. */
  readonly ofChoker: number | null;
}
/**
 * What a choke angle leaves of a sling. For chain the stricter of the choker table and the chain table, which has no rating below 30 degrees; for wire rope
 * its own reading; where the kind is not known (null) the strictest of all.
 */
export function chokeShare(chokeAngle: CellValue, gear: string | null): Answer<ChokeShare> {
  const choke = number(chokeAngle, "choke angle");
  if (!choke.ok) return choke;
  const ofChoker = within(choke.value, exact(0), null) ? shareIn(CHOKE, choke.value) : null;
  if (ofChoker === null) return unreadable("The choke angle is between 0 and 180 degrees.");
  const either = { ofVertical: CHOKER_SHARE * ofChoker, ofChoker };
  const ofRope = shareIn(ROPE_CHOKE, choke.value);
  if (gear === "wire rope sling" && ofRope !== null) return good({ ofVertical: ofRope, ofChoker: ofRope === CHOKER_SHARE ? 1 : null });
  if (gear !== "chain sling" && gear !== null) return good(either);
  if (!within(choke.value, CHAIN_CHOKE_LEAST, null))
    return none(
      `The choke angle is less than ${String(toNumber(CHAIN_CHOKE_LEAST))} degrees; the table for chain slings has no rating for so tight a choke. Type the angle (a blank cell can arrive as 0); a sling that chokes freely hangs at more than 120.`,
    );
  const own = [shareIn(CHAIN_CHOKE, choke.value), gear === null ? ofRope : null].filter((share) => share !== null);
  const least = Math.min(...own);
  return good(least < either.ofVertical ? { ofVertical: least, ofChoker: null } : either);
}
/** Grade of alloy chain as it is typed; null for any other. */
export function chainGrade(grade: CellValue): "80" | "100" | null {
  const said = /^(?:grade|gr|g)? ?\.?(80|100|8|10)$/i.exec(readText(grade))?.[1];
  return said === undefined ? null : said.startsWith("8") ? "80" : "100";
}
/** Share of the working load limit left for alloy chain at, or after, a temperature; between two rows the hotter one. */
export function hotShare(grade: CellValue, temperature: CellValue, unit: CellValue, state: CellValue): Answer<number> {
  const column = chainGrade(grade);
  if (column === null)
    return readText(grade) === ""
      ? none("The grade is missing; type 80 or 100.")
      : unreadable(`"${readText(grade)}" is no grade in the table; type 80 or 100.`);
  const degrees = number(temperature, "temperature");
  if (!degrees.ok) return degrees;
  const scale = readText(unit).toUpperCase().replace(/[°º]/g, "");
  if (scale !== "F" && scale !== "C")
    return scale === ""
      ? none("The temperature unit is missing; type F or C.")
      : unreadable(`"${readText(unit)}" is no temperature unit; type F or C.`);
  const when = readText(state).toLowerCase() || "hot";
  if (when !== "hot" && when !== "after") return unreadable(`"${readText(state)}" is no state; type hot or after.`);
  // -40 is the same on both scales.
  if (within(degrees.value, null, exact(-40))) return none("At -40 degrees and below, alloy chain is not used unless its maker allows it.");
  const at = (row: (typeof HEAT)[number]): Exact => exact(scale === "F" ? row.fahrenheit : row.celsius);
  const [first] = HEAT;
  if (first && within(degrees.value, null, at(first)) && toNumber(degrees.value) !== toNumber(at(first))) return good(1);
  const row = HEAT.find((r) => within(degrees.value, null, at(r)));
  return good(row ? (100 - row[when][column]) / 100 : 0);
}
const SHOULDER = /\b(shoulder|collar)(s|ed)?\b/i;
const NO_SHOULDER =
  /\b(plain|regular|non|not|without|w\/o|missing|lacks?|lacking|removed|minus|un)\b|\bno\b(?!\.? ?\d)|\b(non|un)(shoulder|collar)|(shoulder|collar)(s|ed)?[- ]?less|\?/i;
export const hasShoulder = (gearText: string): boolean => shoulderRefusal(gearText) === null;
/** Plain eyebolts are pulled in line only; one that does not say its shoulder is asked for it [WAC 296-155-56110(2)(a), (b)]. */
function shoulderRefusal(text: string): string | null {
  if (NO_SHOULDER.test(text))
    return "an eyebolt without a shoulder is pulled in line only [WAC 296-155-56110(2)(b)]; use a shoulder eyebolt, its shoulder tight to the load, for an angled pull.";
  return SHOULDER.test(text)
    ? null
    : 'its name does not say that it has a shoulder, and a plain eyebolt is pulled in line only [WAC 296-155-56110(2)]; look at it, and where it has one write "shoulder eyebolt" as its name.';
}
/** Share of the working load limit left at a side-load angle: for shackles out of plane, for shoulder eyebolts from the axis; other eyebolts in line only. */
export function sideShare(gear: CellValue, angle: CellValue): Answer<number> {
  const text = readText(gear);
  const kind = matchKind(text);
  const share = sideShareOfKind(kind.ok ? kind.kind.id : null, text, angle, null);
  return share.ok ? good(toNumber(share.value)) : share;
}
/** The same where the kind is known; `text` is what the gear is called, which tells an eyebolt's shoulder, `size` an eyebolt's size where it is known. */
export function sideShareOfKind(kind: string | null, text: string, angle: CellValue, size: Length | null): Answer<Exact> {
  if (kind !== "eyebolt" && kind !== "shackle")
    return none(`There is no side-load table for "${text}"; there is one for shackles and one for shoulder eyebolts.`);
  const read = number(angle, "angle");
  if (!read.ok) return read;
  if (!within(read.value, exact(0), null)) return unreadable("The angle cannot be negative.");
  const left = kind === "shackle" ? shareIn(SHACKLE_SIDE, read.value) : null;
  const share = kind === "eyebolt" ? eyeboltShare(read.value, size) : left === null ? null : fromCell(left);
  const plain = kind === "eyebolt" && !(share instanceof Object && share.equals(1)) ? shoulderRefusal(text) : null;
  if (plain !== null) return none(`At ${readText(angle)} degrees "${text}" is refused: ${plain}`);
  if (share === "not recommended")
    return none(`An eyebolt of this size is not recommended for a pull at ${readText(angle)} degrees [ASME B18.15, restated].`);
  return share === null ? none("Loading beyond 90 degrees is not allowed unless the maker or a qualified person allows it.") : good(share);
}
/** The row of an eyebolt's size; undefined where it is not known or not listed. */
export function eyeboltRow(size: Length | null): EyeboltRow | undefined {
  return size === null ? undefined : EYEBOLT_SIDE.find((row) => same(exact(row.size), convert(size.size, size.unit, "in")));
}
/** Shares of an eyebolt by angle: of its size, or of any that is listed the least at that angle or at a smaller one. */
export function eyeboltShares(size: Length | null): readonly { readonly degrees: number; readonly share: Exact | null }[] {
  const row = eyeboltRow(size);
  const rows = row === undefined ? EYEBOLT_SIDE : [row];
  const [{ at } = { at: [] }] = EYEBOLT_SIDE;
  let least = exact(1);
  return at.map(({ degrees }, index) => {
    const shares = rows.flatMap(({ inLine, at: loads }) => {
      const pounds = loads[index]?.pounds ?? null;
      return pounds === null ? [] : [exact(pounds).div(inLine)];
    });
    for (const share of shares) least = lesser(least, share);
    return { degrees, share: shares.length === 0 ? null : least };
  });
}
/** At the next printed angle; up to 5 degrees is in line. Null beyond the last. */
function eyeboltShare(angle: Exact, size: Length | null): Exact | "not recommended" | null {
  if (within(angle, null, EYEBOLT_IN_LINE)) return exact(1);
  const next = eyeboltShares(size).find(({ degrees }) => within(angle, null, exact(degrees)));
  return next === undefined ? null : (next.share ?? "not recommended");
}

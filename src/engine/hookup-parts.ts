/** What each gear kind carries in a hook-up, and what lowers its rating there. */
import type { Answer } from "./ask";
import { readText, tidy } from "./cell";
import { exact, fromCell, type Exact } from "./exact";
import { within } from "./judge";
import { chokeShare, hotShare, isBlank, sideShareOfKind } from "./lift";
import type { CellValue } from "./model";
import { CHOKER_SHARE } from "./tables/capacity";
import { SERVICE_TEMPERATURE } from "./tables/service-temperature";

/** A share by which the rating is lowered, with the table it comes from. */
export interface Reduction {
  readonly share: Exact;
  readonly words: string;
}

export type Hitch = "vertical" | "choker" | "basket";
export const HITCHES: readonly Hitch[] = ["vertical", "choker", "basket"];

const good = <T>(value: T): Answer<T> => ({ ok: true, value });
const none = (why: string): Answer<never> => ({ ok: false, kind: "missing", why });
const WHOLE = exact(1);

export const SLINGS: readonly string[] = ["chain sling", "wire rope sling", "web sling", "roundsling", "mesh sling", "fibre rope sling"];
/** Hardware whose rating is held against the pull on it: one leg, or the whole load above the legs. */
const HARDWARE: readonly string[] = ["shackle", "hook", "link", "swivel", "eyebolt", "eye nut", "hoist ring", "turnbuckle"];
/** Kinds that a side load is asked for: screwed into the load, they stand as the load is drilled, not as the leg pulls. */
export const SIDE_ASKED: readonly string[] = ["eyebolt", "eye nut"];
/** Kinds that take a side load in the pane. */
export const SIDE_TAKEN: readonly string[] = ["shackle", ...SIDE_ASKED];

/** A name that says one leg: "single leg", "1-leg", "chain leg"; not the end of another count, as in 2-1 leg. */
const ONE_LEG = /\b(single|one)[- ]?(leg(ged)?|lg)\b|(?<![\w/&.-]|[\d/&] )(1|i)[- ]?(leg(ged)?|lg)\b|\bchain leg\b/gi;
/** Numbers of something else in slings of rope and web: plies, braids, strands, the 6 x 36 of a rope. */
const OTHER_COUNTS = /\b(\d+|two|three|four|six|eight|single|double|twin|dual|triple|multi(ple)?|quad)[- ]?(ply|plies|layer(s|ed)?|strand(s|ed)?|braid(s|ed)?|path|wall(s|ed)?|stitch(ed)?)\b|\b\d+[- ]?parts?[- ](?=body\b|braid)|\b\d+ ?x ?\d+\b/gi;
/** Legs, or several slings in one row: whatever else the name says, the tag can rate several legs together. */
const LEGS = new RegExp(
  [
    /(?<![a-z])leg(s|ged)?(?![a-z])|(multi|twin|two|three|four|quad|double|triple|dual)-?leg(s|ged)?(?![a-z])/,
    /(?<![a-z])([2-9]|two|three|four|five|six|i{2,3}|iv)[- ]?lgs?\b|\blgs\b|\bbridles?\b|\bpairs?\b|\bsets?\b/,
    /(?<!\b(type|no\.?|nr\.?|size) |[\d.,/])\b([2-9]|two|three|four|five|six)[- ]?(x|off|no|nos|chains?|slings?)\b(?! ?\d)|(?<!\d ?)x ?[2-9]\)?$/,
    /^([2-9]|two|three|four) (?!in\b|inch|mm\b|cm\b|m\b|ft\b|t\b|te\b|tons?\b|tonnes?\b|kg\b|lbs?\b|[\d/"'-])/,
  ].map(({ source }) => source).join("|"),
  "i",
);
/** Words that tell of several legs unless the name says one: "double", "2L", "2-strand", "DOS" (D, T or Q legs on an oblong link). */
const SEVERAL = /\b(double|twin|dual|triple|treble|quad|quadruple|multi|multiple|several)\b|(?<![\d.,/])[2-6][- ]?l\b|\b([2-9]|two|three|four|five|six|i{2,3}|iv)[- ]?(branch(es)?|falls?|arms?|parts?|hooks?|strands?|way|point)\b/i;
const SEVERAL_CHAINS = /\b[DTQ]O[SGLFR]{1,2}\b|\b[2-4] ?x/;

/** Whether a sling's tag can rate several legs together. In doubt it does. */
function severalLegs(gear: string, gearText: string): boolean {
  const chain = gear === "chain sling";
  const text = tidy(gearText).replace(/_/g, " ").replace(chain ? /$^/g : OTHER_COUNTS, "");
  const rest = text.replace(ONE_LEG, "");
  if (LEGS.test(rest)) return true;
  return rest === text && (SEVERAL.test(text) || (chain && SEVERAL_CHAINS.test(text)));
}

/** Words of a heading of rated loads that tell of another load than the straight one of today: a hitch, an angle, a load that breaks or proves, a rating that no longer holds, the rating of a crane. */
const OTHER_RATING = new RegExp(
  [
    /\bbaskets?\b|\bchok|\breeve|\bhorizontal|\bangle|\bangular|\binclin|\bspread\b|\bside\b|[°º]|\bdeg|\b(15|30|45|60|75|90|120)\b/,
    /\bbreak|\bultimate|\bm?b[lsf]\b|\buts\b|strength|\bburst|\byield|\bfail|\btensile|\brupture|\bproof|\btest/,
    /\bold\b|\borig|\bformer|\bprevious|\bprior\b|\bpast\b|\bde-? ?rat|\bdown-? ?rat|\breduced|\bexpired|\bobsolete|\bsuperseded|\bestimat|\bassum/,
    /\bcranes?\b|\bhoists?\b|\blashing|\btow|\bsecuring/,
  ].map(({ source }) => source).join("|"),
  "i",
);

/** Whether the heading of the rated loads names another load than the working load limit of one leg hanging straight. */
export function otherRating(heading: string): boolean {
  const rest = tidy(heading).replace(ONE_LEG, "").replace(/\b(per|each) leg\b/i, "");
  return OTHER_RATING.test(rest) || LEGS.test(rest) || SEVERAL.test(rest);
}

/** Why a kind cannot be held against a load here, or null when it can. */
export function notModelled(gear: string | null, gearText: string): string | null {
  if (gear === null) return `"${gearText}" is no gear kind in this catalogue, so what it carries is not known`;
  if (SLINGS.includes(gear)) return severalLegs(gear, gearText) ? `"${gearText}" can have several legs, and the tag of such a sling rates all of them together at the tag's own angle; read the load for this lift off the tag, or write "single leg" as part of its name where it has one` : null;
  return HARDWARE.includes(gear) ? null : `the pull on a ${gear} is not modelled here; hold it against its own rating plate and its maker's figures`;
}

/** The rating of a sling is that of one leg hanging straight; a choker hitch takes its share, from chain more than from the rest. */
export function hitchReductions(gear: string, hitch: Hitch, chokeAngle: CellValue): Answer<readonly Reduction[]> {
  if (hitch !== "choker") return good([]);
  if (isBlank(chokeAngle)) return none("The choke angle is missing; type it (a sling that chokes freely hangs at more than 120 degrees).");
  const share = chokeShare(chokeAngle, gear === "chain sling");
  if (!share.ok) return share;
  const { ofVertical, ofChoker } = share.value;
  if (ofChoker === null) return good([{ share: fromCell(ofVertical), words: `choker hitch, choke angle ${plainText(chokeAngle)} degrees, ${percent(fromCell(ofVertical))} of the straight rating (chain sling brochure)` }]);
  const choke = fromCell(ofChoker);
  return good([
    { share: fromCell(CHOKER_SHARE), words: `choker hitch ${percent(fromCell(CHOKER_SHARE))} (typical of US sling tables)` },
    ...(choke.equals(1) ? [] : [{ share: choke, words: `choke angle ${plainText(chokeAngle)} degrees ${percent(choke)} (choke table in rigging handbooks that restate ASME B30.9)` }]),
  ]);
}

/** Heat: alloy chain by its table; hardware inside its published range keeps its rating; for the rest no figure is known. */
export function heatReduction(gear: string, temperature: CellValue, unit: CellValue, grade: CellValue): Answer<readonly Reduction[]> {
  if (isBlank(temperature)) return good([]);
  const at = `${plainText(temperature)} ${readText(unit)}`;
  if (gear === "chain sling") {
    const share = hotShare(grade, plainText(temperature), unit, "hot");
    if (!share.ok) return share;
    if (share.value === 0) return none(`Alloy chain is not used at ${at}: above 1000 F (538 C) it is taken out of service [ASME B30.9 Table 9-1.8.1-1].`);
    return good(share.value === 1 ? [] : [{ share: fromCell(share.value), words: `heat at ${at} ${percent(fromCell(share.value))} (ASME B30.9 Table 9-1.8.1-1, grade ${readText(grade)})` }]);
  }
  const range = SERVICE_TEMPERATURE[gear];
  if (range === undefined) return none(`There is no heat figure for a ${gear} here; ask its maker, or leave the temperature blank where the lift is at room temperature.`);
  const scale = readText(unit).toUpperCase().replace(/[°º]/g, "");
  if (scale !== "F" && scale !== "C") return none("The temperature unit is missing; type F or C.");
  const degrees = tidy(plainText(temperature));
  if (!/^-?\d+(\.\d+)?$/.test(degrees)) return none(`The temperature "${degrees}" is not a plain number.`);
  const [least, most] = range[scale];
  return within(exact(degrees), exact(least), exact(most)) ? good([]) : none(`At ${at} the maker of a ${gear} is asked: its rating holds from ${least} to ${most} ${scale} [${range.source}].`);
}

/** Side load: a shackle is pulled in line when nothing is typed; screwed-in gear must be given its angle. */
export function sideReduction(gear: string, gearText: string, angle: CellValue): Answer<readonly Reduction[]> {
  if (isBlank(angle)) {
    return SIDE_ASKED.includes(gear) ? none(`The side load angle of the ${gear} is missing; type the angle between the pull and its shank, 0 where it is pulled straight.`) : good([]);
  }
  const degrees = tidy(plainText(angle)).replace(/ ?(°|deg(rees)?)$/i, "");
  if (/^0+(\.0+)?$/.test(degrees)) return good([]);
  const share = sideShareOfKind(gear, gearText, degrees);
  if (!share.ok) return share;
  const table = gear === "eyebolt" ? "angle from the shank, shoulder eyebolts only: rigging tables" : "angle out of the shackle's plane: WAC 296-155-33905 Fig. 17";
  return good(share.value === 1 ? [] : [{ share: fromCell(share.value), words: `side load at ${degrees} degrees ${percent(fromCell(share.value))} (${table})` }]);
}

/** What was typed, with a plain 0 as "0". */
export const plainText = (cell: CellValue): string => (cell === 0 ? "0" : readText(cell));

export function percent(share: Exact): string {
  return `${share.mul(100).floor(1).toString()} %`;
}

export function lowered(rating: Exact, reductions: readonly Reduction[]): Exact {
  return reductions.reduce((left, { share }) => left.mul(share), rating.mul(WHOLE));
}

/** What each gear kind carries in a hook-up, and what lowers its rating there. */
import type { Answer } from "./ask";
import { readText, recordedText, tidy } from "./cell";
import { exact, fromCell, type Exact } from "./exact";
import { field, type FieldId } from "./fields";
import { within } from "./judge";
import { chainGrade, chokeShare, hotShare, isBlank, sideShareOfKind } from "./lift";
import type { CellValue, ItemResult } from "./model";
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
    /(?<!\b(type|no\.?|nr\.?|size|grade|gr\.?) |[\d.,/])\b([2-9]|two|three|four|five|six)[- ]?(x|off|no|nos|chains?|slings?)\b(?! ?\d)|(?<!\d ?)x ?[2-9]\)?$/,
    /^([2-9]|two|three|four) (?!in\b|inch|mm\b|cm\b|m\b|ft\b|t\b|te\b|tons?\b|tonnes?\b|kg\b|lbs?\b|[\d/"'-])/,
  ].map(({ source }) => source).join("|"),
  "i",
);
/** Short names of chain slings with several legs: DOS, ADOS, Q.O.S. (D, T or Q legs on an oblong link), DAL (adjustable). */
const CODE = /(?<![a-z])a?[dtq][.-]?o[.-]?[sglfr][sglfra.-]{0,3}(?![a-z])|(?<![a-z])[dtq] o [sglfr](?![a-z])|(?<![\d.,/])[2-6][- ]?l(cs?|wrs?|s)?\b/i;
const ADJUSTABLE = /\b[DQ]A[SGL]\b/;
/** Words that tell of several legs unless the name says one: "double", "II", "2-strand", hooks in the plural. */
const SEVERAL = new RegExp(
  [
    /\b(double|twin|dual|triple|treble|quad|quadruple|multi|multiple|several)\b/,
    /\b([2-9]|two|three|four|five|six|i{2,3}|iv)[- ]?(branch(es)?|falls?|arms?|parts?|hooks?|strands?|way|point)\b|\bhooks\b|\b(two|three|four)\b.*\bhook\b/,
    /(?<!\b(type|class|grade|group|size|mark|mk|model|no\.?) )\b(i{2,3}|iv)\b/,
  ].map(({ source }) => source).join("|"),
  "i",
);
const SEVERAL_CHAINS = /\b[2-4] ?x|\bslings?,? [2-4]$/i;
/** The same in remarks, where only words of legs count: "double" may be double checked. */
const REMARKED = /(?<![a-z])leg(s|ged)?(?![a-z])|\blgs\b|\bbridles?\b|\bquad(ruple)?\b|\b([2-6]|two|three|four|double|twin|dual|triple|multi(ple)?)[- ]?(legs?|legged|chains?|slings?|branch(es)?)\b/i;

/** Whether a sling's tag can rate several legs together. In doubt it does. */
function severalLegs(gear: string, gearText: string): boolean {
  const chain = gear === "chain sling";
  const text = tidy(gearText).replace(/_/g, " ").replace(chain ? /$^/g : OTHER_COUNTS, "");
  const rest = text.replace(ONE_LEG, "");
  if (LEGS.test(rest)) return true;
  return rest === text && (SEVERAL.test(text) || CODE.test(text) || ADJUSTABLE.test(text) || (chain && SEVERAL_CHAINS.test(text)));
}

/** Chain that remarks call by another name than alloy chain of the two grades. */
const NOT_ALLOY = /\b(stainless|inox|(transport|lashing|binder|tow(ing)?|anchor|log(ging)?|tie[- ]?down|hoist|load) chain|(mild|carbon) steel|proof coil|(high|hi)[- ]?test|wrought|non?[- ]?alloy|not (an )?alloy|grade (is )?unknown|unknown grade)\b/i;

/** A grade as a row names it: T is the letter of grade 8. */
const gradeNamed = (said: string): "80" | "100" | null => chainGrade(said === "t" ? "8" : said);

/** Grades that a text names, as it names them: behind the word "grade", else before it, where a size can stand as well. */
function gradesSaid(text: string): readonly string[] {
  const all = (pattern: RegExp): readonly string[] => [...text.matchAll(pattern)].flatMap((match) => match.slice(1)).flatMap((one: string | undefined) => (one === undefined ? [] : [one.toLowerCase()]));
  const behind = all(/\b(?:grade|grd|gr|g)[ .:-]{0,2}(t\b|\d+(?!\d|[.,]\d| ?(?:mm|cm|m|in|inch|ft|t|te|kg|lbs?)\b|"))(?: ?(?:\/|&|or|and) ?(?:grade|gr|g)?[ .]?(\d+))?/gi);
  const before = all(/\b(\d+)[ -]?grade\b/gi);
  const sure = [...behind, ...before].filter((one) => one === "80" || one === "100");
  return sure.length > 0 ? sure : behind.length > 0 ? behind : before;
}

/** What a row says of its item beside its kind: remarks, and a size that can hold more than a size. */
const SAID: readonly FieldId[] = ["remarks", "size"];
type Row = Pick<ItemResult, "gear" | "gearText" | "cells">;
const saying = (cell: CellValue, id: FieldId): string => `its row says "${plainText(cell)}" under ${field(id).heading}`;
const TOGETHER = "the tag of such a sling rates all of them together at the tag's own angle; read the load for this lift off the tag";
const ONE = /^(1|one|single|i)([- ]?leg(ged)?)?$/i;

/** Why a sling is not taken as one leg of alloy chain, rope or web, whose tag rates that leg; null when it is. */
function notOneLeg({ gear, gearText, cells }: Row & { readonly gear: string }): string | null {
  if (severalLegs(gear, gearText)) return `"${gearText}" can have several legs, and ${TOGETHER}, or write "single leg" as part of its name where it has one`;
  const legs = cells.get("legs");
  if (legs === 0 || (recordedText(legs) !== "" && !ONE.test(readText(legs)))) return `${saying(legs, "legs")}, so it can have several legs, and ${TOGETHER}`;
  for (const id of SAID) {
    const text = readText(cells.get(id));
    const rest = text.replace(ONE_LEG, "");
    if (REMARKED.test(rest) || CODE.test(rest) || ADJUSTABLE.test(rest)) return `${saying(text, id)}, so it can have several legs, and ${TOGETHER}`;
    if (gear === "chain sling" && (NOT_ALLOY.test(text) || gradesSaid(text).some((grade) => gradeNamed(grade) === null))) return `${saying(text, id)}, and only alloy chain of grade 80 or 100 is in this catalogue`;
  }
  return null;
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
  return OTHER_RATING.test(rest) || LEGS.test(rest) || SEVERAL.test(rest) || CODE.test(rest);
}

/** Why an item cannot be held against a load here, or null when it can. */
export function notModelled(item: Row): string | null {
  const { gear, gearText } = item;
  if (gear === null) return `"${gearText}" is no gear kind in this catalogue, so what it carries is not known`;
  if (SLINGS.includes(gear)) return notOneLeg({ ...item, gear });
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

/** Grades of alloy chain that a row names, in the name of its gear, its remarks or its size; each once. */
export function gradesOf(row: Row): readonly string[] {
  const texts = [row.gearText, ...SAID.map((id) => readText(row.cells.get(id)))];
  return [...new Set(texts.flatMap(gradesSaid).flatMap((said) => gradeNamed(said) ?? []))].sort((a, b) => Number(a) - Number(b));
}

/** The grade of a chain in a lift: what is typed, unless the row names another; where nothing is typed, what the row names. */
function gradeIn(row: Row, typed: CellValue): Answer<{ readonly grade: CellValue; readonly from: string }> {
  const named = gradesOf(row);
  const [only = ""] = named;
  const said = [row.gearText, ...SAID.map((id) => readText(row.cells.get(id)))].filter((text) => gradesSaid(text).length > 0).map((text) => `"${text}"`).join(", ");
  if (named.length > 1) return none(`The row names ${named.map((one) => `grade ${one}`).join(" and ")} (${said}); put the wrong one right.`);
  const grade = chainGrade(typed);
  if (only !== "" && grade !== null && grade !== only) return none(`The row names grade ${only} (${said}) and the lift grade ${grade}; put the wrong one right.`);
  return good(only !== "" && isBlank(typed) ? { grade: only, from: `grade ${only} as its row names it` } : { grade: typed, from: `grade ${grade ?? ""}` });
}

/** Heat: alloy chain by its table; hardware inside its published range keeps its rating; for the rest no figure is known. */
export function heatReduction(row: Row, gear: string, temperature: CellValue, unit: CellValue, typed: CellValue): Answer<readonly Reduction[]> {
  if (isBlank(temperature)) return good([]);
  const at = `${plainText(temperature)} ${readText(unit)}`;
  if (gear === "chain sling") {
    const told = gradeIn(row, typed);
    if (!told.ok) return told;
    const { grade, from } = told.value;
    const share = hotShare(grade, plainText(temperature), unit, "hot");
    if (!share.ok) return share;
    if (share.value === 0) return none(`Alloy chain is not used at ${at}: above 1000 F (538 C) it is taken out of service [ASME B30.9 Table 9-1.8.1-1].`);
    return good(share.value === 1 ? [] : [{ share: fromCell(share.value), words: `heat at ${at} ${percent(fromCell(share.value))} (ASME B30.9 Table 9-1.8.1-1, ${from})` }]);
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

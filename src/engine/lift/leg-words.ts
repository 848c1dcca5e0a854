/** Words that tell of several legs, or of a rated load that is not that of one leg hanging straight. */
import { tidy } from "../reading/text";

/** A name that says one leg: "single leg", "1-leg", "chain leg"; not the end of another count, as in 2-1 leg. */
const ONE_LEG = /\b(single|one)[- ]?(leg(ged)?|lg)\b|(?<![\w/&.-]|[\d/&] )(1|i)[- ]?(leg(ged)?|lg)\b|\bchain leg\b/gi;
/** Numbers of something else in slings of rope and web: plies, braids, strands, the 6 x 36 of a rope. */
const OTHER_COUNTS =
  /\b(\d+|two|three|four|six|eight|single|double|twin|dual|triple|multi(ple)?|quad)[- ]?(ply|plies|layer(s|ed)?|strand(s|ed)?|braid(s|ed)?|path|wall(s|ed)?|stitch(ed)?)\b|\b\d+[- ]?parts?[- ](?=body\b|braid)|\b\d+ ?x ?\d+\b/gi;
/** Legs, or several slings in one row: whatever else the name says, the tag can rate several legs together. */
const LEGS = new RegExp(
  [
    /(?<![a-z])leg(s|ged)?(?![a-z])|(multi|twin|two|three|four|quad|double|triple|dual)-?leg(s|ged)?(?![a-z])/,
    /(?<![a-z])([2-9]|two|three|four|five|six|i{2,3}|iv)[- ]?lgs?\b|\blgs\b|\bbridles?\b|\bpairs?\b|\bsets?\b/,
    /(?<!\b(type|no\.?|nr\.?|size|grade|gr\.?) |[\d.,/])\b([2-9]|two|three|four|five|six)[- ]?(x|off|no|nos|chains?|slings?)\b(?! ?\d)|(?<!\d ?)x ?[2-9]\)?$/,
    /^([2-9]|two|three|four) (?!in\b|inch|mm\b|cm\b|m\b|ft\b|t\b|te\b|tons?\b|tonnes?\b|kg\b|lbs?\b|[\d/"'-])/,
  ]
    .map(({ source }) => source)
    .join("|"),
  "i",
);
/** Short names of chain slings with several legs: DOS, ADOS, Q.O.S. (D, T or Q legs on an oblong link), DAL (adjustable). */
const CODE =
  /(?<![a-z])a?[dtq][.-]?o[.-]?[sglfr][sglfra.-]{0,3}(?![a-z])|(?<![a-z])[dtq] o [sglfr](?![a-z])|(?<![\d.,/])[2-6][- ]?l(cs?|wrs?|s)?\b/i;
const ADJUSTABLE = /\b[DQ]A[SGL]\b/;
/** Words that tell of several legs unless the name says one: "double", "II", "2-strand", hooks in the plural. */
const SEVERAL = new RegExp(
  [
    /\b(double|twin|dual|triple|treble|quad|quadruple|multi|multiple|several)\b/,
    /\b([2-9]|two|three|four|five|six|i{2,3}|iv)[- ]?(branch(es)?|falls?|arms?|parts?|hooks?|strands?|way|point)\b|\bhooks\b|\b(two|three|four)\b.*\bhook\b/,
    /(?<!\b(type|class|grade|group|size|mark|mk|model|no\.?) )\b(i{2,3}|iv)\b/,
  ]
    .map(({ source }) => source)
    .join("|"),
  "i",
);
const SEVERAL_CHAINS = /\b[2-4] ?x|\bslings?,? [2-4]$/i;
/** The same in remarks, where only words of legs count: "double" may be double checked. */
const REMARKED =
  /(?<![a-z])leg(s|ged)?(?![a-z])|\blgs\b|\bbridles?\b|\bquad(ruple)?\b|\b([2-6]|two|three|four|double|twin|dual|triple|multi(ple)?)[- ]?(legs?|legged|chains?|slings?|branch(es)?)\b/i;
/** Whether a sling's tag can rate several legs together. In doubt it does. */
export function severalLegs(gear: string, gearText: string): boolean {
  const chain = gear === "chain sling";
  const text = tidy(gearText)
    .replace(/_/g, " ")
    .replace(chain ? /$^/g : OTHER_COUNTS, "");
  const rest = text.replace(ONE_LEG, "");
  if (LEGS.test(rest)) return true;
  return rest === text && (SEVERAL.test(text) || CODE.test(text) || ADJUSTABLE.test(text) || (chain && SEVERAL_CHAINS.test(text)));
}
/** Whether remarks, or what else a row says, tell of several legs. */
export function tellsOfLegs(text: string): boolean {
  const rest = text.replace(ONE_LEG, "");
  return REMARKED.test(rest) || CODE.test(rest) || ADJUSTABLE.test(rest);
}
/** Words of a heading of rated loads that tell of another load than the straight one of today: a hitch, an angle, a load that breaks or proves, a rating that no longer holds, the rating of a crane. */
const OTHER_RATING = new RegExp(
  [
    /\bbaskets?\b|\bchok|\breeve|\bhorizontal|\bangle|\bangular|\binclin|\bspread\b|\bside\b|[°º]|\bdeg|\b(15|30|45|60|75|90|120)\b/,
    /\bbreak|\bultimate|\bm?b[lsf]\b|\buts\b|strength|\bburst|\byield|\bfail|\btensile|\brupture|\bproof|\btest/,
    /\bold\b|\borig|\bformer|\bprevious|\bprior\b|\bpast\b|\bde-? ?rat|\bdown-? ?rat|\breduced|\bexpired|\bobsolete|\bsuperseded|\bestimat|\bassum/,
    /\bcranes?\b|\bhoists?\b|\blashing|\btow|\bsecuring/,
  ]
    .map(({ source }) => source)
    .join("|"),
  "i",
);
/** Whether the heading of the rated loads names another load than the working load limit of one leg hanging straight. */
export function otherRating(heading: string): boolean {
  const rest = tidy(heading)
    .replace(ONE_LEG, "")
    .replace(/\b(per|each) leg\b/i, "");
  return OTHER_RATING.test(rest) || LEGS.test(rest) || SEVERAL.test(rest) || CODE.test(rest);
}

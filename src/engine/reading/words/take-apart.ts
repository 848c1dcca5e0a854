/** A text as clauses, each as words: small letters for looking up, and as they were typed for telling names. */
import { tidy } from "../text";

export interface Clause {
  readonly words: readonly string[];
  /** The same words as they were typed. */
  readonly typed: readonly string[];
}
const BREAK = /[;,:()[\]!]|\.(?=\s|$)|\s[-–—]+\s|[\r\n]|\s*[=>]\s*/;
const JOINS = /\s(?:but|however|yet|although|though|except|otherwise|then)\s/i;
/** Short words with a slash that is part of them: u/s, n/d, w/o; in all others a slash sets two words apart. */
const SLASHED = /^(?:[a-z]\/[a-z]|\d+\/\d+|\d+(?:\/\d+){2})$/i;
/** "Cracks: none" is one clause. */
const ANSWERED =
  /\s*(?::|=|\s[-–—])\s*((?:none|nil|nothing)(?: found| seen| noted| visible| present| observed)?|no|ok|n\/d|clear|good)(?=\s*(?:$|[;,.)]))/gi;
/** An end of a sentence, not the dot of an initial or of a short form. */
const SHORT_FORM = /\b([A-Z]|mr|mrs|ms|no|nos|approx|dia|insp|cert|dept|st|ref|rev|sq|nom|max|min|incl)\.(?=\s)/gi;

export function clausesOf(text: string): readonly Clause[] {
  return tidy(text)
    .replace(/\u2019/g, "'")
    .replace(/\bcan't\b/gi, "can not")
    .replace(/\b(\w+)n't\b/gi, "$1 not")
    .replace(ANSWERED, " $1")
    .replace(SHORT_FORM, "$1")
    .split(BREAK)
    .flatMap((part) => part.split(JOINS))
    .map((part) => wordsOf(part))
    .filter(({ words }) => words.length > 0);
}
export function wordsOf(part: string): Clause {
  const typed: string[] = [];
  for (const piece of part.split(/\s+/)) {
    const bare = piece.replace(/^['"*.=<#-]+(?=.)|['"*.-]+$/g, "");
    if (bare === "" || bare === "&" || bare === "+" || bare === "/") {
      if (bare !== "") typed.push(bare === "/" ? "or" : "and");
      continue;
    }
    const slashed =
      bare.includes("/") && !SLASHED.test(bare) ? bare.split("/").flatMap((one, at) => (at === 0 ? [one] : ["or", one])) : [bare];
    for (const one of slashed)
      // A hyphen joins two words (re-test, red-tag) or belongs to a number or a code.
      typed.push(...(/\d/.test(one) ? [one] : one.split("-").filter((word) => word !== "")));
  }
  const kept = typed.filter((word) => word !== "");
  return { typed: kept, words: kept.map((word) => word.toLowerCase()) };
}

/** Words of a heading that tell one column of a thing from another of the same thing. */
import { FILLER, type Group, type Language, STATES } from "./vocabulary";
import { spoken } from "./spoken";

/** Words that tell one reading of a place from another of the same place: "Throat 2024", "Bow X", "Pin left". */
export const MARKER =
  /^(\p{N}+(st|nd|rd|th)?|q[1-4]|[a-z]|left|right|lh|rh|first|second|third|front|back|rear|top|bottom|upper|lower|inner|outer|middle|mid|mpi|mt|pt|ndt|visual|side|jan(uary)?|feb(ruary)?|mar(ch)?|apr(il)?|may|june?|july?|aug(ust)?|sept?(ember)?|oct(ober)?|nov(ember)?|dec(ember)?)$/u;
/** Gear that a heading may name beside a thing of it: "Hook throat", "Sling tag". */
export const GEAR_WORDS = [
  "hook",
  "hooks",
  "shackle",
  "link",
  "links",
  "chain",
  "ring",
  "swivel",
  "block",
  "sheave",
  "rope",
  "sling",
  "slings",
  "masterlink",
];

const sayNothing = (...groups: readonly Group[]): ReadonlySet<string> => new Set(groups.flatMap(({ words }) => words));
/** Words that ask for the thing as a whole: whether it is there, is well, was seen or looked for. */
const WHOLE = sayNothing(FILLER, STATES.good, STATES.deny, STATES.denyFault, STATES.unclear, STATES.affirm, STATES.look, {
  why: "",
  words: ["condition", "functions", "legibility", "readability", "seats", "state", "status", "turning"],
});
/** What a heading asks for, without the words that say how it asks. */
const askedBy = (heading: string, language: Language | undefined): readonly string[] =>
  spoken(heading, language)
    .words.filter((word) => !WHOLE.has(word) && !MARKER.test(word))
    .sort();
/** Whether the first of two columns asks for more than the second: "Cracks" for more than "Cracked at eye". */
export function asksForMore(first: string, second: string, language?: Language): boolean {
  const [one, other] = [askedBy(first, language), askedBy(second, language)];
  return one.length > 0 && one.length < other.length && one.every((word) => other.includes(word));
}
/**
 * Whether a second column of observations may stand in where the first is blank: it asks for the same, or each names gear of
 * its own, as in a log of hooks and shackles. "Cracked at eye" says nothing of cracks elsewhere, "Tag faded" nothing of a tag that is gone.
 */
export function asksTheSame(first: string, second: string, language?: Language): boolean {
  const [one, other] = [askedBy(first, language), askedBy(second, language)];
  if (one.join(" ") === other.join(" ")) return true;
  const gear = (words: readonly string[]): string => words.filter((word) => GEAR_WORDS.includes(word)).join(" ");
  const rest = (words: readonly string[]): string => words.filter((word) => !GEAR_WORDS.includes(word)).join(" ");
  return gear(one) !== "" && gear(other) !== "" && gear(one) !== gear(other) && rest(one) === rest(other);
}

/** Answers that a heading may offer in brackets, such as (none/found), and what each says by itself. Common practice, no source. */
import { type Group, list } from "../reading/words/group";

export type Offered = readonly string[];
export const ANSWERS = {
  well: {
    why: "it says by itself that all is well",
    words: list(`
      acc, accept, acceptable, aligned, clean, clear, closed, complete, correct, engaged, fit, fitted, free, full, good, intact, legible
      level, live, match, matches, matching, nil, none, ok, okay, original, p, pass, passed, readable, right, safe, sat, satisfactory
      seated, secure, serviceable, sharp, smooth, sound, straight, tight, true, unbroken, undamaged, usable, whole, working, works
    `),
  },
  badly: {
    why: "it says by itself that something is wrong",
    words: list(`
      bad, bent, binding, binds, blunt, broken, burnt, corroded, crack, cracked, cracks, crushed, cut, damage, damaged, dead, defect
      defective, defects, deformed, dirty, distorted, elongated, f, faded, fail, failed, found, frayed, gone, illegible, incomplete
      incorrect, jammed, kinked, loose, mismatch, mismatched, missing, modified, ng, nok, not acceptable, not fitted, not legible
      not ok, not working, open, parted, pitted, poor, rej, reject, rejected, rough, rusty, seized, stiff, stretched, stuck, torn
      twisted, unreadable, unsafe, unsat, unsatisfactory, unserviceable, welded, wobble, wobbles, wobbly, worn, wrong
    `),
  },
  either: {
    why: "what it says depends on the heading, or on the person",
    words: list("absent, fair, false, n, n/a, no, present, seen, true/false, y, yes"),
  },
} as const satisfies Record<string, Group>;
const WELL: ReadonlySet<string> = new Set(ANSWERS.well.words);
const BADLY: ReadonlySet<string> = new Set(ANSWERS.badly.words);
const ANY: readonly string[] = [...ANSWERS.well.words, ...ANSWERS.badly.words, ...ANSWERS.either.words, "false", "true"];
const ANSWER = `(?:${[...ANY].sort((a, b) => b.length - a.length).join("|")})`;
const BETWEEN = " ?(?:/|\\||,|\\bor\\b) ?";
const IN_BRACKETS = new RegExp(`[([{] ?(${ANSWER}(?:${BETWEEN}${ANSWER}){1,2}) ?[)\\]}]`, "i");
const AT_END =
  /(?:^|[ :,?-])((?:y|yes) ?\/ ?(?:n|no)|p ?\/ ?f|pass(?:ed)? ?\/ ?fail(?:ed)?|ok ?\/ ?(?:nok|not ok|ng)|good ?\/ ?bad|accept ?\/ ?reject|sat ?\/ ?unsat)\??$/i;
/** The answers that a heading offers and the heading without them. Two states that are both wrong, as in (crushed/birdcaged), are no choice. */
export function offeredIn(heading: string): { readonly offered: Offered | null; readonly rest: string } {
  for (const pattern of [IN_BRACKETS, AT_END]) {
    const found = pattern.exec(heading);
    if (found?.[1] === undefined) continue;
    const offered = found[1].toLowerCase().split(/ ?(?:\/|\||,|\bor\b) ?/);
    const well = offered.some((word) => WELL.has(word)),
      badly = offered.some((word) => BADLY.has(word));
    const either = offered.some((word) => !WELL.has(word) && !BADLY.has(word));
    if (!(well && badly) && !either) continue;
    return { offered, rest: heading.replace(found[0], " ").trim() };
  }
  return { offered: null, rest: heading };
}
/** What a heading's own answers mean: P of P/F is good. Only an answer that is offered, and says itself which it is. */
export function offeredAnswers({ offered }: { readonly offered: Offered | null }): ReadonlyMap<string, "good" | "bad"> {
  const answers = new Map<string, "good" | "bad">();
  for (const word of offered ?? []) {
    if (WELL.has(word)) answers.set(word, "good");
    else if (BADLY.has(word)) answers.set(word, "bad");
  }
  return answers;
}

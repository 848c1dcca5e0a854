/** Whether a part of a cell says that what was looked at is in order: by whole templates of words, never by one of them. */
import { Memory } from "../memory";
import { Phrases } from "./words/group";
import * as SAID from "./words/seen";
import { wordsOf } from "./words/take-apart";

const good = new Phrases(SAID.GOOD),
  none = new Phrases(SAID.NONE),
  neutral = new Phrases(SAID.NEUTRAL),
  seen = new Phrases(SAID.SEEN),
  lookedFor = new Phrases(SAID.LOOKED_FOR),
  harmed = new Phrases(SAID.HARMED_SO),
  wholeOf = new Phrases(SAID.WHOLE_OF),
  straight = new Phrases(SAID.STRAIGHT),
  inOrder = new Phrases(SAID.IN_ORDER),
  howWell = new Phrases(SAID.HOW_WELL),
  ofPart = new Phrases(SAID.OF_PART),
  notMissing = new Phrases(SAID.NOT_MISSING),
  aside = new Phrases(SAID.ASIDE_OF),
  method = new Phrases(SAID.BY_METHOD);

/** The words of one part of a cell, read from the left. */
class Said {
  at = 0;
  readonly words: readonly string[];
  constructor(part: string) {
    this.words = withoutMethod(wordsOf(part).words);
  }
  get ended(): boolean {
    return this.at === this.words.length;
  }
  /** Goes past one of the phrases, if one stands here. */
  take(...of: readonly Phrases[]): boolean {
    const length = Math.max(...of.map((phrases) => phrases.at(this.words, this.at)));
    this.at += length;
    return length > 0;
  }
  /** Whether a phrase of the first two stands here that is longer than any of the others. */
  stands(one: Phrases, other: Phrases, than: readonly Phrases[]): boolean {
    const length = Math.max(one.at(this.words, this.at), other.at(this.words, this.at));
    return length > Math.max(0, ...than.map((phrases) => phrases.at(this.words, this.at)));
  }
  all(...of: readonly Phrases[]): void {
    while (this.take(...of));
  }
  word(...words: readonly string[]): boolean {
    if (!words.includes(this.words[this.at] ?? "")) return false;
    this.at += 1;
    return true;
  }
}
function withoutMethod(words: readonly string[]): readonly string[] {
  const at = words.findIndex(
    (word, i) =>
      i > 0 && /^(on|by|with|after|under|at)$/.test(word) && method.at(words, i + 1) === words.length - i - 1 && i + 1 < words.length,
  );
  return at < 0 ? words : words.slice(0, at);
}
type Template = (said: Said) => boolean;
const matches = (part: string, templates: readonly Template[]): boolean =>
  templates.some((template) => {
    const said = new Said(part);
    return template(said) && said.ended;
  });
/** "no visible cracks or cuts found", "free of kinks", "nil defects". */
const denied =
  (things: Phrases) =>
  (said: Said): boolean => {
    if (!(said.word("no", "nil", "zero", "without") || (said.word("free") && said.word("of", "from")))) return false;
    do {
      said.all(neutral);
      if (!said.take(things)) return false;
    } while (said.word("or", "and", "nor"));
    said.all(seen);
    return true;
  };
const FAULT_TEMPLATES: readonly Template[] = [
  (said) => said.take(good) && (said.word("condition"), true),
  (said) => said.take(none) && (said.all(seen, neutral), true),
  (said) => said.word("not") && said.take(harmed, seen) && (said.all(seen), !said.word("or")),
  (said) => said.word("none", "nothing") && said.take(harmed, seen),
  denied(lookedFor),
  // "Rust free", "cracks none", "welds ok".
  (said) =>
    said.take(lookedFor) && (said.word("free") || said.take(none) || (said.word("is", "are"), said.take(none))) && (said.all(seen), true),
  (said) => {
    said.all(wholeOf);
    return said.take(straight, good);
  },
  (said) => said.take(straight) && said.word("shape", "condition"),
];
/** "Nuts and bolts all tight", "works well and closes fully". `first`: the first word that can say how it is says so, as in "locks fully". */
const inOrderFrom =
  (first: boolean): Template =>
  (said) => {
    do {
      // "In place" is one thing that is said, though "in" alone stands before a part.
      while (
        !said.stands(inOrder, good, first ? [] : [ofPart, howWell]) &&
        (said.take(ofPart, howWell) || (said.at > 0 && said.word("and")))
      );
      const last = said.words.at(-1) ?? "";
      // The last word may have been taken for one that says how well.
      if (!said.take(inOrder, good) && !(said.ended && (inOrder.has(last) || good.has(last)))) return false;
      // "Works well", "correct wedge".
      said.all(howWell, ofPart);
    } while (said.word("and", "or"));
    return true;
  };
const SOUND_TEMPLATES: readonly Template[] = [
  (said) => said.take(good) && (said.word("condition"), true),
  inOrderFrom(false),
  inOrderFrom(true),
  (said) => said.word("none", "nothing", "not") && said.take(notMissing) && (said.all(seen), true),
  (said) => {
    if (!said.word("no", "nil")) return false;
    said.all(neutral);
    return said.take(notMissing) && (said.all(seen), true);
  },
  (said) => said.word("free") && said.word("of", "from") && said.take(notMissing),
];
const remembered = { fault: new Memory<boolean>(), sound: new Memory<boolean>() };
export const isInOrder = (part: string, column: "fault" | "sound"): boolean =>
  remembered[column].once(part, () => matches(part, column === "fault" ? FAULT_TEMPLATES : SOUND_TEMPLATES));
/** Whether it may stand beside a good word without taking it back. */
export const isBeside = (part: string): boolean => {
  const { words } = wordsOf(part);
  let at = 0;
  while (at < words.length) {
    const length =
      aside.at(words, at) || (words[at] === "and" || /^\d{1,4}([-/.]\d{1,2}){0,2}([-/.]\d{2,4})?$/.test(words[at] ?? "") ? 1 : 0);
    if (length === 0) return false;
    at += length;
  }
  return words.length > 0 && !words.every((word) => /^\d+$/.test(word));
};

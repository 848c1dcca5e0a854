/** What a remark says of an item: nothing against it only where every word of it is known to be harmless. */
import { Memory } from "../memory";
import { AGAINST, EXCHANGED, GENUINE, MENDED, NEVER, NOT_YET, PENDING, PLAINLY, UNREADABLE, WORK, WORK_ALONE } from "./words/against";
import { COAT_GONE, GONE, HARM, HARMED, LESSENED } from "./words/damage";
import { Phrases } from "./words/group";
import { DESIGNED, HARMLESS, NAMED_BY, NO_NEWS, PARTS } from "./words/harmless";
import { isDayOrCode, isName, isSignature, isSmallSize } from "./words/names";
import { DENY, LOOKED, NOTHING, REACH, SAW, WELL } from "./words/plain";
import { ERROR_TEXT } from "./text";
import { type Clause, clausesOf } from "./words/take-apart";

/** "against": a word of damage or against its use that nothing denies. "not known": a word that may say anything. */
export interface RemarkSays {
  readonly how: "against" | "not known";
  readonly word: string;
}
const never = new Phrases(NEVER),
  pending = new Phrases(PENDING),
  work = new Phrases(WORK),
  workAlone = new Phrases(WORK_ALONE),
  mended = new Phrases(MENDED),
  exchanged = new Phrases(EXCHANGED),
  genuine = new Phrases(GENUINE),
  notYet = new Phrases(NOT_YET),
  harm = new Phrases(HARM),
  bad = new Phrases(HARM, HARMED, GONE, AGAINST),
  little = new Phrases(LESSENED.little),
  wear = new Phrases(LESSENED.wear),
  coat = new Phrases(LESSENED.coat),
  coatGone = new Phrases(COAT_GONE),
  deny = new Phrases(DENY),
  reach = new Phrases(REACH),
  saw = new Phrases(SAW),
  nothing = new Phrases(NOTHING),
  looked = new Phrases(LOOKED),
  plainly = new Phrases(PLAINLY),
  plainlyMarked = new Phrases(PLAINLY, UNREADABLE),
  well = new Phrases(WELL),
  noNews = new Phrases(NO_NEWS),
  parts = new Phrases(PARTS),
  designed = new Phrases(DESIGNED),
  harmless = new Phrases(...HARMLESS, PARTS, NAMED_BY, WELL);

/** `false` stands for a remark that says nothing against the item, since nothing is what a memory does not hold. */
const remarks = new Memory<RemarkSays | false>();
/** Null when the remark says nothing against the item. */
export function readRemark(remark: string): RemarkSays | null {
  const says = remarks.once(remark, () => read(remark) ?? false);
  return says === false ? null : says;
}
function read(remark: string): RemarkSays | null {
  if (ERROR_TEXT.test(remark)) return { how: "not known", word: remark };
  const clauses = clausesOf(remark).flatMap(atAnd);
  const shouted = clauses.every(({ typed }) => typed.every((word) => word === word.toUpperCase()));
  let unknown: RemarkSays | null = remark.includes("?") ? { how: "not known", word: "?" } : null;
  // Signs alone, such as !!!, may mean anything; a dash means nothing.
  if (clauses.length === 0 && !/^[-–—. ]*$/.test(remark)) return { how: "not known", word: remark };
  for (const [at, clause] of clauses.entries()) {
    if (at > 0 && at === clauses.length - 1 && isSignature(clause.typed)) break;
    const says = new ClauseReader(clause, clauses.slice(at + 1), shouted).read();
    if (says?.how === "against") return says;
    unknown ??= says;
  }
  return unknown;
}
/** "Latch replaced and pin cracked" says two things; "no cracks and wear" denies both. */
function atAnd({ words, typed }: Clause): readonly Clause[] {
  const parts: Clause[] = [];
  let from = 0;
  for (let at = 0; at <= words.length; at += 1) {
    const ends = at === words.length || (words[at] === "and" && !isDeniedList(words, from, at) && harmless.at(words, at - 1) < 3);
    if (!ends) continue;
    if (at > from) parts.push({ words: words.slice(from, at), typed: typed.slice(from, at) });
    from = at + 1;
  }
  return parts;
}
function isDeniedList(words: readonly string[], from: number, and: number): boolean {
  if (!words.slice(from, and).some((_, i) => deny.at(words, from + i) > 0)) return false;
  let i = and + 1;
  while (reach.at(words, i) > 0) i += reach.at(words, i);
  const length = harm.at(words, i);
  const after = i + length;
  return length > 0 && (after === words.length || saw.at(words, after) > 0 || words[after] === "or" || words[after] === "and");
}
class ClauseReader {
  private readonly words: readonly string[];
  private readonly typed: readonly string[];
  private readonly later: readonly Clause[];
  private readonly shouted: boolean;
  private readonly mendedAt: number;
  constructor({ words, typed }: Clause, later: readonly Clause[], shouted: boolean) {
    this.words = words;
    this.typed = typed;
    this.later = later;
    this.shouted = shouted;
    const yet = words.some((_, i) => notYet.at(words, i) > 0);
    this.mendedAt = yet ? -1 : words.findIndex((_, i) => mended.at(words, i) > 0);
  }
  read(): RemarkSays | null {
    const { words } = this;
    let unknown: string | null = null;
    let at = 0;
    while (at < words.length) {
      const step = this.step(at);
      if (typeof step !== "number") return { how: "against", word: step.against };
      if (step === 0) unknown ??= this.typed[at] ?? "";
      at += Math.max(1, step);
    }
    return unknown === null ? null : { how: "not known", word: unknown };
  }
  /** How many words from `at` on are harmless, 0 when the word is not known; or what speaks against the item. */
  private step(at: number): number | { readonly against: string } {
    const { words } = this;
    const never_ = never.at(words, at);
    if (never_ > 0) return { against: this.said(at, never_) };
    const lessened = this.lessened(at);
    if (lessened > 0) return lessened;
    const own = harmless.at(words, at);
    const wrong = bad.at(words, at);
    // "Not used since the move", "loose gear locker": the longer of two phrases is meant.
    if (own > Math.max(1, wrong, deny.at(words, at))) return own;
    if (wrong > 1 && deny.at(words, at) > 0) return { against: this.said(at, wrong) };
    // "Cert no. 20119" is its number.
    if (words[at] === "no" && /^\d/.test(words[at + 1] ?? "")) return 1;
    if (deny.at(words, at) > 0 || nothing.at(words, at) > 0) return this.denied(at);
    const todo = this.todo(at);
    if (todo > 0) return { against: this.said(at, todo) };
    if (wrong > 0) {
      const length = this.takenBack(at, wrong);
      return length > 0 ? length : { against: this.said(at, wrong) };
    }
    const done = mended.at(words, at);
    if (done > 0) return this.mendedAt >= 0 ? this.exchangedAt(at, done) : { against: this.said(at, done) };
    if (own > 0) return own;
    const told = looked.at(words, at) || noNews.at(words, at);
    if (told > 0) return this.endsWell(at + told) ? told : 0;
    if (isSmallSize(words, at)) return designed.at(words, at + 1) > 0 ? 1 : 0;
    return isDayOrCode(words[at] ?? "") || isName(this.typed, at, this.shouted) ? 1 : 0;
  }
  /** "Replaced with a new pin" puts it right, "pin swapped for a bolt" is a change that nobody approved; by whom it was done is read on. */
  private exchangedAt(at: number, done: number): number | { readonly against: string } {
    const { words } = this;
    const link = words[at + done] ?? "";
    if (exchanged.at(words, at) === 0 || !["for", "with", "by", "using"].includes(link)) return done;
    let next = at + done + 1;
    while (["a", "an", "the"].includes(words[next] ?? "") && genuine.at(words, next) === 0) next += 1;
    const right = genuine.at(words, next);
    if (right > 0) return next + right - at;
    if (next === words.length || isDayOrCode(words[next] ?? "") || (link === "by" && parts.at(words, next) === 0)) return done;
    return { against: this.said(at, next + Math.max(1, parts.at(words, next)) - at) };
  }
  private said(at: number, length: number): string {
    return this.typed.slice(at, at + length).join(" ");
  }
  /** Wear as gear in use has it, and paint, which is not read. */
  private lessened(at: number): number {
    const { words } = this;
    const less = little.at(words, at);
    if (less > 0) {
      let length = less;
      length += little.at(words, at + length);
      if (parts.at(words, at + length) > 0 && wear.at(words, at + length + 1) > 0) length += 1;
      const worn = wear.at(words, at + length);
      if (worn > 0) return length + worn + (words[at + length + worn] === "only" ? 1 : 0);
      // "Minor scratches in paint" and "slightly chipped paint".
      const gone = coatGone.at(words, at + length);
      const of = words[at + length + gone] === "in" || words[at + length + gone] === "to" ? 1 : 0;
      const on = gone > 0 ? coat.at(words, at + length + gone + of) : 0;
      if (on > 0) return length + gone + of + on;
    }
    const worn = wear.at(words, at);
    if (worn > 0) {
      const is = words[at + worn] === "is" ? 1 : 0;
      const only = little.at(words, at + worn + is);
      if (only > 0 && at + worn + is + only === words.length) return worn + is + only;
    }
    const on = coat.at(words, at);
    if (on > 0) {
      let length = on;
      if (words[at + length] === "is") length += 1;
      length += little.at(words, at + length);
      const gone = coatGone.at(words, at + length);
      if (gone > 0) return length + gone;
    }
    return 0;
  }
  /** A denial and the damage that it denies; 0 where it denies something else, which may be what makes the gear good. */
  private denied(at: number): number {
    const { words } = this;
    const nought = nothing.at(words, at);
    // "Remarks: none" and "MT: nil", never "latch: none".
    if (nought > 0 && at + nought === words.length)
      return at === 0 || noNews.at(words, at - 1) > 0 || looked.at(words, at - 1) > 0 ? nought : 0;
    let next = at + (deny.at(words, at) || nought);
    const start = next;
    let reached = false;
    for (;;) {
      next = this.over(next);
      const length = bad.at(words, next);
      if (length === 0) break;
      next += length;
      reached = true;
      while (saw.at(words, next) > 0) next += saw.at(words, next);
      if (words[next] !== "or" && words[next] !== "and" && words[next] !== "nor" && bad.at(words, next) === 0) break;
    }
    if (reached) return next - at;
    const news = this.over(start);
    if (noNews.at(words, news) > 0) return news + noNews.at(words, news) - at;
    return nought > 0 && next === words.length ? next - at : 0;
  }
  /** Past the words over which a denial reaches, and past a part that stands before its damage: no latch damage. */
  private over(at: number): number {
    const { words } = this;
    let next = at;
    for (;;) {
      if (bad.at(words, next) > 0 && harm.at(words, next) >= reach.at(words, next)) return next;
      const length = Math.max(reach.at(words, next), saw.at(words, next));
      const part = length === 0 ? parts.at(words, next) : 0;
      if (length === 0 && (part === 0 || harm.at(words, next + part) === 0)) return next;
      next += length + part;
    }
  }
  /** Work that is still to come: needs repair, for scrap, awaiting a new pin. */
  private todo(at: number): number {
    const { words } = this;
    const wait = pending.at(words, at);
    if (wait === 0) return words[at] === "for" ? plusWord(workAlone.at(words, at + 1)) : 0;
    for (const between of [0, 1]) {
      const length = work.at(words, at + wait + between);
      if (length > 0) return wait + between + length;
    }
    return 0;
  }
  /** How many words take damage back: it was looked for and not found, or has been put right. 0 where nothing does. */
  private takenBack(at: number, length: number): number {
    const { words } = this;
    let next = at + length;
    if (words[next] === "free") return length + 1;
    while (
      ["is", "are", "all", "was", "were", "test", "check", "tests", "checks", "checked", "tested", "found"].includes(words[next] ?? "")
    )
      next += 1;
    const none = Math.max(nothing.at(words, next), well.at(words, next));
    const ends = next + none === words.length;
    const isFound = harm.at(words, at) === length;
    if (none > 0 && ends && isFound) return next + none - at;
    if (isFound && this.wasSought(at)) return length;
    return this.isMended(at, length) ? length : 0;
  }
  /** "Checked for cracks", with what came of it behind. */
  private wasSought(at: number): boolean {
    const { words, later } = this;
    const sought = words.slice(0, at).some((_, i) => looked.at(words, i) > 0);
    if (!sought) return false;
    const [following] = later;
    return this.endsWell(at) || (following !== undefined && following.words.length > 0 && allWell(following.words));
  }
  /** Whether the last words of the clause say that there was nothing, or that all is well. */
  private endsWell(from: number): boolean {
    const { words } = this;
    return words.some(
      (_, i) => i >= from && Math.max(nothing.at(words, i), well.at(words, i)) + i === words.length && deny.at(words, i - 1) === 0,
    );
  }
  /** Put right in the same breath ("bent pin replaced", "replaced the bent pin", never "replaced by a bent pin"), or in a later clause of its own. */
  private isMended(at: number, length: number): boolean {
    const { words, mendedAt, later } = this;
    if (later.some(isMendedAlone)) return true;
    if (mendedAt < 0) return false;
    const between = mendedAt > at ? words.slice(at + length, mendedAt) : words.slice(mendedAt + 1, at);
    if (mendedAt < at)
      return (
        between.every((word) => ["the", "a", "old", "this", "its", "one"].includes(word) || parts.at([word], 0) > 0) &&
        parts.at(between, 0) === 0
      );
    // "Pin cracked latch replaced" tells of two parts.
    const before = at > 0 && parts.at(words, at - 1) > 0 ? words[at - 1] : undefined;
    const other = between.find((word) => parts.at([word], 0) > 0);
    return between.length < 4 && !(before !== undefined && other !== undefined && before !== other);
  }
}
const plusWord = (length: number): number => (length === 0 ? 0 : length + 1);
/** A clause that says only that all is well. */
const allWell = (words: readonly string[]): boolean => {
  let at = 0;
  while (at < words.length) {
    const length = Math.max(
      nothing.at(words, at),
      well.at(words, at),
      saw.at(words, at),
      ["all", "is", "was", "were", "and"].includes(words[at] ?? "") ? 1 : 0,
    );
    if (length === 0) return false;
    at += length;
  }
  return true;
};
const BEFORE_MENDED: ReadonlySet<string> = new Set("it now since then later is was been has have all both".split(" "));
/** A clause that only says that it was put right: of what stands before it. */
function isMendedAlone({ words }: Clause): boolean {
  let at = 0;
  while (BEFORE_MENDED.has(words[at] ?? "")) at += 1;
  const length = mended.at(words, at);
  if (length === 0) return false;
  const rest = words[at + length];
  return rest === undefined || /^(on|in|by|since|again|now|today|at)$/.test(rest) || /\d/.test(rest);
}
/** Whether a remark records that something was repaired or replaced, and nothing of it is still to be done or denied. */
export function tellsRepair(remark: string): boolean {
  const clauses = clausesOf(remark);
  const any = (phrases: Phrases): boolean => clauses.some(({ words }) => words.some((_, i) => phrases.at(words, i) > 0));
  return any(mended) && !any(notYet) && !any(deny) && !any(nothing);
}
const names = new Memory<boolean>(),
  marks = new Memory<boolean>();
/** A number or a code: it holds no word. */
const CODE = /^[^\s]*\d[^\s]*$/;
/**
 * Plain words against the item, wherever they stand: in a name, a place or a number, which may hold none. `mark` is true where
 * what stands there is written on the gear itself, so that "illegible" speaks as well.
 */
export function speaksPlainly(text: string, mark = false): boolean {
  if (CODE.test(text)) return false;
  const phrases = mark ? plainlyMarked : plainly;
  return (mark ? marks : names).once(text, () => clausesOf(text).some(({ words }) => words.some((_, i) => phrases.at(words, i) > 0)));
}

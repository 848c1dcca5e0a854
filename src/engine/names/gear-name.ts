/** From what people call a piece of gear, or a part of it, to the kind: by sets of words, without regard to case, plural or order. */
import { GEAR } from "../gear/index";
import type { GearKind } from "../gear/kind";
import { ROTATION_RESISTANT } from "../gear/shared/ropes";
import { Memory } from "../memory";
import type { StressClass } from "../rules/criterion";

/** Words of four letters and more lose the s of the plural; "ss" is none. */
const PLURAL = /^(.{2,}[^s])s$/;
const words = (text: string): string[] =>
  text
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, " ")
    .trim()
    .split(" ")
    .filter((w) => w !== "")
    .map((w) => w.replace(PLURAL, "$1"));
interface Alias {
  readonly kind: GearKind;
  readonly words: readonly string[];
}
const ALIASES: readonly Alias[] = GEAR.flatMap((kind) =>
  [...new Set([kind.id, ...kind.names])].map((name) => ({ kind, words: words(name) })),
);
/** Names that two kinds go by. A ring bolt is pulled at an angle as an eyebolt is; some swivel eye bolts are hoist rings. */
const SHARED: readonly { readonly words: readonly string[]; readonly kinds: readonly string[] }[] = [
  { words: ["lifting", "ring"], kinds: ["hoist ring", "link"] },
  ...[["ring", "bolt"], ["ringbolt"], ["swivel", "eye", "bolt"], ["swivel", "eyebolt"]].map((shared) => ({
    words: shared,
    kinds: ["eyebolt", "hoist ring"],
  })),
];
const NAMED: readonly Alias[] = [
  ...ALIASES,
  ...SHARED.flatMap(({ words: shared, kinds }) => GEAR.filter((kind) => kinds.includes(kind.id)).map((kind) => ({ kind, words: shared }))),
];
const OTHER_CHAIN =
  /\b(hoist|lever|puller|binder|proof coil|coil|wrought|iron|stainless|mild|carbon|(hi|high) test|bbb|chain block|block chain|(non|no) alloy|load chain|hand chain|anchor|stud|tie ?down|lashing|transport|towing|tow|logging|roller|leaf|drive|conveyor|windlass|galvani[sz]ed|plated|brass|plastic|mooring)\b/;
/** Textiles that hold, tow or catch, and do not lift. */
const NO_LIFTING =
  /\b(ratchet|lash\w*|harness|lanyard|belt|tie ?down|cargo (strap|net)|recovery|tow(ing)?|winch|climbing|rescue|patient|mooring|(fall|safety) (arrest|line|net))\b/;
/** Things that share a word with a kind and are none: by kind, the words that tell it. */
const NONE_OF_IT: Readonly<Record<string, RegExp>> = {
  "web sling": NO_LIFTING,
  roundsling: NO_LIFTING,
  "fibre rope sling": NO_LIFTING,
  link: /\b(spanner|wrench|binder|gear|bolt|nut|o ring|(key|piston|snap|retaining|slip|seal) ring)\b/,
  hook: /\b(spanner|wrench|coat hook|boat hook|(chain|lever) hoist(?! (load |eye |swivel |top |bottom )?hook))\b/,
  "standing rope": /\b(control|controller|station|switch|button|box|lamp|light)\b/,
  block: /\b(lever|terminal|engine|chain block|block chain)\b/,
  "end connection":
    /\b(wrench|spanner|pipe|hose|with|w|pendant|guy|line|shackle|hook|sling|(winch|hoist|load|boom|crane|running|standing) rope|wire rope (?!termination|ferrule|end)|drive|impact|light|bulb)\b/,
  clips: /\b(hose|pipe|paper) clip\b/,
  "chain hoist": /\bhoist (load |eye |swivel |top |bottom )?hook\b/,
  "lever hoist": /\bhoist (load |eye |swivel |top |bottom )?hook\b/,
  coupling: /\b(hose|pipe|shaft|rail|air|quick|garden|camlock)\b/,
  "beam clamp": /\b(tool|hand|welding|cylinder|platform|shopping|luggage) trolley\b/,
  "lifting magnet": /\b(sweep(er)?|fridge|welding|holding|base) magnet\b|\bmagnet (sweep(er)?|base)\b/,
};
/** Grades of alloy chain as numbers; 8 and 10 are short for 80 and 100. As a letter, T is grade 8. */
const ALLOY_GRADE = /^(8|80|10|100)$/;
/** Whether a grade is named that alloy chain slings do not have. */
function otherGrade(typedWords: readonly string[]): boolean {
  return typedWords.some((word, at) => {
    const [, glued] = /^(?:grade|grd|gr|g)(\d+)$/.exec(word) ?? [];
    if (glued !== undefined) return !ALLOY_GRADE.test(glued);
    if (!/^(grade|grd|gr|g)$/.test(word)) return false;
    const grade = [typedWords[at + 1], typedWords[at - 1]].find((w) => w !== undefined && /^\d+$/.test(w));
    return grade !== undefined ? !ALLOY_GRADE.test(grade) : typedWords[at + 1] === "unknown" || /^[a-su-z]$/.test(typedWords[at + 1] ?? "");
  });
}
const NO_ALLOY = "is not judged: only alloy chain of grade 80 or 100 is in this catalogue";
/** Why a text that has a kind's words is not that kind; null when it is. */
function noneOfIt(kind: GearKind, typedWords: readonly string[], text: string): string | null {
  const spoken = typedWords.join(" ");
  if (kind.id === "load chain" && /\bbinder\b/.test(spoken)) return `"${text}" ${NO_ALLOY}`;
  if (kind.id === "chain sling") return OTHER_CHAIN.test(spoken) || otherGrade(typedWords) ? `"${text}" ${NO_ALLOY}` : null;
  return NONE_OF_IT[kind.id]?.test(spoken) === true ? unknown(typedWords, text) : null;
}
/** What may stand beside "chain" or "webbing" where no sling is named: counts, sizes, grades and stuff. Any other word may name another use. */
const BESIDE = /^(chain|webbing|\w{0,2}\d\w*|\w\w?|leg|single|double|two|three|four|grade|swl|wll|ton(ne)?|alloy|lifting|nylon|polyester)$/;
/** Why what is told by "chain" or "webbing" is no sling: mooring, barriers and lorries have them too. */
function notBare(kind: GearKind, text: string): string | null {
  const head = FITTED.exec(text)?.[1] ?? text;
  if (
    /sling/i.test(head) ||
    !/^(chain|web) sling$/.test(kind.id) ||
    words(head.replace(/alloy steel/i, "alloy")).every((w) => BESIDE.test(w))
  )
    return null;
  return kind.id === "web sling" ? unknown(words(text), text) : `"${text}" ${NO_ALLOY}; name such a chain "alloy chain sling"`;
}
function unknown(typedWords: readonly string[], text: string): string {
  const near = nearest(typedWords);
  return `"${text}" is not a gear kind in this catalogue${near.length === 0 ? `, which has ${GEAR.map((kind) => kind.id).join(", ")}` : `; nearest: ${near.join(", ")}`}`;
}
/** "Not a hook", "no hook"; a "no" before a figure, as in "hook no 4", is its number. */
const DENIES = /\bnot\b|n['’]t\b|^no\b(?!\.? *\d)/i;
export type KindMatch = { readonly ok: true; readonly kind: GearKind } | { readonly ok: false; readonly why: string };
const cache = new Memory<KindMatch>();
/** The gear kind a text names, or why not, with the nearest kinds. */
export function matchKind(text: string): KindMatch {
  return cache.once(text, () => find(text));
}
/** Whether the words of a name stand in what was said, a doubled word twice. */
const fits = (name: readonly string[], typedWords: readonly string[]): boolean =>
  name.every((w, at) => typedWords.filter((s) => s === w)[name.slice(0, at).filter((n) => n === w).length] !== undefined);
/** Whether a longer name takes up a shorter one: "hook block" takes up "hook", "chain sling" does not. A sheave is part of a block. */
const takesUp = (longer: Alias, shorter: Alias): boolean =>
  shorter.words.every((w) => longer.words.includes(w) || (w === "sheave" && longer.kind.id.endsWith("block")));
/** Every kind that a text names: by its longest name, and by any other that the longest does not take up. */
function named(typedWords: readonly string[], text: string): readonly GearKind[] {
  const fitting = NAMED.filter((alias) => fits(alias.words, typedWords));
  const most = Math.max(0, ...fitting.map((alias) => alias.words.length));
  // A hoist's hook is a hook.
  const longest = fitting.filter(
    (alias) => alias.words.length === most && !(alias.kind.id.endsWith(" hoist") && noneOfIt(alias.kind, typedWords, text) !== null),
  );
  const more = fitting.filter((alias) => !longest.some((l) => takesUp(l, alias)) && noneOfIt(alias.kind, typedWords, text) === null);
  return asRope(withoutSwivel([...new Set([...longest, ...more].map((alias) => alias.kind))], typedWords, text), typedWords, text);
}
const IN_A_ROW = /&|\+|\band\b/i;
/** In "swivel eye hook" and "hook, eye, swivel" the swivel is the fitting of a hook or block; where it is the head of the name it stays. */
function withoutSwivel(kinds: readonly GearKind[], typedWords: readonly string[], text: string): readonly GearKind[] {
  const lastOf = (of: readonly string[]): string | undefined => of.filter((w) => /^(swivel|hook|block|blk|pulley)$/.test(w)).pop();
  const head = lastOf(words(text.split(",")[0] ?? "")) ?? lastOf(typedWords);
  const others = kinds.filter((kind) => kind.id !== "swivel");
  return others.length !== 0 && others.every((kind) => /^hook$|block$/.test(kind.id)) && head !== "swivel" && !IN_A_ROW.test(text)
    ? others
    : kinds;
}
const kindOf = (id: string): readonly GearKind[] => GEAR.filter((kind) => kind.id === id);
/** A rope said to be rotation resistant is no running rope; of a sling it is the construction. */
function asRope(kinds: readonly GearKind[], typedWords: readonly string[], text: string): readonly GearKind[] {
  const resistant = kindOf("rotation resistant rope");
  if (kinds.some((kind) => kind.id === "wire rope sling")) return kinds.filter((kind) => !resistant.includes(kind));
  if (!ROTATION_RESISTANT.test(text)) return kinds;
  if (kinds.length === 0) return typedWords.includes("rope") || typedWords.includes("line") ? resistant : kinds;
  return [
    ...new Set(
      kinds.flatMap((kind) => (kind.id === "running rope" ? resistant : kind.id === "standing rope" ? [kind, ...resistant] : [kind])),
    ),
  ];
}
/** Words before which the thing itself stands, and behind which what it is fitted with. */
const FITTED =
  /^(.*?)(?:[\s(,-]+(?:complete |fitted )?(?:w\/o?|(?:c\/?w|with(?:out)?|incl(?:uding|usive)?)(?![a-z]))|(?<=slings?)\s*(&|\+|and\b|plus\b))(.*)$/i;
/** Slings, ropes and beams are named with what hangs on them; other gear is not judged by its head alone. */
const CARRIES = /sling$|rope$|beam$|hoist$/;
const HUNG = /^(hook|link|shackle|swivel|end connection|wedge socket|clips)$/;
/** What a name says, by its head: "chain sling c/w hooks" is the sling. What else stands behind the head is another kind, save in a name of the head's kind. */
function byHead(typedWords: readonly string[], text: string): readonly GearKind[] {
  const [, head = "", joined, tail = ""] = FITTED.exec(text) ?? [];
  if (!/[a-z]/i.test(head)) return named(typedWords, text);
  const kinds = named(words(head), head);
  const [kind, other] = kinds;
  if (kind === undefined || other !== undefined) return kinds;
  const hung = !CARRIES.test(kind.id) ? /^$/ : joined === undefined ? HUNG : /^(hook|link)$/;
  const own = ALIASES.filter((alias) => alias.kind === kind && fits(alias.words, typedWords));
  const rest = NAMED.filter(
    (alias) =>
      alias.kind !== kind && fits(alias.words, words(tail)) && !hung.test(alias.kind.id) && !own.some((name) => takesUp(name, alias)),
  );
  return rest.length === 0
    ? asRope(kinds, typedWords, text)
    : [...new Set([kind, ...named(typedWords, text), ...rest.map((alias) => alias.kind)])];
}
function find(text: string): KindMatch {
  const typedWords = words(text);
  if (typedWords.length === 0) return { ok: false, why: "the kind of gear is missing" };
  if (DENIES.test(text.trim())) return { ok: false, why: `"${text}" says what it is not; name the kind of gear alone` };
  const kinds = byHead(typedWords, text);
  const whys = kinds.map((kind) => noneOfIt(kind, typedWords, text) ?? notBare(kind, text));
  const [why = null] = whys;
  if (why !== null && !whys.includes(null)) return { ok: false, why };
  const [only, other] = kinds;
  if (only && !other) return { ok: true, kind: only };
  const left = kinds.filter((_, at) => whys[at] === null);
  if (only && other)
    return { ok: false, why: `"${text}" could be ${(left[1] ? left : kinds).map((k) => k.id).join(" or ")}; name one kind` };
  return { ok: false, why: unknown(typedWords, text) };
}
/** Words long enough for their first four letters to tell something. */
const BEGINNING = /^.{4}/;
/** Kinds that share a word with the text. */
function nearest(typedWords: readonly string[]): string[] {
  return GEAR.filter((kind) =>
    kind.names.some((name) =>
      words(name).some((w) => typedWords.some((s) => s === w || (BEGINNING.test(s) && w.startsWith(s.slice(0, 4))))),
    ),
  ).map((kind) => kind.id);
}
/** The part a text names on a gear kind, with its stress class; null when the kind has no such part. */
export function matchPart(kind: GearKind, text: string): { readonly part: string; readonly stress: StressClass } | null {
  const typedWords = words(text);
  if (typedWords.length === 0) return null;
  const names = [...Object.keys(kind.parts).map((part) => [part, part] as const), ...Object.entries(kind.partNames ?? {})];
  const fitting = names
    .filter(([name]) => words(name).every((w) => typedWords.includes(w)))
    .sort((a, b) => words(b[0]).length - words(a[0]).length);
  const part = fitting[0]?.[1];
  const stress = part === undefined ? undefined : kind.parts[part];
  return part !== undefined && stress !== undefined ? { part, stress } : null;
}

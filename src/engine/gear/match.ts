/** From what people call a piece of gear, or a part of it, to the kind: by sets of words, without regard to case, plural or order. */
import { GEAR } from "./index";
import type { GearKind, StressClass } from "./kind";

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

const ALIASES: readonly Alias[] = GEAR.flatMap((kind) => [...new Set([kind.id, ...kind.names])].map((name) => ({ kind, words: words(name) })));

/** Names that two kinds go by. */
const SHARED: readonly { readonly words: readonly string[]; readonly kinds: readonly string[] }[] = [{ words: ["lifting", "ring"], kinds: ["hoist ring", "link"] }];

const NAMED: readonly Alias[] = [...ALIASES, ...SHARED.flatMap(({ words: shared, kinds }) => GEAR.filter((kind) => kinds.includes(kind.id)).map((kind) => ({ kind, words: shared })))];

const OTHER_CHAIN =
  /\b(hoist|lever|puller|binder|proof coil|coil|wrought|iron|stainless|mild|carbon|(hi|high) test|bbb|chain block|block chain|(non|no) alloy|load chain|hand chain|anchor|stud|tie ?down|lashing|transport|towing|tow|logging|roller|leaf|drive|conveyor|windlass)\b/;

/** Things that share a word with a kind and are none: by kind, the words that tell it. */
const NONE_OF_IT: Readonly<Record<string, RegExp>> = {
  link: /\b(spanner|wrench|binder|gear|o ring|(key|piston|snap|retaining|slip|seal) ring)\b/,
  hook: /\b(spanner|wrench|coat hook|boat hook|(chain|lever) hoist(?! (load |eye |swivel |top |bottom )?hook))\b/,
  "standing rope": /\b(control|controller|station|switch|button|box|lamp|light)\b/,
  block: /\b(lever|terminal|engine|chain block|block chain)\b/,
  "end connection": /\b(wrench|spanner|pipe|hose|with|w|pendant|guy|line|shackle|hook|sling|(winch|hoist|load|boom|crane|running|standing) rope|wire rope (?!termination|ferrule|end)|drive|impact|light|bulb)\b/,
  clips: /\b(hose|pipe|paper) clip\b/,
};

/** Grades of alloy chain as numbers; 8 and 10 are short for 80 and 100. As a letter, T is grade 8. */
const ALLOY_GRADE = /^(8|80|10|100)$/;

/** Whether a grade is named that alloy chain slings do not have. */
function otherGrade(said: readonly string[]): boolean {
  return said.some((word, at) => {
    const [, glued] = /^(?:grade|grd|gr|g)(\d+)$/.exec(word) ?? [];
    if (glued !== undefined) return !ALLOY_GRADE.test(glued);
    if (!/^(grade|grd|gr|g)$/.test(word)) return false;
    const grade = [said[at + 1], said[at - 1]].find((w) => w !== undefined && /^\d+$/.test(w));
    return grade !== undefined ? !ALLOY_GRADE.test(grade) : said[at + 1] === "unknown" || /^[a-su-z]$/.test(said[at + 1] ?? "");
  });
}

/** Why a text that has a kind's words is not that kind; null when it is. */
function noneOfIt(kind: GearKind, said: readonly string[], text: string): string | null {
  const spoken = said.join(" ");
  if (kind.id === "chain sling") return OTHER_CHAIN.test(spoken) || otherGrade(said) ? `"${text}" is not judged: only alloy chain of grade 80 or 100 is in this catalogue` : null;
  return NONE_OF_IT[kind.id]?.test(spoken) === true ? unknown(said, text) : null;
}

function unknown(said: readonly string[], text: string): string {
  const near = nearest(said);
  return `"${text}" is not a gear kind in this catalogue${near.length === 0 ? `, which has ${GEAR.map((kind) => kind.id).join(", ")}` : `; nearest: ${near.join(", ")}`}`;
}

/** "Not a hook", "no hook"; a "no" before a figure, as in "hook no 4", is its number. */
const DENIES = /\bnot\b|n['’]t\b|^no\b(?!\.? *\d)/i;

export type KindMatch = { readonly ok: true; readonly kind: GearKind } | { readonly ok: false; readonly why: string };

const cache = new Map<string, KindMatch>();
const CACHED = 5000;

/** The gear kind a text names, or why not, with the nearest kinds. */
export function matchKind(text: string): KindMatch {
  const known = cache.get(text);
  if (known) return known;
  const match = find(text);
  if (cache.size === CACHED) cache.clear();
  cache.set(text, match);
  return match;
}

function find(text: string): KindMatch {
  const said = words(text);
  if (said.length === 0) return { ok: false, why: "the kind of gear is missing" };
  if (DENIES.test(text.trim())) return { ok: false, why: `"${text}" says what it is not; name the kind of gear alone` };
  const fitting = NAMED.filter((alias) => alias.words.every((w) => said.includes(w)));
  const longest = Math.max(0, ...fitting.map((alias) => alias.words.length));
  const kinds = [...new Set(fitting.filter((alias) => alias.words.length === longest).map((alias) => alias.kind))];
  const [only, other] = kinds;
  const [why = null] = kinds.map((kind) => noneOfIt(kind, said, text));
  if (why !== null && kinds.every((kind) => noneOfIt(kind, said, text) !== null)) return { ok: false, why };
  if (only && !other) return { ok: true, kind: only };
  if (only && other) return { ok: false, why: `"${text}" could be ${kinds.map((k) => k.id).join(" or ")}; name one kind` };
  return { ok: false, why: unknown(said, text) };
}

/** Words long enough for their first four letters to tell something. */
const BEGINNING = /^.{4}/;

/** Kinds that share a word with the text. */
function nearest(said: readonly string[]): string[] {
  return GEAR.filter((kind) => kind.names.some((name) => words(name).some((w) => said.some((s) => s === w || (BEGINNING.test(s) && w.startsWith(s.slice(0, 4))))))).map((kind) => kind.id);
}

/** The part a text names on a gear kind, with its stress class; null when the kind has no such part. */
export function matchPart(kind: GearKind, text: string): { readonly part: string; readonly stress: StressClass } | null {
  const said = words(text);
  if (said.length === 0) return null;
  const names = [...Object.keys(kind.parts).map((part) => [part, part] as const), ...Object.entries(kind.partNames ?? {})];
  const fitting = names.filter(([name]) => words(name).every((w) => said.includes(w))).sort((a, b) => words(b[0]).length - words(a[0]).length);
  const part = fitting[0]?.[1];
  const stress = part === undefined ? undefined : kind.parts[part];
  return part !== undefined && stress !== undefined ? { part, stress } : null;
}

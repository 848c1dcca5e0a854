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
  const fitting = ALIASES.filter((alias) => alias.words.every((w) => said.includes(w)));
  const longest = Math.max(0, ...fitting.map((alias) => alias.words.length));
  const kinds = [...new Set(fitting.filter((alias) => alias.words.length === longest).map((alias) => alias.kind))];
  const [only, other] = kinds;
  if (only && !other) return { ok: true, kind: only };
  if (only && other) return { ok: false, why: `"${text}" could be ${kinds.map((k) => k.id).join(" or ")}; name one kind` };
  return { ok: false, why: `"${text}" is not a gear kind in this catalogue; nearest: ${nearest(said).join(", ")}` };
}

/** Words long enough for their first four letters to tell something. */
const BEGINNING = /^.{4}/;

/** Kinds that share a word with the text, else all of them. */
function nearest(said: readonly string[]): string[] {
  const sharing = GEAR.filter((kind) => kind.names.some((name) => words(name).some((w) => said.some((s) => s === w || (BEGINNING.test(s) && w.startsWith(s.slice(0, 4)))))));
  return (sharing.length === 0 ? GEAR : sharing).map((kind) => kind.id);
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

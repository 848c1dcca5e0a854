/** Makes and constructions that have limits of their own: which one a row names. */
import { DENIED, DOUBT, recordedText, tidy } from "./cell";
import type { Cells } from "./check/readings";
import { field } from "./fields";
import type { GearKind, Variants } from "./gear/kind";
import { namedUnit } from "./units";

/** Whole words of a text; a comma between figures and the sign for inches stay. */
const wordsOf = (text: string): string[] =>
  text
    .toLowerCase()
    .replace(/[-_]/g, " ")
    .replace(/×/g, "x")
    .replace(/(\d) ?x ?(\d)/g, "$1x$2")
    .replace(/["']/g, " $& ")
    .split(/[\s;:()[\]]+|(?<!\d),|,(?!\d)/)
    .map((word) => word.replace(/\.$/, "").replace(/^parts$/, "part"))
    .filter((word) => word !== "");

/** Whether the words of a name stand together in what was said. A figure that is a size, as in "under 8 mm", is no number of parts. */
function names(name: string, said: readonly string[]): boolean {
  const words = wordsOf(name);
  const counts = /\d/.test(name);
  return said.some((_, at) => words.every((word, i) => said[at + i] === word) && !(counts && namedUnit(said[at + words.length] ?? "") !== null));
}

/** Words that take back, or leave in doubt, what stands beside them. */
const unsure = (text: string): boolean => DENIED.test(text) || DOUBT.test(text);

/** The variant that a text names in whole words, or null. */
export function matchVariant<V extends string>(variants: Readonly<Record<V, readonly string[]>>, text: string): V | null {
  const plain = tidy(text);
  if (unsure(plain)) return null;
  const all = Object.entries<readonly string[]>(variants) as [V, readonly string[]][];
  const said = wordsOf(plain);
  const exact = all.filter(([id, phrases]) => [id, ...phrases].some((phrase) => wordsOf(phrase).join(" ") === said.join(" ")));
  const fitting = exact.length > 0 ? exact : all.filter(([id, phrases]) => [id, ...phrases].some((phrase) => names(phrase, said)));
  return fitting.length === 1 ? (fitting[0]?.[0] ?? null) : null;
}

/** What a row says of its variant: known, not recorded (`assumed` or open), or words that name none. */
export type VariantRead =
  | { readonly kind: "known"; readonly variant: string; readonly assumed: string | null }
  | { readonly kind: "open" }
  | { readonly kind: "refused"; readonly sentence: string };

export function readVariant(variants: Variants, cells: Cells, gear: string): VariantRead {
  const text = recordedText(cells.value(variants.field));
  const told = unsure(gear) ? undefined : variants.inGear?.find(({ words }) => words.test(gear));
  if (text === "") {
    if (told) return { kind: "known", variant: told.variant, assumed: null };
    return variants.blank ? { kind: "known", variant: variants.blank.variant, assumed: variants.blank.note } : { kind: "open" };
  }
  const variant = matchVariant(variants.names, text);
  const { heading } = field(variants.field);
  if (variant !== null && told !== undefined && told.variant !== variant)
    return { kind: "refused", sentence: `${heading}: "${text}" in "${cells.heading(variants.field)}" does not go with "${gear}", which is ${told.variant}; put the one that is wrong right.` };
  if (variant !== null) return { kind: "known", variant, assumed: null };
  return { kind: "refused", sentence: `${heading}: "${text}" in "${cells.heading(variants.field)}" cannot be used: type ${Object.keys(variants.names).join(", ")}.` };
}

/** Whether a check, or a limit of it, holds for some variants only. */
export function dependsOnVariant(kind: GearKind, check: string): boolean {
  return kind.checks.some((c) => c.name === check && c.onlyFor !== undefined) || kind.criteria.some((c) => c.check === check && c.onlyFor !== undefined);
}

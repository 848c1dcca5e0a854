/** Makes and constructions that have limits of their own: which one a row names. */
import { DENIED, DOUBT, recordedText, tidy } from "./cell";
import type { Cells } from "./check/readings";
import { field } from "./fields";
import type { GearKind, Variants } from "./gear/kind";
import { ROTATION_RESISTANT } from "./gear/rope-common";
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

/** Whether the words of a name stand together in what was said, or its notation stands there. A figure that is a size, as in "under 8 mm", is no number of parts. */
function names(name: string | RegExp, said: readonly string[]): boolean {
  if (typeof name !== "string") return name.test(said.join(" "));
  const words = wordsOf(name);
  const counts = /\d/.test(name);
  return said.some((_, at) => words.every((word, i) => said[at + i] === word) && !(counts && namedUnit(said[at + words.length] ?? "") !== null));
}

/** Words that take back, or leave in doubt, what stands beside them. */
const unsure = (text: string): boolean => DENIED.test(text) || DOUBT.test(text);

/** Whether the words contradict the rope they name: 8x25 may be spin resistant, the ropes of a braid are 6x19. */
const contrary = (rope: string, text: string): boolean => (rope !== "rotation resistant" && ROTATION_RESISTANT.test(text)) || (rope === "strand laid" && /braid|plait/i.test(text));

/** The variant that a text names in whole words or by its notation, or null. */
export function matchVariant<V extends string>(variants: Readonly<Record<V, readonly (string | RegExp)[]>>, text: string): V | null {
  const plain = tidy(text);
  if (unsure(plain)) return null;
  const all = Object.entries<readonly (string | RegExp)[]>(variants) as [V, readonly (string | RegExp)[]][];
  const said = wordsOf(plain);
  const exact = all.filter(([id, phrases]) => [id, ...phrases].some((phrase) => typeof phrase === "string" && wordsOf(phrase).join(" ") === said.join(" ")));
  const fitting = exact.length > 0 ? exact : all.filter(([id, phrases]) => [id, ...phrases].some((phrase) => names(phrase, said)));
  const [only, other] = fitting;
  return only === undefined || other !== undefined || contrary(only[0], plain) ? null : only[0];
}

/** What a row says of its variant: known, not recorded (`assumed` or open), or words that name none. */
export type VariantRead =
  | { readonly kind: "known"; readonly variant: string; readonly assumed: string | null }
  | { readonly kind: "open" }
  | { readonly kind: "refused"; readonly sentence: string };

export function readVariant(variants: Variants, cells: Cells, gear: string): VariantRead {
  const { names: known, blank, another } = variants;
  const text = recordedText(cells.value(variants.field));
  const { heading } = field(variants.field);
  const typed = `${heading}: "${text}" in "${cells.heading(variants.field)}"`;
  if (another?.words.test(text) === true) return { kind: "refused", sentence: `${typed} is a ${another.kind}; name the gear "${another.kind}".` };
  if (Object.keys(known).length === 0) return { kind: "open" };
  const told = unsure(gear) ? undefined : variants.inGear?.find(({ words }) => words.test(gear));
  const silent = text !== "" && wordsOf(tidy(text)).every((word) => variants.beside?.test(word) === true);
  if (text === "" || (silent && (told || blank))) {
    if (told) return { kind: "known", variant: told.variant, assumed: null };
    if (!blank) return { kind: "open" };
    return { kind: "known", variant: blank.variant, assumed: `${heading} ${silent ? `"${text}" names none` : "is not recorded"}: judged as ${blank.variant}, ${blank.why}` };
  }
  const variant = matchVariant(known, text);
  if (variant !== null && told !== undefined && told.variant !== variant)
    return { kind: "refused", sentence: `${typed} does not go with "${gear}", which is ${told.variant}; put the one that is wrong right.` };
  if (variant === null) return { kind: "refused", sentence: `${typed} cannot be used: type ${Object.keys(known).join(", ")}.` };
  const inWords = (known[variant] ?? []).concat(variant).some((name) => typeof name === "string" && names(name, wordsOf(tidy(text))));
  return { kind: "known", variant, assumed: inWords || blank?.variant !== variant ? null : `${heading} "${text}" is read as ${variant}, ${blank.why}` };
}

/** Whether a check, or a limit of it, holds for some variants only. */
export function dependsOnVariant(kind: GearKind, check: string): boolean {
  return kind.checks.some((c) => c.name === check && c.onlyFor !== undefined) || kind.criteria.some((c) => c.check === check && c.onlyFor !== undefined);
}

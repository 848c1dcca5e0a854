/** Makes and constructions that have limits of their own: which one a row names. */
import { ROTATION_RESISTANT } from "../gear/shared/ropes";
import { namedUnit } from "../numbers/lengths";
import { DENIED, DOUBT, tidy } from "../reading/text";

/** Whole words of a text; a comma between figures and the sign for inches stay. */
export const wordsOf = (text: string): string[] =>
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
export function names(name: string | RegExp, typedWords: readonly string[]): boolean {
  if (typeof name !== "string") return name.test(typedWords.join(" "));
  const words = wordsOf(name);
  const counts = /\d/.test(name);
  return typedWords.some(
    (_, at) =>
      words.every((word, i) => typedWords[at + i] === word) && !(counts && namedUnit(typedWords[at + words.length] ?? "") !== null),
  );
}
/** Words that take back, or leave in doubt, what stands beside them. */
export const unsure = (text: string): boolean => DENIED.test(text) || DOUBT.test(text);
/** Whether the words contradict the rope they name: 8x25 may be spin resistant, the ropes of a braid are 6x19. */
const contrary = (rope: string, text: string): boolean =>
  (rope !== "rotation resistant" && ROTATION_RESISTANT.test(text)) || (rope === "strand laid" && /braid|plait/i.test(text));
/** The variant that a text names in whole words or by its notation, or null. */
export function matchVariant<V extends string>(variants: Readonly<Record<V, readonly (string | RegExp)[]>>, text: string): V | null {
  const plain = tidy(text);
  if (unsure(plain)) return null;
  const all = Object.entries<readonly (string | RegExp)[]>(variants) as [V, readonly (string | RegExp)[]][];
  const typedWords = wordsOf(plain);
  const exact = all.filter(([id, phrases]) =>
    [id, ...phrases].some((phrase) => typeof phrase === "string" && wordsOf(phrase).join(" ") === typedWords.join(" ")),
  );
  const fitting = exact.length > 0 ? exact : all.filter(([id, phrases]) => [id, ...phrases].some((phrase) => names(phrase, typedWords)));
  const [only, other] = fitting;
  return only === undefined || other !== undefined || contrary(only[0], plain) ? null : only[0];
}

import type { Finding } from "../check/finding";
import { field, type FieldId } from "../columns";
import type { Variants } from "../gear/kind";
import type { Cells } from "../log/cells";
import { matchVariant, names, unsure, wordsOf } from "../names/variant-name";
import { recordedText, tidy } from "../reading/text";

/** What a row says of its variant: known, not recorded (`assumed` or open), or words that name none. */
export type VariantRead =
  | { readonly kind: "known"; readonly variant: string; readonly assumed: string | null }
  | { readonly kind: "open" }
  | {
      readonly kind: "refused";
      readonly why: "unreadable" | "contradiction";
      readonly field: FieldId;
      readonly facts: Pick<Finding, "typed" | "because" | "type">;
    };
const instead = ({ kind, why }: NonNullable<Variants["another"]>): string =>
  `${why === undefined ? "" : `${why}; `}name the gear "${kind}"`;
export function readVariant(variants: Variants, cells: Cells, gear: string): VariantRead {
  const { names: known, blank, another } = variants;
  const text = recordedText(cells.value(variants.field));
  const { heading } = field(variants.field);
  const contradiction = (because: string, type: string, at: FieldId = variants.field, typed = text): VariantRead => ({
    kind: "refused",
    why: "contradiction",
    field: at,
    facts: { typed, because, type },
  });
  if (another?.words.test(text) === true) return contradiction(`is a ${another.kind}`, instead(another));
  // What the gear is called tells it as well, unless the name takes it back.
  if (another?.why !== undefined && !unsure(gear) && another.words.test(gear))
    return contradiction(`is a ${another.kind}`, instead(another), "gear", gear);
  if (Object.keys(known).length === 0) return { kind: "open" };
  const byName = unsure(gear) ? undefined : variants.inGear?.find(({ words }) => words.test(gear));
  const silent = text !== "" && wordsOf(tidy(text)).every((word) => variants.beside?.test(word) === true);
  if (text === "" || (silent && (byName || blank))) {
    if (byName) return { kind: "known", variant: byName.variant, assumed: null };
    if (!blank) return { kind: "open" };
    return {
      kind: "known",
      variant: blank.variant,
      assumed: `${heading} ${silent ? `"${text}" names none` : "is not recorded"}: judged as ${blank.variant}, ${blank.why}`,
    };
  }
  const variant = matchVariant(known, text);
  if (variant !== null && byName !== undefined && byName.variant !== variant)
    return contradiction(`does not go with "${gear}", which is ${byName.variant}`, "put the one that is wrong right");
  if (variant === null)
    return {
      kind: "refused",
      why: "unreadable",
      field: variants.field,
      facts: { typed: text, because: `type ${Object.keys(known).join(", ")}` },
    };
  const inWords = (known[variant] ?? []).concat(variant).some((name) => typeof name === "string" && names(name, wordsOf(tidy(text))));
  return {
    kind: "known",
    variant,
    assumed: inWords || blank?.variant !== variant ? null : `${heading} "${text}" is read as ${variant}, ${blank.why}`,
  };
}

/** Makes and constructions that have limits of their own: which one a row names. */
import { readText, tidy } from "./cell";
import type { Cells } from "./check/readings";
import { field } from "./fields";
import type { GearKind, Variants } from "./gear/kind";

/** The variant that a text names, or null. */
export function matchVariant<V extends string>(names: Readonly<Record<V, readonly string[]>>, text: string): V | null {
  const said = tidy(text).toLowerCase().replace(/[-_]/g, " ").replace(/ (parts?|strands?)$/, "");
  const all = Object.entries<readonly string[]>(names) as [V, readonly string[]][];
  for (const [id, words] of all) if (id === said || words.includes(said)) return id;
  const fitting = all.filter(([, words]) => words.some((word) => said.includes(word)));
  return fitting.length === 1 ? (fitting[0]?.[0] ?? null) : null;
}

/** What a row says of its variant: known, not recorded (`assumed` or open), or words that name none. */
export type VariantRead =
  | { readonly kind: "known"; readonly variant: string; readonly assumed: string | null }
  | { readonly kind: "open" }
  | { readonly kind: "refused"; readonly sentence: string };

export function readVariant(variants: Variants, cells: Cells, gear: string): VariantRead {
  const text = readText(cells.value(variants.field));
  if (text === "") {
    const told = variants.inGear?.find(({ words }) => words.test(gear));
    if (told) return { kind: "known", variant: told.variant, assumed: null };
    return variants.blank ? { kind: "known", variant: variants.blank.variant, assumed: variants.blank.note } : { kind: "open" };
  }
  const variant = matchVariant(variants.names, text);
  if (variant !== null) return { kind: "known", variant, assumed: null };
  const { heading } = field(variants.field);
  return { kind: "refused", sentence: `${heading}: "${text}" in "${cells.heading(variants.field)}" cannot be used: type ${Object.keys(variants.names).join(", ")}.` };
}

/** Whether a check, or a limit of it, holds for some variants only. */
export function dependsOnVariant(kind: GearKind, check: string): boolean {
  return kind.checks.some((c) => c.name === check && c.onlyFor !== undefined) || kind.criteria.some((c) => c.check === check && c.onlyFor !== undefined);
}

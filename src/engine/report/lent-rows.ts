/** The items of a log with the as-new sizes that the sheet of types lends them, and what is to be told of it. */
import type { ItemRow } from "../log/find-log";
import type { Headings } from "../log/match-headings";
import { matchKind } from "../names/gear-name";
import { readText } from "../reading/text";
import type { GearTypes } from "../types/gear-types";
import { lend, type Lent } from "../types/lend";
import { count } from "../words";

export interface LentRow extends ItemRow {
  readonly lent?: Lent;
}
export interface TypesTold {
  /** Items that took at least one size. */
  readonly served: number;
  /** Rows of the sheet that cannot be used, each in a sentence. */
  readonly refused: readonly string[];
  /** Types that items name and that lend them nothing, each in a sentence. */
  readonly unmet: readonly string[];
}
/** Ids named at once. */
const NAMED = 3;
export function withLent(
  rows: readonly ItemRow[],
  headings: Headings,
  types: GearTypes | undefined,
): { readonly rows: readonly LentRow[]; readonly aboutTypes: TypesTold | null } {
  if (types === undefined) return { rows, aboutTypes: null };
  const unmet = new Map<string, string[]>();
  let served = 0;
  const after = rows.map((row): LentRow => {
    const match = matchKind(readText(row.cells.get("gear")));
    if (!match.ok) return row;
    const lending = lend(row.cells, headings, match.kind, types);
    if (lending.kind === "unmet") {
      const words = `The type "${readText(row.cells.get("gearType"))}" ${lending.why}`;
      unmet.set(words, [...(unmet.get(words) ?? []), readText(row.cells.get("id"))]);
    }
    if (lending.kind !== "lent") return row;
    const { lent } = lending;
    if (lent.cells.get("asNewFrom") === lent.from) served += 1;
    return { ...row, cells: lent.cells, lent };
  });
  const aboutTypes = [...unmet].map(([words, ids]) => {
    const more = ids.length > NAMED ? ` and ${count(ids.length - NAMED, "more", "more")}` : "";
    return `${words}: ${ids.slice(0, NAMED).join(", ")}${more}.`;
  });
  return { rows: after, aboutTypes: { served, refused: types.refused, unmet: aboutTypes } };
}

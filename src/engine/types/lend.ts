/** As-new sizes lent to an item by the row of Gear types that its Type names. Pure. */
import { field, type FieldId } from "../columns";
import type { GearKind } from "../gear/kind";
import type { Headings } from "../log/match-headings";
import { rowUnitOf } from "../log/merge-columns";
import type { CellValue } from "../reading/cell-value";
import { readText, recordedText } from "../reading/text";
import { SHACKLE_PATTERNS } from "../tables/shackle";
import { asNewFields, type GearTypes, sameSize, sizeOf, type TypeRow } from "./gear-types";
import { isLent, LENT_BEGINS, TYPES_TITLE } from "./lent";

/** What an item takes from a row. */
export interface Lent {
  /** All as-new sizes of the row, whether or not the item has one of its own. */
  readonly sizes: ReadonlyMap<FieldId, string>;
  /** Whose sizes they are, as "As-new from" says it. */
  readonly from: string;
  /** The columns that the item lacked and that the row fills. */
  readonly filled: readonly FieldId[];
  /** The cells of the item with them. */
  readonly cells: ReadonlyMap<FieldId, CellValue>;
}
export type Lending =
  { readonly kind: "lent"; readonly lent: Lent } | { readonly kind: "none" } | { readonly kind: "unmet"; readonly why: string };
const NONE: Lending = { kind: "none" };
/**
 * The sizes that an item lacks, from the row that its Type names: of the item's own kind, and of its size where the row or
 * the item names one. Nothing is lent beside a table of new gear that the item names itself.
 */
export function lend(cells: ReadonlyMap<FieldId, CellValue>, headings: Pick<Headings, "units">, kind: GearKind, types: GearTypes): Lending {
  const type = recordedText(cells.get("gearType"));
  if (type === "") return NONE;
  const found = rowFor(type, sizeOf(cells, headings, rowUnitOf(cells.get("unit"))), kind, types);
  if ("why" in found) return { kind: "unmet", why: found.why };
  const fields = asNewFields(kind).filter((id) => found.sizes.has(id));
  const own = readText(cells.get("asNewFrom"));
  const table = (SHACKLE_PATTERNS as readonly string[]).includes(own.toLowerCase());
  const lacking = table ? [] : fields.filter((id) => recordedText(cells.get(id)) === "");
  const from = fromText(found, lacking.length === fields.length || isLent(own) ? [] : lacking);
  const filled = new Map(cells);
  for (const id of lacking) filled.set(id, found.sizes.get(id));
  if (lacking.length > 0) filled.set("asNewFrom", from);
  return { kind: "lent", lent: { sizes: found.sizes, from, filled: lacking, cells: filled } };
}
function fromText({ row, type, where }: TypeRow, only: readonly FieldId[]): string {
  const which = only.length === 0 ? "" : `, ${only.map((id) => field(id).heading).join(" and ")} only`;
  return `${LENT_BEGINS}${String(row)} (${type})${which}: ${where}`;
}
function rowFor(type: string, size: string, kind: GearKind, { rows, silent }: GearTypes): TypeRow | { readonly why: string } {
  const same = (other: string): boolean => other.toLowerCase() === type.toLowerCase();
  const named = rows.filter((row) => same(row.type));
  const mine = named.filter((row) => row.kind === kind.id);
  const waiting = silent.filter((row) => same(row.type) && (row.kind === kind.id || row.kind === ""));
  // Of two rows that may be meant, one of which cannot be used, the other is not taken in its place.
  const broken =
    waiting.find((row) => row.size === "" || size === "" || sameSize(row.size, size)) ?? (mine.length === 0 ? waiting[0] : undefined);
  if (broken !== undefined)
    return {
      why: `stands in row ${String(broken.row)} of ${TYPES_TITLE}, which ${broken.why === "refused" ? "cannot be used" : "has no sizes yet"}`,
    };
  if (mine.length === 0)
    return {
      why:
        named[0] === undefined
          ? `has no row on the sheet ${TYPES_TITLE}`
          : `is ${article(named[0].kind)} in ${TYPES_TITLE}, row ${String(named[0].row)}, and ${article(kind.id)} here`,
    };
  const exact = mine.filter((row) => row.size !== "" && sameSize(row.size, size));
  const any = mine.filter((row) => row.size === "");
  const [one, ...more] = exact.length > 0 ? exact : any.length > 0 ? any : size === "" ? mine : [];
  if (one === undefined) return { why: `has no row for the size ${size} on the sheet ${TYPES_TITLE}` };
  if (more.length > 0) return { why: `has rows for several sizes on the sheet ${TYPES_TITLE}, and the item's Size is blank` };
  return one;
}
const article = (kind: string): string => `${/^[aeiou]/.test(kind) ? "an" : "a"} ${kind}`;

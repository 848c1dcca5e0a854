/**
 * As-new sizes from a published table where the log has none. Only where the row itself names the table; the reason says
 * so, because such a size is not this item's own.
 */
import { field, type FieldId } from "../columns";
import type { GearKind } from "../gear/kind";
import type { Cells } from "../log/cells";
import { inKg, loadUnitOfHeading, readLoad } from "../reading/load";
import { readText, recordedText, tidy } from "../reading/text";
import { cite } from "../rules/documents";
import { newShackle, SHACKLE_PATTERNS } from "../tables/shackle";

const DOCUMENT = { document: "Marine code", clause: "Tables 8.5.1 and 8.5.2" } as const;
export type AsNew =
  | { readonly sizes: ReadonlyMap<FieldId, string>; readonly note: string | null }
  | { readonly refused: { readonly because: string; readonly type?: string } };
const NONE: AsNew = { sizes: new Map(), note: null };
/** The missing as-new sizes of a row from the table that it names. */
export function publishedSizes(kind: GearKind, cells: Cells): AsNew {
  const { asNew } = kind;
  const named = recordedText(cells.value("asNewFrom"));
  if (asNew === undefined || named === "" || /^(measured|own|catalogue|catalog|log)$/i.test(named)) return NONE;
  const blank = (id: FieldId): boolean => recordedText(cells.value(id)) === "";
  const filled = asNew.filter(({ column, when }) => blank(column) && !blank(when));
  if (filled.length === 0) return NONE;
  const heading = cells.heading("asNewFrom");
  const pattern = SHACKLE_PATTERNS.find((p) => p === tidy(named).toLowerCase());
  if (pattern === undefined)
    return {
      refused: {
        because: `"${named}" in "${heading}" names no table`,
        type: `choose ${SHACKLE_PATTERNS.join(", ")}, or type the as-new sizes`,
      },
    };
  const gear = readText(cells.value("gear"));
  if (pattern.startsWith("dee") ? /\b(bow|anchor)\b/i.test(gear) : /\b(dee|chain|d)\b/i.test(gear))
    return {
      refused: { because: `"${gear}" is not made to the ${pattern}, which has other sizes`, type: "type the as-new sizes" },
    };
  const loadHeading = cells.heading("ratedLoad");
  const load = readLoad(cells.value("ratedLoad"), loadUnitOfHeading(loadHeading));
  if (load.kind !== "value")
    return {
      refused: {
        because: `the ${pattern} needs the rated load`,
        type:
          load.kind === "missing" ? `fill "${loadHeading}", such as 4 t` : `"${load.text}" in "${loadHeading}" cannot be used: ${load.why}`,
      },
    };
  const sizes = newShackle(pattern, inKg(load.value).div(1000));
  if (sizes === null)
    return {
      refused: { because: `${load.text} is not in the ${pattern}; a neighbouring row is never used. Type the as-new sizes` },
    };
  const values = new Map<FieldId, string>(filled.map(({ column, part }) => [column, `${String(sizes[part])} mm`]));
  const sizesTaken = [...values].map(([id, size]) => `${field(id).heading} ${size}`).join(", ");
  return {
    sizes: values,
    note: `${sizesTaken}: not this item's own size, but that of a new one of ${load.text} in the ${pattern} [${cite(DOCUMENT)}]; it holds only for a shackle made to that table`,
  };
}

/** The cells that an item's kind needs before it can be kept, each with where it stands. Pure. */
import { field, type FieldId } from "../../engine/columns";
import { readText } from "../../engine/reading/text";
import type { ItemResult, Report } from "../../engine/report/model";

export interface NeededCell {
  readonly field: FieldId;
  /** Heading as it stands in the sheet, else the register's name for it. */
  readonly heading: string;
  /** Zero-based column inside the place that was read; null where the sheet has none. */
  readonly column: number | null;
  /** What stands there, or "". */
  readonly text: string;
  /** True where it is blank or cannot be read, so that the item has no verdict. */
  readonly lacks: boolean;
}
/** Those that lack first, else in the order of the kind's checks. */
export function neededCells(
  { verdict, cells }: Pick<ItemResult, "verdict" | "cells">,
  { headings }: Pick<Report, "headings">,
): readonly NeededCell[] {
  const lacking = new Set(verdict.lacking);
  const needed = [...new Set([...verdict.needed, ...verdict.lacking])].map((id): NeededCell => {
    const match = headings.find((heading) => heading.field === id);
    return {
      field: id,
      heading: match?.heading ?? field(id).heading,
      column: match?.column ?? null,
      text: readText(cells.get(id)),
      lacks: lacking.has(id),
    };
  });
  return [...needed.filter(({ lacks }) => lacks), ...needed.filter(({ lacks }) => !lacks)];
}

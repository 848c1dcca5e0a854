/** One item under every rule set by itself: where sources disagree, this shows which says what. */
import { BASIS_IDS, type BasisId } from "./bases";
import { judgeItem } from "./item";
import type { HeadingMatch, ItemResult, ItemVerdict } from "./model";
import { cellsOf } from "./sheet";
import type { FieldId } from "./fields";
import type { Unit } from "./units";

export interface Compared {
  readonly basis: BasisId;
  readonly verdict: ItemVerdict;
}

/** Verdict of an item under each rule set alone, read by the headings of its log. */
export function compareBases(item: Pick<ItemResult, "cells">, headings: readonly HeadingMatch[], asOf: number): readonly Compared[] {
  const read = headings.filter((h): h is HeadingMatch & { field: FieldId } => h.field !== null);
  const units = new Map<FieldId, Unit>(read.flatMap((h) => (h.unit === null ? [] : [[h.field, h.unit] as const])));
  const names = new Map(read.map((h) => [h.field, h.heading]));
  const cells = cellsOf(item.cells, { units, names });
  return BASIS_IDS.map((basis) => ({ basis, verdict: judgeItem(item.cells.get("gear"), cells, { basis: [basis], asOf }) }));
}

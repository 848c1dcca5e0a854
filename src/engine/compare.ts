/** One item under every rule set by itself: where sources disagree, this shows which says what. */
import { BASIS_IDS, type BasisId } from "./bases";
import type { Cells } from "./check/readings";
import { judgeItem } from "./item";
import type { Finding, HeadingMatch, ItemResult, ItemVerdict } from "./model";
import { cellsOf } from "./sheet";
import type { FieldId } from "./fields";
import type { Unit } from "./units";

export interface Compared {
  readonly basis: BasisId;
  readonly verdict: ItemVerdict;
  /** The set gives no verdict for want of a limit alone: it says nothing, or not enough, about such an item. */
  readonly silent: boolean;
  /** The sentence that decides. Never the want of a limit where something else is wanting too: that holds under any rules. */
  readonly sentence: string;
}

/** No rule of the set holds a limit for this reading or this kind; nothing is wrong with the reading. */
function wantsLimit({ check, criterion, decision, sentence }: Finding): boolean {
  if (criterion !== null || decision !== "NO VERDICT") return false;
  return check === "rules" || sentence.includes("the rules in force hold no limit for it") || sentence.endsWith("; choose a basis that has one.");
}

function compared(basis: BasisId, verdict: ItemVerdict): Compared {
  const deciding = verdict.findings.filter((f) => f.decision === verdict.decision);
  const told = deciding.find((f) => !wantsLimit(f));
  return { basis, verdict, silent: deciding.length > 0 && told === undefined, sentence: (told ?? verdict.deciding)?.sentence ?? "" };
}

/** Verdict of an item under each rule set alone, read by the headings of its log. */
export function compareBases(item: Pick<ItemResult, "cells">, headings: readonly HeadingMatch[], asOf: number): readonly Compared[] {
  const cells = cellsOfItem(item, headings);
  return BASIS_IDS.map((basis) => compared(basis, judgeItem(item.cells.get("gear"), cells, { basis: [basis], asOf })));
}

/** The cells of an item as its log's headings read them. */
export function cellsOfItem(item: Pick<ItemResult, "cells">, headings: readonly HeadingMatch[]): Cells {
  const read = headings.filter((h): h is HeadingMatch & { field: FieldId } => h.field !== null);
  const units = new Map<FieldId, Unit>(read.flatMap((h) => (h.unit === null ? [] : [[h.field, h.unit] as const])));
  const names = new Map(read.map((h) => [h.field, h.heading]));
  return cellsOf(item.cells, { units, names });
}

/** One item under every rule set by itself: where sources disagree, this shows which says what. */
import type { Finding } from "../check/finding";
import { sentenceOf } from "../check/sentences";
import type { FieldId } from "../columns";
import { type Decision, outOfUse, rank, worstOf } from "../decision";
import { LogJudge } from "../item/judge";
import type { ItemVerdict } from "../item/verdict";
import { type Cells, cellsOf, type LogColumns } from "../log/cells";
import type { HeadingMatch } from "../log/match-headings";
import type { Unit } from "../numbers/lengths";
import { BASIS_IDS, type BasisId } from "../rules/rule-sets";
import type { ItemResult } from "./model";

/** What one rule set says by itself. What holds under any rules counts in every set. */
export interface Compared {
  readonly basis: BasisId;
  readonly decision: Decision;
  /** The set gives no verdict for want of a limit alone: it says nothing, or not enough, about such an item. */
  readonly silent: boolean;
  /** Of a silent set: how far the limits that it does hold carry; null where it holds none. */
  readonly asFar: Decision | null;
  /** Of a silent set: the checks that it holds no limit for. */
  readonly unlimited: readonly string[];
  /** The sentence that decides, never the want of a limit; "" where what holds under any rules decides. */
  readonly sentence: string;
}
export interface Comparison {
  /** Findings that take the item out whatever the rules, each said once: tag, wrong date, missing reading, overload of the assembly. */
  readonly always: readonly Finding[];
  readonly sets: readonly Compared[];
}
/** No rule of the set holds a limit for this reading or this kind; nothing is wrong with the reading. */
const wantsLimit = ({ why }: Finding): boolean => why === "no limit" || why === "rules";
/** The same said twice: every fact that a sentence is made from agrees. */
function sameFacts(a: Finding, b: Finding): boolean {
  return (["why", "check", "decision", "field", "typed", "because", "type", "measured", "criterion"] as const).every(
    (fact) => a[fact] === b[fact],
  );
}
/** The overload of an assembly is known from its other rows, so it stands in the item's verdict and in none of a row alone. */
function heldAlways(item: Pick<ItemResult, "verdict">, alone: readonly ItemVerdict[]): readonly Finding[] {
  const assembly = item.verdict.findings.filter((f) => f.why === "overload");
  const [first, ...rest] = alone.map((verdict) => verdict.findings);
  const shared = (first ?? []).filter(
    (f) =>
      f.criterion === null && outOfUse(f.decision) && !wantsLimit(f) && rest.every((findings) => findings.some((g) => sameFacts(f, g))),
  );
  const once = [...shared, ...assembly].filter((f, at, all) => all.findIndex((g) => sameFacts(f, g)) === at);
  return once.sort((a, b) => rank(a.decision) - rank(b.decision));
}
function compared(basis: BasisId, { findings }: ItemVerdict, always: readonly Finding[]): Compared {
  const own = findings.filter((f) => !always.some((g) => sameFacts(f, g)));
  const decision = worstOf([...always, ...own].map((f) => f.decision));
  const unlimited = own.filter(wantsLimit);
  const deciding = own.find((f) => f.decision === decision && !wantsLimit(f));
  const silent = always.length === 0 && deciding === undefined && unlimited.length > 0;
  const limited = own.filter((f) => f.criterion !== null).map((f) => f.decision);
  return {
    basis,
    decision,
    silent,
    asFar: silent && limited.length > 0 ? worstOf(limited) : null,
    unlimited: silent ? [...new Set(unlimited.map((f) => f.check))] : [],
    sentence: deciding === undefined ? "" : sentenceOf(deciding),
  };
}
/** What each rule set alone says of an item, read by the headings of its log. */
export function compareBases(
  item: Pick<ItemResult, "cells" | "besides" | "verdict">,
  headings: readonly HeadingMatch[],
  asOf: number,
): Comparison {
  const columns: LogColumns = { ...headingsOf(headings), fields: [...item.cells.keys()] };
  const alone = BASIS_IDS.map((basis) => ({
    basis,
    verdict: new LogJudge(columns, { basis: [basis], asOf }).judgeCells(item.cells, item.besides),
  }));
  const always = heldAlways(
    item,
    alone.map(({ verdict }) => verdict),
  );
  return { always, sets: alone.map(({ basis, verdict }) => compared(basis, verdict, always)) };
}
function headingsOf(headings: readonly HeadingMatch[]): Pick<LogColumns, "units" | "names"> {
  const read = headings.filter((h): h is HeadingMatch & { field: FieldId } => h.field !== null);
  return {
    units: new Map<FieldId, Unit>(read.flatMap((h) => (h.unit === null ? [] : [[h.field, h.unit] as const]))),
    names: new Map(read.map((h) => [h.field, h.heading])),
  };
}
/** The cells of an item as its log's headings read them. */
export function cellsOfItem(item: Pick<ItemResult, "cells" | "besides">, headings: readonly HeadingMatch[]): Cells {
  return cellsOf(item.cells, headingsOf(headings), undefined, item.besides);
}

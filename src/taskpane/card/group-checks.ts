/** The findings of an item put together by check, and the parts that they name. Pure. */
import type { Finding } from "../../engine/check/finding";
import { type Decision, worse } from "../../engine/decision";
import type { ItemVerdict } from "../../engine/item/verdict";

/** One check with every finding on it, the worst first. */
export interface CheckGroup {
  readonly key: string;
  readonly check: string;
  readonly part: string;
  readonly first: Finding;
  /** Other limits that the same reading was held against. */
  readonly others: readonly Finding[];
}
/** A part with its number in the drawing and the worst decision on it. */
export interface NumberedPart {
  readonly number: number;
  readonly part: string;
  readonly decision: Decision;
}
export function groupChecks(verdict: ItemVerdict): CheckGroup[] {
  const groups = new Map<string, { first: Finding; others: Finding[] }>();
  for (const finding of verdict.findings) {
    const key = `${finding.check}|${finding.part}`;
    const group = groups.get(key);
    if (group) group.others.push(finding);
    else groups.set(key, { first: finding, others: [] });
  }
  return [...groups].map(([key, { first, others }]) => ({ key, check: first.check, part: first.part, first, others }));
}
/** Parts in the order of the findings, so that the worst part has number 1. */
export function numberParts(verdict: ItemVerdict): NumberedPart[] {
  const parts = new Map<string, Decision>();
  for (const { part, decision } of verdict.findings) {
    if (part === "") continue;
    const before = parts.get(part);
    parts.set(part, before === undefined ? decision : worse(before, decision));
  }
  return [...parts].map(([part, decision], index) => ({ number: index + 1, part, decision }));
}

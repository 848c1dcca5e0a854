/** What the rule sets say, in as few lines as tell it: equal answers together, and a line for those that hold no limit. Pure. */
import type { Decision } from "../../engine/decision";
import type { Compared } from "../../engine/report/compare-rules";
import { BASES, type BasisId } from "../../engine/rules/rule-sets";

export interface Answer {
  readonly names: string;
  readonly decision: Decision;
  readonly sentence: string;
}
/** Sets that say the same, together; where an item is kept no sentence decides. */
export function answers(sets: readonly Compared[]): readonly Answer[] {
  const groups = new Map<string, Compared[]>();
  for (const set of sets.filter((one) => !one.silent)) {
    const key = `${set.decision}|${sentenceOf(set)}`;
    groups.set(key, [...(groups.get(key) ?? []), set]);
  }
  return [...groups.values()].flatMap(([first, ...more]) =>
    first === undefined
      ? []
      : [
          {
            names: [first, ...more].map(({ basis }) => BASES[basis].name).join(", "),
            decision: first.decision,
            sentence: sentenceOf(first),
          },
        ],
  );
}
const sentenceOf = ({ decision, sentence }: Compared): string => (decision === "KEEP" ? "" : sentence);
/** "Practice: in order, but it has no limit for deformation." and last the sets that say nothing at all. */
export function silences(sets: readonly Compared[], kind: string): readonly string[] {
  const partly = sets.filter((one) => one.asFar !== null);
  const lines = new Map<string, BasisId[]>();
  for (const { basis, asFar, unlimited } of partly) {
    const line = `${asFar === "KEEP" ? "in order" : (asFar ?? "")}, but it has no limit for ${listed(unlimited)}.`;
    lines.set(line, [...(lines.get(line) ?? []), basis]);
  }
  const nothing = sets.filter((one) => one.silent && one.asFar === null).map(({ basis }) => basis);
  return [
    ...[...lines].map(([line, ids]) => `${ids.map((id) => BASES[id].name).join(", ")}: ${line}`),
    ...(nothing.length > 0 ? [saysNothing(nothing, kind)] : []),
  ];
}
/** "Law, Germany and Ships say nothing, or not enough, about a shackle." */
export function saysNothing(sets: readonly BasisId[], kind: string): string {
  return `${listed(sets.map((id) => BASES[id].name))} ${sets.length === 1 ? "says" : "say"} nothing, or not enough, about ${withArticle(kind)}.`;
}
function listed(names: readonly string[]): string {
  return names.length < 2 ? names.join("") : `${names.slice(0, -1).join(", ")} and ${names.at(-1) ?? ""}`;
}
/** Clips come several to an end and are named so. */
function withArticle(kind: string): string {
  if (kind.endsWith("s")) return kind;
  return `${/^[aeiou]/.test(kind) ? "an" : "a"} ${kind}`;
}

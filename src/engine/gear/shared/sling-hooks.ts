/** The hook on a sling, where it is recorded in the sling's own row: throat, section, load pin, twist, latch, lock. */
import type { Criterion, Limit } from "../../rules/criterion";
import type { SourceKey } from "../../rules/documents";
import type { Check } from "../kind";
import { CHECKED, from, removedOnSight, seenIfFitted } from "./records";

export const SLING_HOOK: readonly Check[] = [
  {
    kind: "growth",
    name: "hook throat opening",
    part: "hook",
    original: "throatNew",
    measured: "throatNow",
    required: false,
    overload: true,
  },
  { kind: "loss", name: "hook section", part: "hook", original: "hookNew", measured: "hookNow", required: false },
  { kind: "loss", name: "hook pin", part: "hook pin", original: "pinNew", measured: "pinNow", required: false },
  { kind: "angle", name: "hook twist", part: "hook", measured: "twist", required: false, overload: true },
  seenIfFitted("hook latch", "hook", "latch", false),
  seenIfFitted("hook lock", "hook", "lock", false),
];
/** Where each figure of a sling's hook stands, and whether 5 % itself comes out. */
export interface HookList {
  readonly throat: Limit;
  readonly opening: readonly [SourceKey, string, Criterion["status"]];
  readonly section: readonly [SourceKey, string];
  readonly twist: readonly [SourceKey, string];
  readonly latch: readonly [SourceKey, string];
}
export function slingHook(kind: string, list: HookList): readonly Criterion[] {
  const record = (check: string, name: string, limit: Limit, source: Pick<Criterion, "basis" | "source" | "status">): Criterion => ({
    id: `${kind}.${check.replaceAll(" ", "-")}.${name}`,
    check,
    limit,
    beyond: "REMOVE",
    checked: CHECKED,
    ...source,
  });
  const standard = ([document, clause]: readonly [SourceKey, string], status: Criterion["status"] = "read") =>
    ({ basis: "standard", source: from(document, clause), status }) as const;
  const practice = { basis: "practice", source: from("practice"), status: "practice" } as const;
  const [document, clause, status] = list.opening;
  return [
    record("hook throat opening", "standard", list.throat, standard([document, clause], status)),
    record("hook throat opening", "strict", { word: "above", share: "0" }, { ...practice, basis: "strict" }),
    record("hook section", "standard", { word: "above", share: "0.10" }, standard(list.section)),
    // The saddle is highly stressed.
    record("hook section", "practice", { word: "from", share: "0.05" }, practice),
    record("hook pin", "standard", { word: "above", share: "0.10" }, standard(list.section)),
    record("hook pin", "practice", { word: "from", share: "0.10" }, practice),
    record("hook twist", "standard", { word: "above", degrees: "0" }, standard(list.twist)),
    record("hook twist", "practice", { word: "above", degrees: "10" }, practice),
    ...removedOnSight(kind, "hook latch", { standard: list.latch, practice: ["practice", ""] }),
    ...removedOnSight(kind, "hook lock", { standard: list.latch, practice: ["practice", ""] }),
  ];
}

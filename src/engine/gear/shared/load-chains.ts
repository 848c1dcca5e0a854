/**
 * Load chains of hoists: no public text that was read gives their wear and stretch in figures, so the maker's own are asked for beside each reading.
 * What the eye finds is common practice.
 */
import type { Criterion } from "../../rules/criterion";
import type { Check } from "../kind";
import { CHECKED, from, removedOnSight, seen } from "./records";

export const LOAD_CHAIN: readonly Check[] = [
  {
    kind: "maker",
    name: "link thickness",
    part: "load chain",
    measured: "sectionNow",
    figure: "linkLeast",
    comesOut: "smaller",
    required: true,
  },
  {
    kind: "maker",
    name: "stretch over gauged links",
    part: "load chain",
    measured: "gaugedNow",
    figure: "gaugedMost",
    comesOut: "larger",
    required: true,
    overload: true,
  },
  seen("cracks", "load chain", "cracks", true),
  seen("twisted or bent links", "load chain", "deformed", true, true),
  seen("corrosion", "load chain", "corrosion", true),
  seen("heat damage", "load chain", "heat", false),
  seen("field weld or change", "load chain", "fieldChange", false),
];
const SIGHTS = ["cracks", "twisted or bent links", "corrosion", "heat damage", "field weld or change"];
export function loadChainOf(kind: string): readonly Criterion[] {
  const maker = (check: string, comesOut: "above" | "below"): Criterion => ({
    id: `${kind}.${check.replaceAll(" ", "-")}.practice`,
    check,
    basis: "practice",
    limit: { word: "maker", comesOut },
    beyond: "REMOVE",
    source: from("practice", "(the maker's own figure)"),
    status: "practice",
    checked: CHECKED,
  });
  return [
    maker("link thickness", "below"),
    maker("stretch over gauged links", "above"),
    ...SIGHTS.flatMap((check) => removedOnSight(kind, check, { practice: ["practice", ""] })),
  ];
}

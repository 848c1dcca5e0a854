/** What chain hoists and lever hoists share: their hooks as hooks, the load chain by its maker's figures, brake and controls. */
import type { Criterion } from "../../rules/criterion";
import { hook } from "../hook";
import type { Check } from "../kind";
import { LOAD_CHAIN, loadChainOf } from "./load-chains";
import { removedOnSight, seen, seenIfFitted } from "./records";

export const HOIST_PARTS = { "load chain": "moderate", saddle: "high", throat: "high", case: "moderate", body: "moderate" } as const;
const FROM_HOOK = ["throat opening", "twist", "latch", "lock"];
export const hoistChecks: readonly Check[] = [
  ...hook.checks.filter((check) => FROM_HOOK.includes(check.name)),
  { kind: "loss", name: "hook section", part: "saddle", original: "hookNew", measured: "hookNow", required: true },
  ...LOAD_CHAIN,
  seen("brake", "case", "brake", true),
  seen("controls", "case", "controls", true),
  seen("fasteners", "case", "fasteners", true),
  seenIfFitted("chain anchorage", "case", "attachPoints", false),
  seen("identification", "case", "tag", true),
];
export function hoistCriteria(kind: string): readonly Criterion[] {
  const own = (check: string, as = check): readonly Criterion[] =>
    hook.criteria
      .filter((c) => c.check === check && c.twoWays !== true && !(as !== check && c.stress?.includes("low") === true))
      .map((c) => ({ ...c, check: as, id: `${kind}.${as.replaceAll(" ", "-")}.${c.id.split(".").slice(2).join(".")}` }));
  return [
    ...FROM_HOOK.flatMap((check) => own(check)),
    ...own("section wear", "hook section"),
    ...loadChainOf(kind),
    ...["brake", "controls", "fasteners", "chain anchorage", "identification"].flatMap((check) =>
      removedOnSight(kind, check, { practice: ["practice", ""] }),
    ),
  ];
}

/** Hand chain hoists: load chain, hooks, brake. */
import type { GearKind } from "./kind";
import { hoistChecks, hoistCriteria, HOIST_PARTS } from "./shared/hoists";

export const chainHoist: GearKind = {
  id: "chain hoist",
  plural: "chain hoists",
  names: ["chain hoist", "hand chain hoist", "chain block", "chain fall", "electric chain hoist", "manual chain hoist"],
  parts: HOIST_PARTS,
  partNames: { link: "load chain", bowl: "saddle" },
  checks: hoistChecks,
  criteria: hoistCriteria("chain-hoist"),
};

/** Lever hoists, ratchet type, with a load chain. */
import type { GearKind } from "./kind";
import { hoistChecks, hoistCriteria, HOIST_PARTS } from "./shared/hoists";

export const leverHoist: GearKind = {
  id: "lever hoist",
  plural: "lever hoists",
  names: ["lever hoist", "lever chain hoist", "ratchet lever hoist", "lever block", "come along"],
  parts: HOIST_PARTS,
  partNames: { link: "load chain", bowl: "saddle" },
  checks: hoistChecks,
  criteria: hoistCriteria("lever-hoist"),
};

/** Load chains of hoists by themselves. */
import type { GearKind } from "./kind";
import { LOAD_CHAIN, loadChainOf } from "./shared/load-chains";

export const loadChain: GearKind = {
  id: "load chain",
  plural: "load chains of hoists",
  names: ["load chain", "hoist load chain"],
  parts: { "load chain": "moderate", body: "moderate" },
  partNames: { link: "load chain" },
  checks: LOAD_CHAIN,
  criteria: loadChainOf("load-chain"),
};

/** Swivel hoist rings. */
import type { GearKind } from "./kind";
import { dressing, hardwareChecks, hardwareOnSight, hardwareWear, practiceWear, removedOnSight, seen } from "./shared/records";

export const hoistRing: GearKind = {
  id: "hoist ring",
  plural: "swivel hoist rings",
  names: ["swivel hoist ring", "swivel lifting ring", "side pull hoist ring"],
  parts: { bail: "moderate", bushing: "moderate", body: "moderate" },
  partNames: { ring: "bail", bolt: "bushing" },
  checks: [
    {
      kind: "loss",
      name: "bail wear",
      part: "bail",
      original: "sectionNew",
      measured: "sectionNow",
      acrossOriginal: "acrossNew",
      acrossMeasured: "acrossNow",
      required: true,
      general: true,
    },
    seen("turning freely", "bushing", "turnsFreely", true),
    seen("threads", "bushing", "threads", true),
    ...hardwareChecks("bail", true),
  ],
  criteria: [
    ...hardwareWear("hoist-ring", ["bail wear"]),
    ...practiceWear("hoist-ring", ["bail wear"], ["most", "two ways"]),
    ...removedOnSight("hoist-ring", "turning freely", { standard: ["WAC 33900", ""], practice: ["practice", ""] }),
    ...removedOnSight("hoist-ring", "threads", { standard: ["WAC 33900", ""], practice: ["practice", ""] }),
    ...hardwareOnSight("hoist-ring"),
    dressing("hoist-ring", "practice", "0.05", ["practice", ""]),
  ],
};

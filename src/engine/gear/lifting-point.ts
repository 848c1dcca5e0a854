/** Lifting points, bolted on or welded on, that are no eyebolt and no swivel hoist ring. */
import type { GearKind } from "./kind";
import {
  dressing,
  hardwareChecks,
  hardwareOnSight,
  hardwareWear,
  practiceWear,
  removedOnSight,
  seen,
  seenIfFitted,
} from "./shared/records";

export const liftingPoint: GearKind = {
  id: "lifting point",
  plural: "bolt-on and weld-on lifting points",
  names: [
    "lifting point",
    "lift point",
    "bolt on lifting point",
    "weld on lifting point",
    "bolt on point",
    "weld on point",
    "weld on ring",
    "load ring",
    "lifting lug",
  ],
  parts: { bail: "moderate", base: "moderate", bolt: "moderate", body: "moderate" },
  partNames: { ring: "bail", lug: "base", thread: "bolt", seam: "base" },
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
    seenIfFitted("threads", "bolt", "threads", true),
    seenIfFitted("weld seam", "base", "weldSeam", true),
    seen("seating on the load", "base", "pinSeated", true),
    seenIfFitted("turning freely", "bail", "turnsFreely", false),
    ...hardwareChecks("bail", true),
  ],
  criteria: [
    ...hardwareWear("lifting-point", ["bail wear"]),
    ...practiceWear("lifting-point", ["bail wear"], ["most", "two ways"]),
    ...removedOnSight("lifting-point", "threads", { standard: ["WAC 33900", ""], practice: ["practice", ""] }),
    ...removedOnSight("lifting-point", "weld seam", { practice: ["practice", ""] }),
    ...removedOnSight("lifting-point", "seating on the load", { practice: ["practice", ""] }),
    ...removedOnSight("lifting-point", "turning freely", { standard: ["WAC 33900", ""], practice: ["practice", ""] }),
    ...hardwareOnSight("lifting-point"),
    dressing("lifting-point", "practice", "0.05", ["practice", ""]),
  ],
};

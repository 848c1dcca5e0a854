/**
 * Roundslings. The removal list of ASME B30.9 9-6.9.4 was not read; what stands here is the list of the sister section
 * on web slings, which the trade applies to roundslings as well.
 */
import { removedOnSight, seen } from "./common";
import type { Criterion, GearKind } from "./kind";

const AS_WEB = ["WAC 55820", "applied to roundslings"] as const;

export const roundsling: GearKind = {
  id: "roundsling",
  plural: "roundslings",
  names: ["roundsling", "rnd sling", "round sling", "endless roundsling", "endless round sling", "synthetic roundsling", "polyester roundsling", "polyester round sling", "synthetic round sling"],
  parts: { cover: "moderate", core: "high", body: "moderate", fitting: "moderate" },
  partNames: { jacket: "cover", "end fitting": "fitting" },
  checks: [
    seen("cuts or tears", "cover", "cuts", true),
    seen("stitching", "cover", "stitching", true),
    seen("heat damage", "cover", "heat", true),
    seen("chemical damage", "cover", "chemical", false),
    seen("fittings", "fitting", "endFittings", true),
    seen("identification tag", "cover", "tag", true),
    seen("field change", "cover", "fieldChange", false),
  ],
  criteria: ([
    ...removedOnSight("roundsling", "cuts or tears", { standard: AS_WEB, practice: ["practice", ""] }),
    ...removedOnSight("roundsling", "stitching", { standard: AS_WEB, practice: ["practice", ""] }),
    ...removedOnSight("roundsling", "heat damage", { standard: AS_WEB, practice: ["practice", ""] }),
    ...removedOnSight("roundsling", "chemical damage", { standard: AS_WEB, practice: ["practice", ""] }),
    ...removedOnSight("roundsling", "fittings", { standard: AS_WEB, practice: ["practice", ""] }),
    ...removedOnSight("roundsling", "identification tag", { standard: AS_WEB, practice: ["practice", ""] }),
    ...removedOnSight("roundsling", "field change", { practice: ["practice", ""] }),
  ] satisfies readonly Criterion[]).map((c) => (c.basis === "standard" ? { ...c, status: "restated" as const } : c)),
};

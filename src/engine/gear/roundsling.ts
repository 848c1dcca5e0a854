/**
 * Roundslings. The first entries of Table 17 were read in the Washington text; what it says of fittings was cut off and is
 * cited as ASME B30.9 restates it. No list that was read names stitching: the sister list on web slings stands for it.
 */
import type { GearKind } from "./kind";
import { examinedOnSight, removedOnSight, seen, seenIfFitted } from "./shared/records";

const TABLE_17 = ["WAC 33825", ""] as const;
const AS_WEB = ["WAC 55820", "applied to roundslings"] as const;
export const roundsling: GearKind = {
  id: "roundsling",
  plural: "roundslings",
  names: ["roundsling", "rnd sling", "round sling", "polyester round sling", "synthetic round sling"],
  parts: { cover: "moderate", core: "high", body: "moderate", fitting: "moderate" },
  partNames: { jacket: "cover", "end fitting": "fitting" },
  checks: [
    seen("cuts or tears", "cover", "cuts", true),
    seen("core yarns exposed or broken", "core", "coreYarns", false),
    seen("stitching", "cover", "stitching", true),
    seen("heat damage", "cover", "heat", true),
    seen("chemical damage", "cover", "chemical", true),
    seenIfFitted("fittings", "fitting", "endFittings", true),
    seen("identification tag", "cover", "tag", true),
    seen("field change", "cover", "fieldChange", false),
    seen("knots", "cover", "knots", false),
    seen("stiff or brittle areas", "cover", "brittle", false),
  ],
  criteria: [
    // Table 17 takes out what exposes the core; any other cut of the cover is looked at.
    ...examinedOnSight("roundsling", "cuts or tears", { practice: ["practice", "(a cut that does not show the core)"] }),
    ...removedOnSight("roundsling", "core yarns exposed or broken", { standard: TABLE_17, practice: ["practice", ""] }),
    ...removedOnSight("roundsling", "stitching", { standard: AS_WEB }).map((c) => ({ ...c, status: "restated" as const })),
    ...removedOnSight("roundsling", "stitching", { practice: ["practice", ""] }),
    ...removedOnSight("roundsling", "heat damage", { standard: TABLE_17, practice: ["practice", ""] }),
    ...removedOnSight("roundsling", "chemical damage", { standard: TABLE_17, practice: ["practice", ""] }),
    ...removedOnSight("roundsling", "fittings", { standard: ["B30.9", "9-6.9.5"], practice: ["practice", ""] }),
    ...removedOnSight("roundsling", "identification tag", { standard: TABLE_17, practice: ["practice", ""] }),
    ...removedOnSight("roundsling", "field change", { practice: ["practice", ""] }),
    ...removedOnSight("roundsling", "knots", { standard: ["B30.9", "9-6.9.5"], practice: ["practice", ""] }),
    ...removedOnSight("roundsling", "stiff or brittle areas", { practice: ["practice", ""] }),
  ],
};

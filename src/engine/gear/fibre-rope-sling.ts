/** Fibre-rope slings, natural and synthetic. */
import type { Criterion } from "../rules/criterion";
import type { GearKind } from "./kind";
import { CHECKED, federalMarkings, from, removedOnSight, seen, seenIfFitted } from "./shared/records";

const TB = ["TB 43-0142", "App. C"] as const;
/** The bulletin's list names neither heat nor chemicals; that of the standard does. */
const LIST = ["B30.9", "removal list of synthetic rope slings"] as const;
/** The federal list as the bulletin restates it. Heat and chemicals are not in it by name: they leave discolouration and rot. */
const federal = (check: string, entry = ""): readonly Criterion[] =>
  removedOnSight("fibre-rope-sling", check, { law: ["CFR 1910.184", `(h)(5)${entry}`] }).map((c) => ({ ...c, status: "restated" }));
const ROT = ", as discolouration or rot";
export const fibreRopeSling: GearKind = {
  id: "fibre rope sling",
  plural: "fibre-rope slings",
  names: [
    "fibre rope sling",
    "fiber rope sling",
    "fibre rope",
    "fiber rope",
    "manila sling",
    "rope strop",
    "synthetic rope sling",
    "nylon rope sling",
    "polypropylene rope sling",
  ],
  parts: { body: "moderate", splice: "moderate", eye: "moderate" },
  partNames: { thimble: "eye", fitting: "eye" },
  checks: [
    seen("abnormal wear", "body", "powder", true),
    seen("cuts or tears", "body", "cuts", true),
    seen("heat damage", "body", "heat", true),
    seen("chemical damage", "body", "chemical", false),
    seenIfFitted("end fittings", "eye", "endFittings", true),
    seen("identification tag", "eye", "tag", true),
    seen("uneven strands", "body", "unevenStrands", false),
    seen("broken strand", "body", "strandBroken", false),
    { kind: "count", name: "broken yarns", part: "body", measured: "yarnsBroken", required: true, under: ["germany"] },
    seen("knots", "body", "knots", false),
  ],
  criteria: [
    ...federal("abnormal wear"),
    ...removedOnSight("fibre-rope-sling", "abnormal wear", { standard: TB }),
    ...federal("cuts or tears"),
    ...removedOnSight("fibre-rope-sling", "cuts or tears", { standard: TB, practice: ["practice", ""] }),
    ...federal("heat damage", ROT),
    ...removedOnSight("fibre-rope-sling", "heat damage", { standard: LIST }),
    ...federal("chemical damage", ROT),
    ...removedOnSight("fibre-rope-sling", "chemical damage", { standard: LIST }),
    ...federal("end fittings"),
    ...removedOnSight("fibre-rope-sling", "end fittings", { standard: TB }),
    ...federalMarkings("fibre-rope-sling"),
    ...removedOnSight("fibre-rope-sling", "identification tag", { standard: ["B30.9", ""] }),
    ...federal("uneven strands"),
    ...removedOnSight("fibre-rope-sling", "uneven strands", { standard: TB }),
    ...removedOnSight("fibre-rope-sling", "broken strand", { germany: ["DGUV 109-006", "5"], practice: ["practice", ""] }),
    {
      id: "fibre-rope-sling.broken-yarns.germany",
      check: "broken yarns",
      basis: "germany",
      limit: { word: "above", count: 10 },
      beyond: "REMOVE",
      source: from("DGUV 109-006", "5 (10 % of the yarns of the worst section)"),
      status: "read",
      checked: CHECKED,
    },
    ...removedOnSight("fibre-rope-sling", "knots", { practice: ["practice", ""] }),
  ],
};

/** Fibre-rope slings, natural and synthetic. */
import { removedOnSight, seen } from "./common";
import type { GearKind } from "./kind";

const H5 = ["CFR 1910.184", "(h)(5)"] as const;
const TB = ["TB 43-0142", "App. C"] as const;

export const fibreRopeSling: GearKind = {
  id: "fibre rope sling",
  plural: "fibre-rope slings",
  names: ["fibre rope sling", "fiber rope sling", "fibre rope", "fiber rope", "manila sling", "manila rope sling", "rope strop", "synthetic rope sling", "nylon rope sling", "polypropylene rope sling"],
  parts: { body: "moderate", splice: "moderate", eye: "moderate" },
  partNames: { thimble: "eye", fitting: "eye" },
  checks: [
    seen("abnormal wear", "body", "powder", true),
    seen("cuts or tears", "body", "cuts", true),
    seen("heat damage", "body", "heat", true),
    seen("chemical damage", "body", "chemical", false),
    seen("end fittings", "eye", "endFittings", true),
    seen("identification tag", "eye", "tag", true),
  ],
  criteria: [
    ...removedOnSight("fibre-rope-sling", "abnormal wear", { law: H5, standard: TB }),
    ...removedOnSight("fibre-rope-sling", "cuts or tears", { law: H5, standard: TB, practice: ["practice", ""] }),
    ...removedOnSight("fibre-rope-sling", "heat damage", { law: H5, standard: TB }),
    ...removedOnSight("fibre-rope-sling", "chemical damage", { law: H5, standard: TB }),
    ...removedOnSight("fibre-rope-sling", "end fittings", { law: H5, standard: TB }),
    ...removedOnSight("fibre-rope-sling", "identification tag", { law: ["CFR 1910.184", "(c)(13)"], standard: ["B30.9", ""] }),
  ],
};

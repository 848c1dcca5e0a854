/** Synthetic web slings. */
import { removedOnSight, seen } from "./common";
import type { GearKind } from "./kind";

const TABLE_25 = ["WAC 55820", ""] as const;

export const webSling: GearKind = {
  id: "web sling",
  plural: "synthetic web slings",
  names: ["web sling", "webbing sling", "synthetic web sling", "synthetic sling", "flat web sling", "flat sling", "nylon sling", "polyester sling", "polyester web sling", "nylon web sling", "synthetic webbing sling", "webbing"],
  parts: { body: "moderate", eye: "moderate", fitting: "moderate" },
  partNames: { stitching: "body", webbing: "body", "end fitting": "fitting" },
  checks: [
    seen("cuts or tears", "body", "cuts", true),
    seen("stitching", "body", "stitching", true),
    seen("heat damage", "body", "heat", true),
    seen("chemical damage", "body", "chemical", false),
    seen("fittings", "fitting", "endFittings", true),
    seen("identification tag", "body", "tag", true),
    seen("field change", "body", "fieldChange", false),
  ],
  criteria: [
    ...removedOnSight("web-sling", "cuts or tears", { law: ["CFR 1910.184", "(i)(9)"], standard: TABLE_25, practice: ["practice", ""] }),
    ...removedOnSight("web-sling", "stitching", { law: ["CFR 1910.184", "(i)(9)"], standard: TABLE_25 }),
    ...removedOnSight("web-sling", "heat damage", { law: ["CFR 1910.184", "(i)(9)"], standard: TABLE_25 }),
    ...removedOnSight("web-sling", "chemical damage", { law: ["CFR 1910.184", "(i)(9)"], standard: TABLE_25 }),
    ...removedOnSight("web-sling", "fittings", { law: ["CFR 1910.184", "(i)(9)"], standard: ["B30.9", "9-5.9.4"] }),
    ...removedOnSight("web-sling", "identification tag", { standard: TABLE_25 }),
    ...removedOnSight("web-sling", "field change", { practice: ["practice", ""] }),
  ],
};

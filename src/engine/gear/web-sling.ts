/** Synthetic web slings. */
import type { Criterion } from "../rules/criterion";
import type { GearKind } from "./kind";
import { removedOnSight, seen, seenIfFitted } from "./shared/records";

const TABLE_25 = ["WAC 55820", ""] as const;
/** The federal list: a letter of interpretation on it was read, not the paragraph itself. */
const federal = (check: string): readonly Criterion[] =>
  removedOnSight("web-sling", check, { law: ["CFR 1910.184", "(i)(9)"] }).map((c) => ({ ...c, status: "restated" }));
export const webSling: GearKind = {
  id: "web sling",
  plural: "synthetic web slings",
  names: ["web sling", "webbing sling", "synthetic sling", "flat sling", "nylon sling", "polyester sling", "webbing"],
  parts: { body: "moderate", eye: "moderate", fitting: "moderate" },
  partNames: { stitching: "body", webbing: "body", "end fitting": "fitting" },
  checks: [
    seen("cuts or tears", "body", "cuts", true),
    seen("stitching", "body", "stitching", true),
    seen("heat damage", "body", "heat", true),
    seen("chemical damage", "body", "chemical", true),
    seenIfFitted("fittings", "fitting", "endFittings", true),
    seen("identification tag", "body", "tag", true),
    seen("field change", "body", "fieldChange", false),
  ],
  criteria: [
    ...federal("cuts or tears"),
    ...removedOnSight("web-sling", "cuts or tears", { standard: TABLE_25, practice: ["practice", ""] }),
    ...federal("stitching"),
    ...removedOnSight("web-sling", "stitching", { standard: TABLE_25 }),
    ...federal("heat damage"),
    ...removedOnSight("web-sling", "heat damage", { standard: TABLE_25 }),
    ...federal("chemical damage"),
    ...removedOnSight("web-sling", "chemical damage", { standard: TABLE_25 }),
    ...federal("fittings"),
    ...removedOnSight("web-sling", "fittings", { standard: ["B30.9", "9-5.9.4"] }),
    ...removedOnSight("web-sling", "identification tag", { standard: TABLE_25 }),
    ...removedOnSight("web-sling", "field change", { practice: ["practice", ""] }),
  ],
};

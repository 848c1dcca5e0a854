/** Synthetic web slings. */
import type { Criterion } from "../rules/criterion";
import type { GearKind } from "./kind";
import { CHECKED, federalMarkings, from, removedOnSight, seen, seenIfFitted } from "./shared/records";

const TABLE_25 = ["WAC 55820", ""] as const;
/** The newer list, as pages restate it. */
const B30 = ["B30.9", "9-5.9.4"] as const;
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
    seen("knots", "body", "knots", false),
    seen("stiff or brittle areas", "body", "brittle", false),
    { kind: "ratio", name: "cut across", part: "body", size: "webWidth", measured: "cutAcross", required: false, under: ["germany"] },
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
    ...removedOnSight("web-sling", "fittings", { standard: B30 }),
    ...federalMarkings("web-sling"),
    ...removedOnSight("web-sling", "identification tag", { standard: TABLE_25 }),
    ...removedOnSight("web-sling", "knots", { standard: B30, practice: ["practice", ""] }),
    ...removedOnSight("web-sling", "stiff or brittle areas", { standard: B30 }),
    {
      id: "web-sling.cut-across.germany",
      check: "cut across",
      basis: "germany",
      limit: { word: "above", share: "0.10" },
      beyond: "REMOVE",
      source: from("DGUV 215-320", "Anhang 8"),
      status: "read",
      checked: CHECKED,
    },
    ...removedOnSight("web-sling", "field change", { practice: ["practice", ""] }),
  ],
};

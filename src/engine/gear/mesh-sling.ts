/** Metal mesh slings. */
import type { Criterion, Limit } from "../rules/criterion";
import type { GearKind } from "./kind";
import { CHECKED, federalMarkings, from, removedOnSight, seen } from "./shared/records";

/** Read in part only; its list stands in the Washington table, which adds broken wires, cracks and corrosion. */
const G9 = ["CFR 1910.184", "(g)(9)"] as const;
const TABLE = ["WAC 33810", ""] as const;
const SETS = [
  ["law", G9, "restated"],
  ["standard", TABLE, "read"],
] as const;
const both = (check: string, limit: Limit): readonly Criterion[] =>
  SETS.map(([basis, source, status]) => ({
    id: `mesh-sling.${check.replaceAll(" ", "-")}.${basis}`,
    check,
    basis,
    limit,
    beyond: "REMOVE",
    source: from(source[0], source[1]),
    status,
    checked: CHECKED,
  }));
const bothOnSight = (check: string): readonly Criterion[] =>
  removedOnSight("mesh-sling", check, { law: G9, standard: TABLE }).map((c) => (c.basis === "law" ? { ...c, status: "restated" } : c));
export const meshSling: GearKind = {
  id: "mesh sling",
  plural: "metal mesh slings",
  names: ["mesh sling", "wire mesh sling", "chain mesh sling"],
  parts: { mesh: "moderate", fitting: "moderate", handle: "moderate", body: "moderate" },
  partNames: { wire: "mesh", spiral: "mesh", "end fitting": "fitting" },
  checks: [
    { kind: "loss", name: "wire abrasion", part: "mesh", original: "wireNew", measured: "wireNow", required: true },
    {
      kind: "loss",
      name: "wire corrosion",
      part: "mesh",
      original: "wireNew",
      measured: "corrodedNow",
      ownOriginal: "corrodedNew",
      required: false,
    },
    { kind: "growth", name: "slot depth", part: "fitting", original: "slotNew", measured: "slotNow", required: false, overload: true },
    { kind: "loss", name: "eye width", part: "fitting", original: "eyeNew", measured: "eyeNow", required: false },
    { kind: "loss", name: "handle section", part: "handle", original: "handleNew", measured: "handleNow", required: false },
    seen("broken welds or wires", "mesh", "meshBroken", true),
    seen("free articulation", "mesh", "turnsFreely", true),
    seen("end fittings", "fitting", "endFittings", true),
    seen("identification tag", "fitting", "tag", true),
    seen("cracks", "fitting", "cracks", false),
    seen("fitting corrosion", "fitting", "corrosion", false),
    seen("deformation", "fitting", "deformed", false, true),
  ],
  criteria: [
    ...both("wire abrasion", { word: "from", share: "0.25" }),
    ...both("wire corrosion", { word: "from", share: "0.15" }),
    ...both("slot depth", { word: "above", share: "0.10" }),
    ...both("eye width", { word: "above", share: "0.10" }),
    // The handle is cut from a flat: its area goes with its thickness.
    ...both("handle section", { word: "from", share: "0.15" }),
    ...removedOnSight("mesh-sling", "broken welds or wires", { law: ["CFR 1910.184", "(g)(9), welds and brazed joints"] }).map((c) => ({
      ...c,
      status: "restated" as const,
    })),
    ...removedOnSight("mesh-sling", "broken welds or wires", { standard: TABLE }),
    ...bothOnSight("free articulation"),
    ...bothOnSight("end fittings"),
    ...federalMarkings("mesh-sling"),
    ...removedOnSight("mesh-sling", "identification tag", { standard: TABLE }),
    ...removedOnSight("mesh-sling", "cracks", { standard: TABLE, practice: ["practice", ""] }),
    ...removedOnSight("mesh-sling", "fitting corrosion", { standard: TABLE }),
    ...bothOnSight("deformation"),
  ],
};

/** Metal mesh slings. */
import { CHECKED, from, removedOnSight, seen } from "./common";
import type { Criterion, GearKind } from "./kind";

const G9 = ["CFR 1910.184", "(g)(9)"] as const;
const TABLE = ["WAC 33810", ""] as const;

const share = (check: string, word: "above" | "from", figure: string): readonly Criterion[] =>
  ([["law", G9], ["standard", TABLE]] as const).map(([basis, source]) => ({
    id: `mesh-sling.${check.replaceAll(" ", "-")}.${basis}`, check, basis, limit: { word, share: figure }, beyond: "REMOVE", source: from(source[0], source[1]), status: "read", checked: CHECKED,
  }));

export const meshSling: GearKind = {
  id: "mesh sling",
  plural: "metal mesh slings",
  names: ["mesh sling", "metal mesh sling", "wire mesh sling", "chain mesh sling", "steel mesh sling"],
  parts: { mesh: "moderate", fitting: "moderate", handle: "moderate", body: "moderate" },
  partNames: { wire: "mesh", spiral: "mesh", "end fitting": "fitting" },
  checks: [
    { kind: "loss", name: "wire abrasion", part: "mesh", original: "wireNew", measured: "wireNow", required: true },
    { kind: "loss", name: "wire corrosion", part: "mesh", original: "wireNew", measured: "corrodedNow", required: false },
    { kind: "growth", name: "slot depth", part: "fitting", original: "slotNew", measured: "slotNow", required: false, overload: true },
    { kind: "loss", name: "eye width", part: "fitting", original: "eyeNew", measured: "eyeNow", required: false },
    { kind: "loss", name: "handle section", part: "handle", original: "handleNew", measured: "handleNow", required: false },
    seen("broken welds or wires", "mesh", "meshBroken", true),
    seen("free articulation", "mesh", "turnsFreely", true),
    seen("end fittings", "fitting", "endFittings", true),
    seen("identification tag", "fitting", "tag", true),
    seen("cracks", "fitting", "cracks", false),
    seen("deformation", "fitting", "deformed", false, true),
  ],
  criteria: [
    ...share("wire abrasion", "from", "0.25"),
    ...share("wire corrosion", "from", "0.15"),
    ...share("slot depth", "above", "0.10"),
    ...share("eye width", "above", "0.10"),
    ...([["law", G9], ["standard", TABLE]] as const).map(([basis, source]): Criterion => ({ id: `mesh-sling.handle-section.${basis}`, check: "handle section", basis, limit: { word: "from", area: "0.15" }, beyond: "REMOVE", source: from(source[0], source[1]), status: "read", checked: CHECKED })),
    ...removedOnSight("mesh-sling", "broken welds or wires", { law: G9, standard: TABLE }),
    ...removedOnSight("mesh-sling", "free articulation", { law: G9, standard: TABLE }),
    ...removedOnSight("mesh-sling", "end fittings", { law: G9, standard: TABLE }),
    ...removedOnSight("mesh-sling", "identification tag", { law: ["CFR 1910.184", "(c)(13)"], standard: TABLE }),
    ...removedOnSight("mesh-sling", "cracks", { law: G9, standard: TABLE, practice: ["practice", ""] }),
    ...removedOnSight("mesh-sling", "deformation", { law: G9, standard: TABLE }),
  ],
};

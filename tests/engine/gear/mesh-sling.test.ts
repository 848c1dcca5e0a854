import { describe, expect, it } from "vitest";
import { good, judged, kindNamed, kindTests, onSight, PRACTICE, type LimitCase } from "../helpers";

/** The federal paragraph was read in part; its list stands in the Washington table. */
const LAW = "29 CFR 1910.184(g)(9), restated";
const TABLE_12 = "WAC 296-155-33810 Table 12";

/** The two texts say the same. */
const both = (check: string, cases: Pick<LimitCase, "inside" | "edge" | "past">): readonly LimitCase[] => [
  { criterion: `mesh-sling.${check}.law`, source: LAW, ...cases },
  { criterion: `mesh-sling.${check}.standard`, source: TABLE_12, ...cases },
];

kindTests(
  "mesh sling",
  [
    // Wire 2 mm as new: a reduction of 25 % is 0.5 mm, so 1.5 mm is out; of 15 % by corrosion 0.3 mm, so 1.7 mm is out.
    ...both("wire-abrasion", {
      inside: [{ wireNow: 1.8 }, "KEEP"],
      edge: [{ wireNow: 1.5 }, "REMOVE"],
      past: [{ wireNow: 1.49 }, "REMOVE"],
    }),
    ...both("wire-corrosion", {
      inside: [{ corrodedNow: 1.9 }, "KEEP"],
      edge: [{ corrodedNow: 1.7 }, "REMOVE"],
      past: [{ corrodedNow: 1.69 }, "REMOVE"],
    }),
    // Slot 30 mm deep: more than 10 % is more than 33 mm. Eye 40 mm wide: less than 36 mm.
    ...both("slot-depth", {
      inside: [{ slotNew: 30, slotNow: 31 }, "KEEP"],
      edge: [{ slotNew: 30, slotNow: 33 }, "WATCH"],
      past: [{ slotNew: 30, slotNow: 33.01 }, "REMOVE"],
    }),
    ...both("eye-width", {
      inside: [{ eyeNew: 40, eyeNow: 39 }, "KEEP"],
      edge: [{ eyeNew: 40, eyeNow: 36 }, "WATCH"],
      past: [{ eyeNew: 40, eyeNow: 35.99 }, "REMOVE"],
    }),
    // The handle is cut from a flat, whose area goes with its thickness: 15 % of 20 mm is 3 mm, so 17 mm is out.
    ...both("handle-section", {
      inside: [{ handleNew: 20, handleNow: 18.5 }, "KEEP"],
      edge: [{ handleNew: 20, handleNow: 17 }, "REMOVE"],
      past: [{ handleNew: 20, handleNow: 16.99 }, "REMOVE"],
    }),
  ],
  [
    ...onSight("mesh-sling", "broken welds or wires", "meshBroken", { law: LAW, standard: TABLE_12 }),
    ...onSight("mesh-sling", "free articulation", "turnsFreely", { law: LAW, standard: TABLE_12 }),
    ...onSight("mesh-sling", "end fittings", "endFittings", { law: LAW, standard: TABLE_12 }),
    ...onSight("mesh-sling", "identification tag", "tag", { law: "29 CFR 1910.184(c)(14)", standard: TABLE_12 }),
    ...onSight("mesh-sling", "cracks", "cracks", { standard: TABLE_12, practice: PRACTICE }),
    ...onSight("mesh-sling", "fitting corrosion", "corrosion", { standard: TABLE_12 }),
    ...onSight("mesh-sling", "deformation", "deformed", { law: LAW, standard: TABLE_12 }),
  ],
);

describe("a mesh sling", () => {
  it("with a handle of 1.00 in worn to 0.92 in has lost 8 % of a flat's area: KEEP (WAC 296-155-33810 Table 12)", () => {
    expect(judged({ ...good("mesh sling"), handleNew: "1.00 in", handleNow: "0.92 in" }).decision).toBe("KEEP");
  });
  // The table as printed: identification; welds and brazed joints; wire; 25 % and 15 %; flexibility; slot; eye; 15 % of the section; out of plane; cracked; spirals; fittings.
  it("is looked at for everything that Table 12 names (WAC 296-155-33810)", () => {
    const named = kindNamed("mesh sling").criteria.filter((c) => c.source.document === "WAC 33810");
    expect(named.map((c) => c.check).sort()).toEqual(
      kindNamed("mesh sling")
        .checks.map((c) => c.name)
        .sort(),
    );
    for (const c of named) expect([c.id, c.status]).toEqual([c.id, "read"]);
  });
  it("has the entries that only Table 12 names under standard alone", () => {
    const law = kindNamed("mesh sling").criteria.filter((c) => c.basis === "law");
    for (const c of law.filter((r) => r.source.clause.startsWith("(g)(9)"))) expect([c.id, c.status]).toEqual([c.id, "restated"]);
    for (const check of ["fitting corrosion", "cracks"]) expect(law.map((c) => c.check)).not.toContain(check);
  });
});

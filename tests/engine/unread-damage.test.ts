/** Readings that no check of the kind reads: never silent. */
import { describe, expect, it } from "vitest";
import { field, FIELD_IDS, type FieldId } from "../../src/engine/columns";
import { choicesOf } from "../../src/engine/pages/about-columns";
import { fieldsOf } from "../../src/engine/gear/columns-of";
import { GEAR } from "../../src/engine/gear/index";
import { outOfUse } from "../../src/engine/decision";
import { good, judged, type CellRecord } from "./helpers";

/** Columns that only show damage, with a reading that shows some. */
const DAMAGE: readonly (readonly [FieldId, CellRecord])[] = [
  ...FIELD_IDS.filter((id) => field(id).type === "fault").map((id) => [id, { [id]: "found" }] as const),
  ...FIELD_IDS.filter((id) => field(id).type === "sound").map((id) => [id, { [id]: "no" }] as const),
  ...(["brokenLay", "brokenStrand", "broken6d", "broken30d", "brokenEnd", "brokenValley", "twist", "bendAngle"] as const).map(
    (id) => [id, { [id]: 7 }] as const,
  ),
  ["nickDepth", { nickDepth: "5 mm" }],
  ["bend", { bend: "12 mm", span: "3000 mm" }],
  ["throatNow", { throatNew: "50 mm", throatNow: "60 mm" }],
  ["sectionNow", { sectionNew: "20 mm", sectionNow: "10 mm" }],
  ["wireNow", { wireNew: "3 mm", wireNow: "1 mm" }],
  ["pinNow", { pinNew: "20 mm", pinNow: "10 mm" }],
];

describe("damage in a column that the kind of gear does not read", () => {
  for (const kind of GEAR)
    it(`keeps no ${kind.id} in service, and the reason names the column`, () => {
      const read = new Set(kind.checks.flatMap((check) => fieldsOf(check)));
      for (const [id, cells] of DAMAGE) {
        if (read.has(id)) continue;
        const verdict = judged({ ...good(kind.id), ...cells });
        expect(outOfUse(verdict.decision), `${id}: ${verdict.decision}`).toBe(true);
        expect(verdict.reason, id).toContain(`"${field(id).heading}"`);
      }
    });
  it("is EXAMINE where it is a fault, NO VERDICT where no may mean that there is none", () => {
    expect(judged({ ...good("web sling"), cracks: "found" }).decision).toBe("EXAMINE");
    expect(judged({ ...good("web sling"), cracks: "found" }).reason).toContain(
      'Cracks: "found" stands in "Cracks", and no check of synthetic web slings reads that column; have it examined by a competent person.',
    );
    expect(judged({ ...good("hook"), stitching: "no" }).decision).toBe("NO VERDICT");
    expect(judged({ ...good("wire rope sling"), brokenValley: 4 }).decision).toBe("EXAMINE");
    expect(judged({ ...good("running rope"), brokenEnd: 0, nickDepth: "5 mm" }).decision).toBe("EXAMINE");
  });
  it("is a word of damage in the place of a size, with or without the other size", () => {
    for (const cells of [
      { sectionNew: "50 mm", sectionNow: "cracked" },
      { sectionNow: "worn out" },
      { throatNow: "bent open" },
      { pinNow: "pin bent" },
      { ropeNow: "crushed" },
    ]) {
      const verdict = judged({ ...good("web sling"), ...cells });
      expect(verdict.decision, JSON.stringify(cells)).toBe("EXAMINE");
      expect(verdict.reason).toContain("and no check of synthetic web slings reads that column; have it examined");
    }
    for (const cells of [{ sectionNow: "50 mm" }, { sectionNow: "n/a" }, { sectionNow: "none" }, { sectionNow: "ok" }])
      expect(judged({ ...good("web sling"), ...cells }).decision, JSON.stringify(cells)).toBe("KEEP");
  });
  it("says nothing where nothing is wrong", () => {
    for (const cells of [
      { cuts: "none" },
      { threads: "yes" },
      { brokenValley: 0 },
      { wireNew: "3 mm", wireNow: "3 mm" },
      { wireNow: "1 mm" },
      { nickDepth: 0 },
      { stitching: "n/a" },
    ]) {
      const verdict = judged({ ...good("hook"), ...cells });
      expect(verdict.decision, JSON.stringify(cells)).toBe("KEEP");
      expect(verdict.reason).not.toContain("reads that column");
    }
  });
  it("overloads the rest of the assembly all the same: a stretched web sling", () => {
    expect(judged({ ...good("web sling"), deformed: "stretched" }).findings.some((f) => f.overload)).toBe(true);
    expect(judged({ gear: "contraption", deformed: "stretched" }).findings.some((f) => f.overload)).toBe(true);
    expect(judged({ gear: "contraption", deformed: "stretched" }).decision).toBe("NO VERDICT");
  });
});

describe("words that a column offers", () => {
  it("are those that the engine knows: clip types", () => {
    expect(choicesOf("clipType")).toEqual(Object.keys(GEAR.find((kind) => kind.id === "clips")?.variants?.names ?? {}));
  });
});

describe("rule sets that say nothing about a kind", () => {
  it("pass nothing of it, however good it is", () => {
    const bases = ["law", "standard", "practice", "strict", "alberta", "queensland", "germany", "ships", "iso"] as const;
    const silent = GEAR.flatMap((kind) =>
      bases
        .filter((basis) => !kind.criteria.some((c) => c.basis === basis || (basis === "strict" && c.basis === "practice")))
        .map((basis) => [kind.id, basis] as const),
    );
    expect(silent.length).toBeGreaterThan(50);
    for (const [kind, basis] of silent) expect(judged(good(kind), basis).decision, `${kind} under ${basis}`).toBe("NO VERDICT");
    expect(judged(good("shackle"), "germany").reason).toContain(
      "No rule set in force (Germany) says anything about a shackle; choose one that does.",
    );
  });
});

describe("a column that the kind reads only under some rule sets, or for some variants", () => {
  it("is read by nobody else: broken wires there are EXAMINE", () => {
    expect(judged({ ...good("running rope"), broken6d: 9, broken30d: 20 }).decision).toBe("EXAMINE");
    expect(judged({ ...good("running rope"), broken6d: "many" }).decision).toBe("NO VERDICT");
    expect(judged({ ...good("running rope"), broken6d: 0, broken30d: 0 }).decision).toBe("KEEP");
    for (const construction of ["cable laid", "braided 8 or more"])
      expect(judged({ ...good("wire rope sling"), construction, brokenStrand: 15 }, "standard").decision, construction).toBe("EXAMINE");
  });
  it("a least number without a published figure is told as not judged", () => {
    expect(judged({ ...good("clips"), clipType: "fist grip", clipTorque: 20 }).reason).toContain(
      'Clip torque "20" was not judged: no published figure for drop forged fist grip was read',
    );
    expect(judged({ ...good("clips"), size: "3/8", clipTorque: 45 }).reason).toContain(
      "Clip torque 45 lb-ft was not judged: size 0.375 in is not in the California clip table",
    );
    expect(judged({ ...good("clips"), size: "3/8", clipTorque: 45 }).decision).toBe("KEEP");
  });
});

describe("columns of other kinds in a mixed log", () => {
  it("refuse no good item for words of absence, zeros without a unit, or a small difference", () => {
    for (const cells of [
      { latch: "none required" },
      { fasteners: "N/R" },
      { fasteners: "not required" },
      { latch: "none" },
      { cracks: "not applicable" },
      { brokenValley: "not applicable" },
      { twist: "not applicable" },
      { nickDepth: 0 },
      { nickDepth: "0" },
      { sectionNew: "50 mm", sectionNow: "49 mm" },
      { sectionNew: "50 mm", sectionNow: "52 mm" },
      { ropeNow: "13 mm", size: "13 mm" },
    ])
      expect(judged({ ...good("web sling"), ...cells }).decision, JSON.stringify(cells)).toBe("KEEP");
    expect(judged({ ...good("web sling"), sectionNew: "50 mm", sectionNow: "44 mm" }).decision).toBe("EXAMINE");
    expect(judged({ ...good("fibre rope sling"), size: "20 mm", ropeNow: "15 mm" }).reason).toContain(
      '"15 mm" stands in "Rope diameter now"',
    );
    expect(judged({ ...good("wire rope sling"), size: "13 mm", ropeNow: "13 mm" }).decision).toBe("KEEP");
  });
});

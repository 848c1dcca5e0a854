import { describe, expect, it } from "vitest";
import { BROKEN_WIRES, GERMAN_COUNTS } from "../../fixtures/broken-wires";
import { hookOnSling } from "./sling-hooks";
import { good, judged, kindTests, onSight, PRACTICE, type LimitCase } from "../helpers";

const F5 = "29 CFR 1910.184(f)(5); WAC 296-24-29425(5)";

/** Cases of every published count: 3 below, one below or on it, on it or one above. */
const counts = BROKEN_WIRES.flatMap((row): readonly LimitCase[] =>
  row.basis.flatMap((basis) => {
    const prefix = (check: string): string => `wire-rope-sling.${check}.${row.construction.replaceAll(" ", "-")}.${basis}`;
    const of = (check: string, cell: "brokenLay" | "brokenStrand", figure: number): LimitCase => ({
      criterion: prefix(check),
      source: row.source,
      // Nothing broken is inside every count.
      inside: [{ construction: row.construction, [cell]: 0 }, "KEEP"],
      // "from" fails on the count itself, "above" passes it with the whole allowance used.
      edge: [{ construction: row.construction, [cell]: figure }, row.word === "from" ? "REMOVE" : "WATCH"],
      past: [{ construction: row.construction, [cell]: figure + 1 }, "REMOVE"],
    });
    return [
      of("broken-wires-in-a-lay", "brokenLay", row.perLay),
      ...(row.oneStrand === null ? [] : [of("broken-wires-in-one-strand", "brokenStrand", row.oneStrand)]),
    ];
  }),
);

/** DGUV Grundsatz 305-002, 14.2.2 Table 5: counts at which the sling comes out. */
const germanCounts = GERMAN_COUNTS.map((row): LimitCase => {
  const clear = { construction: row.construction, broken6d: 0, broken30d: 0 };
  return {
    criterion: `wire-rope-sling.${row.check}.${row.construction.replace(" ", "-")}.germany.${row.norm}`,
    source: row.source,
    inside: [{ ...clear, [row.cell]: 0 }, "KEEP"],
    edge: [{ ...clear, [row.cell]: row.from }, "REMOVE"],
    past: [{ ...clear, [row.cell]: row.from + 1 }, "REMOVE"],
  };
});

kindTests(
  "wire rope sling",
  [
    ...counts,
    {
      criterion: "wire-rope-sling.broken-wires-at-the-end.standard",
      source: "rigging checklist after DOE-STD-1090, restated: more than 1",
      inside: [{ brokenEnd: 0 }, "KEEP"],
      edge: [{ brokenEnd: 1 }, "WATCH"],
      past: [{ brokenEnd: 2 }, "REMOVE"],
    },
    {
      criterion: "wire-rope-sling.broken-wires-at-the-end.queensland",
      source: "Queensland Guide for doggers: a broken wire below a socket, fitting or splice",
      inside: [{ brokenEnd: 0 }, "KEEP"],
      edge: [{ brokenEnd: 1 }, "REMOVE"],
      past: [{ brokenEnd: 2 }, "REMOVE"],
    },
    // Outer wire 1.2 mm as new: 1/3 is 0.4 mm, so 0.8 mm is out.
    ...(["law", "standard"] as const).map(
      (basis) =>
        ({
          criterion: `wire-rope-sling.outer-wire-wear.${basis}`,
          source: "29 CFR 1910.184(f)(5)(ii): one-third of the original diameter",
          inside: [{ wireNew: "1.2 mm", wireNow: "1.1 mm" }, "KEEP"],
          edge: [{ wireNew: "1.2 mm", wireNow: "0.8 mm" }, "REMOVE"],
          past: [{ wireNew: "1.2 mm", wireNow: "0.79 mm" }, "REMOVE"],
        }) as const,
    ),
    ...germanCounts,
    ...hookOnSling("wire-rope-sling", "ASME B30.10-2005 10-1.2.3(b)(2)"),
    {
      criterion: "wire-rope-sling.hook-twist.standard",
      source: "ASME B30.10-2005 10-1.2.3(b)(3): any visibly apparent bend or twist",
      inside: [{ twist: "none" }, "KEEP"],
      edge: [{ twist: 0 }, "KEEP"],
      past: [{ twist: 1 }, "REMOVE"],
    },
    {
      criterion: "wire-rope-sling.hook-twist.practice",
      source: PRACTICE,
      inside: [{ twist: 5 }, "KEEP"],
      edge: [{ twist: 10 }, "WATCH"],
      past: [{ twist: 10.5 }, "REMOVE"],
    },
    // 1/2 in rope: more than 5 % is below 0.475 in.
    {
      criterion: "wire-rope-sling.local-abrasion.standard",
      source: "ASME B30.9 9-2.9.5, restated on two pages: severe local abrasion of more than 5 % of the nominal diameter",
      inside: [{ unit: "in", size: "1/2", ropeNow: 0.49 }, "KEEP"],
      edge: [{ unit: "in", size: "1/2", ropeNow: 0.475 }, "WATCH"],
      past: [{ unit: "in", size: "1/2", ropeNow: 0.4749 }, "REMOVE"],
    },
    // 5 % of 1.5 in is 0.075 in.
    {
      criterion: "wire-rope-sling.hook-throat-opening.standard",
      source: "EM 385-1-1 15.E.07",
      inside: [{ unit: "in", throatNew: 1.5, throatNow: 1.52 }, "KEEP"],
      edge: [{ unit: "in", throatNew: 1.5, throatNow: 1.575 }, "WATCH"],
      past: [{ unit: "in", throatNew: 1.5, throatNow: 1.576 }, "REMOVE"],
    },
    {
      criterion: "wire-rope-sling.hook-throat-opening.strict",
      source: PRACTICE,
      inside: [{ unit: "in", throatNew: 1.5, throatNow: 1.49 }, "KEEP"],
      edge: [{ unit: "in", throatNew: 1.5, throatNow: 1.5 }, "KEEP"],
      past: [{ unit: "in", throatNew: 1.5, throatNow: 1.501 }, "REMOVE"],
    },
  ],
  [
    ...onSight("wire-rope-sling", "kinks or crushing", "kinks", { law: F5, standard: F5 }),
    ...onSight("wire-rope-sling", "end fittings", "endFittings", { law: F5, standard: F5 }),
    ...onSight("wire-rope-sling", "heat damage", "heat", { law: F5, standard: F5 }),
    ...onSight("wire-rope-sling", "corrosion", "corrosion", { law: F5, standard: F5 }),
    ...onSight("wire-rope-sling", "identification tag", "tag", { law: "29 CFR 1910.184(c)(14)", standard: "ASME B30.9" }),
    ...onSight("wire-rope-sling", "cracks", "cracks", { law: F5, standard: F5, practice: PRACTICE }),
    ...onSight("wire-rope-sling", "deformation", "deformed", { law: F5, standard: F5 }),
    ...onSight("wire-rope-sling", "hook latch", "latch", { standard: "ASME B30.10", practice: PRACTICE }),
    ...onSight("wire-rope-sling", "hook lock", "lock", { standard: "ASME B30.10", practice: PRACTICE }),
  ],
);

const sling = good("wire rope sling");

describe("broken wires, one below and on the published count", () => {
  for (const row of BROKEN_WIRES)
    for (const basis of row.basis) {
      const limit = row.word === "from" ? row.perLay : row.perLay + 1;
      it(`${row.construction} under ${basis}: ${String(limit - 1)} in a lay stays, ${String(limit)} is REMOVE (${row.source})`, () => {
        expect(judged({ ...sling, construction: row.construction, brokenLay: limit - 1 }, basis).decision).toMatch(/^(KEEP|WATCH)$/);
        expect(judged({ ...sling, construction: row.construction, brokenLay: limit }, basis).decision).toBe("REMOVE");
      });
      if (row.oneStrand === null) continue;
      const strand = row.word === "from" ? row.oneStrand : row.oneStrand + 1;
      it(`${row.construction} under ${basis}: ${String(strand - 1)} in one strand stays, ${String(strand)} is REMOVE (${row.source})`, () => {
        expect(judged({ ...sling, construction: row.construction, brokenStrand: strand - 1 }, basis).decision).toMatch(/^(KEEP|WATCH)$/);
        expect(judged({ ...sling, construction: row.construction, brokenStrand: strand }, basis).decision).toBe("REMOVE");
      });
    }
});

describe("the construction of a wire rope sling", () => {
  it("cable laid and braided slings need no count of one strand", () => {
    for (const construction of ["cable laid", "braided under 8", "braided 8 or more", "Braided 8 parts", "BRAIDED-UNDER-8"])
      expect(judged({ ...sling, construction, brokenStrand: null }).decision, construction).toBe("KEEP");
  });
  it("that is not recorded counts as strand laid, and the reason says so", () => {
    const verdict = judged({ ...sling, construction: "" });
    expect(verdict.decision).toBe("KEEP");
    expect(verdict.reason).toContain("judged as strand laid");
    expect(judged({ ...sling, construction: "", brokenLay: 10 }).decision).toBe("REMOVE");
  });
  it("in makers' notation is strand laid, with its counts, and the reason says how it was read", () => {
    for (const construction of ["6x25FW", "6x36WS+IWRC", "6x36WS", "6x19S-IWRC", "6 x 37 FC", "6x19 IWRC EIPS"]) {
      const verdict = judged({ ...sling, construction });
      expect(verdict.decision, construction).toBe("KEEP");
      expect(verdict.reason).toContain(`Construction "${construction}" is read as strand laid, which has the lowest counts for slings.`);
      expect(judged({ ...sling, construction, brokenLay: 10 }).decision, construction).toBe("REMOVE");
      expect(judged({ ...sling, construction, brokenStrand: 5, brokenLay: 5 }).decision, construction).toBe("REMOVE");
      expect(judged({ ...sling, construction, brokenStrand: null }).decision, construction).toBe("NO VERDICT");
    }
    expect(judged({ ...sling, construction: "EIPS IWRC" }).reason).toContain('Construction "EIPS IWRC" names none: judged as strand laid');
    expect(judged({ ...sling, construction: "strand laid" }).reason).not.toContain("is read as");
  });
  it("of rope that resists rotation is not judged as a sling: 1 and 1 is NO VERDICT (ASME B30.9: not to be made into slings)", () => {
    for (const construction of ["rotation resistant", "19x7", "35x7", "8x25 spin resistant", "6x19 rotation resistant"]) {
      const verdict = judged({ ...sling, construction, brokenLay: 1, brokenStrand: 1 });
      expect(verdict.decision, construction).toBe("NO VERDICT");
      expect(verdict.reason).toContain("not judged as a sling");
    }
    expect(judged({ ...sling, gear: "19x7 wire rope sling", construction: "", brokenLay: 1 }).decision).toBe("NO VERDICT");
  });
  it("that is a pendant is judged by its own words: 2 in a lay, 2 in a strand is WATCH (29 CFR 1926.1413(a)(2)(ii)(A)(3))", () => {
    expect(judged({ ...sling, construction: "pendant", brokenLay: 2, brokenStrand: 2 }).decision).toBe("WATCH");
    expect(judged({ ...sling, construction: "pendant", brokenLay: 3, brokenStrand: 2 }).decision).toBe("REMOVE");
  });
  it("that is not known is NO VERDICT and names what to type", () => {
    const verdict = judged({ ...sling, construction: "spiral" });
    expect(verdict.decision).toBe("NO VERDICT");
    expect(verdict.reason).toContain("strand laid");
  });
  it("under practice alone broken wires have no limit: NO VERDICT, but none at all is none", () => {
    expect(judged({ ...sling, brokenLay: 3 }, "practice").decision).toBe("NO VERDICT");
  });
  it("a count that is no whole number is refused", () => {
    expect(judged({ ...sling, brokenLay: 2.5 }).decision).toBe("NO VERDICT");
    expect(judged({ ...sling, brokenLay: "3 or 4" }).decision).toBe("NO VERDICT");
    expect(judged({ ...sling, brokenLay: -1 }).decision).toBe("NO VERDICT");
  });
});

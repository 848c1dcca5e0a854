import { describe, expect, it } from "vitest";
import { CHAIN_NEW_TABLE } from "../../fixtures/chain-new";
import { CHAIN_OLD_TABLE } from "../../fixtures/chain-old";
import { hookOnSling } from "./sling-hooks";
import { good, judged, kindTests, onSight, PRACTICE } from "../helpers";

const TABLE_12 = "WAC 296-155-55800 Table 12";
const OLD = "29 CFR 1910.184(e)(8) Table N-184-1";
const NEW = "ASME B30.9 Table 9-1.9.5-1";

kindTests(
  "chain sling",
  [
    // 3/8 in: old table 19/64 in (0.296875 in), allowance 5/64 in; 0.35 in uses 0.025 in, a third of it.
    {
      criterion: "chain-sling.link-thickness.law",
      source: OLD,
      inside: [{ sectionNow: 0.35 }, "KEEP"],
      edge: [{ sectionNow: "19/64" }, "WATCH"],
      past: [{ sectionNow: 0.2968 }, "REMOVE"],
    },
    // Newer table 0.342 in. A new 3/8 in link is 10 mm, 0.3937 in: allowance 0.0517 in, of which 0.37 in uses less than half.
    {
      criterion: "chain-sling.link-thickness.standard",
      source: NEW,
      inside: [{ sectionNow: 0.37 }, "KEEP"],
      edge: [{ sectionNow: 0.342 }, "WATCH"],
      past: [{ sectionNow: 0.3419 }, "REMOVE"],
    },
    // A new 3/8 in link is 10 mm thick; 10 % of it leaves 9 mm.
    {
      criterion: "chain-sling.link-thickness.practice",
      source: PRACTICE,
      inside: [{ sectionNow: "9.5 mm" }, "KEEP"],
      edge: [{ sectionNow: "9 mm" }, "REMOVE"],
      past: [{ sectionNow: "8.99 mm" }, "REMOVE"],
    },
    {
      criterion: "chain-sling.link-thickness.queensland",
      source: "Queensland Guide for doggers p. 34",
      inside: [{ sectionNow: "9.5 mm" }, "KEEP"],
      edge: [{ sectionNow: "9 mm" }, "WATCH"],
      past: [{ sectionNow: "8.99 mm" }, "REMOVE"],
    },
    // German practice: 10 % of 10 mm; a chain of 1000 mm, or the inside of a link, longer by more than 5 %.
    {
      criterion: "chain-sling.link-thickness.germany",
      source: "German trade-association guidance on chain slings, restated",
      inside: [{ sectionNow: "9.5 mm" }, "KEEP"],
      edge: [{ sectionNow: "9 mm" }, "WATCH"],
      past: [{ sectionNow: "8.99 mm" }, "REMOVE"],
    },
    {
      criterion: "chain-sling.chain-length.germany",
      source: "German trade-association guidance on chain slings, restated",
      inside: [{ chainNew: "1000 mm", chainNow: "1010 mm" }, "KEEP"],
      edge: [{ chainNew: "1000 mm", chainNow: "1050 mm" }, "WATCH"],
      past: [{ chainNew: "1000 mm", chainNow: "1050.1 mm" }, "REMOVE"],
    },
    // Queensland allows 10 %; the table on chain slings takes out stretched links without a figure, so nothing is allowed.
    {
      criterion: "chain-sling.chain-length.queensland",
      source: "Queensland Guide for doggers p. 35",
      inside: [{ chainNew: "1000 mm", chainNow: "1050 mm" }, "KEEP"],
      edge: [{ chainNew: "1000 mm", chainNow: "1100 mm" }, "WATCH"],
      past: [{ chainNew: "1000 mm", chainNow: "1100.1 mm" }, "REMOVE"],
    },
    {
      criterion: "chain-sling.chain-length.standard",
      source: `${TABLE_12}: stretched links`,
      inside: [{ chainNew: "1000 mm", chainNow: "999 mm" }, "KEEP"],
      edge: [{ chainNew: "1000 mm", chainNow: "1000 mm" }, "KEEP"],
      past: [{ chainNew: "1000 mm", chainNow: "1001 mm" }, "REMOVE"],
    },
    ...hookOnSling("chain-sling", TABLE_12),
    // Hook on the sling: an increase of 5 % comes out; 5 % of 1.5 in is 0.075 in.
    {
      criterion: "chain-sling.hook-throat-opening.standard",
      source: TABLE_12,
      inside: [{ throatNew: 1.5, throatNow: 1.52 }, "KEEP"],
      edge: [{ throatNew: 1.5, throatNow: 1.575 }, "REMOVE"],
      past: [{ throatNew: 1.5, throatNow: 1.576 }, "REMOVE"],
    },
    {
      criterion: "chain-sling.hook-throat-opening.strict",
      source: PRACTICE,
      inside: [{ throatNew: 1.5, throatNow: 1.49 }, "KEEP"],
      edge: [{ throatNew: 1.5, throatNow: 1.5 }, "KEEP"],
      past: [{ throatNew: 1.5, throatNow: 1.501 }, "REMOVE"],
    },
    {
      criterion: "chain-sling.hook-twist.standard",
      source: TABLE_12,
      inside: [{ twist: "none" }, "KEEP"],
      edge: [{ twist: 0 }, "KEEP"],
      past: [{ twist: 1 }, "REMOVE"],
    },
    {
      criterion: "chain-sling.hook-twist.practice",
      source: PRACTICE,
      inside: [{ twist: 5 }, "KEEP"],
      edge: [{ twist: 10 }, "WATCH"],
      past: [{ twist: 10.5 }, "REMOVE"],
    },
  ],
  [
    ...onSight("chain-sling", "stretched or bent links", "deformed", {
      law: "29 CFR 1910.184(e)(9)",
      standard: TABLE_12,
      practice: PRACTICE,
    }),
    ...onSight("chain-sling", "cracks", "cracks", { law: "29 CFR 1910.184(e)(9)", standard: TABLE_12, practice: PRACTICE }),
    ...onSight("chain-sling", "identification tag", "tag", { law: "29 CFR 1910.184(c)(14)", standard: TABLE_12 }),
    ...onSight("chain-sling", "hook latch", "latch", { standard: TABLE_12, practice: PRACTICE }),
    ...onSight("chain-sling", "end fittings", "endFittings", { law: "29 CFR 1910.184(e)(9)", standard: TABLE_12 }),
    ...onSight("chain-sling", "hinging of links", "turnsFreely", { standard: TABLE_12 }),
    ...onSight("chain-sling", "heat damage", "heat", { standard: TABLE_12 }),
    ...onSight("chain-sling", "corrosion", "corrosion", { standard: TABLE_12 }),
    ...onSight("chain-sling", "field weld or change", "fieldChange", { practice: PRACTICE }),
    ...onSight("chain-sling", "hook lock", "lock", { standard: TABLE_12, practice: PRACTICE }),
  ],
);

const chain = good("chain sling");
const decimal = (nominal: string): number =>
  nominal
    .split("-")
    .reduce((sum, part) => sum + (part.includes("/") ? Number(part.split("/")[0]) / Number(part.split("/")[1]) : Number(part)), 0);

describe("the old chain table", () => {
  for (const { nominal, least, decimal: figure, status } of CHAIN_OLD_TABLE) {
    if (status === "read") {
      it(`${nominal} in: ${least} in passes, a ten-thousandth less is REMOVE (${OLD})`, () => {
        expect(judged({ ...chain, size: nominal, sectionNow: least }, "law").decision).toBe("WATCH");
        expect(judged({ ...chain, size: nominal, sectionNow: figure }, "law").decision).toBe("WATCH");
        expect(judged({ ...chain, size: nominal, sectionNow: figure - 0.0001 }, "law").decision).toBe("REMOVE");
      });
    } else {
      it(`${nominal} in: its row was not read and decides nothing (${OLD})`, () => {
        const verdict = judged({ ...chain, size: nominal, sectionNow: decimal(nominal) }, "law");
        expect(verdict.decision).toBe("NO VERDICT");
        expect(verdict.reason).toContain("unconfirmed");
      });
    }
  }
  for (const size of ["5/16", "7/32", "9/32", "10 mm"])
    it(`has no entry for ${size}: NO VERDICT, never the neighbour's row (${OLD})`, () => {
      const verdict = judged({ ...chain, size, sectionNow: size === "10 mm" ? "10 mm" : size }, "law");
      expect(verdict.decision).toBe("NO VERDICT");
      expect(verdict.reason).toContain("is not in the old chain table");
    });
});

describe("the newer chain table", () => {
  for (const { nominal, mm, least, status } of CHAIN_NEW_TABLE) {
    if (status === "restated") {
      it(`${nominal} in and ${mm} mm: ${String(least)} in passes, a ten-thousandth less is REMOVE (${NEW})`, () => {
        for (const size of [nominal, `${mm} mm`, `${nominal} in`]) {
          expect(judged({ ...chain, size, sectionNow: least }, "standard").decision, size).toBe("WATCH");
          expect(judged({ ...chain, size, sectionNow: Number((least - 0.0001).toFixed(4)) }, "standard").decision, size).toBe("REMOVE");
        }
      });
    } else {
      it(`${nominal} in: its row was not read, the 10 % of practice decides and the reason says so`, () => {
        const alone = judged({ ...chain, size: nominal, sectionNow: decimal(nominal) }, "standard");
        expect(alone.decision).toBe("NO VERDICT");
        const worn = judged({ ...chain, size: nominal, sectionNow: decimal(nominal) * 0.89 });
        expect(worn.decision).toBe("REMOVE");
        expect(judged({ ...chain, size: nominal, sectionNow: decimal(nominal) }).reason).toContain("unconfirmed and was passed over");
      });
    }
  }
  it("10 % of a new link is stricter than every row of either table, so a row that is passed over lets nothing through", () => {
    for (const { nominal, mm, least } of CHAIN_NEW_TABLE) expect((Number(mm) * 0.9) / 25.4, nominal).toBeGreaterThan(least);
    // 3/4 in: the row is unconfirmed (0.687 in); 20 mm less 10 % is 18 mm, 0.709 in.
    expect(judged({ ...chain, size: "3/4", sectionNow: 0.7 }).decision).toBe("REMOVE");
    expect(judged({ ...chain, size: "3/4", sectionNow: 0.72 }).decision).toBe("WATCH");
    expect(judged({ ...chain, size: "20 mm", sectionNow: "17.99 mm" }).decision).toBe("REMOVE");
  });
  it("a 1/2 in link of 0.420 in passes the old table and fails the newer one (conflict C1)", () => {
    expect(judged({ ...chain, size: "1/2", sectionNow: 0.42 }, "law").decision).not.toBe("REMOVE");
    expect(judged({ ...chain, size: "1/2", sectionNow: 0.42 }, "standard").decision).toBe("REMOVE");
  });
  it("several rule sets together: the strictest decides and the reason names it", () => {
    const verdict = judged({ ...chain, size: "1/2", sectionNow: "11.5 mm" }, "law,standard,practice");
    // A new 1/2 in link is 13 mm: 10 % leaves 11.7 mm; the newer table 0.443 in (11.25 mm); the old one 0.390625 in.
    expect(verdict.decision).toBe("REMOVE");
    expect(verdict.reason).toContain("[Practice:");
    expect(verdict.reason).toContain("11.7 mm");
    expect(verdict.reason).toContain("10 % of a new 13 mm link");
  });
});

describe("size of a chain as the trade writes it", () => {
  for (const size of ["3/8", '3/8"', "3/8 in", "⅜", "0.375", 0.375, "3/8 G80", "3/8 grade 100", "Gr. 80 3/8"])
    it(`${String(size)} is 3/8 in`, () => {
      expect(judged({ ...chain, size, sectionNow: 0.37 }).decision).toBe("KEEP");
    });
  it("a bare fraction is inches in a millimetre row: 3/8 with a link of 9 mm", () => {
    expect(judged({ ...chain, unit: "mm", size: "3/8", sectionNow: 9.3 }).decision).toBe("KEEP");
  });
  it("a size that the spreadsheet turned into a date is named as one", () => {
    const verdict = judged({ ...chain, size: { serial: 46089 } });
    expect(verdict.decision).toBe("NO VERDICT");
    expect(verdict.reason).toContain("this cell is a date");
  });
  it("a link that is far thicker than its size is NO VERDICT", () => {
    expect(judged({ ...chain, sectionNow: 0.5 }).decision).toBe("NO VERDICT");
  });
  it("a nick in a chain has no rule: EXAMINE", () => {
    expect(judged({ ...chain, nickDepth: 0.01 }).decision).toBe("EXAMINE");
  });
});

describe("the cap on the throat opening of a sling's hook", () => {
  // 5 % of 150 mm is 7.5 mm, so the cap of 6 mm decides: 156.0 mm is at it and out (WAC 296-155-55800 Table 12).
  it("is 6 mm for a row in millimetres", () => {
    const sling = { ...good("chain sling"), unit: "mm" };
    expect(
      judged({ ...sling, throatNew: "150 mm", throatNow: "156 mm" }, "standard").findings.find((f) => f.check === "hook throat opening")
        ?.decision,
    ).toBe("REMOVE");
    expect(
      judged({ ...sling, throatNew: "150 mm", throatNow: "156.1 mm" }, "standard").findings.find((f) => f.check === "hook throat opening")
        ?.decision,
    ).toBe("REMOVE");
  });
});

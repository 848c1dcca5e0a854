/** The six decisions: their order, what several become, and which of them take an item out of use. */
import { describe, expect, it } from "vitest";
import { ACTIONS, DECISIONS, isDecision, outOfUse, rank, SYMBOLS, worse, worstOf } from "../../src/engine/decision";

/** Worst first. */
const ORDER = ["REMOVE", "EXAMINE", "NO VERDICT", "DRESS", "WATCH", "KEEP"] as const;

describe("the decisions", () => {
  it("stand in one order, worst first", () => {
    expect(DECISIONS).toEqual(ORDER);
    expect(ORDER.map(rank)).toEqual([0, 1, 2, 3, 4, 5]);
  });
  it("of two the worse counts, whichever stands first", () => {
    ORDER.forEach((a, at) => {
      for (const b of ORDER.slice(at)) {
        expect(worse(a, b)).toBe(a);
        expect(worse(b, a)).toBe(a);
        expect(worstOf([a, b])).toBe(a);
        expect(worstOf([b, a])).toBe(a);
        expect(worstOf([b, a, b])).toBe(a);
      }
    });
  });
  it("nothing at all is no verdict", () => {
    expect(worstOf([])).toBe("NO VERDICT");
  });
  it("the three worst take an item out of use, the others do not", () => {
    expect(ORDER.map((decision) => outOfUse(decision))).toEqual([true, true, true, false, false, false]);
  });
  it("are told from other words as they are written", () => {
    for (const decision of ORDER) expect(isDecision(decision)).toBe(true);
    for (const other of ["remove", "OK", "", " KEEP", "toString", null, undefined, 1, ["KEEP"]]) expect(isDecision(other)).toBe(false);
  });
  it("each has a sign and an action of its own", () => {
    for (const said of [SYMBOLS, ACTIONS]) {
      expect(Object.keys(said).sort()).toEqual([...ORDER].sort());
      expect(new Set(Object.values(said)).size).toBe(6);
    }
    for (const decision of ORDER) {
      expect(SYMBOLS[decision]).toMatch(/^\S$/);
      expect(/^(Take out of service|Out of use)/.test(ACTIONS[decision]), decision).toBe(outOfUse(decision));
    }
  });
});

/** What each sort of limit allows of a size, and the words for where a part comes out, worked by hand. */
import { describe, expect, it } from "vitest";
import { allowanceOf, comesOutAt, comesOutText, type Allowance, type Figure } from "../../src/engine/check/allowance";
import { exact, toNumber, ZERO } from "../../src/engine/numbers/exact";
import { showLength, type Unit } from "../../src/engine/numbers/lengths";
import { type Limit } from "../../src/engine/rules/criterion";

function figure(base: string | null, unit: Unit | null = "in", more: Partial<Figure> = {}): Figure {
  return {
    used: ZERO,
    base: base === null ? null : exact(base),
    comesOut: "smaller",
    unit,
    show: (value) => (unit === null ? value.toString() : showLength(value, unit)),
    measured: { typed: "" },
    original: null,
    blur: ZERO,
    gauge: "",
    ...more,
  };
}
/** Allowance as a fraction, word and rule. */
function allowed(limit: Limit, of: Figure): readonly [string, string, string] {
  const result = allowanceOf(limit, of);
  if ("none" in result) throw new Error(result.none);
  return [result.allowance.toFraction(), result.word, result.rule];
}
const refused = (limit: Limit, of: Figure): { readonly none: string; readonly passOver: boolean } => {
  const result = allowanceOf(limit, of);
  if (!("none" in result)) throw new Error(`${result.rule} was allowed`);
  return result;
};
const THROAT: Limit = { word: "above", share: "0.05", cap: { in: "1/4", mm: "6" } };

describe("a share of a size", () => {
  it("is that share, of what the size is called", () => {
    expect(allowed({ word: "from", share: "0.10" }, figure("40", "mm"))).toEqual(["4", "from", "10 % of as-new"]);
    expect(allowed({ word: "above", share: "1/3" }, figure("0.6"))).toEqual(["1/5", "above", "33.33 % of as-new"]);
    const rope = { size: { size: exact("0.5"), unit: "in" } } as const;
    expect(allowed({ word: "above", share: "0.05" }, figure("0.5", "in", rope))).toEqual(["1/40", "above", "5 % of nominal"]);
    expect(allowed({ word: "above", share: "0.05" }, figure("10", "mm", { ...rope, of: "a new 10 mm link" }))[2]).toBe(
      "5 % of a new 10 mm link",
    );
  });
  it("of nothing is any measurable change", () => {
    expect(allowed({ word: "above", share: "0" }, figure("2"))).toEqual(["0", "above", "any measurable change"]);
    expect(allowed({ word: "above", share: "0" }, figure("2", null))).toEqual(["0", "above", "any measurable change"]);
  });
  it("is capped in the unit of the row: 1/4 in above 5 in, 6 mm above 120 mm", () => {
    expect(allowed(THROAT, figure("2"))).toEqual(["1/10", "above", "5 % of as-new, at most 1/4 in"]);
    expect(allowed(THROAT, figure("5"))[0]).toBe("1/4");
    expect(allowed(THROAT, figure("5.02"))[0]).toBe("1/4");
    expect(allowed(THROAT, figure("4.98"))[0]).toBe("249/1000");
    expect(allowed(THROAT, figure("100", "mm"))).toEqual(["5", "above", "5 % of as-new, at most 6 mm"]);
    expect(allowed(THROAT, figure("150", "mm"))[0]).toBe("6");
  });
  it("is capped in the unit that counts where the readings are in two: 6 mm of 6 in are 30/127 in", () => {
    expect(allowed(THROAT, figure("6", "in", { capUnit: "mm" }))).toEqual(["30/127", "above", "5 % of as-new, at most 6 mm"]);
    expect(allowed(THROAT, figure("150", "mm", { capUnit: "in" }))).toEqual(["127/20", "above", "5 % of as-new, at most 1/4 in"]);
  });
  it("has no cap where no unit is told", () => {
    expect(allowed(THROAT, figure("150", null))).toEqual(["15/2", "above", "5 % of as-new"]);
  });
  it("needs a size", () => {
    for (const limit of [
      { word: "from", share: "0.10" },
      { word: "from", area: "0.10" },
    ] as const)
      expect(() => allowanceOf(limit, figure(null))).toThrow("A share needs an as-new size");
  });
});

describe("a share of the area of a round section", () => {
  it("10 % leaves the root of 0.9 of the diameter: 37.947 of 40 mm", () => {
    const result = allowanceOf({ word: "from", area: "0.10" }, figure("40", "mm")) as Allowance;
    expect(40 - toNumber(result.allowance)).toBeCloseTo(37.947332, 6);
    expect([result.word, result.rule, result.area?.toFraction()]).toEqual(["from", "10 % of the as-new area of a round section", "1/10"]);
  });
});

describe("a length, an angle, a count", () => {
  const EIGHTH: Limit = { word: "above", length: "1/8", unit: "in" };
  it("a length is turned into the unit of the reading", () => {
    expect(allowed(EIGHTH, figure(null, "in"))).toEqual(["1/8", "above", "1/8 in"]);
    expect(allowed(EIGHTH, figure(null, "mm"))).toEqual(["127/40", "above", "1/8 in"]);
    expect(allowed({ word: "from", length: "6", unit: "mm" }, figure("2", "in"))).toEqual(["30/127", "from", "6 mm"]);
  });
  it("a length meets no size without a unit", () => {
    expect(refused(EIGHTH, figure("2", null))).toEqual({
      none: "a limit of 0.125 in meets no sizes without a unit; write their unit, or the limit in %",
      passOver: false,
    });
  });
  it("a house limit that is more than may change is not used, and names its row", () => {
    const house = { word: "from", length: "1", unit: "in", row: "row 3", most: exact("0.5") } as Limit;
    expect(allowed(house, figure("2"))).toEqual(["1", "from", "1 in"]);
    expect(allowed(house, figure(null))).toEqual(["1", "from", "1 in"]);
    expect(refused(house, figure("1.99")).none).toMatch(/^row 3: 1 in is more than 50 % of as-new 1\.99 in; Limit takes the change/);
    expect(refused(house, figure("1.99")).passOver).toBe(false);
    const size = { size: { size: exact("1.5"), unit: "in" } } as const;
    expect(refused(house, figure("1.5", "in", size)).none).toContain("of nominal 1.5 in");
    expect(refused(house, figure("1.5", "in", { ...size, of: "a new 38 mm link" })).none).toContain("of a new 38 mm link 1.5 in");
    expect(refused(house, figure("2", null)).none).toMatch(/^row 3: a limit of 1 in meets no sizes/);
  });
  it("an angle and a count are what they are", () => {
    expect(allowed({ word: "above", degrees: "10" }, figure(null, null))).toEqual(["10", "above", "above 10 degrees"]);
    expect(allowed({ word: "above", degrees: "0" }, figure(null, null))).toEqual(["0", "above", "any visible bend or twist"]);
    expect(allowed({ word: "from", count: 10 }, figure(null, null))).toEqual(["10", "from", "10 or more"]);
    expect(allowed({ word: "above", count: 2 }, figure(null, null))).toEqual(["2", "above", "more than 2"]);
  });
});

describe("a row of a table", () => {
  const sized = (size: string, unit: Unit, base: string): Figure => figure(base, unit, { size: { size: exact(size), unit } });
  it("allows what is above its least: 3/8 in chain is 10 mm new and 0.342 in at least", () => {
    expect(allowed({ word: "below", table: "chain-new" }, sized("3/8", "in", "0.4"))).toEqual([
      "29/500",
      "above",
      "least thickness in the newer chain table",
    ]);
    expect(allowed({ word: "below", table: "chain-old" }, sized("3/8", "in", "3/8"))[0]).toBe("5/64");
    // Half of 5 % over a rope of 1/2 in is 0.5125 in; a new groove is 6 % over it.
    expect(allowed({ word: "below", table: "groove" }, sized("1/2", "in", "0.53"))).toEqual([
      "7/400",
      "above",
      "least groove for the rope",
    ]);
  });
  it("that is not there refuses; one that nobody read is passed over", () => {
    expect(refused({ word: "below", table: "chain-old" }, sized("5/16", "in", "5/16"))).toEqual({
      none: "size 0.3125 in is not in the old chain table; a neighbouring row is never used",
      passOver: false,
    });
    expect(refused({ word: "below", table: "chain-new" }, sized("3/4", "in", "3/4"))).toEqual({
      none: "the row for 0.75 in in the newer chain table is unconfirmed and was passed over",
      passOver: true,
    });
  });
  it("needs a size, its unit and what the allowance counts from", () => {
    const size = { size: { size: exact("3/8"), unit: "in" } } as const;
    for (const bare of [figure("3/8"), figure("3/8", null, size), figure(null, "in", size)])
      expect(() => allowanceOf({ word: "below", table: "chain-new" }, bare)).toThrow("A table limit needs a nominal size");
  });
});

describe("limits that are met elsewhere", () => {
  it("are refused by name", () => {
    expect(refused({ word: "any" }, figure("2"))).toEqual({ none: "the limit is an observation", passOver: false });
    expect(() => allowanceOf({ word: "maker", comesOut: "above" }, figure("2"))).toThrow("A maker's figure");
    expect(() => allowanceOf({ word: "fewer", times: "6" }, figure("2"))).toThrow("A least number");
    expect(() => allowanceOf({ word: "fewer", table: "clips-1918" }, figure("2"))).toThrow("A least number");
    expect(() => allowanceOf({ word: "from", table: "rope category" }, figure("2"))).toThrow("A rope category");
  });
});

describe("where a part comes out", () => {
  const tenth = (word: "above" | "from"): Allowance => ({ allowance: exact("0.2"), word, rule: "" });
  it.each([
    ["larger", "above", "above 2.2 in"],
    ["larger", "from", "at 2.2 in or more"],
    ["smaller", "above", "below 1.8 in"],
    ["smaller", "from", "at 1.8 in or less"],
  ] as const)("%s, %s: %s", (comesOut, word, words) => {
    expect(comesOutText(figure("2", "in", { comesOut }), tenth(word))).toBe(words);
  });
  it("counts from the start where there is one, else from the base, else from nothing", () => {
    const at = (of: Figure): string => comesOutAt(of, tenth("above")).toString();
    expect(at(figure("2", "in", { start: exact("3"), comesOut: "larger" }))).toBe("3.2");
    expect(at(figure("2", "in", { start: exact("3") }))).toBe("2.8");
    expect(at(figure(null, "in", { start: exact("3") }))).toBe("2.8");
    expect(at(figure(null, "in", { comesOut: "larger" }))).toBe("0.2");
  });
});

/** The comparison itself, worked by hand: which side of a limit, how much of it is used, what a gauge leaves open, which pairs do not fit. */
import { describe, expect, it } from "vitest";
import { fitOf, judge, judgeArea, type Fit, type Judged, type Word } from "../../src/engine/check/compare";
import { exact } from "../../src/engine/numbers/exact";

const met = (used: string, allowance: string, word: Word = "above", blur?: string): Judged =>
  blur === undefined ? judge(exact(used), exact(allowance), word) : judge(exact(used), exact(allowance), word, exact(blur));

describe("used against an allowance", () => {
  it.each([
    ["above", "1.9999", false],
    ["above", "2", false],
    ["above", "2.0001", true],
    ["from", "1.9999", false],
    ["from", "2", true],
    ["from", "2.0001", true],
  ] as const)("%s 2: %s is out: %s", (word, used, beyond) => {
    expect(met(used, "2", word)).toMatchObject({ beyond, uncertain: false, settledBy: null });
  });
  it("is past only what is more than the allowance, whatever the word", () => {
    for (const word of ["above", "from"] as const)
      expect(["1.9999", "2", "2.0001"].map((used) => met(used, "2", word).past)).toEqual([false, false, true]);
  });
  it("uses a share: half, all, one and a half; a part that grew uses none", () => {
    expect(["0", "1", "2", "3", "-1"].map((used) => met(used, "2").share)).toEqual([0, 0.5, 1, 1.5, 0]);
  });
  it("where nothing is allowed, nothing used is no share and anything is all of it", () => {
    expect(met("0", "0")).toMatchObject({ beyond: false, share: 0, nearly: false });
    expect(met("0.001", "0")).toMatchObject({ beyond: true, share: Infinity, nearly: false });
    expect(met("-0.001", "0")).toMatchObject({ beyond: false, share: 0, nearly: false });
  });
  it("is nearly used from 80 % on, exactly", () => {
    const used = ["0", "7.9", "7.99", "7.9999999999", "8", "8.0000000001", "8.01", "8.1", "10"];
    expect(used.map((one) => met(one, "10").nearly)).toEqual([false, false, false, false, true, true, true, true, true]);
  });
});

describe("a gauge leaves a reading open while the limit lies inside what it may be off", () => {
  // 2 allowed, 0.1 either way: 1.9 to 2.1 is open by one word or the other.
  it.each([
    ["above", "1.9", false, false],
    ["above", "1.9001", false, true],
    ["above", "2", false, true],
    ["above", "2.1", false, true],
    ["above", "2.1001", true, false],
    ["from", "1.8999", false, false],
    ["from", "1.9", false, true],
    ["from", "2.0999", false, true],
    ["from", "2.1", true, false],
  ] as const)("%s 2, off by 0.1: %s is out for certain %s, open %s", (word, used, beyond, uncertain) => {
    expect(met(used, "2", word, "0.1")).toMatchObject({ beyond, uncertain });
  });
  it("says which finer gauge would settle it; none would on the limit itself", () => {
    expect(met("1.95", "2", "above", "0.1").settledBy?.equals(exact("0.05"))).toBe(true);
    expect(met("2.04", "2", "above", "0.1").settledBy?.equals(exact("0.04"))).toBe(true);
    expect(met("2", "2", "above", "0.1").settledBy).toBeNull();
    expect(met("1", "2", "above", "0.1").settledBy).toBeNull();
  });
});

describe("a limit on the area of a round section", () => {
  const area = (base: string, used: string, word: Word, blur?: string): Judged =>
    judgeArea(exact(base), exact(used), exact("0.19"), word, ...(blur === undefined ? [] : [exact(blur)]));
  it("19 % of the area is 10 % of the diameter, by hand: 10 x 10 less 9 x 9 is 19", () => {
    expect(area("10", "1", "above")).toMatchObject({ beyond: false, uncertain: false, share: 1 });
    expect(area("10", "1", "from")).toMatchObject({ beyond: true, uncertain: false });
    expect(area("10", "1.0001", "above").beyond).toBe(true);
    expect(area("10", "0.9999", "from").beyond).toBe(false);
  });
  it("is open while the gauge could put it on the other side", () => {
    expect(area("10", "0.95", "above", "0.1")).toMatchObject({ beyond: false, uncertain: true, settledBy: null });
    expect(area("10", "1.05", "above", "0.1")).toMatchObject({ beyond: false, uncertain: true });
    expect(area("10", "1.2", "above", "0.1")).toMatchObject({ beyond: true, uncertain: false });
    expect(area("10", "0.8", "above", "0.1")).toMatchObject({ beyond: false, uncertain: false });
  });
  it("more than the whole diameter cannot be lost", () => {
    expect(area("10", "10", "above").beyond).toBe(true);
    expect(area("10", "30", "above").beyond).toBe(true);
  });
});

describe("whether two sizes of one place fit together", () => {
  const table: readonly (readonly [original: string, measured: string, section: Fit, opening: Fit])[] = [
    ["10", "10", "as it is", "as it is"],
    // Up to 2 % the impossible way is the gauge; an opening that closed, a section that grew.
    ["10", "10.2", "noise", "as it is"],
    ["10", "10.2001", "implausible", "as it is"],
    ["10", "9.8", "as it is", "noise"],
    ["10", "9.7999", "as it is", "implausible"],
    // 9.8 to 12 and 98 to 120 times an opening is a slipped point; a section has grown, which is as impossible.
    ["10", "97.9", "implausible", "as it is"],
    ["10", "98", "implausible", "slipped point"],
    ["10", "100", "implausible", "slipped point"],
    ["10", "120", "implausible", "slipped point"],
    ["10", "120.1", "implausible", "as it is"],
    ["10", "979", "implausible", "as it is"],
    ["10", "980", "implausible", "slipped point"],
    ["10", "1200", "implausible", "slipped point"],
    ["10", "1201", "implausible", "as it is"],
    // 25.4 mm and 0.85 to 1.2 in: an inch figure in a column of millimetres.
    ["25.4", "0.8499", "as it is", "implausible"],
    ["25.4", "0.85", "inch in a millimetre column", "inch in a millimetre column"],
    ["25.4", "1", "inch in a millimetre column", "inch in a millimetre column"],
    ["25.4", "1.2", "inch in a millimetre column", "inch in a millimetre column"],
    ["25.4", "1.2001", "as it is", "implausible"],
    // 1 in and 21.59 to 30.48 mm: the other way round.
    ["1", "21.5899", "implausible", "as it is"],
    ["1", "21.59", "swapped units", "swapped units"],
    ["1", "25.4", "swapped units", "swapped units"],
    ["1", "30.48", "swapped units", "swapped units"],
    ["1", "30.4801", "implausible", "as it is"],
    // Almost nothing left is a loss, not a unit.
    ["25.4", "0.1", "as it is", "implausible"],
  ];
  it.each(table)("%s to %s: a section %s, an opening %s", (original, measured, section, opening) => {
    expect(fitOf(exact(original), exact(measured), "larger")).toBe(section);
    expect(fitOf(exact(original), exact(measured), "smaller")).toBe(opening);
  });
});

import { describe, expect, it } from "vitest";
import { exact } from "../../src/engine/numbers/exact";
import { fitOf, judge, type Word } from "../../src/engine/check/compare";
import { throatVerdict, wearVerdict } from "../../src/engine/ask/one-check";
import { good, judged } from "./helpers";

const hook = good("hook");

describe("a figure against its limit, with the gauge's uncertainty", () => {
  const cases: [
    used: string,
    allowance: string,
    word: Word,
    blur: string,
    beyond: boolean,
    uncertain: boolean,
    settledBy: string | null,
  ][] = [
    // Without a gauge nothing is uncertain.
    ["0.1", "0.1", "above", "0", false, false, null],
    ["0.1", "0.1", "from", "0", true, false, null],
    // 0.08 +- 0.01 reaches 0.09: inside. 0.09 +- 0.01 reaches 0.1: "above" passes at the limit, "from" does not.
    ["0.08", "0.1", "above", "0.01", false, false, null],
    ["0.09", "0.1", "above", "0.01", false, false, null],
    ["0.09", "0.1", "from", "0.01", false, true, "0.01"],
    ["0.095", "0.1", "above", "0.01", false, true, "0.005"],
    // On the limit no gauge can settle it.
    ["0.1", "0.1", "above", "0.01", false, true, null],
    ["0.11", "0.1", "above", "0.01", false, true, "0.01"],
    ["0.11", "0.1", "from", "0.01", true, false, null],
    ["0.111", "0.1", "above", "0.01", true, false, null],
  ];
  for (const [used, allowance, word, blur, beyond, uncertain, settledBy] of cases)
    it(`${used} +- ${blur} against ${word} ${allowance}: ${beyond ? "beyond" : uncertain ? "uncertain" : "inside"}`, () => {
      const met = judge(exact(used), exact(allowance), word, exact(blur));
      expect({ beyond: met.beyond, uncertain: met.uncertain }).toEqual({ beyond, uncertain });
      expect(met.settledBy === null ? null : met.settledBy.toString()).toBe(settledBy);
    });
});

describe("80 % of the allowance", () => {
  it("is where WATCH begins: 0.0799, 0.08 and 0.0801 of 0.1", () => {
    expect(judge(exact("0.0799"), exact("0.1"), "above").nearly).toBe(false);
    expect(judge(exact("0.08"), exact("0.1"), "above").nearly).toBe(true);
    expect(judge(exact("0.0801"), exact("0.1"), "above").nearly).toBe(true);
  });
  it("of a hook's throat: 2 in to 2.0799 in is KEEP, to 2.08 in WATCH", () => {
    expect(judged({ ...hook, throatNow: 2.0799 }).decision).toBe("KEEP");
    expect(judged({ ...hook, throatNow: 2.08 }).decision).toBe("WATCH");
  });
});

describe("a tape cannot show what a caliper can", () => {
  it("1/16 in on a throat of 1 in: 5 % is 0.05 in, so no change at all is EXAMINE", () => {
    const verdict = judged({ ...hook, throatNew: 1, throatNow: 1, sectionNew: "30 mm", sectionNow: "30 mm", gauge: "1/16" });
    expect(verdict.decision).toBe("EXAMINE");
    expect(verdict.reason).toContain("measure again with a gauge that reads");
    // What is missing to the limit, 0.05 in, is what the next gauge must beat.
    expect(verdict.reason).toContain("finer than 0.05 in");
  });
  it("0.01 in on a throat of 2 in: 2.089 is KEEP or WATCH, 2.0901 EXAMINE, 2.11 EXAMINE, 2.1101 REMOVE", () => {
    const at = (throatNow: number): string => judged({ ...hook, throatNow, gauge: 0.01 }).decision;
    expect(at(2.05)).toBe("KEEP");
    expect(at(2.09)).toBe("WATCH");
    expect(at(2.0901)).toBe("EXAMINE");
    expect(at(2.1)).toBe("EXAMINE");
    expect(at(2.11)).toBe("EXAMINE");
    expect(at(2.1101)).toBe("REMOVE");
  });
  it("on the limit no gauge can settle it, and the reason says so", () => {
    expect(judged({ ...hook, throatNow: 2.1, gauge: 0.01 }).reason).toContain("no gauge can settle it");
  });
  it("a single reading is known to half the resolution: chain 3/8 in, 10 % leaves 0.3375 in, the newer table 0.342 in", () => {
    const chain = good("chain sling");
    // 0.01 in of resolution is 0.005 in either way.
    expect(judged({ ...chain, sectionNow: 0.347, gauge: 0.01 }, "standard").decision).toBe("WATCH");
    expect(judged({ ...chain, sectionNow: 0.3469, gauge: 0.01 }, "standard").decision).toBe("EXAMINE");
    expect(judged({ ...chain, sectionNow: 0.337, gauge: 0.01 }, "standard").decision).toBe("EXAMINE");
    expect(judged({ ...chain, sectionNow: 0.3369, gauge: 0.01 }, "standard").decision).toBe("REMOVE");
  });
  it("the gauge that the sentence asks for does settle it", () => {
    for (const throatNow of [2.095, 2.0999, 2.1001, 2.109]) {
      const { reason, decision } = judged({ ...hook, throatNow, gauge: 0.01 });
      expect(decision).toBe("EXAMINE");
      const asked = /finer than ([\d.]+) in/.exec(reason)?.[1];
      expect(asked, reason).toBeDefined();
      expect(judged({ ...hook, throatNow, gauge: Number(asked) * 0.999 }).decision, `${String(throatNow)} with ${String(asked)}`).not.toBe(
        "EXAMINE",
      );
    }
  });
  it("without a gauge the readings are taken as they stand, and the reason says so", () => {
    expect(judged(hook).reason).toContain("No gauge resolution is recorded");
    expect(judged({ ...hook, gauge: 0.001 }).reason).not.toContain("No gauge resolution");
  });
});

describe("the gauge's own cell", () => {
  it("takes a fraction, a decimal, a unit of its own", () => {
    for (const gauge of ["1/1000", 0.001, "0.02 mm"]) expect(judged({ ...hook, gauge }).decision, String(gauge)).toBe("KEEP");
  });
  it("that cannot be read is NO VERDICT and named", () => {
    for (const gauge of ["fine", "0.01?", -0.01, { serial: 46089 }, true]) {
      const verdict = judged({ ...hook, gauge });
      expect(verdict.decision, JSON.stringify(gauge)).toBe("NO VERDICT");
      expect(verdict.reason).toContain("Gauge reads to");
    }
  });
  it("blank is not recorded", () => {
    // A 0 here is a blank cell on some hosts; the twist is written out so that it is no 0 beside it.
    for (const gauge of [null, "", 0, "n/a"]) expect(judged({ ...hook, twist: "none", gauge }).decision, String(gauge)).toBe("KEEP");
  });
  it("in a worksheet function is in the reading's unit", () => {
    expect(throatVerdict(2, 2.095, "in", 0.01, "standard")).toBe("EXAMINE");
    expect(throatVerdict(50, 52.4, "mm", 0.5, "standard")).toBe("EXAMINE");
    expect(throatVerdict(50, 52, "mm", 0.02, "standard")).toBe("WATCH");
    // 40 mm, 10 % is 4 mm; 3.9 mm gone and a gauge of 0.5 mm.
    expect(wearVerdict({ gear: "hook", part: "shank", original: 40, measured: 36.1, gauge: 0.5, basis: "standard" })).toBe("EXAMINE");
    expect(wearVerdict({ gear: "hook", part: "shank", original: "40 mm", measured: "36.1 mm", gauge: 0.5, basis: "standard" })).toBe(
      "EXAMINE",
    );
    expect(wearVerdict({ gear: "hook", part: "shank", original: "40 mm", measured: "36.1 mm", gauge: "0.02 mm", basis: "standard" })).toBe(
      "WATCH",
    );
  });
  it("with a unit of its own beside readings that have none is NO VERDICT", () => {
    expect(wearVerdict({ gear: "hook", part: "shank", original: 40, measured: 36.1, gauge: "0.5 mm", basis: "standard" })).toBe(
      "NO VERDICT",
    );
    const link = { ...good("link"), unit: "" };
    expect(judged(link).decision).toBe("KEEP");
    expect(judged({ ...link, gauge: "0.5 mm" }).decision).toBe("NO VERDICT");
  });
});

describe("a pair of readings that does not fit together", () => {
  const cases: [original: string, measured: string, way: "larger" | "smaller", fit: string][] = [
    ["40", "38", "larger", "as it is"],
    ["40", "40", "larger", "as it is"],
    // 2 % of 40 is 0.8.
    ["40", "40.8", "larger", "noise"],
    ["40", "40.81", "larger", "implausible"],
    ["2", "1.96", "smaller", "noise"],
    ["2", "1.959", "smaller", "implausible"],
    // 1.5 in beside 38.1 mm, both taken as millimetres or both as inches.
    ["38.1", "1.5", "larger", "inch in a millimetre column"],
    ["38.1", "1.4", "larger", "inch in a millimetre column"],
    ["1.5", "38.1", "larger", "swapped units"],
    ["50.8", "2.05", "smaller", "inch in a millimetre column"],
  ];
  for (const [original, measured, way, fit] of cases)
    it(`${measured} against ${original} as new (cannot be ${way}): ${fit}`, () => {
      expect(fitOf(exact(original), exact(measured), way)).toBe(fit);
    });

  it("is NO VERDICT with what to look at, and noise is KEEP and told", () => {
    expect(judged({ ...hook, sectionNow: 1.7 }).reason).toContain("check which column is which");
    expect(judged({ ...hook, sectionNow: 1.7 }).decision).toBe("NO VERDICT");
    expect(judged({ ...hook, throatNow: 1.8 }).decision).toBe("NO VERDICT");
    expect(judged({ ...hook, unit: "mm", throatNew: 50.8, throatNow: 50.8, sectionNew: 38.1, sectionNow: 1.5 }).reason).toContain("25.4");
    const noise = judged({ ...hook, sectionNow: 1.52 });
    expect(noise.decision).toBe("KEEP");
    expect(noise.reason).toContain("within 2 % gauge noise");
  });
  it("as-new and measured swapped is NO VERDICT", () => {
    expect(judged({ ...hook, throatNew: 2.1, throatNow: 2 }).decision).toBe("NO VERDICT");
    expect(judged({ ...hook, sectionNew: 1.4, sectionNow: 1.5 }).decision).toBe("NO VERDICT");
  });
});

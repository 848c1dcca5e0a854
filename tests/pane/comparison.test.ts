import { describe, expect, it } from "vitest";
import { compareBases, type Compared } from "../../src/engine/compare";
import type { CellValue, Report } from "../../src/engine/model";
import { reportOn } from "../../src/engine/report";
import { saysNothing } from "../../src/taskpane/card/says-nothing";
import { TODAY } from "./sample";

const log = (headings: readonly string[], row: readonly CellValue[]): Report => reportOn([headings, row], { basis: ["standard", "practice"], asOf: TODAY })!;
const compared = (headings: readonly string[], row: readonly CellValue[]): readonly Compared[] => {
  const { items, headings: read } = log(headings, row);
  return compareBases(items[0]!, read, TODAY);
};
const silent = (sets: readonly Compared[]): string[] => sets.filter((one) => one.silent).map((one) => one.basis);

const SHACKLE = ["Id", "Gear", "Unit", "Section as-new", "Section now", "Pin as-new", "Pin now", "Pin seated", "Bent or stretched", "Cracks", "Identification legible"] as const;

describe("an item under each rule set alone", () => {
  it("sets that hold no limit for a worn part are silent, with no advice to choose another basis; the others stay", () => {
    const sets = compared(SHACKLE, ["S-1", "shackle", "in", 1, 0.97, 1, 0.99, "yes", "none", "none", "yes"]);
    expect(silent(sets)).toEqual(expect.arrayContaining(["law", "germany"]));
    expect(silent(sets)).not.toEqual(expect.arrayContaining(["standard"]));
    for (const one of sets.filter((set) => !set.silent)) expect(one.sentence).not.toMatch(/choose a basis/);
    expect(sets.find((one) => one.basis === "standard")?.verdict.decision).toBe("KEEP");
  });

  it("a missing reading is the item's own want: that set is not silent, and the sentence names the reading", () => {
    const sets = compared(SHACKLE, ["S-1", "shackle", "in", 1, 0.97, 1, null, "yes", "none", "none", "yes"]);
    expect(silent(sets)).toEqual([]);
    expect(sets.find((one) => one.basis === "law")).toMatchObject({ silent: false, sentence: expect.stringMatching(/^Pin wear: nothing is recorded/) });
  });

  it("a fault that takes the part out is never hidden", () => {
    const sets = compared(["Id", "Gear", "Tagged out"], ["S-1", "shackle", "yes"]);
    expect(silent(sets)).toEqual([]);
    for (const one of sets) expect(one.verdict.decision).toBe("REMOVE");
  });
});

describe("the line about silent sets", () => {
  it.each([
    [["law"], "shackle", "Law says nothing, or not enough, about a shackle."],
    [["law", "germany", "ships"], "eyebolt", "Law, Germany and Ships say nothing, or not enough, about an eyebolt."],
    [["law", "ships"], "clips", "Law and Ships say nothing, or not enough, about clips."],
  ] as const)("%j of %s", (sets, kind, line) => {
    expect(saysNothing(sets, kind)).toBe(line);
  });
});

/** House limits: figures of our own invention for an invented yard; what is checked is how they stand to the published ones. */
import { describe, expect, it } from "vitest";
import { removeAt, throatVerdict, wearVerdict } from "../../src/engine/ask";
import { readBasis } from "../../src/engine/bases";
import { HOUSE_HEADINGS, readHouse } from "../../src/engine/house";
import type { CellValue } from "../../src/engine/model";
import { judgeRowOf } from "../../src/engine/rows";

type Line = readonly CellValue[];
const sheet = (lines: readonly Line[], rules?: string): CellValue[][] => [["House limits"], ...(rules === undefined ? [] : [["Rules in force", rules]]), [...HOUSE_HEADINGS], ...lines.map((l) => [...l])];

const THROAT_3 = ["hook", "throat opening", "above", "3 %", "", "Yard order 7", ""] as const;
const headings = [["Id", "Gear", "Throat as-new (in)", "Throat now (in)", "Section as-new (in)", "Section now (in)", "Twist deg", "Latch works", "Cracks", "Identification legible"]];
const hook = (throat: number, section = 1): CellValue[][] => [["H-1", "hook", 2, throat, 1, section, 0, "yes", "none", "yes"]];

describe("house limits tighten", () => {
  it("a throat at 3 %: 2.06 in from 2 in stays, 2.061 in comes out, where standard allows 2.1 in", () => {
    const basis = sheet([THROAT_3]);
    expect(judgeRowOf(headings, hook(2.06), basis).decision).toBe("WATCH");
    const out = judgeRowOf(headings, hook(2.061), basis);
    expect([out.decision, out.deciding?.basis]).toEqual(["REMOVE", "house"]);
    expect(out.reason).toContain("Yard order 7");
    expect(judgeRowOf(headings, hook(2.061), null).decision).toBe("KEEP");
  });
  it("a looser house limit changes nothing", () => {
    const basis = sheet([["hook", "throat opening", "above", "20 %", "", "Yard order 7", ""]]);
    expect(judgeRowOf(headings, hook(2.101), basis).decision).toBe("REMOVE");
  });
  it("\"from\" takes the limit itself out; lengths carry their unit", () => {
    expect(throatVerdict(2, 2.06, "in", null, sheet([["hook", "throat opening", "from", "3 %", "", "Yard order 7", ""]]))).toBe("REMOVE");
    expect(throatVerdict(2, 2.05, "in", null, sheet([["hook", "throat opening", "above", "1.27", "mm", "Yard order 7", ""]]))).toBe("WATCH");
    expect(throatVerdict(2, 2.0501, "in", null, sheet([["hook", "throat opening", "above", "1.27", "mm", "Yard order 7", ""]]))).toBe("REMOVE");
  });
  it("is added to the rule sets that the sheet names", () => {
    expect(readBasis(sheet([THROAT_3], "law"))).toMatchObject({ ok: true, ids: ["law", "house"] });
    expect(throatVerdict(2, 2.2, "in", null, sheet([["shackle", "bow wear", "above", "5 %", "", "Yard order 7", ""]], "law"))).toBe("KEEP");
    expect(readBasis(sheet([THROAT_3], "nonsense"))).toMatchObject({ ok: false });
  });
  it("moves the size at which a part comes out: 2 in and 3 % is 2.06 in", () => {
    expect(removeAt("hook", "throat opening", 2, "in", sheet([THROAT_3]))).toEqual({ ok: true, value: 2.06 });
  });
});

describe("the maker's written figure", () => {
  it("stands instead of the published limits of that check, also where it is wider", () => {
    const maker = sheet([["hook", "section wear", "above", "8 %", "", "Maker's manual, page 12", "yes"]]);
    // Practice takes a saddle out beyond 5 %; the maker's 8 % stands instead: 0.93 in from 1 in is 7 %.
    expect(judgeRowOf(headings, hook(2, 0.93), null).decision).toBe("REMOVE");
    expect(judgeRowOf(headings, hook(2, 0.93), maker).decision).toBe("WATCH");
    expect(judgeRowOf(headings, hook(2, 0.919), maker).decision).toBe("REMOVE");
    // Other checks keep their published limits.
    expect(judgeRowOf(headings, hook(2.2, 0.93), maker).decision).toBe("REMOVE");
  });
});

describe("a row that cannot be read is refused by name, and the item is NO VERDICT", () => {
  const BAD: readonly (readonly [string, Line, RegExp])[] = [
    ["an unknown kind", ["ladder", "wear", "above", "3 %", "", "x", ""], /ladder/],
    ["an unknown check", ["hook", "colour", "above", "3 %", "", "x", ""], /"colour" is no check of a hook/],
    ["a check by eye", ["hook", "latch", "above", "3 %", "", "x", ""], /looked at/],
    ["no word", ["hook", "throat opening", "", "3 %", "", "x", ""], /"Comes out" must say/],
    ["no figure", ["hook", "throat opening", "above", "some", "", "x", ""], /not a figure/],
    ["no unit", ["hook", "throat opening", "above", "3", "", "x", ""], /no unit/],
    ["a percent that could be a share", ["hook", "throat opening", "above", 0.04, "%", "x", ""], /could be 0.04 % or 4 %/],
    ["an absurd percent", ["hook", "throat opening", "above", "80 %", "", "x", ""], /no limit for/],
    ["no source", ["hook", "throat opening", "above", "3 %", "", "", ""], /names no source/],
    ["degrees for a length", ["hook", "throat opening", "above", "3", "degrees", "x", ""], /no unit/],
  ];
  it.each(BAD)("%s", (_, line, why) => {
    const basis = sheet([line]);
    const verdict = judgeRowOf(headings, hook(2), basis);
    expect(verdict.decision).toBe("NO VERDICT");
    expect(verdict.reason).toMatch(why);
    expect(verdict.reason).toMatch(/House limits, row 3/);
    expect(throatVerdict(2, 2, "in", null, basis)).toBe("NO VERDICT");
    expect(removeAt("hook", "throat opening", 2, "in", basis)).toMatchObject({ ok: false });
  });
  it("stops only items of its kind, when the kind can be read", () => {
    const basis = sheet([["hook", "throat opening", "above", "some", "", "x", ""]]);
    expect(wearVerdict({ gear: "shackle", part: "bow", original: 1, measured: 1, basis })).toBe("KEEP");
  });
  it("REMOVE stands all the same", () => {
    expect(judgeRowOf(headings, hook(2.5), sheet([["hook", "throat opening", "above", "some", "", "x", ""]])).decision).toBe("REMOVE");
  });
  it("a sheet without its headings stops everything", () => {
    expect(readHouse([["hook", "3 %"]]).refused).toHaveLength(1);
    expect(throatVerdict(2, 2, "in", null, [["hook", "3 %"], ["shackle", "5 %"]])).toBe("NO VERDICT");
  });
  it("house limits that are named and not handed over leave no verdict", () => {
    expect(judgeRowOf(headings, hook(2), "standard,house")).toMatchObject({ decision: "NO VERDICT", reason: expect.stringContaining("were not handed over") });
    expect(throatVerdict(2, 2, "in", null, "house")).toBe("NO VERDICT");
  });
});

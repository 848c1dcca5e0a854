/** The range of the house limits at every worksheet function that takes rule sets. The limits are an invented yard's own. */
import { describe, expect, it } from "vitest";
import { HOUSE_HEADINGS } from "../../src/engine/house/read-limits";
import { type CellValue } from "../../src/engine/reading/cell-value";
import {
  chainMin,
  chainVerdictOf,
  dressLeftDepth,
  grooveVerdictOf,
  nextDueDate,
  removeAtSize,
  ropeVerdictOf,
  swivelVerdictOf,
  throatVerdictOf,
  twistVerdictOf,
  wearVerdictOf,
  wireVerdictOf,
} from "../../src/functions/functions";

type Line = readonly CellValue[];
/** The sheet as its range hands it over: blank cells all around. */
const house = (...lines: readonly Line[]): CellValue[][] => [
  ["House limits", "", "", "", "", "", ""],
  ["Rules in force", "", "", "", "", "", ""],
  [...HOUSE_HEADINGS],
  ...lines.map((line) => [...line]),
  ["", "", "", "", "", "", ""],
];
const limit = (gear: string, check: string, figure: string, unit = "", word = "above", maker = ""): Line => [
  gear,
  check,
  word,
  figure,
  unit,
  "Yard order 7",
  maker,
];
const bad = (gear: string, check: string): CellValue[][] => house(limit(gear, check, "some"));

/** Runs a function that must end in a cell error; the code and the sentence come back. */
function cellError(run: () => unknown): readonly [code: string, sentence: string] {
  try {
    return ["none", `gave ${String(run())}`];
  } catch (caught) {
    const { code, message } = caught as CustomFunctions.Error & { message: string };
    return [code, message];
  }
}

const VERDICTS: readonly (readonly [string, (basis?: CellValue[][]) => string, string, CellValue[][], string, CellValue[][]])[] = [
  [
    "THROATVERDICT",
    (b) => throatVerdictOf(2, 2.07, "in", null, b),
    "KEEP",
    house(limit("hook", "throat opening", "3 %")),
    "REMOVE",
    bad("hook", "throat opening"),
  ],
  [
    "WEARVERDICT",
    (b) => wearVerdictOf("hook", "saddle", 40, 38.5, null, null, null, b),
    "KEEP",
    house(limit("hook", "section wear", "1", "mm")),
    "REMOVE",
    bad("hook", "section wear"),
  ],
  [
    "TWISTVERDICT",
    (b) => twistVerdictOf(5, b),
    "REMOVE",
    house(limit("hook", "twist", "8", "degrees", "above", "yes")),
    "KEEP",
    bad("hook", "twist"),
  ],
  [
    "SWIVELVERDICT",
    (b) => swivelVerdictOf(0.095, "in", b),
    "KEEP",
    house(limit("swivel", "shoulder clearance", "3/32", "in")),
    "REMOVE",
    bad("swivel", "shoulder clearance"),
  ],
  [
    "CHAINVERDICT",
    (b) => chainVerdictOf("1/2", 0.48, "in", b),
    "KEEP",
    house(limit("chain sling", "link thickness", "3 %")),
    "REMOVE",
    bad("chain sling", "link thickness"),
  ],
  [
    "WIREVERDICT",
    (b) => wireVerdictOf("strand laid", 3, 0, b),
    "KEEP",
    house(limit("wire rope sling", "broken wires in a lay", "3", "wires", "from")),
    "REMOVE",
    bad("wire rope sling", "broken wires in a lay"),
  ],
  [
    "ROPEVERDICT",
    (b) => ropeVerdictOf("1/2", 0.49, "in", b),
    "KEEP",
    house(limit("running rope", "diameter loss", "1 %")),
    "REMOVE",
    bad("running rope", "diameter loss"),
  ],
  [
    "GROOVEVERDICT",
    (b) => grooveVerdictOf("1/2", 0.52, "in", b),
    "KEEP",
    house(limit("sheave", "groove diameter", "1 %")),
    "REMOVE",
    bad("sheave", "groove diameter"),
  ],
];

describe("the range of the house limits", () => {
  it.each(VERDICTS)("%s applies it, and a row that cannot be read leaves no verdict", (_, ask, without, limits, within, refused) => {
    expect(ask()).toBe(without);
    expect(ask(house())).toBe(without);
    expect(ask(limits)).toBe(within);
    expect(ask(refused)).toBe("NO VERDICT");
    expect(ask([["standard,practice,house"]])).toBe("NO VERDICT");
  });

  it("REMOVEAT tells the house's size, and names the row that cannot be read", () => {
    expect(removeAtSize("hook", "throat opening", 2, "in", house(limit("hook", "throat opening", "3 %")))).toBe(2.06);
    expect(removeAtSize("hook", "saddle", 40, "mm", house(limit("hook", "section wear", "8 %", "", "above", "yes")))).toBe(36.8);
    expect(removeAtSize("hook", "saddle", 40, "mm", house(limit("hook", "section wear", "8 %")))).toBe(38);
    expect(removeAtSize("hook", "saddle", 40, "mm", bad("shackle", "bow wear"))).toBe(38);
    expect(cellError(() => removeAtSize("hook", "saddle", 40, "mm", bad("hook", "section wear")))).toEqual([
      "#VALUE!",
      expect.stringMatching(/^House limits, row 4 \(hook, section wear\): the limit "some" is not a figure/),
    ]);
    expect(cellError(() => removeAtSize("hook", "saddle", 40, "mm", [["house"]]))).toEqual([
      "#VALUE!",
      expect.stringContaining("were not handed over"),
    ]);
  });
  it("REMOVEAT is #N/A where the limit is a size, not the change, and never zero or less", () => {
    for (const [check, part, figure] of [
      ["throat opening", "throat opening", "2.1"],
      ["section wear", "saddle", "1.8"],
      ["section wear", "saddle", "10"],
    ] as const) {
      const [code, why] = cellError(() => removeAtSize("hook", part, 2, "in", house(limit("hook", check, figure, "in", "above", "yes"))));
      expect([code, why]).toEqual(["#N/A", expect.stringMatching(/^House limits, row 4 .*the change.*not the size/)]);
    }
  });

  it("DRESSLEFT is #N/A beside a house limit of wear: grinding to the published depth could go past it", () => {
    expect(dressLeftDepth("hook", "saddle", 40, 40, house())).toBe(2);
    expect(
      dressLeftDepth("hook", "saddle", 40, 40, house(limit("hook", "throat opening", "3 %"), limit("shackle", "bow wear", "3 %"))),
    ).toBe(2);
    for (const maker of ["", "yes"])
      expect(
        cellError(() => dressLeftDepth("hook", "saddle", 40, 40, house(limit("hook", "section wear", "3 %", "", "above", maker)))),
      ).toEqual(["#N/A", expect.stringMatching(/^House limits, row 4 \(hook, section wear\).*GEAR\.REMOVEAT/)]);
    expect(cellError(() => dressLeftDepth("hook", "saddle", 40, 40, bad("hook", "twist")))).toEqual([
      "#VALUE!",
      expect.stringContaining("row 4 (hook, twist)"),
    ]);
  });
  it("CHAINMIN is #N/A beside a house limit of the link: the published figure does not stand alone", () => {
    expect(chainMin("1/2", "in", house())).toBe(0.443);
    expect(chainMin("1/2", "in", house(limit("hook", "throat opening", "3 %")))).toBe(0.443);
    for (const maker of ["", "yes"]) {
      const limits = house(limit("chain sling", "link thickness", "3 %", "", "above", maker));
      expect(cellError(() => chainMin("1/2", "in", limits))).toEqual([
        "#N/A",
        expect.stringMatching(/^House limits, row 4 \(chain sling, link thickness\).*GEAR\.REMOVEAT/),
      ]);
      // A new 1/2 in link is 13 mm: 3 % leaves 12.61 mm.
      expect(removeAtSize("chain sling", "link", "1/2", "mm", limits)).toBe(12.61);
    }
    expect(cellError(() => chainMin("1/2", "in", bad("chain sling", "link thickness")))).toEqual([
      "#VALUE!",
      expect.stringContaining("row 4 (chain sling, link thickness)"),
    ]);
    expect(cellError(() => chainMin("1/2", "in", [["standard,house"]]))).toEqual([
      "#VALUE!",
      expect.stringContaining("were not handed over"),
    ]);
  });
  it("NEXTDUE tells the same date, and names the row that cannot be read", () => {
    const last = 46000;
    expect(nextDueDate("hook", "normal", last, house(limit("hook", "throat opening", "3 %")))).toBe(nextDueDate("hook", "normal", last));
    expect(nextDueDate("shackle", "normal", last, bad("hook", "twist"))).toBe(nextDueDate("shackle", "normal", last));
    expect(cellError(() => nextDueDate("hook", "normal", last, bad("hook", "twist")))).toEqual([
      "#VALUE!",
      expect.stringContaining("row 4 (hook, twist)"),
    ]);
    expect(cellError(() => nextDueDate("hook", "normal", last, bad("ladder", "twist")))).toEqual([
      "#VALUE!",
      expect.stringContaining("row 4 (ladder, twist)"),
    ]);
  });
});

/** House limits: figures of our own invention for an invented yard; what is checked is how they stand to the published ones. */
import { describe, expect, it } from "vitest";
import { swivelVerdict } from "../../src/engine/ask/one-check";
import { removeAt } from "../../src/engine/ask/one-figure";
import { throatVerdict, wearVerdict } from "../../src/engine/ask/one-check";
import { houseOn, readBasis } from "../../src/engine/house/rules-in-force";
import { HOUSE_HEADINGS, LIMIT_HEADING } from "../../src/engine/house/read-limits";
import { type CellValue } from "../../src/engine/reading/cell-value";
import { judgeRowOf, judgeRowsOf } from "../../src/engine/ask/one-row";

type Line = readonly CellValue[];
const sheet = (lines: readonly Line[], rules?: string): CellValue[][] => [
  ["House limits"],
  ...(rules === undefined ? [] : [["Rules in force", rules]]),
  [...HOUSE_HEADINGS],
  ...lines.map((l) => [...l]),
];

const THROAT_3 = ["hook", "throat opening", "above", "3 %", "", "Yard order 7", ""] as const;
const headings = [
  [
    "Id",
    "Gear",
    "Throat as-new (in)",
    "Throat now (in)",
    "Section as-new (in)",
    "Section now (in)",
    "Twist deg",
    "Latch works",
    "Cracks",
    "Identification legible",
  ],
];
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
  it('"from" takes the limit itself out; lengths carry their unit', () => {
    expect(throatVerdict(2, 2.06, "in", null, sheet([["hook", "throat opening", "from", "3 %", "", "Yard order 7", ""]]))).toBe("REMOVE");
    expect(throatVerdict(2, 2.05, "in", null, sheet([["hook", "throat opening", "above", "1.27", "mm", "Yard order 7", ""]]))).toBe(
      "WATCH",
    );
    expect(throatVerdict(2, 2.0501, "in", null, sheet([["hook", "throat opening", "above", "1.27", "mm", "Yard order 7", ""]]))).toBe(
      "REMOVE",
    );
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
    ["a limit divided by nothing", ["hook", "throat opening", "above", "1/0", "in", "x", ""], /"1\/0" is not a figure/],
    ["a whole and nothing", ["hook", "section wear", "above", "1 1/00", "in", "x", ""], /not a figure/],
    [
      "a share for a throat that no maker allows",
      ["hook", "throat opening", "above", "20.1 %", "", "x", "yes"],
      /more than 20 %; ask a qualified person/,
    ],
    [
      "a share for wear that no maker allows",
      ["hook", "section wear", "above", "25.1 %", "", "x", "yes"],
      /more than 25 %; ask a qualified person/,
    ],
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
    expect(houseOn([["hook", "3 %"]]).refused).toHaveLength(1);
    expect(
      throatVerdict(2, 2, "in", null, [
        ["hook", "3 %"],
        ["shackle", "5 %"],
      ]),
    ).toBe("NO VERDICT");
  });
  it("house limits that are named and not handed over leave no verdict", () => {
    expect(judgeRowOf(headings, hook(2), "standard,house")).toMatchObject({
      decision: "NO VERDICT",
      reason: expect.stringContaining("were not handed over"),
    });
    expect(throatVerdict(2, 2, "in", null, "house")).toBe("NO VERDICT");
  });
});

describe("a length takes the change, not the size", () => {
  const size = (check: string, figure: string, unit = "in", maker = "yes"): CellValue[][] =>
    sheet([["hook", check, "above", figure, unit, "Maker's manual, page 12", maker]]);
  it.each([
    ["throat opening", "2.1", "in", hook(3.9)],
    ["throat opening", "2.1", "in", hook(2)],
    ["throat opening", "53.3", "mm", hook(2.2)],
    ["section wear", "0.9", "in", hook(2, 0.3)],
    ["section wear", "10", "in", hook(2, 1)],
    ["section wear", "0.26", "in", hook(2, 0.99)],
  ] as const)("%s %s %s is refused by its row, whatever was measured", (check, figure, unit, row) => {
    for (const maker of ["yes", ""]) {
      const verdict = judgeRowOf(headings, row, size(check, figure, unit, maker));
      const said = verdict.findings.filter((f) => f.basis === "house");
      expect(said.map((f) => f.decision)).toEqual(["NO VERDICT"]);
      expect(said[0]).toMatchObject({
        why: "not in table",
        because: expect.stringMatching(
          new RegExp(`^House limits, row 3 \\(hook, ${check}\\): .*the change \\(growth or wear\\), not the size`),
        ),
      });
      expect(["REMOVE", "NO VERDICT"]).toContain(verdict.decision);
      if (maker === "yes") expect(verdict.decision).toBe("NO VERDICT");
      expect(verdict.reason).not.toMatch(/(above|below|at) -|(above|below|at) 0 (in|mm)/);
      expect(verdict.comesOut).not.toMatch(/-| 0 (in|mm)/);
    }
  });
  it("a change up to a quarter of a section, or a fifth of an opening, is met as it stands", () => {
    expect(judgeRowOf(headings, hook(2, 0.76), size("section wear", "0.25")).decision).toBe("WATCH");
    expect(judgeRowOf(headings, hook(2, 0.74), size("section wear", "0.25")).decision).toBe("REMOVE");
    expect(judgeRowOf(headings, hook(2.39), size("throat opening", "0.4")).decision).toBe("WATCH");
    expect(judgeRowOf(headings, hook(2), size("throat opening", "0.41")).decision).toBe("NO VERDICT");
    expect(judgeRowOf(headings, hook(2.39), size("throat opening", "20 %", "")).decision).toBe("WATCH");
  });
  it("is told item by item: the same row holds for the larger hook", () => {
    const rows = [
      ["H-1", "hook", 2, 2, 1, 1, 0, "yes", "none", "yes"],
      ["H-2", "hook", 8, 8, 1, 1, 0, "yes", "none", "yes"],
    ];
    expect(judgeRowsOf(headings, rows, size("throat opening", "1")).map((v) => v.decision)).toEqual(["NO VERDICT", "KEEP"]);
  });
  it("of wear holds for what grinding takes away: 0.04 in of 1 in is more than 2 %", () => {
    const nicked = (depth: number) =>
      judgeRowsOf(
        [
          [
            "Id",
            "Gear",
            "Throat as-new",
            "Throat now",
            "Section as-new",
            "Section now",
            "Unit",
            "Twist deg",
            "Latch works",
            "Cracks",
            "Identification legible",
            "Nick depth",
            "Nick at",
          ],
        ],
        [["H-1", "hook", 2, 2, 1, 1, "in", 0, "yes", "none", "yes", depth, "saddle"]],
        sheet([["hook", "section wear", "above", "2 %", "", "Yard order 7", ""]]),
      )[0]?.decision;
    expect([nicked(0.02), nicked(0.021), nicked(0.04)]).toEqual(["DRESS", "REMOVE", "REMOVE"]);
  });
  it("holds for nominal sizes and without a maker's word as well", () => {
    expect(
      removeAt("chain sling", "link", "1/2", "in", sheet([["chain sling", "link thickness", "above", "0.4", "in", "Yard order 7", ""]])),
    ).toMatchObject({ ok: false, kind: "missing", why: expect.stringMatching(/row 3 .*a new 13 mm link/) });
  });
  it("of a clearance is the clearance itself, and never nothing", () => {
    expect(
      removeAt("swivel", "clearance", null, "in", sheet([["swivel", "shoulder clearance", "above", "1/10", "in", "Yard order 7", ""]])),
    ).toEqual({ ok: true, value: 0.1 });
    expect(
      removeAt("swivel", "clearance", null, "in", sheet([["swivel", "shoulder clearance", "above", "0", "in", "Yard order 7", ""]])),
    ).toMatchObject({ ok: false });
  });
  it("of a swivel's clearance stands in for the 1/8 in of a size that is not known, to 3/16 in at most", () => {
    const at = (clearance: string, limit: string, maker: string): unknown => {
      const found = removeAt(
        "swivel",
        "clearance",
        null,
        "in",
        sheet([["swivel", "shoulder clearance", "above", limit, "in", "Yard order 7", maker]]),
      );
      return [
        found.ok && found.value,
        swivelVerdict(clearance, "in", sheet([["swivel", "shoulder clearance", "above", limit, "in", "Yard order 7", maker]])),
      ];
    };
    for (const maker of ["", "yes"]) {
      expect(at("0.14", "5/32", maker), maker).toEqual([0.15625, "WATCH"]);
      expect(at("0.16", "5/32", maker), maker).toEqual([0.15625, "REMOVE"]);
      expect(at("0.19", "1/4", maker), maker).toEqual([0.1875, "EXAMINE"]);
    }
  });
  it("meets no sizes without a unit: that item is NO VERDICT, and the others are judged", () => {
    const bare = [
      [
        "Id",
        "Gear",
        "Throat as-new (in)",
        "Throat now (in)",
        "Section as-new",
        "Section now",
        "Unit",
        "Twist deg",
        "Latch works",
        "Cracks",
        "Identification legible",
      ],
    ];
    const rows = [
      ["H-1", "hook", 2, 2, 1, 0.99, "", 0, "yes", "none", "yes"],
      ["H-2", "hook", 2, 2, 1, 0.99, "in", 0, "yes", "none", "yes"],
    ];
    const [one, other] = judgeRowsOf(bare, rows, size("section wear", "0.1"));
    expect([one?.decision, other?.decision]).toEqual(["NO VERDICT", "KEEP"]);
    expect(one?.reason).toMatch(/House limits, row 3 \(hook, section wear\): .*unit/);
  });
});

describe("the rule sets that the sheet names", () => {
  const above = (...lines: readonly Line[]): CellValue[][] => [
    ["House limits"],
    ...lines.map((l) => [...l]),
    [...HOUSE_HEADINGS],
    [...THROAT_3],
  ];
  const CAUTION =
    "This supports an inspection by a competent person. It does not replace the maker's instructions, local codes or licensed practice.";
  it.each([
    [["Rules in force:", "strict"]],
    [["RULES  IN FORCE", " Strict "]],
    [["Rules in force : strict"]],
    [["Rules in force:strict", ""]],
    [["", "Rules in force", "", "strict"]],
    [["rules\u00a0in force:", "strict,strict"]],
  ] as const)("%j", (line) => {
    expect(readBasis(above(line))).toMatchObject({ ok: true, ids: ["strict", "house"], house: { refused: [] } });
  });
  it("may stand in several cells, and a blank is the default", () => {
    expect(readBasis(above(["Rules in force", "law", "strict"]))).toMatchObject({ ok: true, ids: ["law", "strict", "house"] });
    for (const line of [["Rules in force"], ["Rules in force:", ""], ["Rules in force", 0]])
      expect(readBasis(above(line))).toMatchObject({ ok: true, ids: ["standard", "practice", "house"], house: { refused: [] } });
  });
  it.each([
    [["Rule sets: strict"]],
    [["Rule sets", "strict"]],
    [["Rules:", "strict"]],
    [["Basis", "law"]],
    [["In force", "strict"]],
    [["Rules in force strict"]],
    [["Rules in force - strict"]],
    [["Rules in force = strict"]],
    [["Strict rules"]],
    [["Judged by", "strict"]],
    [["Use: law, practice"]],
    [["Ruleset", "strict"]],
    [["Rules-in-force", "strict"]],
    [["strict"]],
    [["Rule sets", "strict and more"]],
    [["House limits", "Rules in force", "strict"]],
    [["Yard 7", "Rule sets: strict"]],
    [["From May on everything on this sheet is judged by", "strict"]],
    [["For all that stands on this sheet the following rule sets apply:", "strict"]],
  ] as const)("%j looks like rule sets and is not understood, so nothing is judged", (line) => {
    const verdict = judgeRowOf(headings, hook(2), above(line));
    expect(verdict.decision).toBe("NO VERDICT");
    expect(verdict.reason).toMatch(/House limits, row 2: .*Rules in force/);
    expect(houseOn(above(line)).refused).toEqual([{ kind: null, sentence: expect.any(String) }]);
    expect(wearVerdict({ gear: "shackle", part: "bow", original: 1, measured: 1, basis: above(line) })).toBe("NO VERDICT");
  });
  it("that are unknown refuse everything, by name, in the pane as in the cells", () => {
    for (const line of [
      ["Rules in force", "nonsense"],
      ["Rules in force: strict, as agreed in May"],
      ["Rules in force", "strict", "see order 7"],
    ]) {
      expect(houseOn(above(line)).refused, line.join()).toEqual([
        { kind: null, sentence: expect.stringMatching(/^House limits, row 2: there is no basis "/) },
      ]);
      expect(judgeRowOf(headings, hook(2), above(line))).toMatchObject({
        decision: "NO VERDICT",
        reason: expect.stringMatching(/^House limits, row 2: /),
      });
    }
  });
  it("stand in one line only", () => {
    const twice = above(["Rules in force", "law"], ["Rules in force:", "strict"]);
    expect(houseOn(twice).refused).toMatchObject([
      { kind: null, sentence: expect.stringContaining("row 2: Rules in force stands in more than one line") },
      { kind: null, sentence: expect.stringContaining("row 3") },
    ]);
    expect(throatVerdict(2, 2, "in", null, twice)).toBe("NO VERDICT");
  });
  it.each([
    [[CAUTION]],
    [["Yard in Alberta"]],
    [["House rules"]],
    [["Site: Alberta"]],
    [["Site", "Alberta"]],
    [["One limit in a row. It only tightens, since the strictest rule decides."]],
    [["Approved", 46000]],
    [["In force from", "1 March 2026"]],
    [["Maker's figure yes: the maker's written figure stands instead of the published limits for that check; Source must name it."]],
  ] as const)("%j is a title or a note", (line) => {
    expect(houseOn(above(line)).refused).toEqual([]);
  });
});

describe("the heading of the limit", () => {
  it("says what it takes; older sheets are read as well, and no other wording is guessed at", () => {
    const headed = (heading: string): CellValue[][] => [
      ["House limits"],
      HOUSE_HEADINGS.map((h) => (h === "Limit" ? heading : h)),
      [...THROAT_3],
    ];
    for (const heading of [LIMIT_HEADING, LIMIT_HEADING.toUpperCase(), "Limit"])
      expect(throatVerdict(2, 2.061, "in", null, headed(heading)), heading).toBe("REMOVE");
    expect(throatVerdict(2, 2, "in", null, headed("Limit (size)"))).toBe("NO VERDICT");
  });
});

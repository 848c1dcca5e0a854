/** A plain old log is helped: what it leaves open is asked once, and its gear is found by what stands in it. */
import { describe, expect, it } from "vitest";
import { type CellValue } from "../../src/engine/reading/cell-value";
import { reportOn } from "../../src/engine/report/report";
import { DEFAULT_BASIS } from "../../src/engine/rules/rule-sets";

const request = { basis: DEFAULT_BASIS, asOf: 46351 };
const decisions = (grid: CellValue[][], more: object = {}) =>
  reportOn(grid, { ...request, ...more })?.items.map((item) => item.verdict.decision);

/** A hook's throat has a limit that follows the unit: 5 %, at most 1/4 in or 6 mm. */
const BARE: CellValue[][] = [
  ["No.", "Type", "Throat new", "Throat now", "Saddle new", "Saddle now", "Twist", "Cracks", "Latch", "Tag", "Zustand"],
  ["H1", "hook", 50, 50.5, 30, 30, "0", "none", "yes", "yes", "gut"],
  ["H2", "hook", 50, 54, 30, 30, "0", "none", "yes", "yes", ""],
  ["H3", "hook", "50 mm", "50 mm", "30 mm", "30 mm", "0", "none", "yes", "yes", "gut"],
];

describe("a log without units", () => {
  it("asks one question for all its bare sizes, with samples", () => {
    const unit = reportOn(BARE, request)?.questions?.unit;
    expect(unit?.items).toBe(2);
    expect(unit?.samples).toContainEqual({ heading: "Throat now", text: "50.5" });
  });
  it("is judged by the answer; a size with a unit of its own stays what it is", () => {
    const answered = { unit: "mm", choices: { zustand: null } } as const;
    expect(decisions(BARE, { choices: { zustand: null } })).toEqual(["NO VERDICT", "NO VERDICT", "KEEP"]);
    // 54 mm is 8 % above 50 mm.
    expect(decisions(BARE, answered)).toEqual(["KEEP", "REMOVE", "KEEP"]);
    expect(reportOn(BARE, { ...request, ...answered })?.questions).toEqual({ columns: [], unit: null });
  });
  it("has the answer in each row, as if it had been typed there: the register takes it from the cells", () => {
    expect(reportOn(BARE, { ...request, unit: "mm" })?.items.map((item) => item.cells.get("unit"))).toEqual(["mm", "mm", "mm"]);
  });
  it("a row that names a unit keeps it", () => {
    const grid = [
      [...(BARE[0] ?? []).slice(0, 10), "Unit"],
      [...(BARE[1] ?? []).slice(0, 10), "in"],
    ];
    expect(reportOn(grid, { ...request, unit: "mm" })?.items[0]?.cells.get("unit")).toBe("in");
  });
});

describe("a column that is not understood", () => {
  it("is one question, with what stands there and how many items wait for it", () => {
    expect(reportOn(BARE, request)?.questions?.columns).toEqual([
      { column: 10, heading: "Zustand", proposal: null, samples: ["gut"], items: 2 },
    ]);
  });
});

describe("the gear column of a log that calls it otherwise", () => {
  const rows: CellValue[][] = [
    ["A1", "bow shackle", 20, 20, 22, 22, "yes", "none", "no", "yes"],
    ["A2", "dee shackle", 20, 20, 22, 22, "yes", "none", "no", "yes"],
    ["A3", "unknown thing", 20, 20, 22, 22, "yes", "none", "no", "yes"],
  ];
  const head = (gear: string): CellValue[] => [
    "No.",
    gear,
    "Bow new (mm)",
    "Bow now (mm)",
    "Pin new (mm)",
    "Pin now (mm)",
    "Pin seated",
    "Cracks",
    "Bent",
    "Marking",
  ];
  it("is found by the kinds of gear that stand in it", () => {
    for (const heading of ["What", "Article", "Gegenstand", "Bezeichnung"])
      expect(decisions([head(heading), ...rows]), heading).toEqual(["KEEP", "KEEP", "NO VERDICT"]);
  });
  it("is so where another heading says type and no kind stands under it", () => {
    const typed = rows.map((row) => [...row, "T-3"]);
    expect(decisions([[...head("What"), "Type"], ...typed])?.slice(0, 2)).toEqual(["KEEP", "KEEP"]);
  });
  it("is none where the kinds are few", () => {
    expect(reportOn([head("What"), ...rows.map((row) => [row[0], "x", ...row.slice(2)])], request)?.items.map((i) => i.gear)).toEqual([
      null,
      null,
      null,
    ]);
  });
});

describe("a part under the name that its own gear has for it", () => {
  const rows = (headings: string[], ...cells: CellValue[]) =>
    decisions([
      ["Id", "Gear", ...headings, "Cracks", "Bent", "Tag"],
      ["X", ...cells, "none", "none", "yes"],
    ]);
  it("the section of an eyebolt is its eye", () => {
    const headings = ["Eye section new (mm)", "Section now (mm)", "Threads"];
    expect(rows(headings, "eyebolt", 20, 19.8, "yes")).toEqual(["KEEP"]);
    // 17 of 20 mm is 15 % worn.
    expect(rows(headings, "eyebolt", 20, 17, "yes")).toEqual(["REMOVE"]);
    expect(rows(["Eye section new (mm)", "Eye section now (mm)", "Threads"], "eyebolt", 20, 17, "yes")).toEqual(["REMOVE"]);
  });
});

/**
 * As-new sizes by type. The types are an invented yard's own; what is checked is which row an item takes and what the limits then
 * say: a hook comes out above 5 % of throat growth (ASME B30.10, restated in the fixtures of throat growth).
 */
import { describe, expect, it } from "vitest";
import { field } from "../../src/engine/columns";
import { GEAR } from "../../src/engine/gear/index";
import type { CellValue } from "../../src/engine/reading/cell-value";
import { reportOn } from "../../src/engine/report/report";
import { asNewFields, looksLikeTypes, readTypes } from "../../src/engine/types/gear-types";

type Line = readonly CellValue[];
const AS_OF = 46354;
const HEAD = ["Type", "Gear", "Size", "Throat as-new", "Section as-new", "Pin as-new", "Unit", "Where read"];
const types = (...rows: readonly Line[]): Line[] => [["Gear types"], ["notes"], HEAD, ...rows];
const H5: Line = ["TP-H5", "hook", "", "2", "1 7/8", "", "in", "yard drawing 14"];
const LOG = [
  "Id",
  "Gear",
  "Type",
  "Size",
  "Throat as-new",
  "Throat now",
  "Section as-new",
  "Section now",
  "Twist deg",
  "Latch works",
  "Cracks",
  "Identification legible",
  "Unit",
  "Inspected",
];
const hook = (
  type: string,
  throatNow: string,
  more: { readonly size?: string; readonly throatNew?: string; readonly gear?: string; readonly unit?: string } = {},
): Line => [
  "H-1",
  more.gear ?? "hook",
  type,
  more.size ?? "",
  more.throatNew ?? "",
  throatNow,
  "",
  "1.86 in",
  0,
  "yes",
  "none",
  "yes",
  more.unit ?? "in",
  { serial: 46300 },
];
function judged(sheet: readonly Line[], ...rows: readonly Line[]) {
  const report = reportOn([LOG, ...rows], { basis: ["standard", "practice"], asOf: AS_OF, types: readTypes(sheet) });
  if (report === null) throw new Error("No log.");
  return { report, decisions: report.items.map(({ verdict }) => verdict.decision), item: report.items[0]! };
}

describe("a row of Gear types", () => {
  it("is read with its sizes in their unit, in inches of fractions and in mm of a heading", () => {
    const inMm = [
      ["Type", "Gear", "Throat as-new (mm)", "Where read"],
      ["TP-H6", "hook", 50.8, "drawing 15"],
    ];
    expect([...readTypes(types(H5)).rows[0]!.sizes]).toEqual([
      ["throatNew", "2 in"],
      ["sectionNew", "1 7/8 in"],
    ]);
    expect([...readTypes(inMm).rows[0]!.sizes]).toEqual([["throatNew", "50.8 mm"]]);
    expect(readTypes(types(H5)).rows[0]).toMatchObject({ row: 4, type: "TP-H5", kind: "hook", where: "yard drawing 14" });
  });

  it.each([
    ["no type", ["", "hook", "", "2", "", "", "in", "drawing"], /row 4 \(no type, hook\): it names no type/],
    ["a kind that is not known", ["T", "anvil", "", "2", "", "", "in", "drawing"], /row 4 \(T, anvil\):/],
    ["no unit", ["T", "hook", "", "2", "", "", "", "drawing"], /"2" under "Throat as-new" cannot be used: it has no unit/],
    ["a unit that is none", ["T", "hook", "", "2", "", "", "thou", "drawing"], /"thou" in Unit is neither in nor mm/],
    ["centimetres, which no other column takes", ["T", "hook", "", "2", "", "", "cm", "drawing"], /"cm" in Unit is neither in nor mm/],
    ["a size in doubt", ["T", "hook", "", "2 approx", "", "", "in", "drawing"], /"2 approx" under "Throat as-new" cannot be used/],
    ["a fraction that became a date", ["T", "hook", "", { serial: 46085 }, "", "", "in", "drawing"], /cannot be used: this cell is a date/],
    ["a fraction under mm", ["T", "hook", "", "1 7/8", "", "", "mm", "drawing"], /"1 7\/8" under "Throat as-new" cannot be used/],
    [
      "a size that no check of the kind reads",
      ["T", "shackle", "", "2", "1", "", "in", "drawing"],
      /"Throat as-new" is filled, and no check of a shackle reads it/,
    ],
    ["no word of where it was read", ["T", "hook", "", "2", "", "", "in", ""], /does not say where the sizes were read/],
    ["a source and no size", ["T", "hook", "", "", "", "", "in", "drawing"], /it has no as-new size; fill at least one/],
  ] as const)("with %s is refused by name and lends nothing", (_, row, why) => {
    const read = readTypes(types(row));
    expect(read.rows).toEqual([]);
    expect(read.refused).toHaveLength(1);
    expect(read.refused[0]).toMatch(why);
    expect(read.refused[0]).toMatch(/It lends no sizes until it is put right\.$/);
  });

  it("that stands twice is refused both times; another size of the type is another row", () => {
    const read = readTypes(
      types(H5, ["tp-h5", "hook", "", "2.1", "", "", "in", "drawing"], ["TP-H5", "hook", "3/4 in", "3", "", "", "in", "drawing"]),
    );
    expect(read.refused).toHaveLength(2);
    expect(read.refused[0]).toContain("row 4 (TP-H5, hook): the same type and size stands in row 5 as well");
    expect(read.rows.map(({ row }) => row)).toEqual([6]);
  });

  it("that waits to be filled in is no fault, and blank rows are none", () => {
    expect(readTypes(types(["TP-H5", "hook", "", "", "", "", "", ""], ["", "", "", "", "", "", "", ""]))).toMatchObject({
      rows: [],
      refused: [],
    });
  });

  it("stands under headings of its own: without them nothing is lent, and a log is no such sheet", () => {
    expect(
      readTypes([
        ["Type", "Gear"],
        ["T", "hook"],
      ]).refused[0],
    ).toContain("no heading row with Type, Gear and Where read was found");
    expect(looksLikeTypes(types())).toBe(true);
    expect(looksLikeTypes([LOG])).toBe(false);
  });

  it("has a column for each as-new size that a kind reads, and for no other", () => {
    for (const kind of GEAR) for (const id of asNewFields(kind)) expect(field(id).heading, kind.id).toMatch(/as-new$/);
    expect(asNewFields(GEAR.find(({ id }) => id === "hook")!)).toEqual(expect.arrayContaining(["throatNew", "sectionNew"]));
  });
});

describe("an item that names a type", () => {
  it("takes its sizes: 2.1 in from 2 in stays in, 2.125 in comes out above 2.1 in", () => {
    expect(judged(types(H5), hook("TP-H5", "2.1"), ["H-2", ...hook("TP-H5", "2.125").slice(1)]).decisions).toEqual(["WATCH", "REMOVE"]);
    expect(judged(types(), hook("TP-H5", "2.1")).decisions).toEqual(["NO VERDICT"]);
  });

  it("says whose sizes they are", () => {
    const { item, report } = judged(types(H5), hook("tp-h5", "2.01"));
    expect(item.verdict.reason).toContain("As-new from Gear types, row 4 (TP-H5): yard drawing 14.");
    expect(item.cells.get("asNewFrom")).toBe("Gear types, row 4 (TP-H5): yard drawing 14");
    expect(report.types).toEqual({ served: 1, refused: [], unmet: [] });
  });

  it("keeps a size of its own: its throat of 2.2 in when new carries 2.3 in, and only the section is lent", () => {
    const { item } = judged(types(H5), hook("TP-H5", "2.3", { throatNew: "2.2" }));
    expect(item.verdict.decision).toBe("WATCH");
    expect(item.cells.get("throatNew")).toBe("2.2");
    expect(item.cells.get("asNewFrom")).toBe("Gear types, row 4 (TP-H5), Section as-new only: yard drawing 14");
  });

  it("reads lent inches in a row of mm: 53.34 mm is 2.1 in, 53.35 mm is past it", () => {
    const at = (now: string): unknown => judged(types(H5), hook("TP-H5", now, { unit: "mm" })).decisions[0];
    expect([at("53.34"), at("53.35")]).toEqual(["WATCH", "REMOVE"]);
  });

  it("of several sizes takes the row of its own size, in whatever notation, and no neighbour", () => {
    const rows = types(
      ["TP-H", "hook", "3/4", "2", "1 7/8", "", "in", "page 3"],
      ["TP-H", "hook", "1", "2.5", "1 7/8", "", "in", "page 4"],
    );
    expect(judged(rows, hook("TP-H", "2.125", { size: '3/4"' })).decisions).toEqual(["REMOVE"]);
    expect(judged(rows, hook("TP-H", "2.55", { size: "1.0 in" })).decisions).toEqual(["KEEP"]);
    const other = judged(rows, hook("TP-H", "2.01", { size: "7/8" }));
    expect(other.decisions).toEqual(["NO VERDICT"]);
    expect(other.report.types?.unmet).toEqual(['The type "TP-H" has no row for the size 7/8 in on the sheet Gear types: H-1.']);
    expect(judged(rows, hook("TP-H", "2.01")).report.types?.unmet[0]).toContain(
      "has rows for several sizes on the sheet Gear types, and the item's Size is blank",
    );
  });

  it("that the sheet lacks, refuses or has of another kind is told, and lends nothing", () => {
    const refused: Line = ["TP-H7", "hook", "", "2", "", "", "", "drawing"];
    const told = (type: string, gear = "hook"): unknown => {
      const { decisions, report } = judged(types(H5, refused, ["TP-H8", "hook", "", "", "", "", "", ""]), hook(type, "2.01", { gear }));
      return [decisions[0], report.types?.unmet[0]];
    };
    expect(told("TP-H9")).toEqual(["NO VERDICT", 'The type "TP-H9" has no row on the sheet Gear types: H-1.']);
    expect(told("TP-H7")).toEqual(["NO VERDICT", 'The type "TP-H7" stands in row 5 of Gear types, which cannot be used: H-1.']);
    expect(told("TP-H8")).toEqual(["NO VERDICT", 'The type "TP-H8" stands in row 6 of Gear types, which has no sizes yet: H-1.']);
    expect(told("TP-H5", "shackle")).toEqual(["NO VERDICT", 'The type "TP-H5" is a hook in Gear types, row 4, and a shackle here: H-1.']);
  });

  it("takes no other row in place of one that is refused", () => {
    const twice = types(["TP-H", "hook", "3/4", "2", "", "", "", "page 3"], ["TP-H", "hook", "", "4", "1 7/8", "", "in", "page 4"]);
    expect(judged(twice, hook("TP-H", "2.5", { size: "3/4" })).decisions).toEqual(["NO VERDICT"]);
  });

  it("and a table of new shackles takes the table", () => {
    const row: Line = ["TP-S", "shackle", "", "", "30", "32", "mm", "page 9"];
    const head = ["Id", "Gear", "Type", "As-new from", "Rated load", "Section now", "Pin now", "Cracks", "Unit"];
    const report = reportOn([head, ["S-1", "dee shackle", "TP-S", "dee higher tensile table", "4 t", 21, 24, "none", "mm"]], {
      basis: ["standard"],
      asOf: AS_OF,
      types: readTypes(types(row)),
    });
    expect(report?.items[0]?.cells.get("sectionNew")).toBeUndefined();
    expect(report?.items[0]?.verdict.reason).toContain("dee higher tensile table");
  });
});

describe("the heading Type", () => {
  const gearOf = (head: readonly string[], line: Line): unknown => {
    const item = reportOn([head, line], { basis: ["standard"], asOf: AS_OF })?.items[0];
    return [item?.gear, item?.cells.get("gearType")];
  };
  it("names the gear where no other heading does, and a type where one does", () => {
    expect(gearOf(["Id", "Type", "Throat now (in)"], ["H-1", "hook", 2])).toEqual(["hook", undefined]);
    expect(gearOf(["Id", "Gear", "Type", "Throat now (in)"], ["H-1", "hook", "TP-H5", 2])).toEqual(["hook", "TP-H5"]);
    expect(gearOf(["Id", "Type", "Gear", "Throat now (in)"], ["H-1", "TP-H5", "hook", 2])).toEqual(["hook", "TP-H5"]);
    expect(gearOf(["Id", "Gear", "Model", "Throat now (in)"], ["H-1", "hook", "TP-H5", 2])).toEqual(["hook", "TP-H5"]);
  });
  it("still speaks where somebody writes a word against use under it", () => {
    const report = reportOn(
      [
        ["Id", "Gear", "Type", "Throat now (in)"],
        ["H-1", "hook", "do not use", 2],
      ],
      { basis: ["standard"], asOf: AS_OF },
    );
    expect(report?.items[0]?.verdict.findings.some(({ why, heading }) => why === "record" && heading === "Type")).toBe(true);
  });
});

/** Several columns that say the same, headings that say the opposite: nothing that stands in a row may be silent. */
import { describe, expect, it } from "vitest";
import { DEFAULT_BASIS } from "../../src/engine/rules/rule-sets";
import { polarity } from "../../src/engine/log/polarity";
import { type CellValue } from "../../src/engine/reading/cell-value";
import { type ItemResult } from "../../src/engine/report/model";
import { reportOn } from "../../src/engine/report/report";
import { judgeRowOf } from "../../src/engine/ask/one-row";

const request = { basis: DEFAULT_BASIS, asOf: 46351 };
type Row = Readonly<Record<string, CellValue>>;

const HOOK: Row = {
  ID: "H1",
  Type: "Hook",
  "Throat new (in)": 2,
  "Throat now (in)": 2.01,
  "Saddle new (in)": 1.5,
  "Saddle now (in)": 1.48,
  Twist: "0",
  Cracks: "none",
  Latch: "ok",
  Tag: "ok",
  Inspected: { serial: 46300 },
};
const SHACKLE: Row = {
  ID: "S1",
  Type: "Shackle",
  "Bow new (mm)": 20,
  "Bow now (mm)": 19.5,
  "Pin new (mm)": 22,
  "Pin now (mm)": 21.8,
  "Pin seated": "yes",
  Cracks: "none",
  Bent: "no",
  Marking: "yes",
  Inspected: { serial: 46300 },
};
const ROPE: Row = {
  ID: "W1",
  Type: "Wire rope sling",
  "Broken wires in a lay": "0",
  "Broken wires in one strand": "0",
  Kinks: "no",
  Corrosion: "none",
  "Heat damage": "none",
  "End fittings": "yes",
  Tag: "yes",
  Inspected: { serial: 46300 },
};
const WEB: Row = {
  ID: "N1",
  Type: "Web sling",
  Cuts: "none",
  Stitching: "yes",
  "Heat damage": "none",
  "Chemical damage": "none",
  "End fittings": "yes",
  Tag: "yes",
  Inspected: { serial: 46300 },
};

function judged(row: Row, ...without: string[]): ItemResult {
  const names = Object.keys(row).filter((name) => !without.includes(name));
  const report = reportOn([names, names.map((name) => row[name])], request);
  const item = report?.items[0];
  if (!item) throw new Error("No item was read");
  // The worksheet function says the same of the row, apart from the day.
  expect(judgeRowOf([names], [names.map((name) => row[name])], "").decision).toBe(item.verdict.decision);
  return item;
}
const decision = (row: Row, ...without: string[]): string => judged(row, ...without).verdict.decision;

describe("rows that are in order", () => {
  it("are KEEP", () => {
    for (const row of [HOOK, SHACKLE, ROPE, WEB])
      expect([row["Type"], judged(row).verdict.reason, decision(row)]).toEqual([row["Type"], expect.any(String), "KEEP"]);
  });
});

describe("a second column for the same observation", () => {
  it("counts as much as the first: the worst is told", () => {
    expect(decision({ ...ROPE, Crushing: "YES", Birdcage: "no" })).toBe("REMOVE");
    expect(decision({ ...ROPE, Crushing: "no", Birdcage: "yes" })).toBe("REMOVE");
    expect(decision({ ...WEB, Tears: "YES" })).toBe("REMOVE");
    expect(decision({ ...WEB, Abrasion: "severe" })).toBe("REMOVE");
    expect(decision({ ...ROPE, Pitting: "heavy" })).toBe("REMOVE");
    expect(decision({ ...ROPE, Corrosion: "light surface rust", Pitting: "heavy" })).toBe("REMOVE");
    expect(decision({ ...ROPE, Corrosion: "light surface rust", Pitting: "none" })).toBe("KEEP");
    expect(decision({ ...ROPE, "Arc strikes": "yes" })).toBe("REMOVE");
    expect(decision({ ...SHACKLE, "Cracks MPI": "CRACKED" })).toBe("REMOVE");
    expect(judged({ ...SHACKLE, "Cracks MPI": "CRACKED" }).verdict.reason).toContain('"CRACKED"');
  });
  it("does no harm where it is blank or in order", () => {
    expect(decision({ ...ROPE, Crushing: "no", Birdcage: "" })).toBe("KEEP");
    expect(decision({ ...SHACKLE, "Cracks MPI": "none" })).toBe("KEEP");
  });
  it("stands in where the first is blank, and what cannot be told stays so", () => {
    expect(decision({ ...SHACKLE, Cracks: "", "Cracks MPI": "none" })).toBe("KEEP");
    expect(decision({ ...SHACKLE, "Cracks MPI": "see photo" })).toBe("NO VERDICT");
  });
});

describe("several readings of one place", () => {
  it("count by the worst, whichever column it stands in", () => {
    expect(decision({ ...HOOK, "Throat 2020": 2.08, "Throat 2026": 2.4 })).toBe("REMOVE");
    expect(decision({ "Throat 2016": 2.4, ...HOOK })).toBe("REMOVE");
    expect(judged({ ...HOOK, "Throat 2026": 2.4 }).verdict.reason).toContain("Throat opening 2.4 in");
    expect(decision({ ...SHACKLE, "Bow Y now (mm)": 16 })).toBe("REMOVE");
    expect(decision({ ...SHACKLE, "Pin B now (mm)": 17 })).toBe("REMOVE");
    expect(decision({ ...HOOK, "Throat 2": 2.01 })).toBe("KEEP");
    expect(decision({ ...ROPE, "Broken wires per lay 2": 12 })).toBe("REMOVE");
  });
  it("in another unit are turned into it", () => {
    // 51.2 mm is 2.0157 in, inside; 55 mm is 2.165 in, beyond 2.1 in.
    expect(decision({ ...HOOK, "Throat 2 (mm)": 51.2 })).toBe("KEEP");
    expect(decision({ ...HOOK, "Throat 2 (mm)": 55 })).toBe("REMOVE");
  });
  it("in fractions, their unit in the row, count as well", () => {
    const rows: Row = { ...HOOK, Unit: "in", "Throat new": "2", "Throat now": "2 1/64", "Throat 2026": "2 1/2" };
    expect(decision(rows, "Throat new (in)", "Throat now (in)")).toBe("REMOVE");
    expect(decision({ ...rows, "Throat 2026": "2 1/64" }, "Throat new (in)", "Throat now (in)")).toBe("KEEP");
  });
  it("are in the row's unit where their own heading names none", () => {
    // 2.4 in is 61 mm, where 50.8 mm was new.
    expect(
      decision(
        { ...HOOK, Unit: "in", "Throat new (mm)": 50.8, "Throat now (mm)": 51, "Throat 2026": 2.4 },
        "Throat new (in)",
        "Throat now (in)",
      ),
    ).toBe("REMOVE");
  });
  it("that cannot be read leave no verdict", () => {
    expect(decision({ ...HOOK, "Throat 2026": "2.0?" })).toBe("NO VERDICT");
  });
  it("a heading that stands twice is judged by the worse, and told", () => {
    const names = [...Object.keys(HOOK), "Throat now (in)"];
    const report = reportOn([names, [...Object.values(HOOK), 2.4]], request);
    expect(report?.items[0]?.verdict.decision).toBe("REMOVE");
    expect(report?.problems.join(" ")).toContain('"Throat now (in)" stands 2 times');
  });
});

describe("sections in pairs of columns of their own", () => {
  const names = [
    "Id",
    "Gear",
    "Unit",
    "Saddle new",
    "Saddle now",
    "Bow new",
    "Bow now",
    "Crown new",
    "Crown now",
    "Throat new",
    "Throat now",
    "Twist",
    "Latch",
    "Pin new",
    "Pin now",
    "Pin seated",
    "Cracks",
    "Bent",
    "Tag",
  ];
  const log = (...rows: CellValue[][]): (string | undefined)[] => {
    const report = reportOn([names, ...rows], request);
    return rows.map((_, i) => report?.items[i]?.verdict.decision);
  };
  const hook = (saddle: CellValue): CellValue[] => [
    "H",
    "hook",
    "mm",
    40,
    saddle,
    "",
    "",
    "",
    "",
    50,
    50,
    "0",
    "ok",
    "",
    "",
    "",
    "none",
    "none",
    "ok",
  ];
  const shackle = (bow: CellValue): CellValue[] => [
    "S",
    "shackle",
    "mm",
    "",
    "",
    20,
    bow,
    "",
    "",
    "",
    "",
    "",
    "",
    22,
    22,
    "yes",
    "none",
    "none",
    "ok",
  ];
  const link = (crown: CellValue): CellValue[] => [
    "L",
    "link",
    "mm",
    "",
    "",
    "",
    "",
    30,
    crown,
    "",
    "",
    "",
    "",
    "",
    "",
    "",
    "none",
    "none",
    "ok",
  ];
  it("are read by the kind that fills them", () => {
    expect(log(hook(40), shackle(20), link(30))).toEqual(["KEEP", "KEEP", "KEEP"]);
    expect(log(hook(35), shackle(17), link(26))).toEqual(["REMOVE", "REMOVE", "REMOVE"]);
    expect(log(hook(""), shackle(""), link(""))).toEqual(["NO VERDICT", "NO VERDICT", "NO VERDICT"]);
  });
  it("of which both are filled count by the larger loss", () => {
    const both = (eye: CellValue, shank: CellValue): string =>
      decision({ ...HOOK, "Eye new": 1, "Eye now": eye, "Shank new": 1.25, "Shank now": shank, Unit: "in" });
    expect(both(0.99, 1.24)).toBe("KEEP");
    expect(both(0.99, 0.9)).toBe("REMOVE");
    expect(both(0.7, 1.24)).toBe("REMOVE");
  });
});

describe("headings that say the opposite", () => {
  it("turn yes and no for what must be in order", () => {
    for (const [heading, of] of [
      ["Latch missing", "Latch"],
      ["Tag missing", "Tag"],
      ["Marking illegible", "Tag"],
    ] as const) {
      expect([heading, decision({ ...HOOK, [heading]: "yes" }, of)]).toEqual([heading, "REMOVE"]);
      expect([heading, decision({ ...HOOK, [heading]: "no" }, of)]).toEqual([heading, "KEEP"]);
      // Beside the plain column it is not dropped either.
      expect([heading, decision({ ...HOOK, [heading]: "yes" })]).toEqual([heading, "REMOVE"]);
      expect([heading, decision({ ...HOOK, [heading]: "no" })]).toEqual([heading, "KEEP"]);
    }
    for (const [heading, of] of [
      ["Broken stitching", "Stitching"],
      ["Damaged fittings", "End fittings"],
    ] as const) {
      expect([heading, decision({ ...WEB, [heading]: "yes" }, of)]).toEqual([heading, "REMOVE"]);
      expect([heading, decision({ ...WEB, [heading]: "none" }, of)]).toEqual([heading, "KEEP"]);
    }
    expect(judged({ ...HOOK, "Latch missing": "yes" }, "Latch").verdict.reason).toContain('"no: yes (Latch missing)"');
  });
  it("turn them for faults", () => {
    for (const heading of ["Free of cracks", "Crack free", "No cracks", "Not cracked", "Cracks ok"]) {
      expect([heading, decision({ ...SHACKLE, [heading]: "yes" }, "Cracks")]).toEqual([heading, "KEEP"]);
      expect([heading, decision({ ...SHACKLE, [heading]: "no" }, "Cracks")]).toEqual([heading, "REMOVE"]);
      expect([heading, decision({ ...SHACKLE, [heading]: "" }, "Cracks")]).toEqual([heading, "NO VERDICT"]);
    }
    expect(decision({ ...SHACKLE, "Not bent": "no" }, "Bent")).toBe("REMOVE");
  });
  it("that ask whether it was looked for settle nothing by yes or no", () => {
    for (const text of ["yes", "no", true])
      expect([text, decision({ ...SHACKLE, "Crack test": text }, "Cracks")]).toEqual([text, "NO VERDICT"]);
    expect(decision({ ...SHACKLE, "Crack test": "none found" }, "Cracks")).toBe("KEEP");
    expect(decision({ ...SHACKLE, "Cracks checked": "cracked" }, "Cracks")).toBe("REMOVE");
  });
  it("turn twice where a fault is denied, and not at all where nothing is", () => {
    for (const [heading, id, is] of [
      ["Pin unseated", "pinSeated", true],
      ["Pin not seated", "pinSeated", true],
      ["Pin seated", "pinSeated", false],
      ["Threads undamaged", "threads", false],
      ["Threads not damaged", "threads", false],
      ["No damage to threads", "threads", false],
      ["Thread damage", "threads", true],
      ["Tag unreadable", "tag", true],
      ["Tag no.", "tag", false],
      ["Cracks", "cracks", false],
      ["Cracks not ok", "cracks", false],
      ["No cracks", "cracks", true],
    ] as const)
      expect([heading, polarity(heading, id)]).toEqual([heading, is ? "turned" : "straight"]);
  });
  it("leave numbers and names alone", () => {
    const report = reportOn(
      [
        ["Tag No.", "Gear", "No of clips", "Tag no 2"],
        ["17", "hook", "3", "x"],
      ],
      request,
    );
    expect(report?.headings.slice(0, 3).map((h) => h.field)).toEqual(["id", "gear", "clips"]);
  });
});

describe("what the log says of the whole item", () => {
  it("a plain rejection is REMOVE: the log itself says so", () => {
    for (const [heading, text] of [
      ["Result", "FAIL"],
      ["Visual inspection", "FAIL"],
      ["OK to use", "NO"],
      ["Action required", "Destroy"],
      ["Rejected", "yes"],
      ["Result", "F"],
      ["Condition", "BENT - reject"],
    ] as const) {
      const item = judged({ ...SHACKLE, [heading]: text });
      expect([heading, text, item.verdict.decision]).toEqual([heading, text, "REMOVE"]);
      expect(item.verdict.reason).toContain("the log itself says so");
    }
  });
  it("a word of tagging tags", () => {
    for (const text of ["TAGGED OUT", "quarantined", "Red tagged", "out of service"])
      expect([text, judged({ ...SHACKLE, Status: text }).tagged, decision({ ...SHACKLE, Status: text })]).toEqual([text, true, "REMOVE"]);
  });
  it("against its use and KEEP cannot both stand: any word that is not good is asked about", () => {
    for (const [heading, text] of [
      ["Defects", "ears spread 6 mm"],
      ["In service", "No"],
      ["Result", "Failed, old pin"],
      ["Result", "rejected at the last round"],
      ["Status", "on hold"],
      ["Result", "not inspected"],
      ["Result", "see report"],
    ] as const) {
      const item = judged({ ...SHACKLE, [heading]: text });
      expect([heading, text, item.verdict.decision]).toEqual([heading, text, "NO VERDICT"]);
      expect(item.verdict.reason).toMatch(/speaks? against its use/);
    }
  });
  it("a remark of damage or against its use is EXAMINE: read it and record it in its column", () => {
    for (const [heading, text] of [
      ["Remarks", "Scrap, do not use"],
      ["Comments", "condemned"],
      ["Remarks", "Do not use until a new pin is fitted"],
      ["Remarks", "do not use unless inspected"],
      ["Remarks", "quarantined, spare in bay 2"],
      ["Remarks", "do not use; failed at the last inspection"],
      ["Remarks", "not safe"],
      ["Remarks", "hairline crack at the ear"],
      ["Remarks", "latch replaced; pin cracked"],
      ["Remarks", "to be replaced"],
      ["Remarks", "cracked, not repaired"],
      ["Inspector remarks", "cannot be used"],
    ] as const) {
      const item = judged({ ...SHACKLE, [heading]: text });
      expect([heading, text, item.verdict.decision]).toEqual([heading, text, "EXAMINE"]);
      expect(item.verdict.reason).toContain("read the remark and record it in its column");
    }
  });
  it("for its use, or of what was, changes nothing", () => {
    for (const [heading, text] of [
      ["Result", "Pass"],
      ["Status", "In service"],
      ["OK to use", "yes"],
      ["Action required", "none"],
      ["Defects", "none"],
      ["Defects", "no defects"],
      ["Rejected", "no"],
      ["In service", "yes"],
      ["Condition", "Good"],
      ["Remarks", "old latch scrapped, new one fitted"],
      ["Remarks", "was rejected in 2020, repaired and released"],
      ["Remarks", "stored under the bench"],
      ["Remarks", "not used since the move"],
      ["Remarks", "not rejected"],
      ["Remarks", "no cracks, no damage"],
      ["Remarks", "bent pin replaced"],
      ["Remarks", "slightly worn paint"],
      ["Remarks", "marked 3/4, like its size"],
      ["Result", ""],
      ["Defects", ""],
    ] as const)
      expect([heading, text, decision({ ...SHACKLE, [heading]: text })]).toEqual([heading, text, "KEEP"]);
  });
  it("a date of tagging out is a tag", () => {
    for (const heading of ["Tag out date", "Tagged out on", "Withdrawn", "Date scrapped"])
      expect([heading, judged({ ...SHACKLE, [heading]: { serial: 46310 } }).tagged]).toEqual([heading, true]);
  });
});

describe("units of headings", () => {
  it("in centimetres go with the figure", () => {
    const SWIVEL: Row = {
      ID: "V1",
      Type: "Swivel",
      Unit: "mm",
      "Body new": 40,
      "Body now": 40,
      "Turns freely": "yes",
      Cracks: "none",
      Bent: "none",
      Marking: "yes",
    };
    expect(judged({ ...SWIVEL, "Clearance (cm)": 2.5 }, "").verdict.reason).toContain("25 mm");
    expect(decision({ ...SWIVEL, "Clearance (mm)": 2.5 })).toBe("KEEP");
    // A fraction under centimetres names neither them nor inches.
    expect(decision({ ...SWIVEL, "Clearance (cm)": "1/4" })).toBe("NO VERDICT");
    expect(judged({ ...SWIVEL, "Clearance (cm)": "0.25 by gauge" }).verdict.reason).toContain("2.5 mm");
    // 0.25 in is more than 3/16 in; a heading that names both units names none.
    expect(decision({ ...SWIVEL, "Body new": "40 mm", "Body now": "40 mm", "Clearance (mm/in)": 0.25 }, "Unit")).toBe("NO VERDICT");
  });
  it("that change further down hold for the rows below", () => {
    const names = Object.keys(HOOK).map((name) => name.replace("(in)", "(mm)"));
    const values = (throat: number): CellValue[] => Object.values({ ...HOOK, "Throat new (in)": 6, "Throat now (in)": throat });
    const report = reportOn([names, values(6.255), Object.keys(HOOK), values(6.255)], request);
    // 0.255 of 6: inside 5 % in millimetres; in inches more than the cap of 1/4 in.
    expect(report?.items.map((item) => item.verdict.decision)).toEqual(["WATCH", "REMOVE"]);
  });
});

describe("dates and loads", () => {
  it("of another day are no inspection", () => {
    for (const heading of [
      "Date installed",
      "Next inspection",
      "Inspection due",
      "Repair date",
      "Calibration date",
      "Order date",
      "Print date",
      "Date removed",
      "Checked out",
      "Date of mfr",
    ])
      expect([heading, judged({ ...SHACKLE, [heading]: { serial: 46340 } }, "Inspected").dueState]).toEqual([heading, "NO DATE"]);
    for (const heading of [
      "Date",
      "Last inspection",
      "Date inspected",
      "Insp. date",
      "Last exam. date",
      "Date of thorough examination",
      "Annual inspection date",
      "Inspected on",
    ])
      expect([heading, judged({ ...SHACKLE, [heading]: { serial: 46340 } }, "Inspected").dueState]).toEqual([heading, "CURRENT"]);
  });
  it("of another kind are no rated load, and the straight rating comes first", () => {
    const rated = (row: Row): CellValue => judged({ ...WEB, ...row }).cells.get("ratedLoad");
    expect(rated({ "Basket WLL": "12800 lb", "Choker WLL": "4800 lb", "Vertical WLL": "6400 lb" })).toBe("6400 lb");
    for (const heading of ["Breaking capacity", "Proof capacity", "Ultimate capacity", "Test WLL", "MBL"])
      expect([heading, rated({ [heading]: "24 t" })]).toEqual([heading, undefined]);
    expect(rated({ WLL: "2 t" })).toBe("2 t");
  });
});

describe("assemblies", () => {
  it("that are said not to be are none", () => {
    for (const none of ["n/a", "N/A", "-", "none"]) {
      const names = [...Object.keys(SHACKLE), "Assembly"];
      const row = (more: Row): CellValue[] => [...Object.values({ ...SHACKLE, ...more }), none];
      const report = reportOn([names, row({ ID: "A" }), row({ ID: "B", Bent: "bent" })], request);
      expect([none, report?.items.map((item) => item.verdict.decision)]).toEqual([none, ["KEEP", "REMOVE"]]);
    }
  });
});

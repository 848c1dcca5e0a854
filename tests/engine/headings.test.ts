import { describe, expect, it } from "vitest";
import { DEFAULT_BASIS } from "../../src/engine/rules/rule-sets";
import { FIELD_IDS, FIELDS, type FieldId } from "../../src/engine/columns";
import { matchHeadings } from "../../src/engine/log/match-headings";
import { type CellValue } from "../../src/engine/reading/cell-value";
import { tellLack } from "../../src/engine/report/lacking";
import { fieldsFor, reportOn } from "../../src/engine/report/report";
import { asGrid } from "../../src/engine/log/grid";
import { findLog, itemRows } from "../../src/engine/log/find-log";
import { GEAR } from "../../src/engine/gear/index";

/** Heading, field, and unit where the heading names one. */
type Told = readonly [heading: string, field: FieldId | null, unit?: "in" | "mm"];

const LOGS: readonly { readonly title: string; readonly headings: readonly Told[] }[] = [
  {
    title: "a hook log with abbreviations and units in brackets",
    headings: [
      ["ID No.", "id"],
      ["Type", "gear"],
      ["Orig. throat (in)", "throatNew", "in"],
      ["Meas. throat (in)", "throatNow", "in"],
      ["Orig. saddle (in)", "sectionNew", "in"],
      ["Meas. saddle (in)", "sectionNow", "in"],
      ["Twist (deg)", "twist"],
      ["Cracks?", "cracks"],
      ["Latch OK?", "latch"],
      ["Tag legible?", "tag"],
      ["Date insp.", "inspected"],
      ["Insp. by", "inspector"],
    ],
  },
  {
    title: "units behind the words, degree sign stuck to the word",
    headings: [
      ["Asset #", "id"],
      ["Description", "gear"],
      ["Location", "place"],
      ["Throat opening new mm", "throatNew", "mm"],
      ["Throat opening actual mm", "throatNow", "mm"],
      ["Bowl new", "sectionNew"],
      ["Bowl now", "sectionNow"],
      ["Twist°", "twist"],
      ["Cracks", "cracks"],
      ["Latch", "latch"],
      ["Marking legible", "tag"],
      ["Remarks", "remarks"],
    ],
  },
  {
    title: "shackles, measured before original",
    headings: [
      ["Serial No", "id"],
      ["Item", "gear"],
      ["Nominal Dia.", "size"],
      ["Bow Dia Measured [mm]", "sectionNow", "mm"],
      ["Orig Bow Dia [mm]", "sectionNew", "mm"],
      ["Pin Dia Measured [mm]", "pinNow", "mm"],
      ["Orig Pin Dia [mm]", "pinNew", "mm"],
      ["Pin seated", "pinSeated"],
      ["Deformed", "deformed"],
      ["Crack", "cracks"],
      ["SWL marked", "tag"],
      ["Inspected", "inspected"],
    ],
  },
  {
    title: "chain slings",
    headings: [
      ["No.", "id"],
      ["Gear", "gear"],
      ["Chain size", "size"],
      ["Thinnest link", "sectionNow"],
      ["Stretched links", "deformed"],
      ["Cracks", "cracks"],
      ["Tag", "tag"],
      ["Assy", "assembly"],
      ["Next due", null],
    ],
  },
  {
    title: "slings with their legs",
    headings: [
      ["Sling No.", "id"],
      ["Gear", "gear"],
      ["Legs", "legs"],
      ["WLL (t)", "ratedLoad"],
      ["Leg length", null],
      ["Leg size", "size"],
    ],
  },
  {
    title: "slings with the number of their legs",
    headings: [
      ["ID", "id"],
      ["Type", "gear"],
      ["No. of legs", "legs"],
      ["SWL", "ratedLoad"],
      ["Remarks", "remarks"],
    ],
  },
  {
    title: "wire rope slings, with a tag column beside the sling's number",
    headings: [
      ["Sling No.", "id"],
      ["Sling type", "gear"],
      ["Rope dia", "size"],
      ["Construction", "construction"],
      ["Broken wires/lay", "brokenLay"],
      ["Broken wires/strand", "brokenStrand"],
      ["Kinks/crushing", "kinks"],
      ["End fittings", "endFittings"],
      ["Heat damage", "heat"],
      ["Corrosion", "corrosion"],
      ["ID tag", "tag"],
    ],
  },
  {
    title: "one size per item, with worked-out columns that are not read",
    headings: [
      ["Ref", "id"],
      ["Equipment", "gear"],
      ["Original dim.", "sectionNew"],
      ["Measured dim.", "sectionNow"],
      ["Wear %", null],
      ["Result", "result"],
      ["Comments", "remarks"],
    ],
  },
  {
    title: "swivels",
    headings: [
      ["Tag No.", "id"],
      ["Kind", "gear"],
      ["Unit", "unit"],
      ["Section (original)", "sectionNew"],
      ["Section (measured)", "sectionNow"],
      ["End play", "clearance"],
      ["Rotates freely", "turnsFreely"],
      ["Cracks", "cracks"],
      ["Bent", "deformed"],
    ],
  },
  {
    title: "words of two kinds for new and now",
    headings: [
      ["Id", "id"],
      ["Gear", "gear"],
      ["Throat when new", "throatNew"],
      ["Throat today", "throatNow"],
      ["Section when new", "sectionNew"],
      ["Section today", "sectionNow"],
      ["Twist angle", "twist"],
      ["Visible cracks", "cracks"],
      ["Safety latch", "latch"],
      ["Id legible", "tag"],
      ["Tagged out", "tagged"],
      ["Released by", "releasedBy"],
      ["Release date", "releasedOn"],
    ],
  },
  {
    title: "item number and type",
    headings: [
      ["Item", "id"],
      ["Type", "gear"],
      ["SWL", "ratedLoad"],
      ["Size", "size"],
      ["New dia", "sectionNew"],
      ["Worn dia", "sectionNow"],
      ["Date", "inspected"],
      ["Inspector", "inspector"],
      ["Status", "result"],
    ],
  },
  {
    title: "two directions and a gauge",
    headings: [
      ["Id", "id"],
      ["Gear", "gear"],
      ["Orig", "sectionNew"],
      ["Now", "sectionNow"],
      ["Orig (across)", "acrossNew"],
      ["Now (across)", "acrossNow"],
      ["Gauge res.", "gauge"],
      ["UOM", "unit"],
    ],
  },
  {
    title: "many dates, of which one is the inspection's",
    headings: [
      ["Number", "id"],
      ["Kind of gear", "gear"],
      ["Location", "place"],
      ["Date of manufacture", null],
      ["Date in service", null],
      ["Next inspection date", null],
      ["Inspected", "inspected"],
      ["Proof load date", null],
      ["Service class", "service"],
    ],
  },
  {
    title: "slings of textile",
    headings: [
      ["Serial number", "id"],
      ["Description", "gear"],
      ["Cuts / tears", "cuts"],
      ["Stitching OK", "stitching"],
      ["Heat / chemical damage", "heat"],
      ["Fittings", "endFittings"],
      ["Label legible", "tag"],
    ],
  },
  {
    title: "blocks, side plates and pins",
    headings: [
      ["Block ID", "id"],
      ["Block type", "gear"],
      ["Side plate new (mm)", "sectionNew", "mm"],
      ["Side plate now (mm)", "sectionNow", "mm"],
      ["Pin new (mm)", "pinNew", "mm"],
      ["Pin now (mm)", "pinNow", "mm"],
      ["Sheave turns true", "sheaveTrue"],
      ["Cotters/nuts", "fasteners"],
      ["Cracks", "cracks"],
      ["Distortion", "deformed"],
      ["Markings", "tag"],
    ],
  },
  {
    title: "clips",
    headings: [
      ["Id", "id"],
      ["Gear", "gear"],
      ["Rope size", "size"],
      ["Clips fitted", "clips"],
      ["Clip spacing (in)", "clipSpacing", "in"],
      ["Turn-back (in)", "turnBack", "in"],
      ["Saddle on live end", "liveEnd"],
      ["Nuts and bolts tight", "fasteners"],
      ["Cracks", "cracks"],
    ],
  },
  {
    title: "sheaves, and a bare word for the sheave",
    headings: [
      ["Id", "id"],
      ["Gear", "gear"],
      ["Size", "size"],
      ["Groove gauge (mm)", "groove", "mm"],
      ["Sheave pitch diameter (mm)", "sheave", "mm"],
      ["Sheave", "sheaveTrue"],
      ["Cracked", "cracks"],
    ],
  },
  {
    title: "ropes of cranes",
    headings: [
      ["Rope No.", "id"],
      ["Type", "gear"],
      ["Nominal dia", "size"],
      ["Rope diameter now", "ropeNow"],
      ["Broken wires in a lay", "brokenLay"],
      ["Broken wires in one strand", "brokenStrand"],
      ["Broken wires in 6 diameters", "broken6d"],
      ["Broken wires in 30 diameters", "broken30d"],
      ["Broken wires at the end", "brokenEnd"],
      ["Valley breaks", "brokenValley"],
      ["Outer wire as-new", "wireNew"],
      ["Outer wire now", "wireNow"],
      ["Parted strand", "strandBroken"],
      ["Kinks", "kinks"],
    ],
  },
  {
    title: "a broken strand is a parted strand, no count of wires",
    headings: [
      ["Id", "id"],
      ["Gear", "gear"],
      ["Broken wires", "brokenLay"],
      ["Broken strand", "strandBroken"],
    ],
  },
  {
    title: "metal mesh",
    headings: [
      ["Id", "id"],
      ["Gear", "gear"],
      ["Mesh wire new", "wireNew"],
      ["Mesh wire now", "wireNow"],
      ["Corroded wire now", "corrodedNow"],
      ["Slot depth new", "slotNew"],
      ["Slot depth now", "slotNow"],
      ["Handle as-new", "handleNew"],
      ["Handle now", "handleNow"],
      ["Broken weld or wire", "meshBroken"],
      ["Corrosion", "corrosion"],
    ],
  },
  {
    title: "beams: bent by sight, and the bend over its span",
    headings: [
      ["Id", "id"],
      ["Gear", "gear"],
      ["Permanent bend (mm)", "bend", "mm"],
      ["Span (mm)", "span", "mm"],
      ["Bent", "deformed"],
    ],
  },
  {
    title: "eyebolts and clamps",
    headings: [
      ["Id", "id"],
      ["Gear", "gear"],
      ["Shank bend deg", "bendAngle"],
      ["Threads", "threads"],
      ["Tooth as-new", "toothNew"],
      ["Tooth now", "toothNow"],
      ["Wedge OK", "wedge"],
      ["Bent", "deformed"],
      ["Twist deg", "twist"],
    ],
  },
  {
    title: "a bare throat beside a new one",
    headings: [
      ["Id", "id"],
      ["Gear", "gear"],
      ["Throat mm", "throatNow", "mm"],
      ["Throat new mm", "throatNew", "mm"],
      ["Saddle mm", "sectionNow", "mm"],
      ["Saddle new mm", "sectionNew", "mm"],
    ],
  },
  {
    title: "inches by their sign",
    headings: [
      ["Id", "id"],
      ["Gear", "gear"],
      ['Throat as new (")', "throatNew", "in"],
      ['Throat now (")', "throatNow", "in"],
      ["Section as-new, inches", "sectionNew", "in"],
      ["Section now, inches", "sectionNow", "in"],
      ["Nick depth", "nickDepth"],
      ["Nick location", "nickPart"],
      ["Repairs", "fieldChange"],
    ],
  },
  {
    title: "all in capitals",
    headings: [
      ["ID", "id"],
      ["GEAR", "gear"],
      ["ORIGINAL THROAT", "throatNew"],
      ["PRESENT THROAT", "throatNow"],
      ["ORIGINAL SECTION", "sectionNew"],
      ["PRESENT SECTION", "sectionNow"],
      ["TWIST", "twist"],
      ["CRACKS", "cracks"],
      ["LATCH", "latch"],
      ["IDENTIFICATION", "tag"],
    ],
  },
  {
    title: "line breaks, non-breaking spaces and full-width letters",
    headings: [
      ["Id", "id"],
      ["Gear", "gear"],
      ["Throat\nas new\n(mm)", "throatNew", "mm"],
      ["Throat\u00a0now (mm)", "throatNow", "mm"],
      ["Ｃｒａｃｋｓ", "cracks"],
    ],
  },
];

const match = (headings: readonly string[]) => matchHeadings(headings);

describe("headings as clerks write them", () => {
  for (const { title, headings } of LOGS)
    it(title, () => {
      const { matches, problems } = match(headings.map(([heading]) => heading));
      expect(matches.map((m, i) => [headings[i]?.[0], m.field, ...(m.unit === null ? [] : [m.unit])])).toEqual(headings.map((h) => [...h]));
      expect(problems).toEqual([]);
    });

  it("in another order mean the same", () => {
    for (const { headings } of LOGS) {
      const turned = [...headings].reverse();
      const { matches } = match(turned.map(([heading]) => heading));
      expect(Object.fromEntries(matches.map((m) => [m.heading, m.field]))).toEqual(
        Object.fromEntries(match(headings.map(([h]) => h)).matches.map((m) => [m.heading, m.field])),
      );
    }
  });
});

describe("a column of limits, of growth or of another date is not a reading", () => {
  const cases: [headings: string[], notReading: string][] = [
    [["Id", "Gear", "Throat new", "Max throat", "Throat measured"], "Max throat"],
    [["Id", "Gear", "Throat new", "Max throat"], "Max throat"],
    [["Id", "Gear", "Throat new", "Throat limit", "Reading"], "Throat limit"],
    [["Id", "Gear", "Throat new", "Throat growth"], "Throat growth"],
    [["Id", "Gear", "Throat new", "Throat growth %"], "Throat growth %"],
    [["Id", "Gear", "Section new", "Min section", "Section measured"], "Min section"],
    [["Id", "Gear", "Section new", "Min section", "Measured"], "Min section"],
    [["Id", "Gear", "Section new", "Section min allowed"], "Section min allowed"],
    [["Id", "Gear", "Section new", "Section wear"], "Section wear"],
    [["Id", "Gear", "Section new", "Discard section"], "Discard section"],
    [["Id", "Gear", "Section new", "Loss of section"], "Loss of section"],
    [["Id", "Gear", "Max. broken wires allowed"], "Max. broken wires allowed"],
    [["Id", "Gear", "Max twist"], "Max twist"],
    [["Id", "Gear", "Next inspection date", "Inspected"], "Next inspection date"],
    [["Id", "Gear", "Next inspection date"], "Next inspection date"],
    [["Id", "Gear", "Due date"], "Due date"],
    [["Id", "Gear", "Date of manufacture"], "Date of manufacture"],
    [["Id", "Gear", "Purchase date"], "Purchase date"],
    [["Id", "Gear", "Date in service"], "Date in service"],
    [["Id", "Gear", "Proof test date"], "Proof test date"],
    [["Id", "Gear", "Certificate date"], "Certificate date"],
  ];
  for (const [headings, not] of cases)
    it(`"${not}" among ${headings.length} headings`, () => {
      const { matches } = match(headings);
      expect(matches.find((m) => m.heading === not)?.field ?? null).toBeNull();
    });
  it("a column that says least and measured is a reading", () => {
    expect(match(["Id", "Gear", "Min. thickness measured"]).matches[2]?.field).toBe("sectionNow");
    expect(match(["Id", "Gear", "Thinnest link (min)"]).matches[2]?.field).toBe("sectionNow");
  });
});

describe("the headings of the register", () => {
  for (const id of FIELD_IDS)
    it(`"${FIELDS[id].heading}" alone is ${id}`, () => {
      // "Type" names the gear where nothing else does; a register has its own column Gear.
      const beside = id === "gearType" ? [FIELDS.gear.heading] : [];
      expect(match([FIELDS[id].heading, ...beside]).matches[0]?.field).toBe(id);
    });

  it("all together are what they are, in any order", () => {
    const rank = (id: string): number => Array.from(id).reduce((sum, letter) => (sum * 31 + (letter.codePointAt(0) ?? 0)) % 9973, 7);
    for (const ids of [FIELD_IDS, [...FIELD_IDS].reverse(), [...FIELD_IDS].sort((a, b) => rank(a) - rank(b))]) {
      const { matches, problems } = match(ids.map((id) => FIELDS[id].heading));
      expect(matches.map((m) => m.field)).toEqual([...ids]);
      expect(problems).toEqual([]);
    }
  });

  it("one column for heat and chemicals is read for both; beside a column of its own it is not", () => {
    const one = matchHeadings(["Id", "Heat / chemical damage"]);
    expect([one.columns.get("heat"), one.columns.get("chemical"), one.names.get("chemical")]).toEqual([1, 1, "Heat / chemical damage"]);
    expect(matchHeadings(["Id", "Heat / chemical damage", "Chemical damage"]).columns.get("chemical")).toBe(2);
    expect(matchHeadings(["Id", "Heat damage"]).columns.has("chemical")).toBe(false);
  });

  for (const kind of GEAR)
    it(`of a register of ${kind.plural} are what they are`, () => {
      const ids = fieldsFor(new Set([kind.id]), new Set(), DEFAULT_BASIS);
      expect(match(ids.map((id) => FIELDS[id].heading)).matches.map((m) => m.field)).toEqual([...ids]);
    });

  it("with their results behind them are still what they are", () => {
    const headings = [
      ...FIELD_IDS.map((id) => FIELDS[id].heading),
      "Verdict",
      "Reason",
      "Share used",
      "Comes out at",
      "Source",
      "Next due",
      "Due state",
    ];
    const { matches } = match(headings);
    expect(matches.map((m) => m.field)).toEqual([...FIELD_IDS, ...Array<null>(7).fill(null)]);
  });

  it("no two fields share a heading", () => {
    const headings = FIELD_IDS.map((id) => FIELDS[id].heading.toLowerCase());
    expect(new Set(headings).size).toBe(headings.length);
  });
});

describe("what the user chose wins", () => {
  it("by the heading's text, without regard to case", () => {
    const { matches } = matchHeadings(["Id", "Gear", "Dim A", "Dim B"], { "dim a": "sectionNew", "dim b": "sectionNow" });
    expect(matches.map((m) => [m.field, m.chosen])).toEqual([
      ["id", false],
      ["gear", false],
      ["sectionNew", true],
      ["sectionNow", true],
    ]);
  });
  it("a heading that is not to be used is not used", () => {
    expect(matchHeadings(["Id", "Gear", "Throat now"], { "throat now": null }).matches[2]?.field).toBeNull();
  });
});

describe("a heading that stands twice", () => {
  it("is a problem when it is read", () => {
    const { problems } = match(["Id", "Gear", "Measured", "Measured"]);
    expect(problems).toHaveLength(1);
    expect(problems[0]).toContain('"Measured"');
    expect(problems[0]).toContain("2 times");
  });
  it("is none when it is not", () => {
    expect(match(["Id", "Gear", "Result", "Result", "", ""]).problems).toEqual([]);
  });
});

describe("a heading in centimetres or metres", () => {
  it("gives its unit to each bare number under it", () => {
    const rows = (throat: CellValue): CellValue[][] => [
      ["Id", "Gear", "Unit", "Throat new (cm)", "Throat now (cm)"],
      ["H", "hook", "mm", 5, throat],
    ];
    const cells = (throat: CellValue): unknown[] =>
      ["throatNew", "throatNow"].map((id) => reportOn(rows(throat), request)?.items[0]?.cells.get(id as FieldId));
    expect(cells(5.2)).toEqual(["5 cm", "5.2 cm"]);
    expect(cells("52 mm")).toEqual(["5 cm", "52 mm"]);
    expect(cells("")).toEqual(["5 cm", ""]);
  });
});

const request = { basis: DEFAULT_BASIS, asOf: 46174 };
const HEAD = ["Id", "Gear", "Section as-new (mm)", "Section now (mm)", "Cracks", "Bent or stretched", "Identification legible"];
const ring = (id: string): CellValue[] => [id, "ring", 30, 30, "none", "none", "yes"];

describe("where the log starts", () => {
  it("under title rows and blank rows", () => {
    const grid: CellValue[][] = [
      ["Tern Point Yard", "", "", "", "", "", ""],
      ["Inspection of lifting gear, spring round", "", "", "", "", "", ""],
      [],
      HEAD,
      ring("R-1"),
      ring("R-2"),
    ];
    const found = findLog(grid);
    expect(found).toMatchObject({ headingRow: 3, headingRows: 1 });
    expect(reportOn(grid, request)?.items.map((i) => i.id)).toEqual(["R-1", "R-2"]);
  });
  it("directly under a title: the title is no part of the headings", () => {
    for (const title of ["Gear", "Links and rings", "Inspection log"]) {
      const found = findLog([[title, "", "", "", "", "", ""], HEAD, ring("R-1")]);
      expect(found, title).toMatchObject({ headingRow: 1, headingRows: 1 });
      expect(found?.headings.matches.map((m) => m.heading)).toEqual(HEAD);
    }
  });
  it("with two heading rows, the upper reaching over the blank cells to its right", () => {
    const grid: CellValue[][] = [
      ["Id", "Gear", "Throat (in)", "", "Section (in)", "", "Cracks"],
      ["", "", "new", "now", "new", "now", ""],
      ["H-1", "hook", 2, 2, 1.5, 1.5, "none"],
    ];
    const found = findLog(grid);
    expect(found).toMatchObject({ headingRow: 0, headingRows: 2 });
    expect(found?.headings.matches.map((m) => m.field)).toEqual([
      "id",
      "gear",
      "throatNew",
      "throatNow",
      "sectionNew",
      "sectionNow",
      "cracks",
    ]);
    expect(found?.headings.units.get("throatNow")).toBe("in");
    expect(reportOn(grid, request)?.items).toHaveLength(1);
  });
  it("with two heading rows in which the units stand below", () => {
    const grid: CellValue[][] = [
      ["Id", "Gear", "Throat new", "Throat now", "Twist"],
      ["", "", "mm", "mm", "deg"],
      ["H-1", "hook", 50, 50, 0],
    ];
    const found = findLog(grid);
    expect(found?.headings.units.get("throatNow")).toBe("mm");
    expect(found?.headingRows).toBe(2);
  });
  it("nowhere, in a sheet that is no log", () => {
    expect(
      findLog([
        ["Budget", "2025", "2026"],
        ["Paint", 10, 20],
      ]),
    ).toBeNull();
    expect(findLog([])).toBeNull();
    expect(
      reportOn(
        [
          ["Throat new", "Throat now", "Twist", "Cracks"],
          [2, 2, 0, "none"],
        ],
        request,
      ),
    ).toBeNull();
  });
});

describe("which rows are items", () => {
  const grid: CellValue[][] = [
    HEAD,
    ["RINGS, EAST BAY", "", "", "", "", "", ""],
    ring("R-1"),
    ["", "", "", "", "", "", ""],
    HEAD,
    ring("R-2"),
    ["Total", "", 60, 60, "", "", ""],
    ["Grand total", 2, "", "", "", "", ""],
    ["Checked by the yard rigger", "", "", "", "", "", ""],
    ["R-3", "", "", "", "", "", ""],
    ["", "ring", "", "", "", "", ""],
  ];
  const found = findLog(grid);
  if (found === null) throw new Error("No log found");
  const { items, passedOver } = itemRows(grid, found);

  it("items, even when only their id or their kind is there", () => {
    expect(items.map((i) => i.row)).toEqual([2, 5, 9, 10]);
  });
  it("titles, repeated headings and totals are passed over with a reason", () => {
    expect(passedOver.map((p) => p.row)).toEqual([1, 4, 6, 7, 8]);
    for (const { why } of passedOver) expect(why).toMatch(/title|headings again|total/);
  });
  it("no row with something in it is lost", () => {
    const filled = grid.slice(1).filter((row) => row.some((cell) => cell !== "")).length;
    expect(items.length + passedOver.length).toBe(filled);
  });
});

describe("the ids of a log", () => {
  it("twice is a problem that names it", () => {
    const report = reportOn([HEAD, ring("R-1"), ring("r-1"), ring("R-2")], request);
    expect(report?.problems).toEqual([expect.stringContaining('"R-1"')]);
    expect(report?.items).toHaveLength(3);
  });
  it("missing is a problem", () => {
    expect(reportOn([HEAD, ring(""), ring("R-2")], request)?.problems).toEqual([expect.stringContaining("1 row has no id")]);
  });
  it("each once is none", () => {
    expect(reportOn([HEAD, ring("R-1"), ring("R-2")], request)?.problems).toEqual([]);
  });
  it("a heading that stands twice is a problem of the log", () => {
    expect(
      reportOn(
        [
          [...HEAD, "Cracks"],
          [...ring("R-1"), "none"],
        ],
        request,
      )?.problems,
    ).toEqual([expect.stringContaining('"Cracks"')]);
  });
});

describe("what a log lacks", () => {
  it("is told for each gear kind: columns that are not there, cells that are blank or cannot be read", () => {
    const report = reportOn(
      [
        ["Id", "Gear", "Section as-new (mm)", "Section now (mm)", "Cracks"],
        ["R-1", "ring", 30, 30, "none"],
        ["R-2", "ring", 30, "about 29", ""],
        ["S-1", "shackle", 20, 20, "none"],
        ["S-2", "shackle", 20, "", "none"],
        ["S-3", "shackle", 20, 20, "none"],
      ],
      request,
    );
    expect(report?.lacking.map(tellLack)).toEqual([
      "3 shackles: no column for Pin as-new, Pin now, Pin fully seated, Bent or stretched and Identification legible; Section now is blank for 1.",
      "2 links and rings: no column for Bent or stretched and Identification legible; Section now cannot be read for 1; Cracks is blank for 1.",
    ]);
  });
});

describe("a grid handed over from outside", () => {
  it("is rows of plain cells, dates told apart; anything else is a fault of the caller", () => {
    const grid = [[1, "a", true, null, undefined, { serial: 46000 }], []];
    expect(asGrid(grid)).toBe(grid);
    for (const odd of [null, "a", [1], [[{}]], [[{ serial: "46000" }]], [[() => 1]], [[[1]]], { 0: [1] }])
      expect(() => asGrid(odd), JSON.stringify(odd)).toThrow("could not be read as rows of cells");
  });
});

import { describe, expect, it } from "vitest";
import { readCount, readDegrees } from "../../src/engine/reading/number";
import { readDate } from "../../src/engine/reading/date";
import { readLength, type LengthOptions } from "../../src/engine/reading/length";
import { readText } from "../../src/engine/reading/text";
import { type Read } from "../../src/engine/reading/read";
import { exact, toNumber, type Exact } from "../../src/engine/numbers/exact";
import { type CellValue } from "../../src/engine/reading/cell-value";
import { outOfUse } from "../../src/engine/decision";
import { good, judged, type CellRecord } from "./helpers";
import { readSeen } from "../../src/engine/reading/observation";

/** A cell in a title; numbers such as NaN have no JSON. */
const shown = (cell: CellValue): string => (typeof cell === "number" || cell === undefined ? String(cell) : JSON.stringify(cell));

/** Figure and unit of a length that was read, or the kind of refusal. */
function length(cell: CellValue, options: Partial<LengthOptions> = {}): string {
  const read = readLength(cell, { assume: "in", ...options });
  return read.kind === "value" ? `${read.value.size.toFraction()} ${read.value.unit}` : read.kind;
}

function why(read: Read<unknown>): string {
  return read.kind === "refused" ? read.why : `(${read.kind})`;
}

describe("a length as the trade writes it", () => {
  const forms: [cell: CellValue, read: string][] = [
    // From the list of forms that clerks type. 1 7/8 is 15/8; 47.6 is 238/5; 4.76 cm is 47.6 mm.
    ["1 7/8", "15/8 in"],
    ["1-7/8", "15/8 in"],
    ['1-7/8"', "15/8 in"],
    ["1⅞", "15/8 in"],
    ["1 ⅞", "15/8 in"],
    ["⅞", "7/8 in"],
    ["47.6", "238/5 in"],
    ["47,6", "238/5 in"],
    ["47.6 mm", "238/5 mm"],
    ["47.6mm", "238/5 mm"],
    ["47,6 MM", "238/5 mm"],
    ["4.76cm", "238/5 mm"],
    ["4.76 cm", "238/5 mm"],
    // Two feet and half an inch are 24 1/2 in.
    ["2' 1/2\"", "49/2 in"],
    ["2'1/2\"", "49/2 in"],
    ["2 ft 1/2 in", "49/2 in"],
    ["2' 1 1/2\"", "51/2 in"],
    ["2'", "24 in"],
    ["2′ ½″", "49/2 in"],
    [".875", "7/8 in"],
    ["0.875", "7/8 in"],
    ["13/64 in", "13/64 in"],
    ["13/64", "13/64 in"],
    ['1.875"', "15/8 in"],
    ["1.875”", "15/8 in"],
    ["1.875″", "15/8 in"],
    ["1.875''", "15/8 in"],
    ["1.875 inches", "15/8 in"],
    ["1.875 Inch", "15/8 in"],
    ["1.875 in.", "15/8 in"],
    ["3 / 4", "3/4 in"],
    ["3⁄4", "3/4 in"],
    ["1,234.5 mm", "2469/2 mm"],
    ["1.234,5 mm", "2469/2 mm"],
    ["0,875", "7/8 in"],
    ["0.05 m", "50 mm"],
    ["12 millimetres", "12 mm"],
    // Superscript and subscript digits make a fraction; they are not further digits of the whole number.
    ["³⁄₄", "3/4 in"],
    ["1³⁄₁₆", "19/16 in"],
    ['1¹⁵⁄₁₆"', "31/16 in"],
  ];
  for (const [cell, read] of forms)
    it(`${JSON.stringify(cell)} is ${read}`, () => {
      expect(length(cell)).toBe(read);
    });

  it("a written unit wins over the assumed one", () => {
    expect(length("1 7/8 in", { assume: "mm" })).toBe("15/8 in");
    expect(length("47.6 mm", { assume: "in" })).toBe("238/5 mm");
    expect(length("47.6 mm", { assume: null })).toBe("238/5 mm");
  });
});

describe("the cell ladder of a length", () => {
  const ladder: [rung: string, cell: CellValue, read: string][] = [
    ["number", 1.875, "15/8 in"],
    ["whole number", 2, "2 in"],
    ["number with binary dust", 0.1 + 0.2, "3/10 in"],
    ["number with binary dust", 2.1000000000000005, "21/10 in"],
    ["numeric text", "1.875", "15/8 in"],
    ["numeric text with spaces", "  1.875  ", "15/8 in"],
    ["text", "worn", "refused"],
    ["true", true, "refused"],
    ["false", false, "refused"],
    ["null", null, "missing"],
    ["undefined", undefined, "missing"],
    ["empty text", "", "missing"],
    ["spaces", "   ", "missing"],
    ["non-breaking space", "\u00a0", "missing"],
    ["zero width space", "\u200b", "missing"],
    ["zero", 0, "missing"],
    ["minus zero", -0, "missing"],
    ["zero as text", "0", "missing"],
    ["zero with unit", "0.0 mm", "missing"],
    ["error", "#REF!", "refused"],
    ["error", "#N/A", "refused"],
    ["error", "#VALUE!", "refused"],
    ["error", "#DIV/0!", "refused"],
    ["date cell", { serial: 46089 }, "refused"],
    ["serial of a date in this century", 46089, "refused"],
    // 3/32 becomes 1 March 1932, 5/64 becomes 1 May 1964: two digits from 30 on are the last century.
    ["serial that 3/32 becomes", 11749, "refused"],
    ["serial that 5/64 becomes", 23498, "refused"],
    ["serial of a date as text", "46089", "refused"],
    ["a date as the cell shows it", "4-Mar", "refused"],
    ["a date as the cell shows it", "04-Mar", "refused"],
    ["a date as the cell shows it", "Mar-64", "refused"],
    ["a date as text", "2026-03-04", "refused"],
    ["a date as text", "3/4/2026", "refused"],
    ["full-width digits", "１．８７５", "15/8 in"],
    ["full-width fraction", "１ ７／８", "15/8 in"],
    ["non-breaking space inside", "1\u00a07/8", "15/8 in"],
    ["non-breaking space before the unit", "47.6\u00a0mm", "238/5 mm"],
    ["thin space inside", "1\u20097/8", "15/8 in"],
    ["negative number", -1.5, "refused"],
    ["negative text", "-1.5", "refused"],
    ["negative with a minus sign", "−1.5 mm", "refused"],
    ["not a number", Number.NaN, "refused"],
    ["infinite", Number.POSITIVE_INFINITY, "refused"],
    ["number too small for a gauge", 1e-300, "missing"],
    ["doubtful", "1.82?", "refused"],
    ["doubtful", "~1.82", "refused"],
    ["doubtful", "approx 1.82", "refused"],
    ["doubtful", "1.82 approx.", "refused"],
    ["doubtful", "about 1 7/8", "refused"],
    ["doubtful", "1.82 est", "refused"],
    ["doubtful", "1.82 or so", "refused"],
    ["doubtful", "< 1.82", "refused"],
    ["doubtful", "≥1.8", "refused"],
    ["doubtful", "1.8 ± 0.1", "refused"],
    ["doubtful", "1.82 (guess)", "refused"],
    ["doubtful", "1.82 tbc", "refused"],
    ["question mark alone", "?", "refused"],
    ["two figures", "1.8 1.9", "refused"],
    ["two figures", "1.8 / 1.9", "refused"],
    ["two figures", "1.8 - 1.9", "refused"],
    ["two figures", "1.8 to 1.9", "refused"],
    ["two figures", "1.8, 1.9", "refused"],
    ["two figures", "10 x 12", "refused"],
    ["two figures", "10×12", "refused"],
    ["two figures", "47.6 mm / 1.874 in", "refused"],
    ["two figures", "1.82 (was 1.85)", "refused"],
    ["a footnote", "1.82²", "refused"],
    ["a formula", "=1.8", "refused"],
    ["a fraction by zero", "1/0", "refused"],
    ["no proper fraction", "1 8/7", "refused"],
    ["a fraction of nothing", "0/12", "refused"],
    ["a fraction of nothing", "0 / 5 mm", "refused"],
    ["a fraction of nothing", "0 0/2", "refused"],
    ["a fraction of nothing", "1-0/8", "refused"],
    ["a date-like triple", "1/2/3", "refused"],
    ["two points", "1.8.2", "refused"],
    ["an exponent", "1e3", "refused"],
    ["judgement", "ok", "refused"],
    ["judgement", "good", "refused"],
    ["judgement", "OK - 1.82", "refused"],
    ["judgement", "pass", "refused"],
    ["judgement", "see remarks", "refused"],
    ["not measured", "n/a", "missing"],
    ["not measured", "N/A", "missing"],
    ["not measured", "na", "missing"],
    ["not measured", "-", "missing"],
    ["not measured", "—", "missing"],
    ["not measured", "--", "missing"],
    ["not measured", "none", "missing"],
    ["not measured", "nil", "missing"],
    ["not measured", "not measured", "missing"],
    ["not measured", "TBD", "missing"],
    ["a note that takes it back", "1.82 cracked at eye", "refused"],
    ["a note that takes it back", "1.82 bent", "refused"],
    ["a note that takes it back", "1.82 in (damaged)", "refused"],
    ["a note that takes it back", "1.82 last year", "refused"],
    ["a note that takes it back", "1.82 as new", "refused"],
    ["a note that takes it back", "1.82 nominal", "refused"],
    ["a note that takes it back", "1.82 not checked", "refused"],
    ["a note that takes it back", "1.82 recheck", "refused"],
    ["a note that takes it back", "1.82 mm reject", "refused"],
    ["unit of another kind", "1.82 kg", "refused"],
    ["unit of another kind", "1.82 lbs", "refused"],
    ["unit of another kind", "1.82t", "refused"],
    ["unit of another kind", "12 ton", "refused"],
    ["unit of another kind", "47.6 thou", "refused"],
    ["unit that is none", "47.6mn", "refused"],
    ["unit that is none", "5 %", "refused"],
    ["unit of angle", "5°", "refused"],
  ];
  for (const [rung, cell, read] of ladder)
    it(`${rung}, ${shown(cell)}: ${read}`, () => {
      expect(length(cell)).toBe(read);
    });
});

describe("what a refused length says", () => {
  it("a size that became a date names the day and what to type", () => {
    // 46089 is 8 March 2026: 45658 is 1 January 2025, 365 days on is 1 January 2026 (46023), 66 days on is 8 March.
    for (const cell of [{ serial: 46089 }, 46089]) {
      const said = why(readLength(cell, { assume: "mm" }));
      expect(said).toContain("this cell is a date (2026-03-08)");
      expect(said).toContain("0 3/4");
      expect(said).toContain("format the column as text");
    }
    expect(why(readLength("4-Mar", { assume: "in" }))).toContain("date");
  });
  it("a figure of two readings shows both", () => {
    const said = why(readLength("1,875", { assume: "mm" }));
    expect(said).toContain("1.875");
    expect(said).toContain("1875");
  });
  it("a 0 where nothing tells the unit is a blank cell, not a size without a unit", () => {
    for (const cell of [0, null, ""]) expect(readLength(cell, { assume: null }).kind).toBe("missing");
  });
  it("a bare number where nothing tells the unit asks for one", () => {
    for (const cell of [1.875, "1.875", "1 7/8"]) expect(why(readLength(cell, { assume: null }))).toContain("no unit");
  });
  it("a unit of another kind is named", () => {
    expect(why(readLength("1.82 kg", { assume: "in" }))).toContain("kg");
  });
});

describe("a comma in a length", () => {
  const cases: [text: string, unknown: string, comma: string, point: string][] = [
    // text, locale unknown, decimal comma, decimal point
    ["47,6", "238/5 in", "238/5 in", "238/5 in"],
    ["1,875", "refused", "15/8 in", "1875 in"],
    ["12,500", "refused", "25/2 in", "12500 in"],
    ["0,875", "7/8 in", "7/8 in", "7/8 in"],
    ["1,87", "187/100 in", "187/100 in", "187/100 in"],
    ["1.875", "15/8 in", "refused", "15/8 in"],
    ["0.875", "7/8 in", "7/8 in", "7/8 in"],
    ["1,2,3", "refused", "refused", "refused"],
    ["1,234,567", "1234567 in", "1234567 in", "1234567 in"],
    ["1 7/8", "15/8 in", "15/8 in", "15/8 in"],
  ];
  for (const [text, unknown, comma, point] of cases)
    it(`"${text}": ${unknown}; with a decimal comma ${comma}; with a decimal point ${point}`, () => {
      expect(length(text)).toBe(unknown);
      expect(length(text, { decimalComma: true })).toBe(comma);
      expect(length(text, { decimalComma: false })).toBe(point);
    });
});

describe("a fraction where the unit would be mm", () => {
  // Nobody measures a quarter of a millimetre as 1/4: it is a quarter inch under the wrong heading.
  for (const text of ["1/4", "1 7/8", "1-7/8", "¼", "1⅞", "1 / 64", "1/4 at the saddle"])
    it(`"${text}" is refused, and what to type is said`, () => {
      expect(why(readLength(text, { assume: "mm" }))).toBe(
        "it is a fraction, and figures without a unit are mm here; type in behind it, or give it in mm",
      );
      expect(length(text, { assume: "mm", times: exact(10) }), "in centimetres").toBe("refused");
      expect(length(text), "in inches").toMatch(/ in$/);
    });
  it("with its own unit it is read", () => {
    expect(length("1/4 in", { assume: "mm" })).toBe("1/4 in");
    expect(length('1 7/8"', { assume: "mm" })).toBe("15/8 in");
    expect(length("2' 1/2\"", { assume: "mm" })).toBe("49/2 in");
    expect(length("1/2 mm", { assume: "mm" })).toBe("1/2 mm");
  });
  it("makes no verdict of a swivel's clearance, a nick or a gauge, and the reason names the heading", () => {
    const rows: readonly (readonly [CellRecord, string])[] = [
      [{ ...good("swivel"), unit: "mm", sectionNew: 20, sectionNow: 20, clearance: "1/4" }, "Swivel clearance"],
      [{ ...good("shackle"), nickDepth: "1/16", nickPart: "bow" }, "Nick depth"],
      [{ ...good("shackle"), gauge: "1/64" }, "Gauge reads to"],
      [{ ...good("shackle"), sectionNow: "19 3/4" }, "Section now"],
    ];
    for (const [cells, heading] of rows) {
      const verdict = judged(cells);
      expect(verdict.decision, heading).toBe("NO VERDICT");
      expect(verdict.reason).toContain(`in "${heading}" cannot be used: it is a fraction`);
    }
  });
  it("a nominal size stays what the trade means by it: 3/8 chain is in inches", () => {
    expect(judged({ ...good("chain sling"), unit: "mm", sectionNow: 9.6 }).decision).toBe("KEEP");
    expect(judged({ ...good("running rope"), unit: "mm", ropeNow: 12.8 }).decision).toBe("KEEP");
  });
});

describe("a length with a note behind it", () => {
  it("keeps the figure and repeats the note where it tells only that, how and where it was measured", () => {
    for (const [text, note] of [
      ["1.82 see note", "see note"],
      ["1.82 in see note", "see note"],
      ["1.82 see remarks", "see remarks"],
      ["1.82 in. (at the saddle)", "at the saddle"],
      ["1.82 ok", "ok"],
      ["1.82, checked", "checked"],
      ["1.82 good", "good"],
      ["1.82 measured at crown", "measured at crown"],
      ["1.82 at left ear, vernier", "at left ear, vernier"],
      ["1.82 (ok; at the throat)", "ok; at the throat"],
      ["1.82 with calipers", "with calipers"],
      ["1.82 by gauge", "by gauge"],
      ["1.82 dia.", "dia."],
      ["1.82 in thick", "thick"],
      ["1.82 at thinnest point", "at thinnest point"],
      ["1.82 bow", "bow"],
      ["1.82 deep", "deep"],
    ] as const) {
      const read = readLength(text, { assume: "in" });
      expect(read.kind, text).toBe("value");
      if (read.kind !== "value") return;
      expect(toNumber(read.value.size)).toBe(1.82);
      expect(read.note).toBe(`"${note}" stands beside the reading`);
    }
  });
  it("is refused where the note says anything else, whatever it says", () => {
    for (const note of [
      "scrap",
      "mm defective",
      "worn",
      "worn out",
      "gouged",
      "elongated",
      "twisted",
      "pitted",
      "u/s",
      "condemned",
      "out of service",
      "min allowed",
      "min",
      "max",
      "new",
      "ok but bent",
      "not ok",
      "no good",
      "at limit",
      "at wear limit",
      "at crown, scrap",
      "replace",
      "discard",
      "JS",
      "NG",
      "nicked",
      "rusty",
      "flat spot",
      "avg",
      "average",
      "mean",
      "nominal",
      "left",
      "gauge",
      "at saddle worn",
      "see tag",
      "see note, scrap",
      "quarantine",
      "repaired",
      "welded",
      "limit",
      "to be replaced",
      "measured before grinding",
      "désaffecté",
      "verschlissen",
      "x",
    ]) {
      const read = readLength(`1.82 ${note}`, { assume: "in" });
      expect(read.kind, note).toBe("refused");
      const verdict = judged({ ...good("shackle"), sectionNow: `19.5 ${note}` });
      expect(verdict.decision, note).toBe("NO VERDICT");
    }
    expect(why(readLength("19.5 scrap", { assume: "mm" }))).toBe(
      '"scrap" beside it leaves the reading in doubt; type the reading alone and the rest under Remarks or its own heading',
    );
  });
  it("a size says what it is the size of", () => {
    for (const size of [
      "3/8 alloy chain",
      "3/8 chain",
      "3/8 nominal",
      "3/8 in chain",
      "3/8 grade 80 chain",
      "3/8 alloy, grade 80",
      "3/8 nom.",
    ])
      expect(judged({ ...good("chain sling"), size }).decision, size).toBe("KEEP");
    for (const size of ["1/2 wire rope", "1/2 in rope", "1/2 rope"])
      expect(judged({ ...good("running rope"), size }).decision, size).toBe("KEEP");
    for (const size of ["3/8 worn", "3/8 chain scrap", "chain", "3/8 or so chain"])
      expect(judged({ ...good("chain sling"), size }).decision, size).toBe("NO VERDICT");
  });
});

describe("a length that can be nothing at all", () => {
  it("0 and none are readings of a clearance or a nick", () => {
    for (const cell of [0, "0", "none", "nil", "0 mm"]) expect(length(cell, { zero: true }), String(cell)).toMatch(/^0 /);
  });
  it("a blank is not", () => {
    for (const cell of [null, undefined, "", " ", "n/a", "-"]) expect(length(cell, { zero: true }), String(cell)).toBe("missing");
  });
});

const plain = (read: Read<Exact>): string => (read.kind === "value" ? read.value.toFraction() : read.kind);

describe("a count", () => {
  const ladder: [cell: CellValue, read: string][] = [
    [0, "0"],
    [7, "7"],
    ["7", "7"],
    ["７", "7"],
    [" 7 ", "7"],
    ["7.0", "7"],
    ["none", "0"],
    ["nil", "0"],
    ["zero", "0"],
    [null, "missing"],
    [undefined, "missing"],
    ["", "missing"],
    ["n/a", "missing"],
    ["-", "missing"],
    [2.5, "refused"],
    ["2,5", "refused"],
    ["3 or 4", "refused"],
    ["3-4", "refused"],
    ["3?", "refused"],
    ["about 3", "refused"],
    [">3", "refused"],
    ["several", "refused"],
    [-1, "refused"],
    ["-1", "refused"],
    [true, "refused"],
    ["#REF!", "refused"],
    [{ serial: 46089 }, "refused"],
    [Number.NaN, "refused"],
    ["5 per lay", "refused"],
    ["1/2", "refused"],
    // Two counts in one cell are no count of 0.
    ["0/12", "refused"],
    ["0 / 5", "refused"],
    ["0 0/2", "refused"],
    ["12/0", "refused"],
    ["3/6", "refused"],
    ["2 2/4", "refused"],
    ["½", "refused"],
    ["3 of 6", "refused"],
  ];
  for (const [cell, read] of ladder)
    it(`${typeof cell === "object" && cell !== null ? "a date cell" : JSON.stringify(cell)}: ${read}`, () => {
      expect(plain(readCount(cell))).toBe(read);
    });
});

describe("an angle in degrees", () => {
  const ladder: [cell: CellValue, read: string][] = [
    [0, "0"],
    [10, "10"],
    [10.5, "21/2"],
    ["10", "10"],
    ["10°", "10"],
    ["10º", "10"],
    ["10˚", "10"],
    ["10 deg", "10"],
    ["10 deg.", "10"],
    ["10 degrees", "10"],
    ["1 degree", "1"],
    ["10,5", "21/2"],
    ["none", "0"],
    ["no", "0"],
    [180, "180"],
    [null, "missing"],
    [undefined, "missing"],
    ["", "missing"],
    ["n/a", "missing"],
    [181, "refused"],
    ["200 deg", "refused"],
    [-5, "refused"],
    ["slight", "refused"],
    ["yes", "refused"],
    ["10?", "refused"],
    ["5 to 10", "refused"],
    [true, "refused"],
    [{ serial: 46089 }, "refused"],
    ["#N/A", "refused"],
    ["0/3", "refused"],
    ["0/10°", "refused"],
    ["1/2", "refused"],
    ["2 1/2 deg", "refused"],
  ];
  for (const [cell, read] of ladder)
    it(`${typeof cell === "object" && cell !== null ? "a date cell" : JSON.stringify(cell)}: ${read}`, () => {
      expect(plain(readDegrees(cell))).toBe(read);
    });
});

const look = (cell: CellValue, column: "fault" | "sound"): string => {
  const read = readSeen(cell, column);
  return read.kind === "value" ? read.value : read.kind;
};

describe("an observation", () => {
  // cell, read in a column of faults (Cracks), read in a column that asks whether all is well (Stitching sound)
  const ladder: [cell: CellValue, fault: string, sound: string][] = [
    ["none", "sound", "fault"],
    ["None", "sound", "fault"],
    ["no", "sound", "fault"],
    ["N", "sound", "fault"],
    ["nil", "sound", "refused"],
    ["none found", "sound", "refused"],
    ["none seen", "sound", "refused"],
    ["no cracks", "sound", "refused"],
    ["no damage", "sound", "sound"],
    ["not found", "sound", "refused"],
    ["found", "fault", "refused"],
    ["yes", "fault", "sound"],
    ["Y", "fault", "sound"],
    ["ok", "sound", "sound"],
    ["OK.", "sound", "sound"],
    ["good", "sound", "sound"],
    ["pass", "sound", "sound"],
    ["Satisfactory", "sound", "sound"],
    ["fail", "fault", "fault"],
    ["bad", "fault", "fault"],
    ["damaged", "fault", "fault"],
    ["not ok", "fault", "fault"],
    ["hairline", "fault", "refused"],
    ["slight", "fault", "refused"],
    ["cracked", "fault", "fault"],
    ["missing", "refused", "fault"],
    ["illegible", "refused", "fault"],
    ["legible", "refused", "sound"],
    ["fitted", "refused", "sound"],
    ["works", "refused", "sound"],
    ["loose", "refused", "fault"],
    ["seized", "refused", "fault"],
    ["not seated", "refused", "fault"],
    ["fully seated", "refused", "sound"],
    [true, "fault", "sound"],
    [false, "sound", "fault"],
    [1, "refused", "refused"],
    [0, "missing", "missing"],
    [null, "missing", "missing"],
    [undefined, "missing", "missing"],
    ["", "missing", "missing"],
    ["\u00a0", "missing", "missing"],
    ["n/a", "missing", "missing"],
    ["N/A", "missing", "missing"],
    ["na", "missing", "missing"],
    ["-", "missing", "missing"],
    ["not checked", "missing", "missing"],
    ["not inspected", "missing", "missing"],
    ["tbd", "missing", "missing"],
    ["?", "refused", "refused"],
    ["ok?", "refused", "refused"],
    ["none?", "refused", "refused"],
    ["maybe", "refused", "refused"],
    ["x", "refused", "refused"],
    ["✓", "refused", "refused"],
    ["✔", "refused", "refused"],
    ["#REF!", "refused", "refused"],
    [{ serial: 46089 }, "refused", "refused"],
  ];
  for (const [cell, fault, sound] of ladder)
    it(`${typeof cell === "object" && cell !== null ? "a date cell" : JSON.stringify(cell)}: ${fault} among the faults, ${sound} where yes is well`, () => {
      expect(look(cell, "fault")).toBe(fault);
      expect(look(cell, "sound")).toBe(sound);
    });

  describe("a good word that something takes back is not good", () => {
    for (const text of [
      "ok but hairline at eye",
      "ok, hairline at eye",
      "OK; twisted",
      "good - elongated",
      "none, slight gouge",
      "none; hairline at saddle",
      "ok, pitted at crown",
      "ok (kinked)",
      "OK, stretched a little",
      "clean, torn at the end",
      "ok, replace soon",
      "ok until next month",
      "ok, recheck",
      "good, illegible in part",
      "no: see photo",
      "none, 2 found",
    ])
      it(`"${text}"`, () => {
        expect(look(text, "fault")).not.toBe("sound");
      });
    for (const text of [
      "yes, illegible in part",
      "yes but loose",
      "ok, faded",
      "yes, bent",
      "legible, half of it",
      "works, sticks at times",
      "present - does not close",
      "fitted, sprung",
      "yes, replace soon",
    ])
      it(`"${text}"`, () => {
        expect(look(text, "sound")).not.toBe("sound");
      });
  });

  describe("a word of damage anywhere in the cell is a fault", () => {
    for (const text of [
      "ferrule cracked",
      "side plate bent",
      "2 links stretched",
      "eye badly distorted",
      "3 strands kinked at 2 m",
      "ok, bent",
      "bent pin replaced",
      "outer cover torn",
      "weld at crown cracked",
    ])
      it(`"${text}"`, () => {
        expect(look(text, "fault")).toBe("fault");
        expect(look(text, "sound")).toBe("fault");
      });
  });
  describe("unless words beside it deny, doubt, lessen or date it: then a person has to say what it is", () => {
    for (const text of [
      "side plate not bent",
      "no bent links",
      "pin bent, replaced",
      "was bent",
      "previously cracked, repaired",
      "slightly bent",
      "a bit corroded",
      "possibly cracked",
      "may be cracked",
      "looks bent",
      "suspected bent",
      "check for bent pin",
      "never kinked",
      "without torn cover",
      "shank bent last year",
    ])
      it(`"${text}"`, () => {
        expect(look(text, "fault")).toBe("refused");
        expect(look(text, "sound")).toBe("refused");
      });
  });

  describe("nothing was found, in the words of clerks", () => {
    const words = [
      "none noted",
      "none observed",
      "none detected",
      "none present",
      "no corrosion",
      "no kinks",
      "no wear",
      "no deformation",
      "no cracks detected",
      "not cracked",
      "not bent",
      "not found",
      "not detected",
      "not worn",
      "no indications",
      "no defects noted",
      "nil found",
      "all clear",
      "nothing noted",
      "nothing found",
      "no damage seen",
      "No visible cracks",
      "no visible damage noted",
      "no cracks or bends",
      "no wear/damage",
      "no broken wires",
      "no heat damage",
      "free of cracks",
      "free from defects",
      "no cracks, not bent",
      "none noted; all clear",
      "no corrosion, checked",
      "NO DEFECTS NOTED.",
    ];
    for (const text of words)
      it(`"${text}"`, () => {
        expect(look(text, "fault")).toBe("sound");
      });
    it("counts where yes is well only as far as it speaks of damage to the thing itself", () => {
      const ofTheThing = [
        "no defects noted",
        "no damage seen",
        "no visible damage noted",
        "free from defects",
        "NO DEFECTS NOTED.",
        "no broken wires",
        "all clear",
      ];
      for (const text of words) expect(look(text, "sound") === "sound", text).toBe(ofTheThing.includes(text));
    });
    for (const text of [
      "none noted yet",
      "no further cracks",
      "no change",
      "no cracks but bent",
      "no cracks noted, slight bend",
      "not cracked much",
      "no new cracks",
      "no cracks at eye",
      "nothing serious",
      "not all clear",
      "all clear except eye",
      "no bent links",
      "no means to tell",
      "no visible means",
      "none present?",
      "no more room",
      "nothing noted, 2 broken wires",
      "not noted down",
      "not tested",
      "no inspection",
      "no access",
      "no light",
      "not cleaned",
      "free of cracks at crown only",
      "no cracks. Bent",
      "not bent but cracked",
      "no cracks or so",
      "no cracks or worse",
      "not visible from below",
      "no record",
    ])
      it(`but not "${text}"`, () => {
        expect(look(text, "fault")).not.toBe("sound");
      });
  });

  it("a good word with a harmless remark stays good", () => {
    for (const text of ["none found", "none, checked", "no cracks, no damage", "ok (clean)", "none seen; ok"])
      expect(look(text, "fault"), text).toBe("sound");
    for (const text of ["yes, legible", "yes (new)", "ok, checked", "fitted; works"]) expect(look(text, "sound"), text).toBe("sound");
  });
});

describe("words that are sound in some columns only", () => {
  it("surface rust is what the column of corrosion allows, and nothing beyond it", () => {
    const rusty = (corrosion: string): string => judged({ ...good("wire rope sling"), corrosion }).decision;
    for (const text of [
      "surface rust",
      "Light surface rust",
      "slight surface rust",
      "surface rust only",
      "superficial rust",
      "light rust",
      "light surface rust, cleaned",
      "surface rust.",
    ])
      expect(rusty(text), text).toBe("KEEP");
    for (const text of [
      "surface rust and pitting",
      "surface rust, pitted",
      "heavy surface rust",
      "light surface rust?",
      "surface rust at the ferrule",
      "light corrosion",
      "surface rust, some pitting",
      "no longer surface rust",
      "slight",
    ])
      expect(outOfUse(judged({ ...good("wire rope sling"), corrosion: text }).decision), text).toBe(true);
    for (const cell of ["cracks", "deformed", "heat"] as const)
      expect(outOfUse(judged({ ...good("shackle"), [cell]: "surface rust" }).decision), cell).toBe(true);
    expect(judged({ ...good("shackle"), corrosion: "light surface rust" }).decision).toBe("KEEP");
    expect(outOfUse(judged({ ...good("web sling"), corrosion: "heavy rust" }).decision)).toBe(true);
  });
  it("none fitted does not say whether one has to be: it asks for none required", () => {
    for (const [kind, cell] of [
      ["web sling", "endFittings"],
      ["roundsling", "endFittings"],
      ["wire rope sling", "endFittings"],
      ["hook", "latch"],
      ["chain sling", "latch"],
    ] as const)
      for (const text of ["none fitted", "Not fitted", ...(cell === "endFittings" ? ["no fittings", "no end fittings"] : [])]) {
        const verdict = judged({ ...good(kind), [cell]: text });
        expect(verdict.decision, `${kind} ${cell} ${text}`).toBe("NO VERDICT");
        expect(verdict.reason).toContain("type none required where there rightly is none, else no");
      }
    // Gear that is never without the part, and words that say that it is gone.
    for (const text of ["none fitted", "not fitted"])
      expect(judged({ ...good("mesh sling"), endFittings: text }).decision, text).toBe("REMOVE");
    for (const text of ["missing", "no", "none", "broken off"])
      expect(outOfUse(judged({ ...good("hook"), latch: text }).decision), text).toBe(true);
    for (const text of ["n/a", "not applicable"])
      expect(judged({ ...good("web sling"), endFittings: text }).decision, text).toBe("NO VERDICT");
  });
  it("free and turns tell that something turns, and nothing of fasteners, pins or wedges", () => {
    for (const text of ["free", "freely", "turns", "Turns freely", "free, checked"]) {
      expect(judged({ ...good("swivel"), turnsFreely: text }).decision, text).toBe("KEEP");
      expect(judged({ ...good("mesh sling"), turnsFreely: text }).decision, text).toBe("KEEP");
      for (const [kind, cell] of [
        ["block", "fasteners"],
        ["shackle", "pinSeated"],
        ["wedge socket", "wedge"],
        ["hook", "latch"],
        ["hook", "tag"],
        ["eyebolt", "threads"],
        ["web sling", "stitching"],
        ["web sling", "endFittings"],
        ["clips", "liveEnd"],
        ["block", "sheaveTrue"],
      ] as const)
        expect(judged({ ...good(kind), [cell]: text }).decision, `${kind} ${cell} ${text}`).toBe("NO VERDICT");
    }
    for (const text of ["turns true", "runs true", "true"])
      expect(judged({ ...good("block"), sheaveTrue: text }).decision, text).toBe("KEEP");
    for (const text of ["free but stiff", "turns, sticks", "not free", "free, cracked"])
      expect(judged({ ...good("swivel"), turnsFreely: text }).decision, text).not.toBe("KEEP");
  });
  it("none required is in order only on gear that can be without the part", () => {
    for (const [kind, cell] of [
      ["hook", "latch"],
      ["load block", "latch"],
      ["wire rope sling", "endFittings"],
      ["wire rope sling", "latch"],
      ["chain sling", "endFittings"],
      ["chain sling", "latch"],
      ["web sling", "endFittings"],
      ["roundsling", "endFittings"],
      ["fibre rope sling", "endFittings"],
    ] as const)
      for (const text of ["none required", "not required", "n/r"])
        expect(judged({ ...good(kind), [cell]: text }).decision, `${kind} ${cell}`).toBe("KEEP");
    for (const [kind, cell] of [
      ["running rope", "endFittings"],
      ["rotation resistant rope", "endFittings"],
      ["standing rope", "endFittings"],
      ["mesh sling", "endFittings"],
      ["plate clamp", "latch"],
      ["web sling", "stitching"],
      ["shackle", "pinSeated"],
      ["block", "fasteners"],
      ["wedge socket", "wedge"],
      ["link", "tag"],
      ["swivel", "turnsFreely"],
    ] as const)
      for (const text of ["none required", "not required", "n/r"]) {
        const verdict = judged({ ...good(kind), [cell]: text });
        expect(verdict.decision, `${kind} ${cell} ${text}`).toBe("NO VERDICT");
        expect(verdict.reason).toContain("this gear is never without it");
      }
    expect(judged({ ...good("plate clamp"), latch: "none fitted, none required" }).decision).toBe("REMOVE");
  });
});

describe("text of a cell", () => {
  const cases: [cell: CellValue, text: string][] = [
    ["  Tern  Point\u00a0Yard ", "Tern Point Yard"],
    [12, "12"],
    [0, ""],
    [null, ""],
    [undefined, ""],
    [true, "TRUE"],
    [{ serial: 46089 }, "2026-03-08"],
    ["Ｈ－１２", "H-12"],
  ];
  for (const [cell, text] of cases)
    it(`${JSON.stringify(cell)} is "${text}"`, () => {
      expect(readText(cell)).toBe(text);
    });
});

const date = (cell: CellValue): string => {
  const read = readDate(cell);
  return read.kind === "value" ? `${read.text} ${String(read.value)}` : read.kind;
};

describe("a date", () => {
  const ladder: [cell: CellValue, read: string][] = [
    [46089, "2026-03-08 46089"],
    [46089.75, "2026-03-08 46089"],
    [{ serial: 46089.5 }, "2026-03-08 46089"],
    ["2026-03-08", "2026-03-08 46089"],
    ["2026-03-08T10:30", "2026-03-08 46089"],
    ["2026/3/8", "2026-03-08 46089"],
    ["8 Mar 2026", "2026-03-08 46089"],
    ["8-Mar-26", "2026-03-08 46089"],
    ["8th March 2026", "2026-03-08 46089"],
    ["March 8, 2026", "2026-03-08 46089"],
    // 31 March 2026 is 23 days later.
    ["31/03/2026", "2026-03-31 46112"],
    ["03/31/2026", "2026-03-31 46112"],
    ["31.3.26", "2026-03-31 46112"],
    // Day and month are the same: 3 March 2026 is 5 days before the 8th.
    ["3/3/2026", "2026-03-03 46084"],
    ["3/8/2026", "refused"],
    ["08-03-26", "refused"],
    ["2026-02-30", "refused"],
    ["31/04/2026", "refused"],
    ["2025-02-29", "refused"],
    ["soon", "refused"],
    ["March 2026", "refused"],
    [2026, "refused"],
    ["2026", "refused"],
    [0, "missing"],
    [null, "missing"],
    [undefined, "missing"],
    ["", "missing"],
    ["n/a", "missing"],
    ["-", "missing"],
    [true, "refused"],
    [-5, "refused"],
    [3000000, "refused"],
    [Number.NaN, "refused"],
    [Number.POSITIVE_INFINITY, "refused"],
    ["#REF!", "refused"],
  ];
  for (const [cell, read] of ladder)
    it(`${typeof cell === "object" && cell !== null ? "a date cell" : JSON.stringify(cell)}: ${read}`, () => {
      expect(date(cell)).toBe(read);
    });
  it("two readings of one date are refused with how to write it", () => {
    expect(why(readDate("3/8/2026"))).toContain("2026-03-31");
  });
});

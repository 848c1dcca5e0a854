/** What is done with a column: read, not about condition, set aside, or asked about. */
import { describe, expect, it } from "vitest";
import { type CellValue } from "../../src/engine/reading/cell-value";
import { matchHeadings } from "../../src/engine/log/match-headings";
import { tells } from "../../src/engine/log/besides";
import { judgeRowOf } from "../../src/engine/ask/one-row";
import { reportOn } from "../../src/engine/report/report";
import { DEFAULT_BASIS } from "../../src/engine/rules/rule-sets";

const state = (heading: string, choices = {}): string => matchHeadings(["Id", "Gear", heading], choices).matches[2]?.state ?? "";
const LINK = ["Id", "Gear", "Section as-new (mm)", "Section now (mm)", "Cracks", "Bent or stretched", "Identification legible"];
const GOOD: CellValue[] = ["L-1", "link", 30, 30, "none", "none", "yes"];
const judged = (heading: string, cell: CellValue) => judgeRowOf([[...LINK, heading]], [[...GOOD, cell]], "");
const log = (heading: string, ...cells: CellValue[]) =>
  reportOn([[...LINK, heading], ...cells.map((cell, i) => [`L-${String(i)}`, ...GOOD.slice(1), cell])], {
    basis: DEFAULT_BASIS,
    asOf: 46351,
  })?.items.map((item) => item.verdict.decision);

describe("a column", () => {
  it.each([
    "Purchase date",
    "PO number",
    "Price",
    "Supplier",
    "Certificate No.",
    "Drawing no.",
    "Cost centre",
    "Colour code",
    "Photo",
    "Weight (kg)",
    "Length (m)",
    "Leg length",
    "Job no.",
    "Customer",
    "Owner",
    "Manufacturer",
    "Part number",
    "Date of manufacture",
    "Year of manufacture",
    "Next due",
    "Due date",
    "Shelf",
    "Barcode",
    "RFID",
    "Invoice no.",
    "Warranty",
    "Grade",
    "Material",
    "MBL",
    "Proof load (t)",
    "Safety factor",
    "Quantity",
    "Max throat (mm)",
    "Section min allowed",
    "Issued to",
    "Signature",
    "Report no.",
    "Proof test date",
    "Certificate expiry date",
    "Effective length",
    "Rope length (m)",
    "Crane",
    "Department",
    "Twist when new",
  ])('"%s" is not about condition', (heading) => {
    expect(["not about condition", "read"]).toContain(state(heading));
    expect(judged(heading, "12").decision).toBe("KEEP");
  });
  it.each([
    "Wear %",
    "Zustand",
    "Dim A",
    "Elong.",
    "Latch required?",
    "Cotter pin (mm)",
    "Latch camera",
    "Min section",
    "Stamp 3",
    "Core",
    "Proof test",
    "Foo",
  ])('"%s" is not understood: a filled cell asks, and the sentence says how to go on', (heading) => {
    expect(state(heading)).toBe("not understood");
    const verdict = judged(heading, "12");
    expect(verdict.decision).toBe("NO VERDICT");
    for (const words of [`"${heading}"`, "not understood", "answer in Log", "rename it", "leave it out of the range", "Not judged:"])
      expect(verdict.reason).toContain(words);
    expect(judged(heading, "").decision).toBe("KEEP");
  });
  it("that a heading may mean is a proposal, which the user confirms", () => {
    expect(matchHeadings(["Id", "Gear", "Latch camera"]).matches[2]).toMatchObject({ field: null, proposal: "latch" });
    expect(matchHeadings(["Id", "Gear", "Latch camera"], { "latch camera": "latch" }).matches[2]).toMatchObject({
      field: "latch",
      state: "read",
    });
  });
  it("that the user sets aside says nothing, also by its heading alone", () => {
    expect(state("Latch camera", { "latch camera": null })).toBe("set aside");
    expect(state("Remarks", { remarks: null })).toBe("set aside");
    for (const heading of ["Not judged: Wear %", "not judged: Remarks", "NOT JUDGED:Failed"]) {
      expect(state(heading)).toBe("set aside");
      expect(judged(heading, "cracked, do not use").decision).toBe("KEEP");
    }
  });
  it("without a heading asks as well", () => {
    expect(judged("", "cracked").decision).toBe("NO VERDICT");
    expect(judged("", "cracked").reason).toContain("column H of the log");
    expect(judged("", "").decision).toBe("KEEP");
  });
  it("of names or numbers never hides a plain word against the item", () => {
    for (const [heading, cell] of [
      ["Supplier", "CONDEMNED"],
      ["Part number", "do not use"],
    ] as const)
      expect(judged(heading, cell).decision, heading).toBe("NO VERDICT");
  });
});

describe("the cells of a column that is not understood", () => {
  it.each([
    null,
    "",
    " ",
    "-",
    { serial: 46000 },
    "2026-03-31",
    "12 May 2026",
    "$120.50",
    "€ 1.200,00",
    "120 USD",
    "https://host.test/a",
    "C:/x/scan 1.pdf",
    "PO-4471",
    "LT/2024/17",
    "AB12345",
  ] as CellValue[])("%j tells nothing", (cell) => {
    expect(tells(cell)).toBe(false);
  });
  it.each([
    0,
    12,
    true,
    false,
    "12",
    "12 mm",
    "3/8",
    "yes",
    "no",
    "cracked",
    "A",
    "F1",
    "12x",
    "REJ-2024",
    "BAD 100",
    "3 of 4",
    "1/2 in",
    "10 %",
  ] as CellValue[])("%j asks", (cell) => {
    expect(tells(cell)).toBe(true);
  });
  it("ask all together where one of the log does", () => {
    expect(log("Foo", "PO-4471", "", "PO-4472")).toEqual(["KEEP", "KEEP", "KEEP"]);
    expect(log("Foo", "PO-4471", "", "worn")).toEqual(["NO VERDICT", "KEEP", "NO VERDICT"]);
  });
});

describe("one row alone", () => {
  it("has never a better verdict than the same row of a log: a code may stand in a column that asks", () => {
    for (const cell of ["PO-4471", "2026-03-31", { serial: 46000 }, "worn", 12] as CellValue[])
      expect([cell, judged("Foo", cell).decision]).toEqual([cell, "NO VERDICT"]);
    expect(log("Foo", "PO-4471", "worn")).toEqual(["NO VERDICT", "NO VERDICT"]);
  });
  it("is kept where nothing stands under that heading", () => {
    for (const cell of [null, "", " ", "-", "—"]) expect([cell, judged("Foo", cell).decision]).toEqual([cell, "KEEP"]);
    expect(log("Foo", "-", "worn")).toEqual(["KEEP", "NO VERDICT"]);
  });
});

describe("then and now", () => {
  const HOOK = ["Id", "Gear", "Throat new (mm)", "Section new (mm)", "Section now (mm)", "Twist", "Cracks", "Latch", "Tag"];
  const hook = (headings: string[], ...cells: CellValue[]) =>
    judgeRowOf([[...HOOK, ...headings]], [["H", "hook", 50, 30, 30, "0", "none", "yes", "yes", ...cells]], "");
  it("an older reading that was worse is EXAMINE, until a repair is recorded", () => {
    // 52.5 mm is 5 % of 50 mm; the older 56 mm cannot have closed again.
    const verdict = hook(["Throat now (mm)", "Previous throat (mm)"], 50, 56);
    expect(verdict.decision).toBe("EXAMINE");
    expect(verdict.reason).toContain('"56" in "Previous throat (mm)" is worse than today');
    expect(hook(["Throat now (mm)", "Previous throat (mm)"], 51, 50).decision).toBe("KEEP");
    expect(hook(["Throat now (mm)", "Previous throat (mm)", "Remarks"], 50, 56, "hook replaced in May").decision).toBe("KEEP");
    expect(hook(["Throat now (mm)", "Previous cracks"], 50, "found").decision).toBe("EXAMINE");
    expect(hook(["Throat now (mm)", "Previous cracks"], 50, "none").decision).toBe("KEEP");
  });
  it("within the noise of a gauge, 2 %, it is no worse", () => {
    expect(hook(["Throat now (mm)", "Previous throat (mm)"], 50, 50.5).decision).toBe("KEEP");
  });
  it("of dated columns the newest is today's, and its blank is missing", () => {
    expect(hook(["Throat 2025 (mm)", "Throat 2026 (mm)"], 50, 50.2).decision).toBe("KEEP");
    expect(hook(["Throat 2025 (mm)", "Throat 2026 (mm)"], 50, "").decision).toBe("NO VERDICT");
    expect(hook(["Throat 2026 (mm)", "Throat 2025 (mm)"], 50, 56).decision).toBe("EXAMINE");
    expect(hook(["Throat Mar 2026 (mm)", "Throat Sep 2026 (mm)"], 50, "").decision).toBe("NO VERDICT");
  });
  it("the same heading marked as earlier, as the register carries it", () => {
    expect(matchHeadings(["Id", "Earlier: Throat 2025 (mm)"]).matches[1]).toMatchObject({
      field: null,
      earlier: "throatNow",
      state: "read",
    });
  });
});

describe("headings that offer their answers", () => {
  const decision = (heading: string, cell: CellValue): string =>
    judgeRowOf([[...LINK.filter((h) => h !== "Cracks"), heading]], [[...GOOD.filter((_, i) => i !== 4), cell]], "").decision;
  it.each([
    ["Cracks (Y/N)", "Y", "REMOVE"],
    ["Cracks (Y/N)", "N", "KEEP"],
    ["Cracks (none/found)", "none", "KEEP"],
    ["Cracks (none/found)", "found", "REMOVE"],
    ["Cracks (OK/crack)", "OK", "KEEP"],
    ["Cracks (OK/crack)", "crack", "REMOVE"],
    ["Cracks (OK/crack)", "no", "NO VERDICT"],
    ["Cracks (P/F)", "P", "KEEP"],
    ["Cracks (P/F)", "F", "REMOVE"],
    ["Cracks P/F", "F", "REMOVE"],
    ["Cracks (none/found)", "yes", "REMOVE"],
    ["No cracks (Y/N)", "Y", "KEEP"],
    ["No cracks (Y/N)", "N", "REMOVE"],
  ] as const)("%s: %s is %s", (heading, cell, wanted) => {
    expect(decision(heading, cell)).toBe(wanted);
  });
});

describe("a heading that offers right and wrong", () => {
  const state = (cell: CellValue): string =>
    judgeRowOf([["Id", "Gear", "Latch (right/wrong)"]], [["H", "hook", cell]], "").findings.find((f) => f.check === "latch")?.decision ??
    "";
  it("takes its answers; yes is none of them", () => {
    expect([state("right"), state("wrong"), state("yes")]).toEqual(["KEEP", "REMOVE", "NO VERDICT"]);
  });
});

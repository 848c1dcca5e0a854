import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import ExcelJS from "exceljs";
import { beforeAll, describe, expect, test } from "vitest";
import { FIELDS, type FieldId } from "../src/engine/columns";
import { toSerial } from "../src/engine/numbers/calendar";
import { type CellValue } from "../src/engine/reading/cell-value";
import { type DueState } from "../src/engine/due/intervals";
import { type Report } from "../src/engine/report/model";
import { reportOn } from "../src/engine/report/report";
import { DECISIONS, type Decision } from "../src/engine/decision";
import { SAMPLES } from "../tools/samples.mjs";

const AS_OF = toSerial({ year: 2026, month: 11, day: 25 });
const FOLDER = fileURLToPath(new URL("../sample-workbooks/", import.meta.url));
type Name = keyof typeof SAMPLES;

async function open(bytes: Buffer): Promise<ExcelJS.Workbook> {
  const book = new ExcelJS.Workbook();
  await book.xlsx.load(bytes as unknown as ExcelJS.Buffer);
  return book;
}

/** A cell as the workbook hands it over: only the first cell of a merged area holds its value, an error is its text. */
function cellOf(cell: ExcelJS.Cell): CellValue {
  if (cell.isMerged && cell.master.address !== cell.address) return null;
  const { value } = cell;
  if (value instanceof Date) return { serial: value.getTime() / 86_400_000 + 25569 };
  if (value === null || typeof value === "number" || typeof value === "string" || typeof value === "boolean") return value;
  if (value !== undefined && "error" in value) return value.error;
  throw new Error(`${cell.address} holds something that no sample should hold: ${JSON.stringify(value)}`);
}

function gridOf(sheet: ExcelJS.Worksheet): CellValue[][] {
  return Array.from({ length: sheet.rowCount }, (_, row) =>
    Array.from({ length: sheet.columnCount }, (_, column) => cellOf(sheet.getCell(row + 1, column + 1))),
  );
}

interface Sample {
  readonly name: Name;
  readonly sheets: readonly string[];
  readonly items: number;
  /** Each heading as it is read, and the field it should be read as; null is not used. */
  readonly headings: readonly (readonly [string, FieldId | null])[];
  /** Worksheet rows that are no items. */
  readonly passedOver: readonly (readonly [number, string])[];
  readonly dueStates: readonly DueState[];
  /** What the log has no column for, by kind. */
  readonly lacks: readonly (readonly [kind: string, items: number, field: string])[];
  /** Id, gear kind (null when unknown), decision worked out by hand with the default rules. */
  readonly rows: readonly (readonly [string, string | null, Decision])[];
}

const same = (id: FieldId): readonly [string, FieldId] => [FIELDS[id].heading, id];

const TIDY: Sample = {
  name: "tidy-register.xlsx",
  sheets: ["Gear log"],
  items: 90,
  headings: [
    ...(["id", "gear", "size", "unit"] as const).map(same),
    ["Rated load (t)", "ratedLoad"],
    ["Purchase order", null],
    ...(
      [
        "assembly",
        "place",
        "service",
        "inspected",
        "inspector",
        "gauge",
        "construction",
        "throatNew",
        "throatNow",
        "sectionNew",
        "sectionNow",
        "acrossNew",
        "acrossNow",
        "pinNew",
        "pinNow",
        "twist",
        "clearance",
        "nickDepth",
        "nickPart",
        "brokenLay",
        "brokenStrand",
        "cracks",
        "deformed",
        "latch",
        "tag",
        "pinSeated",
        "turnsFreely",
        "sheaveTrue",
        "fasteners",
        "endFittings",
        "stitching",
        "kinks",
        "heat",
        "chemical",
        "corrosion",
        "cuts",
        "fieldChange",
        "tagged",
        "releasedBy",
        "releasedOn",
        "remarks",
      ] as const
    ).map(same),
  ],
  passedOver: [],
  dueStates: ["OVERDUE", "DUE SOON", "CURRENT", "NO DATE"],
  lacks: [["coupling", 1, "lock"]],
  rows: [
    ["HK-103", "hook", "WATCH"], // throat 2 in to 2.1 in is exactly 5 %; "more than" 5 % removes, so all of the allowance is used and none is left
    ["HK-104", "hook", "REMOVE"], // throat 2 in to 2.13 in is 6.5 %, above 5 % (2.1 in), and 0.001 in of gauge does not reach back
    ["HK-105", "hook", "REMOVE"], // saddle 1.25 in to 1.18 in is 5.6 %, above the 5 % of a highly stressed part
    ["HK-106", "hook", "EXAMINE"], // growth 0.0625 in, limit 0.06875 in, the tape reads to 0.0625 in: on either side
    ["HK-107", "hook", "REMOVE"], // latch missing
    ["HK-108", "hook", "DRESS"], // 0.006 in worn + 0.015 in nick = 0.021 in of 0.75 in is 2.8 %, inside 5 %
    ["HK-109", "hook", "NO VERDICT"], // twist not recorded
    ["HK-110", "hook", "REMOVE"], // tagged out, no release
    ["HK-111", "hook", "KEEP"], // tagged out 8 June, released 30 June by a named role; 42 to 42.5 mm is 1.2 %, 32 to 31.5 mm is 1.6 %
    ["HK-112", "hook", "KEEP"], // no latch required
    ["HK-113", "hook", "REMOVE"], // 4 degrees of twist; any visible twist removes
    ["HK-115", "hook", "WATCH"], // throat 34 to 35.4 mm: 1.4 of 1.7 mm is 82 %
    ["SH-201", "shackle", "EXAMINE"], // shares the winch tackle with the stretched link, inspected on the same day
    ["SH-202", "shackle", "KEEP"], // the same tackle, looked at a week later; wear 1.5 % and 1.4 %
    ["SH-204", "shackle", "REMOVE"], // bow 1 in to 0.9 in is exactly 10 %, and "10 % or more" removes
    ["SH-205", "shackle", "WATCH"], // 8.5 % of 10 % is 85 %
    ["SH-207", "shackle", "REMOVE"], // pin not home
    ["SH-210", "shackle", "DRESS"], // 0.005 in worn + 0.012 in nick = 0.017 of 0.5 in is 3.4 %, inside 5 %
    ["SH-213", "shackle", "REMOVE"], // worn both ways: 0.047 and 0.049 of 0.875 in are 5.4 % and 5.6 %, above 5 % each
    ["SH-216", "shackle", "NO VERDICT"], // pin when new not known
    ["LK-301", "link", "REMOVE"], // stretched
    ["LK-304", "link", "WATCH"], // 0.06 of 0.075 in is exactly 80 %
    ["LK-306", "link", "KEEP"], // 1 in to 0.989 in is 1.1 %
    ["LK-308", "link", "DRESS"], // 0.2 mm worn + 0.6 mm nick = 0.8 of 26 mm is 3.1 %, inside 5 %
    ["LK-309", "link", "REMOVE"], // lug welded on
    ["SW-401", "swivel", "EXAMINE"], // the winch tackle again
    ["SW-403", "swivel", "EXAMINE"], // clearance 0.14 in, above 1/8 in, and the size's own figure is not known
    ["LK-307", "coupling", "NO VERDICT"], // the log has no column for the lock
    ["SW-404", "swivel", "EXAMINE"], // clearance 0.205 in, above 3/16 in
    ["SW-405", "swivel", "REMOVE"], // does not turn
    ["SW-407", "swivel", "KEEP"], // clearance under 1/8 in (3.175 mm), wear under 2.5 %
    ["BL-502", "block", "REMOVE"], // groove corrugated
    ["BL-504", "block", "WATCH"], // pin 0.108 of 0.125 in is 86 %
    ["BL-506", "block", "NO VERDICT"], // fasteners not looked at
    ["BL-507", "block", "KEEP"], // wear of plate and pin under 5 %
    ["CS-601", "chain sling", "KEEP"], // 3/8 in links above 0.36 in; the newer table says 0.342 in
    ["CS-602", "chain sling", "REMOVE"], // 0.34 in under 0.342 in by more than half the gauge
    ["CS-603", "chain sling", "WATCH"], // a new 1/2 in link is 13 mm, 0.512 in: 0.047 of 0.051 in (10 %) is 91 %
    ["CS-606", "chain sling", "NO VERDICT"], // 1/4 in is not in the newer table
    ["CS-607", "chain sling", "REMOVE"], // weld spatter
    ["WR-703", "wire rope sling", "REMOVE"], // 10 broken wires in a lay
    ["WR-704", "wire rope sling", "WATCH"], // 8 of 10
    ["WR-706", "wire rope sling", "KEEP"], // cable laid: 11 of 20
    ["WR-708", "wire rope sling", "NO VERDICT"], // strand not counted
    ["WR-710", "wire rope sling", "REMOVE"], // tagged out without a date and without a release
    ["WS-801", "web sling", "KEEP"], // nothing found
    ["WS-803", "web sling", "REMOVE"], // cut
    ["WS-804", "web sling", "NO VERDICT"], // tag not seen
    ["RS-901", "roundsling", "KEEP"], // nothing found
    ["RS-902", "roundsling", "REMOVE"], // thinner got at it
  ],
};

const MESSY: Sample = {
  name: "messy-log.xlsx",
  sheets: ["LIFTING GEAR", "Phone list"],
  items: 121,
  headings: [
    ["Loc.", "place"],
    ["Equipment", "gear"],
    ["Throat opng (in) New", "throatNew"],
    ["Throat opng (in) Now", "throatNow"],
    ["Latch", "latch"],
    ["Gear no.", "id"],
    ["Cracked?", "cracks"],
    ["Sect. (in) New", "sectionNew"],
    ["Sect. (in) Now", "sectionNow"],
    ["Insp. dt", "inspected"],
    ["Size", "size"],
    ["Marking", "tag"],
    ["Bent / stretched", "deformed"],
    ["Pin dia. (mm) New", "pinNew"],
    ["Pin dia. (mm) Now", "pinNow"],
    ["Pin seated", "pinSeated"],
    ["Twist °", "twist"],
    ["Brk. w. per lay", "brokenLay"],
    ["Brk. w. 1 strand", "brokenStrand"],
    ["Kinks / crush.", "kinks"],
    ["End fittings", "endFittings"],
    ["Cuts, tears", "cuts"],
    ["Stitching", "stitching"],
    ["Heat / chem.", "heat"],
    ["Corr.", "corrosion"],
    ["Swivel clr. (in)", "clearance"],
    ["Turns free", "turnsFreely"],
    ["Sheave", "sheaveTrue"],
    ["Nuts, bolts", "fasteners"],
    ["Nick depth (in)", "nickDepth"],
    ["Nick where", "nickPart"],
    ["Assy", "assembly"],
    ["Svc", "service"],
    ["Insp. by", "inspector"],
    ["Out of service", "tagged"],
    ["Released by", "releasedBy"],
    ["Released on", "releasedOn"],
    ["Shelf", null],
    ["Rem.", "remarks"],
  ],
  passedOver: [
    [7, '"SLIPWAY" stands alone'],
    [31, '"GANTRY" stands alone'],
    [57, '"carried over" stands alone'],
    [58, "headings again"],
    [59, '"PLATE SHOP" stands alone'],
    [94, '"RIGGING STORE" stands alone'],
    [138, '"Total" is a total'],
    [140, "stands alone"],
  ],
  dueStates: ["OVERDUE", "DUE SOON", "CURRENT", "NO DATE"],
  lacks: [
    ["wire rope sling", 13, "ropeNow"],
    ["coupling", 2, "lock"],
  ],
  rows: [
    ["101", "hook", "REMOVE"], // throat 2 to 2 1/8" is 6.25 %
    ["102", "block", "EXAMINE"], // the opened hook's tackle, seen on the same day
    ["104", "shackle", "KEEP"], // the same tackle, seen again on "12 Oct 2026"; 1 1/4 in = 31.75 to 30.6 mm is 3.6 %
    ["106", "wire rope sling", "EXAMINE"], // the same tackle
    ["107", "hook", "WATCH"], // saddle 1 to 61/64: 4.7 % of 5 % is 94 %
    ["108", "shackle", "REMOVE"], // bow 1 to 57/64 is 10.9 %
    ["109", "shackle", "WATCH"], // pin 22 to "20,1" mm: 1.9 of 2.2 is 86 %
    ["110", "wire rope sling", "REMOVE"], // 11 in a lay
    ["111", "wire rope sling", "WATCH"], // 8 of 10 in a lay
    ["112", "wire rope sling", "REMOVE"], // "kinked at the thimble"
    ["113", "link", "WATCH"], // 1 in to 29/32 is 9.4 % of 10 %
    ["114", "block", "REMOVE"], // sheave "worn"
    ["115", "swivel", "EXAMINE"], // clearance 5/32 in is above 1/8 in, and the size's own figure is not known
    ["12A", "swivel", "EXAMINE"], // 7/32" is above 3/16 in
    ["116", "chain sling", "WATCH"], // 13 mm to 15/32" (11.9 mm): 1.09 of 1.3 mm is 84 %
    ["118", "shackle", "KEEP"], // the date is doubtful, the readings are not
    ["120", "web sling", "REMOVE"], // "cut at the eye"
    ["133", "hook", "NO VERDICT"], // #REF!
    ["134", "hook", "NO VERDICT"], // "1,375": 1.375 or 1375
    ["3/4", "hook", "KEEP"], // 1 1/8 in throat unchanged; 19.0 mm to 47/64 in (18.65 mm) is 1.8 %
    ["1-2", "hook", "REMOVE"], // latch missing
    ["=1+1", "hook", "KEEP"], // throat 1 3/8 to 1 13/32 is 2.3 %
    ["@7", "hook", "REMOVE"], // "hairline at the neck"
    ["135", "hook", "REMOVE"], // twist "3°"
    ["136", "hook", "WATCH"], // throat 1 to 1 3/64" is 4.7 % of 5 %
    ["137", "hook", "DRESS"], // 1/64 worn + 1/64 nick = 1/32 of 1 1/2 is 2.1 %, inside 5 % at the bowl
    ["138", "hook", "NO VERDICT"], // twist "?"
    ["139", "hook", "NO VERDICT"], // latch "see note"
    ["140", "hook", "REMOVE"], // tagged out on "12 May 2026"
    ["141", "hook", "KEEP"], // tagged out 2 March, released 20 March
    ["142", "hook", "NO VERDICT"], // "approx 1 3/16"
    ["149", "chain sling", "NO VERDICT"], // the size 3/8 became 8 March
    ["151", "chain sling", "REMOVE"], // 3/8 in to 21/64 = 0.328 in, under 0.342 in
    ["152", "chain sling", "KEEP"], // 1/2 in to "12,2 mm" = 0.480 in: 0.0197 of 0.05 in is 39 %
    ["155", "chain sling", "EXAMINE"], // a nick where no section when new is known
    ["155B", "chain sling", "NO VERDICT"], // 1/4 in is not in the newer table
    ["157", "chain sling", "REMOVE"], // "No tag"
    ["159", "shackle", "NO VERDICT"], // 0.85 in a millimetre column against 22 mm is an inch figure
    ["160", "shackle", "NO VERDICT"], // new and now swapped: 37/64 to 5/8 is 8 % larger
    ["162", "shackle", "NO VERDICT"], // 1/2 became 2 January
    ["163", "shackle", "DRESS"], // "0,4 mm" nick of 25.4 mm is 1.6 %
    ["164", "shackle", "KEEP"], // "0.98 see note": 2 % worn
    ["S/4", "shackle", "KEEP"], // TRUE in the column for the pin's seat is good
    ["165", "link", "DRESS"], // 1/32 nick of 1 1/4 is 2.5 %
    ["166", "link", "NO VERDICT"], // 7/8 became 8 July
    ["168", "coupling", "REMOVE"], // corrosion "slight" is corrosion: only rust that is called so is cleaned off
    ["175", "wire rope sling", "KEEP"], // "W/R sling", no broken wire, everything seen in order
    ["177", "web sling", "REMOVE"], // tag "gone"
    ["178", "roundsling", "REMOVE"], // "melted patch"
    ["179", "roundsling", "KEEP"], // nothing found
    ["180", null, "NO VERDICT"], // a ladder
    ["204", "shackle", "NO VERDICT"], // "x" can mean either
    ["206", "shackle", "KEEP"], // pin "22,0" to "20,9 mm": 1.1 of 2.2 is half
    ["208", "shackle", "REMOVE"], // pin 28 to "25,2" mm is exactly 10 %, and "10 % or more" removes
    ["210", "shackle", "REMOVE"], // "bent, jaw opened"
    ["212", "shackle", "NO VERDICT"], // two figures in one cell
    ["216", "hook", "WATCH"], // throat 1⅜ to 1 7/16: 1/16 of 0.06875 in is 91 %
    ["220", "link", "NO VERDICT"], // "n/a" is not looked at
    ["224", "swivel", "REMOVE"], // "seized"
    ["226", "block", "WATCH"], // pin 32 to "29,1" mm: 2.9 of 3.2 is 91 %
    ["238", "web sling", "NO VERDICT"], // fittings "n/a" are not looked at
  ],
};

const ROUND: Sample = {
  name: "shared-round.xlsx",
  sheets: ["Round", "Notes"],
  items: 45,
  headings: [
    ["Mark", "id"],
    ["Gear", "gear"],
    ["Size (mm)", "size"],
    ["Place", "place"],
    ["Checked on", "inspected"],
    ["Checked by", "inspector"],
    ["Gauge reads to (mm)", "gauge"],
    ["Throat new (mm)", "throatNew"],
    ["Throat now (mm)", "throatNow"],
    ["Section new (mm)", "sectionNew"],
    ["Section now (mm)", "sectionNow"],
    ["Pin new (mm)", "pinNew"],
    ["Pin now (mm)", "pinNow"],
    ["Twist (deg)", "twist"],
    ["Latch works", "latch"],
    ["Pin fully seated", "pinSeated"],
    ["Cracks", "cracks"],
    ["Bent or stretched", "deformed"],
    ["Marking or tag legible", "tag"],
    ["Broken wires per lay", "brokenLay"],
    ["Broken wires in one strand", "brokenStrand"],
    ["Kinks or crushing", "kinks"],
    ["End fittings sound", "endFittings"],
    ["Heat or chemical damage", "heat"],
    ["Corrosion", "corrosion"],
    ["Cuts or tears", "cuts"],
    ["Stitching sound", "stitching"],
    ["Nick depth (mm)", "nickDepth"],
    ["Nick at", "nickPart"],
    ["Remarks", "remarks"],
  ],
  passedOver: [],
  dueStates: ["CURRENT", "DUE SOON", "NO DATE"], // rope slings are inspected monthly (WAC 296-24-29405)
  lacks: [],
  rows: [
    ["W-01", "web sling", "KEEP"], // nothing found
    ["W-03", "web sling", "REMOVE"], // cut
    ["W-04", "web sling", "NO VERDICT"], // stitching not seen
    ["R-01", "roundsling", "KEEP"], // nothing found
    ["R-02", "roundsling", "REMOVE"], // heat
    ["S-01", "shackle", "KEEP"], // 19 to 18.2 mm is 4.2 %
    ["S-03", "shackle", "WATCH"], // 2.2 of 2.5 mm is 88 %
    ["S-04", "shackle", "REMOVE"], // 25 to 22.2 mm is 11.2 %
    ["S-05", "shackle", "DRESS"], // 0.2 worn + 0.8 nick = 1 of 32 mm is 3.1 %, inside 5 %
    ["S-08", "shackle", "REMOVE"], // pin not home
    ["S-10", "shackle", "WATCH"], // pin 1.9 of 2.2 mm is 86 %
    ["S-12", "shackle", "NO VERDICT"], // not filled in yet
    ["H-01", "hook", "KEEP"], // 28 to 28.4 mm is 1.4 %
    ["H-02", "hook", "REMOVE"], // latch
    ["H-03", "hook", "EXAMINE"], // growth 1 mm, limit 1.7 mm, the tape reads to 1 mm: 0 to 2 mm
    ["H-04", "hook", "REMOVE"], // 34 to 36.1 mm is 6.2 %
    ["H-05", "hook", "WATCH"], // 1.5 of 1.7 mm is 88 %, and 0.1 mm of gauge does not reach 1.7
    ["H-06", "hook", "DRESS"], // 0.2 worn + 0.5 nick = 0.7 of 32 mm is 2.2 %, inside 5 %
    ["H-08", "hook", "NO VERDICT"], // not filled in yet
    ["C-01", "chain sling", "KEEP"], // 10 to 9.7 mm, out below 9 mm
    ["C-02", "chain sling", "REMOVE"], // 8.6 mm is under 9 mm (10 %) and under 0.342 in = 8.69 mm
    ["C-03", "chain sling", "WATCH"], // 1.1 of 1.3 mm is 85 %
    ["C-05", "chain sling", "REMOVE"], // links stretched
    ["C-06", "chain sling", "NO VERDICT"], // not filled in yet
    ["WR-01", "wire rope sling", "KEEP"], // 3 in a lay, 1 in a strand
    ["WR-02", "wire rope sling", "REMOVE"], // 12 in a lay
    ["WR-03", "wire rope sling", "WATCH"], // 8 of 10
    ["WR-05", "wire rope sling", "NO VERDICT"], // strand not counted
  ],
};

for (const sample of [TIDY, MESSY, ROUND])
  describe(sample.name, () => {
    let book: ExcelJS.Workbook;
    let grid: CellValue[][];
    let report: Report;

    beforeAll(async () => {
      book = await open(readFileSync(FOLDER + sample.name));
      grid = gridOf(book.worksheets[0]!);
      const judged = reportOn(grid, { basis: ["standard", "practice"], asOf: AS_OF });
      if (judged === null) throw new Error("no log found");
      report = judged;
    });

    test("comes out of the generator as it is committed, cell by cell, the same bytes each time", async () => {
      const bytes = await SAMPLES[sample.name]();
      expect(bytes.equals(await SAMPLES[sample.name]())).toBe(true);
      const made = await open(bytes);
      expect(made.worksheets.map((sheet) => sheet.name)).toEqual(sample.sheets);
      for (const [at, sheet] of made.worksheets.entries()) {
        const kept = book.worksheets[at]!;
        expect(kept.name).toBe(sheet.name);
        expect(gridOf(kept)).toEqual(gridOf(sheet));
        expect(looksOf(kept)).toEqual(looksOf(sheet));
      }
    });

    test("names the yard as its creator, on fixed days, and holds no formula", () => {
      expect(book.creator).toBe("Tern Point Yard");
      expect(book.created.toISOString()).toBe("2026-11-20T00:00:00.000Z");
      expect(book.modified.toISOString()).toBe("2026-11-24T00:00:00.000Z");
      for (const sheet of book.worksheets)
        sheet.eachRow((row) => row.eachCell((cell) => expect(cell.type, cell.address).not.toBe(ExcelJS.ValueType.Formula)));
    });

    test("has its headings matched as meant", () => {
      expect(report.headings.map((match) => [match.heading, match.field])).toEqual(sample.headings);
      const absent = report.lacking.filter(({ columns }) => columns.some(({ there }) => !there));
      expect(absent.map(({ kind, of, columns }) => [kind, of, columns.filter(({ there }) => !there).map(({ field }) => field)])).toEqual(
        sample.lacks.map(([kind, of, field]) => [kind, of, [field]]),
      );
    });

    test("passes over titles, repeated headings and totals, and nothing else", () => {
      expect(report.passedOver.map((passed) => passed.row + 1)).toEqual(sample.passedOver.map(([row]) => row));
      report.passedOver.forEach((passed, at) => expect(passed.why).toContain(sample.passedOver[at]?.[1]));
    });

    test(`holds ${String(sample.items)} items, each id once, and no problem that stops a register`, () => {
      expect(report.items).toHaveLength(sample.items);
      expect(new Set(report.items.map((item) => item.id.toLowerCase())).size).toBe(sample.items);
      expect(report.problems).toEqual([]);
    });

    test("shows every decision and the due states it is meant to show", () => {
      for (const decision of DECISIONS) expect(report.counts[decision], decision).toBeGreaterThan(0);
      const shown = (Object.entries(report.due) as [DueState, number][]).filter(([, count]) => count > 0).map(([state]) => state);
      expect(shown.sort()).toEqual([...sample.dueStates].sort());
    });

    test.each(sample.rows)("%s, a %s, is %s as worked out by hand", (id, gear, decision) => {
      const item = report.items.find((candidate) => candidate.id === id);
      expect(item?.gear).toBe(gear);
      expect(item?.verdict.decision, item?.verdict.reason).toBe(decision);
    });

    test("has worked rows for every decision, and for every gear kind in it", () => {
      expect(new Set(sample.rows.map(([, , decision]) => decision))).toEqual(new Set(DECISIONS));
      expect(new Set(sample.rows.map(([, gear]) => gear))).toEqual(new Set(report.items.map((item) => item.gear)));
    });
  });

/** Number formats, widths, merges and tables: what a visitor sees besides the values. */
function looksOf(sheet: ExcelJS.Worksheet): unknown {
  const formats: string[] = [];
  sheet.eachRow((row) => row.eachCell({ includeEmpty: true }, (cell) => formats.push(`${cell.address} ${cell.numFmt}`)));
  return { formats, widths: sheet.columns.map((column) => column.width), merges: sheet.model.merges, views: sheet.views };
}

describe("the tidy register", () => {
  test("is one real table over all items, all ten gear kinds among them", async () => {
    const book = await open(readFileSync(`${FOLDER}tidy-register.xlsx`));
    const sheet = book.worksheets[0]!;
    const tables = sheet.getTables() as unknown as [ExcelJS.Table & { table: { name: string; tableRef: string } }];
    expect(tables).toHaveLength(1);
    expect(tables[0].table).toMatchObject({ name: "GearLog", tableRef: "A1:AU91" });
    expect(new Set(TIDY.rows.map(([, gear]) => gear)).size).toBe(10);
  });
});

describe("the messy log", () => {
  test("keeps as text what a spreadsheet would turn into a formula or a day", async () => {
    const book = await open(readFileSync(`${FOLDER}messy-log.xlsx`));
    const sheet = book.worksheets[0]!;
    const ids = sheet.getColumn(6),
      remarks = sheet.getColumn(39);
    for (const text of ["3/4", "1-2", "=1+1", "@7", "007", "S/4"]) {
      const found: ExcelJS.Cell[] = [];
      ids.eachCell((cell) => {
        if (cell.value === text) found.push(cell);
      });
      expect(found, text).toHaveLength(1);
      expect(found[0]?.type, text).toBe(ExcelJS.ValueType.String);
      expect(found[0]?.numFmt, text).toBe("@");
    }
    const formulaLike: ExcelJS.Cell[] = [];
    remarks.eachCell((cell) => {
      if (typeof cell.value === "string" && cell.value.startsWith("=")) formulaLike.push(cell);
    });
    expect(formulaLike.length).toBeGreaterThan(0);
    for (const cell of formulaLike) expect(cell.type).toBe(ExcelJS.ValueType.String);
  });

  test("holds sizes that became days, an error cell, non-breaking spaces, and a second sheet that is no log", async () => {
    const book = await open(readFileSync(`${FOLDER}messy-log.xlsx`));
    const cells: ExcelJS.Cell[] = [];
    book.worksheets[0]!.eachRow((row) => row.eachCell((cell) => cells.push(cell)));
    expect(cells.filter((cell) => cell.numFmt === "d-mmm" && cell.value instanceof Date)).toHaveLength(3);
    expect(cells.filter((cell) => cell.type === ExcelJS.ValueType.Error)).toHaveLength(1);
    expect(cells.some((cell) => typeof cell.value === "string" && cell.value.includes("\u00a0"))).toBe(true);
    expect(reportOn(gridOf(book.worksheets[1]!), { basis: ["standard", "practice"], asOf: AS_OF })).toBeNull();
  });
});

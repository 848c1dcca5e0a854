/**
 * The list of another yard: two steps (columns, unit) before its counts mean something. Decisions are worked out by hand under
 * the default rules: hooks at more than 5 % of throat growth and 5 % of wear at the saddle, shackles, rings and chain at 10 % of
 * wear, ropes from 10 broken wires in a lay or 5 in a strand (the fixtures of these limits name their sources).
 */
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import ExcelJS from "exceljs";
import { beforeAll, describe, expect, it } from "vitest";
import { SAMPLES } from "../tools/samples.mjs";
import type { Decision } from "../src/engine/decision";
import { DEFAULT_BASIS } from "../src/engine/rules/rule-sets";
import { tellLack } from "../src/engine/report/lacking";
import type { HeadingChoices, ReadLog } from "../src/excel/port";
import { excelPort } from "../src/excel/workbook";
import { readXlsx } from "../src/trial/file/xlsx";
import { openBook } from "./setup-excel";

const AS_OF = 46351;
const FILE = fileURLToPath(new URL("../sample-workbooks/other-yard.xlsx", import.meta.url));
const ANSWERS: HeadingChoices = { "bent / drawn out": "deformed", examiner: "inspector", "rings when struck": null };
const read = (choices: HeadingChoices = {}, unit?: "mm" | "in"): Promise<ReadLog> =>
  excelPort.read({ from: "auto", basis: DEFAULT_BASIS, asOf: AS_OF, choices, ...(unit && { units: { "store list": unit } }) });

beforeAll(async () => {
  openBook(await readXlsx(new Uint8Array(readFileSync(FILE))));
});

describe("the list of another yard", () => {
  it("comes out of the generator as it is committed, the same bytes each time", async () => {
    const bytes = await SAMPLES["other-yard.xlsx"]();
    expect(bytes.equals(await SAMPLES["other-yard.xlsx"]())).toBe(true);
    const cells = async (data: Buffer): Promise<string[]> => {
      const book = new ExcelJS.Workbook();
      await book.xlsx.load(data as unknown as ExcelJS.Buffer);
      return book.worksheets.flatMap((sheet) => {
        const texts: string[] = [];
        sheet.eachRow((row) => row.eachCell((cell) => texts.push(`${sheet.name} ${cell.address} ${JSON.stringify(cell.value)}`)));
        return texts;
      });
    };
    expect(await cells(bytes)).toEqual(await cells(readFileSync(FILE)));
  });

  it("is found with its 60 items under two heading rows, its gear by what stands in the column", async () => {
    const { place, report, others } = await read();
    expect([place.sheet, report.items.length, others]).toEqual(["STORE LIST", 60, []]);
    expect(report.headings.find(({ field }) => field === "gear")?.heading).toBe("Piece");
    expect(report.problems).toEqual([]);
  });

  it("asks its questions at once: three columns, and the unit of bare sizes; before that nothing is kept", async () => {
    const { report } = await read();
    expect(report.questions?.columns.map(({ heading }) => heading).sort()).toEqual(["Bent / drawn out", "Examiner", "Rings when struck"]);
    expect(report.counts.KEEP + report.counts.WATCH).toBe(0);
    // One step answers the columns. 13 hooks, 15 shackles, 6 rings and 7 chains have bare bodies; K12 and S12 wait for their type first.
    const answered = (await read(ANSWERS)).report;
    expect([answered.questions?.columns, answered.questions?.unit?.items]).toEqual([[], 39]);
    expect(answered.counts.KEEP).toBeGreaterThan(0);
  });

  it("after two steps says of each piece what its readings say, with the sizes of its type", async () => {
    const { report } = await read(ANSWERS, "mm");
    expect(report.questions).toEqual({ columns: [], unit: null });
    const of = new Map(report.items.map((item) => [item.id, item]));
    const worked: readonly (readonly [string, Decision])[] = [
      ["K1", "KEEP"], // 48 to 48.5 mm is 1 %, 40 to 39.6 mm is 1 %
      ["K3", "REMOVE"], // 48 to 50.5 mm is 5.2 %
      ["K4", "REMOVE"], // 40 to 37.8 mm is 5.5 %
      ["K5", "REMOVE"], // latch missing
      ["K8", "WATCH"], // 62 to 64.6 mm is 4.2 %: 84 % of what is allowed
      ["K9", "REMOVE"], // twist
      ["K11", "REMOVE"], // crack
      ["K12", "NO VERDICT"], // its type is not on the sheet
      ["K13", "NO VERDICT"], // body not measured
      ["S1", "KEEP"], // 3/4 in = 19.05 mm to 18.6 mm is 2.4 %; 0.875 to 0.86 in is 1.7 %
      ["S3", "REMOVE"], // 19.05 to 17 mm is 10.8 %
      ["S4", "REMOVE"], // 0.875 to 0.78 in is 10.9 %
      ["S9", "REMOVE"], // 25.4 to 22.4 mm is 11.8 %
      ["S10", "KEEP"], // 25.4 to 25.1 mm is 1.2 %, the pin as new
      ["S12", "NO VERDICT"], // 7/8 in is not among the sizes of Bow T
      ["R3", "REMOVE"], // 25 to 22.3 mm is 10.8 %
      ["R4", "KEEP"], // 25 to 24.8 mm
      ["C3", "REMOVE"], // 10 to 8.7 mm is 13 %
      ["C4", "KEEP"], // 13 to 12.6 mm is 3.1 %
      ["W3", "REMOVE"], // 11 broken wires in a lay
      ["W5", "KEEP"],
      ["W6", "NO VERDICT"], // not counted
      ["B3", "REMOVE"], // cut
      ["B4", "KEEP"],
    ];
    for (const [id, decision] of worked) expect([id, of.get(id)?.verdict.decision], of.get(id)?.verdict.reason).toEqual([id, decision]);
    expect(of.get("K1")?.verdict.reason).toContain("As-new from Gear types, row 3 (Hook 20): maker's catalogue, page 14.");
    expect(report.types).toEqual({
      served: 33,
      refused: [],
      unmet: [
        'The type "Hook 40" has no row on the sheet Gear types: K12.',
        'The type "Bow T" has no row for the size 7/8 in on the sheet Gear types: S12.',
      ],
    });
    expect(report.counts["NO VERDICT"]).toBeLessThan(8);
  });

  it("then lacks only what nobody recorded, kind by kind", async () => {
    const { report } = await read(ANSWERS, "mm");
    expect(report.lacking.map(tellLack)).toEqual([
      expect.stringMatching(/^2 of 14 hooks: no column for Throat as-new and Section as-new; Section now is blank for 1\.$/),
      expect.stringMatching(/^1 of 15 shackles: no column for Section as-new and Pin as-new\.$/),
      expect.stringMatching(/^1 of 9 wire rope slings: Wires broken|^1 of 9 wire rope slings: Broken wires in a lay is blank for 1\.$/),
    ]);
  });
});

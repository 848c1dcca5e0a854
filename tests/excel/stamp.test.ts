/** Stamping rows of the register as inspected: which may be stamped, and what is written. */
import { beforeEach, describe, expect, it } from "vitest";
import { DEFAULT_BASIS } from "../../src/engine/rules/rule-sets";
import { HEADING_ROW, REGISTER_SHEET } from "../../src/excel/kit/sheets";
import { planStamp, type StampPlan } from "../../src/excel/stamp/plan-stamp";
import { excelPort } from "../../src/excel/workbook";
import type { Book } from "../../src/trial/book/book";
import { openBook } from "../setup-excel";
import { AS_OF, book, calculator, HOOK_HEADINGS, hookRow, records } from "./books";

const register = (made: Book): Record<string, unknown>[] => records(made.sheet(REGISTER_SHEET)!, HEADING_ROW - 1);
async function look(rows: readonly number[]): Promise<StampPlan> {
  const found = await excelPort.checkRegister(DEFAULT_BASIS, AS_OF);
  return planStamp(found!.log.report.items, rows);
}
function select(made: Book, row: number, rows: number): void {
  made.active = made.sheet(REGISTER_SHEET)!;
  made.selection = { row, column: 0, rows, columns: 3 };
}
let made: Book;
beforeEach(async () => {
  const tagged = hookRow("H-3", "2.01");
  made = book({
    "Gear log": [
      [...HOOK_HEADINGS, "Tagged out"],
      [...hookRow("H-1", "2.01"), null],
      [...hookRow("H-2", null), null],
      [...tagged, "yes"],
      // A throat of 2.15 in is past 2.1 in: the whole tackle was overloaded on 46300, and H-5 was not looked at since.
      [...hookRow("H-4", "2.15", { assembly: "Gantry" }), null],
      [...hookRow("H-5", "2.01", { assembly: "Gantry" }), null],
      [...hookRow("H-6", "2.02"), null],
    ],
  });
  openBook(made, { calculator: calculator() });
  const log = await excelPort.read({ from: "auto", basis: DEFAULT_BASIS, asOf: AS_OF, choices: {} });
  await excelPort.build(log, () => undefined, new AbortController().signal);
});

describe("the rows that may be stamped", () => {
  it("have every reading, are not tagged out, and lift no overload", async () => {
    expect(await look([1, 2, 3, 4, 5, 6])).toEqual({
      rows: [
        { row: 1, id: "H-1" },
        { row: 6, id: "H-6" },
      ],
      left: [
        { id: "H-2", why: "Throat now still to record" },
        { id: "H-3", why: "is tagged out" },
        { id: "H-4", why: "shows a sign of overload: write the date yourself" },
        { id: "H-5", why: "another part of its assembly was overloaded: look at this part, then write the date yourself" },
      ],
    });
  });

  it("are those of the selection that are in sight", async () => {
    select(made, HEADING_ROW - 2, 5);
    expect(await excelPort.selectedRows()).toEqual([1, 2, 3]);
    made.sheet(REGISTER_SHEET)!.hiddenRows.add(HEADING_ROW + 1);
    expect(await excelPort.selectedRows()).toEqual([1, 3]);
    select(made, HEADING_ROW + 40, 2);
    await expect(excelPort.selectedRows()).rejects.toMatchObject({
      message: expect.stringContaining("No row of the register is selected"),
    });
    made.active = made.sheet("Gear log")!;
    await expect(excelPort.selectedRows()).rejects.toMatchObject({ message: expect.stringContaining(`on the sheet "${REGISTER_SHEET}"`) });
  });
});

describe("a stamp", () => {
  it("writes date and name into those rows and no other cell", async () => {
    const before = register(made);
    const { rows } = await look([1, 2, 3, 4, 5, 6]);
    expect(await excelPort.writeStamp({ rows, day: AS_OF, name: "yard inspector" })).toBe(2);
    const after = register(made);
    after.forEach((row, index) => {
      const stamped = index === 0 || index === 5;
      expect([row["Inspected"], row["Inspected by"]]).toEqual(
        stamped ? [AS_OF, "yard inspector"] : [46300, before[index]!["Inspected by"]],
      );
      for (const heading of ["Id", "Gear", "Throat now", "Tagged out", "Verdict"])
        expect(row[heading], heading).toEqual(before[index]![heading]);
    });
    expect(after[4]!["Verdict"]).toBe("EXAMINE");
    // A year in normal service.
    expect(after[0]!["Next due"]).toBe(AS_OF + 365);
  });

  it("writes nothing where the rows were moved since they were looked at", async () => {
    const { rows } = await look([1, 6]);
    made.sheet(REGISTER_SHEET)!.at(HEADING_ROW, 1).value = "H-9";
    await expect(excelPort.writeStamp({ rows, day: AS_OF, name: "x" })).rejects.toMatchObject({
      message: expect.stringContaining("nothing was written"),
    });
    expect(register(made).map((row) => row["Inspected"])).toEqual(Array(6).fill(46300));
  });

  it("keeps the name in the workbook", async () => {
    await excelPort.save({ basis: DEFAULT_BASIS, choices: {}, place: null, inspector: "yard inspector" });
    expect((await excelPort.load()).inspector).toBe("yard inspector");
  });
});

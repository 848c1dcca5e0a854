import { HOUSE_HEADINGS, LIMIT_HEADING } from "../../engine/house/read-limits";
import { hideKinds } from "../kit/kinds-list";
import { inWorkbook } from "../kit/run";
import { putMark, readSheets } from "../kit/marks";
import { CAUTION, HOUSE_SHEET } from "../kit/sheets";
import { WorkbookError } from "../kit/workbook-error";
import { findRegister } from "../register/find-register";
import { followRegister, HEADINGS_AT } from "./house-sheet";

const NOTES = [
  "Write one limit in each row below the headings. It can only make the rules stricter: the strictest rule decides. Only where Maker's figure says yes does it stand in place of the published limits for that check; Source must then name where the maker wrote it.",
  "Gear and Check take the words that the reasons use, such as hook and throat opening. In Comes out, write above where a part at the limit itself stays in, or from where it comes out at the limit itself.",
  "Limit is the change that is allowed, growth or wear. It is not the size. Write a share such as 3 with the unit %, or a figure with its unit: in, mm, degrees, or wires as they are counted.",
  "Example, which is not read as a limit: hook, throat opening, above, 3, %, Yard order 7. It takes a hook out once its throat opening has grown by more than 3 %.",
  CAUTION,
];
/** Widths in points; together they are as wide as the notes above them. */
const WIDTHS: Readonly<Record<(typeof HOUSE_HEADINGS)[number], number>> = {
  Gear: 100,
  Check: 130,
  "Comes out": 70,
  Limit: 120,
  Unit: 60,
  Source: 170,
  "Maker's figure": 70,
};
/** Rows that have formats and drop-downs from the start. */
const FORMATTED_ROWS = 200;
const LINE = 15;
/** Characters that surely fit into one line of all columns. */
const LINE_LENGTH = 115;
/** Makes the sheet with its headings and drop-downs; an existing one is left alone. */
export async function makeHouseSheet(): Promise<void> {
  await inWorkbook(async (context) => {
    const sheets = context.workbook.worksheets;
    const old = sheets.getItemOrNullObject(HOUSE_SHEET);
    old.load("name");
    await context.sync();
    const marks = await readSheets(context);
    const named = marks.marked("house");
    const register = (await findRegister(context))?.sheet ?? null;
    if (named !== null)
      throw new WorkbookError("other shape", `There is a sheet "${named.name}" already; it was left as it is. Write your limits there.`);
    if (!old.isNullObject)
      throw new WorkbookError("other shape", `There is a sheet "${HOUSE_SHEET}" already; it was left as it is. Write your limits there.`);
    const sheet = sheets.add(HOUSE_SHEET);
    const body = sheet.getRangeByIndexes(HEADINGS_AT, 0, FORMATTED_ROWS - HEADINGS_AT, HOUSE_HEADINGS.length);
    sheet.getRange(`A1:G${String(HEADINGS_AT)}`).numberFormat = "@" as unknown as string[][];
    body.numberFormat = "@" as unknown as string[][];
    sheet.getRange("A1").values = [["House limits"]];
    sheet.getRange("A2:B2").values = [["Rules in force", ""]];
    sheet.getRange("A3:A7").values = NOTES.map((note) => [note]);
    NOTES.forEach((note, index) => {
      const line = sheet.getRangeByIndexes(2 + index, 0, 1, HOUSE_HEADINGS.length);
      line.merge();
      line.format.wrapText = true;
      line.format.verticalAlignment = "Top";
      line.format.rowHeight = LINE * Math.ceil(note.length / LINE_LENGTH) + 3;
    });
    sheet.getRangeByIndexes(HEADINGS_AT - 1, 0, 1, HOUSE_HEADINGS.length).values = [
      HOUSE_HEADINGS.map((heading) => (heading === "Limit" ? LIMIT_HEADING : heading)),
    ];
    followRegister(sheet, register?.name ?? null);
    putMark(context, sheet, "house", marks.stands("house"));
    const title = sheet.getRange("A1");
    title.format.font.bold = true;
    title.format.font.size = 14;
    const headings = sheet.getRangeByIndexes(HEADINGS_AT - 1, 0, 1, HOUSE_HEADINGS.length);
    headings.format.font.bold = true;
    headings.format.fill.color = "#D9E2EC";
    headings.format.font.color = "#102A43";
    headings.format.wrapText = true;
    headings.format.verticalAlignment = "Center";
    headings.format.rowHeight = 2 * LINE + 3;
    const choices: Partial<Record<(typeof HOUSE_HEADINGS)[number], string>> = {
      // Behind the columns that are read.
      Gear: hideKinds(sheet, HOUSE_SHEET, HOUSE_HEADINGS.length + 1, HEADINGS_AT),
      "Comes out": "above,from",
      Unit: "%,in,mm,degrees,wires",
      "Maker's figure": "yes",
    };
    HOUSE_HEADINGS.forEach((heading, index) => {
      const column = sheet.getRangeByIndexes(HEADINGS_AT, index, FORMATTED_ROWS - HEADINGS_AT, 1);
      column.format.columnWidth = WIDTHS[heading];
      const list = choices[heading];
      if (list) column.dataValidation.rule = { list: { inCellDropDown: true, source: list } };
    });
    sheet.freezePanes.freezeRows(HEADINGS_AT);
    sheet.activate();
    sheet.getRange(`A${String(HEADINGS_AT + 1)}`).select();
    await context.sync();
  });
}

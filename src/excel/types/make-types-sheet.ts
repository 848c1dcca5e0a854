import { WHERE_HEADING } from "../../engine/types/gear-types";
import { hideKinds } from "../kit/kinds-list";
import { putMark, readSheets } from "../kit/marks";
import { inWorkbook } from "../kit/run";
import { CAUTION, TYPES_SHEET } from "../kit/sheets";
import { WorkbookError } from "../kit/workbook-error";
import type { ReadLog } from "../port";
import { planTypes } from "./plan-types";
import { typesSheet } from "./types-sheet";

const NOTES = [
  "Write one type of gear in each row. An item whose Type stands here, and which has no as-new sizes of its own, takes those of the row. Sizes of the item's own always come first.",
  "Gear is the kind, such as hook or shackle. Fill Size where the type comes in several sizes, one row for each; an item takes the row of its own Size and never a neighbouring one.",
  `Bare figures are in the unit of the row, in or mm. ${WHERE_HEADING} says where the sizes stand, such as catalogue of the maker, page 12; it stands in the reason of every item that takes them.`,
  "A row that cannot be read lends nothing, and the pane names it. After a correction press Rebuild register: the sizes in the register follow.",
  CAUTION,
];
/** Row of the headings; title and notes stand above. */
const HEADINGS_AT = NOTES.length + 2;
/** Rows that have formats and drop-downs from the start. */
const FORMATTED_ROWS = 200;
const LINE = 15;
/** Columns that the notes reach over, and characters that surely fit into one line of them. */
const NOTE_COLUMNS = 7;
const LINE_LENGTH = 100;
const WIDTHS: Readonly<Record<string, number>> = { Type: 120, Gear: 110, Size: 70, Unit: 50, [WHERE_HEADING]: 220 };
/** Makes the sheet with its headings, and with a row for each type of the log that lacks sizes; an existing one is left alone. */
export async function makeTypesSheet(log: ReadLog | null): Promise<void> {
  await inWorkbook(async (context) => {
    const marks = await readSheets(context);
    const there = await typesSheet(context, marks);
    if (there !== null)
      throw new WorkbookError("other shape", `There is a sheet "${there.name}" already; it was left as it is. Write your types there.`);
    if (marks.named(TYPES_SHEET) !== null)
      throw new WorkbookError(
        "other shape",
        `The sheet "${TYPES_SHEET}" is not the add-in's; it was left as it is. Give it another name, then press the button again.`,
      );
    const { headings, rows } = planTypes(log?.report ?? { items: [] });
    const sheet = context.workbook.worksheets.add(TYPES_SHEET);
    const width = headings.length;
    sheet.getRangeByIndexes(0, 0, FORMATTED_ROWS, width).numberFormat = "@" as unknown as string[][];
    sheet.getRange("A1").values = [["Gear types"]];
    NOTES.forEach((note, index) => {
      const line = sheet.getRangeByIndexes(1 + index, 0, 1, Math.min(NOTE_COLUMNS, width));
      line.getCell(0, 0).values = [[note]];
      line.merge();
      line.format.wrapText = true;
      line.format.verticalAlignment = "Top";
      line.format.rowHeight = LINE * Math.ceil(note.length / LINE_LENGTH) + 3;
    });
    const head = sheet.getRangeByIndexes(HEADINGS_AT - 1, 0, 1, width);
    head.values = [[...headings]];
    if (rows.length > 0) sheet.getRangeByIndexes(HEADINGS_AT, 0, rows.length, 3).values = rows.map((row) => [...row]);
    putMark(context, sheet, "types", marks.stands("types"));
    const title = sheet.getRange("A1");
    title.format.font.bold = true;
    title.format.font.size = 14;
    head.format.font.bold = true;
    head.format.fill.color = "#D9E2EC";
    head.format.font.color = "#102A43";
    head.format.wrapText = true;
    head.format.verticalAlignment = "Center";
    head.format.rowHeight = 2 * LINE + 3;
    headings.forEach((heading, column) => {
      const cells = sheet.getRangeByIndexes(HEADINGS_AT, column, FORMATTED_ROWS - HEADINGS_AT, 1);
      cells.format.columnWidth = WIDTHS[heading] ?? 74;
      const list = heading === "Gear" ? hideKinds(sheet, TYPES_SHEET, width + 1, HEADINGS_AT) : heading === "Unit" ? "in,mm" : null;
      if (list === null) return;
      cells.dataValidation.rule = { list: { inCellDropDown: true, source: list } };
      cells.dataValidation.errorAlert = {
        showAlert: false,
        style: "Information",
        title: heading,
        message: "Other words are read as well.",
      };
    });
    sheet.freezePanes.freezeAt(sheet.getRange(`A1:A${String(HEADINGS_AT)}`));
    sheet.activate();
    sheet.getRange(`A${String(HEADINGS_AT + 1)}`).select();
    await context.sync();
  });
}

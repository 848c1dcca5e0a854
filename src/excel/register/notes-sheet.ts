import { field, type FieldId } from "../../engine/columns";
import { ACTIONS, DECISIONS, SYMBOLS } from "../../engine/decision";
import { TAKES } from "../../engine/pages/about-columns";
import { HOLDS } from "../../engine/pages/about-rules";
import { BASES, type BasisId } from "../../engine/rules/rule-sets";
import { CAUTION, NOTES_SHEET } from "../kit/sheets";
import { FRONT_COLUMNS, RESULT_COLUMNS } from "./columns";
import type { RegisterPlan, WriteOptions } from "./plan";

/** The note sheet: what each column takes, what the decisions mean, which rules are in force. */
export function notesFor(fields: readonly FieldId[], basis: readonly BasisId[]): readonly (readonly string[])[] {
  return [
    ["Gear notes", ""],
    [CAUTION, ""],
    ["", ""],
    ["Rules in force", ""],
    ...basis.map((id) => [BASES[id].name, HOLDS[id]]),
    ["", ""],
    ["Decision", "What to do"],
    ...DECISIONS.map((d) => [`${SYMBOLS[d]} ${d}`, ACTIONS[d]]),
    ["", ""],
    [
      "Rebuilding",
      "A cell that nobody changed here follows the log when the register is rebuilt; what the log said last is kept on a hidden sheet of the add-in. What was typed here stays. A blank in the log clears nothing here.",
    ],
    ["", ""],
    ["Printing", "Flag, id, gear and what was worked out, one page wide. To print every column, clear the print area under Page Layout."],
    ["", ""],
    ["Column", "What it takes"],
    ...FRONT_COLUMNS.map((c) => [c.heading, c.note]),
    ...fields.map((id) => [field(id).heading, TAKES[id]]),
    ...RESULT_COLUMNS.map((c) => [c.heading, c.note]),
  ];
}
export function writeNotes(context: Excel.RequestContext, plan: RegisterPlan, options: WriteOptions): void {
  const sheets = context.workbook.worksheets;
  const sheet = options.notesExist ? sheets.getItem(NOTES_SHEET) : sheets.add(NOTES_SHEET);
  // The note sheet holds nothing that people type, so it is written anew.
  if (options.notesExist) sheet.getRange().clear();
  const area = sheet.getRangeByIndexes(0, 0, plan.notes.length, 2);
  area.numberFormat = "@" as unknown as string[][];
  area.values = plan.notes.map((line) => [line[0] ?? "", line[1] ?? ""]);
  sheet.getRange("A:A").format.columnWidth = 130;
  sheet.getRange("B:B").format.columnWidth = 520;
  area.getColumn(1).format.wrapText = true;
  area.format.verticalAlignment = "Top";
  const title = sheet.getRange("A1");
  title.format.font.bold = true;
  title.format.font.size = 14;
  plan.notes.forEach((line, index) => {
    if (["Rules in force", "Decision", "Column"].includes(line[0] ?? "")) sheet.getRangeByIndexes(index, 0, 1, 2).format.font.bold = true;
  });
}

import { field, type FieldId } from "../../engine/columns";
import { ACTIONS, DECISIONS, SYMBOLS } from "../../engine/decision";
import { WHAT_IT_TAKES } from "../../engine/pages/about-columns";
import { HOLDS } from "../../engine/pages/about-rules";
import type { CellValue } from "../../engine/reading/cell-value";
import { readText } from "../../engine/reading/text";
import { BASES, type BasisId } from "../../engine/rules/rule-sets";
import { CAUTION } from "../kit/sheets";
import { RESULT_COLUMNS } from "./columns";
import { inGroups } from "./groups";
import type { RegisterPlan } from "./plan";

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
    ["Folding", "Columns fold by the buttons above the column letters. What is folded does not print; the register prints one page wide."],
    ["", ""],
    ["Column", "What it takes"],
    ...inGroups(fields).map((id) => [field(id).heading, WHAT_IT_TAKES[id]]),
    ...RESULT_COLUMNS.map((c) => [c.heading, c.note]),
  ];
}
/** Writes the notes where they differ; false where nothing had to be written. */
export async function writeNotes(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet | null,
  { notes }: Pick<RegisterPlan, "notes">,
  exists: boolean,
): Promise<boolean> {
  if (sheet === null) return false;
  if (exists) {
    const used = sheet.getUsedRangeOrNullObject(true);
    used.load("values,rowIndex,columnIndex");
    await context.sync();
    const before = used.isNullObject || used.rowIndex !== 0 || used.columnIndex !== 0 ? [] : (used.values as CellValue[][]);
    const same =
      before.length === notes.length &&
      notes.every((line, row) => line.every((text, column) => readText(before[row]?.[column]) === readText(text)));
    if (same) return false;
    // The note sheet holds nothing that people type, so it is written anew.
    sheet.getRange().clear();
  }
  const area = sheet.getRangeByIndexes(0, 0, notes.length, 2);
  area.numberFormat = "@" as unknown as string[][];
  area.values = notes.map((line) => [line[0] ?? "", line[1] ?? ""]);
  // Together as wide as an upright page of A4 or Letter takes at full size.
  sheet.getRange("A:A").format.columnWidth = 126;
  sheet.getRange("B:B").format.columnWidth = 376;
  area.getColumn(0).format.wrapText = true;
  area.getColumn(1).format.wrapText = true;
  area.format.verticalAlignment = "Top";
  const title = sheet.getRange("A1");
  title.format.font.bold = true;
  title.format.font.size = 14;
  notes.forEach((line, index) => {
    if (["Rules in force", "Decision", "Column"].includes(line[0] ?? "")) sheet.getRangeByIndexes(index, 0, 1, 2).format.font.bold = true;
  });
  const page = sheet.pageLayout;
  page.orientation = Excel.PageOrientation.portrait;
  page.zoom = { horizontalFitToPages: 1 };
  page.headersFooters.defaultForAllPages.centerFooter = "&8Gear notes\nPage &P of &N";
  return true;
}

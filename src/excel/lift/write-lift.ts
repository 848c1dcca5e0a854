/** Writing a lift on its own sheet. Another sheet of that name is left alone. */
import { PLACES } from "../../engine/lift/judge-lift";
import type { CellValue } from "../../engine/reading/cell-value";
import { readText } from "../../engine/reading/text";
import { inWorkbook } from "../kit/run";
import { CAUTION, LIFT_SHEET } from "../kit/sheets";
import { SHEET_COLORS } from "../kit/tints";
import { WorkbookError } from "../kit/workbook-error";
import type { LiftToWrite } from "../port";
import {
  columnOf,
  INPUT_ROW,
  ITEM_ROW,
  letterOf,
  LIFT_HEADINGS,
  type LiftHeading,
  type LiftPlan,
  planLift,
  RESULT_ROW,
  WORKED_OUT,
} from "./plan-lift";

const WIDTHS: Readonly<Record<LiftHeading, number>> = {
  Id: 160,
  Gear: 96,
  Place: 120,
  Decision: 90,
  Used: 56,
  Needed: 76,
  "Rated here": 76,
  Left: 76,
  "State when read": 150,
  Tag: 60,
  "Tag unit": 60,
  "Side load deg": 60,
  "Hitch share": 56,
  "Heat share": 56,
  "Side share": 56,
  "Rated load from": 240,
};
export async function writeLift(lift: LiftToWrite): Promise<{ readonly sheet: string }> {
  const plan = planLift(lift);
  return inWorkbook(async (context) => {
    const sheet = await ownSheet(context);
    writeTop(sheet, plan);
    writeInputs(sheet, plan);
    writeResults(sheet, plan);
    writeItems(sheet, plan);
    dress(sheet, plan);
    sheet.activate();
    sheet.getRange(`B${String(INPUT_ROW + 1)}`).select();
    await context.sync();
    return { sheet: LIFT_SHEET };
  });
}
/** The sheet, new or emptied. One that this add-in did not write is refused. */
async function ownSheet(context: Excel.RequestContext): Promise<Excel.Worksheet> {
  const sheet = context.workbook.worksheets.getItemOrNullObject(LIFT_SHEET);
  sheet.load("name");
  sheet.protection.load("protected");
  await context.sync();
  if (sheet.isNullObject) return context.workbook.worksheets.add(LIFT_SHEET);
  const top = sheet.getRange("A1:A2");
  top.load("values");
  await context.sync();
  const [title, caution] = (top.values as CellValue[][]).map((row) => readText(row[0]));
  if (title !== LIFT_SHEET || caution !== CAUTION)
    throw new WorkbookError(
      "other shape",
      `The sheet "${LIFT_SHEET}" is not one that this add-in wrote. Rename that sheet, then try again; nothing was written.`,
    );
  if (sheet.protection.protected)
    throw new WorkbookError(
      "protected",
      `The sheet "${LIFT_SHEET}" is protected. Unprotect it under Review, then try again; nothing was written.`,
    );
  const all = sheet.getRange();
  all.conditionalFormats.clearAll();
  all.dataValidation.clear();
  all.clear();
  return sheet;
}
/** Cells to type in. */
const INPUT_FILL = "#FFF9DB";
const TEXT = "@" as unknown as string[][];
const PLAIN = "General" as unknown as string[][];
function writeTop(sheet: Excel.Worksheet, plan: LiftPlan): void {
  const top = sheet.getRangeByIndexes(0, 0, plan.top.length, 1);
  top.numberFormat = TEXT;
  top.values = plan.top.map((text) => [text]);
  top.format.font.italic = true;
  const title = sheet.getRange("A1");
  title.format.font.italic = false;
  title.format.font.bold = true;
  title.format.font.size = 14;
}
function writeInputs(sheet: Excel.Worksheet, plan: LiftPlan): void {
  plan.inputs.forEach(({ label, value, beside, choices, besideChoices }, index) => {
    const row = INPUT_ROW - 1 + index;
    put(sheet.getRangeByIndexes(row, 0, 1, 1), label);
    const input = sheet.getRangeByIndexes(row, 1, 1, 1);
    put(input, value);
    input.format.fill.color = INPUT_FILL;
    input.format.horizontalAlignment = "Left";
    const next = sheet.getRangeByIndexes(row, 2, 1, 1);
    if (typeof beside === "string" && beside.startsWith("=")) next.formulas = [[beside]];
    else put(next, beside);
    if (besideChoices !== undefined) next.format.fill.color = INPUT_FILL;
    if (choices !== undefined) offer(input, choices);
    if (besideChoices !== undefined) offer(next, besideChoices);
  });
  sheet.getRangeByIndexes(INPUT_ROW - 1, 1, 1, 1).numberFormat = [["yyyy-mm-dd"]];
}
/** Words are kept as words; numbers stay numbers. */
function put(cell: Excel.Range, value: string | number): void {
  cell.numberFormat = typeof value === "string" && value !== "" ? TEXT : PLAIN;
  cell.values = [[value]];
}
function offer(cell: Excel.Range, choices: readonly string[]): void {
  cell.dataValidation.rule = { list: { inCellDropDown: true, source: choices.join(",") } };
}
function writeResults(sheet: Excel.Worksheet, plan: LiftPlan): void {
  plan.results.forEach(({ label, formula, note, format }, index) => {
    const row = RESULT_ROW - 1 + index;
    put(sheet.getRangeByIndexes(row, 0, 1, 1), label);
    const cell = sheet.getRangeByIndexes(row, 1, 1, 1);
    cell.numberFormat = [[format]];
    cell.formulas = [[formula]];
    cell.format.font.bold = true;
    cell.format.horizontalAlignment = "Left";
    put(sheet.getRangeByIndexes(row, 2, 1, 1), note);
  });
}
const PERCENT: readonly LiftHeading[] = ["Used", "Hitch share", "Heat share", "Side share"];
const LOADS: readonly LiftHeading[] = ["Needed", "Rated here", "Left"];
/** All other columns are text, so that an id such as 3/4 stays one. */
const AS_IT_COMES: readonly LiftHeading[] = ["Decision", "Tag", "Side load deg"];
const formatOf = (heading: LiftHeading): string =>
  PERCENT.includes(heading) ? "0.0%" : LOADS.includes(heading) ? "#,##0.0##" : AS_IT_COMES.includes(heading) ? "General" : "@";
function writeItems(sheet: Excel.Worksheet, plan: LiftPlan): void {
  const headings = sheet.getRangeByIndexes(ITEM_ROW - 1, 0, 1, LIFT_HEADINGS.length);
  headings.numberFormat = TEXT;
  headings.values = [[...LIFT_HEADINGS]];
  if (plan.rows.length === 0) return;
  LIFT_HEADINGS.forEach((heading, column) => {
    const block = sheet.getRangeByIndexes(ITEM_ROW, column, plan.rows.length, 1);
    const cells = plan.rows.map((row) => [row[column] ?? ""]);
    block.numberFormat = formatOf(heading) as unknown as string[][];
    if (WORKED_OUT.includes(heading)) block.formulas = cells;
    else block.values = cells;
  });
  plan.states.forEach((formula, index) => {
    if (formula === null) return;
    const state = sheet.getRangeByIndexes(ITEM_ROW + index, columnOf("State when read"), 1, 1);
    state.numberFormat = PLAIN;
    state.formulas = [[formula]];
  });
  const of = (heading: LiftHeading): Excel.Range => sheet.getRangeByIndexes(ITEM_ROW, columnOf(heading), plan.rows.length, 1);
  offer(of("Place"), Object.values(PLACES));
  for (const heading of ["Place", "Side load deg"] as const) of(heading).format.fill.color = INPUT_FILL;
  for (const heading of ["State when read", "Rated load from"] as const) of(heading).format.wrapText = true;
  sheet.getRangeByIndexes(ITEM_ROW, 0, plan.rows.length, LIFT_HEADINGS.length).format.verticalAlignment = "Top";
  of("Decision").format.font.bold = true;
}
function dress(sheet: Excel.Worksheet, plan: LiftPlan): void {
  LIFT_HEADINGS.forEach((heading, column) => {
    sheet.getRangeByIndexes(ITEM_ROW - 1, column, 1, 1).format.columnWidth = WIDTHS[heading];
  });
  const headings = sheet.getRangeByIndexes(ITEM_ROW - 1, 0, 1, LIFT_HEADINGS.length);
  headings.format.font.bold = true;
  headings.format.wrapText = true;
  headings.format.fill.color = "#D9E2EC";
  headings.format.font.color = "#102A43";
  const body = sheet.getRangeByIndexes(ITEM_ROW, 0, Math.max(1, plan.rows.length), LIFT_HEADINGS.length);
  tint(body, `=$${letterOf("Decision")}${String(ITEM_ROW + 1)}="OVERLOADED"`, SHEET_COLORS.REMOVE);
  tint(body, `=$${letterOf("Decision")}${String(ITEM_ROW + 1)}="REFUSED"`, SHEET_COLORS.EXAMINE);
  const decision = sheet.getRangeByIndexes(RESULT_ROW, 1, 1, 1);
  tint(decision, `=$B$${String(RESULT_ROW + 1)}="OVERLOADED"`, SHEET_COLORS.REMOVE);
  tint(decision, `=$B$${String(RESULT_ROW + 1)}="REFUSED"`, SHEET_COLORS.EXAMINE);
  const page = sheet.pageLayout;
  page.orientation = Excel.PageOrientation.landscape;
  page.zoom = { horizontalFitToPages: 1, verticalFitToPages: 0 };
  page.headersFooters.defaultForAllPages.leftFooter = `${LIFT_SHEET}. ${CAUTION}`;
  page.headersFooters.defaultForAllPages.rightFooter = "Page &P of &N";
}
function tint(range: Excel.Range, formula: string, color: { readonly fill: string; readonly font: string }): void {
  const rule = range.conditionalFormats.add(Excel.ConditionalFormatType.custom);
  rule.custom.rule.formula = formula;
  rule.custom.format.fill.color = color.fill;
  rule.custom.format.font.color = color.font;
}

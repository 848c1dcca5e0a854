/** Writing a lift on its own sheet. Another sheet of that name is left alone. */
import { readText } from "../engine/cell";
import type { CellValue } from "../engine/model";
import { SHEET_COLORS } from "./colors";
import { inWorkbook } from "./host";
import { CAUTION } from "./layout";
import { FORMULA_COLUMNS, INPUT_ROW, ITEM_ROW, LIFT_SHEET, planLift, RESULT_ROW, type LiftPlan } from "./lift-plan";
import { WorkbookError, type LiftToWrite } from "./port";

const WIDTHS = [160, 96, 120, 150, 60, 60, 60, 76, 56, 56, 56, 76, 76, 50, 90, 240] as const;

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
  if (title !== LIFT_SHEET || caution !== CAUTION) throw new WorkbookError("other shape", `The sheet "${LIFT_SHEET}" is not one that this add-in wrote. Rename that sheet, then try again; nothing was written.`);
  if (sheet.protection.protected) throw new WorkbookError("protected", `The sheet "${LIFT_SHEET}" is protected. Unprotect it under Review, then try again; nothing was written.`);
  const all = sheet.getRange();
  all.conditionalFormats.clearAll();
  all.dataValidation.clear();
  all.clear();
  return sheet;
}

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
    input.format.fill.color = "#FFF9DB";
    input.format.horizontalAlignment = "Left";
    const next = sheet.getRangeByIndexes(row, 2, 1, 1);
    if (typeof beside === "string" && beside.startsWith("=")) next.formulas = [[beside]];
    else put(next, beside);
    if (besideChoices !== undefined) next.format.fill.color = "#FFF9DB";
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

function writeItems(sheet: Excel.Worksheet, plan: LiftPlan): void {
  const headings = sheet.getRangeByIndexes(ITEM_ROW - 1, 0, 1, plan.headings.length);
  headings.numberFormat = TEXT;
  headings.values = [[...plan.headings]];
  if (plan.rows.length === 0) return;
  const { from, to } = FORMULA_COLUMNS;
  const block = (first: number, count: number): Excel.Range => sheet.getRangeByIndexes(ITEM_ROW, first, plan.rows.length, count);
  // Ids such as 3/4 stay text.
  block(0, 4).numberFormat = TEXT;
  block(5, 1).numberFormat = TEXT;
  block(to + 1, 1).numberFormat = TEXT;
  block(0, from).values = plan.rows.map((row) => row.slice(0, from));
  plan.states.forEach((formula, index) => {
    if (formula === null) return;
    const state = sheet.getRangeByIndexes(ITEM_ROW + index, 3, 1, 1);
    state.numberFormat = PLAIN;
    state.formulas = [[formula]];
  });
  block(from, to - from + 1).formulas = plan.rows.map((row) => row.slice(from, to + 1));
  block(to + 1, 1).values = plan.rows.map((row) => row.slice(to + 1));
  for (const column of [7, 11, 12]) block(column, 1).numberFormat = "#,##0.0##" as unknown as string[][];
  for (const column of [8, 9, 10, 13]) block(column, 1).numberFormat = "0.0%" as unknown as string[][];
  block(3, 1).format.wrapText = true;
  block(15, 1).format.wrapText = true;
  block(0, plan.headings.length).format.verticalAlignment = "Top";
  block(to, 1).format.font.bold = true;
}

function dress(sheet: Excel.Worksheet, plan: LiftPlan): void {
  WIDTHS.forEach((width, column) => { sheet.getRangeByIndexes(ITEM_ROW - 1, column, 1, 1).format.columnWidth = width; });
  const headings = sheet.getRangeByIndexes(ITEM_ROW - 1, 0, 1, plan.headings.length);
  headings.format.font.bold = true;
  headings.format.wrapText = true;
  headings.format.fill.color = "#D9E2EC";
  headings.format.font.color = "#102A43";
  const body = sheet.getRangeByIndexes(ITEM_ROW, 0, Math.max(1, plan.rows.length), plan.headings.length);
  tint(body, `=$O${String(ITEM_ROW + 1)}="OVERLOADED"`, SHEET_COLORS.REMOVE);
  tint(body, `=$O${String(ITEM_ROW + 1)}="REFUSED"`, SHEET_COLORS.EXAMINE);
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

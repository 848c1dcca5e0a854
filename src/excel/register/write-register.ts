/** Carrying out a register plan: own sheets only, one request for each few megabytes, progress as it goes. */
import { field, type FieldId } from "../../engine/columns";
import { GEAR } from "../../engine/gear/index";
import { matchKind } from "../../engine/names/gear-name";
import { choicesOf, TAKES } from "../../engine/pages/about-columns";
import { followRegister, HOUSE_RANGE } from "../house/house-sheet";
import { areaAddress, columnLetters } from "../kit/addresses";
import { fittingChoices } from "../kit/choices";
import { REQUEST_SIZE, sizeOf, writeInParts, type Written } from "../kit/in-parts";
import { AS_OF_CELL, BASIS_CELL, CAUTION, COPIED_SHEET, HEADING_ROW, HOUSE_SHEET, REGISTER_SHEET, REGISTER_TABLE } from "../kit/sheets";
import { SHEET_COLORS, SIGN_COLORS } from "../kit/tints";
import type { Progress } from "../port";
import {
  formulaOf,
  FRONT_COLUMNS,
  FROZEN_COLUMNS,
  inputFormat,
  inputWidth,
  LOG_DIFFERS,
  RESULT_COLUMNS,
  type ResultColumn,
  ROW_HEIGHT,
  WRAPPED,
} from "./columns";
import { copiedRows } from "./copied-sheet";
import { writeNotes } from "./notes-sheet";
import type { RegisterPlan, WriteOptions } from "./plan";

const HEAD = HEADING_ROW - 1;
/** First input column. */
const INPUTS = FRONT_COLUMNS.length;
/** First of the columns that are worked out behind the input columns. */
const resultsAt = (plan: RegisterPlan): number => INPUTS + plan.fields.length;
const extrasAt = (plan: RegisterPlan): number => resultsAt(plan) + RESULT_COLUMNS.length;
/** Place of a worked-out column. */
function columnAt(plan: RegisterPlan, heading: string): number {
  const front = FRONT_COLUMNS.findIndex((c) => c.heading === heading);
  return front >= 0 ? front : resultsAt(plan) + RESULT_COLUMNS.findIndex((c) => c.heading === heading);
}
export async function writeRegister(context: Excel.RequestContext, plan: RegisterPlan, options: WriteOptions): Promise<void> {
  const sheets = context.workbook.worksheets;
  const sheet = options.exists ? sheets.getItem(REGISTER_SHEET) : sheets.add(REGISTER_SHEET);
  const width = extrasAt(plan) + plan.extras.length;
  const count = Math.max(1, plan.rows.length);
  const say = (done: number, step: string): void => {
    options.onProgress({ done, of: plan.rows.length, step });
  };

  say(0, "Setting up the sheet");
  // In the first request, so that a workbook that takes no new sheets refuses before anything is written.
  const keep = options.copiedExist ? sheets.getItem(COPIED_SHEET) : sheets.add(COPIED_SHEET);
  keep.visibility = Excel.SheetVisibility.veryHidden;
  writeTop(sheet, options);
  prepareColumns(sheet, plan, count);
  const table = placeTable(sheet, plan, options, width, count);
  await writeBody(context, sheet, plan, options.onProgress);
  say(plan.rows.length, "Writing formulas, lists and colours");
  clearLeftOver(sheet, plan, options, width, count);
  const house = options.basis.includes("house");
  writeResults(sheet, plan, house ? HOUSE_RANGE : BASIS_CELL, count);
  // The house limits stand beside the rule sets that the register names.
  if (house) followRegister(sheets.getItem(HOUSE_SHEET), true);
  table.style = "TableStyleLight1";
  dressSheet(sheet, plan, options.basis, width, count);
  writeNotes(context, plan, options);
  sheet.activate();
  sheet.getRange(`A${String(HEADING_ROW)}`).select();
  await context.sync();
  // Last: if this were written and the rows were not, old readings would pass for what people typed.
  await writeInParts(context, keep, copiedRows(plan.copied));
  say(plan.rows.length, "Done");
}
function writeTop(sheet: Excel.Worksheet, options: WriteOptions): void {
  const top = sheet.getRange("A1:D3");
  top.numberFormat = [
    ["@", "@", "@", "@"],
    ["@", "@", "@", "yyyy-mm-dd"],
    ["@", "@", "@", "@"],
  ];
  top.values = [
    ["Gear register", "", "", ""],
    ["Rules in force", options.basis.join(","), "As of", ""],
    [CAUTION, "", "", ""],
  ];
  sheet.getRange(AS_OF_CELL).formulas = [[options.asOf ?? "=TODAY()"]];
  const title = sheet.getRange("A1");
  title.format.font.bold = true;
  title.format.font.size = 14;
  sheet.getRange("A2").format.font.bold = true;
  sheet.getRange("C2").format.font.bold = true;
  sheet.getRange(BASIS_CELL).format.horizontalAlignment = "Left";
  sheet.getRange("A3").format.font.italic = true;
}
/** Formats come before values, so that no text turns into a date or a formula. */
function prepareColumns(sheet: Excel.Worksheet, plan: RegisterPlan, count: number): void {
  plan.fields.forEach((id, index) => {
    const column = sheet.getRangeByIndexes(HEAD + 1, INPUTS + index, count, 1);
    column.numberFormat = inputFormat(id) as unknown as string[][];
    const { type } = field(id);
    column.format.horizontalAlignment = type === "length" || type === "count" || type === "angle" || type === "torque" ? "Right" : "Left";
  });
  sheet.getRangeByIndexes(HEAD, 0, 1, extrasAt(plan) + plan.extras.length).numberFormat = "@" as unknown as string[][];
}
function headingsOf(plan: RegisterPlan): string[] {
  return [
    ...FRONT_COLUMNS.map((c) => c.heading),
    ...plan.fields.map((id) => field(id).heading),
    ...RESULT_COLUMNS.map((c) => c.heading),
    ...plan.extras,
  ];
}
function placeTable(sheet: Excel.Worksheet, plan: RegisterPlan, options: WriteOptions, width: number, count: number): Excel.Table {
  const headings = sheet.getRangeByIndexes(HEAD, 0, 1, width);
  const area = areaAddress(HEAD, 0, count + 1, width);
  if (!options.exists) {
    headings.values = [headingsOf(plan)];
    const table = sheet.tables.add(area, true);
    table.name = REGISTER_TABLE;
    return table;
  }
  const table = sheet.tables.getItem(REGISTER_TABLE);
  table.clearFilters();
  if (Office.context.requirements.isSetSupported("ExcelApi", "1.13")) {
    // Keeps the table itself, and with it references that people made to it.
    table.resize(area);
    // Headings that change places would for a moment stand twice, and a table gives the second a name of its own.
    headings.values = [headingsOf(plan).map((_, index) => `Column ${String(index + 1)} of the add-in`)];
    headings.values = [headingsOf(plan)];
    return table;
  }
  table.convertToRange();
  headings.values = [headingsOf(plan)];
  const again = sheet.tables.add(area, true);
  again.name = REGISTER_TABLE;
  return again;
}
async function writeBody(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  plan: RegisterPlan,
  onProgress: (progress: Progress) => void,
): Promise<void> {
  let start = 0;
  while (start < plan.rows.length) {
    let size = 0,
      end = start;
    while (end < plan.rows.length && size < REQUEST_SIZE) size += sizeOf(plan.rows[end++] ?? []);
    sheet.getRangeByIndexes(HEAD + 1 + start, INPUTS, end - start, plan.fields.length).values = plan.rows.slice(start, end) as Written[][];
    // One request for every few megabytes: the number does not depend on the rows of any log below that size.
    // eslint-disable-next-line office-addins/no-context-sync-in-loop
    await context.sync();
    start = end;
    onProgress({ done: end, of: plan.rows.length, step: "Writing rows" });
  }
}
function clearLeftOver(sheet: Excel.Worksheet, plan: RegisterPlan, options: WriteOptions, width: number, count: number): void {
  // The rules are made anew for the register as it is now.
  sheet.getRangeByIndexes(HEAD + 1, 0, Math.max(count, options.oldRows), Math.max(width, options.oldColumns)).conditionalFormats.clearAll();
  if (options.oldRows > count) {
    const below = sheet.getRangeByIndexes(HEAD + 1 + count, 0, options.oldRows - count, Math.max(width, options.oldColumns));
    below.clear();
    below.format.autofitRows();
  }
  if (options.oldColumns > width)
    sheet.getRangeByIndexes(HEAD, width, Math.max(count, options.oldRows) + 1, options.oldColumns - width).clear();
  if (plan.extras.length > 0 && plan.rows.length > 0)
    sheet.getRangeByIndexes(HEAD + 1, extrasAt(plan), plan.rows.length, plan.extras.length).formulas = plan.extraRows as Written[][];
}
/** One formula for a whole column: structured references read the row they stand in. */
function writeResults(sheet: Excel.Worksheet, plan: RegisterPlan, rules: string, count: number): void {
  const write = (result: ResultColumn, at: number): void => {
    const column = sheet.getRangeByIndexes(HEAD + 1, at, count, 1);
    column.numberFormat = result.format as unknown as string[][];
    if (result.heading !== LOG_DIFFERS) column.formulas = formulaOf(result, rules) as unknown as string[][];
    else if (plan.rows.length > 0) column.values = plan.logDiffers.map((text) => [text]);
    column.format.columnWidth = result.width;
    column.format.horizontalAlignment = "Left";
  };
  RESULT_COLUMNS.forEach((result, index) => {
    write(result, resultsAt(plan) + index);
  });
  FRONT_COLUMNS.forEach(write);
}
function dressSheet(sheet: Excel.Worksheet, plan: RegisterPlan, basis: readonly string[], width: number, count: number): void {
  const headings = sheet.getRangeByIndexes(HEAD, 0, 1, width);
  headings.format.font.bold = true;
  headings.format.wrapText = true;
  headings.format.verticalAlignment = "Center";
  headings.format.rowHeight = 45;
  headings.format.fill.color = "#D9E2EC";
  headings.format.font.color = "#102A43";
  sheet.getRangeByIndexes(HEAD, resultsAt(plan), 1, RESULT_COLUMNS.length).format.fill.color = "#BCCCDC";
  sheet.getRangeByIndexes(HEAD, 0, 1, INPUTS).format.fill.color = "#BCCCDC";
  // A register that was built before had its columns elsewhere.
  const body = sheet.getRangeByIndexes(HEAD + 1, 0, count, width);
  body.dataValidation.clear();
  body.format.font.bold = false;
  body.format.wrapText = false;
  body.format.verticalAlignment = "Top";
  for (const heading of WRAPPED) sheet.getRangeByIndexes(HEAD + 1, columnAt(plan, heading), count, 1).format.wrapText = true;
  body.format.rowHeight = ROW_HEIGHT;
  plan.fields.forEach((id, index) => {
    sheet.getRangeByIndexes(HEAD, INPUTS + index, 1, 1).format.columnWidth = inputWidth(id);
    dropDown(
      sheet.getRangeByIndexes(HEAD + 1, INPUTS + index, count, 1),
      id === "gear" ? { id, choices: gearChoices(plan) } : { id, choices: choicesOf(id) },
    );
  });
  highlight(sheet, plan, width, count);
  sheet.freezePanes.freezeAt(sheet.getRange(`A1:${columnLetters(FROZEN_COLUMNS - 1)}${String(HEADING_ROW)}`));
  const page = sheet.pageLayout;
  page.orientation = Excel.PageOrientation.landscape;
  page.zoom = { horizontalFitToPages: 1 };
  // All columns on one page would be too small to read: the list that is printed has flag, id and gear, then what was worked out.
  page.setPrintArea(`${columnLetters(columnAt(plan, "Verdict"))}:${columnLetters(width - 1)}`);
  page.setPrintTitleColumns(`$A:$${columnLetters(FROZEN_COLUMNS - 1)}`);
  page.setPrintTitleRows(`$1:$${String(HEADING_ROW)}`);
  const foot = page.headersFooters.defaultForAllPages;
  foot.leftFooter = `${SMALL}Gear register\nRules in force: ${basis.join(", ")}`;
  foot.centerFooter = `${SMALL}${CAUTION.replace(". ", ".\n")}`;
  foot.rightFooter = `${SMALL}&D\nPage &P of &N`;
}
/** Gear kinds for the drop-down: those that the register holds, then the others as far as the list reaches. */
export function gearChoices(plan: Pick<RegisterPlan, "fields" | "rows">): readonly string[] {
  const column = plan.fields.indexOf("gear");
  const held = new Set(
    plan.rows.map((row) => {
      const kind = matchKind(String(row[column] ?? ""));
      return kind.ok ? kind.kind.id : "";
    }),
  );
  const order = [...GEAR].sort((a, b) => Number(held.has(b.id)) - Number(held.has(a.id)));
  return fittingChoices(order.map((kind) => kind.id));
}
/** Eight points: the parts of a footer run into each other when they are longer than a third of the page. */
const SMALL = "&8";
/** Drop-downs offer words and do not refuse others: the engine reads more than the list holds. */
function dropDown(column: Excel.Range, { id, choices }: { readonly id: FieldId; readonly choices: readonly string[] | undefined }): void {
  if (!choices) return;
  column.dataValidation.rule = { list: { inCellDropDown: true, source: choices.join(",") } };
  column.dataValidation.errorAlert = {
    showAlert: false,
    style: Excel.DataValidationAlertStyle.information,
    title: field(id).heading,
    message: TAKES[id],
  };
}
function highlight(sheet: Excel.Worksheet, plan: RegisterPlan, width: number, count: number): void {
  const first = String(HEADING_ROW + 1);
  const letter = (heading: string): string => columnLetters(columnAt(plan, heading));
  const verdict = `$${letter("Verdict")}${first}`;
  const due = `$${letter("Due state")}${first}`;
  const body = sheet.getRangeByIndexes(HEAD + 1, 0, count, width);
  // Flag, id and gear, which stay in sight, and the verdict itself.
  const signs = [
    sheet.getRangeByIndexes(HEAD + 1, 0, count, FROZEN_COLUMNS),
    sheet.getRangeByIndexes(HEAD + 1, columnAt(plan, "Verdict"), count, 1),
  ];
  for (const heading of ["Flag", "Verdict"]) sheet.getRangeByIndexes(HEAD + 1, columnAt(plan, heading), count, 1).format.font.bold = true;
  const tint = (range: Excel.Range, cell: string, word: string, color: { readonly fill: string; readonly font: string }): void => {
    const rule = range.conditionalFormats.add(Excel.ConditionalFormatType.custom);
    rule.custom.rule.formula = `=${cell}="${word}"`;
    rule.custom.format.fill.color = color.fill;
    rule.custom.format.font.color = color.font;
  };
  const sign = (word: keyof typeof SIGN_COLORS): void => {
    for (const part of signs) tint(part, verdict, word, SIGN_COLORS[word]);
  };
  // A rule that is added comes before those already there, so the one that must win comes last; the order is that of the flag.
  sign("WATCH");
  sign("DRESS");
  tint(body, due, "DUE SOON", SHEET_COLORS["DUE SOON"]);
  // Gear without a date is no better than gear that is late.
  tint(body, due, "NO DATE", SHEET_COLORS.OVERDUE);
  tint(body, due, "OVERDUE", SHEET_COLORS.OVERDUE);
  tint(body, verdict, "REMOVE", SHEET_COLORS.REMOVE);
  sign("NO VERDICT");
  sign("EXAMINE");
}

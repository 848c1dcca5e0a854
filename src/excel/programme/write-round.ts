/** Writing a round sheet: always a new one, so that nothing that was filled is ever written over. */
import { choicesOf } from "../../engine/pages/about-columns";
import { type Sending, writeBlock } from "../kit/in-parts";
import { neighbours } from "../kit/read-in-parts";
import { CAUTION } from "../kit/sheets";
import { SHEET_COLORS, SIGN_COLORS } from "../kit/tints";
import type { RoundSheetPlan } from "./plan-round";
import {
  columnOf,
  HEADING_ROW,
  HELD,
  INPUT_ROW,
  INPUTS,
  letterOf,
  ROUND_COLUMNS,
  ROUND_SIGN,
  type RoundHeading,
  SHOWN,
  TYPE,
} from "./round-layout";

export interface RoundHeld {
  readonly round: string;
  readonly kind: string;
  readonly basis: string;
}
const TEXT = "@" as unknown as string[][];
const FILL = "#FFF9DB";
const GREY = "#7B8794";
const FIRST = HEADING_ROW;
/** Characters that setting one property of a range takes in a request: its objects, one inside the other, and the call. */
const CALL = 900;
export async function writeRoundSheet(sending: Sending, sheet: Excel.Worksheet, plan: RoundSheetPlan, held: RoundHeld): Promise<void> {
  const count = plan.rows.length;
  const width = ROUND_COLUMNS.length;
  const all = sheet.getRangeByIndexes(0, 0, FIRST + count, width);
  all.format.font.size = TYPE;
  all.numberFormat = TEXT;
  ROUND_COLUMNS.forEach(({ width: points }, column) => {
    sheet.getRangeByIndexes(0, column, 1, 1).format.columnWidth = points;
  });
  writeTop(sheet, plan, held);
  // Formats before values, so that 3/4 stays 3/4.
  await writeFormats(sending, sheet, plan.nowFormats);
  await writeBlock(sending, sheet, { row: FIRST, column: 0 }, plan.rows, "values");
  for (const { row, formula } of plan.formulas) {
    await sending.room(formula.length + CALL);
    sheet.getRangeByIndexes(FIRST + row, columnOf("Now"), 1, 1).formulas = [[formula]];
  }
  await dressLines(sending, sheet, plan);
  await offerWords(sending, sheet, plan);
  dressPage(sheet, plan);
}
async function writeFormats(sending: Sending, sheet: Excel.Worksheet, formats: readonly string[]): Promise<void> {
  const general = formats.flatMap((format, row) => (format === "General" ? [row] : []));
  for (const { from, count } of neighbours(general)) {
    await sending.room(CALL);
    sheet.getRangeByIndexes(FIRST + from, columnOf("Now"), count, 1).numberFormat = "General" as unknown as string[][];
  }
}
function writeTop(sheet: Excel.Worksheet, plan: RoundSheetPlan, held: RoundHeld): void {
  const top = sheet.getRangeByIndexes(0, 0, HEADING_ROW - 1, 1);
  top.values = [[plan.title], [plan.line], ["Inspected by"], [plan.help]];
  const title = sheet.getRange("A1");
  title.format.font.bold = true;
  title.format.font.size = 14;
  for (const row of [2, 4]) {
    const line = sheet.getRangeByIndexes(row - 1, 0, 1, SHOWN);
    line.merge();
    line.format.wrapText = true;
    line.format.verticalAlignment = "Top";
    line.format.rowHeight = 28;
  }
  const labels = { E: "Date", G: "Gauge reads to (0.01 mm)", I: "Gauge id" };
  for (const [letter, label] of Object.entries(labels)) {
    const cell = sheet.getRange(`${letter}${String(INPUT_ROW)}`);
    cell.values = [[label]];
    cell.format.horizontalAlignment = "Right";
  }
  sheet.getRange(`C${String(INPUT_ROW)}:D${String(INPUT_ROW)}`).merge();
  for (const address of Object.values(INPUTS)) {
    const cell = sheet.getRange(address);
    cell.format.fill.color = FILL;
    cell.format.borders.getItem("EdgeBottom").style = "Continuous";
    cell.format.horizontalAlignment = "Left";
  }
  sheet.getRange(`D${String(INPUT_ROW)}`).format.fill.color = FILL;
  sheet.getRange(INPUTS.date).numberFormat = [["yyyy-mm-dd"]];
  sheet.getRangeByIndexes(INPUT_ROW - 1, 0, 1, 1).format.rowHeight = 22;
  const headings = sheet.getRangeByIndexes(HEADING_ROW - 1, 0, 1, ROUND_COLUMNS.length);
  headings.values = [ROUND_COLUMNS.map(({ heading }) => heading)];
  headings.format.font.bold = true;
  headings.format.fill.color = "#E9EEF3";
  headings.format.rowHeight = 18;
  const cells: Readonly<Record<keyof typeof HELD, string>> = { ...held, mark: ROUND_SIGN, title: plan.title };
  for (const [name, address] of Object.entries(HELD) as [keyof typeof HELD, string][]) sheet.getRange(address).values = [[cells[name]]];
}
async function dressLines(sending: Sending, sheet: Excel.Worksheet, plan: RoundSheetPlan): Promise<void> {
  const count = plan.rows.length;
  const body = sheet.getRangeByIndexes(FIRST, 0, count, SHOWN);
  body.format.verticalAlignment = "Center";
  for (const side of ["InsideHorizontal", "InsideVertical", "EdgeBottom", "EdgeTop", "EdgeLeft", "EdgeRight"] as const) {
    body.format.borders.getItem(side).style = "Continuous";
    body.format.borders.getItem(side).color = "#9AA5B1";
  }
  const of = (heading: RoundHeading): Excel.Range => sheet.getRangeByIndexes(FIRST, columnOf(heading), count, 1);
  for (const heading of ["Gear", "Place", "Look at or measure", "As new", "Last", "Comes out at", "Found"] as const)
    of(heading).format.wrapText = true;
  for (const heading of ["Id", "Gear", "Place"] as const) of(heading).format.font.color = GREY;
  of("Now").format.horizontalAlignment = "Left";
  for (const heading of ["Now", "Found", "Gauge"] as const) of(heading).format.fill.color = FILL;
  for (const [height, rows] of grouped(plan.heights))
    for (const { from, count: many } of neighbours(rows)) {
      await sending.room(CALL);
      sheet.getRangeByIndexes(FIRST + from, 0, many, 1).format.rowHeight = height;
    }
  for (const row of plan.itemRows) {
    await sending.room(12 * CALL);
    const line = sheet.getRangeByIndexes(FIRST + row, 0, 1, SHOWN);
    line.format.fill.color = "#EEF1F4";
    line.format.font.bold = true;
    line.format.font.color = "#111827";
    line.format.borders.getItem("EdgeTop").style = "Continuous";
    line.format.borders.getItem("EdgeTop").weight = "Medium";
    const words = sheet.getRangeByIndexes(FIRST + row, columnOf("Look at or measure"), 1, 4);
    words.merge();
    words.format.font.bold = false;
    words.format.wrapText = false;
    sheet.getRangeByIndexes(FIRST + row, columnOf("Found"), 1, 1).format.fill.color = FILL;
  }
  for (const row of plan.takenRows) {
    await sending.room(3 * CALL);
    const line = sheet.getRangeByIndexes(FIRST + row, columnOf("Look at or measure"), 1, 7);
    line.format.font.color = GREY;
    line.format.fill.color = "#FFFFFF";
  }
  for (const row of plan.hiddenRows) {
    await sending.room(CALL);
    sheet.getRangeByIndexes(FIRST + row, 0, 1, 1).rowHidden = true;
  }
}
function grouped(heights: readonly number[]): ReadonlyMap<number, readonly number[]> {
  const groups = new Map<number, number[]>();
  heights.forEach((height, row) => {
    const known = groups.get(height);
    if (known) known.push(row);
    else groups.set(height, [row]);
  });
  return groups;
}
/** Words for what is seen; any other word may be typed. */
async function offerWords(sending: Sending, sheet: Excel.Worksheet, plan: RoundSheetPlan): Promise<void> {
  const offer = async (row: number, column: RoundHeading, words: readonly string[]): Promise<void> => {
    await sending.room(4 * CALL);
    const { dataValidation } = sheet.getRangeByIndexes(FIRST + row, columnOf(column), 1, 1);
    dataValidation.rule = { list: { inCellDropDown: true, source: words.join(",") } };
    dataValidation.errorAlert = { showAlert: false, style: "Information", title: column, message: "Another word may be typed." };
  };
  for (const row of plan.itemRows) await offer(row, "Found", ["not found"]);
  for (const { row, field } of plan.lists) {
    const words = choicesOf(field);
    if (words !== undefined) await offer(row, "Now", words);
  }
}
function dressPage(sheet: Excel.Worksheet, plan: RoundSheetPlan): void {
  const last = String(FIRST + plan.rows.length);
  const verdicts = sheet.getRange(`${letterOf("Now")}${String(FIRST + 1)}:${letterOf("Now")}${last}`);
  const first = `$${letterOf("Now")}${String(FIRST + 1)}`;
  for (const [word, look] of [["REMOVE", SHEET_COLORS.REMOVE], ...Object.entries(SIGN_COLORS)] as const) {
    const rule = verdicts.conditionalFormats.add(Excel.ConditionalFormatType.custom);
    rule.custom.rule.formula = `=AND($${letterOf("Line")}${String(FIRST + 1)}="item",${first}="${word}")`;
    rule.custom.format.fill.color = look.fill;
    rule.custom.format.font.color = look.font;
  }
  sheet.getRange(`${letterOf("Line")}:${letterOf("As new was")}`).columnHidden = true;
  sheet.freezePanes.freezeRows(HEADING_ROW);
  sheet.showGridlines = false;
  const page = sheet.pageLayout;
  page.orientation = Excel.PageOrientation.landscape;
  page.zoom = { horizontalFitToPages: 1, verticalFitToPages: 0 };
  page.leftMargin = 28;
  page.rightMargin = 28;
  page.setPrintArea(`A1:${letterOf("Gauge")}${last}`);
  page.setPrintTitleRows(`$${String(HEADING_ROW)}:$${String(HEADING_ROW)}`);
  const foot = page.headersFooters.defaultForAllPages;
  // All parts of a footer together take 255 characters.
  foot.leftFooter = `&8${plan.title.slice(0, 60)}`;
  foot.centerFooter = `&8${CAUTION.replace(". ", ".\n")}`;
  foot.rightFooter = "&8&D\nPage &P of &N";
}

/** The report of thorough examination of a posted round, on a sheet of its own, anew each time. */
import { type ReportContents, reportContents, type ReportedItem } from "../../engine/programme/report-contents";
import type { BasisId } from "../../engine/rules/rule-sets";
import { areaAddress } from "../kit/addresses";
import { Sending, writeBlock } from "../kit/in-parts";
import { putMark, readSheets, type Sheets } from "../kit/marks";
import { inWorkbook } from "../kit/run";
import { CAUTION, REPORT_SHEET } from "../kit/sheets";
import { WorkbookError } from "../kit/workbook-error";
import { checkRegister } from "../register/check-register";
import { readHistory } from "./history-sheet";
import { keptRounds } from "./kept-rounds";
import { roundSheets } from "./read-round";

const COLUMNS: readonly {
  readonly heading: string;
  readonly width: number;
  readonly fits: number;
  readonly of: (item: ReportedItem) => string;
}[] = [
  { heading: "Id", width: 54, fits: 10, of: ({ id }) => id },
  { heading: "Gear, size, place", width: 110, fits: 21, of: ({ gear }) => gear },
  { heading: "Safe working load", width: 60, fits: 11, of: ({ ratedLoad }) => ratedLoad },
  { heading: "Last examined", width: 58, fits: 11, of: ({ lastExamined }) => lastExamined },
  { heading: "Examined", width: 58, fits: 11, of: ({ examined }) => examined },
  { heading: "Interval", width: 92, fits: 17, of: ({ interval }) => interval },
  { heading: "Safe to operate", width: 50, fits: 9, of: ({ safe }) => safe },
  { heading: "Defects, and what is to be done", width: 190, fits: 36, of: ({ defects }) => defects.join("\n") },
  { heading: "Next at the latest", width: 60, fits: 11, of: ({ nextAt }) => nextAt },
];
/** What neither register nor history knows; to be filled in by hand. */
const OPEN = [
  "Employer for whom the examination was made, name and address: ______________________________________________",
  "Premises at which it was made: ______________________________________________",
  "First examination after installation or assembly at a new site? If so, correctly installed: ________",
  "Tests made, if any (kind, load, result): ______________________________________________",
];
const LINE = 13;
const TEXT = "@" as unknown as string[][];
export async function writeReport(
  roundSheet: string,
  basis: readonly BasisId[],
  asOf: number,
): Promise<{ readonly sheet: string; readonly items: number }> {
  const register = await checkRegister(basis, asOf);
  return inWorkbook(async (context) => {
    const sheets = await readSheets(context);
    const round = roundSheets(sheets).find(({ sheet }) => sheet === roundSheet)?.round ?? "";
    const kept = await keptRounds();
    const { rows } = await readHistory(context, sheets, kept.length > 0);
    const contents = reportContents(rows, round, register?.log.report.items ?? []);
    if (contents === null)
      throw new WorkbookError("no log", `Nothing was posted from "${roundSheet}" yet. Post it, then write the report.`);
    const sheet = ownSheet(context, sheets);
    const sending = new Sending(context);
    await write(sending, sheet, contents);
    sheet.activate();
    sheet.getRange("A1").select();
    await sending.send();
    return { sheet: REPORT_SHEET, items: contents.items.length };
  });
}
function ownSheet(context: Excel.RequestContext, sheets: Sheets): Excel.Worksheet {
  const mine = sheets.marked("report");
  if (mine !== null) {
    const sheet = context.workbook.worksheets.getItem(mine.id);
    sheet.getRange().clear();
    return sheet;
  }
  if (sheets.named(REPORT_SHEET) !== null)
    throw new WorkbookError(
      "other shape",
      `The sheet "${REPORT_SHEET}" is not one that this add-in wrote. Give it another name, then try again; nothing was written.`,
    );
  const made = context.workbook.worksheets.add(REPORT_SHEET);
  putMark(context, made, "report", sheets.stands("report"));
  return made;
}
async function write(sending: Sending, sheet: Excel.Worksheet, contents: ReportContents): Promise<void> {
  const width = COLUMNS.length;
  const top = [
    "Report of thorough examination",
    `${contents.title}. Examined on ${contents.days.join(", ")} by ${contents.by.join(", ")}, under ${contents.rules.join("; ")}.`,
    ...OPEN,
  ];
  const heading = top.length + 1;
  const rows = contents.items.map((item) => COLUMNS.map(({ of }) => of(item)));
  const foot = [
    "A defect that is a danger to persons now or could become one is named above; time by which it could: ______________________",
    `Examined by ${contents.by.join(", ")}: signature ______________________  address ______________________`,
    "Authenticated on behalf of the examiner by: name ______________________  signature ______________________",
    "Date of this report: ______________________",
    CAUTION,
  ];
  const count = heading + rows.length + 1 + foot.length;
  const all = sheet.getRangeByIndexes(0, 0, count, width);
  all.numberFormat = TEXT;
  all.format.font.size = 9;
  COLUMNS.forEach((column, at) => {
    sheet.getRangeByIndexes(0, at, 1, 1).format.columnWidth = column.width;
  });
  const across = (row: number, text: string): void => {
    sheet.getRangeByIndexes(row, 0, 1, 1).values = [[text]];
    const line = sheet.getRangeByIndexes(row, 0, 1, width);
    line.merge();
    line.format.wrapText = true;
    line.format.verticalAlignment = "Top";
    line.format.rowHeight = LINE * Math.ceil(text.length / 140) + 5;
  };
  top.forEach((text, row) => {
    across(row, text);
  });
  const title = sheet.getRange("A1");
  title.format.font.size = 14;
  title.format.font.bold = true;
  title.format.rowHeight = 22;
  const head = sheet.getRangeByIndexes(heading - 1, 0, 1, width);
  head.values = [COLUMNS.map((column) => column.heading)];
  head.format.font.bold = true;
  head.format.wrapText = true;
  head.format.fill.color = "#E9EEF3";
  head.format.rowHeight = 2 * LINE + 4;
  await writeBlock(sending, sheet, { row: heading, column: 0 }, rows, "values");
  const body = sheet.getRangeByIndexes(heading, 0, rows.length, width);
  body.format.wrapText = true;
  body.format.verticalAlignment = "Top";
  for (const side of ["InsideHorizontal", "EdgeBottom"] as const) {
    body.format.borders.getItem(side).style = "Continuous";
    body.format.borders.getItem(side).color = "#9AA5B1";
  }
  for (const [at, row] of rows.entries()) {
    await sending.room(900);
    const lines = COLUMNS.map(({ fits }, column) =>
      (row[column] ?? "").split("\n").reduce((sum, line) => sum + Math.max(1, Math.ceil(line.length / fits)), 0),
    );
    sheet.getRangeByIndexes(heading + at, 0, 1, 1).format.rowHeight = LINE * Math.max(...lines) + 3;
  }
  foot.forEach((text, at) => {
    across(heading + rows.length + 1 + at, text);
  });
  const page = sheet.pageLayout;
  page.orientation = Excel.PageOrientation.landscape;
  page.zoom = { horizontalFitToPages: 1, verticalFitToPages: 0 };
  page.leftMargin = 28;
  page.rightMargin = 28;
  page.setPrintArea(areaAddress(0, 0, count, width));
  page.setPrintTitleRows(`$${String(heading)}:$${String(heading)}`);
  const footer = page.headersFooters.defaultForAllPages;
  footer.leftFooter = `&8${REPORT_SHEET}`;
  footer.centerFooter = `&8${CAUTION.replace(". ", ".\n")}`;
  footer.rightFooter = "&8Printed &D\nPage &P of &N";
}

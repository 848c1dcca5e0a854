/** Writing a list to hand over on a sheet of its own, anew each time. A sheet of that name that is not the add-in's is left alone. */
import { areaAddress } from "../kit/addresses";
import { type Mark, putMark, readSheets } from "../kit/marks";
import { inWorkbook } from "../kit/run";
import { CAUTION } from "../kit/sheets";
import { WorkbookError } from "../kit/workbook-error";
import { heightOf, LIST_COLUMNS, type ListKind, type ListToWrite, linesIn, LISTS, PAGE_WIDTH, planList } from "./plan-list";

const MARKED: Readonly<Record<ListKind, Mark>> = { out: "listOut", examine: "listExamine", late: "listLate" };
const WIDTH = LIST_COLUMNS.length;
/** One-based row of the headings. */
const HEADINGS_AT = 6;
const BODY = HEADINGS_AT;
const TEXT = "@" as unknown as string[][];
/** Points: 0.4 in at the sides, room for the footer below. */
const MARGINS = { leftMargin: 29, rightMargin: 29, topMargin: 36, bottomMargin: 50, footerMargin: 18 } as const;
export async function writeList(list: ListToWrite): Promise<{ readonly sheet: string; readonly items: number }> {
  const plan = planList(list);
  if (plan.rows.length === 0) throw new WorkbookError("no log", `${LISTS[list.kind].none} No list was written.`);
  return inWorkbook(async (context) => {
    const sheet = await ownSheet(context, list.kind);
    const top = sheet.getRangeByIndexes(0, 0, plan.top.length, 1);
    top.numberFormat = TEXT;
    top.values = plan.top.map((text) => [text]);
    plan.top.forEach((text, row) => {
      const line = sheet.getRangeByIndexes(row, 0, 1, WIDTH);
      line.merge();
      line.format.wrapText = true;
      line.format.verticalAlignment = "Top";
      line.format.font.size = row === 0 ? 14 : 9;
      line.format.font.bold = row === 0;
      line.format.font.italic = text === CAUTION;
      line.format.rowHeight = row === 0 ? 20 : 13 * linesIn(text, PAGE_WIDTH) + 2;
    });
    const head = sheet.getRangeByIndexes(HEADINGS_AT - 1, 0, 1, WIDTH);
    head.numberFormat = TEXT;
    head.values = [LIST_COLUMNS.map(({ heading }) => heading)];
    head.format.font.bold = true;
    head.format.font.size = 9;
    head.format.fill.color = "#D9E2EC";
    head.format.font.color = "#102A43";
    head.format.rowHeight = 16;
    const body = sheet.getRangeByIndexes(BODY, 0, plan.rows.length, WIDTH);
    body.numberFormat = TEXT;
    body.values = plan.rows.map((row) => [...row]);
    body.format.font.size = 9;
    body.format.wrapText = true;
    body.format.verticalAlignment = "Top";
    body.format.horizontalAlignment = "Left";
    for (const edge of ["InsideHorizontal", "EdgeBottom"] as const) {
      const line = body.format.borders.getItem(edge);
      line.style = "Continuous";
      line.color = "#9AA5B1";
    }
    plan.rows.forEach((row, index) => {
      sheet.getRangeByIndexes(BODY + index, 0, 1, 1).format.rowHeight = heightOf(row);
    });
    LIST_COLUMNS.forEach(({ width }, column) => {
      sheet.getRangeByIndexes(0, column, 1, 1).format.columnWidth = width;
    });
    sheet.getRangeByIndexes(BODY, 0, plan.rows.length, 1).format.font.bold = true;
    page(sheet, list, plan.rows.length);
    sheet.freezePanes.freezeRows(HEADINGS_AT);
    sheet.activate();
    sheet.getRange("A1").select();
    await context.sync();
    return { sheet: LISTS[list.kind].sheet, items: plan.rows.length };
  });
}
/** One page wide at full size, headings on every page, the caution and the date in the footer. */
function page(sheet: Excel.Worksheet, { kind, report }: ListToWrite, rows: number): void {
  const layout = sheet.pageLayout;
  layout.orientation = Excel.PageOrientation.landscape;
  layout.zoom = { horizontalFitToPages: 1 };
  layout.set(MARGINS);
  layout.setPrintArea(areaAddress(0, 0, BODY + rows, WIDTH));
  layout.setPrintTitleRows(`$${String(HEADINGS_AT)}:$${String(HEADINGS_AT)}`);
  const foot = layout.headersFooters.defaultForAllPages;
  const day = new Date((report.asOf - 25569) * 86_400_000).toISOString().slice(0, 10);
  foot.leftFooter = `&8${LISTS[kind].title}\nas of ${day}`;
  foot.centerFooter = `&8${CAUTION.replace(". ", ".\n")}`;
  foot.rightFooter = "&8Printed &D\nPage &P of &N";
}
async function ownSheet(context: Excel.RequestContext, kind: ListKind): Promise<Excel.Worksheet> {
  const { worksheets } = context.workbook;
  const sheets = await readSheets(context);
  const mark = MARKED[kind];
  const name = LISTS[kind].sheet;
  const mine = sheets.marked(mark);
  if (mine === null) {
    if (sheets.named(name) !== null)
      throw new WorkbookError(
        "other shape",
        `The sheet "${name}" is not one that this add-in wrote. Give it another name, then try again; nothing was written.`,
      );
    const made = worksheets.add(name);
    putMark(context, made, mark, sheets.stands(mark));
    return made;
  }
  const sheet = worksheets.getItem(mine.id);
  const { protection } = sheet;
  protection.load("protected");
  await context.sync();
  if (protection.protected)
    throw new WorkbookError(
      "protected",
      `The sheet "${mine.name}" is protected. Unprotect it under Review, then try again; nothing was written.`,
    );
  sheet.getRange().clear();
  return sheet;
}

/** Looks of the register: what a build gives to columns, rows and sheet when they are new, and leaves alone afterwards. */
import { field } from "../../engine/columns";
import { type BasisId, showRules } from "../../engine/rules/rule-sets";
import { columnLetters } from "../kit/addresses";
import { CAUTION, HEADING_ROW } from "../kit/sheets";
import { FROZEN_COLUMNS, inputFormat, inputWidth, ROW_HEIGHT } from "./columns";
import { dropDown } from "./drop-downs";
import { folds, isHidden, type Layout, type LayoutColumn, roleOf } from "./layout";

const HEAD = HEADING_ROW - 1;
const BODY = HEADING_ROW;
/** Formats of a column's rows, before anything is written into them. */
export function dressColumn(
  sheet: Excel.Worksheet,
  { role }: LayoutColumn,
  column: number,
  rows: { readonly from: number; readonly count: number },
  kinds: string,
  whole: boolean,
): void {
  if (role.kind === "own" || rows.count < 1) return;
  const cells = sheet.getRangeByIndexes(BODY + rows.from, column, rows.count, 1);
  cells.numberFormat = (role.kind === "result"
    ? role.result.format
    : role.kind === "input"
      ? inputFormat(role.field)
      : "@") as unknown as string[][];
  cells.format.horizontalAlignment = isFigure(role) ? "Right" : "Left";
  if (role.kind === "result" && (role.result.heading === "Flag" || role.result.heading === "Verdict")) cells.format.font.bold = true;
  // A new column takes over the drop-down of its neighbour.
  if (whole) cells.dataValidation.clear();
  if (role.kind === "input") dropDown(cells, role.field, kinds);
  if (!whole) return;
  cells.format.columnWidth = role.kind === "result" ? role.result.width : role.kind === "input" ? inputWidth(role.field) : 90;
  if (isHidden({ role, heading: "", from: null })) cells.columnHidden = true;
}
function isFigure(role: LayoutColumn["role"]): boolean {
  if (role.kind === "result") return role.result.heading === "Used";
  return role.kind === "input" && ["length", "count", "angle", "torque"].includes(field(role.field).type);
}
/** Widths and hidden columns as they were, by heading: adding a table's column moves cells and not these. */
export function widthsOf(
  sheet: Excel.Worksheet,
  layout: Layout,
  before: ReadonlyMap<string, { readonly width: number; readonly hidden: boolean }>,
): void {
  layout.columns.forEach(({ heading, from }, column) => {
    const was = from === null ? undefined : before.get(heading);
    if (was === undefined || from === column) return;
    const cells = sheet.getRangeByIndexes(BODY, column, 1, 1);
    cells.columnHidden = was.hidden;
    if (!was.hidden) cells.format.columnWidth = was.width;
  });
}
export function dressHeadings(sheet: Excel.Worksheet, { columns }: Layout): void {
  const headings = sheet.getRangeByIndexes(HEAD, 0, 1, columns.length);
  headings.format.font.bold = true;
  headings.format.wrapText = true;
  headings.format.verticalAlignment = "Center";
  headings.format.font.color = "#102A43";
  columns.forEach(({ role }, column) => {
    if (role.kind === "own") return;
    sheet.getRangeByIndexes(HEAD, column, 1, 1).format.fill.color = role.kind === "result" ? "#D5DEE8" : "#E9EEF3";
  });
}
/** Eight points: the parts of a footer run into each other when they are longer than a third of the page. */
const SMALL = "&8";
/** Characters that Excel takes in a footer, with a code of two for each of its three parts (specifications and limits). */
const LONGEST_FOOTER = 255 - 6;
/** The three parts of the footer. Rule sets that do not fit stand in the head, which is printed on each page. */
function footerOf(basis: readonly BasisId[]): [string, string, string] {
  const left = (rules: string): string => `${SMALL}Gear register\nRules in force: ${rules}`;
  const center = `${SMALL}${CAUTION.replace(". ", ".\n")}`;
  const right = `${SMALL}&D\nPage &P of &N`;
  const named = left(showRules(basis));
  const fits = named.length + center.length + right.length <= LONGEST_FOOTER;
  return [fits ? named : left(`${String(basis.length)} sets, named in the head`), center, right];
}
export function dressSheet(sheet: Excel.Worksheet, { columns }: Layout, basis: readonly BasisId[], count: number): void {
  sheet.getRangeByIndexes(HEAD, 0, 1, columns.length).format.rowHeight = 32;
  const body = sheet.getRangeByIndexes(BODY, 0, count, columns.length);
  body.format.wrapText = false;
  body.format.verticalAlignment = "Center";
  body.format.rowHeight = ROW_HEIGHT;
  sheet.freezePanes.freezeAt(sheet.getRange(`A1:${columnLetters(FROZEN_COLUMNS - 1)}${String(HEADING_ROW)}`));
  const page = sheet.pageLayout;
  page.orientation = Excel.PageOrientation.landscape;
  page.zoom = { horizontalFitToPages: 1 };
  // What is printed is the first screen: columns that are folded do not print.
  const last = columns.reduce((found, { role }, index) => (role.kind === "result" ? index : found), 0);
  page.setPrintArea(`A:${columnLetters(last)}`);
  page.setPrintTitleRows(`$1:$${String(HEADING_ROW)}`);
  const foot = page.headersFooters.defaultForAllPages;
  const [left, center, right] = footerOf(basis);
  foot.leftFooter = left;
  foot.centerFooter = center;
  foot.rightFooter = right;
}
/**
 * The outline by which groups of columns fold. It belongs to the sheet's columns and not to the table's, so after columns
 * were added it is made anew. In a request of its own: a group that somebody took away can't be taken away again, and
 * nothing but the look hangs on it.
 */
export async function foldColumns(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  layout: Layout,
  first: boolean,
  before: readonly string[] | null,
): Promise<void> {
  const columns = (from: number, count: number): Excel.Range => sheet.getRange(`${columnLetters(from)}:${columnLetters(from + count - 1)}`);
  const tolerated = async (step: () => void): Promise<void> => {
    try {
      step();
      await context.sync();
    } catch {
      // The register is whole without it.
    }
  };
  if (!first && before !== null) {
    const was: Layout = { old: false, columns: before.map((heading, from) => ({ heading, role: roleOf(heading), from })) };
    for (const { from, count } of folds(was))
      await tolerated(() => {
        columns(from, count).ungroup(Excel.GroupOption.byColumns);
      });
  }
  const wanted = folds(layout);
  await tolerated(() => {
    for (const { from, count } of wanted) columns(from, count).group(Excel.GroupOption.byColumns);
  });
  if (!first) return;
  await tolerated(() => {
    for (const { from, count, group } of wanted)
      if (group === "the answer" || layout.old) columns(from, count).hideGroupDetails(Excel.GroupOption.byColumns);
  });
}

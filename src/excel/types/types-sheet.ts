/** The sheet of as-new sizes by type: which it is, and reading it back. */
import { asGrid } from "../../engine/log/grid";
import type { CellValue } from "../../engine/reading/cell-value";
import { type GearTypes, looksLikeTypes, readTypes } from "../../engine/types/gear-types";
import { readSheets, type SheetName, type Sheets } from "../kit/marks";
import { refuseOtherShape } from "../kit/sheet-shape";
import { TYPES_ROWS, TYPES_SHEET } from "../kit/sheets";
import { readGrid } from "../log/date-cells";

/** Rows at the top in which its headings are looked for. */
const TOP = 30;
/** The sheet that bears the mark; else one of that name with the headings of one, as another program may have written it. */
export async function typesSheet(context: Excel.RequestContext, sheets: Sheets): Promise<SheetName | null> {
  const marked = sheets.marked("types");
  if (marked !== null) return marked;
  const named = sheets.named(TYPES_SHEET);
  if (named === null) return null;
  const top = context.workbook.worksheets
    .getItem(named.id)
    .getRange("A1")
    .getResizedRange(TOP - 1, TOP - 1);
  top.load("values");
  await context.sync();
  return looksLikeTypes(top.values as CellValue[][]) ? named : null;
}
/** The types of the workbook; null where it has no sheet of them. */
export async function readTypesSheet(context: Excel.RequestContext): Promise<GearTypes | null> {
  const found = await typesSheet(context, await readSheets(context));
  if (found === null) return null;
  const used = context.workbook.worksheets.getItem(found.id).getUsedRangeOrNullObject(true);
  used.load("rowIndex,columnIndex,rowCount,address");
  await context.sync();
  if (used.isNullObject) return null;
  refuseOtherShape(found.name, used, TYPES_ROWS, "types");
  const address = used.address.slice(used.address.lastIndexOf("!") + 1);
  const { grid } = await readGrid(context, { sheet: found.name, sheetId: found.id, address, how: "found", table: "" });
  return readTypes(asGrid(grid));
}

/** The house's own limits on a sheet of their own: the template, and reading it back. */
import { houseOn } from "../../engine/house/rules-in-force";
import { asGrid } from "../../engine/log/grid";
import type { CellValue } from "../../engine/reading/cell-value";
import type { HouseLimits } from "../../engine/rules/house-limits";
import { readSheets } from "../kit/marks";
import { refuseOtherShape } from "../kit/sheet-shape";
import { BASIS_CELL, HOUSE_ROWS, HOUSE_SHEET } from "../kit/sheets";

/** Row of the headings; title, rule sets and notes stand above. */
export const HEADINGS_AT = 8;
/** The limits on the sheet, or null when the workbook has none. The sheet is known by its mark, else by its name. */
export async function readHouseSheet(context: Excel.RequestContext): Promise<HouseLimits | null> {
  const sheets = await readSheets(context);
  const found = sheets.marked("house") ?? sheets.named(HOUSE_SHEET);
  if (found === null) return null;
  const used = context.workbook.worksheets.getItem(found.id).getUsedRangeOrNullObject(true);
  used.load("values,rowIndex,columnIndex,rowCount");
  await context.sync();
  if (used.isNullObject) return null;
  refuseOtherShape(found.name, used, HOUSE_ROWS, "limits");
  return houseOn(asGrid(used.values as CellValue[][]));
}
/** The rule sets that stand beside the house limits are those of the register, once there is one. */
export function followRegister(sheet: Excel.Worksheet, register: string | null): void {
  const cell = sheet.getRange("B2");
  cell.numberFormat = "General" as unknown as string[][];
  if (register !== null) cell.formulas = [[`='${register.replaceAll("'", "''")}'!${BASIS_CELL}`]];
}

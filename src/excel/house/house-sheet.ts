/** The house's own limits on a sheet of their own: the template, and reading it back. */
import { houseOn } from "../../engine/house/rules-in-force";
import { asGrid } from "../../engine/log/grid";
import type { CellValue } from "../../engine/reading/cell-value";
import type { HouseLimits } from "../../engine/rules/house-limits";
import { BASIS_CELL, HOUSE_SHEET, REGISTER_SHEET } from "../kit/sheets";
import { WorkbookError } from "../kit/workbook-error";

/** Rows that the register's formulas read; more house limits than that are refused by name. */
export const HOUSE_ROWS = 200;
/** Row of the headings; title, rule sets and notes stand above. */
export const HEADINGS_AT = 8;
/** What the formulas of the register hand over in place of the rule sets when there are house limits. */
export const HOUSE_RANGE = `'${HOUSE_SHEET}'!$A$1:$G$${String(HOUSE_ROWS)}`;
/** The limits on the sheet, or null when the workbook has none. */
export async function readHouseSheet(context: Excel.RequestContext): Promise<HouseLimits | null> {
  const sheet = context.workbook.worksheets.getItemOrNullObject(HOUSE_SHEET);
  const used = sheet.getUsedRangeOrNullObject(true);
  sheet.load("name");
  used.load("values,rowIndex,columnIndex,rowCount");
  await context.sync();
  if (sheet.isNullObject || used.isNullObject) return null;
  if (used.rowIndex !== 0 || used.columnIndex !== 0)
    throw new WorkbookError(
      "other shape",
      `The sheet "${HOUSE_SHEET}" does not begin in cell A1. Put its title there, or rename the sheet, then read the log again.`,
    );
  if (used.rowCount > HOUSE_ROWS)
    throw new WorkbookError(
      "too large",
      `The sheet "${HOUSE_SHEET}" holds more than ${String(HOUSE_ROWS)} rows. Keep the limits that are needed, then read the log again.`,
    );
  return houseOn(asGrid(used.values as CellValue[][]));
}
/** The rule sets that stand beside the house limits are those of the register, once there is one. */
export function followRegister(sheet: Excel.Worksheet, exists: boolean): void {
  const cell = sheet.getRange("B2");
  cell.numberFormat = "General" as unknown as string[][];
  if (exists) cell.formulas = [[`='${REGISTER_SHEET}'!${BASIS_CELL}`]];
}

/** What a sheet of the user's own that is read whole has to look like. */
import { WorkbookError } from "./workbook-error";

/** Refuses, by the sheet's name, what does not begin in A1 or is longer than is read. `held` is what stands on it, such as "limits". */
export function refuseOtherShape(name: string, used: Excel.Range, mostRows: number, held: string): void {
  if (used.rowIndex !== 0 || used.columnIndex !== 0)
    throw new WorkbookError(
      "other shape",
      `The sheet "${name}" does not begin in cell A1. Put its title there, or rename the sheet, then read the log again.`,
    );
  if (used.rowCount > mostRows)
    throw new WorkbookError(
      "too large",
      `The sheet "${name}" holds more than ${mostRows.toLocaleString("en-US")} rows. Keep the ${held} that are needed, then read the log again.`,
    );
}

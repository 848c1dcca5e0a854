/** Finding and reading a log. The number of round trips does not depend on the number of rows. */
import { reportOn } from "../../engine/report/report";
import { readHouseSheet } from "../house/house-sheet";
import { refusedLimits, withHouse } from "../house/with-house";
import { inWorkbook } from "../kit/run";
import { WorkbookError } from "../kit/workbook-error";
import type { ReadLog, ReadRequest } from "../port";
import { readGrid } from "./date-cells";
import { findLogs, grownPlace, NO_LOG, selectionPlace } from "./find-log";

/** Finds the log, reads it, judges it. */
export async function readLog(request: ReadRequest): Promise<ReadLog> {
  return inWorkbook(async (context) => {
    const logs = await findLogs(context, request);
    const place =
      request.from === "auto"
        ? logs[0]?.place
        : request.from === "selection"
          ? await selectionPlace(context)
          : await grownPlace(context, request.from);
    if (place === undefined) throw new WorkbookError("no log", NO_LOG);
    const grid = await readGrid(context, place);
    const house = await readHouseSheet(context);
    const unit = request.units?.[place.sheet.toLowerCase()] ?? null;
    const report = reportOn(grid, { ...withHouse(request, house), unit });
    if (report === null)
      throw new WorkbookError(
        "no log",
        request.from === "selection"
          ? `The selection ${place.sheet}!${place.address} holds no heading row of a gear log. Select the log with its headings, then press Use selection.`
          : NO_LOG,
      );
    return {
      place,
      report,
      refusedLimits: refusedLimits(house),
      others: logs.filter(({ place: { sheet, how } }) => sheet !== place.sheet && how !== "register").map(({ place: { sheet } }) => sheet),
    };
  });
}

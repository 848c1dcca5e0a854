/** Finding and reading a log. The number of round trips does not depend on the number of rows. */
import { reportOn } from "../../engine/report/report";
import { readHouseSheet } from "../house/house-sheet";
import { refusedLimits, withHouse } from "../house/with-house";
import { inWorkbook } from "../kit/run";
import { WorkbookError } from "../kit/workbook-error";
import type { ReadLog, ReadRequest } from "../port";
import { readTypesSheet } from "../types/types-sheet";
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
    const { grid, address, more } = await readGrid(context, place);
    const house = await readHouseSheet(context);
    const unit = request.units?.[place.sheet.toLowerCase()] ?? null;
    const types = await readTypesSheet(context);
    const report = reportOn(grid, { ...withHouse(request, house, types), unit });
    if (report === null)
      throw new WorkbookError(
        "no log",
        request.from === "selection"
          ? `The selection ${place.sheet}!${place.address} holds no heading row of a gear log. Select the log with its headings, then press Use selection.`
          : NO_LOG,
      );
    // A stray cell far below is no part of the log, but it may be meant as one.
    const below = `Nothing stands in the 1,000 rows below ${place.sheet}!${address}, so the log is read as far as there; move up what stands further down if it belongs to it.`;
    return {
      place: place.how === "table" || place.how === "register" ? place : { ...place, address },
      report: more ? { ...report, problems: [...report.problems, below] } : report,
      refusedLimits: refusedLimits(house),
      others: logs.filter(({ place: { sheet, how } }) => sheet !== place.sheet && how !== "register").map(({ place: { sheet } }) => sheet),
    };
  });
}

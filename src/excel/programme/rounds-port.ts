/** Rounds through the client library; fetched when the first one is asked for. */
import { readSheets } from "../kit/marks";
import { inWorkbook } from "../kit/run";
import { checkHistory } from "./check-history";
import { itemHistory, tagItem } from "./item-programme";
import { makeRound } from "./make-round";
import { postRound } from "./post-round";
import { roundSheets } from "./read-round";
import type { RoundsPort } from "./rounds";
import { writeReport } from "./write-report";

export const roundsPort: RoundsPort = {
  make: makeRound,
  post: (sheet) => postRound(sheet),
  list: () => inWorkbook(async (context) => roundSheets(await readSheets(context))),
  check: checkHistory,
  item: itemHistory,
  report: writeReport,
  tag: (wanted, basis) => tagItem(wanted, basis),
};

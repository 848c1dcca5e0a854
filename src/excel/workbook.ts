/** The workbook as the pane sees it, through the spreadsheet's client library. */
import { watch } from "./events";
import { makeHouseSheet } from "./house/make-house-sheet";
import { inWorkbook } from "./kit/run";
import type { LogPlace } from "./log-place";
import { readLog } from "./log/read-log";
import type { WorkbookPort } from "./port";
import { build, nameBack } from "./register/build-register";
import { checkRegister, filterRegister } from "./register/check-register";
import { rewriteFormulas } from "./register/rewrite-formulas";
import { load, save } from "./settings";

async function show(place: LogPlace, row: number, column?: number): Promise<void> {
  await inWorkbook(async (context) => {
    const sheet = context.workbook.worksheets.getItem(place.sheetId ?? place.sheet);
    sheet.activate();
    const cells = sheet.getRange(place.address);
    (column === undefined ? cells.getRow(row) : cells.getCell(row, column)).select();
    await context.sync();
  });
}
/** Only a lift needs it, so it is fetched with the first one. */
const writeLift: WorkbookPort["writeLift"] = async (lift) =>
  (await import(/* webpackChunkName: "lift-sheet" */ "./lift/write-lift")).writeLift(lift);
/** So is the template of gear types. */
const makeTypesSheet: WorkbookPort["makeTypesSheet"] = async (log) =>
  (await import(/* webpackChunkName: "types-sheet" */ "./types/make-types-sheet")).makeTypesSheet(log);
const writeList: WorkbookPort["writeList"] = async (list) =>
  (await import(/* webpackChunkName: "list-sheet" */ "./lists/write-list")).writeList(list);
const selectedRows: WorkbookPort["selectedRows"] = async () =>
  (await import(/* webpackChunkName: "stamp" */ "./stamp/stamp")).selectedRows();
const writeStamp: WorkbookPort["writeStamp"] = async (stamp) =>
  (await import(/* webpackChunkName: "stamp" */ "./stamp/stamp")).writeStamp(stamp);
/** Rounds as well. */
const roundsPort = async (): Promise<WorkbookPort["rounds"]> =>
  (await import(/* webpackChunkName: "rounds-sheet" */ "./programme/rounds-port")).roundsPort;
const rounds: WorkbookPort["rounds"] = {
  make: async (wanted) => (await roundsPort()).make(wanted),
  post: async (sheet) => (await roundsPort()).post(sheet),
  list: async () => (await roundsPort()).list(),
  check: async () => (await roundsPort()).check(),
  item: async (id, basis, asOf) => (await roundsPort()).item(id, basis, asOf),
  report: async (sheet, basis, asOf) => (await roundsPort()).report(sheet, basis, asOf),
  tag: async (wanted, basis) => (await roundsPort()).tag(wanted, basis),
};
export const excelPort: WorkbookPort = {
  read: readLog,
  build,
  nameBack,
  checkRegister,
  filterRegister,
  rewriteFormulas,
  show,
  writeLift,
  writeList,
  selectedRows,
  writeStamp,
  rounds,
  makeHouseSheet,
  makeTypesSheet,
  load,
  save,
  watch,
};

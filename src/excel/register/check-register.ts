import { readBasis } from "../../engine/house/rules-in-force";
import { asGrid } from "../../engine/log/grid";
import { key } from "../../engine/log/match-headings";
import type { CellValue } from "../../engine/reading/cell-value";
import { readText } from "../../engine/reading/text";
import type { Report } from "../../engine/report/model";
import { reportOn } from "../../engine/report/report";
import type { BasisId } from "../../engine/rules/rule-sets";
import { readHouseSheet } from "../house/house-sheet";
import { refusedLimits, withHouse } from "../house/with-house";
import { withoutSheet } from "../kit/addresses";
import { today } from "../kit/clock";
import { inWorkbook } from "../kit/run";
import { readSheets } from "../kit/marks";
import { AS_OF_CELL, BASIS_CELL, COPIED_SHEET, HOUSE_SHEET } from "../kit/sheets";
import { WorkbookError } from "../kit/workbook-error";
import type { LogPlace } from "../log-place";
import type { ReadLog, RegisterCheck, WorkbookPort } from "../port";
import { LOG_DIFFERS } from "./columns";
import { copiedGrid } from "./copied-sheet";
import { findRegister } from "./find-register";
import { judgedRuns, roleOf } from "./layout";
import { planRegister } from "./plan-register";
import { readTyped } from "./read-register";
import { shapeOf } from "./shape";
import { quoted } from "./workings";
import { againstLog, countedAnew, withNote } from "./worse-of-both";

export async function checkRegister(
  basis: readonly BasisId[],
  asOf: number,
  other: ReadLog | null = null,
): ReturnType<WorkbookPort["checkRegister"]> {
  return inWorkbook(async (context) => {
    const found = await findRegister(context);
    if (found === null || found.rows < 1 || !shapeOf(found).ok) return null;
    const { headings, table } = found;
    const sheet = context.workbook.worksheets.getItem(found.sheet.id);
    const range = table.getRange();
    range.load("address");
    const verdicts = table.columns.getItem("Verdict").getDataBodyRange();
    verdicts.load("values");
    // The formulas of one row tell what the whole register reads; a cell that was typed over does not change that.
    const row = table.getDataBodyRange().getRow(0);
    row.load("formulas");
    const rules = sheet.getRange(BASIS_CELL);
    rules.load("values");
    const day = sheet.getRange(AS_OF_CELL);
    day.load("values,formulas");
    await context.sync();
    const sheets = await readSheets(context);
    const house = await readHouseSheet(context);
    const houseName = (sheets.marked("house") ?? sheets.named(HOUSE_SHEET))?.name ?? HOUSE_SHEET;
    const readsHouse = (row.formulas as CellValue[][]).flat().some((cell) => readText(cell).includes(quoted(houseName)));
    const old = await readTyped(context, found);
    const copied = await copiedGrid(context, sheets.marked("copied") ?? sheets.named(COPIED_SHEET));
    const grid = asGrid([judgedHeadings(headings), ...old.values]);
    const report = reportOn(grid, withHouse({ basis, asOf }, house));
    if (report === null) return null;
    const noted = headings.findIndex((heading) => key(heading) === key(LOG_DIFFERS));
    const own = report.items.map((item) => withNote(item, readText(old.values[item.row - 1]?.[noted])));
    const saysOf = (at: number): string => readText((verdicts.values as CellValue[][])[at - 1]?.[0]);
    const log = other === null || isHere(other, found) ? null : other;
    const { items, apart } =
      log === null
        ? { items: own, apart: [] }
        : againstLog(own, log.report, planRegister(log.report, log.place, { register: old, copied: copied.copied, own: false }).changes);
    const place: LogPlace = {
      sheet: found.sheet.name,
      sheetId: found.sheet.id,
      address: withoutSheet(range.address),
      how: "register",
      table: found.name,
    };
    // A cell is right when it says what the register's own rows say, with the log as it was when they were built.
    const disagree = own.filter((item) => saysOf(item.row) !== item.verdict.decision && !saysOf(item.row).startsWith("#"));
    const shown = items.map((item) => (saysOf(item.row) === item.verdict.decision ? item : { ...item, cellSays: saysOf(item.row) }));
    return {
      log: { place, refusedLimits: refusedLimits(house), report: countedAnew(report, shown) },
      check: {
        disagreeing: disagree.map((item) => ({ id: item.id, cell: saysOf(item.row), judged: item.verdict.decision })),
        apart,
        builtUnder: builtUnder(
          report,
          { rules: rules.values as CellValue[][], day: day.values as CellValue[][], formula: day.formulas as CellValue[][] },
          house !== null && !readsHouse,
        ),
        functionsMissing: report.items.some((item) => saysOf(item.row).startsWith("#NAME")),
        withoutHouse: house !== null && !readsHouse,
      },
    };
  });
}
const isHere = ({ place }: ReadLog, { sheet }: { readonly sheet: { readonly id: string; readonly name: string } }): boolean =>
  place.sheetId === sheet.id || place.sheet === sheet.name;
/** Headings of the columns that the cells judge as well; a column that people added beside them is theirs. */
function judgedHeadings(headings: readonly string[]): readonly string[] {
  const columns = headings.map((heading, from) => ({ heading, role: roleOf(heading), from }));
  const runs = judgedRuns({ columns });
  return headings.map((heading, column) => (runs.some(({ from, count }) => column >= from && column < from + count) ? heading : ""));
}
/** What the register names where it is not what it is judged by here. House limits that it does not read are told apart. */
function builtUnder(
  { basis, asOf }: Report,
  cells: Readonly<Record<"rules" | "day" | "formula", readonly (readonly CellValue[])[]>>,
  withoutHouse: boolean,
): RegisterCheck["builtUnder"] {
  const named = readBasis(cells.rules[0]?.[0]);
  const rules = named.ok ? named.ids : null;
  const day = cells.day[0]?.[0];
  const serial = typeof day === "number" ? Math.floor(day) : null;
  const here = basis.filter((id) => !(withoutHouse && id === "house"));
  const sameRules = rules !== null && rules.length === here.length && rules.every((id) => here.includes(id));
  // A workbook that stayed open overnight works TODAY() out with the next edit.
  const sameDay = serial === asOf || (asOf === today() && /TODAY\(\)/i.test(readText(cells.formula[0]?.[0])));
  return sameRules && sameDay ? null : { rules, asOf: serial };
}
export async function filterRegister(decisions: readonly string[]): Promise<void> {
  await inWorkbook(async (context) => {
    const found = await findRegister(context);
    if (found === null) throw new WorkbookError("no log", "There is no register yet. Press Build register first, then filter it.");
    if (decisions.length === 0) found.table.clearFilters();
    else found.table.columns.getItem("Verdict").filter.applyValuesFilter([...decisions]);
    context.workbook.worksheets.getItem(found.sheet.id).activate();
    await context.sync();
  });
}

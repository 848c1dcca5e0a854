/** What stands above the register's table: title, rule sets, day, how many items are out, the caution, names of the groups. */
import type { CellValue } from "../../engine/reading/cell-value";
import { readText } from "../../engine/reading/text";
import { type BasisId, showRules } from "../../engine/rules/rule-sets";
import type { Sending } from "../kit/in-parts";
import { AS_OF_CELL, BASIS_CELL, CAUTION, GROUP_ROW, REGISTER_TABLE } from "../kit/sheets";
import { field } from "../../engine/columns";
import { groupHeads, type Layout } from "./layout";

const AS_OF = "As of";
const GROUPS = new Set(["the item", "the answer", "identity", "sizes", "what was seen", "record", "your own", CAUTION]);
/** Column of the caution and of the summary: behind the day. */
const BESIDE = 4;
/** What holds for most items is said once here: how many are out or late, and whose gauge is not known. */
export function summaryFormula(layout: Layout): string {
  const of = (heading: string, word: string): string => `COUNTIF(${REGISTER_TABLE}[${heading}],"${word}")`;
  const gauge = field("gauge").heading;
  const column = `${REGISTER_TABLE}[${gauge}]`;
  const gauged = layout.columns.some(({ heading }) => heading === gauge)
    ? `IF(COUNTBLANK(${column})=0,""," · no gauge is recorded for "&COUNTBLANK(${column})&" items: their readings are taken as they stand")`
    : `" · no gauge is recorded: readings are taken as they stand"`;
  return `=ROWS(${REGISTER_TABLE}[Id])&" items: "&${of("Verdict", "REMOVE")}&" out, "&${of("Verdict", "EXAMINE")}&" to examine, "&${of("Verdict", "NO VERDICT")}&" without verdict, "&${of("Due state", "OVERDUE")}&" late"&${gauged}`;
}
const isSummary = (formula: string): boolean => formula.startsWith(`=ROWS(${REGISTER_TABLE}[Id])`);
export async function writeTop(
  sending: Sending,
  sheet: Excel.Worksheet,
  layout: Layout,
  { basis, asOf, fresh }: { readonly basis: readonly BasisId[]; readonly asOf: number | null; readonly fresh: boolean },
): Promise<void> {
  const width = Math.max(BESIDE + 1, layout.columns.length);
  const top = sheet.getRangeByIndexes(0, 0, GROUP_ROW, width);
  top.load("formulas");
  // What was asked for before goes along: this request writes.
  await sending.send();
  // eslint-disable-next-line office-addins/call-sync-after-load, office-addins/call-sync-before-read -- sending syncs
  const [first = [], second = [], third = []] = top.formulas as CellValue[][];
  const put = (row: number, column: number, value: string | number, format: string, stands: CellValue): void => {
    if ((typeof stands === "string" ? stands : readText(stands)) === String(value)) return;
    const cell = sheet.getRangeByIndexes(row, column, 1, 1);
    if (format !== "") cell.numberFormat = format as unknown as string[][];
    cell.formulas = [[value]];
  };
  // Words of people beside the title stay.
  const free = (cell: CellValue, ours: (text: string) => boolean): boolean => readText(cell) === "" || ours(readText(cell));
  put(0, 0, "Gear register", "@", first[0]);
  put(1, 0, "Rules in force", "@", second[0]);
  put(1, 1, showRules(basis), "@", second[1]);
  // The names of the rule sets reach over the cell behind them; earlier versions had the word for the day there.
  if (readText(second[2]) === AS_OF) put(1, 2, "", "@", second[2]);
  if (free(first[3], (text) => text === AS_OF)) put(0, 3, AS_OF, "@", first[3]);
  put(1, 3, asOf ?? "=TODAY()", "yyyy-mm-dd", second[3]);
  if (free(first[BESIDE], (text) => text === CAUTION)) put(0, BESIDE, CAUTION, "@", first[BESIDE]);
  if (free(second[BESIDE], isSummary)) put(1, BESIDE, summaryFormula(layout), "General", second[BESIDE]);
  const heads = new Map(groupHeads(layout).map(({ column, group }) => [column, group]));
  for (let column = 0; column < width; column += 1) {
    const wanted = heads.get(column) ?? "";
    if (free(third[column], (text) => GROUPS.has(text))) put(GROUP_ROW - 1, column, wanted, wanted === "" ? "" : "@", third[column]);
  }
  if (!fresh) return;
  const title = sheet.getRange("A1");
  title.format.font.bold = true;
  title.format.font.size = 14;
  sheet.getRange("A2").format.font.bold = true;
  sheet.getRange("D1").format.font.bold = true;
  for (const address of [BASIS_CELL, AS_OF_CELL]) sheet.getRange(address).format.horizontalAlignment = "Left";
  sheet.getRangeByIndexes(0, BESIDE, 1, 1).format.font.italic = true;
  const groups = sheet.getRangeByIndexes(GROUP_ROW - 1, 0, 1, width);
  groups.format.font.italic = false;
  groups.format.font.color = "#52606D";
}

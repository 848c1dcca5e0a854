/** A workbook with a register and a round of it, to be filled and posted. */
import { DEFAULT_BASIS } from "../../../src/engine/rules/rule-sets";
import type { HISTORY_HEADINGS } from "../../../src/engine/programme/history";
import { type RoundKind } from "../../../src/engine/programme/round";
import { HEADING_ROW, REGISTER_SHEET } from "../../../src/excel/kit/sheets";
import { columnLetters } from "../../../src/excel/kit/addresses";
import { makeRound } from "../../../src/excel/programme/make-round";
import { type RoundMade } from "../../../src/excel/programme/rounds";
import { columnOf, HEADING_ROW as ROUND_HEAD } from "../../../src/excel/programme/round-layout";
import { excelPort } from "../../../src/excel/workbook";
import { type Book, type Cell, type Sheet } from "../../../src/trial/book/book";
import { type Host, type HostOptions } from "../../../src/trial/host/host";
import { openBook } from "../../setup-excel";
import { AS_OF, book, calculator, hookRow, HOOK_HEADINGS, records, type Value } from "../books";

export const TODAY = AS_OF;
export interface Yard {
  readonly made: Book;
  readonly host: Host;
  readonly register: Sheet;
}
/** Hooks that are late, beside others that are not. The formulas are worked out only where verdicts are asked for. */
export const LATE = { date: 45900 };
export async function yard(
  rows: readonly Value[][] = [
    hookRow("H-1", "2.01", { inspected: LATE }),
    hookRow("H-2", "2.02", { inspected: LATE }),
    hookRow("H-3", "2.01"),
  ],
  { verdicts = false, ...options }: HostOptions & { readonly verdicts?: boolean } = {},
): Promise<Yard> {
  const made = book({ "Gear log": [[...HOOK_HEADINGS], ...rows] });
  const host = openBook(made, { ...(verdicts && { calculator: calculator() }), ...options });
  const log = await excelPort.read({ from: "auto", basis: DEFAULT_BASIS, asOf: TODAY, choices: {} });
  await excelPort.build(log, () => undefined, new AbortController().signal);
  return { made, host, register: made.sheet(REGISTER_SHEET)! };
}
export const round = (kind: RoundKind = "due", ids?: readonly string[]): Promise<RoundMade> =>
  makeRound({ kind, basis: DEFAULT_BASIS, asOf: TODAY, ...(ids && { ids }) });
type Heading = Parameters<typeof columnOf>[0];
const write = (cell: Cell, value: Value): void => {
  cell.value = value !== null && typeof value === "object" ? value.date : value;
};
export interface RoundRow {
  readonly row: number;
  readonly id: string;
  readonly label: string;
  readonly line: string;
}
export function lines(sheet: Sheet): readonly RoundRow[] {
  const used = sheet.used()!;
  return Array.from({ length: used.rows - ROUND_HEAD }, (_, at) => {
    const row = ROUND_HEAD + at;
    const text = (heading: Heading): string => String(sheet.cell(row, columnOf(heading))?.value ?? "");
    return { row, id: text("Id"), label: text("Look at or measure"), line: text("Line") };
  });
}
interface Top {
  readonly by?: string;
  readonly date?: Value;
  readonly heading?: Heading;
}
/** Types into the lines of an item, by label; a name and a date once on top. */
export function fillRound(
  sheet: Sheet,
  readings: Readonly<Record<string, Readonly<Record<string, Value>>>>,
  { by = "Inspector two", date = { date: TODAY }, heading = "Now" }: Top = {},
): void {
  write(sheet.at(2, 2), by);
  write(sheet.at(2, 5), date);
  for (const { row, id, label, line } of lines(sheet)) {
    const value = readings[id]?.[line === "item" ? "item" : label];
    if (value !== undefined) write(sheet.at(row, columnOf(line === "item" ? "Found" : heading)), value);
  }
}
/** The same as a person types it, so that the sheet works out its verdicts. */
export async function typeRound(
  host: Host,
  sheet: Sheet,
  readings: Readonly<Record<string, Readonly<Record<string, Value>>>>,
  heading: Heading = "Now",
): Promise<void> {
  for (const { row, id, label } of lines(sheet)) {
    const value = readings[id]?.[label];
    if (value !== undefined) await host.type(sheet.name, `${columnLetters(columnOf(heading))}${String(row + 1)}`, value ?? "");
  }
}
/** All that a hook needs, in good order. */
export const GOOD_HOOK: Readonly<Record<string, Value>> = {
  "Throat opening": "2.03",
  "Saddle section": "1.85",
  "Twist deg": 0,
  "Latch works": "yes",
  Cracks: "none",
  "Identification legible": "yes",
};
export function registerCells(sheet: Sheet): Readonly<Record<string, Record<string, Cell["value"]>>> {
  return Object.fromEntries(records(sheet, HEADING_ROW - 1).map((row) => [String(row["Id"]), row]));
}
export function historyRows(made: Book): readonly Record<(typeof HISTORY_HEADINGS)[number], string>[] {
  const sheet = made.sheet("Gear history");
  if (!sheet) return [];
  return records(sheet, 3).map((row) => row as Record<(typeof HISTORY_HEADINGS)[number], string>);
}

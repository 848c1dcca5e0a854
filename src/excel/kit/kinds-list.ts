/** The kinds of gear for drop-downs. All of them do not fit into a rule, which takes 255 characters, so a rule names the cells in which they stand. */
import { GEAR } from "../../engine/gear/index";
import { columnLetters } from "./addresses";

export const KINDS: readonly string[] = GEAR.map(({ id }) => id).sort((a, b) => a.localeCompare(b, "en"));
/** Where the kinds stand, as a rule names it. */
export function kindsAt(sheet: string, column: number, row = 0): string {
  const letter = columnLetters(column);
  return `='${sheet.replaceAll("'", "''")}'!$${letter}$${String(row + 1)}:$${letter}$${String(row + KINDS.length)}`;
}
/** Writes the kinds into a column that is hidden, from a zero-based row down; gives the source of a rule. */
export function hideKinds(sheet: Excel.Worksheet, name: string, column: number, row: number): string {
  const cells = sheet.getRangeByIndexes(row, column, KINDS.length, 1);
  cells.numberFormat = "@" as unknown as string[][];
  cells.values = KINDS.map((kind) => [kind]);
  cells.columnHidden = true;
  return kindsAt(name, column, row);
}

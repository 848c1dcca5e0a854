/** Places behind addresses, defined names and tables. */
import { LAST_COLUMN, LAST_ROW, parseBox, splitSheet } from "../../book/address";
import type { Box, Sheet } from "../../book/book";
import { invalidArgument } from "../../book/errors";
import type { HostState } from "../protocol/state";

export interface Place {
  readonly sheet: Sheet;
  readonly box: Box;
}
export const WHOLE_SHEET: Box = { row: 0, column: 0, rows: LAST_ROW, columns: LAST_COLUMN };
/** An address, a defined name, a table's name, or nothing for the whole sheet. */
export function boxOnSheet(state: HostState, sheet: Sheet, address: string | null): Box {
  if (address === null || address === "") return WHOLE_SHEET;
  const { sheet: other, address: inside } = splitSheet(address);
  if (other !== null && other.toLowerCase() !== sheet.name.toLowerCase())
    throw invalidArgument(`${address} lies on another sheet.`, "Worksheet.getRange");
  const box = parseBox(inside);
  if (box) return box;
  const named = placeNamed(state, inside);
  if (named?.sheet === sheet) return named.box;
  throw invalidArgument(undefined, "Worksheet.getRange");
}
/** The place behind a defined name or a table's name; null when the name is unknown or no range. */
function placeNamed(state: HostState, name: string): Place | null {
  const table = state.book.tables.find((other) => other.name.toLowerCase() === name.toLowerCase());
  if (table) {
    const body = table.box.rows > 1 ? { ...table.box, row: table.box.row + 1, rows: table.box.rows - 1 } : table.box;
    return { sheet: table.sheet, box: body };
  }
  const formula = [...state.book.names].find(([known]) => known.toLowerCase() === name.toLowerCase())?.[1];
  return formula === undefined ? null : placeOfFormula(state, formula);
}
/** `=Notes!$A$1:$A$6` as a place; null when the formula is anything else. */
export function placeOfFormula(state: HostState, formula: string): Place | null {
  const { sheet, address } = splitSheet(formula.replace(/^=/, ""));
  const found = sheet === null ? undefined : state.book.sheet(sheet);
  const box = parseBox(address);
  return found && box ? { sheet: found, box } : null;
}

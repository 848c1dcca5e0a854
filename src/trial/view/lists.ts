/** Drop-down lists of data validation: which cells have one, what it offers, whether an entry is let through. */
import { parseBox, splitSheet } from "../book/address";
import type { Book, Sheet, Validation } from "../book/book";
import { showCell } from "../book/show";

interface ListRule {
  inCellDropDown?: boolean;
  source?: unknown;
}
export function listAt(sheet: Sheet, row: number, column: number): Validation | undefined {
  return sheet.validations.find(
    ({ box, rule }) =>
      "list" in rule && row >= box.row && row < box.row + box.rows && column >= box.column && column < box.column + box.columns,
  );
}
export function showsDropDown(validation: Validation): boolean {
  return (validation.rule["list"] as ListRule).inCellDropDown !== false;
}
/** The words a list offers: written out with commas, or the cells of a range or a named range. */
export function offered(book: Book, sheet: Sheet, validation: Validation): string[] {
  const source = (validation.rule["list"] as ListRule).source;
  if (typeof source !== "string") return [];
  if (!source.startsWith("="))
    return source
      .split(",")
      .map((word) => word.trim())
      .filter((word) => word !== "");
  const named = [...book.names].find(([name]) => name.toLowerCase() === source.slice(1).trim().toLowerCase());
  const reference = (named?.[1] ?? source).replace(/^=/, "").trim();
  const { sheet: sheetName, address } = splitSheet(reference);
  const on = sheetName === null ? sheet : book.sheet(sheetName);
  const box = parseBox(address);
  if (!on || !box) return [];
  const words: string[] = [];
  for (let row = box.row; row < box.row + box.rows; row += 1) {
    for (let column = box.column; column < box.column + box.columns; column += 1) {
      const word = showCell(on.cell(row, column));
      if (word !== "") words.push(word);
    }
  }
  return words;
}
/** Why an entry is refused, in the words of the rule's alert; null when it may stand. */
export function refusal(book: Book, sheet: Sheet, row: number, column: number, text: string): string | null {
  const validation = listAt(sheet, row, column);
  if (!validation || text === "" || text.startsWith("=")) return null;
  const { errorAlert } = validation;
  if (errorAlert && (!errorAlert.showAlert || errorAlert.style !== "Stop")) return null;
  const words = offered(book, sheet, validation);
  if (words.length === 0 || words.some((word) => word.toLowerCase() === text.trim().toLowerCase())) return null;
  if (errorAlert && errorAlert.message !== "") return errorAlert.message;
  return `"${text}" is not in this cell's list: ${words.join(", ")}.`;
}

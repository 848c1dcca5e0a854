/**
 * Document settings of the add-in in the file: rows of key and text on a very hidden sheet of their own. Excel keeps them in
 * a part that the file library does not write; this sheet is read back here and never shown.
 */
import type ExcelJS from "exceljs";
import type { Book } from "../book/book";
import { LONGEST_TEXT } from "../host/sheet/cells";

export const SETTINGS_SHEET = "_gear_verdicts_settings";
export function writeSettings(book: Book, file: ExcelJS.Workbook): void {
  if (book.settings.size === 0) return;
  const sheet = file.addWorksheet(SETTINGS_SHEET, { state: "veryHidden" });
  for (const [key, text] of book.settings) {
    const pieces = [key];
    for (let at = 0; at < text.length; at += LONGEST_TEXT) pieces.push(text.slice(at, at + LONGEST_TEXT));
    sheet.addRow(pieces);
  }
}
export function readSettings(book: Book, sheet: ExcelJS.Worksheet): void {
  sheet.eachRow((row) => {
    const [key = "", ...pieces] = (row.values as unknown[]).slice(1).map(String);
    book.settings.set(key, pieces.join(""));
  });
}

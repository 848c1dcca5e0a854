import { readDateText, showDate } from "../numbers/calendar";
import type { CellValue } from "./cell-value";
import { missing, type Read, refused } from "./read";
import { isDateCell, NOT_MEASURED, tidy } from "./text";

/** A date as a serial day. */
export function readDate(cell: CellValue): Read<number> {
  if (cell === null || cell === undefined || cell === "" || cell === 0) return missing();
  if (typeof cell === "boolean") return refused(cell ? "TRUE" : "FALSE", "it is not a date");
  if (isDateCell(cell) || typeof cell === "number") {
    const serial = Math.floor(isDateCell(cell) ? cell.serial : cell);
    if (!(serial >= 61 && serial <= 2958465)) return refused(String(serial), "it is not a date");
    if (serial >= 1900 && serial <= 2100)
      return refused(String(serial), "it looks like a year without day and month; write it as 2026-03-31");
    return { kind: "value", value: serial, text: showDate(serial) };
  }
  const text = tidy(cell);
  if (text === "" || NOT_MEASURED.test(text)) return missing(text);
  const date = readDateText(text);
  return typeof date === "number" ? { kind: "value", value: date, text: showDate(date) } : refused(text, date.why);
}

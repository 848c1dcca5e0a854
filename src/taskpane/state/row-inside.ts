import type { LogPlace } from "../../excel/log-place";

/** Row inside a place of a zero-based row of the sheet, or null when it lies outside. */
export function rowInside(place: LogPlace, sheetRow: number): number | null {
  const rows = /^\$?[A-Z]*\$?(\d+)(?::\$?[A-Z]*\$?(\d+))?$/i.exec(place.address);
  if (!rows) return null;
  const first = Number(rows[1]) - 1;
  const last = rows[2] === undefined ? first : Number(rows[2]) - 1;
  return sheetRow < first || sheetRow > last ? null : sheetRow - first;
}

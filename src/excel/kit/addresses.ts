/** Addresses as the workbook writes them. */

/** Column letters of a zero-based index: 0 is A, 26 is AA. */
export function columnLetters(index: number): string {
  let text = "";
  for (let n = index + 1; n > 0; n = Math.floor((n - 1) / 26)) text = String.fromCharCode(65 + ((n - 1) % 26)) + text;
  return text;
}
/** Part behind the sheet name: `'Gear log'!A1:B2` gives `A1:B2`. */
export function withoutSheet(address: string): string {
  return address.slice(address.lastIndexOf("!") + 1);
}
/** A1 notation of a zero-based rectangle. */
export function areaAddress(row: number, column: number, rows: number, columns: number): string {
  return `${columnLetters(column)}${String(row + 1)}:${columnLetters(column + columns - 1)}${String(row + rows)}`;
}

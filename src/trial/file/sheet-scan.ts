/**
 * A sheet's part, looked through once before the file library gets it: rows, columns and ranges that no sheet has are
 * refused, and what stands outside the cells is kept for what the library leaves out.
 */
import { columnNumber, LAST_COLUMN, LAST_ROW } from "../book/address";
import { TOO_LARGE } from "./zip";

/** Rows and cells of a sheet together; more can't be held. */
const MOST_CELLS = 3_000_000;
/** Characters of a sheet's part outside its cells. */
const MOST_AROUND = 32_000_000;
/** Attributes that name places, and the columns that a width is given to. */
const PLACES = /\s(r|ref|sqref|min|max)\s*=\s*(?:"([^"]*)"|'([^']*)')/g;
const CELLS_BEGIN = /<(?:\w+:)?sheetData(?=[\s/>])[^>]*>/;
const CELLS_END = /<\/(?:\w+:)?sheetData\s*>/;
/** Longer than any of the above: what the end of a piece may cut. */
const OVERLAP = 64;
/** The part without its rows and cells. Throws one sentence for what is too large or lies outside of every sheet. */
export async function scanSheet(pieces: AsyncIterable<string>, name: string): Promise<string> {
  const outside = new Outside();
  let seen = "";
  let cells = 0;
  for await (const piece of pieces) {
    cells += checkPlaces(seen, piece, `The sheet ${name}`);
    seen = (seen + piece).slice(-OVERLAP);
    outside.take(piece);
    if (cells > MOST_CELLS || outside.text.length > MOST_AROUND) throw new Error(TOO_LARGE);
  }
  return outside.end();
}
/** What stands outside the cells, as the pieces go by. */
class Outside {
  text = "";
  private held = "";
  private inCells = false;

  take(piece: string): void {
    let left = this.held + piece;
    for (;;) {
      const mark = (this.inCells ? CELLS_END : CELLS_BEGIN).exec(left);
      if (!mark) break;
      if (!this.inCells) this.text += left.slice(0, mark.index);
      left = left.slice(mark.index + mark[0].length);
      this.inCells = !this.inCells && !mark[0].endsWith("/>");
    }
    this.held = left.slice(-OVERLAP);
    if (!this.inCells) this.text += left.slice(0, left.length - this.held.length);
  }

  end(): string {
    return this.inCells ? this.text : this.text + this.held;
  }
}
/** Refuses places that no sheet has; returns how many rows and cells there are. `before` was looked through already. */
export function checkPlaces(before: string, piece: string, where: string): number {
  let cells = 0;
  for (const found of (before + piece).matchAll(PLACES)) {
    if (found.index + found[0].length <= before.length) continue;
    const kind = found[1];
    const value = found[2] ?? found[3] ?? "";
    if (kind === "r") cells += 1;
    if (kind === "min" || kind === "max" ? Number(value) > LAST_COLUMN : value.split(/[\s:]+/).some(isOutside)) throw outside(where, value);
  }
  return cells;
}
/** A formula that is a plain place, such as Log!$A$1:$C$9, and lies outside of every sheet. */
export function isOutsideFormula(formula: string): boolean {
  const place = /!((?:\$?[A-Z]+)?(?:\$?\d+)?(?::(?:\$?[A-Z]+)?(?:\$?\d+)?)?)$/i.exec(formula)?.[1];
  return place?.split(":").some(isOutside) ?? false;
}
function isOutside(corner: string): boolean {
  const parts = /^\$?([A-Z]*)\$?(\d*)$/i.exec(corner);
  if (!parts) return false;
  const [, letters = "", digits = ""] = parts;
  return Number(digits) > LAST_ROW || letters.length > 3 || (letters !== "" && columnNumber(letters) >= LAST_COLUMN);
}
export function outside(where: string, place: string): Error {
  return new Error(
    `${where} of this workbook names the place ${place.slice(0, 60)}, which no sheet has: rows end at 1,048,576 and columns at XFD. Open it in the program it came from and save it again as .xlsx.`,
  );
}

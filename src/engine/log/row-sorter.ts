/** Which rows under the headings of a log are items. */
import { matchKind } from "../names/gear-name";
import type { Unit } from "../numbers/lengths";
import type { CellValue } from "../reading/cell-value";
import { readText } from "../reading/text";
import { type Grid, isBlank } from "./grid";
import { type Headings, unitOfHeading } from "./match-headings";
import { withUnit } from "./merge-columns";

type Line = readonly CellValue[];
/** A text that begins with a plain sign, which is no blank. */
const beginsPlainly = (cell: CellValue): boolean => typeof cell === "string" && cell.charCodeAt(0) > 32 && cell.charCodeAt(0) < 127;
const TOTAL = /^(grand |sub)?-?totals?\b|^(sum|count|average|mean)\b/i;
/** Tells items from blank rows, totals, titles and headings that stand again; to be asked row after row. */
export class RowSorter {
  private readonly headings: Headings;
  /** By heading row and column, the heading in small letters. */
  private readonly lines: readonly (readonly string[])[];
  /** By column: the codes of the first letters of its headings, and whether one begins as a number does. */
  private readonly letters: readonly (readonly number[])[];
  private readonly numbers: readonly boolean[];
  /** Units that headings further down name, which hold for the rows under them. */
  private units: ReadonlyMap<number, Unit> = new Map();
  constructor(headings: Headings, headingLines: Grid) {
    this.headings = headings;
    this.lines = headingLines.map((line) => line.map((cell) => readText(cell).toLowerCase()));
    const width = Math.max(0, ...this.lines.map((line) => line.length));
    const over = Array.from({ length: width }, (_, column) => this.lines.map((line) => line[column] ?? ""));
    this.letters = over.map((texts) => texts.map((text) => text.charCodeAt(0)));
    this.numbers = over.map((texts) => texts.some((text) => /^[-\d.]/.test(text)));
  }
  /** Why a row is not an item; "" for a blank row, null for an item. */
  passedOver(line: Line): string | null {
    let filled = 0;
    let first: CellValue;
    let maybe = 0;
    for (let column = 0; column < line.length; column += 1) {
      const cell = line[column];
      if (cell === "" || (!beginsPlainly(cell) && isBlank(cell))) continue;
      filled += 1;
      if (filled === 1) first = cell;
      if (this.mayRepeat(cell, column)) maybe += 1;
    }
    if (filled === 0) return "";
    if (maybe >= 2 && this.repeats(line, filled)) {
      this.units = this.otherUnits(line);
      return "the headings again";
    }
    return this.notAnItem(line, first, filled);
  }
  /** The row with the units that hold for it. */
  own(line: Line): Line {
    const { units } = this;
    return units.size === 0 ? line : line.map((cell, column) => (units.has(column) ? withUnit(cell, units.get(column) ?? "") : cell));
  }
  /** Whether a cell begins as the heading over it, or may once it is tidied. */
  private mayRepeat(cell: CellValue, column: number): boolean {
    if (typeof cell === "string") {
      const code = cell.charCodeAt(0);
      if (code <= 32 || code > 126) return true;
      const small = code >= 65 && code <= 90 ? code + 32 : code;
      return this.letters[column]?.includes(small) === true;
    }
    return typeof cell !== "number" || this.numbers[column] === true;
  }
  /** A heading row that stands again further down, such as at the top of a printed page. */
  private repeats(line: Line, filled: number): boolean {
    return this.lines.some((heading) => {
      const same = line.filter((cell, column) => {
        const text = heading[column] ?? "";
        return text !== "" && !isBlank(cell) && readText(cell).toLowerCase() === text;
      }).length;
      return same >= 2 && same * 2 >= filled;
    });
  }
  /** Headings that stand again and name another unit hold for the rows under them. */
  private otherUnits(line: Line): ReadonlyMap<number, Unit> {
    return new Map(
      this.headings.matches.flatMap(({ column, unit }) => {
        const named = unitOfHeading(readText(line[column]));
        return named === null || named === unit ? [] : [[column, named] as const];
      }),
    );
  }
  private notAnItem(line: Line, cell: CellValue, filled: number): string | null {
    const first = filled === 1 || typeof cell !== "number" ? readText(cell) : "";
    if (TOTAL.test(first)) return `"${first}" is a total, not an item`;
    if (filled !== 1) return null;
    const at = (id: "id" | "gear"): string => {
      const column = this.headings.columns.get(id);
      return column === undefined ? "" : readText(line[column]);
    };
    const [id, gear] = [at("id"), at("gear")];
    if (!(id !== "" && /\d/.test(id) && !/\s/.test(id)) && !(gear !== "" && matchKind(gear).ok))
      return `"${first}" stands alone, a title or a note`;
    return null;
  }
}

/** Which rows under the headings of a log are items. */
import { matchKind } from "../names/gear-name";
import type { Unit } from "../numbers/lengths";
import type { CellValue } from "../reading/cell-value";
import { readText } from "../reading/text";
import { type Grid, isBlank } from "./grid";
import { type Headings, unitOfHeading } from "./match-headings";
import { withUnit } from "./merge-columns";

type Line = readonly CellValue[];
const TOTAL = /^(grand |sub)?-?totals?\b|^(sum|count|average|mean)\b/i;
/** Tells items from blank rows, totals, titles and headings that stand again; to be asked row after row. */
export class RowSorter {
  private readonly headings: Headings;
  /** By heading row and column, the heading in small letters and the code of its first letter. */
  private readonly lines: readonly (readonly { readonly text: string; readonly first: number }[])[];
  /** Units that headings further down name, which hold for the rows under them. */
  private units: ReadonlyMap<number, Unit> = new Map();
  constructor(headings: Headings, headingLines: Grid) {
    this.headings = headings;
    this.lines = headingLines.map((line) =>
      line.map((cell) => {
        const text = readText(cell).toLowerCase();
        return { text, first: text.charCodeAt(0) };
      }),
    );
  }
  /** Why a row is not an item; "" for a blank row, null for an item. */
  passedOver(line: Line): string | null {
    let filled = 0;
    let first: CellValue;
    let maybe = 0;
    for (let column = 0; column < line.length; column += 1) {
      const cell = line[column];
      if (cell === "" || isBlank(cell)) continue;
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
      return this.lines.some((line) => line[column]?.first === small);
    }
    return typeof cell !== "number" || this.lines.some((line) => /^[-\d.]/.test(line[column]?.text ?? ""));
  }
  /** A heading row that stands again further down, such as at the top of a printed page. */
  private repeats(line: Line, filled: number): boolean {
    return this.lines.some((heading) => {
      const same = line.filter((cell, column) => {
        const text = heading[column]?.text ?? "";
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

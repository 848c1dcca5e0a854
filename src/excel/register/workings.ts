/**
 * The very hidden sheet on which built-in formulas work out what concerns many rows: which assemblies have a sign of
 * overload, each once with its latest day, and how far the house limits reach. A row of the register then looks into the
 * short list; the work is at most rows times assemblies with a sign.
 */
import { HOUSE_ROWS, REGISTER_TABLE } from "../kit/sheets";
import { column, LIST_TOP, READ_BY_WORKINGS } from "./columns";

const STEP = 50;
/** Lines for so many assemblies, with room for some that are typed later; in steps, so that few builds change it. */
export const linesFor = (assemblies: number): number => STEP * Math.ceil((assemblies + 10) / STEP);
export const quoted = (sheet: string): string => `'${sheet.replaceAll("'", "''")}'!`;
/** The house limits as a formula hands them over: their used rows, however many are typed. */
export function houseRange(house: string, last: string): string {
  return `${quoted(house)}$A$1:INDEX(${quoted(house)}$G$1:$G$${String(HOUSE_ROWS)},${last})`;
}
/** What distinguishes one state of the sheet from another. */
export const signature = (lines: number, house: string | null): string => `3 ${String(lines)} ${house ?? "-"}`;
export const WIDTH = 7;
/** Beside them, the kinds of gear for the drop-down. */
export const KINDS_COLUMN = WIDTH + 1;
/** All cells of the sheet. */
export function workingsCells(lines: number, house: string | null): readonly (readonly string[])[] {
  const { key, sign, signRow } = READ_BY_WORKINGS;
  const bottom = String(LIST_TOP + lines - 1);
  const top = String(LIST_TOP);
  const wide = (line: readonly string[]): readonly string[] => [...line, ...Array.from({ length: WIDTH - line.length }, () => "")];
  const cells = house === null ? "" : `${quoted(house)}$A$1:$G$${String(HOUSE_ROWS)}`;
  return [
    wide(["Worked out by the add-in; not to be changed", "", signature(lines, house)]),
    wide(["Signs of overload", `=COUNT(${column(signRow)})`]),
    wide(["Last row of the house limits", house === null ? "" : `=MAX(8,SUMPRODUCT(MAX((${cells}<>"")*ROW(${cells}))))`]),
    wide(["Assemblies", `=COUNT($C$${top}:$C$${bottom})`]),
    ["Row", "Assembly", "First", "Line", "Assembly", "Latest sign", "Id"],
    ...Array.from({ length: lines }, (_, index) => {
      const row = String(LIST_TOP + index);
      // The number of the line; the same formula in each line is read once.
      const k = `ROW()-${String(LIST_TOP - 1)}`;
      return [
        `=IF(${k}>$B$2,"",SMALL(${column(signRow)},${k}))`,
        `=IF(A${row}="","",INDEX(${column(key)},A${row}))`,
        `=IF(A${row}="","",IF(ISNUMBER(MATCH(B${row},B$${String(LIST_TOP - 1)}:B${String(LIST_TOP + index - 1)},0)),"",${k}))`,
        `=IF(${k}>$B$4,"",SMALL($C$${top}:$C$${bottom},${k}))`,
        `=IF(D${row}="","",INDEX($B$${top}:$B$${bottom},D${row}))`,
        `=IF(D${row}="","",IF(COUNTIFS(${column(key)},E${row},${column(sign)},"undated")>0,"undated",MAXIFS(${column(sign)},${column(key)},E${row})))`,
        `=IF(D${row}="","",INDEX(${REGISTER_TABLE}[Id],INDEX($A$${top}:$A$${bottom},D${row})))`,
      ];
    }),
  ];
}

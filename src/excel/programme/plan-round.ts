/** What a round sheet holds, as plain data. Pure. */
import { field, type FieldId } from "../../engine/columns";
import type { Round, RoundItem, RoundLine } from "../../engine/programme/round";
import { count } from "../../engine/words";
import type { Written } from "../kit/in-parts";
import { CAUTION } from "../kit/sheets";
import { HEADING_ROW, INPUTS, letterOf, ROUND_COLUMNS, type RoundHeading } from "./round-layout";

export interface RoundSheetPlan {
  readonly title: string;
  readonly line: string;
  readonly help: string;
  /** Cells of the lines, without those worked out. */
  readonly rows: readonly (readonly Written[])[];
  /** Formats of the column Now, a line each. */
  readonly nowFormats: readonly string[];
  readonly heights: readonly number[];
  /** Rows by what they are, from 0 at the first line. */
  readonly itemRows: readonly number[];
  readonly takenRows: readonly number[];
  readonly hiddenRows: readonly number[];
  readonly formulas: readonly { readonly row: number; readonly formula: string }[];
  readonly lists: readonly { readonly row: number; readonly field: FieldId }[];
}
const ABSOLUTE_GAUGE = INPUTS.gaugeReads.replace(/^([A-Z]+)(\d+)$/, "$$$1$$$2");
const LINE_HEIGHT = 15;
/** Characters of nine points that surely fit into a column. */
const FITS: Readonly<Partial<Record<RoundHeading, number>>> = {
  Gear: 14,
  Place: 14,
  "Look at or measure": 24,
  "Comes out at": 26,
  Last: 10,
  "As new": 10,
};
/** `basis` is the rule sets as a formula reads them: the sheet's own cell, or the range of the house limits. */
export function planRoundSheet(round: Round, title: string, basis: string, made: string, rules: string): RoundSheetPlan {
  const rows: Written[][] = [];
  const heights: number[] = [];
  const itemRows: number[] = [];
  const takenRows: number[] = [];
  const hiddenRows: number[] = [];
  const nowFormats: string[] = [];
  const formulas: { row: number; formula: string }[] = [];
  const lists: { row: number; field: FieldId }[] = [];
  const add = (cells: Partial<Record<RoundHeading, Written>>, format: string): void => {
    rows.push(ROUND_COLUMNS.map(({ heading }) => cells[heading] ?? ""));
    nowFormats.push(format);
    heights.push(heightOf(cells));
  };
  for (const item of round.items) {
    const at = rows.length;
    itemRows.push(at);
    add(itemRow(item), "General");
    for (const line of item.lines) {
      if (line.role === "check") lists.push({ row: rows.length, field: line.now });
      if (line.role === "taken") takenRows.push(rows.length);
      add(lineRow(item, line), line.role === "check" && ["count", "angle"].includes(field(line.now).type) ? "General" : "@");
    }
    hiddenRows.push(rows.length);
    add(gaugeRow(item), "General");
    formulas.push({ row: at, formula: verdictFormula(at, item.lines.length + 1, basis) });
    formulas.push({ row: rows.length - 1, formula: `=IF(${ABSOLUTE_GAUGE}="","",${ABSOLUTE_GAUGE})` });
  }
  return {
    title,
    line: `${count(round.items.length, "item")}, ${count(round.checks, "check")} · ${rules} · made ${made} · what is left blank counts as missing; what is wrong beside a reading goes under Found, in words`,
    help: `Where an item is not there, choose "not found" in its own line. ${CAUTION}`,
    rows,
    nowFormats,
    heights,
    itemRows,
    takenRows,
    hiddenRows,
    formulas,
    lists,
  };
}
const itemRow = ({ id, gear, place, words, inspected }: RoundItem): Partial<Record<RoundHeading, Written>> => ({
  Id: id,
  Gear: gear,
  Place: place,
  "Look at or measure": words,
  Line: "item",
  Was: inspected,
});
const lineRow = (item: RoundItem, line: RoundLine): Partial<Record<RoundHeading, Written>> => ({
  Id: item.id,
  Gear: item.gear,
  Place: item.place,
  "Look at or measure": line.label,
  "As new": line.asNew,
  Last: line.last,
  "Comes out at": line.comesOut,
  Now: line.role === "taken" ? line.last : "",
  // Under Found, so that nobody takes it for a reading of today.
  Gauge: line.role === "taken" ? "as recorded" : "",
  Line: `${line.role} ${line.now}${line.required ? " needed" : ""}`,
  Was: line.was,
  "As new was": line.role === "check" ? line.asNew : "",
});
/** The resolution of the gauge is typed once for the round; each item's list has it in a hidden line. */
const gaugeRow = (item: RoundItem): Partial<Record<RoundHeading, Written>> => ({
  Id: item.id,
  "Look at or measure": field("gauge").heading,
  Line: "gauge gauge",
});
function heightOf(cells: Partial<Record<RoundHeading, Written>>): number {
  const isItem = cells.Line === "item";
  const lines = (Object.entries(FITS) as [RoundHeading, number][]).map(([heading, fits]) =>
    isItem && heading === "Look at or measure" ? 1 : Math.ceil(String(cells[heading] ?? "").length / fits),
  );
  return LINE_HEIGHT + 12 * (Math.max(1, ...lines) - 1);
}
function verdictFormula(row: number, lines: number, basis: string): string {
  const first = String(HEADING_ROW + 1 + row + 1);
  const last = String(HEADING_ROW + 1 + row + lines);
  const range = (from: RoundHeading, to: RoundHeading = from): string => `$${letterOf(from)}${first}:$${letterOf(to)}${last}`;
  const now = range("Now", "Found");
  return `=GEAR.JUDGELIST($${letterOf("Gear")}${String(HEADING_ROW + 1 + row)},${range("Look at or measure")},${range("As new")},IF(ISBLANK(${now}),"",${now}),${basis})`;
}

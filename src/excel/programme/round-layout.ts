/** Where things stand on a round sheet. */
import { columnLetters } from "../kit/addresses";

export interface RoundColumn {
  readonly heading: string;
  /** Points; together no wider than a sheet of paper, so that nothing is printed smaller than it is written. */
  readonly width: number;
  readonly hidden?: true;
}
/** What a person reads and fills; behind it what posting reads. Letter paper on its side has 734 points between narrow margins. */
export const ROUND_COLUMNS = [
  { heading: "Id", width: 52 },
  { heading: "Gear", width: 74 },
  { heading: "Place", width: 74 },
  { heading: "Look at or measure", width: 118 },
  { heading: "As new", width: 52 },
  { heading: "Last", width: 62 },
  { heading: "Comes out at", width: 128 },
  { heading: "Now", width: 68 },
  { heading: "Found", width: 64 },
  { heading: "Gauge", width: 40 },
  { heading: "Line", width: 60, hidden: true },
  { heading: "Was", width: 60, hidden: true },
  { heading: "As new was", width: 60, hidden: true },
] as const satisfies readonly RoundColumn[];
export type RoundHeading = (typeof ROUND_COLUMNS)[number]["heading"];
export const columnOf = (heading: RoundHeading): number => ROUND_COLUMNS.findIndex((column) => column.heading === heading);
export const letterOf = (heading: RoundHeading): string => columnLetters(columnOf(heading));
export const SHOWN = ROUND_COLUMNS.filter((column) => !("hidden" in column)).length;
/** One-based rows. */
export const INPUT_ROW = 3;
export const HEADING_ROW = 5;
/** Cells that are filled once, above the lines. */
export const INPUTS = { by: "C3", date: "F3", gaugeReads: "H3", gauge: "J3" } as const;
/** Hidden cells by which posting knows the round. */
export const HELD = { mark: "K1", round: "L1", kind: "M1", basis: "K2", title: "L2" } as const;
export const ROUND_SIGN = "Round of Gear Verdicts";
/** Type size; nothing on the page is smaller. */
export const TYPE = 9;

/** Names and places of the add-in's own sheets. Nothing outside them is ever written. */
import { field, type FieldId } from "../../engine/columns";
import { DECISIONS } from "../../engine/decision";
import { LEAD_DAYS } from "../../engine/due/intervals";
import { TAKES } from "../../engine/pages/about-columns";
import { AS_OF_CELL, BASIS_CELL, REGISTER_TABLE } from "../kit/sheets";

/**
 * Height of a row in points, three lines. Fixed: the sheet does not fit rows again when formulas come out otherwise, and
 * right after the build they may not be worked out yet.
 */
export const ROW_HEIGHT = 46;
/** Columns of sentences, which run over those lines. */
export const WRAPPED: readonly string[] = ["Reason", "Comes out at", "Log differs"];
export interface ResultColumn {
  readonly heading: string;
  readonly formula: string;
  readonly format: string;
  readonly width: number;
  readonly note: string;
}
/** Structured reference to headings or to this row over a block of columns. */
const block = (from: string, to: string): { readonly headings: string; readonly row: string } => ({
  headings: `${REGISTER_TABLE}[[#Headers],[${from}]:[${to}]]`,
  row: `IF(ISBLANK(${REGISTER_TABLE}[@[${from}]:[${to}]]),"",${REGISTER_TABLE}[@[${from}]:[${to}]])`,
});
const name = (id: FieldId): string => field(id).heading;
const typed = block(name("id"), name("remarks"));
const whole = block(name("id"), name("overload"));
const args = (over: typeof typed): string => `${over.headings},${over.row},${BASIS_CELL}`;
/** Filled by the build where register and log were both changed: the log's decision, a colon, and the cells. */
export const LOG_DIFFERS = "Log differs";
/** The worse of a decision and the one that the log gave; in the order below, the worse stands first. */
function noBetterThanLog(own: string): string {
  const log = `LEFT([@[${LOG_DIFFERS}]],FIND(":",[@[${LOG_DIFFERS}]])-1)`;
  const order = `"${DECISIONS.join("|")}"`;
  return `IF([@[${LOG_DIFFERS}]]="",${own},IF(FIND(${log},${order})<FIND(${own},${order}),${log},${own}))`;
}
/**
 * Columns that are worked out behind the input columns, in order. The first two carry an overload found in one part to the rest of its assembly;
 * the verdict reads them together with the input columns. Blank cells are guarded, because some hosts hand them to
 * functions as 0. Only built-in functions look at the day to judge by: TODAY() is worked out anew whenever a file is
 * opened, and what depends on it would lose its last value where the add-in is not there.
 */
export const RESULT_COLUMNS: readonly ResultColumn[] = [
  {
    heading: "Overload sign",
    formula: `=IF(ISNUMBER(SEARCH("sign of overload",GEAR.REASON(${args(typed)}))),IF(ISNUMBER([@${name("inspected")}]),[@${name("inspected")}],"undated"),"")`,
    format: "yyyy-mm-dd",
    width: 62,
    note: "Worked out: the day on which this part was found stretched or opened up.",
  },
  {
    heading: name("overload"),
    formula: `=IF([@${name("assembly")}]="","",IF(COUNTIFS([${name("assembly")}],[@${name("assembly")}],[Overload sign],"undated",[${name("id")}],"<>"&[@${name("id")}])>0,"undated",IF(COUNTIFS([${name("assembly")}],[@${name("assembly")}],[Overload sign],">0",[${name("id")}],"<>"&[@${name("id")}])=0,"",MAXIFS([Overload sign],[${name("assembly")}],[@${name("assembly")}],[${name("id")}],"<>"&[@${name("id")}]))))`,
    format: "yyyy-mm-dd",
    width: 62,
    note: TAKES.overload,
  },
  {
    heading: LOG_DIFFERS,
    formula: "",
    format: "@",
    width: 160,
    note: "Filled when the register is built: cells that were changed both here and in the log. The worse of the two verdicts counts until both say the same and the register is rebuilt.",
  },
  {
    heading: "Verdict",
    formula: `=${noBetterThanLog(`GEAR.VERDICT(${args(whole)})`)}`,
    format: "General",
    width: 78,
    note: "REMOVE, EXAMINE, NO VERDICT, DRESS, WATCH or KEEP; the worst finding decides.",
  },
  {
    heading: "Reason",
    formula: `=IF([@[${LOG_DIFFERS}]]="","",[@[${LOG_DIFFERS}]]&" ")&GEAR.REASON(${args(whole)})`,
    format: "General",
    width: 420,
    note: "Readings, limit, unit and source behind the verdict, and what is missing.",
  },
  {
    heading: "Comes out at",
    formula: `=INDEX(GEAR.JUDGE(${args(whole)}),1,4)`,
    format: "General",
    width: 220,
    note: "The figure at which each part comes out.",
  },
  {
    heading: "Used",
    formula: `=INDEX(GEAR.JUDGE(${args(whole)}),1,3)`,
    format: "0%",
    width: 42,
    note: "Share of the allowance used: 100 % is at the limit.",
  },
  {
    heading: "Next due",
    formula: `=IFERROR(GEAR.NEXTDUE([@${name("gear")}],IF([@${name("service")}]="","normal",[@${name("service")}]),[@${name("inspected")}],${BASIS_CELL},IF([@[${name("usedOn")}]]="","",[@[${name("usedOn")}]])),"")`,
    format: "yyyy-mm-dd",
    width: 68,
    note: "Last inspection plus the interval of the service class.",
  },
  {
    heading: "Due state",
    formula: `=IF(AND(ISNUMBER([@[Next due]]),ISNUMBER(${AS_OF_CELL}),N([@${name("inspected")}])<=${AS_OF_CELL}),IF([@[Next due]]<${AS_OF_CELL},"OVERDUE",IF([@[Next due]]<=${AS_OF_CELL}+${String(LEAD_DAYS)},"DUE SOON","CURRENT")),"NO DATE")`,
    format: "General",
    width: 68,
    note: "OVERDUE, DUE SOON (30 days), CURRENT or NO DATE.",
  },
];
/**
 * Stands before the input columns, so that it is in sight with the id wherever the sheet is scrolled to. The block that
 * the verdict reads begins with the id: the flag follows the verdict and must not be part of it.
 */
export const FRONT_COLUMNS: readonly ResultColumn[] = [
  {
    heading: "Flag",
    formula: `=IF(AND([@Verdict]<>"REMOVE",OR(N([@${name("inspected")}])>${AS_OF_CELL},N([@[${name("releasedOn")}]])>${AS_OF_CELL})),"? DATE AHEAD",IF([@Verdict]="REMOVE",IF(ISNUMBER(FIND("Tagged out",[@Reason])),"✖ TAGGED OUT","✖ REMOVE"),IF([@Verdict]="EXAMINE","◆ EXAMINE",IF([@Verdict]="NO VERDICT","? NO VERDICT",IF([@[Due state]]="OVERDUE","! OVERDUE",IF([@[Due state]]="DUE SOON","◷ DUE SOON",IF([@[Due state]]<>"CURRENT","! NO DATE",IF([@Verdict]="DRESS","▽ DRESS",IF([@Verdict]="WATCH","△ WATCH",IF([@Verdict]="KEEP","✔ KEEP","?"))))))))))`,
    format: "General",
    width: 92,
    note: "What needs doing first, as a symbol and a word. DATE AHEAD: an inspection or a release is dated after the day of judging; put the date right.",
  },
];
/** A worked-out column's formula; `rules` is the cell or the range that it hands over as the rule sets. */
export function formulaOf(column: ResultColumn, rules: string): string {
  return column.formula.replaceAll(BASIS_CELL, rules);
}
export const RESULT_HEADINGS: readonly string[] = [...FRONT_COLUMNS, ...RESULT_COLUMNS].map((c) => c.heading);
/** Columns that stay in sight: the flag, id and gear. */
export const FROZEN_COLUMNS = FRONT_COLUMNS.length + 2;
/** Width in points of an input column. */
export function inputWidth(id: FieldId): number {
  if (id === "id") return 92;
  if (id === "gear") return 92;
  if (id === "remarks") return 160;
  if (id === "assembly" || id === "inspector" || id === "releasedBy") return 112;
  switch (field(id).type) {
    case "text":
      return 84;
    case "choice":
      return id === "construction" || id === "clipType" ? 88 : 64;
    case "date":
      return 68;
    case "length":
      return 60;
    case "sound":
    case "fault":
      return 74;
    default:
      return 56;
  }
}
/** Number format of an input column: text where people type fractions or marks, so that nothing turns into a date. */
export function inputFormat(id: FieldId): string {
  switch (field(id).type) {
    case "date":
      return "yyyy-mm-dd";
    case "count":
    case "angle":
      return "General";
    default:
      return "@";
  }
}

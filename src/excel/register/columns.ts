/** The worked-out columns of the register: headings, formulas, formats. */
import { ROW_HEAD, ROW_PARTS, type RowPart } from "../../engine/ask/judge-row";
import { field, type FieldId } from "../../engine/columns";
import { SYMBOLS } from "../../engine/decision";
import { LEAD_DAYS } from "../../engine/due/intervals";
import { AS_OF_CELL, REGISTER_TABLE, WORKINGS_SHEET } from "../kit/sheets";

/** Height of a row in points: one line. */
export const ROW_HEIGHT = 16;
/** Where the list of assemblies stands on the sheet of workings. */
export const LIST_TOP = 6;
/** What the formulas of one register depend on. */
export interface FormulaPlace {
  /** The call that judges a row. */
  readonly judged: string;
  /** Input columns that the register has. */
  readonly fields: ReadonlySet<FieldId>;
  /** Rows for assemblies on the sheet of workings. */
  readonly assemblies: number;
}
export interface ResultColumn {
  readonly heading: string;
  /** Null where the build fills the cells. */
  readonly formula: ((at: FormulaPlace) => string) | null;
  readonly format: string;
  readonly width: number;
  readonly note: string;
  /** "shown" stands on the first screen, "folded" behind it, "hidden" is of no use to people. */
  readonly sight: "shown" | "folded" | "hidden";
}
const name = (id: FieldId): string => field(id).heading;
/** This row of a column. */
export const cell = (heading: string): string => (/^\w+$/.test(heading) ? `[@${heading}]` : `[@[${heading}]]`);
/** All rows of a column, also from another sheet. */
export const column = (heading: string): string => `${REGISTER_TABLE}[${heading}]`;
const JUDGED = "Judged";
const OWN = "By its own row";
const KEY = "Assembly key";
const SIGN = "Overload sign";
const SIGN_ROW = "Sign row";
const OTHERS = "Stretched in assembly";
/** Filled by the build where register and log were both changed: the log's decision, a colon, and the cells. */
export const LOG_DIFFERS = "Log differs";
const WORKINGS = `'${WORKINGS_SHEET}'!`;
/** How many rows show a sign of overload together with an assembly. */
export const SIGN_COUNT = `${WORKINGS}$B$2`;
/** How many assemblies have a sign. */
const LISTED = `${WORKINGS}$B$4`;
/** Last used row of the house limits. */
export const HOUSE_LAST = `${WORKINGS}$B$3`;
/** Place behind the n-th mark of the answer. */
const mark = (n: number): string => `FIND(CHAR(10),SUBSTITUTE(${cell(JUDGED)},CHAR(127),CHAR(10),${String(n)}))`;
/** One part of the answer; a mark closes each, and no typed text holds one. */
function part(of: RowPart): string {
  const n = ROW_PARTS.indexOf(of) + 1;
  return `MID(${cell(JUDGED)},${mark(n)}+1,${mark(n + 1)}-${mark(n)}-2)`;
}
const day = (of: RowPart): string => `IFERROR(VALUE(${part(of)}),"")`;
/** Whether the cell holds an answer of the form that is understood here. */
const WHOLE = `LEFT(${cell(JUDGED)},${String(ROW_HEAD.length + 2)})="${ROW_HEAD} "&CHAR(127)`;
const LOG_WORD = `LEFT(${cell(LOG_DIFFERS)},FIND(":",${cell(LOG_DIFFERS)}&":")-1)`;
/** The worst of the row's own decision, an overload in its assembly, and what the log said. What the log said and cannot be read is no verdict. */
function worstOfAll(): string {
  const either = (word: string): string => `OR(${cell(OWN)}="${word}",${LOG_WORD}="${word}")`;
  const unread = `ISERROR(FIND("|"&${LOG_WORD}&"|","||REMOVE|EXAMINE|DRESS|WATCH|KEEP|"))`;
  return `=IF(${either("REMOVE")},"REMOVE",IF(OR(${cell(OWN)}="EXAMINE",${LOG_WORD}="EXAMINE",${cell(name("overload"))}<>""),"EXAMINE",IF(OR(${cell(OWN)}="NO VERDICT",${unread}),"NO VERDICT",IF(${either("DRESS")},"DRESS",IF(${either("WATCH")},"WATCH",${cell(OWN)})))))`;
}
const lastLine = ({ assemblies }: FormulaPlace): string => String(LIST_TOP + Math.max(1, assemblies) - 1);
/** A line of the list of assemblies. A row looks at no more lines than there are assemblies with a sign. */
function listed(letter: string, at: FormulaPlace): string {
  const top = `$${String(LIST_TOP)}`;
  const last = `$${lastLine(at)}`;
  const used = `${WORKINGS}$E${top}:INDEX(${WORKINGS}$E${top}:$E${last},MAX(1,${LISTED}))`;
  return `INDEX(${WORKINGS}$${letter}${top}:$${letter}${last},MATCH(${cell(KEY)},${used},0))`;
}
/** The day on which another part of the assembly was found stretched. Only rows with a sign of their own look at all rows. */
function stretchedOn(at: FormulaPlace): string {
  const { assemblies } = at;
  const of = `${column(KEY)},${cell(KEY)}`;
  const other = `${column(SIGN_ROW)},"<>"&${cell(SIGN_ROW)}`;
  const anew = `IF(COUNTIFS(${of},${column(SIGN)},"undated",${other})>0,"undated",IF(COUNTIFS(${of},${column(SIGN)},">0",${other})=0,"",MAXIFS(${column(SIGN)},${of},${other})))`;
  return `=IF(OR(${cell(KEY)}="",${SIGN_COUNT}=0),"",IF(OR(${SIGN_COUNT}>${String(assemblies)},${cell(SIGN_ROW)}<>""),${anew},IFERROR(${listed("F", at)},"")))`;
}
/** Still counts while this part has not been looked at after that day. */
function overload(): string {
  return `=IF(${cell(OTHERS)}="","",IF(ISNUMBER(${cell(OTHERS)}),IF(${day("inspected")}="",${cell(OTHERS)},IF(${day("inspected")}>${cell(OTHERS)},"",${cell(OTHERS)})),${cell(OTHERS)}))`;
}
function shortReason(at: FormulaPlace): string {
  const other = `IFERROR(IF(OR(${listed("G", at)}="",${listed("G", at)}=${cell(name("id"))}),"Another part",${listed("G", at)}),"Another part")`;
  return `=IF(${cell("Verdict")}=${cell(OWN)},IFERROR(${part("short")},""),IF(AND(${cell(name("overload"))}<>"",${cell("Verdict")}="EXAMINE"),${other}&" was stretched: look at this part too","The log says "&${cell("Verdict")}&", and the register does not"))`;
}
const OVERLOADED =
  "Another part of this assembly was found stretched or opened up: the whole assembly was overloaded, and this part has not been looked at since; inspect it and date the inspection after that day.";
function wholeReason(): string {
  const log = `IF(${cell(LOG_DIFFERS)}="","",${cell(LOG_DIFFERS)}&" ")`;
  const others = `IF(${cell(name("overload"))}="","","${OVERLOADED} ")`;
  const own = `IF(${WHOLE},IFERROR(${part("reason")},MID(${cell(JUDGED)},${mark(ROW_PARTS.indexOf("reason") + 1)}+1,32767)),"The answer of the add-in is not understood here; build the register again.")`;
  return `=${log}&${others}&${own}`;
}
/** First what decides, then whether its inspection is late: a row that is out and late says both. */
function flag({ fields }: FormulaPlace): string {
  const verdict = cell("Verdict");
  const late = `IF(${cell("Due state")}="OVERDUE",", late",IF(${cell("Due state")}="DUE SOON",IF(${verdict}="REMOVE","",", due soon"),IF(${cell("Due state")}="CURRENT","",", no date")))`;
  const dates = (["inspected", "releasedOn"] as const).filter((id) => fields.has(id)).map((id) => `N(${cell(name(id))})>${AS_OF_CELL}`);
  const symbol = `IF(OR(${cell("Due state")}="OVERDUE",AND(${cell("Due state")}<>"CURRENT",${cell("Due state")}<>"DUE SOON")),"!",IF(${verdict}="DRESS","${SYMBOLS.DRESS}",IF(${verdict}="WATCH","${SYMBOLS.WATCH}",IF(${verdict}="KEEP","${SYMBOLS.KEEP}","?"))))`;
  const word = `IF(${verdict}="REMOVE",IF(${part("tag")}="out","${SYMBOLS.REMOVE} TAGGED OUT","${SYMBOLS.REMOVE} REMOVE"),IF(${verdict}="EXAMINE","${SYMBOLS.EXAMINE} EXAMINE",IF(${verdict}="NO VERDICT","${SYMBOLS["NO VERDICT"]} NO VERDICT",${symbol}&" "&${verdict})))&${late}`;
  return dates.length === 0 ? `=${word}` : `=IF(AND(${verdict}<>"REMOVE",OR(${dates.join(",")})),"? DATE AHEAD",${word})`;
}
/**
 * In the order in which a new register has them, as wide as fits beside an open pane on 1366 pixels; "Used" closes what
 * folds, so that Excel's own button stands over a column that is in sight. Only built-in functions look at the day to judge by: TODAY() is worked out anew whenever a file is
 * opened, and what depends on it would lose its last value where the add-in is not there.
 */
export const RESULT_COLUMNS: readonly ResultColumn[] = [
  {
    heading: "Flag",
    formula: flag,
    format: "General",
    width: 116,
    note: "What needs doing, as a symbol and a word, and whether its inspection is late. DATE AHEAD: an inspection or a release is dated after the day of judging; put the date right.",
    sight: "shown",
  },
  {
    heading: "Why",
    formula: shortReason,
    format: "General",
    width: 214,
    note: "The reason in a line; the whole one stands under Reason.",
    sight: "shown",
  },
  {
    heading: "Next due",
    formula: () => `=${day("due")}`,
    format: "yyyy-mm-dd",
    width: 62,
    note: "Last inspection plus the interval of the service class.",
    sight: "shown",
  },
  {
    heading: "Comes out at",
    formula: () => `=IFERROR(${part("comesOut")},"")`,
    format: "General",
    width: 102,
    note: "The figure at which each part comes out.",
    sight: "shown",
  },
  {
    heading: JUDGED,
    formula: ({ judged }) => judged,
    format: "General",
    width: 60,
    note: "The add-in's whole answer for the row, which the other columns take apart. Hidden; not to be changed.",
    sight: "hidden",
  },
  {
    heading: "Verdict",
    formula: worstOfAll,
    format: "General",
    width: 78,
    note: "REMOVE, EXAMINE, NO VERDICT, DRESS, WATCH or KEEP; the worst finding decides.",
    sight: "folded",
  },
  {
    heading: "Due state",
    formula: () =>
      `=IF(AND(ISNUMBER([@[Next due]]),ISNUMBER(${AS_OF_CELL}),N(${day("inspected")})<=${AS_OF_CELL}),IF([@[Next due]]<${AS_OF_CELL},"OVERDUE",IF([@[Next due]]<=${AS_OF_CELL}+${String(LEAD_DAYS)},"DUE SOON","CURRENT")),"NO DATE")`,
    format: "General",
    width: 68,
    note: "OVERDUE, DUE SOON (30 days), CURRENT or NO DATE.",
    sight: "folded",
  },
  {
    heading: "Reason",
    formula: wholeReason,
    format: "General",
    width: 420,
    note: "Readings, limit, unit and source behind the verdict, and what is missing.",
    sight: "folded",
  },
  {
    heading: "Still to record",
    formula: () => `=IFERROR(SUBSTITUTE(MID(${part("missing")},2,LEN(${part("missing")})-2),"|","; "),"")`,
    format: "General",
    width: 160,
    note: "Columns that this kind of gear needs and that are blank or cannot be read.",
    sight: "folded",
  },
  {
    heading: OWN,
    formula: () => `=IF(${WHOLE},${part("decision")},"NO VERDICT")`,
    format: "General",
    width: 78,
    note: "Decision by the row alone, before its assembly and the log are looked at.",
    sight: "folded",
  },
  {
    heading: SIGN,
    formula: () => `=IF(IFERROR(${part("overload")},"")="","",IF(${day("inspected")}="","undated",${day("inspected")}))`,
    format: "yyyy-mm-dd",
    width: 62,
    note: "Worked out: the day on which this part was found stretched or opened up.",
    sight: "folded",
  },
  {
    heading: OTHERS,
    formula: stretchedOn,
    format: "yyyy-mm-dd",
    width: 62,
    note: "Worked out: the latest day on which another part of its assembly was found stretched or opened up.",
    sight: "folded",
  },
  {
    heading: name("overload"),
    formula: overload,
    format: "yyyy-mm-dd",
    width: 62,
    note: "That day, as long as this part has not been looked at after it.",
    sight: "folded",
  },
  {
    heading: KEY,
    formula: () => `=IFERROR(${part("assembly")},"")`,
    format: "General",
    width: 62,
    note: "Worked out: the assembly in a form that can be looked up.",
    sight: "folded",
  },
  {
    heading: SIGN_ROW,
    formula: () => `=IF(OR(${cell(SIGN)}="",${cell(KEY)}=""),"",ROW()-ROW(${REGISTER_TABLE}[[#Headers],[${SIGN}]]))`,
    format: "General",
    width: 40,
    note: "Worked out: number of the row, where it shows a sign of overload.",
    sight: "folded",
  },
  {
    heading: "Cells",
    formula: () => `=IFERROR(${part("cells")},"")`,
    format: "General",
    width: 62,
    note: "Worked out: a figure for each input column. 0 is not read for this kind, 1 is read, 2 is missing or cannot be read.",
    sight: "folded",
  },
  {
    heading: LOG_DIFFERS,
    formula: null,
    format: "@",
    width: 160,
    note: "Filled when the register is built: cells that were changed both here and in the log. The worse of the two verdicts counts until both say the same and the register is rebuilt.",
    sight: "folded",
  },
  {
    heading: "Used",
    formula: () => `=IFERROR(IF(${part("share")}="over","over",VALUE(${part("share")})/1000000),"")`,
    format: "0%",
    width: 40,
    note: "Share of the allowance used: 100 % is at the limit.",
    sight: "shown",
  },
];
export const RESULTS: ReadonlyMap<string, ResultColumn> = new Map(RESULT_COLUMNS.map((c) => [c.heading, c]));
export const RESULT_HEADINGS: readonly string[] = RESULT_COLUMNS.map((c) => c.heading);
/** Columns of the sheet of workings that read these ones. */
export const READ_BY_WORKINGS = { key: KEY, sign: SIGN, signRow: SIGN_ROW } as const;
/** Columns that stay in sight: the flag, id and gear. */
export const FROZEN_COLUMNS = 3;
/** Width in points of an input column. */
export function inputWidth(id: FieldId): number {
  if (id === "id") return 56;
  if (id === "gear") return 84;
  if (id === "place") return 68;
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
      return 64;
    case "sound":
    case "fault":
      return 74;
    default:
      return 60;
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

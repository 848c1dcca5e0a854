/** The lift as a worksheet: cells with the functions of the add-in and built-in ones, as data. Nothing is written here. */
import { eyeboltRow, hasShoulder } from "../../engine/lift/figures";
import { type HookupLine, PLACES, TAG_FIRST, TWO_LEGS_ADVISED, WEIGH_ALL } from "../../engine/lift/judge-lift";
import { gradesOf, HITCHES, SIDE_ASKED, sizeOf, SLINGS } from "../../engine/lift/reductions";
import { SERVICE_TEMPERATURE } from "../../engine/lift/service-temperature";
import { CHAIN_CHOKE, CHAIN_CHOKE_LEAST, CHOKE, CHOKER_SHARE, EYEBOLT_IN_LINE, ROPE_CHOKE } from "../../engine/lift/tables";
import { toNumber } from "../../engine/numbers/exact";
import { LOAD_UNITS, readLoad } from "../../engine/reading/load";
import { readText } from "../../engine/reading/text";
import type { ItemResult } from "../../engine/report/model";
import { CAUTION, LIFT_SHEET } from "../kit/sheets";
import type { LiftToWrite } from "../port";

export type LiftCell = string | number;
export interface LiftPlan {
  /** Title, caution and what comes first: one text in column A each. */
  readonly top: readonly string[];
  /** Rows of label, value and unit or explanation; from row `INPUT_ROW` on. */
  readonly inputs: readonly {
    readonly label: string;
    readonly value: LiftCell;
    readonly beside: LiftCell;
    readonly choices?: readonly string[];
    readonly besideChoices?: readonly string[];
  }[];
  readonly results: readonly { readonly label: string; readonly formula: string; readonly note: string; readonly format: string }[];
  /** One row for each item; the columns of `WORKED_OUT` hold formulas, the others what was read. */
  readonly rows: readonly (readonly LiftCell[])[];
  /** For each item that was in use when it was read: a formula that says so until its inspection comes due; else null. */
  readonly states: readonly (string | null)[];
}
/** One-based rows. The top takes three, then a line is left free. */
export const INPUT_ROW = 6;
export const RESULT_ROW = 17;
export const ITEM_ROW = 24;
const INPUT = {
  asOf: "$B$6",
  load: "$B$7",
  unit: "$C$7",
  legs: "$B$8",
  angle: "$B$9",
  from: "$C$9",
  hitch: "$B$10",
  choke: "$B$11",
  temperature: "$B$12",
  scale: "$C$12",
  grade: "$B$13",
  counted: "$B$14",
} as const;
const TENSION = "$B$17";
const IN_USE = "in use";
/** The answer stands beside the item; what it comes from follows. */
export const LIFT_HEADINGS = [
  "Id",
  "Gear",
  "Place",
  "Decision",
  "Used",
  "Needed",
  "Rated here",
  "Left",
  "State when read",
  "Tag",
  "Tag unit",
  "Side load deg",
  "Hitch share",
  "Heat share",
  "Side share",
  "Rated load from",
] as const;
export type LiftHeading = (typeof LIFT_HEADINGS)[number];
/** Columns that hold formulas; the state does as well, for an item that was in use. */
export const WORKED_OUT: readonly LiftHeading[] = [
  "Decision",
  "Used",
  "Needed",
  "Rated here",
  "Left",
  "Hitch share",
  "Heat share",
  "Side share",
];
export const columnOf = (heading: LiftHeading): number => LIFT_HEADINGS.indexOf(heading);
export const letterOf = (heading: LiftHeading): string => String.fromCharCode("A".charCodeAt(0) + columnOf(heading));
/** Kilograms in a unit named by a cell; 1 lb = 0.45359237 kg exactly. */
const kilograms = (cell: string): string =>
  `IF(${cell}="kg",1,IF(${cell}="t",1000,IF(${cell}="lb",0.45359237,IF(${cell}="short ton",907.18474,NA()))))`;
/** Blank cells reach functions as 0 on some hosts, so they are told from 0 before. */
const given = (cell: string, then: string): string => `IF(${cell}="",NA(),${then})`;
export function planLift({ request, result }: LiftToWrite): LiftPlan {
  const load = readLoad(request.load);
  const lines = result.lines;
  const last = ITEM_ROW + Math.max(1, lines.length);
  const column = (heading: LiftHeading): string => `$${letterOf(heading)}$${String(ITEM_ROW + 1)}:$${letterOf(heading)}$${String(last)}`;
  const parts = `IF(${INPUT.hitch}="basket",2,1)*${INPUT.legs}`;
  const straight = `IF(${INPUT.angle}="",IF(AND(${INPUT.legs}=1,${INPUT.hitch}<>"basket"),90,NA()),${INPUT.angle})`;
  // The legs that are counted can be fewer than there are, so the angle between two of more than two is refused here.
  const straightFrom = `IF(${INPUT.angle}="","horizontal",IF(AND(${INPUT.from}="included",${parts}>2),NA(),${INPUT.from}))`;
  const slings = `COUNTIFS(${column("Gear")},"*sling*",${column("Place")},"${PLACES.leg}")`;
  // What the engine refuses for the whole lift: no tension, no hitch, a choker without its angle, more or fewer slings than legs, a choker or basket without one.
  const sound = `AND(ISNUMBER(${TENSION}),OR(${HITCHES.map((hitch) => `${INPUT.hitch}="${hitch}"`).join(",")}),OR(${INPUT.hitch}<>"choker",${INPUT.choke}<>""),OR(AND(${slings}=0,${INPUT.hitch}="vertical"),${slings}=${INPUT.legs}))`;
  const counts = `IF(${parts}>4,NA(),MIN(${parts},${INPUT.counted}))`;
  return {
    top: [LIFT_SHEET, CAUTION, TAG_FIRST, WEIGH_ALL],
    inputs: [
      {
        label: "State of the gear as of",
        value: request.asOf,
        beside: `=IF(TODAY()>${INPUT.asOf},"The states below are of an earlier day; read the log and write this sheet again before lifting.","")`,
      },
      {
        label: "Load",
        value: load.kind === "value" ? toNumber(load.value.value) : "",
        beside: load.kind === "value" ? load.value.unit : "",
        besideChoices: LOAD_UNITS,
      },
      { label: "Legs", value: numberOf(request.legs), beside: "1 to 4 slings; in a basket each has two parts" },
      {
        label: "Angle in degrees",
        value: numberOf(request.angle),
        beside: readText(request.angleFrom) || "horizontal",
        besideChoices: ["horizontal", "vertical", "included"],
      },
      { label: "Hitch", value: readText(request.hitch), beside: "", choices: HITCHES },
      { label: "Choke angle in degrees", value: numberOf(request.chokeAngle), beside: "for a choker hitch" },
      { label: "Temperature", value: numberOf(request.temperature), beside: readText(request.temperatureUnit), besideChoices: ["C", "F"] },
      { label: "Grade of the chain", value: numberOf(request.grade), beside: "80 or 100, where there is heat and the row names none" },
      {
        label: "Legs that carry, at most",
        value: request.strict === true ? 2 : 3,
        beside: `3, or 2 where only two are trusted. ${TWO_LEGS_ADVISED}`,
      },
    ],
    results: [
      {
        label: "Tension in one leg",
        formula: `=GEAR.LEGLOAD(${given(INPUT.load, INPUT.load)},${counts},${straight},${straightFrom})`,
        note: "in the unit of the load; load over the legs that carry and the sine of their angle from horizontal",
        format: "#,##0.0##",
      },
      {
        label: "Decision",
        formula: `=IF(COUNTIF(${column("Decision")},"OVERLOADED")>0,"OVERLOADED",IF(AND(${sound},COUNTIF(${column("Decision")},"CARRIES")=ROWS(${column("Decision")})),"CARRIES","REFUSED"))`,
        note: "CARRIES only when every item does, the lift is complete, and there is one sling for each leg (where slings are listed)",
        format: "General",
      },
      {
        label: "Weakest",
        formula: `=IF(COUNT(${column("Used")})=0,"",INDEX(${column("Id")},MATCH(MAX(${column("Used")}),${column("Used")},0)))`,
        note: "uses most of its rating",
        format: "General",
      },
      {
        label: "Left on the weakest",
        formula: `=IF(COUNT(${column("Used")})=0,"",INT((1-MAX(${column("Used")}))*100+0.000000001)/100)`,
        note: "share of its rating",
        format: "0%",
      },
    ],
    states: lines.map((line) => {
      const due = request.items.find((one) => one.item.row === line.row)?.item.nextDue;
      return line.decision === "REFUSED" || due == null
        ? null
        : `=IF(MAX(TODAY(),${INPUT.asOf})>=${String(due)},"DUE for inspection","${IN_USE}")`;
    }),
    rows: lines.map((line, index) => rowOf(line, ITEM_ROW + 1 + index, request)),
  };
}
function rowOf(line: HookupLine, row: number, request: LiftToWrite["request"]): readonly LiftCell[] {
  const item = request.items.find((one) => one.item.row === line.row)?.item;
  const tag = readLoad(item?.cells.get("ratedLoad"), request.ratedUnit ?? null);
  const at = (heading: LiftHeading): string => `$${letterOf(heading)}${String(row)}`;
  const sling = SLINGS.includes(line.gear);
  const cells: Record<LiftHeading, LiftCell> = {
    Id: line.id,
    Gear: line.gear,
    Place: PLACES[line.place],
    Decision: `=IF(AND(${at("State when read")}="${IN_USE}",ISNUMBER(${at("Used")})),IF(ROUND(${at("Used")},12)>1,"OVERLOADED","CARRIES"),"REFUSED")`,
    Used: `=IFERROR(${at("Needed")}/${at("Rated here")},"")`,
    Needed: `=IF(${at("Place")}="${PLACES.top}",${given(INPUT.load, `MAX(${INPUT.load},${TENSION})`)},IF(${at("Place")}="${PLACES.leg}",${sling ? TENSION : `IF(${INPUT.hitch}="basket",2,1)*${TENSION}`},NA()))`,
    "Rated here": `=${given(at("Tag"), `${at("Tag")}*${kilograms(at("Tag unit"))}/${kilograms(INPUT.unit)}*${at("Hitch share")}*${at("Heat share")}*${at("Side share")}`)}`,
    Left: `=${at("Rated here")}-${at("Needed")}`,
    "State when read": line.decision === "REFUSED" ? line.sentence : IN_USE,
    Tag: tag.kind === "value" ? toNumber(tag.value.value) : "",
    "Tag unit": tag.kind === "value" ? tag.value.unit : "",
    "Side load deg": onlyNumber(numberOf(request.sideAngles?.[line.id])),
    "Hitch share": `=${sling ? `IF(AND(${at("Place")}<>"${PLACES.top}",${INPUT.hitch}="choker"),${given(INPUT.choke, choked(line.gear))},1)` : "1"}`,
    "Heat share": `=IF(${INPUT.temperature}="",1,${heat(line.gear, item === undefined ? [] : gradesOf(item))})`,
    "Side share": `=IF(${at("Side load deg")}="",${SIDE_ASKED.includes(line.gear) ? "NA()" : "1"},IF(${at("Side load deg")}=0,1,${(line.gear === "eyebolt" && item !== undefined ? eyebolted(item, at("Side load deg")) : null) ?? `GEAR.SIDESHARE(${sideNamed(line.gear, item?.gearText ?? "", at("Gear"))},${at("Side load deg")})`}))`,
    "Rated load from": line.ratedFrom.split("; ")[0] ?? "",
  };
  return LIFT_HEADINGS.map((heading) => cells[heading]);
}
/** Share left by the choke, as the engine counts it: of chain by the stricter of two tables, of wire rope by its own, of the rest by the choker table. */
function choked(gear: string): string {
  const shares = (bands: typeof CHOKE): string =>
    bands.reduceRight(
      (beyond, { end, closed, share }) => `IF(${INPUT.choke}${closed ? "<=" : "<"}${end.toString()},${String(share)},${beyond})`,
      "NA()",
    );
  const byChoker = `${String(CHOKER_SHARE)}*${shares(CHOKE)}`;
  const share =
    gear === "chain sling" ? `MIN(${byChoker},${shares(CHAIN_CHOKE)})` : gear === "wire rope sling" ? shares(ROPE_CHOKE) : byChoker;
  const least = gear === "chain sling" ? CHAIN_CHOKE_LEAST.toString() : "0";
  return `IF(ISNUMBER(${INPUT.choke}),IF(${INPUT.choke}<${least},NA(),${share}),NA())`;
}
/** Share left of a shoulder eyebolt by its size, at the next printed angle, where its row gives a size that is listed. */
function eyebolted(item: ItemResult, angle: string): string | null {
  if (!hasShoulder(item.gearText)) return null;
  const row = eyeboltRow(sizeOf(item));
  if (row === undefined) return null;
  const beyond = row.at.reduceRight(
    (rest, { degrees, pounds }) =>
      `IF(${angle}<=${String(degrees)},${pounds === null ? "NA()" : `${String(pounds)}/${String(row.inLine)}`},${rest})`,
    "NA()",
  );
  return `IF(${angle}<0,NA(),IF(${angle}<=${EYEBOLT_IN_LINE.toString()},1,${beyond}))`;
}
/** The gear as the function for side loads is told it: only an eyebolt whose name says so has a shoulder. */
function sideNamed(gear: string, gearText: string, cell: string): string {
  return gear === "eyebolt" && hasShoulder(gearText) ? '"shoulder eyebolt"' : cell;
}
/** Share left by heat, as the engine counts it: alloy chain by its table, some hardware inside its range, the rest not known. */
function heat(gear: string, named: readonly string[]): string {
  if (gear === "chain sling") return hotChain(named);
  const range = SERVICE_TEMPERATURE[gear];
  if (range === undefined) return "NA()";
  const inside = ([least, most]: readonly [string, string]): string =>
    `IF(AND(${INPUT.temperature}>=${least},${INPUT.temperature}<=${most}),1,NA())`;
  return `IF(${INPUT.scale}="F",${inside(range.F)},IF(${INPUT.scale}="C",${inside(range.C)},NA()))`;
}
/** The grade that the row names is what counts; another that is typed, or two in the row, is no grade at all. */
function hotChain(named: readonly string[]): string {
  const share = (grade: string): string => given(INPUT.scale, `GEAR.HOTSHARE(${grade},${INPUT.temperature},${INPUT.scale})`);
  const [only, other] = named;
  if (only === undefined) return given(INPUT.grade, share(INPUT.grade));
  if (other !== undefined) return "NA()";
  const same = ["", only, only.replace(/0$/, "")].map((grade) => `${INPUT.grade}&""="${grade}"`).join(",");
  return `IF(OR(${same}),${share(only)},NA())`;
}
/** A typed figure as a number where it is one, so that formulas can use it; else the words as they stand. */
function numberOf(cell: unknown): LiftCell {
  if (typeof cell === "number") return cell;
  const text = typeof cell === "string" ? readText(cell).replace(/ ?(°|deg(rees)?)$/i, "") : "";
  return /^-?\d+(\.\d+)?$/.test(text) ? Number(text) : text;
}
const onlyNumber = (cell: LiftCell): LiftCell => (typeof cell === "number" ? cell : "");

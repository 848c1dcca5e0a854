/**
 * The worksheet functions. Each is a few lines over the engine; the text above it is what the formula wizard shows.
 * Ids and argument order are stored in people's workbooks and never change.
 */
import { dateOf, leadDaysOf } from "../engine/ask/arguments";
import {
  chainVerdict,
  grooveVerdict,
  ropeVerdict,
  swivelVerdict,
  throatVerdict,
  twistVerdict,
  wearVerdict,
  wireVerdict,
} from "../engine/ask/one-check";
import { chainLeast, changeShare, dressDepth, lengthIn, removeAt } from "../engine/ask/one-figure";
import { rowText } from "../engine/ask/judge-row";
import { monthsBetween } from "../engine/ask/one-interval";
import { decisionOfList } from "../engine/ask/one-list";
import { judgeRowOf, judgeRowsOf } from "../engine/ask/one-row";
import { reaches, wearRate } from "../engine/ask/one-trend";
import { sourceOf } from "../engine/ask/source-of";
import { isDecision, worstOf } from "../engine/decision";
import { dueState, nextDue } from "../engine/due/intervals";
import { figureStands } from "../engine/house/rules-in-force";
import { hotShare, legLoad, ratedAt, sideShare } from "../engine/lift/figures";
import { asGrid, type Grid } from "../engine/log/grid";
import { figure } from "./errors";

/**
 * Turns a length as the trade writes it, such as 1 7/8, 47.6 mm or 2' 1/2", into a number. Gives #N/A when the cell is blank and #VALUE! with the reason when it cannot be read.
 * @customfunction LENGTH LENGTH
 * @param value The cell with the length; text may carry its own unit.
 * @param unit Unit of a bare number: in or mm.
 * @param [to] Unit of the result: in or mm; the same as unit when left out.
 * @returns The length as a number.
 */
export function length(value: any, unit: any, to?: any): number {
  return figure(lengthIn(value, unit, to));
}
/**
 * Share of a section that has worn away: 0.08 means 8 % of the as-new size. Up to 2 % larger than new counts as no change.
 * @customfunction WEARPCT WEARPCT
 * @param original Size when new.
 * @param measured Size now, in the same unit, or each with its own unit in text.
 * @returns Share lost.
 */
export function wearPct(original: any, measured: any): number {
  return figure(changeShare(original, measured, "loss"));
}
/**
 * Share by which an opening or a length has grown: 0.05 means 5 % of the as-new size. Up to 2 % smaller than new counts as no change.
 * @customfunction GROWTHPCT GROWTHPCT
 * @param original Size when new.
 * @param measured Size now, in the same unit, or each with its own unit in text.
 * @returns Share gained.
 */
export function growthPct(original: any, measured: any): number {
  return figure(changeShare(original, measured, "growth"));
}
/**
 * Decision for wear of a section: REMOVE, EXAMINE, NO VERDICT, WATCH or KEEP. Missing or unreadable readings are NO VERDICT. Supports an inspection by a competent person; the maker's limits come first.
 * @customfunction WEARVERDICT WEARVERDICT
 * @param gear Kind of gear: hook, shackle, link, swivel, block.
 * @param part Part measured: on a hook saddle, eye, throat, shank, body or tip; on a shackle bow, pin or ear; on a link crown or side.
 * @param original Section when new.
 * @param measured Section now.
 * @param [original_across] Section at right angles when new, where wear runs in two directions.
 * @param [measured_across] Section at right angles now.
 * @param [gauge] Resolution of the gauge, in the readings' unit; EXAMINE when the limit lies inside its uncertainty.
 * @param [basis] Rule sets: law, standard, practice, strict, or several with commas; standard,practice when left out; or the range of the sheet House limits.
 * @returns Decision.
 */
export function wearVerdictOf(
  gear: any,
  part: any,
  original: any,
  measured: any,
  original_across?: any,
  measured_across?: any,
  gauge?: any,
  basis?: any[][],
): string {
  return wearVerdict({ gear, part, original, measured, originalAcross: original_across, measuredAcross: measured_across, gauge, basis });
}
/**
 * Decision for the throat opening of a hook. Under standard the hook comes out above 5 % growth, at most 1/4 in (6 mm); under law above 15 %; under strict at any measurable growth.
 * @customfunction THROATVERDICT THROATVERDICT
 * @param original Throat opening when new.
 * @param measured Throat opening now, at the same place.
 * @param unit Unit of bare numbers: in or mm. The cap of 1/4 in or 6 mm follows it.
 * @param [gauge] Resolution of the gauge, in the same unit.
 * @param [basis] Rule sets; standard,practice when left out; or the range of the sheet House limits.
 * @returns Decision.
 */
export function throatVerdictOf(original: any, measured: any, unit: any, gauge?: any, basis?: any[][]): string {
  return throatVerdict(original, measured, unit, gauge, basis);
}
/**
 * Decision for the twist of a hook out of its plane. Under standard any visible twist takes it out; under law and practice more than 10 degrees. Type 0 when no twist is visible; a blank is NO VERDICT.
 * @customfunction TWISTVERDICT TWISTVERDICT
 * @param degrees Twist in degrees.
 * @param [basis] Rule sets; standard,practice when left out; or the range of the sheet House limits.
 * @returns Decision.
 */
export function twistVerdictOf(degrees: any, basis?: any[][]): string {
  return twistVerdict(degrees, basis);
}
/**
 * Decision for the shoulder running clearance of a swivel: EXAMINE (strip down) above 1/8 in, since the figure is 1/8 to 3/16 in by size and the size is not known; above 3/16 in always. Common practice.
 * @customfunction SWIVELVERDICT SWIVELVERDICT
 * @param clearance Clearance at the shoulder.
 * @param unit Unit of a bare number: in or mm.
 * @param [basis] Rule sets; standard,practice when left out; or the range of the sheet House limits.
 * @returns Decision.
 */
export function swivelVerdictOf(clearance: any, unit: any, basis?: any[][]): string {
  return swivelVerdict(clearance, unit, basis);
}
/**
 * Decision for the thinnest point of a chain link, from the published tables and the 10 % of common practice. A size that is not in the table is NO VERDICT; a neighbouring row is never used.
 * @customfunction CHAINVERDICT CHAINVERDICT
 * @param size Nominal chain size: "3/8", 0.375, "10 mm". A bare fraction is inches.
 * @param measured Thickness at the thinnest point of the worst link.
 * @param unit Unit of bare numbers: in or mm.
 * @param [basis] Rule sets: law is the old table, standard the newer one; standard,practice when left out; or the range of the sheet House limits.
 * @returns Decision.
 */
export function chainVerdictOf(size: any, measured: any, unit: any, basis?: any[][]): string {
  return chainVerdict(size, measured, unit, basis);
}
/**
 * Least thickness of a chain link at any point, from the published table in force. Gives #N/A for a size that is not in the table.
 * @customfunction CHAINMIN CHAINMIN
 * @param size Nominal chain size: "3/8", 0.375, "10 mm". A bare fraction is inches.
 * @param unit Unit of a bare size and of the result: in or mm.
 * @param [basis] Rule sets: law is the old table, standard the newer one; standard,practice when left out; or the range of the sheet House limits.
 * @returns Least thickness in the unit.
 */
export function chainMin(size: any, unit: any, basis?: any[][]): number {
  figure(figureStands(basis, "chain sling", "least"));
  return figure(chainLeast(size, unit, basis));
}
/**
 * Decision for broken wires. Type 0 when none was found; a blank is NO VERDICT. On rotation resistant rope give the counts in 6 and in 30 rope diameters: it is judged as such rope, never as a sling.
 * @customfunction WIREVERDICT WIREVERDICT
 * @param construction strand laid, cable laid, braided under 8, braided 8 or more, running rope, rotation resistant or standing rope.
 * @param per_lay Broken wires in the worst lay (braid length on braided slings).
 * @param one_strand Broken wires in one strand of that lay.
 * @param [basis] Rule sets; standard,practice when left out; or the range of the sheet House limits.
 * @returns Decision.
 */
export function wireVerdictOf(construction: any, per_lay: any, one_strand: any, basis?: any[][]): string {
  return wireVerdict(construction, per_lay, one_strand, basis);
}
/**
 * The size at which a part comes out: the opening above which, or the thickness below which (or at which). The strictest of the rule sets in force.
 * @customfunction REMOVEAT REMOVEAT
 * @param gear Kind of gear: hook, shackle, link, swivel, block, chain sling.
 * @param part Part, such as saddle, eye, bow, pin, crown, link, or "throat opening" or "clearance".
 * @param original Size when new; for a chain sling its nominal size.
 * @param unit Unit of bare numbers and of the result: in or mm.
 * @param [basis] Rule sets; standard,practice when left out; or the range of the sheet House limits.
 * @returns Size in the unit.
 */
export function removeAtSize(gear: any, part: any, original: any, unit: any, basis?: any[][]): number {
  figure(figureStands(basis, gear));
  return figure(removeAt(gear, part, original, unit, basis));
}
/**
 * Depth that may still be ground off a nick or gouge, in the readings' unit; 0 when none. Grind lengthwise along the contour and measure again; a crack is never ground.
 * @customfunction DRESSLEFT DRESSLEFT
 * @param gear Kind of gear: hook, shackle, link, swivel, block.
 * @param part Part with the nick.
 * @param original Section when new.
 * @param measured Section now, beside the nick.
 * @param [basis] Rule sets; standard,practice when left out; or the range of the sheet House limits.
 * @returns Depth left.
 */
export function dressLeftDepth(gear: any, part: any, original: any, measured: any, basis?: any[][]): number {
  figure(figureStands(basis, gear, "loss"));
  return figure(dressDepth(gear, part, original, measured, basis));
}
/**
 * The item's decision from a whole row, read by its headings: every check that its kind of gear needs must be there before KEEP is possible. Guard blanks: =GEAR.VERDICT(A$1:T$1, IF(ISBLANK(A2:T2),"",A2:T2)).
 * @customfunction VERDICT VERDICT
 * @param headers The heading row of the log.
 * @param row The item's row, over the same columns.
 * @param [basis] Rule sets; standard,practice when left out; or the range of the sheet House limits.
 * @returns Decision.
 */
export function verdict(headers: any[][], row: any[][], basis?: any[][]): string {
  return judgeRowOf(asGrid(headers), asGrid(row), basis).decision;
}
/**
 * The sentence behind the decision of a row: readings, limit, unit and source, what is missing and what to type.
 * @customfunction REASON REASON
 * @param headers The heading row of the log.
 * @param row The item's row, over the same columns.
 * @param [basis] Rule sets; standard,practice when left out; or the range of the sheet House limits.
 * @returns Reason.
 */
export function reason(headers: any[][], row: any[][], basis?: any[][]): string {
  return judgeRowOf(asGrid(headers), asGrid(row), basis).reason;
}
/**
 * Judges many rows at once and spills a row for each: decision, reason, share of the allowance used, where it comes out, source. Parts of an assembly in which one part was found stretched are EXAMINE.
 * @customfunction JUDGE JUDGE
 * @param headers The heading row of the log.
 * @param rows The items' rows, over the same columns.
 * @param [basis] Rule sets; standard,practice when left out; or the range of the sheet House limits.
 * @returns Five columns for each row.
 */
export function judge(headers: any[][], rows: any[][], basis?: any[][]): any[][] {
  const spilled = judgeRowsOf<any[]>(asGrid(headers), asGrid(rows), basis, ({ decision, reason: why, share, comesOut, source: from }) => [
    decision,
    why,
    share === null ? "" : Number.isFinite(share) ? share : "over",
    comesOut,
    from,
  ]);
  return [...spilled];
}
/**
 * Everything of one row as one text, for a column that built-in formulas take apart: decision, short reason, share of the allowance in millionths, where it comes out, sign of overload, kind, tag, days, columns needed and missing, reason. Each part is closed by CHAR(127), which no typed text can hold.
 * @customfunction JUDGEROW JUDGEROW
 * @param headers The heading row of the log.
 * @param row The item's row, over the same columns.
 * @param [basis] Rule sets; standard,practice when left out; or the range of the sheet House limits.
 * @param [headers_2] Headings of a second block of columns, where results stand between the typed ones.
 * @param [row_2] The item's row, over that block.
 * @returns Head GEAR1, then the parts.
 */
export function judgeRow(headers: any[][], row: any[][], basis?: any[][], headers_2?: any[][], row_2?: any[][]): string {
  return rowText(asGrid(headers), asGrid(row), basis, given(headers_2), given(row_2));
}
/** A block that was left out arrives as null, or as nothing. */
function given(block: any[][] | null | undefined): Grid | null {
  return block === null || block === undefined ? null : asGrid(block);
}
/**
 * Decision of one item from a round sheet in long form, one line a check. A blank is missing, and so is a check that the gear needs and that has no line. A label that names no check of the gear is NO VERDICT. Guard blanks: IF(ISBLANK(H5:H10),"",H5:H10).
 * @customfunction JUDGELIST JUDGELIST
 * @param gear Kind of gear of the item.
 * @param checks What each line looks at or measures, such as Throat opening, Saddle section or Cracks; or a register heading such as Construction.
 * @param as_new Size when new on each line, with its unit; blank where there is none.
 * @param now Reading on each line; a bare size takes the unit of the size when new. A second column may hold what was seen, in words.
 * @param [basis] Rule sets; standard,practice when left out; or the range of the sheet House limits.
 * @returns Decision.
 */
export function judgeListOf(gear: any, checks: any[][], as_new: any[][], now: any[][], basis?: any[][]): string {
  return decisionOfList(gear, asGrid(checks), asGrid(as_new), asGrid(now), basis);
}
/**
 * The worst decision in a range, such as an assembly's. A blank cell or any other text counts as NO VERDICT, so give the cells of the parts only.
 * @customfunction WORST WORST
 * @param verdicts Cells with decisions.
 * @returns Decision.
 */
export function worst(verdicts: any[][]): string {
  return worstOf(
    asGrid(verdicts)
      .flat()
      .map((cell) => (isDecision(cell) ? cell : "NO VERDICT")),
  );
}
/**
 * Date of the next periodic inspection: calendar months after the last, as EDATE counts. The strictest interval in force for the kind and the service decides, that of a crane or hoist unless the name tells the use; an interval as written may only shorten it. Where no rule names one: normal 12 months, heavy 6, severe 3, idle 1.
 * @customfunction NEXTDUE NEXTDUE
 * @param gear Kind of gear.
 * @param service normal, severe, idle, monthly, quarterly, 6 monthly, yearly, or special with an interval.
 * @param last Date of the last periodic inspection.
 * @param [basis] Rule sets, such as "law,standard"; or the range of the sheet House limits.
 * @returns Date as the workbook's day number; format the cell as a date.
 */
export function nextDueDate(gear: any, service: any, last: any, basis?: any[][]): number {
  figure(figureStands(basis, gear));
  const months = figure(monthsBetween(gear, service, basis));
  return nextDue(figure(dateOf(last, "date of the last inspection")), months);
}
/**
 * OVERDUE, DUE SOON, CURRENT or NO DATE. Due on the day itself or within the lead days is DUE SOON.
 * @customfunction DUESTATE DUESTATE
 * @param next_due Date of the next inspection.
 * @param as_of The day to judge by, such as TODAY().
 * @param [lead_days] Days ahead that count as due soon; 30 when left out.
 * @returns State.
 */
export function dueStateOf(next_due: any, as_of: any, lead_days?: any): string {
  const due = dateOf(next_due, "next due date");
  const asOf = dateOf(as_of, "day to judge by");
  if (!due.ok || !asOf.ok) return "NO DATE";
  return dueState(due.value, asOf.value, figure(leadDaysOf(lead_days)));
}
/**
 * Document, clause, edition and status behind a criterion, such as hook.throat-opening.standard; the beginning of an id lists all that fit.
 * @customfunction SOURCE SOURCE
 * @param criterion Id of the criterion.
 * @returns Source.
 */
export function source(criterion: any): string {
  return figure(sourceOf(criterion));
}
/**
 * Decision for the diameter loss of a rope in use on a crane, hoist or winch: more than 5 % below nominal takes it out.
 * @customfunction ROPEVERDICT ROPEVERDICT
 * @param nominal Nominal rope diameter: "1/2", 0.5, "13 mm". A bare fraction is inches.
 * @param measured Diameter over the strands at the thinnest place.
 * @param unit Unit of bare numbers: in or mm.
 * @param [basis] Rule sets; standard,practice when left out; or the range of the sheet House limits.
 * @returns Decision.
 */
export function ropeVerdictOf(nominal: any, measured: any, unit: any, basis?: any[][]): string {
  return ropeVerdict(nominal, measured, unit, basis);
}
/**
 * Decision for a sheave groove against its rope: REMOVE when worn narrower than the rope and half of its allowed oversize, EXAMINE when wider than 1.10 times the rope.
 * @customfunction GROOVEVERDICT GROOVEVERDICT
 * @param rope Nominal rope diameter. A bare fraction is inches.
 * @param groove Groove diameter by gauge.
 * @param unit Unit of bare numbers: in or mm.
 * @param [basis] Rule sets; standard,practice when left out; or the range of the sheet House limits.
 * @returns Decision.
 */
export function grooveVerdictOf(rope: any, groove: any, unit: any, basis?: any[][]): string {
  return grooveVerdict(rope, groove, unit, basis);
}
/**
 * Change of a reading per year (365.25 days) by the straight line of least squares; negative when metal is lost. Gives #N/A with fewer than two days. Blank readings are passed over, and a number 0 counts as blank.
 * @customfunction WEARRATE WEARRATE
 * @param dates Dates of the readings.
 * @param readings Readings over the same rows: bare numbers in one unit, or each with its own; the result is in the unit that they carry, in inches where both occur.
 * @returns Change per year.
 */
export function wearRateOf(dates: any[][], readings: any[][]): number {
  return figure(wearRate(asGrid(dates), asGrid(readings)));
}
/**
 * First date on which the trend of the readings can reach a limit: where the band in which the next reading is expected meets it. With two readings there is no band, only the line. Gives #N/A when it is never reached, and the last reading's date when it can be reached already.
 * @customfunction REACHES REACHES
 * @param dates Dates of the readings.
 * @param readings Readings of one part since it was new, over the same rows.
 * @param limit Size at which it comes out, such as from GEAR.REMOVEAT.
 * @param [confidence] Share of next readings that the band holds; 0.95 when left out.
 * @returns Date as the workbook's day number; format the cell as a date.
 */
export function reachesDate(dates: any[][], readings: any[][], limit: any, confidence?: any): number {
  return figure(reaches(asGrid(dates), asGrid(readings), limit, confidence));
}
/**
 * Tension in one leg of a sling, in the load's unit. Three or four legs count as three; a Navy handbook (bridle hitch) strongly recommends the rating of a two-leg sling for them: type 2. Refuses legs flatter than 30 degrees from horizontal.
 * @customfunction LEGLOAD LEGLOAD
 * @param load Weight of the load.
 * @param legs Number of legs: 1 to 4.
 * @param angle Angle of the legs in degrees.
 * @param [angle_from] horizontal (when left out), vertical, or included (between the legs of a two-leg sling; refused for three and four).
 * @returns Tension.
 */
export function legLoadOf(load: any, legs: any, angle: any, angle_from?: any): number {
  return figure(legLoad(load, legs, angle, angle_from));
}
/**
 * Rated load of slings in a hitch, from the vertical rating of one sling. At the choke the strictest of the tables for chain, wire rope and other slings counts. An estimate: the sling's own tag or the maker's table comes first.
 * @customfunction RATEDAT RATEDAT
 * @param wll Working load limit of one sling hanging vertically.
 * @param hitch vertical, choker or basket.
 * @param legs Number of slings or legs: 1 to 4; three or four count as three, though a Navy handbook (bridle hitch) strongly recommends to count 2.
 * @param angle Angle in degrees; may be empty text for one vertical or choker leg. 0 is no blank.
 * @param [angle_from] horizontal (when left out), vertical, or included (between the legs of a two-leg sling; refused for three and four).
 * @param [choke_angle] Angle at the choke in degrees; more than 120 when left out. Below 30, and 0, refused.
 * @returns Rated load.
 */
export function ratedAtOf(wll: any, hitch: any, legs: any, angle: any, angle_from?: any, choke_angle?: any): number {
  return figure(ratedAt(wll, hitch, legs, angle, angle_from, choke_angle));
}
/**
 * Share of the working load limit left for alloy chain while hot, or for good afterwards. Between two rows of the table the hotter row counts; above 1000 F (538 C) nothing is left.
 * @customfunction HOTSHARE HOTSHARE
 * @param grade Chain grade: 80 or 100.
 * @param temperature Temperature of the chain.
 * @param unit F or C.
 * @param [state] hot (when left out) or after.
 * @returns Share, 0.9 for 90 %.
 */
export function hotShareOf(grade: any, temperature: any, unit: any, state?: any): number {
  return figure(hotShare(grade, temperature, unit, state));
}
/**
 * Share of the working load limit left at a side-load angle: for shackles out of their plane, for shoulder eyebolts from their axis; other eyebolts are refused out of line. The next worse row counts; the size of an eyebolt is not known here, so the least share of any listed size does.
 * @customfunction SIDESHARE SIDESHARE
 * @param gear shackle or shoulder eyebolt.
 * @param angle Angle in degrees.
 * @returns Share, 0.7 for 70 %.
 */
export function sideShareOf(gear: any, angle: any): number {
  return figure(sideShare(gear, angle));
}

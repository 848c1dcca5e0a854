/** What a person typed into a cell becomes a reading, or a reason why not. The only place that reads cells. */
import { showDate } from "../numbers/calendar";
import { exact, type Exact, fromCell, shown } from "../numbers/exact";
import { namedUnit, type Unit } from "../numbers/lengths";
import type { CellValue } from "./cell-value";
import { type Figure, LARGEST, readFigure } from "./number";
import { missing, type Read, refused } from "./read";
import { DOUBT, ERROR_TEXT, isDateCell, NOT_MEASURED, partsOf, tidy } from "./text";

export interface Length {
  readonly size: Exact;
  readonly unit: Unit;
}
/** Words of judgement, which are no measurement. */
const JUDGEMENT = /^(ok|okay|good|fine|fair|bad|worn|pass|passed|fail|failed|yes|no|y|n|x|✓|✔|see (note|remarks?))\b/i;
export interface LengthOptions {
  /** Unit of a bare number; null when nothing tells it. */
  readonly assume: Unit | null;
  /** What a bare number is multiplied with to be in that unit: 10 where centimetres are assumed. */
  readonly times?: Exact;
  /** True where the workbook's locale writes a decimal comma, false where it writes a decimal point; undefined when unknown. */
  readonly decimalComma?: boolean;
  /** True where 0 can be a real reading (a clearance, a nick). */
  readonly zero?: boolean;
}
/**
 * Whole numbers that are days from 1930 to 2059: a size that the spreadsheet turned into a date. 3/4 becomes a day of
 * this year, but 3/32 the first of March 1932 and 5/64 the first of May 1964. No gear measures 10 m.
 */
const isDaySerial = (value: number): boolean => Number.isInteger(value) && value >= 10959 && value <= 58440;
const becameDate = (serial: number): string =>
  `this cell is a date (${showDate(serial)}); type a fraction as 0 3/4, or format the column as text first`;
const SHOWN_DATE = "it looks like a date; type a fraction as 0 3/4, or format the column as text first";
/** The rest of a size that became a date and was copied as text: 4-Mar, 04 March. */
const MONTH = /^[ -]*(jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)[a-z]*\b/i;
/** Units that stand behind other figures of a log. */
const OTHER_UNIT = /^(kgs?|g|lbs?|t|te|tons?|tonnes?|kn|n|deg|degrees?|thou|mils?|yds?|yards?|km|dm|ga|swg|pts?|pcs?|psi|off)$/i;
/** Where on the item a size was taken. */
const PLACE =
  "(?:(?:at|on|near|across|over) )?(?:the )?(?:(?:left|right|upper|lower|inner|outer|middle) )?(?:saddle|bowl|base|bite|throat|mouth|tip|eye|shank|neck|back|body|bow|crown|pin|bolt|ears?|jaw|side|end|link|bail|shell|cheek|side plate|sheave|groove|flange|hub|rim|frame|tooth|pad|socket|handle|thinnest(?: (?:point|place|spot|link))?)";
/** What may stand behind a figure without changing it: that it was measured, with what and where. Anything else may condemn the item. */
const HARMLESS_NOTE = new RegExp(
  `^(?:ok|okay|good|checked|measured|verified|today|dia(?:m|meter)?|thick|wide|deep|see (?:the )?(?:note|remark)s?|(?:(?:measured|checked|taken) )?(?:${PLACE}|(?:(?:by|with) (?:a |the )?)?(?:vernier|calipers?|micrometer)|(?:by|with) (?:a |the )?(?:gauge|tape|rule)))$`,
  "i",
);
const NO_UNIT = `it has no unit; name in or mm in the heading, in a Unit column or behind the number`;
/** A length as the trade writes it. */
export function readLength(cell: CellValue, options: LengthOptions): Read<Length> {
  if (cell === null || cell === undefined || cell === "") return missing();
  if (isDateCell(cell)) return refused(showDate(cell.serial), becameDate(cell.serial));
  if (typeof cell === "boolean") return refused(cell ? "TRUE" : "FALSE", "it is a yes or no, not a measurement; type what the gauge reads");
  if (typeof cell === "number") return lengthOfNumber(cell, options);
  return lengthOfText(cell, options);
}
function lengthOfNumber(cell: number, options: LengthOptions): Read<Length> {
  if (!Number.isFinite(cell) || Math.abs(cell) > LARGEST) return refused(String(cell), "it is not a number");
  if (cell === 0 && options.zero !== true) return missing();
  if (cell < 0) return refused(shown(cell), "a size cannot be negative; type what the gauge reads");
  if (isDaySerial(cell)) return refused(shown(cell), becameDate(cell));
  if (options.assume === null) return refused(shown(cell), NO_UNIT);
  const size = options.times === undefined ? fromCell(cell) : fromCell(cell).mul(options.times);
  // Too small to be shown, so no gauge read it.
  if (size.equals(0) && options.zero !== true) return missing(shown(cell));
  return { kind: "value", value: { size, unit: options.assume }, text: shown(cell) };
}
function lengthOfText(cell: string, options: LengthOptions): Read<Length> {
  const text = tidy(cell);
  if (text === "") return missing();
  if (ERROR_TEXT.test(text)) return refused(text, "the cell shows an error; put the reading there");
  if (options.zero === true && /^(nil|none|no)$/i.test(text))
    return { kind: "value", value: { size: exact(0), unit: options.assume ?? "mm" }, text };
  if (NOT_MEASURED.test(text)) return missing(text);
  if (DOUBT.test(text)) return refused(text, "it is marked as doubtful; type the reading of the gauge");
  if (text.startsWith("-")) return refused(text, "a size cannot be negative; type what the gauge reads");
  if (JUDGEMENT.test(text)) return refused(text, "it is a judgement, not a measurement; type what the gauge reads");

  const feet = /^(\d+(?:\.\d+)?) ?(?:'(?!')|ft\.?|feet|foot)(?![a-z])[ -]*(.*)$/i.exec(text);
  if (feet) {
    const [, whole = "", inches = ""] = feet;
    const start = exact(whole).mul(12);
    if (inches === "") return { kind: "value", value: { size: start, unit: "in" }, text };
    const rest = lengthOfText(inches, {
      assume: "in",
      ...(options.decimalComma === undefined ? {} : { decimalComma: options.decimalComma }),
      // Six feet and no inches are six feet.
      zero: true,
    });
    if (rest.kind !== "value" || rest.value.unit !== "in") return refused(text, "the inches after the feet cannot be read");
    return { kind: "value", value: { size: start.add(rest.value.size), unit: "in" }, text };
  }

  if (/^\d{5}$/.test(text) && isDaySerial(Number(text))) return refused(text, becameDate(Number(text)));
  const figure = readFigure(text, options.decimalComma);
  if (figure === null) return refused(text, "it is not a measurement; type what the gauge reads");
  if ("why" in figure) return refused(text, figure.why);
  return lengthWithRest(text, figure, options);
}
/** What may follow the figure: a unit, then a note without figures. */
function lengthWithRest(text: string, figure: Figure, options: LengthOptions): Read<Length> {
  const behind = /^ ?("|''|'|[a-z]+\.?)?(.*)$/i.exec(figure.rest);
  const word = behind?.[1] ?? "";
  const named = word === "" ? null : namedUnit(word);
  if (!named && MONTH.test(figure.rest)) return refused(text, SHOWN_DATE);
  if (!named && (/^[a-z]/i.test(figure.rest) || OTHER_UNIT.test(word)))
    return refused(text, `"${word}" is no unit of length that is read here; type in or mm`);
  const note = (named ? (behind?.[2] ?? "") : figure.rest).replace(/^[\s,;:(-]+|[\s)]+$/g, "").trim();
  if (/\d/.test(note) || /[/*×]/.test(figure.rest.replace(note, "")))
    return refused(text, "more than one figure stands there; type one reading");
  if (note !== "" && !/^[a-z(]/i.test(note)) return refused(text, "what follows the number cannot be read");
  if (/^x\b/i.test(note)) return refused(text, "more than one figure stands there; type one reading");
  if (!partsOf(note).every((part) => HARMLESS_NOTE.test(part)))
    return refused(
      text,
      `"${note}" beside it leaves the reading in doubt; type the reading alone and the rest under Remarks or its own heading`,
    );
  const unit = named?.unit ?? options.assume;
  if (unit === null) return refused(text, NO_UNIT);
  if (!named && unit === "mm" && figure.fraction)
    return refused(text, "it is a fraction, and figures without a unit are mm here; type in behind it, or give it in mm");
  const size = figure.value.mul(named?.times ?? options.times ?? 1);
  if (size.equals(0) && options.zero !== true) return missing(text);
  const reading = { kind: "value" as const, value: { size, unit }, text };
  return note === "" ? reading : { ...reading, note: `"${note}" stands beside the reading` };
}

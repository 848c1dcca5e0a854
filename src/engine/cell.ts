/** What a person typed into a cell becomes a reading, or a reason why not. The only place that reads cells. */
import { exact, fromCell, type Exact } from "./exact";
import type { CellValue, DateCell } from "./model";
import { namedUnit, type Unit } from "./units";
import { readDateText, showDate } from "./dates";

/** A reading; or nothing was measured; or something stands there that is no reading. */
export type Read<T> =
  | { readonly kind: "value"; readonly value: T; readonly text: string; readonly note?: string }
  | { readonly kind: "missing"; readonly text: string }
  | { readonly kind: "refused"; readonly text: string; readonly why: string };

export interface Length {
  readonly size: Exact;
  readonly unit: Unit;
}

export const missing = (text = ""): Read<never> => ({ kind: "missing", text });
export const refused = (text: string, why: string): Read<never> => ({ kind: "refused", text, why });

export function isDateCell(value: CellValue): value is DateCell {
  return typeof value === "object" && value !== null;
}

/** Words that say that nothing is recorded at all. */
const NOT_RECORDED = /^(n\/?a|n\.a\.?|na|nil|none|not (applicable|recorded)|-+|—|–)$/i;
/** Words that mean that nothing was measured. */
const NOT_MEASURED = /^(n\/?a|n\.a\.?|na|nil|none|not (applicable|measured|taken|done|checked)|tbd|tba|-+|\.+|—|–|\/)$/i;
/** Words of judgement, which are no measurement. */
const JUDGEMENT = /^(ok|okay|good|fine|fair|bad|worn|pass|passed|fail|failed|yes|no|y|n|x|✓|✔|see (note|remarks?))\b/i;
export const DOUBT = /\?|\b(approx|about|abt|around|circa|ca|est|estimated?|maybe|roughly|say|or so|guess(ed|ing)?|unsure|not sure|unclear|tbc)\b|[~≈<>≤≥±]/i;
/** Words that take back what stands beside them. "Non-rotating" is a name. */
export const DENIED = /\b(not|no|nor|never|neither|without|unknown|n\/a|non(?![- ]?rotat\w*))\b|n't\b/i;
const VULGAR: Record<string, string> = {
  "¼": "1/4", "½": "1/2", "¾": "3/4", "⅐": "1/7", "⅑": "1/9", "⅒": "1/10", "⅓": "1/3", "⅔": "2/3", "⅕": "1/5", "⅖": "2/5",
  "⅗": "3/5", "⅘": "4/5", "⅙": "1/6", "⅚": "5/6", "⅛": "1/8", "⅜": "3/8", "⅝": "5/8", "⅞": "7/8",
};

/** One spelling for spaces, digits, fractions, dashes and quotes. */
export function tidy(text: string): string {
  return text
    .replace(/[¼½¾⅐-⅞]/g, (sign) => ` ${VULGAR[sign] ?? sign}`)
    // Raised digits are a fraction's top or a footnote, never further digits of the number before them.
    .replace(/[⁰¹²³⁴-⁹]+/g, (digits) => ` ${digits}`)
    .normalize("NFKC")
    .replace(/[\u2044\u2215]/g, "/")
    .replace(/[\u2010-\u2015\u2212]/g, "-")
    .replace(/[\u201c\u201d\u2033\u3003]/g, '"')
    .replace(/[\u2018\u2019\u2032]/g, "'")
    .replace(/\u200b|\ufeff/g, "")
    .replace(/\s+/g, " ")
    .trim();
}

export const ERROR_TEXT = /^#(REF!|N\/A|NAME\?|VALUE!|DIV\/0!|NUM!|NULL!|SPILL!|CALC!|BUSY!|GETTING_DATA)/i;

interface Figure {
  readonly value: Exact;
  readonly rest: string;
  /** Written as a fraction, as inches are and millimetres are not. */
  readonly fraction?: true;
}

/** 0/12 is two counts in one cell, or a slip; it measures nothing. */
const NO_TOP = "a fraction of 0 is no reading; type the one figure that was read";

/** Comma in a figure: decimal sign, thousands sign, or one of the two. */
function plainDecimal(text: string, decimalComma: boolean | undefined): string | { readonly why: string } {
  const commas = text.split(",").length - 1;
  const points = text.split(".").length - 1;
  if (commas === 0) {
    if (points > 1) return { why: "it has more than one decimal point" };
    if (decimalComma === true && /^[1-9]\d{0,2}\.\d{3}$/.test(text)) return { why: `it could be ${text.replace(".", "")} or ${text.replace(".", ",")}` };
    return text;
  }
  if (points === 0 && commas === 1) {
    const [whole = "", part = ""] = text.split(",");
    if (part.length === 3 && /^[1-9]\d{0,2}$/.test(whole)) {
      if (decimalComma === true) return `${whole}.${part}`;
      if (decimalComma === false) return whole + part;
      return { why: `it could be ${whole}.${part} or ${whole}${part}; type it without the comma` };
    }
    return `${whole}.${part}`;
  }
  if (/^\d{1,3}(,\d{3})+(\.\d+)?$/.test(text)) return text.replace(/,/g, "");
  if (/^\d{1,3}(\.\d{3})+,\d+$/.test(text)) return text.replace(/\./g, "").replace(",", ".");
  return { why: "its commas and points do not make one number" };
}

/** Reads a figure at the start of a text: decimal, fraction or whole number with fraction. */
function readFigure(text: string, decimalComma: boolean | undefined): Figure | { readonly why: string } | null {
  const mixed = /^(\d+)(?: ?- ?| )(\d+) ?\/ ?(\d+)(?![\d/.,])/.exec(text);
  if (mixed) {
    const [all, whole = "", top = "", bottom = ""] = mixed;
    if (Number(bottom) === 0) return { why: "it divides by zero" };
    if (Number(top) === 0) return { why: NO_TOP };
    if (Number(top) >= Number(bottom)) return { why: `${top}/${bottom} is not a proper fraction` };
    return { value: exact(whole).add(exact(`${top}/${bottom}`)), rest: text.slice(all.length), fraction: true };
  }
  const fraction = /^(\d+) ?\/ ?(\d+)(?![\d/.,])/.exec(text);
  if (fraction) {
    const [all, top = "", bottom = ""] = fraction;
    if (Number(bottom) === 0) return { why: "it divides by zero" };
    if (Number(top) === 0) return { why: NO_TOP };
    // 17/8 is what 1 7/8 becomes when its space is lost; nobody in the trade means 2 1/8 by it.
    if (Number(top) >= Number(bottom)) return { why: `${top}/${bottom} is not a proper fraction; a whole number and a fraction have a space between them, as in 1 7/8` };
    return { value: exact(`${top}/${bottom}`), rest: text.slice(all.length), fraction: true };
  }
  const decimal = /^(?:\d[\d.,]*\d|\d[.,]?|[.,]\d+)(?![\d/])/.exec(text);
  if (!decimal) return null;
  const plain = plainDecimal(decimal[0].replace(/[.,]$/, ""), decimalComma);
  if (typeof plain !== "string") return plain;
  return { value: exact(plain.startsWith(".") ? `0${plain}` : plain), rest: text.slice(decimal[0].length) };
}

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

/** Parts of what was typed, as a clerk sets them off: by comma, semicolon, colon, brackets or a dash. */
export const partsOf = (text: string): string[] => text.split(/\s*[;,:()]\s*|\s+-\s+/).map((part) => part.replace(/\.$/, "")).filter((part) => part !== "");

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
  if (typeof cell === "boolean") return refused(cell ? "TRUE" : "FALSE", "it is a yes or no, not a measurement");
  if (typeof cell === "number") return lengthOfNumber(cell, options);
  return lengthOfText(cell, options);
}

function lengthOfNumber(cell: number, options: LengthOptions): Read<Length> {
  if (!Number.isFinite(cell)) return refused(String(cell), "it is not a number");
  if (cell === 0 && options.zero !== true) return missing();
  const text = String(Number(cell.toPrecision(15)));
  if (cell < 0) return refused(text, "a size cannot be negative");
  if (isDaySerial(cell)) return refused(text, becameDate(cell));
  if (options.assume === null) return refused(text, NO_UNIT);
  const size = fromCell(cell).mul(options.times ?? 1);
  // Too small to be shown, so no gauge read it.
  if (size.equals(0) && options.zero !== true) return missing(text);
  return { kind: "value", value: { size, unit: options.assume }, text };
}

function lengthOfText(cell: string, options: LengthOptions): Read<Length> {
  const text = tidy(cell);
  if (text === "") return missing();
  if (ERROR_TEXT.test(text)) return refused(text, "the cell shows an error; put the reading there");
  if (options.zero === true && /^(nil|none|no)$/i.test(text)) return { kind: "value", value: { size: exact(0), unit: options.assume ?? "mm" }, text };
  if (NOT_MEASURED.test(text)) return missing(text);
  if (DOUBT.test(text)) return refused(text, "it is marked as doubtful; type the reading of the gauge");
  if (text.startsWith("-")) return refused(text, "a size cannot be negative");
  if (JUDGEMENT.test(text)) return refused(text, "it is a judgement, not a measurement; type what the gauge reads");

  const feet = /^(\d+(?:\.\d+)?) ?(?:'(?!')|ft\.?|feet|foot)(?![a-z])[ -]*(.*)$/i.exec(text);
  if (feet) {
    const [, whole = "", inches = ""] = feet;
    const start = exact(whole).mul(12);
    if (inches === "") return { kind: "value", value: { size: start, unit: "in" }, text };
    const rest = lengthOfText(inches, { assume: "in", ...(options.decimalComma === undefined ? {} : { decimalComma: options.decimalComma }), ...(options.zero === undefined ? {} : { zero: options.zero }) });
    if (rest.kind !== "value" || rest.value.unit !== "in") return refused(text, "the inches after the feet cannot be read");
    return { kind: "value", value: { size: start.add(rest.value.size), unit: "in" }, text };
  }

  if (/^\d{5}$/.test(text) && isDaySerial(Number(text))) return refused(text, becameDate(Number(text)));
  const figure = readFigure(text, options.decimalComma);
  if (figure === null) return refused(text, "it is not a measurement");
  if ("why" in figure) return refused(text, figure.why);
  return lengthWithRest(text, figure, options);
}

/** What may follow the figure: a unit, then a note without figures. */
function lengthWithRest(text: string, figure: Figure, options: LengthOptions): Read<Length> {
  const behind = /^ ?("|''|'|[a-z]+\.?)?(.*)$/i.exec(figure.rest);
  const word = behind?.[1] ?? "";
  const named = word === "" ? null : namedUnit(word);
  if (!named && MONTH.test(figure.rest)) return refused(text, SHOWN_DATE);
  if (!named && (/^[a-z]/i.test(figure.rest) || OTHER_UNIT.test(word))) return refused(text, `"${word}" is no unit of length that is read here; type in or mm`);
  const note = (named ? (behind?.[2] ?? "") : figure.rest).replace(/^[\s,;:(-]+|[\s)]+$/g, "").trim();
  if (/\d/.test(note) || /[/*×]/.test(figure.rest.replace(note, ""))) return refused(text, "more than one figure stands there; type one reading");
  if (note !== "" && !/^[a-z(]/i.test(note)) return refused(text, "what follows the number cannot be read");
  if (/^x\b/i.test(note)) return refused(text, "more than one figure stands there; type one reading");
  if (!partsOf(note).every((part) => HARMLESS_NOTE.test(part))) return refused(text, `"${note}" beside it leaves the reading in doubt; type the reading alone and the rest under Remarks or its own heading`);
  const unit = named?.unit ?? options.assume;
  if (unit === null) return refused(text, NO_UNIT);
  if (!named && unit === "mm" && figure.fraction) return refused(text, "it is a fraction, and figures without a unit are mm here; type in behind it, or give it in mm");
  const size = figure.value.mul(named?.times ?? options.times ?? 1);
  if (size.equals(0) && options.zero !== true) return missing(text);
  const reading = { kind: "value" as const, value: { size, unit }, text };
  return note === "" ? reading : { ...reading, note: `"${note}" stands beside the reading` };
}

/** A count of broken wires or the like: a whole number from 0. */
export function readCount(cell: CellValue): Read<Exact> {
  const plain = readPlain(cell);
  if (plain.kind !== "value") return plain;
  if (!plain.value.mod(1).equals(0)) return refused(plain.text, "a count is a whole number");
  return plain;
}

/** An angle in degrees from 0. */
export function readDegrees(cell: CellValue): Read<Exact> {
  if (typeof cell === "string") {
    // The ordinal sign and the ring are what some keyboards have for the degree sign.
    const text = tidy(cell.replace(/[º˚]/g, "°")).replace(/ ?(°|deg\.?|degrees?)$/i, "");
    const plain = readPlain(text);
    return plain.kind === "value" && plain.value.compare(180) > 0 ? refused(text, "a twist cannot be more than 180 degrees") : plain;
  }
  const plain = readPlain(cell);
  return plain.kind === "value" && plain.value.compare(180) > 0 ? refused(plain.text, "a twist cannot be more than 180 degrees") : plain;
}

/** A plain number from 0, without a unit. */
export function readPlain(cell: CellValue): Read<Exact> {
  if (cell === null || cell === undefined || cell === "") return missing();
  if (isDateCell(cell)) return refused(showDate(cell.serial), `this cell is a date (${showDate(cell.serial)}); type the number, or format the column as text first`);
  if (typeof cell === "boolean") return refused(cell ? "TRUE" : "FALSE", "it is a yes or no; type a number");
  if (typeof cell === "number") {
    const text = String(Number(cell.toPrecision(15)));
    if (!Number.isFinite(cell)) return refused(text, "it is not a number");
    if (cell < 0) return refused(text, "it cannot be negative");
    return { kind: "value", value: fromCell(cell), text };
  }
  const text = tidy(cell);
  if (text === "") return missing();
  if (ERROR_TEXT.test(text)) return refused(text, "the cell shows an error; put the reading there");
  if (/^(nil|none|zero|no)$/i.test(text)) return { kind: "value", value: exact(0), text };
  if (NOT_MEASURED.test(text)) return missing(text);
  if (DOUBT.test(text)) return refused(text, "it is marked as doubtful; type the number");
  if (text.startsWith("-")) return refused(text, "it cannot be negative");
  const figure = readFigure(text, undefined);
  if (figure === null) return refused(text, "it is not a number");
  if ("why" in figure) return refused(text, figure.why);
  if (figure.fraction) return refused(text, "more than one figure stands there; type one number, without a fraction");
  if (figure.rest.trim() !== "") return refused(text, "more than a number stands there");
  return { kind: "value", value: figure.value, text };
}

/** Text of a cell, trimmed; "" when blank. A zero in a text column is a blank cell on some hosts. */
export function readText(cell: CellValue): string {
  if (cell === null || cell === undefined || cell === 0) return "";
  if (isDateCell(cell)) return showDate(cell.serial);
  if (typeof cell === "boolean") return cell ? "TRUE" : "FALSE";
  return typeof cell === "number" ? String(Number(cell.toPrecision(15))) : tidy(cell);
}

/** Text of a cell; "" as well where its words say that nothing is recorded, such as n/a. */
export function recordedText(cell: CellValue): string {
  const text = readText(cell);
  return NOT_RECORDED.test(text) ? "" : text;
}

/** A date as a serial day. */
export function readDate(cell: CellValue): Read<number> {
  if (cell === null || cell === undefined || cell === "" || cell === 0) return missing();
  if (typeof cell === "boolean") return refused(cell ? "TRUE" : "FALSE", "it is not a date");
  if (isDateCell(cell) || typeof cell === "number") {
    const serial = Math.floor(isDateCell(cell) ? cell.serial : cell);
    if (!(serial >= 61 && serial <= 2958465)) return refused(String(serial), "it is not a date");
    if (serial >= 1900 && serial <= 2100) return refused(String(serial), "it looks like a year without day and month; write it as 2026-03-31");
    return { kind: "value", value: serial, text: showDate(serial) };
  }
  const text = tidy(cell);
  if (text === "" || NOT_MEASURED.test(text)) return missing(text);
  const date = readDateText(text);
  return typeof date === "number" ? { kind: "value", value: date, text: showDate(date) } : refused(text, date.why);
}

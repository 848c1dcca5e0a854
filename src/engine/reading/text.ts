import { showDate } from "../numbers/calendar";
import type { CellValue, DateCell } from "./cell-value";

export function isDateCell(value: CellValue): value is DateCell {
  return typeof value === "object" && value !== null;
}
/** Words that say that nothing is recorded at all. */
const NOT_RECORDED = /^(n\/?a|n\.a\.?|na|nil|none|not (applicable|recorded)|-+|—|–)$/i;
/** Words that mean that nothing was measured. */
export const NOT_MEASURED = /^(n\/?a|n\.a\.?|na|nil|none|not (applicable|measured|taken|done|checked)|tbd|tba|-+|\.+|—|–|\/)$/i;
export const DOUBT =
  /\?|\b(approx|about|abt|around|circa|ca|est|estimated?|maybe|roughly|say|or so|guess(ed|ing)?|unsure|not sure|unclear|tbc)\b|[~≈<>≤≥±]/i;
/** Words that take back what stands beside them. "Non-rotating" is a name. */
export const DENIED = /\b(not|no|nor|never|neither|without|unknown|n\/a|non(?![- ]?rotat\w*))\b|n't\b/i;
const VULGAR: Record<string, string> = {
  "¼": "1/4",
  "½": "1/2",
  "¾": "3/4",
  "⅐": "1/7",
  "⅑": "1/9",
  "⅒": "1/10",
  "⅓": "1/3",
  "⅔": "2/3",
  "⅕": "1/5",
  "⅖": "2/5",
  "⅗": "3/5",
  "⅘": "4/5",
  "⅙": "1/6",
  "⅚": "5/6",
  "⅛": "1/8",
  "⅜": "3/8",
  "⅝": "5/8",
  "⅞": "7/8",
};
/** Letters, digits and signs of ASCII with single spaces between them: nothing of it is spelled otherwise. */
const PLAIN = /^[!-~]+(?: [!-~]+)*$/;
/** One spelling for spaces, digits, fractions, dashes and quotes. */
export function tidy(text: string): string {
  if (PLAIN.test(text)) return text;
  return (
    text
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
      .trim()
  );
}
export const ERROR_TEXT = /^#(REF!|N\/A|NAME\?|VALUE!|DIV\/0!|NUM!|NULL!|SPILL!|CALC!|BUSY!|GETTING_DATA)/i;
/** Parts of what was typed, as a clerk sets them off: by comma, semicolon, colon, brackets or a dash. */
export const partsOf = (text: string): string[] =>
  text
    .split(/\s*[;,:()]\s*|\s+-\s+/)
    .map((part) => part.replace(/\.$/, ""))
    .filter((part) => part !== "");
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

import { showDate } from "../numbers/calendar";
import { exact, type Exact, fromCell } from "../numbers/exact";
import type { CellValue } from "./cell-value";
import { missing, type Read, refused } from "./read";
import { DOUBT, ERROR_TEXT, isDateCell, NOT_MEASURED, tidy } from "./text";

export interface Figure {
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
    if (points > 1) return { why: "it has more than one decimal point; type the figure that was read" };
    if (decimalComma === true && /^[1-9]\d{0,2}\.\d{3}$/.test(text))
      return { why: `it could be ${text.replace(".", "")} or ${text.replace(".", ",")}` };
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
export function readFigure(text: string, decimalComma: boolean | undefined): Figure | { readonly why: string } | null {
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
    if (Number(top) >= Number(bottom))
      return { why: `${top}/${bottom} is not a proper fraction; a whole number and a fraction have a space between them, as in 1 7/8` };
    return { value: exact(`${top}/${bottom}`), rest: text.slice(all.length), fraction: true };
  }
  const decimal = /^(?:\d[\d.,]*\d|\d[.,]?|[.,]\d+)(?![\d/])/.exec(text);
  if (!decimal) return null;
  const plain = plainDecimal(decimal[0].replace(/[.,]$/, ""), decimalComma);
  if (typeof plain !== "string") return plain;
  return { value: exact(plain.startsWith(".") ? `0${plain}` : plain), rest: text.slice(decimal[0].length) };
}
/** A count of broken wires or the like: a whole number from 0. */
export function readCount(cell: CellValue): Read<Exact> {
  const plain = readPlain(cell);
  if (plain.kind !== "value") return plain;
  if (!plain.value.isWhole()) return refused(plain.text, "a count is a whole number; type one");
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
/** Beyond it a cell holds no figure that anybody read off anything. */
export const LARGEST = 1e15;
/** A plain number from 0, without a unit. */
export function readPlain(cell: CellValue): Read<Exact> {
  if (cell === null || cell === undefined || cell === "") return missing();
  if (isDateCell(cell))
    return refused(
      showDate(cell.serial),
      `this cell is a date (${showDate(cell.serial)}); type the number, or format the column as text first`,
    );
  if (typeof cell === "boolean") return refused(cell ? "TRUE" : "FALSE", "it is a yes or no; type a number");
  if (typeof cell === "number") {
    const text = String(Number(cell.toPrecision(15)));
    if (!Number.isFinite(cell) || Math.abs(cell) > LARGEST) return refused(text, "it is not a number; type the number");
    if (cell < 0) return refused(text, "it cannot be negative; type the number");
    return { kind: "value", value: fromCell(cell), text };
  }
  const text = tidy(cell);
  if (text === "") return missing();
  if (ERROR_TEXT.test(text)) return refused(text, "the cell shows an error; put the reading there");
  if (/^(nil|none|zero|no)$/i.test(text)) return { kind: "value", value: exact(0), text };
  if (NOT_MEASURED.test(text)) return missing(text);
  if (DOUBT.test(text)) return refused(text, "it is marked as doubtful; type the number");
  if (text.startsWith("-")) return refused(text, "it cannot be negative; type the number");
  const figure = readFigure(text, undefined);
  if (figure === null) return refused(text, "it is not a number; type the number");
  if ("why" in figure) return refused(text, figure.why);
  if (figure.fraction) return refused(text, "more than one figure stands there; type one number, without a fraction");
  if (figure.rest.trim() !== "") return refused(text, "more than a number stands there; type one number");
  return { kind: "value", value: figure.value, text };
}

/**
 * What becomes of a text that is put into a cell, as Excel (English, United States) does it. Users' data hangs on this:
 * `3/4` is a date, `1 7/8` a number, and only a cell formatted as text ("@") takes a text as it is.
 *
 * Not modelled, and kept as text: a text that begins with + or - and is no number (Excel makes a formula of it or
 * refuses it), and money in other currencies than the dollar.
 */
import { type Entered, readDate } from "./entry-date";

export const ERROR_TEXTS = ["#NULL!", "#DIV/0!", "#VALUE!", "#REF!", "#NAME?", "#NUM!", "#N/A", "#CALC!", "#SPILL!"];
export function isTextFormat(format: string | undefined): boolean {
  return format === "@";
}
/** Reads `text` for a cell with number format `format`; `year` completes dates without a year. */
export function readEntry(text: string, format: string | undefined, year: number): Entered {
  if (isTextFormat(format)) return { value: text };
  if (text.startsWith("'")) return { value: text.slice(1) };
  if (text.startsWith("=") && text.length > 1) return { value: null, formula: text };
  const trimmed = text.trim();
  const upper = trimmed.toUpperCase();
  if (upper === "TRUE" || upper === "FALSE") return { value: upper === "TRUE" };
  if (ERROR_TEXTS.includes(upper)) return { value: null, error: upper };
  const entered = readFraction(trimmed, format) ?? readNumber(trimmed, format) ?? readDate(trimmed, year);
  return entered ? keepFormat(entered, format) : { value: text };
}
/** A format that somebody chose stays; only General takes the one that comes with the entry. */
function keepFormat(entered: Entered, format: string | undefined): Entered {
  if (format === undefined || format === "General") return entered;
  return { value: entered.value };
}
function readFraction(text: string, format: string | undefined): Entered | null {
  // "0 3/4" and "1 7/8" anywhere; "3/4" alone only where the cell already shows fractions.
  const parts = /^([+-])?(?:(\d+) +)?(\d{1,3})\/(\d{1,3})$/.exec(text);
  if (!parts) return null;
  const [, sign, whole, over, under = ""] = parts;
  if (whole === undefined && !/[?#]\/[?#\d]/.test(format ?? "")) return null;
  if (Number(under) === 0) return null;
  const size = Number(whole ?? 0) + Number(over) / Number(under);
  return { value: sign === "-" ? -size : size, format: `# ${"?".repeat(under.length)}/${"?".repeat(under.length)}` };
}
const NUMBER = /^(\()?([+-])?(\$)?([+-])?(\d+(?:,\d{3})*|\d*)(\.\d*)?(e[+-]?\d+)?(%)?(\))?$/i;
function readNumber(text: string, format: string | undefined): Entered | null {
  const parts = NUMBER.exec(text);
  if (!parts) return null;
  const [, open, sign, dollar, innerSign, whole = "", decimals = "", exponent = "", percent, close] = parts;
  if (whole === "" && !/\d/.test(decimals)) return null;
  if ((open === undefined) !== (close === undefined) || (sign !== undefined && innerSign !== undefined)) return null;
  if (open !== undefined && (sign !== undefined || innerSign !== undefined)) return null;
  let value = Number(whole.replace(/,/g, "") + decimals + exponent);
  if (!Number.isFinite(value)) return null;
  value = Number(value.toPrecision(15));
  if (open !== undefined || sign === "-" || innerSign === "-") value = -value;
  if (percent !== undefined) value /= 100;
  // A cell that shows per cent takes 10 as 10 %, and 0.1 as 10 % too.
  else if (format?.includes("%") && Math.abs(value) >= 1) value /= 100;
  const chosen = formatFor(dollar !== undefined, whole.includes(","), decimals.length > 1, exponent !== "", percent !== undefined);
  return { value: Object.is(value, -0) ? 0 : value, ...(chosen && { format: chosen }) };
}
function formatFor(money: boolean, grouped: boolean, decimals: boolean, scientific: boolean, percent: boolean): string | undefined {
  if (scientific) return "0.00E+00";
  if (percent) return decimals ? "0.00%" : "0%";
  if (money) return decimals ? "$#,##0.00_);[Red]($#,##0.00)" : "$#,##0_);[Red]($#,##0)";
  if (grouped) return decimals ? "#,##0.00" : "#,##0";
  return undefined;
}

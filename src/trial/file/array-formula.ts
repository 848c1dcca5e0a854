/**
 * Which formulas have to stand in a file as dynamic arrays. Into any other formula a program that knows dynamic arrays puts
 * the implicit intersection operator "@" when it opens the file, before a function of an add-in and before a range where one
 * value is expected (support page "Implicit intersection operator: @"): `IF(ISBLANK(A1:C1),"",A1:C1)` would look at one cell.
 * To mark one too many changes nothing.
 */
import { piecesOf } from "../book/formula-text";

/** Functions that take a range as it is: in every argument, or in those given. */
const TAKES_RANGES = new Map<string, (argument: number) => boolean>();
for (const name of [
  ...["AND", "OR", "XOR", "SUM", "PRODUCT", "COUNT", "COUNTA", "COUNTBLANK", "MIN", "MAX", "AVERAGE", "MEDIAN", "STDEV", "VAR"],
  ...["SUBTOTAL", "AGGREGATE", "SUMPRODUCT", "TEXTJOIN", "CONCAT", "ROWS", "COLUMNS", "AREAS", "SLOPE", "INTERCEPT", "CORREL"],
])
  TAKES_RANGES.set(name, () => true);
const first = (argument: number): boolean => argument === 0;
const second = (argument: number): boolean => argument === 1;
for (const name of ["INDEX", "ISREF", "SMALL", "LARGE", "PERCENTILE", "QUARTILE", "OFFSET"]) TAKES_RANGES.set(name, first);
for (const name of ["MATCH", "VLOOKUP", "HLOOKUP", "RANK"]) TAKES_RANGES.set(name, second);
for (const name of ["XLOOKUP", "LOOKUP"]) TAKES_RANGES.set(name, (argument) => argument === 1 || argument === 2);
TAKES_RANGES.set("XMATCH", second);
for (const name of ["COUNTIF", "COUNTIFS"]) TAKES_RANGES.set(name, (argument) => argument % 2 === 0);
for (const name of ["SUMIF", "AVERAGEIF"]) TAKES_RANGES.set(name, (argument) => argument !== 1);
for (const name of ["SUMIFS", "AVERAGEIFS", "MINIFS", "MAXIFS"]) TAKES_RANGES.set(name, (argument) => argument === 0 || argument % 2 === 1);
/** Functions that come to several values by themselves. */
const GIVES_ARRAYS =
  /^(?:FILTER|SORT|SORTBY|UNIQUE|SEQUENCE|RANDARRAY|TRANSPOSE|VSTACK|HSTACK|TAKE|DROP|TOCOL|TOROW|TEXTSPLIT|MAP|BYROW|BYCOL|SCAN|MAKEARRAY|CHOOSECOLS|CHOOSEROWS|EXPAND|WRAPROWS|WRAPCOLS|LET|LAMBDA|MMULT|FREQUENCY|LINEST|TREND|GROWTH)$/;
/** In a formula whose brackets were looked at: calls, ranges of several cells, and what parts arguments. */
const TOKENS =
  /([\p{L}_][\p{L}\p{N}_.]*)\(|((?:[\p{L}\p{N}_.]+!)?(?:\$?[A-Z]{1,3}\$?\d+:\$?[A-Z]{1,3}\$?\d+|\$?[A-Z]{1,3}:\$?[A-Z]{1,3}|\$?\d+:\$?\d+|[\p{L}\p{N}_.\\]*⟦several⟧))|[(),{]/giu;
/** True when the formula may come to several values on its way. `functions` are dotted names beside those of the namespace GEAR. */
export function needsArray(formula: string, functions: readonly string[] = []): boolean {
  const known = new Set(functions.map((name) => name.toUpperCase()));
  const plain = (piecesOf(formula) ?? [])
    .map(({ kind, text }) => (kind === "code" ? text : kind === "bracket" ? (isSeveral(text) ? "⟦several⟧" : "⟦one⟧") : "s"))
    .join("");
  const calls: { name: string; argument: number }[] = [];
  for (const token of plain.matchAll(TOKENS)) {
    const [text, called, range] = token;
    const call = calls.at(-1);
    if (called !== undefined) {
      const name = called.toUpperCase();
      if (name.startsWith("GEAR.") || known.has(name) || GIVES_ARRAYS.test(name)) return true;
      calls.push({ name, argument: 0 });
    } else if (range !== undefined) {
      const whole = /[(,]\s*$/.test(plain.slice(0, token.index)) && /^\s*[),]/.test(plain.slice(token.index + text.length));
      if (!whole || !(TAKES_RANGES.get(call?.name ?? "")?.(call?.argument ?? 0) ?? false)) return true;
    } else if (text === "{") return true;
    else if (text === "(") calls.push({ name: "", argument: 0 });
    else if (text === ")") calls.pop();
    else if (call) call.argument += 1;
  }
  return false;
}
/** A bracket of a table reference names one cell only with a single column of this row, or of the headings or totals. */
function isSeveral(bracket: string): boolean {
  if (/\]\s*:\s*\[/.test(bracket)) return true;
  if (/^\[\s*@/.test(bracket)) return !/[^\s@[\]]/.test(bracket);
  return !/#(?:this row|headers|totals)/i.test(bracket) || !bracket.includes(",");
}

/** Texts. Positions count from 1. */
import { showCell } from "../../book/show";
import { each, Fault, NOT_A_VALUE, numberIn, numberOf, textOf, type Value } from "../values";
import { type Functions, ofItems, ofValues, textAndNumbers } from "./by-item";
import { wildcards } from "./criteria";

const WINDOWS = new TextDecoder("windows-1252");
/** All items of all arguments as texts, in order. */
function texts(values: readonly Value[]): string[] | Fault {
  const found: string[] = [];
  for (const value of values) {
    const fault = each(value, (item) => {
      if (item instanceof Fault) return item;
      found.push(textOf(item));
      return undefined;
    });
    if (fault !== null) return fault;
  }
  return found;
}
const joined = ofValues((...values) => {
  const found = texts(values);
  return found instanceof Fault ? found : found.join("");
});
function nthReplaced(text: string, old: string, next: string, nth: number): string {
  if (old === "") return text;
  let at = -old.length;
  for (let n = 0; n < nth; n += 1) {
    at = text.indexOf(old, at + old.length);
    if (at < 0) return text;
  }
  return text.slice(0, at) + next + text.slice(at + old.length);
}
export const TEXT: Functions = {
  LEN: ofItems(1, ([item = null]) => textOf(item).length),
  LEFT: textAndNumbers(1, [1], ([text = ""], [count = 1]) => (count < 0 ? NOT_A_VALUE : text.slice(0, count))),
  RIGHT: textAndNumbers(1, [1], ([text = ""], [count = 1]) => (count < 0 ? NOT_A_VALUE : text.slice(Math.max(0, text.length - count)))),
  MID: textAndNumbers(1, [1, 0], ([text = ""], [start = 1, count = 0]) =>
    start < 1 || count < 0 ? NOT_A_VALUE : text.slice(start - 1, start - 1 + count),
  ),
  FIND: textAndNumbers(2, [1], ([wanted = "", text = ""], [start = 1]) => {
    const at = start < 1 ? -1 : text.indexOf(wanted, start - 1);
    return at < 0 ? NOT_A_VALUE : at + 1;
  }),
  SEARCH: textAndNumbers(2, [1], ([wanted = "", text = ""], [start = 1]) => {
    if (start < 1 || start > text.length + 1) return NOT_A_VALUE;
    const at = text.slice(start - 1).search(wildcards(wanted, "inside"));
    return at < 0 ? NOT_A_VALUE : at + start;
  }),
  SUBSTITUTE: ofItems(3, ([text = null, old = null, next = null, which]) => {
    if (which === undefined) return textOf(old) === "" ? textOf(text) : textOf(text).replaceAll(textOf(old), () => textOf(next));
    const nth = numberOf(which);
    if (typeof nth !== "number") return nth;
    return nth < 1 ? NOT_A_VALUE : nthReplaced(textOf(text), textOf(old), textOf(next), Math.trunc(nth));
  }),
  REPLACE: ofItems(4, ([text = null, start = null, count = null, next = null]) => {
    const from = numberOf(start);
    const length = numberOf(count);
    if (typeof from !== "number") return from;
    if (typeof length !== "number") return length;
    if (from < 1 || length < 0) return NOT_A_VALUE;
    const whole = textOf(text);
    return whole.slice(0, Math.trunc(from) - 1) + textOf(next) + whole.slice(Math.trunc(from) - 1 + Math.trunc(length));
  }),
  TRIM: ofItems(1, ([item = null]) => textOf(item).replace(/ +/g, " ").replace(/^ | $/g, "")),
  UPPER: ofItems(1, ([item = null]) => textOf(item).toUpperCase()),
  LOWER: ofItems(1, ([item = null]) => textOf(item).toLowerCase()),
  EXACT: ofItems(2, ([a = null, b = null]) => textOf(a) === textOf(b)),
  CHAR: ofItems(1, ([item = null]) => {
    const code = numberOf(item);
    if (typeof code !== "number") return code;
    return code < 1 || code >= 256 ? NOT_A_VALUE : WINDOWS.decode(new Uint8Array([Math.trunc(code)]));
  }),
  CONCATENATE: joined,
  CONCAT: joined,
  TEXTJOIN: ofValues((between = "", dropBlanks = true, ...values) => {
    const found = texts(values);
    const marks = texts([between]);
    const drop = texts([dropBlanks]);
    if (found instanceof Fault) return found;
    if (marks instanceof Fault) return marks;
    if (drop instanceof Fault) return drop;
    const kept = drop[0] === "FALSE" || drop[0] === "0" ? found : found.filter((text) => text !== "");
    return kept.map((text, at) => (at === 0 ? "" : (marks[(at - 1) % marks.length] ?? "")) + text).join("");
  }),
  VALUE: ofItems(1, ([item = null]) => {
    if (item === null) return 0;
    return typeof item === "boolean" ? NOT_A_VALUE : typeof item === "number" ? item : (numberIn(item) ?? NOT_A_VALUE);
  }),
  TEXT: ofItems(2, ([item = null, format = null]) => {
    const number = typeof item === "string" ? numberIn(item) : numberOf(item);
    if (number instanceof Fault) return number;
    return typeof number === "number" ? showCell({ value: number, format: textOf(format) }) : textOf(item);
  }),
};

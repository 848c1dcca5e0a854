/** Criteria of COUNTIFS and its kin: `">5"`, `"<>"`, `"a*"`. */
import { order } from "../operators";
import { Fault, type Item, numberIn, textOf } from "../values";

const SIGN = /^(<>|<=|>=|<|>|=)/;
const SPECIAL = /[\\^$.|+()[\]{}]/g;
/** A pattern with ? for one character and * for any; a tilde takes the next one as it is. */
export function wildcards(text: string, where: "whole" | "inside"): RegExp {
  const body = text.replace(/~[*?~]|[*?]|[\\^$.|+()[\]{}]/g, (found) => {
    if (found === "*") return "[^]*";
    if (found === "?") return "[^]";
    return (found.startsWith("~") ? found.slice(1) : found).replace(/[*?]/g, "\\$&").replace(SPECIAL, "\\$&");
  });
  return new RegExp(where === "whole" ? `^${body}$` : body, "i");
}
/** Which items a criterion lets through. */
export function criterion(wanted: Item): (item: Item) => boolean {
  if (wanted instanceof Fault) return (item) => item instanceof Fault && item.code === wanted.code;
  if (wanted === null) return equals(0, false);
  if (typeof wanted !== "string") return equals(wanted, false);
  const [sign = ""] = SIGN.exec(wanted) ?? [];
  const operand = wanted.slice(sign.length);
  if (operand === "") {
    if (sign === "") return (item) => item === null || item === "";
    if (sign === "=") return (item) => item === null;
    return sign === "<>" ? (item) => item !== null : () => false;
  }
  const upper = operand.toUpperCase();
  const meant = upper === "TRUE" || upper === "FALSE" ? upper === "TRUE" : (numberIn(operand) ?? operand);
  if (sign === "" || sign === "=") return equals(meant, true);
  if (sign === "<>") {
    const same = equals(meant, true);
    return (item) => !same(item);
  }
  const holds: Record<string, (order: number) => boolean> = {
    "<": (o) => o < 0,
    ">": (o) => o > 0,
    "<=": (o) => o <= 0,
    ">=": (o) => o >= 0,
  };
  const test = holds[sign] ?? (() => false);
  return (item) => typeof item === typeof meant && item !== null && test(order(item, meant));
}
function equals(meant: string | number | boolean, typed: boolean): (item: Item) => boolean {
  if (typeof meant === "number") return (item) => item === meant || (typeof item === "string" && item !== "" && numberIn(item) === meant);
  if (typeof meant === "boolean") return (item) => item === meant;
  if (typed && /[*?~]/.test(meant)) {
    const pattern = wildcards(meant, "whole");
    return (item) => typeof item === "string" && pattern.test(item);
  }
  const lower = meant.toLowerCase();
  const { length } = meant;
  return (item) => typeof item === "string" && item.length === length && (item === meant || textOf(item).toLowerCase() === lower);
}

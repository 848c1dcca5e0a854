/** The signs between values: arithmetic, joining, comparison. */
import { BY_ZERO, Fault, type Item, NO_NUMBER, numberOf, textOf } from "./values";

function arithmetic(work: (a: number, b: number) => number | Fault): (a: Item, b: Item) => Item {
  return (a, b) => {
    const left = numberOf(a);
    if (typeof left !== "number") return left;
    const right = numberOf(b);
    if (typeof right !== "number") return right;
    const result = work(left, right);
    return typeof result === "number" && !Number.isFinite(result) ? NO_NUMBER : result;
  };
}
/** Numbers stand before texts, texts before logical values; a blank is like the other side's nothing. */
export function order(a: Item, b: Item): number {
  const left = a ?? blankLike(b);
  const right = b ?? blankLike(a);
  if (typeof left === "number" && typeof right === "number") return left - right;
  if (typeof left === "string" && typeof right === "string") return orderTexts(left, right);
  if (typeof left === "boolean" && typeof right === "boolean") return Number(left) - Number(right);
  return standing(left) - standing(right);
}
function orderTexts(left: string, right: string): number {
  if (left === right) return 0;
  const [a, b] = [left.toLowerCase(), right.toLowerCase()];
  return a === b ? 0 : a < b ? -1 : 1;
}
const blankLike = (other: Item): Item => (typeof other === "string" ? "" : typeof other === "boolean" ? false : 0);
const standing = (item: Item): number => (typeof item === "number" ? 0 : typeof item === "string" ? 1 : 2);
function comparison(holds: (order: number) => boolean): (a: Item, b: Item) => Item {
  return (a, b) => (a instanceof Fault ? a : b instanceof Fault ? b : holds(order(a, b)));
}
export const PAIRS: ReadonlyMap<string, (a: Item, b: Item) => Item> = new Map([
  ["+", arithmetic((a, b) => a + b)],
  ["-", arithmetic((a, b) => a - b)],
  ["*", arithmetic((a, b) => a * b)],
  ["/", arithmetic((a, b) => (b === 0 ? BY_ZERO : a / b))],
  ["^", arithmetic((a, b) => (a === 0 && b === 0 ? NO_NUMBER : a === 0 && b < 0 ? BY_ZERO : a ** b))],
  ["&", (a: Item, b: Item): Item => (a instanceof Fault ? a : b instanceof Fault ? b : textOf(a) + textOf(b))],
  ["=", comparison((o) => o === 0)],
  ["<>", comparison((o) => o !== 0)],
  ["<", comparison((o) => o < 0)],
  [">", comparison((o) => o > 0)],
  ["<=", comparison((o) => o <= 0)],
  [">=", comparison((o) => o >= 0)],
]);
export const negative = (item: Item): Item => {
  const number = numberOf(item);
  return typeof number === "number" ? -number : number;
};
export const hundredth = (item: Item): Item => {
  const number = numberOf(item);
  return typeof number === "number" ? number / 100 : number;
};

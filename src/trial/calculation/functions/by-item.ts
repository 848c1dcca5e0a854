/** Shapes that functions of the sheet come in. */
import type { SheetFunction } from "../compile";
import { Fault, type Item, Matrix, NOT_A_VALUE, numberOf, settled, spread, textOf, type Value } from "../values";

export type Functions = Readonly<Record<string, SheetFunction>>;
/** All arguments worked out, whatever they are. */
export const ofValues =
  (work: (...values: Value[]) => Value): SheetFunction =>
  (given, spot) =>
    work(...given.map((run) => run(spot)));
/** Item by item; `least` arguments are needed, and an error among them is the result. */
export function ofItems(least: number, work: (items: readonly (string | number | boolean | null)[]) => Item): SheetFunction {
  return withFaults(least, (items) => {
    for (const item of items) if (item instanceof Fault) return item;
    return work(items as (string | number | boolean | null)[]);
  });
}
/** Item by item, errors among them. */
export function withFaults(least: number, work: (items: readonly Item[]) => Item): SheetFunction {
  return (given, spot) => {
    if (given.length < least) return NOT_A_VALUE;
    const values = given.map((run) => settled(run(spot)));
    for (const value of values) if (value instanceof Matrix) return spread(values, work);
    return work(values as Item[]);
  };
}
/** Texts at the front, then whole numbers; `otherwise` stands for numbers that are left out. */
export function textAndNumbers(
  texts: number,
  otherwise: readonly number[],
  work: (texts: readonly string[], numbers: readonly number[]) => Item,
): SheetFunction {
  return ofItems(texts, (items) => {
    const numbers: number[] = [];
    for (let at = 0; at < otherwise.length; at += 1) {
      const item = items[texts + at];
      const number = item === undefined || item === null ? (item === null ? 0 : (otherwise[at] ?? 0)) : numberOf(item);
      if (typeof number !== "number") return number;
      numbers.push(Math.trunc(number));
    }
    return work(
      items.slice(0, texts).map((item) => textOf(item)),
      numbers,
    );
  });
}

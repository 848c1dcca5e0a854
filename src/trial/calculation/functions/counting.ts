/** Counts, sums, extremes: of all cells, or of those that meet criteria. */
import type { SheetFunction } from "../compile";
import {
  Area,
  BY_ZERO,
  each,
  Fault,
  first,
  isMany,
  type Item,
  matrixOf,
  NO_NUMBER,
  NOT_A_VALUE,
  numberOf,
  OMITTED,
  usedHeight,
  usedWidth,
  type Value,
} from "../values";
import { type Functions, ofValues } from "./by-item";
import { criterion } from "./criteria";

/** Numbers among the arguments: in cells only numbers count, a typed argument is read. */
function numbers(values: readonly Value[]): number[] | Fault {
  const found: number[] = [];
  for (const value of values) {
    const many = isMany(value);
    const fault = each(value, (item) => {
      if (item instanceof Fault) return item;
      const number = many ? item : numberOf(item);
      if (number instanceof Fault) return number;
      if (typeof number === "number") found.push(number);
      return undefined;
    });
    if (fault !== null) return fault;
  }
  return found;
}
const ofNumbers = (work: (found: readonly number[]) => Item): SheetFunction =>
  ofValues((...values) => {
    const found = numbers(values);
    return found instanceof Fault ? found : work(found);
  });
const largest = (found: readonly number[]): number => found.reduce((a, b) => (b > a ? b : a), found[0] ?? 0);
const smallest = (found: readonly number[]): number => found.reduce((a, b) => (b < a ? b : a), found[0] ?? 0);
const sum = (found: readonly number[]): number => found.reduce((a, b) => a + b, 0);
function ranked(descending: boolean): SheetFunction {
  return ofValues((values = null, which = null) => {
    const found = numbers([values]);
    if (found instanceof Fault) return found;
    const nth = numberOf(first(which));
    if (typeof nth !== "number") return nth;
    const sorted = [...found].sort((a, b) => (descending ? b - a : a - b));
    return nth < 1 ? NO_NUMBER : (sorted[Math.ceil(nth) - 1] ?? NO_NUMBER);
  });
}
function counted(counts: (item: Item, many: boolean) => boolean): SheetFunction {
  return ofValues((...values) => {
    let count = 0;
    for (const value of values) {
      if (value === OMITTED) continue;
      const many = isMany(value);
      each(value, (item) => {
        if (counts(item, many)) count += 1;
        return undefined;
      });
    }
    return count;
  });
}
/** Visits each cell of `of` for which every criterion holds. Pairs of range and criterion follow one another. */
function where(of: Value, pairs: readonly Value[], visit: (item: Item) => void): Fault | null {
  const tests: { range: Area; holds: (item: Item) => boolean }[] = [];
  for (let at = 0; at + 1 < pairs.length; at += 2) {
    const range = pairs[at];
    if (!(range instanceof Area)) return range instanceof Fault ? range : NOT_A_VALUE;
    tests.push({ range, holds: criterion(first(pairs[at + 1] ?? null)) });
  }
  const area = of instanceof Area ? of : tests[0]?.range;
  if (area === undefined) return NOT_A_VALUE;
  const { height, width } = area;
  if (tests.some(({ range }) => range.height !== height || range.width !== width)) return NOT_A_VALUE;
  const rows = Math.max(usedHeight(area), ...tests.map(({ range }) => usedHeight(range)));
  const columns = Math.max(usedWidth(area), ...tests.map(({ range }) => usedWidth(range)));
  for (let row = 0; row < rows; row += 1)
    for (let column = 0; column < columns; column += 1) {
      if (!tests.every(({ range, holds }) => holds(range.item(row, column)))) continue;
      visit(area.item(row, column));
    }
  return null;
}
function overWhere(of: Value, pairs: readonly Value[], work: (found: readonly number[]) => Item): Item {
  const found: number[] = [];
  let fault: Fault | null = null;
  const refused = where(of, pairs, (item) => {
    if (item instanceof Fault) fault ??= item;
    else if (typeof item === "number") found.push(item);
  });
  return refused ?? fault ?? work(found);
}
const average = (found: readonly number[]): Item => (found.length === 0 ? BY_ZERO : sum(found) / found.length);
/** SUMIF and AVERAGEIF: the cells that are added have the size of those that are looked at. */
function beside(range: Value, added: Value | undefined): Value {
  if (added === undefined || added === OMITTED) return range;
  if (!(range instanceof Area) || !(added instanceof Area)) return NOT_A_VALUE;
  return new Area(added.source, added.row, added.column, range.height, range.width);
}
const countWhere = ofValues((...pairs) => {
  let count = 0;
  return where(pairs[0] ?? null, pairs, () => (count += 1)) ?? count;
});
const SUBTOTALS: Readonly<Record<number, (found: readonly number[]) => Item>> = {
  1: average,
  2: (found) => found.length,
  4: largest,
  5: smallest,
  9: sum,
};
/** Rows that a filter hides do not count; a number above 100 leaves out all hidden ones. Both are one thing here. */
const subtotal = ofValues((which = null, ...areas) => {
  const asked = numberOf(first(which));
  if (typeof asked !== "number") return asked;
  const kind = asked > 100 ? asked - 100 : asked;
  const found: number[] = [];
  let filled = 0;
  for (const area of areas) {
    if (!(area instanceof Area)) return NOT_A_VALUE;
    const width = usedWidth(area);
    for (let row = 0; row < usedHeight(area); row += 1) {
      if (area.source.isHidden(area.row + row)) continue;
      for (let column = 0; column < width; column += 1) {
        const item = area.item(row, column);
        if (item !== null) filled += 1;
        if (item instanceof Fault && kind !== 2 && kind !== 3) return item;
        if (typeof item === "number") found.push(item);
      }
    }
  }
  return kind === 3 ? filled : (SUBTOTALS[kind]?.(found) ?? new Fault("#VALUE!", `SUBTOTAL ${String(asked)} is not worked out here.`));
});
export const COUNTING: Functions = {
  SUM: ofNumbers(sum),
  MAX: ofNumbers(largest),
  MIN: ofNumbers(smallest),
  AVERAGE: ofNumbers(average),
  SMALL: ranked(false),
  LARGE: ranked(true),
  COUNT: counted((item, many) => typeof item === "number" || (!many && !(item instanceof Fault) && typeof numberOf(item) === "number")),
  COUNTA: counted((item, many) => item !== null || !many),
  COUNTBLANK: counted((item) => item === null || item === ""),
  COUNTIF: countWhere,
  COUNTIFS: countWhere,
  SUMIF: ofValues((range = null, test = null, added) => overWhere(beside(range, added), [range, test], sum)),
  AVERAGEIF: ofValues((range = null, test = null, added) => overWhere(beside(range, added), [range, test], average)),
  SUMIFS: ofValues((of = null, ...pairs) => overWhere(of, pairs, sum)),
  AVERAGEIFS: ofValues((of = null, ...pairs) => overWhere(of, pairs, average)),
  MAXIFS: ofValues((of = null, ...pairs) => overWhere(of, pairs, largest)),
  MINIFS: ofValues((of = null, ...pairs) => overWhere(of, pairs, smallest)),
  SUMPRODUCT: ofValues((...values) => {
    const blocks = values.map(matrixOf);
    const [one] = blocks;
    if (one === undefined) return NOT_A_VALUE;
    if (blocks.some(({ height, width }) => height !== one.height || width !== one.width)) return NOT_A_VALUE;
    let total = 0;
    for (let row = 0; row < one.height; row += 1)
      for (let column = 0; column < one.width; column += 1) {
        let product = 1;
        for (const block of blocks) {
          const item = block.rows[row]?.[column] ?? null;
          if (item instanceof Fault) return item;
          product *= typeof item === "number" ? item : 0;
        }
        total += product;
      }
    return total;
  }),
  SUBTOTAL: subtotal,
};

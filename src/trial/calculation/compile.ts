/** Makes a function of a formula's tree, once for all cells of a column that share it; and lists what it reads. */
import type { AreaTree, Axis, Tree } from "./formula-tree";
import { hundredth, negative, PAIRS } from "./operators";
import {
  Area,
  type CellSource,
  Fault,
  first,
  isMany,
  type Item,
  Matrix,
  NO_REFERENCE,
  NOT_A_VALUE,
  OMITTED,
  settled,
  spread,
  type Value,
} from "./values";

/** Where a formula is worked out: its cell, and how far that is from the cell for which it was written. */
export interface Spot {
  readonly row: number;
  readonly column: number;
  readonly down: number;
  readonly right: number;
  /** Values that LET gave names. */
  readonly named?: ReadonlyMap<string, Value>;
}
export type Run = (spot: Spot) => Value;
/** A function of the sheet: it works its arguments out itself, and only those that it needs. */
export type SheetFunction = (given: readonly Run[], spot: Spot) => Value;
/** Cells that a formula reads, as written for its first cell. */
export interface Reading {
  readonly source: CellSource;
  readonly top: Axis;
  readonly bottom: Axis;
  readonly left: Axis;
  readonly right: Axis;
}
export interface Compiled {
  readonly run: Run;
  readonly reads: readonly Reading[];
  /** True where what is read can't be told beforehand, so that each pass works the formula out. */
  readonly restless: boolean;
}
export interface Surroundings {
  /** The cells of a sheet by its name in any case; null is the formula's own. */
  source(sheet: string | null): CellSource | null;
  /** A function by its name in capital letters. */
  callable(name: string): SheetFunction | null;
}
const RESTLESS = new Set(["OFFSET", "INDIRECT", "NOW", "TODAY", "RAND", "RANDBETWEEN", "RANDARRAY", "SUBTOTAL"]);

export function compile(tree: Tree, around: Surroundings): Compiled {
  const reads: Reading[] = [];
  let restless = false;
  const of = (part: Tree, names: readonly string[]): Run => {
    switch (part.kind) {
      case "value": {
        const { value } = part;
        return () => value;
      }
      case "fault": {
        const fault = new Fault(part.code, part.message);
        return () => fault;
      }
      case "omitted":
        return () => OMITTED;
      case "area":
        return area(part, around, reads);
      case "name": {
        const name = part.name.toLowerCase();
        if (names.includes(name)) return (spot) => spot.named?.get(name) ?? NOT_A_VALUE;
        const fault = new Fault("#NAME?", `${part.name} is neither an address nor a name of this workbook.`);
        return () => fault;
      }
      case "sign":
        return sign(part.sign, of(part.of, names));
      case "pair":
        return pair(part.sign, of(part.left, names), of(part.right, names));
      case "range": {
        const from = reads.length;
        const run = joined(of(part.from, names), of(part.to, names));
        const between = bounding(reads.slice(from));
        if (between === null) restless = true;
        else reads.push(between);
        return run;
      }
      case "array": {
        const rows = part.rows.map((row) => row.map((item) => of(item, names)));
        return (spot) => new Matrix(rows.map((row) => row.map((item) => first(item(spot)))));
      }
      case "call":
        if (RESTLESS.has(part.name)) restless = true;
        if (part.name === "LET") return letting(part.given, names, of);
        return call(
          part.name,
          part.given.map((given) => of(given, names)),
          around,
        );
    }
  };
  return { run: of(tree, []), reads, restless };
}
function call(name: string, given: readonly Run[], around: Surroundings): Run {
  const work = around.callable(name.replace(/^_XLFN\.(_XLWS\.)?/, ""));
  if (work !== null) return (spot) => work(given, spot);
  const fault = new Fault("#NAME?", `There is no function ${name}.`);
  return () => fault;
}
/** LET(name, value, ..., result): each value may use the names before it. */
function letting(given: readonly Tree[], names: readonly string[], of: (tree: Tree, names: readonly string[]) => Run): Run {
  const known = [...names];
  const steps: { name: string; run: Run }[] = [];
  for (let at = 0; at + 1 < given.length; at += 2) {
    const name = given[at];
    const value = given[at + 1];
    if (name?.kind !== "name" || value === undefined) return () => NOT_A_VALUE;
    steps.push({ name: name.name.toLowerCase(), run: of(value, known) });
    known.push(name.name.toLowerCase());
  }
  const last = given.length % 2 === 1 ? given.at(-1) : undefined;
  if (last === undefined) return () => NOT_A_VALUE;
  const result = of(last, known);
  return (spot) => {
    const named = new Map(spot.named);
    for (const { name, run } of steps) named.set(name, run({ ...spot, named }));
    return result({ ...spot, named });
  };
}
function area(part: AreaTree, around: Surroundings, reads: Reading[]): Run {
  const source = around.source(part.sheet);
  if (source === null) {
    const fault = new Fault("#REF!", `There is no sheet ${part.sheet ?? ""}.`);
    return () => fault;
  }
  const { top, left, bottom, right } = part;
  reads.push({ source, top, left, bottom, right });
  const single = top.at === bottom.at && left.at === right.at && top.fixed === bottom.fixed && left.fixed === right.fixed;
  if (single)
    return ({ down, right: across }) => {
      const row = top.fixed ? top.at : top.at + down;
      const column = left.fixed ? left.at : left.at + across;
      return row < 0 || column < 0 ? NO_REFERENCE : new Area(source, row, column, 1, 1);
    };
  return ({ down, right: across }) => {
    const rows = ends(top, bottom, down);
    const columns = ends(left, right, across);
    if (rows[0] < 0 || columns[0] < 0) return NO_REFERENCE;
    return new Area(source, rows[0], columns[0], rows[1] - rows[0] + 1, columns[1] - columns[0] + 1);
  };
}
function ends(from: Axis, to: Axis, by: number): [number, number] {
  const a = from.fixed ? from.at : from.at + by;
  const b = to.fixed ? to.at : to.at + by;
  return a <= b ? [a, b] : [b, a];
}
/** Smallest area around all that is read on one sheet. */
function bounding(reads: readonly Reading[]): Reading | null {
  const [one] = reads;
  if (one === undefined) return null;
  const fixed = (read: Reading): boolean => read.top.fixed && read.bottom.fixed && read.left.fixed && read.right.fixed;
  const here = reads.filter(({ source }) => source === one.source);
  if (!here.every(fixed)) return null;
  const axis = (at: number): Axis => ({ at, fixed: true });
  return {
    source: one.source,
    top: axis(Math.min(...here.map(({ top }) => top.at))),
    bottom: axis(Math.max(...here.map(({ bottom }) => bottom.at))),
    left: axis(Math.min(...here.map(({ left }) => left.at))),
    right: axis(Math.max(...here.map(({ right }) => right.at))),
  };
}
/** `A1:INDEX(...)`: all cells between two references. */
function joined(from: Run, to: Run): Run {
  return (spot) => {
    const a = from(spot);
    const b = to(spot);
    if (a instanceof Fault) return a;
    if (b instanceof Fault) return b;
    if (!(a instanceof Area) || !(b instanceof Area) || a.source !== b.source) return NOT_A_VALUE;
    const row = Math.min(a.row, b.row);
    const column = Math.min(a.column, b.column);
    const bottom = Math.max(a.row + a.height, b.row + b.height);
    const right = Math.max(a.column + a.width, b.column + b.width);
    return new Area(a.source, row, column, bottom - row, right - column);
  };
}
function sign(mark: "-" | "+" | "%" | "@", of: Run): Run {
  if (mark === "+") return of;
  if (mark === "@") return (spot) => crossing(of(spot), spot);
  const work = mark === "-" ? negative : hundredth;
  return (spot) => {
    const value = settled(of(spot));
    return value instanceof Matrix ? spread([value], ([item = null]) => work(item)) : work(value);
  };
}
/** Of several cells the one in the formula's own row or column; of an array its first item. */
function crossing(value: Value, spot: Spot): Value {
  if (!isMany(value)) return value;
  if (value instanceof Matrix) return first(value);
  const row = value.height === 1 ? 0 : spot.row - value.row;
  const column = value.width === 1 ? 0 : spot.column - value.column;
  if (row < 0 || column < 0 || row >= value.height || column >= value.width) return NOT_A_VALUE;
  return new Area(value.source, value.row + row, value.column + column, 1, 1);
}
function pair(mark: string, left: Run, right: Run): Run {
  const work = PAIRS.get(mark);
  if (work === undefined) throw new Error(`The sign ${mark} is not known.`);
  return (spot) => {
    const a = settled(left(spot));
    const b = settled(right(spot));
    return a instanceof Matrix || b instanceof Matrix ? spread([a, b], ([x = null, y = null]: Item[]) => work(x, y)) : work(a, b);
  };
}

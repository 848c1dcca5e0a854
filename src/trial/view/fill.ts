/** The fill handle: formulas move along, numbers and dates go on in their step, anything else is repeated. */
import type { Cell, Scalar, Sheet } from "../book/book";
import { slide } from "../book/formula-text";

/** Rows and columns that need not lie side by side. */
export interface Scattered {
  readonly rows: readonly number[];
  readonly cols: readonly number[];
}
/** A cell's content on its way to another place; `copied` brings its look along. */
export interface Filled {
  readonly row: number;
  readonly column: number;
  readonly value: Scalar;
  readonly copied?: Cell | undefined;
}
/** Fills `to` from `from`, which lie beside each other along rows (`down`) or columns. */
export function filled(sheet: Sheet, from: Scattered, to: Scattered, down: boolean): Filled[] {
  const lines = down ? to.cols : to.rows;
  return lines.flatMap((line) => {
    const sources = down ? from.rows : from.cols;
    const cells = sources.map((at) => (down ? sheet.cell(at, line) : sheet.cell(line, at)));
    const step = stepOf(cells);
    const last = sources.at(-1) ?? 0;
    return (down ? to.rows : to.cols).flatMap((at, index) => {
      const [row, column] = down ? [at, line] : [line, at];
      const source = sources[index % sources.length];
      if (source === undefined) return [];
      if (step !== null && at > last) return [{ row, column, value: step.from + step.by * (at - last), copied: cells.at(-1) }];
      return [{ row, column, ...copyOf(cells[index % cells.length], down ? at - source : 0, down ? 0 : at - source) }];
    });
  });
}
/** Cells on their way to another place; a larger target is filled over and over. */
export function copies(source: Sheet, from: Scattered, sheet: Sheet, to: Scattered): Filled[] {
  return to.rows.flatMap((row, down) =>
    to.cols.flatMap((column, across) => {
      const sourceRow = from.rows[down % from.rows.length];
      const sourceColumn = from.cols[across % from.cols.length];
      if (sourceRow === undefined || sourceColumn === undefined) return [];
      const cell = source.cell(sourceRow, sourceColumn);
      if (!cell && !sheet.cell(row, column)) return [];
      return [{ row, column, ...copyOf(cell, row - sourceRow, column - sourceColumn) }];
    }),
  );
}
export function copyOf(cell: Cell | undefined, down: number, across: number): Pick<Filled, "value" | "copied"> {
  if (!cell) return { value: "" };
  const { formula, value, error } = cell;
  if (formula !== undefined) return { value: slide(formula, down, across), copied: cell };
  // A copied text stays a text, whatever it looks like.
  const text = typeof value === "string" && cell.format !== "@" ? `'${value}` : value;
  return { value: error ?? text ?? "", copied: cell };
}
/** Two or more numbers an equal step apart, or a single date, go on; a single number is repeated. */
function stepOf(cells: readonly (Cell | undefined)[]): { from: number; by: number } | null {
  const numbers = cells.map((cell) => (cell?.formula === undefined && typeof cell?.value === "number" ? cell.value : NaN));
  const [first = NaN, second = NaN] = numbers;
  const last = numbers.at(-1) ?? NaN;
  if (numbers.some(Number.isNaN)) return null;
  if (numbers.length === 1) return isDate(cells[0]) ? { from: first, by: 1 } : null;
  const by = second - first;
  const even = numbers.every((number, index) => Math.abs(number - first - by * index) < 1e-9 * Math.max(1, Math.abs(number)));
  return even ? { from: last, by } : null;
}
function isDate(cell: Cell | undefined): boolean {
  return /[dmy]/i.test((cell?.format ?? "").replace(/"[^"]*"|\\.|\[[^\]]*\]|general/gi, ""));
}

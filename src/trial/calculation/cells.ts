/** What the calculation holds of a sheet, and who reads which of its cells. */
import type { Compiled } from "./compile";
import type { Axis } from "./formula-tree";
import { type CellSource, Fault, type Item } from "./values";

/**
 * A formula of one column: its text is read once, and each row that has it is worked out from there. The rows from `first` to
 * `last` may share it.
 */
export class SharedFormula {
  /** The cells by row. */
  readonly cells = new Map<number, FormulaCell>();
  readonly sheet: SheetCells;
  /** The cell for which it was written. */
  readonly row: number;
  readonly column: number;
  /** How far its columns are moved to the right. */
  readonly right: number;
  /** With table references and names written out. */
  readonly written: string;
  readonly compiled: Compiled;
  first: number;
  last: number;
  /** True once it means something else: its cells take another one. */
  stale = false;
  /** The pass in which all cells were marked at once. */
  marked = 0;

  constructor(
    place: { sheet: SheetCells; row: number; column: number; right?: number },
    rows: { first: number; last: number },
    written: string,
    compiled: Compiled,
  ) {
    this.sheet = place.sheet;
    this.row = place.row;
    this.column = place.column;
    this.right = place.right ?? 0;
    this.first = rows.first;
    this.last = rows.last;
    this.written = written;
    this.compiled = compiled;
  }
}
export type State = "done" | "due" | "running";
export class FormulaCell {
  state: State = "due";
  item: Item = null;
  /** Size of an array result that fills other cells. */
  spill: { readonly height: number; readonly width: number } | null = null;
  /** How often it was worked out in this pass. */
  runs = 0;
  readonly shared: SharedFormula;
  readonly row: number;
  /** The text in the book's cell. */
  readonly text: string;

  constructor(shared: SharedFormula, row: number, text: string) {
    this.shared = shared;
    this.row = row;
    this.text = text;
  }
}
/** A cell that an array result fills. */
export class Filled {
  readonly by: FormulaCell;
  readonly item: Item;

  constructor(by: FormulaCell, item: Item) {
    this.by = by;
    this.item = item;
  }
}
export type Held = string | number | boolean | Fault | FormulaCell | Filled | undefined;
interface Watch {
  readonly shared: SharedFormula;
  readonly top: Axis;
  readonly bottom: Axis;
  readonly left: number;
  readonly right: number;
}
/** Areas of more columns are kept in one list instead of one for each column. */
const WIDE = 64;
/** Of a formula that stands alone, areas of so few rows are kept by row. */
const LOW = 4;
export class SheetCells implements CellSource {
  readonly rows = new Map<number, Held[]>();
  bottom = 0;
  right = 0;
  readonly id: string;
  /** Brings a formula's cell up to date. */
  private readonly settle: (cell: FormulaCell) => void;
  private readonly hidden: ReadonlySet<number>;
  private readonly narrow = new Map<number, Set<Watch>>();
  private readonly wide = new Set<Watch>();
  /** By column, then by row. */
  private readonly low = new Map<number, Map<number, Set<Watch>>>();
  private readonly watches = new Map<SharedFormula, Watch[]>();

  constructor(id: string, hidden: ReadonlySet<number>, settle: (cell: FormulaCell) => void) {
    this.id = id;
    this.hidden = hidden;
    this.settle = settle;
  }

  held(row: number, column: number): Held {
    return this.rows.get(row)?.[column];
  }

  hold(row: number, column: number, held: Held): void {
    let cells = this.rows.get(row);
    if (cells === undefined) this.rows.set(row, (cells = []));
    cells[column] = held;
    if (held === undefined) return;
    if (row >= this.bottom) this.bottom = row + 1;
    if (column >= this.right) this.right = column + 1;
  }

  read(row: number, column: number): Item {
    const held = this.rows.get(row)?.[column];
    if (held === undefined) return null;
    if (typeof held !== "object" || held instanceof Fault) return held;
    if (held instanceof FormulaCell) {
      if (held.state !== "done") this.settle(held);
      return held.item;
    }
    if (held.by.state === "done") return held.item;
    this.settle(held.by);
    const now = this.rows.get(row)?.[column];
    return now instanceof Filled ? now.item : null;
  }

  isHidden(row: number): boolean {
    return this.hidden.has(row);
  }

  watch(shared: SharedFormula): void {
    for (const { source, top, bottom, left, right } of shared.compiled.reads) {
      const by = (axis: Axis): number => (axis.fixed ? axis.at : axis.at + shared.right);
      const watch: Watch = { shared, top, bottom, left: Math.min(by(left), by(right)), right: Math.max(by(left), by(right)) };
      if (source instanceof SheetCells) source.add(watch);
    }
  }

  unwatch(shared: SharedFormula): void {
    for (const watch of this.watches.get(shared) ?? []) {
      this.wide.delete(watch);
      if (watch.right - watch.left > WIDE) continue;
      const rows = lowRows(watch);
      for (let column = watch.left; column <= watch.right; column += 1) {
        if (rows === null) this.narrow.get(column)?.delete(watch);
        for (const row of rows ?? []) this.low.get(column)?.get(row)?.delete(watch);
      }
    }
    this.watches.delete(shared);
  }

  /** Visits the formula cells that read this cell. */
  readers(row: number, column: number, pass: number, visit: (cell: FormulaCell) => void): void {
    for (const watch of this.low.get(column)?.get(row) ?? []) for (const cell of watch.shared.cells.values()) visit(cell);
    for (const watch of this.narrow.get(column) ?? []) meets(watch, row, pass, visit);
    for (const watch of this.wide) if (column >= watch.left && column <= watch.right) meets(watch, row, pass, visit);
  }

  private add(watch: Watch): void {
    const own = this.watches.get(watch.shared);
    if (own) own.push(watch);
    else this.watches.set(watch.shared, [watch]);
    if (watch.right - watch.left > WIDE) {
      this.wide.add(watch);
      return;
    }
    const rows = lowRows(watch);
    for (let column = watch.left; column <= watch.right; column += 1) {
      if (rows === null) addTo(this.narrow, column, watch);
      else {
        let low = this.low.get(column);
        if (!low) this.low.set(column, (low = new Map<number, Set<Watch>>()));
        for (const row of rows) addTo(low, row, watch);
      }
    }
  }
}
function addTo(list: Map<number, Set<Watch>>, at: number, watch: Watch): void {
  const here = list.get(at);
  if (here) here.add(watch);
  else list.set(at, new Set([watch]));
}
/** The few rows that a formula of one cell reads; null for many, or where the formula stands in several rows. */
function lowRows({ shared, top, bottom }: Watch): readonly number[] | null {
  if (shared.first !== shared.last) return null;
  const [a, b] = [top.at, bottom.at];
  return b - a >= LOW ? null : Array.from({ length: b - a + 1 }, (_, at) => a + at);
}
function meets({ shared, top, bottom }: Watch, row: number, pass: number, visit: (cell: FormulaCell) => void): void {
  const { cells } = shared;
  if (top.fixed && bottom.fixed) {
    if (row < top.at || row > bottom.at || shared.marked === pass) return;
    shared.marked = pass;
    for (const cell of cells.values()) visit(cell);
    return;
  }
  const from = shared.row + row - bottom.at;
  const to = shared.row + row - top.at;
  if (!top.fixed && !bottom.fixed && to - from < cells.size) {
    for (let at = from; at <= to; at += 1) {
      const cell = cells.get(at);
      if (cell) visit(cell);
    }
    return;
  }
  for (const cell of cells.values()) {
    const a = top.fixed ? top.at : top.at + cell.row - shared.row;
    const b = bottom.fixed ? bottom.at : bottom.at + cell.row - shared.row;
    if (row >= Math.min(a, b) && row <= Math.max(a, b)) visit(cell);
  }
}

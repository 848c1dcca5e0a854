/**
 * Keeps a formula engine in step with a book and writes the results back into it. The book is the only truth: each pass
 * compares its cells with what the engine was last given, so no change can be missed, and only what depends on a
 * difference is worked out again.
 */
import type { Book, Box, Calculator, Cell, FormatRule, Scalar, Sheet } from "../book/book";
import { Filled, FormulaCell, type Held, type SharedFormula, type SheetCells } from "./cells";
import { FormulaEngine, type Pass } from "./engine";
import { holds, SheetRules } from "./rules";
import type { Surroundings, TableShape } from "./structured";
import { Fault, type Item } from "./values";
import { type BlankMode, type ParameterShapes, todaySerial, worksheetFunction, type WorksheetFunction } from "./worksheet-functions";
import { WrittenFormulas } from "./written-formulas";

export interface CalculatorOptions {
  /** Worksheet functions by full name, such as `GEAR.VERDICT`. */
  readonly functions: ReadonlyMap<string, WorksheetFunction>;
  /** Their declared parameters; without them a single cell is a scalar and a larger range an array. */
  readonly shapes?: ParameterShapes;
  readonly blank?: BlankMode;
  /** Called for a sheet whose conditional formats look different now; without it the rules are not worked out. */
  readonly onRules?: (sheet: Sheet) => void;
  /** Serial day that TODAY() gives; the machine's local date when absent. */
  readonly today?: () => number;
}
/** What the last pass did. */
export interface PassFigures {
  readonly formulas: number;
  readonly changed: number;
  readonly milliseconds: number;
}
/** What is known of a book between its passes. */
interface Known {
  readonly book: Book;
  readonly engine: FormulaEngine;
  readonly written: WrittenFormulas;
  readonly rules: Map<string, { rules: SheetRules; held: Map<FormulaCell, boolean> }>;
  sheets: string;
  shape: string;
  version: number;
}
export class WorkbookCalculator implements Calculator {
  last: PassFigures = { formulas: 0, changed: 0, milliseconds: 0 };
  private readonly options: CalculatorOptions;
  private mode: BlankMode;
  private known: Known | null = null;
  private everything = false;
  private queue: Promise<void> = Promise.resolve();

  constructor(options: CalculatorOptions) {
    this.options = options;
    this.mode = options.blank ?? "null";
  }

  get blank(): BlankMode {
    return this.mode;
  }

  /** Changes what blank cells are handed over as; the next pass works everything out again. */
  set blank(mode: BlankMode) {
    this.mode = mode;
    this.everything = true;
  }

  /** Passes run one after the other; each sees the book as it is when it begins. */
  recalculate(book: Book): Promise<void> {
    const pass = this.queue.then(() => this.pass(book));
    this.queue = pass.catch(() => undefined);
    return pass;
  }

  /** Conditional formats that hold in a cell since the last pass, the strongest first. */
  rulesAt(sheet: Sheet, row: number, column: number): FormatRule[] {
    return this.known?.rules.get(sheet.id)?.rules.at(row, column) ?? [];
  }

  dispose(): void {
    this.known = null;
  }

  private async pass(book: Book): Promise<void> {
    const began = performance.now();
    const around = surroundings(book, (this.options.today ?? todaySerial)());
    const known = this.knownOf(book, around);
    const { engine } = known;
    const results: Results = { back: [], leftOver: [] };
    for (const sheet of book.sheets) {
      compare(known, sheet, results);
      if (this.options.onRules) rulesOf(known, sheet).rules.compare(engine, sheet, around, known.version);
    }
    if (this.everything) engine.everythingAgain();
    this.everything = false;
    // What it holds after a failure is half worked out; the next pass begins afresh.
    const pass = await engine.run().catch((failure: unknown) => {
      this.dispose();
      throw failure;
    });
    const changed = writeBack(book, engine, pass, results);
    this.tellRules(book, known);
    this.last = { formulas: pass.worked.size, changed, milliseconds: performance.now() - began };
  }

  private knownOf(book: Book, around: Surroundings): Known {
    const sheets = JSON.stringify(book.sheets.map((sheet) => [sheet.id, sheet.name]));
    const shape = JSON.stringify([around.today, around.tables, [...around.names]]);
    if (this.known?.book !== book) {
      const functions = [...this.options.functions].map(
        ([name, run]) => [name.toUpperCase(), worksheetFunction(name, run, () => this.mode, this.options.shapes?.get(name))] as const,
      );
      const engine = new FormulaEngine(new Map(functions));
      engine.take(book.sheets);
      this.known = { book, engine, written: new WrittenFormulas(engine, around), rules: new Map(), sheets, shape, version: 1 };
      return this.known;
    }
    const { known } = this;
    if (sheets !== known.sheets) known.engine.take(book.sheets);
    if (sheets !== known.sheets || shape !== known.shape) {
      known.written.lookAgain(around, sheets !== known.sheets);
      known.version += 1;
    }
    Object.assign(known, { sheets, shape });
    return known;
  }

  private tellRules(book: Book, known: Known): void {
    if (!this.options.onRules) return;
    for (const sheet of book.sheets) {
      const { rules, held } = rulesOf(known, sheet);
      const before = new Map(held);
      held.clear();
      for (const { cells } of rules.formulas()) for (const cell of cells.values()) if (holds(cell)) held.set(cell, true);
      if (before.size !== held.size || [...held.keys()].some((cell) => !before.has(cell))) this.options.onRules(sheet);
    }
  }
}
function rulesOf({ rules }: Known, sheet: Sheet): { rules: SheetRules; held: Map<FormulaCell, boolean> } {
  let own = rules.get(sheet.id);
  if (!own) rules.set(sheet.id, (own = { rules: new SheetRules(), held: new Map() }));
  return own;
}
/** Results that stand in the engine and not in the book. */
interface Results {
  /** Formulas whose result was overwritten. */
  readonly back: FormulaCell[];
  /** Cells that an array result filled before, in the file or here. */
  readonly leftOver: { sheet: Sheet; row: number; column: number }[];
}
/** Gives the engine every cell that differs from what it holds. */
function compare({ engine, written }: Known, sheet: Sheet, results: Results): void {
  const cells = engine.sheet(sheet.id);
  const leftOver = new Set<Cell>();
  if (cells.rows.size === 0) filledByFile(sheet, results, leftOver);
  const put = (row: number, column: number, held: Held): void => {
    const before = cells.held(row, column);
    // First the cell, then what it filled: an array result never ends in the way of its own successor.
    cells.hold(row, column, held);
    if (before instanceof FormulaCell) {
      filledBy(before, sheet, results, leftOver);
      engine.drop(before);
    }
    if (before instanceof Filled) engine.again(before.by);
    engine.touch(cells, row, column);
  };
  for (const [row, line] of sheet.rows) {
    let held = cells.rows.get(row);
    for (const [column, cell] of line) {
      const before = held?.[column];
      if (cell.formula !== undefined) {
        if (before instanceof FormulaCell && before.text === cell.formula && isOf(before.shared, row)) {
          if (before.state === "done" && !shows(cell, before.item)) results.back.push(before);
          continue;
        }
        const shared: SharedFormula = written.for(sheet, row, column, cell.formula);
        put(row, column, engine.cell(shared, row, cell.formula));
      } else {
        const now =
          cell.error !== undefined ? faultIn(before, cell.error) : cell.value === null || cell.value === "" ? undefined : cell.value;
        if (before instanceof Filled) {
          if (shows(cell, before.item)) continue;
        } else if (before === now || leftOver.has(cell)) continue;
        put(row, column, now);
      }
      held ??= cells.rows.get(row);
    }
  }
  for (const [row, held] of cells.rows) {
    const line = sheet.rows.get(row);
    held.forEach((before, column) => {
      if (before !== undefined && line?.has(column) !== true) put(row, column, undefined);
    });
  }
}
const isOf = (shared: SharedFormula, row: number): boolean => !shared.stale && row >= shared.first && row <= shared.last;
/** The same error is the same thing. */
const faultIn = (before: Held, code: string): Fault => (before instanceof Fault && before.code === code ? before : new Fault(code));
const shows = (cell: Cell, item: Item): boolean =>
  item instanceof Fault ? cell.error === item.code : cell.error === undefined && cell.value === item;
/** Cells that a file says are filled by an array formula are results, not entries. */
function filledByFile(sheet: Sheet, results: Results, leftOver: Set<Cell>): void {
  for (const [row, line] of sheet.rows)
    for (const [column, { spill, formula }] of line) {
      if (!spill || formula === undefined) continue;
      for (let r = spill.row; r < spill.row + spill.rows; r += 1)
        for (let c = spill.column; c < spill.column + spill.columns; c += 1) {
          const cell = sheet.cell(r, c);
          if (!cell || (r === row && c === column) || cell.formula !== undefined) continue;
          leftOver.add(cell);
          results.leftOver.push({ sheet, row: r, column: c });
        }
    }
}
/** Cells that show what a formula filled them with, which ends here. */
function filledBy({ spill, row, shared }: FormulaCell, sheet: Sheet, results: Results, leftOver: Set<Cell>): void {
  const { column } = shared;
  for (let r = row; spill !== null && r < row + spill.height; r += 1)
    for (let c = column; c < column + spill.width; c += 1) {
      const held = shared.sheet.held(r, c);
      const cell = sheet.cell(r, c);
      if (!(held instanceof Filled) || !cell || !shows(cell, held.item)) continue;
      leftOver.add(cell);
      results.leftOver.push({ sheet, row: r, column: c });
    }
}
function writeBack(book: Book, engine: FormulaEngine, { worked, emptied }: Pass, { back, leftOver }: Results): number {
  const bounds = new Map(book.sheets.map((sheet) => [engine.sheet(sheet.id), { sheet, bounds: new Bounds() }]));
  const write = (cells: SheetCells, row: number, column: number, item: Item, entry: boolean): void => {
    const own = bounds.get(cells);
    const cell = entry ? own?.sheet.cell(row, column) : own?.sheet.at(row, column);
    if (!own || !cell || (cell.formula !== undefined) !== entry) return;
    if (assign(cell, item)) own.bounds.add(row, column);
  };
  for (const { sheet, row, column } of leftOver) {
    const cells = engine.sheet(sheet.id);
    if (cells.held(row, column) === undefined) write(cells, row, column, null, false);
  }
  for (const { sheet, row, column } of emptied) if (sheet.held(row, column) === undefined) write(sheet, row, column, null, false);
  for (const cell of [...back, ...worked]) {
    const { shared, row, spill } = cell;
    const { sheet, column } = shared;
    if (sheet.held(row, column) !== cell) continue;
    write(sheet, row, column, cell.item, true);
    const inBook = bounds.get(sheet)?.sheet.cell(row, column);
    if (spill === null) {
      if (inBook?.spill) delete inBook.spill;
      continue;
    }
    if (inBook) inBook.spill = { row, column, rows: spill.height, columns: spill.width };
    for (let r = 0; r < spill.height; r += 1)
      for (let c = 0; c < spill.width; c += 1) {
        const filled = sheet.held(row + r, column + c);
        if (filled instanceof Filled) write(sheet, row + r, column + c, filled.item, false);
      }
  }
  let changed = 0;
  for (const own of bounds.values()) {
    changed += own.bounds.count;
    const box = own.bounds.box();
    if (box) book.tell({ kind: "cells", sheet: own.sheet, box, by: "calc" });
  }
  return changed;
}
function surroundings(book: Book, today: number): Surroundings {
  const tables: TableShape[] = book.tables.map((table) => ({
    name: table.name,
    sheet: table.sheet.name,
    box: table.box,
    totals: table.totals === true,
    headings: Array.from({ length: table.box.columns }, (_, index) =>
      String(table.sheet.cell(table.box.row, table.box.column + index)?.value ?? ""),
    ),
  }));
  return { today, tables, names: new Map([...book.names].map(([name, formula]) => [name.toLowerCase(), formula])) };
}
/** Writes a result into a cell; false when it was there already. */
function assign(cell: Cell, item: Item): boolean {
  const fault = item instanceof Fault ? item : null;
  const value: Scalar = item instanceof Fault ? null : item;
  const message = fault === null || fault.message === "" ? undefined : fault.message;
  if (cell.value === value && cell.error === fault?.code && cell.message === message) return false;
  cell.value = value;
  if (fault === null) delete cell.error;
  else cell.error = fault.code;
  if (message === undefined) delete cell.message;
  else cell.message = message;
  return true;
}
/** Smallest box around the cells that changed. */
class Bounds {
  count = 0;
  private top = Infinity;
  private left = Infinity;
  private bottom = -1;
  private right = -1;

  add(row: number, column: number): void {
    this.count += 1;
    this.top = Math.min(this.top, row);
    this.bottom = Math.max(this.bottom, row);
    this.left = Math.min(this.left, column);
    this.right = Math.max(this.right, column);
  }

  box(): Box | null {
    if (this.count === 0) return null;
    return { row: this.top, column: this.left, rows: this.bottom - this.top + 1, columns: this.right - this.left + 1 };
  }
}

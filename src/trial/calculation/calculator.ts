/**
 * Keeps a formula engine in step with a book and writes the results back into it. The book is the only truth: each pass
 * compares its cells with what the engine was last given, so no change can be missed, and only what depends on a
 * difference is worked out again.
 */
import type { Book, Box, Calculator, Cell, FormatRule, Sheet } from "../book/book";
import { hasRelativeReference } from "../book/formula-text";
import { type EngineCell, FormulaEngine, type PlacedResult, type Result, type Touched } from "./engine";
import { JoinedRanges } from "./joined-ranges";
import { FIRST_RULE_COLUMN, SheetRules } from "./rules";
import { BrokenReference, type Place, type Surroundings, type TableShape, writeOutReferences } from "./structured";
import {
  type BlankMode,
  type ParameterShapes,
  todayFunction,
  todaySerial,
  worksheetFunction,
  type WorksheetFunction,
} from "./worksheet-functions";

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
  /** Milliseconds without any result after which a calculation is given up. */
  readonly patience?: number;
}
/** What the last pass did. */
export interface PassFigures {
  readonly formulas: number;
  readonly changed: number;
  readonly milliseconds: number;
}
/** A formula as it was handed to the engine. `broken` is set when a reference in it leads nowhere. */
interface Written {
  readonly text: string;
  readonly version: number;
  readonly formula: string;
  /** The row for which the formula is written; the cells below it in the table share it. */
  readonly row: number;
  readonly broken?: Result;
}
interface Mirror {
  readonly written: WeakMap<Cell, Written>;
  /** The last result of each formula, so that a value that was overwritten can be put back. */
  readonly results: WeakMap<Cell, Result>;
  /** Cells filled by an array result, with the value they were given. */
  readonly spilled: Map<Cell, PlacedResult>;
  /** Formulas whose array result found no room; tried again at each pass. */
  readonly blocked: Map<Cell, Touched>;
  readonly rules: SheetRules;
  /** What the engine holds: row, then column. */
  readonly held: Map<number, Map<number, EngineCell>>;
}
/** What a comparison found: cells to work out from, and results that are known without the engine. */
interface Findings {
  readonly touched: Touched[];
  readonly known: PlacedResult[];
}
export class UniverCalculator implements Calculator {
  last: PassFigures = { formulas: 0, changed: 0, milliseconds: 0 };
  private readonly options: CalculatorOptions;
  private mode: BlankMode;
  private engine: FormulaEngine | undefined;
  private book: Book | undefined;
  private sheets = "";
  private shape = "";
  private version = 0;
  private everything = true;
  private readonly columns = new ColumnFormulas();
  private readonly mirrors = new Map<string, Mirror>();
  private readonly joined = new JoinedRanges();
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
    return this.mirrors.get(sheet.id)?.rules.at(row, column) ?? [];
  }

  dispose(): void {
    this.engine?.dispose();
    this.engine = undefined;
    this.sheets = "";
  }

  private today(): number {
    return (this.options.today ?? todaySerial)();
  }

  private async pass(book: Book): Promise<void> {
    const began = performance.now();
    const engine = this.engineFor(book);
    const around = surroundings(book, this.today());
    const shape = JSON.stringify([around.today, around.tables, [...around.names]]);
    if (shape !== this.shape) {
      this.shape = shape;
      this.version += 1;
      this.columns.forget(around);
    }
    const findings: Findings = { touched: [], known: [] };
    this.joined.begin();
    for (const sheet of book.sheets) {
      this.compare(engine, sheet, around, findings);
      if (this.options.onRules) this.mirror(sheet).rules.compare(engine, sheet, around, this.version, findings.touched);
    }
    // What it holds after a failure is half worked out; the next pass begins afresh.
    const run = (touched: readonly Touched[], everything: boolean): Promise<readonly PlacedResult[]> =>
      engine.run(touched, everything).catch((failure: unknown) => {
        this.dispose();
        throw failure;
      });
    const results = [...(await run(findings.touched, this.everything))];
    this.everything = false;
    const inCells = (all: readonly PlacedResult[]): PlacedResult[] => all.filter((result) => result.column < FIRST_RULE_COLUMN);
    let changed = this.writeBack(book, findings.known, inCells(results));
    const moved = this.joined.moved(book);
    if (moved.length > 0) {
      const again = await run(moved, false);
      changed += this.writeBack(book, [], inCells(again));
      results.push(...again);
    }
    this.takeRules(book, results);
    this.last = { formulas: results.length, changed, milliseconds: performance.now() - began };
  }

  /** The engine is made anew when the book or its list of sheets is another one. */
  private engineFor(book: Book): FormulaEngine {
    const sheets = JSON.stringify(book.sheets.map((sheet) => [sheet.id, sheet.name]));
    if (this.engine && sheets === this.sheets && this.book === book) return this.engine;
    this.engine?.dispose();
    const functions = [...this.options.functions].map(
      ([name, run]) =>
        [worksheetFunction(name, run, () => this.mode, this.options.shapes?.get(name)), name] as [
          ReturnType<typeof worksheetFunction>,
          string,
        ],
    );
    functions.push([todayFunction(() => this.today()), "TODAY"]);
    this.engine = new FormulaEngine(book.sheets, functions, this.options.patience);
    this.book = book;
    this.sheets = sheets;
    this.everything = true;
    const before = new Map(this.mirrors);
    this.mirrors.clear();
    for (const sheet of book.sheets) {
      const spilled = before.get(sheet.id)?.spilled ?? new Map<Cell, PlacedResult>();
      this.mirrors.set(sheet.id, {
        written: new WeakMap(),
        results: new WeakMap(),
        spilled,
        blocked: new Map(),
        rules: new SheetRules(),
        held: new Map(),
      });
      rememberSpills(sheet, spilled);
    }
    return this.engine;
  }

  /** Gives the engine every cell that differs from what it holds. */
  private compare(engine: FormulaEngine, sheet: Sheet, around: Surroundings, findings: Findings): void {
    const mirror = this.mirror(sheet);
    const put = (row: number, column: number, cell: EngineCell | null): void => {
      engine.put(sheet.id, row, column, cell);
      findings.touched.push({ sheet: sheet.id, row, column });
    };
    for (const [row, cells] of sheet.rows) {
      let held: Map<number, EngineCell> | undefined = mirror.held.get(row);
      for (const [column, cell] of cells) {
        const now = this.engineCell(sheet, row, column, cell, around, findings);
        if (same(held?.get(column), now) && !(now?.formula !== undefined && !mirror.results.has(cell) && !this.everything)) continue;
        put(row, column, now);
        if (now === null) held?.delete(column);
        else {
          if (!held) mirror.held.set(row, (held = new Map<number, EngineCell>()));
          held.set(column, now);
        }
      }
    }
    for (const [row, held] of mirror.held) {
      const cells = sheet.rows.get(row);
      for (const column of held.keys()) {
        if (cells?.has(column)) continue;
        put(row, column, null);
        held.delete(column);
      }
    }
    for (const [cell, place] of mirror.blocked) {
      if (cell.error === "#SPILL!") findings.touched.push(place);
      mirror.blocked.delete(cell);
    }
  }

  /** What the engine should hold for a cell; results that need no calculation are noted in passing. */
  private engineCell(sheet: Sheet, row: number, column: number, cell: Cell, around: Surroundings, findings: Findings): EngineCell | null {
    const mirror = this.mirror(sheet);
    if (cell.formula !== undefined) {
      const written = this.written(sheet, row, column, cell, mirror, around);
      if (this.book) this.joined.note(this.book, written.formula, sheet.name, { sheet: sheet.id, row, column });
      const known = written.broken ?? mirror.results.get(cell);
      if (known) findings.known.push({ ...known, sheet: sheet.id, row, column });
      if (written.broken) return written.broken;
      return row === written.row ? { formula: written.formula } : { formula: written.formula, down: row - written.row };
    }
    const spilled = mirror.spilled.get(cell);
    if (spilled) {
      if (spilled.value === cell.value && spilled.error === cell.error) return null;
      mirror.spilled.delete(cell);
      if (spilled.spilledFrom) findings.touched.push({ sheet: sheet.id, ...spilled.spilledFrom });
    }
    if (cell.error !== undefined) return { error: cell.error };
    return cell.value === null || cell.value === "" ? null : { value: cell.value };
  }

  private written(sheet: Sheet, row: number, column: number, cell: Cell, mirror: Mirror, around: Surroundings): Written {
    const text = cell.formula ?? "";
    const before = mirror.written.get(cell);
    if (before?.text === text && before.version === this.version) return before;
    const place = { sheet: sheet.name, row, column };
    const written = this.columns.known(text, place) ?? this.writeOut(text, place, around);
    this.columns.note(written, place);
    mirror.written.set(cell, written);
    return written;
  }

  private writeOut(text: string, place: Place, around: Surroundings): Written {
    const { version } = this;
    try {
      return { text, version, row: place.row, formula: writeOutReferences(text, place, around) };
    } catch (failure) {
      if (!(failure instanceof BrokenReference)) throw failure;
      return { text, version, row: place.row, formula: "", broken: { value: null, error: failure.code, message: failure.message } };
    }
  }

  private mirror(sheet: Sheet): Mirror {
    const mirror = this.mirrors.get(sheet.id);
    if (!mirror) throw new Error(`The calculation does not know the sheet ${sheet.name}.`);
    return mirror;
  }

  private takeRules(book: Book, results: readonly PlacedResult[]): void {
    for (const sheet of book.sheets) {
      const { rules } = this.mirror(sheet);
      let changed = false;
      for (const result of results) {
        if (result.column >= FIRST_RULE_COLUMN && result.sheet === sheet.id) changed = rules.take(result) || changed;
      }
      if (changed) this.options.onRules?.(sheet);
    }
  }

  private writeBack(book: Book, known: readonly PlacedResult[], workedOut: readonly PlacedResult[]): number {
    let changed = 0;
    for (const sheet of book.sheets) {
      const mirror = this.mirror(sheet);
      const here = (result: PlacedResult): boolean => result.sheet === sheet.id;
      const fresh = workedOut.filter(here);
      const bounds = new Bounds();
      this.clearOldSpills(sheet, mirror, fresh, bounds);
      // Later results of a cell replace earlier ones: what was known before gives way to what was worked out now.
      for (const { row, column, spilledFrom } of fresh) if (!spilledFrom) delete sheet.cell(row, column)?.spill;
      const latest = new Map([...known.filter(here), ...fresh].map((result) => [key(result), result]));
      for (const result of latest.values()) {
        const cell = result.spilledFrom ? sheet.at(result.row, result.column) : sheet.cell(result.row, result.column);
        if (!cell || (result.spilledFrom === undefined) !== (cell.formula !== undefined)) continue;
        const { value, error, message } = result;
        const plain: Result = { value, ...(error === undefined ? {} : { error }), ...(message === undefined ? {} : { message }) };
        if (result.spilledFrom) {
          mirror.spilled.set(cell, result);
          growSpill(sheet, result);
        } else mirror.results.set(cell, plain);
        if (error === "#SPILL!") mirror.blocked.set(cell, { sheet: sheet.id, row: result.row, column: result.column });
        if (assign(cell, plain)) bounds.add(result.row, result.column);
      }
      changed += bounds.count;
      const box = bounds.box();
      if (box) book.tell({ kind: "cells", sheet, box, by: "calc" });
    }
    return changed;
  }

  /** An array result that shrank, or whose formula is gone, leaves no values behind. */
  private clearOldSpills(sheet: Sheet, mirror: Mirror, results: readonly PlacedResult[], bounds: Bounds): void {
    if (mirror.spilled.size === 0) return;
    const workedOut = new Set(results.filter((result) => !result.spilledFrom).map(key));
    const filled = new Set(results.filter((result) => result.spilledFrom).map(key));
    for (const [cell, spilled] of mirror.spilled) {
      const from = spilled.spilledFrom;
      const gone = !from || sheet.cell(from.row, from.column)?.formula === undefined;
      if (!gone && (!workedOut.has(key({ ...from, sheet: sheet.id })) || filled.has(key(spilled)))) continue;
      mirror.spilled.delete(cell);
      if (cell.formula === undefined && cell.value === spilled.value && assign(cell, { value: null }))
        bounds.add(spilled.row, spilled.column);
    }
  }
}
/** Formulas of table columns that are the same text in every row: written out once, for the first of them. */
class ColumnFormulas {
  private tables: readonly TableShape[] = [];
  private names: readonly string[] = [];
  private readonly first = new Map<string, Written>();
  private readonly movable = new Map<string, boolean>();

  forget(around: Surroundings): void {
    this.tables = around.tables;
    this.names = [...around.names.keys()];
    this.first.clear();
    this.movable.clear();
  }

  known(text: string, place: Place): Written | undefined {
    const key = this.key(text, place);
    return key === null ? undefined : this.first.get(key);
  }

  note(written: Written, place: Place): void {
    if (written.broken) return;
    const key = this.key(written.text, place);
    if (key !== null && !this.first.has(key)) this.first.set(key, written);
  }

  /** Null where the formula is not the same in each row of its table. */
  private key(text: string, { sheet, row, column }: Place): string | null {
    const table = this.tables.find(
      ({ sheet: on, box, totals }) =>
        on === sheet &&
        row > box.row &&
        row < box.row + box.rows - (totals ? 1 : 0) &&
        column >= box.column &&
        column < box.column + box.columns,
    );
    if (!table) return null;
    const key = `${table.name} ${String(column)} ${text}`;
    let movable = this.movable.get(key);
    if (movable === undefined) {
      const lower = text.toLowerCase();
      const ofOthers = [...text.matchAll(/([\p{L}\p{N}_.\\]+)\[(?:@|\[\s*#this row)/giu)].some(
        ([, name = ""]) => name.toLowerCase() !== table.name.toLowerCase(),
      );
      movable = !ofOthers && !hasRelativeReference(text) && !this.names.some((name) => lower.includes(name));
      this.movable.set(key, movable);
    }
    return movable ? key : null;
  }
}
/** Cells that a file says are filled by an array formula are results, not entries. */
function rememberSpills(sheet: Sheet, spilled: Map<Cell, PlacedResult>): void {
  for (const [row, cells] of sheet.rows) {
    for (const [column, { spill, formula }] of cells) {
      if (!spill || formula === undefined) continue;
      for (let r = spill.row; r < spill.row + spill.rows; r += 1) {
        for (let c = spill.column; c < spill.column + spill.columns; c += 1) {
          const cell = sheet.cell(r, c);
          if (!cell || (r === row && c === column) || cell.formula !== undefined) continue;
          const { value, error } = cell;
          spilled.set(cell, {
            sheet: sheet.id,
            row: r,
            column: c,
            value,
            ...(error === undefined ? {} : { error }),
            spilledFrom: { row, column },
          });
        }
      }
    }
  }
}
function growSpill(sheet: Sheet, result: PlacedResult): void {
  const from = result.spilledFrom;
  const cell = from && sheet.cell(from.row, from.column);
  if (!cell) return;
  const rows = Math.max(cell.spill?.rows ?? 1, result.row - from.row + 1);
  const columns = Math.max(cell.spill?.columns ?? 1, result.column - from.column + 1);
  cell.spill = { row: from.row, column: from.column, rows, columns };
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
function same(a: EngineCell | null | undefined, b: EngineCell | null | undefined): boolean {
  if (!a || !b) return !a && !b;
  return a.formula === b.formula && a.down === b.down && a.value === b.value && a.error === b.error;
}
/** Writes a result into a cell; false when it was there already. */
function assign(cell: Cell, result: Result): boolean {
  if (cell.value === result.value && cell.error === result.error && cell.message === result.message) return false;
  cell.value = result.value;
  if (result.error === undefined) delete cell.error;
  else cell.error = result.error;
  if (result.message === undefined) delete cell.message;
  else cell.message = result.message;
  return true;
}
function key(place: { sheet: string; row: number; column: number }): string {
  return `${place.sheet} ${String(place.row)} ${String(place.column)}`;
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

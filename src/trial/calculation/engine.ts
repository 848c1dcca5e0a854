/**
 * Works formulas out: a cell that changed makes all formulas due that read it, directly or through others, as in Excel; each
 * of them is worked out once, what it reads first. Nothing here knows the book.
 */
import { Filled, FormulaCell, SharedFormula, SheetCells } from "./cells";
import { compile, type SheetFunction } from "./compile";
import { NoFormula, treeOf } from "./formula-tree";
import { builtIn } from "./functions";
import type { fromLibrary } from "./library";
import { Fault, type Item, Matrix, settled } from "./values";

/** Formulas that are worked out inside one another before the inner ones are done first. */
const DEEPEST = 120;
/** How often one cell is worked out anew in a pass, where array results get in each other's way. */
const MOST_RUNS = 50;
/** Milliseconds after which others on the page have a turn. */
const TURN = 60;
const STUCK =
  "The formulas did not come to an end, so their results are not shown. Undo the last change, or open the workbook again and take fewer rows at a time.";
/** A cell that has to be worked out before the one that reads it. */
class Later extends Error {
  readonly cell: FormulaCell;

  constructor(cell: FormulaCell) {
    super("later");
    this.cell = cell;
  }
}
/** What a pass did. */
export interface Pass {
  readonly worked: ReadonlySet<FormulaCell>;
  /** Cells that an array result filled before and fills no more. */
  readonly emptied: readonly { readonly sheet: SheetCells; readonly row: number; readonly column: number }[];
}
export interface SheetLike {
  readonly id: string;
  readonly name: string;
  readonly hiddenRows: ReadonlySet<number>;
}
export class FormulaEngine {
  private readonly sheets = new Map<string, SheetCells>();
  private readonly byName = new Map<string, SheetCells>();
  private readonly own: ReadonlyMap<string, SheetFunction>;
  private readonly builtIn: ReadonlyMap<string, SheetFunction>;
  private readonly restless = new Set<SharedFormula>();
  private readonly shared = new Set<SharedFormula>();
  /** Formulas whose array result found no room; tried again at each pass. */
  private readonly blocked = new Set<FormulaCell>();
  /** Formulas that were read while they were worked out. */
  private readonly circular = new Set<FormulaCell>();
  private due: FormulaCell[] = [];
  private worked = new Set<FormulaCell>();
  private emptied: { sheet: SheetCells; row: number; column: number }[] = [];
  private pass = 1;
  private running = false;
  private depth = 0;
  private library: typeof fromLibrary | null = null;
  private wantsLibrary = false;

  /** `own` are the add-in's functions, by name in capital letters. */
  constructor(own: ReadonlyMap<string, SheetFunction>) {
    this.own = own;
    this.builtIn = builtIn((sheet) => (sheet === null ? null : (this.byName.get(sheet.toLowerCase()) ?? null)));
  }

  /** The sheets that there are; cells of one that is gone are forgotten. */
  take(sheets: readonly SheetLike[]): void {
    this.byName.clear();
    for (const sheet of sheets) {
      const cells =
        this.sheets.get(sheet.id) ??
        new SheetCells(sheet.id, sheet.hiddenRows, (cell) => {
          this.settle(cell);
        });
      this.sheets.set(sheet.id, cells);
      this.byName.set(sheet.name.toLowerCase(), cells);
    }
    const there = new Set(sheets.map(({ id }) => id));
    for (const [id, cells] of this.sheets) {
      if (there.has(id)) continue;
      this.sheets.delete(id);
      for (const shared of this.shared) if (shared.sheet === cells) this.forget(shared);
    }
  }

  sheet(id: string): SheetCells {
    const cells = this.sheets.get(id);
    if (!cells) throw new Error(`The calculation does not know the sheet ${id}.`);
    return cells;
  }

  /** A formula for the rows from `first` to `last` of a column; `written` has no table references or names left. */
  share(
    place: { sheet: SheetCells; row: number; column: number; right?: number },
    rows: { first: number; last: number },
    written: string | Fault,
  ): SharedFormula {
    const text = written instanceof Fault ? "" : written;
    const shared = new SharedFormula(place, rows, text, this.compiled(place.sheet, written));
    place.sheet.watch(shared);
    this.shared.add(shared);
    if (shared.compiled.restless) this.restless.add(shared);
    return shared;
  }

  /** Ends what nobody uses any more. */
  forget(shared: SharedFormula): void {
    shared.stale = true;
    this.shared.delete(shared);
    this.restless.delete(shared);
    for (const source of new Set(shared.compiled.reads.map((read) => read.source)))
      if (source instanceof SheetCells) source.unwatch(shared);
  }

  /** A cell of a shared formula, which is due. */
  cell(shared: SharedFormula, row: number, text: string): FormulaCell {
    const cell = new FormulaCell(shared, row, text);
    shared.cells.set(row, cell);
    this.due.push(cell);
    return cell;
  }

  /** Takes a formula's cell out of the calculation. */
  drop(cell: FormulaCell): void {
    const { shared, row } = cell;
    if (shared.cells.get(row) === cell) shared.cells.delete(row);
    this.blocked.delete(cell);
    this.fill(cell, null);
    cell.state = "done";
    if (shared.cells.size === 0) this.forget(shared);
  }

  /** What reads the cell is due, and what reads that. */
  touch(sheet: SheetCells, row: number, column: number): void {
    // What was worked out already in this pass becomes due once more.
    if (this.running) this.pass += 1;
    const queue: FormulaCell[] = [];
    const visit = (cell: FormulaCell): void => {
      if (this.mark(cell)) queue.push(cell);
    };
    sheet.readers(row, column, this.pass, visit);
    for (let cell = queue.pop(); cell; cell = queue.pop()) {
      const { shared, spill } = cell;
      shared.sheet.readers(cell.row, shared.column, this.pass, visit);
      for (let r = 0; spill !== null && r < spill.height; r += 1)
        for (let c = 0; c < spill.width; c += 1) shared.sheet.readers(cell.row + r, shared.column + c, this.pass, visit);
    }
  }

  /** Makes a formula due, and all that read it. */
  again(cell: FormulaCell): void {
    if (this.mark(cell)) this.touch(cell.shared.sheet, cell.row, cell.shared.column);
  }

  everythingAgain(): void {
    for (const { cells } of this.shared) for (const cell of cells.values()) this.mark(cell);
  }

  /** Works out what is due. */
  async run(): Promise<Pass> {
    for (const cell of [...this.blocked]) this.again(cell);
    for (const { cells } of this.restless) for (const cell of cells.values()) this.again(cell);
    if (this.wantsLibrary && this.library === null) this.library = (await import("./library")).fromLibrary;
    this.running = true;
    let turn = performance.now();
    for (let at = 0; at < this.due.length; at += 1) {
      const cell = this.due[at];
      if (cell?.state === "due") this.workOut(cell);
      if (at % 32 === 31 && performance.now() - turn > TURN) {
        await new Promise((done) => setTimeout(done));
        turn = performance.now();
      }
    }
    this.running = false;
    const done: Pass = { worked: this.worked, emptied: this.emptied };
    for (const cell of this.worked) cell.runs = 0;
    this.due = [];
    this.worked = new Set();
    this.emptied = [];
    this.pass += 1;
    return done;
  }

  private compiled(sheet: SheetCells, written: string | Fault): ReturnType<typeof compile> {
    const only = (fault: Fault): ReturnType<typeof compile> => ({ run: () => fault, reads: [], restless: false });
    if (written instanceof Fault) return only(written);
    try {
      return compile(treeOf(written), {
        source: (name) => (name === null ? sheet : (this.byName.get(name.toLowerCase()) ?? null)),
        callable: (name) => this.own.get(name) ?? this.builtIn.get(name) ?? this.late(name),
      });
    } catch (failure) {
      if (failure instanceof NoFormula) return only(new Fault("#NAME?", failure.message));
      throw failure;
    }
  }

  /** A function of the library, which is loaded before it is called. */
  private late(name: string): SheetFunction {
    this.wantsLibrary = true;
    let work: SheetFunction | null | undefined;
    return (given, spot) => {
      work ??= this.library?.(name) ?? null;
      return work === null ? new Fault("#NAME?", `There is no function ${name}.`) : work(given, spot);
    };
  }

  private mark(cell: FormulaCell): boolean {
    if (cell.state !== "done") return false;
    cell.state = "due";
    this.due.push(cell);
    return true;
  }

  /** A cell is read that is not up to date. */
  private settle(cell: FormulaCell): void {
    if (cell.state === "running") {
      this.circular.add(cell);
      return;
    }
    if (this.depth >= DEEPEST) throw new Later(cell);
    this.evaluate(cell);
  }

  private workOut(cell: FormulaCell): void {
    const stack = [cell];
    for (let top = stack.at(-1); top; top = stack.at(-1)) {
      if (top.state === "done") {
        stack.pop();
        continue;
      }
      try {
        this.depth = 0;
        this.evaluate(top);
      } catch (signal) {
        if (!(signal instanceof Later)) throw signal;
        // A chain that comes back to itself.
        if (stack.includes(signal.cell)) this.finish(signal.cell, 0);
        else stack.push(signal.cell);
      }
    }
  }

  private evaluate(cell: FormulaCell): void {
    const { shared, row } = cell;
    cell.state = "running";
    this.circular.delete(cell);
    this.depth += 1;
    try {
      const value = settled(
        shared.compiled.run({ row, column: shared.column + shared.right, down: row - shared.row, right: shared.right }),
      );
      // A circle of references shows 0.
      this.finish(cell, this.circular.has(cell) ? 0 : value);
    } finally {
      this.depth -= 1;
      if ((cell.state as string) === "running") cell.state = "due";
    }
  }

  private finish(cell: FormulaCell, value: Item | Matrix): void {
    cell.runs += 1;
    if (cell.runs > MOST_RUNS) throw new Error(STUCK);
    cell.state = "done";
    this.blocked.delete(cell);
    this.worked.add(cell);
    const matrix = value instanceof Matrix && (value.height > 1 || value.width > 1) ? value : null;
    const single = value instanceof Matrix ? (value.rows[0]?.[0] ?? null) : value;
    if (matrix !== null && !this.hasRoom(cell, matrix)) {
      this.fill(cell, null);
      this.blocked.add(cell);
      cell.item = new Fault("#SPILL!");
      return;
    }
    // A formula that comes to a blank cell shows 0.
    cell.item = single ?? 0;
    this.fill(cell, matrix);
  }

  private hasRoom(cell: FormulaCell, { height, width }: Matrix): boolean {
    const { shared, row } = cell;
    for (let r = 0; r < height; r += 1)
      for (let c = 0; c < width; c += 1) {
        if (r === 0 && c === 0) continue;
        const held = shared.sheet.held(row + r, shared.column + c);
        if (held !== undefined && !(held instanceof Filled && held.by === cell)) return false;
      }
    return true;
  }

  /** Fills the cells beside and below with an array result; null takes them back. */
  private fill(cell: FormulaCell, matrix: Matrix | null): void {
    const { spill, shared, row } = cell;
    if (spill === null && matrix === null) return;
    const { sheet, column } = shared;
    const height = Math.max(spill?.height ?? 1, matrix?.height ?? 1);
    const width = Math.max(spill?.width ?? 1, matrix?.width ?? 1);
    cell.spill = matrix === null ? null : { height: matrix.height, width: matrix.width };
    for (let r = 0; r < height; r += 1)
      for (let c = 0; c < width; c += 1) {
        if (r === 0 && c === 0) continue;
        const item = matrix?.rows[r]?.[c];
        const before = sheet.held(row + r, column + c);
        if (item === undefined) {
          if (!(before instanceof Filled) || before.by !== cell) continue;
          sheet.hold(row + r, column + c, undefined);
          this.emptied.push({ sheet, row: row + r, column: column + c });
        } else {
          sheet.hold(row + r, column + c, new Filled(cell, item ?? 0));
          if (before instanceof Filled && before.item === (item ?? 0)) continue;
        }
        this.touch(sheet, row + r, column + c);
      }
  }
}

/**
 * From the grid to the book: whatever is typed, pasted, filled or deleted in the grid becomes an entry that is put into the
 * book by Excel's rules. The grid's own reading of a typed text is never used.
 */
import {
  CanceledError,
  CellValueType,
  Direction,
  type ICellData,
  ICommandService,
  type ObjectMatrix,
  RedoCommandId,
  UndoCommandId,
} from "@univerjs/core";
import {
  AFTER_CELL_EDIT,
  AUTO_FILL_APPLY_TYPE,
  AUTO_FILL_HOOK_TYPE,
  BEFORE_CELL_EDIT,
  COPY_TYPE,
  IAutoFillService,
  ISheetClipboardService,
  SetCellEditVisibleOperation,
  SetRangeValuesMutation,
  SheetInterceptorService,
} from "@univerjs/preset-sheets-core";
import type { Book, Box, Cell, Scalar, Sheet } from "../book/book";
import { copies, copyOf, filled, type Filled, type Scattered } from "./fill";
import { type Grid, UNIT } from "./grid";
import { refusal } from "./lists";
import { editedText } from "./look";

/** What the grid asks of the workbook's keeper. */
export interface Hands {
  /** Puts entries into a box as a user does; null leaves a cell alone. Rejects with a sentence where Excel would refuse. */
  enter(sheet: Sheet, box: Box, rows: Scalar[][]): Promise<void>;
  /** Works the formulas out after cells were put back as they had been. */
  recalculate(): Promise<void>;
  /** A cell's editor was opened or closed. */
  editing(on: boolean): void;
  /** Shows a sentence to the user. */
  say(sentence: string): void;
}
/** What the grid's parts know of the book that is shown. */
export interface Shown {
  book(): Book | undefined;
  sheetOf(gridId: string): Sheet | undefined;
  /** Shows a box again as the book has it. */
  refresh(sheet: Sheet, box: Box): void;
}
/** What a cell of the grid carries beside its value, so that a copy of it can be told from something typed. */
export interface Mark {
  /** Text as it was typed, before the grid made anything of it. */
  readonly typed?: string;
  /** The book's cell that is shown here. */
  readonly from?: { readonly sheet: string; readonly row: number; readonly column: number };
  /** Makes two marks different, so that the grid takes note of a second entry of the same text. */
  readonly stamp?: number;
}
interface Step {
  readonly sheet: Sheet;
  readonly box: Box;
  readonly cells: (Cell | undefined)[][];
}
const STEPS_KEPT = 50;
export class Entries {
  private readonly grid: Grid;
  private readonly shown: Shown;
  private readonly hands: Hands;
  private opened: { row: number; column: number; text: string } | null = null;
  private stamp = 0;
  private editing = false;
  private steps: Step[] = [];

  constructor(grid: Grid, shown: Shown, hands: Hands) {
    this.grid = grid;
    this.shown = shown;
    this.hands = hands;
    this.openEditors();
    void grid.drawn.then(() => {
      this.takePastes();
      this.takeFills();
    });
    const commands = grid.injector.get(ICommandService);
    commands.onCommandExecuted(({ id, params }) => {
      if (id === SetCellEditVisibleOperation.id) this.noticeEditing((params as { visible?: boolean }).visible === true);
      else if (id === SetRangeValuesMutation.id) this.takeChange(params as ChangedCells);
    });
    commands.beforeCommandExecuted(({ id }) => {
      if (this.editing || (id !== UndoCommandId && id !== RedoCommandId)) return;
      if (id === UndoCommandId) this.undo();
      throw new CanceledError();
    });
  }

  /** Another book is shown: what was entered before can't be taken back any more. */
  forget(): void {
    this.steps = [];
  }

  /** Puts entries into the book; a refusal is shown as a sentence and nothing is entered. */
  enter(sheet: Sheet, entries: readonly Filled[]): void {
    const book = this.shown.book();
    const box = boundsOf(entries);
    if (!book || !box) return;
    const rows: Scalar[][] = Array.from({ length: box.rows }, () => Array<Scalar>(box.columns).fill(null));
    for (const { row, column, value } of entries) {
      const refused = typeof value === "string" ? refusal(book, sheet, row, column, value) : null;
      if (refused !== null) {
        this.hands.say(refused);
        return;
      }
      const cells = rows[row - box.row];
      if (cells) cells[column - box.column] = value;
    }
    this.remember(sheet, box);
    for (const { row, column, copied } of entries) if (copied && !sheet.protected) bringLook(sheet.at(row, column), copied);
    this.hands.enter(sheet, box, rows).catch((failure: unknown) => {
      this.steps.pop();
      this.hands.say(failure instanceof Error ? failure.message : String(failure));
    });
  }

  private openEditors(): void {
    const { writeCellInterceptor } = this.grid.injector.get(SheetInterceptorService);
    writeCellInterceptor.intercept(BEFORE_CELL_EDIT, {
      priority: 1000,
      handler: (cell, { subUnitId, row, col }) => {
        const found = this.shown.sheetOf(subUnitId)?.cell(row, col);
        const text = editedText(found);
        this.opened = { row, column: col, text };
        if (text === "") return cell ? { s: cell.s ?? null } : cell;
        const formula = found?.formula;
        return { s: cell?.s ?? null, v: text, t: CellValueType.STRING, ...(formula === undefined ? {} : { f: formula }) };
      },
    });
    writeCellInterceptor.intercept(AFTER_CELL_EDIT, {
      priority: 1000,
      handler: (cell, { row, col, worksheet }) => {
        const text = typedText(cell as ICellData | null);
        const same = this.opened?.row === row && this.opened.column === col && this.opened.text === text;
        // Left as it was: nothing is entered, so that a date shown short does not lose its time.
        if (same) return { ...worksheet.getCellRaw(row, col) };
        const mark: Mark = { typed: text, stamp: (this.stamp += 1) };
        return { v: text, t: CellValueType.STRING, custom: mark };
      },
    });
  }

  private noticeEditing(on: boolean): void {
    if (this.editing === on) return;
    this.editing = on;
    this.hands.editing(on);
  }

  /** Pasted cells are read from the book they were copied from, so that formulas move along. */
  private takePastes(): void {
    const hook = this.grid.injector
      .get(ISheetClipboardService)
      .getClipboardHooks()
      .find(({ id }) => id === "default-paste");
    if (!hook) throw new Error("The grid's clipboard has no paste to take over.");
    hook.onPasteCells = (from, to, matrix, payload) => {
      const sheet = this.shown.sheetOf(to.subUnitId);
      const source = from ? this.shown.sheetOf(from.subUnitId) : undefined;
      if (sheet) this.enter(sheet, source && from ? copies(source, from.range, sheet, to.range) : pastedTexts(matrix, to.range));
      if (sheet && source && from && payload.copyType === COPY_TYPE.CUT) {
        const kept = new Set(to.range.rows.flatMap((row) => to.range.cols.map((column) => `${String(row)} ${String(column)}`)));
        const emptied = places(from.range).filter(({ row, column }) => source !== sheet || !kept.has(`${String(row)} ${String(column)}`));
        this.enter(
          source,
          emptied.map((place) => ({ ...place, value: "" })),
        );
      }
      return { redos: [], undos: [] };
    };
  }

  private takeFills(): void {
    this.grid.injector.get(IAutoFillService).addHook({
      id: "fill from the book",
      type: AUTO_FILL_HOOK_TYPE.ONLY,
      onFillData: ({ source, target, subUnitId }, direction, applyType) => {
        const sheet = this.shown.sheetOf(subUnitId);
        if (sheet) {
          const down = direction === Direction.DOWN || direction === Direction.UP;
          this.enter(
            sheet,
            applyType === AUTO_FILL_APPLY_TYPE.COPY ? copies(sheet, source, sheet, target) : filled(sheet, source, target, down),
          );
        }
        return { redos: [], undos: [] };
      },
    });
  }

  private takeChange({ unitId, subUnitId, cellValue }: ChangedCells): void {
    const sheet = unitId === UNIT ? this.shown.sheetOf(subUnitId) : undefined;
    if (!sheet) return;
    const entries: Filled[] = [];
    const changed: { row: number; column: number }[] = [];
    for (const [row, cells] of Object.entries(cellValue ?? {})) {
      for (const [column, cell] of Object.entries(cells)) {
        const place = { row: Number(row), column: Number(column) };
        changed.push(place);
        const entry = this.entryOf(sheet, place.row, place.column, cell);
        if (entry) entries.push({ ...place, ...entry });
      }
    }
    const box = boundsOf(changed);
    if (!box) return;
    // Whatever comes of it, the cells are shown as the book has them afterwards.
    this.shown.refresh(sheet, box);
    if (entries.length > 0) this.enter(sheet, entries);
  }

  private entryOf(sheet: Sheet, row: number, column: number, cell: ICellData | null): Pick<Filled, "value" | "copied"> | null {
    if (cell === null) return { value: "" };
    const { typed, from } = (cell.custom ?? {}) as Mark;
    if (typed !== undefined) return { value: typed };
    const source = from && this.shown.book()?.sheets.find((other) => other.id === from.sheet);
    if (from && source && (cell.v ?? null) !== null) {
      const same = source === sheet && from.row === row && from.column === column;
      return same ? null : copyOf(source.cell(from.row, from.column), row - from.row, column - from.column);
    }
    if (cell.p) return { value: plainText(cell.p.body?.dataStream ?? "") };
    if (!("v" in cell) && !("f" in cell)) return null;
    return { value: cell.t === CellValueType.BOOLEAN ? Boolean(cell.v) : (cell.v ?? "") };
  }

  private remember(sheet: Sheet, box: Box): void {
    const cells = Array.from({ length: box.rows }, (_, row) =>
      Array.from({ length: box.columns }, (__, column) => {
        const cell = sheet.cell(box.row + row, box.column + column);
        return cell && { ...cell };
      }),
    );
    this.steps = [...this.steps.slice(1 - STEPS_KEPT), { sheet, box, cells }];
  }

  private undo(): void {
    const book = this.shown.book();
    const step = this.steps.pop();
    if (!book || !step || !book.sheets.includes(step.sheet) || step.sheet.protected) return;
    const { sheet, box, cells } = step;
    cells.forEach((line, row) => {
      line.forEach((cell, column) => {
        const kept = sheet.rows.get(box.row + row);
        if (cell) sheet.rows.set(box.row + row, (kept ?? new Map<number, Cell>()).set(box.column + column, cell));
        else kept?.delete(box.column + column);
      });
    });
    book.tell({ kind: "cells", sheet, box, by: "user" });
    this.hands.recalculate().catch((failure: unknown) => {
      this.hands.say(String(failure));
    });
  }
}
interface ChangedCells {
  readonly unitId: string;
  readonly subUnitId: string;
  readonly cellValue?: Readonly<Record<number, Readonly<Record<number, ICellData | null>>>>;
}
function places({ rows, cols }: Scattered): { row: number; column: number }[] {
  return rows.flatMap((row) => cols.map((column) => ({ row, column })));
}
function pastedTexts(matrix: ObjectMatrix<ICellData>, to: Scattered): Filled[] {
  const entries: Filled[] = [];
  matrix.forValue((row, column, cell) => {
    const placed = { row: to.rows[row], column: to.cols[column] };
    if (placed.row === undefined || placed.column === undefined) return;
    entries.push({ row: placed.row, column: placed.column, value: typedText(cell) });
  });
  return entries;
}
function bringLook(cell: Cell, copied: Cell): void {
  if (copied.format === undefined) delete cell.format;
  else cell.format = copied.format;
  if (copied.style) cell.style = { ...copied.style };
  else delete cell.style;
}
function typedText(cell: ICellData | null | undefined): string {
  if (!cell) return "";
  if (typeof cell.f === "string" && cell.f !== "") return cell.f;
  if (cell.p) return plainText(cell.p.body?.dataStream ?? "");
  const text = String(cell.v ?? "");
  return cell.t === CellValueType.FORCE_STRING ? `'${text}` : text;
}
function plainText(stream: string): string {
  return stream.replace(/\r\n$/, "").replaceAll("\r", "\n");
}
function boundsOf(found: readonly { readonly row: number; readonly column: number }[]): Box | null {
  if (found.length === 0) return null;
  const rows = found.map((place) => place.row);
  const columns = found.map((place) => place.column);
  const row = Math.min(...rows);
  const column = Math.min(...columns);
  return { row, column, rows: Math.max(...rows) - row + 1, columns: Math.max(...columns) - column + 1 };
}

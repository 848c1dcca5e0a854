/** Shows a book in the grid and follows its changes. The book is the truth; what is entered in the grid goes through `entries.ts`. */
import {
  BooleanNumber,
  CanceledError,
  CellValueType,
  type ICellData,
  ICommandService,
  InterceptorEffectEnum,
  type IRange,
  type Worksheet,
} from "@univerjs/core";
import type { IFunctionInfo } from "@univerjs/engine-formula";
import {
  ILayoutService,
  InsertSheetMutation,
  INTERCEPTOR_POINT,
  RemoveSheetMutation,
  ScrollToCellCommand,
  SetFrozenMutation,
  SetSelectionsOperation,
  SetTabColorMutation,
  SetWorksheetActiveOperation,
  SetWorksheetColWidthMutation,
  SetWorksheetHideMutation,
  SetWorksheetNameMutation,
  SetWorksheetOrderMutation,
  SetWorksheetRowCountMutation,
  SetWorksheetRowHeightMutation,
  SheetInterceptorService,
  SheetsSelectionsService,
} from "@univerjs/preset-sheets-core";
import type { Book, Box, Cell, Change, FormatRule, Sheet } from "../book/book";
import { nameGridParts } from "./accessible";
import { Entries, type Hands, type Mark } from "./entries";
import { type Grid, openGrid, UNIT } from "./grid";
import { keepInSight } from "./keep-in-sight";
import { ListButton } from "./list-button";
import { type Look, lookOf } from "./look";
import { configureSheet, sheetData } from "./sheet-layout";
import { hashes } from "./text-width";

export interface ViewHands extends Hands {
  select(sheet: Sheet, box: Box): void;
  rulesAt(sheet: Sheet, row: number, column: number): FormatRule[];
}
export class BookView {
  private readonly grid: Grid;
  private readonly commands: ICommandService;
  private readonly hands: ViewHands;
  private readonly entries: Entries;
  private readonly listButton: ListButton;
  private book: Book | undefined;
  private unlisten: () => void = () => undefined;
  private books = 0;
  private planned = false;
  private sheetsChanged = false;
  private readonly changedCells = new Map<Sheet, Box[]>();
  private readonly changedLayouts = new Set<Sheet>();
  private drawn = false;
  /** True while sheets are put in and taken out; the grid moves its own selection then. */
  private arranging = false;
  private following = false;
  private leading = false;
  private idle: (() => void)[] = [];

  constructor(container: HTMLElement, functions: readonly IFunctionInfo[], hands: ViewHands, dark: boolean) {
    this.hands = hands;
    this.grid = openGrid(container, functions, dark);
    nameGridParts(container);
    this.commands = this.grid.injector.get(ICommandService);
    this.entries = new Entries(
      this.grid,
      {
        book: () => this.book,
        sheetOf: (gridId) => (this.arranging ? undefined : this.sheetOf(gridId)),
        refresh: (sheet, box) => {
          this.noticeChange({ kind: "cells", sheet, box, by: "calc" });
        },
      },
      hands,
    );
    this.listButton = new ListButton(this.grid, (sheet, row, column, word) => {
      this.entries.enter(sheet, [{ row, column, value: word }]);
    });
    this.showAsTheBookHasIt();
    this.commands.onCommandExecuted(({ id, params }) => {
      this.noticeCommand(id, params);
    });
    this.commands.beforeCommandExecuted(({ id }) => {
      this.refuse(id);
    });
    void this.grid.drawn.then(() => {
      this.drawn = true;
      this.following = true;
      this.plan();
    });
  }

  /** Shows another book in place of the one before. */
  open(book: Book): void {
    this.unlisten();
    this.entries.forget();
    this.book = book;
    this.books += 1;
    this.changedCells.clear();
    this.changedLayouts.clear();
    this.unlisten = book.listen((change) => {
      this.noticeChange(change);
    });
    this.sheetsChanged = true;
    this.plan();
  }

  dark(on: boolean): void {
    this.grid.dark(on);
  }

  /** Resolves when every change that the book has told of is on the screen. */
  settled(): Promise<void> {
    return this.isSettled() ? Promise.resolve() : new Promise((resolve) => this.idle.push(resolve));
  }

  /** Looks at a sheet's conditional formats again. */
  repaint(sheet: Sheet): void {
    this.changedLayouts.add(sheet);
    this.plan();
  }

  focus(): void {
    this.grid.injector.get(ILayoutService).focus();
  }

  /** Opens the drop-down list of the selected cell; false when it has none. */
  openList(): boolean {
    const { book } = this;
    return book !== undefined && this.listButton.offer(book, book.active, this.gridId(book.active), book.selection, true);
  }

  private gridId(sheet: Sheet): string {
    return `${String(this.books)} ${sheet.id}`;
  }

  private sheetOf(gridId: string): Sheet | undefined {
    return this.book?.sheets.find((sheet) => this.gridId(sheet) === gridId);
  }

  private worksheet(sheet: Sheet): Worksheet | undefined {
    return this.grid.workbook.getSheetBySheetId(this.gridId(sheet)) ?? undefined;
  }

  private noticeChange(change: Change): void {
    switch (change.kind) {
      case "cells":
      case "style": {
        const boxes = this.changedCells.get(change.sheet) ?? [];
        boxes.push(change.box);
        this.changedCells.set(change.sheet, boxes);
        if (change.kind === "style") this.changedLayouts.add(change.sheet);
        break;
      }
      case "sheets":
        this.sheetsChanged = true;
        break;
      case "select":
        if (change.by === "user") return;
        this.following = true;
        break;
      case "layout":
      case "rules":
      case "validations":
      case "tables":
      case "filter":
        this.changedLayouts.add(change.sheet);
        break;
    }
    this.plan();
  }

  /** Changes are gathered and shown together before the next frame. */
  private plan(): void {
    if (this.planned) return;
    this.planned = true;
    requestAnimationFrame(() => {
      this.planned = false;
      this.update();
      if (this.isSettled()) for (const resolve of this.idle.splice(0)) resolve();
    });
  }

  private isSettled(): boolean {
    return this.drawn && !this.arranging && !this.planned;
  }

  private update(): void {
    const { book } = this;
    if (!book) return;
    if (this.sheetsChanged) {
      this.sheetsChanged = false;
      this.arranging = true;
      this.updateSheets(book);
      // The grid moves to a sheet of its own choice in the next turn when one is taken out.
      setTimeout(() => {
        this.arranging = false;
        this.following = true;
        this.plan();
      });
    }
    const touched = new Set<Sheet>([...this.changedCells.keys(), ...this.changedLayouts]);
    for (const [sheet, boxes] of this.changedCells) for (const box of boxes) this.updateCells(sheet, box);
    for (const sheet of this.changedLayouts) this.updateLayout(sheet);
    const resized = this.changedLayouts.has(book.active);
    this.changedCells.clear();
    this.changedLayouts.clear();
    for (const sheet of touched) this.redraw(sheet);
    // The frame around the selection is drawn again too when rows or columns have moved under it.
    if (this.following || resized) this.follow(book, this.following);
    this.following = false;
  }

  private updateSheets(book: Book): void {
    const { workbook } = this.grid;
    book.sheets.forEach((sheet, index) => {
      const subUnitId = this.gridId(sheet);
      const config = this.worksheet(sheet)?.getConfig();
      if (!config) {
        this.run(InsertSheetMutation.id, { index, sheet: { ...sheetData(subUnitId, sheet), cellData: this.cellsOf(sheet) } });
        return;
      }
      const hidden = sheet.visibility === "Visible" ? BooleanNumber.FALSE : BooleanNumber.TRUE;
      if (config.name !== sheet.name) this.run(SetWorksheetNameMutation.id, { subUnitId, name: sheet.name });
      if (config.hidden !== hidden) this.run(SetWorksheetHideMutation.id, { subUnitId, hidden });
      if (config.tabColor !== sheet.tabColor) this.run(SetTabColorMutation.id, { subUnitId, color: sheet.tabColor });
      const order = workbook.getConfig().sheetOrder.indexOf(subUnitId);
      if (order !== index) this.run(SetWorksheetOrderMutation.id, { subUnitId, fromOrder: order, toOrder: index });
    });
    this.follow(book, false);
    const known = new Set(book.sheets.map((sheet) => this.gridId(sheet)));
    for (const worksheet of workbook.getSheets()) {
      if (!known.has(worksheet.getSheetId()))
        this.run(RemoveSheetMutation.id, { subUnitId: worksheet.getSheetId(), subUnitName: worksheet.getName() });
    }
  }

  private cellsOf(sheet: Sheet): Record<number, Record<number, ICellData>> {
    const rows: Record<number, Record<number, ICellData>> = {};
    for (const [row, cells] of sheet.rows) {
      const kept: Record<number, ICellData> = {};
      for (const [column, cell] of cells) kept[column] = gridCell(sheet, row, column, cell);
      rows[row] = kept;
    }
    return rows;
  }

  private updateCells(sheet: Sheet, box: Box): void {
    const matrix = this.worksheet(sheet)?.getCellMatrix();
    if (!matrix) return;
    const used = sheet.used();
    const lastRow = Math.min(box.row + box.rows, Math.max(used ? used.row + used.rows : 0, matrix.getLength()));
    const lastColumn = Math.min(box.column + box.columns, LAST_SHOWN_COLUMN);
    for (let row = box.row; row < lastRow; row += 1) {
      for (let column = box.column; column < lastColumn; column += 1) {
        const cell = sheet.cell(row, column);
        if (cell) matrix.setValue(row, column, gridCell(sheet, row, column, cell));
        else if (matrix.getValue(row, column)) matrix.realDeleteValue(row, column);
      }
    }
  }

  private updateLayout(sheet: Sheet): void {
    const worksheet = this.worksheet(sheet);
    if (!worksheet) return;
    const before = JSON.stringify(worksheet.getConfig().freeze);
    configureSheet(worksheet, sheet);
    const { freeze } = worksheet.getConfig();
    if (JSON.stringify(freeze) !== before) this.run(SetFrozenMutation.id, { subUnitId: this.gridId(sheet), ...freeze });
  }

  private redraw(sheet: Sheet): void {
    const worksheet = this.worksheet(sheet);
    if (!worksheet || this.grid.workbook.getActiveSheet() !== worksheet) return;
    const used = sheet.used();
    const rowCount = Math.max(worksheet.getConfig().rowCount, used ? used.row + used.rows + 50 : 0);
    // The number of rows is set, to the same or more, because that makes the grid lay everything out again.
    this.run(SetWorksheetRowCountMutation.id, { subUnitId: this.gridId(sheet), rowCount });
  }

  /** Goes where the book's selection is; what the grid selects on its way there is not the user's doing. */
  private follow(book: Book, scroll: boolean): void {
    const worksheet = this.worksheet(book.active);
    if (!worksheet) return;
    const subUnitId = this.gridId(book.active);
    const range = rangeOf(book.selection, worksheet);
    const { startRow, startColumn } = range;
    const primary = {
      startRow,
      endRow: startRow,
      startColumn,
      endColumn: startColumn,
      actualRow: startRow,
      actualColumn: startColumn,
      isMerged: false,
      isMergedMainCell: false,
    };
    this.leading = true;
    if (this.grid.workbook.getActiveSheet() !== worksheet) this.run(SetWorksheetActiveOperation.id, { subUnitId });
    this.run(SetSelectionsOperation.id, { subUnitId, selections: [{ range, primary, style: null }] });
    this.leading = false;
    if (!this.drawn) return;
    this.listButton.offer(book, book.active, subUnitId, book.selection, false);
    if (!scroll) return;
    void this.commands.executeCommand(ScrollToCellCommand.id, {
      unitId: UNIT,
      subUnitId,
      range: { ...range, endRow: startRow, endColumn: startColumn },
    });
    // Beside frozen rows and columns the grid stops short; the rest of the way is ours.
    const { active } = book;
    requestAnimationFrame(() => {
      if (active === this.book?.active) keepInSight(this.grid, UNIT, range);
    });
  }

  private run(id: string, params: object): void {
    this.commands.syncExecuteCommand(id, { unitId: UNIT, ...params });
  }

  private showAsTheBookHasIt(): void {
    this.grid.injector.get(SheetInterceptorService).intercept(INTERCEPTOR_POINT.CELL_CONTENT, {
      effect: InterceptorEffectEnum.Style | InterceptorEffectEnum.Value,
      priority: 100,
      handler: (cell, { subUnitId, row, col, worksheet }, next) => {
        const sheet = this.sheetOf(subUnitId);
        const look = sheet && this.book && lookOf(this.book, sheet, row, col, this.hands.rulesAt(sheet, row, col));
        return next(look ? { ...cell, ...shownCell(look, sheet.cell(row, col), () => worksheet.getColumnWidth(col)) } : cell);
      },
    });
  }

  private noticeCommand(id: string, params: unknown): void {
    const given = params as { unitId?: string; subUnitId?: string } | undefined;
    if (!this.book || this.arranging || this.leading || given?.unitId !== UNIT) return;
    const sheet = this.sheetOf(given.subUnitId ?? "");
    if (!sheet) return;
    if (id === SetSelectionsOperation.id) this.takeSelection(this.book, sheet, params as { selections?: { range: IRange }[] });
    else if (id === SetWorksheetActiveOperation.id && sheet !== this.book.active) this.hands.select(sheet, this.selectionOf(sheet));
    else if (id === SetWorksheetColWidthMutation.id || id === SetWorksheetRowHeightMutation.id)
      this.takeSizes(this.book, sheet, id, params as { ranges: IRange[] });
  }

  private selectionOf(sheet: Sheet): Box {
    const range = this.grid.injector
      .get(SheetsSelectionsService)
      .getWorkbookSelections(UNIT)
      .getSelectionsOfWorksheet(this.gridId(sheet))
      .at(-1)?.range;
    return range ? boxOf(range) : { row: 0, column: 0, rows: 1, columns: 1 };
  }

  private takeSelection(book: Book, sheet: Sheet, { selections }: { selections?: { range: IRange }[] }): void {
    const range = selections?.at(-1)?.range;
    if (!range || sheet !== book.active) return;
    const box = boxOf(range);
    this.hands.select(sheet, box);
    this.listButton.offer(book, sheet, this.gridId(sheet), box, false);
    // After the grid's own scrolling, which follows the selection. An area stays as it was drawn with the mouse.
    if (box.rows === 1 && box.columns === 1)
      requestAnimationFrame(() => {
        if (sheet === this.book?.active) keepInSight(this.grid, UNIT, range);
      });
  }

  /** A column or row whose edge was dragged. */
  private takeSizes(book: Book, sheet: Sheet, id: string, { ranges }: { ranges: IRange[] }): void {
    const worksheet = this.worksheet(sheet);
    if (!worksheet) return;
    for (const range of ranges) {
      if (id === SetWorksheetColWidthMutation.id) {
        for (let column = range.startColumn; column <= range.endColumn; column += 1)
          sheet.columnWidths.set(column, worksheet.getColumnWidth(column) * POINTS_PER_PIXEL);
      } else {
        for (let row = range.startRow; row <= range.endRow; row += 1)
          sheet.rowHeights.set(row, worksheet.getRowHeight(row) * POINTS_PER_PIXEL);
      }
    }
    book.tell({ kind: "layout", sheet });
  }

  /** What this grid does not do is refused by name instead of being done in the grid only. */
  private refuse(id: string): void {
    const what = NOT_DONE_HERE.find(([pattern]) => pattern.test(id))?.[1];
    if (what === undefined) return;
    this.hands.say(`${what}: not in this trial grid. Do that in Excel, or open another workbook.`);
    throw new CanceledError();
  }
}
const POINTS_PER_PIXEL = 0.75;
const LAST_SHOWN_COLUMN = 500;
const NOT_DONE_HERE: readonly [RegExp, string][] = [
  [/^sheet\.command\.(insert|remove|delete|copy)-(sheet|worksheet)/, "Adding, copying and deleting sheets"],
  [/^sheet\.command\.set-worksheet-(name|order|hide|hidden|show)/, "Renaming, moving and hiding sheets"],
  [/^sheet\.command\.set-tab-color/, "Colouring tabs"],
  [/^sheet\.command\.(insert|remove|delete|append|move)-[a-z-]*(row|col|range)/, "Inserting, deleting and moving rows, columns and cells"],
  [/^sheet\.command\.(add|remove)-worksheet-merge/, "Merging cells"],
  [
    /^sheet\.command\.set-(style|bold|italic|underline|stroke|range-(bold|italic|underline|stroke|subscript|superscript))/,
    "Formatting by hand",
  ],
];
/** The bare value; how it is shown is decided when it is drawn. */
function gridCell(sheet: Sheet, row: number, column: number, cell: Cell): ICellData {
  const custom: Mark = { from: { sheet: sheet.id, row, column } };
  const value = cell.error ?? cell.value;
  if (value === null) return { custom };
  if (typeof value === "number") return { v: value, t: CellValueType.NUMBER, custom };
  if (typeof value === "boolean") return { v: value ? 1 : 0, t: CellValueType.BOOLEAN, custom };
  return { v: value, t: CellValueType.STRING, custom };
}
function shownCell(look: Look, cell: Cell | undefined, width: () => number): Pick<ICellData, "s" | "v" | "t"> {
  if (look.text === "") return { s: look.style, v: null, t: null };
  const figure = typeof cell?.value === "number" && !cell.style?.wrap;
  const text = figure ? hashes(look.text, look.style, width()) : look.text;
  return { s: look.style, v: text, t: CellValueType.STRING };
}
function rangeOf(box: Box, worksheet: Worksheet): IRange {
  const { rowCount, columnCount } = worksheet.getConfig();
  return {
    startRow: Math.min(box.row, rowCount - 1),
    endRow: Math.min(box.row + box.rows, rowCount) - 1,
    startColumn: Math.min(box.column, columnCount - 1),
    endColumn: Math.min(box.column + box.columns, columnCount) - 1,
  };
}
function boxOf(range: IRange): Box {
  const row = Number.isNaN(range.startRow) ? 0 : range.startRow;
  const column = Number.isNaN(range.startColumn) ? 0 : range.startColumn;
  return { row, column, rows: range.endRow - row + 1, columns: range.endColumn - column + 1 };
}

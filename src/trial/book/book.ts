/**
 * The trial workbook: plain data, no Office, no DOM, no calculation engine. It is the single truth behind the trial
 * page and the headless run. The host (`host/`) answers the client library's batches from it, the sheet view and the
 * calculator (`view/`, `calculation/`) are fed from it and report back to it, and `file/` reads and writes it.
 */

/** What a cell holds; null is an empty cell. */
export type Scalar = number | string | boolean | null;
export interface CellStyle {
  bold?: boolean;
  italic?: boolean;
  size?: number;
  color?: string;
  fill?: string;
  align?: "Left" | "Center" | "Right" | "General";
  valign?: "Top" | "Center" | "Bottom";
  wrap?: boolean;
  fontName?: string;
  underline?: string;
  strikethrough?: boolean;
  indent?: number;
  /** False lets the cell be written on a protected sheet; absent is locked. */
  locked?: boolean;
  borders?: Partial<Record<Edge, Border>>;
}
export type Edge = "Top" | "Bottom" | "Left" | "Right";
/** Line style and weight in the client library's words (`Continuous`, `Thin`). */
export interface Border {
  style: string;
  color: string;
  weight: string;
}
export interface Cell {
  /** Value, or the last calculated result when there is a formula. */
  value: Scalar;
  /** Set when the cell shows an error, such as `#N/A`; `value` is then null. */
  error?: string;
  /** Sentence carried by an error of a custom function. */
  message?: string;
  /** As Excel shows it, with the leading "=" and dotted names: `=GEAR.VERDICT(...)`. */
  formula?: string;
  /** Number format code; absent is General, "@" is text. */
  format?: string;
  style?: CellStyle;
  /** Box filled by an array formula that stands in this cell. */
  spill?: Box;
  /** Address a cell leads to when clicked, and a note stuck to it: kept for the file, not shown. */
  link?: string;
  note?: string;
}
/** Zero-based rectangle. */
export interface Box {
  row: number;
  column: number;
  rows: number;
  columns: number;
}
/** A conditional format with a formula rule, written for the top left cell of its box. The first rule of a sheet has the highest priority. */
export interface FormatRule {
  id: string;
  box: Box;
  formula: string;
  fill?: string;
  color?: string;
  bold?: boolean;
  italic?: boolean;
  strikethrough?: boolean;
  stopIfTrue: boolean;
}
export interface Validation {
  box: Box;
  /** Data validation rule in the client library's own shape, e.g. `{ list: { inCellDropDown: true, source: "a,b" } }`. */
  rule: Record<string, unknown>;
  prompt?: { title: string; message: string; showPrompt: boolean };
  errorAlert?: { title: string; message: string; showAlert: boolean; style: string };
  ignoreBlanks: boolean;
}
export interface PageSetup {
  orientation?: "Portrait" | "Landscape";
  /** Pages wide and tall the sheet is fitted to. */
  fitWide?: number;
  fitTall?: number;
  /** Rows repeated at the top of each page, such as `$1:$4`. */
  titleRows?: string;
  printArea?: string;
  leftFooter?: string;
  centerFooter?: string;
  rightFooter?: string;
  centerHeader?: string;
  leftHeader?: string;
  rightHeader?: string;
  /** Columns repeated at the left of each page, such as `$A:$B`. */
  titleColumns?: string;
  /** Per cent of full size, when the sheet is not fitted to pages. */
  scale?: number;
  /** In the client library's words, such as `A4`. */
  paperSize?: string;
  /** Points. */
  margins?: Partial<Record<"Left" | "Right" | "Top" | "Bottom" | "Header" | "Footer", number>>;
  centerHorizontally?: boolean;
  centerVertically?: boolean;
  printGridlines?: boolean;
}
/** What a protected sheet still allows, in the client library's words (`allowAutoFilter`), and how it was locked. */
export interface Protection {
  options: Record<string, unknown>;
  /** Set when the sheet was locked here; a file only carries a digest, kept as the file has it. */
  password?: string;
  digest?: Record<string, unknown>;
}
/** A table: its first row holds the headings. `filters` maps a zero-based table column to the texts let through. */
export interface Table {
  id: string;
  name: string;
  sheet: Sheet;
  box: Box;
  style: string;
  showBanded: boolean;
  filters: Map<number, string[]>;
  firstColumn?: boolean;
  lastColumn?: boolean;
  bandedColumns?: boolean;
  /** Absent means shown. */
  filterButton?: boolean;
  /** True when the last row of the box is a total row. */
  totals?: boolean;
}
export class Sheet {
  readonly rows = new Map<number, Map<number, Cell>>();
  /** Points, as in the client library (three quarters of a pixel). */
  readonly columnWidths = new Map<number, number>();
  readonly rowHeights = new Map<number, number>();
  /** Format and style of a whole column, taken over by each cell made in it. */
  readonly columnDefaults = new Map<number, Pick<Cell, "format" | "style">>();
  readonly hiddenRows = new Set<number>();
  readonly hiddenColumns = new Set<number>();
  /** Outline of the columns: how many groups each stands in; absent is none. */
  readonly columnLevels = new Map<number, number>();
  rules: FormatRule[] = [];
  validations: Validation[] = [];
  readonly page: PageSetup = {};
  frozenRows = 0;
  frozenColumns = 0;
  protected = false;
  protection: Protection | null = null;
  showGridlines = true;
  merges: Box[] = [];
  visibility: "Visible" | "Hidden" | "VeryHidden" = "Visible";
  tabColor = "";

  readonly id: string;
  name: string;

  constructor(id: string, name: string) {
    this.id = id;
    this.name = name;
  }

  cell(row: number, column: number): Cell | undefined {
    return this.rows.get(row)?.get(column);
  }

  /** The cell, made when absent. */
  at(row: number, column: number): Cell {
    let cells = this.rows.get(row);
    if (!cells) this.rows.set(row, (cells = new Map<number, Cell>()));
    let cell = cells.get(column);
    if (!cell) {
      const inherited = this.columnDefaults.get(column);
      cells.set(column, (cell = { value: null, ...inherited, ...(inherited?.style && { style: { ...inherited.style } }) }));
    }
    return cell;
  }

  /** Smallest box around everything with a value or a formula; null on an empty sheet. */
  used(): Box | null {
    let top = Infinity,
      left = Infinity,
      bottom = -1,
      right = -1;
    for (const [r, cells] of this.rows)
      for (const [c, cell] of cells) {
        if (cell.value === null && cell.error === undefined && cell.formula === undefined) continue;
        top = Math.min(top, r);
        bottom = Math.max(bottom, r);
        left = Math.min(left, c);
        right = Math.max(right, c);
      }
    return bottom < 0 ? null : { row: top, column: left, rows: bottom - top + 1, columns: right - left + 1 };
  }
}
/**
 * What happened to the book. `by`: "user" typed it, "coauthor" is a user elsewhere, "add-in" wrote it through the client
 * library, "calc" calculated it. `before` is what a single changed cell held.
 */
export type Change =
  | { kind: "cells"; sheet: Sheet; box: Box; by: "user" | "coauthor" | "add-in" | "calc"; before?: Cell }
  | { kind: "style"; sheet: Sheet; box: Box }
  | { kind: "layout"; sheet: Sheet }
  | { kind: "rules"; sheet: Sheet }
  | { kind: "validations"; sheet: Sheet }
  | { kind: "tables"; sheet: Sheet }
  | { kind: "filter"; sheet: Sheet; table: Table }
  | { kind: "sheets" }
  | { kind: "select"; sheet: Sheet; box: Box; by: "user" | "add-in" };
export class Book {
  readonly sheets: Sheet[] = [];
  readonly tables: Table[] = [];
  /** Defined names: name to formula, such as `=Notes!$A$1:$A$6`. */
  readonly names = new Map<string, string>();
  /** Document settings of the add-in, key to JSON text, saved in the file. */
  readonly settings = new Map<string, string>();
  fileName = "Workbook.xlsx";
  /** What the file held that this model does not keep, one phrase each, such as `the pictures on Log`. */
  readonly notKept: string[] = [];
  active!: Sheet;
  selection: Box = { row: 0, column: 0, rows: 1, columns: 1 };
  private serial = 0;
  private readonly listeners = new Set<(change: Change) => void>();

  nextId(): number {
    return ++this.serial;
  }

  addSheet(name: string): Sheet {
    const sheet = new Sheet(`{${String(this.nextId()).padStart(8, "0")}-0000-0000-0000-000000000000}`, name);
    this.sheets.push(sheet);
    if (this.sheets.length === 1) this.active = sheet;
    this.tell({ kind: "sheets" });
    return sheet;
  }

  sheet(name: string): Sheet | undefined {
    return this.sheets.find((s) => s.name.toLowerCase() === name.toLowerCase());
  }

  listen(listener: (change: Change) => void): () => void {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  }

  tell(change: Change): void {
    for (const listener of this.listeners) listener(change);
  }
}
/** Works out the formulas of a book and writes their results into it; resolves when the book is up to date. */
export interface Calculator {
  recalculate(book: Book): Promise<void>;
}

/** What the objects of one workbook share: the book, the tracked objects, whether something has to be calculated. */
import { sameBox } from "../../book/address";
import type { Book, Box, Calculator, Cell, Change, Sheet } from "../../book/book";

/** What every object of the workbook shows of itself; `object.ts` has what they do. */
export interface AnyObject {
  readonly type: string;
  readonly scalars: readonly string[];
  readonly events: readonly string[];
  readonly state: HostState;
  reference: string | null;
}
export interface RangeObject extends AnyObject {
  readonly sheet: Sheet;
  readonly box: Box;
  get Values(): unknown[][] | null;
  set Values(given: unknown);
}
export interface SheetObject extends AnyObject {
  readonly sheet: Sheet;
}
/** Makes the objects that many others hand out. The host fills it, so that no object has to know the others' files. */
export interface Make {
  range(sheet: Sheet, box: Box): RangeObject;
  worksheet(sheet: Sheet): SheetObject;
}
export type CalculationMode = "Automatic" | "AutomaticExceptTables" | "Manual";
/**
 * References are counted over all workbooks: the client library gives a reference of a failed run back five seconds later, then
 * perhaps to the next workbook, where it may be nobody else's.
 */
let references = 0;
export class HostState {
  readonly book: Book;
  readonly calculator: Calculator | null;
  /** Completes dates that were typed without a year. */
  readonly year: () => number;
  readonly tracked = new Map<string, AnyObject>();
  /** Selection of each sheet that was left. */
  readonly selections = new Map<Sheet, Box>();
  /** False while the add-in has switched its own events off. */
  eventsEnabled = true;
  calculationMode: CalculationMode = "Automatic";
  calculationSuspended = false;
  /** True when cells changed since the last calculation. */
  stale = false;
  private serial = 0;
  /** Stops listening to the book. */
  readonly close: () => void;
  readonly make: Make;

  constructor(book: Book, calculator: Calculator | null, year: () => number, make: (state: HostState) => Make) {
    this.make = make(this);
    this.book = book;
    this.calculator = calculator;
    this.year = year;
    this.close = book.listen((change) => {
      this.notice(change);
    });
  }

  next(prefix: string): string {
    this.serial += 1;
    return prefix + String(this.serial);
  }

  track(object: AnyObject): string {
    object.reference ??= `reference-${String((references += 1))}`;
    this.tracked.set(object.reference, object);
    return object.reference;
  }

  tellCells(sheet: Sheet, box: Box, by: "user" | "coauthor" | "add-in" | "calc", before?: Cell): void {
    this.book.tell({ kind: "cells", sheet, box, by, ...(before && { before }) });
  }

  select(sheet: Sheet, box: Box, by: "user" | "add-in"): void {
    const { book } = this;
    if (book.active === sheet && sameBox(book.selection, box)) return;
    this.selections.set(book.active, book.selection);
    book.active = sheet;
    book.selection = box;
    book.tell({ kind: "select", sheet, box, by });
  }

  /** Brings formulas up to date if something changed; `force` also in manual calculation. */
  async calculate(force = false): Promise<void> {
    if (!force && (!this.stale || this.calculationMode === "Manual" || this.calculationSuspended)) return;
    this.stale = false;
    if (this.calculator && hasFormulas(this.book)) await this.calculator.recalculate(this.book);
  }

  private notice(change: Change): void {
    // What a user types is calculated by the sheet view it was typed in.
    const byAddIn = change.kind === "cells" && change.by === "add-in";
    if (byAddIn || change.kind === "tables" || change.kind === "sheets") this.stale = true;
  }
}
export function hasFormulas(book: Book): boolean {
  return book.sheets.some((sheet) => {
    for (const cells of sheet.rows.values()) for (const cell of cells.values()) if (cell.formula !== undefined) return true;
    return false;
  });
}

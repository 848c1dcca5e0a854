import { bottomOf, intersection, LAST_COLUMN, LAST_ROW, parseBox, sameBox, splitSheet } from "../../book/address";
import type { Table } from "../../book/book";
import { accessDenied, invalidArgument, itemAlreadyExists, notModelled } from "../../book/errors";
import { changeFormulas } from "../../book/formulas";
import { renameTable } from "../../book/table-references";
import { HostObject, sameText, isRange } from "../protocol/object";
import type { HostState, RangeObject, SheetObject } from "../protocol/state";
import { bodyBox } from "../sheet/body";
import { clearBox } from "../sheet/clear";
import { clearFilters, filterRows } from "../sheet/filter";
import { headingsOf, mendHeadings } from "../sheet/headings";
import { AutoFilter } from "./auto-filter";
import { requireName } from "./names";
import { TableColumnCollection } from "./table-columns";
import { TableRowCollection } from "./table-rows";

/** A table as the client library sees it; the book's own record of it is `table`. */
export class ExcelTable extends HostObject {
  readonly type = "Table";
  readonly scalars = [
    "Id",
    "Name",
    "Style",
    "ShowHeaders",
    "ShowTotals",
    "ShowBandedRows",
    "ShowBandedColumns",
    "ShowFilterButton",
    "HighlightFirstColumn",
    "HighlightLastColumn",
  ];
  override readonly events = ["DataChanged"];
  readonly table: Table;

  constructor(state: HostState, table: Table) {
    super(state);
    this.table = table;
  }

  get Id(): string {
    return this.table.id;
  }

  get Name(): string {
    return this.table.name;
  }
  set Name(name: string) {
    const location = "Table.name";
    this.requireOpen(location);
    requireName(name, location);
    const { book } = this.state;
    const other = book.tables.some((table) => table !== this.table && sameText(table.name, name));
    if (other || [...book.names.keys()].some((known) => sameText(known, name)))
      throw itemAlreadyExists(`a table or name ${name}`, location);
    const old = this.table.name;
    this.table.name = name;
    changeFormulas(book, (formula) => renameTable(formula, old, name));
    this.tell();
  }

  get Style(): string {
    return this.table.style;
  }
  set Style(style: string) {
    this.table.style = style;
    this.tell();
  }
  get ShowBandedRows(): boolean {
    return this.table.showBanded;
  }
  set ShowBandedRows(show: boolean) {
    this.table.showBanded = show;
    this.tell();
  }
  get ShowBandedColumns(): boolean {
    return this.table.bandedColumns ?? false;
  }
  set ShowBandedColumns(show: boolean) {
    this.table.bandedColumns = show;
    this.tell();
  }
  get ShowFilterButton(): boolean {
    return this.table.filterButton ?? true;
  }
  set ShowFilterButton(show: boolean) {
    this.table.filterButton = show;
    this.tell();
  }
  get HighlightFirstColumn(): boolean {
    return this.table.firstColumn ?? false;
  }
  set HighlightFirstColumn(highlight: boolean) {
    this.table.firstColumn = highlight;
    this.tell();
  }
  get HighlightLastColumn(): boolean {
    return this.table.lastColumn ?? false;
  }
  set HighlightLastColumn(highlight: boolean) {
    this.table.lastColumn = highlight;
    this.tell();
  }
  get ShowHeaders(): boolean {
    return true;
  }
  set ShowHeaders(show: boolean) {
    if (!show) throw notModelled("Table.ShowHeaders false");
  }
  get ShowTotals(): boolean {
    return this.table.totals ?? false;
  }
  set ShowTotals(show: boolean) {
    if (show !== this.ShowTotals) throw notModelled(`Table.ShowTotals ${String(show)}`);
  }

  get Worksheet(): SheetObject {
    return this.state.make.worksheet(this.table.sheet);
  }
  get Columns(): TableColumnCollection {
    return new TableColumnCollection(this.state, this.table);
  }
  get Rows(): TableRowCollection {
    return new TableRowCollection(this.state, this.table);
  }
  get AutoFilter(): AutoFilter {
    return new AutoFilter(this.state, this.table);
  }

  GetRange(): RangeObject {
    return this.state.make.range(this.table.sheet, this.table.box);
  }
  GetHeaderRowRange(): RangeObject {
    return this.state.make.range(this.table.sheet, { ...this.table.box, rows: 1 });
  }
  GetDataBodyRange(): RangeObject {
    return this.state.make.range(this.table.sheet, bodyBox(this.table));
  }
  GetTotalRowRange(): RangeObject {
    if (!this.table.totals) throw invalidArgument("The table has no total row.", "Table.getTotalRowRange");
    return this.state.make.range(this.table.sheet, { ...this.table.box, row: bottomOf(this.table.box), rows: 1 });
  }

  /** The heading row stays where it is; the new range must touch the old one. */
  Resize(to: RangeObject | string): null {
    const location = "Table.resize";
    this.requireOpen(location);
    const box = isRange(to) ? to.box : parseBox(splitSheet(to).address);
    const { table } = this;
    const headed = box !== null && box.row === table.box.row && box.rows >= 2 && intersection(box, table.box) !== null;
    if (!headed || box.rows === LAST_ROW || box.columns === LAST_COLUMN) throw invalidArgument(undefined, location);
    const taken = this.state.book.tables.some(
      (other) => other !== table && other.sheet === table.sheet && intersection(other.box, box) !== null,
    );
    if (taken) throw invalidArgument("A table can't overlap another table.", location);
    if (box.column !== table.box.column && table.filters.size > 0)
      throw notModelled("Table.resize to another first column of a filtered table");
    if (sameBox(box, table.box)) return null;
    const headings = box.column === table.box.column ? headingsOf(table) : [];
    table.box = { ...box };
    mendHeadings(this.state, table, headings);
    this.tell();
    return null;
  }

  ClearFilters(): null {
    clearFilters(this.state, this.table);
    return null;
  }

  ReapplyFilters(): null {
    filterRows(this.state, this.table);
    return null;
  }

  /** The cells go with the table. */
  Delete(): null {
    const { sheet, box } = this.table;
    this.ConvertToRange();
    return clearBox(this.state, sheet, box, "All");
  }

  ConvertToRange(): RangeObject {
    this.requireOpen("Table.convertToRange");
    const { book } = this.state;
    clearFilters(this.state, this.table);
    book.tables.splice(book.tables.indexOf(this.table), 1);
    this.tell();
    return this.GetRange();
  }

  private requireOpen(location: string): void {
    if (this.table.sheet.protected) throw accessDenied(location);
  }

  private tell(): void {
    this.state.book.tell({ kind: "tables", sheet: this.table.sheet });
  }
}

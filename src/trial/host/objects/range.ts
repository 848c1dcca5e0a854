import { addressOf, bottomOf, boundingBox, intersection, LAST_COLUMN, LAST_ROW, quoteSheet, rightOf } from "../../book/address";
import type { Box, Sheet } from "../../book/book";
import { accessDenied, HostError, invalidArgument, itemNotFound, notModelled } from "../../book/errors";
import { showCell } from "../../book/show";
import { type Found, HostObject, NULL_OBJECT } from "../protocol/object";
import type { HostState, SheetObject } from "../protocol/state";
import { cellCount, forFormat, gridOf, isBlank, requireUnlocked, spread, tellable, usedBox } from "../sheet/cells";
import { clearBox } from "../sheet/clear";
import { boxOnSheet } from "../sheet/named-range";
import { hiddenAmong, setHidden } from "../sheet/visibility";
import { writeValues } from "../sheet/write";
import { ConditionalFormatCollection } from "./conditional-formats";
import { DataValidation } from "./data-validation";
import { RangeFormat } from "./range-format";
import { TableScopedCollection } from "./tables";

export class Range extends HostObject {
  readonly type = "Range";
  readonly scalars = [
    "NumberFormat",
    "Values",
    "Text",
    "Formulas",
    "RowIndex",
    "ColumnIndex",
    "RowCount",
    "ColumnCount",
    "Address",
    "CellCount",
    "ValueTypes",
    "RowHidden",
    "ColumnHidden",
    "Hidden",
    "IsEntireRow",
    "IsEntireColumn",
  ];
  readonly sheet: Sheet;
  readonly box: Box;

  constructor(state: HostState, sheet: Sheet, box: Box) {
    super(state);
    if (box.row < 0 || box.column < 0 || box.rows < 1 || box.columns < 1 || bottomOf(box) >= LAST_ROW || rightOf(box) >= LAST_COLUMN) {
      throw invalidArgument("The range lies outside the sheet.", "Worksheet.getRange");
    }
    this.sheet = sheet;
    this.box = box;
  }

  private at(box: Box): Range {
    return new Range(this.state, this.sheet, box);
  }

  // --- place ---
  get Address(): string {
    return `${quoteSheet(this.sheet.name)}!${addressOf(this.box)}`;
  }
  get AddressLocal(): string {
    return this.Address;
  }
  get CellCount(): number {
    return cellCount(this.box) > 2 ** 31 - 1 ? -1 : cellCount(this.box);
  }
  get RowIndex(): number {
    return this.box.row;
  }
  get ColumnIndex(): number {
    return this.box.column;
  }
  get RowCount(): number {
    return this.box.rows;
  }
  get ColumnCount(): number {
    return this.box.columns;
  }
  get IsEntireRow(): boolean {
    return this.box.columns === LAST_COLUMN;
  }
  get IsEntireColumn(): boolean {
    return this.box.rows === LAST_ROW;
  }
  get Worksheet(): SheetObject {
    return this.state.make.worksheet(this.sheet);
  }

  // --- contents ---
  get Values(): unknown[][] | null {
    return gridOf(this.sheet, this.box, (cell) => cell?.error ?? cell?.value ?? "");
  }
  set Values(given: unknown) {
    writeValues(this.state, this.sheet, this.box, given, "add-in", "Range.values");
  }
  get Formulas(): unknown[][] | null {
    return gridOf(this.sheet, this.box, (cell) => cell?.formula ?? cell?.error ?? cell?.value ?? "");
  }
  set Formulas(given: unknown) {
    writeValues(this.state, this.sheet, this.box, given, "add-in", "Range.formulas");
  }
  get Text(): string[][] | null {
    return gridOf(this.sheet, this.box, (cell) => showCell(cell));
  }
  get ValueTypes(): string[][] | null {
    return gridOf(this.sheet, this.box, (cell) => {
      if (!cell || isBlank(cell)) return "Empty";
      if (cell.error !== undefined) return "Error";
      return { string: "String", number: "Double", boolean: "Boolean", object: "Empty" }[
        typeof cell.value as "string" | "number" | "boolean" | "object"
      ];
    });
  }
  get NumberFormat(): string[][] | null {
    return gridOf(
      this.sheet,
      this.box,
      (cell, _row, column) => cell?.format ?? (cell ? undefined : this.sheet.columnDefaults.get(column)?.format) ?? "General",
    );
  }
  set NumberFormat(given: unknown) {
    this.setNumberFormat(given);
  }

  private setNumberFormat(given: unknown): void {
    const location = "Range.numberFormat";
    requireUnlocked(this.sheet, this.box, location);
    if (typeof given === "string") {
      forFormat(this.sheet, this.box, location, (target) => {
        target.format = given;
      });
    } else {
      for (const [down, row] of spread(given, this.box, location).entries()) {
        for (const [right, format] of row.entries()) {
          if (format === null) continue;
          if (typeof format !== "string") throw invalidArgument(undefined, location);
          this.sheet.at(this.box.row + down, this.box.column + right).format = format;
        }
      }
    }
    this.state.book.tell({ kind: "style", sheet: this.sheet, box: tellable(this.sheet, this.box) });
  }

  /** Sent by the library before it cuts a large write into pieces. */
  _ValidateArraySize(rows: number, columns: number): null {
    if (rows !== this.box.rows || columns !== this.box.columns) {
      throw invalidArgument(
        "The number of rows or columns in the input array doesn't match the size or dimensions of the range.",
        "Range.values",
      );
    }
    return null;
  }

  // --- look ---
  get Format(): RangeFormat {
    return new RangeFormat(this.state, this.sheet, this.box);
  }
  get ConditionalFormats(): ConditionalFormatCollection {
    return new ConditionalFormatCollection(this.state, this.sheet, this.box);
  }
  get DataValidation(): DataValidation {
    return new DataValidation(this.state, this.sheet, this.box);
  }
  get RowHidden(): boolean | null {
    return hiddenAmong(this.sheet.hiddenRows, this.box.row, this.box.rows);
  }
  set RowHidden(given: unknown) {
    setHidden(this.state, this.sheet, this.sheet.hiddenRows, this.box.row, this.box.rows, given === true);
  }
  get ColumnHidden(): boolean | null {
    return hiddenAmong(this.sheet.hiddenColumns, this.box.column, this.box.columns);
  }
  set ColumnHidden(given: unknown) {
    setHidden(this.state, this.sheet, this.sheet.hiddenColumns, this.box.column, this.box.columns, given === true);
  }
  get Hidden(): boolean | null {
    const rows = this.RowHidden,
      columns = this.ColumnHidden;
    if (rows === true || columns === true) return true;
    return rows === null || columns === null ? null : false;
  }

  // --- other ranges ---
  GetCell(row: number, column: number): Range {
    return this.at({ row: this.box.row + row, column: this.box.column + column, rows: 1, columns: 1 });
  }
  GetRow(row: number): Range {
    return this.at({ ...this.box, row: this.box.row + row, rows: 1 });
  }
  GetColumn(column: number): Range {
    return this.at({ ...this.box, column: this.box.column + column, columns: 1 });
  }
  GetLastRow(): Range {
    return this.GetRow(this.box.rows - 1);
  }
  GetLastColumn(): Range {
    return this.GetColumn(this.box.columns - 1);
  }
  GetLastCell(): Range {
    return this.GetCell(this.box.rows - 1, this.box.columns - 1);
  }
  GetOffsetRange(rows: number, columns: number): Range {
    return this.at({ ...this.box, row: this.box.row + rows, column: this.box.column + columns });
  }
  GetResizedRange(rows: number, columns: number): Range {
    return this.at({ ...this.box, rows: this.box.rows + rows, columns: this.box.columns + columns });
  }
  GetAbsoluteResizedRange(rows: number, columns: number): Range {
    return this.at({ ...this.box, rows, columns });
  }
  GetRowsBelow(count: number | null): Range {
    return this.at({ ...this.box, row: bottomOf(this.box) + 1, rows: count ?? 1 });
  }
  GetRowsAbove(count: number | null): Range {
    return this.at({ ...this.box, row: this.box.row - (count ?? 1), rows: count ?? 1 });
  }
  GetEntireRow(): Range {
    return this.at({ ...this.box, column: 0, columns: LAST_COLUMN });
  }
  GetEntireColumn(): Range {
    return this.at({ ...this.box, row: 0, rows: LAST_ROW });
  }
  GetBoundingRect(other: Range | string): Range {
    return this.at(boundingBox(this.box, this.other(other).box));
  }
  GetIntersection(other: Range | string): Range {
    const shared = this.GetIntersectionOrNullObject(other);
    if (shared === NULL_OBJECT) throw itemNotFound("Range.getIntersection");
    return shared;
  }
  GetIntersectionOrNullObject(other: Range | string): Found<Range> {
    const range = this.other(other);
    const shared = range.sheet === this.sheet ? intersection(this.box, range.box) : null;
    return shared ? this.at(shared) : NULL_OBJECT;
  }
  GetUsedRange(valuesOnly: boolean | null): Range {
    return this.at(usedBox(this.sheet, this.box, valuesOnly ?? false) ?? { ...this.box, rows: 1, columns: 1 });
  }
  GetUsedRangeOrNullObject(valuesOnly: boolean | null): Found<Range> {
    const used = usedBox(this.sheet, this.box, valuesOnly ?? false);
    return used ? this.at(used) : NULL_OBJECT;
  }
  GetTables(fullyContained: boolean | null): TableScopedCollection {
    return new TableScopedCollection(this.state, this.sheet, this.box, fullyContained ?? false);
  }

  private other(range: Range | string): Range {
    return typeof range === "string" ? this.at(boxOnSheet(this.state, this.sheet, range)) : range;
  }

  // --- actions ---
  Clear(applyTo: string | null): null {
    return clearBox(this.state, this.sheet, this.box, applyTo ?? "All");
  }
  Select(): null {
    if (this.sheet.visibility !== "Visible") throw new HostError("InvalidOperation", "A hidden sheet can't be selected.", "Range.select");
    this.state.select(this.sheet, this.box, "add-in");
    return null;
  }
  async Calculate(): Promise<null> {
    await this.state.calculate(true);
    return null;
  }
  /** Outline: only of whole columns. */
  Group(option: string): null {
    for (const column of this.grouped("Range.group", option))
      this.sheet.columnLevels.set(column, (this.sheet.columnLevels.get(column) ?? 0) + 1);
    this.state.book.tell({ kind: "layout", sheet: this.sheet });
    return null;
  }
  Ungroup(option: string): null {
    const columns = this.grouped("Range.ungroup", option);
    const { columnLevels } = this.sheet;
    if (columns.some((column) => (columnLevels.get(column) ?? 0) === 0))
      throw new HostError("InvalidOperation", "The range stands in no group.", "Range.ungroup");
    for (const column of columns) {
      const level = (columnLevels.get(column) ?? 0) - 1;
      if (level > 0) columnLevels.set(column, level);
      else columnLevels.delete(column);
    }
    this.state.book.tell({ kind: "layout", sheet: this.sheet });
    return null;
  }
  HideGroupDetails(option: string): null {
    return this.setGroupHidden("Range.hideGroupDetails", option, true);
  }
  ShowGroupDetails(option: string): null {
    return this.setGroupHidden("Range.showGroupDetails", option, false);
  }
  private setGroupHidden(location: string, option: string, hide: boolean): null {
    const columns = this.grouped(location, option).filter((column) => this.sheet.columnLevels.has(column));
    if (columns.length === 0) throw new HostError("InvalidOperation", "The range stands in no group.", location);
    for (const column of columns) setHidden(this.state, this.sheet, this.sheet.hiddenColumns, column, 1, hide);
    return null;
  }
  private grouped(location: string, option: string): number[] {
    if (option !== "ByColumns") throw notModelled(`${location}(${option})`);
    if (!this.IsEntireColumn) throw notModelled(`${location} of a range that is no whole columns`);
    if (this.sheet.protected) throw accessDenied(location);
    return Array.from({ length: this.box.columns }, (_, index) => this.box.column + index);
  }
  Merge(across: boolean | null): null {
    requireUnlocked(this.sheet, this.box, "Range.merge");
    const parts = across
      ? Array.from({ length: this.box.rows }, (_, row) => ({ ...this.box, row: this.box.row + row, rows: 1 }))
      : [{ ...this.box }];
    this.sheet.merges = [...this.sheet.merges.filter((merged) => intersection(merged, this.box) === null), ...parts];
    this.state.book.tell({ kind: "layout", sheet: this.sheet });
    return null;
  }
  Unmerge(): null {
    requireUnlocked(this.sheet, this.box, "Range.unmerge");
    this.sheet.merges = this.sheet.merges.filter((merged) => intersection(merged, this.box) === null);
    this.state.book.tell({ kind: "layout", sheet: this.sheet });
    return null;
  }
}

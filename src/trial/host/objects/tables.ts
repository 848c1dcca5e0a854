import { holds, intersection, LAST_COLUMN, LAST_ROW, parseBox, splitSheet } from "../../book/address";
import type { Box, Sheet, Table } from "../../book/book";
import { accessDenied, HostError, invalidArgument, notModelled } from "../../book/errors";
import { HostCollection, type Key, sameText, isRange } from "../protocol/object";
import type { HostState, RangeObject } from "../protocol/state";
import { headingsOf, mendHeadings } from "../sheet/headings";
import { boxOnSheet } from "../sheet/named-range";
import { ExcelTable } from "./table";

abstract class Tables extends HostCollection<ExcelTable> {
  protected readonly sheet: Sheet | null;

  constructor(state: HostState, sheet: Sheet | null) {
    super(state);
    this.sheet = sheet;
  }

  list(): ExcelTable[] {
    return this.state.book.tables
      .filter((table) => this.sheet === null || table.sheet === this.sheet)
      .map((table) => new ExcelTable(this.state, table));
  }

  answersTo(item: ExcelTable, key: Key): boolean {
    return item.Id === String(key) || sameText(item.Name, key);
  }
}
export class TableCollection extends Tables {
  readonly type = "TableCollection";
  override readonly events = ["DataChanged"];

  Add(address: RangeObject | string, hasHeaders: boolean): ExcelTable {
    const range = isRange(address) ? address : this.rangeAt(address);
    return new ExcelTable(this.state, addTable(this.state, range.sheet, range.box, hasHeaders));
  }

  private rangeAt(address: string): RangeObject {
    const { sheet, address: inside } = splitSheet(address);
    const found = sheet === null ? (this.sheet ?? this.state.book.active) : this.state.book.sheet(sheet);
    if (!found || !parseBox(inside)) throw invalidArgument(undefined, "TableCollection.add");
    return this.state.make.range(found, boxOnSheet(this.state, found, inside));
  }
}
/** The tables that a range touches, or wholly holds. */
export class TableScopedCollection extends Tables {
  readonly type = "TableScopedCollection";
  private readonly box: Box;
  private readonly fully: boolean;

  constructor(state: HostState, sheet: Sheet, box: Box, fully: boolean) {
    super(state, sheet);
    this.box = box;
    this.fully = fully;
  }

  override list(): ExcelTable[] {
    return super.list().filter(({ table }) => (this.fully ? holds(this.box, table.box) : intersection(this.box, table.box) !== null));
  }

  GetFirst(): ExcelTable {
    return this.GetItemAt(0);
  }
}
function addTable(state: HostState, sheet: Sheet, box: Box, hasHeaders: boolean): Table {
  const location = "TableCollection.add";
  const { book } = state;
  if (!hasHeaders) throw notModelled(`${location} without headings`);
  if (sheet.protected) throw accessDenied(location);
  if (box.rows === LAST_ROW || box.columns === LAST_COLUMN) throw invalidArgument("A table needs a range with an end.", location);
  if (book.tables.some((other) => other.sheet === sheet && intersection(other.box, box) !== null)) {
    throw invalidArgument("A table can't overlap another table.", location);
  }
  if (sheet.merges.some((merged) => intersection(merged, box) !== null))
    throw new HostError("InvalidOperation", "A table can't hold merged cells.", location);
  const id = book.nextId();
  let number = book.tables.length + 1;
  const taken = (name: string): boolean => book.tables.some((other) => sameText(other.name, name)) || book.names.has(name);
  while (taken(`Table${String(number)}`)) number += 1;
  // A heading row alone gets an empty row to write into.
  const table: Table = {
    id: String(id),
    name: `Table${String(number)}`,
    sheet,
    box: { ...box, rows: Math.max(2, box.rows) },
    style: "TableStyleMedium2",
    showBanded: true,
    filters: new Map(),
  };
  book.tables.push(table);
  const headings = headingsOf(table);
  mendHeadings(state, table, headings);
  book.tell({ kind: "tables", sheet });
  if (headingsOf(table).some((heading, at) => heading !== headings[at])) state.tellCells(sheet, { ...table.box, rows: 1 }, "calc");
  return table;
}

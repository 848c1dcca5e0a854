import { bottomOf } from "../../book/address";
import type { Box, Table } from "../../book/book";
import { accessDenied, invalidArgument, notModelled } from "../../book/errors";
import { HostCollection, HostObject } from "../protocol/object";
import type { HostState, RangeObject } from "../protocol/state";
import { bodyBox } from "../sheet/body";
import { usedBox } from "../sheet/cells";
import { writeValues } from "../sheet/write";

export class TableRowCollection extends HostCollection<TableRow> {
  readonly type = "TableRowCollection";
  private readonly table: Table;

  constructor(state: HostState, table: Table) {
    super(state);
    this.table = table;
  }

  list(): TableRow[] {
    return Array.from({ length: bodyBox(this.table).rows }, (_, at) => new TableRow(this.state, this.table, at));
  }

  answersTo(): boolean {
    return false;
  }

  override get Count(): number {
    return bodyBox(this.table).rows;
  }

  override GetCount(): number {
    return this.Count;
  }

  /** New rows at the end; anywhere else cells would have to move. */
  Add(index: number | null, values: unknown): TableRow {
    const location = "TableRowCollection.add";
    const { table } = this;
    const end = bodyBox(table).rows;
    if (table.sheet.protected) throw accessDenied(location);
    if (index !== null && index !== -1 && index !== end) throw notModelled(`${location} at ${String(index)}`);
    const rows: unknown[] = Array.isArray(values)
      ? Array.isArray(values[0])
        ? values
        : [values]
      : [Array(table.box.columns).fill(values ?? "")];
    // Above a total row, which moves down.
    const added: Box = { ...table.box, row: bottomOf(table.box) + (table.totals ? 0 : 1), rows: rows.length };
    const below = { ...added, row: bottomOf(table.box) + 1, rows: 1_048_575 - bottomOf(table.box) };
    if (usedBox(table.sheet, below, false)) throw notModelled(`${location} with cells below the table`);
    if (!rows.every((row) => Array.isArray(row) && row.length === added.columns)) throw invalidArgument(undefined, location);
    if (table.totals) moveDown(table, rows.length);
    table.box = { ...table.box, rows: table.box.rows + rows.length };
    writeValues(this.state, table.sheet, added, rows, "add-in", location);
    this.state.book.tell({ kind: "tables", sheet: table.sheet });
    return new TableRow(this.state, table, end);
  }
}
/** The cells of the total row, that many rows further down; the rows left free take the formats of the row above. */
function moveDown({ sheet, box }: Table, by: number): void {
  const from = bottomOf(box);
  for (let column = box.column; column < box.column + box.columns; column += 1) {
    const total = sheet.cell(from, column);
    const above = sheet.cell(from - 1, column);
    sheet.rows.get(from)?.delete(column);
    if (total) {
      sheet.at(from + by, column);
      sheet.rows.get(from + by)?.set(column, total);
    }
    for (let row = from; row < from + by; row += 1) {
      const cell = sheet.at(row, column);
      if (above?.format !== undefined) cell.format = above.format;
      if (above?.style) cell.style = { ...above.style };
    }
  }
}
class TableRow extends HostObject {
  readonly type = "TableRow";
  readonly scalars = ["Index", "Values"];
  readonly Index: number;
  private readonly table: Table;

  constructor(state: HostState, table: Table, index: number) {
    super(state);
    this.table = table;
    this.Index = index;
  }

  get Values(): unknown[][] | null {
    return this.GetRange().Values;
  }
  set Values(given: unknown) {
    this.GetRange().Values = given;
  }

  GetRange(): RangeObject {
    return this.state.make.range(this.table.sheet, { ...this.table.box, row: this.table.box.row + 1 + this.Index, rows: 1 });
  }
}

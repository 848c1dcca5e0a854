import type { Table } from "../../book/book";
import { accessDenied, invalidArgument, notModelled } from "../../book/errors";
import { showCell } from "../../book/show";
import { HostCollection, HostObject, type Key, sameText } from "../protocol/object";
import type { HostState, RangeObject } from "../protocol/state";
import { bodyBox } from "../sheet/body";
import { mendHeadings } from "../sheet/headings";
import { insertColumnOfCells } from "../sheet/insert-cells";
import { writeValues } from "../sheet/write";
import { Filter } from "./filter-object";

export class TableColumnCollection extends HostCollection<TableColumn> {
  readonly type = "TableColumnCollection";
  private readonly table: Table;

  constructor(state: HostState, table: Table) {
    super(state);
    this.table = table;
  }

  list(): TableColumn[] {
    return Array.from({ length: this.table.box.columns }, (_, at) => new TableColumn(this.state, this.table, at));
  }

  answersTo(item: TableColumn, key: Key): boolean {
    return typeof key === "number" ? item.Id === key : sameText(item.Name, key);
  }

  /** A new column; the cells behind it move to the right within the rows of the table. Rules and lists of the neighbour do not spread to it here. */
  Add(index: number | null, values: unknown, name: string | null): TableColumn {
    const location = "TableColumnCollection.add";
    const { table } = this;
    const { sheet } = table;
    const at = index === null || index === -1 ? table.box.columns : index;
    if (sheet.protected) throw accessDenied(location);
    if (values !== null) throw notModelled(`${location} with values`);
    if (!Number.isInteger(at) || at < 0 || at > table.box.columns) throw invalidArgument(undefined, location);
    const box = { ...table.box };
    const filters = [...table.filters];
    const column = box.column + at;
    // At the edge of the table its own box does not move.
    table.box = { ...box, columns: box.columns + 1 };
    insertColumnOfCells(this.state, sheet, { row: box.row, rows: box.rows, column }, location);
    table.box = { ...box, columns: box.columns + 1 };
    table.filters.clear();
    for (const [filtered, texts] of filters) table.filters.set(filtered >= at ? filtered + 1 : filtered, texts);
    sheet.at(box.row, column).value = name ?? `Column${String(at + 1)}`;
    mendHeadings(this.state, table, []);
    this.state.book.tell({ kind: "tables", sheet });
    this.state.book.tell({ kind: "rules", sheet });
    this.state.book.tell({ kind: "validations", sheet });
    this.state.tellCells(sheet, { ...box, column, columns: box.columns - at + 1 }, "add-in");
    return new TableColumn(this.state, table, at);
  }
}
export class TableColumn extends HostObject {
  readonly type = "TableColumn";
  readonly scalars = ["Id", "Index", "Name", "Values"];
  readonly Index: number;
  private readonly table: Table;

  constructor(state: HostState, table: Table, index: number) {
    super(state);
    this.table = table;
    this.Index = index;
  }

  get Id(): number {
    return this.Index + 1;
  }

  get Name(): string {
    return showCell(this.table.sheet.cell(this.table.box.row, this.table.box.column + this.Index));
  }
  set Name(name: string) {
    const box = { row: this.table.box.row, column: this.table.box.column + this.Index, rows: 1, columns: 1 };
    writeValues(this.state, this.table.sheet, box, name, "add-in", "TableColumn.name");
  }

  get Values(): unknown[][] | null {
    return this.GetRange().Values;
  }
  set Values(given: unknown) {
    this.GetRange().Values = given;
  }

  get Filter(): Filter {
    return new Filter(this.state, this.table, this.Index);
  }

  GetRange(): RangeObject {
    return this.of({ ...this.table.box });
  }
  GetHeaderRowRange(): RangeObject {
    return this.of({ ...this.table.box, rows: 1 });
  }
  GetDataBodyRange(): RangeObject {
    return this.of(bodyBox(this.table));
  }

  private of(box: Table["box"]): RangeObject {
    return this.state.make.range(this.table.sheet, { ...box, column: this.table.box.column + this.Index, columns: 1 });
  }
}

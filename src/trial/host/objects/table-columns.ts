import type { Table } from "../../book/book";
import { showCell } from "../../book/show";
import { HostCollection, HostObject, type Key, sameText } from "../protocol/object";
import type { HostState } from "../protocol/state";
import { bodyBox } from "../sheet/body";
import { writeValues } from "../sheet/write";
import { Filter } from "./filter-object";
import { Range } from "./range";

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

  GetRange(): Range {
    return this.of({ ...this.table.box });
  }
  GetHeaderRowRange(): Range {
    return this.of({ ...this.table.box, rows: 1 });
  }
  GetDataBodyRange(): Range {
    return this.of(bodyBox(this.table));
  }

  private of(box: Table["box"]): Range {
    return new Range(this.state, this.table.sheet, { ...box, column: this.table.box.column + this.Index, columns: 1 });
  }
}

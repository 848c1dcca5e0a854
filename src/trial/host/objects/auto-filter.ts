import { parseBox, sameBox, splitSheet } from "../../book/address";
import type { Table } from "../../book/book";
import { invalidArgument, itemNotFound, notModelled } from "../../book/errors";
import { type Found, HostObject, NULL_OBJECT, isRange } from "../protocol/object";
import type { HostState, RangeObject } from "../protocol/state";
import { clearFilter, clearFilters, filterRows, setFilter } from "../sheet/filter";
import { criteriaOf, textsOfCriteria } from "./filter-object";

/** The filter of a table. A sheet has one only in name here: filters of ranges that are no tables are not modelled. */
export class AutoFilter extends HostObject {
  readonly type = "AutoFilter";
  readonly scalars = ["Enabled", "IsDataFiltered", "Criteria"];
  private readonly table: Table | null;

  constructor(state: HostState, table: Table | null) {
    super(state);
    this.table = table;
  }

  get Enabled(): boolean {
    return this.table !== null && this.table.filterButton !== false;
  }
  get IsDataFiltered(): boolean {
    return (this.table?.filters.size ?? 0) > 0;
  }
  get Criteria(): unknown[] {
    const { table } = this;
    return table ? Array.from({ length: table.box.columns }, (_, column) => criteriaOf(table, column)) : [];
  }

  async Apply(range: RangeObject | string, column: number | null, criteria: Record<string, unknown> | null): Promise<null> {
    if (!this.table) throw notModelled("AutoFilter.Apply on a range that is no table");
    if (column === null || criteria === null) return null;
    await this.state.calculate();
    if (!Number.isInteger(column) || column < 0 || column >= this.table.box.columns) throw invalidArgument(undefined, "AutoFilter.apply");
    const box = isRange(range) ? range.box : parseBox(splitSheet(range).address);
    if (!box || !sameBox(box, this.table.box)) throw notModelled("AutoFilter.Apply on another range than the table's");
    setFilter(this.state, this.table, column, textsOfCriteria(criteria, "AutoFilter.apply"));
    return null;
  }

  ClearCriteria(): null {
    if (this.table) clearFilters(this.state, this.table);
    return null;
  }

  ClearColumnCriteria(column: number): null {
    if (this.table) clearFilter(this.state, this.table, column);
    return null;
  }

  Reapply(): null {
    if (this.table) filterRows(this.state, this.table);
    return null;
  }

  Remove(): null {
    if (this.table) throw notModelled("AutoFilter.Remove of a table");
    return null;
  }

  GetRange(): RangeObject {
    const range = this.GetRangeOrNullObject();
    if (range === NULL_OBJECT) throw itemNotFound("AutoFilter.getRange");
    return range;
  }

  GetRangeOrNullObject(): Found<RangeObject> {
    return this.table ? this.state.make.range(this.table.sheet, this.table.box) : NULL_OBJECT;
  }
}

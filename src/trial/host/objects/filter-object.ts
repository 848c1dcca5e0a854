import type { Table } from "../../book/book";
import { invalidArgument, notModelled } from "../../book/errors";
import { HostObject } from "../protocol/object";
import type { HostState } from "../protocol/state";
import { clearFilter, setFilter } from "../sheet/filter";

/** The filter of one table column. */
export class Filter extends HostObject {
  readonly type = "Filter";
  readonly scalars = ["Criteria"];
  private readonly table: Table;
  private readonly column: number;

  constructor(state: HostState, table: Table, column: number) {
    super(state);
    this.table = table;
    this.column = column;
  }

  get Criteria(): Record<string, unknown> | null {
    return criteriaOf(this.table, this.column);
  }

  async ApplyValuesFilter(values: unknown): Promise<null> {
    // The rows are chosen by what they show, which may wait for a calculation.
    await this.state.calculate();
    setFilter(this.state, this.table, this.column, textsOf(values, "Filter.applyValuesFilter"));
    return null;
  }

  async Apply(criteria: Record<string, unknown>): Promise<null> {
    await this.state.calculate();
    setFilter(this.state, this.table, this.column, textsOfCriteria(criteria, "Filter.apply"));
    return null;
  }

  Clear(): null {
    clearFilter(this.state, this.table, this.column);
    return null;
  }
}
export function criteriaOf(table: Table, column: number): Record<string, unknown> | null {
  const texts = table.filters.get(column);
  return texts ? { filterOn: "Values", values: texts } : null;
}
export function textsOfCriteria(criteria: Record<string, unknown>, location: string): string[] {
  const kind = criteria["filterOn"];
  if (kind !== "Values") throw notModelled(`${location} on ${typeof kind === "string" ? kind : "nothing"}`);
  return textsOf(criteria["values"], location);
}
function textsOf(values: unknown, location: string): string[] {
  if (!Array.isArray(values)) throw invalidArgument(undefined, location);
  return values.map((value: unknown) => {
    if (typeof value !== "string") throw notModelled(`${location} with a value that is no text`);
    return value;
  });
}

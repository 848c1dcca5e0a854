/** A table's filters: rows whose shown text is not let through are hidden. */
import { bottomOf } from "../../book/address";
import type { Table } from "../../book/book";
import { accessDenied } from "../../book/errors";
import { showCell } from "../../book/show";
import type { HostState } from "../protocol/state";
import { bodyBox } from "./body";

export function setFilter(state: HostState, table: Table, column: number, texts: readonly string[]): void {
  requireFilterAllowed(table, "Filter.applyValuesFilter");
  table.filters.set(column, [...texts]);
  filterRows(state, table);
}
export function clearFilter(state: HostState, table: Table, column: number): void {
  requireFilterAllowed(table, "Filter.clear");
  if (table.filters.delete(column)) filterRows(state, table);
}
export function clearFilters(state: HostState, table: Table): void {
  requireFilterAllowed(table, "Table.clearFilters");
  if (table.filters.size === 0) return;
  table.filters.clear();
  filterRows(state, table);
}
/** Hides and shows the rows of the table as its filters say now. */
export function filterRows(state: HostState, table: Table): void {
  const { sheet } = table;
  const body = bodyBox(table);
  const filters = [...table.filters].map(([column, texts]) => ({ column, texts: new Set(texts.map((text) => text.toLowerCase())) }));
  for (let row = body.row; row <= bottomOf(body); row += 1) {
    const passes = filters.every(({ column, texts }) => texts.has(showCell(sheet.cell(row, body.column + column)).toLowerCase()));
    if (passes) sheet.hiddenRows.delete(row);
    else sheet.hiddenRows.add(row);
  }
  state.book.tell({ kind: "filter", sheet, table });
  state.book.tell({ kind: "layout", sheet });
}
function requireFilterAllowed(table: Table, location: string): void {
  if (table.sheet.protected && table.sheet.protection?.options["allowAutoFilter"] !== true) throw accessDenied(location);
}

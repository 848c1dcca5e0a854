import type { Box, Table } from "../../book/book";

/** The rows of a table between its headings and its total row. */
export function bodyBox(table: Table): Box {
  return { ...table.box, row: table.box.row + 1, rows: table.box.rows - (table.totals ? 2 : 1) };
}

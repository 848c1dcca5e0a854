import type { CellValue } from "../../engine/reading/cell-value";
import { readText } from "../../engine/reading/text";
import { OLD_REGISTER_TABLE, REGISTER_TABLE } from "../kit/sheets";
import { looksLikeRegister } from "./shape";

/** The register's table, wherever its sheet went and whatever that is called now. */
export interface FoundRegister {
  readonly sheet: { readonly id: string; readonly name: string };
  readonly table: Excel.Table;
  /** The table's name: that of earlier versions until the register is built again. */
  readonly name: string;
  readonly headings: readonly string[];
  readonly row: number;
  readonly column: number;
  /** Rows of items; neither headings nor a total row. */
  readonly rows: number;
  readonly columns: number;
  readonly totals: boolean;
}
/** Two round trips; null when there is no register. */
export async function findRegister(context: Excel.RequestContext): Promise<FoundRegister | null> {
  const candidates = [REGISTER_TABLE, OLD_REGISTER_TABLE].map((name) => context.workbook.tables.getItemOrNullObject(name));
  for (const table of candidates) table.load("name,showTotals");
  await context.sync();
  const there = candidates.filter((table) => !table.isNullObject);
  if (there.length === 0) return null;
  const loaded = there.map((table) => {
    const range = table.getRange();
    range.load("rowIndex,columnIndex,rowCount,columnCount");
    const first = table.getHeaderRowRange();
    first.load("values");
    table.worksheet.load("id,name");
    return { table, range, first };
  });
  await context.sync();
  for (const { table, range, first } of loaded) {
    const headings = ((first.values as CellValue[][])[0] ?? []).map(readText);
    // A log may bear the name of the earlier table.
    if (table.name.toLowerCase() === OLD_REGISTER_TABLE.toLowerCase() && !looksLikeRegister(headings)) continue;
    return {
      sheet: { id: table.worksheet.id, name: table.worksheet.name },
      table,
      name: table.name,
      headings,
      row: range.rowIndex,
      column: range.columnIndex,
      rows: range.rowCount - (table.showTotals ? 2 : 1),
      columns: range.columnCount,
      totals: table.showTotals,
    };
  }
  return null;
}

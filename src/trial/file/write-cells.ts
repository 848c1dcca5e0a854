/** Cells of the book into the file. */
import type ExcelJS from "exceljs";
import { addressOf, holds } from "../book/address";
import type { Book, Cell, Sheet, Table } from "../book/book";
import { formulaToFile } from "./formulas";
import { writeStyle } from "./styles";

/** An error as the file may hold it; what only says "still waiting" has no place there. */
const FILE_ERRORS = ["#NULL!", "#DIV/0!", "#VALUE!", "#REF!", "#NAME?", "#NUM!", "#N/A"];
export function writeCells(book: Book, from: Sheet, to: ExcelJS.Worksheet, functions: readonly string[]): void {
  const tables = book.tables.filter((table) => table.sheet === from);
  for (const [row, cells] of from.rows) {
    const line = to.getRow(row + 1);
    for (const [column, cell] of cells) {
      const written = line.getCell(column + 1);
      written.value = valueOf(cell, tableAt(tables, row, column), functions);
      written.style = writeStyle(cell.style, cell.format);
      if (cell.note !== undefined) written.note = cell.note;
    }
  }
}
function tableAt(tables: readonly Table[], row: number, column: number): string | null {
  return tables.find((table) => holds(table.box, { row, column, rows: 1, columns: 1 }))?.name ?? null;
}
function valueOf(cell: Cell, table: string | null, functions: readonly string[]): ExcelJS.CellValue {
  const result = cell.error === undefined ? cell.value : FILE_ERRORS.includes(cell.error) ? { error: cell.error } : null;
  if (cell.formula !== undefined) {
    const formula = { formula: formulaToFile(cell.formula, table, functions), ...(result !== null && { result }) };
    return (cell.spill ? { ...formula, shareType: "array", ref: addressOf(cell.spill) } : formula) as ExcelJS.CellValue;
  }
  if (cell.link !== undefined && typeof cell.value === "string") return { text: cell.value, hyperlink: cell.link };
  return result as ExcelJS.CellValue;
}

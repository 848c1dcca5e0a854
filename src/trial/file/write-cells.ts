/** Cells of the book into the file. */
import type ExcelJS from "exceljs";
import { addressOf, holds } from "../book/address";
import type { Book, Box, Cell, Sheet, Table } from "../book/book";
import { needsArray } from "./array-formula";
import { formulaToFile } from "./formulas";
import { writeStyle } from "./styles";

/** An error as the file may hold it; what only says "still waiting" has no place there. */
const FILE_ERRORS = ["#NULL!", "#DIV/0!", "#VALUE!", "#REF!", "#NAME?", "#NUM!", "#N/A"];
export function writeCells(book: Book, from: Sheet, to: ExcelJS.Worksheet, functions: readonly string[]): void {
  const tables = book.tables.filter((table) => table.sheet === from);
  const inFile = new FormulasInFile(functions);
  for (const [row, cells] of from.rows) {
    const line = to.getRow(row + 1);
    for (const [column, cell] of cells) {
      const written = line.getCell(column + 1);
      written.value = valueOf(cell, { row, column, rows: 1, columns: 1 }, tables, inFile);
      written.style = writeStyle(cell.style, cell.format);
      if (cell.note !== undefined) written.note = cell.note;
    }
  }
}
function tableAt(tables: readonly Table[], at: Box): string | null {
  return tables.find((table) => holds(table.box, at))?.name ?? null;
}
/** How a formula stands in the file. The formulas of a column are one text, so that each is worked out once. */
class FormulasInFile {
  private readonly functions: readonly string[];
  private readonly known = new Map<string, { formula: string; array: boolean }>();

  constructor(functions: readonly string[]) {
    this.functions = functions;
  }

  of(formula: string, table: string | null): { readonly formula: string; readonly array: boolean } {
    const key = `${table ?? ""}\n${formula}`;
    let found = this.known.get(key);
    if (!found) {
      found = { formula: formulaToFile(formula, table, this.functions), array: needsArray(formula, this.functions) };
      this.known.set(key, found);
    }
    return found;
  }
}
function valueOf(cell: Cell, at: Box, tables: readonly Table[], inFile: FormulasInFile): ExcelJS.CellValue {
  const result = cell.error === undefined ? cell.value : FILE_ERRORS.includes(cell.error) ? { error: cell.error } : null;
  if (cell.formula !== undefined) {
    const { formula, array } = inFile.of(cell.formula, tableAt(tables, at));
    // Without a last value a program without the add-in shows #NAME?; what came to nothing is an empty text. What still waits has none.
    const last = result ?? (cell.error === undefined ? "" : null);
    const written = { formula, ...(last !== null && { result: last }) };
    return (array || cell.spill ? { ...written, shareType: "array", ref: addressOf(cell.spill ?? at) } : written) as ExcelJS.CellValue;
  }
  if (cell.link !== undefined && typeof cell.value === "string") return { text: cell.value, hyperlink: cell.link };
  return result as ExcelJS.CellValue;
}

/** Changes that run through every formula of the book when a table, a heading or a sheet gets another name. */
import type { Book, Sheet } from "./book";

export function changeFormulas(book: Book, change: (formula: string, sheet: Sheet, row: number, column: number) => string): void {
  for (const sheet of book.sheets) {
    for (const [row, cells] of sheet.rows) {
      for (const [column, cell] of cells) {
        if (cell.formula !== undefined) cell.formula = change(cell.formula, sheet, row, column);
      }
    }
    for (const rule of sheet.rules) rule.formula = change(rule.formula, sheet, -1, -1);
    for (const validation of sheet.validations) {
      const list = validation.rule["list"] as { source?: unknown } | undefined;
      if (typeof list?.source === "string" && list.source.startsWith("=")) list.source = change(list.source, sheet, -1, -1);
      const custom = validation.rule["custom"] as { formula?: unknown } | undefined;
      if (typeof custom?.formula === "string") custom.formula = change(custom.formula, sheet, -1, -1);
    }
  }
  const anywhere = book.sheets[0];
  if (anywhere) for (const [name, formula] of book.names) book.names.set(name, change(formula, anywhere, -1, -1));
}

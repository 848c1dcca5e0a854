/** Tables grow when something is written directly below them or directly to their right. */
import { bottomOf, boxBetween, intersection, rightOf } from "../../book/address";
import type { Box, Sheet, Table } from "../../book/book";
import { slide } from "../../book/formula-text";
import type { HostState } from "../protocol/state";
import { isBlank } from "./cells";
import { headingsOf, mendHeadings } from "./headings";

export function growTables(state: HostState, sheet: Sheet, written: Box): void {
  // Protected sheets keep their tables as they are.
  if (sheet.protected) return;
  for (const table of state.book.tables) {
    if (table.sheet !== sheet || table.totals) continue;
    if (growsDown(state, table, written)) growDown(state, table, bottomOf(written) - bottomOf(table.box));
    else if (growsRight(state, table, written)) growRight(state, table, rightOf(written) - rightOf(table.box));
  }
}
function holdsSomething(sheet: Sheet, box: Box): boolean {
  for (let row = box.row; row <= bottomOf(box); row += 1) {
    for (let column = box.column; column <= rightOf(box); column += 1) if (!isBlank(sheet.cell(row, column))) return true;
  }
  return false;
}
function isFree(state: HostState, table: Table, added: Box): boolean {
  return state.book.tables.every((other) => other === table || other.sheet !== table.sheet || intersection(other.box, added) === null);
}
function growsDown(state: HostState, table: Table, written: Box): boolean {
  const bottom = bottomOf(table.box);
  if (written.row > bottom + 1 || bottomOf(written) <= bottom) return false;
  if (written.column < table.box.column || rightOf(written) > rightOf(table.box)) return false;
  const added = boxBetween(bottom + 1, table.box.column, bottomOf(written), rightOf(table.box));
  // Validation rules waiting below a table keep it from growing.
  const ruled = table.sheet.validations.some((validation) => intersection(validation.box, added) !== null);
  return !ruled && isFree(state, table, added) && holdsSomething(table.sheet, { ...written, row: bottom + 1, rows: 1 });
}
function growsRight(state: HostState, table: Table, written: Box): boolean {
  const right = rightOf(table.box);
  if (written.column !== right + 1 || written.row < table.box.row || bottomOf(written) > bottomOf(table.box)) return false;
  const added = boxBetween(table.box.row, right + 1, bottomOf(table.box), rightOf(written));
  return isFree(state, table, added) && holdsSomething(table.sheet, written);
}
function growDown(state: HostState, table: Table, by: number): void {
  const { sheet, box } = table;
  const lastRow = bottomOf(box);
  const follows = (at: Box): boolean => bottomOf(at) === lastRow && intersection(at, box) !== null;
  const rules = sheet.rules.filter((rule) => follows(rule.box));
  const validations = sheet.validations.filter((validation) => follows(validation.box));
  for (const { box: extended } of [...rules, ...validations]) extended.rows += by;
  for (let column = box.column; column <= rightOf(box); column += 1) fillDown(table, column, by);
  table.box = { ...box, rows: box.rows + by };
  const { book } = state;
  book.tell({ kind: "tables", sheet });
  if (rules.length > 0) book.tell({ kind: "rules", sheet });
  if (validations.length > 0) book.tell({ kind: "validations", sheet });
  // Told as calculated, since nobody wrote it: formats and formulas that the new rows took over.
  state.tellCells(sheet, boxBetween(lastRow + 1, box.column, lastRow + by, rightOf(box)), "calc");
}
/** New rows take the last row's formats, and the formula of a column that has one throughout. */
function fillDown(table: Table, column: number, by: number): void {
  const { sheet, box } = table;
  const lastRow = bottomOf(box);
  const last = sheet.cell(lastRow, column);
  if (box.rows < 2 || !last) return;
  const formula = columnFormula(table, column);
  for (let down = 1; down <= by; down += 1) {
    const fills = formula !== null && isBlank(sheet.cell(lastRow + down, column));
    if (!fills && last.format === undefined && last.style === undefined) continue;
    const cell = sheet.at(lastRow + down, column);
    if (last.format !== undefined && (cell.format ?? "General") === "General") cell.format = last.format;
    if (last.style && !cell.style) cell.style = { ...last.style };
    if (fills) {
      cell.formula = slide(formula, down, 0);
      cell.error = "#BUSY!";
    }
  }
}
/** The formula in the last row if every row of the column has the same one, else null. */
function columnFormula(table: Table, column: number): string | null {
  const { sheet, box } = table;
  const lastRow = bottomOf(box);
  const formula = sheet.cell(lastRow, column)?.formula;
  if (formula === undefined) return null;
  for (let row = box.row + 1; row < lastRow; row += 1) {
    const other = sheet.cell(row, column)?.formula;
    if (other === undefined || (other !== formula && slide(other, lastRow - row, 0) !== formula)) return null;
  }
  return formula;
}
function growRight(state: HostState, table: Table, by: number): void {
  const headings = headingsOf(table);
  table.box = { ...table.box, columns: table.box.columns + by };
  mendHeadings(state, table, headings);
  state.book.tell({ kind: "tables", sheet: table.sheet });
  const first = rightOf(table.box) - by + 1;
  state.tellCells(table.sheet, boxBetween(table.box.row, first, table.box.row, rightOf(table.box)), "calc");
}

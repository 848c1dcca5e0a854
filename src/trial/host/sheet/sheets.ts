/** Adding, naming and deleting sheets. */
import { splitSheet } from "../../book/address";
import type { Sheet } from "../../book/book";
import { HostError, invalidArgument, itemAlreadyExists } from "../../book/errors";
import { changeFormulas } from "../../book/formulas";
import { renameSheet } from "../../book/table-references";
import type { HostState } from "../protocol/state";

export function addSheet(state: HostState, wanted: string | null): Sheet {
  const { book } = state;
  let name = wanted ?? "";
  if (name === "") {
    let number = book.sheets.length + 1;
    while (book.sheet(`Sheet${String(number)}`)) number += 1;
    name = `Sheet${String(number)}`;
  }
  requireSheetName(state, name, null, "WorksheetCollection.add");
  return book.addSheet(name);
}
export function renameSheetTo(state: HostState, sheet: Sheet, name: string): void {
  requireSheetName(state, name, sheet, "Worksheet.name");
  const old = sheet.name;
  sheet.name = name;
  changeFormulas(state.book, (formula) => renameSheet(formula, old, name));
  state.book.tell({ kind: "sheets" });
}
function requireSheetName(state: HostState, name: unknown, own: Sheet | null, location: string): void {
  const fits =
    typeof name === "string" &&
    name !== "" &&
    name.length <= 31 &&
    !/[:\\/?*[\]]/.test(name) &&
    !/^'|'$/.test(name) &&
    name.toLowerCase() !== "history";
  if (!fits) throw invalidArgument(`${String(name)} can't be the name of a sheet.`, location);
  const other = state.book.sheet(name);
  if (other && other !== own) throw itemAlreadyExists(`a sheet named ${name}`, location);
}
export function deleteSheet(state: HostState, sheet: Sheet): void {
  const { book } = state;
  const others = book.sheets.filter((other) => other !== sheet && other.visibility === "Visible");
  const next = others[0];
  if (!next) throw new HostError("InvalidOperation", "A workbook needs a visible sheet.", "Worksheet.delete");
  for (const table of book.tables.filter((other) => other.sheet === sheet)) book.tables.splice(book.tables.indexOf(table), 1);
  for (const [name, formula] of [...book.names]) {
    if (splitSheet(formula.replace(/^=/, "")).sheet?.toLowerCase() === sheet.name.toLowerCase()) book.names.delete(name);
  }
  book.sheets.splice(book.sheets.indexOf(sheet), 1);
  state.selections.delete(sheet);
  if (book.active === sheet) {
    book.active = next;
    book.selection = state.selections.get(next) ?? { row: 0, column: 0, rows: 1, columns: 1 };
  }
  book.tell({ kind: "sheets" });
}

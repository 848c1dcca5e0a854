/** A table's headings: texts, never blank, no two alike; formulas follow when one is renamed. */
import { holds } from "../../book/address";
import type { Table } from "../../book/book";
import { changeFormulas } from "../../book/formulas";
import { showCell } from "../../book/show";
import { renameHeading } from "../../book/table-references";
import type { HostState } from "../protocol/state";
import { emptyCell } from "./cells";

export function headingsOf(table: Table): string[] {
  const { sheet, box } = table;
  return Array.from({ length: box.columns }, (_, at) => showCell(sheet.cell(box.row, box.column + at)));
}
/** Puts the heading row in order; `before` are the headings that formulas still name. */
export function mendHeadings(state: HostState, table: Table, before: readonly string[]): void {
  const taken = new Set<string>();
  headingsOf(table).forEach((shown, at) => {
    const heading = uniqueHeading(shown === "" ? `Column${String(at + 1)}` : shown, taken);
    taken.add(heading.toLowerCase());
    const cell = table.sheet.at(table.box.row, table.box.column + at);
    if (cell.value !== heading || cell.formula !== undefined) {
      emptyCell(cell);
      cell.value = heading;
    }
    const old = before[at];
    if (old === undefined || old === heading) return;
    changeFormulas(state.book, (formula, sheet, row, column) => {
      const own = sheet === table.sheet && holds(table.box, { row, column, rows: 1, columns: 1 });
      return renameHeading(formula, table.name, old, heading, own);
    });
  });
}
/** Excel's way with a heading that is there already: the smallest number behind it that makes it new. */
function uniqueHeading(wanted: string, taken: ReadonlySet<string>): string {
  if (!taken.has(wanted.toLowerCase())) return wanted;
  let number = 2;
  while (taken.has((wanted + String(number)).toLowerCase())) number += 1;
  return wanted + String(number);
}

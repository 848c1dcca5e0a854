/** `range.clear()`: contents, formats, or all of it. */
import { bottomOf, intersection, isWholeColumns, rightOf, without } from "../../book/address";
import type { Box, Sheet } from "../../book/book";
import { invalidArgument, notModelled } from "../../book/errors";
import type { HostState } from "../protocol/state";
import { emptyCell, forEachCell, requireUnlocked, tellable } from "./cells";
import { headingsOf, mendHeadings } from "./headings";
import { clearRules } from "./rules";

export function clearBox(state: HostState, sheet: Sheet, box: Box, applyTo: string): null {
  const location = "Range.clear";
  const { book } = state;
  if (!["All", "Contents", "Formats", "Hyperlinks"].includes(applyTo)) {
    throw applyTo === "RemoveHyperlinks" || applyTo === "ResetContents"
      ? notModelled(`${location}(${applyTo})`)
      : invalidArgument(undefined, location);
  }
  requireUnlocked(sheet, box, location);
  const told = tellable(sheet, box);
  if (applyTo === "All") removeTables(state, sheet, box);
  if (applyTo === "All" || applyTo === "Contents") {
    const headed = book.tables
      .filter((table) => table.sheet === sheet && intersection({ ...table.box, rows: 1 }, box))
      .map((table) => ({ table, headings: headingsOf(table) }));
    forEachCell(sheet, box, emptyCell);
    for (const { table, headings } of headed) mendHeadings(state, table, headings);
    state.tellCells(sheet, told, "add-in");
  }
  if (applyTo === "All" || applyTo === "Formats") clearFormats(state, sheet, box, told);
  if (applyTo === "All") {
    sheet.validations = sheet.validations.flatMap((validation) =>
      without(validation.box, box).map((part) => ({ ...validation, box: part })),
    );
    book.tell({ kind: "validations", sheet });
  }
  if (applyTo === "All" || applyTo === "Hyperlinks")
    forEachCell(sheet, box, (cell) => {
      delete cell.link;
    });
  return null;
}
function clearFormats(state: HostState, sheet: Sheet, box: Box, told: Box): void {
  forEachCell(sheet, box, (cell) => {
    delete cell.format;
    delete cell.style;
  });
  if (isWholeColumns(box)) for (let column = box.column; column <= rightOf(box); column += 1) sheet.columnDefaults.delete(column);
  clearRules(state, sheet, box);
  state.book.tell({ kind: "style", sheet, box: told });
}
/** A table wholly inside goes; one that sticks out stays as a table. */
function removeTables(state: HostState, sheet: Sheet, box: Box): void {
  const inside = state.book.tables.filter((table) => {
    const shared = table.sheet === sheet ? intersection(table.box, box) : null;
    return (
      shared !== null && shared.row === table.box.row && bottomOf(shared) === bottomOf(table.box) && shared.columns === table.box.columns
    );
  });
  for (const table of inside) state.book.tables.splice(state.book.tables.indexOf(table), 1);
  if (inside.length > 0) state.book.tell({ kind: "tables", sheet });
}

/** Tables between the book and the file. Their part of the file is written here, since the file library leaves half of it out. */
import type ExcelJS from "exceljs";
import { addressOf, bottomOf, parseBox } from "../book/address";
import type { Book, Sheet, Table } from "../book/book";
import { bodyBox } from "../host/sheet/body";
import { headingsOf } from "../host/sheet/headings";
import { needsArray } from "./array-formula";
import { formulaToFile } from "./formulas";
import { valueFilters } from "./raw";
import { attributeText, elementsOf, escapeXml } from "./xml";

/** The tables of one sheet. `parts` are all tables of the file by name. */
export function readTables(book: Book, from: ExcelJS.Worksheet, to: Sheet, parts: ReadonlyMap<string, string>): void {
  const names = Object.keys((from as unknown as { tables: Record<string, unknown> }).tables);
  for (const name of names) {
    const xml = parts.get(name);
    const attributes = xml === undefined ? undefined : elementsOf(xml, "table")[0]?.attributes;
    const box = parseBox(attributes?.["ref"] ?? "");
    if (xml === undefined || !attributes || !box) throw new Error(`The table ${name} of this workbook can't be read: the file is damaged.`);
    if (attributes["headerRowCount"] === "0") {
      book.notKept.push(`the table ${name}, which has no headings`);
      continue;
    }
    const style = elementsOf(xml, "tableStyleInfo")[0]?.attributes ?? {};
    const filters = valueFilters(xml);
    if (!filters) book.notKept.push(`the filter of the table ${name}`);
    book.tables.push({
      id: String(book.nextId()),
      name,
      sheet: to,
      box,
      style: style["name"] ?? "",
      showBanded: style["showRowStripes"] === "1",
      filters: filters ?? new Map<number, string[]>(),
      ...(style["showColumnStripes"] === "1" && { bandedColumns: true }),
      ...(style["showFirstColumn"] === "1" && { firstColumn: true }),
      ...(style["showLastColumn"] === "1" && { lastColumn: true }),
      ...(elementsOf(xml, "autoFilter").length === 0 && { filterButton: false }),
      ...(Number(attributes["totalsRowCount"] ?? 0) > 0 && { totals: true }),
    });
  }
}
/** Makes room for the table in the file; the cells are written afterwards. */
export function placeTable(table: Table, to: ExcelJS.Worksheet): void {
  const box = withoutTotals(table);
  to.addTable({
    name: table.name,
    ref: addressOf({ ...box, rows: 1, columns: 1 }),
    headerRow: true,
    columns: headingsOf(table).map((name) => ({ name })),
    rows: Array.from({ length: box.rows - 1 }, () => []),
  });
}
/** A total row is written as a row below the table: its part of the file is not modelled. */
function withoutTotals(table: Table): Table["box"] {
  return { ...table.box, rows: bodyBox(table).rows + 1 };
}
export function tableXml(table: Table, id: number, functions: readonly string[]): string {
  const ref = addressOf(withoutTotals(table));
  const columns = headingsOf(table)
    .map((heading, at) => columnXml(table, heading, at, functions))
    .join("");
  const filters = [...table.filters]
    .map(([column, texts]) => {
      const blank = texts.includes("");
      const listed = texts
        .filter((text) => text !== "")
        .map((text) => `<filter val="${escapeXml(text)}"/>`)
        .join("");
      return `<filterColumn colId="${String(column)}"><filters${blank ? ' blank="1"' : ""}>${listed}</filters></filterColumn>`;
    })
    .join("");
  const flag = (set: boolean | undefined): number => (set ? 1 : 0);
  const style = attributeText({
    name: table.style || undefined,
    showFirstColumn: flag(table.firstColumn),
    showLastColumn: flag(table.lastColumn),
    showRowStripes: flag(table.showBanded),
    showColumnStripes: flag(table.bandedColumns),
  });
  return (
    '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n' +
    `<table xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"${attributeText({ id, name: table.name, displayName: table.name, ref, totalsRowShown: 0 })}>` +
    (table.filterButton === false ? "" : `<autoFilter ref="${ref}">${filters}</autoFilter>`) +
    `<tableColumns count="${String(table.box.columns)}">${columns}</tableColumns><tableStyleInfo${style}/></table>`
  );
}
/** A column with one formula throughout, word for word, says so, and Excel fills it into new rows. */
function columnXml(table: Table, heading: string, at: number, functions: readonly string[]): string {
  // Line ends in a heading have an escape of their own in this place.
  const name = heading.replace(/\r?\n/g, "_x000a_");
  const formula = columnFormula(table, table.box.column + at);
  const inner =
    formula === null
      ? ""
      : `<calculatedColumnFormula${needsArray(formula, functions) ? ' array="1"' : ""}>${escapeXml(formulaToFile(formula, table.name, functions))}</calculatedColumnFormula>`;
  return `<tableColumn id="${String(at + 1)}" name="${escapeXml(name)}"${inner === "" ? "/>" : `>${inner}</tableColumn>`}`;
}
function columnFormula(table: Table, column: number): string | null {
  const body = bodyBox(table);
  const first = table.sheet.cell(body.row, column)?.formula;
  if (first === undefined) return null;
  for (let row = body.row; row <= bottomOf(body); row += 1) {
    if (table.sheet.cell(row, column)?.formula !== first) return null;
  }
  return first;
}

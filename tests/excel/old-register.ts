/** A register of the form that earlier versions wrote: results behind all input columns, one call for each of them. */
import { type Book, type Sheet, type Table } from "../../src/trial/book/book";
import { type Value } from "./books";

const TYPED = [
  "Id",
  "Gear",
  "Size",
  "Rated load",
  "Unit",
  "Assembly",
  "Place",
  "Service",
  "Inspected",
  "Inspected by",
  "Throat as-new",
  "Throat now",
  "Section as-new",
  "Section now",
  "Twist deg",
  "Cracks",
  "Latch works",
  "Identification legible",
  "Tagged out",
  "Released by",
  "Released on",
  "Remarks",
] as const;
const RESULTS = [
  "Overload sign",
  "Overload in assembly",
  "Log differs",
  "Verdict",
  "Reason",
  "Comes out at",
  "Used",
  "Next due",
  "Due state",
] as const;
const ROW =
  'GEAR.VERDICT(Gear[[#Headers],[Id]:[Overload in assembly]],IF(ISBLANK(Gear[@[Id]:[Overload in assembly]]),"",Gear[@[Id]:[Overload in assembly]]),$B$2)';
export type OldRow = Readonly<Partial<Record<(typeof TYPED)[number] | "Crate", Value>>>;
export const oldHook = (id: string, throatNow: string, more: OldRow = {}): OldRow => ({
  Id: id,
  Gear: "hook",
  Unit: "in",
  Service: "normal",
  Inspected: { date: 46300 },
  "Throat as-new": "2",
  "Throat now": throatNow,
  "Section as-new": "1 7/8",
  "Section now": "1.86",
  "Twist deg": 0,
  Cracks: "none",
  "Latch works": "yes",
  "Identification legible": "yes",
  ...more,
});
/** With `flagFirst` as the last of them had it; before, the flag stood among the results. */
export function oldRegister(made: Book, rows: readonly OldRow[], flagFirst = true): { readonly sheet: Sheet; readonly table: Table } {
  const sheet = made.addSheet("Gear register");
  const headings: string[] = flagFirst
    ? ["Flag", ...TYPED, ...RESULTS, "Crate"]
    : [...TYPED, ...RESULTS.slice(0, 3), "Flag", ...RESULTS.slice(3), "Crate"];
  const put = (row: number, column: number, value: string | number, format?: string): void => {
    const cell = sheet.at(row, column);
    if (format !== undefined) cell.format = format;
    if (typeof value === "string" && value.startsWith("=")) Object.assign(cell, { formula: value, error: "#BUSY!" });
    else cell.value = value;
  };
  put(0, 0, "Gear register");
  put(1, 0, "Rules in force");
  put(1, 1, "standard,practice", "@");
  put(1, 2, "As of");
  put(1, 3, "=TODAY()", "yyyy-mm-dd");
  put(
    2,
    0,
    "This supports an inspection by a competent person. It does not replace the maker's instructions, local codes or licensed practice.",
  );
  headings.forEach((heading, column) => {
    put(3, column, heading, "@");
  });
  rows.forEach((row, index) => {
    headings.forEach((heading, column) => {
      const value = row[heading as keyof OldRow];
      if (heading === "Verdict") put(4 + index, column, `=${ROW}`);
      else if (heading === "Flag") put(4 + index, column, '="flag "&[@Verdict]');
      else if (heading === "Reason") put(4 + index, column, `=${ROW.replace("VERDICT", "REASON")}`);
      else if (heading === "Next due") put(4 + index, column, "=GEAR.NEXTDUE([@Gear],[@Service],[@Inspected])", "yyyy-mm-dd");
      else if (heading === "Log differs") sheet.at(4 + index, column).format = "@";
      else if (heading === "Due state") put(4 + index, column, '="CURRENT"');
      else if (value !== undefined && value !== null)
        put(
          4 + index,
          column,
          typeof value === "object" ? value.date : value,
          typeof value === "object" ? "yyyy-mm-dd" : typeof value === "string" ? "@" : undefined,
        );
    });
    sheet.rowHeights.set(4 + index, 46);
  });
  const letters = (column: number): string => (column < 26 ? String.fromCharCode(65 + column) : `A${String.fromCharCode(39 + column)}`);
  const verdict = letters(headings.indexOf("Verdict"));
  sheet.rules.push({
    id: "{old}",
    box: { row: 4, column: 0, rows: rows.length, columns: headings.length },
    formula: `=$${verdict}5="REMOVE"`,
    fill: "#E0988A",
    stopIfTrue: false,
  });
  const table: Table = {
    id: String(made.nextId()),
    name: "Gear",
    sheet,
    box: { row: 3, column: 0, rows: rows.length + 1, columns: headings.length },
    style: "TableStyleLight1",
    showBanded: true,
    filters: new Map(),
  };
  made.tables.push(table);
  return { sheet, table };
}

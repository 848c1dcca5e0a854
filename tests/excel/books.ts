/** Workbooks for the tests of the workbook side, made in memory. */
import { Book, type Cell, type Sheet } from "../../src/trial/book/book";
import { WorkbookCalculator } from "../../src/trial/calculation/calculator";
import { loadBuiltFunctions } from "../../src/trial/calculation/built-functions";
import { fileURLToPath } from "node:url";

export type Value = string | number | null | { readonly date: number };

export function fill(sheet: Sheet, rows: readonly (readonly Value[])[], top = 0, left = 0): void {
  rows.forEach((row, r) =>
    row.forEach((value, c) => {
      if (value === null) return;
      const cell: Cell = sheet.at(top + r, left + c);
      if (typeof value === "object") {
        cell.value = value.date;
        cell.format = "yyyy-mm-dd";
      } else {
        cell.value = value;
        if (typeof value === "string") cell.format = "@";
      }
    }),
  );
}

export function book(sheets: Readonly<Record<string, readonly (readonly Value[])[]>>): Book {
  const made = new Book();
  for (const [name, rows] of Object.entries(sheets)) fill(made.addSheet(name), rows);
  return made;
}

export const HOOK_HEADINGS = [
  "Id",
  "Gear",
  "Unit",
  "Throat as-new",
  "Throat now",
  "Section as-new",
  "Section now",
  "Twist deg",
  "Latch works",
  "Cracks",
  "Identification legible",
  "Service",
  "Inspected",
  "Assembly",
  "Remarks",
] as const;

/** 25 November 2026 */
export const AS_OF = 46351;

export function hookRow(
  id: string,
  throatNow: Value,
  more: { readonly inspected?: Value; readonly assembly?: string; readonly remarks?: string } = {},
): Value[] {
  return [
    id,
    "hook",
    "in",
    "2",
    throatNow,
    "1 7/8",
    "1.86",
    0,
    "yes",
    "none",
    "yes",
    "normal",
    more.inspected === undefined ? { date: 46300 } : more.inspected,
    more.assembly ?? null,
    more.remarks ?? null,
  ];
}

export function hookLog(count: number): Value[][] {
  return [[...HOOK_HEADINGS], ...Array.from({ length: count }, (_, i) => hookRow(`H-${String(i + 1)}`, i % 10 === 0 ? "2.15" : "2.01"))];
}

const dist = fileURLToPath(new URL("../../dist", import.meta.url));

/** The formula engine with the built functions, judging by a fixed day. */
export function calculator(onRules?: (sheet: Sheet) => void, count?: (name: string) => void): WorkbookCalculator {
  const { functions, shapes } = loadBuiltFunctions(`${dist}/functions.js`, `${dist}/functions.json`);
  const counted = new Map(
    [...functions].map(([name, run]) => [
      name,
      (...values: never[]) => {
        count?.(name);
        return run(...values);
      },
    ]),
  );
  return new WorkbookCalculator({ functions: count ? counted : functions, shapes, today: () => AS_OF, ...(onRules && { onRules }) });
}

/** Table rows of a sheet from a heading row on, as a list of records by heading. */
export function records(sheet: Sheet, headingRow: number): Record<string, Cell["value"]>[] {
  const used = sheet.used();
  if (!used) return [];
  const headings = Array.from({ length: used.column + used.columns }, (_, c) => String(sheet.cell(headingRow, c)?.value ?? ""));
  const rows: Record<string, Cell["value"]>[] = [];
  for (let r = headingRow + 1; r < used.row + used.rows; r += 1)
    rows.push(Object.fromEntries(headings.map((h, c) => [h, sheet.cell(r, c)?.error ?? sheet.cell(r, c)?.value ?? null])));
  return rows;
}

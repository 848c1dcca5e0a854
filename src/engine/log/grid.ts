import type { CellValue } from "../reading/cell-value";

// Taken out of its object once: where the functions run by themselves, each look at a global costs more than the sum behind it.
const { isArray } = Array;
/** What comes over from the workbook: plain cells, dates told apart. By hand, because zod would take a tenth of the functions' bundle. */
const isCell = (value: unknown): value is CellValue =>
  value === null ||
  value === undefined ||
  typeof value === "number" ||
  typeof value === "string" ||
  typeof value === "boolean" ||
  (typeof value === "object" && "serial" in value && typeof value.serial === "number");
function isGrid(value: unknown): value is Grid {
  return isArray(value) && value.every(isLine);
}
function isLine(line: unknown): boolean {
  if (!isArray(line)) return false;
  for (const cell of line as readonly unknown[]) if (typeof cell !== "string" && typeof cell !== "number" && !isCell(cell)) return false;
  return true;
}
export type Grid = readonly (readonly CellValue[])[];
/** Checks that a grid is made of cells; anything else is a fault of the caller. */
export function asGrid(value: unknown): Grid {
  if (!isGrid(value)) throw new Error("The sheet could not be read as rows of cells.");
  return value;
}
export const isBlank = (cell: CellValue): boolean =>
  cell === null || cell === undefined || (typeof cell === "string" && cell.trim() === "");

/** Cells of a file into the book: values, formulas with their last results, dates as serial days. */
import type ExcelJS from "exceljs";
import { bottomOf, parseBox, rightOf } from "../book/address";
import type { Box, Cell, Sheet } from "../book/book";
import { slide } from "../book/formula-text";
import { formulaFromFile } from "./formulas";
import { readStyle } from "./styles";

const DAY = 86_400_000;
const UNIX_EPOCH = 25_569;
interface Told {
  theme: readonly string[];
  functions: readonly string[];
}
/** What the file library hands out as a cell's value, loosely typed. */
interface FileValue {
  formula?: string;
  sharedFormula?: string;
  shareType?: string;
  ref?: string;
  result?: unknown;
  error?: string;
  richText?: { text: string }[];
  text?: unknown;
  hyperlink?: string;
}
export function readCells(from: ExcelJS.Worksheet, to: Sheet, told: Told): void {
  const merged = new MergedAreas(to.merges);
  from.eachRow({ includeEmpty: true }, (row, number) => {
    if (row.height) to.rowHeights.set(number - 1, row.height);
    if (row.hidden) to.hiddenRows.add(number - 1);
    row.eachCell({ includeEmpty: true }, (cell, column) => {
      const read = readCell(from, cell, told, merged.hides(number - 1, column - 1));
      if (read) Object.assign(to.at(number - 1, column - 1), read);
    });
  });
}
/** Merged areas, asked row by row from the top. */
class MergedAreas {
  private readonly waiting: Box[];
  private reached: Box[] = [];
  private row = -1;

  constructor(merges: readonly Box[]) {
    this.waiting = [...merges].sort((a, b) => b.row - a.row);
  }

  /** True for a cell behind the first one of a merged area. */
  hides(row: number, column: number): boolean {
    if (row !== this.row) {
      this.row = row;
      for (let next = this.waiting.at(-1); next !== undefined && next.row <= row; next = this.waiting.at(-1)) {
        this.waiting.pop();
        this.reached.push(next);
      }
      this.reached = this.reached.filter((box) => bottomOf(box) >= row);
    }
    return this.reached.some(
      (box) => row <= bottomOf(box) && column >= box.column && column <= rightOf(box) && (row > box.row || column > box.column),
    );
  }
}
/** What a merged area hides has no value. */
function readCell(from: ExcelJS.Worksheet, cell: ExcelJS.Cell, told: Told, hidden: boolean): Cell | null {
  const read: Cell = hidden ? { value: null } : readValue(from, cell, told);
  const format: unknown = cell.numFmt;
  const style = readStyle(cell.style, told.theme);
  if (typeof format === "string" && format !== "" && format !== "General") read.format = format;
  if (style) read.style = style;
  const note = noteText(cell);
  if (note !== null) read.note = note;
  const empty = read.value === null && Object.keys(read).length === 1;
  return empty ? null : read;
}
function readValue(from: ExcelJS.Worksheet, cell: ExcelJS.Cell, told: Told): Cell {
  const value: unknown = cell.value;
  if (value === null || typeof value !== "object" || value instanceof Date) return plain(value);
  const given = value as FileValue;
  const text = formulaText(from, cell, given);
  if (text !== null) {
    const formula = formulaFromFile(text, told.functions);
    const box = given.shareType === "array" && given.ref !== undefined ? parseBox(given.ref) : null;
    return { ...plain(given.result), formula, ...(box && (box.rows > 1 || box.columns > 1) && { spill: box }) };
  }
  const read = plain(given);
  return given.hyperlink === undefined ? read : { ...read, link: given.hyperlink };
}
/** Without "="; null when the cell has no formula. A shared formula stands in one cell and is moved to the others. */
function formulaText(from: ExcelJS.Worksheet, cell: ExcelJS.Cell, given: FileValue): string | null {
  if (given.formula !== undefined) return given.formula;
  if (given.sharedFormula === undefined) return null;
  const master = from.getCell(given.sharedFormula);
  const text = (master.value as FileValue | null)?.formula;
  return text === undefined ? null : slide(text, Number(cell.row) - Number(master.row), Number(cell.col) - Number(master.col));
}
/** A value without formula: dates become serial days of the 1900 system, texts lose their inner formats. */
function plain(value: unknown): Cell {
  if (value === null || value === undefined) return { value: null };
  if (typeof value === "number" || typeof value === "string" || typeof value === "boolean") return { value };
  // The file library counts from 1970 both ways without regard to February 1900, so the serial comes out as it was.
  if (value instanceof Date) return { value: value.getTime() / DAY + UNIX_EPOCH };
  const { error, richText, text } = value as FileValue;
  if (error !== undefined) return { value: null, error };
  if (richText) return { value: richText.map((run) => run.text).join("") };
  if (text !== undefined) return plain(text);
  throw new Error(`A cell holds something that can't be read here: ${JSON.stringify(value)}.`);
}
function noteText(cell: ExcelJS.Cell): string | null {
  const note: unknown = cell.note;
  if (note === undefined || note === null || note === "") return null;
  if (typeof note === "string") return note;
  return ((note as { texts?: { text: string }[] }).texts ?? []).map((run) => run.text).join("");
}

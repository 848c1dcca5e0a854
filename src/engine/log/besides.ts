/** What stands in a row beside the cells that are read: it speaks, and nothing else of the engine listens to it. */
import type { FieldId } from "../columns";
import type { Unit } from "../numbers/lengths";
import { Memory } from "../memory";
import type { CellValue } from "../reading/cell-value";
import { readDate } from "../reading/date";
import { speaksPlainly } from "../reading/remark";
import { isDateCell, readText } from "../reading/text";
import type { HeadingMatch, Headings } from "./match-headings";

/** A filled cell of a column whose heading is not understood. */
export interface OpenCell {
  /** Zero-based column inside the grid. */
  readonly column: number;
  readonly heading: string;
  readonly text: string;
  /** What the heading may mean, for the user to confirm. */
  readonly proposal: FieldId | null;
  /** Field that the column is read as, where its cell speaks against the item in the place of a name or a number: no question of the column. */
  readonly field?: FieldId;
}
/** An older reading of a field, as its own heading reads it. Whether it was worse than today's is for the item to say. */
export interface EarlierCell {
  readonly column: number;
  readonly heading: string;
  readonly field: FieldId;
  readonly cell: CellValue;
  /** Unit of a bare size under that heading. */
  readonly unit: Unit | null;
}
/** A reading that cannot be read, beside one of the same thing that can: it hides none and is not silent. */
export interface UnreadCell {
  readonly heading: string;
  readonly field: FieldId;
  readonly text: string;
}
export interface Besides {
  readonly open: readonly OpenCell[];
  readonly earlier: readonly EarlierCell[];
  readonly unread: readonly UnreadCell[];
}
export const NOTHING_BESIDES: Besides = { open: [], earlier: [], unread: [] };
interface Columns {
  readonly open: readonly HeadingMatch[];
  readonly aside: readonly HeadingMatch[];
  /** Read as a name, a place or a number. */
  readonly named: readonly HeadingMatch[];
}
const columns = new WeakMap<Headings, Columns>();
/** What gear is called, what stands on it and where it is kept. True: the words are written on the gear itself. */
const NAMED: ReadonlyMap<FieldId, boolean> = new Map<FieldId, boolean>([
  ["id", true],
  ["gear", false],
  ["gearType", false],
  ["size", true],
  ["ratedLoad", true],
  ["construction", false],
  ["assembly", false],
  ["place", false],
  ["service", false],
  ["usedOn", false],
  ["inspector", false],
]);
function columnsOf(headings: Headings): Columns {
  let found = columns.get(headings);
  if (!found)
    columns.set(
      headings,
      (found = {
        open: headings.matches.filter(({ state }) => state === "not understood"),
        aside: headings.matches.filter(({ state }) => state === "not about condition"),
        named: headings.matches.filter(({ field: id }) => id !== null && NAMED.has(id)),
      }),
    );
  return found;
}
const NONE_OPEN: readonly OpenCell[] = [];
const TELLS = new Memory<boolean>();
/** Columns that nobody understands; each asks where a cell of it tells something. */
export const openColumns = (headings: Headings): readonly HeadingMatch[] => columnsOf(headings).open;
/**
 * The cells of a row that ask. `asked` are the columns of a log in which any cell tells something: all their filled cells
 * ask. Without it, as for a single row, every filled cell asks: the row cannot tell whether its column holds
 * nothing but codes or dates, and the verdict of a row must never be better than that of its log.
 */
export function openCells(line: readonly CellValue[], headings: Headings, asked?: ReadonlySet<number>): readonly OpenCell[] {
  const { open, aside, named } = columnsOf(headings);
  if (open.length + aside.length + named.length === 0) return NONE_OPEN;
  const cells: OpenCell[] = [];
  for (const { column, heading, proposal } of open) {
    const cell = line[column];
    if (cell === null || cell === undefined || cell === "") continue;
    if (asked !== undefined && !asked.has(column)) continue;
    const text = readText(cell);
    if (text !== "" && !DASH.test(text)) cells.push({ column, heading: nameOf(heading, column), text, proposal });
  }
  for (const { column, heading } of aside) {
    const cell = line[column];
    if (typeof cell === "string" && cell !== "" && speaksPlainly(cell))
      cells.push({ column, heading, text: readText(cell), proposal: null });
  }
  for (const { column, heading, field } of named) {
    const cell = line[column];
    if (field !== null && typeof cell === "string" && speaksPlainly(cell, NAMED.get(field)))
      cells.push({ column, heading, text: readText(cell), proposal: null, field });
  }
  return cells;
}
/** The columns of a log that ask: not understood, with a cell that is no date, no sum of money, no link and no code like an id. */
export function askingColumns(lines: readonly (readonly CellValue[])[], headings: Headings): ReadonlySet<number> {
  return new Set(openColumns(headings).flatMap(({ column }) => (lines.some((line) => tells(line[column])) ? [column] : [])));
}
/** "column F" where a heading is blank. */
export function nameOf(heading: string, column: number): string {
  if (heading !== "") return heading;
  let letters = "";
  for (let rest = column + 1; rest > 0; rest = Math.floor((rest - 1) / 26)) letters = String.fromCharCode(65 + ((rest - 1) % 26)) + letters;
  return `(no heading, column ${letters} of the log)`;
}
/** Nothing is recorded. */
const DASH = /^[-–—.]+$/;
const MONEY = /^(?:[$€£¥]|usd|eur|gbp|cad|aud|chf|nzd)\s?-?\d[\d.,' ]*$|^-?\d[\d.,' ]*\s?(?:[$€£¥]|usd|eur|gbp|cad|aud|chf|nzd)$/i;
const LINK = /^(https?:\/\/|www\.|mailto:|file:|\\\\)\S+$|^\S+@\S+\.\w+$|^[\w.:/\\ -]+\.(pdf|jpe?g|png|docx?|xlsx?|tiff?|dwg|msg|heic)$/i;
/** Letters and at least three figures in one run, as of an order or a drawing: PO-4471, C1234/7. A word is none. */
const CODE = /^(?=(?:[^\d]*\d){3})(?:[a-z]{1,3}|(?=\d))(?:[-_/.#]?[a-z]{0,2}\d+)+(?:[-_/.]?[a-z]{1,2})?$/i;
const NO_CODE = /^(ng|nok|rej|bad|out|def|crk|bnt|dmg|no|not)\b/i;
/** A size, a load or a share looks like a code and is none. */
const MEASURE = /^[\d.,/ -]+(mm|cm|m|in|ft|kg|t|te|lb|lbs|kn|n|deg|nm|x|pct)?$/i;
/** Whether a cell of a column that is not understood may tell something of the item. */
export function tells(cell: CellValue): boolean {
  if (cell === null || cell === undefined || cell === "") return false;
  if (isDateCell(cell)) return false;
  return typeof cell !== "string" || TELLS.once(cell, () => textTells(readText(cell)));
}
function textTells(text: string): boolean {
  if (text === "" || DASH.test(text) || MONEY.test(text) || LINK.test(text)) return false;
  if (CODE.test(text) && !MEASURE.test(text) && !NO_CODE.test(text)) return false;
  return !(/\d{1,4}[-/. ]/.test(text) && readDate(text).kind === "value");
}

/**
 * Table references and defined names, written out as cell addresses, and today's date as a number, for one formula in one cell. The book keeps the
 * text that a person reads (`Gear[@[Next due]]`); the calculation engine is given addresses (`F12`), because its own
 * tables follow other rules than a worksheet's. Pure: text and plain boxes in, text out.
 */
import type { Box } from "../book/book";

/** What the rewriting has to know about a table. The box includes the row of headings. */
export interface TableShape {
  readonly name: string;
  readonly sheet: string;
  readonly box: Box;
  readonly headings: readonly string[];
  /** True when the last row of the box is a total row. */
  readonly totals?: boolean;
}
/** The cell in which the formula stands. */
export interface Place {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
}
export interface Surroundings {
  readonly tables: readonly TableShape[];
  /** Defined names in lower case, with their formula such as `=Notes!$A$1:$A$6`. */
  readonly names: ReadonlyMap<string, string>;
  /** Serial day written in place of TODAY(), so that a formula is worked out again when the day changes and not at each edit. */
  readonly today?: number;
}
/** A reference that leads nowhere; `code` is what the cell shows, the message says which part was not found. */
export class BrokenReference extends Error {
  readonly code: "#REF!" | "#VALUE!" | "#NAME?";

  constructor(code: BrokenReference["code"], message: string) {
    super(message);
    this.name = "BrokenReference";
    this.code = code;
  }
}
const NAME_START = /[\p{L}_\\]/u;
const NAME_PART = /[\p{L}\p{N}_.?\\]/u;
/** Names may refer to names; a circle of them must end somewhere. */
const DEEPEST_NAME = 20;
/** Rewrites table references and defined names of `formula` for the cell at `place`. */
export function writeOutReferences(formula: string, place: Place, around: Surroundings, depth = 0): string {
  let out = "";
  let at = 0;
  while (at < formula.length) {
    const character = formula.charAt(at);
    if (character === '"') {
      const end = endOfQuoted(formula, at, '"');
      out += formula.slice(at, end);
      at = end;
    } else if (character === "'") {
      const end = endOfQualified(formula, endOfQuoted(formula, at, "'"));
      out += formula.slice(at, end);
      at = end;
    } else if (character === "[") {
      const end = endOfBrackets(formula, at);
      if (formula.charAt(end) === "!" || NAME_PART.test(formula.charAt(end))) {
        throw new BrokenReference("#REF!", `A reference to another workbook (${formula.slice(at, end)}) can't be followed here.`);
      }
      out += address(tableAround(place, around, formula.slice(at, end)), formula.slice(at, end), place);
      at = end;
    } else if (NAME_START.test(character)) {
      let end = at + 1;
      while (end < formula.length && NAME_PART.test(formula.charAt(end))) end += 1;
      const word = formula.slice(at, end);
      const next = formula.charAt(end);
      if (next === "[") {
        const close = endOfBrackets(formula, end);
        out += address(tableNamed(word, around), formula.slice(end, close), place);
        at = close;
      } else if (next === "!") {
        const close = endOfQualified(formula, end);
        out += formula.slice(at, close);
        at = close;
      } else {
        const day = around.today !== undefined && word.toUpperCase() === "TODAY" ? /^\(\s*\)/.exec(formula.slice(end)) : null;
        out += day ? String(around.today) : next === "(" ? word : wordInPlace(word, place, around, depth);
        at = end + (day?.[0].length ?? 0);
      }
    } else if (/[\d$]/.test(character)) {
      // Numbers (1E5) and addresses with a dollar sign in front: copied whole, so that no part is taken for a name.
      let end = at + 1;
      while (end < formula.length && /[\p{L}\p{N}_.$]/u.test(formula.charAt(end))) end += 1;
      out += formula.slice(at, end);
      at = end;
    } else {
      out += character;
      at += 1;
    }
  }
  return out;
}
/** Column letters of a zero-based column. */
export function columnLetters(column: number): string {
  let letters = "";
  for (let left = column; left >= 0; left = Math.floor(left / 26) - 1) letters = String.fromCharCode(65 + (left % 26)) + letters;
  return letters;
}
/** Address of a box such as A1, A1:C5 or $A$1:$C$5, without its sheet. */
export function boxAddress(box: Box, fixed = false): string {
  const mark = fixed ? "$" : "";
  const first = `${mark}${columnLetters(box.column)}${mark}${String(box.row + 1)}`;
  if (box.rows === 1 && box.columns === 1) return first;
  return `${first}:${mark}${columnLetters(box.column + box.columns - 1)}${mark}${String(box.row + box.rows)}`;
}
/** Sheet name as it stands before "!" in a formula. */
export function quotedSheet(name: string): string {
  return `'${name.replaceAll("'", "''")}'`;
}
/** Index behind a text or sheet name that begins at `start`; a doubled quote stands for one. */
function endOfQuoted(formula: string, start: number, quote: string): number {
  let at = start + 1;
  while (at < formula.length) {
    if (formula.charAt(at) === quote) {
      if (formula.charAt(at + 1) !== quote) return at + 1;
      at += 1;
    }
    at += 1;
  }
  return formula.length;
}
/** Index behind `!A1` when a sheet name ends at `end`: what follows the exclamation mark is never a name of the book. */
function endOfQualified(formula: string, end: number): number {
  if (formula.charAt(end) !== "!") return end;
  let at = end + 1;
  while (at < formula.length && /[\p{L}\p{N}_.$\\?]/u.test(formula.charAt(at))) at += 1;
  return at;
}
/** Index behind the bracket that closes the one at `start`; an apostrophe escapes the next character. */
function endOfBrackets(formula: string, start: number): number {
  let depth = 0;
  for (let at = start; at < formula.length; at += 1) {
    const character = formula.charAt(at);
    if (character === "'") at += 1;
    else if (character === "[") depth += 1;
    else if (character === "]") {
      depth -= 1;
      if (depth === 0) return at + 1;
    }
  }
  throw new BrokenReference("#NAME?", `A bracket is not closed in ${formula.slice(start)}.`);
}
function tableNamed(name: string, around: Surroundings): TableShape {
  const table = around.tables.find((t) => t.name.toLowerCase() === name.toLowerCase());
  if (!table) throw new BrokenReference("#REF!", `There is no table named ${name}.`);
  return table;
}
function tableAround(place: Place, around: Surroundings, text: string): TableShape {
  const table = around.tables.find((t) => t.sheet === place.sheet && contains(t.box, place.row, place.column));
  if (!table) throw new BrokenReference("#REF!", `${text} names no table, and the formula does not stand in one.`);
  return table;
}
function contains(box: Box, row: number, column: number): boolean {
  return row >= box.row && row < box.row + box.rows && column >= box.column && column < box.column + box.columns;
}
/** A word that is not a function: a defined name, a whole table, or something the engine knows (TRUE, A1, B:B). */
function wordInPlace(word: string, place: Place, around: Surroundings, depth: number): string {
  const named = around.names.get(word.toLowerCase());
  if (named !== undefined) {
    if (depth >= DEEPEST_NAME) throw new BrokenReference("#NAME?", `The name ${word} refers to itself.`);
    const body = writeOutReferences(named.replace(/^=/, ""), place, around, depth + 1);
    return /^('[^']*'|[\p{L}\p{N}_.]+)?!?\$?[A-Z]+\$?\d+(:\$?[A-Z]+\$?\d+)?$/iu.test(body) ? body : `(${body})`;
  }
  const table = around.tables.find((t) => t.name.toLowerCase() === word.toLowerCase());
  return table ? address(table, "[]", place) : word;
}
/** Which rows and which columns a bracket names. */
interface Portion {
  parts: Set<string>;
  from: string | null;
  to: string | null;
}
function address(table: TableShape, brackets: string, place: Place): string {
  const portion = readBrackets(brackets);
  const rows = rowsOf(table, portion, place);
  const columns = columnsOf(table, portion);
  const box: Box = { row: rows.first, rows: rows.last - rows.first + 1, column: columns.first, columns: columns.last - columns.first + 1 };
  // What is not of this row stands still when the formula is moved to another.
  const address = boxAddress(box, !portion.parts.has("#this row"));
  return table.sheet === place.sheet ? address : `${quotedSheet(table.sheet)}!${address}`;
}
const PARTS = new Set(["#all", "#data", "#headers", "#totals", "#this row"]);
function readBrackets(brackets: string): Portion {
  const portion: Portion = { parts: new Set(), from: null, to: null };
  let inside = brackets.slice(1, -1).trim();
  if (inside.startsWith("@")) {
    portion.parts.add("#this row");
    inside = inside.slice(1).trim();
  }
  if (inside === "") return portion;
  if (!inside.startsWith("[")) {
    if (inside.startsWith("#")) addPart(portion, inside);
    else portion.from = portion.to = unescaped(inside);
    return portion;
  }
  let at = 0;
  let range = false;
  while (at < inside.length) {
    const character = inside.charAt(at);
    if (character === "[") {
      const end = endOfBrackets(inside, at);
      const item = inside.slice(at + 1, end - 1);
      if (item.trim().startsWith("#")) addPart(portion, item.trim());
      else if (range) portion.to = unescaped(item);
      else portion.from = portion.to = unescaped(item);
      at = end;
    } else if (character === ":") {
      range = true;
      at += 1;
    } else if (character === "," || character === ";" || character === " ") {
      at += 1;
    } else {
      throw new BrokenReference("#NAME?", `${brackets} can't be read as a table reference.`);
    }
  }
  return portion;
}
function addPart(portion: Portion, text: string): void {
  const part = text.toLowerCase();
  if (!PARTS.has(part)) throw new BrokenReference("#REF!", `${text} is not a part of a table.`);
  portion.parts.add(part);
}
/** An apostrophe in front of a special character is not part of the heading. */
function unescaped(text: string): string {
  return text.replace(/'(.)/gsu, "$1");
}
function rowsOf(table: TableShape, portion: Portion, place: Place): { first: number; last: number } {
  const heading = table.box.row;
  const bottom = heading + table.box.rows - 1;
  const firstData = heading + 1;
  const lastData = Math.max(firstData, table.totals ? bottom - 1 : bottom);
  const { parts } = portion;
  if (parts.has("#this row")) {
    if (place.row < firstData || place.row > lastData) {
      throw new BrokenReference("#VALUE!", `The formula does not stand in a row of ${table.name}.`);
    }
    return { first: place.row, last: place.row };
  }
  if (parts.has("#all")) return { first: heading, last: bottom };
  if (parts.has("#totals")) {
    if (!table.totals) throw new BrokenReference("#REF!", `${table.name} has no total row.`);
    return { first: parts.has("#data") ? firstData : bottom, last: bottom };
  }
  if (parts.has("#headers")) return { first: heading, last: parts.has("#data") ? lastData : heading };
  return { first: firstData, last: lastData };
}
function columnsOf(table: TableShape, portion: Portion): { first: number; last: number } {
  const left = table.box.column;
  if (portion.from === null || portion.to === null) return { first: left, last: left + table.box.columns - 1 };
  const first = left + columnNamed(table, portion.from);
  const last = left + columnNamed(table, portion.to);
  return { first: Math.min(first, last), last: Math.max(first, last) };
}
function columnNamed(table: TableShape, heading: string): number {
  const wanted = heading.toLowerCase();
  const index = table.headings.findIndex((h) => h.toLowerCase() === wanted);
  if (index < 0) throw new BrokenReference("#REF!", `${table.name} has no column named "${heading}".`);
  return index;
}

/** Formulas as text: cut into pieces, so that a change of a name or an address never touches a quoted text. */
import { columnLetters, columnNumber, LAST_COLUMN, LAST_ROW } from "./address";

interface Piece {
  /** "code" is the rest; "text" is "quoted", "sheet" is 'quoted', "bracket" is a table's [square brackets]. */
  kind: "code" | "text" | "sheet" | "bracket";
  text: string;
}
const CLOSED_PIECE = /"(?:[^"]|"")*"|'(?:[^']|'')*'/y;
/** Null when a quote or a bracket is not closed. */
export function piecesOf(formula: string): Piece[] | null {
  const pieces: Piece[] = [];
  let code = "";
  let at = 0;
  while (at < formula.length) {
    const character = formula.charAt(at);
    if (character !== '"' && character !== "'" && character !== "[") {
      code += character;
      at += 1;
      continue;
    }
    const end = character === "[" ? endOfBracket(formula, at) : endOfQuote(formula, at);
    if (end < 0) return null;
    if (code !== "") pieces.push({ kind: "code", text: code });
    code = "";
    pieces.push({ kind: character === '"' ? "text" : character === "'" ? "sheet" : "bracket", text: formula.slice(at, end) });
    at = end;
  }
  if (code !== "") pieces.push({ kind: "code", text: code });
  return pieces;
}
function endOfQuote(formula: string, start: number): number {
  CLOSED_PIECE.lastIndex = start;
  return CLOSED_PIECE.test(formula) ? CLOSED_PIECE.lastIndex : -1;
}
/** Inside brackets an apostrophe takes the next character as it is. */
function endOfBracket(formula: string, start: number): number {
  let depth = 0;
  for (let at = start; at < formula.length; at += 1) {
    const character = formula.charAt(at);
    if (character === "'") at += 1;
    else if (character === "[") depth += 1;
    else if (character === "]" && (depth -= 1) === 0) return at + 1;
  }
  return -1;
}
/** Why Excel would refuse the formula, as far as its text alone tells; null when it looks whole. */
export function faultOf(formula: string): string | null {
  if (formula.length > 8192) return "the formula is longer than 8,192 characters";
  const pieces = piecesOf(formula);
  if (!pieces) return "a quote or a bracket is not closed";
  let depth = 0;
  for (const { kind, text } of pieces) {
    if (kind === "text" && text.length > 257) return "a text in the formula is longer than 255 characters";
    if (kind !== "code") continue;
    for (const character of text) {
      if (character === "(") depth += 1;
      if (character === ")") depth -= 1;
      if (depth < 0) return "a parenthesis is closed that was not opened";
    }
  }
  return depth > 0 ? "a parenthesis is not closed" : null;
}
/** Changes the code between quotes and brackets. */
export function mapCode(formula: string, change: (code: string) => string): string {
  return (
    piecesOf(formula)
      ?.map((piece) => (piece.kind === "code" ? change(piece.text) : piece.text))
      .join("") ?? formula
  );
}
const REFERENCE =
  /(?<![\p{L}\p{N}_.$\\])(?:(\$?)([A-Z]{1,3})(\$?)(\d{1,7})|(\$?)([A-Z]{1,3}):(\$?)([A-Z]{1,3})|(\$?)(\d{1,7}):(\$?)(\d{1,7}))(?![\p{L}\p{N}_.(!\\])/giu;
/** True when the formula holds an address without dollars, so that it would mean something else in another cell. */
export function hasRelativeReference(formula: string): boolean {
  return slide(formula, 1, 0) !== formula || slide(formula, 0, 1) !== formula;
}
/** The formula with its relative addresses as distances from a cell: the same text in each cell that it was filled into. */
export function relativeForm(formula: string, fromRow: number, fromColumn: number): string {
  const across = (dollar: string | undefined, letters = ""): string =>
    dollar === "$" ? `C${letters}` : `C[${String(columnNumber(letters) - fromColumn)}]`;
  const down = (dollar: string | undefined, digits = ""): string =>
    dollar === "$" ? `R${digits}` : `R[${String(Number(digits) - 1 - fromRow)}]`;
  return mapCode(formula, (code) =>
    code.replace(REFERENCE, (found: string, ...parts: (string | undefined)[]) => {
      const [d1, letters, d2, digits, d3, left, d4, right, d5, top, d6, bottom] = parts;
      if (letters !== undefined) return across(d1, letters) + down(d2, digits);
      if (left !== undefined) return `${across(d3, left)}:${across(d4, right)}`;
      if (top !== undefined) return `${down(d5, top)}:${down(d6, bottom)}`;
      return found;
    }),
  );
}
/** The formula as it reads when it is copied `rows` down and `columns` to the right; an address that leaves the sheet is #REF!. */
export function slide(formula: string, rows: number, columns: number): string {
  return mapCode(formula, (code) =>
    code.replace(REFERENCE, (found: string, ...parts: (string | undefined)[]) => {
      const [d1, letters, d2, digits, d3, left, d4, right, d5, top, d6, bottom] = parts;
      if (letters !== undefined) return joined("", [column(d1, letters, columns), row(d2, digits, rows)]);
      if (left !== undefined) return joined(":", [column(d3, left, columns), column(d4, right, columns)]);
      if (top !== undefined) return joined(":", [row(d5, top, rows), row(d6, bottom, rows)]);
      return found;
    }),
  );
}
function joined(mark: string, parts: (string | null)[]): string {
  return parts.includes(null) ? "#REF!" : parts.join(mark);
}
function column(dollar: string | undefined, letters = "", by = 0): string | null {
  if (dollar === "$" || by === 0) return (dollar ?? "") + letters;
  const moved = columnNumber(letters) + by;
  return moved < 0 || moved >= LAST_COLUMN ? null : columnLetters(moved);
}
function row(dollar: string | undefined, digits = "", by = 0): string | null {
  if (dollar === "$" || by === 0) return (dollar ?? "") + digits;
  const moved = Number(digits) + by;
  return moved < 1 || moved > LAST_ROW ? null : String(moved);
}

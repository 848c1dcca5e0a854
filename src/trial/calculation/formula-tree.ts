/**
 * A formula as a tree. It takes formulas whose table references and names are written out already (`structured.ts`).
 * Strength of the signs, strongest first: `:`, sign, `%`, `^`, `*` and `/`, `+` and `-`, `&`, comparison (Excel, "Calculation
 * operators and precedence").
 */
import { columnNumber, LAST_COLUMN, LAST_ROW } from "../book/address";

/** A corner of an address; `fixed` stands still when the formula is moved. */
export interface Axis {
  readonly at: number;
  readonly fixed: boolean;
}
export interface AreaTree {
  readonly kind: "area";
  /** Null is the formula's own sheet. */
  readonly sheet: string | null;
  readonly top: Axis;
  readonly left: Axis;
  readonly bottom: Axis;
  readonly right: Axis;
}
export type Tree =
  | { readonly kind: "value"; readonly value: number | string | boolean }
  | { readonly kind: "fault"; readonly code: string; readonly message: string }
  | { readonly kind: "omitted" }
  | AreaTree
  | { readonly kind: "name"; readonly name: string }
  | { readonly kind: "sign"; readonly sign: "-" | "+" | "%" | "@"; readonly of: Tree }
  | { readonly kind: "pair"; readonly sign: string; readonly left: Tree; readonly right: Tree }
  | { readonly kind: "range"; readonly from: Tree; readonly to: Tree }
  | { readonly kind: "call"; readonly name: string; readonly given: readonly Tree[] }
  | { readonly kind: "array"; readonly rows: readonly (readonly Tree[])[] };

/** Why a text is no formula. */
export class NoFormula extends Error {}

const SPACE = /\s+/y;
const NUMBER = /(?:\d+\.?\d*|\.\d+)(?:E[+-]?\d+)?/iy;
const FAULT = /#(?:NULL!|DIV\/0!|VALUE!|REF!|NAME\?|NUM!|N\/A|CALC!|SPILL!)/iy;
const CELLS = /\$?[A-Z]{1,3}\$?\d{1,7}(?::\$?[A-Z]{1,3}\$?\d{1,7})?(?![\p{L}\p{N}_.(!\\])/iuy;
const CELL = /\$?[A-Z]{1,3}\$?\d{1,7}(?![\p{L}\p{N}_.(!\\])/iuy;
const COLUMNS = /\$?[A-Z]{1,3}:\$?[A-Z]{1,3}(?![\p{L}\p{N}_.(!\\])/iuy;
const ROWS = /\$?\d{1,7}:\$?\d{1,7}(?![\p{L}\p{N}_.(!\\])/iuy;
const WORD = /[\p{L}_\\][\p{L}\p{N}_.?\\]*/uy;
const SHEET = /(?:'(?:[^']|'')+'|[\p{L}_][\p{L}\p{N}_.]*)!/uy;
const COMPARISON = /<>|<=|>=|<|>|=/y;

export function treeOf(formula: string): Tree {
  const reader = new Reader(formula.startsWith("=") ? formula.slice(1) : formula);
  const tree = reader.comparison();
  reader.end();
  return tree;
}
class Reader {
  private at = 0;
  private readonly text: string;

  constructor(text: string) {
    this.text = text;
  }

  end(): void {
    this.space();
    if (this.at < this.text.length) throw new NoFormula(`${this.text.slice(this.at)} can't be read in a formula.`);
  }

  comparison(): Tree {
    let left = this.joined();
    for (let sign = this.take(COMPARISON); sign !== null; sign = this.take(COMPARISON))
      left = { kind: "pair", sign, left, right: this.joined() };
    return left;
  }

  private joined(): Tree {
    let left = this.sum();
    while (this.takes("&")) left = { kind: "pair", sign: "&", left, right: this.sum() };
    return left;
  }

  private sum(): Tree {
    let left = this.product();
    for (let sign = this.one("+-"); sign !== null; sign = this.one("+-")) left = { kind: "pair", sign, left, right: this.product() };
    return left;
  }

  private product(): Tree {
    let left = this.power();
    for (let sign = this.one("*/"); sign !== null; sign = this.one("*/")) left = { kind: "pair", sign, left, right: this.power() };
    return left;
  }

  private power(): Tree {
    let left = this.share();
    while (this.takes("^")) left = { kind: "pair", sign: "^", left, right: this.share() };
    return left;
  }

  private share(): Tree {
    let of = this.signed();
    while (this.takes("%")) of = { kind: "sign", sign: "%", of };
    return of;
  }

  private signed(): Tree {
    const sign = this.one("+-@") as "+" | "-" | "@" | null;
    return sign === null ? this.ranged() : { kind: "sign", sign, of: this.signed() };
  }

  private ranged(): Tree {
    let from = this.single();
    while (this.takes(":")) from = { kind: "range", from, to: this.single() };
    return from;
  }

  private single(): Tree {
    this.space();
    const character = this.text.charAt(this.at);
    if (character === '"') return { kind: "value", value: this.quoted() };
    if (character === "(") {
      this.at += 1;
      const inner = this.comparison();
      this.expect(")");
      return inner;
    }
    if (character === "{") return this.array();
    const fault = this.take(FAULT);
    if (fault !== null) return { kind: "fault", code: fault.toUpperCase(), message: "" };
    const sheet = this.take(SHEET);
    const area = this.area(sheet === null ? null : sheetName(sheet));
    if (area !== null) return area;
    if (sheet !== null)
      return { kind: "fault", code: "#REF!", message: `${sheet}${this.text.slice(this.at, this.at + 20)} is no address.` };
    const number = this.take(NUMBER);
    if (number !== null) return { kind: "value", value: Number(number) };
    const word = this.take(WORD);
    if (word === null)
      throw new NoFormula(character === "" ? "The formula ends too early." : `${character} stands where a value is expected.`);
    if (this.text.charAt(this.at) === "(") return this.call(word.toUpperCase());
    const upper = word.toUpperCase();
    return upper === "TRUE" || upper === "FALSE" ? { kind: "value", value: upper === "TRUE" } : { kind: "name", name: word };
  }

  private call(name: string): Tree {
    this.at += 1;
    const given: Tree[] = [];
    if (this.takes(")")) return { kind: "call", name, given };
    for (;;) {
      this.space();
      const next = this.text.charAt(this.at);
      given.push(next === "," || next === ")" ? { kind: "omitted" } : this.comparison());
      if (this.takes(")")) return { kind: "call", name, given };
      this.expect(",");
    }
  }

  private array(): Tree {
    this.at += 1;
    const rows: Tree[][] = [[]];
    for (;;) {
      rows.at(-1)?.push(this.signed());
      if (this.takes("}")) return { kind: "array", rows };
      if (this.takes(";")) rows.push([]);
      else this.expect(",");
    }
  }

  private area(sheet: string | null): AreaTree | null {
    const found = this.take(CELLS) ?? this.take(CELL) ?? this.take(COLUMNS) ?? this.take(ROWS);
    if (found === null) return null;
    const [from = "", to = from] = found.split(":");
    const [first, last] = [cornerOf(from), cornerOf(to)];
    const [top, bottom] = inOrder(first.row ?? { at: 0, fixed: true }, last.row ?? { at: LAST_ROW - 1, fixed: true });
    const [left, right] = inOrder(first.column ?? { at: 0, fixed: true }, last.column ?? { at: LAST_COLUMN - 1, fixed: true });
    if (bottom.at >= LAST_ROW || right.at >= LAST_COLUMN || top.at < 0) throw new NoFormula(`${found} is outside of every sheet.`);
    return { kind: "area", sheet, top, left, bottom, right };
  }

  private quoted(): string {
    let out = "";
    for (;;) {
      const end = this.text.indexOf('"', this.at + 1);
      if (end < 0) throw new NoFormula("A quote is not closed.");
      out += this.text.slice(this.at + 1, end);
      this.at = end + 1;
      if (this.text.charAt(this.at) !== '"') return out;
      out += '"';
    }
  }

  private space(): void {
    SPACE.lastIndex = this.at;
    if (SPACE.test(this.text)) this.at = SPACE.lastIndex;
  }

  private take(pattern: RegExp): string | null {
    this.space();
    pattern.lastIndex = this.at;
    const found = pattern.exec(this.text)?.[0];
    if (found === undefined) return null;
    this.at += found.length;
    return found;
  }

  private takes(character: string): boolean {
    this.space();
    if (this.text.charAt(this.at) !== character) return false;
    this.at += 1;
    return true;
  }

  private one(characters: string): string | null {
    this.space();
    const next = this.text.charAt(this.at);
    if (next === "" || !characters.includes(next)) return null;
    this.at += 1;
    return next;
  }

  private expect(character: string): void {
    if (!this.takes(character)) throw new NoFormula(`${character} is missing before "${this.text.slice(this.at, this.at + 20)}".`);
  }
}
const sheetName = (mark: string): string => {
  const name = mark.slice(0, -1);
  return name.startsWith("'") ? name.slice(1, -1).replaceAll("''", "'") : name;
};
function cornerOf(text: string): { row: Axis | null; column: Axis | null } {
  const [, columnFixed, letters, rowFixed, digits] = /^(\$?)([A-Z]*)(\$?)(\d*)$/i.exec(text) ?? [];
  // In "$2" the only dollar belongs to the row.
  const alone = letters === "" || letters === undefined;
  return {
    column: alone ? null : { at: columnNumber(letters), fixed: columnFixed === "$" },
    row: digits === "" || digits === undefined ? null : { at: Number(digits) - 1, fixed: (alone ? columnFixed : rowFixed) === "$" },
  };
}
const inOrder = (a: Axis, b: Axis): [Axis, Axis] => (a.at <= b.at ? [a, b] : [b, a]);

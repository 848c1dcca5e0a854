/** The formulas of a book as the calculation wants them: written out once for all rows of a table column that share a text. */
import type { Sheet } from "../book/book";
import { LAST_ROW } from "../book/address";
import { hasRelativeReference, piecesOf, relativeForm } from "../book/formula-text";
import type { SharedFormula } from "./cells";
import type { FormulaEngine } from "./engine";
import { BrokenReference, type Place, type Surroundings, type TableShape, writeOutReferences } from "./structured";
import { Fault } from "./values";

interface Entry {
  readonly text: string;
  readonly place: Place;
  readonly written: string | Fault;
  readonly shared: SharedFormula;
}
const ALL_ROWS = { first: 0, last: LAST_ROW - 1 };
export class WrittenFormulas {
  private readonly engine: FormulaEngine;
  /** By sheet and column, then by text. */
  private readonly columns = new Map<string, Map<number, Map<string, Entry[]>>>();
  private around: Surroundings;

  constructor(engine: FormulaEngine, around: Surroundings) {
    this.engine = engine;
    this.around = around;
  }

  /** The formula of a cell. */
  for(sheet: Sheet, row: number, column: number, text: string): SharedFormula {
    let columns = this.columns.get(sheet.id);
    if (!columns) this.columns.set(sheet.id, (columns = new Map<number, Map<string, Entry[]>>()));
    let texts = columns.get(column);
    if (!texts) columns.set(column, (texts = new Map<string, Entry[]>()));
    // A formula that was filled down the column is the same in each of its cells.
    const key = this.standsFree(text) ? relativeForm(text, row, column) : text;
    const entries = texts.get(key);
    const known = entries?.find(({ shared }) => !shared.stale && row >= shared.first && row <= shared.last);
    if (known) return known.shared;
    const entry = this.made(sheet, { sheet: sheet.name, row, column }, text);
    if (entries) entries.push(entry);
    else texts.set(key, [entry]);
    return entry.shared;
  }

  /**
   * Tables, names or the day are others now: what a formula means is looked at again, and what means the same is kept.
   * `sheets` is true where a sheet was added, taken out or renamed.
   */
  lookAgain(around: Surroundings, sheets: boolean): void {
    this.around = around;
    for (const columns of this.columns.values())
      for (const texts of columns.values())
        for (const [key, entries] of texts) {
          const kept = entries.filter((entry) => this.holdsStill(entry, sheets));
          if (kept.length === 0) texts.delete(key);
          else if (kept.length < entries.length) texts.set(key, kept);
        }
  }

  private holdsStill({ text, place, written, shared }: Entry, sheets: boolean): boolean {
    if (shared.stale) return false;
    const now = writtenOut(text, place, this.around);
    const rows = this.rowsFor(text, place);
    const same =
      now instanceof Fault ? written instanceof Fault && now.message === written.message && now.code === written.code : now === written;
    const alike = (rows.first === rows.last) === (shared.first === shared.last);
    if (same && alike && !(sheets && typeof now === "string" && now.includes("!"))) {
      Object.assign(shared, rows);
      return true;
    }
    this.engine.forget(shared);
    return false;
  }

  /** True where the formula means the same wherever it stands, but for its addresses: it names no row of a table, and no name. */
  private standsFree(text: string): boolean {
    const lower = text.toLowerCase();
    if ([...this.around.names.keys()].some((name) => lower.includes(name))) return false;
    if (!text.includes("[")) return true;
    const pieces = piecesOf(text) ?? [];
    return pieces.every(
      ({ kind, text: part }, at) =>
        kind !== "bracket" || (!/@|#this row/i.test(part) && /[\p{L}\p{N}_.\\]$/u.test(pieces[at - 1]?.text ?? "")),
    );
  }

  private made(sheet: Sheet, place: Place, text: string): Entry {
    const written = writtenOut(text, place, this.around);
    const shared = this.engine.share({ ...place, sheet: this.engine.sheet(sheet.id) }, this.rowsFor(text, place), written);
    return { text, place, written, shared };
  }

  /** The rows that may share the formula: those of its table, unless it names other rows as they stand. */
  private rowsFor(text: string, { sheet, row, column }: Place): { first: number; last: number } {
    if (this.standsFree(text)) return ALL_ROWS;
    const alone = { first: row, last: row };
    const table = this.around.tables.find((one) => one.sheet === sheet && holds(one, row, column));
    if (!table) return alone;
    const lower = text.toLowerCase();
    const ofOthers = [...text.matchAll(/([\p{L}\p{N}_.\\]+)\[(?:@|\[\s*#this row)/giu)].some(
      ([, name = ""]) => name.toLowerCase() !== table.name.toLowerCase(),
    );
    if (ofOthers || hasRelativeReference(text) || [...this.around.names.keys()].some((name) => lower.includes(name))) return alone;
    return { first: table.box.row + 1, last: table.box.row + table.box.rows - 1 - (table.totals ? 1 : 0) };
  }
}
function holds({ box, totals }: TableShape, row: number, column: number): boolean {
  return row > box.row && row < box.row + box.rows - (totals ? 1 : 0) && column >= box.column && column < box.column + box.columns;
}
export function writtenOut(text: string, place: Place, around: Surroundings): string | Fault {
  try {
    return writeOutReferences(text, place, around);
  } catch (failure) {
    if (!(failure instanceof BrokenReference)) throw failure;
    return new Fault(failure.code, failure.message);
  }
}

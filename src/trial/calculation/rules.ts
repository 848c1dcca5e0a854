/**
 * Conditional formats: each rule is worked out by the formula engine, in columns far to the right of the sheet it belongs
 * to, so that it is brought up to date with everything else after an edit. A rule whose addresses are all fixed to their
 * columns (`=$H5="REMOVE"`) is worked out once for each row, any other once for each cell.
 */
import { intersection } from "../book/address";
import type { FormatRule, Sheet } from "../book/book";
import { slide } from "../book/formula-text";
import type { FormulaEngine, PlacedResult, Touched } from "./engine";
import { BrokenReference, type Surroundings, writeOutReferences } from "./structured";

/** Excel's sheets end at column 16,384; nothing in a book can stand here. */
export const FIRST_RULE_COLUMN = 20_000;
interface PlacedRule {
  readonly rule: FormatRule;
  readonly engineColumn: number;
  readonly everyCell: boolean;
}
export class SheetRules {
  private placed: readonly PlacedRule[] = [];
  private signature = "";
  /** Formulas in the engine, by row and engine column. */
  private readonly held = new Map<string, string>();
  private readonly holding = new Set<string>();

  /** Gives the engine what changed among the rules or the rows they cover. */
  compare(engine: FormulaEngine, sheet: Sheet, around: Surroundings, version: number, touched: Touched[]): void {
    const used = sheet.used();
    const signature = JSON.stringify([sheet.rules.map((rule) => [rule.box, rule.formula]), used, version]);
    if (signature === this.signature) {
      if (sheet.rules.some((rule, index) => this.placed[index]?.rule !== rule)) this.place(sheet.rules);
      return;
    }
    this.signature = signature;
    this.place(sheet.rules);
    const wanted = new Map<string, { row: number; column: number; formula: string }>();
    for (const { rule, engineColumn, everyCell } of this.placed) {
      const covered = used && intersection(rule.box, { ...used, column: rule.box.column, columns: rule.box.columns });
      if (!covered) continue;
      for (let row = covered.row; row < covered.row + covered.rows; row += 1) {
        for (let across = 0; across < (everyCell ? rule.box.columns : 1); across += 1) {
          const formula = ruleFormula(rule, sheet, row, across, around);
          if (formula !== null) wanted.set(key(row, engineColumn + across), { row, column: engineColumn + across, formula });
        }
      }
    }
    for (const place of [...this.held.keys()]) {
      if (wanted.has(place)) continue;
      const [row = 0, column = 0] = place.split(" ").map(Number);
      engine.put(sheet.id, row, column, null);
      this.held.delete(place);
      this.holding.delete(place);
    }
    for (const [place, { row, column, formula }] of wanted) {
      if (this.held.get(place) === formula) continue;
      engine.put(sheet.id, row, column, { formula });
      this.held.set(place, formula);
      touched.push({ sheet: sheet.id, row, column });
    }
  }

  /** Takes a result of a rule; true when it is another one than before. */
  take(result: PlacedResult): boolean {
    const place = key(result.row, result.column);
    const now = result.error === undefined && result.value !== "" && Boolean(result.value);
    if (now === this.holding.has(place)) return false;
    if (now) this.holding.add(place);
    else this.holding.delete(place);
    return true;
  }

  /** Rules that hold in a cell, the strongest first; what follows one that stops is left out. */
  at(row: number, column: number): FormatRule[] {
    const found: FormatRule[] = [];
    for (const { rule, engineColumn, everyCell } of this.placed) {
      const { box } = rule;
      if (row < box.row || row >= box.row + box.rows || column < box.column || column >= box.column + box.columns) continue;
      if (!this.holding.has(key(row, engineColumn + (everyCell ? column - box.column : 0)))) continue;
      found.push(rule);
      if (rule.stopIfTrue) break;
    }
    return found;
  }

  private place(rules: readonly FormatRule[]): void {
    let next = FIRST_RULE_COLUMN;
    this.placed = rules.map((rule) => {
      const everyCell = slide(rule.formula, 0, 1) !== rule.formula;
      const placed = { rule, engineColumn: next, everyCell };
      next += everyCell ? rule.box.columns : 1;
      return placed;
    });
  }
}
function ruleFormula(rule: FormatRule, sheet: Sheet, row: number, across: number, around: Surroundings): string | null {
  const text = rule.formula.startsWith("=") ? rule.formula : `=${rule.formula}`;
  try {
    const moved = slide(text, row - rule.box.row, across);
    return writeOutReferences(moved, { sheet: sheet.name, row, column: rule.box.column + across }, around);
  } catch (failure) {
    // A rule that refers to something that is gone holds nowhere, as in Excel.
    if (failure instanceof BrokenReference) return null;
    throw failure;
  }
}
function key(row: number, column: number): string {
  return `${String(row)} ${String(column)}`;
}

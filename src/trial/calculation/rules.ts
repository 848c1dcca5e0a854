/**
 * Conditional formats: each rule is worked out by the formula engine beside the cells, so that it is brought up to date with
 * everything else after an edit. A rule whose addresses are all fixed to their columns (`=$H5="REMOVE"`) is worked out once
 * for each row, any other once for each cell.
 */
import { intersection } from "../book/address";
import type { FormatRule, Sheet } from "../book/book";
import { slide } from "../book/formula-text";
import type { FormulaCell, SharedFormula } from "./cells";
import type { FormulaEngine } from "./engine";
import type { Surroundings } from "./structured";
import { Fault } from "./values";
import { writtenOut } from "./written-formulas";

interface PlacedRule {
  readonly rule: FormatRule;
  readonly everyCell: boolean;
  /** One for each column, or one alone. */
  readonly columns: readonly SharedFormula[];
}
export class SheetRules {
  private placed: readonly PlacedRule[] = [];
  private signature = "";

  /** Gives the engine what changed among the rules or the rows they cover. */
  compare(engine: FormulaEngine, sheet: Sheet, around: Surroundings, version: number): void {
    if (sheet.rules.length === 0 && this.placed.length === 0) return;
    const used = sheet.used();
    const signature = JSON.stringify([sheet.rules.map((rule) => [rule.box, rule.formula]), used, version]);
    if (signature === this.signature) {
      this.placed = this.placed.map((placed, index) => ({ ...placed, rule: sheet.rules[index] ?? placed.rule }));
      return;
    }
    this.signature = signature;
    for (const { columns } of this.placed) for (const shared of columns) for (const cell of [...shared.cells.values()]) engine.drop(cell);
    this.placed = sheet.rules.map((rule) => {
      const everyCell = slide(rule.formula, 0, 1) !== rule.formula;
      const { row, column, columns: wide, rows } = rule.box;
      const covered = used && intersection(rule.box, { ...used, column, columns: wide });
      if (!covered) return { rule, everyCell, columns: [] };
      const text = rule.formula.startsWith("=") ? rule.formula : `=${rule.formula}`;
      const written = writtenOut(text, { sheet: sheet.name, row, column }, around);
      const columns = Array.from({ length: everyCell ? wide : 1 }, (_, right) => {
        const place = { sheet: engine.sheet(sheet.id), row, column, right };
        const shared = engine.share(place, { first: row, last: row + rows - 1 }, written);
        for (let at = covered.row; at < covered.row + covered.rows; at += 1) engine.cell(shared, at, text);
        return shared;
      });
      return { rule, everyCell, columns };
    });
  }

  /** The rules' own formulas. */
  formulas(): ReadonlySet<SharedFormula> {
    return new Set(this.placed.flatMap(({ columns }) => columns));
  }

  /** Rules that hold in a cell, the strongest first; what follows one that stops is left out. */
  at(row: number, column: number): FormatRule[] {
    const found: FormatRule[] = [];
    for (const { rule, everyCell, columns } of this.placed) {
      const { box } = rule;
      if (row < box.row || row >= box.row + box.rows || column < box.column || column >= box.column + box.columns) continue;
      if (!holds(columns[everyCell ? column - box.column : 0]?.cells.get(row))) continue;
      found.push(rule);
      if (rule.stopIfTrue) break;
    }
    return found;
  }
}
/** A rule that refers to something that is gone holds nowhere, as in Excel. */
export function holds(cell: FormulaCell | undefined): boolean {
  return cell !== undefined && !(cell.item instanceof Fault) && cell.item !== "" && Boolean(cell.item);
}

/** A check made ready for a log: what does not change from row to row is worked out once and kept. */
import { field, type FieldId } from "../columns";
import { fieldsOf } from "../gear/columns-of";
import type { Check, GearKind } from "../gear/kind";
import type { Row } from "../log/cells";
import type { CellValue } from "../reading/cell-value";
import { comesOutWords } from "./comes-out-at";
import type { CheckResult, Situation } from "./in-force";
import { lossAt } from "./kinds/nick";
import { evaluate } from "./run-check";

export interface Outcome extends CheckResult {
  /** Where the part comes out, in words, as far as its as-new size is known. */
  readonly comesOut: string | null;
}
/** A check of one kind, under one situation, for the columns of one log. */
export class PreparedCheck {
  private readonly memory: Remembered<Outcome>;
  constructor(check: Check, situation: Situation, row: Row) {
    this.memory = new Remembered(check, situation.kind, row, () => {
      const result = evaluate(check, row, situation);
      return { findings: result.findings, notes: result.notes, comesOut: comesOutWords(check, row, situation, result.twoWays) };
    });
  }
  /** What the check says of the row at hand. */
  judge(): Outcome {
    return this.memory.get();
  }
}
/** Outcomes remembered for a column; beyond it they are worked out again. */
const KEPT = 20_000;
/**
 * What follows from the cells that a check reads. Without a column it is one constant; from one column it is a look-up by
 * cell; from several it is a constant while they are blank, and else worked out from the row's remembered readings.
 */
export class Remembered<T> {
  private readonly make: () => T;
  private readonly row: Row;
  /** Slots that have to be blank for the constant to hold; a single one in which the cell decides. */
  private readonly slots: readonly number[];
  private readonly single: boolean;
  private readonly unitOf: FieldId | null;
  /** By unit of bare numbers, where that matters: none, in, mm. */
  private readonly blank: (T | undefined)[] = [];
  private readonly byCell = [new Map<CellValue, T>(), new Map<CellValue, T>(), new Map<CellValue, T>()] as const;
  private lastCell: CellValue;
  private last: T | undefined;
  constructor(check: Check, kind: GearKind, row: Row, make: () => T) {
    const read = readBy(check, kind).filter((id) => row.slot(id) !== undefined);
    const [only] = read;
    this.make = make;
    this.row = row;
    this.single = read.length === 1;
    const deciding = check.kind === "nick" && !this.single ? fieldsOf(check).filter((id) => row.slot(id) !== undefined) : read;
    this.slots = deciding.map((id) => row.slot(id) ?? 0);
    const sized = only !== undefined && (field(only).type === "length" || only === "size") ? only : null;
    this.unitOf = check.kind === "gap" ? check.measured : sized;
  }
  get(): T {
    const { slots, row } = this;
    const { values } = row;
    for (const slot of slots) {
      const cell = values[slot];
      if (cell === undefined || cell === null || cell === "") continue;
      if (!this.single || typeof cell === "object") return this.make();
      if (this.unitOf === null && cell === this.lastCell && this.last !== undefined) return this.last;
      return this.lookUp(cell);
    }
    return (this.blank[this.unitPlace()] ??= this.make());
  }
  private unitPlace(): 0 | 1 | 2 {
    const unit = this.unitOf === null ? null : this.row.unit(this.unitOf);
    return unit === null ? 0 : unit === "in" ? 1 : 2;
  }
  private lookUp(cell: CellValue): T {
    const kept = this.byCell[this.unitPlace()];
    let made = kept.get(cell);
    if (made === undefined) {
      if (kept.size >= KEPT) kept.clear();
      kept.set(cell, (made = this.make()));
    }
    this.lastCell = cell;
    this.last = made;
    return made;
  }
}
/** Every column whose cell can change what a check says. */
function readBy(check: Check, kind: GearKind): readonly FieldId[] {
  const own = fieldsOf(check);
  if (check.kind === "enough" && check.inProportionTo !== undefined) return [...own, check.inProportionTo];
  if (check.kind === "gap" && check.makers !== undefined) return [...own, check.makers];
  if (check.kind !== "nick") return own;
  const sections = [null, ...Object.keys(kind.parts)].flatMap((part) => lossAt(kind, part) ?? []);
  return [...new Set([...own, ...sections.flatMap((loss) => [loss.original, loss.measured])])];
}

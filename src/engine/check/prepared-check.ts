/** A check made ready for a log: what does not change from row to row is worked out once and kept. */
import { field, type FieldId } from "../columns";
import { fieldsOf } from "../gear/columns-of";
import type { Check, GearKind } from "../gear/kind";
import type { Row } from "../log/cells";
import { RowMemory } from "../memory";
import type { CellValue } from "../reading/cell-value";
import { comesOutWords } from "./comes-out-at";
import type { Situation } from "./in-force";
import { lossAt } from "./kinds/nick";
import { NO_OUTCOME, Outcome } from "./outcome";
import { evaluate } from "./run-check";

/** A check of one kind, under one situation, for the columns of one log. */
export type PreparedCheck = Remembered<Outcome>;
export function prepareCheck(check: Check, situation: Situation, row: Row): PreparedCheck {
  return new Remembered(check, situation.kind, row, () => {
    const { findings, notes, twoWays } = evaluate(check, row, situation);
    const made = new Outcome(findings, notes, comesOutWords(check, row, situation, twoWays));
    return made.isSilent ? NO_OUTCOME : made;
  });
}
/**
 * What follows from the cells that a check reads, remembered by these cells: where they are blank, or where the log has no such
 * column, it is one constant.
 */
export class Remembered<T> {
  /** Places of the cells that decide. */
  readonly slots: readonly number[];
  private readonly make: () => T;
  private readonly row: Row;
  /** Whether more cells than these are read where one of them is filled: nothing is remembered then. */
  private readonly open: boolean;
  /** Whether the unit of bare numbers matters. */
  private readonly sized: boolean;
  /** Each by that unit: none, in, mm. */
  private readonly blank: (T | undefined)[] = [];
  private readonly filled: (RowMemory<T> | undefined)[] = [];
  /** What one cell said last, for columns that say the same in row after row. */
  private lastCell: CellValue;
  private last: T | undefined;
  constructor(check: Check, kind: GearKind, row: Row, make: () => T) {
    const read = readBy(check, kind).filter((id) => row.slot(id) !== undefined);
    this.make = make;
    this.row = row;
    this.open = check.kind === "nick" && read.length > 1;
    const deciding = this.open ? fieldsOf(check).filter((id) => row.slot(id) !== undefined) : read;
    this.slots = deciding.map((id) => row.slot(id) ?? 0);
    this.sized = check.kind === "gap" || read.length > 1 || read.some((id) => field(id).type === "length" || id === "size");
  }
  get(): T {
    const { slots, row, sized } = this;
    const { values } = row;
    for (const slot of slots) {
      const cell = values[slot];
      if (cell === undefined || cell === null || cell === "") continue;
      if (this.open) return this.make();
      if (sized) return this.lookUp(row.barePlace);
      if (cell === this.lastCell && this.last !== undefined) return this.last;
      this.lastCell = cell;
      return (this.last = this.lookUp(0));
    }
    return (this.blank[sized ? row.barePlace : 0] ??= this.make());
  }
  /** What holds in whatever row, since the log has no column that is read; null where there is one. */
  get always(): T | null {
    return this.slots.length === 0 && !this.sized ? this.get() : null;
  }
  private lookUp(place: number): T {
    const { values } = this.row;
    const kept = (this.filled[place] ??= new RowMemory<T>(this.slots));
    const known = kept.get(values);
    if (known !== undefined) return known;
    const made = this.make();
    // Words and counts are few; sizes may never come again.
    if (this.sized) kept.set(values, made);
    else kept.keep(values, made);
    return made;
  }
}
/** Every column whose cell can change what a check says; the reading that differs from item to item comes last. */
function readBy(check: Check, kind: GearKind): readonly FieldId[] {
  const own = [...fieldsOf(check).filter((id) => id !== check.measured), check.measured];
  if (check.kind === "enough" && check.inProportionTo !== undefined) return [check.inProportionTo, ...own];
  if (check.kind === "gap" && check.makers !== undefined) return [check.makers, ...own];
  if (check.kind !== "nick") return own;
  const sections = [null, ...Object.keys(kind.parts)].flatMap((part) => lossAt(kind, part) ?? []);
  return [...new Set([...own, ...sections.flatMap((loss) => [loss.original, loss.measured])])];
}

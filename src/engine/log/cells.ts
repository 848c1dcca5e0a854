import { field, type FieldId } from "../columns";
import { Memory } from "../memory";
import type { Exact } from "../numbers/exact";
import type { Unit } from "../numbers/lengths";
import type { CellValue } from "../reading/cell-value";
import { readLength } from "../reading/length";
import { missing } from "../reading/read";
import { Size } from "../reading/size";
import { type Besides, NOTHING_BESIDES } from "./besides";
import type { Headings } from "./match-headings";
import { rowUnitOf } from "./merge-columns";

/** Where an item's cells come from: a row of a log, or the arguments of a worksheet function. */
export interface Cells {
  value(id: FieldId): CellValue;
  /** Unit of a bare number in that column: the heading's, else the row's, else null. */
  unit(id: FieldId): Unit | null;
  /** What the person calls the column. */
  heading(id: FieldId): string;
  /** The cell as a size, where readings are remembered: bare numbers in the column's unit, or in the unit given. */
  size?(id: FieldId, zero: boolean, unit?: Unit): Size;
  /** Part that the section columns stand for, when the sheet names one. */
  readonly part?: string;
  /** What else stands in the row; nothing when left out. */
  readonly besides?: Besides;
  /** What bare numbers are multiplied with to be in their unit, such as 10 for centimetres; 1 when left out. */
  readonly times?: Exact;
}
/** Cells of one row as the engine reads them: units from the heading, else from the row's Unit column. */
export function cellsOf(
  values: ReadonlyMap<FieldId, CellValue>,
  headings: Pick<Headings, "units" | "names">,
  part?: string,
  besides?: Besides,
): Cells {
  const rowUnit = rowUnitOf(values.get("unit"));
  const zeros = zerosAreBlank(values);
  return {
    value: (id) => {
      const cell = values.get(id);
      return zeros && cell === 0 ? null : cell;
    },
    unit: (id) => headings.units.get(id) ?? rowUnit,
    heading: (id) => headings.names.get(id) ?? field(id).heading,
    ...(part === undefined ? {} : { part }),
    ...(besides === undefined ? {} : { besides }),
  };
}
/** Lengths of which 0 is a reading: nothing there. */
const ZERO_IS_A_SIZE: ReadonlySet<FieldId> = new Set<FieldId>(["clearance", "nickDepth", "bend"]);
/**
 * Some hosts hand blank cells over as 0. A 0 where none can stand (an id, a name, a size, a yes or no) gives that away,
 * and then no 0 of the row is trusted as a count, an angle or a clearance.
 */
function zerosAreBlank(values: ReadonlyMap<FieldId, CellValue>): boolean {
  for (const [id, cell] of values) if (cell === 0 && !zeroCanStand(id)) return true;
  return false;
}
function zeroCanStand(id: FieldId): boolean {
  const { type } = field(id);
  return type === "count" || type === "angle" || ZERO_IS_A_SIZE.has(id);
}
/** What the cells of a log are read by: its fields with the units and names of their headings. */
export interface LogColumns {
  readonly fields: readonly FieldId[];
  readonly units: ReadonlyMap<FieldId, Unit>;
  readonly names: ReadonlyMap<FieldId, string>;
  /** Part that the section columns stand for. */
  readonly part?: string | undefined;
}
const NO_SIZE = new Size(missing());
/**
 * One row of a log after the other. Each cell becomes a size once and is remembered by what stands in it, so that the same
 * cell in another row, or another check of this row, takes the reading from here.
 */
export class Row implements Cells {
  /** Cells by slot: the place of their field among the log's fields. */
  readonly values: CellValue[];
  besides: Besides = NOTHING_BESIDES;
  readonly part?: string;
  private readonly columns: LogColumns;
  private readonly slots: ReadonlyMap<FieldId, number>;
  /** By slot, whether no 0 can stand there. */
  private readonly noZero: readonly boolean[];
  /** Slots of the row at hand in which something stands. */
  private readonly filledSlots: number[] = [];
  private readonly sizes: (Memory<Size> | undefined)[] = [];
  /** What a column said last: several checks of a row read it. */
  private readonly lastCells: CellValue[] = [];
  private readonly lastSizes: (Size | undefined)[] = [];
  private rowUnit: Unit | null = null;
  private unitCell: CellValue;
  private readonly unitSlot: number;
  constructor(columns: LogColumns) {
    this.columns = columns;
    this.slots = new Map(columns.fields.map((id, slot) => [id, slot]));
    this.values = columns.fields.map(() => null);
    this.unitSlot = this.slots.get("unit") ?? -1;
    this.noZero = columns.fields.map((id) => !zeroCanStand(id));
    if (columns.part !== undefined) this.part = columns.part;
  }
  /** To be called when `values` hold another row. */
  filled(besides: Besides): void {
    this.besides = besides;
    const { values } = this;
    const unitCell = this.unitSlot < 0 ? undefined : values[this.unitSlot];
    if (unitCell !== this.unitCell) {
      this.unitCell = unitCell;
      this.rowUnit = rowUnitOf(unitCell);
    }
    if (this.findFilled()) return;
    for (let slot = 0; slot < values.length; slot += 1) if (values[slot] === 0) values[slot] = null;
    this.findFilled();
  }
  /** Notes which slots are filled; false where a 0 gives away that blanks were handed over as 0. */
  private findFilled(): boolean {
    const { values, noZero, filledSlots } = this;
    filledSlots.length = 0;
    for (let slot = 0; slot < values.length; slot += 1) {
      const cell = values[slot];
      if (cell === undefined || cell === null || cell === "") continue;
      if (cell === 0 && noZero[slot] === true) return false;
      filledSlots.push(slot);
    }
    return true;
  }
  /** Whether anything stands in one of the slots that are set. */
  isFilledIn(slots: readonly boolean[]): boolean {
    for (const slot of this.filledSlots) if (slots[slot] === true) return true;
    return false;
  }
  /** Puts a value in the place of a field of the log. */
  set(id: FieldId, cell: CellValue): void {
    const slot = this.slots.get(id);
    if (slot !== undefined) this.values[slot] = cell;
  }
  slot(id: FieldId): number | undefined {
    return this.slots.get(id);
  }
  get(id: FieldId): CellValue {
    return this.value(id);
  }
  value(id: FieldId): CellValue {
    const slot = this.slots.get(id);
    return slot === undefined ? undefined : this.values[slot];
  }
  unit(id: FieldId): Unit | null {
    return this.columns.units.get(id) ?? this.rowUnit;
  }
  /** The unit of bare sizes under headings that name none, as a place in a list: none, in, mm. */
  get barePlace(): 0 | 1 | 2 {
    return this.rowUnit === null ? 0 : this.rowUnit === "in" ? 1 : 2;
  }
  heading(id: FieldId): string {
    return this.columns.names.get(id) ?? field(id).heading;
  }
  size(id: FieldId, zero: boolean, unit: Unit | null = this.unit(id)): Size {
    const slot = this.slots.get(id);
    const cell = slot === undefined ? undefined : this.values[slot];
    if (slot === undefined || cell === undefined || cell === null || cell === "") return NO_SIZE;
    if (typeof cell === "object") return new Size(readLength(cell, { assume: unit, zero }));
    const at = slot * 6 + (unit === null ? 0 : unit === "in" ? 2 : 4) + (zero ? 1 : 0);
    const last = this.lastSizes[at];
    if (last !== undefined && this.lastCells[at] === cell) return last;
    const kept = (this.sizes[at] ??= new Memory<Size>());
    let size = kept.get(cell);
    if (size === undefined) kept.set(cell, (size = new Size(readLength(cell, { assume: unit, zero }))));
    this.lastCells[at] = cell;
    this.lastSizes[at] = size;
    return size;
  }
}

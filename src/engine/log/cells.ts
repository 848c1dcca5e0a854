import { field, type FieldId } from "../columns";
import type { Exact } from "../numbers/exact";
import type { Unit } from "../numbers/lengths";
import type { CellValue } from "../reading/cell-value";
import type { Besides } from "./besides";
import type { Headings } from "./match-headings";
import { rowUnitOf } from "./merge-columns";

/** Where an item's cells come from: a row of a log, or the arguments of a worksheet function. */
export interface Cells {
  value(id: FieldId): CellValue;
  /** Unit of a bare number in that column: the heading's, else the row's, else null. */
  unit(id: FieldId): Unit | null;
  /** What the person calls the column. */
  heading(id: FieldId): string;
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
  for (const [id, cell] of values) {
    if (cell !== 0) continue;
    const { type } = field(id);
    if (type === "count" || type === "angle" || ZERO_IS_A_SIZE.has(id)) continue;
    return true;
  }
  return false;
}

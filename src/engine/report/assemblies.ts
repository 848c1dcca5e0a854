/** The assemblies of a log: a part found stretched means that its whole assembly was overloaded. */
import type { CellValue } from "../reading/cell-value";
import { readDate } from "../reading/date";
import { readText } from "../reading/text";

interface Assembly {
  readonly rows: number[];
  /** The latest day on which a part was found stretched, the part, and the latest day of another part. */
  last: number;
  by: number;
  before: number;
}
const NEVER = -1;
/** Takes the parts of each assembly one after the other; the work grows with the rows. */
export class Assemblies {
  private readonly byName = new Map<string, Assembly>();
  private readonly asOf: number;
  constructor(asOf: number) {
    this.asOf = asOf;
  }
  /** A row with the cells of its assembly and inspection, and whether its own readings show an overload. */
  add(row: number, name: CellValue, inspected: CellValue, overload: boolean): void {
    const text = readText(name).toLowerCase();
    if (text === "") return;
    let assembly = this.byName.get(text);
    if (!assembly) this.byName.set(text, (assembly = { rows: [], last: NEVER, by: NEVER, before: NEVER }));
    assembly.rows.push(row);
    if (overload) found(assembly, row, this.dayOf(inspected));
  }
  /** For each other part of an overloaded assembly, the day on which the overload was found. */
  overloaded(): ReadonlyMap<number, number> {
    const days = new Map<number, number>();
    for (const { rows, last, by, before } of this.byName.values()) {
      if (last === NEVER) continue;
      for (const row of rows) {
        const day = row === by ? before : last;
        if (day !== NEVER) days.set(row, day);
      }
    }
    return days;
  }
  /** The inspection's date, else the day of judging. */
  private dayOf(inspected: CellValue): number {
    const read = readDate(inspected);
    return read.kind === "value" ? read.value : this.asOf;
  }
}
function found(assembly: Assembly, row: number, day: number): void {
  if (day > assembly.last) {
    assembly.before = assembly.last;
    assembly.last = day;
    assembly.by = row;
  } else assembly.before = Math.max(assembly.before, day);
}

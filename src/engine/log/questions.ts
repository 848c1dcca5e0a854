/** What a log leaves open, to be asked once for the whole log: columns that are not understood, and the unit of bare sizes. */
import { field, type FieldId } from "../columns";
import type { CellValue } from "../reading/cell-value";
import { readLength } from "../reading/length";
import { readText } from "../reading/text";
import type { Besides } from "./besides";
import type { Headings } from "./match-headings";
import { rowUnitOf } from "./merge-columns";

export interface LogQuestions {
  readonly columns: readonly ColumnQuestion[];
  /** Null where every bare size has a unit. */
  readonly unit: UnitQuestion | null;
}
export interface ColumnQuestion {
  /** Zero-based column inside the grid. */
  readonly column: number;
  readonly heading: string;
  /** What it may mean. The answers are that, any other field, or to set the column aside. */
  readonly proposal: FieldId | null;
  /** What stands under it, each text once. */
  readonly samples: readonly string[];
  /** Items that have no verdict until it is answered. */
  readonly items: number;
}
/** "Sizes are in mm, in inches, or each row says." */
export interface UnitQuestion {
  readonly items: number;
  readonly samples: readonly { readonly heading: string; readonly text: string }[];
}
const SAMPLES = 3;
interface Row {
  readonly cells: ReadonlyMap<FieldId, CellValue>;
  readonly besides?: Besides | undefined;
  /** Its columns that are missing or cannot be read: a unit is asked for only where one of them waits for it. */
  readonly verdict: { readonly lacking: readonly FieldId[] };
}
export function questionsOf(rows: readonly Row[], headings: Pick<Headings, "units" | "names">): LogQuestions {
  return { columns: columnQuestions(rows), unit: unitQuestion(rows, headings) };
}
function columnQuestions(rows: readonly Row[]): readonly ColumnQuestion[] {
  const asked = new Map<number, { heading: string; proposal: FieldId | null; samples: Set<string>; items: number }>();
  for (const { besides } of rows)
    for (const { column, heading, proposal, text, field: read } of besides?.open ?? []) {
      if (read !== undefined) continue;
      const one = asked.get(column) ?? { heading, proposal, samples: new Set<string>(), items: 0 };
      asked.set(column, one);
      one.items += 1;
      if (one.samples.size < SAMPLES) one.samples.add(text);
    }
  return [...asked]
    .map(([column, one]) => ({ column, ...one, samples: [...one.samples] }))
    .sort((a, b) => b.items - a.items || a.column - b.column);
}
/** Bare sizes whose unit neither heading, Unit column nor cell tells. */
function unitQuestion(rows: readonly Row[], headings: Pick<Headings, "units" | "names">): UnitQuestion | null {
  const samples: { heading: string; text: string }[] = [];
  let items = 0;
  for (const { cells, verdict } of rows) {
    if (verdict.lacking.length === 0 || rowUnitOf(cells.get("unit")) !== null) continue;
    const bare = verdict.lacking.filter((id) => field(id).type === "length" && !headings.units.has(id) && isBare(cells.get(id)));
    if (bare.length > 0) items += 1;
    for (const id of bare) {
      const heading = headings.names.get(id) ?? field(id).heading;
      if (samples.length < SAMPLES && !samples.some((one) => one.heading === heading))
        samples.push({ heading, text: readText(cells.get(id)) });
    }
  }
  return items === 0 ? null : { items, samples };
}
const isBare = (cell: CellValue): boolean =>
  readLength(cell, { assume: null }).kind === "refused" && readLength(cell, { assume: "in" }).kind === "value";

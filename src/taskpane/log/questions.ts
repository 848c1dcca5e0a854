/** Columns of a log that are not understood and hold something: what the user is asked about them. Pure. */
import type { FieldId } from "../../engine/columns";
import type { Report } from "../../engine/report/model";

/** Different cells shown of a column. */
const SAMPLES = 3;
export interface Question {
  readonly column: number;
  readonly heading: string;
  /** What the heading may mean, or null. */
  readonly proposal: FieldId | null;
  /** The first different texts of its cells. */
  readonly samples: readonly string[];
  /** Items with a filled cell in it, which have no verdict until it is answered. */
  readonly items: number;
}
/** In the order of the columns. */
export function questionsOf({ items }: Pick<Report, "items">): readonly Question[] {
  const asked = new Map<number, { heading: string; proposal: FieldId | null; samples: Set<string>; items: number }>();
  for (const { besides } of items)
    for (const { column, heading, text, proposal } of besides?.open ?? []) {
      let one = asked.get(column);
      if (one === undefined) asked.set(column, (one = { heading, proposal, samples: new Set(), items: 0 }));
      if (one.samples.size < SAMPLES) one.samples.add(text);
      one.items += 1;
    }
  return [...asked]
    .sort(([a], [b]) => a - b)
    .map(([column, { heading, proposal, samples, items: count }]) => ({ column, heading, proposal, samples: [...samples], items: count }));
}

import type { Exact } from "../numbers/exact";
import type { Criterion, Limit } from "./criterion";

export interface RefusedRow {
  /** Kind whose items are not judged because of it; null is every kind. */
  readonly kind: string | null;
  readonly sentence: string;
}
export interface HouseLimits {
  /** Criteria by gear kind. */
  readonly criteria: ReadonlyMap<string, readonly Criterion[]>;
  /** `kind/check` where a maker's written figure stands instead of the published limits. */
  readonly replaced: ReadonlySet<string>;
  readonly refused: readonly RefusedRow[];
  /** Rule sets named on the sheet, or "". */
  readonly rules: string;
}
/** A limit with the row that sets it; `most` is the largest share of the size as new that the change may be. */
export type HouseLimit = Limit & { readonly row: string; readonly most: Exact };
export const isHouse = (limit: Limit): limit is HouseLimit => "row" in limit;

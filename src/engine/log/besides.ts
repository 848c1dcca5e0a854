/** What stands in a row beside the cells that are read: it speaks, and nothing else of the engine listens to it. */
import type { FieldId } from "../columns";

/** A filled cell of a column whose heading is not understood. */
export interface OpenCell {
  /** Zero-based column inside the grid. */
  readonly column: number;
  readonly heading: string;
  readonly text: string;
  /** What the heading may mean, for the user to confirm. */
  readonly proposal: FieldId | null;
}
/** An older reading that was worse than the one that counts today. */
export interface EarlierCell {
  readonly column: number;
  readonly heading: string;
  readonly text: string;
  readonly field: FieldId;
}
export interface Besides {
  readonly open: readonly OpenCell[];
  readonly earlier: readonly EarlierCell[];
}
export const NOTHING_BESIDES: Besides = { open: [], earlier: [] };

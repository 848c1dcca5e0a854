/** Which row the pane follows: Enter after a reading moves the selection one row down, and the reason of what was typed is to stay in sight. */

/** Typing and the move that ends it come within this time of each other, in either order. */
export const ENTER_MS = 800;
interface Step {
  readonly sheetId: string;
  readonly row: number;
  readonly at: number;
}
export interface TypedRow {
  /** A cell of this row was typed. */
  readonly typed: (sheetId: string, row: number) => void;
  /** The selection moved to this row: false when Enter moved it on from what was typed. */
  readonly follows: (sheetId: string, row: number) => boolean;
}
export function createTypedRow(clock: () => number = Date.now): TypedRow {
  let last: Step | null = null;
  return {
    typed: (sheetId, row) => {
      last = { sheetId, row, at: clock() };
    },
    follows: (sheetId, row) =>
      last === null || last.sheetId !== sheetId || clock() - last.at > ENTER_MS || (row !== last.row + 1 && row !== last.row),
  };
}

/** Which row the pane follows: Enter after a reading moves the selection one row down, and the reason of what was typed is to stay in sight. */

/** The move that ends typing is told within this time of it, in either order; a busy workbook takes its time. */
export const ENTER_MS = 5000;
interface Step {
  readonly sheetId: string;
  readonly row: number;
  readonly at: number;
}
export interface TypedRow {
  /** A cell of this row was typed. */
  readonly typed: (sheetId: string, row: number) => void;
  /** The selection moved to this row: false when Enter moved it on from what was typed, which it does once. */
  readonly follows: (sheetId: string, row: number) => boolean;
}
export function createTypedRow(clock: () => number = Date.now): TypedRow {
  let moved: Step | null = null;
  let awaited: Step | null = null;
  const near = (step: Step | null, sheetId: string): step is Step =>
    step !== null && step.sheetId === sheetId && clock() - step.at <= ENTER_MS;
  return {
    typed: (sheetId, row) => {
      const told = near(moved, sheetId) && moved.row === row + 1;
      moved = null;
      awaited = told ? null : { sheetId, row, at: clock() };
    },
    follows: (sheetId, row) => {
      const byEnter = near(awaited, sheetId) && (row === awaited.row + 1 || row === awaited.row);
      awaited = null;
      moved = byEnter ? null : { sheetId, row, at: clock() };
      return !byEnter;
    },
  };
}

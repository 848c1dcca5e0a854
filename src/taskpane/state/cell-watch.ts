/** When a warning on the register's cells is told: cells may still be calculating, so they are looked at again first, and while the warning stands. */
import type { RegisterCheck } from "../../excel/port";

/** After these times the register is looked at again while its cells are not right; then no more until something changes. */
export const LOOK_AGAIN_MS: readonly number[] = [1500, 3000, 6000, 12_000, 24_000, 48_000, ...Array<number>(10).fill(60_000)];
export interface CellWatch {
  /** Takes what was found; true when a warning on it is to be told. */
  readonly saw: (check: RegisterCheck | null) => boolean;
  readonly end: () => void;
}
export function createCellWatch(lookAgain: () => void): CellWatch {
  let wrong = 0;
  /** The time before the second look has passed: a reading that came earlier, after an edit, settles nothing. */
  let waited = false;
  let looks = 0;
  let sure = false;
  let timer: ReturnType<typeof setTimeout> | null = null;

  const end = (): void => {
    if (timer !== null) clearTimeout(timer);
    timer = null;
  };
  return {
    saw: (check) => {
      end();
      const now = wrongCells(check);
      if (now === 0) {
        wrong = looks = 0;
        sure = waited = false;
        return false;
      }
      // Fewer than before: the sheet is still at work on them.
      sure ||= waited && now >= wrong;
      wrong = now;
      const after = LOOK_AGAIN_MS[looks];
      looks += 1;
      if (after !== undefined) {
        timer = setTimeout(() => {
          waited = true;
          lookAgain();
        }, after);
      }
      return sure;
    },
    end,
  };
}
/** Cells that calculation alone may put right; a register built under other rules stays as it is until it is rebuilt. */
function wrongCells(check: RegisterCheck | null): number {
  if (check === null) return 0;
  if (check.functionsMissing) return Math.max(1, check.disagreeing.length);
  return check.withoutHouse || check.builtUnder !== null ? 0 : check.disagreeing.length;
}

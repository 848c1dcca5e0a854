/**
 * Dimensions of new shackles by rated load, in millimetres: Code for Lifting Appliances in a Marine Environment (2022), Tables
 * 8.5.1 (dee) and 8.5.2 (bow, of which only the first row was read). Higher tensile is steel of 540 N/mm2 and more.
 */
import { exact, type Exact, same } from "../numbers/exact";

export const SHACKLE_PATTERNS = [
  "dee mild steel table",
  "dee higher tensile table",
  "bow mild steel table",
  "bow higher tensile table",
] as const;
export type ShacklePattern = (typeof SHACKLE_PATTERNS)[number];
export interface ShackleRow {
  /** Rated load in tonnes. */
  readonly load: string;
  /** Body and pin diameter, mild steel, then higher tensile. */
  readonly mild: readonly [body: number, pin: number];
  readonly tensile: readonly [body: number, pin: number];
}
const row = (load: string, mildBody: number, mildPin: number, tensileBody: number, tensilePin: number): ShackleRow => ({
  load,
  mild: [mildBody, mildPin],
  tensile: [tensileBody, tensilePin],
});
export const DEE: readonly ShackleRow[] = [
  row("1", 13, 15, 11, 12),
  row("1.6", 17, 19, 13, 15),
  row("2", 19, 21, 15, 17),
  row("2.5", 21, 24, 17, 19),
  row("3.2", 24, 27, 19, 21),
  row("4", 26, 30, 21, 23),
  row("5", 29, 33, 23, 26),
  row("6.3", 33, 37, 26, 29),
  row("8", 37, 42, 29, 33),
  row("10", 41, 47, 33, 37),
  row("12.5", 46, 53, 36, 42),
  row("16", 52, 60, 41, 47),
  row("20", 59, 67, 46, 52),
  row("25", 65, 75, 51, 59),
  row("32", 74, 84, 58, 66),
  row("40", 83, 94, 65, 74),
  row("50", 92, 106, 72, 83),
  row("63", 104, 119, 81, 93),
  row("80", 117, 134, 91, 105),
];
export const BOW: readonly ShackleRow[] = [row("1", 14, 16, 12, 13)];
/** Body and pin of a new shackle of a pattern and a rated load in tonnes; null where its table has no such load. */
export function newShackle(pattern: ShacklePattern, tonnes: Exact): { readonly body: number; readonly pin: number } | null {
  const found = (pattern.startsWith("dee") ? DEE : BOW).find((r) => same(exact(r.load), tonnes));
  if (!found) return null;
  const [body, pin] = pattern.includes("mild") ? found.mild : found.tensile;
  return { body, pin };
}

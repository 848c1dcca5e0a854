/** The history of a yard in long form: what was read, by whom, and what it meant. Rows are added, never changed. */

/** Headings of the table, in order; the last holds the seal. */
export const HISTORY_HEADINGS = [
  "Number",
  "Date",
  "Id",
  "Check",
  "Reading",
  "Figure",
  "Unit",
  "As new",
  "Limit",
  "Word",
  "Document",
  "Clause",
  "Decision",
  "Rule sets",
  "By",
  "Gauge",
  "Round",
  "Joins",
  "Seal",
] as const;
export type HistoryHeading = (typeof HISTORY_HEADINGS)[number];
/** Cells of a row by heading; everything is text, dates as 2026-03-31, so that no program turns it into something else. */
export type HistoryRow = Readonly<Record<HistoryHeading, string>>;
/** What stands in "Check" where a row is about no check: the head of a round, the item's verdict, what was seen in words. */
export const ROUND_HEAD = "round";
export const VERDICT = "verdict";
export const SEEN = "seen";
const BLANK = Object.fromEntries(HISTORY_HEADINGS.map((heading) => [heading, ""])) as Readonly<Record<HistoryHeading, string>>;
export const historyRow = (cells: Partial<HistoryRow>): HistoryRow => ({ ...BLANK, ...cells });
/** Rows by the round that they belong to, in the order of the table. */
export function byRound(rows: readonly HistoryRow[]): ReadonlyMap<string, readonly HistoryRow[]> {
  const rounds = new Map<string, HistoryRow[]>();
  for (const row of rows) {
    const known = rounds.get(row.Round);
    if (known) known.push(row);
    else rounds.set(row.Round, [row]);
  }
  return rounds;
}

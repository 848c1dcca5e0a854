/**
 * Least thickness of alloy chain links at any point, by nominal size.
 * Looked up, never interpolated: a size that is not listed has no limit here.
 */
import { exact, type Exact, same } from "../numbers/exact";
import { convert, type Unit } from "../numbers/lengths";

export interface ChainRow {
  /** Nominal size in inches as a fraction. */
  readonly in: string;
  /** Metric nominal size of the same chain, where the table names one. */
  readonly mm?: string;
  /** Least thickness in inches as printed. */
  readonly least: string;
  /** False where the figure was not read in a copy of the document. */
  readonly confirmed: boolean;
}
/** 29 CFR 1910.184(e)(8) Table N-184-1, read in Mich. R 408.14923 Table 1; the last row was cut off in the copy read. */
export const CHAIN_OLD: readonly ChainRow[] = [
  { in: "1/4", least: "13/64", confirmed: true },
  { in: "3/8", least: "19/64", confirmed: true },
  { in: "1/2", least: "25/64", confirmed: true },
  { in: "5/8", least: "31/64", confirmed: true },
  { in: "3/4", least: "19/32", confirmed: true },
  { in: "7/8", least: "45/64", confirmed: true },
  { in: "1", least: "13/16", confirmed: true },
  { in: "1 1/8", least: "29/32", confirmed: true },
  { in: "1 1/4", least: "1", confirmed: true },
  { in: "1 3/8", least: "1 3/32", confirmed: true },
  { in: "1 1/2", least: "1 3/16", confirmed: true },
  { in: "1 3/4", least: "1 13/32", confirmed: false },
];
/**
 * ASME B30.9 Table 9-1.9.5-1. Four rows stand on a component sheet that restates them; it prints 0.272 in for 5/16 where
 * the table itself is remembered as 0.273 in (6.93 mm), and the stricter is kept. No public print of the others was found:
 * they stay unconfirmed and are passed over; 10 % wear, which is stricter than every row, decides there.
 */
export const CHAIN_NEW: readonly ChainRow[] = [
  { in: "7/32", mm: "5.5", least: "0.189", confirmed: false },
  { in: "9/32", mm: "7", least: "0.239", confirmed: false },
  { in: "5/16", mm: "8", least: "0.273", confirmed: true },
  { in: "3/8", mm: "10", least: "0.342", confirmed: true },
  { in: "1/2", mm: "13", least: "0.443", confirmed: true },
  { in: "5/8", mm: "16", least: "0.546", confirmed: true },
  { in: "3/4", mm: "20", least: "0.687", confirmed: false },
  { in: "7/8", mm: "22", least: "0.750", confirmed: false },
  { in: "1", mm: "26", least: "0.887", confirmed: false },
  { in: "1 1/4", mm: "32", least: "1.091", confirmed: false },
];
interface Prepared {
  readonly in: Exact;
  readonly mm: Exact | null;
  readonly least: Exact;
  readonly confirmed: boolean;
}
const prepare = (rows: readonly ChainRow[]): readonly Prepared[] =>
  rows.map((row) => ({
    in: exact(row.in),
    mm: row.mm === undefined ? null : exact(row.mm),
    least: exact(row.least),
    confirmed: row.confirmed,
  }));
const TABLES = {
  "chain-old": { name: "the old chain table", rows: prepare(CHAIN_OLD) },
  "chain-new": { name: "the newer chain table", rows: prepare(CHAIN_NEW) },
} as const;
export type TableName = keyof typeof TABLES;
export function tableName(table: TableName): string {
  return TABLES[table].name;
}
/** Least thickness for a nominal size, in the unit asked for; null when the size is not in the table. */
export function leastThickness(
  table: TableName,
  size: Exact,
  sizeUnit: Unit,
  unit: Unit,
): { readonly least: Exact; readonly confirmed: boolean } | null {
  const row = TABLES[table].rows.find((r) => (sizeUnit === "in" ? same(r.in, size) : r.mm !== null && same(r.mm, size)));
  return row ? { least: convert(row.least, "in", unit), confirmed: row.confirmed } : null;
}
/** Metric size of the chain that the trade calls by an inch size; null where the table names none. */
export function metricOf(size: Exact, unit: Unit): Exact | null {
  return unit === "mm" ? null : (TABLES["chain-new"].rows.find((r) => same(r.in, size))?.mm ?? null);
}

/** Published tables by name: looked up, never interpolated. */
import { exact, type Exact, same, within } from "../numbers/exact";
import { convert, type Unit } from "../numbers/lengths";
import { tableName as chainName, type TableName as ChainTable, leastThickness } from "./chain";
import { type ClipRow, CLIPS_1918, CLIPS_CALIFORNIA } from "./clips";
import { ROPE_OVERSIZE } from "./rope";

/** Tables of least thickness by nominal size. */
export type TableName = ChainTable | "groove";
/** Tables of least numbers and lengths by rope diameter. */
export type NumberTable =
  "clips-1918" | "clips-1918-other" | "clips-1918-spacing" | "clips-california-turn-back" | "clips-california-torque";
export function tableName(table: TableName | NumberTable): string {
  switch (table) {
    case "chain-old":
    case "chain-new":
      return chainName(table);
    case "groove":
      return "the groove rule";
    case "clips-1918":
    case "clips-1918-other":
    case "clips-1918-spacing":
      return "the federal clip table";
    case "clips-california-turn-back":
    case "clips-california-torque":
      return "the California clip table";
  }
}
const OVERSIZE = ROPE_OVERSIZE.map(({ upTo, share }) => ({
  upTo: upTo === null ? null : { in: exact(upTo.in), mm: exact(upTo.mm) },
  least: exact(1).add(exact(share).div(2)),
}));
/** Least thickness, or least groove diameter: nominal rope diameter and half of its allowed oversize. */
export function leastOf(
  table: TableName,
  size: Exact,
  sizeUnit: Unit,
  unit: Unit,
): { readonly least: Exact; readonly confirmed: boolean } | null {
  if (table !== "groove") return leastThickness(table, size, sizeUnit, unit);
  const band = OVERSIZE.find(({ upTo }) => within(size, null, upTo === null ? null : upTo[sizeUnit]));
  return band ? { least: convert(size, sizeUnit, unit).mul(band.least), confirmed: true } : null;
}
/** Largest that a new rope of a nominal size may measure. */
export function mostOf(size: Exact, sizeUnit: Unit, unit: Unit): Exact {
  const band = ROPE_OVERSIZE.findIndex(({ upTo }) => within(size, null, upTo === null ? null : exact(upTo[sizeUnit])));
  return convert(size, sizeUnit, unit).mul(exact(1).add(exact(ROPE_OVERSIZE[band]?.share ?? "0")));
}
interface Prepared {
  /** Rope of the row, as inch and as metric rope. */
  readonly rope: { readonly in: Exact; readonly mm: Exact };
  readonly row: ClipRow;
}
const prepare = (rows: readonly ClipRow[]): readonly Prepared[] =>
  rows.map((row) => ({
    rope: { in: exact(row.rope), mm: row.metric === undefined ? convert(exact(row.rope), "in", "mm") : exact(row.metric.rope) },
    row,
  }));
const FEDERAL = prepare(CLIPS_1918);
const CALIFORNIA = prepare(CLIPS_CALIFORNIA);
/** The row of a rope: by its own unit's column, or by the same size in inches. */
function rowOf(table: readonly Prepared[], size: Exact, unit: Unit): ClipRow | undefined {
  return table.find((p) => same(p.rope[unit], size) || same(p.rope.in, convert(size, unit, "in")))?.row;
}
/** Least number of clips, length with its unit, or torque in pound-feet for a rope; null where the table has no row for it. */
export function leastNumber(
  table: NumberTable,
  size: Exact,
  sizeUnit: Unit,
): { readonly least: Exact; readonly unit: Unit; readonly clips?: number } | null {
  const federal = table.startsWith("clips-1918");
  const [smallest] = FEDERAL;
  // The first federal row is "1/2 or less".
  const row =
    rowOf(federal ? FEDERAL : CALIFORNIA, size, sizeUnit) ??
    (federal && smallest && within(size, null, smallest.rope[sizeUnit]) ? smallest.row : undefined);
  if (!row) return null;
  switch (table) {
    case "clips-1918":
      return { least: exact(row.clips), unit: "in" };
    case "clips-1918-other":
      return row.other === undefined ? null : { least: exact(row.other), unit: "in" };
    case "clips-california-torque":
      return row.torque === undefined ? null : { least: exact(row.torque), unit: "in" };
    case "clips-1918-spacing":
      if (sizeUnit === "mm" && row.metric !== undefined) return { least: exact(row.metric.spacing), unit: "mm" };
      return row.spacing === undefined ? null : { least: exact(row.spacing), unit: "in" };
    case "clips-california-turn-back":
      return row.turnBack === undefined ? null : { least: exact(row.turnBack), unit: "in", clips: row.clips };
  }
}

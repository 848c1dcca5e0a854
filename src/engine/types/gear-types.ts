/**
 * As-new sizes by type: a sheet of the user's own with a row for each type of gear, its sizes when new and where they were
 * read. It lends sizes to items that name the type and have none of their own. A row that cannot be read is refused by name
 * and lends nothing.
 */
import { field, type FieldId } from "../columns";
import { fieldsOf } from "../gear/columns-of";
import type { GearKind } from "../gear/kind";
import { isBlank } from "../log/grid";
import { type Headings, key, matchHeadings } from "../log/match-headings";
import { rowCells, rowUnitOf, withUnit } from "../log/merge-columns";
import { matchKind } from "../names/gear-name";
import type { CellValue } from "../reading/cell-value";
import { readLength } from "../reading/length";
import { readText, recordedText } from "../reading/text";
import { TYPES_TITLE } from "./lent";

export const WHERE_HEADING = "Where read";
/** One row that can be read. */
export interface TypeRow {
  /** One-based row of the sheet. */
  readonly row: number;
  readonly type: string;
  /** Id of the gear kind. */
  readonly kind: string;
  /** Nominal size as typed; "" where the type has one size only. */
  readonly size: string;
  /** As-new sizes, each a text with its unit. */
  readonly sizes: ReadonlyMap<FieldId, string>;
  readonly where: string;
}
export interface GearTypes {
  readonly rows: readonly TypeRow[];
  /** Rows that cannot be used, each in a sentence that names it. */
  readonly refused: readonly string[];
  /** Rows that lend nothing, refused or not filled in yet, so that an item that names one is told why. */
  readonly silent: readonly SilentRow[];
}
export interface SilentRow {
  readonly row: number;
  readonly type: string;
  readonly kind: string;
  readonly size: string;
  readonly why: "refused" | "no sizes yet";
}
/** The columns of as-new sizes that a kind reads, in the order of its checks. */
export function asNewFields(kind: GearKind): readonly FieldId[] {
  return [...new Set(kind.checks.flatMap(fieldsOf))].filter((id) => id.endsWith("New"));
}
const TOP = 30;
interface Found {
  readonly row: number;
  readonly headings: Headings;
  readonly where: number;
}
/** The row of headings: Type, Gear and Where read stand in it. */
function headingsIn(grid: readonly (readonly CellValue[])[]): Found | null {
  for (const [row, line] of grid.slice(0, TOP).entries()) {
    const texts = line.map(readText);
    const where = texts.findIndex((text) => key(text) === key(WHERE_HEADING));
    if (where < 0) continue;
    const headings = matchHeadings(texts);
    if (headings.columns.has("gearType") && headings.columns.has("gear")) return { row, headings, where };
  }
  return null;
}
/** Whether a grid is a sheet of types, by its headings. */
export const looksLikeTypes = (grid: readonly (readonly CellValue[])[]): boolean => headingsIn(grid) !== null;
/** Reads the sheet of types; `grid` begins in its first row. */
export function readTypes(grid: readonly (readonly CellValue[])[]): GearTypes {
  const found = headingsIn(grid);
  if (found === null)
    return {
      rows: [],
      refused: [`${TYPES_TITLE}: no heading row with Type, Gear and ${WHERE_HEADING} was found, so no type lends its sizes.`],
      silent: [],
    };
  const rows: TypeRow[] = [];
  const silent: SilentRow[] = [];
  const refused: { readonly row: number; readonly sentence: string }[] = [];
  grid.slice(found.row + 1).forEach((line, index) => {
    const cells = rowCells(line, found.headings);
    // What stands beside the columns of the sheet is no type.
    if ([...cells.values(), line[found.where]].every(isBlank)) return;
    const row = found.row + index + 2;
    const read = readRow(row, cells, found, line);
    if ("type" in read) {
      rows.push(read);
      return;
    }
    const match = matchKind(readText(cells.get("gear")));
    const about = { row, type: readText(cells.get("gearType")), kind: match.ok ? match.kind.id : "", size: readText(cells.get("size")) };
    silent.push({ ...about, why: read.why === null ? "no sizes yet" : "refused" });
    if (read.why !== null) refused.push({ row, sentence: told(row, cells, read.why) });
  });
  const twice = rows.filter((one) => rows.some((other) => other !== one && sameRow(one, other)));
  for (const one of twice) {
    const others = twice.filter((other) => other !== one && sameRow(one, other)).map(({ row }) => String(row));
    const why = `the same type and size stands in row ${others.join(" and ")} as well; keep one`;
    silent.push({ ...one, why: "refused" });
    refused.push({ row: one.row, sentence: sentence(one.row, one.type, one.kind, why) });
  }
  return {
    rows: rows.filter((row) => !twice.includes(row)),
    refused: refused.sort((a, b) => a.row - b.row).map((one) => one.sentence),
    silent,
  };
}
function sameRow(a: TypeRow, b: TypeRow): boolean {
  return a.type.toLowerCase() === b.type.toLowerCase() && a.kind === b.kind && sameSize(a.size, b.size);
}
/** Whether two nominal sizes are the same: in the same words, or the same length. A size without a unit is never turned into one. */
export function sameSize(a: string, b: string): boolean {
  const bare = (text: string): string => text.toLowerCase().replace(/\s+/g, "");
  if (bare(a) === bare(b)) return true;
  const [one, two] = [a, b].map((text) => readLength(text, { assume: null }));
  return one?.kind === "value" && two?.kind === "value" && one.value.unit === two.value.unit && one.value.size.equals(two.value.size);
}
const told = (row: number, cells: ReadonlyMap<FieldId, CellValue>, why: string): string =>
  sentence(row, readText(cells.get("gearType")), readText(cells.get("gear")), why);
const sentence = (row: number, type: string, gear: string, why: string): string =>
  `${TYPES_TITLE}, row ${String(row)} (${type === "" ? "no type" : type}, ${gear === "" ? "no gear" : gear}): ${why}. It lends no sizes until it is put right.`;
function readRow(
  row: number,
  cells: ReadonlyMap<FieldId, CellValue>,
  { headings, where }: Found,
  line: readonly CellValue[],
): TypeRow | { readonly why: string | null } {
  const type = recordedText(cells.get("gearType"));
  if (type === "") return { why: "it names no type; fill Type" };
  const match = matchKind(readText(cells.get("gear")));
  if (!match.ok) return { why: match.why.replace(/\.$/, "") };
  const unitText = readText(cells.get("unit"));
  const rowUnit = rowUnitOf(unitText);
  if (unitText !== "" && rowUnit === null) return { why: `"${unitText}" in Unit is neither in nor mm` };
  const reads = asNewFields(match.kind);
  const sizes = new Map<FieldId, string>();
  for (const [id, cell] of cells) {
    if (!id.endsWith("New") || isBlank(cell) || recordedText(cell) === "") continue;
    const heading = headings.names.get(id) ?? field(id).heading;
    if (!reads.includes(id)) return { why: `"${heading}" is filled, and no check of a ${match.kind.id} reads it; clear the cell` };
    const unit = headings.units.get(id) ?? rowUnit;
    const whole = unit === null ? cell : withUnit(cell, unit);
    const read = readLength(whole, { assume: null });
    if (read.kind !== "value")
      return { why: `"${readText(cell)}" under "${heading}" cannot be used: ${read.kind === "missing" ? "it is no size" : read.why}` };
    sizes.set(id, readText(whole));
  }
  const source = recordedText(line[where]);
  // A row of the template that waits to be filled in.
  if (sizes.size === 0) return { why: source === "" ? null : "it has no as-new size; fill at least one" };
  if (source === "")
    return { why: `it does not say where the sizes were read; fill ${WHERE_HEADING}, such as catalogue of the maker, page 12` };
  return { row, type, kind: match.kind.id, size: sizeOf(cells, headings, rowUnit), sizes, where: source };
}
/** The nominal size with the unit that its heading or its row gives it. */
export function sizeOf(
  cells: ReadonlyMap<FieldId, CellValue>,
  headings: Pick<Headings, "units">,
  rowUnit: ReturnType<typeof rowUnitOf>,
): string {
  const cell = cells.get("size");
  if (recordedText(cell) === "") return "";
  const unit = headings.units.get("size") ?? rowUnit;
  const bare =
    unit !== null && readLength(cell, { assume: null }).kind === "refused" && readLength(cell, { assume: unit }).kind === "value";
  return readText(bare ? withUnit(cell, unit) : cell);
}

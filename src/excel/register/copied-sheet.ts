/** What the log said when its cells were last copied into the register, on a very hidden sheet of the add-in. */
import { FIELD_IDS, type FieldId } from "../../engine/columns";
import { readText } from "../../engine/reading/text";
import { readRows } from "../kit/read-in-parts";
import { COPIED_SHEET } from "../kit/sheets";
import { WorkbookError } from "../kit/workbook-error";
import type { LogPlace } from "../log-place";

/** Cells by id in small letters, as the register writes them; a cell that is not there was blank. */
export interface Copied {
  /** Sheet that they were copied from, by its id and by its name. */
  readonly source: { readonly id: string; readonly name: string };
  readonly rows: ReadonlyMap<string, ReadonlyMap<FieldId, string>>;
  /** Headings of the register after the last build, in order. */
  readonly headings?: readonly string[];
}
export const NOTHING_COPIED: Copied = { source: { id: "", name: "" }, rows: new Map() };
const TITLE = "Copied from the log by the add-in; not to be changed";
/** Title, source and the register's headings, then field ids; below them a row for each id. */
const TOP = 2;
/** In the first row, before the headings. */
const FIRST_HEADING = 3;
/** Whether a log stands on the sheet that was copied from: a new name does not make it another, nor do the ids of another program. */
export function copiedOf({ source }: Copied, place: LogPlace): boolean {
  return source.name === place.sheet || (source.id !== "" && source.id === place.sheetId);
}
/** The sheet as it stands, so that only what differs is written. */
export interface CopiedGrid {
  readonly copied: Copied;
  readonly cells: readonly (readonly string[])[];
}
export async function copiedGrid(context: Excel.RequestContext, found: { readonly id: string } | null): Promise<CopiedGrid> {
  if (found === null) return { copied: NOTHING_COPIED, cells: [] };
  const sheet = context.workbook.worksheets.getItem(found.id);
  const used = sheet.getUsedRangeOrNullObject(true);
  used.load("rowIndex,columnIndex,rowCount,columnCount");
  await context.sync();
  if (used.isNullObject) return { copied: NOTHING_COPIED, cells: [] };
  const size = { rows: used.rowIndex + used.rowCount, columns: used.columnIndex + used.columnCount };
  const values = await readRows(context, sheet.getRange("A1"), size, "values");
  if (readText(values[0]?.[0]) !== TITLE)
    throw new WorkbookError(
      "other shape",
      `The hidden sheet "${COPIED_SHEET}" is not one that this add-in wrote. Rename it, then try again; nothing was written.`,
    );
  const cells = values.map((line) => line.map((cell) => (typeof cell === "string" ? cell : readText(cell))));
  return { copied: copiedFrom(cells), cells };
}
function copiedFrom(cells: readonly (readonly string[])[]): Copied {
  const [top = [], ids = []] = cells;
  const fields = ids.map((text) => FIELD_IDS.find((id) => id === text));
  const rows = new Map<string, Map<FieldId, string>>();
  for (const line of cells.slice(TOP)) {
    const row = new Map<FieldId, string>();
    fields.forEach((id, column) => {
      const text = line[column] ?? "";
      if (id !== undefined && text !== "") row.set(id, text);
    });
    const own = (row.get("id") ?? "").toLowerCase();
    // A line without an id is one whose writing was broken off.
    if (own !== "") rows.set(own, row);
  }
  return { source: { id: top[2] ?? "", name: top[1] ?? "" }, rows, headings: top.slice(FIRST_HEADING).filter((text) => text !== "") };
}
/**
 * Rows of the sheet, all of one width. Columns and lines that stand keep their place, so that a write that is broken off
 * between two of them leaves nothing under another field.
 */
export function copiedRows({ source, rows }: Copied, before: CopiedGrid, headings: readonly string[]): readonly (readonly string[])[] {
  const had = (before.cells[1] ?? []).filter((text): text is FieldId => FIELD_IDS.some((id) => id === text));
  const filled = new Set([...rows.values()].flatMap((cells) => [...cells.keys()]));
  const fields: readonly FieldId[] = [
    ...new Set<FieldId>([...(had.length === 0 ? (["id"] as const) : had), ...FIELD_IDS.filter((id) => filled.has(id))]),
  ];
  const width = Math.max(FIRST_HEADING + headings.length, fields.length, before.cells[0]?.length ?? 0);
  const wide = (line: readonly string[]): readonly string[] => [...line, ...Array.from({ length: width - line.length }, () => "")];
  const lineOf = (id: string): readonly string[] => wide(fields.map((name) => rows.get(id)?.get(name) ?? ""));
  const idAt = had.indexOf("id");
  const kept = before.cells.slice(TOP).map((line) => (line[idAt] ?? "").toLowerCase());
  // Of an id that left both log and register nothing has to be known.
  const gone = wide([]);
  const listed = new Set<string>();
  const body = kept.map((id) => {
    if (id === "" || !rows.has(id) || listed.has(id)) return gone;
    listed.add(id);
    return lineOf(id);
  });
  for (const id of rows.keys()) if (!listed.has(id)) body.push(lineOf(id));
  return [wide([TITLE, source.name, source.id, ...headings]), wide(fields), ...body];
}

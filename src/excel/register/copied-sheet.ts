/** What the log said when its cells were last copied into the register, on a very hidden sheet of the add-in. */
import { FIELD_IDS, type FieldId } from "../../engine/columns";
import type { CellValue } from "../../engine/reading/cell-value";
import { readText } from "../../engine/reading/text";
import { COPIED_SHEET } from "../kit/sheets";
import { WorkbookError } from "../kit/workbook-error";
import type { LogPlace } from "../log-place";

/** Cells by id in small letters, as the register writes them; a cell that is not there was blank. */
export interface Copied {
  /** Sheet that they were copied from, by its id and by its name. */
  readonly source: { readonly id: string; readonly name: string };
  readonly rows: ReadonlyMap<string, ReadonlyMap<FieldId, string>>;
}
export const NOTHING_COPIED: Copied = { source: { id: "", name: "" }, rows: new Map() };
const TITLE = "Copied from the log by the add-in; not to be changed";
/** Title and source, then field ids; below them a row for each id. */
const TOP = 2;
/** Whether a log stands on the sheet that was copied from: a new name does not make it another, nor do the ids of another program. */
export function copiedOf({ source }: Copied, place: LogPlace): boolean {
  return source.name === place.sheet || (source.id !== "" && source.id === place.sheetId);
}
/** Asks for the sheet; read it with `copiedFrom` after the next round trip. */
export function loadCopied(context: Excel.RequestContext): { readonly sheet: Excel.Worksheet; readonly used: Excel.Range } {
  const sheet = context.workbook.worksheets.getItemOrNullObject(COPIED_SHEET);
  const used = sheet.getUsedRangeOrNullObject(true);
  sheet.load("name");
  used.load("values");
  return { sheet, used };
}
export function copiedFrom({ sheet, used }: ReturnType<typeof loadCopied>): Copied {
  if (sheet.isNullObject || used.isNullObject) return NOTHING_COPIED;
  const values = used.values as CellValue[][];
  const [title, name, id] = values[0] ?? [];
  if (readText(title) !== TITLE)
    throw new WorkbookError(
      "other shape",
      `The hidden sheet "${COPIED_SHEET}" is not one that this add-in wrote. Rename it, then try again; nothing was written.`,
    );
  const fields = (values[1] ?? []).map((cell) => FIELD_IDS.find((id) => id === cell));
  const rows = new Map<string, Map<FieldId, string>>();
  for (const line of values.slice(TOP)) {
    const cells = new Map<FieldId, string>();
    fields.forEach((id, column) => {
      const cell = line[column];
      const text = typeof cell === "string" ? cell : readText(cell);
      if (id !== undefined && text !== "") cells.set(id, text);
    });
    rows.set((cells.get("id") ?? "").toLowerCase(), cells);
  }
  return { source: { id: readText(id), name: readText(name) }, rows };
}
/** Rows of the sheet, all of one width; columns in which nothing was copied are left out. */
export function copiedRows({ source, rows }: Copied): readonly (readonly string[])[] {
  const filled = new Set([...rows.values()].flatMap((cells) => [...cells.keys()]));
  const fields = FIELD_IDS.filter((id) => id === "id" || filled.has(id));
  const width = Math.max(3, fields.length);
  const wide = (line: readonly string[]): readonly string[] => [...line, ...Array.from({ length: width - line.length }, () => "")];
  return [
    wide([TITLE, source.name, source.id]),
    wide(fields),
    ...[...rows.values()].map((cells) => wide(fields.map((id) => cells.get(id) ?? ""))),
  ];
}

/** The register's rows by id: read whole, and cells written where the ids are. */
import { field, type FieldId } from "../../engine/columns";
import type { RegisterItem, RegisterWrite } from "../../engine/programme/post";
import { readText } from "../../engine/reading/text";
import { type CellWrite, type Sending, writeCells } from "../kit/in-parts";
import { readRows } from "../kit/read-in-parts";
import { WorkbookError } from "../kit/workbook-error";
import { inputFormat } from "../register/columns";
import { findRegister, type FoundRegister } from "../register/find-register";
import { readTyped } from "../register/read-register";
import { type OldRegister, shapeOf } from "../register/shape";
import { registerCell, written } from "../register/written-cell";

export interface RegisterRead {
  readonly found: FoundRegister;
  readonly columns: ReadonlyMap<FieldId, number>;
  readonly table: OldRegister;
  /** Rows of the table by id in small letters. */
  readonly rows: ReadonlyMap<string, number>;
  readonly items: readonly RegisterItem[];
}
export async function registerOf(context: Excel.RequestContext): Promise<RegisterRead> {
  const found = await findRegister(context);
  const shape = found === null ? null : shapeOf(found);
  if (found === null || shape?.ok !== true)
    throw new WorkbookError("no log", "There is no register to post to. Build the register, then post again; nothing was written.");
  const { columns } = shape;
  const table = await readSteady(context, found, columns.get("id") ?? 0);
  const items = table.values.map((line) => {
    const cells = new Map([...columns].map(([id, column]) => [id, line[column]] as const));
    return { id: readText(cells.get("id")), cells };
  });
  const rows = new Map(items.map(({ id }, row) => [id.toLowerCase(), row]));
  return { found, columns, table, rows, items: items.filter(({ id }) => id !== "") };
}
/** The same cells that were misplaced are put right so often at most. */
const TRIES = 4;
/** The register takes several requests to read; where its rows were moved between two of them, it is read again. */
async function readSteady(context: Excel.RequestContext, found: FoundRegister, id: number): Promise<OldRegister> {
  for (let tries = 0; tries < TRIES; tries += 1) {
    const table = await readTyped(context, found);
    const ids = await readRows(context, found.table.getDataBodyRange().getColumn(id), { rows: found.rows, columns: 1 }, "values");
    if (ids.every(([cell], row) => readText(cell) === readText(table.values[row]?.[id]))) return table;
  }
  throw new WorkbookError(
    "host",
    "The register's rows are being moved while it is read. Wait until the others are done, then post the round again; nothing was written.",
  );
}
/**
 * Cells are found by id and heading. Somebody else may add, sort or take out rows between our reading and our writing, so
 * the ids are looked at again afterwards; a cell that came to stand in another row is given back what stood there, and the
 * reading goes where its id is now.
 */
export async function writeRegister(
  context: Excel.RequestContext,
  sending: Sending,
  writes: readonly RegisterWrite[],
  known: ReadonlyMap<FieldId, number>,
): Promise<void> {
  let open = writes;
  await addColumns(context, sending, writes, known);
  for (let tries = 0; open.length > 0 && tries < TRIES; tries += 1) {
    const before = await registerOf(context);
    const cells = placed(before, open);
    const sheet = context.workbook.worksheets.getItem(before.found.sheet.id);
    await writeCells(
      sending,
      sheet,
      cells.map(({ cell }) => cell),
      "values",
    );
    await sending.send();
    const after = await registerOf(context);
    const astray = cells.filter(({ id, row }) => idAt(after, row) !== id);
    const back = astray.flatMap(({ row, cell, column, write }): CellWrite[] => {
      const other = idAt(after, row);
      const was = rowOf(before, other);
      if (was < 0) return [];
      return [{ ...cell, value: registerCell(write.field, before.table.values[was]?.[column]) }];
    });
    if (back.length > 0) {
      await writeCells(sending, context.workbook.worksheets.getItem(after.found.sheet.id), back, "values");
      await sending.send();
    }
    open = astray.map(({ write }) => write);
  }
  if (open.length > 0)
    throw new WorkbookError(
      "host",
      "The register's rows were moved again and again while it was written. Wait until the others are done, then post the round again.",
    );
}
/** A column that a register from before has not, among those that are judged: before its remarks. */
async function addColumns(
  context: Excel.RequestContext,
  sending: Sending,
  writes: readonly RegisterWrite[],
  known: ReadonlyMap<FieldId, number>,
): Promise<void> {
  if (writes.every((write) => known.has(write.field))) return;
  const { found, columns } = await registerOf(context);
  const lacking = [...new Set(writes.map((write) => write.field))].filter((id) => !columns.has(id));
  const before = columns.get("remarks");
  if (lacking.length === 0 || before === undefined) return;
  for (const id of lacking) {
    found.table.columns.add(before, undefined, field(id).heading);
    found.table.columns.getItem(field(id).heading).getDataBodyRange().numberFormat = inputFormat(id) as unknown as string[][];
  }
  await sending.send();
}
interface PlacedWrite {
  readonly id: string;
  /** Row of the table, from 0. */
  readonly row: number;
  readonly column: number;
  readonly cell: CellWrite;
  readonly write: RegisterWrite;
}
function placed(register: RegisterRead, writes: readonly RegisterWrite[]): readonly PlacedWrite[] {
  const { found, columns } = register;
  return writes.flatMap((write) => {
    const column = columns.get(write.field);
    const row = rowOf(register, write.id.toLowerCase());
    if (column === undefined || row < 0) return [];
    const value = written(write.field, write.value, null, null);
    return [{ id: write.id.toLowerCase(), row, column, write, cell: { row: found.row + 1 + row, column: found.column + column, value } }];
  });
}
const idAt = ({ table, columns }: RegisterRead, row: number): string =>
  readText(table.values[row]?.[columns.get("id") ?? -1]).toLowerCase();
const rowOf = ({ rows }: RegisterRead, id: string): number => (id === "" ? -1 : (rows.get(id) ?? -1));

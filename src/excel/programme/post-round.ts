/**
 * Posting a round: first the history, then the workbook's own note of its last seal, last the register. Wherever it is
 * broken off, posting again goes on from there: what stands in the history is not added twice, what the register holds is
 * not written again.
 */
import { field, type FieldId } from "../../engine/columns";
import { byRound } from "../../engine/programme/history";
import { planPosting, type RegisterItem, type RegisterWrite } from "../../engine/programme/post";
import { type KeptRound, sealOf } from "../../engine/programme/seals";
import { readText } from "../../engine/reading/text";
import { readHouseSheet } from "../house/house-sheet";
import { withHouse } from "../house/with-house";
import { today } from "../kit/clock";
import { type CellWrite, Sending, writeCells } from "../kit/in-parts";
import { readSheets } from "../kit/marks";
import { readRows } from "../kit/read-in-parts";
import { asWorkbookError, inWorkbook } from "../kit/run";
import { WorkbookError } from "../kit/workbook-error";
import { inputFormat } from "../register/columns";
import { findRegister, type FoundRegister } from "../register/find-register";
import { readTyped } from "../register/read-register";
import { type OldRegister, shapeOf } from "../register/shape";
import { registerCell, written } from "../register/written-cell";
import { hashOf } from "./hash";
import { addHistory, readHistory } from "./history-sheet";
import { keepRounds, keptRounds } from "./kept-rounds";
import { gaugeHasUnit, readRound } from "./read-round";
import type { PostResult } from "./rounds";

/** The same cells that were misplaced are put right so often at most. */
const TRIES = 4;
export async function postRound(sheet: string, day: number = today()): Promise<PostResult> {
  return inWorkbook(async (context) => {
    const round = await readRound(context, sheet);
    const gauge = round.items[0]?.lines.find(({ role }) => role === "gauge")?.reading;
    if (!gaugeHasUnit(gauge))
      throw new WorkbookError(
        "other shape",
        `"${readText(gauge)}" says no unit. Type what the gauge reads to with in or mm, then post again; nothing was written.`,
      );
    if (round.basis.length === 0)
      throw new WorkbookError("other shape", `The hidden columns of "${sheet}" were changed. Make the round again; nothing was written.`);
    const sheets = await readSheets(context);
    const register = await registerOf(context);
    const kept = await keptRounds();
    const history = await readHistory(context, sheets, kept.length > 0);
    const house = await readHouseSheet(context);
    const { basis } = withHouse({ basis: round.basis, asOf: day }, house);
    const plan = planPosting({
      round: { ...round, basis },
      register: register.items,
      fields: new Set(register.columns.keys()),
      history: history.rows,
      kept,
      house: house ?? undefined,
      today: day,
      hash: hashOf,
    });
    if (!plan.ok) throw new WorkbookError("other shape", plan.why);
    const sending = new Sending(context);
    let begun = false;
    try {
      if (plan.rows.length > 0) {
        begun = true;
        await addHistory(context, sending, sheets, history, plan.rows);
      }
      const after = plan.rows.length > 0 ? (await readHistory(context, sheets, true)).rows : history.rows;
      const last = plan.rows.at(-1);
      if (last !== undefined && !after.some(({ Seal }) => Seal === last.Seal))
        throw new WorkbookError("host", "The history did not take the rows: somebody wrote there at the same time. Post the round again.");
      await keepRounds(toKeep(after, kept, round.round));
      begun = begun || plan.writes.length > 0;
      await writeRegister(context, sending, plan.writes, register.columns);
    } catch (fault) {
      throw begun ? brokenOff(fault) : fault;
    }
    const { rows, writes, ...told } = plan;
    return { ...told, sheet, added: rows.length, written: writes.length };
  });
}
function brokenOff(fault: unknown): WorkbookError {
  const { kind, message } = asWorkbookError(fault);
  const said = message.replace(/; nothing was written\.|, then try again.*$/, ".");
  return new WorkbookError(kind, `${said} The posting was broken off; nothing is lost. Post the round again to finish it.`);
}
/** Postings of this round whose rows stand in the table and that the workbook has not noted so: the chain up to the last row that fits. */
function toKeep(rows: Parameters<typeof byRound>[0], kept: readonly KeptRound[], round: string): readonly KeptRound[] {
  const notes: KeptRound[] = [];
  for (const [part, own] of byRound(rows)) {
    if (part !== round && !part.startsWith(`${round}/`)) continue;
    const known = kept.find((one) => one.round === part);
    let before = "";
    const sound = own.every((row) => {
      const fits = sealOf(row, before, hashOf) === row.Seal;
      before = row.Seal;
      return fits;
    });
    // A chain that does not fit is for the check to name; a note is never made smaller.
    if (sound && (known === undefined || own.length > known.rows)) notes.push({ round: part, rows: own.length, last: before });
  }
  return notes;
}
interface RegisterRead {
  readonly found: FoundRegister;
  readonly columns: ReadonlyMap<FieldId, number>;
  readonly table: OldRegister;
  /** Rows of the table by id in small letters. */
  readonly rows: ReadonlyMap<string, number>;
  readonly items: readonly RegisterItem[];
}
async function registerOf(context: Excel.RequestContext): Promise<RegisterRead> {
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
async function writeRegister(
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

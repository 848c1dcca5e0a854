import { asWorkbookError, inWorkbook } from "./kit/run";
import type { WorkbookEvent } from "./port";

/** Where the selection stands; null where the workbook does not say. The next move tells it again. */
async function selectedRow(): Promise<WorkbookEvent | null> {
  try {
    return await Excel.run(async (context) => {
      const cell = context.workbook.getActiveCell();
      cell.load("rowIndex");
      const sheet = context.workbook.worksheets.getActiveWorksheet();
      sheet.load("id,name");
      await context.sync();
      return { kind: "selected", sheet: sheet.name, sheetId: sheet.id, row: cell.rowIndex };
    });
  } catch {
    return null;
  }
}
/** Row of a change by hand to one row, such as B7 or B7:D7; null for anything larger, and for what the add-in wrote. */
function typedRow(event: Excel.WorksheetChangedEventArgs): number | null {
  if (event.changeType !== Excel.DataChangeType.rangeEdited || event.source !== Excel.EventSource.local) return null;
  // Older libraries know neither the member nor its names.
  if ((event.triggerSource as string | undefined) === "ThisLocalAddin") return null;
  const rows = /^[A-Z]+(\d+)(?::[A-Z]+(\d+))?$/.exec(event.address);
  return rows === null || (rows[2] ?? rows[1]) !== rows[1] ? null : Number(rows[1]) - 1;
}
/** Changes come in bursts: their sheets are looked up together after this time. */
const BURST_MS = 150;
/** Tells which sheets changed, by the names that they have now. */
function changeTeller(listener: (event: WorkbookEvent) => void): (sheetId: string, remote: boolean) => void {
  const waiting = new Map<string, boolean>();
  const flush = async (): Promise<void> => {
    const ids = [...waiting];
    waiting.clear();
    await Excel.run(async (context) => {
      const sheets = ids.map(([id, remote]) => ({ sheet: context.workbook.worksheets.getItemOrNullObject(id), remote }));
      for (const { sheet } of sheets) sheet.load("id,name");
      await context.sync();
      for (const { sheet, remote } of sheets)
        if (!sheet.isNullObject) listener({ kind: "changed", remote, sheet: sheet.name, sheetId: sheet.id });
    }).catch((fault: unknown) => {
      // While a cell is edited the workbook does not answer; the burst is looked up again. A look-up that failed otherwise is
      // told by the ids alone: whoever listens reads the sheets himself, and tells when that fails as well.
      const editing = asWorkbookError(fault).kind === "editing";
      for (const [id, remote] of ids)
        if (editing) note(id, remote);
        else listener({ kind: "changed", remote, sheet: "", sheetId: id });
    });
  };
  const note = (id: string, remote: boolean): void => {
    if (waiting.size === 0) setTimeout(() => void flush(), BURST_MS);
    waiting.set(id, remote || waiting.get(id) === true);
  };
  return note;
}
export async function watch(listener: (event: WorkbookEvent) => void): Promise<() => Promise<void>> {
  return inWorkbook(async (context) => {
    const { workbook } = context;
    const tell = changeTeller(listener);
    const changed = workbook.worksheets.onChanged.add((event) => {
      const row = typedRow(event);
      if (row !== null) listener({ kind: "typed", sheetId: event.worksheetId, row });
      tell(event.worksheetId, event.source === Excel.EventSource.remote);
      return Promise.resolve();
    });
    // A sheet that is gone has no name any more, and nobody has to be asked before it is missed.
    const deleted = workbook.worksheets.onDeleted.add((event) => {
      listener({ kind: "changed", remote: false, sheet: "", sheetId: event.worksheetId });
      return Promise.resolve();
    });
    const selected = workbook.onSelectionChanged.add(async () => {
      const event = await selectedRow();
      if (event !== null) listener(event);
    });
    await context.sync();
    return async () => {
      await Excel.run(changed.context, async (own) => {
        changed.remove();
        deleted.remove();
        await own.sync();
      });
      await Excel.run(selected.context, async (own) => {
        selected.remove();
        await own.sync();
      });
    };
  });
}

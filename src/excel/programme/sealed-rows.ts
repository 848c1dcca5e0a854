/** Adding sealed rows to the history, and the workbook's own note of their last seal. */
import { byRound, type HistoryRow } from "../../engine/programme/history";
import { type KeptRound, sealOf } from "../../engine/programme/seals";
import type { Sending } from "../kit/in-parts";
import type { Sheets } from "../kit/marks";
import { asWorkbookError } from "../kit/run";
import { WorkbookError } from "../kit/workbook-error";
import { hashOf } from "./hash";
import { addHistory, type History, readHistory } from "./history-sheet";
import { keepRounds } from "./kept-rounds";

/** Adds the rows of a round, sees that they stand, and notes every posting of the round that stands sound. */
export async function addSealed(
  context: Excel.RequestContext,
  sending: Sending,
  sheets: Sheets,
  before: { readonly history: History; readonly kept: readonly KeptRound[] },
  added: { readonly round: string; readonly rows: readonly HistoryRow[] },
): Promise<void> {
  const { history, kept } = before;
  const last = added.rows.at(-1);
  if (last !== undefined) await addHistory(context, sending, sheets, history, added.rows);
  const after = last === undefined ? history.rows : (await readHistory(context, sheets, true)).rows;
  if (last !== undefined && !after.some(({ Seal }) => Seal === last.Seal))
    throw new WorkbookError("host", "The history did not take the rows: somebody wrote there at the same time. Post the round again.");
  await keepRounds(toKeep(after, kept, added.round));
}
export function brokenOff(fault: unknown, again = "Post the round again"): WorkbookError {
  const { kind, message } = asWorkbookError(fault);
  const said = message.replace(/; nothing was written\.|, then try again.*$/, ".");
  return new WorkbookError(kind, `${said} The posting was broken off; nothing is lost. ${again} to finish it.`);
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

/** What the workbook's settings keep of each posting beside the table: how many rows, and the last seal. One setting a posting, so that two people do not write over each other's. */
import * as z from "zod/mini";
import type { KeptRound } from "../../engine/programme/seals";
import { WorkbookError } from "../kit/workbook-error";

const SETTING = "gearHistory";
const KEPT = z.object({ round: z.string(), rows: z.number(), last: z.string() });
const LIST = z.array(z.string());
/** Settings cannot be listed, so the first keeps the names of the others. */
const nameOf = (round: string): string => `${SETTING}:${round}`;
export async function keptRounds(): Promise<readonly KeptRound[]> {
  const { settings } = Office.context.document;
  await finished((done) => {
    settings.refreshAsync(done);
  });
  const names = LIST.safeParse(settings.get(SETTING));
  return (names.success ? names.data : []).flatMap((round) => {
    const one = KEPT.safeParse(settings.get(nameOf(round)));
    return one.success ? [one.data] : [];
  });
}
export async function keepRounds(rounds: readonly KeptRound[]): Promise<void> {
  if (rounds.length === 0) return;
  const known = await keptRounds();
  const { settings } = Office.context.document;
  settings.set(SETTING, [...new Set([...known, ...rounds].map(({ round }) => round))]);
  for (const one of rounds) settings.set(nameOf(one.round), { ...one });
  await finished((done) => {
    settings.saveAsync(done);
  });
}
function finished(start: (done: (result: Office.AsyncResult<unknown>) => void) => void): Promise<void> {
  return new Promise((resolve, reject) => {
    start((result) => {
      if (result.status === Office.AsyncResultStatus.Succeeded) resolve();
      else
        reject(
          new WorkbookError(
            "host",
            `The workbook could not note the last seal (${result.error.message}). The readings stand; post the round again.`,
          ),
        );
    });
  });
}

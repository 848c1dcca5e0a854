/** The seals of the history, looked at anew. */
import { checkSeals, type SealCheck } from "../../engine/programme/seals";
import { readSheets } from "../kit/marks";
import { inWorkbook } from "../kit/run";
import { hashOf } from "./hash";
import { readHistory } from "./history-sheet";
import { keptRounds } from "./kept-rounds";

export async function checkHistory(): Promise<SealCheck> {
  return inWorkbook(async (context) => {
    const kept = await keptRounds();
    const history = await readHistory(context, await readSheets(context), kept.length > 0);
    return checkSeals(history.rows, kept, hashOf);
  });
}

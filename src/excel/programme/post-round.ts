/**
 * Posting a round: first the history, then the workbook's own note of its last seal, last the register. Wherever it is
 * broken off, posting again goes on from there: what stands in the history is not added twice, what the register holds is
 * not written again.
 */
import { planPosting } from "../../engine/programme/post";
import { readText } from "../../engine/reading/text";
import { readHouseSheet } from "../house/house-sheet";
import { withHouse } from "../house/with-house";
import { today } from "../kit/clock";
import { Sending } from "../kit/in-parts";
import { readSheets } from "../kit/marks";
import { inWorkbook } from "../kit/run";
import { WorkbookError } from "../kit/workbook-error";
import { hashOf } from "./hash";
import { readHistory } from "./history-sheet";
import { keptRounds } from "./kept-rounds";
import { gaugeHasUnit, readRound } from "./read-round";
import { registerOf, writeRegister } from "./register-rows";
import type { PostResult } from "./rounds";
import { addSealed, brokenOff } from "./sealed-rows";

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
      begun = plan.rows.length > 0;
      await addSealed(context, sending, sheets, { history, kept }, { round: round.round, rows: plan.rows });
      begun = begun || plan.writes.length > 0;
      await writeRegister(context, sending, plan.writes, register.columns);
    } catch (fault) {
      throw begun ? brokenOff(fault) : fault;
    }
    const { rows, writes, ...told } = plan;
    return { ...told, sheet, added: rows.length, written: writes.length };
  });
}

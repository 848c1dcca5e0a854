/** The history of one item, its trend, its tag. */
import { type CheckTrend, rowsOf, trendsOf } from "../../engine/programme/item-history";
import { planTag, type TagWanted } from "../../engine/programme/tag";
import type { BasisId } from "../../engine/rules/rule-sets";
import { readHouseSheet } from "../house/house-sheet";
import { withHouse } from "../house/with-house";
import { today } from "../kit/clock";
import { Sending } from "../kit/in-parts";
import { readSheets } from "../kit/marks";
import { inWorkbook } from "../kit/run";
import { WorkbookError } from "../kit/workbook-error";
import { checkRegister } from "../register/check-register";
import { code } from "./code";
import { hashOf } from "./hash";
import { readHistory } from "./history-sheet";
import { keptRounds } from "./kept-rounds";
import { registerOf, writeRegister } from "./register-rows";
import type { ItemHistory } from "./rounds";
import { addSealed, brokenOff } from "./sealed-rows";

export async function itemHistory(id: string, basis: readonly BasisId[], asOf: number): Promise<ItemHistory> {
  const register = await checkRegister(basis, asOf);
  return inWorkbook(async (context) => {
    const kept = await keptRounds();
    const { rows } = await readHistory(context, await readSheets(context), kept.length > 0);
    const item = register?.log.report.items.find((one) => one.id.toLowerCase() === id.toLowerCase());
    const house = await readHouseSheet(context);
    const rules = withHouse({ basis, asOf }, house);
    const trends: readonly CheckTrend[] =
      item === undefined || register === null
        ? []
        : trendsOf(rows, item, { headings: register.log.report.headings, basis: rules.basis, house: rules.house });
    return { id, rows: rowsOf(rows, id), trends };
  });
}
/** Tags an item out, releases it or records its disposal: in the history first, then in the register. */
export async function tagItem(wanted: TagWanted, basis: readonly BasisId[], day: number = today()): Promise<void> {
  await inWorkbook(async (context) => {
    const sheets = await readSheets(context);
    const register = await registerOf(context);
    const kept = await keptRounds();
    const history = await readHistory(context, sheets, kept.length > 0);
    const items = register.items.filter(({ id }) => id.toLowerCase() === wanted.id.toLowerCase());
    const [item] = items;
    if (item === undefined || items.length > 1)
      throw new WorkbookError(
        "other shape",
        `${wanted.id} stands ${items.length === 0 ? "no longer" : "twice"} in the register. Nothing was written.`,
      );
    const part = `T${String(day)}.${code()}`;
    const plan = planTag({ wanted, item, day, rules: basis.join(", "), history: history.rows, kept, part, hash: hashOf });
    if (!plan.ok) throw new WorkbookError("other shape", plan.why);
    const sending = new Sending(context);
    try {
      await addSealed(context, sending, sheets, { history, kept }, { round: part, rows: plan.rows });
      await writeRegister(context, sending, plan.writes, register.columns);
    } catch (fault) {
      throw brokenOff(fault, "Press the button again");
    }
  });
}

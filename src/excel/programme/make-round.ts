/** Making a round from the register. */
import { itemsFor, type Round, type RoundKind, roundOf } from "../../engine/programme/round";
import { showDate } from "../../engine/numbers/calendar";
import { BASES } from "../../engine/rules/rule-sets";
import { capital } from "../../engine/words";
import { readHouseSheet } from "../house/house-sheet";
import { withHouse } from "../house/with-house";
import { Sending } from "../kit/in-parts";
import { readSheets, ROUND_MARK, type Sheets } from "../kit/marks";
import { inWorkbook } from "../kit/run";
import { HOUSE_SHEET } from "../kit/sheets";
import { WorkbookError } from "../kit/workbook-error";
import { HOUSE_LAST } from "../register/columns";
import { checkRegister } from "../register/check-register";
import { houseRange } from "../register/workings";
import { code } from "./code";
import { planRoundSheet } from "./plan-round";
import { HELD } from "./round-layout";
import type { RoundMade, RoundWanted } from "./rounds";
import { writeRoundSheet } from "./write-round";

const TITLES: Readonly<Record<RoundKind, (day: string) => string>> = {
  due: (day) => `due on ${day}`,
  shared: () => "what shared an overloaded tackle",
  missing: () => "what is missing",
};
const NOTHING: Readonly<Record<RoundKind, string>> = {
  due: "Nothing is late or due within 30 days.",
  shared: "No item shared an overloaded tackle.",
  missing: "No item is without a verdict for want of a reading.",
};
export async function makeRound({ kind, basis, asOf, ids, where = "" }: RoundWanted): Promise<RoundMade> {
  const register = await checkRegister(basis, asOf);
  if (register === null)
    throw new WorkbookError("no log", "A round is made from the register, and there is none yet. Build the register first.");
  const { report } = register.log;
  const wanted = ids === undefined ? itemsFor(kind, report.items) : report.items.filter(({ id }) => ids.includes(id.toLowerCase()));
  return inWorkbook(async (context) => {
    const house = await readHouseSheet(context);
    const rules = withHouse({ basis, asOf }, house);
    const round = roundOf({ kind, items: wanted, headings: report.headings, basis: rules.basis, house: rules.house, gauge: null });
    if (round.items.length === 0) throw new WorkbookError("no log", `${nothing(kind, round)} No round was made.`);
    const sheets = await readSheets(context);
    const number = nextNumber(sheets);
    const id = `R${String(number)}.${code()}`;
    const title = `Round ${String(number)}: ${capital([where, TITLES[kind](showDate(asOf))].filter((text) => text !== "").join(", "))}`;
    const sheet = context.workbook.worksheets.add(freeName(sheets, `Round ${String(number)}`));
    context.workbook.names.add(`${ROUND_MARK}${id}`, sheet.getRange("A1"));
    const houseName = (sheets.marked("house") ?? sheets.named(HOUSE_SHEET))?.name;
    const inForce = house === null || houseName === undefined ? ABSOLUTE_BASIS : houseRange(houseName, HOUSE_LAST);
    const named = rules.basis.map((one) => BASES[one].name).join(" + ");
    const plan = planRoundSheet(round, title, inForce, showDate(asOf), named);
    const sending = new Sending(context);
    await writeRoundSheet(sending, sheet, plan, { round: id, kind, basis: basis.join(",") });
    sheet.activate();
    sheet.getRange("C3").select();
    sheet.load("name");
    await sending.send();
    return { sheet: sheet.name, round: id, items: round.items.length, checks: round.checks, leftOut: round.leftOut };
  });
}
const ABSOLUTE_BASIS = HELD.basis.replace(/^([A-Z]+)(\d+)$/, "$$$1$$$2");
function nothing(kind: RoundKind, { leftOut }: Round): string {
  if (leftOut.length === 0) return NOTHING[kind];
  return `Nothing is to be looked at: ${leftOut
    .slice(0, 3)
    .map(({ id, why }) => `${id} ${why}`)
    .join("; ")}${leftOut.length > 3 ? ` and ${String(leftOut.length - 3)} more` : ""}.`;
}
/** One more than the highest number of a round that left its mark or its sheet. */
function nextNumber(sheets: Sheets): number {
  const numbers = [
    ...sheets.markedWith(ROUND_MARK).map(({ rest }) => Number(/^R(\d+)\./.exec(rest)?.[1] ?? 0)),
    ...sheets.all.map(({ name }) => Number(/^Round (\d+)/.exec(name)?.[1] ?? 0)),
  ];
  return Math.max(0, ...numbers) + 1;
}
function freeName(sheets: Sheets, wanted: string): string {
  let name = wanted;
  for (let n = 2; sheets.named(name) !== null; n += 1) name = `${wanted} (${String(n)})`;
  return name;
}

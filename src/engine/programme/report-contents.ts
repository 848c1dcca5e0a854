/**
 * What a report of thorough examination holds of each item: the contents that Schedule 1 of the Lifting Operations and
 * Lifting Equipment Regulations 1998 (SI 1998/2307) asks for, as far as register and history know them; the rest is left
 * open to be filled in. Paragraphs 1 to 8(c) were read at legislation.gov.uk, 8(d) to 11 are from memory. Pure.
 */
import { ACTIONS, type Decision, isDecision, outOfUse } from "../decision";
import { showDate } from "../numbers/calendar";
import { readDate } from "../reading/date";
import { readText } from "../reading/text";
import type { ItemResult } from "../report/model";
import { capital } from "../words";
import { type HistoryRow, ROUND_HEAD, SEEN, VERDICT } from "./history";

export interface ReportedItem {
  readonly id: string;
  /** Description: gear, size, place. */
  readonly gear: string;
  readonly ratedLoad: string;
  /** Days as text; "" where none is known. */
  readonly lastExamined: string;
  readonly examined: string;
  /** Why it was examined: the interval in force. */
  readonly interval: string;
  readonly decision: Decision | "";
  readonly safe: "yes" | "no" | "after dressing";
  /** Defects and what has to be done, each in a line. */
  readonly defects: readonly string[];
  readonly nextAt: string;
}
export interface ReportContents {
  readonly title: string;
  readonly by: readonly string[];
  readonly days: readonly string[];
  readonly rules: readonly string[];
  readonly items: readonly ReportedItem[];
}
/** The report of a round, from the rows that were posted for it; null where nothing was. */
export function reportContents(rows: readonly HistoryRow[], round: string, register: readonly ItemResult[]): ReportContents | null {
  const own = rows.filter(({ Round }) => Round === round || Round.startsWith(`${round}/`));
  const verdicts = new Map(own.filter(({ Check }) => Check === VERDICT).map((row) => [row.Id.toLowerCase(), row]));
  if (verdicts.size === 0) return null;
  const known = new Map(register.map((item) => [item.id.toLowerCase(), item]));
  const each = (heading: "By" | "Date" | "Rule sets"): readonly string[] =>
    [...new Set(own.map((row) => row[heading]))].filter((text) => text !== "");
  return {
    title: own.find(({ Check }) => Check === ROUND_HEAD)?.Reading ?? round,
    by: each("By"),
    days: each("Date"),
    rules: each("Rule sets"),
    items: [...verdicts].map(([id, verdict]) => itemOf(verdict, own, rows, known.get(id))),
  };
}
function itemOf(verdict: HistoryRow, own: readonly HistoryRow[], all: readonly HistoryRow[], item: ItemResult | undefined): ReportedItem {
  const decision = isDecision(verdict.Decision) ? verdict.Decision : "";
  const out = decision === "" || outOfUse(decision);
  return {
    id: verdict.Id,
    gear: [item?.gearText ?? "", readText(item?.cells.get("size")), item?.place ?? ""].filter((text) => text !== "").join(", "),
    ratedLoad: readText(item?.cells.get("ratedLoad")),
    lastExamined: before(all, verdict),
    examined: verdict.Date,
    interval: item === undefined ? "" : capital(item.dueNote),
    decision,
    safe: out ? "no" : decision === "DRESS" ? "after dressing" : "yes",
    defects: decision === "" ? [] : defectsOf(verdict, own, decision),
    nextAt: out || item?.nextDue == null ? "" : showDate(item.nextDue),
  };
}
/** Day of the item's last verdict before this round. */
function before(all: readonly HistoryRow[], verdict: HistoryRow): string {
  const days = all
    .filter(
      (row) =>
        row.Check === VERDICT &&
        row.Id.toLowerCase() === verdict.Id.toLowerCase() &&
        row.Round.split("/")[0] !== verdict.Round.split("/")[0],
    )
    .flatMap((row) => {
      const day = readDate(row.Date);
      return day.kind === "value" && row.Date !== verdict.Date ? [day.value] : [];
    });
  const limit = readDate(verdict.Date);
  const earlier = limit.kind === "value" ? days.filter((day) => day < limit.value) : [];
  return earlier.length === 0 ? "" : showDate(Math.max(...earlier));
}
/** What speaks against the item, each with reading and limit, then what is to be done. */
function defectsOf(verdict: HistoryRow, own: readonly HistoryRow[], decision: Decision): readonly string[] {
  if (decision === "KEEP") return [];
  const last = new Map(own.filter(({ Id }) => Id.toLowerCase() === verdict.Id.toLowerCase()).map((row) => [row.Check, row]));
  const lines = [...last.values()].flatMap(({ Check, Reading, Decision: said, Limit }) => {
    const seen = Check.endsWith(`, ${SEEN}`);
    if (Check === VERDICT || (!seen && (said === "" || said === "KEEP"))) return [];
    return [`${Check.replace(`, ${SEEN}`, "")}: ${Reading}${Limit === "" ? "" : `, out ${Limit}`}`];
  });
  return [...(lines.length === 0 ? [verdict.Reading] : lines), ACTIONS[decision]];
}

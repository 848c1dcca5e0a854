/** The register's items, none judged better than the log judges it where the log says what the register does not. Pure. */
import { type Decision, DECISIONS, isDecision, rank } from "../../engine/decision";
import type { DueState } from "../../engine/due/intervals";
import type { ItemVerdict } from "../../engine/item/verdict";
import type { ItemResult, Report } from "../../engine/report/model";
import type { AgainstLog } from "../port";
import type { LogChange } from "./plan";

/** As many as are read at a glance. */
export const some = (list: readonly string[], joint = ", "): string =>
  list.length > 3 ? `${list.slice(0, 3).join(joint)} and ${(list.length - 3).toLocaleString("en-US")} more` : list.join(joint);
/** The log's decision first: the register's formula reads it there. */
export function differsText(item: ItemResult, cells: readonly string[]): string {
  return `${item.verdict.decision}: so says the log, which differs from the register (${some(cells, "; ")}); the worse of the two counts until both agree.`;
}
/** An overload that only the log tells of reaches the other parts of its assembly as well. */
export function partsOfAssemblies(report: Report, changes: ReadonlyMap<string, LogChange>, texts: readonly string[]): readonly string[] {
  const reached = overloadedWith(report, (id) => changes.get(id)?.both === true);
  return texts.map((text, index) => {
    const item = report.items[index];
    return text === "" && item !== undefined && reached.has(item.id.toLowerCase())
      ? differsText(item, ["another part of its assembly"])
      : text;
  });
}
/** Ids, in small letters, of items that the log finds overloaded together with one of those asked for. */
export function overloadedWith(report: Report, asked: (id: string) => boolean): ReadonlySet<string> {
  const assemblies = new Set(report.items.filter((item) => asked(item.id.toLowerCase())).map((item) => item.assembly.toLowerCase()));
  return new Set(
    report.items
      .filter(
        (item) =>
          item.assembly !== "" &&
          assemblies.has(item.assembly.toLowerCase()) &&
          item.verdict.findings.some(({ check }) => check === "assembly"),
      )
      .map((item) => item.id.toLowerCase()),
  );
}
/** The decision that a cell "Log differs" begins with; one that cannot be read is none. */
export function decisionIn(text: string): Decision | null {
  if (text === "") return null;
  const word = text.slice(0, Math.max(0, text.indexOf(":")));
  return isDecision(word) ? word : "NO VERDICT";
}
/** An item whose register row carries the log's decision from the last build. */
export function withNote(item: ItemResult, text: string): ItemResult {
  const log = decisionIn(text);
  if (log === null) return item;
  const decision = rank(log) < rank(item.verdict.decision) ? log : item.verdict.decision;
  return { ...item, verdict: { ...item.verdict, decision, reason: `${text} ${item.verdict.reason}` } };
}
export function againstLog(
  register: readonly ItemResult[],
  log: Report,
  changes: ReadonlyMap<string, LogChange>,
): { readonly items: readonly ItemResult[]; readonly apart: readonly AgainstLog[] } {
  const byId = new Map(log.items.map((item) => [item.id.toLowerCase(), item]));
  const reached = overloadedWith(log, (id) => changes.has(id));
  const apart: AgainstLog[] = [];
  const items = register.map((item) => {
    const id = item.id.toLowerCase();
    const other = byId.get(id);
    if (other === undefined) return item;
    const worse = rank(other.verdict.decision) < rank(item.verdict.decision);
    const change =
      changes.get(id) ??
      (worse && reached.has(id) ? { cells: ["another part of its assembly was found overloaded"], both: false } : undefined);
    if (change === undefined) return item;
    apart.push({ id: item.id, cells: change.cells, register: item.verdict.decision, log: other.verdict.decision, both: change.both });
    return worseOf(item, other, change.cells);
  });
  return { items, apart };
}
function worseOf(item: ItemResult, log: ItemResult, cells: readonly string[]): ItemResult {
  const note = `Log and register differ (${cells.join("; ")}), and the worse counts.`;
  const worse: ItemVerdict = rank(log.verdict.decision) < rank(item.verdict.decision) ? log.verdict : item.verdict;
  const due = item.nextDue === null || (log.nextDue !== null && item.nextDue <= log.nextDue) ? item : log;
  return {
    ...item,
    tagged: item.tagged || log.tagged,
    verdict: { ...worse, reason: `${note} ${worse.reason}` },
    nextDue: due.nextDue,
    dueState: due.dueState,
    dueNote: due.dueNote,
  };
}
/** A report over other items, counted anew. */
export function countedAnew(report: Report, items: readonly ItemResult[]): Report {
  const counts = Object.fromEntries(
    DECISIONS.map((decision) => [decision, items.filter((item) => item.verdict.decision === decision).length]),
  ) as Record<Decision, number>;
  const due = Object.fromEntries(
    Object.keys(report.due).map((state) => [state, items.filter((item) => item.dueState === state).length]),
  ) as Record<DueState, number>;
  return { ...report, items, counts, due };
}

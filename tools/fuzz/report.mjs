/** The figures of a run, for a person and for a file. */
import { kindsCount } from "./check.mjs";

const share = ([bad, all]) => (all === 0 ? "none judged" : `${bad} of ${all} (${((100 * bad) / all).toFixed(2)} %)`);
/** Most of the wanted figures in one place: alarms at most 1 % of plain rows, 10 % of rows with one descriptive word or a turned heading. */
export const ALLOWED = { clean: 0.01, described: 0.1, turned: 0.1 };
const over = ([bad, all], most) => all > 0 && bad / all > most;
export const isFalseKeep = ({ fault }) => fault.startsWith("false ");

export function verdictOf(report) {
  const faults = [...report.faults.values()].filter(({ fault }) => !fault.startsWith("alarm"));
  return {
    falseKeeps: faults.filter(isFalseKeep).reduce((sum, { count }) => sum + count, 0),
    others: faults.filter((f) => !isFalseKeep(f)).reduce((sum, { count }) => sum + count, 0),
    alarmsOver: Object.keys(ALLOWED).filter((group) => over(report.alarms[group], ALLOWED[group])),
  };
}
/** Faults by family, the part of its name before the colon, most frequent first. */
export function byFamily(report) {
  const families = new Map();
  for (const { fault, family, count, shrunk } of report.faults.values()) {
    const [name] = family.split(":");
    const key = `${fault} | ${name}`;
    const entry = families.get(key) ?? { fault, family: name, count: 0, causes: [] };
    families.set(key, entry);
    entry.count += count;
    for (const [cause, { count: times, gear, got }] of shrunk) entry.causes.push({ times, gear, cause, got });
  }
  for (const { causes } of families.values()) causes.sort((a, b) => b.times - a.times);
  return [...families.values()].sort((a, b) => b.count - a.count);
}
export function summary(report, examples = 3) {
  const lines = [
    `seed ${report.seed}: ${report.judged.toLocaleString("en")} judgements in ${report.logs.toLocaleString("en")} logs`,
    `kinds covered: ${Object.keys(report.kinds).length} of ${kindsCount}`,
    `planted rows: ${Object.entries(report.rows)
      .map(([wanted, count]) => `${wanted} ${count.toLocaleString("en")}`)
      .join(", ")}`,
    `alarms on plain clean rows: ${share(report.alarms.clean)}, at most 1 %`,
    `alarms on rows with one descriptive word: ${share(report.alarms.described)}, at most 10 %`,
    `alarms on clean rows under turned headings or headings with their own choices: ${share(report.alarms.turned)}, at most 10 %`,
  ];
  const { falseKeeps } = verdictOf(report);
  lines.push(`false KEEP, WATCH or DRESS: ${falseKeeps.toLocaleString("en")}`);
  for (const { fault, family, count, causes } of byFamily(report)) {
    lines.push(`  ${fault} | ${family}: ${count.toLocaleString("en")}`);
    for (const { times, gear, cause, got } of causes.slice(0, examples)) lines.push(`      ${times} x ${gear}: ${cause} -> ${got}`);
  }
  return lines.join("\n");
}
/** What a run did not hold, in few words and sorted: the bounded run of the tests holds this list to the letter. */
export function notHeld(report) {
  const { alarmsOver } = verdictOf(report);
  const faults = [...report.faults.values()].map(({ fault }) => fault).filter((fault) => !fault.startsWith("alarm"));
  return [
    ...new Set([
      ...faults.map((fault) => (fault.startsWith("false ") ? "false KEEP, WATCH or DRESS" : fault)),
      ...alarmsOver.map((group) => `alarms: ${group}`),
    ]),
  ].sort();
}
/** Every distinct shrunk failure, one object each. */
export const failures = (report) =>
  [...report.faults.values()].flatMap(({ fault, family, shrunk }) =>
    [...shrunk].map(([cause, { headers, row, wanted, gear, got, reason, count, changed, beside }]) => ({
      fault,
      family,
      gear,
      cause,
      headers,
      row,
      wanted,
      got,
      reason,
      count,
      ...(changed ? { changed } : {}),
      ...(beside ? { beside } : {}),
    })),
  );

/** The loop: logs by the seed, judged, checked, shrunk and counted. */
import { drawer } from "./draw.mjs";
import { faultOf, isAlarm } from "./check.mjs";
import { KINDS } from "./kinds.mjs";
import { cleanLog } from "./log.mjs";
import { described, LOG_PLANTS, ROW_PLANTS } from "./plants.mjs";
import { ask, inchAndMillimetreAgree, orderDoesNotMatter, unrelatedDoesNotMatter, worseNeverImproves } from "./properties.mjs";
import { shrink, unusual } from "./shrink.mjs";

/** Distinct failures of one family that are kept, and how often one is shrunk to look for another; the others are counted. */
const KEPT = { causes: 60, looks: 200 };
const KEPT_ALARMS = { causes: 600, looks: 1500 };

/** A log with its planted truth. */
export function plantedLog(d) {
  const log = cleanLog(d);
  if (d.chance(0.5)) d.weighted(LOG_PLANTS)(log, d);
  for (const row of log.rows) {
    // One cause a row, so that what a failure shows is what was planted.
    if (row.truth.wanted !== "in" && row.truth.wanted !== "free") continue;
    const draw = d.between(0, 1, 6);
    if (draw < 0.38) d.weighted(ROW_PLANTS)(log, row, d);
    else if (draw < 0.6) described(log, row, d);
  }
  return log;
}

/**
 * @param {{judge: Function, seed: number, judgements?: number, until?: number, every?: (report: object) => void, most?: number}} how
 * `until` is a time of `performance.now()`; `most` bounds how many failures of one family are made small.
 */
export function run({ judge, seed, judgements = Infinity, until = Infinity, every, most = Infinity }) {
  const d = drawer(seed);
  const report = {
    seed,
    judged: 0,
    logs: 0,
    rows: {},
    kinds: {},
    planted: {},
    faults: new Map(),
    alarms: { clean: [0, 0], described: [0, 0], turned: [0, 0] },
    properties: {},
  };
  const known = new Set(Object.keys(KINDS));
  /** Judgings that only make a failure smaller are not counted. */
  const single = (log) => ask(judge, log);
  const noteFault = (fault, family, make) => {
    const key = `${fault} | ${family}`;
    const entry = report.faults.get(key) ?? { fault, family, count: 0, shrunk: new Map() };
    report.faults.set(key, entry);
    entry.count++;
    const { causes, looks } = isAlarm(fault) ? KEPT_ALARMS : KEPT;
    if (entry.count > Math.min(looks, most) || entry.shrunk.size >= causes) return;
    const kept = make();
    const cause = kept.cause.join("; ") || "(no single cause)";
    const same = entry.shrunk.get(cause);
    if (same) same.count++;
    else entry.shrunk.set(cause, { ...kept, count: 1 });
  };
  const keep = (log, answer, wanted) => ({
    cause: unusual(log),
    wanted,
    gear: log.rows[0].kind,
    headers: log.columns.map(({ heading }) => heading),
    row: log.rows[0].cells.map((cell) => cell ?? null),
    got: answer?.decision ?? answer?.fault,
    reason: answer?.reason,
  });

  while (report.judged < judgements && performance.now() < until) {
    const log = plantedLog(d);
    report.logs++;
    report.judged += log.rows.length;
    const answers = ask(judge, log);
    if (answers.fault) {
      const fails = (small) => Boolean(single(small).fault);
      const culprit = log.rows.find((row) => fails({ ...log, rows: [row] })) ?? log.rows[0];
      noteFault("an exception", String(answers.fault).split("\n")[0], () => {
        const small = shrink(log, culprit, fails, false);
        return keep(small, { fault: answers.fault }, "free");
      });
      continue;
    }
    for (const [i, row] of log.rows.entries()) {
      if (known.has(row.kind)) report.kinds[row.kind] = (report.kinds[row.kind] ?? 0) + 1;
      const { wanted, family } = row.truth;
      report.rows[wanted] = (report.rows[wanted] ?? 0) + 1;
      const group = family.replace(/:.*/, "");
      report.planted[group] = (report.planted[group] ?? 0) + 1;
      const alarm = wanted === "in" ? report.alarms[family] : null;
      if (alarm) alarm[1]++;
      const found = faultOf(answers[i], row, log.columns);
      if (!found) continue;
      const [fault, of] = found;
      if (alarm && answers[i].decision !== "KEEP" && answers[i].decision !== "WATCH" && answers[i].decision !== "DRESS") alarm[0]++;
      noteFault(fault, of, () => {
        const fails = (small) => {
          const [answer] = [single(small)].flat();
          return answer.fault === undefined && faultOf(answer, small.rows[0], small.columns)?.[0] === fault;
        };
        // What fails only beside other rows is kept whole, with the sentence that it got there.
        if (!fails({ ...log, rows: [row] }))
          return {
            ...keep({ ...log, rows: [row] }, answers[i], wanted),
            cause: [`only beside other rows: ${answers[i].reason.slice(0, 160)}`],
            beside: log.rows.map(({ cells }) => cells),
          };
        const small = shrink(log, row, fails, !fault.startsWith("false "));
        return keep(small, [single(small)].flat()[0], wanted);
      });
    }
    if (report.logs % 12 === 0)
      for (const property of [orderDoesNotMatter, unrelatedDoesNotMatter, worseNeverImproves]) {
        report.judged += log.rows.length;
        for (const [name, what, i, changed] of property(log, answers, judge, d)) {
          report.properties[name] = (report.properties[name] ?? 0) + 1;
          noteFault(`property: ${name}`, what.replace(/ in inches.*/, ""), () => ({
            ...keep({ ...log, rows: [log.rows[i]] }, answers[i], "free"),
            cause: [what],
            changed: { headers: changed.columns.map(({ heading }) => heading), row: changed.rows[i].cells.map((cell) => cell ?? null) },
          }));
        }
      }
    if (report.logs % 12 === 6) {
      const { judged, found } = inchAndMillimetreAgree(judge, d);
      report.judged += judged;
      for (const [name, what, , inches] of found)
        noteFault(`property: ${name}`, what, () => ({ ...keep(inches, null, "free"), cause: [what] }));
    }
    if (every && report.logs % 2000 === 0) every(report);
  }
  return report;
}

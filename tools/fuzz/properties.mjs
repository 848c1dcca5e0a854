/** What has to hold between two judgements of one row. */
import { cleanFacts } from "./facts.mjs";
import { DECISIONS, inService } from "./judge.mjs";
import { KINDS } from "./kinds.mjs";
import { addColumn, isCount, isSight, reorder } from "./log.mjs";
import { SIGHTS } from "./sights.mjs";
import { PARTS } from "./readings.mjs";

const copy = (log) => ({
  ...log,
  columns: [...log.columns],
  rows: log.rows.map((row) => ({
    ...row,
    cells: [...row.cells],
    plain: [...row.plain],
    truth: { ...row.truth, pins: [...row.truth.pins] },
  })),
});
const rank = (decision) => DECISIONS.indexOf(decision);
const ask = (judge, log) =>
  judge(
    log.columns.map(({ heading }) => heading),
    log.rows.map(({ cells }) => cells),
  );

/** Each gives `[name, what went wrong]` for a row, or nothing. `answers` are those of the log as it stands. */
export function orderDoesNotMatter(log, answers, judge, d) {
  const turned = copy(log);
  reorder(turned, d.shuffle(log.columns.map((_, i) => i)));
  const again = ask(judge, turned);
  if (again.fault) return [["column order", again.fault, 0, turned]];
  return log.rows.flatMap((_, i) =>
    again[i].decision === answers[i].decision ? [] : [["column order", `${answers[i].decision} became ${again[i].decision}`, i, turned]],
  );
}
export function unrelatedDoesNotMatter(log, answers, judge, d) {
  const wider = copy(log);
  const [heading, cell] = d.pick([
    ["Price", 120.5],
    ["Drawing no", "DRG-4471"],
    ["Purchased", "2021-03-04"],
    ["Purchased", 44259],
    ["Supplier", "Harbour Stores"],
    ["Photo", "https://example.invalid/p/2041"],
  ]);
  if (log.columns.some((column) => column.heading.trim().toLowerCase() === heading.toLowerCase())) return [];
  addColumn(wider, heading, () => cell);
  const again = ask(judge, wider);
  if (again.fault) return [["unrelated column", again.fault, 0, wider]];
  return log.rows.flatMap((_, i) =>
    again[i].decision === answers[i].decision
      ? []
      : [["unrelated column", `${heading}: ${answers[i].decision} became ${again[i].decision}`, i, wider]],
  );
}
/** One reading of each row gets worse by a little or a lot; what it was is read from the item, not from the cell. */
export function worseNeverImproves(log, answers, judge, d) {
  const worse = copy(log);
  const touched = worse.rows.map((row) => {
    // What no gauge could have read may become plausible by getting worse.
    if (/^(implausible|unreadable)/.test(row.truth.family)) return null;
    const able = log.columns.flatMap(({ of, form }, at) =>
      of in row.is && (/\.now$/.test(of) || isCount(of) || of === "twist" || (isSight(of) && form === "plain")) && of !== "clipsFitted"
        ? [at]
        : [],
    );
    if (able.length === 0) return null;
    const at = d.pick(able);
    const { of } = log.columns[at];
    const cell = row.cells[at];
    if (isSight(of)) row.cells[at] = SIGHTS[of].sense === "fault" ? "yes" : "no";
    // Where blanks come as 0, a count that is no longer 0 is no longer taken for one.
    else if (typeof cell !== "number" || cell < 0 || (cell === 0 && log.style.blank === 0)) return null;
    else if (isCount(of) || of === "twist") row.cells[at] = cell + d.whole(1, 6);
    else
      row.cells[at] = Number(
        (KINDS[row.kind].sizes.find((size) => `${size.of}.now` === of)?.change === "growth"
          ? cell * d.between(1.005, 1.2, 3)
          : cell * d.between(0.75, 0.995, 3)
        ).toFixed(4),
      );
    return of;
  });
  const again = ask(judge, worse);
  if (again.fault) return [["a worse reading", again.fault, 0, worse]];
  return log.rows.flatMap((_, i) => {
    if (touched[i] === null) return [];
    const better =
      inService(answers[i].decision) || inService(again[i].decision)
        ? rank(again[i].decision) > rank(answers[i].decision)
        : answers[i].decision === "REMOVE" && again[i].decision !== "REMOVE" && isSight(touched[i]);
    return better ? [["a worse reading", `${touched[i]}: ${answers[i].decision} became ${again[i].decision}`, i, worse]] : [];
  });
}

/** Kinds whose limits are shares, so that inches and millimetres must agree to the last digit. */
const BY_SHARE = [
  "hook",
  "shackle",
  "link",
  "block",
  "eyebolt",
  "eye nut",
  "hoist ring",
  "turnbuckle",
  "wedge socket",
  "load block",
  "plate clamp",
];
export function inchAndMillimetreAgree(judge, d) {
  const kind = d.pick(BY_SHARE);
  const { is } = cleanFacts(kind, "in", d);
  const worn = d.chance(0.5);
  for (const part of KINDS[kind].sizes) {
    // The cap of 1/4 in is 6.35 mm and not 6 mm: wide throats are left to the tests of that criterion.
    if (part.of === "throat") is["throat.asNew"] = Math.min(is["throat.asNew"], 3);
    const from = is[`${part.of}.asNew`];
    const share = worn ? part.limit.past * d.between(0.2, 1.6, 3) : 0;
    is[`${part.of}.now`] = Number((part.change === "growth" ? from * (1 + share) : from * (1 - share)).toFixed(3));
  }
  const log = (unit) => {
    const columns = [
      { of: "id", heading: "Id" },
      { of: "gear", heading: "Gear" },
      { of: "unit", heading: "Unit" },
      ...Object.keys(is).map((of) => ({
        of,
        heading: isSight(of)
          ? SIGHTS[of].heading
          : of === "twist"
            ? "Twist deg"
            : `${PARTS[of.split(".")[0]].register} ${of.endsWith("asNew") ? "as-new" : "now"}`,
      })),
    ];
    const cells = [
      "A-17",
      kind,
      unit,
      ...Object.entries(is).map(([of, fact]) =>
        isSight(of)
          ? SIGHTS[of].sense === "fault"
            ? "none"
            : "yes"
          : of === "twist" || unit === "in"
            ? fact
            : Number((fact * 25.4).toFixed(4)),
      ),
    ];
    return {
      columns,
      kinds: [kind],
      style: { unit },
      rows: [{ kind, is, cells, plain: cells, truth: { wanted: "free", family: "inch and mm", pins: [] } }],
    };
  };
  const inches = log("in"),
    millimetres = log("mm");
  const [one] = ask(judge, inches),
    [other] = ask(judge, millimetres);
  return {
    judged: 2,
    found:
      one.decision === other.decision
        ? []
        : [["inch and mm", `${kind}: ${one.decision} in inches, ${other.decision} in millimetres`, 0, inches]],
  };
}
export { ask };

/**
 * `node tools/same-answers.mjs OLD.js NEW.js [--rows 100000] [--seed 1]`: two builds of the worksheet functions asked the same over mixed
 * logs of every kind, tidy, rough and from the generator with planted truth: JUDGE over each log, VERDICT, REASON and JUDGEROW over
 * each row, under every rule set and house limits. Prints each difference of a sort once. Exit status: 0 no difference.
 */
import { readFileSync } from "node:fs";
import { parseArgs } from "node:util";
import { catalogue, chances, mixedLog } from "./mixed-logs.mjs";
import { drawer } from "./fuzz/draw.mjs";
import { plantedLog } from "./fuzz/run.mjs";

const { values: options, positionals } = parseArgs({
  allowPositionals: true,
  options: { rows: { type: "string", default: "100000" }, seed: { type: "string", default: "1" } },
});
class CellError extends Error {
  constructor(code, message = "") {
    super(message);
    this.code = code;
  }
}
function load(file) {
  const functions = new Map();
  const host = { associate: (id, run) => functions.set(id, run), Error: CellError, ErrorCode: {} };
  new Function("CustomFunctions", readFileSync(file, "utf8"))(host);
  return functions;
}
const [before, after] = positionals.map(load);
if (after === undefined) throw new Error("Name two builds: OLD.js NEW.js");

const HOUSE = [
  ["House limits", "", "", "", "", "", ""],
  ["Rules in force", "standard,practice", "", "", "", "", ""],
  ["Gear", "Check", "Comes out", "Limit", "Unit", "Source", "Maker's figure"],
  ["hook", "throat opening", "above", "3 %", "", "Yard rule 1", ""],
  ["hook", "twist", "from", "5", "degrees", "Yard rule 2", ""],
  ["shackle", "pin wear", "above", "1", "mm", "Yard rule 3", "yes"],
  ["link", "section wear", "from", "6 %", "", "Yard rule 4", ""],
  ["wire rope sling", "broken wires in a lay", "from", "6", "", "Yard rule 5", ""],
];
const BROKEN_HOUSE = [...HOUSE, ["block", "sheave wear", "from", "some", "", "Yard rule 6", ""]];
const BASES = [
  null,
  null,
  null,
  [["standard,practice"]],
  "law",
  "strict",
  "standard",
  "practice",
  "law,standard,practice",
  "alberta",
  "queensland",
  "germany",
  "ships",
  "iso,practice",
  "uk",
  "nonsense",
  "house",
  HOUSE,
  HOUSE,
  BROKEN_HOUSE,
];

const catalogued = await catalogue();
const chance = chances(Number(options.seed));
const d = drawer(Number(options.seed));
const most = Number(options.rows);
const decisions = new Map();
const kinds = new Map();
let compared = 0;
let logs = 0;
let different = 0;
const shown = new Map();
const asked = (functions, id, given) => {
  try {
    return functions.get(id)(...given);
  } catch (fault) {
    return `${fault.code ?? "fault"}: ${fault.message}`;
  }
};
function compare(id, given, show) {
  const [old, now] = [asked(before, id, given), asked(after, id, given)];
  const [was, is] = [JSON.stringify(old), JSON.stringify(now)];
  if (was === is) return old;
  different += 1;
  const sort = `${id} ${show(old, now)}`.slice(0, 60);
  if (!shown.has(sort)) shown.set(sort, { id, given: show(old, now), headings: given[0], rows: given[1], basis: given[2] });
  return old;
}
/** The first row that differs, for a look. */
const firstOf = (rows) => (old, now) => {
  if (!Array.isArray(old) || !Array.isArray(now)) return `${JSON.stringify(old)}\n  -> ${JSON.stringify(now)}`;
  const at = old.findIndex((line, index) => JSON.stringify(line) !== JSON.stringify(now[index]));
  return `row ${at}: ${JSON.stringify(old[at])}\n  -> ${JSON.stringify(now[at])}\n  ${JSON.stringify(rows[at])}`;
};
function nextLog() {
  const which = chance();
  if (which < 0.25) return mixedLog({ catalogued, seed: logs + 1, count: 140 });
  if (which < 0.6) return mixedLog({ catalogued, seed: logs + 1, count: 140, rough: true });
  if (which < 0.75)
    return mixedLog({ catalogued, seed: logs + 1, count: 60, rough: true, kinds: [catalogued.GEAR[logs % catalogued.GEAR.length].id] });
  const planted = plantedLog(d);
  return { headings: [planted.columns.map(({ heading }) => heading)], rows: planted.rows.map(({ cells }) => cells) };
}
while (compared < most) {
  const { headings, rows } = nextLog();
  const basis = BASES[Math.floor(chance() * BASES.length)];
  logs += 1;
  const judged = compare("JUDGE", [headings, rows, basis], firstOf(rows));
  if (Array.isArray(judged)) for (const [decision] of judged) decisions.set(decision, (decisions.get(decision) ?? 0) + 1);
  for (const row of rows) {
    compared += 1;
    compare("VERDICT", [headings, [row], basis], firstOf(rows));
    compare("REASON", [headings, [row], basis], firstOf(rows));
    const half = Math.floor(row.length / 2);
    const blocks = compared % 3 === 0 && headings.length === 1;
    const text = blocks
      ? compare(
          "JUDGEROW",
          [[headings[0].slice(0, half)], [row.slice(0, half)], basis, [headings[0].slice(half)], [row.slice(half)]],
          firstOf(rows),
        )
      : compare("JUDGEROW", [headings, [row], basis], firstOf(rows));
    const kind = String(text).split("\u007f")[6]?.trim();
    kinds.set(kind, (kinds.get(kind) ?? 0) + 1);
  }
}
console.log(`${compared} rows of ${logs} logs, ${[...kinds].filter(([kind]) => kind).length} kinds; ${JSON.stringify([...decisions])}`);
for (const { given, basis } of [...shown.values()].slice(0, 25)) console.log(`- ${given}\n  basis ${JSON.stringify(basis)}`);
console.log(`${different} differences`);
process.exitCode = different === 0 ? 0 : 1;

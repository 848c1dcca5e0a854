/**
 * `npm run bench`: what judging costs, as ratios within one run, medians of several. JUDGE over a hook log against the same words by
 * native formulas (LibreOffice Calc, where it is there) and against a hand-written loop; mixed logs; how the work grows; VERDICT
 * a second. Wall time says as much of other work on the machine as of ours, so processor time is taken, and the machine is named.
 * The built file runs as the script of a page does, beside the loop: in a context of its own each look at a global such as Array
 * would go through a hook of Node's, which no host has, and JUDGE would take about 1.4 times as long.
 * `--rows 1000000` sets the largest log; `--no-native` leaves the spreadsheet program out; `--built` takes dist/ as it stands.
 */
import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import os from "node:os";
import path from "node:path";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import { buildAddIn } from "./build.mjs";
import { catalogue, chances, mixedLog } from "./mixed-logs.mjs";

const root = fileURLToPath(new URL("..", import.meta.url));
const { values: options } = parseArgs({
  options: { rows: { type: "string", default: "1000000" }, "no-native": { type: "boolean" }, built: { type: "boolean" } },
});
if (!options.built) await buildAddIn();
const functions = new Map();
new Function("CustomFunctions", readFileSync(`${root}/dist/functions.js`, "utf8"))({
  associate: (id, run) => functions.set(id, run),
  Error,
  ErrorCode: {},
});
const judge = functions.get("JUDGE");
const verdict = functions.get("VERDICT");

const HEADINGS = [
  [
    "Id",
    "Gear",
    "Unit",
    "Throat as-new",
    "Throat now",
    "Section as-new",
    "Section now",
    "Twist deg",
    "Latch works",
    "Cracks",
    "Identification legible",
    "Inspected",
    "Place",
    "Remarks",
  ],
];
/** Hooks as clerks keep them: numbers and text mixed, one in twenty defective. */
function hooks(count, seed) {
  const chance = chances(seed);
  return Array.from({ length: count }, (_, at) => {
    const bad = chance() < 0.05;
    const throat = [2, 2.5, 1.75][Math.floor(chance() * 3)];
    const section = [1.875, 1.25, 1.5][at % 3];
    const opened = Math.round(throat * (1 + chance() * (bad ? 0.12 : 0.035)) * 1e4) / 1e4;
    const worn = Math.round(section * (1 - chance() * (bad ? 0.15 : 0.04)) * 1e4) / 1e4;
    return [
      `H-${seed}-${at}`,
      "hook",
      "in",
      throat,
      opened,
      at % 4 === 0 ? String(section) : section,
      worn,
      bad && chance() < 0.3 ? 4 : 0,
      bad && chance() < 0.2 ? "no" : "yes",
      bad && chance() < 0.2 ? "hairline at saddle" : "none",
      "yes",
      46000 + (at % 60),
      `Bay ${at % 9}`,
      "",
    ];
  });
}
/** The five columns of a hook as somebody would write them by hand for this one log. */
function byHand(rows) {
  return rows.map((row) => {
    const [, , , was, now, sectionNew, sectionNow, twist, latch, cracks] = row;
    const section = Number(sectionNew);
    const allowed = Math.min(was * 0.05, 0.25);
    const shares = [(now - was) / allowed, (section - sectionNow) / (section * 0.05)];
    const share = Math.max(...shares);
    const outOf = `throat opening above ${(was + allowed).toFixed(4)} in; saddle section at ${(section * 0.95).toFixed(4)} in or less; twist above 0 degrees`;
    const gone =
      cracks !== "none" ? `Cracks: "${cracks}"` : latch !== "yes" ? `Latch: "${latch}"` : twist > 0 ? `Twist ${twist} degrees` : "";
    const decision = gone !== "" || share >= 1 ? "REMOVE" : share >= 0.8 ? "WATCH" : "KEEP";
    const nearest =
      shares[0] >= shares[1]
        ? `Throat opening ${now} in, as new ${was} in, is inside the limit, ${Math.round(share * 100)} % of the allowance used: it comes out above ${(was + allowed).toFixed(4)} in (5 % of as-new, at most 1/4 in)`
        : `Saddle section ${sectionNow} in, as new ${section} in, is inside the limit, ${Math.round(share * 100)} % of the allowance used: it comes out at ${(section * 0.95).toFixed(4)} in or less (5 % of as-new)`;
    return [
      decision,
      gone === "" ? `${nearest} [Standard].` : `${gone} takes the item out of service [Standard].`,
      share,
      outOf,
      "Standard",
    ];
  });
}
const spent = () => {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
};
/** Median processor time in milliseconds; each run gets rows that no run had before. */
function median(times, make, run) {
  const taken = Array.from({ length: times }, (_, at) => {
    const rows = make(at + 1);
    const start = spent();
    run(rows);
    return spent() - start;
  }).sort((a, b) => a - b);
  return taken[Math.floor(taken.length / 2)];
}
const perRow = (ms, rows) => `${((ms / rows) * 1000).toFixed(2)} microseconds a row`;
console.log(
  `${os.cpus()[0]?.model ?? "unknown processor"}, ${os.cpus().length} cores, Node ${process.version}, load ${os.loadavg()[0].toFixed(1)}`,
);
judge(HEADINGS, hooks(20_000, 99), null);
byHand(hooks(20_000, 98));

const costs = new Map();
for (const count of [10_000, 100_000]) {
  const ours = median(
    5,
    (seed) => hooks(count, seed),
    (rows) => judge(HEADINGS, rows, null),
  );
  const hand = median(5, (seed) => hooks(count, seed + 20), byHand);
  costs.set(count, ours);
  console.log(
    `JUDGE ${count} hooks: ${perRow(ours, count)}; ${(ours / hand).toFixed(1)} times a hand-written loop (${perRow(hand, count)})`,
  );
}
const most = Number(options.rows);
if (most > 100_000) {
  const start = spent();
  judge(HEADINGS, hooks(most, 7), null);
  const large = spent() - start;
  const exponent = Math.log(large / costs.get(10_000)) / Math.log(most / 10_000);
  console.log(
    `JUDGE ${most} hooks: ${perRow(large, most)}, exponent ${exponent.toFixed(3)}, ${(process.memoryUsage().rss / 2 ** 20).toFixed(0)} MB held at the end`,
  );
}
const aSecond = (ms, calls) => `${Math.round(calls / (ms / 1000)).toLocaleString("en")} calls a second`;
const each = (rows) => rows.forEach((row) => verdict(HEADINGS, [row], null));
const distinct = median(5, (seed) => hooks(20_000, seed + 40), each);
const again = hooks(4_000, 60);
each(again);
const repeated = median(
  5,
  () => again,
  (rows) => {
    for (let round = 0; round < 5; round += 1) each(rows);
  },
);
console.log(`VERDICT: ${aSecond(distinct, 20_000)} over rows that all differ, ${aSecond(repeated, 20_000)} over 4,000 rows asked again`);

/** Mixed logs of every kind, 10,000 rows each, as one clerk keeps them; then with rough cells, doubled columns and blanks of all sorts. */
const catalogued = await catalogue();
for (const rough of [false, true]) {
  const log = (seed) => mixedLog({ catalogued, seed, count: 10_000, rough });
  const { headings, rows } = log(99);
  judge(headings, rows, null);
  const taken = median(5, log, (mixed) => judge(mixed.headings, mixed.rows, null));
  console.log(
    `mixed ${rough ? "rough" : "tidy"} logs of ${catalogued.GEAR.length} kinds, about ${headings[0].length} columns: ${perRow(taken, 10_000)}`,
  );
}

/** The same five columns by the formulas of a spreadsheet program, for one row. */
function formulas(line) {
  const [was, now, section, worn, twist, latch, cracks] = ["D", "E", "F", "G", "H", "I", "J"].map((letter) => `[.${letter}${line}]`);
  const allowed = `MIN(${was}*0.05;0.25)`;
  const [opened, lost] = [`((${now}-${was})/${allowed})`, `((VALUE(${section})-${worn})/(VALUE(${section})*0.05))`];
  const fault = `IF(${cracks}<>"none";"Cracks: "&${cracks};IF(${latch}<>"yes";"Latch: "&${latch};IF(${twist}>0;"Twist "&${twist}&" degrees";"")))`;
  const share = `MAX(${opened};${lost})`;
  const near = `IF(${opened}>=${lost};"Throat opening "&${now}&" in, as new "&${was}&" in, is inside the limit, "&ROUND(100*${share};0)&" % of the allowance used: it comes out above "&ROUND(${was}+${allowed};4)&" in (5 % of as-new, at most 1/4 in)";"Saddle section "&${worn}&" in, as new "&${section}&" in, is inside the limit, "&ROUND(100*${share};0)&" % of the allowance used: it comes out at "&ROUND(VALUE(${section})*0.95;4)&" in or less (5 % of as-new)")`;
  return [
    `IF(OR(${fault}<>"";${share}>=1);"REMOVE";IF(${share}>=0.8;"WATCH";"KEEP"))`,
    `IF(${fault}<>"";${fault}&" takes the item out of service [Standard].";${near}&" [Standard].")`,
    share,
    `"throat opening above "&ROUND(${was}+${allowed};4)&" in; saddle section at "&ROUND(VALUE(${section})*0.95;4)&" in or less; twist above 0 degrees"`,
    `IF(${fault}<>"";"Standard";"Standard")`,
  ];
}
const escaped = (text) => String(text).replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;").replaceAll('"', "&quot;");
const cellOf = (cell) =>
  typeof cell === "number"
    ? `<table:table-cell office:value-type="float" office:value="${cell}"/>`
    : `<table:table-cell office:value-type="string"><text:p>${escaped(cell)}</text:p></table:table-cell>`;
function sheetOf(rows, withFormulas) {
  const lines = rows.map((row, at) => {
    const results = withFormulas ? formulas(at + 1).map((formula) => `<table:table-cell table:formula="of:=${escaped(formula)}"/>`) : [];
    return `<table:table-row>${row.map(cellOf).join("")}${results.join("")}</table:table-row>`;
  });
  return `<?xml version="1.0" encoding="UTF-8"?><office:document xmlns:office="urn:oasis:names:tc:opendocument:xmlns:office:1.0" xmlns:table="urn:oasis:names:tc:opendocument:xmlns:table:1.0" xmlns:text="urn:oasis:names:tc:opendocument:xmlns:text:1.0" xmlns:of="urn:oasis:names:tc:opendocument:xmlns:of:1.2" office:version="1.2" office:mimetype="application/vnd.oasis.opendocument.spreadsheet"><office:body><office:spreadsheet><table:table table:name="Log">${lines.join("")}</table:table></office:spreadsheet></office:body></office:document>`;
}
/** Processor time in milliseconds that the spreadsheet program needs to load, work out and write a sheet; null where it is not there. */
function convert(folder, name, text) {
  writeFileSync(path.join(folder, `${name}.fods`), text);
  const script = `import resource,subprocess,sys
subprocess.run(["soffice","-env:UserInstallation=file://${folder}/profile","--headless","--convert-to","csv","--outdir","${folder}","${folder}/${name}.fods"],check=True,stdout=subprocess.DEVNULL,stderr=subprocess.DEVNULL)
used=resource.getrusage(resource.RUSAGE_CHILDREN)
print((used.ru_utime+used.ru_stime)*1000)`;
  const run = spawnSync("python3", ["-c", script], { encoding: "utf8" });
  return run.status === 0 ? Number(run.stdout) : null;
}
function native(count) {
  const folder = mkdtempSync(path.join(os.tmpdir(), "bench-"));
  try {
    const rows = hooks(count, 3);
    convert(folder, "warm", sheetOf(rows.slice(0, 10), true));
    const [plain, worked] = [false, true].map((withFormulas) =>
      convert(folder, withFormulas ? "worked" : "plain", sheetOf(rows, withFormulas)),
    );
    if (plain === null || worked === null) return null;
    const lines = readFileSync(path.join(folder, "worked.csv"), "utf8").trim().split("\n");
    if (lines.length !== count || !/(KEEP|WATCH|REMOVE)/.test(lines[0]))
      throw new Error("The spreadsheet program did not work the formulas out.");
    return worked - plain;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
if (!options["no-native"])
  for (const [count, ours] of costs) {
    const taken = native(count);
    console.log(
      taken === null
        ? "LibreOffice Calc is not there (Debian: apt-get install libreoffice-calc), so nothing is compared with native formulas."
        : `native formulas over ${count} hooks: ${perRow(taken, count)}; JUDGE is ${(taken / ours).toFixed(1)} times as fast`,
    );
  }

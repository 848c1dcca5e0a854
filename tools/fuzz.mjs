/**
 * `npm run fuzz -- --seed N --minutes M [--judgements N] [--file dist/functions.js] [--keep] [--all]`: logs with planted truth,
 * judged by the built worksheet functions. Prints the figures, then each distinct failure made as small as it goes, as JSON; all of
 * them stand in build/fuzz/failures.json. `--keep` adds the false KEEPs to tests/fixtures/planted/found.json, where a test holds them.
 * Exit status: 0 all held, 1 something did not, 2 bad arguments.
 */
import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import { loadJudge } from "./fuzz/judge.mjs";
import { failures, summary, verdictOf } from "./fuzz/report.mjs";
import { run } from "./fuzz/run.mjs";

const root = fileURLToPath(new URL("..", import.meta.url));
function bad(sentence) {
  console.error(sentence);
  process.exit(2);
}
function options() {
  try {
    return parseArgs({
      options: {
        seed: { type: "string", default: "1" },
        minutes: { type: "string" },
        judgements: { type: "string" },
        file: { type: "string" },
        keep: { type: "boolean", default: false },
        all: { type: "boolean", default: false },
      },
    }).values;
  } catch (fault) {
    return bad(fault.message);
  }
}
const { seed, minutes, judgements, file, keep, all } = options();
const figure = (name, text, least) => {
  const value = Number(text);
  if (!Number.isFinite(value) || value < least) bad(`--${name} takes a figure of ${least} or more, not "${text}".`);
  return value;
};
const whole = Math.floor(figure("seed", seed, 0));
const most = judgements === undefined ? Infinity : figure("judgements", judgements, 1);
const time = minutes === undefined ? (judgements === undefined ? 1 : Infinity) : figure("minutes", minutes, 0.01);

const built = file === undefined ? path.join(root, "dist/functions.js") : path.resolve(file);
if (!existsSync(built)) {
  if (file !== undefined) bad(`${file} is not there.`);
  const { buildAddIn } = await import("./build.mjs");
  await buildAddIn();
}
const report = run({
  judge: loadJudge(built),
  seed: whole,
  judgements: most,
  until: performance.now() + time * 60_000,
  every: process.stderr.isTTY ? ({ judged }) => process.stderr.write(`\r${judged.toLocaleString("en")} judgements`) : undefined,
});
if (process.stderr.isTTY) process.stderr.write("\r");
const found = failures(report);
console.log(summary(report, all ? 60 : 3));
for (const failure of all ? found : found.filter(({ fault }) => !fault.startsWith("alarm")).slice(0, 40))
  console.log(JSON.stringify(failure));
mkdirSync(path.join(root, "build/fuzz"), { recursive: true });
writeFileSync(path.join(root, "build/fuzz/failures.json"), JSON.stringify(found, null, 1));

if (keep) {
  const at = path.join(root, "tests/fixtures/planted/found.json");
  const kept = JSON.parse(readFileSync(at, "utf8"));
  const known = new Set(kept.map(({ headers, row }) => JSON.stringify([headers, row])));
  const fresh = found
    .filter(({ fault, headers, row }) => fault.startsWith("false ") && !known.has(JSON.stringify([headers, row])))
    .map(({ family, headers, row, wanted }) => ({ family, headers, row, wanted }));
  writeFileSync(at, `${JSON.stringify([...kept, ...fresh], null, 2)}\n`);
  console.log(`${fresh.length} rows added to tests/fixtures/planted/found.json; mend them, or name them in not-yet-met.ts.`);
}
const { falseKeeps, others, alarmsOver } = verdictOf(report);
process.exitCode = falseKeeps + others > 0 || alarmsOver.length > 0 ? 1 : 0;

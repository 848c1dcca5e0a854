/**
 * `npm run bench`: ratios, not timed tests. How the engine's work grows with rows, what a row costs against reading its
 * cells alone, and what looking headings up once saves.
 */
import { buildAddIn } from "./build.mjs";
import { readFileSync } from "node:fs";
import vm from "node:vm";
import { fileURLToPath } from "node:url";

const root = fileURLToPath(new URL("..", import.meta.url));
await buildAddIn();
const functions = new Map();
vm.runInNewContext(readFileSync(`${root}/dist/functions.js`, "utf8"), {
  CustomFunctions: { associate: (id, fn) => functions.set(id, fn), Error, ErrorCode: {} },
});

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
    "Remarks",
  ],
];
const row = (i) => [`H-${i}`, "hook", "in", "2", `2.0${i % 10}`, "1 7/8", "1.86", 0, "yes", "none", "yes", ""];
const rows = (n) => Array.from({ length: n }, (_, i) => row(i));

function median(times, run) {
  const taken = Array.from({ length: times }, () => {
    const start = performance.now();
    run();
    return performance.now() - start;
  }).sort((a, b) => a - b);
  return taken[Math.floor(taken.length / 2)];
}

const judge = functions.get("JUDGE");
const verdict = functions.get("VERDICT");
const length = functions.get("LENGTH");
judge(HEADINGS, rows(500), null);
const small = rows(500),
  large = rows(5000);
const j500 = median(9, () => judge(HEADINGS, small, null));
const j5000 = median(5, () => judge(HEADINGS, large, null));
const v5000 = median(5, () => large.forEach((r) => verdict(HEADINGS, [r], null)));
const cells = median(5, () => large.forEach((r) => [3, 4, 5, 6].forEach((c) => length(r[c], "in", null))));
console.log(`JUDGE 5,000 rows: ${j5000.toFixed(0)} ms (${(j5000 / 5).toFixed(0)} microseconds a row)`);
console.log(`ten times the rows cost ${(j5000 / j500).toFixed(1)} times as much (10 is linear)`);
console.log(`5,000 VERDICT cells cost ${(v5000 / j5000).toFixed(2)} times one JUDGE over the same rows`);
console.log(`judging a row costs ${(v5000 / cells).toFixed(1)} times reading its four lengths alone`);

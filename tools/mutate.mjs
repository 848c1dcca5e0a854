/**
 * `npm run mutate [-- PART-OF-FILE-NAME]`: changes one figure, comparison word or decision of the limits at a time and
 * runs the tests of the engine; a change that no test notices is a hole in the tests. Works on a copy, never in place.
 */
import { spawnSync } from "node:child_process";
import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { fileURLToPath } from "node:url";
import { ensureInstalled, fail } from "./install.mjs";

const root = fileURLToPath(new URL("..", import.meta.url));
const only = process.argv[2] ?? "";

/** What is changed, and into what. */
const CHANGES = [
  {
    find: /share: "([\d./]+)"/g,
    into: (all, figure) =>
      all.replace(figure, figure.includes("/") ? "1/2" : figure === "0" ? "0.01" : String(Number((Number(figure) + 0.01).toFixed(4)))),
  },
  { find: /area: "([\d.]+)"/g, into: (all, figure) => all.replace(figure, String(Number((Number(figure) + 0.01).toFixed(4)))) },
  { find: /length: "([\d/ ]+)"/g, into: (all, figure) => all.replace(figure, "7/8") },
  { find: /degrees: "(\d+)"/g, into: (all, figure) => all.replace(figure, String(Number(figure) + 1)) },
  { find: /cap: \{ in: "1\/4"/g, into: (all) => all.replace("1/4", "1/2") },
  { find: /mm: "6" \}/g, into: (all) => all.replace("6", "7") },
  { find: /word: "above"/g, into: (all) => all.replace("above", "from") },
  { find: /word: "from"/g, into: (all) => all.replace("from", "above") },
  { find: /"(above|from)", (\d+), "/g, into: (all, _, figure) => all.replace(figure, String(Number(figure) + 1)) },
  { find: /times: "(\d+)"/g, into: (all, figure) => all.replace(figure, String(Number(figure) + 1)) },
  {
    find: /least: "([\d/. ]+)"/g,
    into: (all, figure) =>
      all.replace(figure, `${figure.includes("/") ? figure.replace(/\/(\d+)$/, "/$17") : figure === "1" ? "1 1/64" : `${figure}1`}`),
  },
  { find: /beyond: "(REMOVE|EXAMINE|WATCH)"/g, into: (all, word) => all.replace(word, word === "WATCH" ? "EXAMINE" : "WATCH") },
  { find: /clips: (\d+)/g, into: (all, figure) => all.replace(figure, String(Number(figure) + 1)) },
];

const FILES = ["gear", "tables"]
  .flatMap((folder) => readdirSync(path.join(root, "src/engine", folder)).map((file) => `src/engine/${folder}/${file}`))
  .filter((file) => file.endsWith(".ts") && !/\/(index|kind|look-up|columns-of)\.ts$/.test(file) && file.includes(only));

try {
  ensureInstalled();
} catch (fault) {
  fail(fault);
}
const copy = mkdtempSync(path.join(tmpdir(), "gear-verdicts-mutants-"));
for (const part of ["src", "tests", "tools", "package.json", "tsconfig.json"])
  cpSync(path.join(root, part), path.join(copy, part), { recursive: true });
symlinkSync(path.join(root, "node_modules"), path.join(copy, "node_modules"), "dir");

const runTests = () =>
  spawnSync(
    process.execPath,
    [
      path.join(root, "node_modules/vitest/vitest.mjs"),
      "run",
      "--config",
      "tools/vitest.config.ts",
      "--project",
      "node",
      "--bail",
      "1",
      "tests/engine/gear",
      "tests/functions/functions.test.ts",
      "tests/engine/limits.test.ts",
      "tests/engine/tables",
      "tests/engine/judge-lift",
    ],
    { cwd: copy, stdio: "ignore" },
  ).status === 0;

if (!runTests()) fail(new Error("The tests do not pass as they stand; mend them first."));
let killed = 0;
const survived = [];
for (const file of FILES) {
  const source = readFileSync(path.join(root, file), "utf8");
  for (const { find, into } of CHANGES)
    for (const match of source.matchAll(find)) {
      const changed = source.slice(0, match.index) + into(...match) + source.slice(match.index + match[0].length);
      if (changed === source) continue;
      writeFileSync(path.join(copy, file), changed);
      const line = source.slice(0, match.index).split("\n").length;
      if (runTests()) survived.push(`${file}:${line} ${match[0]}`);
      else killed += 1;
    }
  writeFileSync(path.join(copy, file), source);
  console.log(`${file}: ${killed} noticed, ${survived.length} not, so far`);
}
rmSync(copy, { recursive: true, force: true });
for (const line of survived) console.log(`not noticed: ${line}`);
console.log(`${killed} of ${killed + survived.length} changes were noticed.`);
process.exit(survived.length === 0 ? 0 : 1);

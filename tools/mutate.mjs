/**
 * `npm run mutate [-- PART-OF-FILE-NAME]`: changes one figure, comparison word or decision of the records at a time and runs the tests of that record, then,
 * where they notice nothing, all tests of records. A change that nobody notices is a hole in the tests. Works on a copy, never in place.
 * With `--sample N --seed S` it takes N changes at random and says for each which tests fail, and how many.
 * The logic has a mutation library of its own: `npm run mutate:logic`.
 */
import { cpSync, existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import ts from "typescript";
import { createVitest } from "vitest/node";
import { ensureInstalled, fail } from "./install.mjs";

const root = fileURLToPath(new URL("..", import.meta.url));
const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: { sample: { type: "string" }, seed: { type: "string", default: "1" } },
});
const only = positionals[0] ?? "";
const KINDS = "tests/engine/gear";

/** Files of records and tables, each with the tests that know it best. A kind has the test of its own name. */
const SHARED = {
  "src/engine/gear/shared/held-rope.ts": ["clips", "wedge-socket"],
  "src/engine/gear/shared/hoists.ts": ["chain-hoist", "lever-hoist"],
  "src/engine/gear/shared/jurisdictions.ts": ["hook", "chain-sling", "shackle"],
  "src/engine/gear/shared/load-chains.ts": ["load-chain"],
  "src/engine/gear/shared/records.ts": ["hook", "shackle", "block", "swivel", "chain-sling", "wire-rope-sling"],
  "src/engine/gear/shared/ropes.ts": ["running-rope", "standing-rope", "rotation-resistant-rope"],
  "src/engine/gear/shared/sling-hooks.ts": ["chain-sling", "wire-rope-sling"],
};
const OTHERS = {
  "src/engine/tables/chain.ts": [`${KINDS}/chain-sling.test.ts`, "tests/engine/published-rows.test.ts"],
  "src/engine/tables/clips.ts": ["tests/engine/tables.test.ts"],
  "src/engine/tables/rope.ts": ["tests/engine/tables.test.ts", `${KINDS}/running-rope.test.ts`],
  "src/engine/tables/shackle.ts": ["tests/engine/tables.test.ts", `${KINDS}/shackle.test.ts`],
  "src/engine/due/interval-criteria.ts": ["tests/engine/intervals.test.ts"],
  "src/engine/lift/tables.ts": ["tests/engine/tables.test.ts"],
  "src/engine/lift/service-temperature.ts": ["tests/engine/judge-lift.test.ts"],
};
const NO_RECORDS = /\/(index|kind|columns-of)\.ts$/;
const WIDER = [
  KINDS,
  "tests/engine/tables.test.ts",
  "tests/engine/judge-lift.test.ts",
  "tests/engine/published-rows.test.ts",
  "tests/functions/functions.test.ts",
];

function testsOf(file) {
  if (file in SHARED) return SHARED[file].map((kind) => `${KINDS}/${kind}.test.ts`);
  return OTHERS[file] ?? [`${KINDS}/${path.basename(file, ".ts")}.test.ts`];
}
const FILES = [
  ...readdirSync(path.join(root, "src/engine/gear"))
    .filter((name) => name.endsWith(".ts"))
    .map((name) => `src/engine/gear/${name}`),
  ...Object.keys(SHARED),
  ...Object.keys(OTHERS),
].filter((file) => !NO_RECORDS.test(file) && file.includes(only));

const DECISIONS = { REMOVE: "WATCH", EXAMINE: "KEEP", WATCH: "KEEP", DRESS: "REMOVE", KEEP: "DRESS" };
const FIGURE = /^(<?)((?:\d+ )?)(\d+)(\/\d+|\.\d+)?$/;
/** A figure one step further: 0.05 is 0.06, 1/3 is 2/3, 13/64 is 14/64, 6 is 7. */
function nextFigure(text) {
  const [, before = "", whole = "", top = "", rest = ""] = FIGURE.exec(text) ?? [];
  if (!rest.startsWith(".")) return `${before}${whole}${String(Number(top) + 1)}${rest}`;
  const digits = rest.length - 1;
  return `${before}${(Number(`${top}${rest}`) + 10 ** -digits).toFixed(digits)}`;
}
/** What a literal becomes; null where it is no figure, word or decision. */
function changed(node) {
  const key = ts.isPropertyAssignment(node.parent) && node.parent.initializer === node ? node.parent.name.getText() : "";
  if (ts.isNumericLiteral(node)) return String(Number(node.text) + 1);
  if (key === "confirmed") return node.kind === ts.SyntaxKind.TrueKeyword ? "false" : "true";
  if (!ts.isStringLiteral(node) || ts.isLiteralTypeNode(node.parent) || ts.isBinaryExpression(node.parent)) return null;
  // Names of rows and categories, and the sizes under which they are looked up, are no limits of their own.
  if (key === "comesOut") return JSON.stringify({ above: "below", below: "above", larger: "smaller", smaller: "larger" }[node.text]);
  if (node.text === "above" || node.text === "from") return JSON.stringify(node.text === "above" ? "from" : "above");
  if (node.text in DECISIONS) return JSON.stringify(DECISIONS[node.text]);
  return FIGURE.test(node.text) ? JSON.stringify(nextFigure(node.text)) : null;
}
/** Every change that a file allows. */
function changesOf(file) {
  const text = readFileSync(path.join(root, file), "utf8");
  const source = ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true);
  const found = [];
  const visit = (node) => {
    if (ts.isImportDeclaration(node) || ts.isTypeNode(node)) return;
    const into =
      ts.isLiteralExpression(node) || node.kind === ts.SyntaxKind.TrueKeyword || node.kind === ts.SyntaxKind.FalseKeyword
        ? changed(node)
        : null;
    if (into !== null) {
      const start = node.getStart(source);
      const line = source.getLineAndCharacterOfPosition(start).line;
      const words = text.split("\n")[line].trim();
      found.push({
        file,
        text: text.slice(0, start) + into + text.slice(node.getEnd()),
        what: `${file}:${String(line + 1)} ${node.getText(source)} into ${into}, in ${words.length > 90 ? `${words.slice(0, 90)} ...` : words}`,
      });
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

try {
  ensureInstalled();
} catch (fault) {
  fail(fault);
}
const copy = mkdtempSync(path.join(tmpdir(), "gear-verdicts-mutants-"));
for (const part of ["src", "tests", "tools", "package.json", "tsconfig.json"])
  cpSync(path.join(root, part), path.join(copy, part), { recursive: true });
symlinkSync(path.join(root, "node_modules"), path.join(copy, "node_modules"), "dir");
const sampling = values.sample !== undefined;
const vitest = await createVitest("test", {
  root: copy,
  config: path.join(copy, "tools/vitest.config.ts"),
  project: ["node"],
  watch: false,
  reporters: [{}],
  bail: 0,
  maxWorkers: 1,
});
/** Runs some tests; the names of those that failed. */
async function failed(names) {
  const specs = (await Promise.all(names.map((name) => vitest.globTestSpecifications([name])))).flat();
  if (specs.length === 0) throw new Error(`There is no test ${names.join(", ")}`);
  const { testModules, unhandledErrors } = await vitest.runTestSpecifications(specs);
  const tests = testModules.flatMap((module) => [
    ...[...module.children.allTests("failed")].map((test) => ({
      name: `${path.basename(module.moduleId)}: ${test.fullName}`,
      says: test.result().errors?.[0]?.message ?? "",
    })),
    ...module.errors().map((error) => ({ name: `${path.basename(module.moduleId)} does not load`, says: error.message })),
  ]);
  return tests.length === 0 && unhandledErrors.length > 0 ? [{ name: "an error outside tests", says: String(unhandledErrors[0]) }] : tests;
}
/** Puts a changed file into the copy, and the file as it is back again afterwards. */
async function withChange({ file, text }, run) {
  const place = path.join(copy, file);
  const put = (content) => {
    writeFileSync(place, content);
    vitest.invalidateFile(place);
  };
  put(text);
  try {
    return await run();
  } finally {
    put(readFileSync(path.join(root, file), "utf8"));
  }
}
const finish = async (status) => {
  await vitest.close();
  rmSync(copy, { recursive: true, force: true });
  process.exit(status);
};

const started = Date.now();
const minutes = () => ((Date.now() - started) / 60000).toFixed(1);
const all = FILES.map((file) => ({ file, tests: testsOf(file), changes: changesOf(file) }));
for (const { tests } of all)
  for (const test of tests)
    if (!existsSync(path.join(root, test))) fail(new Error(`${test} is gone; name the tests anew in tools/mutate.mjs.`));
const sound = await failed([...new Set(all.flatMap(({ tests }) => tests))]);
if (sound.length > 0) {
  console.log(`The tests do not pass as they stand; mend them first: ${sound.map(({ name }) => name).join("; ")}`);
  await finish(1);
}

if (sampling) {
  let seed = Number(values.seed);
  const next = () => (seed = (seed * 48271) % 2147483647) / 2147483647;
  const pool = all.flatMap(({ changes }) => changes);
  for (let taken = 0; taken < Number(values.sample) && pool.length > 0; taken += 1) {
    const [change] = pool.splice(Math.floor(next() * pool.length), 1);
    const tests = await withChange(change, () => failed([...new Set([...testsOf(change.file), ...WIDER])]));
    console.log(`\n${change.what}: ${String(tests.length)} tests fail`);
    for (const { name, says } of tests.slice(0, 5)) console.log(`  ${name}\n    ${says.split("\n")[0]}`);
  }
  await finish(0);
}
let noticed = 0;
const survived = [];
for (const { file, tests, changes } of all) {
  let here = 0;
  for (const change of changes) {
    const found = await withChange(change, async () => {
      const own = await failed(tests);
      return own.length > 0 ? own : await failed(WIDER);
    });
    if (found.length > 0) here += 1;
    else survived.push(change.what);
  }
  noticed += here;
  if (changes.length > 0) console.log(`${file}: ${String(here)} of ${String(changes.length)} noticed (${minutes()} minutes)`);
}
const total = noticed + survived.length;
for (const what of survived) console.log(`not noticed: ${what}`);
console.log(
  `${String(noticed)} of ${String(total)} changes were noticed, ${total === 0 ? "0" : ((100 * noticed) / total).toFixed(1)} %, in ${minutes()} minutes.`,
);
await finish(survived.length === 0 ? 0 : 1);

/**
 * `npm test` on a fresh clone: installs what is missing, finds or installs a browser, builds, checks types and lint,
 * runs every test. Arguments are passed on to the test runner and then only the tests run.
 */
import { spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";
import { ensureInstalled, fail } from "./install.mjs";

const root = fileURLToPath(new URL("..", import.meta.url));

function run(name, args) {
  const { status } = spawnSync(process.execPath, [`${root}/node_modules/${name}`, ...args], {
    cwd: root,
    stdio: ["ignore", "inherit", "inherit"],
    env: process.env,
  });
  if (status !== 0) process.exit(status ?? 1);
}

try {
  ensureInstalled();
  const { findBrowser } = await import("./browser.mjs");
  process.env.GEAR_BROWSER = await findBrowser({ install: true });
  const { buildAll } = await import("./build.mjs");
  console.log("Building.");
  await buildAll();
} catch (fault) {
  fail(fault);
}
console.log("Checking types.");
run("typescript/bin/tsc", ["--noEmit"]);
run("typescript/bin/tsc", ["--noEmit", "-p", "src/engine"]);
console.log("Linting.");
run("prettier/bin/prettier.cjs", ["--log-level", "warn", "--check", "."]);
run("eslint/bin/eslint.js", ["-c", "tools/eslint.config.mjs", "src", "tests"]);
run("vitest/vitest.mjs", ["run", "--config", "tools/vitest.config.ts", ...process.argv.slice(2)]);

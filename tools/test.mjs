/**
 * `npm test` on a fresh clone: installs what is missing, finds or installs a browser, builds, checks types and lint,
 * runs every test. Arguments are passed on to the test runner and then only the tests run.
 */
import { spawn, spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";
import { ensureInstalled, fail } from "./install.mjs";

const root = fileURLToPath(new URL("..", import.meta.url));

/** A tool of the installed packages; what it prints comes when it has ended, so that two at a time stay apart. */
function check(title, name, args) {
  return new Promise((resolve) => {
    const tool = spawn(process.execPath, [`${root}/node_modules/${name}`, ...args], { cwd: root, stdio: ["ignore", "pipe", "pipe"] });
    const printed = [];
    tool.stdout.on("data", (part) => printed.push(part));
    tool.stderr.on("data", (part) => printed.push(part));
    tool.on("close", (status) => {
      console.log(`${title}: ${status === 0 ? "in order" : "not in order"}.`);
      process.stdout.write(Buffer.concat(printed));
      resolve(status === 0);
    });
  });
}

async function typesAndFormat() {
  const types = await check("Types", "typescript/bin/tsc", ["--noEmit"]);
  const engine = await check("Types of the engine, without a browser", "typescript/bin/tsc", ["--noEmit", "-p", "src/engine"]);
  const format = await check("Format", "prettier/bin/prettier.cjs", ["--log-level", "warn", "--check", "."]);
  return types && engine && format;
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
console.log("Checking types, format and lint.");
const checked = await Promise.all([
  typesAndFormat(),
  check("Lint", "eslint/bin/eslint.js", ["-c", "tools/eslint.config.mjs", "src", "tests"]),
]);
if (checked.includes(false)) process.exit(1);
const { status } = spawnSync(
  process.execPath,
  [`${root}/node_modules/vitest/vitest.mjs`, "run", "--config", "tools/vitest.config.ts", ...process.argv.slice(2)],
  { cwd: root, stdio: ["ignore", "inherit", "inherit"], env: process.env },
);
process.exit(status ?? 1);

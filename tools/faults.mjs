/**
 * `npm run faults`: every request of build, rebuild and conversion of the register fails in turn, with each documented error
 * code, refused and with its answer lost, and before each action; prints how many, and what came of them.
 */
import { spawnSync } from "node:child_process";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

const root = fileURLToPath(new URL("..", import.meta.url));
const vitest = join(dirname(createRequire(import.meta.url).resolve("vitest/package.json")), "vitest.mjs");
const run = spawnSync(
  process.execPath,
  [vitest, "run", "--config", "tools/vitest.config.ts", "--project", "node", "tests/excel/faults.test.ts", "--disable-console-intercept"],
  { cwd: root, stdio: "inherit", env: { ...process.env, GEAR_FAULTS: "all" } },
);
process.exitCode = run.status ?? 1;

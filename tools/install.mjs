/** Installs the packages of package-lock.json when node_modules is not in step with it. Plain Node, no packages. */
import { spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";

const root = fileURLToPath(new URL("..", import.meta.url));
const mark = `${root}/node_modules/.gear-verdicts-lock`;

export function checkNode() {
  const [major = 0, minor = 0] = process.versions.node.split(".").map(Number);
  if (major < 20 || (major === 20 && minor < 19) || (major === 22 && minor < 13) || major === 21 || major === 23)
    throw new Error(`Node ${process.versions.node} is too old for this project; install Node 20.19, 22.13, or 24 and newer.`);
}

export function ensureInstalled() {
  checkNode();
  const lock = createHash("sha256")
    .update(readFileSync(`${root}/package-lock.json`))
    .digest("hex");
  if (existsSync(mark) && readFileSync(mark, "utf8") === lock) return;
  console.log("Installing packages (once; about a minute or two).");
  const npm = process.platform === "win32" ? "npm.cmd" : "npm";
  const { status, error } = spawnSync(npm, ["ci", "--no-audit", "--no-fund", "--loglevel=error"], {
    cwd: root,
    stdio: ["ignore", "inherit", "inherit"],
    shell: process.platform === "win32",
  });
  if (status !== 0) throw new Error(`npm ci did not finish${error ? ` (${error.message})` : ""}; see its lines above.`);
  writeFileSync(mark, lock);
}

/** Ends the process with one sentence instead of a stack. */
export function fail(fault) {
  console.error(fault instanceof Error ? fault.message : String(fault));
  process.exit(1);
}

/** Installs the packages of package-lock.json when node_modules is not in step with it. Plain Node, no packages. */
import { spawnSync } from "node:child_process";
import { existsSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";

const root = fileURLToPath(new URL("..", import.meta.url));

export function checkNode() {
  const [major = 0, minor = 0] = process.versions.node.split(".").map(Number);
  if (major < 20 || (major === 20 && minor < 19) || (major === 22 && minor < 13) || major === 21 || major === 23)
    throw new Error(`Node ${process.versions.node} is too old for this project; install Node 20.19, 22.13, or 24 and newer.`);
}

export function ensureInstalled() {
  checkNode();
  if (isInstalled()) return;
  console.log("Installing packages (once; about a minute or two).");
  const npm = process.platform === "win32" ? "npm.cmd" : "npm";
  // The tools are development packages, which npm leaves out where NODE_ENV says production.
  const { status, error } = spawnSync(npm, ["ci", "--include=dev", "--no-audit", "--no-fund", "--loglevel=error"], {
    cwd: root,
    stdio: ["ignore", "inherit", "inherit"],
    shell: process.platform === "win32",
  });
  if (status !== 0) throw new Error(`npm ci did not finish${error ? ` (${error.message})` : ""}; see its lines above.`);
}

/** True when what npm notes in node_modules holds every package of the lock in its version, whoever installed it. */
export function isInstalled(folder = root) {
  const note = `${folder}/node_modules/.package-lock.json`;
  if (!existsSync(note)) return false;
  const wanted = JSON.parse(readFileSync(`${folder}/package-lock.json`, "utf8")).packages;
  const held = JSON.parse(readFileSync(note, "utf8")).packages;
  return Object.entries(wanted).every(
    ([name, { version, optional, devOptional }]) => name === "" || optional || devOptional || held[name]?.version === version,
  );
}

/** Ends the process with one sentence instead of a stack. */
export function fail(fault) {
  console.error(fault instanceof Error ? fault.message : String(fault));
  process.exit(1);
}

/** `npm run judge -- IN.xlsx`: judges a workbook on the command line. Builds first when something changed. */
import { existsSync, readdirSync, statSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { ensureInstalled, fail } from "./install.mjs";

const root = fileURLToPath(new URL("..", import.meta.url));
const built = [`${root}/dist/functions.js`, `${root}/build/node/judge.mjs`];

const newest = (folder) =>
  Math.max(
    ...readdirSync(folder, { recursive: true, withFileTypes: true })
      .filter((e) => e.isFile())
      .map((e) => statSync(`${e.parentPath ?? e.path}/${e.name}`).mtimeMs),
  );

// npm runs a script in the project's folder and says where it was called; paths count from there.
const folder = process.env.npm_lifecycle_event === "judge" && process.env.INIT_CWD ? process.env.INIT_CWD : process.cwd();

try {
  // The build looks for its sources from the project's folder.
  process.chdir(root);
  ensureInstalled();
  if (!built.every(existsSync) || newest(`${root}/src`) > Math.min(...built.map((file) => statSync(file).mtimeMs))) {
    const { buildAddIn, buildHeadless } = await import("./build.mjs");
    await buildAddIn();
    await buildHeadless();
  }
} catch (fault) {
  fail(fault);
}
const { main } = await import("../build/node/judge.mjs");
const now = new Date();
const today = Math.floor(Date.UTC(now.getFullYear(), now.getMonth(), now.getDate()) / 86_400_000) + 25569;
process.exit(await main(process.argv.slice(2), `${root}/dist`, today, folder));

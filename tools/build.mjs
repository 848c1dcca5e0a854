/**
 * Builds everything: the add-in into dist/, the trial page and the headless run into build/.
 * `npm run build -- --at https://example.org/gear` stamps the address under which dist/ will be served into the manifest.
 */
import { readdirSync, readFileSync, utimesSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { parseArgs } from "node:util";
import { build as bundle } from "esbuild";
import { fileURLToPath } from "node:url";

const root = fileURLToPath(new URL("..", import.meta.url));
const require = createRequire(import.meta.url);

/** The add-in: pane, functions, metadata, manifest. */
export async function buildAddIn({ at, mode = "production" } = {}) {
  const webpack = require("webpack");
  const configure = require("./webpack.config.cjs");
  const config = { mode, ...configure({ at }, { mode }) };
  const modules = await new Promise((resolve, reject) => {
    const compiler = webpack(config);
    compiler.run((fault, stats) => {
      compiler.close(() => {
        if (fault) reject(fault);
        else if (stats.hasErrors()) reject(new Error(stats.toString({ all: false, errors: true })));
        else resolve([...stats.compilation.modules]);
      });
    });
  });
  writeFileSync(`${root}/dist/THIRD-PARTY-NOTICES.txt`, notices(modules));
  // What came out as before is left alone by the bundler; its date says that it was looked at.
  const now = new Date();
  for (const entry of readdirSync(`${root}/dist`, { withFileTypes: true }))
    if (entry.isFile()) utimesSync(`${root}/dist/${entry.name}`, now, now);
}

/** Name, version, licence and its text of every package that stands in dist. */
function notices(modules) {
  const folders = new Set();
  const visit = (module) => {
    const folder = /^.*[\\/]node_modules[\\/](?:@[^\\/]+[\\/])?[^\\/]+/.exec(module.resource ?? "")?.[0];
    if (folder) folders.add(folder);
    for (const inner of module.modules ?? []) visit(inner);
  };
  for (const module of modules) visit(module);
  const texts = [...folders].map((folder) => {
    const { name, version, license } = JSON.parse(readFileSync(`${folder}/package.json`, "utf8"));
    const file = readdirSync(folder).find((entry) => /^licen[cs]e(\.|$)/i.test(entry));
    return `${name} ${version} (${license})\n\n${file ? readFileSync(`${folder}/${file}`, "utf8").trim() : `No licence text comes with the package; its package.json says ${license}.`}\n`;
  });
  return `Gear Verdicts contains the following packages.\n\n${texts.sort().join(`\n${"-".repeat(80)}\n\n`)}`;
}

/** The headless run for Node; packages stay outside the bundle. */
export async function buildHeadless() {
  await bundle({
    entryPoints: { judge: `${root}/src/trial/headless.ts` },
    outdir: `${root}/build/node`,
    outExtension: { ".js": ".mjs" },
    bundle: true,
    platform: "node",
    format: "esm",
    target: "node20",
    packages: "external",
    // What only a register needs is loaded only for one.
    splitting: true,
    chunkNames: "parts/[name]-[hash]",
    logLevel: "error",
  });
}

export async function buildAll(options = {}) {
  const { buildTrial } = await import("./build-trial.mjs");
  await buildAddIn(options);
  await Promise.all([buildTrial({ outdir: `${root}/build/trial` }), buildHeadless()]);
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const { values } = parseArgs({ options: { at: { type: "string" } } });
  const start = performance.now();
  await buildAll(values.at === undefined ? {} : { at: values.at });
  console.log(`Built dist/ and build/ in ${((performance.now() - start) / 1000).toFixed(1)} s.`);
}

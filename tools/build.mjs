/**
 * Builds everything: the add-in into dist/, the trial page and the headless run into build/.
 * `npm run build -- --at https://example.org/gear` stamps the address under which dist/ will be served into the manifest.
 */
import { readdirSync, utimesSync } from "node:fs";
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
  await new Promise((resolve, reject) => {
    const compiler = webpack(config);
    compiler.run((fault, stats) => {
      compiler.close(() => {
        if (fault) reject(fault);
        else if (stats.hasErrors()) reject(new Error(stats.toString({ all: false, errors: true })));
        else resolve();
      });
    });
  });
  // What came out as before is left alone by the bundler; its date says that it was looked at.
  const now = new Date();
  for (const entry of readdirSync(`${root}/dist`, { withFileTypes: true }))
    if (entry.isFile()) utimesSync(`${root}/dist/${entry.name}`, now, now);
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

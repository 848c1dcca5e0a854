/** Builds the trial page: one module with the parts it may need later split off, its style sheet, its page. */
import { build } from "esbuild";
import { copyFile, mkdir, rm } from "node:fs/promises";
import path from "node:path";
import { fileURLToPath } from "node:url";

const root = fileURLToPath(new URL("..", import.meta.url));

/** @param {{ outdir?: string, minify?: boolean }} [options] */
export async function buildTrial({ outdir = path.join(root, "build", "trial"), minify = true } = {}) {
  await rm(outdir, { recursive: true, force: true });
  await mkdir(outdir, { recursive: true });
  await build({
    entryPoints: { main: path.join(root, "src/trial/page/main.ts") },
    outdir,
    bundle: true,
    format: "esm",
    splitting: true,
    minify,
    sourcemap: false,
    target: "es2022",
    define: { "process.env.NODE_ENV": '"production"' },
    loader: { ".woff": "file", ".woff2": "file", ".ttf": "file", ".svg": "dataurl" },
    chunkNames: "parts/[name]-[hash]",
    legalComments: "linked",
    logLevel: "warning",
  });
  await copyFile(path.join(root, "src/trial/page/index.html"), path.join(outdir, "index.html"));
  return outdir;
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const began = Date.now();
  const outdir = await buildTrial();
  console.log(`Trial page built in ${((Date.now() - began) / 1000).toFixed(1)} s: ${path.relative(root, outdir)}`);
}

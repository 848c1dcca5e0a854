/** `npm run clauses`: writes the page of covered clauses from the criteria records. */
import { build } from "esbuild";
import { writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";

const root = fileURLToPath(new URL("..", import.meta.url));
const { outputFiles } = await build({
  entryPoints: [`${root}/src/engine/pages/clauses.ts`],
  bundle: true,
  write: false,
  format: "esm",
  platform: "node",
  logLevel: "error",
});
const { coveragePage } = await import(`data:text/javascript;base64,${Buffer.from(outputFiles[0].text).toString("base64")}`);
writeFileSync(`${root}/src/engine/CLAUSES.md`, coveragePage());
console.log("Wrote src/engine/CLAUSES.md.");

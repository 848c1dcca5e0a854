/** Writes the sample workbooks; `npm run samples`. The same files come out each time. */
import { writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { messyLog } from "./samples/messy-log.mjs";
import { otherYard } from "./samples/other-yard.mjs";
import { sharedRound } from "./samples/shared-round.mjs";
import { tidyRegister } from "./samples/tidy-register.mjs";

/** File name to the function that gives its bytes. */
export const SAMPLES = {
  "tidy-register.xlsx": tidyRegister,
  "messy-log.xlsx": messyLog,
  "other-yard.xlsx": otherYard,
  "shared-round.xlsx": sharedRound,
};

const folder = fileURLToPath(new URL("../sample-workbooks/", import.meta.url));

if (process.argv[1] === fileURLToPath(import.meta.url))
  for (const [name, build] of Object.entries(SAMPLES)) {
    const bytes = await build();
    writeFileSync(folder + name, bytes);
    console.log(`sample-workbooks/${name}: ${String(bytes.length)} bytes`);
  }

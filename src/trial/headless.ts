/** The pane's work on a file: find the log, judge it, write the register into a copy, print what came out. */
import { readFile, writeFile } from "node:fs/promises";
import { resolve } from "node:path";
import { parseArgs } from "node:util";
import { DECISIONS } from "../engine/decision";
import { readBasis } from "../engine/house/rules-in-force";
import { readDateText, showDate } from "../engine/numbers/calendar";
import { beforeUse, serviceNote } from "../engine/report/fit-for-use";
import type { ItemResult } from "../engine/report/model";
import { CAUTION, HOUSE_SHEET } from "../excel/kit/sheets";
import { WorkbookError } from "../excel/kit/workbook-error";
import type { ReadLog } from "../excel/port";
import { loadBuiltFunctions } from "./calculation/built-functions";
import { UniverCalculator } from "./calculation/calculator";
import { connect, loadClientLibrary } from "./carriers/node";
import { readXlsx, writeXlsx } from "./file/xlsx";
import { Host } from "./host/host";

/** Exit status and one sentence. */
class Refusal extends Error {
  readonly status: 1 | 2;

  constructor(status: 1 | 2, message: string) {
    super(message);
    this.status = status;
  }
}
const USAGE = "Use: npm run judge -- IN.xlsx [--out OUT.xlsx] [--sheet NAME] [--basis ids] [--as-of YYYY-MM-DD] [--json]";
interface Options {
  readonly input: string;
  readonly out: string | null;
  readonly sheet: string | null;
  readonly basis: string | undefined;
  readonly asOf: number;
  readonly json: boolean;
}
function readOptions(args: string[], today: number): Options {
  let parsed;
  try {
    parsed = parseArgs({
      args,
      allowPositionals: true,
      options: {
        out: { type: "string" },
        sheet: { type: "string" },
        basis: { type: "string" },
        "as-of": { type: "string" },
        json: { type: "boolean", default: false },
      },
    });
  } catch (fault) {
    throw new Refusal(2, `${fault instanceof Error ? fault.message : String(fault)} ${USAGE}`);
  }
  const { values, positionals } = parsed;
  const [input, more] = positionals;
  if (input === undefined || more !== undefined) throw new Refusal(2, `Name one workbook. ${USAGE}`);
  const day = values["as-of"];
  const asOf = day === undefined ? today : readDateText(day);
  if (typeof asOf !== "number" || (day !== undefined && !/^\d{4}-\d{2}-\d{2}$/.test(day)))
    throw new Refusal(2, `--as-of takes a day such as 2026-03-31. ${USAGE}`);
  if (values.out !== undefined && resolve(values.out) === resolve(input))
    throw new Refusal(2, "--out must be another file than the input, which is never changed.");
  return { input, out: values.out ?? null, sheet: values.sheet ?? null, basis: values.basis, asOf, json: values.json };
}
async function fileBytes(path: string): Promise<Uint8Array> {
  try {
    return await readFile(path);
  } catch {
    throw new Refusal(1, `The file ${path} cannot be read; check the name.`);
  }
}
function line(item: ItemResult, firstRow: number): string {
  const due = item.nextDue === null ? "no date" : `${item.dueState.toLowerCase()} ${showDate(item.nextDue)}`;
  const first = beforeUse(item);
  return `${String(firstRow + item.row).padStart(5)}  ${item.id.padEnd(12)}  ${item.verdict.decision.padEnd(10)}  ${due.padEnd(20)}  ${item.gearText}: ${first === "" ? "" : `${first} `}${item.verdict.reason}`;
}
/** One-based sheet row of the first row of a place such as A4:R96. */
const rowOf = (address: string): number => Number(/\d+/.exec(address)?.[0] ?? 1);
async function run(options: Options, dist: string): Promise<void> {
  const basis = readBasis(options.basis);
  if (!basis.ok) throw new Refusal(2, `${basis.why} With a sheet "${HOUSE_SHEET}" in the workbook there is house, too.`);
  const book = await readXlsx(await fileBytes(options.input)).catch((fault: unknown) => {
    throw new Refusal(1, fault instanceof Error ? fault.message : String(fault));
  });
  if (basis.ids.includes("house") && !book.sheet(HOUSE_SHEET)?.used())
    throw new Refusal(
      2,
      `The basis house needs limits, and ${options.input} has no sheet "${HOUSE_SHEET}" that holds any; make it with the pane, or leave house out.`,
    );
  const { functions, shapes } = loadBuiltFunctions(`${dist}/functions.js`, `${dist}/functions.json`);
  // The verdicts do not wait for the formulas: those are worked out once, when the register is written.
  const calculator = new UniverCalculator({ functions, shapes, today: () => options.asOf });
  const host = new Host(book, options.out === null ? {} : { calculator });
  loadClientLibrary();
  connect(host);
  const { excelPort } = await import("../excel/workbook");
  if (options.sheet !== null && book.sheet(options.sheet) === undefined)
    throw new Refusal(1, `There is no sheet "${options.sheet}"; the sheets are ${book.sheets.map((s) => s.name).join(", ")}.`);
  const from = options.sheet === null ? "auto" : await placeOf(host, options.sheet);
  const log = await excelPort.read({ from, basis: basis.ids, asOf: options.asOf, choices: {} }).catch((fault: unknown) => {
    // What the workbook side says here tells people what to press in the pane.
    if (!(fault instanceof WorkbookError && fault.kind === "no log")) throw fault;
    throw new Refusal(
      1,
      options.sheet === null
        ? `No gear log was found in ${options.input}; name its sheet with --sheet.`
        : "No gear log was found on that sheet; name another with --sheet.",
    );
  });
  if (log.report.items.length === 0) throw new Refusal(1, `The log on ${log.place.sheet} has headings and no items under them.`);
  if (options.json) printJson(log);
  else printLines(log);
  if (options.out === null) return;
  const result = await excelPort.build(log, () => undefined, new AbortController().signal);
  await writeFile(options.out, await writeXlsx(book));
  if (!options.json) {
    for (const sentence of result.sentences) console.log(sentence);
    console.log(`Register of ${String(result.items)} items written to ${options.out}; ${options.input} is unchanged.`);
  }
}
async function placeOf(host: Host, name: string): Promise<ReadLog["place"]> {
  const sheet = host.book.sheet(name);
  const used = sheet?.used();
  if (!sheet || !used) throw new Refusal(1, `The sheet "${name}" is empty.`);
  const { areaAddress } = await import("../excel/kit/addresses");
  return { sheet: sheet.name, address: areaAddress(used.row, used.column, used.rows, used.columns), how: "selection", table: "" };
}
function printJson({ place, report }: ReadLog): void {
  const first = rowOf(place.address);
  const items = report.items.map((item) => ({
    row: first + item.row,
    id: item.id,
    gear: item.gear ?? item.gearText,
    decision: item.verdict.decision,
    reason: item.verdict.reason,
    nextDue: item.nextDue === null ? null : showDate(item.nextDue),
    dueState: item.dueState,
    tagged: item.tagged,
  }));
  process.stdout.write(`${JSON.stringify(items)}\n`);
}
function printLines({ place, report, refusedLimits = [] }: ReadLog): void {
  console.log(
    `${place.sheet}!${place.address}: ${String(report.items.length)} items, rules in force ${report.basis.join(", ")}, as of ${showDate(report.asOf)}.`,
  );
  for (const item of report.items) console.log(line(item, rowOf(place.address)));
  for (const { row, why } of report.passedOver) console.log(`Row ${String(rowOf(place.address) + row)} passed over: ${why}.`);
  for (const words of report.missingChecks) console.log(words);
  for (const words of [...report.problems, ...refusedLimits]) console.log(words);
  console.log(DECISIONS.map((d) => `${d} ${String(report.counts[d])}`).join(", "));
  console.log(
    Object.entries(report.due)
      .map(([state, count]) => `${state} ${String(count)}`)
      .join(", "),
  );
  const service = serviceNote(report.items);
  if (service !== "") console.log(service);
  console.log(CAUTION);
}
/** Runs the command; resolves to its exit status. */
export async function main(args: string[], dist: string, today: number): Promise<number> {
  try {
    await run(readOptions(args, today), dist);
    return 0;
  } catch (fault) {
    console.error(fault instanceof Error ? fault.message : String(fault));
    return fault instanceof Refusal ? fault.status : 1;
  }
}

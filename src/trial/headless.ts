/** The pane's work on a file: find the log, judge it, write the register into a copy, print what came out. */
import { readFile } from "node:fs/promises";
import { key } from "../engine/log/match-headings";
import { readBasis } from "../engine/house/rules-in-force";
import { count } from "../engine/words";
import { HOUSE_SHEET } from "../excel/kit/sheets";
import { WorkbookError } from "../excel/kit/workbook-error";
import type { ReadLog, WorkbookPort } from "../excel/port";
import type { Book, Calculator } from "./book/book";
import { loadBuiltFunctions } from "./calculation/built-functions";
import { connect, loadClientLibrary } from "./carriers/node";
import { type Options, readOptions } from "./command/arguments";
import { faultWords, outFile, writeOut } from "./command/out-file";
import { Output } from "./command/output";
import { printDue, printJson, printLines } from "./command/print";
import { Refusal } from "./command/refusal";
import { readXlsx, writeXlsx } from "./file/xlsx";
import { Host } from "./host/host";

interface Printed {
  /** Standard output: what was asked for. */
  readonly out: Output;
  /** Standard error: what has to be said besides. */
  readonly besides: Output;
}
/** Runs the command in the caller's `folder`; resolves to its exit status when all it printed has arrived. `today` is a serial day. */
export async function main(args: string[], dist: string, today: number, folder = process.cwd()): Promise<number> {
  const printed = { out: new Output(process.stdout), besides: new Output(process.stderr) };
  const status = await run(args, dist, today, folder, printed);
  await printed.besides.drained().catch(() => undefined);
  return status;
}
async function run(args: string[], dist: string, today: number, folder: string, printed: Printed): Promise<number> {
  try {
    await judge(readOptions(args, today, folder), dist, printed);
    await printed.out.drained();
    return 0;
  } catch (fault) {
    await printed.out.drained().catch(() => undefined);
    printed.besides.line(fault instanceof Error ? fault.message : String(fault));
    return fault instanceof Refusal ? fault.status : 1;
  }
}
async function judge(options: Options, dist: string, { out, besides }: Printed): Promise<void> {
  const basis = readBasis(options.basis);
  if (!basis.ok) throw new Refusal(2, `${basis.why} With a sheet "${HOUSE_SHEET}" in the workbook there is house, too.`);
  const target = options.out === null ? null : await outFile(options.inputPath, options.outPath, options.out, options.force);
  const book = await openBook(options);
  if (basis.ids.includes("house") && !book.sheet(HOUSE_SHEET)?.used())
    throw new Refusal(
      2,
      `The basis house needs limits, and ${options.input} has no sheet "${HOUSE_SHEET}" that holds any; make it with the pane, or leave house out.`,
    );
  if (target !== null) tellDropped(options, book, besides);
  const calculator = target === null ? null : await calculatorFor(dist, options.asOf);
  const host = new Host(book, calculator === null ? {} : { calculator });
  loadClientLibrary();
  connect(host);
  const { excelPort } = await import("../excel/workbook");
  const log = await readLog(options, host, excelPort, basis.ids);
  if (options.json) printJson(out, log, options.due);
  else if (options.due) printDue(out, log);
  else printLines(out, log);
  if (target === null) return;
  if (options.writes !== "register") {
    const told = await programme(options, excelPort, log, basis.ids);
    // The file library needs the room.
    calculator?.dispose();
    await writeOut(target, await writeXlsx(book));
    if (!options.json) out.line(`${told} It is written to ${options.out ?? ""}; ${options.input} is unchanged.`);
    return;
  }
  const result = await excelPort.build(log, () => undefined, new AbortController().signal);
  // The file library needs the room.
  calculator?.dispose();
  await writeOut(target, await writeXlsx(book));
  if (options.json) return;
  for (const sentence of result.sentences) out.line(sentence);
  out.line(`Register of ${String(result.items)} items written to ${options.out ?? ""}; ${options.input} is unchanged.`);
}
/** A round of what is due, from a register that is built for it; or the report of the round that was posted last. */
async function programme({ writes, asOf }: Options, port: WorkbookPort, log: ReadLog, basis: ReadLog["report"]["basis"]): Promise<string> {
  try {
    if (writes === "round") {
      if (log.place.how !== "register") await port.build(log, () => undefined, new AbortController().signal);
      const made = await port.rounds.make({ kind: "due", basis, asOf });
      return `${made.sheet}: ${count(made.items, "item")}, ${count(made.checks, "check")}.`;
    }
    for (const { sheet } of await port.rounds.list()) {
      const report = await port.rounds.report(sheet, basis, asOf).catch((fault: unknown) => {
        if (fault instanceof WorkbookError && fault.kind === "no log") return null;
        throw fault;
      });
      if (report !== null) return `Report of ${sheet}: ${count(report.items, "item")}.`;
    }
  } catch (fault) {
    throw fault instanceof WorkbookError ? new Refusal(1, fault.message) : fault;
  }
  throw new Refusal(1, "No round of this workbook was posted; post one with the pane first.");
}
/** Works the register's formulas out. The verdicts do not wait for it, so it is loaded only where a register is written. */
async function calculatorFor(dist: string, today: number): Promise<Calculator & { dispose(): void }> {
  const { WorkbookCalculator } = await import("./calculation/calculator");
  const { functions, shapes } = loadBuiltFunctions(`${dist}/functions.js`, `${dist}/functions.json`);
  return new WorkbookCalculator({ functions, shapes, today: () => today });
}
async function openBook({ input, inputPath }: Options): Promise<Book> {
  const bytes = await readFile(inputPath).catch((fault: unknown) => {
    if ((fault as NodeJS.ErrnoException).code === "ENOENT") throw new Refusal(1, `The file ${input} cannot be read; check the name.`);
    throw new Refusal(1, `The file ${input} cannot be read: ${faultWords(fault)}.`);
  });
  return readXlsx(bytes).catch((fault: unknown) => {
    throw new Refusal(1, fault instanceof Error ? fault.message : String(fault));
  });
}
/** What the copy would lack is said before anything is written, and has to be wanted. */
function tellDropped({ input, drop }: Options, { notKept }: Book, besides: Output): void {
  if (notKept.length === 0) return;
  if (!drop) throw new Refusal(2, `The copy can't hold everything of ${input}: ${notKept.join(", ")}. Add --drop to write it without.`);
  besides.line(`Not in the copy: ${notKept.join(", ")}.`);
}
async function readLog(
  options: Options,
  host: Host,
  port: WorkbookPort,
  basis: readonly ReadLog["report"]["basis"][number][],
): Promise<ReadLog> {
  const { sheet, asOf, choices, input, unit } = options;
  if (sheet !== null && host.book.sheet(sheet) === undefined)
    throw new Refusal(1, `There is no sheet "${sheet}"; the sheets are ${host.book.sheets.map((s) => s.name).join(", ")}.`);
  const from = sheet === null ? "auto" : await placeOf(host, sheet);
  // The answer is kept by sheet; here it holds for the one that is read.
  const units = unit === null ? {} : Object.fromEntries(host.book.sheets.map(({ name }) => [name.toLowerCase(), unit]));
  const log = await port.read({ from, basis, asOf, choices, units }).catch((fault: unknown) => {
    // What the workbook side says here tells people what to press in the pane.
    if (!(fault instanceof WorkbookError && fault.kind === "no log")) throw fault;
    throw new Refusal(
      1,
      sheet === null
        ? `No gear log was found in ${input}; name its sheet with --sheet.`
        : "No gear log was found on that sheet; name another with --sheet.",
    );
  });
  if (log.report.items.length === 0) throw new Refusal(1, `The log on ${log.place.sheet} has headings and no items under them.`);
  const headings = new Set(log.report.headings.map(({ heading }) => key(heading)));
  for (const heading of Object.keys(choices))
    if (!headings.has(heading)) throw new Refusal(2, `The log on ${log.place.sheet} has no heading "${heading}", which --column names.`);
  return log;
}
async function placeOf(host: Host, name: string): Promise<ReadLog["place"]> {
  const sheet = host.book.sheet(name);
  const used = sheet?.used();
  if (!sheet || !used) throw new Refusal(1, `The sheet "${name}" is empty.`);
  const { areaAddress } = await import("../excel/kit/addresses");
  return { sheet: sheet.name, address: areaAddress(used.row, used.column, used.rows, used.columns), how: "selection", table: "" };
}

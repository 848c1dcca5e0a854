/** Builds that fail on purpose: at a request with a documented error code, refused or with its answer lost, or between two actions of one. */
import { DEFAULT_BASIS } from "../../src/engine/rules/rule-sets";
import { HEADING_ROW } from "../../src/excel/kit/sheets";
import { WorkbookError } from "../../src/excel/kit/workbook-error";
import { type BuildResult } from "../../src/excel/port";
import { excelPort } from "../../src/excel/workbook";
import { type Book, type Cell } from "../../src/trial/book/book";
import { type Host, MINIMUM_REQUIREMENTS } from "../../src/trial/host/host";
import { openBook } from "../setup-excel";
import { AS_OF, book, fill, HOOK_HEADINGS, hookRow } from "./books";
import { oldHook, oldRegister } from "./old-register";

/** Codes of the add-in documentation's error page, and those of requests as a whole. */
export const CODES = [
  "AccessDenied",
  "ActivityLimitReached",
  "ApiNotFound",
  "GeneralException",
  "InvalidArgument",
  "InvalidOperation",
  "InvalidOperationInCellEditMode",
  "InvalidReference",
  "ItemNotFound",
  "RequestAborted",
  "RequestPayloadSizeLimitExceeded",
  "ServiceNotAvailable",
] as const;
export type PlanName = "first build" | "rebuild" | "conversion";
export interface Injection {
  readonly plan: PlanName;
  readonly version: string;
  /** Which request of the build fails. */
  readonly request: number;
  readonly code: string;
  /** "refused" does nothing, "lost" does all and says nothing, a number does so many actions. */
  readonly how: "refused" | "lost" | number;
}
export interface Outcome {
  /** Of typed cells, added columns, formulas of people: what is gone or changed after the failure. */
  readonly lost: readonly string[];
  readonly logTouched: boolean;
  /** The sentence claims what is not so. */
  readonly untrue: string;
  /** Why the next build did not go through, or "". */
  readonly refused: string;
  /** What differs after the next build from a build without a failure. */
  readonly differing: readonly string[];
}
const build = async (): Promise<BuildResult> => {
  const log = await excelPort.read({ from: "auto", basis: DEFAULT_BASIS, asOf: AS_OF, choices: {} });
  return excelPort.build(log, () => undefined, new AbortController().signal);
};
async function prepared(plan: PlanName, version: string): Promise<{ readonly made: Book; readonly host: Host }> {
  const rows = [hookRow("H-1", "2.01"), hookRow("H-2", "2.01"), hookRow("H-3", "2.01", { remarks: "=1+1" })];
  const made = book({ "Gear log": [[...HOOK_HEADINGS], ...rows] });
  if (plan === "conversion") oldRegister(made, [oldHook("H-1", "2.01", { Crate: "00123" }), oldHook("H-2", "2.2", { Remarks: "seen" })]);
  const host = openBook(made, { requirements: { ...MINIMUM_REQUIREMENTS, ExcelApi: version } });
  if (plan !== "rebuild") return { made, host };
  await build();
  const { sheet, box } = made.tables[0]!;
  const at = (id: string, heading: string): Cell => sheet.at(rowOf(made, id), columnOf(made, heading));
  at("H-1", "Throat now").value = "2.2";
  at("H-2", "Remarks").value = "3/4";
  sheet.at(HEADING_ROW - 1, box.columns).value = "Crate";
  ["00123", "1-2", "x"].forEach((value, row) => Object.assign(sheet.at(HEADING_ROW + row, box.columns), { value, format: "@" }));
  made.tables[0]!.box = { ...box, columns: box.columns + 1 };
  // Cells and columns that the rebuild has to write, and an item that is new.
  const log = made.sheet("Gear log")!;
  log.at(3, HOOK_HEADINGS.indexOf("Cracks")).value = "hairline";
  fill(log, [[...HOOK_HEADINGS, "Pin as-new", "Pin now"]]);
  fill(
    log,
    [["S-9", "shackle", "in", null, null, "1", "0.99", null, null, "none", "yes", "normal", { date: 46300 }, null, null, "1", "0.99"]],
    4,
  );
  return { made, host };
}
const headings = (made: Book): string[] => {
  const table = made.tables.find(({ sheet }) => sheet.name === "Gear register");
  return table ? Array.from({ length: table.box.columns }, (_, c) => String(table.sheet.cell(HEADING_ROW - 1, c)?.value ?? "")) : [];
};
const columnOf = (made: Book, heading: string): number => headings(made).indexOf(heading);
function rowOf(made: Book, id: string): number {
  const sheet = made.sheet("Gear register")!;
  return HEADING_ROW + Array.from({ length: 20 }, (_, r) => sheet.cell(HEADING_ROW + r, columnOf(made, "Id"))?.value).indexOf(id);
}
const snapshot = (made: Book, name: string): string =>
  JSON.stringify([...(made.sheet(name)?.rows ?? [])].map(([r, cells]) => [r, [...cells]]));
/** Typed cells of the register by id and heading: worked-out columns aside. */
function typed(made: Book): Map<string, string> {
  const found = new Map<string, string>();
  const table = made.tables.find(({ sheet }) => sheet.name === "Gear register");
  if (!table) return found;
  const names = headings(made);
  for (let row = HEADING_ROW; row < HEADING_ROW + table.box.rows - 1; row += 1) {
    const id = String(table.sheet.cell(row, names.indexOf("Id"))?.value ?? "");
    names.forEach((heading, column) => {
      const cell = table.sheet.cell(row, column);
      if (id === "" || cell === undefined || cell.value === null || cell.formula !== undefined) return;
      found.set(`${id} ${heading}`, `${typeof cell.value} ${String(cell.value)} ${cell.format ?? "General"}`);
    });
  }
  return found;
}
const KEPT: Readonly<Record<PlanName, readonly string[]>> = {
  "first build": [],
  rebuild: ["H-1 Throat now", "H-2 Remarks", "H-1 Crate", "H-2 Crate", "H-3 Crate", "H-3 Remarks"],
  conversion: ["H-1 Crate", "H-2 Throat now", "H-2 Remarks"],
};
/** How many requests a build without a failure takes from the first that writes on, with the actions of each, and what it makes. */
export async function soundRun(
  plan: PlanName,
  version: string,
): Promise<{ readonly actions: readonly number[]; readonly typed: ReadonlyMap<string, string> }> {
  const { made, host } = await prepared(plan, version);
  const before = host.requests.length;
  await build();
  return { actions: host.requests.slice(before).map(({ actions }) => actions), typed: typed(made) };
}
/** One build with its failure, and the build after it. */
export async function inject({ plan, version, request, code, how }: Injection, sound: ReadonlyMap<string, string>): Promise<Outcome> {
  const { made, host } = await prepared(plan, version);
  const log = snapshot(made, "Gear log");
  const before = typed(made);
  const all = (): string => JSON.stringify(made.sheets.map((s) => [s.name, snapshot(made, s.name), s.rules.length]));
  const book = all();
  const run = host.run.bind(host);
  let count = 0;
  host.run = async (body) => {
    if (count++ !== request) return run(body);
    if (how === "lost") await run(body);
    const done = typeof how === "number" ? await run({ ...body, Actions: body.Actions.slice(0, how) }) : { Results: [], TraceIds: [] };
    return {
      ...done,
      Error: { Code: code, Message: "Injected.", Location: "", ActionIndex: typeof how === "number" ? how : 0, HttpStatusCode: 400 },
    };
  };
  const fault = await build().then(
    () => null,
    (e: unknown) => e,
  );
  host.run = run;
  const message =
    fault instanceof WorkbookError
      ? fault.message
      : fault === null
        ? ""
        : `no sentence: ${fault instanceof Error ? fault.message : JSON.stringify(fault)}`;
  const after = typed(made);
  const lost = [...KEPT[plan]].filter((cell) => after.get(cell) !== before.get(cell));
  const untrue = message.startsWith("no sentence") || (message.includes("nothing was written") && all() !== book) ? message : "";
  const refused = await build().then(
    () => "",
    (e: unknown) => String(e),
  );
  const end = typed(made);
  return {
    lost,
    untrue,
    refused,
    logTouched: snapshot(made, "Gear log") !== log,
    differing: [...new Set([...sound.keys(), ...end.keys()])].filter((cell) => sound.get(cell) !== end.get(cell)),
  };
}

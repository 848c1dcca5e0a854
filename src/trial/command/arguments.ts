/** What the command line asks for. */
import { resolve } from "node:path";
import { parseArgs } from "node:util";
import { FIELDS, type FieldId } from "../../engine/columns";
import { key } from "../../engine/log/match-headings";
import type { Unit } from "../../engine/numbers/lengths";
import { readDateText } from "../../engine/numbers/calendar";
import type { HeadingChoices } from "../../excel/port";
import { Refusal } from "./refusal";

const USAGE =
  'Use: npm run judge -- IN.xlsx [--out OUT.xlsx] [--force] [--drop] [--sheet NAME] [--unit in|mm] [--column "HEADING=COLUMN|aside"] [--basis ids] [--as-of YYYY-MM-DD] [--json] [--due] [--round OUT.xlsx | --report OUT.xlsx]';
export interface Options {
  /** As it was typed, for sentences. */
  readonly input: string;
  readonly inputPath: string;
  readonly out: string | null;
  readonly outPath: string;
  readonly force: boolean;
  /** Writes the copy although something of the workbook can't be carried over. */
  readonly drop: boolean;
  readonly sheet: string | null;
  /** Unit of bare sizes that neither heading, column nor cell tells. */
  readonly unit: Unit | null;
  readonly basis: string | undefined;
  readonly asOf: number;
  readonly json: boolean;
  /** Only what is late, due within 30 days or undated, earliest first. */
  readonly due: boolean;
  /** What the copy holds beside the register: a round of what is due, or the report of the round that was posted last. */
  readonly writes: "register" | "round" | "report";
  readonly choices: HeadingChoices;
}
/** `today` is a serial day; `folder` is where the caller stands, from which paths count. */
export function readOptions(args: string[], today: number, folder: string): Options {
  const { values, positionals } = parsed(args);
  const [input, more] = positionals;
  if (input === undefined || more !== undefined || input === "") throw new Refusal(2, `Name one workbook. ${USAGE}`);
  const outs = (["out", "round", "report"] as const).filter((name) => values[name] !== undefined);
  const [named = "out", other] = outs;
  const out = values[named];
  if (other !== undefined) throw new Refusal(2, `--${named} and --${other} each name the file to write; give one of them. ${USAGE}`);
  if (out === "") throw new Refusal(2, `--${named} takes the name of a file. ${USAGE}`);
  const day = values["as-of"];
  const asOf = day === undefined ? today : readDateText(day);
  if (typeof asOf !== "number" || (day !== undefined && !/^\d{4}-\d{2}-\d{2}$/.test(day)))
    throw new Refusal(2, `--as-of takes a day such as 2026-03-31. ${USAGE}`);
  return {
    input,
    inputPath: resolve(folder, input),
    out: out ?? null,
    outPath: resolve(folder, out ?? ""),
    due: values.due,
    writes: named === "out" ? "register" : named,
    force: values.force,
    drop: values.drop,
    sheet: values.sheet ?? null,
    unit: readUnit(values.unit),
    basis: values.basis,
    asOf,
    json: values.json,
    choices: Object.fromEntries((values.column ?? []).map(readChoice)),
  };
}
function parsed(args: string[]) {
  try {
    return parseArgs({
      args,
      allowPositionals: true,
      options: {
        out: { type: "string" },
        round: { type: "string" },
        report: { type: "string" },
        due: { type: "boolean", default: false },
        force: { type: "boolean", default: false },
        drop: { type: "boolean", default: false },
        sheet: { type: "string" },
        unit: { type: "string" },
        column: { type: "string", multiple: true },
        basis: { type: "string" },
        "as-of": { type: "string" },
        json: { type: "boolean", default: false },
      },
    });
  } catch (fault) {
    throw new Refusal(2, `${(fault instanceof Error ? fault.message : String(fault)).replace(/\s+/g, " ")} ${USAGE}`);
  }
}
function readUnit(text: string | undefined): Unit | null {
  if (text === undefined) return null;
  if (text === "in" || text === "mm") return text;
  throw new Refusal(2, `--unit takes in or mm, not ${text}. ${USAGE}`);
}
const COLUMNS = new Map<string, FieldId>();
for (const [id, { heading }] of Object.entries(FIELDS)) {
  COLUMNS.set(key(id), id as FieldId);
  COLUMNS.set(key(heading), id as FieldId);
}
/** "Wear here=section now" names the column that a heading stands for; "Wear here=aside" sets it aside. */
function readChoice(text: string): [string, FieldId | null] {
  const at = text.lastIndexOf("=");
  const heading = key(text.slice(0, Math.max(0, at)));
  const column = key(text.slice(at + 1));
  if (at < 0 || heading === "" || column === "")
    throw new Refusal(
      2,
      `--column takes a heading and its column, such as --column "Gap today=Throat now", or "Gap today=aside". ${USAGE}`,
    );
  if (column === "aside") return [heading, null];
  const id = COLUMNS.get(column);
  if (id === undefined)
    throw new Refusal(
      2,
      `--column knows no column "${text.slice(at + 1).trim()}"; its columns are ${Object.values(FIELDS)
        .map((field) => field.heading)
        .join(", ")}, or aside.`,
    );
  return [heading, id];
}

/** Reading a round sheet as it was filled. Lines are known by what stands in them, so they may be sorted, moved or taken out. */
import { FIELD_IDS, type FieldId } from "../../engine/columns";
import { readBasis } from "../../engine/house/rules-in-force";
import type { FilledItem, FilledLine, FilledRound } from "../../engine/programme/post";
import type { RoundKind } from "../../engine/programme/round";
import { namedUnit } from "../../engine/numbers/lengths";
import type { CellValue } from "../../engine/reading/cell-value";
import { readText } from "../../engine/reading/text";
import { readRows } from "../kit/read-in-parts";
import type { Sheets } from "../kit/marks";
import { ROUND_MARK } from "../kit/marks";
import { WorkbookError } from "../kit/workbook-error";
import { HEADING_ROW, HELD, INPUTS, ROUND_COLUMNS, ROUND_SIGN, type RoundHeading } from "./round-layout";

/** The round sheets of the workbook, newest first. */
export function roundSheets(sheets: Sheets): readonly { readonly round: string; readonly sheet: string }[] {
  return sheets
    .markedWith(ROUND_MARK)
    .map(({ rest, sheet }) => ({ round: rest, sheet: sheet.name }))
    .sort((a, b) => numberOf(b.round) - numberOf(a.round));
}
const numberOf = (round: string): number => Number(/^R(\d+)/.exec(round)?.[1] ?? 0);
const notOurs = (name: string): WorkbookError =>
  new WorkbookError(
    "other shape",
    `The sheet "${name}" is not a round of this add-in. Open a round sheet, then post it; nothing was written.`,
  );
export async function readRound(context: Excel.RequestContext, name: string): Promise<FilledRound> {
  const sheet = context.workbook.worksheets.getItemOrNullObject(name);
  sheet.load("name");
  await context.sync();
  if (sheet.isNullObject) throw notOurs(name);
  const used = sheet.getUsedRangeOrNullObject(true);
  used.load("rowIndex,rowCount");
  const top = sheet.getRange(`A1:M${String(HEADING_ROW)}`);
  top.load("values");
  await context.sync();
  if (used.isNullObject) throw notOurs(name);
  const cells = top.values as CellValue[][];
  const at = (address: string): CellValue => cells[Number(address.slice(1)) - 1]?.[address.charCodeAt(0) - 65];
  if (readText(at(HELD.mark)) !== ROUND_SIGN) throw notOurs(name);
  const rows = Math.max(0, used.rowIndex + used.rowCount - HEADING_ROW);
  const body =
    rows === 0
      ? []
      : await readRows(context, sheet.getRange(`A${String(HEADING_ROW + 1)}`), { rows, columns: ROUND_COLUMNS.length }, "values");
  const basis = readBasis(readText(at(HELD.basis)));
  return {
    round: readText(at(HELD.round)),
    title: readText(at(HELD.title)),
    kind: readText(at(HELD.kind)) as RoundKind,
    basis: basis.ok ? basis.ids : [],
    by: readText(at(INPUTS.by)),
    date: at(INPUTS.date),
    items: itemsOf(body, { reads: at(INPUTS.gaugeReads), id: readText(at(INPUTS.gauge)) }),
  };
}
interface RoundGauge {
  readonly reads: CellValue;
  readonly id: string;
}
function itemsOf(rows: readonly (readonly CellValue[])[], gauge: RoundGauge): readonly FilledItem[] {
  const column = new Map<RoundHeading, number>(ROUND_COLUMNS.map(({ heading }, at) => [heading, at]));
  const items = new Map<string, { item: Omit<FilledItem, "lines">; lines: FilledLine[] }>();
  for (const row of rows) {
    const cell = (heading: RoundHeading): CellValue => row[column.get(heading) ?? -1];
    const id = readText(cell("Id"));
    if (id === "") continue;
    const known = items.get(id.toLowerCase()) ?? { item: { id, gear: "", place: "", inspectedWas: "", state: "" }, lines: [] };
    items.set(id.toLowerCase(), known);
    const line = readText(cell("Line"));
    if (line === "item")
      known.item = {
        id,
        gear: readText(cell("Gear")),
        place: readText(cell("Place")),
        inspectedWas: readText(cell("Was")),
        state: readText(cell("Found")),
      };
    else {
      const filled = lineOf(line, cell, gauge);
      if (filled !== null) known.lines.push(filled);
    }
  }
  return [...items.values()].map(({ item, lines }) => ({ ...item, lines }));
}
function lineOf(line: string, cell: (heading: RoundHeading) => CellValue, gauge: RoundGauge): FilledLine | null {
  const [role, name, needed] = line.split(" ");
  const now = FIELD_IDS.find((id): id is FieldId => id === name);
  if (now === undefined || (role !== "check" && role !== "taken" && role !== "known" && role !== "gauge")) return null;
  return {
    role,
    now,
    label: readText(cell("Look at or measure")),
    asNew: cell("As new"),
    reading: role === "gauge" ? gauge.reads : cell("Now"),
    found: cell("Found"),
    gauge: role === "check" ? readText(cell("Gauge")) || gauge.id : "",
    was: readText(cell("Was")),
    asNewWas: readText(cell("As new was")),
    required: needed === "needed",
  };
}
/** What the gauge reads to needs a unit, or every reading of the round would be in doubt. */
export const gaugeHasUnit = (reads: CellValue): boolean =>
  readText(reads) === "" || namedUnit(readText(reads).replace(/^[\d\s./]+/, "")) !== null;

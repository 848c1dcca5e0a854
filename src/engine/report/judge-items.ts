/** The items of a log: each with its verdict, its assembly taken into account, and its next inspection. */
import { dueState } from "../due/intervals";
import { dueOf } from "../due/next-due";
import { type Judging, LogJudge } from "../item/judge";
import { columnsOf } from "../item/line-judge";
import type { ItemVerdict } from "../item/verdict";
import { type FoundLog, itemRows, type Rows } from "../log/find-log";
import type { Grid } from "../log/grid";
import { matchKind } from "../names/gear-name";
import { readText } from "../reading/text";
import { inForce } from "../rules/rule-sets";
import type { GearTypes } from "../types/gear-types";
import { Assemblies } from "./assemblies";
import { type LentRow, type TypesTold, withLent } from "./lent-rows";
import type { ItemResult } from "./model";

export interface LogJudging extends Judging {
  readonly asOf: number;
  /** The sheet of as-new sizes by type, where the workbook has one. */
  readonly types?: GearTypes | undefined;
}
/** Judges every item of a log whose headings are known. */
export function judgeItems(
  grid: Grid,
  found: FoundLog,
  request: LogJudging,
): { readonly items: readonly ItemResult[]; readonly passedOver: Rows["passedOver"]; readonly types?: TypesTold } {
  const { items: own, passedOver } = itemRows(grid, found);
  const { rows, aboutTypes } = withLent(own, found.headings, request.types);
  const columns = columnsOf(found.headings);
  const filled = rows.flatMap(({ lent }) => (lent === undefined ? [] : [...lent.sizes.keys(), "asNewFrom" as const]));
  const judge = new LogJudge({ ...columns, fields: [...new Set([...columns.fields, ...filled])] }, request);
  const assemblies = new Assemblies(request.asOf);
  const alone = rows.map(({ cells, besides }, at) => {
    const verdict = judge.judgeCells(cells, besides);
    if (found.headings.columns.has("assembly")) assemblies.add(at, cells.get("assembly"), cells.get("inspected"), verdict.overload);
    return verdict;
  });
  const overloaded = assemblies.overloaded();
  return {
    items: rows.map((row, at) => {
      const day = overloaded.get(at);
      const verdict = day === undefined ? alone[at] : undefined;
      return itemOf(row, verdict ?? judge.judgeCells(row.cells, row.besides, day ?? null), request);
    }),
    passedOver,
    ...(aboutTypes === null ? {} : { types: aboutTypes }),
  };
}
function itemOf(row: LentRow, verdict: ItemVerdict, { asOf, basis }: LogJudging): ItemResult {
  const gearText = readText(row.cells.get("gear"));
  const match = matchKind(gearText);
  const due = match.ok
    ? dueOf(row.cells, asOf, { kind: match.kind.id, gearText, bases: inForce(basis) })
    : { day: null, note: "the gear kind is not known" };
  return {
    row: row.row,
    id: readText(row.cells.get("id")),
    gear: match.ok ? match.kind.id : null,
    gearText,
    place: readText(row.cells.get("place")),
    assembly: readText(row.cells.get("assembly")),
    tagged: verdict.tagged,
    verdict,
    nextDue: due.day,
    dueState: dueState(due.day, asOf),
    dueNote: due.note,
    ...(due.serviceAssumed === true ? { serviceAssumed: true } : {}),
    cells: row.cells,
    besides: row.besides,
    ...(row.lent === undefined ? {} : { lent: row.lent }),
  };
}

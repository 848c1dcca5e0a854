/** One item from a list in long form, one line a check, through the judge of every other row. */
import { field, type FieldId } from "../columns";
import { type Judging, LogJudge } from "../item/judge";
import { type ItemVerdict, unjudged } from "../item/verdict";
import { withUnit } from "../log/merge-columns";
import { matchKind } from "../names/gear-name";
import type { Unit } from "../numbers/lengths";
import type { CellValue } from "../reading/cell-value";
import { readLength } from "../reading/length";
import { readResult } from "../reading/result";
import { readText } from "../reading/text";
import { capital } from "../words";
import { lineNamed } from "./lines";

/** A line as it stands in the list. */
export interface ListLine {
  readonly check: CellValue;
  readonly asNew: CellValue;
  readonly now: CellValue;
  /** What was seen beside the reading, in words. */
  readonly found?: CellValue;
}
/** Whether words beside a reading are anything but plainly good. */
export function speaksAgainst(words: string): boolean {
  const read = readResult(words);
  return read !== null && read.said !== "good";
}
const carried = (cell: CellValue): Unit | null => {
  const read = readLength(cell, { assume: null });
  return read.kind === "value" ? read.value.unit : null;
};
/** The cells of an item, by the columns that its lines fill; or why a line fills none. */
export function cellsOfList(
  gear: CellValue,
  lines: readonly ListLine[],
):
  | { readonly ok: true; readonly cells: ReadonlyMap<FieldId, CellValue>; readonly names: ReadonlyMap<FieldId, string> }
  | { readonly ok: false; readonly why: string } {
  const match = matchKind(readText(gear));
  if (!match.ok) return { ok: false, why: match.why };
  const cells = new Map<FieldId, CellValue>([["gear", gear]]);
  const names = new Map<FieldId, string>();
  const seen: string[] = [];
  for (const { check, asNew, now, found } of lines) {
    const label = readText(check);
    const words = readText(found);
    if (words !== "") seen.push(words);
    if (label === "") {
      if ([asNew, now].every((cell) => readText(cell) === "")) continue;
      return { ok: false, why: "a line with a reading names no check" };
    }
    const line = lineNamed(match.kind, label);
    if (line === null) return { ok: false, why: `"${label}" is no check of ${match.kind.plural}` };
    if (names.has(line.now)) return { ok: false, why: `"${label}" stands there twice` };
    names.set(line.now, label);
    const unit = line.unit ?? carried(asNew);
    const isLength = field(line.now).type === "length";
    if (line.asNew === null) {
      // A line of what is known of the item, such as its construction, has it where other lines have the as-new size.
      const isCheck = readText(asNew) === "";
      cells.set(line.now, sized(isCheck ? now : readText(now) === "" ? asNew : now, isLength ? unit : null));
      continue;
    }
    cells.set(line.now, sized(now, isLength ? unit : null));
    const before = cells.get(line.asNew);
    if (readText(asNew) !== "" && before !== undefined && readText(before) !== readText(asNew))
      return { ok: false, why: `"${label}" and another line give ${field(line.asNew).heading} as two sizes` };
    if (readText(asNew) !== "") cells.set(line.asNew, sized(asNew, line.unit));
  }
  // What was seen is heard as a remark, and as the sheet's own word on the item: what is no plain good word asks.
  const remarks = [readText(cells.get("remarks")), ...seen].filter((text) => text !== "");
  if (remarks.length > 0) cells.set("remarks", remarks.join("; "));
  const against = seen.filter(speaksAgainst);
  if (against.length > 0) cells.set("result", against.join("; "));
  return { ok: true, cells, names };
}
/** A bare size takes the unit of the size beside it. */
const sized = (cell: CellValue, unit: Unit | null): CellValue => (unit === null ? cell : withUnit(cell, unit));
/** Verdict of one item from its list. A check that its kind needs and that has no line, or a blank, is missing. */
export function judgeList(gear: CellValue, lines: readonly ListLine[], judging: Judging): ItemVerdict {
  const read = cellsOfList(gear, lines);
  if (!read.ok) return unjudged(`${capital(read.why)}.`);
  const judge = new LogJudge({ fields: [...read.cells.keys()], units: new Map(), names: read.names }, judging);
  return judge.judgeCells(read.cells);
}

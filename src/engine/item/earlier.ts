/** Older readings: metal does not grow back, and a crack does not close. One that was worse asks until a repair is recorded. */
import { fitOf } from "../check/compare";
import { type Finding, ofItem } from "../check/finding";
import { field, type FieldId } from "../columns";
import { GEAR } from "../gear/index";
import type { EarlierCell } from "../log/besides";
import type { Cells } from "../log/cells";
import { type Exact, larger } from "../numbers/exact";
import { convert, type Unit } from "../numbers/lengths";
import type { CellValue } from "../reading/cell-value";
import { readLength } from "../reading/length";
import { readCount, readDegrees, readPlain } from "../reading/number";
import { readSeen } from "../reading/observation";
import type { Read } from "../reading/read";
import { readRemark, tellsRepair } from "../reading/remark";
import { readResult } from "../reading/result";
import { readText } from "../reading/text";

export function earlierFindings(cells: Cells, earlier: readonly EarlierCell[]): readonly Finding[] {
  if (earlier.length === 0 || tellsRepair(readText(cells.value("remarks")))) return [];
  return earlier.flatMap((one) => {
    const how = compare(cells, one);
    if (how === "no worse") return [];
    const at = { field: one.field, heading: one.heading, typed: readText(one.cell) };
    const name = `older reading of ${field(one.field).heading.toLowerCase()}`;
    return how === "worse"
      ? [
          ofItem("record", "EXAMINE", name, {
            ...at,
            because: "is worse than today's reading, and such damage does not heal",
            type: "look again; where it was repaired or replaced, say so under Remarks",
          }),
        ]
      : [ofItem("unreadable", "NO VERDICT", name, { ...at, because: "it cannot be read; put the reading there, or clear it" })];
  });
}
type How = "worse" | "no worse" | "unreadable";
function compare(cells: Cells, { field: id, cell, unit }: EarlierCell): How {
  const { type, soundWords = [], faultWords = [] } = field(id);
  if (id === "result") {
    const read = readResult(cell);
    return read === null || read.said === "good" ? "no worse" : "worse";
  }
  if (id === "remarks") return readRemark(readText(cell)) === null ? "no worse" : "worse";
  if (type === "sound" || type === "fault") {
    const also = { mayBeAbsent: true, sound: soundWords, fault: faultWords };
    const before = readSeen(cell, type, also);
    if (before.kind === "refused") return "unreadable";
    return before.kind === "value" && before.value === "fault" ? "worse" : "no worse";
  }
  const before = figure(id, cell, unit);
  const today = figure(id, cells.value(id), cells.unit(id));
  if (before.kind === "refused") return "unreadable";
  // A reading of today that is missing or unreadable is asked for by its own check.
  if (before.kind === "missing" || today.kind !== "value") return "no worse";
  const more = larger(before.value, today.value) === before.value;
  if (before.value.equals(today.value) || more !== moreIsWorse(id)) return "no worse";
  return type === "length" && !today.value.equals(0) && fitOf(today.value, before.value, more ? "larger" : "smaller") === "noise"
    ? "no worse"
    : "worse";
}
const CHECKS = GEAR.flatMap(({ checks }) => checks);
/** Openings, lengths of chain, bends, clearances and counts of broken wires grow with damage. */
const GROW: ReadonlySet<FieldId> = new Set(
  CHECKS.filter(({ kind }) => ["growth", "gap", "angle", "count", "category", "nick"].includes(kind)).map(({ measured }) => measured),
);
const moreIsWorse = (id: FieldId): boolean => GROW.has(id) || id === "bend";
function figure(id: FieldId, cell: CellValue, unit: Unit | null): Read<Exact> {
  const { type } = field(id);
  if (type === "count") return readCount(cell);
  if (type === "angle") return readDegrees(cell);
  if (type !== "length") return readPlain(cell);
  const read = readLength(cell, { assume: unit, zero: true });
  return read.kind === "value" ? { ...read, value: convert(read.value.size, read.value.unit, "mm") } : read;
}

import { field, type FieldId } from "../../engine/columns";
import { otherRating } from "../../engine/lift/leg-words";
import type { HeadingMatch } from "../../engine/log/match-headings";
import { withUnit } from "../../engine/log/merge-columns";
import { showDate } from "../../engine/numbers/calendar";
import { toNumber } from "../../engine/numbers/exact";
import { namedUnit, type Unit } from "../../engine/numbers/lengths";
import type { CellValue } from "../../engine/reading/cell-value";
import { readDate } from "../../engine/reading/date";
import { readLength } from "../../engine/reading/length";
import { type LoadUnit, readLoad } from "../../engine/reading/load";
import { readCount, readDegrees } from "../../engine/reading/number";
import { isDateCell, readText } from "../../engine/reading/text";
import { readTorque, torqueUnitOfHeading } from "../../engine/reading/torque";
import type { Written } from "../kit/in-parts";
import { inputFormat } from "./columns";

/** Cell of a log as the register keeps it. */
export function written(id: FieldId, cell: CellValue, columnUnit: Unit | null, rowUnit: Unit | null): Written {
  const { type } = field(id);
  const text = readText(cell);
  // An error of the log is kept as words, so that it does not run through the register's formulas.
  if (/^#[A-Z0-9/_]+[!?]?$/i.test(text)) return `${inputFormat(id) === "@" ? "" : "'"}${text} (error in the log)`;
  if (type === "date") {
    const read = readDate(cell);
    // A date cell that is none, such as a year, is kept as the figure that it is: shown as a day it would pass for one.
    return read.kind === "value" ? read.value : text === "" ? "" : `'${isDateCell(cell) ? read.text : text}`;
  }
  if (type === "count" || type === "angle") {
    if (cell === 0) return 0;
    const read = type === "count" ? readCount(cell) : readDegrees(cell);
    return read.kind === "value" ? toNumber(read.value) : text === "" ? "" : `'${text}`;
  }
  if (type === "length") return lengthText(cell, columnUnit, rowUnit);
  // A bare size takes the row's unit, so that of its own heading goes with it where the row says another.
  if (id === "size" && columnUnit !== null && columnUnit !== rowUnit && isBareSize(cell)) return lengthText(cell, columnUnit, rowUnit);
  return isDateCell(cell) ? showDate(cell.serial) : typeof cell === "string" ? cell.trim() : text;
}
/** A length keeps its words; a bare figure whose unit came from its heading carries the unit where the row says another. */
function lengthText(cell: CellValue, columnUnit: Unit | null, rowUnit: Unit | null): string {
  if (isDateCell(cell)) return showDate(cell.serial);
  const text = cell === 0 ? "0" : typeof cell === "string" ? cell.trim() : readText(cell);
  if (text === "" || columnUnit === null || columnUnit === rowUnit) return text;
  const said = cell === 0 ? `0 ${columnUnit}` : withUnit(text, columnUnit);
  return typeof said === "string" ? said : text;
}
/** A bare rated load carries the unit of its heading, which the register's own heading does not name; under one that names another load, the heading itself. */
export function ratedText(cell: CellValue, unit: LoadUnit | null, heading: string): string {
  const text = String(written("ratedLoad", cell, null, null));
  const bare = unit !== null && readLoad(cell).kind === "refused" && readLoad(cell, unit).kind === "value";
  const load = bare ? `${text} ${unit}` : text;
  return load !== "" && otherRating(heading) ? `${load} (${heading})` : load;
}
/** The same for a torque. */
export function torqueText(cell: CellValue, heading: string): string {
  const text = String(written("clipTorque", cell, null, null));
  const unit = torqueUnitOfHeading(heading);
  const bare = unit === "N·m" && readTorque(cell, null).kind === "refused" && readTorque(cell, unit).kind === "value";
  return bare ? `${text} ${unit}` : text;
}
const isBareSize = (cell: CellValue): boolean =>
  readLength(cell, { assume: null }).kind === "refused" && readLength(cell, { assume: "in" }).kind === "value";
/**
 * Unit of a row in the register: its own, else the one that its length headings agree on. Not beside a bare size whose unit nobody
 * tells: a unit written into the row would answer for it, and the log has no verdict there.
 */
export function rowUnitOf(cells: ReadonlyMap<FieldId, CellValue>, headings: readonly HeadingMatch[]): Unit | null {
  const own = readText(cells.get("unit"));
  if (own !== "") return namedUnit(own)?.unit ?? null;
  const size = readText(cells.get("size"));
  if (/\d/.test(size) && !/[^\d\s./,-]/.test(size) && (headings.find((h) => h.field === "size")?.unit ?? null) === null) return null;
  const named = headings.filter((h) => h.unit !== null && h.field !== null && (h.field === "size" || field(h.field).type === "length"));
  const filled = named.filter((h) => h.field !== null && h.field !== "size" && readText(cells.get(h.field)) !== "");
  // Where nothing is measured yet, the headings say in which unit it will be.
  const units = new Set((filled.length > 0 ? filled : named).map((h) => h.unit));
  return units.size === 1 ? ([...units][0] ?? null) : null;
}
export const plain = (cell: CellValue): Written => (cell === null || cell === undefined ? "" : isDateCell(cell) ? cell.serial : cell);
export function shown(id: FieldId, value: Written): string {
  return field(id).type === "date" && typeof value === "number" ? showDate(value) : String(value).replace(/^'/, "");
}
/** What stands in the register is written back as it is; text in a column that is not text keeps its apostrophe. */
export function registerCell(id: FieldId, cell: CellValue): Written {
  const value = plain(cell);
  if (value === "") return "";
  const { type } = field(id);
  if (typeof value === "string" && (type === "date" || type === "count" || type === "angle")) return `'${value}`;
  return value;
}

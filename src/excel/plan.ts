/** What a register will hold, as plain data. Pure: no workbook, no clock. */
import { HOLDS } from "../engine/about";
import { BASES, type BasisId } from "../engine/bases";
import { isDateCell, readCount, readDate, readDegrees, readText } from "../engine/cell";
import { showDate } from "../engine/dates";
import { FIELD_IDS, field, type FieldId } from "../engine/fields";
import { GEAR } from "../engine/gear/index";
import { toNumber } from "../engine/exact";
import { key } from "../engine/headings";
import { loadUnitOfHeading, readLoad, type LoadUnit } from "../engine/load";
import type { CellValue, HeadingMatch, ItemResult, Report } from "../engine/model";
import { fieldsFor } from "../engine/report";
import { withUnit } from "../engine/row-cells";
import { otherRating } from "../engine/several-legs";
import { TAKES } from "../engine/takes";
import { readTorque, torqueUnitOfHeading } from "../engine/torque";
import { ACTIONS, DECISIONS, SYMBOLS } from "../engine/verdict";
import { namedUnit, type Unit } from "../engine/units";
import { copiedOf, NOTHING_COPIED, type Copied } from "./copied";
import { CAUTION, FRONT_COLUMNS, inputFormat, LOG_DIFFERS, REGISTER_SHEET, RESULT_COLUMNS, RESULT_HEADINGS } from "./layout";
import { mergeCell } from "./merge";
import type { LogPlace } from "./port";

/** A cell to write; text begins with an apostrophe where the column is not a text column. */
export type Written = string | number | boolean;

export interface RegisterPlan {
  readonly fields: readonly FieldId[];
  /** Headings of columns that people added to the register; kept at the right. */
  readonly extras: readonly string[];
  /** Input rows, in the order of `fields`. */
  readonly rows: readonly (readonly Written[])[];
  /** Rows of the extra columns, as formulas. */
  readonly extraRows: readonly (readonly Written[])[];
  readonly notes: readonly (readonly string[])[];
  readonly added: number;
  readonly kept: number;
  readonly differing: readonly { readonly id: string; readonly heading: string; readonly register: string; readonly log: string }[];
  readonly onlyInRegister: readonly string[];
  readonly sentences: readonly string[];
  /** For each row, what its cell "Log differs" holds. */
  readonly logDiffers: readonly string[];
  /** Rows where the log says what the register does not: new in the log, or changed in both. By id in small letters. */
  readonly changes: ReadonlyMap<string, LogChange>;
  /** What the log says now, for the next build. */
  readonly copied: Copied;
}

/** What the log says of an item that the register does not say. */
export interface LogChange {
  /** Cells in words: "Cracks: register none, log crack". */
  readonly cells: readonly string[];
  /** True when some cell was changed in both, or was emptied in the log: a build does not settle that. */
  readonly both: boolean;
}

/** The register as it stands: headings, values, and formulas where they differ. */
export interface OldRegister {
  readonly headings: readonly string[];
  readonly values: readonly (readonly CellValue[])[];
  readonly formulas: readonly (readonly CellValue[])[];
}

export type OldShape = { readonly ok: true; readonly columns: ReadonlyMap<FieldId, number>; readonly extras: readonly { readonly heading: string; readonly column: number }[] } | { readonly ok: false; readonly why: string };

/** Whether a table is a register of this add-in: its own headings, with an Id and the result columns. */
export function shapeOf(old: Pick<OldRegister, "headings">): OldShape {
  const byHeading = new Map(FIELD_IDS.map((id) => [key(field(id).heading), id]));
  const columns = new Map<FieldId, number>();
  const extras: { heading: string; column: number }[] = [];
  const results = new Set(RESULT_HEADINGS.map(key));
  old.headings.forEach((heading, column) => {
    const id = byHeading.get(key(heading));
    if (results.has(key(heading))) return;
    if (id !== undefined) columns.set(id, column);
    else extras.push({ heading, column });
  });
  const missing = ["Verdict", "Reason"].filter((h) => !old.headings.some((o) => key(o) === key(h)));
  if (!columns.has("id") || missing.length > 0) return { ok: false, why: `its table has no column ${[...(columns.has("id") ? [] : ["Id"]), ...missing].join(", ")}` };
  return { ok: true, columns, extras };
}

/** Cell of a log as the register keeps it. */
export function written(id: FieldId, cell: CellValue, columnUnit: Unit | null, rowUnit: Unit | null): Written {
  const { type } = field(id);
  const text = readText(cell);
  // An error of the log is kept as words, so that it does not run through the register's formulas.
  if (/^#[A-Z0-9/_]+[!?]?$/i.test(text)) return `${inputFormat(id) === "@" ? "" : "'"}${text} (error in the log)`;
  if (type === "date") {
    const read = readDate(cell);
    return read.kind === "value" ? read.value : text === "" ? "" : `'${text}`;
  }
  if (type === "count" || type === "angle") {
    if (cell === 0) return 0;
    const read = type === "count" ? readCount(cell) : readDegrees(cell);
    return read.kind === "value" ? toNumber(read.value) : text === "" ? "" : `'${text}`;
  }
  if (type === "length") return lengthText(cell, columnUnit, rowUnit);
  return isDateCell(cell) ? showDate(cell.serial) : (typeof cell === "string" ? cell.trim() : text);
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
function ratedText(cell: CellValue, unit: LoadUnit | null, heading: string): string {
  const text = String(written("ratedLoad", cell, null, null));
  const bare = unit !== null && readLoad(cell).kind === "refused" && readLoad(cell, unit).kind === "value";
  const load = bare ? `${text} ${unit}` : text;
  return load !== "" && otherRating(heading) ? `${load} (${heading})` : load;
}

/** The same for a torque. */
function torqueText(cell: CellValue, heading: string): string {
  const text = String(written("clipTorque", cell, null, null));
  const unit = torqueUnitOfHeading(heading);
  const bare = unit === "N·m" && readTorque(cell, null).kind === "refused" && readTorque(cell, unit).kind === "value";
  return bare ? `${text} ${unit}` : text;
}

/** Unit of a row in the register: its own, else the one that its length headings agree on. */
function rowUnitOf(cells: ReadonlyMap<FieldId, CellValue>, headings: readonly HeadingMatch[]): Unit | null {
  const own = readText(cells.get("unit"));
  if (own !== "") return namedUnit(own)?.unit ?? null;
  const units = new Set(headings.filter((h) => h.field !== null && field(h.field).type === "length" && h.unit !== null && readText(cells.get(h.field)) !== "").map((h) => h.unit));
  return units.size === 1 ? ([...units][0] ?? null) : null;
}

/** Service of an item of which nothing is said: no rule allows a longer interval. */
const NORMAL = "normal";

export interface Before {
  readonly register: OldRegister | null;
  readonly copied: Copied;
}

/** Ids and inspection state from the log on a sheet into register rows; what people typed in the register stays. */
export function planRegister(report: Report, place: LogPlace, { register: old, copied: lastCopied }: Before): RegisterPlan {
  const shape = old === null ? null : shapeOf(old);
  const oldColumns = shape?.ok === true ? shape.columns : new Map<FieldId, number>();
  const extras = shape?.ok === true ? shape.extras : [];
  const oldRows = new Map<string, number>();
  old?.values.forEach((line, index) => {
    const id = readText(line[oldColumns.get("id") ?? -1]);
    if (id !== "") oldRows.set(id.toLowerCase(), index);
  });
  const present = new Set<FieldId>([...report.headings.flatMap((h) => (h.field === null ? [] : [h.field])), ...oldColumns.keys()]);
  const kinds = new Set(report.items.flatMap((item) => (item.gear === null ? [] : [item.gear])));
  if (kinds.size === 0) for (const kind of GEAR) kinds.add(kind.id);
  for (const line of old?.values ?? []) kinds.add(readText(line[oldColumns.get("gear") ?? -1]));
  const fields = fieldsFor(kinds, present, report.basis);
  const columnUnits = new Map(report.headings.flatMap((h) => (h.field === null || h.unit === null ? [] : [[h.field, h.unit] as const])));

  const headingOf = (id: FieldId): string => report.headings.find((h) => h.field === id)?.heading ?? "";
  const loadUnit = loadUnitOfHeading(headingOf("ratedLoad"));

  const rows: Written[][] = [];
  const extraRows: Written[][] = [];
  const logDiffers: string[] = [];
  const changes = new Map<string, LogChange>();
  // What was copied from another sheet tells nothing about this one: where they differ, both stand.
  const own = place.sheet === REGISTER_SHEET;
  const known = copiedOf(lastCopied, place) ? lastCopied : NOTHING_COPIED;
  const copied = new Map<string, ReadonlyMap<FieldId, string>>();
  const saidBefore = (index: number | undefined): string => readText(old?.values[index ?? -1]?.[old.headings.findIndex((heading) => key(heading) === key(LOG_DIFFERS))]);
  let followed = 0;
  const differing: RegisterPlan["differing"][number][] = [];
  let added = 0, kept = 0, normal = 0;
  const taken = new Set<string>();
  const keepExtra = (index: number | undefined): Written[] => extras.map(({ column }) => (index === undefined ? "" : plain(old?.formulas[index]?.[column])));

  for (const item of report.items) {
    const index = oldRows.get(item.id.toLowerCase());
    const before = index === undefined ? undefined : old?.values[index];
    if (before === undefined) added += 1;
    else kept += 1;
    taken.add(item.id.toLowerCase());
    const cells = new Map<FieldId, string>();
    const said: { readonly how: "taken" | "apart"; readonly words: string }[] = [];
    const merged = (id: FieldId, log: Written): Written => {
      const last = known.rows.get(item.id.toLowerCase())?.get(id) ?? "";
      const stands = before === undefined ? null : registerCell(id, before[oldColumns.get(id) ?? -1]);
      // Where the log says nothing of the service, the build itself wrote "normal".
      const mine = id === "service" && last === "" && stands === NORMAL ? "" : stands;
      const merge = mergeCell(id, log, mine, last);
      if (merge.copied !== "") cells.set(id, merge.copied);
      if (mine === null || merge.how === "same") return merge.value;
      const both = { register: shown(id, mine), log: shown(id, log) };
      if (merge.how !== "typed") said.push({ how: merge.how, words: `${field(id).heading}: register ${both.register}, log ${both.log === "" ? "blank" : both.log}` });
      if (merge.how === "taken") followed += 1;
      else if (both.log !== "" || merge.how === "apart") differing.push({ id: item.id, heading: field(id).heading, ...both });
      return merge.value;
    };
    const logUnit = rowUnitOf(item.cells, report.headings);
    const unit = merged("unit", readText(item.cells.get("unit")) === "" ? (logUnit ?? "") : written("unit", item.cells.get("unit"), null, null));
    const rowUnit = namedUnit(readText(unit))?.unit ?? logUnit;
    const line = fields.map((id): Written => {
      if (id === "unit") return unit;
      const log = id === "ratedLoad" ? ratedText(item.cells.get(id), loadUnit, headingOf(id)) : id === "clipTorque" ? torqueText(item.cells.get(id), headingOf(id)) : written(id, item.cells.get(id), columnUnits.get(id) ?? logUnit, rowUnit);
      const value = merged(id, log);
      if (id !== "service" || value !== "") return value;
      if (readText(before?.[oldColumns.get(id) ?? -1]) === "") normal += 1;
      return NORMAL;
    });
    copied.set(item.id.toLowerCase(), cells.set("id", item.id));
    if (said.length > 0) changes.set(item.id.toLowerCase(), { cells: said.map(({ words }) => words), both: said.some(({ how }) => how === "apart") });
    // The register read as its own log cannot settle what the log said.
    logDiffers.push(own ? saidBefore(index) : said.some(({ how }) => how === "apart") ? differsText(item, said.filter(({ how }) => how === "apart").map(({ words }) => words)) : "");
    rows.push(line);
    extraRows.push(keepExtra(index));
  }
  const onlyInRegister: string[] = [];
  old?.values.forEach((line, index) => {
    const id = readText(line[oldColumns.get("id") ?? -1]);
    if (taken.has(id.toLowerCase()) || line.every((cell, column) => ![...oldColumns.values()].includes(column) || readText(cell) === "")) return;
    if (id !== "") onlyInRegister.push(id);
    const last = known.rows.get(id.toLowerCase());
    if (last) copied.set(id.toLowerCase(), last);
    logDiffers.push(saidBefore(index));
    rows.push(fields.map((f) => (oldColumns.has(f) ? registerCell(f, line[oldColumns.get(f) ?? -1]) : "")));
    extraRows.push(keepExtra(index));
  });
  const stated = own ? logDiffers : partsOfAssemblies(report, changes, logDiffers);
  const both = [...changes].filter(([, change]) => change.both).map(([id]) => report.items.find((item) => item.id.toLowerCase() === id)?.id ?? id);
  return {
    logDiffers: stated, changes, copied: own ? lastCopied : { source: { id: place.sheetId ?? "", name: place.sheet }, rows: copied },
    fields, extras: extras.map((e) => e.heading), rows, extraRows, notes: notesFor(fields, report.basis), added, kept, differing, onlyInRegister,
    sentences: [
      ...(normal === 0 ? [] : [`Service was blank for ${normal.toLocaleString("en-US")} ${normal === 1 ? "item" : "items"} and was written as normal (12 months, the longest any rule allows); change it where the work is severe.`]),
      ...(followed === 0 ? [] : [`${followed.toLocaleString("en-US")} ${followed === 1 ? "cell that nobody had changed in the register took its" : "cells that nobody had changed in the register took their"} new value from the log.`]),
      ...(both.length === 0 ? [] : [`Changed both in the register and in the log: ${some(both)}. The worse verdict of the two counts until both say the same and the register is rebuilt.`]),
    ],
  };
}

/** As many as are read at a glance. */
const some = (list: readonly string[], joint = ", "): string => (list.length > 3 ? `${list.slice(0, 3).join(joint)} and ${(list.length - 3).toLocaleString("en-US")} more` : list.join(joint));

/** The log's decision first: the register's formula reads it there. */
function differsText(item: ItemResult, cells: readonly string[]): string {
  return `${item.verdict.decision}: so says the log, which differs from the register (${some(cells, "; ")}); the worse of the two counts until both agree.`;
}

/** An overload that only the log tells of reaches the other parts of its assembly as well. */
function partsOfAssemblies(report: Report, changes: ReadonlyMap<string, LogChange>, texts: readonly string[]): readonly string[] {
  const reached = overloadedWith(report, (id) => changes.get(id)?.both === true);
  return texts.map((text, index) => {
    const item = report.items[index];
    return text === "" && item !== undefined && reached.has(item.id.toLowerCase()) ? differsText(item, ["another part of its assembly"]) : text;
  });
}

/** Ids, in small letters, of items that the log finds overloaded together with one of those asked for. */
export function overloadedWith(report: Report, asked: (id: string) => boolean): ReadonlySet<string> {
  const assemblies = new Set(report.items.filter((item) => asked(item.id.toLowerCase())).map((item) => item.assembly.toLowerCase()));
  return new Set(report.items.filter((item) => item.assembly !== "" && assemblies.has(item.assembly.toLowerCase()) && item.verdict.findings.some(({ check }) => check === "assembly")).map((item) => item.id.toLowerCase()));
}

const plain = (cell: CellValue): Written => (cell === null || cell === undefined ? "" : isDateCell(cell) ? cell.serial : cell);

function shown(id: FieldId, value: Written): string {
  return field(id).type === "date" && typeof value === "number" ? showDate(value) : String(value).replace(/^'/, "");
}

/** What stands in the register is written back as it is; text in a column that is not text keeps its apostrophe. */
function registerCell(id: FieldId, cell: CellValue): Written {
  const value = plain(cell);
  if (value === "") return "";
  const { type } = field(id);
  if (typeof value === "string" && (type === "date" || type === "count" || type === "angle")) return `'${value}`;
  return value;
}

/** The note sheet: what each column takes, what the decisions mean, which rules are in force. */
function notesFor(fields: readonly FieldId[], basis: readonly BasisId[]): readonly (readonly string[])[] {
  return [
    ["Gear notes", ""],
    [CAUTION, ""],
    ["", ""],
    ["Rules in force", ""],
    ...basis.map((id) => [BASES[id].name, HOLDS[id]]),
    ["", ""],
    ["Decision", "What to do"],
    ...DECISIONS.map((d) => [`${SYMBOLS[d]} ${d}`, ACTIONS[d]]),
    ["", ""],
    ["Rebuilding", "A cell that nobody changed here follows the log when the register is rebuilt; what the log said last is kept on a hidden sheet of the add-in. What was typed here stays. A blank in the log clears nothing here."],
    ["", ""],
    ["Printing", "Flag, id, gear and what was worked out, one page wide. To print every column, clear the print area under Page Layout."],
    ["", ""],
    ["Column", "What it takes"],
    ...FRONT_COLUMNS.map((c) => [c.heading, c.note]),
    ...fields.map((id) => [field(id).heading, TAKES[id]]),
    ...RESULT_COLUMNS.map((c) => [c.heading, c.note]),
  ];
}

/** What a register will hold, as plain data. Pure: no workbook, no clock. */
import { field, type FieldId } from "../../engine/columns";
import { GEAR } from "../../engine/gear/index";
import type { OpenCell } from "../../engine/log/besides";
import { key } from "../../engine/log/match-headings";
import { namedUnit } from "../../engine/numbers/lengths";
import type { CellValue } from "../../engine/reading/cell-value";
import { loadUnitOfHeading } from "../../engine/reading/load";
import { readText } from "../../engine/reading/text";
import type { ItemResult, Report } from "../../engine/report/model";
import { fieldsFor } from "../../engine/report/report";
import { isLent } from "../../engine/types/lent";
import type { Written } from "../kit/in-parts";
import type { LogPlace } from "../log-place";
import { LOG_DIFFERS } from "./columns";
import { type Copied, copiedOf, NOTHING_COPIED } from "./copied-sheet";
import { grownLayout, judgedRuns, type Layout, newLayout, roleOf } from "./layout";
import { type CellMerge, mergeCell } from "./merge-cell";
import { notesFor } from "./notes-sheet";
import type { Before, LogChange, PlannedRow, RegisterPlan } from "./plan";
import { type OldRegister, shapeOf } from "./shape";
import { differsText, partsOfAssemblies, some } from "./worse-of-both";
import { ratedText, registerCell, rowUnitOf, shown, torqueText, written } from "./written-cell";

/** Service of an item of which nothing is said: no rule allows a longer interval. */
const NORMAL = "normal";
const NO_REGISTER: OldRegister = { headings: [], values: [], isFormula: () => false };
/** Ids and inspection state from a log into register rows; what people typed in the register stays, where it stands. */
export function planRegister(report: Report, place: LogPlace, { register, copied: lastCopied, own }: Before): RegisterPlan {
  const old = register ?? NO_REGISTER;
  const shape = register === null ? null : shapeOf(register);
  const oldColumns = shape?.ok === true ? shape.columns : new Map<FieldId, number>();
  const oldCell = (row: number, id: FieldId): CellValue => old.values[row]?.[oldColumns.get(id) ?? -1];
  const fields = fieldsOf(report, old, oldColumns);
  const carried = carriedHeadings(report, own);
  const layout: Layout = register === null ? newLayout(fields, carried) : grownLayout(old.headings, fields, carried);
  const columnOf = new Map(layout.columns.flatMap(({ role }, index) => (role.kind === "input" ? [[role.field, index] as const] : [])));

  // What was copied from another sheet tells nothing about this one: where they differ, both stand.
  const known = copiedOf(lastCopied, place) ? lastCopied : NOTHING_COPIED;
  const writeOf = writer(report, fields);
  const copied = new Map<string, ReadonlyMap<FieldId, string>>();
  /** Read as its own log, the register copies nothing but what Gear types lent it. */
  const lentCells = new Map<string, ReadonlyMap<FieldId, string>>();
  const changes = new Map<string, LogChange>();
  const differing: RegisterPlan["differing"][number][] = [];
  const counts = { followed: 0, normal: 0, added: 0, kept: 0 };
  const saidColumn = old.headings.findIndex((heading) => key(heading) === key(LOG_DIFFERS));
  const saidBefore = (row: number | null): string => (row === null ? "" : readText(old.values[row]?.[saidColumn]));

  const planItem = (item: ItemResult, at: number | null): PlannedRow => {
    const id = item.id.toLowerCase();
    if (at === null) counts.added += 1;
    else counts.kept += 1;
    const cells = new Map<FieldId, string>();
    const before = { copied: lastCopied.rows.get(id), own };
    const said: { readonly how: "taken" | "apart"; readonly words: string }[] = [];
    const merged = (name: FieldId, log: Written): Written => {
      const last = known.rows.get(id)?.get(name) ?? "";
      const stands = at === null ? null : registerCell(name, oldCell(at, name));
      // Where the log says nothing of the service, the build itself wrote "normal".
      const mine = name === "service" && last === "" && stands === NORMAL ? "" : stands;
      const lent = at === null || old.isFormula(at, oldColumns.get(name) ?? -1) ? null : lentHere(name, item, stands, before);
      if (lent !== null) {
        if (lent.copied !== "") cells.set(name, lent.copied);
        if (lent.value === stands) return lent.value;
        const both = { register: shown(name, stands ?? ""), log: shown(name, lent.value) };
        said.push({ how: "taken", words: words(name, both) });
        counts.followed += 1;
        return lent.value;
      }
      const merge = keepFormula(mergeCell(name, log, mine, last), mine, at !== null && old.isFormula(at, oldColumns.get(name) ?? -1), last);
      if (merge.copied !== "") cells.set(name, merge.copied);
      if (mine === null || merge.how === "same") return merge.value;
      const both = { register: shown(name, mine), log: shown(name, log) };
      if (merge.how !== "typed") said.push({ how: merge.how, words: words(name, both) });
      if (merge.how === "taken") counts.followed += 1;
      else if (both.log !== "" || merge.how === "apart") differing.push({ id: item.id, heading: field(name).heading, ...both });
      return merge.value;
    };
    const values = writeOf(item, merged);
    const isBlankService = values.get("service") === "";
    if (isBlankService) {
      if (at === null || readText(oldCell(at, "service")) === "") counts.normal += 1;
      values.set("service", NORMAL);
    }
    copied.set(id, cells.set("id", item.id));
    if (own && item.lent !== undefined) lentCells.set(id, cells);
    if (said.length > 0) changes.set(id, { cells: said.map(({ words }) => words), both: said.some(({ how }) => how === "apart") });
    const apart = said.filter(({ how }) => how === "apart").map(({ words }) => words);
    return {
      at,
      cells: new Map([...differences(values, at), ...carriedCells(item, layout, old, at)]),
      // The register read as its own log cannot settle what the log said.
      logDiffers: own ? saidBefore(at) : apart.length > 0 ? differsText(item, apart) : "",
      item: id,
      gear: readText(values.get("gear")),
    };
  };
  const differences = (values: ReadonlyMap<FieldId, Written>, at: number | null): ReadonlyMap<number, Written> => {
    const cells = new Map<number, Written>();
    for (const [id, value] of values) {
      const column = columnOf.get(id);
      if (column === undefined) continue;
      const stands = at === null ? "" : registerCell(id, oldCell(at, id));
      if (value !== stands && !(at !== null && old.isFormula(at, oldColumns.get(id) ?? -1))) cells.set(column, value);
    }
    return cells;
  };
  const keepRow = (at: number): PlannedRow => {
    const id = readText(oldCell(at, "id"));
    const last = known.rows.get(id.toLowerCase());
    if (id !== "" && last) copied.set(id.toLowerCase(), last);
    return { at, cells: new Map(), logDiffers: saidBefore(at), item: "", gear: readText(oldCell(at, "gear")) };
  };

  const items = new Map(report.items.map((item) => [item.id.toLowerCase(), item]));
  const rows: PlannedRow[] = [];
  const planned = new Map<string, number>();
  const onlyInRegister: string[] = [];
  old.values.forEach((_, at) => {
    const id = readText(oldCell(at, "id"));
    const item = id === "" ? undefined : items.get(id.toLowerCase());
    if (id !== "" && item === undefined) onlyInRegister.push(id);
    if (item) planned.set(id.toLowerCase(), rows.length);
    rows.push(item ? planItem(item, at) : keepRow(at));
  });
  // Rows that stand empty at the end are filled before the table grows.
  const empty = emptyAtEnd(old, oldColumns);
  for (const item of report.items) {
    if (planned.has(item.id.toLowerCase())) continue;
    const free = empty.shift();
    planned.set(item.id.toLowerCase(), free ?? rows.length);
    const row = planItem(item, null);
    if (free === undefined) rows.push(row);
    else rows[free] = { ...row, at: free };
  }
  const stated = own ? null : statedBy(report, changes, rows, planned);
  const both = [...changes].filter(([, change]) => change.both).map(([id]) => items.get(id)?.id ?? id);
  return {
    layout,
    renames: own ? new Map() : answeredHeadings(report, layout),
    fields,
    rows: stated ?? rows,
    assemblies: new Set([
      ...report.items.map((item) => item.assembly.toLowerCase()),
      ...old.values.map((_, at) => readText(oldCell(at, "assembly")).toLowerCase()),
    ]).size,
    changes,
    copied: own
      ? { ...lastCopied, rows: withLentCells(lastCopied.rows, lentCells) }
      : { source: { id: place.sheetId ?? "", name: place.sheet }, rows: copied },
    notes: notesFor(fields, report.basis),
    added: counts.added,
    kept: counts.kept,
    differing,
    onlyInRegister,
    sentences: sentences(counts, both),
  };
}
/** Columns of the log whose headings are not understood and that hold something: they are judged in the register as well, so that they ask there too. */
function carriedHeadings(report: Report, own: boolean): readonly string[] {
  if (own) return [];
  const filled = new Set(report.items.flatMap((item) => asking(item).map(({ heading }) => heading)));
  return [...filled].filter((heading) => heading !== "" && roleOf(heading).kind === "own");
}
const asking = (item: ItemResult): readonly OpenCell[] => (item.besides?.open ?? []).filter(({ field }) => field === undefined);
/** What such columns hold for an item; a cell that is filled in the register stays. */
function carriedCells(item: ItemResult, { columns }: Layout, old: OldRegister, at: number | null): readonly (readonly [number, Written])[] {
  const open = asking(item);
  return columns.flatMap(({ heading, role, from }, column) => {
    if (role.kind !== "carried") return [];
    const text = [...new Set(open.filter((one) => one.heading === heading).map((one) => one.text))].join("; ");
    const stands = at === null || from === null ? "" : readText(old.values[at]?.[from]);
    return text === "" || stands !== "" ? [] : [[column, text] as const];
  });
}
/** Columns that were carried and that the user has answered since: put aside, under a heading that says so in every formula. */
function answeredHeadings(report: Report, layout: Layout): ReadonlyMap<number, string> {
  const answered = new Set(report.headings.filter(({ chosen }) => chosen).map(({ heading }) => heading));
  const inside = judgedRuns(layout);
  return new Map(
    layout.columns.flatMap(({ heading, role, from }, column) =>
      role.kind === "own" &&
      from !== null &&
      answered.has(heading) &&
      !/^not judged:/i.test(heading) &&
      inside.some((run) => column >= run.from && column < run.from + run.count)
        ? [[column, `Not judged: ${heading}`] as const]
        : [],
    ),
  );
}
function fieldsOf(report: Report, old: OldRegister, oldColumns: ReadonlyMap<FieldId, number>): readonly FieldId[] {
  const lent = report.items.flatMap((item) => (item.lent === undefined ? [] : [...item.lent.sizes.keys(), "asNewFrom" as const]));
  const present = new Set<FieldId>([...report.headings.flatMap((h) => (h.field === null ? [] : [h.field])), ...oldColumns.keys(), ...lent]);
  const kinds = new Set(report.items.flatMap((item) => (item.gear === null ? [] : [item.gear])));
  if (kinds.size === 0) for (const kind of GEAR) kinds.add(kind.id);
  for (const line of old.values) kinds.add(readText(line[oldColumns.get("gear") ?? -1]));
  return fieldsFor(kinds, present, report.basis);
}
/** What the register would hold of an item, each cell after `merged` has looked at what stands there. */
function writer(
  report: Report,
  fields: readonly FieldId[],
): (item: ItemResult, merged: (id: FieldId, log: Written) => Written) => Map<FieldId, Written> {
  const columnUnits = new Map(report.headings.flatMap((h) => (h.field === null || h.unit === null ? [] : [[h.field, h.unit] as const])));
  const headingOf = (id: FieldId): string => report.headings.find((h) => h.field === id)?.heading ?? "";
  const loadUnit = loadUnitOfHeading(headingOf("ratedLoad"));
  return (item, merged) => {
    const logUnit = rowUnitOf(item.cells, report.headings);
    const unit = merged(
      "unit",
      readText(item.cells.get("unit")) === "" ? (logUnit ?? "") : written("unit", item.cells.get("unit"), null, null),
    );
    const rowUnit = namedUnit(readText(unit))?.unit ?? logUnit;
    const values = new Map<FieldId, Written>([["unit", unit]]);
    for (const id of fields) {
      if (id === "unit") continue;
      const log =
        id === "ratedLoad"
          ? ratedText(item.cells.get(id), loadUnit, headingOf(id))
          : id === "clipTorque"
            ? torqueText(item.cells.get(id), headingOf(id))
            : written(id, item.cells.get(id), columnUnits.get(id) ?? (id === "size" ? null : logUnit), rowUnit);
      values.set(id, merged(id, log));
    }
    return values;
  };
}
const words = (name: FieldId, both: { readonly register: string; readonly log: string }): string =>
  `${field(name).heading}: register ${both.register === "" ? "blank" : both.register}, log ${both.log === "" ? "blank" : both.log}`;
/**
 * A cell that Gear types fills: what an earlier build filled follows the type as it is now, and a size of the item's own that
 * somebody typed over it stays. Null where the cell is none of those, or where the log has a size of its own.
 */
function lentHere(
  name: FieldId,
  { lent, cells }: ItemResult,
  stands: Written | null,
  { copied, own }: { readonly copied: ReadonlyMap<FieldId, string> | undefined; readonly own: boolean },
): { readonly value: Written; readonly copied: string } | null {
  if (lent === undefined || stands === null || stands === "" || !(name === "asNewFrom" || name.endsWith("New"))) return null;
  const last = copied?.get(name) ?? "";
  const before = isLent(copied?.get("asNewFrom") ?? "") && String(stands) === last;
  if (own && !before) return null;
  const fills = name === "asNewFrom" ? lent.filled.length > 0 : lent.filled.includes(name);
  if (!own && !fills && readText(cells.get(name)) !== "") return null;
  const says = name === "asNewFrom" ? lent.from : (lent.sizes.get(name) ?? "");
  return before ? { value: says, copied: says } : fills ? { value: stands, copied: last } : null;
}
function withLentCells(
  rows: Copied["rows"],
  lent: ReadonlyMap<string, ReadonlyMap<FieldId, string>>,
): ReadonlyMap<string, ReadonlyMap<FieldId, string>> {
  const all = new Map(rows);
  for (const [id, cells] of lent) {
    const row = new Map(all.get(id) ?? [["id", cells.get("id") ?? id] as const]);
    for (const [name, text] of cells) if (name === "asNewFrom" || name.endsWith("New")) row.set(name, text);
    all.set(id, row);
  }
  return all;
}
/** A formula that somebody put into an input column stays; where the log says another thing now, both stand apart. */
function keepFormula(merge: CellMerge, mine: Written | null, formula: boolean, last: string): CellMerge {
  return formula && merge.how === "taken" ? { value: mine ?? "", how: "apart", copied: last } : merge;
}
function emptyAtEnd(old: OldRegister, oldColumns: ReadonlyMap<FieldId, number>): number[] {
  const typed = new Set(oldColumns.values());
  const isEmpty = (line: readonly CellValue[]): boolean =>
    line.every((value, column) => !typed.has(column) || readText(value) === "") && line.every((value) => readText(value) === "");
  let first = old.values.length;
  while (first > 0 && isEmpty(old.values[first - 1] ?? [])) first -= 1;
  return Array.from({ length: old.values.length - first }, (_, index) => first + index);
}
/** Rows with what the log says of their assemblies as well. */
function statedBy(
  report: Report,
  changes: ReadonlyMap<string, LogChange>,
  rows: readonly PlannedRow[],
  planned: ReadonlyMap<string, number>,
): readonly PlannedRow[] {
  const texts = partsOfAssemblies(
    report,
    changes,
    report.items.map((item) => rows[planned.get(item.id.toLowerCase()) ?? -1]?.logDiffers ?? ""),
  );
  const byRow = new Map(report.items.map((item, index) => [planned.get(item.id.toLowerCase()), texts[index] ?? ""]));
  return rows.map((row, index) => ({ ...row, logDiffers: byRow.get(index) ?? row.logDiffers }));
}
function sentences({ normal, followed }: { readonly normal: number; readonly followed: number }, both: readonly string[]): string[] {
  return [
    ...(normal === 0
      ? []
      : [
          `Service was blank for ${normal.toLocaleString("en-US")} ${normal === 1 ? "item" : "items"} and was written as normal; change it where the work is severe.`,
        ]),
    ...(followed === 0
      ? []
      : [
          `${followed.toLocaleString("en-US")} ${followed === 1 ? "cell that nobody had changed in the register took its" : "cells that nobody had changed in the register took their"} new value from the log.`,
        ]),
    ...(both.length === 0
      ? []
      : [
          `Changed both in the register and in the log: ${some(both)}. The worse verdict of the two counts until both say the same and the register is rebuilt.`,
        ]),
  ];
}

/** What a register will hold, as plain data. Pure: no workbook, no clock. */
import { field, type FieldId } from "../../engine/columns";
import { GEAR } from "../../engine/gear/index";
import { key } from "../../engine/log/match-headings";
import { namedUnit } from "../../engine/numbers/lengths";
import { loadUnitOfHeading } from "../../engine/reading/load";
import { readText } from "../../engine/reading/text";
import type { Report } from "../../engine/report/model";
import { fieldsFor } from "../../engine/report/report";
import type { Written } from "../kit/in-parts";
import { REGISTER_SHEET } from "../kit/sheets";
import type { LogPlace } from "../log-place";
import { LOG_DIFFERS } from "./columns";
import { copiedOf, NOTHING_COPIED } from "./copied-sheet";
import { mergeCell } from "./merge-cell";
import { notesFor } from "./notes-sheet";
import type { Before, LogChange, RegisterPlan } from "./plan";
import { shapeOf } from "./shape";
import { differsText, partsOfAssemblies, some } from "./worse-of-both";
import { plain, ratedText, registerCell, rowUnitOf, shown, torqueText, written } from "./written-cell";

/** Service of an item of which nothing is said: no rule allows a longer interval. */
const NORMAL = "normal";
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
  const saidBefore = (index: number | undefined): string =>
    readText(old?.values[index ?? -1]?.[old.headings.findIndex((heading) => key(heading) === key(LOG_DIFFERS))]);
  let followed = 0;
  const differing: RegisterPlan["differing"][number][] = [];
  let added = 0,
    kept = 0,
    normal = 0;
  const taken = new Set<string>();
  const keepExtra = (index: number | undefined): Written[] =>
    extras.map(({ column }) => (index === undefined ? "" : plain(old?.formulas[index]?.[column])));

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
      if (merge.how !== "typed")
        said.push({
          how: merge.how,
          words: `${field(id).heading}: register ${both.register}, log ${both.log === "" ? "blank" : both.log}`,
        });
      if (merge.how === "taken") followed += 1;
      else if (both.log !== "" || merge.how === "apart") differing.push({ id: item.id, heading: field(id).heading, ...both });
      return merge.value;
    };
    const logUnit = rowUnitOf(item.cells, report.headings);
    const unit = merged(
      "unit",
      readText(item.cells.get("unit")) === "" ? (logUnit ?? "") : written("unit", item.cells.get("unit"), null, null),
    );
    const rowUnit = namedUnit(readText(unit))?.unit ?? logUnit;
    const line = fields.map((id): Written => {
      if (id === "unit") return unit;
      const log =
        id === "ratedLoad"
          ? ratedText(item.cells.get(id), loadUnit, headingOf(id))
          : id === "clipTorque"
            ? torqueText(item.cells.get(id), headingOf(id))
            : written(id, item.cells.get(id), columnUnits.get(id) ?? logUnit, rowUnit);
      const value = merged(id, log);
      if (id !== "service" || value !== "") return value;
      if (readText(before?.[oldColumns.get(id) ?? -1]) === "") normal += 1;
      return NORMAL;
    });
    copied.set(item.id.toLowerCase(), cells.set("id", item.id));
    if (said.length > 0)
      changes.set(item.id.toLowerCase(), { cells: said.map(({ words }) => words), both: said.some(({ how }) => how === "apart") });
    // The register read as its own log cannot settle what the log said.
    logDiffers.push(
      own
        ? saidBefore(index)
        : said.some(({ how }) => how === "apart")
          ? differsText(
              item,
              said.filter(({ how }) => how === "apart").map(({ words }) => words),
            )
          : "",
    );
    rows.push(line);
    extraRows.push(keepExtra(index));
  }
  const onlyInRegister: string[] = [];
  old?.values.forEach((line, index) => {
    const id = readText(line[oldColumns.get("id") ?? -1]);
    if (taken.has(id.toLowerCase()) || line.every((cell, column) => ![...oldColumns.values()].includes(column) || readText(cell) === ""))
      return;
    if (id !== "") onlyInRegister.push(id);
    const last = known.rows.get(id.toLowerCase());
    if (last) copied.set(id.toLowerCase(), last);
    logDiffers.push(saidBefore(index));
    rows.push(fields.map((f) => (oldColumns.has(f) ? registerCell(f, line[oldColumns.get(f) ?? -1]) : "")));
    extraRows.push(keepExtra(index));
  });
  const stated = own ? logDiffers : partsOfAssemblies(report, changes, logDiffers);
  const both = [...changes]
    .filter(([, change]) => change.both)
    .map(([id]) => report.items.find((item) => item.id.toLowerCase() === id)?.id ?? id);
  return {
    logDiffers: stated,
    changes,
    copied: own ? lastCopied : { source: { id: place.sheetId ?? "", name: place.sheet }, rows: copied },
    fields,
    extras: extras.map((e) => e.heading),
    rows,
    extraRows,
    notes: notesFor(fields, report.basis),
    added,
    kept,
    differing,
    onlyInRegister,
    sentences: [
      ...(normal === 0
        ? []
        : [
            `Service was blank for ${normal.toLocaleString("en-US")} ${normal === 1 ? "item" : "items"} and was written as normal (12 months, the longest any rule allows); change it where the work is severe.`,
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
    ],
  };
}

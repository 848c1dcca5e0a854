/** One item: its cells, the checks of its gear kind, one verdict. */
import { comesOutWords } from "../check/comes-out-at";
import { type Finding, ofItem } from "../check/finding";
import { inUse, isFor, type Situation } from "../check/in-force";
import { columnOf, refusedFinding } from "../check/read-sizes";
import { evaluate } from "../check/run-check";
import { field, type FieldId } from "../columns";
import { neededFieldsOf } from "../gear/columns-of";
import type { GearKind } from "../gear/kind";
import type { Cells } from "../log/cells";
import { matchKind } from "../names/gear-name";
import { showDate } from "../numbers/calendar";
import type { CellValue } from "../reading/cell-value";
import { readDate } from "../reading/date";
import { type Length, readLength } from "../reading/length";
import { readText } from "../reading/text";
import type { HouseLimits } from "../rules/house-limits";
import { BASES, type BasisId, inForce } from "../rules/rule-sets";
import { ahead, later } from "./day";
import { withPublishedSizes } from "./published-sizes";
import { wordFindings } from "./remarks";
import { tagState, type TagState } from "./tag";
import { unreadDamage, UNKNOWN } from "./unread-damage";
import { readVariant } from "./variant";
import { conclude, type ItemVerdict, missingOf } from "./verdict";

/** An inspection that has not been yet: the record is wrong, and nothing that rests on it holds. */
function dateFinding(cells: Cells, asOf: number | null): Finding | null {
  const inspected = readDate(cells.value("inspected"));
  if (inspected.kind !== "value" || !later(inspected.value, asOf)) return null;
  return ofItem("date", "NO VERDICT", "date", {
    ...columnOf(cells, "inspected"),
    typed: inspected.text,
    because: ahead(asOf),
    type: "put the date right",
  });
}
/** Rule sets that have no limit at all for the kind pass nothing. */
function ruleFinding({ kind, bases, house }: Situation): Finding | null {
  if (kind.criteria.some((c) => c.status !== "unconfirmed" && bases.has(c.basis)) || house?.criteria.has(kind.id) === true) return null;
  return ofItem("rules", "NO VERDICT", "rules", { label: kind.id, because: [...bases].map((id) => BASES[id].name).join(", "), type: "choose one that does" });
}
/** Another part of the assembly was found stretched: out of use until this one has been looked at after that day. */
function overloadFinding(cells: Cells, asOf: number | null): Finding | null {
  const overload = readDate(cells.value("overload"));
  if (overload.kind === "missing") return null;
  const inspected = readDate(cells.value("inspected"));
  if (overload.kind === "value" && inspected.kind === "value" && inspected.value > overload.value && !later(inspected.value, asOf))
    return null;
  return ofItem("overload", "EXAMINE", "assembly", {
    ...(overload.kind === "value" && { typed: showDate(overload.value) }),
    type: "inspect it and date the inspection after that day",
  });
}
function gaugeOf(cells: Cells): { readonly gauge: Length | null; readonly finding: Finding | null } {
  const read = readLength(cells.value("gauge"), { assume: cells.unit("gauge") });
  if (read.kind === "value") return { gauge: read.value, finding: null };
  if (read.kind === "missing") return { gauge: null, finding: null };
  return {
    gauge: null,
    finding: refusedFinding({ name: "gauge", part: "" }, cells, "gauge", read),
  };
}
/** By which rules an item is judged, and on which day. */
export interface Judging {
  readonly basis: readonly BasisId[];
  /** Limits of the house's own sheet; needed when the basis names them. */
  readonly house?: HouseLimits | undefined;
  /** Serial day of judging: dates after it are wrong. Null in a worksheet cell, which has no day. */
  readonly asOf: number | null;
}
/** Judges one item by what its cells say. `gear` is the kind as typed. */
export function judgeItem(gear: CellValue, cells: Cells, judging: Judging): ItemVerdict {
  const match = matchKind(readText(gear));
  const tag = tagState(cells, judging.asOf);
  const tagFinding = tag.out
    ? ofItem("tag", "REMOVE", "tag out", { label: tag.label, because: tag.because, ...(tag.type !== null && { type: tag.type }) })
    : null;
  if (!match.ok) {
    const unread = unreadDamage(UNKNOWN, cells, { bases: inForce(judging.basis), gauge: null }, null);
    return conclude(
      [
        ofItem("gear", "NO VERDICT", "gear", { typed: readText(gear), because: match.why }),
        ...(tagFinding ? [tagFinding] : []),
        ...unread.map((f) => ({ ...f, decision: "NO VERDICT" as const })),
      ],
      { kind: null, tagged: tag.out, needed: [], missing: [], notes: [], comesOut: null, gauged: true },
    );
  }
  return judgeKind(match.kind, cells, judging, tagFinding, tag);
}
/** House limits that cannot be applied leave the item without a verdict: no looser limit may judge it. */
function houseFindings(kind: GearKind, basis: readonly BasisId[], house: HouseLimits | undefined): readonly Finding[] {
  if (!basis.includes("house")) return [];
  if (house === undefined)
    return [
      ofItem("house limits", "NO VERDICT", "house limits", {
        because: "The house limits are in force and were not handed over; give the range of their sheet as the basis.",
      }),
    ];
  return house.refused
    .filter((row) => row.kind === null || row.kind === kind.id)
    .map((row) => ofItem("house limits", "NO VERDICT", "house limits", { because: row.sentence }));
}
function judgeKind(
  kind: GearKind,
  asGiven: Cells,
  { basis, house, asOf }: Judging,
  tagFinding: Finding | null,
  tag: TagState,
): ItemVerdict {
  const published = withPublishedSizes(kind, asGiven);
  const { cells } = published;
  const sizeFinding = "refused" in published ? ofItem("as-new size", "NO VERDICT", "as-new size", published.refused) : null;
  const { gauge, finding: gaugeFinding } = gaugeOf(cells);
  const told = kind.variants === undefined ? null : readVariant(kind.variants, cells, readText(cells.value("gear")));
  const variant = told?.kind === "known" ? told.variant : null;
  const variantFinding =
    told?.kind === "refused"
      ? ofItem(told.why, "NO VERDICT", field(told.field).heading.toLowerCase(), { ...columnOf(cells, told.field), ...told.facts })
      : null;
  const situation: Situation = { kind, bases: inForce(basis), gauge, variant, house: basis.includes("house") ? house : undefined };
  const results = kind.checks.map((check) => evaluate(check, cells, situation));
  const overload = overloadFinding(cells, asOf);
  const unread = unreadDamage(kind, cells, situation, variant);
  const findings = [
    ...results.flatMap((r) => r.findings),
    ...unread,
    ...[tagFinding, sizeFinding, gaugeFinding, variantFinding, overload, dateFinding(cells, asOf), ruleFinding(situation)].filter(
      (f) => f !== null,
    ),
    ...wordFindings(cells),
    ...houseFindings(kind, basis, house),
  ];
  const notes = results.flatMap((r) => r.notes);
  if ("note" in published && published.note !== null) notes.push(published.note);
  if (told?.kind === "known" && told.assumed !== null) notes.push(told.assumed);
  const inspected = readDate(cells.value("inspected"));
  if (inspected.kind === "refused")
    notes.push(`The date "${inspected.text}" in "${cells.heading("inspected")}" cannot be used: ${inspected.why}`);
  if (!tag.out && tag.note !== null) notes.push(tag.note);
  const comesOut = kind.checks.map((check) => comesOutWords(check, cells, situation)).filter((words) => words !== null);
  return conclude(findings, {
    kind: kind.id,
    tagged: tag.out,
    needed: neededBy(kind, situation),
    missing: missingOf(kind, cells, findings),
    notes,
    comesOut: comesOut.join("; "),
    gauged: gauge !== null,
  });
}
/** Columns of the readings without which nothing of the kind can be kept. */
function neededBy(kind: GearKind, { bases, variant }: Situation): readonly FieldId[] {
  const checks = kind.checks.filter((check) => check.required && inUse(check, bases) && isFor(check, variant));
  return [...new Set(checks.flatMap((check) => neededFieldsOf(check)))];
}

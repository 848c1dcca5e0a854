/** One item: its cells, the checks of its gear kind, one verdict. */
import { comesOutWords } from "../check/comes-out-at";
import type { Finding } from "../check/finding";
import type { Situation } from "../check/in-force";
import { evaluate } from "../check/run-check";
import { field } from "../columns";
import type { GearKind } from "../gear/kind";
import type { Cells } from "../log/cells";
import { matchKind } from "../names/gear-name";
import { showDate } from "../numbers/calendar";
import type { CellValue } from "../reading/cell-value";
import { readDate } from "../reading/date";
import { type Length, readLength } from "../reading/length";
import { readText } from "../reading/text";
import type { HouseLimits } from "../rules/house-limits";
import { type BasisId, inForce } from "../rules/rule-sets";
import { ahead, later } from "./day";
import { withPublishedSizes } from "./published-sizes";
import { wordFindings } from "./remarks";
import { tagState, type TagState } from "./tag";
import { strayFindings, UNKNOWN } from "./unread-damage";
import { readVariant } from "./variant";
import { conclude, type ItemVerdict, missingOf } from "./verdict";

function note(decision: Finding["decision"], check: string, sentence: string): Finding {
  return {
    check,
    part: "",
    criterion: null,
    decision,
    measured: null,
    original: null,
    limit: null,
    share: null,
    comesOut: null,
    basis: null,
    source: null,
    sentence,
    overload: false,
  };
}
/** An inspection that has not been yet: the record is wrong, and nothing that rests on it holds. */
function dateFinding(cells: Cells, asOf: number | null): Finding | null {
  const inspected = readDate(cells.value("inspected"));
  if (inspected.kind !== "value" || !later(inspected.value, asOf)) return null;
  return note(
    "NO VERDICT",
    "date",
    `The inspection date ${inspected.text} in "${cells.heading("inspected")}" is ${ahead(asOf)}; put the date right.`,
  );
}
/** Rule sets that have no limit at all for the kind pass nothing. */
function ruleFinding({ kind, bases, house }: Situation): Finding | null {
  if (kind.criteria.some((c) => c.status !== "unconfirmed" && bases.has(c.basis)) || house?.criteria.has(kind.id) === true) return null;
  return note(
    "NO VERDICT",
    "rules",
    `No rule set in force (${[...bases].join(", ")}) says anything about a ${kind.id}; choose one that does.`,
  );
}
/** Another part of the assembly was found stretched: out of use until this one has been looked at after that day. */
function overloadFinding(cells: Cells, asOf: number | null): Finding | null {
  const overload = readDate(cells.value("overload"));
  if (overload.kind === "missing") return null;
  const inspected = readDate(cells.value("inspected"));
  if (overload.kind === "value" && inspected.kind === "value" && inspected.value > overload.value && !later(inspected.value, asOf))
    return null;
  const when = overload.kind === "value" ? ` on ${showDate(overload.value)}` : "";
  return note(
    "EXAMINE",
    "assembly",
    `Another part of this assembly was found stretched or opened up${when}: the whole assembly was overloaded, and this part has not been looked at since; inspect it and date the inspection after that day.`,
  );
}
function gaugeOf(cells: Cells): { readonly gauge: Length | null; readonly finding: Finding | null } {
  const read = readLength(cells.value("gauge"), { assume: cells.unit("gauge") });
  if (read.kind === "value") return { gauge: read.value, finding: null };
  if (read.kind === "missing") return { gauge: null, finding: null };
  return {
    gauge: null,
    finding: note("NO VERDICT", "gauge", `Gauge: "${read.text}" in "${cells.heading("gauge")}" cannot be used: ${read.why}.`),
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
  const tagFinding = tag.out ? note("REMOVE", "tag out", tag.sentence) : null;
  if (!match.ok) {
    const strays = strayFindings(UNKNOWN, cells, { bases: inForce(judging.basis), gauge: null }, null);
    return conclude(
      [
        note("NO VERDICT", "gear", `Gear: ${match.why}.`),
        ...(tagFinding ? [tagFinding] : []),
        ...strays.map((f) => ({ ...f, decision: "NO VERDICT" as const })),
      ],
      [],
      [],
      true,
    );
  }
  return judgeKind(match.kind, cells, judging, tagFinding, tag);
}
/** House limits that cannot be applied leave the item without a verdict: no looser limit may judge it. */
function houseFindings(kind: GearKind, basis: readonly BasisId[], house: HouseLimits | undefined): readonly Finding[] {
  if (!basis.includes("house")) return [];
  if (house === undefined)
    return [
      note(
        "NO VERDICT",
        "house limits",
        "The house limits are in force and were not handed over; give the range of their sheet as the basis.",
      ),
    ];
  return house.refused
    .filter((row) => row.kind === null || row.kind === kind.id)
    .map((row) => note("NO VERDICT", "house limits", row.sentence));
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
  const sizeFinding = "refused" in published ? note("NO VERDICT", "as-new size", published.refused) : null;
  const { gauge, finding: gaugeFinding } = gaugeOf(cells);
  const told = kind.variants === undefined ? null : readVariant(kind.variants, cells, readText(cells.value("gear")));
  const variant = told?.kind === "known" ? told.variant : null;
  const variantFinding =
    told?.kind === "refused"
      ? note("NO VERDICT", field(kind.variants?.field ?? "construction").heading.toLowerCase(), told.sentence)
      : null;
  const situation: Situation = { kind, bases: inForce(basis), gauge, variant, house: basis.includes("house") ? house : undefined };
  const results = kind.checks.map((check) => evaluate(check, cells, situation));
  const overload = overloadFinding(cells, asOf);
  const strays = strayFindings(kind, cells, situation, variant);
  const findings = [
    ...results.flatMap((r) => r.findings),
    ...strays,
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
  if (!tag.out && tag.sentence !== "") notes.push(tag.sentence.replace(/\.$/, ""));
  const comesOut = kind.checks.map((check) => comesOutWords(check, cells, situation)).filter((words) => words !== null);
  return { ...conclude(findings, notes, missingOf(kind, cells, findings), gauge !== null), comesOut: comesOut.join("; ") };
}

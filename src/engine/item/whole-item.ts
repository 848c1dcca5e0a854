/** What a row says of the item as a whole: its date, its assembly, its gauge, the rules that are in force. */
import { type Finding, ofItem } from "../check/finding";
import type { Situation } from "../check/in-force";
import { columnOf } from "../check/read-sizes";
import type { GearKind } from "../gear/kind";
import type { Cells } from "../log/cells";
import { showDate } from "../numbers/calendar";
import { readDate } from "../reading/date";
import { readRemark } from "../reading/remark";
import { readText } from "../reading/text";
import type { HouseLimits } from "../rules/house-limits";
import { BASES, type BasisId } from "../rules/rule-sets";
import { ahead, later } from "./day";

/** What stands for a day though none can be read: an answer that it was done, or nothing. */
const DONE = /^(yes|y|true|n\/?a|n\.a\.?|-+|—|–|\.+)$/i;
/** Of harmless words, those that speak of no inspection or of one to come. */
const NOT_DONE = /\b(no|not|never|none|nil|nothing|next|due|until)\b/i;
/** Whether a text tells that there was an inspection, though not on which day: in words of which each is known. */
const tellsInspection = (text: string): boolean => DONE.test(text) || (!NOT_DONE.test(text) && readRemark(text) === null);
/** An inspection that has not been yet: the record is wrong, and nothing that rests on it holds. */
export function dateFinding(cells: Cells, asOf: number | null): Finding | null {
  const cell = cells.value("inspected");
  const inspected = readDate(cell);
  const text = readText(cell);
  if (inspected.kind !== "value" && text !== "" && !tellsInspection(text))
    return ofItem("record", "NO VERDICT", "date", {
      ...columnOf(cells, "inspected"),
      typed: text,
      because: "is no day and may say that it was not inspected",
      type: "type the day of the inspection, or clear it",
    });
  if (inspected.kind !== "value" || !later(inspected.value, asOf)) return null;
  return ofItem("date", "NO VERDICT", "date", {
    ...columnOf(cells, "inspected"),
    typed: inspected.text,
    because: ahead(asOf),
    type: "put the date right",
  });
}
/** Rule sets that have no limit at all for the kind pass nothing. */
export function ruleFinding({ kind, bases, house }: Situation): Finding | null {
  if (kind.criteria.some((c) => c.status !== "unconfirmed" && bases.has(c.basis)) || house?.criteria.has(kind.id) === true) return null;
  return ofItem("rules", "NO VERDICT", "rules", {
    label: kind.id,
    because: [...bases].map((id) => BASES[id].name).join(", "),
    type: "choose one that does",
  });
}
/** House limits that cannot be applied leave the item without a verdict: no looser limit may judge it. */
export function houseFindings(kind: GearKind, basis: readonly BasisId[], house: HouseLimits | undefined): readonly Finding[] {
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
/** Another part of the assembly was found stretched: out of use until this one has been looked at after that day. */
export function overloadFinding(cells: Cells, asOf: number | null, found: number | null): Finding | null {
  const overload = readDate(found === null ? cells.value("overload") : { serial: found });
  if (overload.kind === "missing") return null;
  const inspected = readDate(cells.value("inspected"));
  if (overload.kind === "value" && inspected.kind === "value" && inspected.value > overload.value && !later(inspected.value, asOf))
    return null;
  return ofItem("overload", "EXAMINE", "assembly", {
    ...(overload.kind === "value" && { typed: showDate(overload.value) }),
    type: "inspect it and date the inspection after that day",
  });
}

/** What a row says of the item as a whole: its date, its assembly, its gauge, the rules that are in force. */
import { type Finding, ofItem } from "../check/finding";
import type { Situation } from "../check/in-force";
import { columnOf } from "../check/read-sizes";
import type { GearKind } from "../gear/kind";
import type { Cells } from "../log/cells";
import { showDate } from "../numbers/calendar";
import { readDate } from "../reading/date";
import type { HouseLimits } from "../rules/house-limits";
import { BASES, type BasisId } from "../rules/rule-sets";
import { ahead, later } from "./day";

/** An inspection that has not been yet: the record is wrong, and nothing that rests on it holds. */
export function dateFinding(cells: Cells, asOf: number | null): Finding | null {
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

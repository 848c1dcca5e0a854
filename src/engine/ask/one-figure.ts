import { comesOutOf } from "../check/comes-out-at";
import { fitOf } from "../check/compare";
import type { Situation } from "../check/in-force";
import { dressLeft } from "../check/kinds/nick";
import { chainSling } from "../gear/chain-sling";
import type { Check, GearKind } from "../gear/kind";
import { readBasis } from "../house/rules-in-force";
import { matchKind, matchPart } from "../names/gear-name";
import { toNumber } from "../numbers/exact";
import { convert } from "../numbers/lengths";
import { type Answer, good, none, refusal, unreadable } from "../reading/answer";
import type { CellValue } from "../reading/cell-value";
import { readChainSize } from "../reading/chain-size";
import { readLength } from "../reading/length";
import { readText } from "../reading/text";
import { inForce } from "../rules/rule-sets";
import { leastOf } from "../tables/look-up";
import { houseStops, inNamed, lengthWith, pairUnit, unitOf } from "./arguments";
import { wearCheck } from "./one-check";

/** A length as a number in `to`. */
export function lengthIn(value: CellValue, unit: CellValue, to: CellValue): Answer<number> {
  const assumed = unitOf(unit);
  if (!assumed.ok) return assumed;
  const target = readText(to) === "" ? assumed : unitOf(to);
  if (!target.ok) return target;
  const read = lengthWith(value, assumed.value);
  return read.kind === "value" ? good(inNamed(read.value.size, read.value.unit, target.value)) : refusal("length", read);
}
/** Share lost or gained between two readings. */
export function changeShare(original: CellValue, measured: CellValue, way: "loss" | "growth"): Answer<number> {
  const unit = pairUnit(original, measured)?.unit ?? null;
  const was = readLength(original, { assume: unit });
  if (was.kind !== "value") return refusal("as-new size", was);
  const is = readLength(measured, { assume: unit });
  if (is.kind !== "value") return refusal("measured size", is);
  const now = convert(is.value.size, is.value.unit, was.value.unit);
  const fit = fitOf(was.value.size, now, way === "loss" ? "larger" : "smaller");
  if (fit === "noise") return good(0);
  if (fit !== "as it is")
    return unreadable(
      fit === "implausible"
        ? `The measured size is ${way === "loss" ? "larger" : "smaller"} than the as-new size by more than gauge noise; check which is which.`
        : "The sizes differ by about 25.4 times; check the units.",
    );
  const change = way === "loss" ? was.value.size.sub(now) : now.sub(was.value.size);
  return good(toNumber(change.div(was.value.size)));
}
/** Strictest published least thickness of a chain link. */
export function chainLeast(size: CellValue, unit: CellValue, basis: unknown): Answer<number> {
  const named = unitOf(unit);
  if (!named.ok) return named;
  const choice = readBasis(basis);
  if (!choice.ok) return unreadable(choice.why);
  const read = readChainSize(size, named.value.unit, named.value.times);
  if (read.kind !== "value") return refusal("chain size", read);
  const bases = inForce(choice.ids);
  const tables = chainSling.criteria.flatMap((c) => (bases.has(c.basis) && c.limit.word === "below" ? [c.limit.table] : []));
  if (tables.length === 0) return none(`No published chain table is in force under ${choice.ids.join(", ")}.`);
  const rows = tables.map((table) => leastOf(table, read.value.size, read.value.unit, named.value.unit));
  const confirmed = rows
    .filter((row) => row?.confirmed === true)
    .map((row) => row?.least)
    .filter((row) => row !== undefined);
  if (confirmed.length > 0) return good(Math.max(...confirmed.map((least) => inNamed(least, named.value.unit, named.value))));
  return none(
    rows.some((row) => row !== null)
      ? `The row for size ${read.text} is unconfirmed and is not used.`
      : `Size ${read.text} is not in this table; a neighbouring row is never used.`,
  );
}
/** The check that a part name stands for: an opening, a clearance, a link, or wear at a part. */
function checkOfPart(kind: GearKind, text: string): { readonly check: Check; readonly stress: "high" | "moderate" | "low" } | null {
  const partName = text.toLowerCase();
  const opening = kind.checks.find((c) => c.kind === "growth" && /opening|mouth|gap/.test(partName));
  if (opening) return { check: opening, stress: "high" };
  const gap = kind.checks.find((c) => c.kind === "gap" && /clearance|play/.test(partName));
  if (gap) return { check: gap, stress: "high" };
  const part = matchPart(kind, text);
  if (part === null) return null;
  const thinnest = kind.checks.find((c) => c.kind === "least" && c.part === part.part);
  const check = thinnest ?? wearCheck(kind, part.part);
  return check ? { check, stress: part.stress } : null;
}
/** The size at which a part comes out, in `unit`. */
export function removeAt(gear: CellValue, part: CellValue, original: CellValue, unit: CellValue, basis: unknown): Answer<number> {
  const match = matchKind(readText(gear));
  if (!match.ok) return none(`${match.why.charAt(0).toUpperCase()}${match.why.slice(1)}.`);
  const named = unitOf(unit);
  if (!named.ok) return named;
  const choice = readBasis(basis);
  if (!choice.ok) return unreadable(choice.why);
  if (houseStops(choice, match.kind))
    return unreadable("The house limits cannot be applied; put their sheet right, or give its range as the basis.");
  const asked = checkOfPart(match.kind, readText(part));
  if (asked === null)
    return none(
      `A ${match.kind.id} has no part "${readText(part)}" with a size limit; its parts are ${Object.keys(match.kind.parts).join(", ")}.`,
    );
  const read =
    asked.check.kind === "least" ? readChainSize(original, named.value.unit, named.value.times) : lengthWith(original, named.value);
  if (asked.check.kind !== "gap" && read.kind !== "value") return refusal("as-new size", read);
  const situation: Situation = { kind: match.kind, bases: inForce(choice.ids), gauge: null, variant: null, house: choice.house };
  const result = comesOutOf(asked.check, read.kind === "value" ? read.value : null, named.value.unit, situation, asked.stress);
  if (!result.ok) return none(`${result.why.charAt(0).toUpperCase()}${result.why.slice(1)}.`);
  if (result.limits.length === 0) return none(`No limit for ${asked.check.name} of a ${match.kind.id} under ${choice.ids.join(", ")}.`);
  const sizes = result.limits.map((l) => inNamed(l.at, named.value.unit, named.value));
  return good(asked.check.kind === "growth" || asked.check.kind === "gap" ? Math.min(...sizes) : Math.max(...sizes));
}
/** Depth that may still be ground off, in the readings' unit. */
export function dressDepth(gear: CellValue, part: CellValue, original: CellValue, measured: CellValue, basis: unknown): Answer<number> {
  const match = matchKind(readText(gear));
  if (!match.ok) return none(`${match.why.charAt(0).toUpperCase()}${match.why.slice(1)}.`);
  const choice = readBasis(basis);
  if (!choice.ok) return unreadable(choice.why);
  if (houseStops(choice, match.kind))
    return unreadable("The house limits cannot be applied; put their sheet right, or give its range as the basis.");
  const at = matchPart(match.kind, readText(part));
  if (at === null)
    return none(`A ${match.kind.id} has no part "${readText(part)}"; its parts are ${Object.keys(match.kind.parts).join(", ")}.`);
  const unit = pairUnit(original, measured)?.unit ?? null;
  const was = readLength(original, { assume: unit });
  if (was.kind !== "value") return refusal("as-new size", was);
  const is = readLength(measured, { assume: unit });
  if (is.kind !== "value") return refusal("measured size", is);
  const fit = fitOf(was.value.size, convert(is.value.size, is.value.unit, was.value.unit), "larger");
  if (fit !== "as it is" && fit !== "noise")
    return unreadable("The measured size does not fit the as-new size; check which is which, and the units.");
  const left = dressLeft(
    was.value,
    is.value,
    { kind: match.kind, bases: inForce(choice.ids), gauge: null, variant: null, house: choice.house },
    at.stress,
  );
  return left === null
    ? none(`No grinding allowance for the ${at.part} of a ${match.kind.id} under ${choice.ids.join(", ")}.`)
    : good(toNumber(left));
}

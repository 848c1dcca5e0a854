/**
 * Single questions, as a worksheet cell asks them: one verdict, one figure. Answers are values; the functions turn
 * refusals into cell errors.
 */
import type { Situation } from "../check/in-force";
import { lossAt } from "../check/kinds/nick";
import { evaluate } from "../check/run-check";
import { type Decision, worse, worstOf } from "../decision";
import { chainSling } from "../gear/chain-sling";
import { hook } from "../gear/hook";
import type { Check, GearKind } from "../gear/kind";
import { rotationResistantRope } from "../gear/rotation-resistant-rope";
import { runningRope } from "../gear/running-rope";
import { ROTATION_RESISTANT } from "../gear/shared/ropes";
import { sheave } from "../gear/sheave";
import { swivel } from "../gear/swivel";
import { CONSTRUCTIONS, wireRopeSling } from "../gear/wire-rope-sling";
import { readBasis } from "../house/rules-in-force";
import type { Cells } from "../log/cells";
import { matchKind, matchPart } from "../names/gear-name";
import { matchVariant, unsure } from "../names/variant-name";
import type { NamedUnit } from "../numbers/lengths";
import { type Answer, good } from "../reading/answer";
import type { CellValue } from "../reading/cell-value";
import { readLength } from "../reading/length";
import { readText } from "../reading/text";
import { inForce } from "../rules/rule-sets";
import { cells, houseStops, ownUnit, pairUnit, unitOf } from "./arguments";

interface CheckQuestion {
  readonly kind: GearKind;
  readonly check: Check;
  readonly cells: Cells;
  readonly basis: unknown;
  readonly gauge?: CellValue;
  readonly gaugeUnit?: NamedUnit | null;
  readonly variant?: string | null;
}
/** The decision of one check: what cannot be read or has no limit in force is no verdict. */
function decide(asked: CheckQuestion): Decision {
  const basis = readBasis(asked.basis);
  if (!basis.ok || houseStops(basis, asked.kind)) return "NO VERDICT";
  const gauge = readLength(asked.gauge, {
    assume: asked.gaugeUnit?.unit ?? null,
    ...(asked.gaugeUnit ? { times: asked.gaugeUnit.times } : {}),
  });
  if (gauge.kind === "refused") return "NO VERDICT";
  const situation: Situation = {
    kind: asked.kind,
    bases: inForce(basis.ids),
    gauge: gauge.kind === "value" ? gauge.value : null,
    variant: asked.variant ?? null,
    house: basis.house,
  };
  const { findings } = evaluate({ ...asked.check, required: true }, asked.cells, situation);
  if (findings.every((f) => f.criterion === null)) return worstOf(["NO VERDICT", ...findings.map((f) => f.decision)]);
  return worstOf(findings.map((f) => f.decision));
}
function checkNamed(kind: GearKind, name: string): Check {
  const check = kind.checks.find((c) => c.name === name);
  if (!check) throw new Error(`${kind.id} has no check "${name}"`);
  return check;
}
/** The check that reads wear at a part, with the fields it takes. */
export function wearCheck(kind: GearKind, part: string): (Check & { kind: "loss" }) | null {
  return lossAt(kind, part) ?? null;
}
export interface WearQuestion {
  readonly gear: CellValue;
  readonly part: CellValue;
  readonly original: CellValue;
  readonly measured: CellValue;
  readonly originalAcross?: CellValue;
  readonly measuredAcross?: CellValue;
  readonly gauge?: CellValue;
  readonly basis: unknown;
}
export function wearVerdict(q: WearQuestion): Decision {
  const match = matchKind(readText(q.gear));
  if (!match.ok) return "NO VERDICT";
  const part = matchPart(match.kind, readText(q.part));
  const check = part === null ? null : wearCheck(match.kind, part.part);
  if (part === null || check === null) return "NO VERDICT";
  const across = readText(q.originalAcross) !== "" || readText(q.measuredAcross) !== "";
  const unit = pairUnit(q.original, q.measured, ...(across ? [q.originalAcross, q.measuredAcross] : []));
  // The gauge's unit says nothing about readings that have none.
  if (unit !== null && ownUnit(q.gauge) !== null) return "NO VERDICT";
  const generic: Check = {
    ...check,
    original: "sectionNew",
    measured: "sectionNow",
    acrossOriginal: "acrossNew",
    acrossMeasured: "acrossNow",
  };
  const values = {
    sectionNew: q.original,
    sectionNow: q.measured,
    ...(across ? { acrossNew: q.originalAcross, acrossNow: q.measuredAcross } : {}),
  };
  return decide({
    kind: match.kind,
    check: generic,
    cells: cells(values, unit, part.part),
    basis: q.basis,
    gauge: q.gauge,
    gaugeUnit: unit ?? ownUnit(q.original),
  });
}
/** The unit argument; without it readings that carry their unit need none, and a bare one is in the unit of the other. */
function unitFor(unit: CellValue, ...readings: readonly CellValue[]): Answer<NamedUnit> {
  const carried = readText(unit) === "" ? readings.map(ownUnit).find((own) => own !== null) : undefined;
  return carried === undefined ? unitOf(unit) : good(carried);
}
export function throatVerdict(original: CellValue, measured: CellValue, unit: CellValue, gauge: CellValue, basis: unknown): Decision {
  const named = unitFor(unit, original, measured);
  if (!named.ok) return "NO VERDICT";
  return decide({
    kind: hook,
    check: checkNamed(hook, "throat opening"),
    cells: cells({ throatNew: original, throatNow: measured }, named.value),
    basis,
    gauge,
    gaugeUnit: named.value,
  });
}
export function twistVerdict(degrees: CellValue, basis: unknown): Decision {
  return decide({ kind: hook, check: checkNamed(hook, "twist"), cells: cells({ twist: degrees }, null), basis });
}
export function swivelVerdict(clearance: CellValue, unit: CellValue, basis: unknown): Decision {
  const named = unitFor(unit, clearance);
  if (!named.ok) return "NO VERDICT";
  return decide({ kind: swivel, check: checkNamed(swivel, "shoulder clearance"), cells: cells({ clearance }, named.value), basis });
}
export function chainVerdict(size: CellValue, measured: CellValue, unit: CellValue, basis: unknown): Decision {
  const named = unitFor(unit, measured);
  if (!named.ok) return "NO VERDICT";
  return decide({
    kind: chainSling,
    check: checkNamed(chainSling, "link thickness"),
    cells: cells({ size, sectionNow: measured }, named.value),
    basis,
  });
}
/** Diameter loss of a rope against its nominal size. */
export function ropeVerdict(nominal: CellValue, measured: CellValue, unit: CellValue, basis: unknown): Decision {
  const named = unitFor(unit, nominal, measured);
  if (!named.ok) return "NO VERDICT";
  return decide({
    kind: runningRope,
    check: checkNamed(runningRope, "diameter loss"),
    cells: cells({ size: nominal, ropeNow: measured }, named.value),
    basis,
  });
}
/** A sheave groove against its rope: worn too narrow, or too wide to carry it. */
export function grooveVerdict(rope: CellValue, groove: CellValue, unit: CellValue, basis: unknown): Decision {
  const named = unitFor(unit, rope, groove);
  if (!named.ok) return "NO VERDICT";
  const asked = cells({ size: rope, groove }, named.value);
  const narrow = decide({ kind: sheave, check: checkNamed(sheave, "groove diameter"), cells: asked, basis });
  const wide = evaluateOnly(sheave, "groove width", asked, basis);
  return wide === null ? narrow : worse(narrow, wide);
}
/** Decision of a check that adds to another one: null where no criterion of it is in force. */
function evaluateOnly(kind: GearKind, name: string, asked: Cells, basis: unknown): Decision | null {
  const choice = readBasis(basis);
  if (!choice.ok) return "NO VERDICT";
  const { findings } = evaluate(checkNamed(kind, name), asked, {
    kind,
    bases: inForce(choice.ids),
    gauge: null,
    variant: null,
    house: choice.house,
  });
  const judged = findings.filter((f) => f.criterion !== null);
  return judged.length === 0 ? null : worstOf(judged.map((f) => f.decision));
}
/** Broken wires: both counts where the construction has both limits. */
export function wireVerdict(construction: CellValue, perLay: CellValue, oneStrand: CellValue, basis: unknown): Decision {
  const text = readText(construction);
  // Such rope is no sling; its own kind wants the counts in 6 and in 30 diameters.
  if (!unsure(text) && ROTATION_RESISTANT.test(text)) {
    const counts = cells({ broken6d: perLay, broken30d: oneStrand }, null);
    const checks = ["broken wires in 6 diameters", "broken wires in 30 diameters"];
    return worstOf(
      checks.map((name) => decide({ kind: rotationResistantRope, check: checkNamed(rotationResistantRope, name), cells: counts, basis })),
    );
  }
  const named = matchVariant(CONSTRUCTIONS, text);
  if (named === null) return "NO VERDICT";
  const asked = cells({ brokenLay: perLay, brokenStrand: oneStrand }, null);
  const lay = checkNamed(wireRopeSling, "broken wires in a lay");
  const strand = checkNamed(wireRopeSling, "broken wires in one strand");
  const both = strand.onlyFor?.includes(named) === true;
  const decisions = [decide({ kind: wireRopeSling, check: lay, cells: asked, basis, variant: named })];
  if (both) decisions.push(decide({ kind: wireRopeSling, check: strand, cells: asked, basis, variant: named }));
  return worstOf(decisions);
}

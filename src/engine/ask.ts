/**
 * Single questions, as a worksheet cell asks them: one verdict, one figure. Answers are values; the functions turn
 * refusals into cell errors.
 */
import { inForce, readBasis, type BasisChoice } from "./bases";
import { readCount, readDate, readLength, readText, type Length, type Read } from "./cell";
import { comesOutOf } from "./check/comes-out";
import { evaluate } from "./check/evaluate";
import { dressLeft, lossAt } from "./check/nick";
import { type Cells, readChainSize } from "./check/readings";
import type { Situation } from "./check/situation";
import { exact, toNumber, type Exact } from "./exact";
import { field, type FieldId } from "./fields";
import { GEAR } from "./gear/index";
import type { Check, GearKind } from "./gear/kind";
import { matchKind, matchPart } from "./gear/match";
import { hook } from "./gear/hook";
import { swivel } from "./gear/swivel";
import { chainSling } from "./gear/chain-sling";
import { runningRope } from "./gear/running-rope";
import { sheave } from "./gear/sheave";
import { CONSTRUCTIONS, wireRopeSling } from "./gear/wire-rope-sling";
import { matchVariant } from "./variant";
import { fitOf } from "./judge";
import type { CellValue } from "./model";
import { LEAD_DAYS } from "./schedule";
import { limitInWords } from "./sources-list";
import { cite } from "./sources";
import { leastOf } from "./tables/lookup";
import { convert, namedUnit, type NamedUnit, type Unit } from "./units";
import { worse, worstOf, type Decision } from "./verdict";

/** A figure, or why there is none: "missing" (a reading or a criterion is not there) or "unreadable". */
export type Answer<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly kind: "missing" | "unreadable"; readonly why: string };

const good = <T>(value: T): Answer<T> => ({ ok: true, value });
const none = (why: string): Answer<never> => ({ ok: false, kind: "missing", why });
const unreadable = (why: string): Answer<never> => ({ ok: false, kind: "unreadable", why });

function refusal(name: string, read: Exclude<Read<unknown>, { kind: "value" }>): Answer<never> {
  return read.kind === "missing" ? none(`The ${name} is missing.`) : unreadable(`The ${name} "${read.text}" cannot be used: ${read.why}.`);
}

/** Unit argument, with its multiple: centimetres are tens of millimetres. Blank is an error because a size without a unit says nothing. */
export function unitOf(value: CellValue): Answer<NamedUnit> {
  const text = readText(value);
  const named = text === "" ? null : namedUnit(text);
  return named ? good(named) : text === "" ? none("The unit is missing; type in or mm.") : unreadable(`"${text}" is no unit of length; type in or mm.`);
}

function cells(values: Partial<Record<FieldId, CellValue>>, named: NamedUnit | null, part?: string): Cells {
  return {
    value: (id) => values[id], unit: () => named?.unit ?? null, heading: (id) => field(id).heading,
    ...(part === undefined ? {} : { part }), ...(named === null ? {} : { times: named.times }),
  };
}

/** A length read with a unit argument for bare numbers. */
const lengthWith = (value: CellValue, named: NamedUnit): Read<Length> => readLength(value, { assume: named.unit, times: named.times });

/** A size in the unit argument's own multiple. */
const inNamed = (size: Exact, from: Unit, named: NamedUnit): number => toNumber(convert(size, from, named.unit).div(named.times));

const INCHES: NamedUnit = { unit: "in", times: exact(1) };

/** Readings of a pair are in one unit, or each carries its own: a bare one beside one with a unit is refused. */
function pairUnit(...readings: readonly CellValue[]): NamedUnit | null {
  const bare = readings.filter((r) => readText(r) !== "" && readLength(r, { assume: null }).kind === "refused");
  return bare.length === readings.filter((r) => readText(r) !== "").length ? INCHES : null;
}

/** Unit that a reading carries in its text, for the gauge beside it. */
function ownUnit(reading: CellValue): NamedUnit | null {
  const read = readLength(reading, { assume: null });
  return read.kind === "value" ? { unit: read.value.unit, times: exact(1) } : null;
}

interface Asked {
  readonly kind: GearKind;
  readonly check: Check;
  readonly cells: Cells;
  readonly basis: unknown;
  readonly gauge?: CellValue;
  readonly gaugeUnit?: NamedUnit | null;
  readonly variant?: string | null;
}

/** House limits that are named and not handed over, or that have a row that cannot be read, leave nothing judged. */
function houseStops(choice: BasisChoice & { readonly ok: true }, kind: GearKind): boolean {
  if (!choice.ids.includes("house")) return false;
  return choice.house === undefined || choice.house.refused.some((row) => row.kind === null || row.kind === kind.id);
}

/** The decision of one check: what cannot be read or has no limit in force is no verdict. */
function decide(asked: Asked): Decision {
  const basis = readBasis(asked.basis);
  if (!basis.ok || houseStops(basis, asked.kind)) return "NO VERDICT";
  const gauge = readLength(asked.gauge, { assume: asked.gaugeUnit?.unit ?? null, ...(asked.gaugeUnit ? { times: asked.gaugeUnit.times } : {}) });
  if (gauge.kind === "refused") return "NO VERDICT";
  const situation: Situation = { kind: asked.kind, bases: inForce(basis.ids), gauge: gauge.kind === "value" ? gauge.value : null, variant: asked.variant ?? null, house: basis.house };
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
function wearCheck(kind: GearKind, part: string): (Check & { kind: "loss" }) | null {
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
  const generic: Check = { ...check, original: "sectionNew", measured: "sectionNow", acrossOriginal: "acrossNew", acrossMeasured: "acrossNow" };
  const values = { sectionNew: q.original, sectionNow: q.measured, ...(across ? { acrossNew: q.originalAcross, acrossNow: q.measuredAcross } : {}) };
  return decide({ kind: match.kind, check: generic, cells: cells(values, unit, part.part), basis: q.basis, gauge: q.gauge, gaugeUnit: unit ?? ownUnit(q.original) });
}

export function throatVerdict(original: CellValue, measured: CellValue, unit: CellValue, gauge: CellValue, basis: unknown): Decision {
  const named = unitOf(unit);
  if (!named.ok) return "NO VERDICT";
  return decide({ kind: hook, check: checkNamed(hook, "throat opening"), cells: cells({ throatNew: original, throatNow: measured }, named.value), basis, gauge, gaugeUnit: named.value });
}

export function twistVerdict(degrees: CellValue, basis: unknown): Decision {
  return decide({ kind: hook, check: checkNamed(hook, "twist"), cells: cells({ twist: degrees }, null), basis });
}

export function swivelVerdict(clearance: CellValue, unit: CellValue, basis: unknown): Decision {
  const named = unitOf(unit);
  if (!named.ok) return "NO VERDICT";
  return decide({ kind: swivel, check: checkNamed(swivel, "shoulder clearance"), cells: cells({ clearance }, named.value), basis });
}

export function chainVerdict(size: CellValue, measured: CellValue, unit: CellValue, basis: unknown): Decision {
  const named = unitOf(unit);
  if (!named.ok) return "NO VERDICT";
  return decide({ kind: chainSling, check: checkNamed(chainSling, "link thickness"), cells: cells({ size, sectionNow: measured }, named.value), basis });
}

/** Diameter loss of a rope against its nominal size. */
export function ropeVerdict(nominal: CellValue, measured: CellValue, unit: CellValue, basis: unknown): Decision {
  const named = unitOf(unit);
  if (!named.ok) return "NO VERDICT";
  return decide({ kind: runningRope, check: checkNamed(runningRope, "diameter loss"), cells: cells({ size: nominal, ropeNow: measured }, named.value), basis });
}

/** A sheave groove against its rope: worn too narrow, or too wide to carry it. */
export function grooveVerdict(rope: CellValue, groove: CellValue, unit: CellValue, basis: unknown): Decision {
  const named = unitOf(unit);
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
  const { findings } = evaluate(checkNamed(kind, name), asked, { kind, bases: inForce(choice.ids), gauge: null, variant: null, house: choice.house });
  const judged = findings.filter((f) => f.criterion !== null);
  return judged.length === 0 ? null : worstOf(judged.map((f) => f.decision));
}

/** Broken wires: both counts where the construction has both limits. */
export function wireVerdict(construction: CellValue, perLay: CellValue, oneStrand: CellValue, basis: unknown): Decision {
  const named = matchVariant(CONSTRUCTIONS, readText(construction));
  if (named === null) return "NO VERDICT";
  const asked = cells({ brokenLay: perLay, brokenStrand: oneStrand }, null);
  const lay = checkNamed(wireRopeSling, "broken wires in a lay");
  const strand = checkNamed(wireRopeSling, "broken wires in one strand");
  const both = strand.onlyFor?.includes(named) === true;
  const decisions = [decide({ kind: wireRopeSling, check: lay, cells: asked, basis, variant: named })];
  if (both) decisions.push(decide({ kind: wireRopeSling, check: strand, cells: asked, basis, variant: named }));
  return worstOf(decisions);
}

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
  if (fit !== "as it is") return unreadable(fit === "implausible" ? `The measured size is ${way === "loss" ? "larger" : "smaller"} than the as-new size by more than gauge noise; check which is which.` : "The sizes differ by about 25.4 times; check the units.");
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
  const confirmed = rows.filter((row) => row?.confirmed === true).map((row) => row?.least).filter((row) => row !== undefined);
  if (confirmed.length > 0) return good(Math.max(...confirmed.map((least) => inNamed(least, named.value.unit, named.value))));
  return none(rows.some((row) => row !== null) ? `The row for size ${read.text} is unconfirmed and is not used.` : `Size ${read.text} is not in this table; a neighbouring row is never used.`);
}

/** The check that a part name stands for: an opening, a clearance, a link, or wear at a part. */
function checkOfPart(kind: GearKind, text: string): { readonly check: Check; readonly stress: "high" | "moderate" | "low" } | null {
  const said = text.toLowerCase();
  const opening = kind.checks.find((c) => c.kind === "growth" && /opening|mouth|gap/.test(said));
  if (opening) return { check: opening, stress: "high" };
  const gap = kind.checks.find((c) => c.kind === "gap" && /clearance|play/.test(said));
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
  if (houseStops(choice, match.kind)) return unreadable("The house limits cannot be applied; put their sheet right, or give its range as the basis.");
  const asked = checkOfPart(match.kind, readText(part));
  if (asked === null) return none(`A ${match.kind.id} has no part "${readText(part)}" with a size limit; its parts are ${Object.keys(match.kind.parts).join(", ")}.`);
  const read = asked.check.kind === "least" ? readChainSize(original, named.value.unit, named.value.times) : lengthWith(original, named.value);
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
  if (houseStops(choice, match.kind)) return unreadable("The house limits cannot be applied; put their sheet right, or give its range as the basis.");
  const at = matchPart(match.kind, readText(part));
  if (at === null) return none(`A ${match.kind.id} has no part "${readText(part)}"; its parts are ${Object.keys(match.kind.parts).join(", ")}.`);
  const unit = pairUnit(original, measured)?.unit ?? null;
  const was = readLength(original, { assume: unit });
  if (was.kind !== "value") return refusal("as-new size", was);
  const is = readLength(measured, { assume: unit });
  if (is.kind !== "value") return refusal("measured size", is);
  const fit = fitOf(was.value.size, convert(is.value.size, is.value.unit, was.value.unit), "larger");
  if (fit !== "as it is" && fit !== "noise") return unreadable("The measured size does not fit the as-new size; check which is which, and the units.");
  const left = dressLeft(was.value, is.value, { kind: match.kind, bases: inForce(choice.ids), gauge: null, variant: null, house: choice.house }, at.stress);
  return left === null ? none(`No grinding allowance for the ${at.part} of a ${match.kind.id} under ${choice.ids.join(", ")}.`) : good(toNumber(left));
}

/** Document, clause, edition and status of the criteria whose id is, or begins with, the text. */
export function sourceOf(criterion: CellValue): Answer<string> {
  const text = readText(criterion).toLowerCase().replace(/\s+/g, "-");
  if (text === "") return none("The criterion is missing.");
  const all = GEAR.flatMap((kind) => kind.criteria.map((c) => ({ kind, c })));
  const found = all.filter(({ c }) => c.id.toLowerCase() === text);
  const near = found.length > 0 ? found : all.filter(({ c }) => c.id.toLowerCase().startsWith(`${text}.`) || c.id.toLowerCase().startsWith(`${text}-`));
  if (near.length === 0) return none(`There is no criterion "${readText(criterion)}"; ids are like ${all[0]?.c.id ?? ""}.`);
  return good(near.map(({ c }) => `${c.id}: ${limitInWords(c.limit)}; ${cite(c.source)}; ${STATUS[c.status]}, checked ${c.checked}`).join("\n"));
}

const STATUS = { read: "read in the document", restated: "read on a page that restates it", practice: "common practice", unconfirmed: "unconfirmed, not used" } as const;

/** Days ahead that count as due soon; 30 when left out. */
export function leadDaysOf(value: CellValue): Answer<number> {
  const read = readCount(value);
  if (read.kind === "missing") return good(LEAD_DAYS);
  return read.kind === "value" ? good(toNumber(read.value)) : refusal("number of lead days", read);
}

/** A date argument as a serial day. */
export function dateOf(value: CellValue, name: string): Answer<number> {
  const read = readDate(value);
  return read.kind === "value" ? good(read.value) : refusal(name, read);
}


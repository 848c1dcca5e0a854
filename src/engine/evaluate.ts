/** One check of one item: readings from cells, every criterion in force, one finding for each. */
import type { BasisId } from "./bases";
import { readCount, readDegrees, readLength, readSeen, readText, tidy, type Length, type Read } from "./cell";
import { exact, fromCell, toNumber, ZERO, type Exact } from "./exact";
import { field, NONE_REQUIRED, type FieldId } from "./fields";
import type { Check, Criterion, GearKind, Limit, StressClass } from "./gear/kind";
import { matchPart } from "./gear/match";
import { fitOf, judge, judgeArea, lesser, type Word } from "./judge";
import type { HouseLimits } from "./house";
import type { CellValue, Finding } from "./model";
import { percent, tell, tellMissing, tellRefused, tellSeen, tellSound, tellUncertain, tellUnruled, tellWatched, type Told } from "./sentence";
import { cite } from "./sources";
import { leastNumber, leastOf, tableName } from "./tables/lookup";
import { convert, showDecimal, showFloor, showLength, type Unit } from "./units";
import type { Decision } from "./verdict";

/** Where an item's cells come from: a row of a log, or the arguments of a worksheet function. */
export interface Cells {
  value(id: FieldId): CellValue;
  /** Unit of a bare number in that column: the heading's, else the row's, else null. */
  unit(id: FieldId): Unit | null;
  /** What the person calls the column. */
  heading(id: FieldId): string;
  /** Part that the section columns stand for, when the sheet names one. */
  readonly part?: string;
  /** What bare numbers are multiplied with to be in their unit, such as 10 for centimetres; 1 when left out. */
  readonly times?: Exact;
}

export interface Situation {
  readonly kind: GearKind;
  readonly bases: ReadonlySet<BasisId>;
  /** Gauge resolution that applies to every length, or null. */
  readonly gauge: Length | null;
  readonly construction: string | null;
  /** Limits of the house's own sheet, when they are in force. */
  readonly house?: HouseLimits | undefined;
}

export interface CheckResult {
  readonly findings: readonly Finding[];
  readonly notes: readonly string[];
}

const NOTHING: CheckResult = { findings: [], notes: [] };

function plain(check: Check, decision: Decision, sentence: string, more: Partial<Finding> = {}): Finding {
  return {
    check: check.name, part: check.part, criterion: null, decision, measured: null, original: null, limit: null,
    share: null, comesOut: null, basis: null, source: null, overload: false, sentence, ...more,
  };
}

export function missingFinding(check: Check, cells: Cells, id: FieldId): Finding {
  return plain(check, "NO VERDICT", tellMissing(check.name, cells.heading(id), field(id).takes));
}

function refusedFinding(check: Check, cells: Cells, id: FieldId, read: { readonly text: string; readonly why: string }): Finding {
  return plain(check, "NO VERDICT", tellRefused(check.name, cells.heading(id), read.text, read.why));
}

/** Criteria of each kind by check, without those that nobody read in a source; prepared once. */
const BY_CHECK = new WeakMap<GearKind, ReadonlyMap<string, readonly Criterion[]>>();

function criteriaOf(kind: GearKind, check: string): readonly Criterion[] {
  let byCheck = BY_CHECK.get(kind);
  if (!byCheck) {
    const made = new Map<string, Criterion[]>();
    for (const c of kind.criteria) if (c.status !== "unconfirmed") made.set(c.check, [...(made.get(c.check) ?? []), c]);
    BY_CHECK.set(kind, (byCheck = made));
  }
  return byCheck.get(check) ?? [];
}

/** Criteria of a check that are in force here. */
function criteriaFor(check: Check, situation: Situation, stress: StressClass, twoWays: boolean): readonly Criterion[] {
  const { house } = situation;
  const own = house?.criteria.get(situation.kind.id)?.filter((c) => c.check === check.name) ?? [];
  const published = house?.replaced.has(`${situation.kind.id}/${check.name}`) === true ? [] : criteriaOf(situation.kind, check.name);
  return [...published, ...own].filter(
    (c) =>
      situation.bases.has(c.basis) &&
      (c.stress === undefined || c.stress.includes(stress)) &&
      (c.twoWays !== true || twoWays) &&
      (c.onlyFor === undefined || (situation.construction !== null && c.onlyFor.includes(situation.construction))),
  );
}

const FIGURES = new Map<string, Exact>();

/** Exact value of a limit's literal; made once. */
function literal(text: string): Exact {
  let value = FIGURES.get(text);
  if (!value) FIGURES.set(text, (value = exact(text)));
  return value;
}

/** A figure ready to be met with limits. */
interface Figure {
  readonly used: Exact;
  /** As-new or nominal size, for limits that are a share of it. */
  readonly base: Exact | null;
  /** "larger" when the part comes out above a size, "smaller" when below. */
  readonly comesOut: "larger" | "smaller";
  /** Size from which the allowance counts, where it is not the base. */
  readonly start?: Exact;
  readonly unit: Unit | null;
  readonly show: (value: Exact) => string;
  readonly measured: string;
  readonly original: string | null;
  readonly blur: Exact;
  readonly gauge: string;
  /** What the base is called, where it is neither as-new nor nominal. */
  readonly of?: string;
  /** Chain size, for limits from a table. */
  readonly size?: Length;
}

interface Allowance {
  readonly allowance: Exact;
  readonly word: Word;
  readonly rule: string;
  /** Set where the limit is a share of the area; `allowance` is then its rounded equal in diameter, for showing. */
  readonly area?: Exact;
}

/** Diameter at which a share of a round section's area is lost, rounded to 12 digits: for showing, never for judging. */
function sideOf(base: Exact, area: string): Exact {
  return fromCell(toNumber(base) * Math.sqrt(1 - toNumber(literal(area))));
}

type Allowed = Allowance | { readonly none: string; readonly passOver: boolean };

/** What a limit allows of a figure, in the figure's unit. */
function allowanceOf(limit: Limit, figure: Figure): Allowed {
  if (limit.word === "any") return { none: "the limit is an observation", passOver: false };
  if (limit.word === "below") {
    if (figure.size === undefined || figure.unit === null || figure.base === null) throw new Error("A table limit needs a nominal size");
    const row = leastOf(limit.table, figure.size.size, figure.size.unit, figure.unit);
    const size = showLength(figure.size.size, figure.size.unit);
    if (row === null) return { none: `size ${size} is not in ${tableName(limit.table)}`, passOver: false };
    if (!row.confirmed) return { none: `the row for ${size} in ${tableName(limit.table)} is unconfirmed and was passed over`, passOver: true };
    return { allowance: figure.base.sub(row.least), word: "above", rule: `least thickness in ${tableName(limit.table)}` };
  }
  if (limit.word === "fewer") throw new Error("A least number is met in its own check");
  if ("area" in limit) {
    if (figure.base === null) throw new Error("A share needs an as-new size");
    return { allowance: figure.base.sub(sideOf(figure.base, limit.area)), word: limit.word, rule: `${percent(toNumber(literal(limit.area)))} of the as-new area of a round section`, area: literal(limit.area) };
  }
  if ("share" in limit) {
    if (figure.base === null) throw new Error("A share needs an as-new size");
    const share = figure.base.mul(literal(limit.share));
    const rule = `${percent(toNumber(literal(limit.share)))} of ${figure.of ?? (figure.size === undefined ? "as-new" : "nominal")}`;
    if (limit.cap === undefined || figure.unit === null) return { allowance: share, word: limit.word, rule: limit.share === "0" ? "any measurable change" : rule };
    const cap = literal(figure.unit === "in" ? limit.cap.in : limit.cap.mm);
    return { allowance: lesser(share, cap), word: limit.word, rule: `${rule}, at most ${figure.unit === "in" ? limit.cap.in : limit.cap.mm} ${figure.unit}` };
  }
  if ("length" in limit) {
    if (figure.unit === null) throw new Error("A length limit needs a length");
    return { allowance: convert(literal(limit.length), limit.unit, figure.unit), word: limit.word, rule: `${limit.length} ${limit.unit}` };
  }
  if ("degrees" in limit) return { allowance: literal(limit.degrees), word: limit.word, rule: limit.degrees === "0" ? "any visible bend or twist" : `${limit.word} ${limit.degrees} degrees` };
  return { allowance: exact(limit.count), word: limit.word, rule: `${limit.word} ${String(limit.count)}` };
}

/** "above 2.1 in", "from 10", "below 0.342 in", "at 0.9 in or less". */
function comesOutText(figure: Figure, allowed: Allowance): string {
  const at = comesOutAt(figure, allowed);
  if (figure.comesOut === "larger") return `${allowed.word} ${figure.show(at)}`;
  return allowed.word === "above" ? `below ${figure.show(at)}` : `at ${figure.show(at)} or less`;
}

function comesOutAt(figure: Figure, allowed: Allowance): Exact {
  const start = figure.start ?? figure.base;
  if (start === null) return allowed.allowance;
  return figure.comesOut === "larger" ? start.add(allowed.allowance) : start.sub(allowed.allowance);
}

/** Where a part of a given as-new size comes out, by every criterion in force that sets a size. */
export interface ComesOut {
  readonly at: Exact;
  readonly criterion: Criterion;
}

export type ComesOutResult = { readonly ok: true; readonly limits: readonly ComesOut[]; readonly passedOver: readonly string[] } | { readonly ok: false; readonly why: string };

/**
 * Sizes at which a part comes out, in `unit`: above them for an opening or a clearance, below them for a section.
 * `base` is the as-new size, the nominal chain size, or null where the limit needs none.
 */
export function comesOutOf(check: Check, base: Length | null, unit: Unit, situation: Situation, stress: StressClass): ComesOutResult {
  const larger = check.kind === "growth" || check.kind === "gap";
  const figure: Figure = {
    used: ZERO, base: base === null ? null : convert(base.size, base.unit, unit), comesOut: larger ? "larger" : "smaller", unit, show: lengthShow(unit),
    measured: "", original: null, blur: ZERO, gauge: "", ...(check.kind === "least" && base !== null ? { size: base } : {}),
  };
  const limits: ComesOut[] = [];
  const passedOver: string[] = [];
  for (const criterion of criteriaFor(check, situation, stress, false)) {
    if (criterion.beyond === "WATCH") continue;
    const allowed = allowanceOf(criterion.limit, figure);
    if ("none" in allowed) {
      if (!allowed.passOver) return { ok: false, why: allowed.none };
      passedOver.push(allowed.none);
    } else limits.push({ at: comesOutAt(figure, allowed), criterion });
  }
  return { ok: true, limits, passedOver };
}

/** Where a check's part comes out, in words, as far as the as-new size is known; null when no limit can be told. */
export function comesOutWords(check: Check, cells: Cells, situation: Situation): string | null {
  if (check.kind === "seen" || check.kind === "nick" || check.kind === "ratio" || check.kind === "enough") return null;
  if (check.onlyFor !== undefined && situation.construction !== null && !check.onlyFor.includes(situation.construction)) return null;
  if (check.kind === "angle" || check.kind === "count") return plainComesOut(check, situation);
  const named = check.kind === "loss" && cells.part !== undefined ? matchPart(situation.kind, cells.part) : null;
  const stress = named?.stress ?? situation.kind.parts[check.part] ?? "high";
  const base = check.kind === "gap" ? null : check.kind === "least" ? readChainSize(cells.value(check.size), cells.unit(check.size), cells.times) : length(cells, check.original);
  if (base !== null && base.kind !== "value") return null;
  const measured = length(cells, check.measured, true);
  const unit = base?.value.unit ?? (measured.kind === "value" ? measured.value.unit : (cells.unit(check.measured) ?? "in"));
  const result = comesOutOf(check, base?.value ?? null, unit, situation, stress);
  if (!result.ok || result.limits.length === 0) return null;
  const larger = check.kind === "growth" || check.kind === "gap";
  const [strictest] = [...result.limits].sort((a, b) => (larger ? a.at.compare(b.at) : b.at.compare(a.at)) || Number(b.criterion.limit.word === "from") - Number(a.criterion.limit.word === "from"));
  if (strictest === undefined) return null;
  const from = strictest.criterion.limit.word === "from";
  const size = showLength(strictest.at, unit);
  return `${labelOf(named === null ? check : { ...check, part: named.part })} ${larger ? `${from ? "from" : "above"} ${size}` : from ? `at ${size} or less` : `below ${size}`}`;
}

function plainComesOut(check: Check, situation: Situation): string | null {
  const limits = criteriaFor(check, situation, "high", false)
    .map(({ limit }) => ("degrees" in limit ? { at: literal(limit.degrees), word: limit.word, unit: " degrees" } : "count" in limit ? { at: exact(limit.count), word: limit.word, unit: "" } : null))
    .filter((l) => l !== null)
    .sort((a, b) => a.at.compare(b.at));
  const [first] = limits;
  return first ? `${check.name} ${first.word} ${showDecimal(first.at, 2)}${first.unit}` : null;
}

/** Depth that may still be ground off: the least that the criteria in force leave, or null when none sets an allowance. */
export function dressLeft(original: Length, measured: Length, situation: Situation, stress: StressClass): Exact | null {
  const check = situation.kind.checks.find((c) => c.kind === "nick");
  if (check === undefined) return null;
  const lost = original.size.sub(inUnit(measured, original.unit));
  const gone = judge(lost, ZERO, "above").beyond ? lost : ZERO;
  let left: Exact | null = null;
  for (const { limit } of criteriaFor(check, situation, stress, false)) {
    if (!("share" in limit)) continue;
    const here = original.size.mul(literal(limit.share)).sub(gone);
    const depth = judge(here, ZERO, "above").beyond ? here : ZERO;
    left = left === null ? depth : lesser(left, depth);
  }
  return left;
}

/** Every criterion in force against one figure. */
function against(check: Check, figure: Figure, criteria: readonly Criterion[]): CheckResult {
  const notes: string[] = [];
  const findings: Finding[] = [];
  for (const criterion of criteria) {
    const allowed = allowanceOf(criterion.limit, figure);
    if ("none" in allowed) {
      if (allowed.passOver) notes.push(capital(allowed.none));
      else findings.push(plain(check, "NO VERDICT", `${capital(check.name)}: ${allowed.none}; a neighbouring row is never used [${criterion.basis}: ${cite(criterion.source)}].`, { basis: criterion.basis, source: cite(criterion.source), criterion: criterion.id, measured: figure.measured }));
      continue;
    }
    findings.push(meet(check, figure, criterion, allowed));
  }
  if (findings.length === 0) {
    // Nothing used is inside any limit; something used without a limit settles nothing.
    const why = notes.length > 0 ? notes.join("; ") : "the rules in force hold no limit for it";
    const used = judge(figure.used, ZERO, "above").beyond;
    const sentence = used ? `${capital(check.name)} ${figure.measured} cannot be judged: ${why}; choose a basis that has one.` : `${capital(check.name)} ${figure.measured} shows no change; ${why}.`;
    return { findings: [plain(check, used ? "NO VERDICT" : "KEEP", sentence, { measured: figure.measured, original: figure.original })], notes };
  }
  return { findings, notes };
}

function meet(check: Check, figure: Figure, criterion: Criterion, allowed: Allowance): Finding {
  const met = allowed.area === undefined || figure.base === null ? judge(figure.used, allowed.allowance, allowed.word, figure.blur) : judgeArea(figure.base, figure.used, allowed.area, allowed.word, figure.blur);
  const comesOut = comesOutText(figure, allowed);
  const source = cite(criterion.source);
  const told: Told = { label: labelOf(check), measured: figure.measured, original: figure.original, comesOut, rule: allowed.rule, share: met.share, source, basis: criterion.basis };
  const watched = met.nearly && (criterion.beyond === "REMOVE" || criterion.beyond === "EXAMINE") && criterion.inside === undefined;
  const decision: Decision = met.uncertain ? (criterion.beyond === "WATCH" ? "WATCH" : "EXAMINE") : met.beyond ? criterion.beyond : watched ? "WATCH" : (criterion.inside ?? "KEEP");
  const settledBy = met.settledBy === null || figure.unit === null ? null : showFloor(met.settledBy, figure.unit);
  const look = criterion.beyond === "WATCH" && decision === "WATCH" && met.beyond;
  const sentence = met.uncertain && decision === "EXAMINE" ? tellUncertain(told, figure.gauge, settledBy) : look ? tellWatched(told) : tell(decision, told);
  return {
    check: check.name, part: check.part, criterion: criterion.id, decision, measured: figure.measured, original: figure.original,
    limit: allowed.rule, share: met.share, comesOut, basis: criterion.basis, source, sentence,
    overload: check.overload === true && (met.beyond || met.past),
  };
}

/** What was measured: "saddle section" for wear at the saddle, else the check's own name. */
function labelOf(check: Check): string {
  return check.kind === "loss" ? `${check.part} section` : check.name;
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

const length = (cells: Cells, id: FieldId, zero = false): Read<Length> => readLength(cells.value(id), { assume: cells.unit(id), zero, ...(cells.times === undefined ? {} : { times: cells.times }) });

const lengthShow = (unit: Unit) => (value: Exact): string => showLength(value, unit);

/** The reading as a decimal with its unit, and as it was typed where that is a fraction or in feet. */
const typed = (read: { readonly text: string; readonly value: Length }): string => {
  const figure = showLength(read.value.size, read.value.unit);
  return /\/|\d ?'(?!')/.test(read.text) ? `${figure} (${read.text})` : figure;
};

interface Pair {
  readonly original: Length;
  readonly measured: Length;
  readonly texts: readonly [string, string];
  readonly notes: readonly string[];
}

/** Findings that stand in the way of a judgement. */
interface InTheWay {
  readonly inTheWay: readonly Finding[];
}

/** As-new and measured size of one place; what stands in the way comes back as findings, each missing cell by its heading. */
function readPair(check: Check, cells: Cells, originalId: FieldId, measuredId: FieldId, required: boolean): Pair | InTheWay | null {
  const original = length(cells, originalId);
  const measured = length(cells, measuredId);
  if (!required && measured.kind === "missing" && original.kind !== "refused") return null;
  if (original.kind !== "value" || measured.kind !== "value")
    return { inTheWay: [...unread(check, cells, originalId, original), ...unread(check, cells, measuredId, measured)] };
  const notes = [original.note, measured.note].filter((n) => n !== undefined);
  return { original: original.value, measured: measured.value, texts: [typed(original), typed(measured)], notes };
}

function unread(check: Check, cells: Cells, id: FieldId, read: Read<Length>): readonly Finding[] {
  if (read.kind === "value") return [];
  return [read.kind === "missing" ? missingFinding(check, cells, id) : refusedFinding(check, cells, id, read)];
}

const inUnit = (value: Length, unit: Unit): Exact => convert(value.size, value.unit, unit);

function blurOf(situation: Situation, unit: Unit, readings: 1 | 2): { readonly blur: Exact; readonly gauge: string } {
  if (situation.gauge === null) return { blur: ZERO, gauge: "" };
  const resolution = inUnit(situation.gauge, unit);
  return { blur: readings === 2 ? resolution : resolution.div(2), gauge: showLength(resolution, unit) };
}

/** Change between as-new and measured, or the finding that says why the pair does not fit. */
function changeOf(check: Check, cells: Cells, original: Length, measured: Length, texts: readonly [string, string], way: "loss" | "growth", measuredId: FieldId): { readonly used: Exact; readonly unit: Unit; readonly base: Exact; readonly note: string | null } | Finding {
  const unit = original.unit;
  const now = inUnit(measured, unit);
  const fit = fitOf(original.size, now, way === "loss" ? "larger" : "smaller");
  const pair = `${texts[1]} against ${texts[0]} as new`;
  const heading = cells.heading(measuredId);
  if (fit === "inch in a millimetre column" || fit === "swapped units")
    return plain(check, "NO VERDICT", tellRefused(check.name, heading, texts[1], `${pair} differ by about 25.4 times, as an inch figure beside a millimetre figure does; check the units`));
  if (fit === "implausible")
    return plain(check, "NO VERDICT", tellRefused(check.name, heading, texts[1], `${pair} is ${way === "loss" ? "larger" : "smaller"} than new by more than gauge noise; check which column is which`));
  const difference = way === "loss" ? original.size.sub(now) : now.sub(original.size);
  return { used: fit === "noise" ? ZERO : difference, unit, base: original.size, note: fit === "noise" ? `${capital(check.name)}: ${pair} is within 2 % gauge noise and counts as no change` : null };
}

/**
 * A share of a size needs no unit: where nothing names one and both figures are bare, they are taken to be in the same.
 * Not with a gauge, whose resolution is in a unit.
 */
function withoutUnit(cells: Cells, ids: readonly FieldId[], situation: Situation): { readonly cells: Cells; readonly free: boolean } {
  if (situation.gauge !== null) return { cells, free: false };
  const given = ids.filter((id) => length(cells, id).kind !== "missing");
  const bare = given.every((id) => cells.unit(id) === null && length(cells, id).kind === "refused" && readLength(cells.value(id), { assume: "in" }).kind === "value");
  if (given.length === 0 || !bare) return { cells, free: false };
  return { cells: { ...cells, unit: (id) => (ids.includes(id) ? "in" : cells.unit(id)) }, free: true };
}

function loss(check: Check & { kind: "loss" }, asGiven: Cells, situation: Situation): CheckResult {
  const { acrossOriginal, acrossMeasured } = check;
  const ids = [check.original, check.measured, ...(acrossOriginal && acrossMeasured ? [acrossOriginal, acrossMeasured] : [])];
  const { cells, free } = withoutUnit(asGiven, ids, situation);
  const named = cells.part === undefined || check.original !== "sectionNew" ? null : matchPart(situation.kind, cells.part);
  const part = named ?? { part: check.part, stress: situation.kind.parts[check.part] ?? "high" };
  const at: Check = { ...check, part: part.part };
  const pairs: { readonly read: Pair | InTheWay | null; readonly measured: FieldId }[] = [{ read: readPair(at, cells, check.original, check.measured, check.required), measured: check.measured }];
  if (acrossOriginal && acrossMeasured) pairs.push({ read: readPair({ ...at, name: `${check.name} across` }, cells, acrossOriginal, acrossMeasured, false), measured: acrossMeasured });

  const findings: Finding[] = [];
  const notes: string[] = [];
  const figures: Figure[] = [];
  for (const { read, measured } of pairs) {
    if (read === null) continue;
    if ("inTheWay" in read) {
      findings.push(...read.inTheWay);
      continue;
    }
    const change = changeOf(at, cells, read.original, read.measured, read.texts, "loss", measured);
    if (!("used" in change)) {
      findings.push(change);
      continue;
    }
    const { used, unit, base, note } = change;
    notes.push(...read.notes, ...(note === null ? [] : [note]));
    const show = free ? (value: Exact): string => showDecimal(value, 4) : lengthShow(unit);
    const [original, now] = free ? [show(read.original.size), show(read.measured.size)] : read.texts;
    figures.push({ used, base, comesOut: "smaller", unit: free ? null : unit, show, measured: now, original, ...blurOf(situation, unit, 2) });
  }
  if (free && figures.length > 0) notes.push(`${capital(check.name)}: no unit is recorded, so the sizes were taken to be in the same one`);
  const worn = figures.filter((figure) => judge(figure.used, ZERO, "above").beyond).length;
  for (const figure of figures) {
    const result = against(at, figure, criteriaFor(check, situation, part.stress, worn > 1));
    findings.push(...result.findings);
    notes.push(...result.notes);
  }
  return { findings, notes };
}

function growth(check: Check & { kind: "growth" }, cells: Cells, situation: Situation): CheckResult {
  const pair = readPair(check, cells, check.original, check.measured, check.required);
  if (pair === null) return NOTHING;
  if ("inTheWay" in pair) return { findings: pair.inTheWay, notes: [] };
  const change = changeOf(check, cells, pair.original, pair.measured, pair.texts, "growth", check.measured);
  if (!("used" in change)) return { findings: [change], notes: [...pair.notes] };
  const { used, unit, base, note } = change;
  const figure: Figure = { used, base, comesOut: "larger", unit, show: lengthShow(unit), measured: pair.texts[1], original: pair.texts[0], ...blurOf(situation, unit, 2) };
  const result = against(check, figure, criteriaFor(check, situation, "high", false));
  return { findings: result.findings, notes: [...result.notes, ...pair.notes, ...(note === null ? [] : [note])] };
}

const ONE = exact(1);

/** Chain size as the trade writes it: a bare fraction is inches; a grade behind it is no part of the size. */
export function readChainSize(cell: CellValue, assume: Unit | null, times: Exact = ONE): Read<Length> {
  if (typeof cell !== "string") return readLength(cell, { assume, times });
  const text = tidy(cell).replace(/[,;(]? ?\b(?:grade|gr|g)\.? ?-?(?:8|80|100|10|120|12)\b\)?/i, "").trim();
  const bareFraction = /^(\d+[ -])?\d+\/\d+$/.test(text);
  return bareFraction ? readLength(text, { assume: "in" }) : readLength(text, { assume, times });
}

/** Links may measure somewhat more than their trade size: 3/8 chain is 10 mm. */
const TRADE_SIZE_EXCESS = exact("1.1");

function least(check: Check & { kind: "least" }, cells: Cells, situation: Situation): CheckResult {
  const size = readChainSize(cells.value(check.size), cells.unit(check.size), cells.times);
  const measured = length(cells, check.measured);
  if (!check.required && measured.kind === "missing" && size.kind !== "refused") return NOTHING;
  if (size.kind !== "value" || measured.kind !== "value")
    return { findings: [...unread(check, cells, check.size, size), ...unread(check, cells, check.measured, measured)], notes: [] };
  const unit = measured.value.unit;
  const nominal = check.asNew === undefined ? inUnit(size.value, unit) : inUnit(size.value, unit).mul(literal(check.asNew));
  const texts = [typed(size), typed(measured)] as const;
  const fit = fitOf(nominal.mul(TRADE_SIZE_EXCESS), measured.value.size, "larger");
  if (fit !== "as it is" && fit !== "noise")
    return { findings: [plain(check, "NO VERDICT", tellRefused(check.name, cells.heading(check.measured), texts[1], `${texts[1]} does not fit size ${texts[0]}; check size and unit`))], notes: [] };
  const used = nominal.sub(measured.value.size);
  const figure: Figure = {
    used: judge(used, ZERO, "above").beyond ? used : ZERO, base: nominal, comesOut: "smaller", unit, show: lengthShow(unit),
    measured: texts[1], original: `${texts[0]} nominal`, size: size.value, ...blurOf(situation, unit, 1),
  };
  const result = against(check, figure, criteriaFor(check, situation, "moderate", false));
  const unjudged = result.findings.every((f) => f.criterion === null);
  return unjudged
    ? { findings: [plain(check, "NO VERDICT", `${capital(check.name)} ${texts[1]} cannot be judged: ${result.notes[0] ?? "the rules in force hold no limit for it"}.`)], notes: result.notes }
    : { findings: result.findings, notes: [...result.notes, ...(measured.note === undefined ? [] : [measured.note])] };
}

function single(check: Check & { kind: "gap" | "angle" | "count" }, cells: Cells, situation: Situation): CheckResult {
  const read = check.kind === "gap" ? length(cells, check.measured, true) : check.kind === "angle" ? readDegrees(cells.value(check.measured)) : readCount(cells.value(check.measured));
  if (read.kind === "refused") return { findings: [refusedFinding(check, cells, check.measured, read)], notes: [] };
  if (read.kind === "missing") return check.required ? { findings: [missingFinding(check, cells, check.measured)], notes: [] } : NOTHING;
  const figure = singleFigure(check.kind, read, situation);
  return against(check, figure, criteriaFor(check, situation, "high", false));
}

function singleFigure(kind: "gap" | "angle" | "count", read: { readonly value: Length | Exact; readonly text: string }, situation: Situation): Figure {
  const common = { base: null, comesOut: "larger", original: null } as const;
  if (kind === "gap") {
    const { size, unit } = read.value as Length;
    return { ...common, used: size, unit, show: lengthShow(unit), measured: showLength(size, unit), ...blurOf(situation, unit, 1) };
  }
  const used = read.value as Exact;
  const show = (value: Exact): string => (kind === "angle" ? `${showDecimal(value, 2)} degrees` : showDecimal(value, 0));
  return { ...common, used, unit: null, show, measured: show(used), blur: ZERO, gauge: "" };
}

/** The wear check by which a part is sized. A hook's load pin is told at its body and is no measure of the body. */
export function lossAt(kind: GearKind, part: string | null): (Check & { kind: "loss" }) | undefined {
  const losses = kind.checks.filter((c): c is Check & { kind: "loss" } => c.kind === "loss");
  return losses.find((c) => c.part === part && (c.original !== "pinNew" || part === "pin")) ?? losses[0];
}

/** A nick is ground out to its depth: what is left must stay inside the grinding allowance of its part. */
function nick(check: Check & { kind: "nick" }, cells: Cells, situation: Situation): CheckResult {
  const depth = length(cells, check.measured, true);
  if (depth.kind === "refused") return { findings: [refusedFinding(check, cells, check.measured, depth)], notes: [] };
  if (depth.kind === "missing") return NOTHING;
  if (!judge(depth.value.size, ZERO, "above").beyond)
    return { findings: [plain(check, "KEEP", tellSound("nicks", depth.text, null, null), { measured: depth.text })], notes: [] };
  const text = readText(cells.value(check.at));
  const part = text === "" ? null : matchPart(situation.kind, text);
  if (text !== "" && part === null) return { findings: [plain(check, "NO VERDICT", tellRefused(check.name, cells.heading(check.at), text, `it is no part of a ${situation.kind.id}; the parts are ${Object.keys(situation.kind.parts).join(", ")}`))], notes: [] };
  const sized = lossAt(situation.kind, part?.part ?? null);
  const stress = part?.stress ?? "high";
  if (sized === undefined) return nickWithoutSection(check, depth);
  const pair = readPair({ ...check, part: part?.part ?? sized.part }, cells, sized.original, sized.measured, true);
  if (pair === null) return NOTHING;
  if ("inTheWay" in pair) return { findings: pair.inTheWay, notes: [] };
  const unit = pair.original.unit;
  const change = changeOf(check, cells, pair.original, pair.measured, pair.texts, "loss", sized.measured);
  if (!("used" in change)) return { findings: [change], notes: [] };
  const used = change.used.add(inUnit(depth.value, unit));
  const figure: Figure = {
    used, base: pair.original.size, comesOut: "smaller", unit, show: lengthShow(unit),
    measured: `${typed(depth)} deep at the ${part?.part ?? sized.part}, which leaves ${showLength(pair.original.size.sub(used), unit)}`, original: pair.texts[0], ...blurOf(situation, unit, 2),
  };
  const result = against({ ...check, part: part?.part ?? sized.part }, figure, criteriaFor(check, situation, stress, false));
  const unjudged = result.findings.every((f) => f.criterion === null);
  const note = part === null ? ["Nick: its place is not named, so the allowance of a highly stressed part was used"] : [];
  return unjudged ? { ...nickWithoutSection(check, depth), notes: result.notes } : { findings: result.findings, notes: [...result.notes, ...note] };
}

const nickWithoutSection = (check: Check, depth: { readonly text: string }): CheckResult => ({
  findings: [plain(check, "EXAMINE", tellUnruled("nick", depth.text))],
  notes: [],
});

function seenCheck(check: Check & { kind: "seen" }, cells: Cells, situation: Situation): CheckResult {
  const column = field(check.measured).type === "fault" ? "fault" : "sound";
  const read = readSeen(cells.value(check.measured), column, field(check.measured).choices?.includes(NONE_REQUIRED) === true);
  if (read.kind === "refused") return { findings: [refusedFinding(check, cells, check.measured, read)], notes: [] };
  if (read.kind === "missing") return check.required ? { findings: [missingFinding(check, cells, check.measured)], notes: [] } : NOTHING;
  const criteria = criteriaFor(check, situation, "high", false);
  const [first] = criteria;
  if (read.value === "sound")
    return { findings: [plain(check, "KEEP", tellSound(check.name, read.text, first ? cite(first.source) : null, first?.basis ?? null), { measured: read.text })], notes: [] };
  if (!first) return { findings: [plain(check, "EXAMINE", tellUnruled(check.name, read.text), { measured: read.text, overload: check.overload === true })], notes: [] };
  return {
    findings: criteria.map((c) => plain(check, c.beyond, tellSeen(check.name, read.text, cite(c.source), c.basis), { criterion: c.id, measured: read.text, basis: c.basis, source: cite(c.source), overload: check.overload === true })),
    notes: [],
  };
}

/** The size that a measure is held against, or the findings that stand in the way. */
function sizeFor(check: Check & { kind: "ratio" | "enough" }, cells: Cells, measured: Read<unknown>): Read<Length> | InTheWay | null {
  if (measured.kind === "missing" && !check.required) return null;
  const size = readChainSize(cells.value(check.size), cells.unit(check.size), cells.times);
  const unmeasured = measured.kind === "refused" ? [refusedFinding(check, cells, check.measured, measured)] : measured.kind === "missing" ? [missingFinding(check, cells, check.measured)] : [];
  const inTheWay = [...unread(check, cells, check.size, size), ...unmeasured];
  return inTheWay.length > 0 ? { inTheWay } : size;
}

/** A measure as a share of a size, or how far it exceeds the size. */
function ratio(check: Check & { kind: "ratio" }, cells: Cells, situation: Situation): CheckResult {
  const measured = length(cells, check.measured, check.over !== true);
  const size = sizeFor(check, cells, measured);
  if (size === null) return NOTHING;
  if ("inTheWay" in size) return { findings: size.inTheWay, notes: [] };
  if (size.kind !== "value" || measured.kind !== "value") throw new Error(`${check.name} has readings that were not told`);
  const { unit } = measured.value;
  const base = inUnit(size.value, unit);
  const used = check.over === true ? measured.value.size.sub(base) : measured.value.size;
  const figure: Figure = {
    used, base, start: check.over === true ? base : ZERO, comesOut: "larger", unit, show: lengthShow(unit), of: check.over === true ? "the rope" : field(check.size).heading.toLowerCase(),
    measured: typed(measured), original: null, ...blurOf(situation, unit, 1),
  };
  return against(check, figure, criteriaFor(check, situation, "high", false));
}

/** A count or a length that must not fall short of what the size asks for. */
function enough(check: Check & { kind: "enough" }, cells: Cells, situation: Situation): CheckResult {
  const count = check.counted ? readCount(cells.value(check.measured)) : null;
  const spread = check.counted ? null : length(cells, check.measured);
  const size = sizeFor(check, cells, count ?? spread ?? { kind: "missing", text: "" });
  if (size === null) return NOTHING;
  if ("inTheWay" in size) return { findings: size.inTheWay, notes: [] };
  const has = count?.kind === "value" ? count.value : spread?.kind === "value" ? spread.value.size : null;
  if (size.kind !== "value" || has === null) throw new Error(`${check.name} has readings that were not told`);
  const unit: Unit | null = spread?.kind === "value" ? spread.value.unit : null;
  const show = unit === null ? (value: Exact): string => showDecimal(value, 0) : lengthShow(unit);
  const named = showLength(size.value.size, size.value.unit);
  const findings: Finding[] = [];
  for (const criterion of criteriaFor(check, situation, "high", false)) {
    const { limit } = criterion;
    if (limit.word !== "fewer") throw new Error(`${criterion.id} is no least number`);
    const needed = neededOf(limit, size.value, unit);
    if (needed === null) {
      findings.push(plain(check, "NO VERDICT", `${capital(check.name)}: size ${named} is not in ${"table" in limit ? tableName(limit.table) : "the rule"}; a neighbouring row is never used [${criterion.basis}: ${cite(criterion.source)}].`, { basis: criterion.basis, source: cite(criterion.source), criterion: criterion.id, measured: show(has) }));
      continue;
    }
    const figure: Figure = { used: needed.sub(has), base: needed, comesOut: "smaller", unit, show, measured: show(has), original: null, ...(unit === null ? { blur: ZERO, gauge: "" } : blurOf(situation, unit, 1)) };
    findings.push(meet(check, figure, criterion, { allowance: ZERO, word: "above", rule: `at least ${show(needed)} for size ${named}` }));
  }
  if (findings.length === 0) return { findings: [plain(check, "NO VERDICT", `${capital(check.name)} ${show(has)} cannot be judged: the rules in force hold no limit for it; choose a basis that has one.`)], notes: [] };
  return { findings, notes: [] };
}

/** What a size asks for, in the unit of the reading; null where the table has no row for the size. */
function neededOf(limit: Extract<Limit, { word: "fewer" }>, size: Length, unit: Unit | null): Exact | null {
  if ("times" in limit) return unit === null ? null : inUnit(size, unit).mul(literal(limit.times));
  const found = leastNumber(limit.table, size.size, size.unit);
  return found === null ? null : unit === null ? found.least : convert(found.least, found.unit, unit);
}

/** Every finding of one check, and what else should be said. */
export function evaluate(check: Check, cells: Cells, situation: Situation): CheckResult {
  if (check.onlyFor !== undefined && situation.construction !== null && !check.onlyFor.includes(situation.construction)) return NOTHING;
  switch (check.kind) {
    case "loss": return loss(check, cells, situation);
    case "growth": return growth(check, cells, situation);
    case "least": return least(check, cells, situation);
    case "gap": case "angle": case "count": return single(check, cells, situation);
    case "nick": return nick(check, cells, situation);
    case "ratio": return ratio(check, cells, situation);
    case "enough": return enough(check, cells, situation);
    case "seen": return seenCheck(check, cells, situation);
  }
}

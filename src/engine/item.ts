/** One item: its cells, the checks of its gear kind, one verdict. */
import { withPublishedSizes } from "./as-new";
import { DENIED, DOUBT, readDate, readLength, readText, type Length } from "./cell";
import { comesOutWords } from "./check/comes-out";
import { evaluate } from "./check/evaluate";
import { across, type Cells, missingFinding } from "./check/readings";
import type { Situation } from "./check/situation";
import { field } from "./fields";
import { fieldsOf } from "./gear/fields-of";
import { matchKind } from "./gear/match";
import type { GearKind } from "./gear/kind";
import type { HouseLimits } from "./house";
import { inForce, type BasisId } from "./bases";
import type { CellValue, Finding, ItemVerdict } from "./model";
import { showDate } from "./dates";
import { saidFinding } from "./said";
import { tellNearest } from "./sentence";
import { strayFindings, UNKNOWN } from "./stray";
import { readVariant } from "./variant";
import { outOfUse, rank, worstOf } from "./verdict";

function note(decision: Finding["decision"], check: string, sentence: string): Finding {
  return { check, part: "", criterion: null, decision, measured: null, original: null, limit: null, share: null, comesOut: null, basis: null, source: null, sentence, overload: false };
}

export interface TagState {
  /** Tagged out and not released. */
  readonly out: boolean;
  readonly sentence: string;
}

/** Words in "Released by" that name nobody: an answer or a mark where the name should be. */
const NO_NAME = /^((yes|y|ok|okay|done|true|released?|cleared|approved|accepted|passed|signed|signature|initials|same|ditto|as above|nil|open|date|name|someone|anyone|by|on|and|(a |the )?(qualified|competent) person)\b[ .,;:-]*)+$/i;
/** Words of refusal, of waiting or of a condition: wherever they stand, nobody has released the item. */
const NO_RELEASE =
  /^see\b|\b(none|nobody|no[ -]?one|cannot|reject\w*|refus(e|es|ed|al|ing)|den(y|ied|ies)|declin(e|es|ed|ing)|disapprov\w*|unreleased|unsigned|unapproved|await\w*|wait(s|ing|ed)?|pending|to be|will be|should be|must be|tb[acd]|hold|requested|required|needed|asked|same as|ditto|signature|cancell?ed|withdrawn|revoked|fail(s|ed)?|unknown|unfit|scrap(ped)?|quarantined?|withheld|condemned|prohibit\w*|forbidden|to follow|expected|outstanding|missing|illegible|unreadable|unnamed|subject to|provided|conditional\w*|until|unless|if|when|after|once|before)\b/i;
/** Parts of a date in what stands for the tag; 1 alone is a tick. */
const PART_OF_DATE = /\d|\b(jan(uary)?|feb(ruary)?|mar(ch)?|apr(il)?|may|june?|july?|aug(ust)?|sept?(ember)?|oct(ober)?|nov(ember)?|dec(ember)?|(mon|tues|wednes|thurs|fri|satur|sun)day|yesterday|today|last \w+|week|month|year)\b/i;

/** Whether "Released by" holds a name, with nothing that takes the release back. */
const names = (by: string): boolean => /\p{L}{2}/u.test(by) && readDate(by).kind !== "value" && ![DENIED, DOUBT, NO_NAME, NO_RELEASE].some((pattern) => pattern.test(by));

/**
 * A tagged-out item stays out until a release by a named qualified person is recorded, dated on or after the tag and not
 * after the day of judging, where that is known. Of a tag with part of a date it cannot be told whether the release is later.
 */
export function tagState(cells: Cells, asOf: number | null): TagState {
  const tagged = cells.value("tagged");
  const text = readText(tagged);
  if (text === "" || /^(no\.?|n|none|nil|false|0|[-—–]+|not (tagged( out)?|applicable)|in service|n\/?a)$/i.test(text)) return { out: false, sentence: "" };
  const taggedOn = readDate(tagged);
  const by = readText(cells.value("releasedBy"));
  const on = readDate(cells.value("releasedOn"));
  const since = taggedOn.kind === "value" ? ` on ${showDate(taggedOn.value)}` : "";
  if (taggedOn.kind === "refused" && text !== "1" && PART_OF_DATE.test(text))
    return { out: true, sentence: `Tagged out: "${text}" in "${cells.heading("tagged")}" cannot be read as a date (${taggedOn.why}), so no release can be told to be later.` };
  if (!names(by)) return { out: true, sentence: `Tagged out${since}: ${by === "" ? "no release by a named qualified person is recorded" : `"${by}" in "${cells.heading("releasedBy")}" is no release by a named qualified person`}; fill "${cells.heading("releasedBy")}" and "${cells.heading("releasedOn")}" only after that release.` };
  if (on.kind !== "value") return { out: true, sentence: `Tagged out${since}: the release by ${by} has no date; fill "${cells.heading("releasedOn")}".` };
  if (taggedOn.kind === "value" && on.value < taggedOn.value) return { out: true, sentence: `Tagged out${since}: the release by ${by} is dated ${showDate(on.value)}, before the tag.` };
  if (later(on.value, asOf)) return { out: true, sentence: `Tagged out${since}: the release by ${by} is dated ${showDate(on.value)}, which is ${ahead(asOf)}.` };
  return { out: false, sentence: `Was tagged out${taggedOn.kind === "value" ? since : " (the tag has no date)"}; released by ${by} on ${showDate(on.value)}.` };
}

const later = (day: number, asOf: number | null): asOf is number => asOf !== null && day > asOf;

const ahead = (asOf: number): string => `later than the day of judging, ${showDate(asOf)}`;

/** An inspection that has not been yet: the record is wrong, and nothing that rests on it holds. */
function dateFinding(cells: Cells, asOf: number | null): Finding | null {
  const inspected = readDate(cells.value("inspected"));
  if (inspected.kind !== "value" || !later(inspected.value, asOf)) return null;
  return note("NO VERDICT", "date", `The inspection date ${inspected.text} in "${cells.heading("inspected")}" is ${ahead(asOf)}; put the date right.`);
}

/** Rule sets that have no limit at all for the kind pass nothing. */
function ruleFinding({ kind, bases, house }: Situation): Finding | null {
  if (kind.criteria.some((c) => c.status !== "unconfirmed" && bases.has(c.basis)) || house?.criteria.has(kind.id) === true) return null;
  return note("NO VERDICT", "rules", `No rule set in force (${[...bases].join(", ")}) says anything about a ${kind.id}; choose one that does.`);
}

/** Another part of the assembly was found stretched: out of use until this one has been looked at after that day. */
function overloadFinding(cells: Cells, asOf: number | null): Finding | null {
  const overload = readDate(cells.value("overload"));
  if (overload.kind === "missing") return null;
  const inspected = readDate(cells.value("inspected"));
  if (overload.kind === "value" && inspected.kind === "value" && inspected.value > overload.value && !later(inspected.value, asOf)) return null;
  const when = overload.kind === "value" ? ` on ${showDate(overload.value)}` : "";
  return note("EXAMINE", "assembly", `Another part of this assembly was found stretched or opened up${when}: the whole assembly was overloaded, and this part has not been looked at since; inspect it and date the inspection after that day.`);
}

function gaugeOf(cells: Cells): { readonly gauge: Length | null; readonly finding: Finding | null } {
  const read = readLength(cells.value("gauge"), { assume: cells.unit("gauge") });
  if (read.kind === "value") return { gauge: read.value, finding: null };
  if (read.kind === "missing") return { gauge: null, finding: null };
  return { gauge: null, finding: note("NO VERDICT", "gauge", `Gauge: "${read.text}" in "${cells.heading("gauge")}" cannot be used: ${read.why}.`) };
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
    return conclude([note("NO VERDICT", "gear", `Gear: ${match.why}.`), ...(tagFinding ? [tagFinding] : []), ...strays.map((f) => ({ ...f, decision: "NO VERDICT" as const }))], [], [], true);
  }
  return judgeKind(match.kind, cells, judging, tagFinding, tag);
}

/** House limits that cannot be applied leave the item without a verdict: no looser limit may judge it. */
function houseFindings(kind: GearKind, basis: readonly BasisId[], house: HouseLimits | undefined): readonly Finding[] {
  if (!basis.includes("house")) return [];
  if (house === undefined) return [note("NO VERDICT", "house limits", "The house limits are in force and were not handed over; give the range of their sheet as the basis.")];
  return house.refused.filter((row) => row.kind === null || row.kind === kind.id).map((row) => note("NO VERDICT", "house limits", row.sentence));
}

function judgeKind(kind: GearKind, asGiven: Cells, { basis, house, asOf }: Judging, tagFinding: Finding | null, tag: TagState): ItemVerdict {
  const published = withPublishedSizes(kind, asGiven);
  const { cells } = published;
  const sizeFinding = "refused" in published ? note("NO VERDICT", "as-new size", published.refused) : null;
  const { gauge, finding: gaugeFinding } = gaugeOf(cells);
  const told = kind.variants === undefined ? null : readVariant(kind.variants, cells, readText(cells.value("gear")));
  const variant = told?.kind === "known" ? told.variant : null;
  const variantFinding = told?.kind === "refused" ? note("NO VERDICT", field(kind.variants?.field ?? "construction").heading.toLowerCase(), told.sentence) : null;
  const situation: Situation = { kind, bases: inForce(basis), gauge, variant, house: basis.includes("house") ? house : undefined };
  const results = kind.checks.map((check) => evaluate(check, cells, situation));
  const overload = overloadFinding(cells, asOf);
  const strays = strayFindings(kind, cells, situation, variant);
  const findings = [...results.flatMap((r) => r.findings), ...strays, ...[tagFinding, sizeFinding, gaugeFinding, variantFinding, overload, dateFinding(cells, asOf), saidFinding(cells), ruleFinding(situation)].filter((f) => f !== null), ...houseFindings(kind, basis, house)];
  const notes = results.flatMap((r) => r.notes);
  if ("note" in published && published.note !== null) notes.push(published.note);
  if (told?.kind === "known" && told.assumed !== null) notes.push(told.assumed);
  const inspected = readDate(cells.value("inspected"));
  if (inspected.kind === "refused") notes.push(`The date "${inspected.text}" in "${cells.heading("inspected")}" cannot be used: ${inspected.why}`);
  if (!tag.out && tag.sentence !== "") notes.push(tag.sentence.replace(/\.$/, ""));
  const comesOut = kind.checks.map((check) => comesOutWords(check, cells, situation)).filter((words) => words !== null);
  return { ...conclude(findings, notes, missingOf(kind, cells, findings), gauge !== null), comesOut: comesOut.join("; ") };
}

/** Readings that are asked for and are not there, as "throat opening (Throat now)". */
function missingOf(kind: GearKind, cells: Cells, findings: readonly Finding[]): readonly string[] {
  return kind.checks
    .flatMap((check) => (check.kind === "loss" ? [check, across(check)] : [check]))
    .flatMap((check) => fieldsOf(check).filter((id) => findings.some((f) => f.sentence === missingFinding(check, cells, id).sentence)).map((id) => `${check.name} (${cells.heading(id)})`));
}

/** Worst first; of equals the one nearest to its limit, then the one with a limit. */
function order(a: Finding, b: Finding): number {
  return rank(a.decision) - rank(b.decision) || Number(b.criterion !== null) - Number(a.criterion !== null) || (b.share ?? -1) - (a.share ?? -1);
}

/** One finding for each check and sentence: the same limit under two bases is said once, by the stricter. */
function conclude(all: readonly Finding[], notes: readonly string[], missing: readonly string[], gauged: boolean): ItemVerdict {
  const findings = [...all].sort(order);
  const [deciding = null] = findings;
  const decision = worstOf(findings.map((f) => f.decision));
  // A figure from which a part is only looked at more often is no allowance.
  const shares = findings.filter((f) => f.beyond !== "WATCH").map((f) => f.share).filter((s) => s !== null && Number.isFinite(s)) as number[];
  const told = decision === "KEEP" ? nearest(findings) : deciding;
  return {
    decision,
    reason: reasonOf(decision, findings, told, notes, gauged),
    findings,
    deciding,
    share: findings.some((f) => f.share === Infinity && f.beyond !== "WATCH") ? Infinity : shares.length > 0 ? Math.max(...shares) : null,
    comesOut: told?.comesOut ? `${told.check} ${told.comesOut}` : "",
    source: told?.source ?? "",
    missing: [...new Set(missing)],
    notes,
  };
}

/** The limited reading nearest to its limit. */
function nearest(findings: readonly Finding[]): Finding | null {
  return [...findings].filter((f) => f.share !== null).sort((a, b) => (b.share ?? 0) - (a.share ?? 0))[0] ?? findings[0] ?? null;
}

function reasonOf(decision: ItemVerdict["decision"], findings: readonly Finding[], told: Finding | null, notes: readonly string[], gauged: boolean): string {
  const first = told?.sentence ?? "Nothing could be read.";
  // Only a comparison of two sizes depends on the gauge.
  const gauge = told?.share != null && told.original !== null && !gauged ? ["No gauge resolution is recorded: the readings are taken as they stand."] : [];
  const others = findings.filter((f) => f !== told && f.check !== told?.check && f.decision !== "KEEP");
  const seen = new Set<string>();
  const more = others.filter((f) => !seen.has(f.check) && seen.add(f.check)).map((f) => f.sentence);
  const lead = decision === "KEEP" ? `Every required check is in order. ${told?.share ? tellNearest(first) : first}` : first;
  const signs = findings.some((f) => f.overload && outOfUse(f.decision)) ? ["This is a sign of overload: look at every part that was used with it."] : [];
  return [lead, ...more, ...signs, ...gauge, ...[...new Set(notes)].map((n) => `${n}.`)].join(" ");
}

/** The words of a finding and of a verdict, made last and only here: one template for each reason, from its facts. */
import { field } from "../columns";
import type { Decision } from "../decision";
import { BASES } from "../rules/rule-sets";
import { capital, percent } from "../words";
import type { Finding, Why } from "./finding";

/** The sentence of a finding: reading, limit, unit and source, or what stands in the way and what to type. */
export function sentenceOf(finding: Finding): string {
  return SENTENCES[finding.why](finding);
}
/** A few words that fit a line: "Throat 2.125 in, out above 2.1 in", "Latch: not recorded". */
export function shortOf(finding: Finding): string {
  return SHORT[finding.why](finding);
}
/** What leads a verdict, what else counts, and what holds of the item as a whole. */
export interface Parts {
  /** The finding that decides; of an item that is kept the reading nearest to its limit. Null where nothing could be read. */
  readonly lead: Finding | null;
  /** One finding for each other check that speaks against the item, worst first. */
  readonly others: readonly Finding[];
  /** A finding that takes the item out of use is a sign of overload. */
  readonly overload: boolean;
  /** Two sizes were compared and no gauge is recorded. */
  readonly ungauged: boolean;
  /** Clauses without a full stop. */
  readonly notes: readonly string[];
}
/** The whole reason: what decides, then what else counts. */
export function reasonOf(decision: Decision, parts: Parts): string {
  let reason = leadSentence(decision, parts.lead);
  for (const other of parts.others) reason += ` ${sentenceOf(other)}`;
  reason += generalOf(parts);
  for (const note of parts.notes) reason += ` ${note}.`;
  return reason;
}
/** What decides and what holds of the whole item, where the other findings and the notes stand below it. */
export function leadOf(decision: Decision, parts: Parts): string {
  return leadSentence(decision, parts.lead) + generalOf(parts);
}
/** The short reason of an item. */
export function shortReason(decision: Decision, lead: Finding | null): string {
  if (lead === null) return "Nothing could be read";
  return decision === "KEEP" && lead.share === null ? "In order" : shortOf(lead);
}
function leadSentence(decision: Decision, lead: Finding | null): string {
  if (lead === null) return NOTHING_READ;
  if (decision !== "KEEP") return sentenceOf(lead);
  return `${IN_ORDER} ${lead.share !== null && lead.share !== 0 ? nearest(lead) : sentenceOf(lead)}`;
}
const generalOf = ({ overload, ungauged }: Parts): string => (overload ? ` ${SIGN}` : "") + (ungauged ? ` ${UNGAUGED}` : "");
const IN_ORDER = "Every required check is in order.";
const NOTHING_READ = "Nothing could be read.";
const SIGN = "This is a sign of overload: look at every part that was used with it.";
const UNGAUGED = "No gauge resolution is recorded: the readings are taken as they stand.";

/** A bare count is set off from its label: "Broken wires in a lay: 11". */
const BARE = /^\d+$/;
const named = (f: Finding): string => nameOf(f.label ?? f.check);
/** Names with a capital letter; there are as many as checks and parts. */
const NAMES = new Map<string, string>();
function nameOf(name: string): string {
  let words = NAMES.get(name);
  if (words === undefined) {
    words = capital(name);
    if (NAMES.size < NAMES_KEPT) NAMES.set(name, words);
  }
  return words;
}
const NAMES_KEPT = 1000;
function reading(f: Finding): string {
  const measured = f.measured ?? "";
  return `${named(f)}${isBare(measured) ? ":" : ""} ${measured}${from(f)}`;
}
/** A unit ends in a letter, which is told before the whole is looked at. */
const isBare = (measured: string): boolean => !(measured.charCodeAt(measured.length - 1) > 57) && BARE.test(measured);
/** ", as new 2 in,", made once for a limit of a size. */
function from(f: Finding): string {
  const { shared } = f;
  if (shared === undefined) return f.countsFrom === undefined ? "" : `, ${f.countsFrom},`;
  return (shared.from ??= f.countsFrom === undefined ? "" : `, ${f.countsFrom},`);
}
/** What happens at the limit. */
const leadsTo = (f: Finding): string =>
  f.beyond === "WATCH" ? "it is looked at more often" : f.beyond === "EXAMINE" ? "it is examined" : "it comes out";
function limit(f: Finding): string {
  const comesOut = f.comesOut ?? "";
  const rule = f.limit ?? "";
  return comesOut.includes(rule) ? `${leadsTo(f)} ${comesOut}` : `${leadsTo(f)} ${comesOut} (${rule})`;
}
/** The rule set by its name, as people choose it. */
const cited = (f: Finding): string => `[${f.basis === null ? "" : BASES[f.basis].name}: ${f.source ?? ""}]`;
const used = (f: Finding): string => (f.share === null || f.share === 0 ? "" : usedOf(percent(f.share)));
const USED = new Map<string, string>();
/** Nearly all items have used less than ten times their allowance. */
const USED_KEPT = 1000;
function usedOf(share: string): string {
  let words = USED.get(share);
  if (words === undefined) {
    words = `, ${share} of the allowance used`;
    if (USED.size < USED_KEPT) USED.set(share, words);
  }
  return words;
}
/** The reading that is nearest to its limit, where all others are in order as well. */
const nearest = (f: Finding): string => (f.why === "limit" && f.decision === "KEEP" ? met(f, "is nearest to its limit") : sentenceOf(f));
const met = (f: Finding, how: string): string => `${reading(f)} ${how}${used(f)}: ${tail(f)}`;
/** "it comes out above 2.1 in (5 % of as-new) [standard: ...].", made once for a limit of a size. */
function tail(f: Finding): string {
  const { shared } = f;
  if (shared === undefined) return `${limit(f)} ${cited(f)}.`;
  return (shared.tail ??= `${limit(f)} ${cited(f)}.`);
}
const LIMITS: Record<Decision, (f: Finding) => string> = {
  REMOVE: (f) => `${reading(f)} ${f.share === 1 ? "has reached" : "is beyond"} the limit: ${tail(f)}`,
  EXAMINE: (f) => `${reading(f)} calls for a closer look: ${tail(f)}`,
  "NO VERDICT": (f) => `${reading(f)} cannot be judged: ${f.limit ?? ""}.`,
  DRESS: (f) => met(f, "can be ground out lengthwise along the contour"),
  WATCH: (f) =>
    f.watched === true
      ? `${reading(f)} is beyond the figure at which it is looked at more often: ${f.comesOut ?? ""} ${cited(f)}.`
      : met(f, "is inside the limit but near it"),
  KEEP: (f) => met(f, "is inside the limit"),
};
const because = (f: Finding): string => f.because ?? "";
const next = (f: Finding): string => (f.type === undefined ? "" : `; ${f.type}`);
const quoted = (f: Finding): string => `"${f.typed ?? ""}" in "${f.heading ?? ""}"`;
const spaced = (text: string | null): string => (text === null ? "" : ` ${text}`);
const SENTENCES: Record<Why, (f: Finding) => string> = {
  limit: (f) => LIMITS[f.decision](f),
  gauge: (f) => {
    const settled = f.gauge?.settledBy ?? null;
    const then =
      settled === null
        ? "the reading lies on the limit, so no gauge can settle it; have it examined"
        : `measure again with a gauge that reads finer than ${settled}`;
    return `${reading(f)} cannot be told from the limit with a gauge that reads to ${f.gauge?.reads ?? ""}: ${limit(f)}; ${then} ${cited(f)}.`;
  },
  "no limit": (f) => `${capital(f.check)}${spaced(f.measured)} cannot be judged: ${because(f)}${next(f)}.`,
  "not in table": (f) =>
    f.basis === null
      ? `${capital(f.check)}${spaced(f.measured)} cannot be judged: ${because(f)}.`
      : `${capital(f.check)}: ${because(f)} ${cited(f)}.`,
  "no change": (f) => `${capital(f.check)}${spaced(f.measured)} shows no change; ${because(f)}.`,
  seen: (f) =>
    f.decision === "KEEP"
      ? `${named(f)}: "${f.measured ?? ""}" is in order${f.basis === null ? "" : ` ${cited(f)}`}.`
      : `${named(f)}: "${f.measured ?? ""}" takes the item out of service ${cited(f)}.`,
  "no rule": (f) => `${named(f)}: "${f.measured ?? ""}" was found and no rule in force names it; a competent person decides.`,
  missing: (f) => `${capital(f.check)}: nothing is recorded; fill "${f.heading ?? ""}".`,
  unreadable: (f) => `${capital(f.check)}: ${quoted(f)} cannot be used: ${because(f)}.`,
  contradiction: (f) => `${capital(f.check)}: ${quoted(f)} ${because(f)}${next(f)}.`,
  variant: (f) =>
    `${capital(f.check)}${spaced(f.measured)} depends on the ${f.field === undefined ? "make" : field(f.field).heading.toLowerCase()}, which is not recorded: ${because(f)}; fill "${f.heading ?? ""}".`,
  "no section": (f) => `${because(f)}${next(f)}.`,
  "not read": (f) => `${capital(f.check)}: "${f.measured ?? ""}" stands in "${f.heading ?? ""}", and ${because(f)}${next(f)}.`,
  "not understood": (f) =>
    `"${f.typed ?? ""}" stands in the column "${f.heading ?? ""}", which is not understood${f.because === undefined ? "" : ` (${f.because})`}: ${f.type ?? ""}.`,
  tag: (f) => `${named(f)}: ${because(f)}${next(f)}.`,
  overload: (f) =>
    `Another part of this assembly was found stretched or opened up${f.typed === undefined ? "" : ` on ${f.typed}`}: the whole assembly was overloaded, and this part has not been looked at since${next(f)}.`,
  date: (f) => `The inspection date ${quotedDate(f)} is ${because(f)}${next(f)}.`,
  record: (f) => `${quoted(f)} ${because(f)}${next(f)}.`,
  rules: (f) => `No rule set in force (${because(f)}) says anything about a ${f.label ?? "gear"}${next(f)}.`,
  "house limits": (f) => because(f),
  "as-new size": (f) => `As-new sizes: ${because(f)}${next(f)}.`,
  gear: (f) => `Gear: ${because(f)}${f.heading === undefined ? "" : `; type the kind of gear in "${f.heading}"`}.`,
};
const quotedDate = (f: Finding): string => `${f.typed ?? ""} in "${f.heading ?? ""}"`;

/** Room for what a clerk typed in a line that has to fit. */
const ROOM = 40;
const cut = (text: string): string => (text.length > ROOM ? `${text.slice(0, ROOM - 1).trimEnd()}…` : text);
/** What is measured, as short as the yard says it: throat, saddle, link, clearance. */
const shortName = (f: Finding): string => capital(named(f).replace(/ (opening|section|thickness|wear)$|^shoulder (?=clearance$)/i, ""));
const shortReading = (f: Finding): string => {
  const measured = f.brief ?? f.measured ?? "";
  return measured === "" ? shortName(f) : `${shortName(f)}${isBare(measured) ? ":" : ""} ${f.why === "limit" ? measured : cut(measured)}`;
};
/** A nick that can be ground out says so, and what that leaves; its limit stands in the whole reason. */
const shortLimit = (f: Finding): string => (f.decision === "DRESS" ? `${shortReading(f)}: grind it out` : outOf(f));
const outOf = (f: Finding): string =>
  `${shortReading(f)}, ${f.beyond === "WATCH" ? "watched" : f.beyond === "EXAMINE" ? "examined" : "out"} ${f.comesOut ?? ""}`;
const shortSeen = (f: Finding): string => `${named(f)}: ${cut(f.measured ?? "")}`;
const SHORT: Record<Why, (f: Finding) => string> = {
  limit: shortLimit,
  gauge: (f) => `${shortReading(f)}: gauge too coarse to tell`,
  "no limit": (f) => `${shortReading(f)}: no limit in force`,
  "not in table": (f) => `${shortReading(f)}: size not in the table`,
  "no change": (f) => `${shortReading(f)}: no change`,
  seen: shortSeen,
  "no rule": shortSeen,
  missing: (f) => `${shortName(f)}: not recorded`,
  unreadable: (f) => `${shortName(f)}: "${cut(f.typed ?? "")}" cannot be used`,
  contradiction: (f) => `${shortName(f)}: "${cut(f.typed ?? "")}" does not fit`,
  variant: (f) => `${shortReading(f)}: ${f.field === undefined ? "make" : field(f.field).heading.toLowerCase()} not recorded`,
  "no section": (f) => `${shortReading(f)}: section there not recorded`,
  "not read": shortSeen,
  "not understood": (f) => `"${cut(f.heading ?? "")}" not understood: ${cut(f.typed ?? "")}`,
  tag: named,
  overload: (f) => `Assembly overloaded${f.typed === undefined ? "" : ` on ${f.typed}`}: look at it`,
  date: (f) => `Inspected ${f.typed ?? ""}: after the day of judging`,
  record: (f) => `The log says: ${cut(f.typed ?? "")}`,
  rules: (f) => `No rule set in force for a ${f.label ?? "gear"}`,
  "house limits": () => "House limits cannot be applied",
  "as-new size": () => "As-new sizes not given",
  gear: (f) => (f.typed === undefined || f.typed === "" ? "Gear: not recorded" : `Gear: "${cut(f.typed)}" not known`),
};

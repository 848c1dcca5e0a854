/**
 * Longest intervals between inspections as criteria: kind, use, service, rule set, source. The strictest in force decides and is named.
 * 29 CFR belongs to law, WAC 296-155 and 296-24 to the standard; texts of other places have sets of their own.
 */
import type { Citation, SourceKey } from "../rules/documents";
import type { BasisId } from "../rules/rule-sets";

/** What the gear works on. */
export type UsedOn = "crane" | "hoist" | "sling" | "loose";
/** Classes of service that have intervals of their own; any other interval is the log's own. */
export type ServiceClass = "normal" | "heavy" | "severe" | "idle" | "people";
export interface IntervalCriterion {
  readonly id: string;
  readonly kind: string;
  /** Only for gear that works there; where that is not known the criterion counts. All uses when left out. */
  readonly usedOn?: readonly UsedOn[];
  /** Only in this class of service; in every one when left out. */
  readonly service?: ServiceClass;
  readonly basis: BasisId;
  readonly months: number;
  readonly source: Citation;
  readonly status: "read" | "restated";
  readonly checked: string;
}
const CHECKED = "2026-11-28";
interface Rule {
  readonly kinds: readonly string[];
  readonly usedOn?: readonly UsedOn[];
  readonly service?: ServiceClass;
  readonly basis: BasisId;
  readonly months: number;
  readonly source: readonly [SourceKey, string];
  readonly status?: "restated";
}
const CRANE = ["crane", "hoist"] as const;
const RUNNING = ["running rope", "rotation resistant rope"];
const CRANE_HOOKS = ["hook", "load block", "headache ball"];
const ROPE_SLINGS = ["wire rope sling", "grommet", "fibre rope sling"];
const WEB_AND_ROUND = ["web sling", "roundsling"];
/** Rigging hardware by the chapters of ASME B30.26: shackles, adjustable hardware, compression hardware, links, rings and swivels, blocks. */
const HARDWARE = [
  "shackle",
  "link",
  "swivel",
  "block",
  "eyebolt",
  "eye nut",
  "hoist ring",
  "lifting point",
  "turnbuckle",
  "wedge socket",
  "clips",
  "coupling",
];
const DEVICES = ["lifting beam", "plate clamp"];
const OTHER_DEVICES = ["beam clamp", "vacuum lifter", "lifting magnet"];
const OTHER_DEVICES_AS = ["DOE 1090", "14.2.5.3 a, applied to other lifting devices"] as const;
const SLINGS = ["chain sling", ...ROPE_SLINGS, "mesh sling", ...WEB_AND_ROUND];
/** Loose gear between machine and load. */
const ACCESSORIES = ["hook", "end connection", ...HARDWARE, ...SLINGS, ...DEVICES, ...OTHER_DEVICES];
/** Machines, and what is part of one. */
const OTHER_GEAR = ["chain hoist", "lever hoist", "load chain", "sheave", "load block", "headache ball", ...RUNNING, "standing rope"];
const LOOSE = ["sling", "loose"] as const;

const RULES: readonly Rule[] = [
  { kinds: RUNNING, usedOn: CRANE, basis: "law", months: 1, source: ["CFR 1910.179", "(m)(1)"] },
  { kinds: RUNNING, usedOn: CRANE, basis: "standard", months: 1, source: ["WAC 24-24013", "(1)"] },
  { kinds: CRANE_HOOKS, usedOn: CRANE, basis: "law", months: 1, source: ["CFR 1910.179", "(j)(2)(iii)"], status: "restated" },
  // Idle a month or more: inspected before use.
  { kinds: RUNNING, service: "idle", basis: "standard", months: 1, source: ["WAC 24-24013", "(2)(b)"] },
  { kinds: RUNNING, service: "idle", basis: "law", months: 1, source: ["CFR 1910.179", "(m)(2)"], status: "restated" },
  { kinds: ROPE_SLINGS, basis: "standard", months: 1, source: ["WAC 24-29405", "(1)"] },
  { kinds: ["chain sling"], basis: "law", months: 12, source: ["CFR 1910.184", "(e)(3)"] },
  { kinds: ["chain sling"], basis: "standard", months: 12, source: ["WAC 24-29423", "(3)(a)"] },
  { kinds: ["chain sling"], service: "severe", basis: "standard", months: 3, source: ["WAC 55800", ""] },
  { kinds: ["mesh sling"], basis: "standard", months: 12, source: ["WAC 33810", ""] },
  { kinds: ["mesh sling"], service: "severe", basis: "standard", months: 3, source: ["WAC 33810", ""] },
  { kinds: ["web sling"], basis: "standard", months: 12, source: ["WAC 55820", ""] },
  { kinds: ["web sling"], service: "severe", basis: "standard", months: 3, source: ["WAC 55820", ""] },
  { kinds: HARDWARE, basis: "standard", months: 12, source: ["B30.26 periodic", "26-x.8.3"] },
  { kinds: HARDWARE, service: "severe", basis: "standard", months: 3, source: ["B30.26 periodic", "26-x.8.3 (monthly to quarterly)"] },
  { kinds: DEVICES, basis: "standard", months: 12, source: ["DOE 1090", "14.2.5.3 a"] },
  { kinds: DEVICES, service: "heavy", basis: "standard", months: 6, source: ["DOE 1090", "14.2.5.3 a"] },
  { kinds: DEVICES, service: "severe", basis: "standard", months: 3, source: ["DOE 1090", "14.2.5.3 a"] },
  { kinds: OTHER_DEVICES, basis: "standard", months: 12, source: OTHER_DEVICES_AS, status: "restated" },
  { kinds: OTHER_DEVICES, service: "heavy", basis: "standard", months: 6, source: OTHER_DEVICES_AS, status: "restated" },
  { kinds: OTHER_DEVICES, service: "severe", basis: "standard", months: 3, source: OTHER_DEVICES_AS, status: "restated" },
  // Northern Ireland's text, the twin of LOLER 1998. What lifts people is not told by the kind: the service says it.
  { kinds: ACCESSORIES, usedOn: LOOSE, basis: "uk", months: 6, source: ["NI 1999/304", "reg 9(3)(a)"] },
  { kinds: ACCESSORIES, basis: "uk", months: 12, source: ["NI 1999/304", "reg 9(3)(a)(ii)"] },
  { kinds: OTHER_GEAR, basis: "uk", months: 12, source: ["NI 1999/304", "reg 9(3)(a)(ii)"] },
  { kinds: [...ACCESSORIES, ...OTHER_GEAR], service: "people", basis: "uk", months: 6, source: ["NI 1999/304", "reg 9(3)(a)"] },
  { kinds: ACCESSORIES, basis: "germany", months: 12, source: ["VBG 9a", "39-43"] },
  { kinds: ACCESSORIES, basis: "ships", months: 12, source: ["CFR 1918 I", ""] },
];
const idOf = (kind: string, { basis, usedOn, service }: Rule): string =>
  [`${kind.replaceAll(" ", "-")}.interval`, basis, usedOn?.join("-"), service].filter((part) => part !== undefined).join(".");
/** One criterion for each kind that a rule names. */
export const INTERVAL_CRITERIA: readonly IntervalCriterion[] = RULES.flatMap((rule) =>
  rule.kinds.map((kind) => ({
    id: idOf(kind, rule),
    kind,
    basis: rule.basis,
    months: rule.months,
    source: { document: rule.source[0], clause: rule.source[1] },
    status: rule.status ?? "read",
    checked: CHECKED,
    ...(rule.usedOn === undefined ? {} : { usedOn: rule.usedOn }),
    ...(rule.service === undefined ? {} : { service: rule.service }),
  })),
);
const BY_KIND = new Map<string, readonly IntervalCriterion[]>();
for (const criterion of INTERVAL_CRITERIA) BY_KIND.set(criterion.kind, [...(BY_KIND.get(criterion.kind) ?? []), criterion]);
/** Interval criteria of a kind; prepared once. */
export const intervalsOf = (kind: string): readonly IntervalCriterion[] => BY_KIND.get(kind) ?? [];
/** "every month", "every 6 months". */
export const everyMonths = (months: number): string => (months === 1 ? "every month" : `every ${String(months)} months`);

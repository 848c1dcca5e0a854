/** What is in force for one item: its kind, rule sets, gauge and construction, and the criteria that follow. */
import type { Check, GearKind } from "../gear/kind";
import type { Length } from "../reading/length";
import type { Criterion, StressClass } from "../rules/criterion";
import type { HouseLimits } from "../rules/house-limits";
import type { BasisId } from "../rules/rule-sets";
import type { Finding } from "./finding";

export interface Situation {
  readonly kind: GearKind;
  readonly bases: ReadonlySet<BasisId>;
  /** Gauge resolution that applies to every length, or null. */
  readonly gauge: Length | null;
  /** Make or construction that has limits of its own; null when it is not known or the kind has none. */
  readonly variant: string | null;
  /** Limits of the house's own sheet, when they are in force. */
  readonly house?: HouseLimits | undefined;
}
/** Whether a check is read at all under these rule sets. */
export function inUse(check: Check, bases: ReadonlySet<BasisId>): boolean {
  return check.under === undefined || check.under.some((basis) => bases.has(basis));
}
/** Whether a check is meant for a variant; a variant that is not known may be any. */
export function isFor(check: Check, variant: string | null): boolean {
  return check.onlyFor === undefined || variant === null || check.onlyFor.includes(variant);
}
export interface CheckResult {
  readonly findings: readonly Finding[];
  readonly notes: readonly string[];
  /** A section was worn in both directions, each of which then has the smaller allowance. */
  readonly twoWays?: boolean;
}
export const NOTHING: CheckResult = { findings: [], notes: [] };
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
/** By situation, the criteria of each check for a class of stress and a number of directions; prepared once. */
const IN_FORCE = new WeakMap<Situation, Map<string, (readonly Criterion[] | undefined)[]>>();
const CLASSES: Readonly<Record<StressClass, number>> = { high: 0, moderate: 2, low: 4 };
/** Criteria of a check that are in force here. */
export function criteriaFor(check: Check, situation: Situation, stress: StressClass, twoWays: boolean): readonly Criterion[] {
  let byCheck = IN_FORCE.get(situation);
  if (!byCheck) IN_FORCE.set(situation, (byCheck = new Map<string, (readonly Criterion[] | undefined)[]>()));
  let byCase = byCheck.get(check.name);
  if (!byCase) byCheck.set(check.name, (byCase = []));
  const at = CLASSES[stress] + (twoWays ? 1 : 0);
  return (byCase[at] ??= inForceFor(check, situation, stress, twoWays));
}
function inForceFor(check: Check, situation: Situation, stress: StressClass, twoWays: boolean): readonly Criterion[] {
  const { house } = situation;
  const own = house?.criteria.get(situation.kind.id)?.filter((c) => c.check === check.name) ?? [];
  const replaced = house?.replaced.has(`${situation.kind.id}/${check.name}`) === true;
  const published = criteriaOf(situation.kind, check.name).filter((c) =>
    replaced ? c.always === true : own.length === 0 || c.yields !== true,
  );
  return [...published, ...own].filter(
    (c) =>
      situation.bases.has(c.basis) &&
      (c.stress === undefined || c.stress.includes(stress)) &&
      (c.twoWays !== true || twoWays) &&
      (c.onlyFor === undefined || (situation.variant !== null && c.onlyFor.includes(situation.variant))),
  );
}
const VARIANTS = new WeakMap<Situation, Map<string | null, Situation>>();
/** The same situation for a variant; made once. */
export function asVariant(situation: Situation, variant: string | null): Situation {
  let byVariant = VARIANTS.get(situation);
  if (!byVariant) VARIANTS.set(situation, (byVariant = new Map<string | null, Situation>()));
  let as = byVariant.get(variant);
  if (!as) byVariant.set(variant, (as = { ...situation, variant }));
  return as;
}
/** Whether a check, or a limit of it, holds for some variants only. */
export function dependsOnVariant(kind: GearKind, check: string): boolean {
  return (
    kind.checks.some((c) => c.name === check && c.onlyFor !== undefined) ||
    kind.criteria.some((c) => c.check === check && c.onlyFor !== undefined)
  );
}

/** Records that several gear kinds share: one place for each limit, one line in each kind. */
import type { FieldId } from "../../columns";
import type { Criterion, Limit, StressClass } from "../../rules/criterion";
import type { SourceKey } from "../../rules/documents";
import type { BasisId } from "../../rules/rule-sets";
import type { Check } from "../kind";

/** Day on which the figures were last compared with the sources. */
export const CHECKED = "2026-11-28";
/** Documents whose removal lists were read on pages that restate them. */
const RESTATED: ReadonlySet<SourceKey> = new Set<SourceKey>(["B30.9", "CFR 1910.179", "DE discard", "DE slings"]);
/** The removal list of below-the-hook devices was not read: what stands for them is the list of rigging hardware. */
export const BELOW_THE_HOOK = "applied to below-the-hook devices";
/** A list of other gear that stands in for one that was not read. */
const APPLIED = "applied to ";
export function from(document: SourceKey, clause = ""): { readonly document: SourceKey; readonly clause: string } {
  return { document, clause };
}
/** An observation: what is looked at, where, and whether the item can be kept without it. */
export function seen(name: string, part: string, measured: FieldId, required: boolean, overload = false): Check {
  return { kind: "seen", name, part, measured, required, overload };
}
/** An observation of a part that gear of the kind can rightly be without; its column offers "none required". */
export function seenIfFitted(name: string, part: string, measured: FieldId, required: boolean): Check {
  return { kind: "seen", name, part, measured, required, overload: false, mayBeAbsent: true };
}
/** Removal on sight, under the documents given. */
export function removedOnSight(
  kind: string,
  check: string,
  sources: Partial<Record<BasisId, readonly [SourceKey, string]>>,
): readonly Criterion[] {
  return (Object.entries(sources) as [BasisId, readonly [SourceKey, string]][]).map(([basis, [document, clause]]) => ({
    id: `${kind}.${check.replaceAll(" ", "-")}.${basis}`,
    check,
    basis,
    limit: { word: "any" },
    beyond: "REMOVE",
    source: from(document, clause),
    status: basis === "practice" ? "practice" : RESTATED.has(document) || clause.includes(APPLIED) ? "restated" : "read",
    checked: CHECKED,
  }));
}
/** The same where the text leaves it to a competent person what a finding means: out of use until that person has decided. */
export function examinedOnSight(...given: Parameters<typeof removedOnSight>): readonly Criterion[] {
  return removedOnSight(...given).map((c) => ({ ...c, beyond: "EXAMINE" }));
}
/** Common practice alone. */
export const IN_PRACTICE = { practice: ["practice", ""] } as const satisfies Partial<Record<BasisId, readonly [SourceKey, string]>>;
/** Federal law on slings: no use without markings that can be read. The paragraph's number was read where code links to it, its words in Mich. R 408.14911(3). */
export function federalMarkings(kind: string): readonly Criterion[] {
  return removedOnSight(kind, "identification tag", { law: ["CFR 1910.184", "(c)(14)"] }).map((c) => ({ ...c, status: "restated" }));
}
/** Throat opening of hooks: more than 5 %, at most 1/4 in (6 mm); the cap follows the unit of the row. */
export const THROAT_OPENING: Limit = { word: "above", share: "0.05", cap: { in: "1/4", mm: "6" } };
/** The same for a hook on a chain sling, where the table says "an increase of 5 %": at 5 % it comes out. */
export const SLING_HOOK_THROAT: Limit = { ...THROAT_OPENING, word: "from" };
/** 10 % loss of an original or catalogue dimension at any point takes rigging hardware out (exactly 10 % fails). */
export function hardwareWear(kind: string, checks: readonly string[]): readonly Criterion[] {
  return checks.map((check) => ({
    id: `${kind}.${check.replaceAll(" ", "-")}.standard`,
    check,
    basis: "standard",
    limit: { word: "from", share: "0.10" },
    beyond: "REMOVE",
    source: from("WAC 33900"),
    status: "read",
    checked: CHECKED,
  }));
}
/** Areas for which common practice has a limit of wear. */
type WearArea = "most" | "highly stressed" | "two ways" | "block and tackle";
/**
 * Common practice for wear: from 10 % in most areas and from 5 % in highly stressed ones (10 % or more, 5 % or more come out). Where wear runs in two
 * directions each is limited to 5 %, and fittings of a block and tackle come out in excess of 10 %: these pass at the figure itself.
 * `areas` are those that the checks can meet: a pin is measured in one direction, a shackle has no highly stressed part.
 */
export function practiceWear(kind: string, checks: readonly string[], areas: readonly WearArea[]): readonly Criterion[] {
  const record = (check: string, name: string, word: "above" | "from", share: string, extra: Partial<Criterion>): Criterion => ({
    id: `${kind}.${check.replaceAll(" ", "-")}.practice${name}`,
    check,
    basis: "practice",
    limit: { word, share },
    beyond: "REMOVE",
    source: from("practice"),
    status: "practice",
    checked: CHECKED,
    ...extra,
  });
  const records: Record<WearArea, (check: string) => Criterion> = {
    most: (check) => record(check, "", "from", "0.10", { stress: ["moderate", "low"] }),
    "highly stressed": (check) => record(check, "-high", "from", "0.05", { stress: ["high"] }),
    "two ways": (check) => record(check, "-two-ways", "above", "0.05", { twoWays: true }),
    "block and tackle": (check) => record(check, "", "above", "0.10", { stress: ["moderate", "low"] }),
  };
  return checks.flatMap((check) => areas.map((area) => records[area](check)));
}
/** How much of a section may be ground away to take out a nick. */
export function dressing(
  kind: string,
  basis: BasisId,
  share: string,
  source: readonly [SourceKey, string],
  stress?: readonly StressClass[],
  inside: "DRESS" | "KEEP" = "DRESS",
): Criterion {
  const limit: Limit = { word: "above", share };
  return {
    id: `${kind}.nick.${basis}${stress ? `-${stress.join("-")}` : ""}`,
    check: "nick",
    basis,
    limit,
    beyond: "REMOVE",
    inside,
    source: from(source[0], source[1]),
    status: basis === "practice" ? "practice" : "read",
    checked: CHECKED,
    ...(stress ? { stress } : {}),
  };
}
/** The nick check, on every kind with sections. */
export const NICK: Check = {
  kind: "nick",
  name: "nick",
  part: "body",
  measured: "nickDepth",
  at: "nickPart",
  sectionNew: "nickNew",
  sectionNow: "nickNow",
  required: false,
};
/** What Table 19 removes on sight on every fitting, with what common practice adds. */
export function hardwareOnSight(kind: string, clause = ""): readonly Criterion[] {
  const table = ["WAC 33900", clause] as const;
  return [
    ...removedOnSight(kind, "cracks", { standard: table, practice: ["practice", ""] }),
    ...removedOnSight(kind, "deformation", { standard: table }),
    ...removedOnSight(kind, "identification", { standard: table }),
    ...removedOnSight(kind, "heat damage", { standard: table }),
    ...removedOnSight(kind, "corrosion", { standard: table }),
    ...removedOnSight(kind, "field weld or change", { standard: table, practice: ["practice", ""] }),
  ];
}
/** The observations that every fitting needs or may have. */
export function hardwareChecks(part: string, deformationRequired: boolean): readonly Check[] {
  return [
    seen("cracks", part, "cracks", true),
    seen("deformation", part, "deformed", deformationRequired, true),
    seen("identification", part, "tag", true),
    seen("heat damage", part, "heat", false),
    seen("corrosion", part, "corrosion", false),
    seen("field weld or change", part, "fieldChange", false),
    NICK,
  ];
}

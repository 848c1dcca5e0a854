/** Alloy chain slings, by the thinnest point of their links. Hooks and master links in rows of their own are judged there. */
import type { Criterion } from "../rules/criterion";
import type { GearKind } from "./kind";
import { queenslandChain } from "./shared/jurisdictions";
import { CHECKED, from, NICK, removedOnSight, seen, seenIfFitted, THROAT_OPENING } from "./shared/records";

const TABLE_12 = ["WAC 55800", ""] as const;
/** The federal paragraph was read on pages that restate it. */
const federal = (check: string): readonly Criterion[] => removedOnSight("chain-sling", check, { law: ["CFR 1910.184", "(e)(9)"] }).map((c) => ({ ...c, status: "restated" }));
export const chainSling: GearKind = {
  id: "chain sling",
  plural: "alloy chain slings",
  names: ["chain sling", "chain", "alloy chain", "chain leg"],
  parts: { link: "moderate", "master link": "moderate", body: "moderate" },
  partNames: { links: "link", crown: "link", interlink: "link" },
  checks: [
    { kind: "least", name: "link thickness", part: "link", size: "size", measured: "sectionNow", required: true },
    seen("stretched or bent links", "link", "deformed", true, true),
    seen("cracks", "link", "cracks", true),
    seen("identification tag", "master link", "tag", true),
    { kind: "growth", name: "hook throat opening", part: "hook", original: "throatNew", measured: "throatNow", required: false, overload: true },
    { kind: "angle", name: "hook twist", part: "hook", measured: "twist", required: false, overload: true },
    seenIfFitted("hook latch", "hook", "latch", false),
    seenIfFitted("end fittings", "master link", "endFittings", false),
    seen("hinging of links", "link", "turnsFreely", false),
    seen("heat damage", "link", "heat", false),
    seen("corrosion", "link", "corrosion", false),
    seen("field weld or change", "link", "fieldChange", false),
    NICK,
  ],
  criteria: [
    { id: "chain-sling.link-thickness.law", check: "link thickness", basis: "law", limit: { word: "below", table: "chain-old" }, beyond: "REMOVE", source: from("CFR 1910.184 T"), status: "read", checked: CHECKED },
    { id: "chain-sling.link-thickness.standard", check: "link thickness", basis: "standard", limit: { word: "below", table: "chain-new" }, beyond: "REMOVE", source: from("B30.9 T3"), status: "restated", checked: CHECKED },
    { id: "chain-sling.link-thickness.practice", check: "link thickness", basis: "practice", limit: { word: "above", share: "0.10" }, beyond: "REMOVE", source: from("practice"), status: "practice", checked: CHECKED },
    ...federal("stretched or bent links"),
    ...removedOnSight("chain-sling", "stretched or bent links", { standard: TABLE_12, practice: ["practice", ""] }),
    ...federal("cracks"),
    ...removedOnSight("chain-sling", "cracks", { standard: TABLE_12, practice: ["practice", ""] }),
    ...removedOnSight("chain-sling", "identification tag", { law: ["CFR 1910.184", "(c)(13)"], standard: TABLE_12 }),
    { id: "chain-sling.hook-throat-opening.standard", check: "hook throat opening", basis: "standard", limit: THROAT_OPENING, beyond: "REMOVE", source: from("WAC 55800"), status: "read", checked: CHECKED },
    { id: "chain-sling.hook-throat-opening.strict", check: "hook throat opening", basis: "strict", limit: { word: "above", share: "0" }, beyond: "REMOVE", source: from("practice"), status: "practice", checked: CHECKED },
    { id: "chain-sling.hook-twist.standard", check: "hook twist", basis: "standard", limit: { word: "above", degrees: "0" }, beyond: "REMOVE", source: from("WAC 55800", "(any visibly apparent bend or twist)"), status: "read", checked: CHECKED },
    { id: "chain-sling.hook-twist.practice", check: "hook twist", basis: "practice", limit: { word: "above", degrees: "10" }, beyond: "REMOVE", source: from("practice"), status: "practice", checked: CHECKED },
    ...removedOnSight("chain-sling", "hook latch", { standard: ["B30.10", "removal list, latch"], practice: ["practice", ""] }),
    ...federal("end fittings"),
    ...removedOnSight("chain-sling", "end fittings", { standard: TABLE_12 }),
    ...removedOnSight("chain-sling", "hinging of links", { standard: TABLE_12 }),
    ...removedOnSight("chain-sling", "heat damage", { standard: TABLE_12 }),
    ...removedOnSight("chain-sling", "corrosion", { standard: TABLE_12 }),
    ...removedOnSight("chain-sling", "field weld or change", { law: ["CFR 1910.184", "(e)(2)"], practice: ["practice", ""] }),
    ...queenslandChain("chain-sling", "link thickness"),
  ],
};

/** Alloy chain slings, by the thinnest point of their links. Hooks and master links in rows of their own are judged there. */
import type { Criterion } from "../rules/criterion";
import type { GearKind } from "./kind";
import { germanChain, queenslandChain } from "./shared/jurisdictions";
import { CHECKED, federalMarkings, from, NICK, removedOnSight, seen, seenIfFitted, SLING_HOOK_THROAT } from "./shared/records";
import { SLING_HOOK, slingHook } from "./shared/sling-hooks";

const TABLE_12 = ["WAC 55800", ""] as const;
/** The federal paragraph was read on pages that restate it. */
const federal = (check: string): readonly Criterion[] =>
  removedOnSight("chain-sling", check, { law: ["CFR 1910.184", "(e)(9)"] }).map((c) => ({ ...c, status: "restated" }));
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
    { kind: "growth", name: "chain length", part: "link", original: "chainNew", measured: "chainNow", required: false, overload: true },
    ...SLING_HOOK,
    seenIfFitted("end fittings", "master link", "endFittings", false),
    seen("hinging of links", "link", "turnsFreely", false),
    seen("heat damage", "link", "heat", false),
    seen("corrosion", "link", "corrosion", false),
    seen("field weld or change", "link", "fieldChange", false),
    NICK,
  ],
  criteria: [
    {
      id: "chain-sling.link-thickness.law",
      check: "link thickness",
      basis: "law",
      limit: { word: "below", table: "chain-old" },
      beyond: "REMOVE",
      source: from("CFR 1910.184 T"),
      status: "read",
      checked: CHECKED,
    },
    {
      id: "chain-sling.link-thickness.standard",
      check: "link thickness",
      basis: "standard",
      limit: { word: "below", table: "chain-new" },
      beyond: "REMOVE",
      source: from("B30.9 T3"),
      status: "restated",
      checked: CHECKED,
    },
    {
      id: "chain-sling.link-thickness.practice",
      check: "link thickness",
      basis: "practice",
      limit: { word: "from", share: "0.10" },
      beyond: "REMOVE",
      source: from("practice"),
      status: "practice",
      checked: CHECKED,
    },
    ...federal("stretched or bent links"),
    ...removedOnSight("chain-sling", "stretched or bent links", { standard: TABLE_12, practice: ["practice", ""] }),
    ...federal("cracks"),
    ...removedOnSight("chain-sling", "cracks", { standard: TABLE_12, practice: ["practice", ""] }),
    ...federalMarkings("chain-sling"),
    ...removedOnSight("chain-sling", "identification tag", { standard: TABLE_12 }),
    ...slingHook("chain-sling", {
      throat: SLING_HOOK_THROAT,
      opening: ["WAC 55800", "", "read"],
      section: ["WAC 55800", "(hook or load pin)"],
      twist: ["WAC 55800", "(any visibly apparent bend or twist)"],
      latch: ["WAC 55800", "(latch does not close the throat, lock does not lock)"],
    }),
    {
      // "Stretched links": the table gives no figure, so none is allowed.
      id: "chain-sling.chain-length.standard",
      check: "chain length",
      basis: "standard",
      limit: { word: "above", share: "0" },
      beyond: "REMOVE",
      source: from("WAC 55800", "(stretched links)"),
      status: "read",
      checked: CHECKED,
    },
    ...germanChain("chain-sling", "link thickness", "chain length"),
    ...federal("end fittings"),
    ...removedOnSight("chain-sling", "end fittings", { standard: TABLE_12 }),
    ...removedOnSight("chain-sling", "hinging of links", { standard: TABLE_12 }),
    ...removedOnSight("chain-sling", "heat damage", { standard: TABLE_12 }),
    ...removedOnSight("chain-sling", "corrosion", { standard: TABLE_12 }),
    ...removedOnSight("chain-sling", "field weld or change", { practice: ["practice", ""] }),
    ...queenslandChain("chain-sling", "link thickness", "chain length"),
  ],
};

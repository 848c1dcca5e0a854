/** Wire rope slings, and the broken-wire counts of ropes in other use. */
import type { Criterion } from "../rules/criterion";
import type { SourceKey } from "../rules/documents";
import type { BasisId } from "../rules/rule-sets";
import type { GearKind } from "./kind";
import { CHECKED, from, removedOnSight, seen, seenIfFitted, THROAT_OPENING } from "./shared/records";
import { ROTATION_RESISTANT } from "./shared/ropes";

/** Six or eight strands, 7x7 and 7x19, as rope makers write them: 6x25FW, 6x36WS+IWRC, 8xK26WS. A figure with a unit behind it is a length. */
const STRANDS = /(?<![\w/.,])([68] strand|([68]xk?(7|[1-6]\d)|7x(7|19))(?!mm|cm|in|ft)[a-z]{0,3})(?![\w.,]| ((mm|cm|m|in|ft)\b|["']))/;
/** Rope constructions and uses that have broken-wire counts, as the trade names them. */
export const CONSTRUCTIONS = {
  "strand laid": ["strand laid", "single part", "stranded", STRANDS],
  "cable laid": ["cable laid"],
  "braided under 8": ["braided under 8", "braided fewer than 8", "braided less than 8", "braided 6 part", "6 part braided"],
  "braided 8 or more": ["braided 8 or more", "braided over 8", "braided 8 part", "8 part braided"],
  "running rope": ["running rope", "running", "hoist rope", "load rope"],
  "rotation resistant": ["rotation resistant", "non rotating"],
  "standing rope": ["standing rope", "standing", "pendant", "guy"],
} as const;
export type Construction = keyof typeof CONSTRUCTIONS;
const count = (
  check: string,
  onlyFor: Construction,
  basis: BasisId,
  word: "above" | "from",
  figure: number,
  document: SourceKey,
  clause: string,
  status: Criterion["status"] = "read",
): Criterion => ({
  id: `wire-rope-sling.${check.replaceAll(" ", "-")}.${onlyFor.replaceAll(" ", "-")}.${basis}`,
  check,
  basis,
  limit: { word, count: figure },
  beyond: "REMOVE",
  source: from(document, clause),
  status,
  checked: CHECKED,
  onlyFor: [onlyFor],
});
const LAY = "broken wires in a lay";
const STRAND = "broken wires in one strand";
const END = "broken wires at the end";
const F5 = "(f)(5)";
export const wireRopeSling: GearKind = {
  id: "wire rope sling",
  plural: "wire rope slings",
  names: ["wire rope sling", "w r sling", "wr sling", "wire sling", "cable sling", "wire strop", "wire rope strop", "wire rope bridle"],
  parts: { body: "moderate", "outer wire": "moderate", "end fitting": "moderate", eye: "moderate" },
  partNames: { rope: "body", splice: "end fitting", ferrule: "end fitting", thimble: "eye" },
  variants: {
    field: "construction",
    names: CONSTRUCTIONS,
    inGear: [
      { words: ROTATION_RESISTANT, variant: "rotation resistant" },
      { words: /cable[- ]laid/i, variant: "cable laid" },
    ],
    blank: { variant: "strand laid", why: "which has the lowest counts for slings" },
    // Grade of the wire, core and finish say nothing of strands and parts.
    beside: /^((e{0,2}|x{1,2})ips|iwrc?|iws|wsc|fc|bright|steel|fib(re|er)|core|galv(ani[sz]ed)?|1[6-9]\d0|2160)$/,
  },
  checks: [
    { kind: "count", name: LAY, part: "body", measured: "brokenLay", required: true },
    {
      kind: "count",
      name: STRAND,
      part: "body",
      measured: "brokenStrand",
      required: true,
      onlyFor: ["strand laid", "running rope", "rotation resistant", "standing rope"],
    },
    { kind: "count", name: END, part: "end fitting", measured: "brokenEnd", required: false },
    { kind: "loss", name: "outer wire wear", part: "outer wire", original: "wireNew", measured: "wireNow", required: false },
    seen("kinks or crushing", "body", "kinks", true),
    seenIfFitted("end fittings", "end fitting", "endFittings", true),
    seen("heat damage", "body", "heat", true),
    seen("corrosion", "body", "corrosion", true),
    seen("identification tag", "end fitting", "tag", true),
    seen("cracks", "end fitting", "cracks", false),
    seen("deformation", "end fitting", "deformed", false, true),
    {
      kind: "growth",
      name: "hook throat opening",
      part: "hook",
      original: "throatNew",
      measured: "throatNow",
      required: false,
      overload: true,
    },
    seenIfFitted("hook latch", "hook", "latch", false),
  ],
  criteria: [
    count(LAY, "strand laid", "law", "from", 10, "CFR 1910.184", "(f)(5)(i)"),
    count(LAY, "strand laid", "standard", "from", 10, "WAC 24-29425", "(5)(a)"),
    count(STRAND, "strand laid", "law", "from", 5, "CFR 1910.184", "(f)(5)(i)"),
    count(STRAND, "strand laid", "standard", "from", 5, "WAC 24-29425", "(5)(a)"),
    count(LAY, "cable laid", "standard", "from", 20, "B30.9", "9-2.9.5", "restated"),
    count(LAY, "braided under 8", "standard", "from", 20, "B30.9", "9-2.9.5", "restated"),
    count(LAY, "braided 8 or more", "standard", "from", 40, "B30.9", "9-2.9.5", "restated"),
    ...(["law", "standard"] as const).flatMap((basis) => [
      count(LAY, "running rope", basis, "from", 6, "CFR 1926.1413", "(a)(2)(ii)"),
      count(STRAND, "running rope", basis, "from", 3, "CFR 1926.1413", "(a)(2)(ii)"),
      count(LAY, "rotation resistant", basis, "from", 2, "CFR 1926.1413", "(a)(2)(ii), in 6 rope diameters"),
      count(STRAND, "rotation resistant", basis, "from", 4, "CFR 1926.1413", "(a)(2)(ii), in 30 rope diameters"),
      count(LAY, "standing rope", basis, "above", 2, "CFR 1926.1413", "(a)(2)(ii), beyond the end connection"),
      count(STRAND, "standing rope", basis, "above", 1, "CFR 1926.1413", "(a)(2)(ii), at the end connection"),
    ]),
    {
      id: "wire-rope-sling.broken-wires-at-the-end.standard",
      check: END,
      basis: "standard",
      limit: { word: "above", count: 1 },
      beyond: "REMOVE",
      source: from("DOE checklist", "wire rope slings"),
      status: "restated",
      checked: CHECKED,
    },
    {
      id: "wire-rope-sling.broken-wires-at-the-end.queensland",
      check: END,
      basis: "queensland",
      limit: { word: "from", count: 1 },
      beyond: "REMOVE",
      source: from("Queensland", "broken wire below a socket, fitting or splice"),
      status: "read",
      checked: CHECKED,
    },
    {
      id: "wire-rope-sling.outer-wire-wear.law",
      check: "outer wire wear",
      basis: "law",
      limit: { word: "from", share: "1/3" },
      beyond: "REMOVE",
      source: from("CFR 1910.184", "(f)(5)(ii)"),
      status: "read",
      checked: CHECKED,
    },
    {
      id: "wire-rope-sling.outer-wire-wear.standard",
      check: "outer wire wear",
      basis: "standard",
      limit: { word: "from", share: "1/3" },
      beyond: "REMOVE",
      source: from("CFR 1910.184", "(f)(5)(ii)"),
      status: "read",
      checked: CHECKED,
    },
    ...removedOnSight("wire-rope-sling", "kinks or crushing", { law: ["CFR 1910.184", F5], standard: ["WAC 24-29425", "(5)"] }),
    ...removedOnSight("wire-rope-sling", "end fittings", { law: ["CFR 1910.184", F5], standard: ["WAC 24-29425", "(5)"] }),
    ...removedOnSight("wire-rope-sling", "heat damage", { law: ["CFR 1910.184", F5], standard: ["WAC 24-29425", "(5)"] }),
    ...removedOnSight("wire-rope-sling", "corrosion", { law: ["CFR 1910.184", F5], standard: ["WAC 24-29425", "(5)"] }),
    ...removedOnSight("wire-rope-sling", "identification tag", { law: ["CFR 1910.184", "(c)(13)"], standard: ["B30.9", "9-2.9.5"] }),
    ...removedOnSight("wire-rope-sling", "cracks", {
      law: ["CFR 1910.184", F5],
      standard: ["WAC 24-29425", "(5)"],
      practice: ["practice", ""],
    }),
    ...removedOnSight("wire-rope-sling", "deformation", { law: ["CFR 1910.184", F5], standard: ["WAC 24-29425", "(5)"] }),
    {
      id: "wire-rope-sling.hook-throat-opening.standard",
      check: "hook throat opening",
      basis: "standard",
      limit: THROAT_OPENING,
      beyond: "REMOVE",
      source: from("EM 385", "15.E.07"),
      status: "restated",
      checked: CHECKED,
    },
    {
      id: "wire-rope-sling.hook-throat-opening.strict",
      check: "hook throat opening",
      basis: "strict",
      limit: { word: "above", share: "0" },
      beyond: "REMOVE",
      source: from("practice"),
      status: "practice",
      checked: CHECKED,
    },
    ...removedOnSight("wire-rope-sling", "hook latch", { standard: ["B30.10", "removal list, latch"], practice: ["practice", ""] }),
  ],
};

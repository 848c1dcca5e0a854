/** Wire rope slings, and the broken-wire counts of ropes in other use. */
import type { Criterion } from "../rules/criterion";
import type { SourceKey } from "../rules/documents";
import type { BasisId } from "../rules/rule-sets";
import type { GearKind } from "./kind";
import { CHECKED, federalMarkings, from, removedOnSight, seen, seenIfFitted, THROAT_OPENING } from "./shared/records";
import { ROTATION_RESISTANT, STRANDS } from "./shared/ropes";
import { SLING_HOOK, slingHook } from "./shared/sling-hooks";

/** Rope constructions and uses that have broken-wire counts in a lay, as the trade names them. Rope that resists rotation is not made into slings. */
export const CONSTRUCTIONS = {
  "strand laid": ["strand laid", "single part", "stranded", STRANDS],
  "cable laid": ["cable laid"],
  "braided under 8": ["braided under 8", "braided fewer than 8", "braided less than 8", "braided 6 part", "6 part braided"],
  "braided 8 or more": ["braided 8 or more", "braided over 8", "braided 8 part", "8 part braided"],
  "running rope": ["running rope", "running", "hoist rope", "load rope"],
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
const IN_3D = "broken wires in 3 diameters";
const IN_6D = "broken wires in 6 diameters";
const IN_30D = "broken wires in 30 diameters";
const GERMAN = { under: ["germany"], onlyFor: ["strand laid", "cable laid"] } as const;
const german = (check: string, construction: Construction, figure: number, norm: string): Criterion => {
  const record = count(check, construction, "germany", "from", figure, "DGUV 305-002", `14.2.2 Table 5, ${norm}`);
  return { ...record, id: `${record.id}.${norm.replace(" ", "-").toLowerCase()}` };
};
/** Entries of the federal list that were read as restated. */
const federal = (check: string, entry: string): readonly Criterion[] =>
  removedOnSight("wire-rope-sling", check, { law: ["CFR 1910.184", `(f)(5)${entry}`] }).map((c) => ({ ...c, status: "restated" }));
export const wireRopeSling: GearKind = {
  id: "wire rope sling",
  plural: "wire rope slings",
  names: ["wire rope sling", "w r sling", "wr sling", "wire sling", "cable sling", "wire strop", "wire rope strop", "wire rope bridle"],
  parts: { body: "moderate", "outer wire": "moderate", "end fitting": "moderate", eye: "moderate" },
  partNames: { rope: "body", splice: "end fitting", ferrule: "end fitting", thimble: "eye" },
  variants: {
    field: "construction",
    names: CONSTRUCTIONS,
    inGear: [{ words: /cable[- ]laid/i, variant: "cable laid" }],
    another: { words: ROTATION_RESISTANT, kind: "rotation resistant rope", why: "such rope is not judged as a sling" },
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
      onlyFor: ["strand laid", "running rope", "standing rope"],
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
    { kind: "least", name: "local abrasion", part: "body", size: "size", measured: "ropeNow", asNew: "1", required: false },
    { kind: "count", name: "broken wires in 3 diameters", part: "body", measured: "broken3d", required: false, ...GERMAN },
    { kind: "count", name: "broken wires in 6 diameters", part: "body", measured: "broken6d", required: true, ...GERMAN },
    { kind: "count", name: "broken wires in 30 diameters", part: "body", measured: "broken30d", required: true, ...GERMAN },
    { kind: "count", name: "broken wires side by side", part: "body", measured: "brokenBeside", required: false, ...GERMAN },
    ...SLING_HOOK,
  ],
  criteria: [
    count(LAY, "strand laid", "law", "from", 10, "CFR 1910.184", "(f)(5)(i)"),
    count(LAY, "strand laid", "standard", "from", 10, "WAC 24-29425", "(5)(a)"),
    count(STRAND, "strand laid", "law", "from", 5, "CFR 1910.184", "(f)(5)(i)"),
    count(STRAND, "strand laid", "standard", "from", 5, "WAC 24-29425", "(5)(a)"),
    count(LAY, "cable laid", "standard", "from", 20, "B30.9", "9-2.9.5", "restated"),
    count(LAY, "braided under 8", "standard", "from", 20, "B30.9", "9-2.9.5", "restated"),
    count(LAY, "braided 8 or more", "standard", "from", 40, "B30.9", "9-2.9.5", "restated"),
    count(LAY, "running rope", "law", "from", 6, "CFR 1926.1413", "(a)(2)(ii)(A)(1)"),
    count(STRAND, "running rope", "law", "from", 3, "CFR 1926.1413", "(a)(2)(ii)(A)(1)"),
    count(LAY, "running rope", "standard", "from", 6, "B30.5", "", "restated"),
    count(STRAND, "running rope", "standard", "from", 3, "B30.5", "", "restated"),
    // No count of its own for a strand: its wires are wires of the lay.
    count(LAY, "standing rope", "law", "above", 2, "CFR 1926.1413", "(a)(2)(ii)(A)(3), beyond the end connections"),
    count(STRAND, "standing rope", "law", "above", 2, "CFR 1926.1413", "(a)(2)(ii)(A)(3), as wires of the lay"),
    count(LAY, "standing rope", "standard", "above", 2, "B30.29", "", "restated"),
    count(STRAND, "standing rope", "standard", "above", 2, "B30.29", "as wires of the lay", "restated"),

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
      source: from("DOE 1090", "15.4.6.1"),
      status: "read",
      checked: CHECKED,
    },
    ...federal("kinks or crushing", "(iii)"),
    ...removedOnSight("wire-rope-sling", "kinks or crushing", { standard: ["WAC 24-29425", "(5)"] }),
    ...federal("end fittings", "(v)"),
    ...removedOnSight("wire-rope-sling", "end fittings", { standard: ["WAC 24-29425", "(5)"] }),
    ...federal("heat damage", "(iv)"),
    ...removedOnSight("wire-rope-sling", "heat damage", { standard: ["WAC 24-29425", "(5)"] }),
    ...federal("corrosion", "(vii)"),
    ...removedOnSight("wire-rope-sling", "corrosion", { standard: ["WAC 24-29425", "(5)"] }),
    ...federalMarkings("wire-rope-sling"),
    ...removedOnSight("wire-rope-sling", "identification tag", { standard: ["B30.9", "9-2.9.5"] }),
    ...federal("cracks", "(v)"),
    ...removedOnSight("wire-rope-sling", "cracks", {
      standard: ["WAC 24-29425", "(5)"],
      practice: ["practice", ""],
    }),
    ...federal("deformation", "(v)"),
    ...removedOnSight("wire-rope-sling", "deformation", { standard: ["WAC 24-29425", "(5)"] }),
    {
      id: "wire-rope-sling.local-abrasion.standard",
      check: "local abrasion",
      basis: "standard",
      limit: { word: "above", share: "0.05" },
      beyond: "REMOVE",
      source: from("B30.9", "9-2.9.5"),
      status: "restated",
      checked: CHECKED,
    },
    // DIN 3088 by construction; EN 13414 for stranded rope, whose "max." is taken as the count that comes out, the safe reading.
    german(IN_3D, "strand laid", 4, "DIN 3088"),
    german(IN_6D, "strand laid", 6, "DIN 3088"),
    german(IN_30D, "strand laid", 16, "DIN 3088"),
    german(IN_6D, "strand laid", 6, "EN 13414"),
    german(IN_30D, "strand laid", 14, "EN 13414"),
    german("broken wires side by side", "strand laid", 3, "EN 13414"),
    german(IN_3D, "cable laid", 10, "DIN 3088"),
    german(IN_6D, "cable laid", 15, "DIN 3088"),
    german(IN_30D, "cable laid", 40, "DIN 3088"),
    ...slingHook("wire-rope-sling", {
      throat: THROAT_OPENING,
      opening: ["EM 385", "15.E.07", "restated"],
      section: ["B30.10", "10-1.2.3(b)(2)"],
      twist: ["B30.10", "10-1.2.3(b)(3)"],
      latch: ["B30.10", "removal list, latch and lock"],
    }),
  ],
};

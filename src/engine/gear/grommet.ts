/** Grommets and endless wire rope slings: no ends, so the splice and the tuck are looked at instead. */
import type { Criterion } from "../rules/criterion";
import type { GearKind } from "./kind";
import { CHECKED, federalMarkings, from, removedOnSight, seen } from "./shared/records";
import { ROTATION_RESISTANT, STRANDS } from "./shared/ropes";
import { wireRopeSling } from "./wire-rope-sling";

const BORROWED = [
  "broken wires in a lay",
  "broken wires in one strand",
  "outer wire wear",
  "kinks or crushing",
  "heat damage",
  "corrosion",
  "cracks",
  "deformation",
];
const CONSTRUCTIONS: readonly string[] = ["strand laid", "cable laid"];
const isOwn = ({ onlyFor }: { readonly onlyFor?: readonly string[] }): boolean =>
  onlyFor === undefined || onlyFor.some((rope) => CONSTRUCTIONS.includes(rope));
const borrowed: readonly Criterion[] = wireRopeSling.criteria
  .filter((c) => BORROWED.includes(c.check) && isOwn(c))
  .map((c) => ({ ...c, id: `grommet.${c.id.slice(c.id.indexOf(".") + 1)}` }));
export const grommet: GearKind = {
  id: "grommet",
  plural: "grommets and endless rope slings",
  names: [
    "grommet",
    "rope grommet",
    "wire rope grommet",
    "endless wire rope sling",
    "endless rope sling",
    "cable laid grommet",
    "strand laid grommet",
  ],
  parts: { body: "moderate", "outer wire": "moderate", tuck: "moderate" },
  partNames: { splice: "tuck", rope: "body" },
  variants: {
    field: "construction",
    names: { "strand laid": ["strand laid", "stranded", STRANDS], "cable laid": ["cable laid"] },
    inGear: [
      { words: /cable[- ]laid/i, variant: "cable laid" },
      { words: /strand[- ]laid/i, variant: "strand laid" },
    ],
    another: { words: ROTATION_RESISTANT, kind: "rotation resistant rope", why: "such rope is not judged as a sling" },
    blank: { variant: "strand laid", why: "which has the lowest counts for slings" },
    ...(wireRopeSling.variants?.beside === undefined ? {} : { beside: wireRopeSling.variants.beside }),
  },
  checks: [
    { kind: "count", name: "broken wires in a lay", part: "body", measured: "brokenLay", required: true },
    { kind: "count", name: "broken wires in one strand", part: "body", measured: "brokenStrand", required: true, onlyFor: ["strand laid"] },
    { kind: "loss", name: "outer wire wear", part: "outer wire", original: "wireNew", measured: "wireNow", required: false },
    { kind: "enough", name: "circumference", part: "body", size: "size", measured: "circumference", reads: "length", required: false },
    seen("kinks or crushing", "body", "kinks", true),
    seen("tuck or splice", "tuck", "endFittings", true),
    seen("heat damage", "body", "heat", true),
    seen("corrosion", "body", "corrosion", true),
    seen("identification tag", "body", "tag", true),
    seen("cracks", "body", "cracks", false),
    seen("deformation", "body", "deformed", false, true),
  ],
  criteria: [
    ...borrowed,
    ...(["law", "standard"] as const).map((basis): Criterion => ({
      id: `grommet.circumference.${basis}`,
      check: "circumference",
      basis,
      limit: { word: "fewer", times: "96" },
      beyond: "REMOVE",
      source: basis === "law" ? from("CFR 1910.184", "(f)(2), 96 body diameters") : from("WAC 24-29425", "(2), 96 body diameters"),
      status: "read",
      checked: CHECKED,
    })),
    ...removedOnSight("grommet", "tuck or splice", { standard: ["WAC 24-29425", "(5)"], practice: ["practice", ""] }),
    ...federalMarkings("grommet"),
    ...removedOnSight("grommet", "identification tag", { standard: ["B30.9", "9-2.9.5"] }),
  ],
};

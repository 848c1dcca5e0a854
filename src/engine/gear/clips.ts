/** Wire rope clips on an end: how many, how far apart, how tight, which way round. */
import type { Criterion, Limit } from "../rules/criterion";
import type { SourceKey } from "../rules/documents";
import type { BasisId } from "../rules/rule-sets";
import type { GearKind } from "./kind";
import { held, heldOnSight } from "./shared/held-rope";
import { CHECKED, from, hardwareOnSight, removedOnSight, seen } from "./shared/records";

const FORGED = ["drop forged U-bolt", "drop forged fist grip"] as const;
const least = (
  check: string,
  basis: BasisId,
  limit: Limit,
  document: SourceKey,
  clause: string,
  more: Partial<Criterion> & { readonly name?: string } = {},
): Criterion => {
  const { name = "", ...rest } = more;
  return {
    id: `clips.${check.replaceAll(" ", "-")}${name}.${basis}`,
    check,
    basis,
    limit,
    beyond: "REMOVE",
    source: basis === "practice" ? from("practice", "(the federal table of longshoring)") : from(document, clause),
    status: basis === "practice" ? "practice" : "read",
    checked: CHECKED,
    ...rest,
  };
};
/** Clips of other material than drop forged: more of them. */
const counts = (basis: BasisId): readonly Criterion[] => [
  least("clip count", basis, { word: "fewer", table: "clips-1918" }, "CFR 1918 II", "Table 1, drop forged", { onlyFor: FORGED }),
  least("clip count", basis, { word: "fewer", table: "clips-1918-other" }, "CFR 1918 II", "Table 1, other material", {
    name: "-other-material",
    onlyFor: ["other material"],
  }),
  least("clip spacing", basis, { word: "fewer", table: "clips-1918-spacing" }, "CFR 1918 II", "Table 1"),
];
export const clips: GearKind = {
  id: "clips",
  plural: "wire rope clips",
  names: ["wire rope clip", "rope clip", "u bolt clip", "cable clip", "clip", "fist grip clip", "bulldog grip", "bulldog clip"],
  parts: { saddle: "moderate", "u bolt": "moderate", body: "moderate" },
  partNames: { bolt: "u bolt", nut: "u bolt" },
  variants: {
    field: "clipType",
    names: {
      "drop forged U-bolt": ["drop forged u bolt", "forged u bolt", "drop forged", "forged"],
      "drop forged fist grip": ["fist grip", "fist", "double saddle", "drop forged fist grip", "forged fist grip"],
      "other material": ["other", "malleable", "malleable iron", "cast", "cast iron", "stainless"],
    },
    inGear: [
      { words: /malleable|cast|stainless|\biron\b/i, variant: "other material" },
      { words: /fist[- ]?grip/i, variant: "drop forged fist grip" },
    ],
  },
  checks: [
    { kind: "enough", name: "clip count", part: "body", size: "size", measured: "clips", reads: "count", required: true },
    { kind: "enough", name: "clip spacing", part: "body", size: "size", measured: "clipSpacing", reads: "length", required: true },
    {
      kind: "enough",
      name: "turn-back",
      part: "body",
      size: "size",
      measured: "turnBack",
      reads: "length",
      inProportionTo: "clips",
      required: false,
      onlyFor: ["drop forged U-bolt", "other material"],
    },
    {
      kind: "enough",
      name: "clip torque",
      part: "u bolt",
      size: "size",
      measured: "clipTorque",
      reads: "torque",
      required: false,
      onlyFor: ["drop forged U-bolt"],
    },
    seen("saddle on live end", "saddle", "liveEnd", true),
    seen("fasteners", "u bolt", "fasteners", true),
    seen("cracks", "saddle", "cracks", true),
    seen("deformation", "saddle", "deformed", false),
    seen("heat damage", "saddle", "heat", false),
    seen("corrosion", "saddle", "corrosion", false),
    seen("field weld or change", "saddle", "fieldChange", false),
    seen("identification", "saddle", "tag", false),
    seen("threads", "u bolt", "threads", false),
    ...held("saddle"),
  ],
  criteria: [
    ...counts("law"),
    ...counts("practice"),
    least("turn-back", "standard", { word: "fewer", table: "clips-california-turn-back" }, "Cal 8497", "Table 1"),
    // A loose clip is tightened where it is: out of use until then, not scrapped.
    least("clip torque", "standard", { word: "fewer", table: "clips-california-torque" }, "Cal 8497", "Table 1", { beyond: "EXAMINE" }),
    ...removedOnSight("clips", "saddle on live end", {
      law: ["CFR 1915.112", "(b)(3)"],
      standard: ["WAC 33915", "(1)(b)"],
      practice: ["practice", ""],
    }),
    ...removedOnSight("clips", "fasteners", { standard: ["WAC 33900", ""], practice: ["practice", ""] }),
    ...removedOnSight("clips", "threads", { standard: ["WAC 33900", ""], practice: ["practice", ""] }),
    ...heldOnSight("clips"),
    ...hardwareOnSight("clips"),
  ],
};

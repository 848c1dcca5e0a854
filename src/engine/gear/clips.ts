/** Wire rope clips on an end: how many, how far apart, which way round. */
import { CHECKED, from, hardwareOnSight, removedOnSight, seen } from "./common";
import type { SourceKey } from "../sources";
import type { BasisId } from "../bases";
import type { Criterion, GearKind, Limit } from "./kind";

const least = (check: string, basis: BasisId, limit: Limit, document: SourceKey, clause: string): Criterion => ({
  id: `clips.${check.replaceAll(" ", "-")}.${basis}`, check, basis, limit, beyond: "REMOVE", source: from(document, clause), status: "read", checked: CHECKED,
});

export const clips: GearKind = {
  id: "clips",
  plural: "wire rope clips",
  names: ["wire rope clip", "rope clip", "u bolt clip", "cable clip", "clip", "fist grip clip", "bulldog grip", "bulldog clip"],
  parts: { saddle: "moderate", "u bolt": "moderate", body: "moderate" },
  partNames: { bolt: "u bolt", nut: "u bolt" },
  checks: [
    { kind: "enough", name: "clip count", part: "body", size: "size", measured: "clips", counted: true, required: true },
    { kind: "enough", name: "clip spacing", part: "body", size: "size", measured: "clipSpacing", counted: false, required: true },
    { kind: "enough", name: "turn-back", part: "body", size: "size", measured: "turnBack", counted: false, required: false },
    seen("saddle on live end", "saddle", "liveEnd", true),
    seen("fasteners", "u bolt", "fasteners", true),
    seen("cracks", "saddle", "cracks", true),
    seen("deformation", "saddle", "deformed", false),
    seen("heat damage", "saddle", "heat", false),
    seen("corrosion", "saddle", "corrosion", false),
    seen("field weld or change", "saddle", "fieldChange", false),
    seen("identification", "saddle", "tag", false),
  ],
  criteria: [
    least("clip count", "law", { word: "fewer", table: "clips-1918" }, "CFR 1918 II", "Table 1"),
    least("clip count", "standard", { word: "fewer", table: "clips-1918" }, "CFR 1918 II", "Table 1"),
    least("clip spacing", "law", { word: "fewer", table: "clips-1918-spacing" }, "CFR 1918 II", "Table 1"),
    least("clip spacing", "standard", { word: "fewer", table: "clips-1918-spacing" }, "CFR 1918 II", "Table 1"),
    least("turn-back", "standard", { word: "fewer", table: "clips-california-turn-back" }, "Cal 8497", "Table 1"),
    ...removedOnSight("clips", "saddle on live end", { standard: ["WAC 33915", "(1)(b)"], practice: ["practice", ""] }),
    ...removedOnSight("clips", "fasteners", { standard: ["WAC 33900", ""], practice: ["practice", ""] }),
    ...hardwareOnSight("clips"),
  ],
};

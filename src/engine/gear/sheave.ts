/** Sheaves by themselves: groove against the rope, flanges, diameter ratio. */
import type { GearKind } from "./kind";
import { CHECKED, from, removedOnSight, seen } from "./shared/records";

export const sheave: GearKind = {
  id: "sheave",
  plural: "sheaves",
  names: ["sheave", "crane sheave", "rope sheave", "sheave wheel", "pulley sheave"],
  parts: { groove: "moderate", flange: "moderate", hub: "moderate", body: "moderate" },
  partNames: { rim: "flange", bearing: "hub", bushing: "hub" },
  checks: [
    { kind: "least", name: "groove diameter", part: "groove", size: "size", measured: "groove", asNew: "1.06", required: true },
    { kind: "ratio", name: "groove width", part: "groove", size: "size", measured: "groove", over: true, required: false },
    { kind: "enough", name: "sheave diameter", part: "body", size: "size", measured: "sheave", reads: "length", required: false },
    seen("running true", "hub", "sheaveTrue", true),
    seen("cracks", "flange", "cracks", true),
    seen("corrosion", "body", "corrosion", false),
    seen("fasteners", "hub", "fasteners", false),
  ],
  criteria: [
    { id: "sheave.groove-diameter.practice", check: "groove diameter", basis: "practice", limit: { word: "below", table: "groove" }, beyond: "REMOVE", source: from("practice", "(nominal rope and half of its oversize)"), status: "practice", checked: CHECKED },
    { id: "sheave.groove-diameter.standard", check: "groove diameter", basis: "standard", limit: { word: "below", table: "groove" }, beyond: "REMOVE", source: from("WRTB", "with the worn-groove rule of wire rope handbooks"), status: "restated", checked: CHECKED },
    // A new groove may be machined up to +10 %, so nothing short of it is worth watching.
    { id: "sheave.groove-width.practice", check: "groove width", basis: "practice", limit: { word: "above", share: "0.10" }, beyond: "EXAMINE", inside: "KEEP", source: from("practice", "(loose on the +10 % gauge: machine again)"), status: "practice", checked: CHECKED },
    { id: "sheave.groove-width.standard", check: "groove width", basis: "standard", limit: { word: "above", share: "0.10" }, beyond: "EXAMINE", inside: "KEEP", source: from("Rope handbook", "loose on the +10 % gauge: machine again"), status: "restated", checked: CHECKED },
    { id: "sheave.sheave-diameter.standard", check: "sheave diameter", basis: "standard", limit: { word: "fewer", times: "18" }, beyond: "EXAMINE", source: from("B30.5", "load hoist sheaves"), status: "restated", checked: CHECKED },
    ...removedOnSight("sheave", "running true", { standard: ["WAC 33900", ""], practice: ["practice", ""] }),
    ...removedOnSight("sheave", "cracks", { standard: ["TB 43-0142", "App. A"], practice: ["practice", ""] }),
    ...removedOnSight("sheave", "corrosion", { standard: ["WAC 33900", ""] }),
    ...removedOnSight("sheave", "fasteners", { standard: ["WAC 33900", ""] }),
  ],
};

/** Hooks: sling, hoist and rigging hooks. */
import type { GearKind } from "./kind";
import { albertaHook, germanHook, queenslandHook, shipsGear } from "./shared/jurisdictions";
import { CHECKED, dressing, from, hardwareChecks, practiceWear, removedOnSight, seenIfFitted, THROAT_OPENING } from "./shared/records";

/** The list for any lifting hook; WAC 296-155-55800 Table 12 has the same figures for hooks on chain slings. */
const HOOK_LIST = from("EM 385", "15.E.07");
/** Table 19 is the list of rigging hardware; that of hooks was not read. */
const ON_HOOKS = "applied to hooks";
export const hook: GearKind = {
  id: "hook",
  plural: "hooks",
  names: [
    "hook", "eye hook", "clevis hook", "sling hook", "hoist hook",
    "swivel hook", "self locking hook", "safety hook", "grab hook",
  ],
  parts: { saddle: "high", throat: "high", eye: "high", shank: "moderate", body: "moderate", tip: "low" },
  partNames: { bowl: "saddle", base: "saddle", bite: "saddle", "throat section": "throat", neck: "shank", point: "tip", back: "body" },
  checks: [
    { kind: "growth", name: "throat opening", part: "throat", original: "throatNew", measured: "throatNow", required: true, overload: true },
    { kind: "loss", name: "section wear", part: "saddle", original: "sectionNew", measured: "sectionNow", acrossOriginal: "acrossNew", acrossMeasured: "acrossNow", required: true, general: true },
    { kind: "loss", name: "eye wear", part: "eye", original: "eyeNew", measured: "eyeNow", required: false },
    { kind: "loss", name: "pin wear", part: "body", original: "pinNew", measured: "pinNow", required: false },
    { kind: "angle", name: "twist", part: "body", measured: "twist", required: true, overload: true },
    seenIfFitted("latch", "tip", "latch", true),
    ...hardwareChecks("body", false),
  ],
  criteria: [
    { id: "hook.throat-opening.law", check: "throat opening", basis: "law", limit: { word: "above", share: "0.15" }, beyond: "REMOVE", source: from("CFR 1910.179", "(j)(2)(iii), (l)(3)(iii)(a)"), status: "restated", checked: CHECKED },
    { id: "hook.throat-opening.standard", check: "throat opening", basis: "standard", limit: THROAT_OPENING, beyond: "REMOVE", source: HOOK_LIST, status: "restated", checked: CHECKED },
    { id: "hook.throat-opening.strict", check: "throat opening", basis: "strict", limit: { word: "above", share: "0" }, beyond: "REMOVE", source: from("practice"), status: "practice", checked: CHECKED },
    { id: "hook.section-wear.standard", check: "section wear", basis: "standard", limit: { word: "above", share: "0.10" }, beyond: "REMOVE", source: HOOK_LIST, status: "restated", checked: CHECKED },
    { id: "hook.eye-wear.standard", check: "eye wear", basis: "standard", limit: { word: "above", share: "0.10" }, beyond: "REMOVE", source: HOOK_LIST, status: "restated", checked: CHECKED },
    { id: "hook.pin-wear.standard", check: "pin wear", basis: "standard", limit: { word: "above", share: "0.10" }, beyond: "REMOVE", source: from("B30.10", "10-1.2.1.x(3)"), status: "read", checked: CHECKED },
    ...practiceWear("hook", ["section wear"], ["most", "highly stressed", "two ways"]),
    ...practiceWear("hook", ["eye wear"], ["highly stressed"]),
    ...practiceWear("hook", ["pin wear"], ["most"]),
    { id: "hook.twist.law", check: "twist", basis: "law", limit: { word: "above", degrees: "10" }, beyond: "REMOVE", source: from("CFR 1910.179", "(j)(2)(iii), (l)(3)(iii)(a)"), status: "restated", checked: CHECKED },
    { id: "hook.twist.standard", check: "twist", basis: "standard", limit: { word: "above", degrees: "0" }, beyond: "REMOVE", source: HOOK_LIST, status: "restated", checked: CHECKED },
    { id: "hook.twist.practice", check: "twist", basis: "practice", limit: { word: "above", degrees: "10" }, beyond: "REMOVE", source: from("practice"), status: "practice", checked: CHECKED },
    ...removedOnSight("hook", "cracks", { law: ["CFR 1910.179", "(l)(3)(iii)(a)"], standard: ["WAC 33900", ON_HOOKS], practice: ["practice", ""] }),
    ...removedOnSight("hook", "latch", { standard: ["B30.10", "removal list, latch"], practice: ["practice", ""] }),
    ...removedOnSight("hook", "deformation", { law: ["CFR 1910.179", "(l)(3)(iii)(a)"], standard: ["WAC 304-07005", "(2)(c)"] }),
    ...removedOnSight("hook", "identification", { standard: ["WAC 33900", ON_HOOKS], practice: ["practice", ""] }),
    ...removedOnSight("hook", "heat damage", { standard: ["WAC 33900", ON_HOOKS] }),
    ...removedOnSight("hook", "corrosion", { standard: ["WAC 33900", ON_HOOKS] }),
    ...removedOnSight("hook", "field weld or change", { standard: ["WAC 33705", "(8)"], practice: ["practice", ""] }),
    dressing("hook", "standard", "0.10", ["WAC 33705", "(7)(b), (c)"]),
    dressing("hook", "practice", "0.05", ["practice", ""], ["high"]),
    dressing("hook", "practice", "0.10", ["practice", ""], ["moderate"]),
    dressing("hook", "practice", "0.10", ["practice", ""], ["low"], "KEEP"),
    ...albertaHook("hook", "throat opening", ["section wear", "eye wear"], "twist"),
    ...queenslandHook("hook", "throat opening", ["section wear"]),
    ...germanHook("hook", "throat opening", "section wear"),
    ...shipsGear("hook", ["section wear", "eye wear"], ["pin wear"]),
  ],
};

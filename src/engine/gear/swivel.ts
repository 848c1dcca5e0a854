/** Swivels: eye and eye, jaw and eye, with plain or rolling bearing. */
import type { GearKind } from "./kind";
import { shipsGear } from "./shared/jurisdictions";
import {
  CHECKED,
  dressing,
  from,
  hardwareChecks,
  hardwareOnSight,
  hardwareWear,
  practiceWear,
  removedOnSight,
  seen,
} from "./shared/records";

export const swivel: GearKind = {
  id: "swivel",
  plural: "swivels",
  names: ["swivel", "eye swivel", "jaw swivel", "chain swivel"],
  parts: { eye: "moderate", case: "moderate", body: "moderate", jaw: "moderate" },
  partNames: { housing: "case", shoulder: "case" },
  checks: [
    seen("turning freely", "case", "turnsFreely", true),
    { kind: "gap", name: "shoulder clearance", part: "case", measured: "clearance", required: true },
    {
      kind: "loss",
      name: "section wear",
      part: "eye",
      original: "sectionNew",
      measured: "sectionNow",
      acrossOriginal: "acrossNew",
      acrossMeasured: "acrossNow",
      required: true,
      general: true,
    },
    seen("fasteners", "case", "fasteners", false),
    ...hardwareChecks("eye", true),
  ],
  criteria: [
    ...removedOnSight("swivel", "turning freely", { standard: ["B30.26", "26-4.8.4(h)"], practice: ["practice", ""] }),
    ...removedOnSight("swivel", "fasteners", { standard: ["B30.26", "26-4.8.4(i)"] }),
    {
      id: "swivel.shoulder-clearance.practice-look",
      check: "shoulder clearance",
      basis: "practice",
      limit: { word: "above", length: "1/8", unit: "in" },
      beyond: "WATCH",
      source: from("practice"),
      status: "practice",
      checked: CHECKED,
    },
    {
      id: "swivel.shoulder-clearance.practice-strip",
      check: "shoulder clearance",
      basis: "practice",
      limit: { word: "above", length: "3/16", unit: "in" },
      beyond: "EXAMINE",
      source: from("practice"),
      status: "practice",
      checked: CHECKED,
    },
    ...hardwareWear("swivel", ["section wear"]),
    ...practiceWear("swivel", ["section wear"], ["most", "two ways"]),
    ...hardwareOnSight("swivel"),
    dressing("swivel", "practice", "0.05", ["practice", ""]),
    ...shipsGear("swivel", ["section wear"], []),
  ],
};

/** Below-the-hook beams and spreaders, as far as a figure is published. */
import type { GearKind } from "./kind";
import { BELOW_THE_HOOK, CHECKED, from, hardwareChecks, hardwareOnSight, practiceWear, removedOnSight, seen } from "./shared/records";

export const liftingBeam: GearKind = {
  id: "lifting beam",
  plural: "lifting beams",
  names: ["lifting beam", "spreader beam", "spreader bar", "spreader", "lifting bar", "strongback"],
  parts: { beam: "moderate", eye: "moderate", body: "moderate" },
  partNames: { lug: "eye", padeye: "eye" },
  checks: [
    { kind: "ratio", name: "permanent bend", part: "beam", size: "span", measured: "bend", required: true, overload: true },
    {
      kind: "loss",
      name: "eye wear",
      part: "eye",
      original: "sectionNew",
      measured: "sectionNow",
      acrossOriginal: "acrossNew",
      acrossMeasured: "acrossNow",
      required: true,
      general: true,
    },
    seen("fasteners", "beam", "fasteners", true),
    ...hardwareChecks("beam", true).filter((c) => c.name !== "nick"),
  ],
  criteria: [
    {
      id: "lifting-beam.permanent-bend.standard",
      check: "permanent bend",
      basis: "standard",
      limit: { word: "above", share: "1/240" },
      beyond: "REMOVE",
      source: from("DOE 1090", "15.4.8 a.2 (1/2 in in 10 ft)"),
      status: "read",
      checked: CHECKED,
    },
    ...practiceWear("lifting-beam", ["eye wear"], ["most", "two ways"]),
    ...removedOnSight("lifting-beam", "fasteners", { standard: ["WAC 33900", BELOW_THE_HOOK], practice: ["practice", ""] }),
    ...hardwareOnSight("lifting-beam", BELOW_THE_HOOK),
  ],
};

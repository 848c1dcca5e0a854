/** Below-the-hook beams and spreaders, as far as a figure is published. */
import type { GearKind } from "./kind";
import { BELOW_THE_HOOK, CHECKED, from, hardwareChecks, hardwareOnSight, practiceWear, removedOnSight, seen } from "./shared/records";

/** The list of a federal agency: loose fasteners; worn gears, sheaves and chains; friction pads and linkages; attaching points, shackles and pins. */
const DOE = ["DOE 1090", "14.2.5.3 c"] as const;
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
    seen("friction pads and linkages", "eye", "pads", false),
    seen("attaching points", "eye", "attachPoints", false),
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
    ...removedOnSight("lifting-beam", "fasteners", { standard: DOE, practice: ["practice", ""] }),
    ...removedOnSight("lifting-beam", "friction pads and linkages", { standard: DOE, practice: ["practice", ""] }),
    ...removedOnSight("lifting-beam", "attaching points", { standard: DOE, practice: ["practice", ""] }),
    ...hardwareOnSight("lifting-beam", BELOW_THE_HOOK),
  ],
};

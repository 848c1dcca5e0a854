/** Eye nuts. */
import type { GearKind } from "./kind";
import { dressing, hardwareChecks, hardwareOnSight, hardwareWear, practiceWear, removedOnSight, seen } from "./shared/records";

export const eyeNut: GearKind = {
  id: "eye nut",
  plural: "eye nuts",
  names: ["eye nut", "eyenut", "lifting eye nut"],
  parts: { eye: "moderate", body: "moderate" },
  partNames: { ring: "eye", thread: "body" },
  checks: [
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
    seen("threads", "body", "threads", true),
    ...hardwareChecks("eye", true),
  ],
  criteria: [
    ...hardwareWear("eye-nut", ["eye wear"]),
    ...practiceWear("eye-nut", ["eye wear"], ["most", "two ways"]),
    ...removedOnSight("eye-nut", "threads", { standard: ["WAC 33900", ""], practice: ["practice", ""] }),
    ...hardwareOnSight("eye-nut"),
    dressing("eye-nut", "practice", "0.05", ["practice", ""]),
  ],
};

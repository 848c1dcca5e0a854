/** Eyebolts, shouldered or not. */
import type { GearKind } from "./kind";
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

export const eyebolt: GearKind = {
  id: "eyebolt",
  plural: "eyebolts",
  names: ["eyebolt", "eye bolt", "shoulder eyebolt"],
  parts: { eye: "moderate", shank: "moderate", body: "moderate" },
  partNames: { ring: "eye", thread: "shank", shoulder: "shank" },
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
    { kind: "angle", name: "shank bend", part: "shank", measured: "bendAngle", required: false, overload: true },
    seen("threads", "shank", "threads", true),
    ...hardwareChecks("eye", true),
  ],
  criteria: [
    ...hardwareWear("eyebolt", ["eye wear"]),
    ...practiceWear("eyebolt", ["eye wear"], ["most", "two ways"]),
    {
      id: "eyebolt.shank-bend.practice",
      check: "shank bend",
      basis: "practice",
      limit: { word: "above", degrees: "15" },
      beyond: "REMOVE",
      source: from("practice", "(a care booklet)"),
      status: "practice",
      checked: CHECKED,
    },
    {
      id: "eyebolt.shank-bend.standard",
      check: "shank bend",
      basis: "standard",
      limit: { word: "above", degrees: "0" },
      beyond: "REMOVE",
      source: from("WAC 33900", "(bent)"),
      status: "read",
      checked: CHECKED,
    },
    ...removedOnSight("eyebolt", "threads", { standard: ["WAC 33900", ""], practice: ["practice", ""] }),
    ...hardwareOnSight("eyebolt"),
    dressing("eyebolt", "practice", "0.05", ["practice", ""]),
  ],
};

/** Coupling and shortening parts of chain slings: coupling links, shortening clutches, claws. */
import type { GearKind } from "./kind";
import {
  dressing,
  hardwareChecks,
  hardwareOnSight,
  hardwareWear,
  practiceWear,
  removedOnSight,
  seen,
  seenIfFitted,
} from "./shared/records";

const TABLE_12 = ["WAC 55800", ""] as const;
export const coupling: GearKind = {
  id: "coupling",
  plural: "coupling and shortening parts",
  names: [
    "coupling",
    "chain coupling",
    "coupling link",
    "connecting link",
    "coupler",
    "half link coupling",
    "shortening clutch",
    "shortening claw",
    "shortening hook",
    "chain shortener",
    "shortener",
    "chain clutch",
  ],
  parts: { body: "moderate", pin: "moderate", pocket: "moderate" },
  partNames: { slot: "pocket", bolt: "pin", half: "body" },
  checks: [
    {
      kind: "loss",
      name: "body wear",
      part: "body",
      original: "sectionNew",
      measured: "sectionNow",
      acrossOriginal: "acrossNew",
      acrossMeasured: "acrossNow",
      required: true,
      general: true,
    },
    { kind: "loss", name: "pin wear", part: "pin", original: "pinNew", measured: "pinNow", required: false },
    seen("fasteners", "pin", "fasteners", true),
    seenIfFitted("lock", "pocket", "lock", true),
    seenIfFitted("hinging", "pin", "turnsFreely", false),
    ...hardwareChecks("body", true),
  ],
  criteria: [
    ...hardwareWear("coupling", ["body wear", "pin wear"]),
    ...practiceWear("coupling", ["body wear"], ["most", "two ways"]),
    ...practiceWear("coupling", ["pin wear"], ["most"]),
    ...removedOnSight("coupling", "fasteners", { standard: ["WAC 33900", ""], practice: ["practice", ""] }),
    ...removedOnSight("coupling", "lock", { practice: ["practice", ""] }),
    ...removedOnSight("coupling", "hinging", { standard: TABLE_12, practice: ["practice", ""] }),
    ...hardwareOnSight("coupling"),
    dressing("coupling", "practice", "0.05", ["practice", ""]),
  ],
};

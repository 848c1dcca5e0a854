/** Shackles: anchor (bow) and chain (dee), screw pin, round pin, bolt type. */
import type { GearKind } from "./kind";
import { shipsGear } from "./shared/jurisdictions";
import { dressing, hardwareChecks, hardwareOnSight, hardwareWear, practiceWear, removedOnSight, seen } from "./shared/records";

export const shackle: GearKind = {
  id: "shackle",
  plural: "shackles",
  names: ["shackle", "shkl", "shackel", "anchor shackle", "bow shackle", "chain shackle", "dee shackle", "bolt type shackle"],
  parts: { bow: "moderate", pin: "moderate", ear: "moderate", body: "moderate" },
  partNames: { crown: "bow", bolt: "pin", ears: "ear", eye: "ear", jaw: "ear" },
  asNew: [
    { column: "sectionNew", part: "body", when: "sectionNow" },
    { column: "acrossNew", part: "body", when: "acrossNow" },
    { column: "pinNew", part: "pin", when: "pinNow" },
  ],
  checks: [
    {
      kind: "loss",
      name: "bow wear",
      part: "bow",
      original: "sectionNew",
      measured: "sectionNow",
      acrossOriginal: "acrossNew",
      acrossMeasured: "acrossNow",
      required: true,
      general: true,
    },
    { kind: "loss", name: "pin wear", part: "pin", original: "pinNew", measured: "pinNow", required: true },
    { kind: "loss", name: "ear wear", part: "ear", original: "eyeNew", measured: "eyeNow", required: false },
    seen("pin seating", "pin", "pinSeated", true),
    seen("pin threads", "pin", "threads", false),
    ...hardwareChecks("bow", true),
  ],
  criteria: [
    ...hardwareWear("shackle", ["bow wear", "pin wear", "ear wear"]),
    ...practiceWear("shackle", ["bow wear"], ["most", "two ways"]),
    ...practiceWear("shackle", ["pin wear", "ear wear"], ["most"]),
    ...removedOnSight("shackle", "pin seating", { standard: ["WAC 33905", "(2)(a)"], practice: ["practice", ""] }),
    ...removedOnSight("shackle", "pin threads", { standard: ["WAC 33900", ""], practice: ["practice", ""] }),
    ...hardwareOnSight("shackle"),
    dressing("shackle", "practice", "0.05", ["practice", ""]),
    ...shipsGear("shackle", ["bow wear", "ear wear"], ["pin wear"]),
  ],
};

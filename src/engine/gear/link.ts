/** Links and rings: master links, pear links, coupling links, rings. */
import type { GearKind } from "./kind";
import { shipsGear } from "./shared/jurisdictions";
import { dressing, hardwareChecks, hardwareOnSight, hardwareWear, practiceWear } from "./shared/records";

export const link: GearKind = {
  id: "link",
  plural: "links and rings",
  names: [
    "link",
    "ring",
    "master link",
    "pear link",
    "oblong link",
    "master ring",
    "round ring",
    "d ring",
    "end link",
    "ring link",
    "pear shaped link",
  ],
  parts: { crown: "moderate", side: "moderate", body: "moderate" },
  partNames: { bow: "crown", end: "crown", leg: "side" },
  checks: [
    {
      kind: "loss",
      name: "crown wear",
      part: "crown",
      original: "sectionNew",
      measured: "sectionNow",
      acrossOriginal: "acrossNew",
      acrossMeasured: "acrossNow",
      required: true,
      general: true,
    },
    ...hardwareChecks("crown", true),
  ],
  criteria: [
    ...hardwareWear("link", ["crown wear"]),
    ...practiceWear("link", ["crown wear"], ["most", "two ways"]),
    ...hardwareOnSight("link"),
    dressing("link", "practice", "0.05", ["practice", ""]),
    ...shipsGear("link", ["crown wear"], []),
  ],
};

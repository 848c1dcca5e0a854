/** Lifting magnets, permanent and electric. */
import type { GearKind } from "./kind";
import { BELOW_THE_HOOK, removedOnSight, seen, seenIfFitted } from "./shared/records";

const DOE = ["DOE 1090", "14.4.4.2"] as const;
const LISTED = ["face", "bail or suspension", "handle", "indicator", "labels", "conductors and battery"];
export const liftingMagnet: GearKind = {
  id: "lifting magnet",
  plural: "lifting magnets",
  names: ["lifting magnet", "lift magnet", "permanent lifting magnet", "electromagnet", "magnet", "magnetic lifter"],
  parts: { face: "moderate", bail: "moderate", handle: "moderate", case: "moderate", body: "moderate" },
  partNames: { shackle: "bail", lever: "handle", pole: "face", conductor: "case", battery: "case" },
  checks: [
    seen("face", "face", "magnetFace", true),
    seen("bail or suspension", "bail", "attachPoints", true),
    seen("handle", "handle", "controls", true),
    seenIfFitted("indicator", "case", "indicator", true),
    seen("labels", "case", "tag", true),
    seenIfFitted("conductors and battery", "case", "wiring", true),
    seen("cracks", "case", "cracks", true),
    seen("deformation", "case", "deformed", false, true),
    seen("fasteners", "case", "fasteners", false),
    seen("corrosion", "case", "corrosion", false),
    seen("heat damage", "case", "heat", false),
    seen("field weld or change", "case", "fieldChange", false),
  ],
  criteria: [
    ...LISTED.flatMap((check) => removedOnSight("lifting-magnet", check, { standard: DOE, practice: ["practice", ""] })),
    ...["cracks", "deformation", "fasteners", "corrosion", "heat damage", "field weld or change"].flatMap((check) =>
      removedOnSight("lifting-magnet", check, { standard: ["WAC 33900", BELOW_THE_HOOK], practice: ["practice", ""] }),
    ),
  ],
};

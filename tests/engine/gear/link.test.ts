import { kindTests, onSight, PRACTICE, tenPercent } from "../helpers";

const TABLE_19 = "WAC 296-155-33900 Table 19; ASME B30.26 26-4.8.4";

const SHIPS = "ISO 16855:2013";

kindTests(
  "link",
  [
    // Crown 30 mm as new: 10 % is 3 mm. Table 19 takes it out at 27 mm, practice below 27 mm.
    {
      criterion: "link.crown-wear.standard",
      source: TABLE_19,
      inside: [{ sectionNow: 28.5 }, "KEEP"],
      edge: [{ sectionNow: 27 }, "REMOVE"],
      past: [{ sectionNow: 26.99 }, "REMOVE"],
    },
    {
      criterion: "link.crown-wear.practice",
      source: PRACTICE,
      inside: [{ sectionNow: 28.5 }, "KEEP"],
      edge: [{ sectionNow: 27 }, "REMOVE"],
      past: [{ sectionNow: 26.99 }, "REMOVE"],
    },
    // Two directions, 30 mm each: 5 % is 1.5 mm.
    {
      criterion: "link.crown-wear.practice-two-ways",
      source: PRACTICE,
      inside: [{ sectionNow: 29.5, acrossNew: 30, acrossNow: 29.9 }, "KEEP"],
      edge: [{ sectionNow: 28.5, acrossNew: 30, acrossNow: 29.9 }, "WATCH"],
      past: [{ sectionNow: 28.49, acrossNew: 30, acrossNow: 29.9 }, "REMOVE"],
    },
    {
      criterion: "link.nick.practice",
      source: PRACTICE,
      inside: [{ nickDepth: 0.5, nickPart: "crown" }, "DRESS"],
      edge: [{ nickDepth: 1.5, nickPart: "crown" }, "DRESS"],
      past: [{ nickDepth: 1.51, nickPart: "crown" }, "REMOVE"],
    },
    tenPercent("link.crown-wear.ships", SHIPS, "above", "sectionNew", "sectionNow"),
  ],
  [
    ...onSight("link", "cracks", "cracks", { standard: TABLE_19, practice: PRACTICE, ships: SHIPS }),
    ...onSight("link", "deformation", "deformed", { standard: TABLE_19, ships: SHIPS }),
    ...onSight("link", "identification", "tag", { standard: TABLE_19 }),
    ...onSight("link", "heat damage", "heat", { standard: TABLE_19 }),
    ...onSight("link", "corrosion", "corrosion", { standard: TABLE_19 }),
    ...onSight("link", "field weld or change", "fieldChange", { standard: TABLE_19, practice: PRACTICE }),
  ],
);

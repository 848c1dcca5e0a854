import { kindTests, onSight, PRACTICE, tenPercent } from "../helpers";

const TABLE_19 = "WAC 296-155-33900 Table 19, ASME B30.26 chapter 5";

const SHIPS = "ISO 16855:2013";

kindTests(
  "block",
  [
    // Side plate 12 mm as new: 10 % is 1.2 mm; at 10.8 mm Table 19 takes it out, practice below.
    {
      criterion: "block.section-wear.standard",
      source: TABLE_19,
      inside: [{ sectionNow: 11.5 }, "KEEP"],
      edge: [{ sectionNow: 10.8 }, "REMOVE"],
      past: [{ sectionNow: 10.79 }, "REMOVE"],
    },
    {
      criterion: "block.section-wear.practice",
      source: PRACTICE,
      inside: [{ sectionNow: 11.5 }, "KEEP"],
      edge: [{ sectionNow: 10.8 }, "WATCH"],
      past: [{ sectionNow: 10.79 }, "REMOVE"],
    },
    // 5 % of 12 mm is 0.6 mm.
    {
      criterion: "block.section-wear.practice-two-ways",
      source: PRACTICE,
      inside: [{ sectionNow: 11.8, acrossNew: 50, acrossNow: 49.9 }, "KEEP"],
      edge: [{ sectionNow: 11.4, acrossNew: 50, acrossNow: 49.9 }, "WATCH"],
      past: [{ sectionNow: 11.39, acrossNew: 50, acrossNow: 49.9 }, "REMOVE"],
    },
    {
      criterion: "block.pin-wear.standard",
      source: TABLE_19,
      inside: [{ pinNew: 30, pinNow: 28.5 }, "KEEP"],
      edge: [{ pinNew: 30, pinNow: 27 }, "REMOVE"],
      past: [{ pinNew: 30, pinNow: 26.99 }, "REMOVE"],
    },
    {
      criterion: "block.pin-wear.practice",
      source: PRACTICE,
      inside: [{ pinNew: 30, pinNow: 28.5 }, "KEEP"],
      edge: [{ pinNew: 30, pinNow: 27 }, "WATCH"],
      past: [{ pinNew: 30, pinNow: 26.99 }, "REMOVE"],
    },
    {
      criterion: "block.nick.practice",
      source: PRACTICE,
      inside: [{ nickDepth: 0.3, nickPart: "side plate" }, "DRESS"],
      edge: [{ nickDepth: 0.6, nickPart: "side plate" }, "DRESS"],
      past: [{ nickDepth: 0.61, nickPart: "side plate" }, "REMOVE"],
    },
    tenPercent("block.section-wear.ships", SHIPS, "above", "sectionNew", "sectionNow"),
    // 6 % of a pin of 23 mm is 1.38 mm: out below 21.62 mm.
    {
      criterion: "block.pin-wear.ships",
      source: SHIPS,
      inside: [{ pinNew: 23, pinNow: 22.5 }, "KEEP"],
      edge: [{ pinNew: 23, pinNow: 21.62 }, "WATCH"],
      past: [{ pinNew: 23, pinNow: 21.619 }, "REMOVE"],
    },
  ],
  [
    ...onSight("block", "sheave", "sheaveTrue", { standard: TABLE_19, practice: PRACTICE }),
    ...onSight("block", "fasteners", "fasteners", { standard: TABLE_19, practice: PRACTICE }),
    ...onSight("block", "groove corrugation", "grooveRidged", { standard: TABLE_19, practice: PRACTICE }),
    ...onSight("block", "threads", "threads", { standard: TABLE_19, practice: PRACTICE }),
    ...onSight("block", "cracks", "cracks", { standard: TABLE_19, practice: PRACTICE, ships: SHIPS }),
    ...onSight("block", "deformation", "deformed", { standard: TABLE_19, ships: SHIPS }),
    ...onSight("block", "identification", "tag", { standard: TABLE_19 }),
    ...onSight("block", "heat damage", "heat", { standard: TABLE_19 }),
    ...onSight("block", "corrosion", "corrosion", { standard: TABLE_19 }),
    ...onSight("block", "field weld or change", "fieldChange", { standard: TABLE_19, practice: PRACTICE }),
  ],
);

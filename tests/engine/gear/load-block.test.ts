import { describe, expect, it } from "vitest";
import { good, judged, kindTests, onSight, PRACTICE } from "../helpers";

const LAW = "29 CFR 1910.179(j)(2)(iii), (l)(3)(iii)(a)";
const TABLE_12 = "WAC 296-155-55800 Table 12";
const TABLE_19 = "WAC 296-155-33900 Table 19";
const ALBERTA = "Alberta OHS Code s.309";
const GERMANY = "German discard list for load hooks, restated";
const SHIPS = "ISO 16855:2013";

kindTests(
  "load block",
  [
    // Throat 2 in as new, saddle 1.5 in, pin 2 in: the figures of the hook and of the block.
    {
      criterion: "load-block.throat-opening.law",
      source: LAW,
      inside: [{ throatNow: 2.2 }, "KEEP"],
      edge: [{ throatNow: 2.3 }, "WATCH"],
      past: [{ throatNow: 2.3001 }, "REMOVE"],
    },
    {
      criterion: "load-block.throat-opening.standard",
      source: TABLE_12,
      inside: [{ throatNow: 2.05 }, "KEEP"],
      edge: [{ throatNow: 2.1 }, "WATCH"],
      past: [{ throatNow: 2.101 }, "REMOVE"],
    },
    {
      criterion: "load-block.throat-opening.strict",
      source: PRACTICE,
      inside: [{ throatNow: 1.99 }, "KEEP"],
      edge: [{ throatNow: 2 }, "KEEP"],
      past: [{ throatNow: 2.001 }, "REMOVE"],
    },
    {
      criterion: "load-block.throat-opening.alberta",
      source: ALBERTA,
      inside: [{ throatNow: 2.2 }, "KEEP"],
      edge: [{ throatNow: 2.3 }, "WATCH"],
      past: [{ throatNow: 2.3001 }, "REMOVE"],
    },
    {
      criterion: "load-block.throat-opening.queensland",
      source: "Queensland Guide for doggers p. 34",
      inside: [{ throatNow: 2.05 }, "KEEP"],
      edge: [{ throatNow: 2.1 }, "WATCH"],
      past: [{ throatNow: 2.101 }, "REMOVE"],
    },
    {
      criterion: "load-block.throat-opening.germany",
      source: GERMANY,
      inside: [{ throatNow: 2.1 }, "KEEP"],
      edge: [{ throatNow: 2.2 }, "WATCH"],
      past: [{ throatNow: 2.2001 }, "REMOVE"],
    },
    {
      criterion: "load-block.section-wear.standard",
      source: TABLE_12,
      inside: [{ sectionNow: 1.45 }, "KEEP"],
      edge: [{ sectionNow: 1.35 }, "WATCH"],
      past: [{ sectionNow: 1.3499 }, "REMOVE"],
    },
    {
      criterion: "load-block.section-wear.practice-high",
      source: PRACTICE,
      inside: [{ sectionNow: 1.48 }, "KEEP"],
      edge: [{ sectionNow: 1.425 }, "REMOVE"],
      past: [{ sectionNow: 1.424 }, "REMOVE"],
    },
    {
      criterion: "load-block.section-wear.practice",
      source: PRACTICE,
      part: "body",
      inside: [{ sectionNow: 1.45 }, "KEEP"],
      edge: [{ sectionNow: 1.35 }, "REMOVE"],
      past: [{ sectionNow: 1.3499 }, "REMOVE"],
    },
    {
      criterion: "load-block.section-wear.practice-two-ways",
      source: PRACTICE,
      part: "body",
      inside: [{ sectionNow: 1.48, acrossNew: 2, acrossNow: 1.99 }, "KEEP"],
      edge: [{ sectionNow: 1.425, acrossNew: 2, acrossNow: 1.99 }, "WATCH"],
      past: [{ sectionNow: 1.424, acrossNew: 2, acrossNow: 1.99 }, "REMOVE"],
    },
    // 10 % of a round section's area: 1.5 x sqrt(0.9) = 1.423025 in, which no gauge reads exactly.
    {
      criterion: "load-block.section-wear.alberta",
      source: `${ALBERTA}: 10 % of the area`,
      inside: [{ sectionNow: 1.48 }, "KEEP"],
      edge: [{ sectionNow: 1.42303 }, "WATCH"],
      past: [{ sectionNow: 1.42302 }, "REMOVE"],
    },
    {
      criterion: "load-block.section-wear.queensland",
      source: "Queensland Guide for doggers p. 34",
      inside: [{ sectionNow: 1.45 }, "KEEP"],
      edge: [{ sectionNow: 1.35 }, "WATCH"],
      past: [{ sectionNow: 1.3499 }, "REMOVE"],
    },
    {
      criterion: "load-block.section-wear.germany",
      source: GERMANY,
      inside: [{ sectionNow: 1.48 }, "KEEP"],
      edge: [{ sectionNow: 1.425 }, "WATCH"],
      past: [{ sectionNow: 1.424 }, "REMOVE"],
    },
    {
      criterion: "load-block.section-wear.ships",
      source: SHIPS,
      inside: [{ sectionNow: 1.45 }, "KEEP"],
      edge: [{ sectionNow: 1.35 }, "WATCH"],
      past: [{ sectionNow: 1.3499 }, "REMOVE"],
    },
    {
      criterion: "load-block.twist.law",
      source: LAW,
      inside: [{ twist: 5 }, "KEEP"],
      edge: [{ twist: 10 }, "WATCH"],
      past: [{ twist: 10.1 }, "REMOVE"],
    },
    {
      criterion: "load-block.twist.standard",
      source: TABLE_12,
      inside: [{ twist: "none" }, "KEEP"],
      edge: [{ twist: 0 }, "KEEP"],
      past: [{ twist: 0.5 }, "REMOVE"],
    },
    {
      criterion: "load-block.twist.practice",
      source: PRACTICE,
      inside: [{ twist: 5 }, "KEEP"],
      edge: [{ twist: 10 }, "WATCH"],
      past: [{ twist: 10.1 }, "REMOVE"],
    },
    {
      criterion: "load-block.twist.alberta",
      source: ALBERTA,
      inside: [{ twist: 5 }, "KEEP"],
      edge: [{ twist: 10 }, "WATCH"],
      past: [{ twist: 10.1 }, "REMOVE"],
    },
    {
      criterion: "load-block.pin-wear.standard",
      source: TABLE_19,
      inside: [{ pinNow: 1.9 }, "KEEP"],
      edge: [{ pinNow: 1.8 }, "REMOVE"],
      past: [{ pinNow: 1.799 }, "REMOVE"],
    },
    {
      criterion: "load-block.pin-wear.practice",
      source: PRACTICE,
      inside: [{ pinNow: 1.9 }, "KEEP"],
      edge: [{ pinNow: 1.8 }, "WATCH"],
      past: [{ pinNow: 1.799 }, "REMOVE"],
    },
    // 6 % of 2 in is 0.12 in.
    {
      criterion: "load-block.pin-wear.ships",
      source: SHIPS,
      inside: [{ pinNow: 1.95 }, "KEEP"],
      edge: [{ pinNow: 1.88 }, "WATCH"],
      past: [{ pinNow: 1.879 }, "REMOVE"],
    },
    {
      criterion: "load-block.shell-wear.standard",
      source: TABLE_19,
      inside: [{ shellNew: 20, shellNow: 19.5 }, "KEEP"],
      edge: [{ shellNew: 20, shellNow: 18 }, "REMOVE"],
      past: [{ shellNew: 20, shellNow: 17.99 }, "REMOVE"],
    },
    {
      criterion: "load-block.shell-wear.practice",
      source: PRACTICE,
      inside: [{ shellNew: 20, shellNow: 19.5 }, "KEEP"],
      edge: [{ shellNew: 20, shellNow: 18 }, "WATCH"],
      past: [{ shellNew: 20, shellNow: 17.99 }, "REMOVE"],
    },
    // The block's allowance of 5 % holds on the whole assembly: 0.075 in of the saddle.
    {
      criterion: "load-block.nick.practice",
      source: PRACTICE,
      inside: [{ nickDepth: 0.03, nickPart: "saddle" }, "DRESS"],
      edge: [{ nickDepth: 0.075, nickPart: "saddle" }, "DRESS"],
      past: [{ nickDepth: 0.076, nickPart: "saddle" }, "REMOVE"],
    },
  ],
  [
    ...onSight("load-block", "latch", "latch", { standard: "ASME B30.10", practice: PRACTICE }),
    ...onSight("load-block", "sheave", "sheaveTrue", { standard: TABLE_19, practice: PRACTICE }),
    ...onSight("load-block", "fasteners", "fasteners", { standard: TABLE_19, practice: PRACTICE }),
    ...onSight("load-block", "free turning", "turnsFreely", { standard: TABLE_19, practice: PRACTICE }),
    ...onSight("load-block", "groove corrugation", "grooveRidged", { standard: TABLE_19, practice: PRACTICE }),
    ...onSight("load-block", "threads", "threads", { standard: TABLE_19, practice: PRACTICE }),
    ...onSight("load-block", "lock", "lock", { standard: "ASME B30.10-2005", practice: PRACTICE }),
    ...onSight("load-block", "cracks", "cracks", {
      law: LAW,
      standard: TABLE_19,
      practice: PRACTICE,
      alberta: `${ALBERTA}(d)`,
      germany: GERMANY,
      ships: SHIPS,
    }),
    ...onSight("load-block", "deformation", "deformed", { standard: TABLE_19, ships: SHIPS }),
    ...onSight("load-block", "identification", "tag", { standard: TABLE_19 }),
    ...onSight("load-block", "heat damage", "heat", { standard: TABLE_19 }),
    ...onSight("load-block", "corrosion", "corrosion", { standard: TABLE_19 }),
    ...onSight("load-block", "field weld or change", "fieldChange", { standard: TABLE_19, practice: PRACTICE }),
  ],
);

describe("a load block", () => {
  it("is held to the hook's rules in its hook and to the block's in its pin, in one row", () => {
    const verdict = judged({ ...good("load block"), throatNow: 2.2, pinNow: 1.7 });
    expect(verdict.decision).toBe("REMOVE");
    expect(verdict.reason).toContain("Throat opening");
    expect(verdict.reason).toMatch(/pin section/i);
  });
});

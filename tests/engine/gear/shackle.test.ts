import { describe, expect, it } from "vitest";
import { good, judged, kindTests, onSight, PRACTICE, tenPercent, type LimitCase } from "../helpers";

const TABLE_19 = "WAC 296-155-33900 Table 19, text of ASME B30.26-2010 26-1.8.4";

/** Sizes of 20 mm as new. "10 % reduction" takes it out, so exactly 18 mm fails; above 10 % of practice lets it pass. */
const wear = (check: string, original: "sectionNew" | "pinNew" | "eyeNew", measured: "sectionNow" | "pinNow" | "eyeNow"): readonly LimitCase[] => [
  { criterion: `shackle.${check}.standard`, source: TABLE_19, inside: [{ [original]: 20, [measured]: 19 }, "KEEP"], edge: [{ [original]: 20, [measured]: 18 }, "REMOVE"], past: [{ [original]: 20, [measured]: 17.99 }, "REMOVE"] },
  { criterion: `shackle.${check}.practice`, source: PRACTICE, inside: [{ [original]: 20, [measured]: 19 }, "KEEP"], edge: [{ [original]: 20, [measured]: 18 }, "WATCH"], past: [{ [original]: 20, [measured]: 17.99 }, "REMOVE"] },
];

const SHIPS = "ISO 16855:2013";

kindTests(
  "shackle",
  [
    ...wear("bow-wear", "sectionNew", "sectionNow"),
    ...wear("pin-wear", "pinNew", "pinNow"),
    ...wear("ear-wear", "eyeNew", "eyeNow"),
    // 20 mm one way and 30 mm the other: 5 % each, 1 mm of the first.
    { criterion: "shackle.bow-wear.practice-two-ways", source: PRACTICE, inside: [{ sectionNow: 19.8, acrossNew: 30, acrossNow: 29.9 }, "KEEP"], edge: [{ sectionNow: 19, acrossNew: 30, acrossNow: 29.9 }, "WATCH"], past: [{ sectionNow: 18.99, acrossNew: 30, acrossNow: 29.9 }, "REMOVE"] },
    // Nick in the pin, 22 mm as new: 5 % is 1.1 mm.
    { criterion: "shackle.nick.practice", source: PRACTICE, inside: [{ nickDepth: 0.5, nickPart: "pin" }, "DRESS"], edge: [{ nickDepth: 1.1, nickPart: "pin" }, "DRESS"], past: [{ nickDepth: 1.11, nickPart: "pin" }, "REMOVE"] },
    tenPercent("shackle.bow-wear.ships", SHIPS, "above", "sectionNew", "sectionNow"),
    tenPercent("shackle.ear-wear.ships", SHIPS, "above", "eyeNew", "eyeNow"),
    // 6 % of a pin of 23 mm is 1.38 mm: out below 21.62 mm.
    { criterion: "shackle.pin-wear.ships", source: SHIPS, inside: [{ pinNew: 23, pinNow: 22.5 }, "KEEP"], edge: [{ pinNew: 23, pinNow: 21.62 }, "WATCH"], past: [{ pinNew: 23, pinNow: 21.619 }, "REMOVE"] },
  ],
  [
    ...onSight("shackle", "pin seating", "pinSeated", { standard: "WAC 296-155-33905(2)(a): shoulder touching the body", practice: PRACTICE }),
    ...onSight("shackle", "cracks", "cracks", { standard: TABLE_19, practice: PRACTICE, ships: SHIPS }),
    ...onSight("shackle", "deformation", "deformed", { standard: TABLE_19, ships: SHIPS }),
    ...onSight("shackle", "identification", "tag", { standard: TABLE_19 }),
    ...onSight("shackle", "heat damage", "heat", { standard: TABLE_19 }),
    ...onSight("shackle", "corrosion", "corrosion", { standard: TABLE_19 }),
    ...onSight("shackle", "field weld or change", "fieldChange", { standard: TABLE_19, practice: PRACTICE }),
  ],
);

describe("wear of a shackle in two directions", () => {
  const shackle = good("shackle");
  it("one direction worn alone keeps the 10 % of most areas: 20 mm to 18.5 mm", () => {
    expect(judged({ ...shackle, sectionNow: 18.5, acrossNew: 30, acrossNow: 30 }, "practice").decision).toBe("KEEP");
  });
  it("the same wear with the other direction worn too is REMOVE", () => {
    expect(judged({ ...shackle, sectionNow: 18.5, acrossNew: 30, acrossNow: 29.9 }, "practice").decision).toBe("REMOVE");
  });
  it("each direction is held to the limit: 30 mm to 28.4 mm across is 5.3 %", () => {
    expect(judged({ ...shackle, sectionNow: 19.9, acrossNew: 30, acrossNow: 28.4 }, "practice").decision).toBe("REMOVE");
  });
  it("a measured cross direction without its as-new size is NO VERDICT", () => {
    const verdict = judged({ ...shackle, acrossNow: 29 });
    expect(verdict.decision).toBe("NO VERDICT");
    expect(verdict.reason).toContain("Across as-new");
  });
});

import { describe, expect, it } from "vitest";
import { good, judged, kindTests, onEveryFitting, onSight, PRACTICE, tenPercent, type LimitCase } from "../helpers";

const TABLE_19 = "WAC 296-155-33900 Table 19";
const LAW = "29 CFR 1910.179(j)(2)(iii)";
const EM = "EM 385-1-1 15.E.07";
const HOOK = "ASME B30.10-2005 10-1.2.3(b)";

/** A throat of 2 in as new: growth at which the text still keeps it, and the first reading past it. */
const throat = (basis: string, source: string, inside: number, edge: number, past: number): LimitCase => ({
  criterion: `headache-ball.throat-opening.${basis}`,
  source,
  inside: [{ throatNow: inside }, "KEEP"],
  edge: [{ throatNow: edge }, edge === 2 ? "KEEP" : "WATCH"],
  past: [{ throatNow: past }, "REMOVE"],
});
const twist = (basis: string, source: string, edge: number): LimitCase => ({
  criterion: `headache-ball.twist.${basis}`,
  source,
  inside: [{ twist: 0 }, "KEEP"],
  edge: [{ twist: edge }, edge === 0 ? "KEEP" : "WATCH"],
  past: [{ twist: edge + 0.5 }, "REMOVE"],
});
const section = (
  basis: string,
  source: string,
  inside: number,
  edge: number,
  past: number,
  word: "above" | "from",
  part?: string,
): LimitCase => ({
  criterion: `headache-ball.section-wear.${basis}`,
  source,
  ...(part === undefined ? {} : { part }),
  inside: [{ sectionNow: inside }, "KEEP"],
  edge: [{ sectionNow: edge }, word === "from" ? "REMOVE" : "WATCH"],
  past: [{ sectionNow: past }, "REMOVE"],
});

kindTests(
  "headache ball",
  [
    // 15 % of 2 in is 0.3 in; 10 % 0.2 in; 5 % 0.1 in.
    throat("law", LAW, 2.1, 2.3, 2.301),
    throat("standard", EM, 2.05, 2.1, 2.101),
    throat("strict", PRACTICE, 1.99, 2, 2.001),
    throat("alberta", "Alberta OHS Code s.309(a)", 2.1, 2.3, 2.301),
    throat("queensland", "Queensland Guide for doggers pp. 34, 38", 2.05, 2.1, 2.101),
    throat("germany", "German discard list", 2.1, 2.2, 2.201),
    twist("law", LAW, 10),
    twist("standard", HOOK, 0),
    twist("practice", PRACTICE, 10),
    twist("alberta", "Alberta OHS Code s.309(b)", 10),
    // Saddle 1.5 in as new: 10 % is 0.15 in, 5 % 0.075 in.
    section("standard", HOOK, 1.45, 1.35, 1.349, "above"),
    section("practice-high", PRACTICE, 1.45, 1.425, 1.424, "from"),
    section("practice", PRACTICE, 1.45, 1.35, 1.349, "from", "body"),
    {
      criterion: "headache-ball.section-wear.practice-two-ways",
      source: PRACTICE,
      part: "body",
      inside: [{ sectionNow: 1.48, acrossNew: 2, acrossNow: 1.99 }, "KEEP"],
      edge: [{ sectionNow: 1.425, acrossNew: 2, acrossNow: 1.99 }, "WATCH"],
      past: [{ sectionNow: 1.424, acrossNew: 2, acrossNow: 1.99 }, "REMOVE"],
    },
    // 10 % of the area of a round: 1.5 in x sqrt(0.9) = 1.42302 in.
    {
      criterion: "headache-ball.section-wear.alberta",
      source: "Alberta OHS Code s.309(c)",
      inside: [{ sectionNow: 1.48 }, "KEEP"],
      edge: [{ sectionNow: 1.4231 }, "WATCH"],
      past: [{ sectionNow: 1.423 }, "REMOVE"],
    },
    section("queensland", "Queensland Guide for doggers p. 34", 1.45, 1.35, 1.349, "above"),
    section("germany", "German discard list", 1.45, 1.425, 1.424, "above"),
    section("ships", "ISO 16855:2013", 1.45, 1.35, 1.349, "above"),
    tenPercent("headache-ball.pin-wear.standard", TABLE_19, "from", "pinNew", "pinNow"),
    tenPercent("headache-ball.pin-wear.practice", PRACTICE, "above", "pinNew", "pinNow"),
    // Grinding: 10 % of 1.5 in is 0.15 in, 5 % 0.075 in.
    {
      criterion: "headache-ball.nick.standard",
      source: "WAC 296-155-33705(7)(b), (c)",
      inside: [{ nickDepth: 0.05, nickPart: "saddle" }, "DRESS"],
      edge: [{ nickDepth: 0.15, nickPart: "saddle" }, "DRESS"],
      past: [{ nickDepth: 0.151, nickPart: "saddle" }, "REMOVE"],
    },
    {
      criterion: "headache-ball.nick.practice-high",
      source: PRACTICE,
      inside: [{ nickDepth: 0.02, nickPart: "saddle" }, "DRESS"],
      edge: [{ nickDepth: 0.075, nickPart: "saddle" }, "DRESS"],
      past: [{ nickDepth: 0.076, nickPart: "saddle" }, "REMOVE"],
    },
    {
      criterion: "headache-ball.nick.practice-moderate",
      source: PRACTICE,
      inside: [{ nickDepth: 0.05, nickPart: "body", nickNew: 1.5, nickNow: 1.5 }, "DRESS"],
      edge: [{ nickDepth: 0.15, nickPart: "body", nickNew: 1.5, nickNow: 1.5 }, "DRESS"],
      past: [{ nickDepth: 0.151, nickPart: "body", nickNew: 1.5, nickNow: 1.5 }, "REMOVE"],
    },
    {
      criterion: "headache-ball.nick.practice-low",
      source: PRACTICE,
      inside: [{ nickDepth: 0.05, nickPart: "tip", nickNew: 1.5, nickNow: 1.5 }, "KEEP"],
      edge: [{ nickDepth: 0.15, nickPart: "tip", nickNew: 1.5, nickNow: 1.5 }, "KEEP"],
      past: [{ nickDepth: 0.151, nickPart: "tip", nickNew: 1.5, nickNow: 1.5 }, "REMOVE"],
    },
  ],
  [
    ...onSight("headache-ball", "latch", "latch", { standard: "ASME B30.10-2005", practice: PRACTICE }),
    ...onSight("headache-ball", "lock", "lock", { standard: "ASME B30.10-2005", practice: PRACTICE }),
    ...onSight("headache-ball", "turning freely", "turnsFreely", { standard: TABLE_19, practice: PRACTICE }),
    ...onSight("headache-ball", "fasteners", "fasteners", { standard: TABLE_19, practice: PRACTICE }),
    ...onSight("headache-ball", "threads", "threads", { standard: TABLE_19, practice: PRACTICE }),
    ...onEveryFitting("headache-ball", TABLE_19),
  ],
);

describe("a headache ball", () => {
  it("has no sheave to be looked at: nothing recorded of one is KEEP", () => {
    for (const gear of ["headache ball", "overhaul ball", "Ball hook"])
      expect(judged({ ...good("headache ball"), gear }).decision, gear).toBe("KEEP");
  });
  it("with a saddle of 1.425 in from 1.5 in is REMOVE: from 5 % in a highly stressed part (common practice, no source)", () => {
    expect(judged({ ...good("headache ball"), sectionNow: 1.425 }).decision).toBe("REMOVE");
  });
});

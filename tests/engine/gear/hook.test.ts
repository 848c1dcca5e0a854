import { describe, expect, it } from "vitest";
import { good, judged, kindTests, onSight, PRACTICE } from "../helpers";

const LAW = "29 CFR 1910.179(j)(2)(iii), (l)(3)(iii)(a)";
const TABLE_12 = "WAC 296-155-55800 Table 12";
const TABLE_19 = "WAC 296-155-33900 Table 19";

/** Section of the place with the nick, which is not the one measured for wear. */
const atNick = { nickNew: 1.5, nickNow: 1.5 };

kindTests(
  "hook",
  [
    // Throat 2 in as new. 15 % is 0.3 in; 0.2 in is two thirds of it.
    {
      criterion: "hook.throat-opening.law",
      source: LAW,
      inside: [{ throatNow: 2.2 }, "KEEP"],
      edge: [{ throatNow: 2.3 }, "WATCH"],
      past: [{ throatNow: 2.3001 }, "REMOVE"],
    },
    // 5 % is 0.1 in, below the cap of 1/4 in; 0.05 in is half of it.
    {
      criterion: "hook.throat-opening.standard",
      source: `${TABLE_12}; EM 385-1-1 15.E.07`,
      inside: [{ throatNow: 2.05 }, "KEEP"],
      edge: [{ throatNow: 2.1 }, "WATCH"],
      past: [{ throatNow: 2.101 }, "REMOVE"],
    },
    // Nothing is allowed; 1.99 in is 0.5 % less than new, gauge noise that counts as no change.
    {
      criterion: "hook.throat-opening.strict",
      source: PRACTICE,
      inside: [{ throatNow: 1.99 }, "KEEP"],
      edge: [{ throatNow: "2.000" }, "KEEP"],
      past: [{ throatNow: 2.001 }, "REMOVE"],
    },
    // Saddle 1.5 in as new. 10 % is 0.15 in: out below 1.35 in. 0.05 in is a third.
    {
      criterion: "hook.section-wear.standard",
      source: TABLE_12,
      inside: [{ sectionNow: 1.45 }, "KEEP"],
      edge: [{ sectionNow: 1.35 }, "WATCH"],
      past: [{ sectionNow: 1.3499 }, "REMOVE"],
    },
    // The saddle is highly stressed. 5 % is 0.075 in: out below 1.425 in.
    {
      criterion: "hook.section-wear.practice-high",
      source: PRACTICE,
      inside: [{ sectionNow: 1.48 }, "KEEP"],
      edge: [{ sectionNow: 1.425 }, "REMOVE"],
      past: [{ sectionNow: 1.424 }, "REMOVE"],
    },
    // The shank is not. 10 % is 0.15 in.
    {
      criterion: "hook.section-wear.practice",
      source: PRACTICE,
      part: "shank",
      inside: [{ sectionNow: 1.45 }, "KEEP"],
      edge: [{ sectionNow: 1.35 }, "REMOVE"],
      past: [{ sectionNow: 1.3499 }, "REMOVE"],
    },
    // Two directions at the shank, 1.5 in and 2 in as new: 5 % each, 0.075 in of the first.
    {
      criterion: "hook.section-wear.practice-two-ways",
      source: PRACTICE,
      part: "shank",
      inside: [{ sectionNow: 1.48, acrossNew: 2, acrossNow: 1.99 }, "KEEP"],
      edge: [{ sectionNow: 1.425, acrossNew: 2, acrossNow: 1.99 }, "WATCH"],
      past: [{ sectionNow: 1.424, acrossNew: 2, acrossNow: 1.99 }, "REMOVE"],
    },
    // Eye 1 in as new: 10 % is 0.1 in, 5 % is 0.05 in.
    {
      criterion: "hook.eye-wear.standard",
      source: TABLE_12,
      inside: [{ eyeNew: 1, eyeNow: 0.95 }, "KEEP"],
      edge: [{ eyeNew: 1, eyeNow: 0.9 }, "WATCH"],
      past: [{ eyeNew: 1, eyeNow: 0.899 }, "REMOVE"],
    },
    {
      criterion: "hook.eye-wear.practice-high",
      source: PRACTICE,
      inside: [{ eyeNew: 1, eyeNow: 0.98 }, "KEEP"],
      edge: [{ eyeNew: 1, eyeNow: 0.95 }, "REMOVE"],
      past: [{ eyeNew: 1, eyeNow: 0.949 }, "REMOVE"],
    },
    // Load pin 20 mm as new: 10 % is 2 mm.
    {
      criterion: "hook.pin-wear.standard",
      source: `${TABLE_12}, also its load pin`,
      inside: [{ pinNew: "20 mm", pinNow: "19 mm" }, "KEEP"],
      edge: [{ pinNew: "20 mm", pinNow: "18 mm" }, "WATCH"],
      past: [{ pinNew: "20 mm", pinNow: "17.99 mm" }, "REMOVE"],
    },
    {
      criterion: "hook.pin-wear.practice",
      source: PRACTICE,
      inside: [{ pinNew: "20 mm", pinNow: "19 mm" }, "KEEP"],
      edge: [{ pinNew: "20 mm", pinNow: "18 mm" }, "REMOVE"],
      past: [{ pinNew: "20 mm", pinNow: "17.99 mm" }, "REMOVE"],
    },
    {
      criterion: "hook.twist.law",
      source: LAW,
      inside: [{ twist: 5 }, "KEEP"],
      edge: [{ twist: 10 }, "WATCH"],
      past: [{ twist: 10.1 }, "REMOVE"],
    },
    {
      criterion: "hook.twist.standard",
      source: `${TABLE_12}: any visibly apparent bend or twist`,
      inside: [{ twist: "none" }, "KEEP"],
      edge: [{ twist: 0 }, "KEEP"],
      past: [{ twist: 0.5 }, "REMOVE"],
    },
    {
      criterion: "hook.twist.practice",
      source: PRACTICE,
      inside: [{ twist: "5°" }, "KEEP"],
      edge: [{ twist: "10 deg" }, "WATCH"],
      past: [{ twist: "10.1" }, "REMOVE"],
    },
    // Nick in the saddle, 1.5 in as new and not worn: 10 % is 0.15 in, 5 % is 0.075 in.
    {
      criterion: "hook.nick.standard",
      source: "WAC 296-155-33705(7)(b), (c)",
      inside: [{ nickDepth: 0.05, nickPart: "saddle" }, "DRESS"],
      edge: [{ nickDepth: 0.15, nickPart: "saddle" }, "DRESS"],
      past: [{ nickDepth: 0.151, nickPart: "saddle" }, "REMOVE"],
    },
    {
      criterion: "hook.nick.practice-high",
      source: PRACTICE,
      inside: [{ nickDepth: 0.03, nickPart: "bowl" }, "DRESS"],
      edge: [{ nickDepth: 0.075, nickPart: "bowl" }, "DRESS"],
      past: [{ nickDepth: 0.076, nickPart: "bowl" }, "REMOVE"],
    },
    {
      criterion: "hook.nick.practice-moderate",
      source: PRACTICE,
      inside: [{ ...atNick, nickDepth: 0.05, nickPart: "body" }, "DRESS"],
      edge: [{ ...atNick, nickDepth: 0.15, nickPart: "body" }, "DRESS"],
      past: [{ ...atNick, nickDepth: 0.151, nickPart: "body" }, "REMOVE"],
    },
    {
      criterion: "hook.nick.practice-low",
      source: PRACTICE,
      inside: [{ ...atNick, nickDepth: 0.05, nickPart: "tip" }, "KEEP"],
      edge: [{ ...atNick, nickDepth: 0.15, nickPart: "tip" }, "KEEP"],
      past: [{ ...atNick, nickDepth: 0.151, nickPart: "tip" }, "REMOVE"],
    },
    // Alberta: 15 % of 2 in is 0.3 in; 10 % of a round section's area leaves 40 mm x sqrt(0.9) = 37.94733 mm, which no gauge reads exactly.
    {
      criterion: "hook.throat-opening.alberta",
      source: "Alberta OHS Code s.309(a)",
      inside: [{ throatNow: 2.2 }, "KEEP"],
      edge: [{ throatNow: 2.3 }, "WATCH"],
      past: [{ throatNow: 2.3001 }, "REMOVE"],
    },
    {
      criterion: "hook.twist.alberta",
      source: "Alberta OHS Code s.309(b)",
      inside: [{ twist: 5 }, "KEEP"],
      edge: [{ twist: 10 }, "WATCH"],
      past: [{ twist: 10.1 }, "REMOVE"],
    },
    {
      criterion: "hook.section-wear.alberta",
      source: "Alberta OHS Code s.309(c)",
      inside: [{ sectionNew: "40 mm", sectionNow: "39.5 mm" }, "KEEP"],
      edge: [{ sectionNew: "40 mm", sectionNow: "37.9474 mm" }, "WATCH"],
      past: [{ sectionNew: "40 mm", sectionNow: "37.9473 mm" }, "REMOVE"],
    },
    {
      criterion: "hook.eye-wear.alberta",
      source: "Alberta OHS Code s.309(c)",
      inside: [{ eyeNew: "40 mm", eyeNow: "39.5 mm" }, "KEEP"],
      edge: [{ eyeNew: "40 mm", eyeNow: "37.948 mm" }, "WATCH"],
      past: [{ eyeNew: "40 mm", eyeNow: "37.947 mm" }, "REMOVE"],
    },
    // Queensland: 5 % of 2 in is 0.1 in, with no cap; 10 % of 1.5 in is 0.15 in.
    {
      criterion: "hook.throat-opening.queensland",
      source: "Queensland Guide for doggers pp. 34, 38",
      inside: [{ throatNow: 2.05 }, "KEEP"],
      edge: [{ throatNow: 2.1 }, "WATCH"],
      past: [{ throatNow: 2.101 }, "REMOVE"],
    },
    {
      criterion: "hook.section-wear.queensland",
      source: "Queensland Guide for doggers p. 34",
      inside: [{ sectionNow: 1.45 }, "KEEP"],
      edge: [{ sectionNow: 1.35 }, "WATCH"],
      past: [{ sectionNow: 1.3499 }, "REMOVE"],
    },
    // Germany: 10 % of 2 in is 0.2 in; 5 % of 1.5 in is 0.075 in.
    {
      criterion: "hook.throat-opening.germany",
      source: "German discard list for load hooks, restated",
      inside: [{ throatNow: 2.1 }, "KEEP"],
      edge: [{ throatNow: 2.2 }, "WATCH"],
      past: [{ throatNow: 2.2001 }, "REMOVE"],
    },
    {
      criterion: "hook.section-wear.germany",
      source: "German discard list for load hooks, restated",
      inside: [{ sectionNow: 1.48 }, "KEEP"],
      edge: [{ sectionNow: 1.425 }, "WATCH"],
      past: [{ sectionNow: 1.424 }, "REMOVE"],
    },
    // Ships: 10 %; on pins 6 %, which is 1.38 mm of 23 mm.
    {
      criterion: "hook.section-wear.ships",
      source: "ISO 16855:2013",
      inside: [{ sectionNow: 1.45 }, "KEEP"],
      edge: [{ sectionNow: 1.35 }, "WATCH"],
      past: [{ sectionNow: 1.3499 }, "REMOVE"],
    },
    {
      criterion: "hook.eye-wear.ships",
      source: "ISO 16855:2013",
      inside: [{ eyeNew: 1, eyeNow: 0.95 }, "KEEP"],
      edge: [{ eyeNew: 1, eyeNow: 0.9 }, "WATCH"],
      past: [{ eyeNew: 1, eyeNow: 0.899 }, "REMOVE"],
    },
    {
      criterion: "hook.pin-wear.ships",
      source: "ISO 16855:2013",
      inside: [{ pinNew: "23 mm", pinNow: "22.5 mm" }, "KEEP"],
      edge: [{ pinNew: "23 mm", pinNow: "21.62 mm" }, "WATCH"],
      past: [{ pinNew: "23 mm", pinNow: "21.619 mm" }, "REMOVE"],
    },
  ],
  [
    ...onSight("hook", "cracks", "cracks", {
      law: LAW,
      standard: "ASME B30.26 26-4.8.4",
      practice: PRACTICE,
      alberta: "Alberta OHS Code s.309(d)",
      germany: "German discard list",
      ships: "ISO 16855:2013",
    }),
    ...onSight("hook", "lock", "lock", { standard: "ASME B30.10-2005 excerpt", practice: PRACTICE }),
    ...onSight("hook", "threads", "threads", { standard: TABLE_19, practice: PRACTICE }),
    ...onSight("hook", "securing means", "fasteners", { standard: TABLE_19, practice: PRACTICE }),
    ...onSight("hook", "latch", "latch", { standard: "ASME B30.10: a fitted latch that does not close the throat", practice: PRACTICE }),
    ...onSight("hook", "deformation", "deformed", {
      law: LAW,
      standard: "ASME B30.10-2005 10-1.2.3(b)(3): any visibly apparent bend or twist",
      ships: "ISO 16855:2013",
    }),
    ...onSight("hook", "identification", "tag", { standard: TABLE_19, practice: PRACTICE }),
    ...onSight("hook", "heat damage", "heat", { standard: TABLE_19 }),
    ...onSight("hook", "corrosion", "corrosion", { standard: TABLE_19 }),
    ...onSight("hook", "field weld or change", "fieldChange", { standard: "WAC 296-155-33705(8)", practice: PRACTICE }),
  ],
);

const hook = good("hook");

describe("the cap on a hook's throat opening", () => {
  const cases: [title: string, cells: object, decision: string][] = [
    // 5 % of 6 in is 0.3 in; the cap of 1/4 in takes over above 5 in.
    ["6 in to 6.25 in lies on the cap of 1/4 in", { throatNew: 6, throatNow: 6.25 }, "WATCH"],
    ["6 in to 6.26 in is past the cap although it is only 4.3 %", { throatNew: 6, throatNow: 6.26 }, "REMOVE"],
    ["5 in to 5.25 in lies on both limits together", { throatNew: 5, throatNow: 5.25 }, "WATCH"],
    // In millimetres the cap is 6 mm, not 6.35 mm; it takes over above 120 mm.
    ["150 mm to 156 mm lies on the cap of 6 mm", { unit: "mm", throatNew: 150, throatNow: 156, sectionNew: 30, sectionNow: 30 }, "WATCH"],
    [
      "150 mm to 156.1 mm is past the cap of 6 mm",
      { unit: "mm", throatNew: 150, throatNow: 156.1, sectionNow: 30, sectionNew: 30 },
      "REMOVE",
    ],
    ["6 in to 158.7 mm, 0.248 in more, is inside the cap of an inch row", { throatNew: 6, throatNow: "158.7 mm" }, "WATCH"],
    [
      "6 in to 158.7 mm in a millimetre row is past the cap of 6 mm",
      { unit: "mm", throatNew: "6 in", throatNow: "158.7 mm", sectionNew: 30, sectionNow: 30 },
      "REMOVE",
    ],
    [
      "150 mm to 156.3 mm is past the cap of a millimetre row, though inside 1/4 in",
      { throatNew: "150 mm", throatNow: "156.3 mm" },
      "REMOVE",
    ],
  ];
  for (const [title, cells, decision] of cases)
    it(`${title}: ${decision} (WAC 296-155-55800 Table 12; EM 385-1-1 15.E.07)`, () => {
      const verdict = judged({ ...hook, ...cells }, "standard");
      expect(verdict.decision, verdict.reason).toBe(decision);
    });
});

describe("a hook's latch", () => {
  for (const said of ["none required", "not required", "none fitted, none required", "None fitted; none required", "no latch required"])
    it(`"${said}" is in order`, () => {
      expect(judged({ ...hook, latch: said }).decision).toBe("KEEP");
    });
  for (const said of ["missing", "none", "none fitted", "no", "bent", "does not close", "broken"])
    it(`"${said}" does not keep the hook in service`, () => {
      expect(judged({ ...hook, latch: said }).decision).toMatch(/^(REMOVE|NO VERDICT)$/);
    });
  it("a missing latch takes the hook out", () => {
    expect(judged({ ...hook, latch: "missing" }).decision).toBe("REMOVE");
  });
});

describe("a nick in a hook", () => {
  it("no nick at all, written as 0 or none, changes nothing", () => {
    for (const nickDepth of [0, "none", "0"]) expect(judged({ ...hook, nickDepth }).decision).toBe("KEEP");
  });
  it("whose place is not named has the allowance of a highly stressed part (5 % of 1.5 in is 0.075 in)", () => {
    const verdict = judged({ ...hook, nickDepth: 0.08 });
    expect(verdict.decision).toBe("REMOVE");
    expect(verdict.reason).toContain("allowance of a highly stressed part");
  });
  it("counts together with the wear: 0.05 in worn and 0.03 in deep are 0.08 in of the 0.075 in that practice leaves", () => {
    expect(judged({ ...hook, sectionNow: 1.45, nickDepth: 0.03, nickPart: "saddle" }, "practice").decision).toBe("REMOVE");
    expect(judged({ ...hook, sectionNow: 1.455, nickDepth: 0.03, nickPart: "saddle" }, "practice").decision).toBe("DRESS");
  });
  it("at a part that a hook does not have is NO VERDICT", () => {
    const verdict = judged({ ...hook, nickDepth: 0.03, nickPart: "flange" });
    expect(verdict.decision).toBe("NO VERDICT");
    expect(verdict.reason).toContain("saddle");
  });
  it("with a crack is REMOVE: a crack is never ground out", () => {
    expect(judged({ ...hook, nickDepth: 0.03, nickPart: "tip", cracks: "hairline" }).decision).toBe("REMOVE");
  });
  it("in the body is measured by the section, not by the load pin", () => {
    const verdict = judged({ ...hook, pinNew: "20 mm", pinNow: "20 mm", nickDepth: 0.05, nickPart: "body" });
    // 20 mm less 0.05 in would be 0.737 in; the section there is not recorded.
    expect(verdict.decision, verdict.reason).toBe("EXAMINE");
    expect(verdict.reason).toContain(
      'the section there is not recorded, so what grinding would leave cannot be told; fill "Section at nick as-new" and "Section at nick now"',
    );
  });
  it("at the shank is judged by the section at the shank, never by the saddle's", () => {
    // The saddle is 1.5 in, the shank 0.8 in: 0.1 in is 6.7 % of the one and 12.5 % of the other.
    const nick = { ...hook, nickDepth: 0.1, nickPart: "shank" };
    expect(judged(nick).decision).toBe("EXAMINE");
    expect(judged({ ...nick, nickNew: 0.8, nickNow: 0.8 }).decision).toBe("REMOVE");
    expect(judged({ ...nick, nickDepth: 0.05, nickNew: 0.8, nickNow: 0.8 }).decision).toBe("DRESS");
    expect(judged({ ...nick, nickNow: 0.8 }).decision).toBe("NO VERDICT");
  });
});

describe("wear of a hook at the figure itself (common practice, no source)", () => {
  const worn = { unit: "mm", throatNew: 50, throatNow: 50, sectionNew: 40 };
  it("saddle 40 to 38 mm is 5 % of a highly stressed part: REMOVE under the default rules", () => {
    expect(judged({ ...good("hook"), ...worn, sectionNow: 38 }).decision).toBe("REMOVE");
    expect(judged({ ...good("hook"), ...worn, sectionNow: 38.01 }).decision).toBe("WATCH");
  });
  it("body 40 to 36 mm is 10 %: REMOVE under practice", () => {
    expect(judged({ ...good("hook"), ...worn, sectionNow: 36 }, "practice", "body").decision).toBe("REMOVE");
    expect(judged({ ...good("hook"), ...worn, sectionNow: 36.01 }, "practice", "body").decision).toBe("WATCH");
  });
});

describe("rust", () => {
  it.each(["light rust", "slight rust", "surface rust", "light surface rust"])("%s is in order, cleaned and lubricated", (corrosion) => {
    const verdict = judged({ ...good("hook"), corrosion });
    expect(verdict.decision).toBe("KEEP");
    expect(verdict.reason).toContain("clean and lubricate");
  });
  it.each(["pitting", "pitted", "severe rust", "heavy rust"])("%s is REMOVE", (corrosion) => {
    expect(judged({ ...good("hook"), corrosion }).decision).toBe("REMOVE");
  });
  it.each(["scaling", "light rust at the end connection", "light rust, pitted"])("%s never stays in service", (corrosion) => {
    expect(judged({ ...good("hook"), corrosion }).decision).toMatch(/^(REMOVE|NO VERDICT)$/);
  });
});

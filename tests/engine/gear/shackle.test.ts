import { describe, expect, it } from "vitest";
import { BOW_TABLE, DEE_TABLE } from "../../fixtures/shackles";
import { good, judged, kindTests, onSight, PRACTICE, tenPercent, type LimitCase } from "../helpers";

const TABLE_19 = "WAC 296-155-33900 Table 19, text of ASME B30.26-2010 26-1.8.4";

/** Sizes of 20 mm as new. "10 % reduction" takes it out, and so does "from 10 %" of practice: exactly 18 mm fails. */
const wear = (
  check: string,
  original: "sectionNew" | "pinNew" | "eyeNew",
  measured: "sectionNow" | "pinNow" | "eyeNow",
): readonly LimitCase[] => [
  {
    criterion: `shackle.${check}.standard`,
    source: TABLE_19,
    inside: [{ [original]: 20, [measured]: 19 }, "KEEP"],
    edge: [{ [original]: 20, [measured]: 18 }, "REMOVE"],
    past: [{ [original]: 20, [measured]: 17.99 }, "REMOVE"],
  },
  {
    criterion: `shackle.${check}.practice`,
    source: PRACTICE,
    inside: [{ [original]: 20, [measured]: 19 }, "KEEP"],
    edge: [{ [original]: 20, [measured]: 18 }, "REMOVE"],
    past: [{ [original]: 20, [measured]: 17.99 }, "REMOVE"],
  },
];

const SHIPS = "ISO 16855:2013";

kindTests(
  "shackle",
  [
    ...wear("bow-wear", "sectionNew", "sectionNow"),
    ...wear("pin-wear", "pinNew", "pinNow"),
    ...wear("ear-wear", "eyeNew", "eyeNow"),
    // 20 mm one way and 30 mm the other: 5 % each, 1 mm of the first.
    {
      criterion: "shackle.bow-wear.practice-two-ways",
      source: PRACTICE,
      inside: [{ sectionNow: 19.8, acrossNew: 30, acrossNow: 29.9 }, "KEEP"],
      edge: [{ sectionNow: 19, acrossNew: 30, acrossNow: 29.9 }, "WATCH"],
      past: [{ sectionNow: 18.99, acrossNew: 30, acrossNow: 29.9 }, "REMOVE"],
    },
    // Nick in the pin, 22 mm as new: 5 % is 1.1 mm.
    {
      criterion: "shackle.nick.practice",
      source: PRACTICE,
      inside: [{ nickDepth: 0.5, nickPart: "pin" }, "DRESS"],
      edge: [{ nickDepth: 1.1, nickPart: "pin" }, "DRESS"],
      past: [{ nickDepth: 1.11, nickPart: "pin" }, "REMOVE"],
    },
    tenPercent("shackle.bow-wear.ships", SHIPS, "above", "sectionNew", "sectionNow"),
    tenPercent("shackle.ear-wear.ships", SHIPS, "above", "eyeNew", "eyeNow"),
    // 6 % of a pin of 23 mm is 1.38 mm: out below 21.62 mm.
    {
      criterion: "shackle.pin-wear.ships",
      source: SHIPS,
      inside: [{ pinNew: 23, pinNow: 22.5 }, "KEEP"],
      edge: [{ pinNew: 23, pinNow: 21.62 }, "WATCH"],
      past: [{ pinNew: 23, pinNow: 21.619 }, "REMOVE"],
    },
  ],
  [
    ...onSight("shackle", "pin seating", "pinSeated", {
      standard: "WAC 296-155-33905(2)(a): shoulder touching the body",
      practice: PRACTICE,
    }),
    ...onSight("shackle", "pin threads", "threads", { standard: TABLE_19, practice: PRACTICE }),
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

describe("as-new sizes of a shackle from the published table", () => {
  const without = { ...good("shackle"), sectionNew: "", pinNew: "" };
  const at = (load: string, body: number | string, pin: number | string, more: object = {}) =>
    judged({ ...without, ratedLoad: load, asNewFrom: "dee higher tensile table", sectionNow: body, pinNow: pin, ...more });
  for (const [pattern, table] of [
    ["dee", DEE_TABLE],
    ["bow", BOW_TABLE],
  ] as const)
    for (const [load, msBody, msPin, htBody, htPin] of table)
      it(`${pattern}, ${load} t: mild steel ${String(msBody)} and ${String(msPin)} mm, higher tensile ${String(htBody)} and ${String(htPin)} mm`, () => {
        for (const [steel, body, pin] of [
          ["mild steel", msBody, msPin],
          ["higher tensile", htBody, htPin],
        ] as const) {
          const asNewFrom = `${pattern} ${steel} table`;
          expect(at(`${load} t`, body, pin, { asNewFrom }).decision).toBe("KEEP");
          // 10 % off takes it out: of the pin, then of the body.
          expect(at(`${load} t`, body, (pin * 9) / 10, { asNewFrom }).decision).toBe("REMOVE");
          expect(at(`${load} t`, (body * 9) / 10, pin, { asNewFrom }).decision).toBe("REMOVE");
        }
      });
  it("is told in the reason, as no size of its own", () => {
    expect(at("4 t", 21, 22).reason).toContain(
      "Section as-new 21 mm, Pin as-new 23 mm: not this item's own size, but that of a new one of 4 t in the dee higher tensile table [Code for Lifting Appliances in a Marine Environment Tables 8.5.1 and 8.5.2 (2022)]; it holds only for a shackle made to that table.",
    );
  });
  it("is nobody's choice but the row's: without it the as-new sizes are missing", () => {
    const verdict = at("4 t", 21, 23, { asNewFrom: "" });
    expect(verdict.decision).toBe("NO VERDICT");
    expect(verdict.reason).toContain("Section as-new");
  });
  it("never takes the place of a size that the log has", () => {
    const verdict = at("4 t", 24, 26, { sectionNew: 26, pinNew: 30 });
    expect(verdict.decision).toBe("REMOVE");
    expect(verdict.reason).not.toContain("table [");
    expect(at("4 t", 21, 23, { pinNew: 25 }).reason).toContain("Section as-new 21 mm: not this item's own size");
  });
  it("holds the pin of 23 mm to 20.7 mm by 10 %, to 21.62 mm by the 6 % of ships", () => {
    expect([20.71, 20.7].map((pin) => at("4 t", 21, pin).decision)).toEqual(["WATCH", "REMOVE"]);
    const ships = (pin: number) =>
      judged({ ...without, ratedLoad: "4 t", asNewFrom: "dee higher tensile table", sectionNow: 21, pinNow: pin }, "ships").findings.find(
        (f) => f.criterion === "shackle.pin-wear.ships",
      )?.decision;
    expect([ships(21.62), ships(21.61)]).toEqual(["WATCH", "REMOVE"]);
  });
  it("takes 4000 kg for 4 t, and no load between two rows", () => {
    expect(at("4000 kg", 21, 23).decision).toBe("KEEP");
    for (const load of ["4.5 t", "3.25 t", "4 short ton", ""]) expect(at(load, 21, 23).decision, load).toBe("NO VERDICT");
    expect(at("4.5 t", 21, 23).reason).toContain("4.5 t is not in the dee higher tensile table; a neighbouring row is never used");
    expect(at("", 21, 23).reason).toContain('needs the rated load; fill "Rated load"');
  });
  it("words that name no table are refused", () => {
    expect(at("4 t", 21, 23, { asNewFrom: "the usual" }).reason).toContain("names no table; choose dee mild steel table");
  });
  it("a larger shackle than the table's is NO VERDICT, not new", () => {
    expect(at("4 t", 26, 30).decision).toBe("NO VERDICT");
  });
});

describe("rust on a shackle", () => {
  it.each(["light rust", "slight rust", "surface rust"])("%s is in order: clean and lubricate", (corrosion) => {
    const verdict = judged({ ...good("shackle"), corrosion });
    expect([verdict.decision, verdict.notes.join(" ")]).toEqual(["KEEP", expect.stringContaining("clean and lubricate")]);
  });
  // "Excessive pitting or corrosion": WAC 296-155-33900 Table 19.
  it.each(["pitting", "scaling", "scale", "severe", "heavy rust", "rust at the end connection", "corrosion at end connection", "flaking"])(
    "%s is REMOVE",
    (corrosion) => {
      expect(judged({ ...good("shackle"), corrosion }).decision).toBe("REMOVE");
    },
  );
  it.each(["slight", "surface", "rust"])("%s alone does not say of what or how much, and is out of use", (corrosion) => {
    expect(judged({ ...good("shackle"), corrosion }).decision).toMatch(/^(REMOVE|NO VERDICT)$/);
  });
});

import { describe, expect, it } from "vitest";
import { good, judged, kindTests, onSight, PRACTICE, tenPercent } from "../helpers";

const TABLE_19 = "WAC 296-155-33900 Table 19; ASME B30.26-2004 26-4.8.4";

const SHIPS = "ISO 16855:2013";

kindTests(
  "swivel",
  [
    // 1/8 to 3/16 in by size: beyond 1/8 in (0.125 in) it is examined while the size is not known, beyond 3/16 in (0.1875 in) always.
    {
      criterion: "swivel.shoulder-clearance.practice-look",
      source: PRACTICE,
      inside: [{ clearance: 0.0625 }, "KEEP"],
      edge: [{ clearance: "1/8" }, "WATCH"],
      past: [{ clearance: 0.126 }, "EXAMINE"],
    },
    {
      criterion: "swivel.shoulder-clearance.practice-strip",
      source: PRACTICE,
      inside: [{ clearance: 0.1 }, "KEEP"],
      edge: [{ clearance: "3/16" }, "WATCH"],
      past: [{ clearance: 0.188 }, "EXAMINE"],
    },
    // Its maker's figure for the size in the log, 5/32 in: 0.15625 in.
    {
      criterion: "swivel.clearance-by-its-maker.practice",
      source: PRACTICE,
      inside: [{ clearance: 0.1, clearanceMost: "5/32" }, "KEEP"],
      edge: [{ clearance: "5/32", clearanceMost: "5/32" }, "KEEP"],
      past: [{ clearance: 0.157, clearanceMost: "5/32" }, "EXAMINE"],
    },
    // 1 in as new: Table 19 takes it out at 0.9 in; practice below 0.9 in.
    {
      criterion: "swivel.section-wear.standard",
      source: TABLE_19,
      inside: [{ sectionNow: 0.95 }, "KEEP"],
      edge: [{ sectionNow: 0.9 }, "REMOVE"],
      past: [{ sectionNow: 0.899 }, "REMOVE"],
    },
    {
      criterion: "swivel.section-wear.practice",
      source: PRACTICE,
      part: "case",
      inside: [{ sectionNow: 0.95 }, "KEEP"],
      edge: [{ sectionNow: 0.9 }, "REMOVE"],
      past: [{ sectionNow: 0.899 }, "REMOVE"],
    },
    {
      criterion: "swivel.section-wear.practice-two-ways",
      source: PRACTICE,
      part: "case",
      inside: [{ sectionNow: 0.98, acrossNew: 2, acrossNow: 1.99 }, "KEEP"],
      edge: [{ sectionNow: 0.95, acrossNew: 2, acrossNow: 1.99 }, "WATCH"],
      past: [{ sectionNow: 0.949, acrossNew: 2, acrossNow: 1.99 }, "REMOVE"],
    },
    {
      criterion: "swivel.nick.practice",
      source: PRACTICE,
      inside: [{ nickDepth: 0.02, nickPart: "eye" }, "DRESS"],
      edge: [{ nickDepth: 0.05, nickPart: "eye" }, "DRESS"],
      past: [{ nickDepth: 0.051, nickPart: "eye" }, "REMOVE"],
    },
    tenPercent("swivel.section-wear.ships", SHIPS, "above", "sectionNew", "sectionNow"),
  ],
  [
    ...onSight("swivel", "turning freely", "turnsFreely", { standard: "ASME B30.26-2004 26-4.8.4(h)", practice: PRACTICE }),
    ...onSight("swivel", "fasteners", "fasteners", { standard: "ASME B30.26-2004 26-4.8.4(i)" }),
    ...onSight("swivel", "cracks", "cracks", { standard: TABLE_19, practice: PRACTICE, ships: SHIPS }),
    ...onSight("swivel", "deformation", "deformed", { standard: TABLE_19, ships: SHIPS }),
    ...onSight("swivel", "identification", "tag", { standard: TABLE_19 }),
    ...onSight("swivel", "heat damage", "heat", { standard: TABLE_19 }),
    ...onSight("swivel", "corrosion", "corrosion", { standard: TABLE_19 }),
    ...onSight("swivel", "field weld or change", "fieldChange", { standard: TABLE_19, practice: PRACTICE }),
  ],
);

describe("the shoulder clearance of a swivel", () => {
  const swivel = good("swivel");
  it("of a new swivel, 1/32 to 1/16 in, is KEEP (common practice, no source)", () => {
    for (const clearance of ["1/32", "1/16", 0, "0.79 mm"])
      expect(judged({ ...swivel, clearance }).decision, String(clearance)).toBe("KEEP");
  });
  it("in millimetres: 3/16 in is 4.7625 mm", () => {
    for (const clearanceMost of ["", "3/16"])
      expect(judged({ ...swivel, clearance: "4.7625 mm", clearanceMost }).decision).toBe(clearanceMost === "" ? "EXAMINE" : "WATCH");
    expect(judged({ ...swivel, clearance: "4.763 mm" }).decision).toBe("EXAMINE");
  });
  it("between 1/8 and 3/16 in is EXAMINE where the size's own figure is not known, and by that figure where the log names it", () => {
    expect(judged({ ...swivel, clearance: 0.14 }).decision).toBe("EXAMINE");
    expect(judged({ ...swivel, clearance: 0.14, clearanceMost: "3/16" }).decision).toBe("KEEP");
    expect(judged({ ...swivel, clearance: 0.14, clearanceMost: "1/8" }).decision).toBe("EXAMINE");
    expect(judged({ ...swivel, clearance: 0.14, clearanceMost: "about 1/8" }).decision).toBe("NO VERDICT");
  });
  it("above 3/16 in is EXAMINE whatever the log names", () => {
    expect(judged({ ...swivel, clearance: 0.19, clearanceMost: "1/4" }).decision).toBe("EXAMINE");
  });
  it("without a unit is NO VERDICT", () => {
    expect(judged({ ...swivel, unit: "", clearance: 0.05, sectionNew: "1 in", sectionNow: "1 in" }).decision).toBe("NO VERDICT");
  });
  it("under the standard rules alone has no limit: any clearance is NO VERDICT, none is not", () => {
    expect(judged({ ...swivel, clearance: 0.05 }, "standard").decision).toBe("NO VERDICT");
    expect(judged({ ...swivel, clearance: 0 }, "standard").decision).toBe("KEEP");
  });
});

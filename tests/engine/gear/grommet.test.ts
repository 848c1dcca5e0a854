import { describe, expect, it } from "vitest";
import { good, judged, kindTests, onSight, PRACTICE, type LimitCase } from "../helpers";

const F5 = "29 CFR 1910.184(f)(5), WAC 296-24-29425(5)";
const counted = (criterion: string, construction: string, cell: "brokenLay" | "brokenStrand", count: number): LimitCase => ({
  criterion: `grommet.${criterion}`,
  source: F5,
  inside: [{ construction, [cell]: 0 }, "KEEP"],
  edge: [{ construction, [cell]: count }, "REMOVE"],
  past: [{ construction, [cell]: count + 1 }, "REMOVE"],
});

kindTests(
  "grommet",
  [
    counted("broken-wires-in-a-lay.strand-laid.law", "strand laid", "brokenLay", 10),
    counted("broken-wires-in-a-lay.strand-laid.standard", "strand laid", "brokenLay", 10),
    counted("broken-wires-in-one-strand.strand-laid.law", "strand laid", "brokenStrand", 5),
    counted("broken-wires-in-one-strand.strand-laid.standard", "strand laid", "brokenStrand", 5),
    // ASME B30.9 9-2.9.5 as restated: 20 for cable-laid slings.
    counted("broken-wires-in-a-lay.cable-laid.standard", "cable laid", "brokenLay", 20),
    // Outer wire 1.2 mm as new: a third is 0.4 mm.
    ...(["law", "standard"] as const).map((basis): LimitCase => ({
      criterion: `grommet.outer-wire-wear.${basis}`,
      source: "29 CFR 1910.184(f)(5)(ii); DOE-STD-1090-96 15.4.6.1",
      inside: [{ wireNew: "1.2 mm", wireNow: "1.1 mm" }, "KEEP"],
      edge: [{ wireNew: "1.2 mm", wireNow: "0.8 mm" }, "REMOVE"],
      past: [{ wireNew: "1.2 mm", wireNow: "0.79 mm" }, "REMOVE"],
    })),
    // 1 in body: 96 in round at least.
    ...(["law", "standard"] as const).map((basis): LimitCase => ({
      criterion: `grommet.circumference.${basis}`,
      source: "29 CFR 1910.184(f)(2); WAC 296-24-29425(2): 96 body diameters",
      inside: [{ size: "1 in", circumference: "100 in" }, "KEEP"],
      edge: [{ size: "1 in", circumference: "96 in" }, "KEEP"],
      past: [{ size: "1 in", circumference: "95.9 in" }, "REMOVE"],
    })),
  ],
  [
    ...onSight("grommet", "kinks or crushing", "kinks", { law: F5, standard: F5 }),
    ...onSight("grommet", "heat damage", "heat", { law: F5, standard: F5 }),
    ...onSight("grommet", "corrosion", "corrosion", { law: F5, standard: F5 }),
    ...onSight("grommet", "cracks", "cracks", { law: F5, standard: F5, practice: PRACTICE }),
    ...onSight("grommet", "deformation", "deformed", { law: F5, standard: F5 }),
    ...onSight("grommet", "tuck or splice", "endFittings", { standard: F5, practice: PRACTICE }),
    ...onSight("grommet", "identification tag", "tag", { law: "29 CFR 1910.184(c)(14)", standard: "ASME B30.9 9-2.9.5" }),
  ],
);

describe("the construction of a grommet", () => {
  it("that is not recorded counts as strand laid", () => {
    expect(judged({ ...good("grommet"), construction: "", brokenLay: 10 }).decision).toBe("REMOVE");
  });
  it("of rope that resists rotation is refused", () => {
    expect(judged({ ...good("grommet"), construction: "19x7" }).decision).toBe("NO VERDICT");
  });
});

import { describe, expect, it } from "vitest";
import { good, judged, kindNamed, kindTests, onSight, PRACTICE } from "../helpers";

const TABLE_25 = "WAC 296-155-55820 Table 25";
/** The paragraph itself was not read, only a letter about it. */
const I9 = "29 CFR 1910.184(i)(9), restated";

kindTests(
  "web sling",
  [
    // A band of 60 mm: 10 % is 6 mm.
    {
      criterion: "web-sling.cut-across.germany",
      source: "DGUV Information 215-320 Anhang 8: more than 10 % of the band's section",
      inside: [{ webWidth: "60 mm", cutAcross: "2 mm" }, "KEEP"],
      edge: [{ webWidth: "60 mm", cutAcross: "6 mm" }, "WATCH"],
      past: [{ webWidth: "60 mm", cutAcross: "6.1 mm" }, "REMOVE"],
    },
  ],
  [
    ...onSight("web-sling", "cuts or tears", "cuts", { law: I9, standard: TABLE_25, practice: PRACTICE }),
    ...onSight("web-sling", "stitching", "stitching", { law: I9, standard: TABLE_25 }),
    ...onSight("web-sling", "heat damage", "heat", { law: I9, standard: TABLE_25 }),
    ...onSight("web-sling", "chemical damage", "chemical", { law: I9, standard: TABLE_25 }),
    ...onSight("web-sling", "fittings", "endFittings", { law: I9, standard: "ASME B30.9 9-5.9.4, on pages that restate it" }),
    ...onSight("web-sling", "identification tag", "tag", { law: "29 CFR 1910.184(c)(14)", standard: TABLE_25 }),
    ...onSight("web-sling", "knots", "knots", { standard: "ASME B30.9 9-5.9.4, restated", practice: PRACTICE }),
    ...onSight("web-sling", "stiff or brittle areas", "brittle", { standard: "ASME B30.9 9-5.9.4, restated" }),
    ...onSight("web-sling", "field change", "fieldChange", { practice: PRACTICE }),
  ],
);

describe("a web sling", () => {
  it("any cut takes it out: no US text gives a percentage (WAC 296-155-55820 Table 25)", () => {
    for (const cuts of ["found", "small cut", "slight", "cut 5 mm at the edge", "snags"])
      expect(judged({ ...good("web sling"), cuts }).decision, cuts).toMatch(/^(REMOVE|NO VERDICT)$/);
  });
  it("without fittings keeps with the words that say so", () => {
    expect(judged({ ...good("web sling"), endFittings: "none required" }).decision).toBe("KEEP");
  });
  it("says of the federal paragraph that it is restated: only a letter on it was read", () => {
    const law = kindNamed("web sling").criteria.filter((c) => c.source.clause === "(i)(9)");
    expect(law.map((c) => c.status)).toEqual(["restated", "restated", "restated", "restated", "restated"]);
  });
});

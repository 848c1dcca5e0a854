import { describe, expect, it } from "vitest";
import { kindNamed, kindTests, onSight, PRACTICE } from "../helpers";

/** The paragraph as the bulletin restates it. */
const H5 = "29 CFR 1910.184(h)(5), restated";
const BULLETIN = "TB 43-0142 App. C";
/** Neither list names heat or chemicals: discolouration and rot are what they leave. */
const ROT = "29 CFR 1910.184(h)(5), discolouration or rot";
const LIST = "ASME B30.9, removal list of synthetic rope slings, restated";

const DGUV = "DGUV Regel 109-006 (2011) 5";

kindTests(
  "fibre rope sling",
  [
    {
      criterion: "fibre-rope-sling.broken-yarns.germany",
      source: "DGUV Regel 109-006 (2011) 5: more than 10 % of the yarns of the worst section",
      inside: [{ yarnsBroken: 5 }, "KEEP"],
      edge: [{ yarnsBroken: 10 }, "WATCH"],
      past: [{ yarnsBroken: 11 }, "REMOVE"],
    },
  ],
  [
    ...onSight("fibre-rope-sling", "abnormal wear", "powder", { law: H5, standard: BULLETIN }),
    ...onSight("fibre-rope-sling", "cuts or tears", "cuts", { law: H5, standard: BULLETIN, practice: PRACTICE }),
    ...onSight("fibre-rope-sling", "heat damage", "heat", { law: ROT, standard: LIST }),
    ...onSight("fibre-rope-sling", "chemical damage", "chemical", { law: ROT, standard: LIST }),
    ...onSight("fibre-rope-sling", "end fittings", "endFittings", { law: H5, standard: BULLETIN }),
    ...onSight("fibre-rope-sling", "uneven strands", "unevenStrands", { law: H5, standard: BULLETIN }),
    ...onSight("fibre-rope-sling", "broken strand", "strandBroken", { germany: DGUV, practice: PRACTICE }),
    ...onSight("fibre-rope-sling", "knots", "knots", { practice: PRACTICE }),
    ...onSight("fibre-rope-sling", "identification tag", "tag", { law: "29 CFR 1910.184(c)(14)", standard: "ASME B30.9, restated" }),
  ],
);

describe("a fibre-rope sling", () => {
  it("cites no list for heat or chemicals that does not name them", () => {
    const records = kindNamed("fibre rope sling").criteria.filter((c) => c.check === "heat damage" || c.check === "chemical damage");
    expect(records.map((c) => c.source.document)).not.toContain("TB 43-0142");
    for (const c of records) expect([c.id, c.status]).toEqual([c.id, "restated"]);
    for (const c of records.filter((r) => r.basis === "law")) expect(c.source.clause).toBe("(h)(5), as discolouration or rot");
  });
  it("says of the federal list that it is restated: it was read in the bulletin", () => {
    for (const c of kindNamed("fibre rope sling").criteria)
      if (c.source.clause.startsWith("(h)(5)")) expect([c.id, c.status]).toEqual([c.id, "restated"]);
  });
});

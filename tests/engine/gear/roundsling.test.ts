import { describe, expect, it } from "vitest";
import { good, judged, kindNamed, kindTests, onSight, PRACTICE } from "../helpers";

const TABLE_17 = "WAC 296-155-33825 Table 17";
/** The rest of Table 17 was cut off in the copy read. */
const FITTINGS = "ASME B30.9 9-6.9.5, restated";
/** No list that was read names the stitching of roundslings: the sister list on web slings. */
const AS_WEB = "WAC 296-155-55820 Table 25, applied to roundslings";

kindTests(
  "roundsling",
  [],
  [
    ...onSight("roundsling", "cuts or tears", "cuts", { practice: "common practice: a cut that does not show the core" }, "EXAMINE"),
    ...onSight("roundsling", "core yarns exposed or broken", "coreYarns", { standard: TABLE_17, practice: PRACTICE }),
    ...onSight("roundsling", "knots", "knots", { standard: FITTINGS, practice: PRACTICE }),
    ...onSight("roundsling", "stiff or brittle areas", "brittle", { practice: PRACTICE }),
    ...onSight("roundsling", "stitching", "stitching", { standard: AS_WEB, practice: PRACTICE }),
    ...onSight("roundsling", "heat damage", "heat", { standard: TABLE_17, practice: PRACTICE }),
    ...onSight("roundsling", "chemical damage", "chemical", { standard: TABLE_17, practice: PRACTICE }),
    ...onSight("roundsling", "fittings", "endFittings", { standard: FITTINGS, practice: PRACTICE }),
    ...onSight("roundsling", "identification tag", "tag", { standard: TABLE_17, practice: PRACTICE }),
    ...onSight("roundsling", "field change", "fieldChange", { practice: PRACTICE }),
  ],
);

describe("a roundsling", () => {
  it("with a cut that shows no core yarn is EXAMINE, with one that does REMOVE (WAC 296-155-33825 Table 17)", () => {
    expect(judged({ ...good("roundsling"), cuts: "found" }).decision).toBe("EXAMINE");
    expect(judged({ ...good("roundsling"), cuts: "found" }, "standard").decision).toBe("EXAMINE");
    expect(judged({ ...good("roundsling"), cuts: "found", coreYarns: "found" }).decision).toBe("REMOVE");
  });
  it("names the list that was read, and says of the rest that it is restated", () => {
    const standard = kindNamed("roundsling").criteria.filter((c) => c.basis === "standard");
    expect(standard.map((c) => [c.check, c.source.document, c.status])).toEqual([
      ["core yarns exposed or broken", "WAC 33825", "read"],
      ["stitching", "WAC 55820", "restated"],
      ["heat damage", "WAC 33825", "read"],
      ["chemical damage", "WAC 33825", "read"],
      ["fittings", "B30.9", "restated"],
      ["identification tag", "WAC 33825", "read"],
      ["knots", "B30.9", "restated"],
    ]);
  });
  it.each(["exposed", "visible", "showing", "core exposed"])("whose core yarns are %s is REMOVE", (coreYarns) => {
    expect(judged({ ...good("roundsling"), coreYarns }, "standard").decision).toBe("REMOVE");
  });
  it("burned by acid is out, and the reason names the table (WAC 296-155-33825 Table 17)", () => {
    expect(judged({ ...good("roundsling"), chemical: "found" }, "standard").reason).toContain("WAC 296-155-33825, Table 17");
  });
});

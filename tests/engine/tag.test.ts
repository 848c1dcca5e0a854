import { describe, expect, it } from "vitest";
import { toSerial } from "../../src/engine/numbers/calendar";
import { good, judged, type CellRecord } from "./helpers";

const link = good("link");
const day = (year: number, month: number, date: number): number => toSerial({ year, month, day: date });
const TAGGED = day(2026, 3, 10);

function decision(cells: CellRecord): string {
  return judged({ ...link, ...cells }).decision;
}

describe("a tagged-out item", () => {
  it("stays out whatever the measurements say", () => {
    for (const tagged of ["yes", "Yes", true, TAGGED, { serial: TAGGED }, "2026-03-10", "tagged", "x", "out of service", 1])
      expect(decision({ tagged }), JSON.stringify(tagged)).toBe("REMOVE");
  });
  it("is not one when the cell is blank or says no", () => {
    for (const tagged of [null, undefined, "", " ", "no", "No", "none", "-", "n/a", false, "in service"])
      expect(decision({ tagged }), JSON.stringify(tagged)).toBe("KEEP");
  });
  it("stays out without a name, without a date, with neither", () => {
    const on = day(2026, 4, 1);
    for (const release of [
      {},
      { releasedBy: "Yard rigger" },
      { releasedOn: on },
      { releasedBy: "", releasedOn: on },
      { releasedBy: "Yard rigger", releasedOn: "" },
      { releasedBy: "Yard rigger", releasedOn: "soon" },
      { releasedBy: "?", releasedOn: on },
      { releasedBy: "n/a", releasedOn: on },
    ])
      expect(decision({ tagged: TAGGED, ...release }), JSON.stringify(release)).toBe("REMOVE");
  });
  it("stays out when the name stands for nobody", () => {
    for (const releasedBy of ["none", "None", "nobody", "no one", "not released", "tbd", "TBC", "pending", "unknown", "to be done"])
      expect(decision({ tagged: TAGGED, releasedBy, releasedOn: day(2026, 4, 1) }), releasedBy).toBe("REMOVE");
  });
  it("stays out when words of refusal or of waiting stand beside the name, or no name at all", () => {
    const on = day(2026, 4, 1);
    for (const releasedBy of [
      "rejected",
      "Rejected by A Bell",
      "refused by A Bell",
      "A Bell refused",
      "not by A Bell",
      "A Bell (not released)",
      "awaiting J Doe",
      "waiting for J Doe",
      "J Doe, pending",
      "A Bell to be asked",
      "same",
      "Same as above",
      "ditto",
      "signature",
      "signed",
      "yes",
      "ok",
      "released",
      "A Bell?",
      "no release",
      "A Bell hasn't",
      "on hold, A Bell",
      "release denied A Bell",
      "A Bell subject to retest",
      "unsigned",
      "A Bell until retest",
      "qualified person",
      "never",
      "cancelled A Bell",
      "n/a A Bell",
      "see remarks",
      "see see see see see see see see see see see see see see see !",
      "12 Mar 2026",
      "released.",
      "Signed, same",
      "approved by",
      "signature missing",
      "to be confirmed by A Bell",
    ])
      for (const tagged of ["yes", TAGGED]) expect(decision({ tagged, releasedBy, releasedOn: on }), releasedBy).toBe("REMOVE");
    expect(judged({ ...link, tagged: TAGGED, releasedBy: "refused by A Bell", releasedOn: on }).reason).toContain(
      '"refused by A Bell" in "Released by" is no release by a named qualified person',
    );
    for (const releasedBy of ["A Bell", "J. Noakes", "Waite, R", "Pendle", "N Hope", "Yard rigging engineer", "Samet, A", "Will Nott"])
      expect(decision({ tagged: TAGGED, releasedBy, releasedOn: on }), releasedBy).toBe("KEEP");
  });
  it("stays out when the tag holds a month, a year or part of a date, since the release may be older", () => {
    for (const tagged of [
      "May 2026",
      "tagged 4 May",
      "2026",
      2026,
      "tagged in 2026",
      "Sept",
      "05/2026",
      "week 22",
      "4th",
      "yesterday",
      "tagged Monday",
      "last month",
    ])
      expect(decision({ tagged, releasedBy: "Yard rigger", releasedOn: day(2020, 1, 6) }), String(tagged)).toBe("REMOVE");
    expect(judged({ ...link, tagged: "May 2026", releasedBy: "Yard rigger", releasedOn: day(2026, 6, 6) }).reason).toContain(
      '"May 2026" in "Tagged out" cannot be read as a date',
    );
  });
  it("comes back from a tag without a date by a named, dated release, and the reason says that the tag has none", () => {
    for (const tagged of ["yes", "x", "tagged", "out of service", "marked, decommissioned", true, 1]) {
      const verdict = judged({ ...link, tagged, releasedBy: "Yard rigger", releasedOn: TAGGED });
      expect(verdict.decision, String(tagged)).toBe("KEEP");
      expect(verdict.reason).toContain("Was tagged out (the tag has no date); released by Yard rigger on 2026-03-10");
    }
    expect(judged({ ...link, tagged: TAGGED, releasedBy: "Yard rigger", releasedOn: TAGGED }).reason).not.toContain("no date");
  });
  it("stays out when the release is dated before the tag", () => {
    expect(decision({ tagged: TAGGED, releasedBy: "Yard rigger", releasedOn: TAGGED - 1 })).toBe("REMOVE");
  });
  it("stays out when the date of the tag cannot be read, since the release may be older", () => {
    // 4/5/26 is 4 May or 5 April.
    expect(decision({ tagged: "4/5/26", releasedBy: "Yard rigger", releasedOn: day(2026, 4, 20) })).toBe("REMOVE");
  });
  it("comes back by a release of a named person, dated on the day of the tag or later", () => {
    for (const releasedOn of [TAGGED, TAGGED + 1, "2026-04-01", { serial: TAGGED + 30 }])
      expect(decision({ tagged: TAGGED, releasedBy: "Yard rigger", releasedOn }), JSON.stringify(releasedOn)).toBe("KEEP");
    expect(decision({ tagged: "yes", releasedBy: "Yard rigger", releasedOn: TAGGED })).toBe("KEEP");
  });
  it("stays out when the release is dated after the day of judging: 2062 for 2026", () => {
    const release = { ...link, tagged: TAGGED, releasedBy: "Yard rigger" };
    const asOf = day(2026, 4, 1);
    expect(
      [asOf, asOf + 1, day(2062, 4, 1)].map(
        (releasedOn) => judged({ ...release, releasedOn }, "standard,practice", undefined, asOf).decision,
      ),
    ).toEqual(["KEEP", "REMOVE", "REMOVE"]);
    expect(judged({ ...release, releasedOn: day(2062, 4, 1) }, "standard,practice", undefined, asOf).reason).toContain(
      "dated 2062-04-01, which is later than the day of judging, 2026-04-01",
    );
  });
  it("a released item is judged by its readings again", () => {
    expect(decision({ tagged: TAGGED, releasedBy: "Yard rigger", releasedOn: TAGGED + 1, cracks: "found" })).toBe("REMOVE");
    expect(judged({ ...link, tagged: TAGGED, releasedBy: "Yard rigger", releasedOn: TAGGED + 1 }).reason).toContain(
      "released by Yard rigger on 2026-03-11",
    );
  });
  it("says what is missing, with the headings", () => {
    const { reason } = judged({ ...link, tagged: TAGGED });
    expect(reason).toContain("Tagged out on 2026-03-10");
    expect(reason).toContain("Released by");
    expect(reason).toContain("Released on");
  });
  it("of an unknown kind is out as well", () => {
    expect(judged({ gear: "contraption", tagged: "yes" }).decision).toBe("REMOVE");
  });
});

describe("an inspection dated after the day of judging", () => {
  const asOf = day(2026, 4, 1);
  const on = (cells: CellRecord) => judged({ ...link, ...cells }, "standard,practice", undefined, asOf);
  it("leaves the item without a verdict, and says which date is wrong", () => {
    expect([asOf - 1, asOf, asOf + 1, "2062-03-15"].map((inspected) => on({ inspected }).decision)).toEqual([
      "KEEP",
      "KEEP",
      "NO VERDICT",
      "NO VERDICT",
    ]);
    expect(on({ inspected: "2062-03-15" }).reason).toContain(
      'The inspection date 2062-03-15 in "Inspected" is later than the day of judging, 2026-04-01; put the date right.',
    );
  });
  it("does not clear a part whose assembly was overloaded", () => {
    expect(on({ inspected: asOf, overload: { serial: asOf - 1 } }).decision).toBe("KEEP");
    expect(on({ inspected: asOf + 1, overload: { serial: asOf - 1 } }).findings.map((f) => f.decision)).toContain("EXAMINE");
  });
  it("does not hide a removal", () => {
    expect(on({ inspected: asOf + 1, cracks: "found" }).decision).toBe("REMOVE");
  });
  it("is not told in a worksheet cell, which has no day", () => {
    expect(judged({ ...link, inspected: "2062-03-15" }).decision).toBe("KEEP");
  });
});

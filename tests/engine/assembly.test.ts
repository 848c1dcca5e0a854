import { describe, expect, it } from "vitest";
import { toSerial } from "../../src/engine/numbers/calendar";
import { DEFAULT_BASIS } from "../../src/engine/rules/rule-sets";
import { reportOn } from "../../src/engine/report/report";
import { judgeRowsOf } from "../../src/engine/ask/one-row";
import { type CellValue } from "../../src/engine/reading/cell-value";
import { type Report } from "../../src/engine/report/model";

const HEADINGS = [
  "Id",
  "Gear",
  "Unit",
  "Assembly",
  "Inspected",
  "Throat as-new",
  "Throat now",
  "Section as-new",
  "Section now",
  "Twist deg",
  "Cracks",
  "Bent or stretched",
  "Latch works",
  "Identification legible",
  "Pin as-new",
  "Pin now",
  "Pin fully seated",
];
const day = (month: number, date: number): number => toSerial({ year: 2026, month, day: date });

const hook = (id: string, assembly: string, inspected: CellValue, throatNow: CellValue = 2): CellValue[] => [
  id,
  "hook",
  "in",
  assembly,
  inspected,
  2,
  throatNow,
  1.5,
  1.5,
  0,
  "none",
  "none",
  "yes",
  "yes",
  "",
  "",
  "",
];
const shackle = (id: string, assembly: string, inspected: CellValue, bent = "none"): CellValue[] => [
  id,
  "shackle",
  "in",
  assembly,
  inspected,
  "",
  "",
  1,
  1,
  "",
  "none",
  bent,
  "",
  "yes",
  1,
  1,
  "yes",
];

function report(rows: readonly CellValue[][]): Report {
  const made = reportOn([HEADINGS, ...rows], { basis: DEFAULT_BASIS, asOf: day(6, 1) });
  if (made === null) throw new Error("No log found");
  return made;
}
const decisions = (rows: readonly CellValue[][]): Record<string, string> =>
  Object.fromEntries(report(rows).items.map((i) => [i.id, i.verdict.decision]));

describe("one part of an assembly found stretched", () => {
  it("takes the other parts out until they have been looked at", () => {
    expect(
      decisions([hook("H-1", "Set 1", day(5, 1), 2.2), shackle("S-1", "Set 1", day(5, 1)), shackle("S-2", "Set 2", day(5, 1))]),
    ).toEqual({ "H-1": "REMOVE", "S-1": "EXAMINE", "S-2": "KEEP" });
  });
  it("an inspection on the same day or before does not clear them, one on the day after does", () => {
    for (const [inspected, decision] of [
      [day(4, 30), "EXAMINE"],
      [day(5, 1), "EXAMINE"],
      [day(5, 2), "KEEP"],
      ["", "EXAMINE"],
      ["soon", "EXAMINE"],
    ] as const)
      expect(decisions([hook("H-1", "Set 1", day(5, 1), 2.2), shackle("S-1", "Set 1", inspected)])["S-1"], String(inspected)).toBe(
        decision,
      );
  });
  it("without a date on the stretched part, no inspection up to the day of judging is late enough, and none after it counts", () => {
    for (const inspected of [day(5, 1), day(6, 1), day(6, 2)])
      expect(decisions([hook("H-1", "Set 1", "", 2.2), shackle("S-1", "Set 1", inspected)])["S-1"]).toBe("EXAMINE");
  });
  it("the latest of several stretched parts counts", () => {
    const rows = [
      hook("H-1", "Set 1", day(3, 1), 2.2),
      shackle("S-1", "Set 1", day(5, 1), "found"),
      shackle("S-2", "Set 1", day(4, 1)),
      shackle("S-3", "Set 1", day(5, 2)),
    ];
    expect(decisions(rows)).toEqual({ "H-1": "REMOVE", "S-1": "REMOVE", "S-2": "EXAMINE", "S-3": "KEEP" });
  });
  it("the reason names the day and what to do", () => {
    const [, other] = report([hook("H-1", "Set 1", day(5, 1), 2.2), shackle("S-1", "Set 1", day(5, 1))]).items;
    expect(other?.verdict.reason).toContain("2026-05-01");
    expect(other?.verdict.reason).toContain("the whole assembly was overloaded");
  });
  it("a twist of a hook and a bent part are signs of overload too; wear is not", () => {
    expect(
      decisions([
        ["H-1", "hook", "in", "Set 1", day(5, 1), 2, 2, 1.5, 1.5, 3, "none", "none", "yes", "yes", "", "", ""],
        shackle("S-1", "Set 1", day(5, 1)),
      ])["S-1"],
    ).toBe("EXAMINE");
    expect(
      decisions([
        ["H-1", "hook", "in", "Set 1", day(5, 1), 2, 2, 1.5, 1.2, 0, "none", "none", "yes", "yes", "", "", ""],
        shackle("S-1", "Set 1", day(5, 1)),
      ]),
    ).toEqual({ "H-1": "REMOVE", "S-1": "KEEP" });
  });
  it("the name of an assembly is read without regard to case and spaces; no name is no assembly", () => {
    expect(decisions([hook("H-1", "SET  1", day(5, 1), 2.2), shackle("S-1", "set 1 ", day(5, 1))])["S-1"]).toBe("EXAMINE");
    expect(decisions([hook("H-1", "", day(5, 1), 2.2), shackle("S-1", "", day(5, 1))])["S-1"]).toBe("KEEP");
  });
  it("REMOVE of another part stays REMOVE", () => {
    expect(decisions([hook("H-1", "Set 1", day(5, 1), 2.2), hook("H-2", "Set 1", day(5, 1), 2.3)])).toEqual({
      "H-1": "REMOVE",
      "H-2": "REMOVE",
    });
  });
  it("a throat whose reading lies beyond the limit is a sign even where the gauge cannot settle it", () => {
    // 2.1 in is the limit itself: no growth beyond it was found, whatever the gauge.
    const withGauge = report([hook("H-1", "Set 1", day(5, 1), 2.1), shackle("S-1", "Set 1", day(5, 1))].map((row) => [...row]));
    expect(withGauge.items[1]?.verdict.decision).toBe("KEEP");
    const made = reportOn(
      [
        [...HEADINGS, "Gauge reads to"],
        [...hook("H-1", "Set 1", day(5, 1), 2.105), 0.01],
        [...shackle("S-1", "Set 1", day(5, 1)), ""],
      ],
      { basis: DEFAULT_BASIS, asOf: day(6, 1) },
    );
    expect(made?.items.map((i) => i.verdict.decision)).toEqual(["EXAMINE", "EXAMINE"]);
  });
});

describe("the same in a worksheet", () => {
  const judgeAll = (rows: CellValue[][]): string[] => judgeRowsOf([HEADINGS], rows, null).map((v) => v.decision);
  it("JUDGE knows the assembly; without a date on the stretched part nothing clears the others", () => {
    expect(
      judgeAll([hook("H-1", "Set 1", day(5, 1), 2.2), shackle("S-1", "Set 1", day(5, 1)), shackle("S-2", "Set 1", day(5, 2))]),
    ).toEqual(["REMOVE", "EXAMINE", "KEEP"]);
    expect(judgeAll([hook("H-1", "Set 1", "", 2.2), shackle("S-1", "Set 1", day(12, 31))])).toEqual(["REMOVE", "EXAMINE"]);
  });
  it("the order of the rows does not matter", () => {
    const rows = [
      hook("H-1", "Set 1", day(5, 1), 2.2),
      shackle("S-1", "Set 1", day(5, 1)),
      shackle("S-2", "Set 1", day(5, 2)),
      shackle("S-3", "Set 2", ""),
    ];
    const straight = judgeAll(rows);
    expect(judgeAll([...rows].reverse())).toEqual([...straight].reverse());
  });
});

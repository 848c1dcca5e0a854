import { describe, expect, it } from "vitest";
import { isoOf, serialOfIso, serialOfToday, showDay, showDistance } from "../../src/taskpane/shared/days";

describe("days of the workbook", () => {
  // 1 March 2026 is day 46082 in a workbook with the 1900 date system.
  it.each([
    ["2026-03-01", 46082, "1 Mar 2026"],
    ["2024-02-29", 45351, "29 Feb 2024"],
    ["1999-12-31", 36525, "31 Dec 1999"],
  ])("%s is day %i, shown as %s", (iso, serial, shown) => {
    expect(serialOfIso(iso)).toBe(serial);
    expect(isoOf(serial)).toBe(iso);
    expect(showDay(serial)).toBe(shown);
  });

  it.each(["2026-02-30", "2026-13-01", "1.3.2026", "", "0002-11-25"])("%j is no date", (text) => {
    expect(serialOfIso(text)).toBeNull();
  });

  it("takes today from the user's own calendar, just before midnight too", () => {
    expect(serialOfToday(new Date(2026, 2, 1, 23, 59))).toBe(46082);
    expect(serialOfToday(new Date(2026, 2, 1, 0, 1))).toBe(46082);
  });

  it.each([
    [46070, "12 days late"],
    [46081, "1 day late"],
    [46082, "today"],
    [46083, "in 1 day"],
    [46112, "in 30 days"],
  ])("day %i from day 46082 is %s", (serial, words) => {
    expect(showDistance(serial, 46082)).toBe(words);
  });
});

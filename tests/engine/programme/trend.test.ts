/** The trend of readings against certified and published statistics. */
import jstat from "jstat";
import { describe, expect, it } from "vitest";
import { reaches, wearRate } from "../../../src/engine/ask/one-trend";
import { type CellValue } from "../../../src/engine/reading/cell-value";
import { studentWithin } from "../../../src/engine/programme/student";
import { reachesOn, trendOf } from "../../../src/engine/programme/trend";

/**
 * NIST Statistical Reference Datasets, linear regression, "Norris" (36 observations of ozone, y against x), with its certified
 * values. Data and values typed from memory of the published file; that the certified line comes out of them to twelve
 * figures shows that they were remembered right.
 */
const NORRIS = `0.1 0.2 338.8 337.4 118.1 118.2 888.0 884.6 9.2 10.1 228.1 226.5 668.5 666.3 998.5 996.3 449.1 448.6 778.9 777.0
559.2 558.2 0.3 0.4 0.1 0.6 778.1 775.5 668.8 666.9 339.3 338.0 448.9 447.5 10.8 11.6 557.7 556.0 228.3 228.1 998.0 995.8 888.8 887.6
119.6 120.2 0.3 0.3 0.6 0.3 557.6 556.8 339.3 339.1 888.0 887.2 998.5 999.0 778.9 779.0 10.2 11.1 117.6 118.3 228.9 229.2
668.4 669.1 449.2 448.9 0.2 0.5`
  .split(/\s+/)
  .map(Number);
const NORRIS_POINTS = NORRIS.flatMap((value, at) => (at % 2 === 0 ? [{ value, day: NORRIS[at + 1]! }] : []));
const CERTIFIED = { slope: 1.00211681802045, intercept: -0.262323073774029, noise: 0.884796396144373 };

const column = (cells: readonly CellValue[]): CellValue[][] => cells.map((cell) => [cell]);
const value = (answer: { readonly ok: boolean }): number => {
  expect(answer).toMatchObject({ ok: true });
  return (answer as unknown as { readonly value: number }).value;
};

describe("the line of least squares", () => {
  it("meets the certified values of NIST's Norris data to twelve figures", () => {
    expect(NORRIS_POINTS).toHaveLength(36);
    const trend = trendOf(NORRIS_POINTS)!;
    expect(trend.slope / CERTIFIED.slope).toBeCloseTo(1, 12);
    expect(trend.at(0) / CERTIFIED.intercept).toBeCloseTo(1, 11);
    // At the mean the band is t times the certified residual deviation times the root of 1 + 1/n.
    const mean = NORRIS_POINTS.reduce((sum, p) => sum + p.day, 0) / 36;
    expect(trend.band(mean, 0.95) / (CERTIFIED.noise * studentWithin(34, 0.95) * Math.sqrt(37 / 36))).toBeCloseTo(1, 11);
  });
});

describe("Student's t", () => {
  // Critical values of the NIST/SEMATECH e-Handbook, 1.3.6.7.2 (upper 0.025 and 0.005), from memory of the printed table.
  it.each([
    [1, 0.95, 12.706],
    [2, 0.95, 4.303],
    [3, 0.95, 3.182],
    [4, 0.95, 2.776],
    [10, 0.95, 2.228],
    [30, 0.95, 2.042],
    [100, 0.95, 1.984],
    [1, 0.99, 63.657],
    [5, 0.99, 4.032],
    [20, 0.99, 2.845],
  ])("keeps %i degrees within the printed value at %f", (degrees, probability, printed) => {
    expect(Math.abs(studentWithin(degrees, probability) - printed)).toBeLessThan(0.00051);
  });
  it("agrees with a statistics library for every number of degrees up to 200", () => {
    for (let degrees = 1; degrees <= 200; degrees += 1)
      for (const probability of [0.5, 0.8, 0.9, 0.95, 0.99, 0.999])
        expect(studentWithin(degrees, probability) / jstat.studentt.inv((1 + probability) / 2, degrees)).toBeCloseTo(1, 6);
  });
});

describe("WEARRATE", () => {
  it("is the slope of a year of 365.25 days, negative when metal is lost", () => {
    // 0.04 in lost in 1461 days, which are four years.
    expect(value(wearRate(column([40000, 41461]), column(["1.5 in", "1.46 in"])))).toBeCloseTo(-0.01, 12);
    expect(value(wearRate(column([40000, 41461]), column(["38 mm", 37.2])))).toBeCloseTo(-0.2, 12);
    expect(value(wearRate(column(["2020-01-01", "2024-01-01"]), column([2, 2.04])))).toBeCloseTo(0.01, 12);
    // One inch and 25 mm: the second is given in inches.
    expect(value(wearRate(column([40000, 41461]), column(["1 in", "25 mm"])))).toBeCloseTo((25 / 25.4 - 1) / 4, 12);
  });
  it("passes over blanks, in every way in which a host hands them over", () => {
    for (const blank of [null, undefined, "", 0])
      expect(value(wearRate(column([40000, blank, 40700, 41461]), column([1.5, blank, blank, 1.46])))).toBeCloseTo(-0.01, 12);
  });
  it("refuses what is no trend", () => {
    const why = (dates: CellValue[], readings: CellValue[]): unknown => wearRate(column(dates), column(readings));
    expect(why([40000], [1.5])).toMatchObject({ ok: false, kind: "missing" });
    expect(why([40000, 40000], [1.5, 1.4])).toMatchObject({ ok: false, kind: "missing", why: /two days/ });
    expect(why([40000, null], [1.5, 1.4])).toMatchObject({ ok: false, kind: "missing" });
    expect(why([40000, 41000], [1.5, "worn"])).toMatchObject({ ok: false, kind: "unreadable" });
    expect(why([40000, "03/04/2026"], [1.5, 1.4])).toMatchObject({ ok: false, kind: "unreadable" });
    // A bare figure between inches and millimetres could be either.
    expect(why([40000, 41000, 41500], ["1.5 in", "38 mm", 1.4])).toMatchObject({ ok: false, kind: "unreadable" });
    expect(wearRate(column([40000, 41000]), column([1.5]))).toMatchObject({ ok: false, kind: "unreadable" });
  });
});

describe("REACHES", () => {
  it("follows the line where two points say nothing of the noise", () => {
    // From 1.5 to 1.46 in four years: 1.42 after four more, to the day.
    expect(value(reaches(column([40000, 41461]), column([1.5, 1.46]), 1.42, null))).toBe(42922);
    // An opening grows to its limit.
    expect(value(reaches(column([40000, 41000]), column([2, 2.05]), 2.1, null))).toBe(42000);
  });
  it("is where the prediction band meets the limit, worked out by hand", () => {
    // Days 0, 100, 200 from 40000 with 10, 9.8, 9.9: line 9.9 - 0.0005 (day - 100); residuals 0.05, -0.1, 0.05.
    const points = [
      { day: 40000, value: 10 },
      { day: 40100, value: 9.8 },
      { day: 40200, value: 9.9 },
    ];
    const noise = Math.sqrt(0.05 ** 2 + 0.1 ** 2 + 0.05 ** 2);
    const edge = (day: number): number =>
      9.9 - 0.0005 * (day - 40100) - 12.7062 * noise * Math.sqrt(1 + 1 / 3 + (day - 40100) ** 2 / 20000);
    const found = reachesOn(trendOf(points)!, 5, 0.95)!;
    expect(edge(found)).toBeLessThanOrEqual(5);
    expect(edge(found - 1)).toBeGreaterThan(5);
    // More confidence, an earlier day; less noise, a later one.
    expect(reachesOn(trendOf(points)!, 5, 0.99)!).toBeLessThanOrEqual(found);
    expect(reachesOn(trendOf(points)!, 5, 0.5)!).toBeGreaterThan(found);
  });
  it("is the last reading's day where the limit may be reached already, and never where the readings move away", () => {
    expect(value(reaches(column([40000, 41000, 41500]), column([10, 9, 8.4]), 8.4, null))).toBe(41500);
    expect(reaches(column([40000, 41000]), column([10, 10.5]), 8, null)).toMatchObject({ ok: false, kind: "missing" });
    expect(reaches(column([40000, 41000]), column([10, 10]), 8, null)).toMatchObject({ ok: false, kind: "missing" });
  });
  it("asks for a limit and a confidence that are some", () => {
    const days = column([40000, 41000]);
    const sizes = column(["10 mm", "9.9 mm"]);
    expect(reaches(days, sizes, null, null)).toMatchObject({ ok: false, kind: "missing" });
    expect(reaches(days, sizes, "soon", null)).toMatchObject({ ok: false, kind: "unreadable" });
    for (const share of [0, 1, -1, 2, "high"]) expect(reaches(days, sizes, 9, share)).toMatchObject({ ok: false, kind: "unreadable" });
    // 9.5 mm, given in inches: half a millimetre at a tenth in a thousand days.
    expect(value(reaches(days, sizes, "0.3740157480314961 in", 0.9))).toBe(45000);
  });
});

import { describe, expect, test } from "vitest";
import { readEntry } from "../../src/trial/book/entry";
import { dayOf, serialOf } from "../../src/trial/book/serial";
import { showCell } from "../../src/trial/book/show";
import { openBook } from "../setup-excel";

/** A day as its serial, counted by hand from known ones: 1 January 2000 is 36526. */
const day = (year: number, month: number, dayOfMonth: number): number => serialOf(year, month, dayOfMonth);

test("serial days: known days and the 29 February 1900 that never was", () => {
  expect([day(1900, 1, 1), day(1900, 2, 28), day(1900, 3, 1), day(2000, 1, 1), day(2026, 1, 31)]).toEqual([1, 59, 61, 36526, 46053]);
  expect(dayOf(46053)).toEqual({ year: 2026, month: 1, day: 31, weekday: 6 });
  expect(dayOf(60)).toMatchObject({ month: 2, day: 29 });
  expect(dayOf(59)).toMatchObject({ month: 2, day: 28 });
});

describe("a text put into a General cell", () => {
  const cases: [text: string, value: unknown, format?: string][] = [
    ["18.5", 18.5],
    [" 12 ", 12],
    ["-4", -4],
    ["+4", 4],
    [".5", 0.5],
    ["5.", 5],
    ["0", 0],
    ["007", 7],
    ["(5)", -5],
    ["1,234", 1234, "#,##0"],
    ["1,234.5", 1234.5, "#,##0.00"],
    ["2E10", 2e10, "0.00E+00"],
    ["1.5e-3", 0.0015, "0.00E+00"],
    ["10%", 0.1, "0%"],
    ["10.5%", 0.105, "0.00%"],
    ["$5", 5, "$#,##0_);[Red]($#,##0)"],
    ["12345678901234567", 12345678901234600],
    ["TRUE", true],
    ["false", false],
    ["1 7/8", 1.875, "# ?/?"],
    ["0 3/4", 0.75, "# ?/?"],
    ["-1 1/2", -1.5, "# ?/?"],
    ["1 15/16", 1.9375, "# ??/??"],
    ["3/4", day(2026, 3, 4), "d-mmm"],
    ["1-2", day(2026, 1, 2), "d-mmm"],
    ["7/8", day(2026, 7, 8), "d-mmm"],
    ["11/16", day(2026, 11, 16), "d-mmm"],
    ["10-12", day(2026, 10, 12), "d-mmm"],
    ["2/29", day(2029, 2, 1), "mmm-yy"],
    ["3/32", day(1932, 3, 1), "mmm-yy"],
    ["1/64", day(1964, 1, 1), "mmm-yy"],
    ["3/2024", day(2024, 3, 1), "mmm-yy"],
    ["3/4/26", day(2026, 3, 4), "m/d/yyyy"],
    ["1-2-3", day(2003, 1, 2), "m/d/yyyy"],
    ["12/31/1999", day(1999, 12, 31), "m/d/yyyy"],
    ["2026-01-31", day(2026, 1, 31), "m/d/yyyy"],
    ["31-Jan-2026", day(2026, 1, 31), "d-mmm-yy"],
    ["31 Jan", day(2026, 1, 31), "d-mmm"],
    ["January 31, 2026", day(2026, 1, 31), "d-mmm-yy"],
    ["Jan 2026", day(2026, 1, 1), "mmm-yy"],
    ["7:30", 0.3125, "h:mm"],
    ["7:30 PM", 0.8125, "h:mm AM/PM"],
    ["1/31/2026 12:00", day(2026, 1, 31) + 0.5, "m/d/yyyy h:mm"],
    // Texts that stay texts.
    ["13/16", "13/16"],
    ["15/16", "15/16"],
    ["1/128", "1/128"],
    ["13/4/2026", "13/4/2026"],
    ["31.1.2026", "31.1.2026"],
    ['1 1/2"', '1 1/2"'],
    ["10 mm", "10 mm"],
    ["1,23", "1,23"],
    ["1.2.3", "1.2.3"],
    ["S-1", "S-1"],
    ["-", "-"],
    ["n/a", "n/a"],
    ["Maybe 3", "Maybe 3"],
    [" ", " "],
  ];
  test.each(cases)("%j", (text, value, format) => {
    expect(readEntry(text, undefined, 2026)).toEqual({ value, ...(format !== undefined && { format }) });
  });

  test("a leading apostrophe is dropped and makes a text of anything", () => {
    expect(readEntry("'3/4", undefined, 2026)).toEqual({ value: "3/4" });
    expect(readEntry("'=1+1", undefined, 2026)).toEqual({ value: "=1+1" });
  });

  test("an equals sign begins a formula, an error's name is an error", () => {
    expect(readEntry("=A1*2", undefined, 2026)).toEqual({ value: null, formula: "=A1*2" });
    expect(readEntry("=", undefined, 2026)).toEqual({ value: "=" });
    expect(readEntry("#n/a", undefined, 2026)).toEqual({ value: null, error: "#N/A" });
  });
});

test("a cell formatted as text takes every text as it is", () => {
  for (const text of ["3/4", "=1+1", "10%", "007", "TRUE", "'x", "1 7/8"]) expect(readEntry(text, "@", 2026)).toEqual({ value: text });
});

test("a format that somebody chose stays: fractions make 3/4 three quarters, per cent makes 10 ten per cent", () => {
  expect(readEntry("3/4", "# ?/?", 2026)).toEqual({ value: 0.75 });
  expect(readEntry("10", "0%", 2026)).toEqual({ value: 0.1 });
  expect(readEntry("3/4", "0.00", 2026)).toEqual({ value: day(2026, 3, 4) });
});

test("through the client library: what is entered, what it shows, and text where the cell says text", async () => {
  openBook();
  await Excel.run(async (context) => {
    const sheet = context.workbook.worksheets.getItem("Sheet1");
    sheet.getRange("B1:B5").numberFormat = [["@"], ["@"], ["@"], ["@"], ["@"]];
    sheet.getRange("A1:B5").values = [
      ["3/4", "3/4"],
      ["1 7/8", "1 7/8"],
      ["=1+1", "=1+1"],
      [20, 20],
      [true, true],
    ];
    const read = sheet.getRange("A1:B5").load("values, text, numberFormat, formulas, valueTypes");
    await context.sync();
    expect(read.values[0]).toEqual([day(2026, 3, 4), "3/4"]);
    expect(read.text[0]).toEqual(["4-Mar", "3/4"]);
    expect(read.values[1]).toEqual([1.875, "1 7/8"]);
    expect(read.text[1]).toEqual(["1 7/8", "1 7/8"]);
    expect(read.formulas[2]).toEqual(["=1+1", "=1+1"]);
    expect(read.valueTypes.map((row) => row[1])).toEqual(Array(5).fill("String"));
    expect(read.values[3]).toEqual([20, "20"]);
    expect(read.values[4]).toEqual([true, "TRUE"]);
    expect(read.numberFormat[1]).toEqual(["# ?/?", "@"]);
  });
});

test("an empty text clears a cell, null leaves it, blanks read as an empty text", async () => {
  openBook();
  await Excel.run(async (context) => {
    const range = context.workbook.worksheets.getItem("Sheet1").getRange("A1:C1");
    range.values = [["a", "b", "c"]];
    await context.sync();
    range.values = [["", null, 0]];
    range.load("values, valueTypes");
    await context.sync();
    expect(range.values).toEqual([["", "b", 0]]);
    expect(range.valueTypes).toEqual([["Empty", "String", "Double"]]);
  });
});

describe("what a number shows under a format", () => {
  const cases: [value: number, format: string, shown: string][] = [
    [18.5, "General", "18.5"],
    [1 / 3, "General", "0.333333333"],
    [123456789012, "General", "1.23457E+11"],
    [0.08, "0.0%", "8.0%"],
    [1.005, "0.00", "1.01"],
    [1234.5, "#,##0.00", "1,234.50"],
    [-3, "0.0;(0.0)", "(3.0)"],
    [0, '0.0;-0.0;"none"', "none"],
    [18.5, '0.## "mm"', "18.5 mm"],
    [5, "0.##", "5."],
    [-5, "$#,##0_);[Red]($#,##0)", "($5)"],
    [0.75, "# ?/?", "3/4"],
    [1.9375, "# ??/16", "1 15/16"],
    [1.9999, "# ?/?", "2"],
    [0.000123, "0.00E+00", "1.23E-04"],
    [46053, "yyyy-mm-dd", "2026-01-31"],
    [46053, "m/d/yyyy", "1/31/2026"],
    [46053, "d-mmm-yy", "31-Jan-26"],
    [46053, "dddd d mmmm yyyy", "Saturday 31 January 2026"],
    [46053.3125, "m/d/yyyy h:mm AM/PM", "1/31/2026 7:30 AM"],
    [1.5, "[h]:mm", "36:00"],
    [46053, "[$-409]d\\ mmm\\ yyyy;@", "31 Jan 2026"],
    [-1, "m/d/yyyy", "########"],
  ];
  test.each(cases)("%f under %s", (value, format, shown) => {
    expect(showCell({ value, format })).toBe(shown);
  });
});

import { Temporal } from "temporal-polyfill";
import { describe, expect, it } from "vitest";
import { addMonths, daysInMonth, fromSerial, readDateText, showDate, toSerial } from "../../src/engine/numbers/calendar";

/** The workbook's day 0 in the 1900 system, for days from 1 March 1900 on. */
const EPOCH = Temporal.PlainDate.from("1899-12-30");

describe("serial days against an independent calendar", () => {
  it("agree on every day from 1 January 1901 to 31 December 2100", () => {
    let day = Temporal.PlainDate.from("1901-01-01");
    let serial = EPOCH.until(day, { largestUnit: "days" }).days;
    // 1 January 1901 is day 367 of the workbook.
    expect(serial).toBe(367);
    const end = Temporal.PlainDate.from("2100-12-31");
    const wrong: string[] = [];
    while (Temporal.PlainDate.compare(day, end) <= 0) {
      const here = fromSerial(serial);
      if (
        here.year !== day.year ||
        here.month !== day.month ||
        here.day !== day.day ||
        toSerial(here) !== serial ||
        showDate(serial) !== day.toString()
      )
        wrong.push(day.toString());
      day = day.add({ days: 1 });
      serial += 1;
    }
    expect(wrong).toEqual([]);
    expect(serial).toBe(EPOCH.until(end, { largestUnit: "days" }).days + 1);
  });
  it("know the days that everyone knows", () => {
    // From the workbook itself: 1 March 1900 is 61, 1 January 2000 is 36526, 31 December 9999 is 2958465.
    expect(showDate(61)).toBe("1900-03-01");
    expect(showDate(36526)).toBe("2000-01-01");
    expect(showDate(2958465)).toBe("9999-12-31");
  });
  it("a number that is no day stays a number", () => {
    for (const serial of [-5, 0, 1e15, 1e300, Number.NaN, Number.POSITIVE_INFINITY]) expect(showDate(serial)).toBe(String(serial));
  });
  it("know the leap years", () => {
    for (const [year, days] of [
      [1900, 28],
      [2000, 29],
      [2024, 29],
      [2025, 28],
      [2100, 28],
    ] as const)
      expect(daysInMonth(year, 2)).toBe(days);
  });
});

describe("calendar months", () => {
  it("agree with an independent calendar that keeps the month's end", () => {
    const wrong: string[] = [];
    for (let serial = toSerial({ year: 2023, month: 11, day: 1 }); serial <= toSerial({ year: 2029, month: 3, day: 31 }); serial += 1)
      for (const months of [1, 2, 3, 6, 11, 12]) {
        const expected = EPOCH.add({ days: serial }).add({ months }, { overflow: "constrain" }).toString();
        if (showDate(addMonths(serial, months)) !== expected) wrong.push(`${showDate(serial)} + ${String(months)}`);
      }
    expect(wrong).toEqual([]);
  });
});

describe("a date as text", () => {
  it("reads every day of a year in the forms that name the month", () => {
    const names = [
      "January",
      "February",
      "March",
      "April",
      "May",
      "June",
      "July",
      "August",
      "September",
      "October",
      "November",
      "December",
    ];
    for (let serial = toSerial({ year: 2024, month: 1, day: 1 }); serial <= toSerial({ year: 2024, month: 12, day: 31 }); serial += 1) {
      const { year, month, day } = fromSerial(serial);
      const name = names[month - 1] ?? "";
      for (const text of [
        showDate(serial),
        `${String(day)} ${name} ${String(year)}`,
        `${String(day)}-${name.slice(0, 3)}-24`,
        `${name} ${String(day)}, ${String(year)}`,
      ])
        expect(readDateText(text), text).toBe(serial);
    }
  });
  it("refuses a day and month that can be read both ways, and only those", () => {
    for (let first = 1; first <= 31; first += 1)
      for (let second = 1; second <= 31; second += 1) {
        const read = readDateText(`${String(first)}/${String(second)}/2024`);
        const clear = first === second || first <= 12 !== second <= 12;
        if (first <= 12 && second <= 12 && first !== second) expect(read).toMatchObject({ why: expect.stringContaining("both ways") });
        else if (clear && first > 12 && second <= 12 && first <= daysInMonth(2024, second))
          expect(read).toBe(toSerial({ year: 2024, month: second, day: first }));
        else if (clear && second > 12 && first <= 12 && second <= daysInMonth(2024, first))
          expect(read).toBe(toSerial({ year: 2024, month: first, day: second }));
      }
  });
});

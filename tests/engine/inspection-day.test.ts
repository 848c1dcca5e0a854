/** What stands under Inspected and is no day: what tells of one lets the date be missing, all else is asked about. Common practice, no source. */
import { describe, expect, it } from "vitest";
import { GOOD, judged } from "./helpers";

const decision = (inspected: string): string => judged({ ...GOOD["hook"], inspected }).decision;

describe("words in the place of the inspection's day", () => {
  it.each([
    "yes",
    "Y",
    "done",
    "ok",
    "n/a",
    "-",
    "2025",
    "March 2026",
    "Mar-26",
    "03/2026",
    "Q3 2025",
    "summer 2024",
    "week 12 2026",
    "this month",
    "last year",
    "last spring",
    "12 Mar 2026 by JT",
    "inspected",
    "checked 2026",
  ])('"%s" tells that it was inspected, and leaves its day to be filled', (text) => {
    expect(decision(text)).toBe("KEEP");
  });
  it.each([
    "no",
    "none",
    "not inspected",
    "never",
    "due 2026",
    "next inspection 2026",
    "overdue since 2024",
    "missed 2025",
    "skipped 2025",
    "crack seen 2025",
    "refused in March",
    "could not reach it 3/26",
    "2026?",
    "out of date 2024",
    "lapsed 2023",
    "waiting for 2026",
  ])('"%s" may say that it was not, and asks', (text) => {
    expect(decision(text)).toBe("NO VERDICT");
  });
});

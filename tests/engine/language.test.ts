/** A log in another language: a second table of words, and nothing else of the engine changes. */
import { describe, expect, it } from "vitest";
import { reportOn } from "../../src/engine/report/report";
import { findLog, itemRows } from "../../src/engine/log/find-log";
import { judgeItems } from "../../src/engine/report/judge-items";
import { type CellValue } from "../../src/engine/reading/cell-value";
import { DEFAULT_BASIS } from "../../src/engine/rules/rule-sets";
import { GERMAN } from "../fixtures/german";

const GRID: CellValue[][] = [
  [
    "Ident-Nr.",
    "Art",
    "Maulweite neu (mm)",
    "Maulweite jetzt (mm)",
    "Hakengrund neu (mm)",
    "Hakengrund gemessen (mm)",
    "Verdrehung (Grad)",
    "Risse",
    "Sicherung vorhanden",
    "Kennzeichnung lesbar",
    "Geprüft am",
    "Lieferant",
  ],
  ["H-1", "Lasthaken", "47,6", "47,9", "32,0", "31,8", 0, "keine", "ja", "ja", "2026-03-12", "Werk Nord"],
  ["H-2", "Lasthaken", "47,6", "50,4", "32,0", "31,8", 0, "keine", "ja", "ja", "2026-03-12", ""],
  ["H-3", "Lasthaken", "47,6", "47,9", "32,0", "31,8", 0, "Riss", "ja", "ja", "2026-03-12", ""],
  ["H-4", "Lasthaken", "47,6", "47,9", "32,0", "31,8", 0, "keine", "nein", "ja", "2026-03-12", ""],
  ["H-5", "Lasthaken", "47,6", "", "32,0", "31,8", 0, "keine", "ja", "ja", "2026-03-12", ""],
  ["H-6", "Lasthaken", "1,875", "1,9", "32,0", "31,8", 0, "keine", "ja", "ja", "2026-03-12", ""],
];

describe("a German log", () => {
  const found = findLog(GRID, {}, { language: GERMAN });
  if (found === null) throw new Error("No log found");
  it("is read by its table: headings, kinds, words and decimal commas", () => {
    expect(found.headings.matches.map((m) => m.field ?? m.state)).toEqual([
      "id",
      "gear",
      "throatNew",
      "throatNow",
      "sectionNew",
      "sectionNow",
      "twist",
      "cracks",
      "latch",
      "tag",
      "inspected",
      "not about condition",
    ]);
    expect(itemRows(GRID, found).items[0]?.cells.get("throatNow")).toBe("47.9");
  });
  it("is judged as the same log in English", () => {
    // 50.4 of 47.6 mm is 5.9 %, above 5 %; 1,875 is 1.875 where commas are decimal signs, and 1.9 is 1.3 % more.
    const { items } = judgeItems(GRID, found, { basis: DEFAULT_BASIS, asOf: 46174 });
    expect(items.map((item) => item.verdict.decision)).toEqual(["KEEP", "REMOVE", "REMOVE", "REMOVE", "NO VERDICT", "KEEP"]);
  });
  it("without the table is no log, so nothing of it is guessed", () => {
    expect(reportOn(GRID, { basis: DEFAULT_BASIS, asOf: 46174 })).toBeNull();
  });
});

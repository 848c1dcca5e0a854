import { describe, expect, it } from "vitest";
import { DECISIONS, type Decision } from "../../src/engine/decision";
import { judgeHookup } from "../../src/engine/lift/judge-lift";
import { reportOn } from "../../src/engine/report/report";
import { type CellValue } from "../../src/engine/reading/cell-value";
import { type DueState } from "../../src/engine/due/intervals";
import { type ItemResult } from "../../src/engine/report/model";
import { actionOf, beforeUse, lateAndOut, serviceNote, standsIdle } from "../../src/engine/report/fit-for-use";
import { item, TODAY } from "./sample";

const LATE = "Overdue: inspect it before it is used again.";
const UNDATED = "No date of its last inspection can be used: inspect it, or fill the date, before it is used.";
const of = (decision: Decision, dueState: DueState): ItemResult =>
  item(1, { id: "TP-1", decision, dueState, nextDue: dueState === "NO DATE" ? null : TODAY - 1 });

/** A shackle without readings, as the engine reads its dates. */
const read = (service: CellValue, inspected: CellValue): ItemResult => {
  const log = reportOn(
    [
      ["Id", "Gear", "Service", "Inspected"],
      ["TP-1", "shackle", service, inspected],
    ],
    { basis: ["standard"], asOf: TODAY },
  );
  return log!.items[0]!;
};
/** The same item, as if its readings were in order. */
const kept = (one: ItemResult): ItemResult => ({ ...one, verdict: { ...one.verdict, decision: "KEEP" } });

describe("before an item is used", () => {
  it.each(["KEEP", "WATCH", "DRESS"] as const)("%s gear that is late or undated is inspected first, never kept in service", (decision) => {
    expect(beforeUse(of(decision, "OVERDUE"))).toBe(LATE);
    expect(beforeUse(of(decision, "NO DATE"))).toBe(UNDATED);
    for (const state of ["OVERDUE", "NO DATE"] as const) expect(actionOf(of(decision, state))).not.toMatch(/keep in service/i);
  });

  it("gear that is tagged out stays out, and is not told to be tagged again", () => {
    const tagged = { ...of("REMOVE", "OVERDUE"), tagged: true };
    expect(actionOf(tagged)).toBe("Stays out of service; only a qualified person may bring it back.");
  });

  it("gear to be ground keeps that line behind it", () => {
    expect(actionOf(of("DRESS", "OVERDUE"))).toMatch(/^Overdue: .* A trained person grinds it out/);
  });

  it("gear that is out of use already, or in date, keeps its decision's line", () => {
    for (const decision of ["REMOVE", "EXAMINE", "NO VERDICT"] as const)
      expect([beforeUse(of(decision, "OVERDUE")), beforeUse(of(decision, "NO DATE"))]).toEqual(["", ""]);
    for (const decision of DECISIONS) for (const state of ["DUE SOON", "CURRENT"] as const) expect(beforeUse(of(decision, state))).toBe("");
    expect(actionOf(of("KEEP", "CURRENT"))).toBe("Keep in service.");
  });

  it("says the service where that is what leaves the item without a date", () => {
    expect(beforeUse(kept(read("normal", null)))).toBe(UNDATED);
    expect(beforeUse(kept(read("normal", "last spring")))).toBe(UNDATED);
    expect(beforeUse(kept(read("wet", { serial: TODAY - 10 })))).toBe(
      "The day of its next inspection is not known: inspect it, or put the service right, before it is used.",
    );
  });
});

describe("gear that a lift refuses", () => {
  const shackle = read("normal", { serial: TODAY - 10 });
  it.each([
    ["", { ...shackle, nextDue: TODAY + 1 }],
    ["Due today", { ...shackle, nextDue: TODAY }],
    ["Overdue", { ...shackle, nextDue: TODAY - 1 }],
    ["No date", { ...shackle, nextDue: null }],
    ["Tagged out", { ...shackle, nextDue: null, tagged: true }],
  ] as const)("is told in a word or two: %j", (word, one) => {
    expect(standsIdle(one, TODAY)).toBe(word);
    // The lift itself says the same.
    const { refusals } = judgeHookup({
      items: [{ item: kept(one), place: "top" }],
      load: "",
      legs: "",
      angle: "",
      angleFrom: "",
      hitch: "",
      chokeAngle: "",
      temperature: "",
      temperatureUnit: "",
      grade: "",
      sideAngles: {},
      strict: false,
      asOf: TODAY,
    });
    const said = {
      "": /^$/,
      "Due today": /due for inspection today/,
      Overdue: /is OVERDUE/,
      "No date": /has no date for its next/,
      "Tagged out": /is tagged out/,
    }[word];
    expect(refusals.filter((sentence) => /tagged out|inspection/.test(sentence)).join()).toMatch(said);
  });
});

describe("late items", () => {
  it("that are REMOVE or tagged out are out anyway", () => {
    expect(
      lateAndOut([
        of("REMOVE", "OVERDUE"),
        of("EXAMINE", "OVERDUE"),
        of("KEEP", "OVERDUE"),
        of("REMOVE", "CURRENT"),
        { ...of("KEEP", "OVERDUE"), tagged: true },
      ]),
    ).toBe(2);
  });
});

describe("service that is not recorded", () => {
  it("is said once, with the number of dates that rest on it", () => {
    const blank = read(null, { serial: TODAY - 10 });
    expect(serviceNote([])).toBe("");
    expect(serviceNote([read("normal", { serial: TODAY - 10 }), read(null, null)])).toBe("");
    expect(serviceNote([blank])).toBe("Service is not recorded for 1 item: its date is counted as in normal service and may be too late.");
    expect(serviceNote([blank, blank])).toBe(
      "Service is not recorded for 2 items: their dates are counted as in normal service and may be too late.",
    );
  });
});

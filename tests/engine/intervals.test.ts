import { Temporal } from "temporal-polyfill";
import { describe, expect, it } from "vitest";
import { BASIS_IDS, type BasisId, DEFAULT_BASIS } from "../../src/engine/rules/rule-sets";
import { INTERVAL_CRITERIA } from "../../src/engine/due/interval-criteria";
import { GEAR } from "../../src/engine/gear/index";
import { SOURCES } from "../../src/engine/rules/documents";
import { INTERVAL_ROWS } from "../fixtures/intervals";
import { readDateText, showDate } from "../../src/engine/numbers/calendar";
import { dueOf } from "../../src/engine/due/next-due";
import { reportOn } from "../../src/engine/report/report";
import { dueState, intervalOf, INTERVALS, monthsOf, nextDue } from "../../src/engine/due/intervals";

const serial = (text: string): number => {
  const day = readDateText(text);
  if (typeof day !== "number") throw new Error(day.why);
  return day;
};

describe("months between inspections", () => {
  const cases: [service: string, months: number][] = [
    // WAC 296-155-55800 Table 12: normal one year, severe one quarter.
    ["normal", 12],
    ["Normal", 12],
    ["normal service", 12],
    ["NORMAL DUTY", 12],
    ["severe", 3],
    // DOE-STD-1090-96 s.14.2.5.3: heavy semi-annual. WAC 296-24-24013(2)(b): idle a month or more.
    ["heavy", 6],
    ["idle", 1],
    ["monthly", 1],
    ["quarterly", 3],
    ["half yearly", 6],
    ["half-yearly", 6],
    ["semi-annual", 6],
    ["yearly", 12],
    ["annual", 12],
    ["annually", 12],
    ["6 monthly", 6],
    ["6-monthly", 6],
    ["6 months", 6],
    ["every 6 months", 6],
    ["3 mo", 3],
    ["12 months", 12],
    ["1 month", 1],
    ["special 6 monthly", 6],
    ["special, 2 months", 2],
    ["special,2 months", 2],
    ["6months", 6],
  ];
  for (const [service, months] of cases)
    it(`"${service}" is ${String(months)}`, () => {
      expect(monthsOf(service)).toBe(months);
    });
  for (const service of ["", "special", "13 months", "24 months", "0 months", "weekly", "often", "6", "normal?"])
    it(`"${service}" names none, and says why`, () => {
      expect(monthsOf(service)).toMatchObject({ why: expect.stringMatching(/\w/) });
    });
  for (const service of ["about 6 months", "6 months or so", "6 service months", "6 monthly or severe"])
    it(`"${service}" is more than an interval, and names none`, () => {
      expect(monthsOf(service)).toMatchObject({ why: expect.stringContaining("is no service class") });
    });
  it("says that a service is missing, and whose word special service waits for", () => {
    expect(monthsOf(" ")).toMatchObject({ why: expect.stringContaining("the service is missing") });
    for (const service of ["special", "special as advised"])
      expect(monthsOf(service)).toMatchObject({ why: expect.stringContaining("a qualified person sets") });
    expect(monthsOf("not special")).toMatchObject({ why: expect.stringContaining("is no service class") });
  });
  it("no interval is longer than a year (ASME B30.26: never more than one year)", () => {
    for (const { months } of INTERVALS) expect(months).toBeLessThanOrEqual(12);
  });
});

describe("the next inspection", () => {
  const cases: [last: string, months: number, next: string][] = [
    ["2026-01-31", 1, "2026-02-28"],
    ["2024-01-31", 1, "2024-02-29"],
    ["2024-02-29", 12, "2025-02-28"],
    ["2026-03-31", 3, "2026-06-30"],
    ["2026-08-31", 6, "2027-02-28"],
    ["2026-11-30", 3, "2027-02-28"],
    ["2026-12-31", 12, "2027-12-31"],
    ["2026-02-28", 12, "2027-02-28"],
    ["2026-05-15", 12, "2027-05-15"],
  ];
  for (const [last, months, next] of cases)
    it(`${last} and ${String(months)} months is ${next}, as an independent calendar says`, () => {
      expect(Temporal.PlainDate.from(last).add({ months }).toString()).toBe(next);
      expect(showDate(nextDue(serial(last), months))).toBe(next);
    });
});

describe("the state of a due date", () => {
  const today = serial("2026-06-01");
  const cases: [due: number | null, lead: number | undefined, state: string][] = [
    [today - 1, undefined, "OVERDUE"],
    [today, undefined, "DUE SOON"],
    [today + 30, undefined, "DUE SOON"],
    [today + 31, undefined, "CURRENT"],
    [today, 0, "DUE SOON"],
    [today + 1, 0, "CURRENT"],
    [today + 60, 60, "DUE SOON"],
    [today + 61, 60, "CURRENT"],
    [null, undefined, "NO DATE"],
  ];
  for (const [due, lead, state] of cases)
    it(`${due === null ? "no date" : `${String(due - today)} days ahead`}, lead ${String(lead ?? "30 (default)")}: ${state}`, () => {
      expect(lead === undefined ? dueState(due, today) : dueState(due, today, lead)).toBe(state);
    });
});

const asked = { usedOn: "", service: "normal", gearText: "", bases: new Set<BasisId>(["standard", "practice"]) };
const monthsFor = (kind: string, more: Partial<typeof asked> = {}): unknown => {
  const interval = intervalOf({ ...asked, kind, gearText: kind, ...more });
  return "why" in interval ? interval.why : interval.months;
};

describe("intervals are criteria: kind, use, service, rule set", () => {
  it.each(INTERVAL_ROWS)(
    '$gear used on "$usedOn", $service, $basis: $months months ($source)',
    ({ gear, usedOn = "", service, basis, months }) => {
      const interval = intervalOf({ kind: gear, gearText: gear, usedOn, service, bases: new Set([basis as BasisId]) });
      expect(interval).toMatchObject({ months });
      expect("criterion" in interval && interval.criterion?.basis).toBe(basis);
    },
  );
  it("the strictest in force decides and is named: a crane's rope monthly, not the year of normal service", () => {
    const interval = intervalOf({ ...asked, kind: "running rope", gearText: "crane rope" });
    expect(interval).toMatchObject({ months: 1, words: "every month [standard: WAC 296-24-24013 (1) (2016)]" });
  });
  it("where the use is blank and the name does not tell, the stricter counts; loose gear is told apart", () => {
    const law = { bases: new Set<BasisId>(["law"]) };
    expect(monthsFor("hook", law)).toBe(1);
    expect(monthsFor("hook", { ...law, usedOn: "no idea" })).toBe(1);
    expect(monthsFor("hook", { ...law, usedOn: "loose" })).toBe(12);
    expect(monthsFor("hook", { ...law, usedOn: "Sling" })).toBe(12);
    expect(monthsFor("hook", { ...law, gearText: "crane hook" })).toBe(1);
    expect(monthsFor("hook", { ...law, gearText: "sling hook" })).toBe(12);
    expect(monthsFor("hook", { ...law, gearText: "crane hook", usedOn: "loose" })).toBe(12);
    expect(monthsFor("hook", { ...law, usedOn: "crane or loose" })).toBe(1);
    // Loose gear is examined every 6 months, a crane's part every 12 (SR 1999/304 reg 9(3)(a)): which of them is not told.
    expect(monthsFor("hook", { bases: new Set<BasisId>(["uk"]), usedOn: "crane or loose" })).toBe(6);
  });
  it("an interval of the log's own, or of a written scheme, may only shorten", () => {
    expect(monthsFor("running rope", { service: "12 months", usedOn: "crane" })).toBe(1);
    expect(intervalOf({ ...asked, kind: "running rope", gearText: "crane rope", service: "6 monthly" })).toMatchObject({
      words: "every month, not every 6 months as the log says [standard: WAC 296-24-24013 (1) (2016)]",
    });
    expect(intervalOf({ ...asked, kind: "shackle", gearText: "shackle", service: "6 monthly" })).toMatchObject({
      months: 6,
      criterion: null,
      words: "every 6 months as the log says",
    });
    expect(monthsFor("shackle", { service: "yearly", bases: new Set<BasisId>(["uk"]) })).toBe(6);
  });
  it("of equal intervals the one for the service is named, else the first rule set's", () => {
    const rope = { ...asked, kind: "running rope", gearText: "crane rope", usedOn: "crane" };
    expect(intervalOf({ ...rope, service: "idle" })).toMatchObject({ words: "every month [standard: WAC 296-24-24013 (2)(b) (2016)]" });
    expect(intervalOf({ ...rope, bases: new Set<BasisId>(["law", "standard"]) })).toMatchObject({
      criterion: { id: "running-rope.interval.law.crane-hoist" },
    });
  });
  it("an interval of the log's own that is no longer than the rule's is not spoken against", () => {
    expect(intervalOf({ ...asked, kind: "running rope", gearText: "crane rope", service: "monthly" })).toMatchObject({
      words: "every month [standard: WAC 296-24-24013 (1) (2016)]",
    });
  });
  it("more rule sets never lengthen an interval", () => {
    for (const { kind } of INTERVAL_CRITERIA)
      for (const service of ["normal", "heavy", "severe", "idle", "people", "6 monthly"])
        for (const usedOn of ["", "crane", "loose"])
          for (const basis of BASIS_IDS) {
            const alone = Number(monthsFor(kind, { service, usedOn }));
            const more = Number(monthsFor(kind, { service, usedOn, bases: new Set<BasisId>(["standard", "practice", basis]) }));
            expect(more, `${kind} ${service} ${basis}`).toBeLessThanOrEqual(alone);
          }
  });
  it("every criterion names a gear kind, a document and a day, and has an id of its own", () => {
    const ids = INTERVAL_CRITERIA.map((c) => c.id);
    expect(ids.filter((id, at) => ids.indexOf(id) !== at)).toEqual([]);
    for (const c of INTERVAL_CRITERIA) {
      expect(GEAR.map((kind) => kind.id)).toContain(c.kind);
      expect(Object.keys(SOURCES)).toContain(c.source.document);
      expect(c.checked).toMatch(/^20\d\d-\d\d-\d\d$/);
      if (c.basis === "law") expect(c.source.document).toMatch(/^CFR/);
      else if (c.basis === "standard") expect(c.source.document).not.toMatch(/^CFR/);
    }
  });
  it("no gear kind is without an interval by some text", () => {
    const silent = GEAR.filter((kind) => INTERVAL_CRITERIA.every((c) => c.kind !== kind.id)).map((kind) => kind.id);
    expect(silent).toEqual([]);
  });
});

describe("the due date of a row", () => {
  const link = { kind: "link", gearText: "link", bases: new Set<BasisId>(["standard", "practice"]) };
  const today = serial("2026-06-01");
  it("a service that is not recorded counts as normal, and says so", () => {
    expect(dueOf(new Map([["inspected", serial("2026-01-31")]]), today, link)).toEqual({
      day: serial("2027-01-31"),
      note: "every 12 months [standard: ASME B30.26 26-x.8.3 (2010 excerpt)]; service not recorded, counted as normal",
      serviceAssumed: true,
    });
  });
  it("a service that is recorded is not called assumed", () => {
    const cells = new Map<"inspected" | "service", string | number>([
      ["inspected", serial("2026-01-31")],
      ["service", "normal"],
    ]);
    expect(dueOf(cells, today, link)).toEqual({
      day: serial("2027-01-31"),
      note: "every 12 months [standard: ASME B30.26 26-x.8.3 (2010 excerpt)]",
    });
  });
  it("without a last inspection, or with one that cannot be read, there is none and a reason", () => {
    expect(dueOf(new Map([["service", "normal"]]), today, link)).toEqual({ day: null, note: "no date of the last inspection" });
    expect(
      dueOf(
        new Map<"inspected" | "service", string>([
          ["inspected", "3/4/2026"],
          ["service", "normal"],
        ]),
        today,
        link,
      ),
    ).toMatchObject({ day: null, note: expect.stringContaining("both ways") });
    expect(
      dueOf(
        new Map<"inspected" | "service", string | number>([
          ["inspected", 46000],
          ["service", "sometimes"],
        ]),
        today,
        link,
      ),
    ).toMatchObject({ day: null, note: expect.stringContaining("sometimes") });
  });
  it("an inspection dated after the day of judging sets no next date: 2062 for 2026", () => {
    expect(dueOf(new Map([["inspected", today]]), today, link).day).not.toBeNull();
    expect(dueOf(new Map([["inspected", today + 1]]), today, link)).toMatchObject({
      day: null,
      note: expect.stringContaining("later than the day of judging"),
    });
    expect(dueOf(new Map([["inspected", serial("2062-03-15")]]), today, link).day).toBeNull();
  });
  it("a report counts the states", () => {
    const report = reportOn(
      [
        ["Id", "Gear", "Service", "Inspected"],
        ["L-1", "link", "normal", serial("2025-05-31")],
        ["L-2", "link", "severe", serial("2026-03-15")],
        ["L-3", "link", "normal", serial("2026-03-15")],
        ["L-4", "link", "special", serial("2026-03-15")],
        ["L-5", "what", "normal", serial("2026-03-15")],
      ],
      { basis: DEFAULT_BASIS, asOf: serial("2026-06-01") },
    );
    expect(report?.items.map((i) => i.dueState)).toEqual(["OVERDUE", "DUE SOON", "CURRENT", "NO DATE", "NO DATE"]);
    expect(report?.due).toEqual({ OVERDUE: 1, "DUE SOON": 1, CURRENT: 1, "NO DATE": 2 });
  });
});

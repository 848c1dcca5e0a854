/** What the history says of an item: past days as recorded, wear, tags. */
import { createHash } from "node:crypto";
import { describe, expect, it } from "vitest";
import { historyRow, type HistoryRow, VERDICT } from "../../../src/engine/programme/history";
import { trendsOf, verdictOn } from "../../../src/engine/programme/item-history";
import { planTag, RELEASE, TAG, DISPOSAL, type TagRequest } from "../../../src/engine/programme/tag";
import { checkSeals } from "../../../src/engine/programme/seals";
import { matchHeadings } from "../../../src/engine/log/match-headings";
import { type FieldId } from "../../../src/engine/columns";
import { type CellValue } from "../../../src/engine/reading/cell-value";
import { readDateText } from "../../../src/engine/numbers/calendar";
import { reportOn } from "../../../src/engine/report/report";
import { type ItemResult } from "../../../src/engine/report/model";

const hash = (text: string): string => createHash("sha256").update(text).digest("hex");
const day = (iso: string): number => readDateText(iso) as number;
const throat = (date: string, figure: string, more: Partial<HistoryRow> = {}): HistoryRow =>
  historyRow({
    Id: "H-1",
    Check: "Throat opening",
    Date: date,
    Reading: figure,
    Figure: figure,
    Unit: "in",
    "As new": "2 in",
    Round: date,
    ...more,
  });
const verdict = (date: string, decision: string, reading: string): HistoryRow =>
  historyRow({ Id: "H-1", Check: VERDICT, Date: date, Reading: reading, Decision: decision, Round: date, By: "Inspector two" });

const HEADINGS = [
  "Id",
  "Gear",
  "Unit",
  "Throat as-new",
  "Throat now",
  "Section as-new",
  "Section now",
  "Twist deg",
  "Latch works",
  "Cracks",
  "Identification legible",
  "Inspected",
];
function hook(more: Partial<Record<string, CellValue>> = {}): ItemResult {
  const cells: Record<string, CellValue> = {
    Id: "H-1",
    Gear: "hook",
    Unit: "in",
    "Throat as-new": "2",
    "Throat now": "2.06",
    "Section as-new": "1.5",
    "Section now": "1.5",
    "Twist deg": 0,
    "Latch works": "yes",
    Cracks: "none",
    "Identification legible": "yes",
    Inspected: { serial: day("2026-06-01") },
    ...more,
  };
  return reportOn([HEADINGS, HEADINGS.map((h) => cells[h])], { basis: ["standard", "practice"], asOf: day("2026-07-01") })!.items[0]!;
}
const request = { headings: matchHeadings(HEADINGS).matches, basis: ["standard", "practice"] as const };

describe("the verdict of a past day", () => {
  const rows = [
    throat("2024-06-01", "2.01"),
    verdict("2024-06-01", "KEEP", "Throat 2.01 in"),
    throat("2025-06-01", "2.12"),
    verdict("2025-06-01", "REMOVE", "Throat 2.12 in, out above 2.1 in"),
  ];
  it("is the last that was recorded up to then, as it was recorded, with its readings", () => {
    expect(verdictOn(rows, "H-1", day("2024-05-31"))).toBeNull();
    expect(verdictOn(rows, "h-1", day("2025-05-31"))).toMatchObject({ verdict: { Decision: "KEEP" }, readings: [{ Reading: "2.01" }] });
    expect(verdictOn(rows, "H-1", day("2025-06-01"))).toMatchObject({ verdict: { Decision: "REMOVE", By: "Inspector two" } });
    expect(verdictOn(rows, "H-2", day("2026-01-01"))).toBeNull();
  });
});

describe("the trend of an item", () => {
  it("is a line to the limit with two readings, and says that it has no band", () => {
    // 0.02 in a year; from 2.06 in the limit of 2.1 in (EM 385-1-1, 5 % of 2 in) is two years away.
    const rows = [throat("2024-06-01", "2.02"), throat("2026-06-01", "2.06")];
    const [trend] = trendsOf(rows, hook(), request);
    expect(trend).toMatchObject({
      check: "Throat opening",
      unit: "in",
      limit: "above 2.1 in",
      band: false,
      beforeDue: false,
      months: null,
    });
    expect(trend!.perYear).toBeCloseTo(0.02, 4);
    expect(trend!.reaches).toBe(day("2028-05-31"));
  });
  it("proposes an interval where the limit can be reached before the next inspection", () => {
    const rows = [throat("2025-06-01", "2.03"), throat("2026-06-01", "2.06"), throat("2026-06-01", "2.08")];
    // Of two readings of one day the later posted one counts: 0.05 in a year, 0.02 in are left, and the next inspection is a year away.
    const [trend] = trendsOf(rows, hook(), request);
    expect(trend).toMatchObject({ beforeDue: true, months: 4 });
  });
  it("goes to the stricter limit where the section is worn in two directions", () => {
    // Common practice, no source: most areas come out from 10 %, worn in two directions above 5 %: 0.9 in or less, and below 0.95 in.
    const across = [...HEADINGS, "Section as-new across", "Section now across", "Pin as-new", "Pin now"];
    const cells = ["S-1", "shackle", "in", null, null, "1", "0.97", null, null, "none", "yes", { serial: day("2026-06-01") }];
    const trendWith = (more: readonly CellValue[]): string => {
      const item = reportOn([across, [...cells, ...more, "1", "1"]], { basis: ["practice"], asOf: day("2026-07-01") })!.items[0]!;
      const worn = (date: string, figure: string): HistoryRow =>
        throat(date, figure, { Id: "S-1", Check: "Bow section", "As new": "1 in" });
      const of = { headings: matchHeadings(across).matches, basis: ["practice"] as const };
      return trendsOf([worn("2024-06-01", "0.99"), worn("2026-06-01", "0.97")], item, of)[0]!.limit;
    };
    expect(trendWith([null, null])).toBe("0.9 in or less");
    expect(trendWith(["1", "0.98"])).toBe("below 0.95 in");
  });
  it("begins anew with another as-new size, and where a size came back", () => {
    const worn = [throat("2022-06-01", "2.09"), throat("2023-06-01", "2.10")];
    const fresh = [throat("2024-06-01", "2.0"), throat("2026-06-01", "2.02")];
    expect(trendsOf([...worn, ...fresh], hook(), request)[0]).toMatchObject({ readings: [{ value: 2 }, { value: 2.02 }] });
    const other = fresh.map((row) => ({ ...row, "As new": "1.9 in" }));
    expect(trendsOf([throat("2022-06-01", "2.0"), ...other], hook(), request)[0]!.readings).toHaveLength(2);
    // Noise of the gauge is none.
    expect(
      trendsOf([throat("2022-06-01", "2.02"), throat("2023-06-01", "2.01"), throat("2026-06-01", "2.03")], hook(), request)[0]!.readings,
    ).toHaveLength(3);
  });
  it("reads inches and millimetres in one line, and has none where one day is known", () => {
    const rows = [throat("2024-06-01", "2.02"), throat("2026-06-01", "52.324", { Unit: "mm" })];
    expect(trendsOf(rows, hook(), request)[0]!.perYear).toBeCloseTo(0.02, 4);
    expect(trendsOf(rows.slice(1), hook(), request)).toEqual([]);
  });
  it("is there in less than 0.2 s beside 50,000 other rows", () => {
    const rows = Array.from({ length: 50_000 }, (_, at) =>
      throat(`20${String(10 + (at % 15))}-06-01`, "2.0", { Id: `X-${String(at % 900)}` }),
    );
    const all = [...rows, throat("2024-06-01", "2.02"), throat("2026-06-01", "2.06")];
    const item = hook();
    trendsOf(all, item, request);
    const start = performance.now();
    expect(trendsOf(all, item, request)).toHaveLength(1);
    verdictOn(all, "H-1", day("2026-07-01"));
    expect(performance.now() - start).toBeLessThan(200);
  });
});

describe("tag and release", () => {
  const cells = (more: Partial<Record<FieldId, CellValue>> = {}): ReadonlyMap<FieldId, CellValue> =>
    new Map(Object.entries({ id: "H-1", gear: "hook", ...more }) as [FieldId, CellValue][]);
  const ask = (
    act: TagRequest["wanted"]["act"],
    more: Partial<TagRequest> = {},
    by = "Qualified person one",
    words = "new pin fitted, crack test clear",
  ): ReturnType<typeof planTag> =>
    planTag({
      wanted: { act, id: "H-1", by, words },
      item: { id: "H-1", cells: cells() },
      day: day("2026-07-01"),
      rules: "standard",
      history: [],
      kept: [],
      part: "T1.a",
      hash,
      ...more,
    });
  it("writes the day of the tag, takes back an old release, and records both as rows", () => {
    const plan = ask(TAG, {}, "Clerk three", "crack at the saddle");
    if (!plan.ok) throw new Error(plan.why);
    expect(plan.writes).toEqual([
      { id: "H-1", field: "tagged", value: { serial: day("2026-07-01") } },
      { id: "H-1", field: "releasedBy", value: "" },
      { id: "H-1", field: "releasedOn", value: "" },
    ]);
    expect(plan.rows.map(({ Check, Decision }) => [Check, Decision])).toEqual([
      ["round", ""],
      ["tag out", "REMOVE"],
      ["verdict", "REMOVE"],
    ]);
    const kept = [{ round: "T1.a", rows: 3, last: plan.rows[2]!.Seal }];
    expect(checkSeals(plan.rows, kept, hash).findings).toEqual([]);
  });
  it.each([
    ["", "was ground", /Name the qualified person/],
    ["yes", "was ground", /is no release by a named qualified person/],
    ["pending", "was ground", /is no release by a named qualified person/],
    ["Qualified person one", "", /what was done/],
  ])("refuses a release by %j who did %j", (by, words, why) => {
    const plan = ask(RELEASE, { item: { id: "H-1", cells: cells({ tagged: "yes" }) } }, by, words);
    expect(plan).toMatchObject({ ok: false, why: expect.stringMatching(why) as string });
  });
  it("releases with a name, a day and what was done, never what is not tagged, dated ahead, or disposed of", () => {
    const tagged = { id: "H-1", cells: cells({ tagged: { serial: day("2026-06-01") } }) };
    expect(ask(RELEASE, { item: tagged }, "R. Fitter")).toMatchObject({ ok: true });
    expect(ask(RELEASE, {}, "R. Fitter")).toMatchObject({ ok: false, why: expect.stringContaining("not tagged") as string });
    expect(ask(RELEASE, { item: tagged, day: day("2026-05-01") }, "R. Fitter")).toMatchObject({
      ok: false,
      why: expect.stringContaining("before the tag") as string,
    });
    const gone = [historyRow({ Id: "h-1", Check: DISPOSAL, Number: "4" })];
    expect(ask(RELEASE, { item: tagged, history: gone }, "R. Fitter")).toMatchObject({
      ok: false,
      why: expect.stringContaining("made unusable") as string,
    });
  });
});

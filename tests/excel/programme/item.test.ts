/** Tag, release and history of one item, through the real client library on the trial workbook. */
import { describe, expect, it } from "vitest";
import { DEFAULT_BASIS } from "../../../src/engine/rules/rule-sets";
import { checkHistory } from "../../../src/excel/programme/check-history";
import { itemHistory, tagItem } from "../../../src/excel/programme/item-programme";
import { postRound } from "../../../src/excel/programme/post-round";
import { DISPOSAL, RELEASE, TAG } from "../../../src/engine/programme/tag";
import { writeReport } from "../../../src/excel/programme/write-report";
import { hookRow } from "../books";
import { fillRound, GOOD_HOOK, historyRows, registerCells, LATE, round, TODAY, yard } from "./rounds";

describe("an item's tag", () => {
  it("stands in the register and in the history until a named person releases it, and everything shows it out till then", async () => {
    const { made, register } = await yard(undefined, { verdicts: true });
    const tag = (act: Parameters<typeof tagItem>[0]["act"], by: string, words: string): Promise<void> =>
      tagItem({ act, id: "H-3", by, words }, DEFAULT_BASIS, TODAY);
    await tag(TAG, "Clerk three", "dropped from the gantry");
    expect(registerCells(register)["H-3"]).toMatchObject({ Verdict: "REMOVE", "Tagged out": "2026-11-25" });
    await expect(tag(RELEASE, "", "looked at")).rejects.toThrow(/Name the qualified person/);
    await expect(tag(RELEASE, "ok", "looked at")).rejects.toThrow(/no release by a named qualified person/);
    expect(registerCells(register)["H-3"]).toMatchObject({ Verdict: "REMOVE" });
    await tag(RELEASE, "R. Fitter", "stripped, crack test clear");
    expect(registerCells(register)["H-3"]).toMatchObject({ Verdict: "KEEP", "Released by": "R. Fitter", "Released on": TODAY });
    await tag(TAG, "Clerk three", "bent");
    await tag(DISPOSAL, "Clerk three", "cut in two");
    await expect(tag(RELEASE, "R. Fitter", "welded")).rejects.toThrow(/made unusable/);
    expect(historyRows(made).map(({ Check }) => Check)).toEqual([
      ...["round", "tag out", "verdict"],
      ...["round", "release"],
      ...["round", "tag out", "verdict"],
      ...["round", "disposal", "verdict"],
    ]);
    expect((await checkHistory()).findings).toEqual([]);
  });
  it("has a history that tells past days and wear after two rounds", async () => {
    const { made } = await yard();
    const { sheet: first } = await round("due", ["h-1"]);
    fillRound(made.sheet(first)!, { "H-1": GOOD_HOOK }, { date: { date: TODAY - 300 } });
    await postRound(first, TODAY);
    const { sheet: second } = await round("due", ["h-1"]);
    fillRound(made.sheet(second)!, { "H-1": { ...GOOD_HOOK, "Throat opening": "2.06" } });
    await postRound(second, TODAY);
    const { rows, trends } = await itemHistory("H-1", DEFAULT_BASIS, TODAY);
    expect(rows).toHaveLength(14);
    expect(trends[0]).toMatchObject({ check: "Throat opening", unit: "in", limit: "above 2.1 in", band: false });
    // 0.03 in in 300 days; 0.04 in are left: 400 days.
    expect(trends[0]!.reaches).toBe(TODAY + 400);
    expect(await itemHistory("H-2", DEFAULT_BASIS, TODAY)).toMatchObject({ rows: [], trends: [] });
  });
});

describe("the report of a round", () => {
  it("holds what Schedule 1 asks for of each item, as it was posted, with lines to fill and to sign", async () => {
    const { made } = await yard();
    const { sheet } = await round();
    await expect(writeReport(sheet, DEFAULT_BASIS, TODAY)).rejects.toThrow(/Nothing was posted/);
    fillRound(made.sheet(sheet)!, { "H-1": GOOD_HOOK, "H-2": { ...GOOD_HOOK, "Throat opening": "2.2" } });
    await postRound(sheet, TODAY);
    expect(await writeReport(sheet, DEFAULT_BASIS, TODAY)).toEqual({ sheet: "Gear report", items: 2 });
    const report = made.sheet("Gear report")!;
    const text = (row: number, column = 0): string => String(report.cell(row, column)?.value ?? "");
    const lines = Array.from({ length: report.used()!.rows }, (_, row) => text(row));
    expect(lines.join("\n")).toMatch(/Employer.*Premises.*First examination.*Tests made.*Authenticated.*Date of this report/s);
    const [first, second] = [lines.indexOf("H-1"), lines.indexOf("H-2")];
    expect(text(first, 6)).toBe("yes");
    expect(text(first, 8)).toBe("2027-11-25");
    expect(text(second, 6)).toBe("no");
    expect(text(second, 7)).toContain("Throat opening: 2.2, out above 2.1 in\nTake out of service");
    expect(text(second, 8)).toBe("");
    // Written anew, on the same sheet.
    await writeReport(sheet, DEFAULT_BASIS, TODAY);
    expect(made.sheets.filter(({ name }) => name.startsWith("Gear report"))).toHaveLength(1);
  });
});

describe("a round of 500 items", () => {
  it("is made, posted, checked and reported by requests below 5 MB, their number bounded by bytes", { timeout: 120_000 }, async () => {
    const ids = Array.from({ length: 500 }, (_, at) => `H-${String(at)}`);
    const { made, host } = await yard(ids.map((id) => hookRow(id, "2.01", { inspected: LATE })));
    const requests = async (work: () => Promise<unknown>): Promise<number> => {
      const before = host.requests.length;
      await work();
      return host.requests.length - before;
    };
    let sheet = "";
    expect(
      await requests(async () => {
        sheet = (await round()).sheet;
      }),
    ).toBeLessThan(40);
    fillRound(made.sheet(sheet)!, Object.fromEntries(ids.map((id) => [id, GOOD_HOOK])));
    expect(
      await requests(async () => expect(await postRound(sheet, TODAY)).toMatchObject({ posted: 3000, refused: [], incomplete: [] })),
    ).toBeLessThan(50);
    expect((await checkHistory()).findings).toEqual([]);
    expect(await requests(async () => expect(await writeReport(sheet, DEFAULT_BASIS, TODAY)).toMatchObject({ items: 500 }))).toBeLessThan(
      30,
    );
  });
});

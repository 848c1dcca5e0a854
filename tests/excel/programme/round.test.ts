/** A round: made from the register, filled, posted; through the real client library on the trial workbook. */
import { describe, expect, it } from "vitest";
import { checkHistory } from "../../../src/excel/programme/check-history";
import { postRound } from "../../../src/excel/programme/post-round";
import { columnOf, HEADING_ROW, INPUTS } from "../../../src/excel/programme/round-layout";
import { excelPort } from "../../../src/excel/workbook";
import { DEFAULT_BASIS } from "../../../src/engine/rules/rule-sets";
import { hookRow } from "../books";
import { fillRound, GOOD_HOOK, historyRows, LATE, lines, registerCells, round, TODAY, typeRound, yard } from "./rounds";

describe("a round sheet", () => {
  it("asks for each check of what is due, with as-new size, last reading and the figure at which it comes out", async () => {
    const { made } = await yard();
    const { sheet: name, items, checks } = await round();
    expect({ items, checks }).toEqual({ items: 2, checks: 12 });
    const sheet = made.sheet(name)!;
    const [item, throat, section, twist] = lines(sheet);
    expect(item).toMatchObject({ id: "H-1", line: "item" });
    const row = (at: number): unknown[] =>
      ["Look at or measure", "As new", "Last", "Comes out at", "Now"].map((h) => sheet.cell(at, columnOf(h as "Now"))?.value ?? "");
    // EM 385-1-1 15.E.07: 5 % of 2 in is 0.1 in. WAC 296-155-33900 and common practice: more than 5 % where highly stressed: 1 7/8 in less 5 % is 1.78125 in.
    expect(row(throat!.row)).toEqual(["Throat opening", "2 in", "2.01 in", "above 2.1 in (53.3 mm)", ""]);
    expect(row(section!.row)).toEqual(["Saddle section", "1 7/8 in", "1.86 in", "1.7813 in (45.3 mm) or less", ""]);
    expect(row(twist!.row)).toEqual(["Twist deg", "", "0", "any that is visible", ""]);
  });
  it("shows the verdict as readings are typed: a blank is missing, an old reading never stands in", async () => {
    const { made, host } = await yard(undefined, { verdicts: true });
    const { sheet: name } = await round();
    const sheet = made.sheet(name)!;
    const verdict = (): unknown => sheet.cell(HEADING_ROW, columnOf("Now"))?.value;
    expect(verdict()).toBe("NO VERDICT");
    await typeRound(host, sheet, { "H-1": { ...GOOD_HOOK, Cracks: null } });
    expect(verdict()).toBe("NO VERDICT");
    await typeRound(host, sheet, { "H-1": GOOD_HOOK });
    expect(verdict()).toBe("KEEP");
    await typeRound(host, sheet, { "H-1": { "Throat opening": "2.11" } });
    expect(verdict()).toBe("REMOVE");
    // What the gauge reads to is typed once: with a sixteenth 2.09 of 2.1 in cannot be told.
    await typeRound(host, sheet, { "H-1": { "Throat opening": "2.09" } });
    expect(verdict()).toBe("WATCH");
    await host.type(name, INPUTS.gaugeReads, "1/16 in");
    expect(verdict()).toBe("EXAMINE");
    await host.type(name, INPUTS.gaugeReads, "");
    // Words beside a reading that are not plainly good ask.
    await typeRound(host, sheet, { "H-1": { Cracks: "at the shank" } }, "Found");
    expect(verdict()).toBe("NO VERDICT");
    await typeRound(host, sheet, { "H-1": { Cracks: "cracked at the shank" } }, "Found");
    expect(verdict()).toBe("EXAMINE");
    await typeRound(host, sheet, { "H-1": { Cracks: "no cracks found" } }, "Found");
    expect(verdict()).toBe("WATCH");
  });
  it("fits one page across at nine points and is not taken for a log", async () => {
    const { made } = await yard();
    const { sheet: name } = await round();
    const sheet = made.sheet(name)!;
    const widths = Array.from({ length: 10 }, (_, column) => sheet.columnWidths.get(column) ?? 0);
    // Letter on its side is 792 points wide.
    expect(widths.reduce((sum, width) => sum + width, 0) + 2 * 28).toBeLessThanOrEqual(792);
    expect(sheet.page).toMatchObject({ orientation: "Landscape", fitWide: 1 });
    for (const { row } of lines(sheet)) expect(sheet.cell(row, 0)?.style?.size ?? 11).toBeGreaterThanOrEqual(9);
    const read = await excelPort.read({ from: "auto", basis: DEFAULT_BASIS, asOf: TODAY, choices: {} });
    expect([read.place.sheet, ...(read.others ?? [])]).toEqual(["Gear log"]);
  });
  it("asks of items without a verdict only what they lack, and says what it took from the register", async () => {
    const { made, register } = await yard([hookRow("H-1", null), hookRow("H-2", "2.01")], { verdicts: true });
    const { sheet: name, items, checks } = await round("missing");
    expect({ items, checks }).toEqual({ items: 1, checks: 1 });
    const sheet = made.sheet(name)!;
    expect(
      lines(sheet)
        .filter(({ line }) => line.startsWith("check"))
        .map(({ label }) => label),
    ).toEqual(["Throat opening"]);
    fillRound(sheet, { "H-1": { "Throat opening": "2.01" } });
    const before = registerCells(register)["H-1"]!["Inspected"];
    const posted = await postRound(name, TODAY);
    expect(posted.verdicts).toMatchObject([{ id: "H-1", decision: "KEEP" }]);
    // Only a whole inspection dates one.
    expect(posted.inspected).toEqual([]);
    expect(registerCells(register)["H-1"]).toMatchObject({ "Throat now": "2.01 in", Inspected: before, Verdict: "KEEP" });
    expect(historyRows(made).map((row) => row.Check)).toEqual(["round", "Throat opening", "verdict"]);
  });
});

describe("posting a round", () => {
  it("adds each reading with its limit and source, moves the date, and says what it did", async () => {
    const { made, register } = await yard(undefined, { verdicts: true });
    const { sheet: name, round: id } = await round();
    fillRound(made.sheet(name)!, { "H-1": GOOD_HOOK, "H-2": { ...GOOD_HOOK, "Throat opening": "2.2" } });
    const posted = await postRound(name, TODAY);
    expect(posted).toMatchObject({ posted: 12, inspected: ["H-1", "H-2"], refused: [], incomplete: [], changedMeanwhile: [] });
    expect(posted.verdicts.map(({ decision }) => decision)).toEqual(["KEEP", "REMOVE"]);
    const rows = historyRows(made);
    expect(rows).toHaveLength(15);
    expect(rows[0]).toMatchObject({ Number: "1", Check: "round", Round: id, By: "Inspector two", Date: "2026-11-25" });
    expect(rows.find((row) => row.Id === "H-2" && row.Check === "Throat opening")).toMatchObject({
      Reading: "2.2",
      Figure: "2.2",
      Unit: "in",
      "As new": "2 in",
      Limit: "above 2.1 in",
      Word: "above",
      Document: "EM 385-1-1, 2014",
      Clause: "15.E.07",
      Decision: "REMOVE",
      "Rule sets": "standard, practice",
    });
    const cells = registerCells(register);
    expect(cells["H-1"]).toMatchObject({ "Throat now": "2.03 in", Inspected: TODAY, "Inspected by": "Inspector two", Verdict: "KEEP" });
    expect(cells["H-2"]).toMatchObject({ "Throat now": "2.2 in", Inspected: TODAY, Verdict: "REMOVE" });
    expect(cells["H-3"]).toMatchObject({ "Throat now": "2.01", Inspected: 46300 });
    const check = await checkHistory();
    expect(check).toMatchObject({ rows: 15, rounds: 1, findings: [] });
  });
  it("adds nothing the second time, and a corrected reading as a row of its own", async () => {
    const { made, register } = await yard(undefined, { verdicts: true });
    const { sheet: name } = await round();
    const sheet = made.sheet(name)!;
    fillRound(sheet, { "H-1": GOOD_HOOK, "H-2": GOOD_HOOK });
    await postRound(name, TODAY);
    const before = historyRows(made);
    expect(await postRound(name, TODAY)).toMatchObject({ added: 0, written: 0, posted: 0 });
    expect(historyRows(made)).toEqual(before);
    fillRound(sheet, { "H-1": { "Throat opening": "2.2" } });
    expect(await postRound(name, TODAY)).toMatchObject({ posted: 1, changedMeanwhile: [] });
    expect(
      historyRows(made)
        .slice(before.length)
        .map(({ Check, Reading }) => [Check, Reading]),
    ).toEqual([
      ["round", expect.stringContaining("Round 1")],
      ["Throat opening", "2.2"],
      ["verdict", expect.stringContaining("2.2 in")],
    ]);
    expect(registerCells(register)["H-1"]).toMatchObject({ "Throat now": "2.2 in", Verdict: "REMOVE" });
    expect((await checkHistory()).findings).toEqual([]);
  });
  it("moves no date of a half-filled item, refuses what cannot be read, and lists both with why", async () => {
    const { made, register } = await yard();
    const { sheet: name } = await round();
    fillRound(made.sheet(name)!, {
      "H-1": { "Throat opening": "2.03", Cracks: "none" },
      "H-2": { ...GOOD_HOOK, "Saddle section": "about 1.8" },
    });
    const posted = await postRound(name, TODAY);
    expect(posted.inspected).toEqual([]);
    expect(posted.incomplete.map(({ id }) => id)).toEqual(["H-1", "H-2"]);
    expect(posted.incomplete[0]?.why).toContain("Saddle section, Twist deg, Latch works, Identification legible");
    expect(posted.refused).toMatchObject([{ id: "H-2", line: "Saddle section", why: expect.stringContaining("about 1.8") as string }]);
    const cells = registerCells(register);
    expect(cells["H-1"]).toMatchObject({ "Throat now": "2.03 in", Inspected: 45900 });
    expect(cells["H-2"]).toMatchObject({ "Section now": "1.86", Inspected: 45900 });
    expect(historyRows(made).some(({ Reading }) => Reading === "about 1.8")).toBe(false);
  });
  it.each([
    ["", { date: TODAY }, /who inspected/],
    ["yes.", null, /date of the inspection/],
    ["Inspector two", "03/04/2026", /03\/04\/2026/],
    ["Inspector two", { date: TODAY + 1 }, /later than today/],
  ])("refuses a round by %j on %j", async (by, date, why) => {
    const { made } = await yard();
    const { sheet: name } = await round();
    fillRound(made.sheet(name)!, { "H-1": GOOD_HOOK }, { by, date });
    await expect(postRound(name, TODAY)).rejects.toThrow(why);
    expect(historyRows(made)).toEqual([]);
  });
  it("shows what somebody else changed meanwhile and leaves it, and finds items by id after the rows were sorted", async () => {
    const { made, register } = await yard();
    const { sheet: name } = await round();
    fillRound(made.sheet(name)!, { "H-1": GOOD_HOOK, "H-2": GOOD_HOOK });
    // The colleague has measured H-2 as well; and the register's first two rows have changed places.
    const at = (row: number): Map<number, unknown> => register.rows.get(row) as Map<number, unknown>;
    const headings = Object.keys(registerCells(register)["H-1"]!);
    const throat = headings.indexOf("Throat now");
    register.at(5, throat).value = "2.09";
    const [first, second] = [at(4), at(5)];
    (register.rows as Map<number, unknown>).set(4, second);
    (register.rows as Map<number, unknown>).set(5, first);
    const posted = await postRound(name, TODAY);
    expect(posted.changedMeanwhile).toMatchObject([{ id: "H-2", line: "Throat opening", why: expect.stringContaining("2.09") as string }]);
    expect(posted.inspected).toEqual(["H-1"]);
    const cells = registerCells(register);
    expect(cells["H-1"]).toMatchObject({ "Throat now": "2.03 in", Inspected: TODAY });
    expect(cells["H-2"]).toMatchObject({ "Throat now": "2.09", Inspected: 45900 });
    expect(historyRows(made).some(({ Id, Check, Reading }) => Id === "H-2" && Check === "Throat opening" && Reading === "2.03")).toBe(true);
  });
  it("dates no inspection whose line was taken out of the sheet", async () => {
    const { made, register } = await yard();
    const { sheet: name } = await round();
    const sheet = made.sheet(name)!;
    fillRound(sheet, { "H-1": GOOD_HOOK });
    const cracks = lines(sheet).find(({ id, label }) => id === "H-1" && label === "Cracks")!;
    sheet.rows.delete(cracks.row);
    const posted = await postRound(name, TODAY);
    expect(posted).toMatchObject({ inspected: [], incomplete: [{ id: "H-1", why: expect.stringContaining("Cracks") as string }] });
    expect(posted.verdicts).toMatchObject([{ decision: "NO VERDICT" }]);
    expect(registerCells(register)["H-1"]).toMatchObject({ Inspected: 45900 });
  });
  it("leaves every sheet that is not the add-in's as it is", async () => {
    const { made } = await yard();
    const snapshot = (): string => JSON.stringify([...made.sheet("Gear log")!.rows].map(([r, cells]) => [r, [...cells]]));
    const before = snapshot();
    const { sheet: name } = await round();
    fillRound(made.sheet(name)!, { "H-1": GOOD_HOOK });
    await postRound(name, TODAY);
    expect(snapshot()).toBe(before);
  });
  it("lifts an overload only where the whole item was looked at after it", async () => {
    const stretched = hookRow("H-1", "2.2", { assembly: "Winch", inspected: { date: 46300 } });
    const beside = (id: string): ReturnType<typeof hookRow> => hookRow(id, "2.01", { assembly: "Winch", inspected: { date: 46290 } });
    const { made, register } = await yard([stretched, beside("H-2"), beside("H-3")], { verdicts: true });
    expect(registerCells(register)["H-2"]).toMatchObject({ Verdict: "EXAMINE" });
    const { sheet: name, items } = await round("shared");
    expect(items).toBe(2);
    fillRound(made.sheet(name)!, { "H-2": GOOD_HOOK, "H-3": { ...GOOD_HOOK, "Latch works": null } });
    await postRound(name, TODAY);
    expect(registerCells(register)).toMatchObject({ "H-2": { Verdict: "KEEP" }, "H-3": { Verdict: "EXAMINE" } });
  });
  it("posts what was seen, and lets a later whole inspection settle it", async () => {
    const { made, register } = await yard(undefined, { verdicts: true });
    const { sheet: first } = await round();
    fillRound(made.sheet(first)!, { "H-1": GOOD_HOOK });
    fillRound(made.sheet(first)!, { "H-1": { Cracks: "line at the shank" } }, { heading: "Found" });
    expect((await postRound(first, TODAY)).verdicts).toMatchObject([{ id: "H-1", decision: "NO VERDICT" }]);
    expect(registerCells(register)["H-1"]).toMatchObject({ Verdict: "NO VERDICT", Remarks: "line at the shank" });
    expect(historyRows(made).find(({ Check }) => Check === "Cracks, seen")).toMatchObject({ Id: "H-1", Reading: "line at the shank" });
    const { sheet: second } = await round("due", ["h-1"]);
    fillRound(made.sheet(second)!, { "H-1": GOOD_HOOK });
    await postRound(second, TODAY);
    expect(registerCells(register)["H-1"]).toMatchObject({ Verdict: "KEEP", "Result in the log": null });
  });
  it("takes an item that was not found out of use until it is found and looked at", async () => {
    const { made, register } = await yard([hookRow("H-1", "2.01", { inspected: LATE }), hookRow("H-2", "2.01", { inspected: LATE })], {
      verdicts: true,
    });
    const { sheet: name } = await round();
    fillRound(made.sheet(name)!, { "H-1": { item: "not found" } });
    const posted = await postRound(name, TODAY);
    expect(posted.verdicts).toMatchObject([{ id: "H-1", decision: "NO VERDICT" }]);
    expect(registerCells(register)["H-1"]!["Verdict"]).toBe("NO VERDICT");
    fillRound(made.sheet(name)!, { "H-1": { item: "", ...GOOD_HOOK } });
    await postRound(name, TODAY);
    expect(registerCells(register)["H-1"]!["Verdict"]).toBe("KEEP");
  });
});

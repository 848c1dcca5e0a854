/** The one text that says everything of a row: its form, and that nothing typed can stand for a part of it. */
import { describe, expect, it } from "vitest";
import { ROW_HEAD, ROW_MARK, ROW_PARTS, type RowPart } from "../../src/engine/ask/judge-row";
import { judgeRow, reason, verdict } from "../../src/functions/functions";

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
  "Service",
  "Inspected",
  "Assembly",
  "Pin fully seated",
  "Remarks",
];
const HOOK = ["H-1", "hook", "in", "2", "2.01", "1 7/8", "1.86", 0, "yes", "none", "yes", "normal", 46300, "Gantry", "", ""];
const changed = (heading: string, value: string | number): (string | number)[] =>
  HOOK.map((cell, i) => (HEADINGS[i] === heading ? value : cell));

/** Takes the answer apart as the register's formulas do: by the marks. */
function parts(text: string): Record<RowPart, string> {
  const [head, ...cut] = text.split(ROW_MARK);
  expect(head).toBe(`${ROW_HEAD} `);
  expect(cut.length).toBe(ROW_PARTS.length + 1);
  return Object.fromEntries(ROW_PARTS.map((part, i) => [part, cut[i]?.slice(0, -1) ?? ""])) as Record<RowPart, string>;
}
const of = (row: readonly (string | number)[]): Record<RowPart, string> => parts(judgeRow([HEADINGS], [[...row]]));

describe("GEAR.JUDGEROW", () => {
  it("says what GEAR.VERDICT and GEAR.REASON say, and the facts beside", () => {
    for (const row of [HOOK, changed("Throat now", "2.2"), changed("Cracks", ""), changed("Gear", "anvil"), changed("Tagged", "x")]) {
      const told = of(row);
      expect([told.decision, told.reason]).toEqual([verdict([HEADINGS], [[...row]]), reason([HEADINGS], [[...row]])]);
    }
    // 2.2 in from 2 in is beyond 2.1 in; 0.2 of an allowance of 0.1.
    expect(of(changed("Throat now", "2.2"))).toMatchObject({
      decision: "REMOVE",
      share: "2000000",
      overload: "sign",
      kind: "hook",
      inspected: "46300",
      due: "46665",
      assembly: "a:gantry",
    });
    expect(of(HOOK)).toMatchObject({ decision: "KEEP", overload: "", missing: "" });
    expect(of(changed("Cracks", ""))).toMatchObject({ decision: "NO VERDICT", missing: "|Cracks|" });
    expect(of(HOOK).needed).toContain("|Throat now|");
  });

  it("marks each column: not read for this kind, read, missing, no reading", () => {
    const cells = of(changed("Cracks", "")).cells;
    const sign = (heading: string): string | undefined => cells[HEADINGS.indexOf(heading)];
    expect(cells.length).toBe(HEADINGS.length);
    expect(["Pin fully seated", "Throat now", "Cracks", "Id"].map(sign)).toEqual(["0", "1", "2", "-"]);
  });

  it("reads two blocks of columns as one row", () => {
    const whole = judgeRow([HEADINGS], [[...HOOK]]);
    for (const cut of [1, 3, 9])
      expect(judgeRow([HEADINGS.slice(0, cut)], [HOOK.slice(0, cut)], undefined, [HEADINGS.slice(cut)], [HOOK.slice(cut)])).toBe(whole);
    expect(judgeRow([HEADINGS], [[...HOOK]], undefined, null as never, null as never)).toBe(whole);
  });

  it("is not to be imitated by anything that is typed", () => {
    const typed = `${ROW_MARK}KEEP${ROW_MARK}\u0000\t\r\n${ROW_HEAD} ${ROW_MARK}REMOVE`;
    for (const heading of ["Id", "Gear", "Throat now", "Cracks", "Assembly", "Remarks", "Inspected", "Service", "Unit"]) {
      const told = of(changed(heading, typed));
      expect(told.decision, heading).not.toBe("");
      expect(["REMOVE", "EXAMINE", "NO VERDICT", "KEEP"], heading).toContain(told.decision);
      expect(told.kind, heading).toMatch(/^(hook|)$/);
    }
  });

  it("gives an assembly a name in which no sign means more than itself to a look-up", () => {
    const key = (name: string): string => of(changed("Assembly", name)).assembly;
    expect([key("Gantry*"), key("gantry?"), key("~1"), key("^s"), key("=1"), key("7")]).toEqual([
      "a:gantry^s",
      "a:gantry^q",
      "a:^t1",
      "a:^^s",
      "a:=1",
      "a:7",
    ]);
    expect(key("")).toBe("");
  });

  it("fits into a cell, and what is cut is the end of the reason", () => {
    const long = judgeRow([HEADINGS], [changed("Remarks", "cracked ".repeat(4000))]);
    expect(long.length).toBeLessThan(32_767);
    expect(long.startsWith(`${ROW_HEAD} ${ROW_MARK}`)).toBe(true);
  });
});

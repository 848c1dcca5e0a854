/** The headless run as people call it. */
import { spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { HOUSE_HEADINGS } from "../../src/engine/house/read-limits";
import { DECISIONS } from "../../src/engine/decision";
import { HEADING_ROW, REGISTER_SHEET } from "../../src/excel/kit/sheets";
import { readXlsx, writeXlsx } from "../../src/trial/file/xlsx";
import { AS_OF, book, HOOK_HEADINGS, hookRow, records } from "../excel/books";

const root = fileURLToPath(new URL("../../", import.meta.url));
const MESSY = "sample-workbooks/messy-log.xlsx";
const folder = mkdtempSync(join(tmpdir(), "gear-verdicts-test-"));

interface Line {
  readonly row: number;
  readonly id: string;
  readonly gear: string;
  readonly decision: string;
  readonly reason: string;
  readonly nextDue: string | null;
  readonly dueState: string;
  readonly tagged: boolean;
}

function judge(...args: string[]): { status: number | null; out: string; err: string } {
  const npm = process.platform === "win32" ? "npm.cmd" : "npm";
  const { status, stdout, stderr } = spawnSync(npm, ["run", "judge", "--", ...args], {
    cwd: root,
    encoding: "utf8",
    shell: process.platform === "win32",
  });
  return { status, out: stdout, err: stderr };
}

describe("npm run judge", { timeout: 120_000 }, () => {
  it("prints JSON and nothing else with --json: row, id, gear, decision, reason, dates, tag", () => {
    const { status, out, err } = judge(MESSY, "--as-of", "2026-11-25", "--json");
    expect([status, err]).toEqual([0, ""]);
    const lines = JSON.parse(out) as Line[];
    expect(lines.length).toBe(121);
    expect(Object.keys(lines[0]!)).toEqual(["row", "id", "gear", "decision", "reason", "nextDue", "dueState", "tagged"]);
    for (const decision of DECISIONS)
      expect(
        lines.some((l) => l.decision === decision),
        decision,
      ).toBe(true);
    expect(lines.every((l) => l.nextDue === null || /^\d{4}-\d{2}-\d{2}$/.test(l.nextDue))).toBe(true);
    // The first item stands in sheet row 8, under two heading rows and a section title.
    expect(lines[0]).toMatchObject({ row: 8, id: "101", gear: "hook", decision: "REMOVE" });
  });

  it("writes the register into a copy whose cells say the same, and leaves the input as it was", async () => {
    const before = createHash("sha256")
      .update(readFileSync(join(root, MESSY)))
      .digest("hex");
    const copy = join(folder, "copy.xlsx");
    const { status, out } = judge(MESSY, "--as-of", "2026-11-25", "--out", copy);
    expect(status).toBe(0);
    expect(
      createHash("sha256")
        .update(readFileSync(join(root, MESSY)))
        .digest("hex"),
    ).toBe(before);
    const counts = new Map(
      [...out.matchAll(/(REMOVE|EXAMINE|NO VERDICT|DRESS|WATCH|KEEP) (\d+)(?:,|$)/gm)].map((m) => [m[1], Number(m[2])]),
    );
    const written = await readXlsx(readFileSync(copy));
    const verdicts = records(written.sheet(REGISTER_SHEET)!, HEADING_ROW - 1).map((r) => r["Verdict"]);
    for (const decision of DECISIONS) expect(verdicts.filter((v) => v === decision).length, decision).toBe(counts.get(decision));
  });

  it("judges by the rule sets and the sheet that are named", () => {
    const law = JSON.parse(judge(MESSY, "--as-of", "2026-11-25", "--basis", "law", "--json").out) as Line[];
    const strict = JSON.parse(judge(MESSY, "--as-of", "2026-11-25", "--basis", "law,standard,strict", "--json").out) as Line[];
    const removed = (lines: Line[]): number => lines.filter((l) => l.decision === "REMOVE").length;
    expect(removed(strict)).toBeGreaterThan(removed(law));
    expect(judge(MESSY, "--sheet", "Phone list")).toMatchObject({
      status: 1,
      err: expect.stringMatching(/^No gear log was found on that sheet; name another with --sheet\.$/m),
    });
  });

  it("judges by the house limits where the workbook has them, and says what late, undated and unknown service mean", async () => {
    const made = book({
      "Gear log": [
        [...HOOK_HEADINGS],
        hookRow("H-1", "2.01", { inspected: { date: AS_OF - 500 } }),
        hookRow("H-2", "2.01", { inspected: null }),
        hookRow("H-3", "2.01").map((cell, i) => (HOOK_HEADINGS[i] === "Service" ? null : cell)),
      ],
      "House limits": [[...HOUSE_HEADINGS], ["hook", "throat opening", "above", "3", "%", "Yard order 7"]],
    });
    const file = join(folder, "house.xlsx");
    writeFileSync(file, await writeXlsx(made));
    const { status, out, err } = judge(file, "--basis", "standard,practice,house", "--as-of", "2026-11-25");
    expect([status, err]).toEqual([0, ""]);
    expect(out).toContain("rules in force Standard + Practice + House, as of");
    expect(out).toMatch(/H-1 .* hook: Overdue: inspect it before it is used again\. /);
    expect(out).toMatch(/H-2 .* hook: No date of its last inspection can be used: inspect it, or fill the date, before it is used\. /);
    expect(
      out.match(/^Service is not recorded for 1 item: its date is counted as in normal service and may be too late\.$/gm),
    ).toHaveLength(1);
    const nothing = join(folder, "nothing.xlsx");
    writeFileSync(nothing, await writeXlsx(book({ Notes: [["Nothing here"]] })));
    expect(judge(nothing)).toMatchObject({
      status: 1,
      err: expect.stringMatching(/^No gear log was found in .*nothing\.xlsx; name its sheet with --sheet\.$/m),
    });
  });

  it("ends with 1 and a sentence when nothing can be judged, with 2 when the arguments are wrong", () => {
    const notes = join(folder, "notes.xlsx");
    writeFileSync(notes, "these are my notes");
    const cut = join(folder, "cut.xlsx");
    writeFileSync(cut, readFileSync(join(root, MESSY)).subarray(0, 9000));
    for (const file of [notes, cut])
      expect(judge(file)).toMatchObject({ status: 1, out: "", err: expect.stringMatching(/not an \.xlsx workbook/) });
    expect(judge(join(folder, "nowhere.xlsx"))).toMatchObject({ status: 1, err: expect.stringContaining("cannot be read") });
    expect(judge(MESSY, "--sheet", "Nowhere")).toMatchObject({ status: 1, err: expect.stringContaining("Phone list") });
    expect(judge()).toMatchObject({ status: 2, err: expect.stringContaining("Name one workbook") });
    expect(judge(MESSY, "--basis", "everything")).toMatchObject({ status: 2, err: expect.stringMatching(/law, standard.*, ships.*house/) });
    expect(judge(MESSY, "--basis", "law,house")).toMatchObject({
      status: 2,
      out: expect.not.stringContaining("NO VERDICT"),
      err: expect.stringContaining('no sheet "House limits"'),
    });
    expect(judge(MESSY, "--as-of", "31/03/2026")).toMatchObject({ status: 2, err: expect.stringContaining("--as-of") });
    expect(judge(MESSY, "--out", MESSY)).toMatchObject({ status: 2, err: expect.stringContaining("never changed") });
    expect(judge(MESSY, "--colour")).toMatchObject({ status: 2 });
  });
});

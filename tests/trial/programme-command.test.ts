/** Due list, round and report from the command line, on files. */
import { mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterEach, describe, expect, it, vi } from "vitest";
import { postRound } from "../../src/excel/programme/post-round";
import { readXlsx, writeXlsx } from "../../src/trial/file/xlsx";
import { main } from "../../src/trial/headless";
import { openBook } from "../setup-excel";
import { AS_OF, book, hookRow, HOOK_HEADINGS } from "../excel/books";
import { fillRound, GOOD_HOOK, LATE, lines } from "../excel/programme/rounds";

const folder = mkdtempSync(join(tmpdir(), "gear-verdicts-programme-"));
const DIST = fileURLToPath(new URL("../../dist", import.meta.url));
const at = (name: string): string => join(folder, name);
async function run(...args: string[]): Promise<{ readonly status: number; readonly out: string; readonly err: string }> {
  const said = { out: "", err: "" };
  const into =
    (name: "out" | "err") =>
    (text: unknown, ...rest: unknown[]) => {
      said[name] += String(text);
      for (const one of rest) if (typeof one === "function") (one as () => void)();
      return true;
    };
  vi.spyOn(process.stdout, "write").mockImplementation(into("out"));
  vi.spyOn(process.stderr, "write").mockImplementation(into("err"));
  const status = await main([...args, "--as-of", "2026-11-25"], DIST, AS_OF, folder);
  vi.restoreAllMocks();
  return { status, ...said };
}
afterEach(() => vi.restoreAllMocks());

describe("the programme from the command line", () => {
  it("prints what is due, writes a round of it, and after posting the report", { timeout: 120_000 }, async () => {
    const made = book({ "Gear log": [[...HOOK_HEADINGS], hookRow("H-1", "2.01", { inspected: LATE }), hookRow("H-2", "2.01")] });
    writeFileSync(at("log.xlsx"), await writeXlsx(made));
    const due = await run("log.xlsx", "--due");
    expect([due.status, due.err]).toEqual([0, ""]);
    expect(due.out).toMatch(/^2026-08-31 {2}OVERDUE {3}H-1 .*hook\n1 of 2 items are late/);
    expect((JSON.parse((await run("log.xlsx", "--due", "--json")).out) as { readonly id: string }[]).map(({ id }) => id)).toEqual(["H-1"]);

    expect(await run("log.xlsx", "--round", "round.xlsx")).toMatchObject({
      status: 0,
      out: expect.stringContaining("Round 1: 1 item, 6 checks. It is written to round.xlsx") as string,
    });
    const round = await readXlsx(readFileSync(at("round.xlsx")));
    expect(lines(round.sheet("Round 1")!).filter(({ line }) => line.startsWith("check"))).toHaveLength(6);
    expect(await run("round.xlsx", "--report", "report.xlsx")).toMatchObject({
      status: 1,
      err: expect.stringContaining("No round of this workbook was posted") as string,
    });

    fillRound(round.sheet("Round 1")!, { "H-1": GOOD_HOOK });
    openBook(round);
    await postRound("Round 1", AS_OF);
    writeFileSync(at("posted.xlsx"), await writeXlsx(round));
    expect(await run("posted.xlsx", "--report", "report.xlsx")).toMatchObject({
      status: 0,
      out: expect.stringContaining("Report of Round 1: 1 item.") as string,
    });
    const report = (await readXlsx(readFileSync(at("report.xlsx")))).sheet("Gear report")!;
    expect(report.cell(0, 0)?.value).toBe("Report of thorough examination");
  });
  it("takes one file to write", async () => {
    expect(await run("log.xlsx", "--round", "a.xlsx", "--report", "b.xlsx")).toMatchObject({
      status: 2,
      err: expect.stringContaining("give one of them") as string,
    });
  });
});

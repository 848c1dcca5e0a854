/** The headless run against files, links, pipes and disks. */
import { spawnSync } from "node:child_process";
import { existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { readXlsx, writeXlsx } from "../../src/trial/file/xlsx";
import { Archive } from "../../src/trial/file/zip";
import { shown, shownJson } from "../../src/trial/command/output";
import { book, HOOK_HEADINGS, hookRow, type Value } from "../excel/books";

const root = fileURLToPath(new URL("../../", import.meta.url));
const folder = mkdtempSync(join(tmpdir(), "gear-verdicts-files-"));
const script = join(root, "tools/judge.mjs");
const unix = process.platform !== "win32";

function judge(args: readonly string[], cwd = folder): { status: number | null; out: string; err: string } {
  const { status, stdout, stderr } = spawnSync(process.execPath, [script, ...args], { cwd, encoding: "utf8", maxBuffer: 2 ** 28 });
  return { status, out: stdout, err: stderr };
}
/** A command line of a shell, in which `judge` runs the headless run. */
function shell(line: string, cwd = folder): { status: number | null; out: string; err: string } {
  const { status, stdout, stderr } = spawnSync("bash", ["-o", "pipefail", "-c", line], {
    cwd,
    encoding: "utf8",
    maxBuffer: 2 ** 28,
    env: { ...process.env, JUDGE: `${process.execPath} ${script}` },
  });
  return { status, out: stdout, err: stderr };
}
async function hooks(name: string, count: number, change: (row: Value[]) => Value[] = (row) => row): Promise<string> {
  const rows = Array.from({ length: count }, (_, at) => change(hookRow(`H-${String(at + 1)}`, "2.01")));
  const file = join(folder, name);
  writeFileSync(file, await writeXlsx(book({ "Gear log": [[...HOOK_HEADINGS], ...rows] })));
  return name;
}

describe("what is printed", { timeout: 120_000 }, () => {
  it.runIf(unix)("arrives whole in a pipe whose reader is late: 1,000 items", async () => {
    const file = await hooks("thousand.xlsx", 1000);
    const { status, out, err } = shell(`$JUDGE ${file} --json | (sleep 1; cat)`);
    expect([status, err]).toEqual([0, ""]);
    expect((JSON.parse(out) as unknown[]).length).toBe(1000);
    const lines = shell(`$JUDGE ${file} | (sleep 1; cat)`);
    expect(lines.out.match(/^ *\d+ {2}H-\d+ /gm)?.length).toBe(1000);
  });

  it.runIf(unix)("ends without a stack when the reader goes away", async () => {
    const file = await hooks("long.xlsx", 1000);
    expect(shell(`set +o pipefail; $JUDGE ${file} | head -1`)).toMatchObject({ status: 0, err: "" });
  });

  it("shows control characters of cells instead of sending them", async () => {
    const file = await hooks("escape.xlsx", 1, (row) => row.map((cell, at) => (at === 0 ? "H_x001B_[2J\u009b2J\u202e-1" : cell)));
    const { out } = judge([file]);
    // eslint-disable-next-line no-control-regex -- the control characters are the matter.
    expect(out).not.toMatch(/[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u202e]/);
    expect(out).toContain("\u241b[2J\\u009b2J\\u202e-1");
    const json = judge([file, "--json"]).out;
    // eslint-disable-next-line no-control-regex -- as above.
    expect(json.trimEnd()).not.toMatch(/[\u0000-\u001f\u007f-\u009f\u202e]/);
    expect((JSON.parse(json) as { id: string }[])[0]?.id).toBe("H\u001b[2J\u009b2J\u202e-1");
  });

  it("names each control character by its picture or its code", () => {
    expect(shown("a\tb\nc\u007f\u0085")).toBe("a\u2409b\u240ac\u2421\\u0085");
    expect(JSON.parse(shownJson({ a: "\u0000\u007f\u2028\u200f" }))).toEqual({ a: "\u0000\u007f\u2028\u200f" });
  });
});

describe("--out", { timeout: 120_000 }, () => {
  it("replaces a file only with --force, and leaves no part behind", async () => {
    const file = await hooks("again.xlsx", 1);
    writeFileSync(join(folder, "there.xlsx"), "my own notes");
    expect(judge([file, "--out", "there.xlsx"])).toMatchObject({ status: 2, out: "", err: expect.stringContaining("--force") as string });
    expect(readFileSync(join(folder, "there.xlsx"), "utf8")).toBe("my own notes");
    expect(judge([file, "--out", "there.xlsx", "--force"]).status).toBe(0);
    expect((await readXlsx(readFileSync(join(folder, "there.xlsx")))).sheet("Gear register")).toBeDefined();
    expect(readdirSync(folder).filter((name) => name.endsWith(".part"))).toEqual([]);
  });

  it.runIf(unix)("leaves the old file whole when there is no room for the new one", async () => {
    const file = await hooks("room.xlsx", 3);
    writeFileSync(join(folder, "old-register.xlsx"), "the register of last year");
    // The shell allows no file above 4 blocks, which stands for a disk that is full.
    const { status, err } = shell(`ulimit -f 4; $JUDGE ${file} --out old-register.xlsx --force`);
    expect(status).toBe(1);
    expect(err).toMatch(/^.*old-register\.xlsx could not be written: .*; the file that was there is as it was\.$/m);
    expect(readFileSync(join(folder, "old-register.xlsx"), "utf8")).toBe("the register of last year");
    const fresh = shell(`ulimit -f 4; $JUDGE ${file} --out fresh.xlsx`);
    expect(fresh.err).toContain("nothing was written");
    expect(readdirSync(folder).filter((name) => name.endsWith(".part") || name === "fresh.xlsx")).toEqual([]);
  });

  it("is looked at before anything is judged, and what can't be read is said in a sentence", async () => {
    const file = await hooks("sentence.xlsx", 1);
    mkdirSync(join(folder, "a-folder"), { recursive: true });
    const to = (out: string) => judge([file, "--out", out]);
    expect(to("nowhere/x.xlsx")).toEqual({ status: 1, out: "", err: "nowhere/x.xlsx cannot be written: its folder is not there.\n" });
    expect(to(file)).toMatchObject({ status: 2, out: "", err: expect.stringContaining("never changed") as string });
    expect(judge(["a-folder"])).toEqual({ status: 1, out: "", err: "The file a-folder cannot be read: that is a folder.\n" });
  });

  it("refuses without --drop what the copy can't hold, and says it before", async () => {
    const file = await hooks("plain.xlsx", 1);
    const archive = Archive.read(new Uint8Array(readFileSync(join(folder, file))));
    await archive.replace("xl/vbaProject.bin", "macro");
    await archive.replace("xl/media/image1.png", "picture");
    writeFileSync(join(folder, "rich.xlsx"), archive.write());
    const refused = judge(["rich.xlsx", "--out", "rich-out.xlsx"]);
    expect(refused).toMatchObject({ status: 2, out: "" });
    expect(refused.err).toBe("The copy can't hold everything of rich.xlsx: the macros, the pictures. Add --drop to write it without.\n");
    expect(existsSync(join(folder, "rich-out.xlsx"))).toBe(false);
    expect(judge(["rich.xlsx"])).toMatchObject({ status: 0, err: "" });
    const dropped = judge(["rich.xlsx", "--out", "rich-out.xlsx", "--drop"]);
    expect(dropped).toMatchObject({ status: 0, err: "Not in the copy: the macros, the pictures.\n" });
    expect(existsSync(join(folder, "rich-out.xlsx"))).toBe(true);
  });

  it("counts paths from the caller's folder, also through npm", async () => {
    const file = await hooks("here.xlsx", 1);
    const npm = unix ? "npm" : "npm.cmd";
    const { status, stderr } = spawnSync(npm, ["run", "--prefix", root, "judge", "--", file, "--out", "there-too.xlsx"], {
      cwd: folder,
      encoding: "utf8",
      shell: !unix,
    });
    expect([status, stderr]).toEqual([0, ""]);
    expect(existsSync(join(folder, "there-too.xlsx"))).toBe(true);
  });
});

describe("a log", { timeout: 120_000 }, () => {
  it.each([
    [200_000, 0],
    [449_999, 3],
    [1_048_575, 16_383],
  ])("ends where it ends, whatever stands in row %i and column %i", async (row, column) => {
    const made = book({ "Gear log": [[...HOOK_HEADINGS], hookRow("H-1", "2.01"), hookRow("H-2", "2.4")] });
    made.sheet("Gear log")!.at(row, column).value = "see below";
    const file = join(folder, "stray.xlsx");
    writeFileSync(file, await writeXlsx(made));
    const { status, out, err } = judge([file]);
    expect([status, err]).toEqual([0, ""]);
    expect(out).toContain("Gear log!A1:O3: 2 items");
    expect(out).toMatch(/REMOVE 1, .*KEEP 1$/m);
    expect(out).toContain("Nothing stands in the 1,000 rows below Gear log!A1:O3");
  });
});

describe("--unit", { timeout: 120_000 }, () => {
  it("says the unit of bare sizes", async () => {
    const file = join(folder, "bare.xlsx");
    const [headings, row] = [HOOK_HEADINGS, hookRow("H-1", "2.01")].map((cells) => cells.filter((_, at) => HOOK_HEADINGS[at] !== "Unit"));
    writeFileSync(file, await writeXlsx(book({ "Gear log": [headings!, row!] })));
    const decision = (...args: string[]): string =>
      (JSON.parse(judge([file, "--json", ...args]).out) as { decision: string }[])[0]!.decision;
    expect(decision()).toBe("NO VERDICT");
    expect(decision("--unit", "in")).toBe("KEEP");
    expect(judge([file, "--unit", "ft"])).toMatchObject({ status: 2, err: expect.stringContaining("--unit takes in or mm") as string });
  });
});

describe("--column", { timeout: 120_000 }, () => {
  it("says what a heading is, or sets it aside", async () => {
    const file = join(folder, "columns.xlsx");
    const headings = HOOK_HEADINGS.map((heading) => (/throat now/i.test(heading) ? "Gap = today" : heading));
    writeFileSync(file, await writeXlsx(book({ "Gear log": [headings, hookRow("H-1", "2.4")] })));
    const decision = (...args: string[]): string =>
      (JSON.parse(judge([file, "--json", ...args]).out) as { decision: string }[])[0]!.decision;
    expect(decision("--column", "gap =  Today=throat now")).toBe("REMOVE");
    expect(decision("--column", "Gap = today=aside")).toBe("NO VERDICT");
    expect(judge([file, "--column", "Gap = today"])).toMatchObject({ status: 2, err: expect.stringContaining("no column") as string });
    expect(judge([file, "--column", "Nothing=aside"])).toMatchObject({
      status: 2,
      out: "",
      err: expect.stringContaining('no heading "nothing"') as string,
    });
    expect(judge([file, "--column", "Nothing"])).toMatchObject({ status: 2, err: expect.stringContaining("--column takes") as string });
  });
});

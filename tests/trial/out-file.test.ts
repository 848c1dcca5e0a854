/** The file that --out names: what it may reach, and that it is whole or as it was. */
import { chmodSync, existsSync, linkSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { beforeEach, describe, expect, it } from "vitest";
import { outFile, writeOut } from "../../src/trial/command/out-file";

const unix = process.platform !== "win32";
let folder = "";
const at = (name: string): string => join(folder, name);
const text = (name: string): string => readFileSync(at(name), "utf8");
const BYTES = new TextEncoder().encode("the new register");

async function put(input: string, out: string, force = false): Promise<string> {
  try {
    await writeOut(await outFile(at(input), at(out), out, force), BYTES);
    return "written";
  } catch (fault) {
    return (fault as Error).message;
  }
}

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "gear-verdicts-out-"));
  writeFileSync(at("source.xlsx"), "the log");
  writeFileSync(at("old.xlsx"), "the old register");
});

describe("the file that --out names", () => {
  it("never is the input, by whatever name or link", async () => {
    symlinkSync("source.xlsx", at("leads-to-it.xlsx"));
    linkSync(at("source.xlsx"), at("same-file.xlsx"));
    mkdirSync(at("inside"));
    symlinkSync("../leads-to-it.xlsx", at("inside/twice.xlsx"));
    for (const [input, out] of [
      ["source.xlsx", "source.xlsx"],
      ["source.xlsx", "inside/../source.xlsx"],
      ["source.xlsx", "leads-to-it.xlsx"],
      ["source.xlsx", "inside/twice.xlsx"],
      ["source.xlsx", "same-file.xlsx"],
      ["leads-to-it.xlsx", "source.xlsx"],
      ["same-file.xlsx", "leads-to-it.xlsx"],
    ] as const)
      for (const force of [false, true]) expect(await put(input, out, force), `${input} ${out}`).toContain("never changed");
    expect(text("source.xlsx")).toBe("the log");
    // A file system that does not tell cases apart answers for SOURCE.XLSX with the same file.
    if (existsSync(at("SOURCE.XLSX"))) expect(await put("source.xlsx", "SOURCE.XLSX", true)).toContain("never changed");
  });

  it("is replaced only when that is asked for, behind a link the file that it leads to", async () => {
    expect(await put("source.xlsx", "old.xlsx")).toBe("old.xlsx is there already; add --force to replace it.");
    expect(text("old.xlsx")).toBe("the old register");
    symlinkSync("old.xlsx", at("link.xlsx"));
    expect(await put("source.xlsx", "link.xlsx", true)).toBe("written");
    expect(text("old.xlsx")).toBe("the new register");
    expect(readdirSync(folder).sort()).toEqual(["link.xlsx", "old.xlsx", "source.xlsx"]);
  });

  it("is not replaced when another program made it meanwhile", async () => {
    const target = await outFile(at("source.xlsx"), at("new.xlsx"), "new.xlsx", false);
    writeFileSync(at("new.xlsx"), "somebody else's");
    await expect(writeOut(target, BYTES)).rejects.toThrow("was made by another program meanwhile");
    expect(text("new.xlsx")).toBe("somebody else's");
    expect(readdirSync(folder).filter((name) => name.endsWith(".part"))).toEqual([]);
  });

  it("is refused in a sentence where it can't be written", async () => {
    mkdirSync(at("a-folder"));
    expect(await put("source.xlsx", "nowhere/x.xlsx")).toBe("nowhere/x.xlsx cannot be written: its folder is not there.");
    expect(await put("source.xlsx", "source.xlsx/x.xlsx")).toBe("source.xlsx/x.xlsx cannot be written: its folder is not there.");
    expect(await put("source.xlsx", "a-folder", true)).toBe("a-folder cannot be written: that is a folder.");
    symlinkSync("itself.xlsx", at("itself.xlsx"));
    expect(await put("source.xlsx", "itself.xlsx")).toBe("itself.xlsx cannot be written: the link leads to itself.");
    expect(await put("source.xlsx", `${"x".repeat(300)}.xlsx`)).toMatch(/ cannot be written: the name is too long\.$/);
    if (!unix || process.getuid?.() === 0) return;
    mkdirSync(at("locked"), { mode: 0o500 });
    expect(await put("source.xlsx", "locked/x.xlsx")).toBe("locked/x.xlsx cannot be written: this account may not write there.");
    chmodSync(at("locked"), 0o700);
  });
});

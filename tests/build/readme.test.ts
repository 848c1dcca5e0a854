/** README's examples and commands are run, so that they stay true. */
import { existsSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { loadFunctions, metadata } from "./dist";

const root = new URL("../../", import.meta.url);
const readme = readFileSync(new URL("README.md", root), "utf8");
const { scripts } = JSON.parse(readFileSync(new URL("package.json", root), "utf8")) as { scripts: Record<string, string> };

/** `=GEAR.NAME(1, "in")   result` with literal arguments. */
const EXAMPLES = [...readme.matchAll(/^=GEAR\.([A-Z]+)\(([^A-Z\n]*?)\) +(\S+)$/gm)].map(([, name = "", args = "", result = ""]) => ({
  name,
  result,
  args: [...args.matchAll(/"([^"]*)"|(-?[\d.]+)/g)].map((m) => m[1] ?? Number(m[2])),
}));

describe("README", () => {
  it("has worked examples to run", () => {
    expect(EXAMPLES.map((e) => e.name)).toEqual(["THROATVERDICT", "REMOVEAT", "CHAINMIN", "WEARPCT"]);
  });

  it.each(EXAMPLES)("$name($args) gives $result", async ({ name, args, result }) => {
    const { functions } = await loadFunctions();
    const described = metadata().find((f) => f.id === name)!;
    const answer = functions.get(name)!(...args, ...Array.from({ length: described.parameters.length - args.length }, () => null));
    if (result.endsWith("...")) expect(String(answer).startsWith(result.slice(0, -3))).toBe(true);
    else expect(String(answer)).toBe(result);
  });

  it("names only commands and files that there are", () => {
    for (const [, script = ""] of readme.matchAll(/npm run ([a-z:]+)/g)) expect(scripts, script).toHaveProperty([script]);
    for (const script of ["start", "test"]) expect(scripts).toHaveProperty(script);
    for (const [, file = ""] of readme.matchAll(/(sample-workbooks\/[\w.-]+)/g)) expect(existsSync(new URL(file, root)), file).toBe(true);
  });

  it("lists every worksheet function with its arguments", () => {
    for (const f of metadata()) {
      const call = `GEAR.${f.id}(${f.parameters.map((p) => (p.optional === true ? `[${p.name}]` : p.name)).join(", ")})`;
      expect(readme, call).toContain(call);
    }
  });

  it("opens with the job and carries the caution", () => {
    expect(readme).toMatch(/^# Gear Verdicts\n\nA person who inspects rigging hardware and slings/);
    expect(readme.replace(/\s+/g, " ")).toContain("It does not replace the maker's instructions, local codes or licensed practice.");
  });
});

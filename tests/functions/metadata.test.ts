/** What the spreadsheet is told about the functions, against the contract, which is typed out here a second time. */
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import * as functions from "../../src/functions/functions";

interface Parameter {
  readonly name: string;
  readonly description?: string;
  readonly optional?: boolean;
  readonly type?: string;
  readonly dimensionality?: string;
}
interface Generated {
  readonly errors: readonly string[];
  readonly metadataJson: string;
  readonly associate: readonly { readonly functionName: string; readonly id: string }[];
}
const { generateCustomFunctionsMetadata } = createRequire(import.meta.url)("custom-functions-metadata") as {
  generateCustomFunctionsMetadata(path: string): Promise<Generated>;
};

const FILE = fileURLToPath(new URL("../../src/functions/functions.ts", import.meta.url));

/** Ids and argument order are stored in people's workbooks; square brackets are optional arguments. */
const CONTRACT = `
LENGTH(value, unit, [to])
WEARPCT(original, measured)
GROWTHPCT(original, measured)
WEARVERDICT(gear, part, original, measured, [original_across], [measured_across], [gauge], [basis])
THROATVERDICT(original, measured, unit, [gauge], [basis])
TWISTVERDICT(degrees, [basis])
SWIVELVERDICT(clearance, unit, [basis])
CHAINVERDICT(size, measured, unit, [basis])
CHAINMIN(size, unit, [basis])
WIREVERDICT(construction, per_lay, one_strand, [basis])
ROPEVERDICT(nominal, measured, unit, [basis])
GROOVEVERDICT(rope, groove, unit, [basis])
REMOVEAT(gear, part, original, unit, [basis])
DRESSLEFT(gear, part, original, measured, [basis])
VERDICT(headers, row, [basis])
REASON(headers, row, [basis])
JUDGE(headers, rows, [basis])
JUDGEROW(headers, row, [basis], [headers_2], [row_2])
JUDGELIST(gear, checks, as_new, now, [basis])
WORST(verdicts)
NEXTDUE(gear, service, last, [basis])
DUESTATE(next_due, as_of, [lead_days])
WEARRATE(dates, readings)
REACHES(dates, readings, limit, [confidence])
LEGLOAD(load, legs, angle, [angle_from])
RATEDAT(wll, hitch, legs, angle, [angle_from], [choke_angle])
HOTSHARE(grade, temperature, unit, [state])
SIDESHARE(gear, angle)
SOURCE(criterion)
`;
const contract = new Map(
  CONTRACT.trim()
    .split("\n")
    .map((line) => [line.slice(0, line.indexOf("(")), line]),
);

/** Functions of the contract that this release must have. */
const RELEASED = [
  "LENGTH",
  "WEARPCT",
  "GROWTHPCT",
  "WEARVERDICT",
  "THROATVERDICT",
  "TWISTVERDICT",
  "SWIVELVERDICT",
  "CHAINVERDICT",
  "CHAINMIN",
  "WIREVERDICT",
  "ROPEVERDICT",
  "GROOVEVERDICT",
  "REMOVEAT",
  "DRESSLEFT",
  "VERDICT",
  "REASON",
  "JUDGE",
  "JUDGEROW",
  "WORST",
  "NEXTDUE",
  "DUESTATE",
  "JUDGELIST",
  "WEARRATE",
  "REACHES",
  "LEGLOAD",
  "RATEDAT",
  "HOTSHARE",
  "SIDESHARE",
  "SOURCE",
];
/** Arguments that are ranges; the rule sets may come as the range of the house limits, and one cell is a range too. */
const RANGES = new Set([
  "headers",
  "row",
  "rows",
  "verdicts",
  "dates",
  "readings",
  "basis",
  "headers_2",
  "row_2",
  "checks",
  "as_new",
  "now",
]);

const generated = await generateCustomFunctionsMetadata(FILE);
const metadata = (
  JSON.parse(generated.metadataJson) as {
    functions: {
      id: string;
      name: string;
      description?: string;
      parameters: Parameter[];
      result: { dimensionality?: string };
      options?: Record<string, unknown>;
    }[];
  }
).functions;

describe("the functions' metadata", () => {
  it("is generated without errors", () => {
    expect(generated.errors).toEqual([]);
    expect(metadata.length).toBeGreaterThan(0);
  });

  it("has every function of this release, and none that the contract does not know", () => {
    const ids = metadata.map((f) => f.id);
    expect(RELEASED.filter((id) => !ids.includes(id))).toEqual([]);
    expect(ids.filter((id) => !contract.has(id))).toEqual([]);
    expect(new Set(ids).size).toBe(ids.length);
  });

  for (const f of metadata) {
    it(`${f.id} has the arguments of the contract, in its order`, () => {
      const told = f.parameters.map((p) => (p.optional === true ? `[${p.name}]` : p.name)).join(", ");
      expect(`${f.id}(${told})`).toBe(contract.get(f.id));
      expect(f.name).toBe(f.id);
    });
    it(`${f.id} and its arguments are described in sentences`, () => {
      expect(f.description ?? "").toMatch(/^[A-Z].{20,}\.$/s);
      for (const p of f.parameters) expect(p.description ?? "", p.name).toMatch(/^\w.{3,}\.$/s);
    });
    it(`${f.id} takes any cell, and a range where the contract has one`, () => {
      for (const p of f.parameters) {
        expect(p.type, p.name).toBe("any");
        expect(p.dimensionality ?? "scalar", p.name).toBe(RANGES.has(p.name) ? "matrix" : "scalar");
      }
      expect(f.result.dimensionality ?? "scalar").toBe(f.id === "JUDGE" ? "matrix" : "scalar");
    });
    it(`${f.id} is neither volatile nor streaming nor bound to a sheet`, () => {
      for (const option of ["volatile", "stream", "cancelable", "requiresAddress", "requiresParameterAddresses"])
        expect(f.options?.[option] ?? false, option).toBe(false);
    });
  }

  it("names exactly the functions that the file exports", () => {
    expect(generated.associate.map((a) => a.functionName).sort()).toEqual(Object.keys(functions).sort());
  });
  it("optional arguments come last", () => {
    for (const f of metadata) {
      const first = f.parameters.findIndex((p) => p.optional === true);
      if (first >= 0)
        expect(
          f.parameters.slice(first).every((p) => p.optional === true),
          f.id,
        ).toBe(true);
    }
  });
  it("every basis argument says what it takes", () => {
    for (const f of metadata)
      for (const p of f.parameters)
        if (p.name === "basis") expect(p.description, f.id).toMatch(/^Rule sets.*range of the sheet House limits\.$/);
  });
});

describe("the functions' file", () => {
  it("is thin: each function is a few lines over the engine", () => {
    const bodies = readFileSync(FILE, "utf8")
      .split(/\nexport function /)
      .slice(1)
      .map((text) => text.slice(0, text.indexOf("\n}")));
    expect(bodies).toHaveLength(Object.keys(functions).length);
    for (const body of bodies) expect(body.split("\n").length, body.slice(0, 40)).toBeLessThanOrEqual(15);
  });
});

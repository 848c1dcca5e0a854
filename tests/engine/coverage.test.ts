import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { compareBases } from "../../src/engine/compare";
import { coveragePage } from "../../src/engine/coverage";
import { GEAR } from "../../src/engine/gear/index";
import { LEFT_OUT } from "../../src/engine/left-out";
import { reportOn } from "../../src/engine/report";

describe("the page of clauses", () => {
  it("is what the records say; run npm run clauses after changing one", () => {
    expect(readFileSync(new URL("../../src/engine/CLAUSES.md", import.meta.url), "utf8")).toBe(coveragePage());
  });
  it("has a line for every criterion and a reason for everything left out", () => {
    const page = coveragePage();
    const rows = page.split("\n").filter((line) => line.startsWith("| ") && !line.startsWith("| ---"));
    const criteria = GEAR.reduce((sum, kind) => sum + kind.criteria.length, 0);
    const headings = page.split("\n").filter((line) => line.startsWith("## ")).length;
    expect(rows.length).toBe(criteria + LEFT_OUT.length + headings);
    for (const { what, why } of LEFT_OUT) expect(what !== "" && why !== "", what).toBe(true);
  });
});

describe("one item under each rule set", () => {
  const headings = ["Id", "Gear", "Throat as-new (in)", "Throat now (in)", "Section as-new (in)", "Section now (in)", "Twist deg", "Latch works", "Cracks", "Identification legible"];
  const compare = (throat: number, section: number): Record<string, string> => {
    const report = reportOn([headings, ["H-1", "hook", 2, throat, 1, section, 0, "yes", "none", "yes"]], { basis: ["standard"], asOf: 46351 })!;
    return Object.fromEntries(compareBases(report.items[0]!, report.headings, report.asOf).map((c) => [c.basis, c.verdict.decision]));
  };
  it("shows where the sources disagree: a throat of 2.15 in from 2 in has grown 7.5 %", () => {
    // law and Alberta 15 %, Germany 10 %, standard and Queensland 5 %, strict nothing at all.
    expect(compare(2.15, 1)).toMatchObject({ law: "KEEP", standard: "REMOVE", strict: "REMOVE", alberta: "KEEP", queensland: "REMOVE", germany: "KEEP" });
  });
  it("holds a saddle of 0.945 in from 1 in to each rule: 5.5 % of the diameter, 10.7 % of the area", () => {
    // Germany 5 % of the height, Alberta 10 % of the area, Queensland and standard 10 % of the dimension, practice 5 % in the saddle.
    expect(compare(2, 0.945)).toMatchObject({ standard: "KEEP", practice: "REMOVE", alberta: "REMOVE", queensland: "KEEP", germany: "REMOVE", ships: "KEEP" });
  });
});

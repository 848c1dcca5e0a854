import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { compareBases } from "../../src/engine/report/compare-rules";
import { coveragePage } from "../../src/engine/pages/clauses";
import { INTERVAL_CRITERIA } from "../../src/engine/due/interval-criteria";
import { GEAR } from "../../src/engine/gear/index";
import { LEFT_OUT, unconfirmed } from "../../src/engine/pages/not-judged";
import { reportOn } from "../../src/engine/report/report";

describe("the page of clauses", () => {
  it("is what the records say; run npm run clauses after changing one", () => {
    expect(readFileSync(new URL("../../src/engine/CLAUSES.md", import.meta.url), "utf8")).toBe(coveragePage());
  });
  it("has a line for every criterion and a reason for everything left out", () => {
    const page = coveragePage();
    const rows = page.split("\n").filter((line) => line.startsWith("| ") && !line.startsWith("| ---"));
    const criteria = GEAR.reduce((sum, kind) => sum + kind.criteria.length, INTERVAL_CRITERIA.length);
    const headings = page.split("\n").filter((line) => line.startsWith("## ")).length;
    expect(rows.length).toBe(criteria + LEFT_OUT.length + unconfirmed().length + headings);
    for (const { what, why } of LEFT_OUT) expect(what !== "" && why !== "", what).toBe(true);
  });
});

/** Published figures of the reference that no criterion holds: a document and a word of what is said. */
const PUBLISHED: readonly (readonly [document: string, says: string])[] = [
  ["German hoist handbook", "1.1 times"],
  ["TM 5-3810-294-34", "10 percent"],
  ["Chinese practice", "bushing"],
  ["Chinese practice", "0.25 %"],
  ["Trade magazine", "neck"],
  ["Trade magazine", "1 diameter"],
  ["ASME B30.10-2005", "0.02 in"],
  ["DOE-STD-1090-96", "10 ton"],
  ["WAC 296-304-07005", "2 times"],
  ["OSHA letter", "15 %"],
  ["UFGS 14636N", "1/8 in"],
  ["Shackle makers", "8 %"],
  ["New Zealand", "one thread"],
  ["B30.26", "120 degrees"],
  ["ASME B30.26", "2.0 to 2.2"],
  ["WAC 296-54-54730", "jaw"],
  ["Ontario", "bolt"],
  ["NWCG PMS 448", "5 degrees"],
  ["Inspection firm", "5 %"],
  ["Trade magazine", "2 mm"],
  ["Trade magazine", "holes"],
  ["WAC 296-155-56110", "1.5 diameters"],
  ["WAC 296-155-56110", "under 1 diameter"],
  ["WAC 296-155-56110", "flush"],
  ["DOE-STD-1090-96", "spacer"],
  ["Rigging page", "2 clips"],
  ["WAC 296-874-30020", "3 clips"],
  ["WAC 296-155-33915", "tighten again"],
  ["ASME B30.5", "15"],
  ["ASME B30.5", "16"],
  ["Groove gauge", "2.5 %"],
  ["Wire rope handbook", "150 degrees"],
  ["European rope supplier", "14 %"],
  ["ILO", "5.5 diameters"],
  ["WAC 296-54-54750", "20"],
  ["TM 5-3810-294-34", "3.013"],
  ["29 CFR 1926.251", "125 %"],
  ["NOAA", "3 %"],
  ["WAC 296-24-29413", "third of a link"],
  ["Queensland", "5.5 mm"],
  ["Queensland", "260 °C"],
  ["DOE-STD-1090-96", "2 times the rating"],
  ["DOE-STD-1090-96", "3 rope diameters"],
  ["Wire rope handbooks", "25 rope diameters"],
  ["WAC 296-24-29401", "15 %"],
  ["ASME B30.9", "broken strand"],
  ["NAVEDTRA 14080", "60 days"],
  ["ASME B30.2, B30.3, B30.16", "12"],
  ["Mich. R 408.10582", "18 in"],
  ["WAC 296-874-30016", "6 in a lay"],
  ["WAC 296-24-24513", "month"],
  ["WAC 296-24-29427", "1.5 times"],
  ["29 CFR 1910.184", "full tucks"],
  ["EN 818-4", "1.4"],
  ["AS 1353", "1.73"],
  ["Wire rope handbooks", "D/d"],
  ["Wire rope handbooks", "splices"],
  ["Alberta OHS Code", "20 %"],
  ["ASME B30.10", "each day"],
  ["DOE-STD-1090-96", "184"],
  ["VBG 9a", "3 years"],
  ["ISO 4309:2010", "0.16"],
  ["ISO 4309:2010", "rotation-resistant"],
];

describe("what is left out", () => {
  it.each(PUBLISHED)("%s: %s has a line", (document, says) => {
    expect(LEFT_OUT.filter((line) => line.document.includes(document) && line.what.includes(says))).not.toEqual([]);
  });
  it("says nothing twice", () => {
    const lines = LEFT_OUT.map(({ document, clause, what }) => `${document} ${clause} ${what}`);
    expect(lines.filter((line, at) => lines.indexOf(line) !== at)).toEqual([]);
  });
});

describe("one item under each rule set", () => {
  const headings = [
    "Id",
    "Gear",
    "Throat as-new (in)",
    "Throat now (in)",
    "Section as-new (in)",
    "Section now (in)",
    "Twist deg",
    "Latch works",
    "Cracks",
    "Identification legible",
  ];
  const compare = (throat: number, section: number): Record<string, string> => {
    const report = reportOn([headings, ["H-1", "hook", 2, throat, 1, section, 0, "yes", "none", "yes"]], {
      basis: ["standard"],
      asOf: 46351,
    })!;
    return Object.fromEntries(compareBases(report.items[0]!, report.headings, report.asOf).sets.map((c) => [c.basis, c.decision]));
  };
  it("shows where the sources disagree: a throat of 2.15 in from 2 in has grown 7.5 %", () => {
    // law and Alberta 15 %, Germany 10 %, standard and Queensland 5 %, strict nothing at all.
    expect(compare(2.15, 1)).toMatchObject({
      law: "KEEP",
      standard: "REMOVE",
      strict: "REMOVE",
      alberta: "KEEP",
      queensland: "REMOVE",
      germany: "KEEP",
    });
  });
  it("holds a saddle of 0.945 in from 1 in to each rule: 5.5 % of the diameter, 10.7 % of the area", () => {
    // Germany 5 % of the height, Alberta 10 % of the area, Queensland and standard 10 % of the dimension, practice 5 % in the saddle.
    expect(compare(2, 0.945)).toMatchObject({
      standard: "KEEP",
      practice: "REMOVE",
      alberta: "REMOVE",
      queensland: "KEEP",
      germany: "REMOVE",
      ships: "KEEP",
    });
  });
});

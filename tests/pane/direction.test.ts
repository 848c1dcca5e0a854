import { describe, expect, it } from "vitest";
import { type CellValue } from "../../src/engine/reading/cell-value";
import { type ItemResult, type Report } from "../../src/engine/report/model";
import { reportOn } from "../../src/engine/report/report";
import { acrossIn, limitWords } from "../../src/taskpane/card/direction";
import { TODAY } from "./sample";

const HEADINGS = ["Id", "Gear", "Unit", "Section as-new", "Section now", "Across as-new", "Across now"] as const;
const read = (unit: string | null, cells: readonly CellValue[]): { report: Report; item: ItemResult } => {
  const report = reportOn([HEADINGS, ["S-1", "shackle", unit, ...cells]], { basis: ["practice"], asOf: TODAY })!;
  return { report, item: report.items[0]! };
};
/** The lines of wear as the card tells them apart. */
const told = (unit: string | null, cells: readonly CellValue[]): string[] => {
  const { item } = read(unit, cells);
  const across = acrossIn(item.verdict);
  return item.verdict.findings
    .filter((f) => f.check === "bow wear")
    .map((f) => `${across.has(f) ? "across " : ""}${f.measured ?? ""}, ${limitWords(f, item.gear)}`)
    .sort();
};

describe("wear in two directions", () => {
  it("tells the direction and the limit of each line", () => {
    expect(told("in", [1, "0.97", 1, "0.98"])).toEqual([
      "0.97 in, 10 % of as-new",
      "0.97 in, worn in two directions, 5 % of as-new",
      "across 0.98 in, 10 % of as-new",
      "across 0.98 in, worn in two directions, 5 % of as-new",
    ]);
  });

  it("reads fractions and figures without a unit as the check does", () => {
    expect(told("in", ["1 1/8", "1 1/16", "1 1/8", "1 3/32"]).filter((line) => line.startsWith("across"))).toHaveLength(2);
    expect(told(null, ["1", "0.97", "1", "0.98"]).filter((line) => line.startsWith("across"))).toHaveLength(2);
  });

  it("calls nothing across where one direction was read, or both read the same", () => {
    expect(told("in", [1, "0.97", null, null])).toEqual(["0.97 in, 10 % of as-new"]);
    expect(told("in", [1, "0.97", 1, "0.97"]).some((line) => line.startsWith("across"))).toBe(false);
  });
});

/** The unit of a row in the register: none is made up for a size that has none. */
import { describe, expect, it } from "vitest";
import type { FieldId } from "../../src/engine/columns";
import { matchHeadings } from "../../src/engine/log/match-headings";
import type { CellValue } from "../../src/engine/reading/cell-value";
import { rowUnitOf } from "../../src/excel/register/written-cell";

const headings = (size: string): ReturnType<typeof matchHeadings>["matches"] =>
  matchHeadings(["Id", "Gear", size, "Throat new (in)", "Throat now (in)"]).matches;
const row = (size: CellValue, unit: CellValue = null): Map<FieldId, CellValue> =>
  new Map<FieldId, CellValue>([
    ["size", size],
    ["unit", unit],
    ["throatNew", "-"],
    ["throatNow", "2"],
  ]);

describe("the unit of a row", () => {
  it("is the one of its headings, where no size stands bare beside them", () => {
    expect(rowUnitOf(row(null), headings("Size"))).toBe("in");
    expect(rowUnitOf(row('1"'), headings("Size"))).toBe("in");
    expect(rowUnitOf(row("G80 chain"), headings("Size"))).toBe("in");
  });

  it("is not told where the size is bare and its heading names no unit", () => {
    for (const size of ["1", "5/8", "1 1/4", 12, "0.5"]) expect(rowUnitOf(row(size), headings("Size")), String(size)).toBeNull();
  });

  it("is the row's own, whatever the size", () => {
    expect(rowUnitOf(row("1", "mm"), headings("Size"))).toBe("mm");
  });
});

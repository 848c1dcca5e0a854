/** Which parts of an overloaded assembly are out until somebody has looked at them, and from which day. */
import { describe, expect, it } from "vitest";
import { type CellValue } from "../../src/engine/reading/cell-value";
import { Assemblies } from "../../src/engine/report/assemblies";

const TODAY = 46_200;
type Part = readonly [name: CellValue, inspected: CellValue, overload: boolean];
/** By row, the day of the overload that it is told of. */
function told(...parts: readonly Part[]): Readonly<Record<number, number>> {
  const assemblies = new Assemblies(TODAY);
  parts.forEach(([name, inspected, overload], row) => {
    assemblies.add(row, name, inspected, overload);
  });
  return Object.fromEntries(assemblies.overloaded());
}

describe("the parts of an assembly", () => {
  it("are told of the day on which another was found stretched; the stretched one is out by itself", () => {
    expect(told(["A", 46_000, false], ["A", 46_100, true], ["A", 46_000, false])).toEqual({ 0: 46_100, 2: 46_100 });
  });
  it("are told of nothing where none is stretched, and nothing is told in other assemblies", () => {
    expect(told(["A", 46_000, false], ["A", 46_000, false])).toEqual({});
    expect(told(["A", 46_000, true], ["B", 46_000, false])).toEqual({});
  });
  it("of several that are stretched the latest day counts; its own part is told of the latest of the others", () => {
    expect(told(["A", 46_010, true], ["A", 46_030, true], ["A", 46_020, true], ["A", 46_000, false])).toEqual({
      0: 46_030,
      1: 46_020,
      2: 46_030,
      3: 46_030,
    });
    // The order of the rows changes nothing.
    expect(told(["A", 46_030, true], ["A", 46_020, true], ["A", 46_010, true])).toEqual({ 0: 46_020, 1: 46_030, 2: 46_030 });
  });
  it("two on one day are each told of the other", () => {
    expect(told(["A", 46_010, true], ["A", 46_010, true])).toEqual({ 0: 46_010, 1: 46_010 });
  });
  it("a stretched part without a day that can be read counts from the day of judging", () => {
    for (const inspected of ["", null, "some time", "03/04/2026"])
      expect(told(["A", inspected, true], ["A", 46_000, false])).toEqual({ 1: TODAY });
    expect(told(["A", "2026-03-31", true], ["A", 46_000, false])).toEqual({ 1: 46_112 });
  });
  it("belong together whatever the case and the blanks of the name; rows without a name belong nowhere", () => {
    expect(told(["Gantry 1", 46_000, true], [" gantry  1", 46_000, false], ["GANTRY 1", 46_000, false])).toEqual({ 1: 46_000, 2: 46_000 });
    expect(told(["", 46_000, true], ["", 46_000, false], [null, 46_000, false], [0, 46_000, false])).toEqual({});
    expect(told([7, 46_000, true], ["7", 46_000, false])).toEqual({ 1: 46_000 });
  });
});

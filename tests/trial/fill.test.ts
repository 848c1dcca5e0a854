import { describe, expect, it } from "vitest";
import { Book } from "../../src/trial/book/book";
import { type Cell, type Sheet } from "../../src/trial/book/book";
import { copies, filled } from "../../src/trial/view/fill";

function column(cells: (Cell | null)[]): Sheet {
  const sheet = new Book().addSheet("Sheet1");
  cells.forEach((cell, row) => {
    if (cell) sheet.rows.set(row, new Map([[0, cell]]));
  });
  return sheet;
}
const down = (sheet: Sheet, sources: number[], targets: number[]): unknown[] =>
  filled(sheet, { rows: sources, cols: [0] }, { rows: targets, cols: [0] }, true).map(({ value }) => value);

describe("filling down", () => {
  it("a formula moves along", () => {
    expect(down(column([{ value: 4, formula: "=B1*$C$1" }]), [0], [1, 2])).toEqual(["=B2*$C$1", "=B3*$C$1"]);
  });
  it("a single number is repeated", () => {
    expect(down(column([{ value: 7 }]), [0], [1, 2])).toEqual([7, 7]);
  });
  it("numbers an equal step apart go on", () => {
    expect(down(column([{ value: 10 }, { value: 12.5 }]), [0, 1], [2, 3])).toEqual([15, 17.5]);
  });
  it("numbers without a step are repeated in turn", () => {
    expect(down(column([{ value: 1 }, { value: 2 }, { value: 9 }]), [0, 1, 2], [3, 4, 5, 6])).toEqual([1, 2, 9, 1]);
  });
  it("a date goes on day by day", () => {
    expect(down(column([{ value: 46_351, format: "yyyy-mm-dd" }]), [0], [1, 2])).toEqual([46_352, 46_353]);
  });
  it("a text stays a text, whatever it looks like", () => {
    expect(down(column([{ value: "3/4" }]), [0], [1])).toEqual(["'3/4"]);
  });
  it("a text in a text cell needs no mark", () => {
    expect(down(column([{ value: "3/4", format: "@" }]), [0], [1])).toEqual(["3/4"]);
  });
  it("numbers are repeated upwards, not continued", () => {
    expect(down(column([null, null, { value: 10 }, { value: 12 }]), [2, 3], [0, 1])).toEqual([10, 12]);
  });
});

describe("filling to the right", () => {
  it("a formula moves along its columns", () => {
    const sheet = column([{ value: 1, formula: "=A5+$A6" }]);
    expect(filled(sheet, { rows: [0], cols: [0] }, { rows: [0], cols: [1, 2] }, false).map(({ value }) => value)).toEqual([
      "=B5+$A6",
      "=C5+$A6",
    ]);
  });
});

describe("copying", () => {
  it("a small block is laid over a larger target again and again, and blanks clear", () => {
    const sheet = column([{ value: 1, formula: "=B1" }, null]);
    sheet.at(4, 2).value = "old";
    const placed = copies(sheet, { rows: [0, 1], cols: [0] }, sheet, { rows: [3, 4, 5], cols: [2] });
    expect(placed.map(({ row, column: at, value }) => [row, at, value])).toEqual([
      [3, 2, "=D4"],
      [4, 2, ""],
      [5, 2, "=D6"],
    ]);
  });
});

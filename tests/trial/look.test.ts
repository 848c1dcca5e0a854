import { BooleanNumber, HorizontalAlign, WrapStrategy } from "@univerjs/core";
import { describe, expect, it } from "vitest";
import { Book } from "../../src/trial/book/book";
import { editedText, lookOf } from "../../src/trial/view/look";

function register(): Book {
  const book = new Book();
  const sheet = book.addSheet("Register");
  book.tables.push({
    id: "1",
    name: "Gear",
    sheet,
    box: { row: 3, column: 0, rows: 4, columns: 2 },
    style: "TableStyleLight2",
    showBanded: true,
    filters: new Map(),
  });
  return book;
}

describe("how a cell looks", () => {
  it("figures stand right, texts left, errors in the middle, unless the cell says otherwise", () => {
    const book = register();
    const sheet = book.sheets[0]!;
    Object.assign(sheet.at(0, 0), { value: 1 });
    Object.assign(sheet.at(0, 1), { value: "1" });
    Object.assign(sheet.at(0, 2), { value: null, error: "#N/A" });
    Object.assign(sheet.at(0, 3), { value: 1, style: { align: "Left" } });
    const align = (column: number): unknown => lookOf(book, sheet, 0, column, [])?.style.ht;
    expect([0, 1, 2, 3].map(align)).toEqual([HorizontalAlign.RIGHT, HorizontalAlign.LEFT, HorizontalAlign.CENTER, HorizontalAlign.LEFT]);
  });
  it("a number is shown by its format and does not run into the next cell", () => {
    const book = register();
    const sheet = book.sheets[0]!;
    Object.assign(sheet.at(0, 0), { value: 0.083, format: "0.0%" });
    expect(lookOf(book, sheet, 0, 0, [])).toMatchObject({ text: "8.3%", style: { tb: WrapStrategy.CLIP } });
  });
  it("a table has a heading row and bands, also where cells are blank", () => {
    const book = register();
    const sheet = book.sheets[0]!;
    const fill = (row: number): unknown => lookOf(book, sheet, row, 1, [])?.style.bg?.rgb;
    expect(lookOf(book, sheet, 3, 0, [])?.style).toMatchObject({ bl: BooleanNumber.TRUE, cl: { rgb: "#FFFFFF" } });
    expect([fill(4), fill(5), fill(6)]).toEqual([fill(6), undefined, fill(4)]);
    expect(lookOf(book, sheet, 7, 1, [])).toBeNull();
  });
  it("the cell's own fill wins over the band, a conditional format over both, the strongest last", () => {
    const book = register();
    const sheet = book.sheets[0]!;
    Object.assign(sheet.at(4, 0), { value: "x", style: { fill: "#EEEEEE" } });
    expect(lookOf(book, sheet, 4, 0, [])?.style.bg?.rgb).toBe("#EEEEEE");
    const box = { row: 4, column: 0, rows: 1, columns: 1 };
    const rules = [
      { id: "1", box, formula: "=TRUE", fill: "#F8CBCB", stopIfTrue: false },
      { id: "2", box, formula: "=TRUE", fill: "#FFEBB0", bold: true, stopIfTrue: false },
    ];
    expect(lookOf(book, sheet, 4, 0, rules)?.style).toMatchObject({ bg: { rgb: "#F8CBCB" }, bl: BooleanNumber.TRUE });
  });
  it("a number format that is not known shows the figure", () => {
    const book = register();
    const sheet = book.sheets[0]!;
    Object.assign(sheet.at(0, 0), { value: 12.5, format: "[DBNum1]????" });
    expect(lookOf(book, sheet, 0, 0, [])?.text).not.toBe("");
  });
});

describe("what the editor opens with", () => {
  it.each([
    ["a formula", { value: 3, formula: "=[@Id]" }, "=[@Id]"],
    ["a number with all its digits", { value: 0.2 + 0.1, format: "0.0" }, "0.3"],
    ["a share as per cent", { value: 0.083, format: "0%" }, "8.3%"],
    ["a date", { value: 46_351, format: "d mmm yyyy" }, "11/25/2026"],
    ["a date with a time", { value: 46_351.5, format: "yyyy-mm-dd" }, "11/25/2026 12:00:00"],
    ["a text", { value: "1 1/4", format: "@" }, "1 1/4"],
    ["a logical value", { value: true }, "TRUE"],
    ["an error", { value: null, error: "#N/A" }, "#N/A"],
    ["nothing", { value: null }, ""],
  ])("%s", (_, cell, text) => {
    expect(editedText(cell)).toBe(text);
  });
});

import { describe, expect, it } from "vitest";
import { Book } from "../../src/trial/book/book";
import { type Validation } from "../../src/trial/book/book";
import { listAt, offered, refusal } from "../../src/trial/view/lists";

function withList(source: string, more: Partial<Validation> = {}): { book: Book; validation: Validation } {
  const book = new Book();
  const sheet = book.addSheet("Register");
  const notes = book.addSheet("Gear notes");
  ["hook", "shackle", "", "swivel"].forEach((word, row) => {
    notes.at(row, 0).value = word;
  });
  book.names.set("GearKinds", "='Gear notes'!$A$1:$A$4");
  const validation: Validation = {
    box: { row: 4, column: 1, rows: 10, columns: 1 },
    rule: { list: { inCellDropDown: true, source } },
    ignoreBlanks: true,
    ...more,
  };
  sheet.validations = [validation];
  return { book, validation };
}

describe("what a drop-down list offers", () => {
  it.each([
    ["words with commas", "hook, shackle,swivel"],
    ["cells of another sheet", "='Gear notes'!$A$1:$A$4"],
    ["a named range", "=gearkinds"],
  ])("%s", (_, source) => {
    const { book, validation } = withList(source);
    expect(offered(book, book.sheets[0]!, validation)).toEqual(["hook", "shackle", "swivel"]);
  });
  it("nothing outside its cells", () => {
    const { book } = withList("hook");
    const sheet = book.sheets[0]!;
    expect([listAt(sheet, 3, 1), listAt(sheet, 14, 1), listAt(sheet, 4, 2)]).toEqual([undefined, undefined, undefined]);
    expect(listAt(sheet, 13, 1)).toBeDefined();
  });
});

describe("an entry in a cell with a list", () => {
  const said = (text: string, alert?: Validation["errorAlert"]): string | null => {
    const { book } = withList("hook,shackle", alert ? { errorAlert: alert } : {});
    return refusal(book, book.sheets[0]!, 5, 1, text);
  };
  it("may stand when it is in the list, in any case, or blank, or a formula", () => {
    expect([said("Hook"), said(""), said("=B4")]).toEqual([null, null, null]);
  });
  it("is refused with the list when it is not in it", () => {
    expect(said("banana")).toBe('"banana" is not in this cell\'s list: hook, shackle.');
  });
  it("is refused in the words of the rule's own alert", () => {
    expect(said("banana", { title: "Gear", message: "Choose a kind of gear.", showAlert: true, style: "Stop" })).toBe(
      "Choose a kind of gear.",
    );
  });
  it("may stand when the rule only warns", () => {
    expect(said("banana", { title: "", message: "", showAlert: true, style: "Warning" })).toBeNull();
  });
});

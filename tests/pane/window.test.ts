import { describe, expect, it } from "vitest";
import { itemEntries } from "../../src/taskpane/shared/list/entries";
import { layOut, linesBetween, nextItem } from "../../src/taskpane/shared/list/window";
import { type Entry } from "../../src/taskpane/shared/list/entries";
import { dueRowHeight } from "../../src/taskpane/due/DueRow";
import { linesOf, rowHeight, USUAL } from "../../src/taskpane/shared/list/type-size";
import { item, TODAY } from "./sample";

const many = itemEntries(Array.from({ length: 10_000 }, (_, row) => item(row, { id: `TP-${row}` })));
const layout = layOut(many, () => 90, 30);

describe("the height of a row", () => {
  it("follows the size of its type", () => {
    expect(rowHeight(USUAL, 3)).toBe(90);
    expect(rowHeight({ name: 30, line: 24, letters: 33 }, 3)).toBe(22 + 30 + 72);
  });

  it.each([
    ["", 10, 1],
    ["ten letter", 10, 1],
    ["ten letters", 10, 2],
    ["one two three four", 9, 3],
    ["a-word-of-twenty-six-letters", 10, 3],
    ["no a-word-of-twenty", 10, 3],
  ])("has lines for all of %j at %i letters: %i", (text, letters, lines) => {
    expect(linesOf(text, letters)).toBe(lines);
  });

  it("shows what is wrong with a date and how to write it in full, and a date in one line; the short reason takes another", () => {
    const note = '"02/03/2026": day and month can be read both ways; write 2 Mar 2026 or 3 Feb 2026';
    expect(dueRowHeight(item(1, { id: "TP-1", nextDue: null, dueNote: note, place: "" }), TODAY, USUAL)).toBe(rowHeight(USUAL, 3));
    expect(dueRowHeight(item(1, { id: "TP-1", nextDue: null, dueNote: note, place: "" }), TODAY, { ...USUAL, letters: 30 })).toBe(
      rowHeight(USUAL, 4),
    );
    expect(dueRowHeight(item(1, { id: "TP-1", place: "a place with a name so long that it does not fit" }), TODAY, USUAL)).toBe(
      rowHeight(USUAL, 2),
    );
  });
});

describe("the window over a long list", () => {
  it("is as high as all its lines", () => {
    expect(layout.height).toBe(900_000);
  });

  it("draws only what is in sight, with four spare lines on each side", () => {
    // 600 px from 450,000: lines 5000 to 5006, and 4 more on each side.
    expect(linesBetween(layout, 450_000, 450_600, -1)).toEqual(Array.from({ length: 15 }, (_, i) => 4996 + i));
  });

  it("keeps the line that the keyboard stands on, wherever it is", () => {
    expect(linesBetween(layout, 450_000, 450_600, 7)[0]).toBe(7);
    expect(linesBetween(layout, 0, 600, 9_999).at(-1)).toBe(9_999);
  });

  it("gives every item its own height", () => {
    expect(layOut(many.slice(0, 3), ({ row }) => 10 * (row + 1), 30).tops).toEqual([0, 10, 30, 60]);
  });

  it("steps over headings", () => {
    const heading: Entry = { kind: "heading", key: "h", text: "Overdue", count: 1, level: 1 };
    const grouped = layOut([heading, many[0]!, heading, many[1]!], () => 58, 30);
    expect(grouped.tops).toEqual([0, 30, 88, 118, 176]);
    expect(nextItem(grouped.items, 1, "ArrowDown", 5)).toBe(3);
    expect(nextItem(grouped.items, 3, "ArrowUp", 5)).toBe(1);
  });

  it.each([
    ["ArrowDown", 11],
    ["ArrowUp", 9],
    ["PageDown", 15],
    ["PageUp", 5],
    ["Home", 0],
    ["End", 9_999],
    ["x", null],
  ])("%s leads from line 10 to %s", (key, to) => {
    expect(nextItem(layout.items, 10, key, 5)).toBe(to);
  });

  it("stays at the ends, and has nowhere to go when it is empty", () => {
    expect(nextItem(layout.items, 0, "ArrowUp", 5)).toBe(0);
    expect(nextItem(layout.items, 9_999, "PageDown", 5)).toBe(9_999);
    expect(nextItem([], -1, "ArrowDown", 5)).toBeNull();
  });
});

import { describe, expect, it } from "vitest";
import { doubled } from "../../src/taskpane/log/doubled";
import { dueEntries } from "../../src/taskpane/due/due-entries";
import { matching } from "../../src/taskpane/shared/list/entries";
import { byGear, byPlace, narrowed } from "../../src/taskpane/shared/list/narrowed";
import { unbroken } from "../../src/taskpane/shared/unbroken";
import { rowInside } from "../../src/taskpane/state/row-inside";
import { usableFirst } from "../../src/taskpane/lift/usable-first";
import { worstFirst } from "../../src/taskpane/items/order";
import { HEADINGS, ITEMS, item, LOG_PLACE, report, TODAY } from "./sample";

const ids = (items: readonly { id: string }[]): string[] => items.map((one) => one.id);

describe("the list of items", () => {
  it("stands worst first, and among equals the one nearest to or furthest past its limit", () => {
    expect(ids(worstFirst(ITEMS))).toEqual(["TP-4", "TP-2", "TP-5", "TP-3", "TP-1"]);
  });

  it("puts an allowance of nothing that is used before every other share", () => {
    const items = [
      item(1, { id: "a", decision: "REMOVE", share: 3 }),
      item(2, { id: "b", decision: "REMOVE", share: Infinity }),
      item(3, { id: "c", decision: "REMOVE", share: Infinity }),
      item(4, { id: "d", decision: "REMOVE", share: null }),
    ];
    expect(ids(worstFirst(items))).toEqual(["b", "c", "a", "d"]);
  });

  it("shows all when no decision is chosen, and only the chosen ones otherwise", () => {
    expect(matching(ITEMS, [], "")).toHaveLength(5);
    expect(ids(matching(ITEMS, ["REMOVE", "WATCH"], ""))).toEqual(["TP-2", "TP-3", "TP-4"]);
  });

  it.each([
    ["slipway", ["TP-2"]],
    ["SHACKLE bow", ["TP-3"]],
    ["beyond limit", ["TP-2"]],
    ["tp-4 ", ["TP-4"]],
    ["tp- zzz", []],
  ])("finds by every word of %j", (search, found) => {
    expect(ids(matching(ITEMS, [], search))).toEqual(found);
  });
});

describe("the search", () => {
  const gear = [
    item(1, { id: "9", reason: "Twist 3 degrees; see 101." }),
    item(2, { id: "1101" }),
    item(3, { id: "1012" }),
    item(4, { id: "101", place: "Slipway" }),
    item(5, { id: "7", gearText: "Hook 101" }),
  ];

  it("lists the id itself first, then ids that begin with it, then ids that hold it, then the rest", () => {
    expect(ids(matching(gear, [], "101"))).toEqual(["101", "1012", "1101", "9", "7"]);
  });

  it("of gear to be picked passes over decisions and reasons", () => {
    expect(ids(matching(gear, [], "101", "gear"))).toEqual(["101", "1012", "1101", "7"]);
    expect(ids(matching(gear, [], "twist", "gear"))).toEqual([]);
    expect(ids(matching(gear, [], "keep", "gear"))).toEqual([]);
    expect(ids(matching(gear, [], "slipway", "gear"))).toEqual(["101"]);
  });
});

describe("the gear for a lift", () => {
  it("stands usable first, in the order of the sheet; DRESS, out of use, late, undated and tagged gear last", () => {
    const gear = [
      item(1, { id: "a", decision: "REMOVE" }),
      item(2, { id: "b" }),
      item(3, { id: "c", nextDue: TODAY }),
      item(4, { id: "d", decision: "WATCH" }),
      item(5, { id: "e", decision: "DRESS" }),
      item(6, { id: "f", nextDue: null }),
      item(7, { id: "g", tagged: true }),
      item(8, { id: "" }),
      item(9, { id: "i" }),
    ];
    expect(ids(usableFirst(report(gear)))).toEqual(["b", "d", "i", "a", "c", "e", "f", "g", ""]);
  });
});

describe("the due list", () => {
  const texts = (grouping: "none" | "place" | "kind", states: Parameters<typeof dueEntries>[1] = []): string[] =>
    dueEntries(ITEMS, states, grouping).map((entry) => (entry.kind === "heading" ? `${entry.text} ${entry.count}` : entry.item.id));

  it("goes from overdue to no date, the earliest first", () => {
    expect(texts("none")).toEqual(["Overdue 2", "TP-4", "TP-2", "Due soon 1", "TP-3", "Later 1", "TP-1", "No date 1", "TP-5"]);
  });

  it("groups by place and by kind inside each state", () => {
    expect(texts("place", ["OVERDUE"])).toEqual(["Overdue 2", "Gantry 1", "TP-4", "Slipway 1", "TP-2"]);
    expect(texts("kind", ["DUE SOON", "CURRENT"])).toEqual(["Due soon 1", "shackle 1", "TP-3", "Later 1", "hook 1", "TP-1"]);
  });

  it("names the missing place", () => {
    expect(dueEntries([item(1, { id: "x", place: "" })], [], "place")[1]).toMatchObject({ text: "No place given" });
  });
});

describe("items of one place and one kind", () => {
  const GEAR = [
    item(1, { id: "a", place: "Gantry", decision: "REMOVE" }),
    item(2, { id: "b", place: "gantry", decision: "KEEP", dueState: "OVERDUE" }),
    item(3, { id: "c", place: "Slipway", gear: "shackle", decision: "KEEP", tagged: true }),
    item(4, { id: "d", place: "", gear: null, gearText: "Ladder, 5 m", decision: "NO VERDICT" }),
  ];

  it("are counted by place, with those out and late; letters' size makes no difference", () => {
    expect(byPlace(GEAR)).toEqual([
      { name: "", items: 1, out: 1, late: 0 },
      { name: "Gantry", items: 2, out: 1, late: 1 },
      { name: "Slipway", items: 1, out: 1, late: 0 },
    ]);
    expect(byGear(GEAR).map(({ name, items }) => [name, items])).toEqual([
      ["hook", 2],
      ["Ladder, 5 m", 1],
      ["shackle", 1],
    ]);
  });

  it("are picked by both, and all are the very same list", () => {
    expect(ids(narrowed(GEAR, { place: "Gantry", gear: "hook" }))).toEqual(["a", "b"]);
    expect(ids(narrowed(GEAR, { place: "", gear: null }))).toEqual(["d"]);
    expect(narrowed(GEAR, { place: null, gear: null })).toBe(GEAR);
  });
});

describe("a figure and its sign", () => {
  it.each([
    ["5 % of as-new, at most 1/4 in", "5\u00a0% of as-new, at most 1/4\u00a0in"],
    ["Twist 4 degrees, out above 0 degrees", "Twist 4\u00a0degrees, out above 0\u00a0degrees"],
    ["11 in a lay, 10 inside", "11\u00a0in a lay, 10 inside"],
  ])("stay on one line: %s", (text, shown) => {
    expect(unbroken(text)).toBe(shown);
  });
});

describe("rows and headings", () => {
  it.each([
    [3, 0],
    [19, 16],
    [2, null],
    [20, null],
  ])("sheet row %i, counted from 0, is row %s of A4:R20", (sheetRow, inside) => {
    expect(rowInside(LOG_PLACE, sheetRow)).toBe(inside);
  });

  it("names a field that two headings are read as", () => {
    expect(doubled(report())).toEqual([]);
    expect(
      doubled(
        report(ITEMS, {
          headings: [
            ...HEADINGS,
            {
              column: 9,
              heading: "Throat",
              field: null,
              also: "throatNow",
              unit: null,
              chosen: false,
              state: "read",
              proposal: null,
              earlier: null,
            },
          ],
        }),
      ),
    ).toEqual(["throatNow"]);
  });
});

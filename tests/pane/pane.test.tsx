/** The pane as people use it: by words, roles and keys. */
import { act, render, screen, waitFor, within } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { beforeEach, describe, expect, it, vi } from "vitest";
import { reportOn } from "../../src/engine/report/report";
import { WorkbookError } from "../../src/excel/kit/workbook-error";
import { type BuildResult } from "../../src/excel/port";
import { createBell } from "../../src/taskpane/ribbon/bell";
import { Pane } from "../../src/taskpane/shell/Pane";
import { inLayer } from "./layer";
import "./still";
import { CAUTION } from "../../src/taskpane/shared/words";
import { FakeWorkbook, finding, HEADINGS, item, ITEMS, LOG_PLACE, report, RESULT, TODAY } from "./sample";

let book: FakeWorkbook;
const user = userEvent.setup();

beforeEach(() => {
  book = new FakeWorkbook();
  vi.useFakeTimers({ toFake: ["Date"], now: new Date(2026, 2, 1, 8) });
});

async function open(place?: "Items" | "Due" | "Sources"): Promise<void> {
  render(<Pane port={book} />);
  await screen.findByRole("button", { name: /choose the log/ });
  if (place !== undefined) await user.click(await screen.findByRole("tab", { name: new RegExp(`^${place}`) }));
}

const listed = (): string[] =>
  within(screen.getByRole("listbox"))
    .getAllByRole("option")
    .map((line) => /TP-\d+/.exec(line.textContent)?.[0] ?? "");

describe("the line on top and the foot", () => {
  it("say which log, how many items, which rules, as of which day, and the caution", async () => {
    await open();
    expect(await screen.findByRole("button", { name: /^Hook log!A4:R20/ })).toBeVisible();
    expect(screen.getByRole("button", { name: /^5 items/ })).toBeVisible();
    expect(screen.getByRole("button", { name: /^Standard \+ Practice/ })).toBeVisible();
    expect(screen.getByRole("button", { name: /^as of 1 Mar 2026/ })).toBeVisible();
    expect(screen.getByText(CAUTION)).toBeVisible();
  });

  it("change the rules in force; the last one stays", async () => {
    await open();
    await user.click(await screen.findByRole("button", { name: /rules in force/ }));
    await user.click(await screen.findByRole("checkbox", inLayer("Law")));
    await waitFor(() => expect(book.reads.at(-1)?.basis).toEqual(["law", "standard", "practice"]));
    await user.click(screen.getByRole("checkbox", inLayer("Practice")));
    await user.click(screen.getByRole("checkbox", inLayer("Standard")));
    await waitFor(() => expect(book.reads.at(-1)?.basis).toEqual(["law"]));
    expect(screen.getByRole("checkbox", inLayer("Law"))).toBeDisabled();
    await waitFor(() => expect(book.savedStates.at(-1)?.basis).toEqual(["law"]));
  });

  it("open controls that are never taller than the pane, with a scroll of their own", async () => {
    await open();
    await user.click(await screen.findByRole("button", { name: /rules in force/ }));
    const layer = await screen.findByRole("dialog", { hidden: true });
    expect(within(layer).getByRole("heading", inLayer("Rules in force"))).toBeInTheDocument();
    const style = getComputedStyle(layer);
    expect(style.overflowY).toBe("auto");
    expect(style.maxHeight).not.toBe("");
  });

  it("change the day that due dates are held against", async () => {
    await open();
    await user.click(await screen.findByRole("button", { name: /^as of/ }));
    const day = await screen.findByLabelText("Day");
    await user.clear(day);
    await user.type(day, "2026-12-24");
    await user.click(screen.getByRole("button", inLayer("Use this day")));
    expect(await screen.findByRole("button", { name: /^as of 24 Dec 2026/ })).toBeVisible();
  });

  it("lead to the items by their number", async () => {
    await open();
    await user.click(await screen.findByRole("button", { name: /^5 items/ }));
    expect(screen.getByRole("listbox", { name: "Items, worst first" })).toBeVisible();
  });

  it("choose between log and register once there are both", async () => {
    book.withRegister({}, ITEMS.slice(0, 3));
    await open("Items");
    expect(within(screen.getByRole("listbox")).getAllByRole("option")).toHaveLength(3);
    await user.click(screen.getByRole("button", { name: /^Gear register!A3:AT20/ }));
    await user.click(screen.getByRole("radio", inLayer(/^the log/)));
    expect(await screen.findByRole("button", inLayer(/^Hook log!A4:R20/))).toBeInTheDocument();
    expect(within(screen.getByRole("listbox", { hidden: true })).getAllByRole("option", { hidden: true })).toHaveLength(5);
  });
});

describe("the log", () => {
  it("has a start when there is none yet", async () => {
    book.log = new WorkbookError("no log", "No sheet in this workbook holds a log.");
    await open();
    expect(await screen.findByRole("heading", { name: "Select your log and press Use selection" })).toBeVisible();
    expect(screen.getByText("No sheet in this workbook holds a log.")).toBeVisible();
    book.log = { place: { ...LOG_PLACE, how: "selection" }, report: report() };
    await user.click(screen.getByRole("button", { name: "Use selection" }));
    expect(await screen.findByText("Sheet Hook log, A4:R20: your selection.")).toBeVisible();
    expect(book.reads.at(-1)?.from).toBe("selection");
  });

  it("names a log in which nothing reads as gear", async () => {
    book.log = { place: LOG_PLACE, report: report([], { headings: HEADINGS.map((heading) => ({ ...heading, field: null })) }) };
    await open();
    expect(await screen.findByText("No gear was found here.")).toBeVisible();
    expect(screen.getByText(/No heading was understood/)).toBeVisible();
    expect(screen.getByRole("button", { name: "Build register" })).toHaveAttribute("aria-disabled", "true");
  });

  it("with headings and no item says to fill in a row, and reads again", async () => {
    book.log = { place: LOG_PLACE, report: report([]) };
    await open();
    expect(await screen.findByText("There is no item yet.")).toBeVisible();
    expect(screen.getByText(/Fill in a row, then press Read again\./)).toBeVisible();
    book.log = { place: LOG_PLACE, report: report() };
    await user.click(screen.getByRole("button", { name: "Read again" }));
    expect(await screen.findByText("5 items: 2 REMOVE, 1 NO VERDICT, 1 WATCH, 1 KEEP.", { selector: "main p" })).toBeVisible();
  });

  it("lists what each heading is read as, and lets it be changed and taken back", async () => {
    await open();
    const paint = await screen.findByRole("combobox", { name: "Paint is read as" });
    expect(paint).toHaveDisplayValue("Not used");
    expect(screen.getByRole("combobox", { name: "Throat now (in) is read as" })).toHaveDisplayValue("Throat now (in)");
    book.log = {
      place: LOG_PLACE,
      report: report(ITEMS, { headings: HEADINGS.map((h) => (h.heading === "Paint" ? { ...h, field: "remarks", chosen: true } : h)) }),
    };
    await user.selectOptions(paint, "Remarks");
    await waitFor(() => expect(book.reads.at(-1)?.choices).toEqual({ paint: "remarks" }));
    await user.selectOptions(await screen.findByRole("combobox", { name: "Paint is read as" }), "Back to how it was found");
    await waitFor(() => expect(book.reads.at(-1)?.choices).toEqual({}));
  });

  it("warns when two headings are read as the same", async () => {
    book.log = {
      place: LOG_PLACE,
      report: report(ITEMS, {
        headings: [
          ...HEADINGS,
          {
            column: 8,
            heading: "Gap",
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
    };
    await open();
    expect(await screen.findByText(/More than one heading is read as Throat now: the worst of what they say counts/)).toBeVisible();
    expect(screen.getByRole("combobox", { name: "Gap is read as" })).toHaveDisplayValue("Throat now");
  });

  it("says what is missing, what was passed over and what must be put right first", async () => {
    book.log = {
      place: LOG_PLACE,
      report: report(ITEMS, {
        lacking: [{ kind: "hook", items: 4, of: 4, columns: [{ field: "latch", missing: 4, unreadable: 0, there: false }] }],
        passedOver: [{ row: 16, why: "a total" }],
        problems: ['The id "TP-1" stands on more than one row.'],
      }),
    };
    await open();
    expect(await screen.findByText(/^4 hooks: no column for Latch works\.$/)).toBeVisible();
    // The grid starts in sheet row 4, so its row 16, counted from 0, is row 20 of the sheet.
    expect(screen.getByText("Row 20: a total")).toBeInTheDocument();
    expect(screen.getByText(/TP-1" stands on more than one row/)).toBeVisible();
    const build = screen.getByRole("button", { name: "Build register" });
    expect(build).toHaveAttribute("aria-disabled", "true");
    expect(build).toHaveAccessibleDescription(/Put right what stands under/);
  });
});

describe("building the register", () => {
  const RICH: BuildResult = {
    ...RESULT,
    differing: [{ id: "TP-3", heading: "Throat now", register: "2.085 in", log: "" }],
    onlyInRegister: ["TP-9"],
    sentences: ["Two formulas were put back."],
  };

  it("shows how far it is, then what was written where", async () => {
    let finish: (result: BuildResult) => void = () => undefined;
    book.building = (progress) => {
      progress({ done: 1500, of: 10_000, step: "Writing rows" });
      return new Promise((resolve) => (finish = resolve));
    };
    await open();
    await user.click(await screen.findByRole("button", { name: "Build register" }));
    expect(screen.getByText("Writing rows: 1,500 of 10,000")).toBeVisible();
    expect(screen.getByRole("progressbar", { name: "Building the register" })).toHaveAttribute("aria-valuenow", "0.15");
    book.withRegister();
    await act(async () => finish(RICH));
    const panel = await screen.findByRole("region", { name: "Register written" });
    for (const text of [
      /Sheet Gear register: 5 items, 2 new, 3 kept/,
      "Two formulas were put back.",
      /register 2.085 in, log blank/,
      "TP-9",
      /^To take it back, close the workbook without saving\. With AutoSave on, open File, Info, Version history/,
    ]) {
      expect(within(panel).getByText(text)).toBeInTheDocument();
    }
    expect(screen.getByRole("button", { name: "Rebuild register" })).toBeVisible();
    await user.click(within(panel).getByRole("button", { name: "See the items" }));
    expect(screen.getByRole("listbox")).toBeVisible();
  });

  it("can be stopped", async () => {
    book.building = (_, signal) =>
      new Promise((_resolve, reject) =>
        signal.addEventListener("abort", () => reject(new WorkbookError("stopped", "Stopped before anything was written."))),
      );
    await open();
    await user.click(await screen.findByRole("button", { name: "Build register" }));
    await user.click(screen.getByRole("button", { name: "Stop" }));
    expect(await screen.findByText("Stopped before anything was written.")).toBeVisible();
    expect(screen.getByRole("button", { name: "Build again" })).toBeVisible();
  });

  it("shows only the first lines of a long list, and more on request", async () => {
    book.building = () => Promise.resolve({ ...RESULT, onlyInRegister: Array.from({ length: 400 }, (_, i) => `OLD-${i}`) });
    await open();
    await user.click(await screen.findByRole("button", { name: "Build register" }));
    const list = await screen.findByRole("list", { name: "Ids only in the register", hidden: true });
    expect(within(list).getAllByRole("listitem", { hidden: true })).toHaveLength(50);
    await user.click(screen.getByRole("button", { name: "Show more (350 left)", hidden: true }));
    expect(within(list).getAllByRole("listitem", { hidden: true })).toHaveLength(250);
  });

  it("answers the ribbon", async () => {
    const bell = createBell();
    expect(await bell.ring()).toBe(false);
    const { unmount } = render(<Pane port={book} bell={bell} />);
    await screen.findByRole("button", { name: "Build register" });
    let rung = false;
    await act(async () => {
      rung = await bell.ring();
    });
    expect(rung).toBe(true);
    expect(screen.getByRole("region", { name: "Register written" })).toBeVisible();
    unmount();
    expect(await bell.ring()).toBe(false);
  });
});

describe("failures are one sentence and a next step", () => {
  it.each([
    ["protected", 'The sheet "Gear register" is protected.', "Unprotect it under Review, then build again; nothing was written."],
    ["editing", "A cell is being edited.", "Press Enter or Esc in the sheet, then try again."],
    [
      "other shape",
      'The sheet "Gear register" is no register of this add-in.',
      "Rename that sheet, then build again; nothing was written.",
    ],
    ["too large", "The log is too large for one step.", "Split it over two sheets, then try again."],
    ["host", "The workbook is busy.", "Wait a moment, then try again."],
  ] as const)("%s", async (kind, title, next) => {
    book.building = () => Promise.reject(new WorkbookError(kind, `${title} ${next}`));
    await open();
    await user.click(await screen.findByRole("button", { name: "Build register" }));
    const alert = screen.getByRole("alert");
    expect(await within(alert).findByText(title)).toBeVisible();
    expect(within(alert).getByText(next, { exact: false })).toBeVisible();
    expect(alert.textContent.split(title)).toHaveLength(2);
    book.building = () => Promise.resolve(RESULT);
    await user.click(within(alert).getByRole("button", { name: "Try again" }));
    expect(await screen.findByRole("region", { name: "Register written" })).toBeVisible();
    expect(alert).toBeEmptyDOMElement();
  });

  it("an error that nobody foresaw is not hidden", async () => {
    book.building = () => Promise.reject(new RangeError("row 12 is odd"));
    await open();
    await user.click(await screen.findByRole("button", { name: "Build register" }));
    expect(
      await screen.findByText(/Try again; if it comes back, close the pane and open it. What was reported: row 12 is odd/),
    ).toBeVisible();
    await user.click(screen.getByRole("button", { name: "Close: That did not work." }));
    expect(screen.getByRole("alert")).toBeEmptyDOMElement();
  });

  it("a sheet for house limits that is made says what to write in it", async () => {
    await open();
    await user.click(await screen.findByRole("button", { name: /rules in force/ }));
    await user.click(await screen.findByRole("button", inLayer("Make a sheet for house limits")));
    const close = await screen.findByRole("button", { name: "Close: The sheet House limits is made. Write one limit in a row." });
    await user.click(close);
    expect(close).not.toBeInTheDocument();
  });

  it("someone else's change waits for Read again", async () => {
    await open();
    await screen.findByText("Log found");
    act(() => book.fire({ kind: "changed", remote: true, sheet: "Hook log" }));
    expect(screen.getByText("Someone else changed the sheet.")).toBeVisible();
    await user.click(screen.getByRole("button", { name: "Read again" }));
    await waitFor(() => expect(screen.queryByText("Someone else changed the sheet.")).toBeNull());
    expect(book.reads).toHaveLength(2);
  });

  it("functions that are not loaded are named with what to do", async () => {
    book.withRegister({ functionsMissing: true, disagreeing: [{ id: "TP-1", cell: "#NAME?", judged: "KEEP" }] });
    await open();
    expect(await screen.findByText(/#NAME\? instead of a word/)).toBeVisible();
    expect(screen.getByText(/close and open the workbook/)).toBeVisible();
    expect(book.rewrites).toBeGreaterThan(0);
    expect(screen.queryByText(/disagree/)).toBeNull();
  });

  it("three verdict cells that say something else are named, the rest folded", async () => {
    book.withRegister({
      disagreeing: Array.from({ length: 10 }, (_, i) => ({ id: `TP-${i}`, cell: i === 0 ? "" : "KEEP", judged: "REMOVE" })),
    });
    await open();
    expect(await screen.findByText(/^TP-0, TP-1, TP-2 and 7 more\./)).toBeVisible();
    const all = screen.getByRole("list", { name: "Cells that disagree", hidden: true });
    expect(
      within(all)
        .getAllByRole("listitem", { hidden: true })
        .slice(0, 2)
        .map((line) => line.textContent),
    ).toEqual(["TP-0: cell says nothing, readings say REMOVE", "TP-1: cell says KEEP, readings say REMOVE"]);
    expect(all.closest("details")).not.toHaveAttribute("open");
    expect(screen.getByText("What they say")).toBeVisible();
    expect(screen.getByRole("button", { name: "Rebuild register", description: "" })).toBeVisible();
  });

  it("a register built under other rules or for another day is said to be so, not to disagree", async () => {
    book.withRegister({
      builtUnder: { rules: ["law", "strict"], asOf: 46351 },
      disagreeing: [{ id: "TP-1", cell: "KEEP", judged: "REMOVE" }],
    });
    await open();
    expect(await screen.findByText(/^The register was built under .+ \+ .+ as of 25 Nov 2026\.$/)).toBeVisible();
    expect(screen.queryByText(/disagree/)).toBeNull();
    expect(screen.getByRole("button", { name: "Rebuild register", description: "" })).toBeVisible();
  });

  it("items of which the log says another thing are named, with what a rebuild settles", async () => {
    const row = (id: string, both: boolean) =>
      ({ id, cells: ["Cracks: register none, log hairline"], register: "KEEP", log: "REMOVE", both }) as const;
    book.withRegister({ apart: [row("TP-1", false), row("TP-2", true)] });
    await open();
    expect(await screen.findByText("The log says something that the register does not.")).toBeVisible();
    expect(screen.getByText(/^TP-1, TP-2\. The worse/)).toHaveTextContent(
      "TP-1, TP-2. The worse of the two counts here. Rebuild to take over what was typed in the log. Changed in both, or emptied in the log: TP-2; make them agree, then rebuild.",
    );
    expect(screen.getByText("TP-1: register KEEP, log REMOVE. Cracks: register none, log hairline")).toBeInTheDocument();
  });

  it("a register built before there were house limits is said to be so, and rebuilt", async () => {
    book.withRegister({ withoutHouse: true, disagreeing: [{ id: "TP-1", cell: "KEEP", judged: "REMOVE" }] });
    await open();
    expect(await screen.findByText("The register was built without the house limits.")).toBeVisible();
    expect(screen.getByText(/Rebuild it\./)).toHaveTextContent("Rebuild it. The limits change the verdict of TP-1.");
    expect(screen.queryByText("Some verdict cells do not say what the readings say.")).toBeNull();
    book.withRegister();
    await user.click(screen.getByRole("button", { name: "Rebuild register", description: "" }));
    await screen.findByRole("region", { name: "Register written" });
    expect(screen.queryByText("The register was built without the house limits.")).toBeNull();
  });

  it.each([
    [["Shackles"], /^Sheet Shackles also looks like a log\. Its gear is not in these counts/],
    [["Shackles", "Hooks", "Old"], /^Sheets Shackles, Hooks and Old also look like logs\. Their gear is not in these counts/],
  ])("other logs in the workbook are named, and read with one press: %j", async (others, line) => {
    book.log = { place: LOG_PLACE, report: report(), others };
    await open();
    expect(await screen.findByText(line)).toBeVisible();
    await user.click(screen.getByRole("button", { name: "Read Shackles" }));
    expect(book.reads.at(-1)?.from).toMatchObject({ sheet: "Shackles", how: "found" });
  });

  it("rows of the house limits that cannot be used stand first and do not stop the building", async () => {
    book.log = {
      place: LOG_PLACE,
      report: report(),
      refusedLimits: ["House limits, row 9 (hook, latch): latch is looked at and has no figure to limit."],
    };
    await open();
    const bad = await screen.findByText(/^House limits, row 9/);
    expect(bad).toBeVisible();
    expect(screen.getByText("1 house limit cannot be used.")).toBeVisible();
    const found = screen.getByRole("heading", { name: "Log found" });
    expect(bad.compareDocumentPosition(found) & Node.DOCUMENT_POSITION_FOLLOWING).not.toBe(0);
    expect(screen.getByRole("button", { name: "Build register" })).not.toHaveAttribute("aria-disabled", "true");
  });
});

describe("the items", () => {
  it("stand worst first, with decision, kind, short reason, place and lateness", async () => {
    await open("Items");
    expect(listed()).toEqual(["TP-4", "TP-2", "TP-5", "TP-3", "TP-1"]);
    const second = within(screen.getByRole("listbox")).getAllByRole("option")[1]!;
    expect(second).toHaveTextContent(/TP-2.*Hook.*REMOVE, late.*Throat opening 2.11 in is beyond the limit\..*Slipway · inspection late/);
    expect(within(screen.getByRole("listbox")).getByRole("option", { name: /TP-4.*REMOVE, late.*tagged out/ })).toBeVisible();
  });

  it("are narrowed by decisions, and the register with them", async () => {
    book.withRegister();
    await open("Items");
    await user.click(screen.getByRole("button", { name: "2 REMOVE" }));
    await user.click(screen.getByRole("button", { name: "1 WATCH" }));
    expect(screen.getByRole("button", { name: "2 REMOVE" })).toHaveAttribute("aria-pressed", "true");
    expect(listed()).toEqual(["TP-4", "TP-2", "TP-3"]);
    expect(screen.getByText("3 of 5 items, worst first")).toBeVisible();
    await user.click(screen.getByRole("button", { name: "Show only these in the register" }));
    expect(book.filters).toEqual([["REMOVE", "WATCH"]]);
    await user.click(await screen.findByRole("button", { name: "Show all rows" }));
    expect(book.filters.at(-1)).toEqual([]);
    await waitFor(() => expect(screen.queryByRole("button", { name: "Show all rows" })).toBeNull());
  });

  it("say that the register is filtered by decision and not by the search, and offer no filter where none is listed", async () => {
    book.withRegister();
    await open("Items");
    await user.click(screen.getByRole("button", { name: "2 REMOVE" }));
    expect(screen.getByRole("button", { name: "Show only these in the register" })).toHaveAccessibleDescription("");
    await user.type(screen.getByRole("searchbox"), "slipway");
    expect(screen.getByRole("button", { name: "Show only these in the register" })).toHaveAccessibleDescription(
      "The register is filtered to REMOVE; the search does not narrow it.",
    );
    await user.type(screen.getByRole("searchbox"), "zzz");
    expect(await screen.findByText("No item matches.")).toBeVisible();
    expect(screen.queryByRole("button", { name: "Show only these in the register" })).toBeNull();
  });

  it("offer no register filter where there is no register", async () => {
    await open("Items");
    await user.click(screen.getByRole("button", { name: "2 REMOVE" }));
    expect(screen.queryByRole("button", { name: "Show only these in the register" })).toBeNull();
  });

  it("are searched, and an empty filter says how to get out", async () => {
    await open("Items");
    await user.type(screen.getByRole("searchbox", { name: "Search the items" }), "slipway");
    await waitFor(() => expect(listed()).toEqual(["TP-2"]));
    await user.type(screen.getByRole("searchbox"), "zzz");
    expect(await screen.findByText("No item matches.")).toBeVisible();
    await user.click(screen.getByRole("button", { name: "Show all items" }));
    await waitFor(() => expect(listed()).toHaveLength(5));
    expect(screen.getByRole("searchbox")).toHaveValue("");
  });

  it("are walked with the arrow keys and opened with Enter; Back returns to the same row", async () => {
    await open("Items");
    const list = screen.getByRole("listbox");
    act(() => list.focus());
    await user.keyboard("{ArrowDown}{ArrowDown}");
    expect(within(screen.getByRole("listbox")).getByRole("option", { selected: true })).toHaveTextContent("TP-5");
    expect(list).toHaveAttribute("aria-activedescendant", within(screen.getByRole("listbox")).getByRole("option", { selected: true }).id);
    await user.keyboard("{Enter}");
    expect(await screen.findByRole("heading", { name: "TP-5" })).toHaveFocus();
    expect(book.shown).toEqual([{ place: LOG_PLACE, row: 5 }]);
    await user.click(screen.getByRole("button", { name: "Back" }));
    expect(screen.getByRole("listbox")).toHaveFocus();
    expect(within(screen.getByRole("listbox")).getByRole("option", { selected: true })).toHaveTextContent("TP-5");
  });

  it("follow the row that is selected in the sheet without taking the focus", async () => {
    await open("Items");
    act(() => book.fire({ kind: "selected", sheet: "Hook log", row: 6 }));
    expect(within(screen.getByRole("listbox")).getByRole("option", { selected: true })).toHaveTextContent("TP-3");
    expect(screen.getByRole("listbox")).not.toHaveFocus();
  });

  it("are drawn only in part when there are ten thousand, and the last is a key away", async () => {
    book.log = { place: LOG_PLACE, report: report(Array.from({ length: 10_000 }, (_, row) => item(row, { id: `TP-${row}` }))) };
    await open("Items");
    expect(within(screen.getByRole("listbox")).getAllByRole("option").length).toBeLessThan(30);
    act(() => screen.getByRole("listbox").focus());
    await user.keyboard("{End}");
    const last = within(screen.getByRole("listbox")).getByRole("option", { selected: true });
    expect(last).toHaveTextContent("TP-9999");
    expect(last).toHaveAttribute("aria-posinset", "10000");
    expect(last).toHaveAttribute("aria-setsize", "10000");
  });

  it("say aloud, politely, when the counts change by themselves", async () => {
    await open("Items");
    book.log = { place: LOG_PLACE, report: report(ITEMS.slice(0, 2)) };
    act(() => book.fire({ kind: "changed", remote: false, sheet: "Hook log" }));
    expect(await screen.findByText("The counts changed: 1 REMOVE, 1 KEEP.", {}, { timeout: 3000 })).toBeInTheDocument();
    expect(screen.getByRole("button", { name: "1 REMOVE" })).toBeVisible();
  });
});

describe("the item card", () => {
  it("shows drawing, bars, sentence, source, what is missing and when it is due", async () => {
    const findings = [
      finding({
        decision: "NO VERDICT",
        check: "twist",
        part: "body",
        share: null,
        measured: null,
        why: "missing",
        field: "twist",
        heading: "Twist deg",
      }),
      finding({ share: 0.5 }),
      finding({ share: 0.16, basis: "law", limit: "15 % of as-new", comesOut: "above 2.3 in", source: "29 CFR 1910.179" }),
    ];
    book.log = {
      place: LOG_PLACE,
      report: report([
        item(1, {
          id: "TP-1",
          decision: "NO VERDICT",
          findings,
          needed: ["throatNow", "twist"],
          lacking: ["twist"],
          notes: ["Judged without a gauge"],
          nextDue: 46070,
          dueState: "OVERDUE",
          dueNote: "service not recorded, counted as normal",
        }),
      ]),
    };
    await open("Items");
    await user.click(within(screen.getByRole("listbox")).getByRole("option"));
    const card = await screen.findByRole("article", { name: "TP-1" });
    expect(within(card).getByRole("img", { name: "Line drawing of a hook: 1 body, 2 throat" })).toBeVisible();
    expect(within(card).getByRole("img", { name: "throat opening: now 2.05 in, as new 2 in, out above 2.1 in; 50 % used" })).toBeVisible();
    expect(within(card).getByText("Law: 2.05 in, out above 2.3 in (15 % of as-new), 16 % used, KEEP, 29 CFR 1910.179")).toBeVisible();
    expect(within(card).getByText("Out of use until the missing or doubtful reading is there.")).toBeVisible();
    expect(within(card).getByRole("list", { name: "Cells to fill" })).toHaveTextContent("Twist deg the sheet has no such column");
    await user.click(within(card).getByText("Cells that are filled"));
    await user.click(within(card).getByRole("button", { name: "Throat now (in)" }));
    expect(book.shown.at(-1)).toMatchObject({ row: 1, column: 2 });
    expect(within(card).getByText("Judged without a gauge")).toBeVisible();
    expect(within(card).getByText("17 Feb 2026, 12 days late")).toBeVisible();
    expect(within(card).getByText("Service not recorded, counted as normal.")).toBeVisible();
  });

  it("of late gear says to inspect it first, on the card and in the list, and when gear in date is due", async () => {
    book.log = {
      place: LOG_PLACE,
      report: report([
        item(1, { id: "TP-1", dueState: "OVERDUE", nextDue: 46070 }),
        item(2, { id: "TP-2", decision: "REMOVE", nextDue: 46100 + 365 }),
      ]),
    };
    await open("Items");
    expect(
      within(screen.getByRole("listbox")).getByRole("option", { name: /TP-1.*KEEP, late.*TP-1 is KEEP.*inspection late/ }),
    ).toBeVisible();
    expect(within(screen.getByRole("listbox")).getByRole("option", { name: /TP-2/ })).not.toHaveTextContent("late");
    await user.click(within(screen.getByRole("listbox")).getByRole("option", { name: /TP-1/ }));
    const card = await screen.findByRole("article", { name: "TP-1" });
    expect(within(card).getByText("Overdue: inspect it before it is used again.")).toBeVisible();
    expect(within(card).queryByText(/Keep in service/)).toBeNull();
    await user.click(screen.getByRole("button", { name: "Back" }));
    await user.click(within(screen.getByRole("listbox")).getByRole("option", { name: /TP-2/ }));
    expect(within(await screen.findByRole("article", { name: "TP-2" })).getByText("Inspection due 19 Mar 2027")).toBeVisible();
  });

  it("tells the directions of wear and their limits apart", async () => {
    const headings = ["Id", "Gear", "Unit", "Section as-new", "Section now", "Across as-new", "Across now"];
    book.log = {
      place: LOG_PLACE,
      report: reportOn([headings, ["TP-1", "shackle", "in", 1, "0.97", 1, "0.98"]], { basis: ["practice"], asOf: TODAY })!,
    };
    await open("Items");
    await user.click(within(screen.getByRole("listbox")).getByRole("option"));
    const lines = within(await screen.findByRole("list", { name: "Other limits for bow wear" }))
      .getAllByRole("listitem")
      .map((line) => line.textContent.replaceAll("\u00a0", " "));
    expect(lines).toEqual([
      expect.stringMatching(/^Practice: across 0\.98 in, out below 0\.95 in \(worn in two directions, 5 % of as-new\), 40 % used/),
      expect.stringMatching(/^Practice: 0\.97 in, out at 0\.9 in or less \(10 % of as-new\), 30 % used/),
      expect.stringMatching(/^Practice: across 0\.98 in, out at 0\.9 in or less \(10 % of as-new\), 20 % used/),
    ]);
    await user.click(screen.getByText("Under each rule set alone"));
    expect(screen.queryByText(/choose a basis/)).toBeNull();
  });

  it("manages without a drawing when the kind is unknown, and without an id", async () => {
    book.log = {
      place: LOG_PLACE,
      report: report([
        item(1, {
          id: "",
          gear: null,
          gearText: "Turnbuckel",
          decision: "NO VERDICT",
          findings: [finding({ decision: "NO VERDICT", part: "", check: "gear", share: null, why: "gear", because: "no such kind" })],
        }),
      ]),
    };
    await open("Items");
    await user.click(within(screen.getByRole("listbox")).getByRole("option", { name: /Row 2 of the log, no id/ }));
    expect(await screen.findByRole("heading", { name: "Row 2 of the log, no id" })).toBeVisible();
    expect(screen.queryByRole("img")).toBeNull();
  });

  it("closes with Escape and shows the row again on request", async () => {
    await open("Items");
    await user.click(within(screen.getByRole("listbox")).getByRole("option", { name: /TP-2/ }));
    await user.click(await screen.findByRole("button", { name: "Show in the sheet" }));
    expect(book.shown).toEqual([
      { place: LOG_PLACE, row: 2 },
      { place: LOG_PLACE, row: 2 },
    ]);
    await user.keyboard("{Escape}");
    expect(screen.getByRole("listbox")).toHaveFocus();
  });
});

describe("due dates", () => {
  it("stand by state with counts, and say how late", async () => {
    await open("Due");
    expect(listed()).toEqual(["TP-4", "TP-2", "TP-3", "TP-1", "TP-5"]);
    expect(screen.getByRole("button", { name: "2 Overdue" })).toBeVisible();
    expect(
      within(screen.getByRole("listbox")).getByRole("option", { name: /^Overdue: TP-2.*17 Feb 2026, 12 days late, Slipway/ }),
    ).toBeVisible();
    expect(
      within(screen.getByRole("listbox")).getByRole("option", { name: /^No date: TP-5.*No date of the last inspection/ }),
    ).toBeVisible();
  });

  it("count as late in the tab only what a REMOVE or a tag does not hold back, and say how many that is", async () => {
    const late = { dueState: "OVERDUE", nextDue: TODAY - 1 } as const;
    book.log = {
      place: LOG_PLACE,
      report: report([
        item(1, { id: "TP-1", ...late }),
        item(2, { id: "TP-2", decision: "REMOVE", ...late }),
        item(3, { id: "TP-3", decision: "EXAMINE", ...late }),
      ]),
    };
    await open("Due");
    expect(screen.getByRole("tab", { name: "Due (2 late)" })).toBeVisible();
    expect(screen.getByRole("button", { name: "3 Overdue" })).toBeVisible();
    expect(screen.getByText("1 of the overdue is out of service anyway: REMOVE or tagged out.")).toBeVisible();
  });

  it("write thousands in the headings as people do", async () => {
    book.log = { place: LOG_PLACE, report: report(Array.from({ length: 3000 }, (_, row) => item(row, { id: `TP-${row}` }))) };
    await open("Due");
    expect(within(screen.getByRole("listbox")).getByText("3,000")).toBeVisible();
  });

  it("say once how many rest on a service that is not recorded", async () => {
    book.log = {
      place: LOG_PLACE,
      report: report([1, 2, 3].map((row) => item(row, { id: `TP-${row}`, ...(row < 3 ? { serviceAssumed: true } : {}) }))),
    };
    await open("Due");
    expect(
      screen.getByText("Service is not recorded for 2 items: their dates are counted as in normal service and may be too late."),
    ).toBeVisible();
  });

  it("are grouped by place or kind, narrowed by state, and lead to the row", async () => {
    await open("Due");
    await user.selectOptions(screen.getByLabelText("Group by"), "place");
    expect(within(screen.getByRole("listbox")).getByRole("option", { name: /^Overdue, Slipway: TP-2/ })).toBeVisible();
    await user.click(screen.getByRole("button", { name: "1 Due soon" }));
    expect(listed()).toEqual(["TP-3"]);
    await user.click(within(screen.getByRole("listbox")).getByRole("option", { name: /TP-3/ }));
    expect(book.shown).toEqual([{ place: LOG_PLACE, row: 3 }]);
    await user.click(await screen.findByRole("button", { name: "Back" }));
    expect(listed()).toEqual(["TP-3"]);
  });

  it("open at what is late whatever row is selected, and follow rows selected later", async () => {
    await open("Items");
    act(() => book.fire({ kind: "selected", sheet: "Hook log", row: 6 }));
    await user.click(screen.getByRole("tab", { name: /^Due/ }));
    const place = document.getElementById("place")!;
    vi.spyOn(place, "clientHeight", "get").mockReturnValue(60);
    expect(place.scrollTop).toBe(0);
    act(() => book.fire({ kind: "selected", sheet: "Hook log", row: 8 }));
    expect(place.scrollTop).toBeGreaterThan(0);
  });

  it("say when nothing is in a state", async () => {
    book.log = { place: LOG_PLACE, report: report(ITEMS.slice(0, 1)) };
    await open("Due");
    await user.click(screen.getByRole("button", { name: "0 Overdue" }));
    expect(screen.getByText("Nothing is overdue.")).toBeVisible();
    await user.click(screen.getByRole("button", { name: "Show all items" }));
    expect(listed()).toEqual(["TP-1"]);
  });
});

describe("sources", () => {
  it("are listed by rule set and searched", async () => {
    await open("Sources");
    const all = screen.getByText(/^[\d,]+ limits\./).textContent;
    await user.type(screen.getByRole("searchbox", { name: "Search the sources" }), "hook throat opening");
    expect(screen.getByText(/^[\d,]+ limits?\./).textContent).not.toBe(all);
    // The federal text and Alberta say the same.
    expect(screen.getAllByText("hook, throat opening: more than 15 %")).toHaveLength(2);
    await user.type(screen.getByRole("searchbox"), " zzz");
    expect(screen.getByText("No limit matches. Clear the search to see all.")).toBeVisible();
  });
});

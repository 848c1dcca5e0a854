/** Rounds, as people use them; the workbook answers as it is told. */
import { render, screen, within } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { beforeEach, describe, expect, it } from "vitest";
import { historyRow, type HistoryRow } from "../../src/engine/programme/history";
import { WorkbookError } from "../../src/excel/kit/workbook-error";
import { Pane } from "../../src/taskpane/shell/Pane";
import "./still";
import { FakeWorkbook, item, TODAY } from "./sample";

const user = userEvent.setup();
let book: FakeWorkbook;
beforeEach(() => {
  book = new FakeWorkbook().withRegister({}, [
    item(1, { id: "H-1", dueState: "OVERDUE", nextDue: TODAY - 3, place: "Slipway" }),
    item(2, { id: "H-2", dueState: "DUE SOON", nextDue: TODAY + 3, place: "Gantry" }),
    item(3, { id: "H-3", decision: "NO VERDICT", lacking: ["throatNow"], place: "Gantry" }),
  ]);
});
async function open(): Promise<void> {
  render(<Pane port={book} />);
  await user.click(await screen.findByRole("tab", { name: "Rounds" }));
  await screen.findByRole("heading", { name: /^Make a round|A round is made/ });
}

describe("Rounds", () => {
  it("asks for the register first", async () => {
    book.register = null;
    render(<Pane port={book} />);
    await user.click(await screen.findByRole("tab", { name: "Rounds" }));
    expect(await screen.findByText(/Build the register first/)).toBeVisible();
    await user.click(screen.getByRole("button", { name: "Go to Log" }));
    expect(screen.getByRole("button", { name: /Build register/ })).toBeVisible();
  });
  it("says how many items each round is about, and makes one of those that are chosen", async () => {
    await open();
    expect(screen.getByRole("radio", { name: /late, due within 30 days.*\(2 items\)/ })).toBeChecked();
    expect(screen.getByRole("radio", { name: /overloaded tackle \(0 items\)/ })).toBeInTheDocument();
    expect(screen.getByRole("radio", { name: /missing for a verdict \(1 item\)/ })).toBeInTheDocument();
    await user.selectOptions(screen.getByLabelText("Place"), "Slipway (1, 1 late)");
    await user.click(screen.getByRole("button", { name: "Make round sheet" }));
    expect(book.asked).toEqual([
      { kind: "due", where: "Slipway", ids: ["h-1"], basis: ["standard", "practice"], asOf: expect.any(Number) as number },
    ]);
    expect(await screen.findByText(/Round 1 is made: 2 items, 12 checks\. Fill Now/)).toBeVisible();
    expect(screen.getByText("TP-9: tagged out.")).toBeInTheDocument();
    expect(screen.getByLabelText("Sheet")).toHaveValue("Round 1");
  });
  it("makes nothing where there is no such item", async () => {
    await open();
    await user.click(screen.getByRole("radio", { name: /overloaded tackle/ }));
    await user.click(screen.getByRole("button", { name: "Make round sheet" }));
    expect(book.asked).toEqual([]);
  });
  it("posts the sheet that is chosen and tells what was refused, what is not complete and what is out", async () => {
    book.roundSheets = [
      { round: "R2.b", sheet: "Round 2" },
      { round: "R1.a", sheet: "Round 1" },
    ];
    book.posted = {
      sheet: "Round 1",
      part: "R1.a",
      posted: 5,
      added: 8,
      written: 6,
      inspected: ["H-1"],
      refused: [{ id: "H-2", line: "Throat opening", why: "it is marked as doubtful" }],
      incomplete: [{ id: "H-2", line: "", why: "not entered: Cracks" }],
      changedMeanwhile: [],
      verdicts: [
        { id: "H-1", decision: "REMOVE", short: "Throat 2.2 in, out above 2.1 in" },
        { id: "H-2", decision: "KEEP", short: "ok" },
      ],
    };
    await open();
    await user.selectOptions(await screen.findByLabelText("Sheet"), "Round 1");
    const before = book.reads.length;
    await user.click(screen.getByRole("button", { name: "Post readings" }));
    expect(book.asked).toEqual(["Round 1"]);
    expect(await screen.findByText(/5 readings added to the history, 6 cells of the register written, 1 inspection dated/)).toBeVisible();
    expect(within(screen.getByRole("list", { name: "Items out of use" })).getAllByRole("listitem")).toHaveLength(1);
    expect(screen.getByText("H-2, Throat opening: it is marked as doubtful.")).toBeVisible();
    expect(screen.getByText("H-2: not entered: Cracks.")).toBeVisible();
    // The register says something else now.
    expect(book.reads.length).toBeGreaterThan(before);
    await user.click(screen.getByRole("button", { name: "Write report" }));
    expect(book.asked).toEqual(["Round 1", "report of Round 1"]);
    expect(await screen.findByText(/Written on sheet Gear report: 2 items/)).toBeVisible();
  });
  it("tells a posting that failed with the next step, and tries it again", async () => {
    book.roundSheets = [{ round: "R1.a", sheet: "Round 1" }];
    book.posted = new WorkbookError("other shape", "Fill in who inspected, then post again; nothing was written.");
    await open();
    await user.click(await screen.findByRole("button", { name: "Post readings" }));
    expect(await screen.findByText(/Fill in who inspected/)).toBeVisible();
    await user.click(screen.getByRole("button", { name: "Try again" }));
    expect(book.asked).toEqual(["Round 1", "Round 1"]);
  });
  it("says that every seal fits, or names what does not", async () => {
    book.sealed = { rows: 15, rounds: 1, findings: [], last: ["ab".repeat(32)] };
    await open();
    await user.click(screen.getByRole("button", { name: "Check history" }));
    expect(await screen.findByText("Every seal fits: 15 rows of 1 posting.")).toBeVisible();
    expect(screen.getByText("ab".repeat(32))).toBeVisible();
    book.sealed = {
      ...book.sealed,
      findings: [{ what: "changed", round: "R1.a", rows: ["7"], sentence: "Rows of round R1.a were changed since they were sealed: 7." }],
    };
    await user.click(screen.getByRole("button", { name: "Check history" }));
    expect(await screen.findByText(/were changed since they were sealed: 7/)).toBeVisible();
    expect(screen.queryByText(/Every seal fits/)).toBeNull();
  });
});

describe("the history on an item's card", () => {
  const row = (more: Partial<HistoryRow>): HistoryRow =>
    historyRow({ Id: "H-1", By: "Inspector two", Round: "R1.a", "Rule sets": "standard", ...more });
  async function openCard(): Promise<void> {
    render(<Pane port={book} />);
    await user.click(await screen.findByRole("tab", { name: /^Items/ }));
    await user.click(within(screen.getByRole("listbox")).getByRole("option", { name: /H-1/ }));
    await screen.findByRole("article");
  }
  it("tells the verdict of a past day and where the wear leads", async () => {
    book.itemHistory = {
      id: "H-1",
      rows: [
        row({ Check: "Throat opening", Date: "2025-03-01", Reading: "2.2", Limit: "above 2.1 in", Document: "A text", Clause: "7" }),
        row({ Check: "verdict", Date: "2025-03-01", Reading: "Throat 2.2 in", Decision: "REMOVE", Document: "A text", Clause: "7" }),
      ],
      trends: [
        {
          check: "Throat opening",
          unit: "in",
          readings: [
            { day: TODAY - 730, value: 2 },
            { day: TODAY, value: 2.05 },
          ],
          perYear: 0.025,
          limit: "above 2.1 in",
          reaches: TODAY + 60,
          band: false,
          beforeDue: true,
          months: 1,
        },
      ],
    };
    await openCard();
    await user.click(screen.getByRole("button", { name: "Look it up" }));
    expect(await screen.findByText(/Recorded for 2025-03-01 by Inspector two, under standard \[A text, 7\]/)).toBeVisible();
    expect(screen.getByText("Throat opening: 2.2, out above 2.1 in [A text, 7]")).toBeVisible();
    expect(screen.getByText(/\+0.025 in a year, from 2 readings over 2.0 years/)).toBeVisible();
    expect(screen.getByText(/two readings.*tell no band.*before the next inspection.*within 1 month/)).toBeVisible();
    const dayInput = screen.getByLabelText("Verdict on");
    await user.clear(dayInput);
    await user.type(dayInput, "2025-02-28");
    expect(screen.getByText("No verdict was recorded up to then.")).toBeVisible();
  });
  it("tags out with name and reason, and tells why a release is refused", async () => {
    await openCard();
    await user.click(screen.getByRole("heading", { name: "Tag out" }));
    await user.type(screen.getByLabelText("Tagged out by"), "Clerk three");
    await user.type(screen.getByLabelText("Reason"), "dropped");
    book.tagFails = new WorkbookError("other shape", "Name the qualified person who releases it. Nothing was written.");
    await user.click(screen.getByRole("button", { name: "Tag out" }));
    expect(book.asked).toEqual([{ act: "tag out", id: "H-1", by: "Clerk three", words: "dropped" }]);
    expect(await screen.findByText(/Name the qualified person/)).toBeVisible();
  });
});

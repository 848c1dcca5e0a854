/** Where the focus goes when what held it is gone: to the list, its heading, or the next item; never to nothing. */
import { render, screen, within } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { beforeEach, describe, expect, it } from "vitest";
import { Pane } from "../../src/taskpane/shell/Pane";
import "./still";
import { FakeWorkbook, item, LOG_PLACE, report, RESULT } from "./sample";

const user = userEvent.setup();
let book: FakeWorkbook;

beforeEach(() => {
  book = new FakeWorkbook().withRegister();
});

async function open(place: "Log" | "Items" | "Due" | "Lift"): Promise<void> {
  render(<Pane port={book} />);
  await user.click(await screen.findByRole("tab", { name: new RegExp(`^${place}`) }));
}

const many = (count: number): ReturnType<typeof item>[] =>
  Array.from({ length: count }, (_, row) => item(row + 1, { id: `TP-${String(row)}` }));

describe("the focus after an action", () => {
  it("is on the list after See the items, and on the log's heading after Close", async () => {
    await open("Log");
    await user.click(screen.getByRole("button", { name: "Rebuild register" }));
    await user.click(await screen.findByRole("button", { name: "Close" }));
    expect(screen.queryByRole("region", { name: "Register written" })).toBeNull();
    expect(screen.getByRole("heading", { name: "Log found" })).toHaveFocus();
    await user.click(screen.getByRole("button", { name: "Rebuild register" }));
    await user.click(await screen.findByRole("button", { name: "See the items" }));
    expect(screen.getByRole("listbox")).toHaveFocus();
  });

  it("is on the way out when See the items finds none under the search", async () => {
    await open("Items");
    await user.type(screen.getByRole("searchbox"), "zzz");
    await user.click(screen.getByRole("tab", { name: "Log" }));
    await user.click(screen.getByRole("button", { name: "Rebuild register" }));
    await user.click(await screen.findByRole("button", { name: "See the items" }));
    const all = screen.getByRole("button", { name: "Show all items" });
    expect(all).toHaveFocus();
    await user.click(all);
    expect(await screen.findByRole("listbox")).toHaveFocus();
  });

  it("is on the list after Show all rows", async () => {
    await open("Items");
    await user.click(screen.getByRole("button", { name: "2 REMOVE" }));
    await user.click(screen.getByRole("button", { name: /^Show only/ }));
    await user.click(await screen.findByRole("button", { name: "Show all rows" }));
    expect(screen.getByRole("listbox")).toHaveFocus();
  });

  it("is on the due list after Show all items there", async () => {
    book = new FakeWorkbook();
    book.log = { place: LOG_PLACE, report: report(many(2)) };
    await open("Due");
    await user.click(screen.getByRole("button", { name: "0 Overdue" }));
    await user.click(screen.getByRole("button", { name: "Show all items" }));
    expect(screen.getByRole("listbox")).toHaveFocus();
  });

  it("is on the next picked item after Drop, then on the one before, then on the heading", async () => {
    await open("Lift");
    for (const id of ["TP-1", "TP-3", "TP-2"]) await user.click(screen.getByRole("checkbox", { name: new RegExp(`^${id} `) }));
    const drop = (id: string): HTMLElement => screen.getByRole("button", { name: `Drop ${id}` });
    await user.click(drop("TP-3"));
    expect(drop("TP-2")).toHaveFocus();
    await user.click(drop("TP-2"));
    expect(drop("TP-1")).toHaveFocus();
    await user.click(drop("TP-1"));
    expect(screen.getByRole("heading", { name: /^Gear of one hook-up/ })).toHaveFocus();
  });

  it("is on the first new line after Show more, the last one too", async () => {
    book = new FakeWorkbook();
    book.log = { place: LOG_PLACE, report: report(many(48)) };
    book.building = () => Promise.resolve({ ...RESULT, onlyInRegister: many(60).map(({ id }) => id) });
    await open("Lift");
    await user.click(screen.getByRole("button", { name: "Show more (40 left)" }));
    expect(screen.getByRole("checkbox", { name: /^TP-8 / })).toHaveFocus();
    await user.click(screen.getByRole("button", { name: "Show more (8 left)" }));
    expect(screen.getByRole("checkbox", { name: /^TP-40 / })).toHaveFocus();
    await user.click(screen.getByRole("tab", { name: "Log" }));
    await user.click(screen.getByRole("button", { name: "Build register" }));
    await user.click(await screen.findByRole("button", { name: "Show more (10 left)", hidden: true }));
    const lines = within(screen.getByRole("list", { name: "Ids only in the register", hidden: true })).getAllByRole("listitem", {
      hidden: true,
    });
    expect(lines).toHaveLength(60);
    expect(lines[50]).toHaveFocus();
  });
});

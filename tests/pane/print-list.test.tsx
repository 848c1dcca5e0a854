/** Lists to hand over, from Items and Due: one press each, of what the pane is narrowed to. */
import { render, screen, within } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { describe, expect, it } from "vitest";
import { Pane } from "../../src/taskpane/shell/Pane";
import "./still";
import { FakeWorkbook, ITEMS } from "./sample";

const user = userEvent.setup();
const out = ITEMS.filter(({ tagged, verdict }) => tagged || verdict.decision === "REMOVE");

describe("the lists to hand over", () => {
  it("are offered with their counts, and say where they stand", async () => {
    const book = new FakeWorkbook();
    render(<Pane port={book} />);
    await user.click(await screen.findByRole("tab", { name: /^Items/ }));
    const lists = within(screen.getByRole("group", { name: "Print list" }));
    expect(lists.getAllByRole("button").map((button) => button.textContent)).toEqual([
      `Out (${String(out.length)})`,
      expect.stringMatching(/^To examine \(\d+\)$/),
    ]);
    await user.click(lists.getByRole("button", { name: /^Out / }));
    expect(book.lists.map(({ kind, items }) => [kind, items.length])).toEqual([["out", ITEMS.length]]);
    expect((await screen.findAllByText(/stands on the sheet Gear out, one page wide\. Print it from there\.$/))[0]).toBeVisible();
    await user.click(screen.getByRole("tab", { name: /^Due/ }));
    await user.click(within(screen.getByRole("group", { name: "Print list" })).getByRole("button", { name: /^Late and due soon/ }));
    expect(book.lists.at(-1)?.kind).toBe("late");
  });
});

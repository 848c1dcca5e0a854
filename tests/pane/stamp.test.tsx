/** Stamping from the pane: a name, a look, the count confirmed, and nothing written without it. */
import { render, screen, within } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { describe, expect, it } from "vitest";
import { Pane } from "../../src/taskpane/shell/Pane";
import "./still";
import { FakeWorkbook, ITEMS } from "./sample";

const user = userEvent.setup();
const whole = ITEMS.filter(({ gear, tagged, verdict }) => gear !== null && !tagged && verdict.lacking.length === 0 && !verdict.overload);
async function opened(book: FakeWorkbook): Promise<void> {
  render(<Pane port={book} />);
  await user.click(await screen.findByRole("tab", { name: /^Items/ }));
  await user.click(screen.getByText("Stamp as inspected"));
}

describe("stamping the selected rows", () => {
  it("asks for a name, shows the count and who is left out, and writes after the confirmation", async () => {
    const book = new FakeWorkbook().withRegister();
    book.selected = ITEMS.map(({ row }) => row);
    await opened(book);
    const look = screen.getByRole("button", { name: "Look at the selected rows" });
    expect(look).toHaveAttribute("aria-disabled", "true");
    await user.type(screen.getByRole("textbox", { name: "Inspected by" }), "yard inspector");
    await user.click(look);
    const asked = within(await screen.findByRole("group", { name: "Confirm the stamp" }));
    expect(book.stamps).toEqual([]);
    expect(book.savedStates.at(-1)?.inspector).toBe("yard inspector");
    const confirm = asked.getByRole("button", { name: /^Stamp \d+ rows?$/ });
    expect(confirm).toHaveFocus();
    await user.click(confirm);
    expect(book.stamps.map(({ rows, name }) => [rows.map(({ id }) => id), name])).toEqual([[whole.map(({ id }) => id), "yard inspector"]]);
    expect((await screen.findAllByText(/stamped as inspected by yard inspector\.$/))[0]).toBeVisible();
  });

  it("writes nothing when it is not confirmed, or when the register changed meanwhile", async () => {
    const book = new FakeWorkbook().withRegister();
    book.saved = { ...book.saved, inspector: "yard inspector" };
    book.selected = ITEMS.map(({ row }) => row);
    await opened(book);
    await user.click(screen.getByRole("button", { name: "Look at the selected rows" }));
    await user.click(await screen.findByRole("button", { name: "Do not stamp" }));
    expect(screen.queryByRole("group", { name: "Confirm the stamp" })).toBeNull();
    await user.click(screen.getByRole("button", { name: "Look at the selected rows" }));
    const confirm = await screen.findByRole("button", { name: /^Stamp \d+ rows?$/ });
    book.withRegister(
      {},
      ITEMS.map((one) => (one.id === whole[0]!.id ? { ...one, tagged: true } : one)),
    );
    await user.click(confirm);
    expect(await screen.findByText(/^The register was changed since you looked\.$/)).toBeVisible();
    expect(book.stamps).toEqual([]);
  });
});

/** Where a place stands when it opens: on top the first time, else where it was left. */
import { fireEvent, render, screen, within } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { Pane } from "../../src/taskpane/shell/Pane";
import "./still";
import { FakeWorkbook, item, LOG_PLACE, report } from "./sample";

const user = userEvent.setup();
const place = (): HTMLElement => document.getElementById("place")!;
const list = (): HTMLElement => screen.getByRole("listbox");
const go = (name: string): Promise<void> => user.click(screen.getByRole("tab", { name: new RegExp(`^${name}`) }));

function scroll(box: HTMLElement, top: number): void {
  box.scrollTop = top;
  fireEvent.scroll(box);
}

beforeEach(async () => {
  // Without a layout every box has no height; a place that is 600 px high keeps the active row of its list in sight.
  vi.spyOn(HTMLElement.prototype, "clientHeight", "get").mockReturnValue(600);
  const book = new FakeWorkbook();
  book.log = { place: LOG_PLACE, report: report(Array.from({ length: 100 }, (_, row) => item(row, { id: `TP-${String(row)}` }))) };
  render(<Pane port={book} />);
  await screen.findByText("Log found");
});

afterEach(() => vi.restoreAllMocks());

describe("the scroll position", () => {
  it("is kept for each place, and a new place starts on top", async () => {
    scroll(place(), 300);
    await go("Sources");
    expect(place().scrollTop).toBe(0);
    scroll(place(), 900);
    await go("Log");
    expect(place().scrollTop).toBe(300);
    await go("Sources");
    expect(place().scrollTop).toBe(900);
  });

  it("is the same after Back, and the card starts on top", async () => {
    await go("Items");
    scroll(place(), 1500);
    await user.click(within(screen.getByRole("listbox")).getByRole("option", { name: /TP-22 / }));
    expect(await screen.findByRole("article")).toBeVisible();
    expect(place().scrollTop).toBe(0);
    scroll(place(), 500);
    await user.click(screen.getByRole("button", { name: "Back" }));
    expect(place().scrollTop).toBe(1500);
    expect(within(screen.getByRole("listbox")).getByRole("option", { selected: true })).toHaveTextContent("TP-22");
  });

  it("of one list is none of the other's, nor is the row that it stands on", async () => {
    await go("Items");
    list().focus();
    await user.keyboard("{End}");
    const left = place().scrollTop;
    expect(left).toBeGreaterThan(600);
    fireEvent.scroll(place());
    await go("Due");
    expect(place().scrollTop).toBe(0);
    expect(within(list()).queryByRole("option", { selected: true })).toBeNull();
    await go("Items");
    expect(place().scrollTop).toBe(left);
    expect(within(screen.getByRole("listbox")).getByRole("option", { selected: true })).toHaveTextContent("TP-99");
  });
});

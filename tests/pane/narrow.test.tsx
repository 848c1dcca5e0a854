import { render, screen } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { afterEach, describe, expect, it, vi } from "vitest";
import { Pane } from "../../src/taskpane/shell/Pane";
import "./still";
import { FakeWorkbook } from "./sample";

/** Answers width questions as a window of that width would. */
function windowOf(width: number): void {
  vi.spyOn(window, "matchMedia").mockImplementation((query) => {
    const most = /max-width: (\d+)px/.exec(query);
    const matches = most !== null && width <= Number(most[1]);
    return { matches, media: query, addEventListener: () => undefined, removeEventListener: () => undefined } as unknown as MediaQueryList;
  });
}

afterEach(() => vi.restoreAllMocks());

describe("the places", () => {
  it("are tabs from 470 px", async () => {
    windowOf(470);
    render(<Pane port={new FakeWorkbook()} />);
    expect(await screen.findAllByRole("tab")).toHaveLength(6);
  });

  it("stand on the open place when the menu opens", async () => {
    windowOf(300);
    const user = userEvent.setup();
    render(<Pane port={new FakeWorkbook()} />);
    await user.click(await screen.findByRole("button", { name: "Log" }));
    await user.click(await screen.findByRole("menuitemradio", { name: /^Lift/ }));
    await user.click(screen.getByRole("button", { name: "Lift" }));
    expect(await screen.findByRole("menuitemradio", { name: "Lift", checked: true })).toHaveFocus();
  });

  it("are a menu below", async () => {
    windowOf(469);
    const user = userEvent.setup();
    render(<Pane port={new FakeWorkbook()} />);
    expect(screen.queryByRole("tab")).toBeNull();
    await user.click(await screen.findByRole("button", { name: "Log" }));
    await user.click(await screen.findByRole("menuitemradio", { name: /^Due/ }));
    expect(await screen.findByRole("listbox", { name: "Due dates, earliest first" })).toBeVisible();
  });
});

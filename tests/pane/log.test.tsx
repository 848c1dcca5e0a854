/** The log's place: the way to the build button, and the headings. */
import { render, screen, waitFor } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { beforeEach, describe, expect, it } from "vitest";
import type { HeadingMatch } from "../../src/engine/model";
import { Pane } from "../../src/taskpane/Pane";
import "./still";
import { FakeWorkbook, HEADINGS, ITEMS, LOG_PLACE, report } from "./sample";

const user = userEvent.setup();
const DATED: readonly HeadingMatch[] = [...HEADINGS, { column: 4, heading: "Last insp.", field: "inspected", also: null, unit: null, chosen: false }];
let book: FakeWorkbook;

beforeEach(() => {
  book = new FakeWorkbook();
});

async function open(more: Parameters<typeof report>[1] = {}): Promise<void> {
  book.log = { place: LOG_PLACE, report: report(ITEMS, more) };
  render(<Pane port={book} />);
  await screen.findByText("Log found");
}

const headings = (): HTMLElement => screen.getByText(/^Headings/).closest("details")!;

describe("the headings", () => {
  it("are folded while none needs attention, after the build button, which is a few Tab presses away", async () => {
    await open({ headings: DATED });
    expect(headings()).not.toHaveAttribute("open");
    expect(screen.getByText(/^Headings/).parentElement).toHaveTextContent("Headings 4 of 5 read");
    const build = screen.getByRole("button", { name: "Build register" });
    expect(build.compareDocumentPosition(headings())).toBe(Node.DOCUMENT_POSITION_FOLLOWING);
    const stops = [...document.querySelectorAll("button, select, input, summary")];
    // Four parts of the line on top, and five tabs of which one is a stop.
    expect(stops.indexOf(build)).toBeLessThan(10);
  });

  it.each([
    ["two are read as the same", [...DATED, { column: 9, heading: "Gap", field: "throatNow", also: null, unit: null, chosen: false }]],
    ["none is the date of the last inspection", HEADINGS],
    ["none is the id", DATED.filter(({ field }) => field !== "id")],
    ["none is read", DATED.map((heading) => ({ ...heading, field: null }))],
  ] as const)("are open when %s", async (_, read) => {
    await open({ headings: read });
    expect(headings()).toHaveAttribute("open");
  });

  it("that are not read come first, and the list stays open when the last is put right", async () => {
    await open();
    expect(screen.getAllByRole("rowheader").map((cell) => cell.textContent)).toEqual(["Paint", "Gear No", "Type", "Throat now (in)"]);
    book.log = { place: LOG_PLACE, report: report(ITEMS, { headings: DATED }) };
    await user.selectOptions(screen.getByRole("combobox", { name: "Paint is read as" }), "Inspected");
    await waitFor(() => expect(screen.getAllByRole("rowheader")).toHaveLength(5));
    expect(screen.getAllByRole("rowheader")[0]).toHaveTextContent("Paint");
    expect(headings()).toHaveAttribute("open");
  });
});

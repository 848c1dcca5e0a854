/** The rules for accessible pages, as far as they can be checked without drawing (colours are measured elsewhere). */
import { render, screen, within } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import axe from "axe-core";
import { describe, expect, it } from "vitest";
import { WorkbookError } from "../../src/excel/kit/workbook-error";
import { Pane } from "../../src/taskpane/shell/Pane";
import "./still";
import { FakeWorkbook, ITEMS, LOG_PLACE, report } from "./sample";

async function faults(): Promise<string[]> {
  // Left out: the empty focus stops that the component library itself places at the ends of a layer.
  const results = await axe.run(
    { include: [["body"]], exclude: [["[data-tabster-dummy]"]] },
    { rules: { "color-contrast": { enabled: false } } },
  );
  return results.violations.map((violation) => `${violation.id}: ${violation.nodes[0]?.html ?? ""}`);
}

const user = userEvent.setup();
const LATCH = { kind: "hook", items: 4, of: 4, columns: [{ field: "latch" as const, missing: 4, unreadable: 0, there: false }] };

describe("the pane keeps the rules for accessible pages", () => {
  it("at the start", async () => {
    const book = new FakeWorkbook();
    book.log = new WorkbookError("no log", "No sheet in this workbook holds a log.");
    render(<Pane port={book} />);
    await screen.findByRole("heading", { name: /Select your log/ });
    expect(await faults()).toEqual([]);
  });

  it("with a log, messages and a result", async () => {
    const book = new FakeWorkbook().withRegister({ disagreeing: [{ id: "TP-1", cell: "KEEP", judged: "REMOVE" }] });
    book.log = {
      place: LOG_PLACE,
      report: report(ITEMS, { lacking: [LATCH], passedOver: [{ row: 3, why: "blank" }] }),
    };
    render(<Pane port={book} />);
    await user.click(await screen.findByRole("button", { name: "Rebuild register", description: /stays/ }));
    await screen.findByRole("region", { name: "Register written" });
    expect(await faults()).toEqual([]);
  });

  it.each(["Items", "Due", "Rounds", "Lift", "Sources"])("in %s", async (place) => {
    render(<Pane port={new FakeWorkbook().withRegister()} />);
    await user.click(await screen.findByRole("tab", { name: new RegExp(`^${place}`) }));
    expect(await faults()).toEqual([]);
  });

  it("on the item card", async () => {
    render(<Pane port={new FakeWorkbook()} />);
    await user.click(await screen.findByRole("tab", { name: /^Items/ }));
    await user.click(within(screen.getByRole("listbox")).getByRole("option", { name: /TP-2/ }));
    await screen.findByRole("article");
    expect(await faults()).toEqual([]);
  });
});

/** What the item card says first, and that it says each thing once. */
import { sentenceOf } from "../../src/engine/check/sentences";
import { render, screen, within } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { describe, expect, it } from "vitest";
import { type CellValue } from "../../src/engine/reading/cell-value";
import { type Report } from "../../src/engine/report/model";
import { reportOn } from "../../src/engine/report/report";
import { Pane } from "../../src/taskpane/shell/Pane";
import "./still";
import { FakeWorkbook, LOG_PLACE, TODAY } from "./sample";

const user = userEvent.setup();
const HEADINGS = [
  "Id",
  "Gear",
  "Unit",
  "Size",
  "WLL (t)",
  "Section as-new",
  "Section now",
  "Pin as-new",
  "Pin now",
  "Pin seated",
  "Bent or stretched",
  "Cracks",
  "Identification legible",
  "Gauge",
  "Inspected",
  "Inspected by",
  "Tagged out",
];
const row = (bow: number, more: { cracks?: string; tagged?: string } = {}): CellValue[] => [
  "S-1",
  "shackle",
  "in",
  "3/4",
  4.75,
  1,
  bow,
  1,
  0.99,
  "yes",
  "none",
  more.cracks ?? "none",
  "yes",
  "0.001",
  { serial: TODAY - 10 },
  "rigging inspector",
  more.tagged ?? "",
];

const judged = (cells: readonly CellValue[]): Report => reportOn([HEADINGS, cells], { basis: ["standard", "practice"], asOf: TODAY })!;

async function card(cells: readonly CellValue[]): Promise<HTMLElement> {
  const book = new FakeWorkbook();
  book.log = { place: LOG_PLACE, report: judged(cells) };
  render(<Pane port={book} />);
  await user.click(await screen.findByRole("tab", { name: /^Items/ }));
  await user.click(within(screen.getByRole("listbox")).getByRole("option"));
  return screen.findByRole("article", { name: "S-1" });
}

const times = (text: string, part: string): number => text.split(part).length - 1;

describe("the item card", () => {
  it("says what an auditor asks first, as far as the log has it, and the day and the rules", async () => {
    const facts = within(await card(row(0.97)));
    const said = (name: string): string | null | undefined => facts.getByText(name).nextElementSibling?.textContent;
    expect(["Last inspection", "Inspected by", "Size", "Rated load", "Gauge", "Judged as of", "Rules in force"].map(said)).toEqual([
      "19 Feb 2026",
      "rigging inspector",
      "3/4",
      "4.75 t",
      "0.001 in",
      "1 Mar 2026",
      "Standard + Practice",
    ]);
  });

  it("says the sentence that decides once, and each other one once", async () => {
    const shown = await card(row(0.8, { cracks: "yes" }));
    const text = shown.textContent.slice(0, shown.textContent.indexOf("Under each rule set alone")).replaceAll("\u00a0", " ");
    const { verdict } = judged(row(0.8, { cracks: "yes" })).items[0]!;
    const groups = new Map(verdict.findings.map((finding) => [finding.check, sentenceOf(finding)] as const).reverse());
    expect(groups.size).toBeGreaterThan(4);
    for (const sentence of groups.values()) expect([sentence, times(text, sentence)]).toEqual([sentence, 1]);
  });

  it("of an item that is kept says the reading nearest to its limit once", async () => {
    const shown = await card(row(0.97));
    expect(times(shown.textContent, "is nearest to its limit")).toBe(1);
    expect(times(shown.textContent.replaceAll("\u00a0", " "), "0.97 in, as new 1 in, is inside the limit")).toBe(0);
  });

  it("of a tagged item does not say to tag it, and its due date is quiet", async () => {
    const shown = await card(row(0.97, { tagged: "yes" }));
    expect(shown).not.toHaveTextContent(/and tag out/);
    expect(shown).toHaveTextContent(/Stays out of service/);
    expect(within(shown).getByText(/Inspection due/).style.backgroundColor).toBe("");
  });
});

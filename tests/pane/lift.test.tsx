/** Before the lift, as people use it. The readings are typed; the engine answers. */
import { render, screen, within } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import axe from "axe-core";
import { beforeEach, describe, expect, it } from "vitest";
import { type FieldId } from "../../src/engine/columns";
import { type CellValue } from "../../src/engine/reading/cell-value";
import { type HeadingMatch } from "../../src/engine/log/match-headings";
import { type ItemResult } from "../../src/engine/report/model";
import { WorkbookError } from "../../src/excel/kit/workbook-error";
import { Pane } from "../../src/taskpane/shell/Pane";
import { CAUTION } from "../../src/taskpane/shared/words";
import { inLayer } from "./layer";
import "./still";
import { FakeWorkbook, HEADINGS, item, LOG_PLACE, report, TODAY, type ItemSketch } from "./sample";

const user = userEvent.setup();
let book: FakeWorkbook;

function rated(row: number, ratedLoad: CellValue, sketch: ItemSketch): ItemResult {
  return { ...item(row, { gearText: sketch.gear ?? "hook", ...sketch }), cells: new Map<FieldId, CellValue>([["ratedLoad", ratedLoad]]) };
}

const GEAR = [
  rated(1, "2 t", { id: "WS-1", gear: "wire rope sling" }),
  rated(2, "2 t", { id: "WS-2", gear: "wire rope sling" }),
  rated(3, "3.25 t", { id: "SH-1", gear: "shackle" }),
  rated(4, "5 t", { id: "HK-1", gear: "hook" }),
  rated(5, "5 t", { id: "HK-2", gear: "hook", decision: "REMOVE", reason: "Cracked at the saddle." }),
  rated(6, "", { id: "LK-1", gear: "link" }),
  rated(7, "2 t", { id: "EB-1", gear: "eyebolt", gearText: "Shoulder eyebolt" }),
  rated(8, "2 t", { id: "", gear: "hook" }),
];

beforeEach(() => {
  book = new FakeWorkbook();
  book.log = { place: LOG_PLACE, report: report(GEAR) };
});

async function open(): Promise<void> {
  render(<Pane port={book} />);
  await user.click(await screen.findByRole("tab", { name: "Lift" }));
}

const pick = async (...ids: string[]): Promise<void> => {
  const more = screen.queryByRole("button", { name: "Pick more" });
  if (more !== null) await user.click(more);
  for (const id of ids) await user.click(screen.getByRole("checkbox", { name: new RegExp(`^${id} `) }));
};

const TWO_LEGS: Record<string, string> = { Load: "3", "Unit of the load": "t", Hitch: "vertical", Legs: "2", "Angle, degrees": "60" };

async function typeLift(values: Record<string, string> = TWO_LEGS): Promise<void> {
  for (const [label, value] of Object.entries(values)) {
    const input = screen.getByLabelText(label);
    if (input instanceof HTMLSelectElement) await user.selectOptions(input, value);
    else {
      await user.clear(input);
      await user.type(input, value);
    }
  }
}

const outcome = (): HTMLElement => screen.getByRole("region", { name: "Can it carry the load?" });
/** Figures keep their unit on one line; here a blank is a blank. */
const said = (): string => within(outcome()).getByRole("status").textContent.replaceAll("\u00a0", " ");
const refusals = (): string => screen.queryByRole("list", { name: "What is to be put right" })?.textContent ?? "";
const lineOf = (id: string): string => {
  const row = within(screen.getByRole("table"))
    .getByRole("rowheader", { name: new RegExp(`^${id}`) })
    .closest("tr");
  return `${row?.textContent ?? ""} ${row?.nextElementSibling?.textContent ?? ""}`.replaceAll("\u00a0", " ");
};

describe("before the lift", () => {
  it("asks for the gear first, and has the caution in the foot", async () => {
    await open();
    expect(said()).toContain("Nothing is picked yet.");
    expect(screen.queryByRole("table")).toBeNull();
    expect(screen.getByRole("button", { name: "Put this on a sheet" })).toHaveAttribute("aria-disabled", "true");
    expect(screen.getByText(CAUTION)).toBeVisible();
  });

  it("offers usable gear first, and says beside the decision why a lift refuses the rest", async () => {
    book.log = {
      place: LOG_PLACE,
      report: report([
        item(1, { id: "A-1", nextDue: TODAY - 1, dueState: "OVERDUE" }),
        item(2, { id: "A-2", nextDue: null, dueState: "NO DATE" }),
        item(3, { id: "A-3", nextDue: TODAY, dueState: "DUE SOON" }),
        item(4, { id: "A-4", tagged: true, decision: "REMOVE" }),
        item(5, { id: "A-5" }),
      ]),
    };
    await open();
    const lines = within(screen.getByRole("list", { name: "Gear of the log" }))
      .getAllByRole("listitem")
      .map((line) => line.textContent);
    expect(lines).toEqual(
      [
        /^A-5 Hook.KEEP$/,
        /^A-1 HookOverdue.KEEP, late$/,
        /^A-2 HookNo date.KEEP$/,
        /^A-3 HookDue today.KEEP$/,
        /^A-4 HookTagged out.REMOVE$/,
      ].map((line) => expect.stringMatching(line)),
    );
  });

  it("asks for all that is missing at once, and calls nothing refused before", async () => {
    await open();
    await pick("WS-1", "WS-2");
    expect(said()).toMatch(
      /Not judged yet\..*Still to give: the load with its unit, such as 5 t or 9,800 lb; the hitch; the number of legs\./,
    );
    expect(lineOf("WS-1")).toMatch(/WS-1 .*not judged yettag: 2 t/);
    expect(outcome().textContent).not.toMatch(/REFUSED|do not lift/);
    await typeLift({ Load: "3", "Unit of the load": "t", Hitch: "choker", Legs: "2" });
    expect(said()).toMatch(/Still to give: the angle of the legs; the choke angle\./);
    await pick("HK-2");
    expect(said()).toMatch(/Not judged: do not lift on this\./);
    expect(refusals()).toMatch(/^Still to give: the angle of the legs; the choke angle\..*HK-2 \(hook\) is out of use/);
    expect(screen.getByRole("button", { name: "Put this on a sheet" })).toHaveAttribute("aria-disabled", "true");
  });

  it("says that the gear carries, with tension, margin, and the weakest item", async () => {
    await open();
    await pick("WS-1", "WS-2", "SH-1", "HK-1");
    await typeLift();
    // 3 t on two legs at 60 degrees: 3 / (2 sin 60) = 1.7321 t of 2 t, 86.6 %; the hook has 3 of 5 t, the shackle on top 3 of 3.25 t, 92.3 %.
    expect(said()).toMatch(/CARRIES\..*Weakest: SH-1, 7 % left\./);
    expect(outcome().textContent).toContain("Tension in each leg: 1.733 t");
    expect(lineOf("WS-1")).toMatch(/1\.733 t2 t.*CARRIES13 % leftthe tension of one leg; tag: 2 t in column Rated load, read as one leg/);
    expect(lineOf("SH-1")).toMatch(/3 t3\.25 t.*weakest/);
    await user.selectOptions(screen.getByLabelText("Place of SH-1"), "leg");
    expect(said()).toMatch(/Weakest: WS-1, 13 % left\./);
  });

  it("says OVERLOADED, by how much", async () => {
    await open();
    await pick("WS-1", "WS-2");
    await typeLift({ ...TWO_LEGS, Load: "4", "Angle, degrees": "30" });
    // 4 t at 30 degrees: 4 t in each leg of 2 t.
    expect(said()).toMatch(/OVERLOADED: do not lift\..*100 % too much/);
    expect(lineOf("WS-2")).toContain("OVERLOADED");
    await typeLift({ Load: "2" });
    expect(said()).toMatch(/CARRIES\..*0 % left/);
  });

  it("refuses in sentences that name the item", async () => {
    await open();
    await pick("HK-2", "LK-1", "EB-1");
    await typeLift({ Load: "1", Hitch: "vertical", Legs: "1" });
    expect(said()).toMatch(/Not judged: do not lift on this\./);
    expect(refusals()).toMatch(/no unit/);
    await typeLift({ "Unit of the load": "t" });
    expect(refusals()).toMatch(/HK-2 \(hook\) is out of use, REMOVE/);
    expect(refusals()).toMatch(/LK-1 \(link\) has no rated load; fill "Rated load"/);
    expect(refusals()).toMatch(/EB-1 .*side load angle of the eyebolt is missing/);
    await user.type(screen.getByLabelText("Side load, degrees from its shank"), "30");
    expect(refusals()).not.toMatch(/EB-1/);
    expect(lineOf("EB-1")).toMatch(/side load at 30 degrees 18.7 %/);
    await user.click(screen.getByRole("button", { name: "Drop HK-2" }));
    expect(refusals()).not.toMatch(/HK-2/);
  });

  it("refuses 29.9 degrees, a choker without its choke angle, heat without a figure", async () => {
    await open();
    await pick("WS-1", "WS-2");
    await typeLift({ ...TWO_LEGS, "Angle, degrees": "29.9" });
    expect(refusals()).toMatch(/less than 30 degrees/);
    await typeLift({ "Angle, degrees": "30", Load: "1", Hitch: "choker" });
    expect(said()).toMatch(/Still to give: the choke angle\./);
    await typeLift({ "Choke angle, degrees": "130" });
    expect(said()).toMatch(/CARRIES/);
    await typeLift({ Temperature: "300", "Temperature in": "F" });
    expect(refusals()).toMatch(/no heat figure for a wire rope sling/);
  });

  it("says under the field what a blank side load of a shackle means", async () => {
    await open();
    await pick("SH-1", "EB-1");
    expect(screen.getByLabelText("Side load, degrees out of its plane")).toHaveAccessibleDescription("Blank: loaded in line");
    expect(screen.getByText("Blank: loaded in line")).toBeVisible();
    expect(screen.getByLabelText("Side load, degrees from its shank")).toHaveAccessibleDescription("0: pulled straight");
  });

  it("counts both parts of a basket on the hardware in its leg, and names why two legs may be all that carry", async () => {
    await open();
    await pick("WS-1", "SH-1");
    await user.selectOptions(screen.getByLabelText("Place of SH-1"), "leg");
    await typeLift({ Load: "3.2", "Unit of the load": "t", Hitch: "basket", "Slings, two parts each": "1", "Angle, degrees": "90" });
    expect(lineOf("SH-1")).toMatch(/3\.2 t3\.25 t.*CARRIES.*both parts of a basket/);
    await user.selectOptions(screen.getByLabelText("Place of WS-1"), "top");
    expect(refusals()).toMatch(/no sling stands in a leg/);
    expect(screen.queryByText(/Navy handbook/)).toBeNull();
    await typeLift({ Hitch: "vertical", Legs: "4" });
    expect(screen.getByRole("checkbox", { name: /^Count only two legs/ })).toHaveAccessibleDescription(/Navy handbook.*two-leg sling/);
  });

  it("folds the picker once the lift is typed, opens it again on request, and keeps the answer in sight", async () => {
    await open();
    const answer = (): HTMLElement => document.querySelector<HTMLElement>("[data-outcome]")!;
    expect(screen.queryByRole("button", { name: /Pick more|Done picking/ })).toBeNull();
    await pick("HK-1");
    expect(answer()).toHaveTextContent(/^…Not judged yet\. Still to give: the load/);
    await user.click(screen.getByRole("button", { name: "Done picking" }));
    expect(screen.queryByRole("searchbox")).toBeNull();
    const more = screen.getByRole("button", { name: "Pick more" });
    expect(more).toHaveFocus();
    await user.click(more);
    expect(screen.getByRole("searchbox", { name: "Search the gear" })).toHaveFocus();
    await typeLift({ Load: "1", "Unit of the load": "t", Hitch: "vertical", Legs: "1" });
    expect(screen.queryByRole("searchbox")).toBeNull();
    expect(answer()).toHaveTextContent(/^✔CARRIES\. HK-1, 80 % left\.$/);
    expect(getComputedStyle(answer()).position).toBe("sticky");
    await typeLift({ Load: "9" });
    expect(answer()).toHaveTextContent(/^✖OVERLOADED: do not lift\./);
    await user.click(screen.getByRole("button", { name: "Start again" }));
    expect(screen.getByRole("searchbox", { name: "Search the gear" })).toBeVisible();
  });

  it("finds gear by search, keeps what is picked in other places, and starts again", async () => {
    await open();
    await user.type(screen.getByRole("searchbox", { name: "Search the gear" }), "shackle");
    expect(screen.getAllByRole("checkbox")).toHaveLength(1);
    await pick("SH-1");
    await user.click(screen.getByRole("tab", { name: "Sources" }));
    await user.click(screen.getByRole("tab", { name: "Lift" }));
    expect(within(screen.getByRole("list", { name: "Gear that is picked" })).getByText("SH-1")).toBeVisible();
    expect(screen.queryByRole("searchbox")).toBeNull();
    await user.click(screen.getByRole("button", { name: "Start again" }));
    expect(screen.queryByRole("list", { name: "Gear that is picked" })).toBeNull();
    expect(screen.getByRole("checkbox", { name: /no id/ })).toBeDisabled();
  });

  it("picks with the space bar and takes the unit behind the load", async () => {
    await open();
    screen.getByRole("checkbox", { name: /^HK-1/ }).focus();
    await user.keyboard(" ");
    screen.getByLabelText("Load").focus();
    await user.keyboard("5 t");
    await typeLift({ Hitch: "vertical", Legs: "1" });
    expect(said()).toMatch(/CARRIES\..*HK-1, 0 % left/);
  });

  it("reads bare rated loads in the unit of their heading", async () => {
    const headings: readonly HeadingMatch[] = [
      ...HEADINGS,
      {
        column: 4,
        heading: "WLL (kg)",
        field: "ratedLoad",
        also: null,
        unit: null,
        chosen: false,
        state: "read",
        proposal: null,
        earlier: null,
      },
    ];
    book.log = { place: LOG_PLACE, report: report([rated(1, 2000, { id: "HK-1" })], { headings }) };
    await open();
    await pick("HK-1");
    await typeLift({ Load: "2", "Unit of the load": "t", Hitch: "vertical", Legs: "1" });
    expect(lineOf("HK-1")).toMatch(/tag: 2000 kg in column WLL \(kg\)/);
    expect(said()).toMatch(/CARRIES/);
  });

  it("counts two legs of four where the strict rules are in force", async () => {
    const slings = [1, 2, 3, 4].map((row) => rated(row, "2 t", { id: `WS-${String(row)}`, gear: "wire rope sling" }));
    book.log = { place: LOG_PLACE, report: report(slings, { basis: ["strict"] }) };
    await open();
    await pick("WS-1", "WS-2", "WS-3", "WS-4");
    await typeLift({ ...TWO_LEGS, Load: "4.1", Legs: "4", "Angle, degrees": "90" });
    expect(screen.getByRole("checkbox", { name: /^Count only two legs/ })).toBeDisabled();
    expect(said()).toMatch(/OVERLOADED/);
    expect(outcome().textContent).toContain("2.05 t (4.1 t on 4 legs, of which 2 are counted as carrying");
  });

  it("says when a picked item is gone from the log, and when it is late as of another day", async () => {
    await open();
    await pick("HK-1");
    await typeLift({ Load: "1", "Unit of the load": "t", Hitch: "vertical", Legs: "1" });
    expect(said()).toMatch(/CARRIES/);
    book.log = { place: LOG_PLACE, report: report(GEAR, { asOf: TODAY + 400 }) };
    await user.click(await screen.findByRole("button", { name: /^as of/ }));
    await user.click(screen.getByRole("button", inLayer("Use this day")));
    expect(await screen.findByText(/HK-1 \(hook\) is OVERDUE/)).toBeVisible();
    book.log = { place: LOG_PLACE, report: report(GEAR.filter((one) => one.id !== "HK-1")) };
    await user.click(await screen.findByRole("button", { name: /^as of/ }));
    await user.click(screen.getByRole("button", inLayer("Use this day")));
    expect(await screen.findByText(/HK-1 was picked and is no longer in the log/)).toBeVisible();
    expect(said()).toMatch(/Not judged/);
  });

  it("refuses an item whose id stands on another row in other letters", async () => {
    book.log = {
      place: LOG_PLACE,
      report: report([...GEAR, rated(9, "5 t", { id: "hk-1", gear: "hook", decision: "REMOVE", reason: "Cracked." })]),
    };
    await open();
    await user.click(screen.getByRole("checkbox", { name: /^HK-1 / }));
    await typeLift({ Load: "1", "Unit of the load": "t", Hitch: "vertical", Legs: "1" });
    expect(said()).toMatch(/Not judged/);
    expect(await screen.findByText(/The id "hk-1" is picked more than once/)).toBeVisible();
  });

  it("refuses rated loads under a heading that names another load", async () => {
    const made = report(GEAR);
    const headings: readonly HeadingMatch[] = [
      ...made.headings.filter((one) => one.field !== "ratedLoad"),
      {
        column: 90,
        heading: "Basket WLL",
        field: "ratedLoad",
        also: null,
        unit: null,
        chosen: false,
        state: "read",
        proposal: null,
        earlier: null,
      },
    ];
    book.log = { place: LOG_PLACE, report: { ...made, headings } };
    await open();
    await pick("HK-1", "SH-1");
    await typeLift({ Load: "1", "Unit of the load": "t", Hitch: "vertical", Legs: "1" });
    expect(said()).toMatch(/Not judged/);
    expect(screen.getAllByText(/^Rated loads stand under "Basket WLL"/)).toHaveLength(1);
  });

  it("puts the lift on a sheet once nothing is refused, and tells a failure in a sentence", async () => {
    await open();
    await pick("HK-1");
    await typeLift({ Load: "1", "Unit of the load": "t", Hitch: "vertical" });
    await user.click(screen.getByRole("button", { name: "Put this on a sheet" }));
    expect(book.lifts).toHaveLength(0);
    await typeLift({ Legs: "1" });
    book.failures.writeLift = new WorkbookError(
      "other shape",
      'The sheet "Gear lift" is not one that this add-in wrote. Rename that sheet, then try again; nothing was written.',
    );
    await user.click(screen.getByRole("button", { name: "Put this on a sheet" }));
    expect(await screen.findByText(/Rename that sheet/)).toBeVisible();
    delete book.failures.writeLift;
    await user.click(screen.getByRole("button", { name: "Try again" }));
    expect(await screen.findByText("Written on sheet Gear lift, with live formulas.")).toBeVisible();
    expect(book.lifts.at(-1)?.result.ok).toBe(true);
    await typeLift({ Load: "2" });
    expect(screen.queryByText(/Written on sheet/)).toBeNull();
  });

  it("keeps the rules for accessible pages with an answer on it", async () => {
    await open();
    await pick("WS-1", "WS-2", "SH-1", "LK-1");
    await typeLift();
    const results = await axe.run(
      { include: [["body"]], exclude: [["[data-tabster-dummy]"]] },
      { rules: { "color-contrast": { enabled: false } } },
    );
    expect(results.violations.map((violation) => `${violation.id}: ${violation.nodes[0]?.html ?? ""}`)).toEqual([]);
  });
});

/** The log's place: the way to the build button, and the headings. */
import { render, screen, waitFor, within } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { beforeEach, describe, expect, it } from "vitest";
import { type FieldId } from "../../src/engine/columns";
import { type ColumnQuestion } from "../../src/engine/log/questions";
import { type Finding } from "../../src/engine/check/finding";
import { type HeadingMatch } from "../../src/engine/log/match-headings";
import { type ItemResult, type KindLack } from "../../src/engine/report/model";
import { lacksOf } from "../../src/taskpane/log/lacks";
import { Pane } from "../../src/taskpane/shell/Pane";
import "./still";
import { FakeWorkbook, HEADINGS, item, ITEMS, LOG_PLACE, report } from "./sample";

const user = userEvent.setup();
const DATED: readonly HeadingMatch[] = [
  ...HEADINGS,
  {
    column: 4,
    heading: "Last insp.",
    field: "inspected",
    also: null,
    unit: null,
    chosen: false,
    state: "read",
    proposal: null,
    earlier: null,
  },
];
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

const LATCH: KindLack = { kind: "hook", items: 4, of: 4, columns: [{ field: "latch", missing: 4, unreadable: 0, there: false }] };
const lacks = (): string[] =>
  within(screen.getByRole("list", { name: "What this log lacks" }))
    .getAllByRole("listitem")
    .map((line) => line.textContent);

describe("what the log lacks", () => {
  it("names the kinds that are not understood with their counts, and the missing date", async () => {
    const unknown = (row: number, gearText: string): ItemResult => item(row, { id: `U-${String(row)}`, gear: null, gearText });
    const items = [...ITEMS, unknown(6, "Swvl"), unknown(7, "Web slg"), unknown(8, "web slg"), unknown(9, "")];
    book.log = { place: LOG_PLACE, report: report(items, { lacking: [LATCH] }) };
    render(<Pane port={book} />);
    await screen.findByText("Log found");
    expect(lacks()).toEqual([
      "4 items: kind not understood: “Web slg” on 2 rows, “Swvl” on 1 row, blank on 1 row.",
      "No column for the date of the last inspection: no due dates, no lift.",
      "4 hooks: no column for Latch works.",
    ]);
  });

  it("is nothing where all is there", async () => {
    await open({ headings: DATED });
    expect(screen.queryByText("What this log lacks for KEEP")).toBeNull();
  });

  it("comes first, says how many items wait, and names the next step", async () => {
    await open({ lacking: [LATCH], counts: { REMOVE: 0, EXAMINE: 0, "NO VERDICT": ITEMS.length, DRESS: 0, WATCH: 0, KEEP: 0 } });
    const told = screen.getByRole("region", { name: "What this log lacks for KEEP" });
    expect(told).toHaveTextContent(`None of the ${String(ITEMS.length)} items has a verdict yet.`);
    expect(told).toHaveTextContent("Next: press Build register. It has a column for each of these and marks the cells to fill");
    expect(told.compareDocumentPosition(screen.getByText("Log found")) & Node.DOCUMENT_POSITION_FOLLOWING).not.toBe(0);
    expect(within(told).queryByRole("button")).toBeNull();
  });

  it("waits for the questions, since their answers change it", async () => {
    await open({ lacking: [LATCH], questions: { columns: [], unit: { items: 2, samples: [] } } });
    expect(screen.getByText("First answer the questions above; what is still missing then stands here.")).toBeVisible();
    expect(screen.queryByRole("list", { name: "What this log lacks" })).toBeNull();
  });

  it("offers a sheet of gear types where sizes when new are missing", async () => {
    const missing = { why: "missing", field: "throatNew" } as Finding;
    const bare = ITEMS.map((one) => ({ ...one, verdict: { ...one.verdict, findings: [missing] } }));
    book.log = { place: LOG_PLACE, report: report(bare, { lacking: [LATCH] }) };
    render(<Pane port={book} />);
    await user.click(await screen.findByRole("button", { name: "Make a sheet of gear types" }));
    expect(book.typesSheets).toBe(1);
    expect(screen.getByText(/lack their size when new\. Items of one type share it: .* Give the log a column Type/)).toBeVisible();
  });

  it("names twelve kinds at most", () => {
    const items = Array.from({ length: 15 }, (_, row) => item(row, { id: String(row), gear: null, gearText: `kind ${String(row)}` }));
    expect(lacksOf(report(items, { headings: DATED }))[0]).toMatch(
      /^15 items: kind not understood: “kind 0” on 1 row, .*“kind 11” on 1 row and 3 more\.$/,
    );
  });
});

describe("gear types", () => {
  it("that cannot be used stand first, and types that lend nothing among what the log lacks", async () => {
    const refused = ["Gear types, row 4 (TP-H5, hook): it names no unit. It lends no sizes until it is put right."];
    const unmet = ['The type "TP-H9" has no row on the sheet Gear types: TP-1.'];
    await open({ types: { served: 3, refused, unmet }, headings: DATED });
    const rows = screen.getByRole("list", { name: "Rows of Gear types that cannot be used" });
    expect(rows).toHaveTextContent(refused[0]!);
    expect(screen.getByRole("list", { name: "What this log lacks" })).toHaveTextContent(unmet[0]!);
    expect(rows.compareDocumentPosition(screen.getByText("Log found")) & Node.DOCUMENT_POSITION_FOLLOWING).not.toBe(0);
  });
});

describe("what the log leaves open", () => {
  const column = (at: number, heading: string, proposal: FieldId | null, samples: readonly string[]): ColumnQuestion => ({
    column: at,
    heading,
    proposal,
    samples,
    items: 3,
  });
  const columns = [
    column(4, "Cracks nil", "cracks", ["yes"]),
    column(7, "Latch o.k.", "latch", ["y"]),
    column(9, "Failed", null, ["no", "yes"]),
  ];
  const answered = (): unknown => book.reads.at(-1)?.choices;

  it("is asked first, on one screen, with what stands in each column", async () => {
    await open({ questions: { columns, unit: null } });
    const asked = screen.getByRole("region", { name: "3 columns need an answer" });
    expect(within(asked).getByRole("group", { name: "Failed" })).toHaveTextContent("3 items: “no”, “yes” ...");
    const found = screen.getByRole("button", { name: "Build register" });
    expect(asked.compareDocumentPosition(found) & Node.DOCUMENT_POSITION_FOLLOWING).not.toBe(0);
  });

  it("takes one press for a column, read or not judged, and a choice for another reading", async () => {
    await open({ questions: { columns, unit: null } });
    const of = (heading: string): ReturnType<typeof within> => within(screen.getByRole("group", { name: heading }));
    await user.click(of("Cracks nil").getByRole("button", { name: "Read as Cracks" }));
    await user.click(of("Failed").getByRole("button", { name: "Not judged" }));
    await user.selectOptions(of("Latch o.k.").getByRole("combobox"), "result");
    expect(answered()).toEqual({ "cracks nil": "cracks", failed: null });
    await user.click(of("Latch o.k.").getByRole("button", { name: "Read as Result in the log" }));
    expect(answered()).toEqual({ "cracks nil": "cracks", failed: null, "latch o.k.": "result" });
    expect(book.savedStates.at(-1)?.choices).toEqual(answered());
  });

  it("offers first what the log lacks, and goes on to the next question", async () => {
    await open({ questions: { columns, unit: null }, lacking: [LATCH] });
    const groups = [...screen.getByRole("combobox", { name: "Failed is read as" }).querySelectorAll("optgroup")];
    expect(groups.map(({ label, children }) => [label, children[0]?.textContent])).toEqual([
      ["What this log lacks", "Latch works"],
      ["All others", "Id"],
    ]);
    book.log = { place: LOG_PLACE, report: report(ITEMS, { questions: { columns: columns.slice(1), unit: null } }) };
    await user.click(within(screen.getByRole("group", { name: "Cracks nil" })).getByRole("button", { name: "Not judged" }));
    await waitFor(() => expect(screen.queryByRole("group", { name: "Cracks nil" })).toBeNull());
    expect(within(screen.getByRole("group", { name: "Latch o.k." })).getByRole("button", { name: "Read as Latch works" })).toHaveFocus();
  });

  it("takes one press for all proposals, or for none", async () => {
    await open({ questions: { columns, unit: null } });
    await user.click(screen.getByRole("button", { name: "Take all 2 proposals" }));
    expect(answered()).toEqual({ "cracks nil": "cracks", "latch o.k.": "latch" });
    await user.click(screen.getByRole("button", { name: "Judge none of these 3" }));
    expect(answered()).toEqual({ "cracks nil": null, "latch o.k.": null, failed: null });
  });

  it("asks for the unit once, keeps it for this sheet, and takes it back", async () => {
    await open({ questions: { columns: [], unit: { items: 12, samples: [{ heading: "Throat now", text: "47.6" }] } } });
    expect(screen.getByText(/^12 items have sizes without a unit, such as 47\.6 under Throat now\./)).toBeVisible();
    await user.click(screen.getByRole("button", { name: "Millimetres" }));
    expect(book.reads.at(-1)?.units).toEqual({ "hook log": "mm" });
    expect(book.savedStates.at(-1)?.units).toEqual({ "hook log": "mm" });
    await user.click(await screen.findByRole("button", { name: "Ask again" }));
    expect(book.reads.at(-1)?.units).toEqual({});
  });

  it("names the columns that are set aside", async () => {
    await open({ headings: DATED.map((heading) => (heading.heading === "Paint" ? { ...heading, state: "set aside" as const } : heading)) });
    expect(screen.getByText("Set aside, so not judged: Paint.")).toBeVisible();
  });
});

describe("ids that stand twice", () => {
  const TWICE = [item(1, { id: "TP-1" }), item(2, { id: "tp-1" }), item(3, { id: "TP-2" }), item(4, { id: "" })];
  const problems = ['The id "TP-1" stands on more than one row; give each item an id of its own.'];

  it("are listed with their rows, each a press away in the sheet", async () => {
    book.log = { place: LOG_PLACE, report: report(TWICE, { problems }) };
    render(<Pane port={book} />);
    const list = await screen.findByRole("list", { name: "Rows of these ids" });
    expect(
      within(list)
        .getAllByRole("listitem")
        .map((line) => line.textContent),
    ).toEqual(["TP-1: row 5row 6", "No id: row 8"]);
    await user.click(within(list).getByRole("button", { name: "Show row 6 in the sheet" }));
    expect(book.shown).toEqual([{ place: LOG_PLACE, row: 2 }]);
  });

  it("are only named while the register is shown, whose rows are others", async () => {
    book.withRegister().log = { place: LOG_PLACE, report: report(TWICE, { problems }) };
    render(<Pane port={book} />);
    await screen.findByRole("button", { name: "Rebuild register" });
    const list = await screen.findByRole("list", { name: "Rows of these ids" });
    expect(within(list).queryByRole("button")).toBeNull();
    expect(list).toHaveTextContent("TP-1: row 5, row 6");
  });
});

describe("the headings", () => {
  it("are folded while none needs attention, after the build button, which is a few Tab presses away", async () => {
    await open({ headings: DATED });
    expect(headings()).not.toHaveAttribute("open");
    expect(screen.getByText(/^Headings/).parentElement).toHaveTextContent("Headings 4 of 5 read");
    const build = screen.getByRole("button", { name: "Build register" });
    expect(build.compareDocumentPosition(headings())).toBe(Node.DOCUMENT_POSITION_FOLLOWING);
    const stops = [...document.querySelectorAll("button, select, input, summary")];
    // Four parts of the line on top, and six tabs of which one is a stop.
    expect(stops.indexOf(build)).toBeLessThan(11);
  });

  it.each([
    [
      "two are read as the same",
      [
        ...DATED,
        {
          column: 9,
          heading: "Gap",
          field: null,
          also: "throatNow",
          unit: null,
          chosen: false,
          state: "read",
          proposal: null,
          earlier: null,
        },
      ],
    ],
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

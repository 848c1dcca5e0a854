/** The pane's work with the workbook, without a page. */
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { type Decision } from "../../src/engine/decision";
import { HOUSE_SHEET } from "../../src/excel/kit/sheets";
import { WorkbookError } from "../../src/excel/kit/workbook-error";
import { type ReadLog } from "../../src/excel/port";
import { judgeLift } from "../../src/taskpane/lift/judge";
import { type LiftChange } from "../../src/taskpane/state/lift-form";
import { LOOK_AGAIN_MS } from "../../src/taskpane/state/cell-watch";
import { EDITING_MS, RETRY_MS, SETTLE_MS } from "../../src/taskpane/state/read-workbook";
import { ENTER_MS } from "../../src/taskpane/state/typed-row";
import { SILENCE_MS } from "../../src/taskpane/state/while-heard";
import { createPane, type PaneStore } from "../../src/taskpane/state/use-pane";
import { FakeWorkbook, item, ITEMS, LOG_PLACE, report, RESULT, TODAY } from "./sample";

let book: FakeWorkbook;
let pane: PaneStore;
let now: Date;

beforeEach(() => {
  vi.useFakeTimers();
  now = new Date(2026, 2, 1, 8);
  book = new FakeWorkbook();
  pane = createPane(book, () => now);
});

afterEach(async () => {
  await pane.intentions.end();
  vi.useRealTimers();
});

const changed = (sheet = "Hook log", remote = false): void => book.fire({ kind: "changed", remote, sheet });

describe("starting", () => {
  it("looks for the log with today's date and the default rules, and keeps where it found it", async () => {
    await pane.intentions.start();
    expect(book.reads).toEqual([{ from: "auto", basis: ["standard", "practice"], asOf: TODAY, choices: {}, units: {} }]);
    expect(pane.get()).toMatchObject({ log: { place: LOG_PLACE }, work: { kind: "idle" }, failure: null });
    expect(book.savedStates.at(-1)).toEqual({ basis: ["standard", "practice"], choices: {}, units: {}, place: LOG_PLACE });
  });

  it("reads the saved place again with the saved rules and headings", async () => {
    book.saved = { basis: ["law"], choices: { paint: null }, units: { "hook log": "mm" }, place: LOG_PLACE };
    await pane.intentions.start();
    expect(book.reads).toEqual([{ from: LOG_PLACE, basis: ["law"], asOf: TODAY, choices: { paint: null }, units: { "hook log": "mm" } }]);
  });

  it.each(["no log", "host"] as const)("looks elsewhere when the saved place is gone (%s)", async (kind) => {
    book.saved = { ...book.saved, place: LOG_PLACE };
    const found: ReadLog = { place: { ...LOG_PLACE, address: "B2:K9" }, report: report() };
    vi.spyOn(book, "read").mockRejectedValueOnce(new WorkbookError(kind, "Nothing there.")).mockResolvedValueOnce(found);
    await pane.intentions.start();
    expect(pane.get()).toMatchObject({ log: found, noLog: "", failure: null });
  });

  it("has a start state, not a failure, when no log is found; the register is read all the same", async () => {
    book.withRegister().log = new WorkbookError("no log", "No sheet holds a log.");
    await pane.intentions.start();
    expect(pane.get()).toMatchObject({
      log: null,
      noLog: "No sheet holds a log.",
      failure: null,
      register: { check: { functionsMissing: false } },
    });
  });

  it.each([
    ["load", "start"],
    ["watch", "watch"],
    ["checkRegister", "find"],
    ["save", "save"],
  ] as const)("says so when %s fails, and can try again", async (where, retry) => {
    book.failures[where] = new WorkbookError("host", "Excel did not answer; try again.");
    await pane.intentions.start();
    expect(pane.get().failure).toEqual({ kind: "host", message: "Excel did not answer; try again.", retry });
    Reflect.deleteProperty(book.failures, where);
    await pane.intentions.retry(retry);
    expect(pane.get()).toMatchObject({ failure: null, work: { kind: "idle" } });
  });
});

describe("reading", () => {
  it("drops the answer of an earlier reading when a later one is under way", async () => {
    await pane.intentions.start();
    let answer: (log: ReadLog) => void = () => undefined;
    vi.spyOn(book, "read").mockReturnValueOnce(new Promise((resolve) => (answer = resolve)));
    const slow = pane.intentions.setBasis(["law"]);
    book.log = { place: LOG_PLACE, report: report(ITEMS.slice(0, 2)) };
    await pane.intentions.setBasis(["strict"]);
    answer({ place: LOG_PLACE, report: report([]) });
    expect(await slow).toBe(false);
    expect(pane.get()).toMatchObject({ basis: ["strict"], work: { kind: "idle" } });
    expect(pane.get().log?.report.items).toHaveLength(2);
  });

  it("keeps the log that it had when the selection holds none", async () => {
    await pane.intentions.start();
    book.log = new WorkbookError("no log", "The selection holds no headings; select the heading row too.");
    expect(await pane.intentions.useSelection()).toBe(false);
    expect(pane.get()).toMatchObject({ log: { place: LOG_PLACE }, failure: { kind: "no log", retry: "selection" } });
  });

  it("moves on with the clock after midnight, but not past a day that the user chose", async () => {
    await pane.intentions.start();
    now = new Date(2026, 2, 2, 0, 5);
    await pane.intentions.readAgain();
    expect(book.reads.at(-1)?.asOf).toBe(TODAY + 1);
    await pane.intentions.setAsOf(TODAY + 100, true);
    now = new Date(2026, 2, 9);
    await pane.intentions.readAgain();
    expect(book.reads.at(-1)?.asOf).toBe(TODAY + 100);
  });

  it("sends the user's heading with the next reading and keeps it in the workbook", async () => {
    await pane.intentions.start();
    await pane.intentions.setHeading("Paint", "remarks");
    expect(book.reads.at(-1)).toMatchObject({ from: LOG_PLACE, choices: { paint: "remarks" } });
    expect(book.savedStates.at(-1)?.choices).toEqual({ paint: "remarks" });
  });
});

describe("changes in the sheet", () => {
  it("waits for the burst to end, then reads once, without showing work", async () => {
    await pane.intentions.start();
    for (let i = 0; i < 5; i += 1) {
      changed();
      await vi.advanceTimersByTimeAsync(SETTLE_MS - 1);
    }
    expect(book.reads).toHaveLength(1);
    book.log = { place: LOG_PLACE, report: report(ITEMS.slice(1)) };
    await vi.advanceTimersByTimeAsync(1);
    expect(book.reads).toHaveLength(2);
    expect(pane.get()).toMatchObject({ work: { kind: "idle" }, announcement: "The counts changed: 2 REMOVE, 1 NO VERDICT, 1 WATCH." });
  });

  it("does not mind other sheets", async () => {
    await pane.intentions.start();
    changed("Notes");
    await vi.advanceTimersByTimeAsync(SETTLE_MS * 2);
    expect(book.reads).toHaveLength(1);
  });

  it("reads log and register again when a house limit is typed", async () => {
    book.withRegister();
    const checks = vi.spyOn(book, "checkRegister");
    await pane.intentions.start();
    changed(HOUSE_SHEET);
    await vi.advanceTimersByTimeAsync(SETTLE_MS);
    expect(book.reads).toHaveLength(2);
    expect(checks).toHaveBeenCalledTimes(2);
  });

  it("forgets no sheet of a burst that touches several", async () => {
    book.withRegister();
    const checks = vi.spyOn(book, "checkRegister");
    await pane.intentions.start();
    changed("Hook log");
    changed("Gear register");
    await vi.advanceTimersByTimeAsync(SETTLE_MS);
    expect(book.reads).toHaveLength(2);
    expect(checks).toHaveBeenCalledTimes(2);
  });

  it("forgets no sheet whose reading is overtaken by the next one", async () => {
    book.withRegister();
    const checks = vi.spyOn(book, "checkRegister");
    await pane.intentions.start();
    let answer: (log: ReadLog) => void = () => undefined;
    vi.spyOn(book, "read").mockReturnValueOnce(new Promise((resolve) => (answer = resolve)));
    changed(HOUSE_SHEET);
    await vi.advanceTimersByTimeAsync(SETTLE_MS);
    changed("Hook log");
    await vi.advanceTimersByTimeAsync(SETTLE_MS);
    answer({ place: LOG_PLACE, report: report() });
    await vi.advanceTimersByTimeAsync(0);
    expect(checks).toHaveBeenCalledTimes(2);
  });

  it("follows the log under a new name, told by the selection or by a change", async () => {
    const place = { ...LOG_PLACE, sheetId: "{7}" };
    book.log = { place, report: report() };
    await pane.intentions.start();
    book.log = { place: { ...place, sheet: "Hooks 2026" }, report: report() };
    book.fire({ kind: "selected", sheet: "Hooks 2026", sheetId: "{7}", row: 0 });
    await vi.advanceTimersByTimeAsync(SETTLE_MS);
    expect(pane.get().log?.place.sheet).toBe("Hooks 2026");
    book.log = { place: { ...place, sheet: "Hooks 2027" }, report: report(ITEMS.slice(1)) };
    book.fire({ kind: "changed", remote: false, sheet: "Hooks 2027", sheetId: "{7}" });
    await vi.advanceTimersByTimeAsync(SETTLE_MS);
    expect(pane.get().log).toMatchObject({ place: { sheet: "Hooks 2027" }, report: { items: { length: 4 } } });
  });

  it("has no log any more when its sheet was deleted, and says so in one sentence", async () => {
    book.log = { place: { ...LOG_PLACE, sheetId: "{7}" }, report: report() };
    await pane.intentions.start();
    book.log = new WorkbookError("no log", "The sheet Hook log with the log is gone or empty.");
    book.fire({ kind: "changed", remote: false, sheet: "", sheetId: "{7}" });
    await vi.advanceTimersByTimeAsync(SETTLE_MS);
    expect(pane.get()).toMatchObject({ log: null, noLog: "The sheet Hook log with the log is gone or empty.", failure: null });
  });

  it("compares the register with the log again when the log was changed", async () => {
    book.withRegister();
    const checks = vi.spyOn(book, "checkRegister");
    await pane.intentions.start();
    changed("Hook log");
    await vi.advanceTimersByTimeAsync(SETTLE_MS);
    expect(checks.mock.calls.map((call) => (call as unknown[])[2])).toEqual([book.log, book.log]);
  });

  it("asks before it reads what someone else changed", async () => {
    await pane.intentions.start();
    changed("Hook log", true);
    await vi.advanceTimersByTimeAsync(SETTLE_MS * 2);
    expect(book.reads).toHaveLength(1);
    expect(pane.get().remote).toBe("Hook log");
    await pane.intentions.readAgain();
    expect(pane.get().remote).toBeNull();
  });

  it("waits while a cell is being edited, and reads when it is finished", async () => {
    await pane.intentions.start();
    const { log } = book;
    book.log = new WorkbookError("editing", "Finish the cell first.");
    changed();
    await vi.advanceTimersByTimeAsync(SETTLE_MS);
    expect(pane.get()).toMatchObject({ waiting: true, failure: null });
    book.log = log;
    await vi.advanceTimersByTimeAsync(EDITING_MS);
    expect(pane.get()).toMatchObject({ waiting: false, failure: null });
    expect(book.reads).toHaveLength(3);
  });

  it("tells a look-up that failed, tries again by itself, and takes the message back when it succeeds", async () => {
    await pane.intentions.start();
    const { log } = book;
    book.log = new WorkbookError("host", "The workbook is busy. Wait a moment, then try again.");
    changed();
    await vi.advanceTimersByTimeAsync(SETTLE_MS);
    expect(pane.get().failure).toMatchObject({ kind: "host", retry: "again" });
    book.log = log;
    await vi.advanceTimersByTimeAsync(RETRY_MS[0] ?? 0);
    expect(pane.get().failure).toBeNull();
    expect(book.reads).toHaveLength(3);
  });

  it("stops trying after some times", async () => {
    await pane.intentions.start();
    book.log = new WorkbookError("host", "The workbook is busy. Wait a moment, then try again.");
    changed();
    await vi.advanceTimersByTimeAsync(600_000);
    expect(book.reads).toHaveLength(2 + RETRY_MS.length);
    expect(pane.get().failure).toMatchObject({ retry: "again" });
  });

  it("reads log and register when nobody can say which sheet changed", async () => {
    book.withRegister();
    const checks = vi.spyOn(book, "checkRegister");
    await pane.intentions.start();
    book.fire({ kind: "changed", remote: false, sheet: "", sheetId: "{9}" });
    await vi.advanceTimersByTimeAsync(SETTLE_MS);
    expect([book.reads.length, checks.mock.calls.length]).toEqual([2, 2]);
  });

  it("judges nothing while the pane is closed, and reads what changed when it opens", async () => {
    await pane.intentions.start();
    pane.intentions.setShown(false);
    changed();
    await vi.advanceTimersByTimeAsync(SETTLE_MS * 5);
    expect(book.reads).toHaveLength(1);
    pane.intentions.setShown(true);
    await vi.advanceTimersByTimeAsync(0);
    expect(book.reads).toHaveLength(2);
  });

  it("reads nothing when the pane opens and nothing has changed", async () => {
    await pane.intentions.start();
    pane.intentions.setShown(false);
    pane.intentions.setShown(true);
    await vi.advanceTimersByTimeAsync(SETTLE_MS);
    expect(book.reads).toHaveLength(1);
  });

  it("announces new rows of the log beside the register", async () => {
    book.withRegister();
    await pane.intentions.start();
    book.log = { place: LOG_PLACE, report: report([...ITEMS, item(6, { id: "TP-6" }), item(7, { id: "TP-7" })]) };
    changed();
    await vi.advanceTimersByTimeAsync(SETTLE_MS);
    expect(pane.get().announcement).toBe("2 new rows in the log: TP-6, TP-7.");
  });

  it("stops watching at the end", async () => {
    await pane.intentions.start();
    changed();
    expect(book.watching).toBe(1);
    await pane.intentions.end();
    await vi.advanceTimersByTimeAsync(SETTLE_MS * 2);
    expect(book.watching).toBe(0);
    expect(book.reads).toHaveLength(1);
  });
});

describe("the register's cells", () => {
  const wrong = { disagreeing: [{ id: "TP-1", cell: "REMOVE", judged: "KEEP" as const }] };

  it("are looked at again before a warning is told, which goes away by itself", async () => {
    book.withRegister(wrong);
    await pane.intentions.start();
    expect(pane.get().cellsWrong).toBe(false);
    await vi.advanceTimersByTimeAsync((LOOK_AGAIN_MS[0] ?? 0) + 5);
    expect(pane.get().cellsWrong).toBe(true);
    book.withRegister();
    await vi.advanceTimersByTimeAsync((LOOK_AGAIN_MS[1] ?? 0) + 5);
    expect(pane.get()).toMatchObject({ cellsWrong: false, register: { check: { disagreeing: [] } } });
  });

  it("are not told while fewer and fewer are wrong", async () => {
    const many = (count: number): typeof wrong => ({ disagreeing: Array.from({ length: count }, () => wrong.disagreeing[0]!) });
    book.withRegister(many(600));
    await pane.intentions.start();
    for (const [look, count] of [300, 20, 0].entries()) {
      book.withRegister(many(count));
      await vi.advanceTimersByTimeAsync((LOOK_AGAIN_MS[look] ?? 0) + 5);
      expect(pane.get()).toMatchObject({ cellsWrong: false, register: { check: { disagreeing: { length: count } } } });
    }
  });

  it("that stay wrong are looked at a bounded number of times", async () => {
    book.withRegister(wrong);
    const checks = vi.spyOn(book, "checkRegister");
    await pane.intentions.start();
    await vi.advanceTimersByTimeAsync(3_600_000);
    expect(checks).toHaveBeenCalledTimes(1 + LOOK_AGAIN_MS.length);
  });

  it("that read #NAME? are written again, at most twice", async () => {
    book.withRegister({ functionsMissing: true });
    await pane.intentions.start();
    expect(book.rewrites).toBe(0);
    await vi.advanceTimersByTimeAsync(3_600_000);
    expect(book.rewrites).toBe(2);
    expect(pane.get().cellsWrong).toBe(true);
    await pane.intentions.rewriteFormulas();
    expect(book.rewrites).toBe(3);
  });

  it("that cannot be written again are told, with another try", async () => {
    book.withRegister({ functionsMissing: true });
    book.failures.rewriteFormulas = new WorkbookError("protected", "A sheet is protected. Unprotect it under Review, then try again.");
    await pane.intentions.start();
    await vi.advanceTimersByTimeAsync((LOOK_AGAIN_MS[0] ?? 0) + 5);
    expect(pane.get().failure).toMatchObject({ kind: "protected", retry: "formulas" });
  });
});

describe("typing in the sheet", () => {
  const place = { ...LOG_PLACE, sheetId: "{7}" };
  const type = (row: number): void => {
    book.fire({ kind: "typed", sheetId: "{7}", row });
  };
  const select = (row: number): void => {
    book.fire({ kind: "selected", sheet: "Hook log", sheetId: "{7}", row });
  };
  /** The log begins in row 4 of its sheet, so that its row 1 is row 4 counted from 0. */
  const SHEET_ROW = 3;
  beforeEach(async () => {
    book.log = { place, report: report() };
    await pane.intentions.start();
    pane.intentions.tell({ kind: "open", card: { row: 2, from: "items" } });
  });

  it("keeps the card on the item that was typed when Enter moves the selection on", () => {
    type(SHEET_ROW + 2);
    select(SHEET_ROW + 3);
    expect(pane.get().card?.row).toBe(2);
  });

  it("does so too when the move is told first", () => {
    select(SHEET_ROW + 3);
    type(SHEET_ROW + 2);
    expect(pane.get().card?.row).toBe(2);
  });

  it("goes on to the next item as that is typed, and to any row that is selected later or elsewhere", async () => {
    type(SHEET_ROW + 2);
    select(SHEET_ROW + 3);
    type(SHEET_ROW + 3);
    select(SHEET_ROW + 4);
    expect(pane.get().card?.row).toBe(3);
    select(SHEET_ROW + 1);
    expect(pane.get().card?.row).toBe(1);
    type(SHEET_ROW + 1);
    await vi.advanceTimersByTimeAsync(ENTER_MS + 1);
    select(SHEET_ROW + 2);
    expect(pane.get().card?.row).toBe(2);
  });
});

describe("a second log", () => {
  it("is read by the name of its sheet", async () => {
    await pane.intentions.start();
    await pane.intentions.readSheet("Slipway log");
    expect(book.reads.at(-1)?.from).toEqual({ sheet: "Slipway log", address: "A1", how: "found", table: "" });
  });
});

describe("a list to hand over", () => {
  it("holds what the pane is narrowed to, says where it stands, and is tried again after a failure", async () => {
    await pane.intentions.start();
    const [first] = ITEMS;
    pane.intentions.tell({ kind: "narrow", narrowing: { place: first!.place, gear: null } });
    book.failures.writeList = new WorkbookError("other shape", "The sheet is somebody else's.");
    await pane.intentions.printList("out");
    expect(pane.get().failure).toMatchObject({ retry: "list" });
    delete book.failures.writeList;
    await pane.intentions.retry("list");
    const [list] = book.lists;
    expect(list).toMatchObject({ kind: "out", narrowedTo: `place ${first!.place}` });
    expect(list!.items.map(({ place }) => place)).toEqual(list!.items.map(() => first!.place));
    expect(pane.get().made).toMatch(/^The list of \d+ items? stands on the sheet Gear out, one page wide\. Print it from there\.$/);
  });
});

describe("the sheet of gear types", () => {
  it("is made from the log, which is then read again, and the next step is said; a failure is tried again", async () => {
    await pane.intentions.start();
    book.failures.makeTypesSheet = new WorkbookError("host", "Excel did not answer; try again.");
    await pane.intentions.makeTypesSheet();
    expect(pane.get()).toMatchObject({ made: null, failure: { retry: "types" } });
    delete book.failures.makeTypesSheet;
    await pane.intentions.retry("types");
    expect([book.typesSheets, book.reads.length]).toEqual([2, 2]);
    expect(pane.get()).toMatchObject({
      made: "The sheet Gear types is made. Write the as-new sizes of each type in its row.",
      announcement: "The sheet Gear types is made. Write the as-new sizes of each type in its row.",
    });
  });

  it("is read with the log when it changes", async () => {
    await pane.intentions.start();
    const before = book.reads.length;
    book.fire({ kind: "changed", remote: false, sheet: "Gear types", sheetId: "types-sheet" });
    await vi.advanceTimersByTimeAsync(SETTLE_MS);
    expect(book.reads.length).toBe(before + 1);
  });
});

describe("the sheet of house limits", () => {
  it("is made, log and register are read under it, and the next step is said", async () => {
    await pane.intentions.start();
    await pane.intentions.makeHouseSheet();
    expect(book.reads).toHaveLength(2);
    expect(pane.get()).toMatchObject({
      made: "The sheet House limits is made. Write one limit in a row.",
      failure: null,
      announcement: "The sheet House limits is made. Write one limit in a row.",
    });
  });

  it("that could not be made is tried again, not merely read again", async () => {
    await pane.intentions.start();
    book.failures.makeHouseSheet = new WorkbookError("host", "Excel did not answer; try again.");
    await pane.intentions.makeHouseSheet();
    expect(pane.get()).toMatchObject({ made: null, failure: { retry: "house" } });
    delete book.failures.makeHouseSheet;
    await pane.intentions.retry("house");
    expect(book.houseSheets).toBe(2);
    expect(pane.get()).toMatchObject({ made: "The sheet House limits is made. Write one limit in a row.", failure: null });
  });
});

describe("building", () => {
  it("writes nothing before it is asked, nor while something must be put right", async () => {
    book.log = { place: LOG_PLACE, report: report(ITEMS, { problems: ["The id TP-1 stands on 2 rows."] }) };
    const building = vi.spyOn(book, "building");
    await pane.intentions.start();
    expect(await pane.intentions.build()).toBe(false);
    expect(building).not.toHaveBeenCalled();
  });

  it("can be stopped", async () => {
    await pane.intentions.start();
    book.building = (progress, signal) =>
      new Promise((_, reject) => {
        progress({ done: 1, of: 10, step: "Judging rows" });
        signal.addEventListener("abort", () => reject(new WorkbookError("stopped", "Nothing was written.")));
      });
    const built = pane.intentions.build();
    await vi.advanceTimersByTimeAsync(0);
    expect(pane.get().work).toMatchObject({ kind: "building", progress: { done: 1, of: 10 } });
    pane.intentions.stop();
    expect(pane.get().work).toMatchObject({ stopping: true });
    expect(await built).toBe(false);
    expect(pane.get()).toMatchObject({ work: { kind: "idle" }, failure: { kind: "stopped", retry: "build" }, result: null });
  });

  it("reads the log anew first, writes nothing when it is gone, and empties the pane", async () => {
    await pane.intentions.start();
    const fresh: ReadLog = { place: LOG_PLACE, report: report(ITEMS.slice(0, 2)) };
    book.log = fresh;
    const building = vi.spyOn(book, "build");
    expect(await pane.intentions.build()).toBe(true);
    expect(building.mock.calls[0]?.[0]).toBe(fresh);
    book.log = new WorkbookError("no log", "The sheet Hook log with the log is gone or empty.");
    expect(await pane.intentions.build()).toBe(false);
    expect(building).toHaveBeenCalledTimes(1);
    expect(pane.get()).toMatchObject({
      log: null,
      noLog: "The sheet Hook log with the log is gone or empty.",
      failure: { kind: "no log", retry: "find" },
    });
  });

  it("is what the ribbon asks for: find, write, show the result", async () => {
    await pane.intentions.start();
    book.withRegister();
    pane.intentions.tell({ kind: "go", place: "due" });
    expect(await pane.intentions.rebuild()).toBe(true);
    expect(pane.get()).toMatchObject({ result: RESULT, place: "log", judged: "register", work: { kind: "idle" } });
  });

  it("that is silent for too long tells so and frees the pane", async () => {
    await pane.intentions.start();
    book.building = (progress) => {
      progress({ done: 0, of: 3, step: "Setting up the sheet" });
      return new Promise(() => undefined);
    };
    const built = pane.intentions.build();
    await vi.advanceTimersByTimeAsync(SILENCE_MS);
    expect(await built).toBe(false);
    expect(pane.get()).toMatchObject({ work: { kind: "idle" }, failure: { kind: "host", retry: "build" } });
    expect(pane.get().failure?.message).toContain("has not answered for 3 minutes");
  });

  it("tells the ribbon that it failed", async () => {
    await pane.intentions.start();
    book.building = () => Promise.reject(new WorkbookError("protected", "The sheet is protected; take the protection off."));
    expect(await pane.intentions.rebuild()).toBe(false);
    expect(pane.get().failure?.kind).toBe("protected");
  });
});

describe("the register and the sheet", () => {
  it("filters in the order of the decisions, and tries the same again after a failure", async () => {
    book.withRegister();
    await pane.intentions.start();
    book.failures.filterRegister = new WorkbookError("protected", "The sheet is protected; take the protection off.");
    await pane.intentions.filterRegister(["KEEP", "REMOVE"]);
    expect(pane.get()).toMatchObject({ filtered: [], failure: { retry: "filter" } });
    delete book.failures.filterRegister;
    await pane.intentions.retry("filter");
    expect(book.filters).toEqual([["REMOVE", "KEEP"]]);
    expect(pane.get().filtered).toEqual(["REMOVE", "KEEP"]);
  });

  it("selects the row in the sheet that is judged, and opens the card even when that fails", async () => {
    book.withRegister().failures.show = new TypeError("gone");
    await pane.intentions.start();
    await pane.intentions.open(2, "due");
    expect(book.shown).toMatchObject([{ place: { sheet: "Gear register" }, row: 2 }]);
    expect(pane.get()).toMatchObject({ card: { row: 2, from: "due" }, failure: { kind: "unknown", message: "gone", retry: "show" } });
  });
});

describe("putting a lift on a sheet", () => {
  it("reads the log anew first, and writes nothing when the lift comes out otherwise", async () => {
    const hook = (decision: Decision): ReadLog => ({
      place: LOG_PLACE,
      report: report([{ ...item(1, { id: "TP-1", decision }), cells: new Map([["ratedLoad", "5 t"]]) }]),
    });
    book.log = hook("KEEP");
    await pane.intentions.start();
    const tell = (change: LiftChange): void => {
      pane.intentions.tell({ kind: "lift", change });
    };
    tell({ kind: "pick", id: "TP-1", place: "top" });
    for (const [name, value] of [
      ["load", "1"],
      ["loadUnit", "t"],
      ["hitch", "vertical"],
      ["legs", "1"],
    ] as const)
      tell({ kind: "set", name, value });
    const asked = judgeLift(pane.get().lift, report(hook("KEEP").report.items));
    expect(asked.result).toMatchObject({ ok: true, refusals: [] });
    await pane.intentions.writeLift(asked);
    expect([book.reads.length, book.lifts.length]).toEqual([2, 1]);
    book.log = hook("REMOVE");
    await pane.intentions.writeLift(asked);
    expect([book.reads.length, book.lifts.length]).toEqual([3, 1]);
    expect(pane.get()).toMatchObject({
      log: book.log,
      failure: { retry: "lift", message: expect.stringContaining("comes out otherwise now") },
    });
    book.log = new WorkbookError("no log", "The sheet Hook log with the log is gone or empty.");
    await pane.intentions.writeLift(asked);
    expect(book.lifts).toHaveLength(1);
    expect(pane.get()).toMatchObject({ log: null, noLog: "The sheet Hook log with the log is gone or empty." });
  });
});

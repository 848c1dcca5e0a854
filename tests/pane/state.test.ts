import { describe, expect, it } from "vitest";
import { reduce } from "../../src/taskpane/state/reduce";
import { firstState, shownLog, type PaneEvent, type PaneState } from "../../src/taskpane/state/state";
import { ITEMS, LOG_PLACE, REGISTER_PLACE, report, RESULT, TODAY } from "./sample";

const run = (...events: PaneEvent[]): PaneState => events.reduce(reduce, firstState(TODAY));

const read: PaneEvent = { kind: "read", log: { place: LOG_PLACE, report: report() }, quiet: false };
const registerRead: PaneEvent = {
  kind: "register read",
  found: {
    log: { place: REGISTER_PLACE, report: report() },
    check: { disagreeing: [], apart: [], builtUnder: null, functionsMissing: false, withoutHouse: false },
  },
  quiet: false,
  sure: false,
};

describe("what the pane knows", () => {
  it("keeps the default rules when the workbook holds none", () => {
    expect(run({ kind: "started", saved: { basis: [], choices: {}, place: null } }).basis).toEqual(["standard", "practice"]);
    expect(run({ kind: "started", saved: { basis: ["law"], choices: {}, place: null } }).basis).toEqual(["law"]);
  });

  it("judges the log until there is a register, then the register, unless the user looks at the log", () => {
    expect(shownLog(run(read))?.place).toBe(LOG_PLACE);
    expect(shownLog(run(read, registerRead))?.place).toBe(REGISTER_PLACE);
    const chosen = run(read, registerRead, { kind: "judge", judged: "log" }, registerRead);
    expect(shownLog(chosen)?.place).toBe(LOG_PLACE);
    expect(shownLog(reduce(chosen, { kind: "register read", found: null, quiet: true, sure: false }))?.place).toBe(LOG_PLACE);
  });

  it("shows the register when there is no log", () => {
    expect(shownLog(run({ kind: "no log", why: "None." }, registerRead, { kind: "judge", judged: "log" }))?.place).toBe(REGISTER_PLACE);
  });

  it("says new counts, and says nothing when they stay as they were", () => {
    const before = run(read);
    expect(before.announcement).toBe("5 items: 2 REMOVE, 1 NO VERDICT, 1 WATCH, 1 KEEP.");
    const same = reduce({ ...before, announcement: "" }, { ...read, quiet: true });
    expect(same.announcement).toBe("");
    const changed = reduce(before, { kind: "read", log: { place: LOG_PLACE, report: report(ITEMS.slice(1)) }, quiet: true });
    expect(changed.announcement).toBe("The counts changed: 2 REMOVE, 1 NO VERDICT, 1 WATCH.");
  });

  it("says that the log is gone instead of its old counts", () => {
    expect(run(read, { kind: "no log", why: "None." }).announcement).toBe("No log.");
  });

  it("closes an item card when its row is gone or another sheet is judged", () => {
    const open = run(read, { kind: "open", card: { row: 1, from: "items" } });
    expect(reduce(open, read).card).toEqual({ row: 1, from: "items" });
    expect(reduce(open, { kind: "read", log: { place: LOG_PLACE, report: report(ITEMS.slice(1)) }, quiet: true }).card).toBeNull();
    expect(reduce(open, registerRead).card).toBeNull();
  });

  it("goes back to the list, standing on the item", () => {
    const back = run(read, { kind: "open", card: { row: 3, from: "due" } }, { kind: "back" });
    expect(back).toMatchObject({ card: null, activeRows: { items: null, due: 3 }, returning: true });
  });

  it("does not pull the focus to the list again once the user has gone on to filter", () => {
    const back = run(read, { kind: "open", card: { row: 3, from: "items" } }, { kind: "back" }, { kind: "search", text: "x" });
    expect(back.returning).toBe(false);
  });

  it("follows the row that is selected in the sheet, and ignores rows that hold no item", () => {
    // The log starts in sheet row 4, so its row 2 is the sheet's row 6, which is 5 counted from 0.
    const followed = reduce(run(read), { kind: "selected", sheet: "Hook log", row: 5 });
    expect(followed.activeRows).toEqual({ items: 2, due: 2 });
    expect(reduce(followed, { kind: "selected", sheet: "Hook log", row: 18 }).activeRows.items).toBe(2);
    expect(reduce(followed, { kind: "selected", sheet: "Other", row: 6 }).activeRows.items).toBe(2);
    expect(reduce(reduce(followed, { kind: "go", place: "due" }), { kind: "selected", sheet: "Hook log", row: 6 }).activeRows).toEqual({
      items: 2,
      due: 3,
    });
    const card = reduce(run(read, { kind: "open", card: { row: 1, from: "items" } }), { kind: "selected", sheet: "Hook log", row: 5 });
    expect(card.card).toEqual({ row: 2, from: "items" });
  });

  it("presses a decision and lets it go", () => {
    const pressed = run({ kind: "decision", decision: "REMOVE" }, { kind: "decision", decision: "KEEP" });
    expect(pressed.decisions).toEqual(["REMOVE", "KEEP"]);
    expect(reduce(pressed, { kind: "decision", decision: "REMOVE" }).decisions).toEqual(["KEEP"]);
  });

  it("keeps choices of headings without regard to case, and takes them back", () => {
    const chosen = run({ kind: "heading", heading: "Throat Gap", field: "throatNow" }, { kind: "heading", heading: "Paint", field: null });
    expect(chosen.choices).toEqual({ "throat gap": "throatNow", paint: null });
    expect(reduce(chosen, { kind: "heading", heading: "THROAT GAP", field: "as found" }).choices).toEqual({ paint: null });
  });

  it("counts progress only while it builds", () => {
    const progress: PaneEvent = { kind: "progress", progress: { done: 3, of: 9, step: "Writing rows" } };
    expect(run({ kind: "building" }, progress).work).toMatchObject({ progress: { done: 3 } });
    expect(run(progress).work).toEqual({ kind: "idle" });
  });

  it("tells what was built, and judges the register from then on", () => {
    const built = run(read, { kind: "building" }, { kind: "built", result: RESULT });
    expect(built).toMatchObject({ judged: "register", announcement: "Register written on sheet Gear register: 5 items." });
  });

  it("clears an old failure when new work starts", () => {
    const failed = run({ kind: "failed", failure: { kind: "host", message: "No.", retry: "again" } });
    expect(reduce(failed, { kind: "reading" }).failure).toBeNull();
    expect(reduce(failed, { kind: "building" }).failure).toBeNull();
  });
});

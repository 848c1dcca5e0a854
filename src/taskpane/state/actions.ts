/** What the user can ask for, carried out through the workbook port. No React here. */
import type { FieldId } from "../../engine/columns";
import { type Decision, DECISIONS } from "../../engine/decision";
import type { Unit } from "../../engine/numbers/lengths";
import type { TagWanted } from "../../engine/programme/tag";
import type { BasisId } from "../../engine/rules/rule-sets";
import { HOUSE_SHEET, TYPES_SHEET } from "../../excel/kit/sheets";
import type { ListKind } from "../../excel/lists/plan-list";
import { WorkbookError } from "../../excel/kit/workbook-error";
import type { ItemHistory } from "../../excel/programme/rounds";
import type { LiftToWrite, WorkbookPort } from "../../excel/port";
import { planStamp, type StampPlan } from "../../excel/stamp/plan-stamp";
import { narrowed, narrowedTo } from "../shared/list/narrowed";
import { createReading, type Held } from "./read-workbook";
import type { RoundAsk } from "./rounds";
import { type Judged, type PaneEvent, type Retry, shownLog } from "./state";
import { whileHeard } from "./while-heard";

export interface Intentions {
  readonly start: () => Promise<void>;
  readonly find: () => Promise<boolean>;
  readonly useSelection: () => Promise<boolean>;
  readonly readAgain: () => Promise<boolean>;
  /** Reads the log on another sheet, by the sheet's name. */
  readonly readSheet: (sheet: string) => Promise<boolean>;
  readonly build: () => Promise<boolean>;
  /** What the ribbon button does: find the log and write the register. */
  readonly rebuild: () => Promise<boolean>;
  /** Writes the register's formulas again where they read #NAME?. */
  readonly rewriteFormulas: () => Promise<void>;
  /** Told when the pane is closed and opened: a closed pane judges nothing. */
  readonly setShown: (shown: boolean) => void;
  readonly stop: () => void;
  readonly setBasis: (basis: readonly BasisId[]) => Promise<boolean>;
  readonly setHeading: (heading: string, field: FieldId | null | "as found") => Promise<boolean>;
  /** What several headings mean, in one answer: a field, or null for "not judged". */
  readonly setHeadings: (answers: readonly { readonly heading: string; readonly field: FieldId | null }[]) => Promise<boolean>;
  /** Unit of the bare sizes on a sheet; null takes the answer back. */
  readonly setUnit: (sheet: string, unit: Unit | null) => Promise<boolean>;
  readonly setAsOf: (asOf: number, chosen: boolean) => Promise<boolean>;
  readonly judge: (judged: Judged) => void;
  readonly filterRegister: (decisions: readonly Decision[]) => Promise<void>;
  /** Selects the item's row in the sheet and opens its card. */
  readonly open: (row: number, from: "items" | "due") => Promise<void>;
  /** Selects a row in the sheet, or one cell of it; both count inside the place that was read. */
  readonly show: (row: number, column?: number) => Promise<void>;
  /** Puts a lift on its own sheet, with live formulas. */
  readonly writeLift: (lift: LiftToWrite) => Promise<void>;
  /** What the history says of an item; null where that failed, which is told. */
  readonly history: (id: string) => Promise<ItemHistory | null>;
  /** Tags an item out, releases it, or records its disposal. */
  readonly tag: (wanted: TagWanted) => Promise<void>;
  /** Makes, posts or lists rounds, or looks at the history's seals. */
  readonly round: (ask: RoundAsk) => Promise<void>;
  /** Makes the sheet for the house's own limits, then reads the log again under them. */
  readonly makeHouseSheet: () => Promise<void>;
  /** Makes the sheet for as-new sizes by type. */
  readonly makeTypesSheet: () => Promise<void>;
  /** Writes a list to hand over, of what the pane is narrowed to. */
  readonly printList: (kind: ListKind) => Promise<void>;
  /** Looks at the selected rows of the register: which may be stamped as inspected. */
  readonly lookStamp: () => Promise<void>;
  /** Stamps the rows that were confirmed, when nothing has changed since. */
  readonly stamp: () => Promise<void>;
  readonly retry: (what: Retry) => Promise<unknown>;
  readonly tell: (event: PaneEvent) => void;
  readonly end: () => Promise<void>;
}
export function createIntentions(port: WorkbookPort, held: Held): Intentions {
  const { get, tell, today } = held;
  const reading = createReading(port, held);
  let stopper: AbortController | null = null;
  let lastRow = 0;
  let lastColumn: number | undefined;
  let lastSheet = "";
  let lastLift: LiftToWrite | null = null;
  let lastList: ListKind = "out";
  let lastStamp: readonly number[] = [];
  let lastRound: RoundAsk | null = null;
  let lastFilter: readonly Decision[] = [];

  const find = (): Promise<boolean> => reading.read("auto", "find");
  const useSelection = (): Promise<boolean> => reading.read("selection", "selection");
  const readSheet = (sheet: string): Promise<boolean> => {
    lastSheet = sheet;
    return reading.read({ sheet, address: "A1", how: "found", table: "" }, "sheet");
  };
  const readAgain = (): Promise<boolean> => reading.read(get().log?.place ?? get().savedPlace ?? "auto", "again");

  /** Writes the register from the log as it stands now; `read` when it was read just before. */
  const write = async (read: boolean): Promise<boolean> => {
    const { log, work } = get();
    if (log === null || work.kind === "building" || log.report.problems.length > 0) return false;
    const { signal } = (stopper = new AbortController());
    tell({ kind: "building" });
    try {
      await reading.registerAfter(async () => {
        const now = read ? log : await reading.logNow(log.place);
        tell({
          kind: "built",
          result: await whileHeard(
            (heard) =>
              port.build(
                now,
                (progress) => {
                  heard();
                  tell({ kind: "progress", progress });
                },
                signal,
              ),
            () => stopper?.abort(),
          ),
        });
      });
      tell({ kind: "rest" });
      return true;
    } catch (error) {
      const renamed = error instanceof WorkbookError && error.kind === "renamed";
      return reading.fail(error, get().log === null ? "find" : renamed ? "name back" : "build");
    } finally {
      stopper = null;
    }
  };
  const build = (): Promise<boolean> => write(false);

  /** Headings of the register that were renamed over readings get their names back, and the build goes on. */
  const nameBack = async (): Promise<boolean> => {
    try {
      await port.nameBack?.();
    } catch (error) {
      return reading.fail(error, "name back");
    }
    return build();
  };

  const filterRegister = async (decisions: readonly Decision[]): Promise<void> => {
    lastFilter = DECISIONS.filter((decision) => decisions.includes(decision));
    try {
      await port.filterRegister(lastFilter);
      tell({ kind: "filtered", decisions: lastFilter });
    } catch (error) {
      reading.fail(error, "filter");
    }
  };

  const show = async (row: number, column?: number): Promise<void> => {
    const place = shownLog(get())?.place;
    if (place === undefined) return;
    [lastRow, lastColumn] = [row, column];
    try {
      await port.show(place, row, column);
    } catch (error) {
      reading.fail(error, "show");
    }
  };

  const writeLift = async (lift: LiftToWrite): Promise<void> => {
    if (get().work.kind !== "idle") return;
    lastLift = lift;
    try {
      const { judgeLift, outcomeOf } = await import(/* webpackChunkName: "lift" */ "../lift/judge");
      const before = outcomeOf(get().lift, lift.result);
      await reading.read(get().log?.place ?? get().savedPlace ?? "auto", "lift");
      const shown = shownLog(get());
      if (get().failure?.retry === "lift" || shown === null) return;
      const now = judgeLift(get().lift, shown.report);
      if (outcomeOf(get().lift, now.result) !== before)
        throw new WorkbookError(
          "no log",
          "The sheets were changed, and this lift comes out otherwise now. Look at it again; nothing was written.",
        );
      const { sheet } = await port.writeLift(now);
      tell({ kind: "lift", change: { kind: "written", sheet } });
    } catch (error) {
      reading.fail(error, "lift");
    }
  };

  const printList = async (kind: ListKind): Promise<void> => {
    if (get().work.kind !== "idle") return;
    lastList = kind;
    const { narrowing } = get();
    const shown = shownLog(get());
    if (shown === null) return;
    try {
      const { report } = shown;
      const list = { kind, report, items: narrowed(report.items, narrowing), narrowedTo: narrowedTo(narrowing) };
      const { sheet, items } = await port.writeList(list);
      tell({ kind: "listed", sheet, items });
    } catch (error) {
      reading.fail(error, "list");
    }
  };

  /** The selected rows as the register's own cells judge them now. */
  const planned = async (rows: readonly number[]): Promise<StampPlan> => {
    const { basis, asOf } = get();
    const found = await port.checkRegister(basis, asOf);
    if (found === null) throw new WorkbookError("no log", "There is no register yet. Press Build register first.");
    return planStamp(found.log.report.items, rows);
  };
  const lookStamp = async (): Promise<void> => {
    if (get().work.kind !== "idle" || get().stamp.name.trim() === "") return;
    tell({ kind: "stamp plan", plan: null, day: today() });
    try {
      lastStamp = await port.selectedRows();
      tell({ kind: "stamp plan", plan: await planned(lastStamp), day: today() });
      await reading.save();
    } catch (error) {
      reading.fail(error, "stamp look");
    }
  };
  const stamp = async (): Promise<void> => {
    const { plan, day, name } = get().stamp;
    if (get().work.kind !== "idle" || plan === null || plan.rows.length === 0) return;
    try {
      // What was confirmed is what is written: a row that was tagged or emptied meanwhile is not stamped.
      const now = await planned(lastStamp);
      if (JSON.stringify(now.rows) !== JSON.stringify(plan.rows)) {
        tell({ kind: "stamp plan", plan: now, day });
        throw new WorkbookError("duplicate", "The register was changed since you looked. Look at the count again; nothing was written.");
      }
      const rows = await port.writeStamp({ rows: plan.rows, day, name: name.trim() });
      tell({ kind: "stamped", rows });
      await reading.registerAfter(() => Promise.resolve());
    } catch (error) {
      reading.fail(error, "stamp");
    }
  };

  const history = async (id: string): Promise<ItemHistory | null> => {
    if (get().work.kind !== "idle") return null;
    try {
      return await port.rounds.item(id, get().basis, get().asOf);
    } catch (error) {
      reading.fail(error, null);
      return null;
    }
  };
  const tag = async (wanted: TagWanted): Promise<void> => {
    if (get().work.kind !== "idle") return;
    try {
      await port.rounds.tag(wanted, get().basis);
    } catch (error) {
      reading.fail(error, null);
      return;
    }
    await readAgain();
  };

  const round = async (ask: RoundAsk): Promise<void> => {
    if (get().work.kind !== "idle" || get().rounds.working !== null) return;
    lastRound = ask;
    tell({ kind: "rounds", change: { working: ask.kind, ...(ask.kind !== "list" && { said: null }) } });
    try {
      const { basis, asOf } = get();
      const { rounds } = port;
      if (ask.kind === "make")
        tell({ kind: "rounds", change: { said: { kind: "made", made: await rounds.make({ ...ask.wanted, basis, asOf }) } } });
      if (ask.kind === "post") tell({ kind: "rounds", change: { said: { kind: "posted", posted: await rounds.post(ask.sheet) } } });
      if (ask.kind === "report")
        tell({ kind: "rounds", change: { said: { kind: "reported", ...(await rounds.report(ask.sheet, basis, asOf)) } } });
      if (ask.kind === "check") tell({ kind: "rounds", change: { said: { kind: "checked", check: await rounds.check() } } });
      tell({ kind: "rounds", change: { sheets: await rounds.list() } });
    } catch (error) {
      reading.fail(error, "rounds");
      return;
    } finally {
      tell({ kind: "rounds", change: { working: null } });
    }
    // The register says something else now.
    if (ask.kind === "post") await readAgain();
  };

  const make = async (sheet: string, retry: Retry, work: () => Promise<void>): Promise<void> => {
    if (get().work.kind !== "idle") return;
    try {
      await work();
    } catch (error) {
      reading.fail(error, retry);
      return;
    }
    await readAgain();
    tell({ kind: "made", sheet });
  };
  const makeHouseSheet = (): Promise<void> => make(HOUSE_SHEET, "house", () => port.makeHouseSheet());
  const makeTypesSheet = (): Promise<void> => make(TYPES_SHEET, "types", () => port.makeTypesSheet(get().log));

  const start = async (): Promise<void> => {
    reading.open();
    tell({ kind: "reading" });
    try {
      tell({ kind: "started", saved: await port.load() });
    } catch (error) {
      reading.fail(error, "start");
      return;
    }
    const { savedPlace } = get();
    if (savedPlace !== null && (await reading.read(savedPlace, "again"))) return;
    // The log's old place, or its whole sheet, may be gone: then the pane looks for it, unless the user already did something else.
    const { noLog, failure } = get();
    if (savedPlace === null || noLog !== "" || failure?.retry === "again") await find();
  };

  const rebuild = async (): Promise<boolean> => {
    if (get().work.kind === "building") return false;
    if (!(await readAgain())) return false;
    tell({ kind: "go", place: "log" });
    return write(true);
  };

  const retries: Record<Retry, () => Promise<unknown>> = {
    start,
    find,
    selection: useSelection,
    again: readAgain,
    build,
    filter: () => filterRegister(lastFilter),
    show: () => show(lastRow, lastColumn),
    watch: reading.watch,
    save: reading.save,
    house: makeHouseSheet,
    types: makeTypesSheet,
    list: () => printList(lastList),
    "stamp look": lookStamp,
    stamp,
    sheet: () => readSheet(lastSheet),
    formulas: reading.rewriteFormulas,
    "name back": nameBack,
    rounds: async () => {
      if (lastRound !== null) await round(lastRound);
    },
    lift: async () => {
      if (lastLift !== null) await writeLift(lastLift);
    },
  };

  return {
    start,
    find,
    useSelection,
    readAgain,
    readSheet,
    build,
    rebuild,
    rewriteFormulas: reading.rewriteFormulas,
    setShown: reading.setShown,
    stop: () => {
      if (stopper === null) return;
      stopper.abort();
      tell({ kind: "stopping" });
    },
    setBasis: (basis) => (tell({ kind: "basis", basis }), readAgain()),
    setHeading: (heading, field) => (tell({ kind: "heading", heading, field }), readAgain()),
    setHeadings: (answers) => (tell({ kind: "headings", answers }), readAgain()),
    setUnit: (sheet, unit) => (tell({ kind: "unit", sheet, unit }), readAgain()),
    setAsOf: (asOf, chosen) => (tell({ kind: "as of", asOf, chosen }), readAgain()),
    judge: (judged) => {
      tell({ kind: "judge", judged });
    },
    filterRegister,
    open: async (row, from) => {
      tell({ kind: "open", card: { row, from } });
      await show(row);
    },
    show,
    writeLift,
    history,
    tag,
    round,
    makeHouseSheet,
    makeTypesSheet,
    printList,
    lookStamp,
    stamp,
    retry: (what) => {
      tell({ kind: "dismiss", what: "failure" });
      return retries[what]();
    },
    tell,
    end: () => {
      stopper?.abort();
      return reading.end();
    },
  };
}

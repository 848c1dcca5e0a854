/** Reading the log and the register: on request, and quietly when cells change. */
import { HOUSE_SHEET, TYPES_SHEET } from "../../excel/kit/sheets";
import { WorkbookError } from "../../excel/kit/workbook-error";
import type { LogPlace } from "../../excel/log-place";
import type { ReadLog, ReadRequest, WorkbookEvent, WorkbookPort } from "../../excel/port";
import { createCellWatch } from "./cell-watch";
import { type Failure, type PaneEvent, type PaneState, type Retry, shownLog } from "./state";
import { createTypedRow } from "./typed-row";

/** Sheets that judge every log: the house limits, and the as-new sizes by type. */
const BESIDE: readonly string[] = [HOUSE_SHEET, TYPES_SHEET];
/** Cells often change in bursts: wait for the burst to end before reading again. */
export const SETTLE_MS = 700;
/** While a cell is being edited the workbook does not answer: ask again after this time. */
export const EDITING_MS = 2000;
/** A change whose look-up failed is looked up again after these times; the failure is told at once. */
export const RETRY_MS: readonly number[] = [3000, 10_000, 30_000];
/** Formulas that read #NAME? are written again so many times. */
const REWRITES = 2;
/** What the pane's work holds on to. */
export interface Held {
  readonly get: () => PaneState;
  readonly tell: (event: PaneEvent) => void;
  readonly today: () => number;
}
export interface Reading {
  /** Reads log and register, showing that it works and what went wrong; false when no log was read. */
  readonly read: (from: ReadRequest["from"], retry: Retry) => Promise<boolean>;
  /** Reads the register after it was written; earlier readings under way no longer count. */
  readonly registerAfter: (work: () => Promise<void>) => Promise<void>;
  /** The log as it stands now, before something is made of it; throws when it is gone. */
  readonly logNow: (place: LogPlace) => Promise<ReadLog>;
  readonly save: () => Promise<void>;
  readonly watch: () => Promise<void>;
  readonly fail: (error: unknown, retry: Retry | null) => false;
  /** Writes the register's formulas again, which puts #NAME? right when the functions came late. */
  readonly rewriteFormulas: () => Promise<void>;
  /** While the pane is closed nothing is judged; what changed meanwhile is read when it opens. */
  readonly setShown: (shown: boolean) => void;
  readonly open: () => void;
  readonly end: () => Promise<void>;
}
export function createReading(port: WorkbookPort, { get, tell, today }: Held): Reading {
  /** Only the newest reading counts; answers to earlier ones are dropped. */
  let turn = 0;
  let ended = false;
  let timer: ReturnType<typeof setTimeout> | null = null;
  /** Names and ids of sheets that changed and were not read again yet. */
  const changed = new Set<string>();
  /** Sheets that a quiet reading is about; when a later one takes its turn, they go over to that one. */
  let underWay: readonly string[] = [];
  let watching = false;
  let endWatch: (() => Promise<void>) | null = null;
  let shown = true;
  let retries = 0;
  let rewrites = 0;
  const typedRow = createTypedRow();
  const cells = createCellWatch(() => {
    const { register } = get();
    if (register === null) return;
    changed.add(register.log.place.sheet);
    settle(0);
  });

  const fail = (error: unknown, retry: Retry | null): false => {
    tell({ kind: "failed", failure: failureOf(error, retry) });
    return false;
  };

  const readRegister = async (mine: number, quiet: boolean): Promise<void> => {
    const { basis, asOf, log } = get();
    const found = await port.checkRegister(basis, asOf, log);
    if (mine !== turn) return;
    const sure = cells.saw(found?.check ?? null);
    tell({ kind: "register read", found, quiet, sure });
    if (found?.check.functionsMissing !== true) rewrites = 0;
    else if (sure && rewrites < REWRITES) await rewriteFormulas();
  };

  const rewriteFormulas = async (): Promise<void> => {
    rewrites += 1;
    try {
      await port.rewriteFormulas();
    } catch (error) {
      fail(error, "formulas");
    }
  };

  const ask = (from: ReadRequest["from"]): Promise<ReadLog> => {
    if (!get().asOfChosen && get().asOf !== today()) tell({ kind: "as of", asOf: today(), chosen: false });
    const { basis, asOf, choices, units } = get();
    return port.read({ from, basis, asOf, choices, units });
  };

  const readLog = async (from: ReadRequest["from"], mine: number, quiet: boolean): Promise<void> => {
    const log = await ask(from);
    if (mine === turn) tell({ kind: "read", log, quiet });
  };

  /** Having no log yet is a state of its own; a selection without one is a failure. */
  const isNoLog = (error: unknown, from: ReadRequest["from"]): error is WorkbookError =>
    error instanceof WorkbookError && error.kind === "no log" && from !== "selection";

  const read = async (from: ReadRequest["from"], retry: Retry): Promise<boolean> => {
    const mine = ++turn;
    underWay = [];
    tell({ kind: "reading" });
    let found = true;
    try {
      await readLog(from, mine, false).catch((error: unknown) => {
        if (!isNoLog(error, from)) throw error;
        found = false;
        if (mine === turn) tell({ kind: "no log", why: error.message });
      });
      if (mine === turn) await readRegister(mine, false);
    } catch (error) {
      return mine === turn && fail(error, retry);
    }
    if (mine !== turn) return false;
    tell({ kind: "rest" });
    await save();
    if (!watching) await watch();
    return found;
  };

  const save = async (): Promise<void> => {
    const { basis, choices, units, log, savedPlace, stamp } = get();
    const inspector = stamp.name.trim();
    try {
      await port.save({ basis, choices, units, place: log?.place ?? savedPlace, ...(inspector === "" ? {} : { inspector }) });
    } catch (error) {
      fail(error, "save");
    }
  };

  const readQuietly = async (): Promise<void> => {
    if (get().work.kind !== "idle") {
      settle(SETTLE_MS);
      return;
    }
    const mine = ++turn;
    const { log, register } = get();
    const sheets = new Set([...underWay, ...changed]);
    underWay = [...sheets];
    changed.clear();
    // The house limits and the types judge the log and the register, so an edit of them is an edit of both.
    // A sheet without a name is gone, or could not be looked up: it may have been any of them.
    const isOver = (place: LogPlace): boolean =>
      sheets.has(place.sheet) || sheets.has(place.sheetId ?? place.sheet) || BESIDE.some((name) => sheets.has(name)) || sheets.has("");
    try {
      if (log !== null && isOver(log.place))
        await readLog(log.place, mine, true).catch((error: unknown) => {
          if (!isNoLog(error, log.place)) throw error;
          if (mine === turn) tell({ kind: "no log", why: error.message });
        });
      // Where the log was changed, the register's items are judged no better than the log.
      if (register !== null && (isOver(register.log.place) || (log !== null && isOver(log.place))) && mine === turn)
        await readRegister(mine, true);
      if (mine !== turn) return;
      underWay = [];
      if (retries > 0 && get().failure?.retry === "again") tell({ kind: "dismiss", what: "failure" });
      retries = 0;
      tell({ kind: "waiting", on: false });
    } catch (error) {
      if (mine !== turn) return;
      if (error instanceof WorkbookError && error.kind === "editing") {
        tell({ kind: "waiting", on: true });
        settle(EDITING_MS);
      } else {
        fail(error, "again");
        const after = RETRY_MS[retries];
        retries += 1;
        if (after !== undefined) settle(after);
      }
    }
  };

  const settle = (after: number): void => {
    if (timer !== null) clearTimeout(timer);
    timer = setTimeout(() => {
      timer = null;
      if (shown) void readQuietly();
    }, after);
  };

  /** The pane follows what is typed by hand, and stays with it where Enter moves the selection on. */
  const onTyped = (sheetId: string, row: number): void => {
    const place = shownLog(get())?.place;
    if (place?.sheetId !== sheetId) return;
    typedRow.typed(sheetId, row);
    tell({ kind: "selected", sheet: place.sheet, row });
  };

  const onWorkbook = (event: WorkbookEvent): void => {
    if (event.kind === "typed") {
      onTyped(event.sheetId, event.row);
      return;
    }
    const { log, register } = get();
    const isOn = (place: LogPlace | undefined): boolean =>
      place !== undefined && (event.sheet === place.sheet || (event.sheetId !== undefined && event.sheetId === place.sheetId));
    // A new name alone is told by no event: it shows when the selection moves on the sheet.
    const renamed = isOn(log?.place) && event.sheet !== "" && event.sheet !== log?.place.sheet;
    if (event.kind === "selected") {
      if (shown && typedRow.follows(event.sheetId ?? event.sheet, event.row)) tell(event);
    } else if (event.sheet !== "" && !BESIDE.includes(event.sheet) && !isOn(log?.place) && !isOn(register?.log.place)) return;
    else if (log === null && register === null) return;
    else if (event.remote) {
      tell({ kind: "changed elsewhere", sheet: event.sheet === "" ? (shownLog(get())?.place.sheet ?? "") : event.sheet });
      return;
    }
    if (event.kind === "selected" && !renamed) return;
    changed.add(event.sheetId ?? event.sheet).add(event.sheet);
    settle(SETTLE_MS);
  };

  const watch = async (): Promise<void> => {
    watching = true;
    try {
      const stop = await port.watch(onWorkbook);
      if (ended) await stop();
      else endWatch = stop;
    } catch (error) {
      watching = false;
      fail(error, "watch");
    }
  };

  return {
    read,
    registerAfter: async (work) => {
      const mine = ++turn;
      await work();
      await readRegister(mine, false);
    },
    logNow: async (place) => {
      const log = await ask(place).catch((error: unknown) => {
        if (isNoLog(error, place)) tell({ kind: "no log", why: error.message });
        throw error;
      });
      tell({ kind: "read", log, quiet: true });
      return log;
    },
    save,
    watch,
    fail,
    rewriteFormulas,
    setShown: (on) => {
      shown = on;
      if (!on) cells.end();
      else if (changed.size > 0 || underWay.length > 0) settle(0);
    },
    open: () => {
      ended = false;
    },
    end: async () => {
      ended = true;
      turn += 1;
      if (timer !== null) clearTimeout(timer);
      cells.end();
      const ending = endWatch;
      endWatch = null;
      watching = false;
      await ending?.();
    },
  };
}
function failureOf(error: unknown, retry: Retry | null): Failure {
  if (error instanceof WorkbookError) return { kind: error.kind, message: error.message, retry };
  return { kind: "unknown", message: error instanceof Error ? error.message : String(error), retry };
}

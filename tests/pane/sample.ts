/** A small log judged by hand, and a workbook that answers as it is told. Nothing here asks the engine. */
import { type DueState } from "../../src/engine/due/intervals";
import { type FieldId } from "../../src/engine/columns";
import { type Finding } from "../../src/engine/check/finding";
import { type HeadingMatch } from "../../src/engine/log/match-headings";
import { type ItemResult, type Report } from "../../src/engine/report/model";
import { DECISIONS, type Decision } from "../../src/engine/decision";
import {
  type BuildResult,
  type LiftToWrite,
  type Progress,
  type ReadLog,
  type ReadRequest,
  type RegisterCheck,
  type SavedState,
  type WorkbookEvent,
  type WorkbookPort,
} from "../../src/excel/port";
import { itemsOf, LISTS, type ListToWrite } from "../../src/excel/lists/plan-list";
import { type Stamp } from "../../src/excel/stamp/plan-stamp";
import { type LogPlace } from "../../src/excel/log-place";
import { type SealCheck } from "../../src/engine/programme/seals";
import { type ItemHistory, type PostResult, type RoundsPort } from "../../src/excel/programme/rounds";

export const LOG_PLACE: LogPlace = { sheet: "Hook log", address: "A4:R20", how: "found", table: "" };
export const REGISTER_PLACE: LogPlace = { sheet: "Gear register", address: "A3:AT20", how: "register", table: "Gear" };

/** 1 March 2026. */
export const TODAY = 46082;

export function finding(more: Partial<Finding> = {}): Finding {
  return {
    why: "limit",
    check: "throat opening",
    part: "throat",
    criterion: "hook.throat-opening.standard",
    decision: "KEEP",
    measured: "2.05 in",
    original: "2 in",
    countsFrom: "as new 2 in",
    limit: "5 % of as-new",
    share: 0.5,
    comesOut: "above 2.1 in",
    basis: "standard",
    source: "WAC 296-155-55800",
    overload: false,
    ...more,
  };
}

export interface ItemSketch {
  id: string;
  decision?: Decision;
  gear?: string | null;
  gearText?: string;
  place?: string;
  reason?: string;
  share?: number | null;
  nextDue?: number | null;
  dueState?: DueState;
  dueNote?: string;
  serviceAssumed?: true;
  tagged?: boolean;
  findings?: readonly Finding[];
  missing?: readonly string[];
  needed?: readonly FieldId[];
  lacking?: readonly FieldId[];
  notes?: readonly string[];
}

export function item(row: number, sketch: ItemSketch): ItemResult {
  const decision = sketch.decision ?? "KEEP";
  const findings = sketch.findings ?? [finding({ decision })];
  return {
    row,
    id: sketch.id,
    gear: sketch.gear === undefined ? "hook" : sketch.gear,
    gearText: sketch.gearText ?? "Hook",
    place: sketch.place ?? "Gantry",
    assembly: "",
    tagged: sketch.tagged ?? false,
    verdict: {
      decision,
      reason: sketch.reason ?? `${sketch.id} is ${decision}.`,
      findings,
      deciding: findings[0] ?? null,
      share: sketch.share === undefined ? 0.5 : sketch.share,
      comesOut: "above 2.1 in",
      source: "WAC 296-155-55800",
      short: sketch.reason ?? `${sketch.id} is ${decision}`,
      parts: { lead: findings[0] ?? null, others: [], overload: false, ungauged: false, notes: sketch.notes ?? [] },
      overload: false,
      kind: sketch.gear === undefined ? "hook" : sketch.gear,
      tagged: sketch.tagged ?? false,
      needed: sketch.needed ?? [],
      lacking: sketch.lacking ?? [],
      missing: sketch.missing ?? [],
      notes: sketch.notes ?? [],
    },
    nextDue: sketch.nextDue === undefined ? TODAY + 200 : sketch.nextDue,
    dueState: sketch.dueState ?? "CURRENT",
    dueNote: sketch.dueNote ?? "",
    ...(sketch.serviceAssumed === true ? { serviceAssumed: true } : {}),
    cells: new Map(),
  };
}

export const HEADINGS: readonly HeadingMatch[] = [
  { column: 0, heading: "Gear No", field: "id", also: null, unit: null, chosen: false, state: "read", proposal: null, earlier: null },
  { column: 1, heading: "Type", field: "gear", also: null, unit: null, chosen: false, state: "read", proposal: null, earlier: null },
  {
    column: 2,
    heading: "Throat now (in)",
    field: "throatNow",
    also: null,
    unit: "in",
    chosen: false,
    state: "read",
    proposal: null,
    earlier: null,
  },
  {
    column: 3,
    heading: "Paint",
    field: null,
    also: null,
    unit: null,
    chosen: false,
    state: "not about condition",
    proposal: null,
    earlier: null,
  },
];

export const ITEMS: readonly ItemResult[] = [
  item(1, { id: "TP-1", decision: "KEEP", share: 0.2 }),
  item(2, {
    id: "TP-2",
    decision: "REMOVE",
    share: 1.1,
    place: "Slipway",
    nextDue: TODAY - 12,
    dueState: "OVERDUE",
    reason: "Throat opening 2.11 in is beyond the limit.",
  }),
  item(3, {
    id: "TP-3",
    decision: "WATCH",
    share: 0.85,
    gear: "shackle",
    gearText: "Bow shackle",
    nextDue: TODAY + 10,
    dueState: "DUE SOON",
  }),
  item(4, { id: "TP-4", decision: "REMOVE", share: 1.4, tagged: true, nextDue: TODAY - 90, dueState: "OVERDUE" }),
  item(5, {
    id: "TP-5",
    decision: "NO VERDICT",
    share: null,
    nextDue: null,
    dueState: "NO DATE",
    dueNote: "no date of the last inspection",
    missing: ["twist (Twist deg)"],
  }),
];

export function report(items: readonly ItemResult[] = ITEMS, more: Partial<Report> = {}): Report {
  const counts = Object.fromEntries(DECISIONS.map((d) => [d, items.filter((i) => i.verdict.decision === d).length])) as Record<
    Decision,
    number
  >;
  const due = Object.fromEntries(
    (["OVERDUE", "DUE SOON", "CURRENT", "NO DATE"] as const).map((s) => [s, items.filter((i) => i.dueState === s).length]),
  ) as Record<DueState, number>;
  return {
    items,
    counts,
    due,
    headings: HEADINGS,
    lacking: [],
    passedOver: [],
    problems: [],
    basis: ["standard", "practice"],
    asOf: TODAY,
    ...more,
  };
}

export const RESULT: BuildResult = {
  sheet: "Gear register",
  items: 5,
  added: 2,
  kept: 3,
  differing: [],
  onlyInRegister: [],
  sentences: [],
};

/** A workbook whose answers a test can replace, and that keeps what it was asked. */
export class FakeWorkbook implements WorkbookPort {
  saved: SavedState = { basis: ["standard", "practice"], choices: {}, place: null };
  log: ReadLog | Error = { place: LOG_PLACE, report: report() };
  register: { readonly log: ReadLog; readonly check: RegisterCheck } | null = null;
  building: (progress: (progress: Progress) => void, signal: AbortSignal) => Promise<BuildResult> = () => Promise.resolve(RESULT);
  readonly reads: ReadRequest[] = [];
  readonly shown: { readonly place: LogPlace; readonly row: number; readonly column?: number | undefined }[] = [];
  readonly filters: (readonly string[])[] = [];
  readonly lifts: LiftToWrite[] = [];
  readonly savedStates: SavedState[] = [];
  readonly failures: Partial<
    Record<
      | "load"
      | "checkRegister"
      | "filterRegister"
      | "show"
      | "save"
      | "watch"
      | "writeLift"
      | "writeList"
      | "makeHouseSheet"
      | "makeTypesSheet"
      | "rewriteFormulas",
      Error
    >
  > = {};
  watching = 0;
  private listener: ((event: WorkbookEvent) => void) | null = null;

  withRegister(check: Partial<RegisterCheck> = {}, items: readonly ItemResult[] = ITEMS): this {
    this.register = {
      log: { place: REGISTER_PLACE, report: report(items) },
      check: { disagreeing: [], apart: [], builtUnder: null, functionsMissing: false, withoutHouse: false, ...check },
    };
    return this;
  }

  fire(event: WorkbookEvent): void {
    this.listener?.(event);
  }

  private fail(where: keyof FakeWorkbook["failures"]): void {
    const failure = this.failures[where];
    if (failure !== undefined) throw failure;
  }

  read(request: ReadRequest): Promise<ReadLog> {
    this.reads.push(request);
    return this.log instanceof Error ? Promise.reject(this.log) : Promise.resolve(this.log);
  }

  build(_log: ReadLog, onProgress: (progress: Progress) => void, signal: AbortSignal): Promise<BuildResult> {
    return this.building(onProgress, signal);
  }

  async checkRegister(): Promise<FakeWorkbook["register"]> {
    await Promise.resolve();
    this.fail("checkRegister");
    return this.register;
  }

  async filterRegister(decisions: readonly string[]): Promise<void> {
    await Promise.resolve();
    this.fail("filterRegister");
    this.filters.push(decisions);
  }

  async show(place: LogPlace, row: number, column?: number): Promise<void> {
    await Promise.resolve();
    this.shown.push({ place, row, column });
    this.fail("show");
  }

  rewrites = 0;
  async rewriteFormulas(): Promise<number> {
    await Promise.resolve();
    this.rewrites += 1;
    this.fail("rewriteFormulas");
    return 1;
  }

  selected: readonly number[] = [];
  readonly stamps: Stamp[] = [];
  async selectedRows(): Promise<readonly number[]> {
    await Promise.resolve();
    return this.selected;
  }
  async writeStamp(stamp: Stamp): Promise<number> {
    await Promise.resolve();
    this.stamps.push(stamp);
    return stamp.rows.length;
  }

  readonly lists: ListToWrite[] = [];
  async writeList(list: ListToWrite): Promise<{ readonly sheet: string; readonly items: number }> {
    await Promise.resolve();
    this.fail("writeList");
    this.lists.push(list);
    return { sheet: LISTS[list.kind].sheet, items: itemsOf(list.kind, list.items).length };
  }
  readonly asked: unknown[] = [];
  roundSheets: { readonly round: string; readonly sheet: string }[] = [];
  posted: PostResult | Error = new Error("not posted");
  sealed: SealCheck = { rows: 0, rounds: 0, findings: [], last: [] };
  itemHistory: ItemHistory = { id: "", rows: [], trends: [] };
  tagFails: Error | null = null;
  readonly rounds: RoundsPort = {
    make: (wanted) => {
      this.asked.push(wanted);
      this.roundSheets = [{ round: "R1.a", sheet: "Round 1" }, ...this.roundSheets];
      return Promise.resolve({ sheet: "Round 1", round: "R1.a", items: 2, checks: 12, leftOut: [{ id: "TP-9", why: "tagged out" }] });
    },
    post: (sheet) => {
      this.asked.push(sheet);
      return this.posted instanceof Error ? Promise.reject(this.posted) : Promise.resolve(this.posted);
    },
    list: () => Promise.resolve(this.roundSheets),
    check: () => Promise.resolve(this.sealed),
    report: (sheet) => {
      this.asked.push(`report of ${sheet}`);
      return Promise.resolve({ sheet: "Gear report", items: 2 });
    },
    item: (id) => Promise.resolve({ ...this.itemHistory, id }),
    tag: (wanted) => {
      this.asked.push(wanted);
      return this.tagFails === null ? Promise.resolve() : Promise.reject(this.tagFails);
    },
  };

  typesSheets = 0;
  async makeTypesSheet(): Promise<void> {
    await Promise.resolve();
    this.typesSheets += 1;
    this.fail("makeTypesSheet");
  }

  houseSheets = 0;
  async makeHouseSheet(): Promise<void> {
    await Promise.resolve();
    this.houseSheets += 1;
    this.fail("makeHouseSheet");
  }

  async writeLift(lift: LiftToWrite): Promise<{ readonly sheet: string }> {
    await Promise.resolve();
    this.lifts.push(lift);
    this.fail("writeLift");
    return { sheet: "Gear lift" };
  }

  async load(): Promise<SavedState> {
    await Promise.resolve();
    this.fail("load");
    return this.saved;
  }

  async save(state: SavedState): Promise<void> {
    await Promise.resolve();
    this.fail("save");
    this.savedStates.push(state);
  }

  async watch(listener: (event: WorkbookEvent) => void): Promise<() => Promise<void>> {
    await Promise.resolve();
    this.fail("watch");
    this.listener = listener;
    this.watching += 1;
    return () => {
      this.watching -= 1;
      return Promise.resolve();
    };
  }
}

/** What the pane can ask of the workbook. `excel.ts` does it through the client library; tests use a stand-in of their own. */
import type { FieldId } from "../engine/columns";
import type { Decision } from "../engine/decision";
import type { HookupRequest, HookupResult } from "../engine/lift/judge-lift";
import type { Unit } from "../engine/numbers/lengths";
import type { Report } from "../engine/report/model";
import type { BasisId } from "../engine/rules/rule-sets";
import type { ListToWrite } from "./lists/plan-list";
import type { LogPlace } from "./log-place";
import type { Stamp } from "./stamp/plan-stamp";
import type { RoundsPort } from "./programme/rounds";

/** The user's corrections of headings: heading text as it stands (lower case) to the field, or null for "not used". */
export type HeadingChoices = Readonly<Record<string, FieldId | null>>;
/** Unit of bare sizes, as the user answered it: by the name of the log's sheet in small letters. Another log may be in another unit. */
export type SheetUnits = Readonly<Record<string, Unit>>;
export interface ReadRequest {
  /** "auto" finds the log; "selection" takes the selected range; a place reads that place again. */
  readonly from: "auto" | "selection" | LogPlace;
  readonly basis: readonly BasisId[];
  readonly asOf: number;
  readonly choices: HeadingChoices;
  readonly units?: SheetUnits;
}
export interface ReadLog {
  readonly place: LogPlace;
  readonly report: Report;
  /** Rows of the house limits that cannot be used, each in a sentence. */
  readonly refusedLimits?: readonly string[];
  /** Other sheets that look like a log as well and are not read, by name. Left out where they were not looked for. */
  readonly others?: readonly string[];
}
export interface Progress {
  readonly done: number;
  readonly of: number;
  readonly step: string;
}
export interface BuildResult {
  readonly sheet: string;
  readonly items: number;
  readonly added: number;
  readonly kept: number;
  /** Cells where the register already held another value than the log; the register's value was kept. */
  readonly differing: readonly { readonly id: string; readonly heading: string; readonly register: string; readonly log: string }[];
  /** Ids in the register that are no longer in the log; their rows were kept. */
  readonly onlyInRegister: readonly string[];
  readonly sentences: readonly string[];
}
export interface RegisterCheck {
  /** Rows of the register whose verdict cell says something else than the readings do. */
  readonly disagreeing: readonly { readonly id: string; readonly cell: string; readonly judged: string }[];
  /** Items of which the log says what the register does not; the worse of the two verdicts counts. */
  readonly apart: readonly AgainstLog[];
  /** Rules and day that the register names where they are not those of the pane; null where they are. What it names wrongly is null as well. */
  readonly builtUnder: { readonly rules: readonly BasisId[] | null; readonly asOf: number | null } | null;
  /** True when the verdict cells show #NAME?: the functions are not loaded. */
  readonly functionsMissing: boolean;
  /** True when the workbook has house limits and the register's formulas do not read them. */
  readonly withoutHouse: boolean;
}
export interface SavedState {
  readonly basis: readonly BasisId[];
  readonly choices: HeadingChoices;
  readonly units?: SheetUnits | undefined;
  readonly place: LogPlace | null;
  /** Name under which inspections are stamped. */
  readonly inspector?: string | undefined;
}
/** A lift as it was asked and answered. */
export interface LiftToWrite {
  readonly request: HookupRequest;
  readonly result: HookupResult;
}
/**
 * "changed" carries the sheet's name now, or its id alone when it was deleted or could not be looked up. "typed" is one row
 * that was changed by hand, told before "changed"; rows count from 0 on the sheet.
 */
export type WorkbookEvent =
  | { readonly kind: "typed"; readonly sheetId: string; readonly row: number }
  | { readonly kind: "changed"; readonly remote: boolean; readonly sheet: string; readonly sheetId?: string }
  | { readonly kind: "selected"; readonly sheet: string; readonly sheetId?: string; readonly row: number };
export interface WorkbookPort {
  read(request: ReadRequest): Promise<ReadLog>;
  /** Builds or rebuilds the register from a log that was read; `signal` stops it before anything is written. */
  build(log: ReadLog, onProgress: (progress: Progress) => void, signal: AbortSignal): Promise<BuildResult>;
  /** Gives headings of the register that were renamed over readings their names back; the number of them. A build that meets them fails with kind "renamed". */
  nameBack?(): Promise<number>;
  /** Judges the register's own rows, none better than the log judges it where that was changed since; null when there is no register. */
  checkRegister(
    basis: readonly BasisId[],
    asOf: number,
    log?: ReadLog | null,
  ): Promise<{ readonly log: ReadLog; readonly check: RegisterCheck } | null>;
  /** Filters the register to the decisions given; an empty list shows all rows. */
  filterRegister(decisions: readonly string[]): Promise<void>;
  /** Writes the register's formulas that read #NAME? anew; returns how many. */
  rewriteFormulas(): Promise<number>;
  /** Selects the row of an item in the sheet, or one cell of it; both count inside the place. */
  show(place: LogPlace, row: number, column?: number): Promise<void>;
  /** Makes the sheet for the house's own limits; they are in force as soon as it is there. */
  makeHouseSheet(): Promise<void>;
  /** Makes the sheet for as-new sizes by type, with a row for each type of the log that lacks them. */
  makeTypesSheet(log: ReadLog | null): Promise<void>;
  /** Rows of the register that are selected and in sight, counted inside its place. */
  selectedRows(): Promise<readonly number[]>;
  /** Writes a date and a name into rows of the register; returns how many. */
  writeStamp(stamp: Stamp): Promise<number>;
  /** Writes a list to hand over on a sheet of its own, anew each time; a list of nothing is refused. */
  writeList(list: ListToWrite): Promise<{ readonly sheet: string; readonly items: number }>;
  /** Writes a lift on its own sheet, anew each time. */
  writeLift(lift: LiftToWrite): Promise<{ readonly sheet: string }>;
  /** Rounds, their posting, and the history. */
  readonly rounds: RoundsPort;
  load(): Promise<SavedState>;
  save(state: SavedState): Promise<void>;
  /** Calls back when cells change or the selection moves; the returned function ends it. */
  watch(listener: (event: WorkbookEvent) => void): Promise<() => Promise<void>>;
}
export interface AgainstLog {
  readonly id: string;
  readonly cells: readonly string[];
  readonly register: Decision;
  readonly log: Decision;
  /** True when a rebuild does not settle it. */
  readonly both: boolean;
}

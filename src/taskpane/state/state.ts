/** Everything the pane knows, and every event that can change it. */
import type { FieldId } from "../../engine/columns";
import type { Decision } from "../../engine/decision";
import type { DueState } from "../../engine/due/intervals";
import type { Unit } from "../../engine/numbers/lengths";
import { type BasisId, DEFAULT_BASIS } from "../../engine/rules/rule-sets";
import type { WorkbookError } from "../../excel/kit/workbook-error";
import type { LogPlace } from "../../excel/log-place";
import type { BuildResult, HeadingChoices, Progress, ReadLog, RegisterCheck, SavedState, SheetUnits } from "../../excel/port";
import type { StampPlan } from "../../excel/stamp/plan-stamp";
import type { PlaceName } from "../places";
import type { Grouping, ListName } from "../shared/list/entries";
import { ALL, type Narrowing } from "../shared/list/narrowed";
import { type LiftChange, type LiftForm, NO_LIFT } from "./lift-form";
import { NO_ROUNDS, type Rounds } from "./rounds";

/** What can be tried again after a failure. */
export type Retry =
  | "start"
  | "find"
  | "selection"
  | "again"
  | "build"
  | "filter"
  | "show"
  | "watch"
  | "save"
  | "lift"
  | "rounds"
  | "house"
  | "types"
  | "list"
  | "stamp look"
  | "stamp"
  | "formulas"
  | "sheet"
  | "name back";
export interface Failure {
  readonly kind: WorkbookError["kind"] | "unknown";
  readonly message: string;
  readonly retry: Retry | null;
}
export type Work =
  | { readonly kind: "idle" }
  | { readonly kind: "reading" }
  | { readonly kind: "building"; readonly progress: Progress | null; readonly stopping: boolean };
/** Which sheet the items come from. */
export type Judged = "log" | "register";
export interface Card {
  readonly row: number;
  readonly from: ListName;
}
export interface StampState {
  /** Name under which inspections are stamped; kept in the workbook. */
  readonly name: string;
  /** What the selection holds, to be confirmed; null where nothing is asked. */
  readonly plan: StampPlan | null;
  /** Serial day that is written. */
  readonly day: number;
}
export interface PaneState {
  /** False until the workbook's saved choices are there. */
  readonly started: boolean;
  readonly place: PlaceName;
  readonly basis: readonly BasisId[];
  readonly choices: HeadingChoices;
  /** Unit of bare sizes, by the name of the log's sheet in small letters. */
  readonly units: SheetUnits;
  readonly asOf: number;
  /** True when the user set the date; else it follows the clock. */
  readonly asOfChosen: boolean;
  readonly savedPlace: LogPlace | null;
  readonly log: ReadLog | null;
  /** Sentence that says why there is no log, or "". */
  readonly noLog: string;
  readonly register: { readonly log: ReadLog; readonly check: RegisterCheck } | null;
  /** True once the register's cells were found wrong twice: at first they may still be calculating. */
  readonly cellsWrong: boolean;
  readonly judged: Judged;
  readonly work: Work;
  /** True while a quiet re-reading waits for a cell to be finished. */
  readonly waiting: boolean;
  readonly failure: Failure | null;
  /** Sheet that someone else changed, or null. */
  readonly remote: string | null;
  readonly result: BuildResult | null;
  /** What was just made, in a sentence with the next step, or null. */
  readonly made: string | null;
  readonly card: Card | null;
  /** True after "Back" and wherever a press leads to a list: the list takes the focus when it appears. */
  readonly returning: boolean;
  /** Row of the item that each list stands on. */
  readonly activeRows: Readonly<Record<ListName, number | null>>;
  readonly decisions: readonly Decision[];
  readonly search: string;
  /** Place and kind that Items and Due are narrowed to. */
  readonly narrowing: Narrowing;
  readonly dueStates: readonly DueState[];
  readonly grouping: Grouping;
  /** Decisions that the register on the sheet is filtered to. */
  readonly filtered: readonly Decision[];
  /** The lift that is being put together. */
  readonly lift: LiftForm;
  /** Rows that are about to be stamped as inspected. */
  readonly stamp: StampState;
  readonly rounds: Rounds;
  /** Text for the live region. */
  readonly announcement: string;
}
export type PaneEvent =
  | { readonly kind: "started"; readonly saved: SavedState }
  | { readonly kind: "reading" }
  | { readonly kind: "read"; readonly log: ReadLog; readonly quiet: boolean }
  | { readonly kind: "no log"; readonly why: string }
  | { readonly kind: "register read"; readonly found: PaneState["register"]; readonly quiet: boolean; readonly sure: boolean }
  | { readonly kind: "rest" }
  | { readonly kind: "failed"; readonly failure: Failure }
  | { readonly kind: "waiting"; readonly on: boolean }
  | { readonly kind: "building" }
  | { readonly kind: "progress"; readonly progress: Progress }
  | { readonly kind: "stopping" }
  | { readonly kind: "built"; readonly result: BuildResult }
  | { readonly kind: "made"; readonly sheet: string }
  | { readonly kind: "listed"; readonly sheet: string; readonly items: number }
  | { readonly kind: "stamp name"; readonly name: string }
  | { readonly kind: "stamp plan"; readonly plan: StampPlan | null; readonly day: number }
  | { readonly kind: "stamped"; readonly rows: number }
  | { readonly kind: "basis"; readonly basis: readonly BasisId[] }
  | { readonly kind: "heading"; readonly heading: string; readonly field: FieldId | null | "as found" }
  | { readonly kind: "headings"; readonly answers: readonly { readonly heading: string; readonly field: FieldId | null }[] }
  | { readonly kind: "unit"; readonly sheet: string; readonly unit: Unit | null }
  | { readonly kind: "narrow"; readonly narrowing: Narrowing }
  | { readonly kind: "as of"; readonly asOf: number; readonly chosen: boolean }
  | { readonly kind: "judge"; readonly judged: Judged }
  | { readonly kind: "go"; readonly place: PlaceName; readonly toList?: boolean }
  | { readonly kind: "open"; readonly card: Card }
  | { readonly kind: "back" }
  | { readonly kind: "stand on"; readonly list: ListName; readonly row: number }
  | { readonly kind: "decision"; readonly decision: Decision }
  | { readonly kind: "all decisions" }
  | { readonly kind: "search"; readonly text: string }
  | { readonly kind: "due state"; readonly state: DueState }
  | { readonly kind: "all due states" }
  | { readonly kind: "grouping"; readonly grouping: Grouping }
  | { readonly kind: "filtered"; readonly decisions: readonly Decision[] }
  | { readonly kind: "lift"; readonly change: LiftChange }
  | { readonly kind: "rounds"; readonly change: Partial<Rounds> }
  | { readonly kind: "changed elsewhere"; readonly sheet: string }
  | { readonly kind: "selected"; readonly sheet: string; readonly row: number }
  | { readonly kind: "dismiss"; readonly what: "failure" | "remote" | "result" | "made" };
export function firstState(asOf: number): PaneState {
  return {
    started: false,
    place: "log",
    basis: DEFAULT_BASIS,
    choices: {},
    units: {},
    asOf,
    asOfChosen: false,
    savedPlace: null,
    log: null,
    noLog: "",
    register: null,
    cellsWrong: false,
    judged: "log",
    work: { kind: "idle" },
    waiting: false,
    failure: null,
    remote: null,
    result: null,
    made: null,
    card: null,
    returning: false,
    activeRows: { items: null, due: null },
    decisions: [],
    search: "",
    narrowing: ALL,
    dueStates: [],
    grouping: "none",
    filtered: [],
    lift: NO_LIFT,
    stamp: { name: "", plan: null, day: asOf },
    rounds: NO_ROUNDS,
    announcement: "",
  };
}
/** The sheet whose items are shown: the register once there is one, unless the user looks at the log. */
export function shownLog(state: PaneState): ReadLog | null {
  if (state.register !== null && (state.judged === "register" || state.log === null)) return state.register.log;
  return state.log;
}

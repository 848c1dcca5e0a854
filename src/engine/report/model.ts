/** Shapes shared by the engine and its callers: what goes in, and what a judgement says. */
import type { FieldId } from "../columns";
import type { Decision } from "../decision";
import type { DueState } from "../due/intervals";
import type { ItemVerdict } from "../item/verdict";
import type { Besides } from "../log/besides";
import type { HeadingMatch } from "../log/match-headings";
import type { LogQuestions } from "../log/questions";
import type { CellValue } from "../reading/cell-value";
import type { BasisId } from "../rules/rule-sets";
import type { Lent } from "../types/lend";
import type { TypesTold } from "./lent-rows";

/** One row of a log as the register and the pane show it. */
export interface ItemResult {
  /** Zero-based row inside the grid that was read. */
  readonly row: number;
  readonly id: string;
  /** Gear kind id, or null when unknown; `gearText` is what was typed. */
  readonly gear: string | null;
  readonly gearText: string;
  readonly place: string;
  readonly assembly: string;
  readonly tagged: boolean;
  readonly verdict: ItemVerdict;
  /** Serial day of the next periodic inspection, or null. */
  readonly nextDue: number | null;
  readonly dueState: DueState;
  /** Why there is no date, or "". */
  readonly dueNote: string;
  /** True where the date rests on normal service because none is recorded. */
  readonly serviceAssumed?: true;
  /** Cells by field as they stood in the log. */
  readonly cells: ReadonlyMap<FieldId, CellValue>;
  /** As-new sizes of the type that it names, and whose they are; its cells hold those that it lacked. */
  readonly lent?: Pick<Lent, "sizes" | "from" | "filled">;
  /** What else stands in its row of the log. */
  readonly besides?: Besides;
  /** Decision that the register's own verdict cell shows, where it differs from this one. */
  readonly cellSays?: string;
}
/** A column that items of a kind lack. */
export interface LackedColumn {
  readonly field: FieldId;
  /** Items in which nothing is recorded, and items in which it cannot be read. */
  readonly missing: number;
  readonly unreadable: number;
  /** Whether the log has a column for it. */
  readonly there: boolean;
}
/** What the items of a kind lack before they can be kept. */
export interface KindLack {
  /** Id of the kind. */
  readonly kind: string;
  /** Items of the kind that lack something, of all of that kind. */
  readonly items: number;
  readonly of: number;
  /** What is lacked most comes first. */
  readonly columns: readonly LackedColumn[];
}
/** A whole log, judged. */
export interface Report {
  readonly items: readonly ItemResult[];
  readonly counts: Readonly<Record<Decision, number>>;
  readonly due: Readonly<Record<DueState, number>>;
  readonly headings: readonly HeadingMatch[];
  /** What the kinds of this log need before they can be kept, and the log does not hold. */
  readonly lacking: readonly KindLack[];
  /** Rows that are not items (blank, total, section titles), with the reason. */
  readonly passedOver: readonly { readonly row: number; readonly why: string }[];
  /** What the log leaves open, asked once for the whole of it. */
  readonly questions?: LogQuestions;
  /** What the sheet of as-new sizes by type did for the items; left out where there is none. */
  readonly types?: TypesTold;
  /** What must be put right before a register can be written, such as an id that appears twice. */
  readonly problems: readonly string[];
  readonly basis: readonly BasisId[];
  readonly asOf: number;
}

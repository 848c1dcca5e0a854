/** Shapes shared by the engine and its callers: what goes in, and what a judgement says. */
import type { Decision } from "./verdict";
import type { BasisId } from "./bases";
import type { Unit } from "./units";
import type { FieldId } from "./fields";

/** A date cell, told apart from a plain number by the cell's number format. */
export interface DateCell {
  readonly serial: number;
}

/** What a cell holds as the workbook hands it over. Null, undefined and "" are blank. */
export type CellValue = number | string | boolean | null | undefined | DateCell;

/** Where a figure stands: document key of `sources.ts`, clause and edition. */
export interface Citation {
  readonly document: string;
  readonly clause: string;
}

/** One criterion applied to one reading, or the reason why it could not be. */
export interface Finding {
  /** Check within the gear kind, such as "throat opening". */
  readonly check: string;
  /** Part name for the drawing, such as "throat". */
  readonly part: string;
  /** Id of the criterion that decided, or null when no limit was applied. */
  readonly criterion: string | null;
  readonly decision: Decision;
  /** Readings and limit as text with unit, as they stand in the sentence. */
  readonly measured: string | null;
  readonly original: string | null;
  /** What the limit counts from, such as "as new 2 in" or "nominal 0.5 in (1/2)". */
  readonly countsFrom?: string;
  readonly limit: string | null;
  /** Decision beyond the limit; left out where there is no limit. */
  readonly beyond?: Decision;
  /** Share of the allowance used: 1 is at the limit. Null for observations and missing readings. */
  readonly share: number | null;
  /** The dimension, angle or count at which the part comes out, such as "above 2.1 in". */
  readonly comesOut: string | null;
  readonly basis: BasisId | null;
  readonly source: string | null;
  readonly sentence: string;
  /** True when the finding shows that the part was overloaded (stretched or opened up). */
  readonly overload: boolean;
}

/** The judgement of one item. */
export interface ItemVerdict {
  readonly decision: Decision;
  /** One sentence on what decides, then what else counts. */
  readonly reason: string;
  /** Findings, worst first. */
  readonly findings: readonly Finding[];
  /** The finding that decides; null when the item could not be read at all. */
  readonly deciding: Finding | null;
  /** Greatest share of an allowance used, or null. */
  readonly share: number | null;
  /** Where each part comes out, as far as its as-new size is known: "throat opening above 2.1 in; section wear below 1.7813 in". */
  readonly comesOut: string;
  readonly source: string;
  /** What has to be typed before the item can be kept, in words. */
  readonly missing: readonly string[];
  readonly notes: readonly string[];
}

export type DueState = "OVERDUE" | "DUE SOON" | "CURRENT" | "NO DATE";

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
  /** Cells by field as they stood in the log. */
  readonly cells: ReadonlyMap<FieldId, CellValue>;
  /** Decision that the register's own verdict cell shows, where it differs from this one. */
  readonly cellSays?: string;
}

/** How one heading of a log was read. */
export interface HeadingMatch {
  /** Zero-based column inside the grid. */
  readonly column: number;
  /** The heading as it stands, two heading rows joined by a space. */
  readonly heading: string;
  /** Field it is read as, or null when it is not used. */
  readonly field: FieldId | null;
  /** Field that another column is read as and this one is read with; null when it stands alone or is not used. */
  readonly also: FieldId | null;
  /** Unit named in the heading. */
  readonly unit: Unit | null;
  /** True when the user chose it. */
  readonly chosen: boolean;
}

/** A whole log, judged. */
export interface Report {
  readonly items: readonly ItemResult[];
  readonly counts: Readonly<Record<Decision, number>>;
  readonly due: Readonly<Record<DueState, number>>;
  readonly headings: readonly HeadingMatch[];
  /** Checks that the gear kinds in this log need and no column gives, in words with what their absence means. */
  readonly missingChecks: readonly string[];
  /** Rows that are not items (blank, total, section titles), with the reason. */
  readonly passedOver: readonly { readonly row: number; readonly why: string }[];
  /** What must be put right before a register can be written, such as an id that appears twice. */
  readonly problems: readonly string[];
  readonly basis: readonly BasisId[];
  readonly asOf: number;
}

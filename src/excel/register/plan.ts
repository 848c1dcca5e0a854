import type { FieldId } from "../../engine/columns";
import type { Written } from "../kit/in-parts";
import type { Copied } from "./copied-sheet";
import type { Layout } from "./layout";
import type { OldRegister } from "./shape";

/** One row of the register, in its order; new ones stand last. */
export interface PlannedRow {
  /** Row of the table as it stands, or null for a new item. */
  readonly at: number | null;
  /** Cells to write, by column of the layout: those that differ, or for a new item all that are not blank. */
  readonly cells: ReadonlyMap<number, Written>;
  /** What its cell "Log differs" holds. */
  readonly logDiffers: string;
  /** Id in small letters of an item of the log; "" for a row that is the register's alone. */
  readonly item: string;
  /** Kind of gear as it will stand. */
  readonly gear: string;
}
export interface RegisterPlan {
  readonly layout: Layout;
  /** Headings to change, by column: of columns of the log that are answered now. */
  readonly renames: ReadonlyMap<number, string>;
  readonly fields: readonly FieldId[];
  readonly rows: readonly PlannedRow[];
  /** How many assemblies the register names. */
  readonly assemblies: number;
  readonly notes: readonly (readonly string[])[];
  readonly added: number;
  readonly kept: number;
  readonly differing: readonly { readonly id: string; readonly heading: string; readonly register: string; readonly log: string }[];
  readonly onlyInRegister: readonly string[];
  readonly sentences: readonly string[];
  /** Rows where the log says what the register does not: new in the log, or changed in both. By id in small letters. */
  readonly changes: ReadonlyMap<string, LogChange>;
  /** What the log says now, for the next build. */
  readonly copied: Copied;
}
/** What the log says of an item that the register does not say. */
export interface LogChange {
  /** Cells in words: "Cracks: register none, log crack". */
  readonly cells: readonly string[];
  /** True when some cell was changed in both, or was emptied in the log: a build does not settle that. */
  readonly both: boolean;
}
export interface Before {
  readonly register: OldRegister | null;
  readonly copied: Copied;
  /** True where the log that was read is the register itself. */
  readonly own: boolean;
}

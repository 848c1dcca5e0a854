import type { FieldId } from "../../engine/columns";
import type { Written } from "../kit/in-parts";
import type { Progress } from "../port";
import type { Copied } from "./copied-sheet";
import type { OldRegister } from "./shape";

export interface RegisterPlan {
  readonly fields: readonly FieldId[];
  /** Headings of columns that people added to the register; kept at the right. */
  readonly extras: readonly string[];
  /** Input rows, in the order of `fields`. */
  readonly rows: readonly (readonly Written[])[];
  /** Rows of the extra columns, as formulas. */
  readonly extraRows: readonly (readonly Written[])[];
  readonly notes: readonly (readonly string[])[];
  readonly added: number;
  readonly kept: number;
  readonly differing: readonly { readonly id: string; readonly heading: string; readonly register: string; readonly log: string }[];
  readonly onlyInRegister: readonly string[];
  readonly sentences: readonly string[];
  /** For each row, what its cell "Log differs" holds. */
  readonly logDiffers: readonly string[];
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
}
export interface WriteOptions {
  readonly basis: readonly string[];
  /** Serial day to judge by, or null for today as the workbook counts it. */
  readonly asOf: number | null;
  readonly exists: boolean;
  readonly notesExist: boolean;
  readonly copiedExist: boolean;
  /** Rows of the register before, to clear what is left over. */
  readonly oldRows: number;
  readonly oldColumns: number;
  readonly onProgress: (progress: Progress) => void;
}

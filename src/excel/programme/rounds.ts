/** What the pane can ask about rounds, and what it is told. */
import type { HistoryRow } from "../../engine/programme/history";
import type { CheckTrend } from "../../engine/programme/item-history";
import type { Posting } from "../../engine/programme/post";
import type { Round, RoundKind } from "../../engine/programme/round";
import type { SealCheck } from "../../engine/programme/seals";
import type { TagWanted } from "../../engine/programme/tag";
import type { BasisId } from "../../engine/rules/rule-sets";

export interface RoundWanted {
  readonly kind: RoundKind;
  readonly basis: readonly BasisId[];
  readonly asOf: number;
  /** Only these items, by id in small letters; all that the kind of round is about when left out. */
  readonly ids?: readonly string[];
  /** What narrows the round, such as "Slipway"; stands in its title. */
  readonly where?: string;
}
export interface RoundMade {
  readonly sheet: string;
  readonly round: string;
  readonly items: number;
  readonly checks: number;
  readonly leftOut: Round["leftOut"];
}
export interface PostResult extends Omit<Posting, "rows" | "writes"> {
  readonly sheet: string;
  /** Rows that the history took. */
  readonly added: number;
  /** Cells of the register that were written. */
  readonly written: number;
}
export interface RoundSheet {
  readonly round: string;
  readonly sheet: string;
}
export interface ItemHistory {
  readonly id: string;
  readonly rows: readonly HistoryRow[];
  readonly trends: readonly CheckTrend[];
}
export interface RoundsPort {
  /** Rows of one item, and where its wear leads. */
  item(id: string, basis: readonly BasisId[], asOf: number): Promise<ItemHistory>;
  /** Writes the report of what was posted from a round sheet, on a sheet of its own. */
  report(sheet: string, basis: readonly BasisId[], asOf: number): Promise<{ readonly sheet: string; readonly items: number }>;
  /** Tags an item out, releases it, or records its disposal. */
  tag(wanted: TagWanted, basis: readonly BasisId[]): Promise<void>;
  /** Makes a new sheet; nothing else is touched. */
  make(wanted: RoundWanted): Promise<RoundMade>;
  /** Posts the round on a sheet: history first, then the register. */
  post(sheet: string): Promise<PostResult>;
  /** The round sheets of the workbook, newest first. */
  list(): Promise<readonly RoundSheet[]>;
  /** Looks at the seals of the whole history. */
  check(): Promise<SealCheck>;
}

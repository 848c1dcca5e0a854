/**
 * One row of the register against the same row of the log, with what the log said when it was last copied. Pure.
 * A register cell that nobody changed since it was copied follows the log; one that was changed keeps what was typed.
 * Where the log changed as well, or no longer says anything, the two stand apart until somebody makes them agree.
 */
import type { FieldId } from "../../engine/columns";
import type { Written } from "../kit/in-parts";

export interface CellMerge {
  readonly value: Written;
  /** "same": nothing to say. "taken": the log's new value. "typed": the register's own. "apart": both say something of their own. */
  readonly how: "same" | "taken" | "typed" | "apart";
  /** What the log is known to have said, for the next time. */
  readonly copied: string;
}
/** A written cell as it reads back: the apostrophe that keeps text as text is not part of it. */
const bare = (value: Written): string => String(value).replace(/^'/, "");
/** `before` is null for an id that is new in the register, blank for a column that is new in it. */
export function mergeCell(id: FieldId, log: Written, before: Written | null, copied: string): CellMerge {
  const says = bare(log);
  if (before === null) return { value: log, how: "same", copied: says };
  if (before === "") return { value: log, how: says === "" ? "same" : "taken", copied: says };
  const stands = bare(before);
  if (stands === says || id === "id") return { value: before, how: "same", copied: says };
  if (says === copied) return { value: before, how: "typed", copied };
  // A blank in the log clears nothing: a tag or a crack that was once recorded does not go by being left out.
  if (stands === copied && says !== "") return { value: log, how: "taken", copied: says };
  return { value: before, how: "apart", copied };
}

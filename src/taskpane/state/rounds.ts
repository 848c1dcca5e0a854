/** What the pane knows of rounds: the sheets, what is under way, what was last done. */
import type { SealCheck } from "../../engine/programme/seals";
import { count } from "../../engine/words";
import type { PostResult, RoundMade, RoundSheet, RoundWanted } from "../../excel/programme/rounds";

export type RoundAsk =
  | { readonly kind: "make"; readonly wanted: Omit<RoundWanted, "basis" | "asOf"> }
  | { readonly kind: "post"; readonly sheet: string }
  | { readonly kind: "report"; readonly sheet: string }
  | { readonly kind: "check" }
  | { readonly kind: "list" };
export type RoundSaid =
  | { readonly kind: "made"; readonly made: RoundMade }
  | { readonly kind: "posted"; readonly posted: PostResult }
  | { readonly kind: "reported"; readonly sheet: string; readonly items: number }
  | { readonly kind: "checked"; readonly check: SealCheck };
export interface Rounds {
  /** Null until the workbook was asked. */
  readonly sheets: readonly RoundSheet[] | null;
  readonly working: RoundAsk["kind"] | null;
  readonly said: RoundSaid | null;
}
export const NO_ROUNDS: Rounds = { sheets: null, working: null, said: null };
/** What was done, for who does not see it. */
export function announced(said: RoundSaid): string {
  switch (said.kind) {
    case "made":
      return `${said.made.sheet} is made: ${count(said.made.items, "item")}, ${count(said.made.checks, "check")}.`;
    case "posted":
      return `${said.posted.sheet} is posted: ${count(said.posted.posted, "reading")} added.`;
    case "reported":
      return `The report is written on sheet ${said.sheet}.`;
    case "checked":
      return said.check.findings.length === 0
        ? "Every seal of the history fits."
        : `${count(said.check.findings.length, "finding")} in the history.`;
  }
}

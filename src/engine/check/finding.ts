import type { Decision } from "../decision";
import type { BasisId } from "../rules/rule-sets";

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

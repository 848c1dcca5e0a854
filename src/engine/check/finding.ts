/** What a check, a tag or a record says of an item: facts. The words are made from them last, in `sentences.ts`. */
import type { FieldId } from "../columns";
import type { Decision } from "../decision";
import type { BasisId } from "../rules/rule-sets";

/** Why a finding stands; each has its own sentence. */
export type Why =
  /** A figure met a limit, or the limit lies inside the gauge's uncertainty. */
  | "limit"
  | "gauge"
  /** The rule sets in force hold no limit for what was read; a size has no row in their table. */
  | "no limit"
  | "not in table"
  | "no change"
  /** An observation, in order or cause for removal; one that no rule in force names. */
  | "seen"
  | "no rule"
  | "missing"
  | "unreadable"
  /** What stands there does not go with the rest of the row. */
  | "contradiction"
  /** A limit that depends on a make or construction which is not recorded. */
  | "variant"
  /** The section at a nick is not recorded. */
  | "no section"
  /** A reading stands in a column that no check of this gear reads. */
  | "not read"
  /** A filled cell stands under a heading that is not understood. */
  | "not understood"
  | "tag"
  | "overload"
  | "date"
  /** The log's own word against its use. */
  | "record"
  /** No rule set in force has a limit for the kind; house limits that cannot be applied; as-new sizes that no table gives. */
  | "rules"
  | "house limits"
  | "as-new size"
  | "gear";
/** One criterion applied to one reading, or the reason why it could not be. */
export interface Finding {
  readonly why: Why;
  /** Check within the gear kind, such as "throat opening". */
  readonly check: string;
  /** What was measured, as it is named in a sentence, where that is not the check: "saddle section". */
  readonly label?: string | undefined;
  /** Part name for the drawing, such as "throat". */
  readonly part: string;
  /** Set where the section was read at right angles to the first direction. */
  readonly direction?: "across" | undefined;
  /** Id of the criterion that decided, or null when no limit was applied. */
  readonly criterion: string | null;
  readonly decision: Decision;
  /** The column that was read or has to be filled, and its heading as it stands in the log. */
  readonly field?: FieldId;
  readonly heading?: string;
  /** What stands in that cell, where it is no reading. */
  readonly typed?: string;
  /** Why it cannot be used, or why no limit was applied: a clause without a full stop. */
  readonly because?: string;
  /** What to type or to do next, such as "none or found". */
  readonly type?: string;
  /** Readings and limit as text with unit, as they stand in the sentence. */
  readonly measured: string | null;
  /** The reading in the fewest words, where `measured` says more. */
  readonly brief?: string | undefined;
  readonly original: string | null;
  /** What the limit counts from, such as "as new 2 in" or "nominal 0.5 in (1/2)". */
  readonly countsFrom?: string | undefined;
  readonly limit: string | null;
  /** Decision beyond the limit; left out where there is no limit. */
  readonly beyond?: Decision;
  /** True where a limit that asks for a closer look only was passed. */
  readonly watched?: boolean;
  /** Share of the allowance used: 1 is at the limit. Null for observations and missing readings. */
  readonly share: number | null;
  /** How much change the limit allows, in the reading's own unit: tells limits of one check apart where nothing is used yet. Judges nothing. */
  readonly allows?: number;
  /** The dimension, angle or count at which the part comes out, such as "above 2.1 in". */
  readonly comesOut: string | null;
  /** What the gauge reads to, and the reading that would settle it; null where none can. */
  readonly gauge?: { readonly reads: string; readonly settledBy: string | null } | undefined;
  /** Where the words that every reading under the same limit shares are kept once they are made. */
  readonly shared?: { tail: string | null; from: string | null };
  readonly basis: BasisId | null;
  readonly source: string | null;
  /** True when the finding shows that the part was overloaded (stretched or opened up). */
  readonly overload: boolean;
}
/** A finding without a limit; what it is about is added. */
export function finding(
  why: Why,
  decision: Decision,
  of: { readonly name: string; readonly part: string },
  more: Partial<Finding> = {},
): Finding {
  return {
    why,
    check: of.name,
    part: of.part,
    criterion: null,
    decision,
    measured: null,
    original: null,
    limit: null,
    share: null,
    comesOut: null,
    basis: null,
    source: null,
    overload: false,
    ...more,
  };
}
/** A finding on the whole item, at no part of it. */
export const ofItem = (why: Why, decision: Decision, name: string, more: Partial<Finding> = {}): Finding =>
  finding(why, decision, { name, part: "" }, more);
/** A copy with other facts; what was to be worded late is worded now. */
export function withFacts(found: Finding, more: Partial<Finding>): Finding {
  const { check, part, label, direction, criterion, decision, field, heading, typed, because, type, measured, original, countsFrom } =
    found;
  const { brief, why, limit, beyond, watched, share, allows, comesOut, gauge, basis, source, overload } = found;
  return Object.assign(
    finding(why, decision, { name: check, part }, { criterion, measured, original, limit, share, comesOut, basis, source, overload }),
    label !== undefined && { label },
    direction && { direction },
    field !== undefined && { field },
    heading !== undefined && { heading },
    typed !== undefined && { typed },
    brief !== undefined && { brief },
    because !== undefined && { because },
    type !== undefined && { type },
    countsFrom !== undefined && { countsFrom },
    beyond !== undefined && { beyond },
    watched !== undefined && { watched },
    allows !== undefined && { allows },
    gauge && { gauge },
    more,
  ) as Finding;
}

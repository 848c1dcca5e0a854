import type { Decision } from "../decision";
import type { NumberTable, TableName } from "../tables/look-up";
import type { Citation } from "./documents";
import type { BasisId } from "./rule-sets";

export type StressClass = "high" | "moderate" | "low";
/** The figure and how it is met: "above x" passes at x, "from x" fails at x. */
export type Limit =
  /** Share of the as-new (or nominal) size, with an optional cap that follows the unit of the row. */
  | { readonly word: "above" | "from"; readonly share: string; readonly cap?: { readonly in: string; readonly mm: string } }
  /** A length, in the unit in which the source gives it. */
  | { readonly word: "above" | "from"; readonly length: string; readonly unit: "in" | "mm" }
  | { readonly word: "above" | "from"; readonly degrees: string }
  | { readonly word: "above" | "from"; readonly count: number }
  /** Share of the cross-sectional area of a round section. */
  | { readonly word: "above" | "from"; readonly area: string }
  /** The maker's own figure, as the log records it beside the reading. */
  | { readonly word: "maker"; readonly comesOut: "above" | "below" }
  /** Least thickness from a published table, by nominal size. */
  | { readonly word: "below"; readonly table: TableName }
  /** Least number or length from a published table, or as a multiple of the size and no less than a length. */
  | { readonly word: "fewer"; readonly table: NumberTable }
  | { readonly word: "fewer"; readonly times: string; readonly least?: { readonly in: string } }
  /** Broken wires from a published table by rope category number. */
  | { readonly word: "from"; readonly table: "rope category" }
  /** The observation alone is cause. */
  | { readonly word: "any" };
export interface Criterion {
  readonly id: string;
  readonly check: string;
  readonly basis: BasisId;
  readonly limit: Limit;
  /** Decision beyond the limit. */
  readonly beyond: Decision;
  /** Decision inside the limit where it is not KEEP and WATCH: DRESS or KEEP for a nick that was found, KEEP where new parts may lie near the limit. */
  readonly inside?: Decision;
  readonly source: Citation;
  /** read: figure read in the document; restated: read on a page that restates it; practice: no source; unconfirmed: not read. */
  readonly status: "read" | "restated" | "practice" | "unconfirmed";
  /** Day on which the figure was last compared with its source. */
  readonly checked: string;
  /** Only for parts of these stress classes. */
  readonly stress?: readonly StressClass[];
  /** Only where wear runs in two directions. */
  readonly twoWays?: boolean;
  /** Only for these variants of the kind. */
  readonly onlyFor?: readonly string[];
  /** The maker's own figure in the row, and any house limit of the check, stands in for it. */
  readonly yields?: true;
  /** Holds beside a maker's written figure on the house's sheet, too. */
  readonly always?: true;
}

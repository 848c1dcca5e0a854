/** Shape of a gear kind: what an inspection of it reads, and the limits that decide. */
import type { FieldId } from "../columns";
import type { Criterion, StressClass } from "../rules/criterion";
import type { BasisId } from "../rules/rule-sets";
import type { RopeLength } from "../tables/rope";

/** How a check's readings become one figure. */
export type Check = CheckBase &
  /** With `general`, its limits hold at parts that have no check of their own. */
  (
    | {
        readonly kind: "loss";
        readonly original: FieldId;
        readonly measured: FieldId;
        readonly acrossOriginal?: FieldId;
        readonly acrossMeasured?: FieldId;
        readonly general?: true;
        /** Column of an as-new size of its own, which stands before `original` where it is filled. */
        readonly ownOriginal?: FieldId;
      }
    | { readonly kind: "growth"; readonly original: FieldId; readonly measured: FieldId }
    /** `asNew` times the nominal size is what a new part measures, where that is not the nominal size itself. */
    | { readonly kind: "least"; readonly size: FieldId; readonly measured: FieldId; readonly asNew?: string }
    /** A measure as a share of a size: a bend of its span; with `over`, how far it exceeds the size: a groove its rope. */
    | { readonly kind: "ratio"; readonly size: FieldId; readonly measured: FieldId; readonly over?: true }
    /** A count, a length or a torque that must not be less than the size asks for; longer in proportion where more clips than tabled are fitted. */
    | {
        readonly kind: "enough";
        readonly size: FieldId;
        readonly measured: FieldId;
        readonly reads: "count" | "length" | "torque";
        readonly inProportionTo?: FieldId;
      }
    /** `makers` is the column of the maker's own figure, to which a lesser one yields. */
    | { readonly kind: "gap"; readonly measured: FieldId; readonly makers?: FieldId }
    /** A reading that the maker's own figure, recorded beside it, limits; without that figure it is asked for. */
    | { readonly kind: "maker"; readonly measured: FieldId; readonly figure: FieldId; readonly comesOut: "larger" | "smaller" }
    | { readonly kind: "angle"; readonly measured: FieldId }
    | { readonly kind: "count"; readonly measured: FieldId }
    /** A count over a length of rope, by rope category number, lay and layers on the drum. */
    | {
        readonly kind: "category";
        readonly measured: FieldId;
        readonly over: RopeLength;
        readonly category: FieldId;
        readonly lay: FieldId;
        readonly layers: FieldId;
      }
    | {
        readonly kind: "nick";
        readonly measured: FieldId;
        readonly at: FieldId;
        readonly sectionNew: FieldId;
        readonly sectionNow: FieldId;
      }
    /**
     * `mayBeAbsent` where gear of this kind can rightly be without the part: "none required" is then in order. `plainWords` where the column's own
     * words for a slight finding do not pass: rust at an end connection.
     */
    | { readonly kind: "seen"; readonly measured: FieldId; readonly mayBeAbsent?: true; readonly plainWords?: true }
  );
interface CheckBase {
  /** Name in sentences and in criteria, such as "throat opening". */
  readonly name: string;
  /** Part that is read, for the stress class and the drawing. */
  readonly part: string;
  /** Needed before the item can be kept. */
  readonly required: boolean;
  /** Read only while one of these rule sets is in force. */
  readonly under?: readonly BasisId[];
  /** Only for these variants of the kind; all when left out. */
  readonly onlyFor?: readonly string[];
  /** A finding beyond the limit shows that the part was overloaded. */
  readonly overload?: boolean;
}
/** Makes or constructions of a kind that have limits of their own, and the column that names them. */
export interface Variants {
  readonly field: FieldId;
  /** By id, the words, or the notation, under which the trade knows them. */
  readonly names: Readonly<Record<string, readonly (string | RegExp)[]>>;
  /** What the gear's own name gives away. */
  readonly inGear?: readonly { readonly words: RegExp; readonly variant: string }[];
  /** What a blank column stands for, and why; without it, only what holds for all variants is judged. */
  readonly blank?: { readonly variant: string; readonly why: string };
  /** Words that say nothing of the variant: a column of them alone is as good as blank. */
  readonly beside?: RegExp;
  /** What in the column makes the row another kind's: it is refused with that kind's name. */
  readonly another?: { readonly words: RegExp; readonly kind: string; readonly why?: string };
}
export interface GearKind {
  readonly id: string;
  /** Plural, for headings in the pane and README. */
  readonly plural: string;
  /** Names under which the trade knows it, matched as sets of words. A name with a further word of no other kind needs none of its own. */
  readonly names: readonly string[];
  /** Parts with their stress class; the first is the part where a bare "section" is read. */
  readonly parts: Readonly<Record<string, StressClass>>;
  /** Other words for the parts. */
  readonly partNames?: Readonly<Record<string, string>>;
  /** As-new sizes that a published table by rated load may stand in for, when the column beside them is filled. */
  readonly asNew?: readonly { readonly column: FieldId; readonly part: "body" | "pin"; readonly when: FieldId }[];
  readonly variants?: Variants;
  readonly checks: readonly Check[];
  readonly criteria: readonly Criterion[];
}

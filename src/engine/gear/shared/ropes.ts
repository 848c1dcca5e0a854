/** What ropes on cranes and hoists share. */
import type { Criterion } from "../../rules/criterion";
import type { SourceKey } from "../../rules/documents";
import type { BasisId } from "../../rules/rule-sets";
import type { Check, Variants } from "../kind";
import { CHECKED, examinedOnSight, from, removedOnSight, seen } from "./records";

const BOTH = ["law", "standard"] as const satisfies readonly BasisId[];
export const count = (
  kind: string,
  check: string,
  word: "above" | "from",
  figure: number,
  document: SourceKey,
  clause: string,
  bases: readonly BasisId[] = BOTH,
  status: Criterion["status"] = "read",
): readonly Criterion[] =>
  bases.map((basis) => ({
    id: `${kind}.${check.replaceAll(" ", "-")}.${basis}`,
    check,
    basis,
    limit: { word, count: figure },
    beyond: "REMOVE" as const,
    ...(basis === "law" ? { source: from(document, clause), status } : consensus(document, clause, status)),
    checked: CHECKED,
  }));
/** 29 CFR is law. The consensus standards on mobile and self-erecting cranes have the same counts, as pages restate them. */
function consensus(document: SourceKey, clause: string, status: Criterion["status"]): Pick<Criterion, "source" | "status"> {
  if (document !== "CFR 1926.1413") return { source: from(document, clause), status };
  return { source: clause.includes("(A)(3)") ? from("B30.29") : from("B30.5"), status: "restated" };
}
/** Under law by its text; common practice holds the same figure where no text of the standard was read. */
export const share = (
  kind: string,
  check: string,
  word: "above" | "from",
  figure: string,
  document: SourceKey,
  clause: string,
  bases: readonly BasisId[] = ["law", "practice"],
): readonly Criterion[] =>
  bases.map((basis) => ({
    id: `${kind}.${check.replaceAll(" ", "-")}.${basis}`,
    check,
    basis,
    limit: { word, share: figure },
    beyond: "REMOVE" as const,
    source: basis === "practice" ? from("practice") : from(document, clause),
    status: basis === "practice" ? ("practice" as const) : ("read" as const),
    checked: CHECKED,
  }));
export const DIAMETER: Check = {
  kind: "least",
  name: "diameter loss",
  part: "body",
  size: "size",
  measured: "ropeNow",
  asNew: "1",
  required: true,
};
/** What every rope is looked at for. */
export const SEEN: readonly Check[] = [
  seen("kinks or crushing", "body", "kinks", true),
  seen("broken strand", "body", "strandBroken", true),
  seen("heat damage", "body", "heat", true),
  seen("corrosion", "body", "corrosion", true),
  seen("end fittings", "end fitting", "endFittings", true),
  seen("power-line contact", "body", "powerLine", false),
];
/** Category III: out at once. Category I is for a competent person to decide at once. */
const OUT_AT_ONCE = ["broken strand", "power-line contact"];
export const onSight = (kind: string): readonly Criterion[] =>
  SEEN.flatMap((check) => {
    const out = OUT_AT_ONCE.includes(check.name);
    const list = ["CFR 1926.1413", out ? "(a)(2)(iii)" : "(a)(2)(i)"] as const;
    return [
      ...(out ? removedOnSight : examinedOnSight)(kind, check.name, { law: list }),
      ...removedOnSight(kind, check.name, { practice: ["practice", ""] }),
    ];
  });
export const PARTS = { body: "moderate", "end fitting": "moderate" } as const;
export const A2 = "(a)(2)(ii)";
/** Six or eight strands, 7x7 and 7x19, as rope makers write them: 6x25FW, 6x36WS+IWRC, 8xK26WS. A figure with a unit behind it is a length. */
export const STRANDS =
  /(?<![\w/.,])([68] strand|([68]xk?(7|[1-6]\d)|7x(7|19))(?!mm|cm|in|ft)[a-z]{0,3})(?![\w.,]| ((mm|cm|m|in|ft)\b|["']))/;
/** Words and strand counts of rotation-resistant rope: 19x7, 35x7, 4x39; not a diameter and a length such as 19 x 7 m. */
export const ROTATION_RESISTANT =
  /\b(anti|non|low|no)[- ]*(spin|rot|twist)|\b(spin|rot|twist|torsion)\w*[-. ]*(res|free|proof|less|balance)|\bmulti[- ]?strand|\brr\b|(?<![\d./])((1[1-9]|[2-4]\d) ?[x×] ?k?([67]|1[79])|[345][x×]k?(19|[2-4]\d))(?![\d.'"]| ?(mm?|cm|ft|in)\b)/i;
/** Running and standing ropes have one set of counts for all constructions but this one, which is a kind of its own. */
export const NOT_RESISTANT: Variants = {
  field: "construction",
  names: {},
  another: { words: ROTATION_RESISTANT, kind: "rotation resistant rope" },
};

/** The figures behind the verdicts as a list, for the pane and for the page of covered clauses. */
import { everyMonths, INTERVAL_CRITERIA } from "../due/interval-criteria";
import { GEAR } from "../gear/index";
import type { Criterion } from "../rules/criterion";
import { cite } from "../rules/documents";
import { limitInWords } from "../rules/limit-in-words";
import type { BasisId } from "../rules/rule-sets";

export interface SourceLine {
  readonly basis: BasisId;
  readonly document: string;
  readonly clause: string;
  readonly gear: string;
  readonly check: string;
  readonly figure: string;
  readonly status: string;
  readonly criterion: string;
}
const STRESSED = { high: "highly stressed", moderate: "moderately stressed", low: "lightly stressed" } as const;
/** Where alone a criterion holds: constructions, stress classes, wear in two directions. */
function wherefor(c: Criterion): readonly string[] {
  return [
    ...(c.onlyFor === undefined ? [] : [c.onlyFor.join(", ")]),
    ...(c.stress === undefined ? [] : [`${c.stress.map((stress) => STRESSED[stress]).join(" and ")} parts`]),
    ...(c.twoWays === true ? ["where wear runs in two directions"] : []),
  ];
}
export function listSources(): readonly SourceLine[] {
  return [...listLimits(), ...listIntervals()];
}
/** Longest intervals between inspections, one line for each kind that a text names. */
function listIntervals(): readonly SourceLine[] {
  return INTERVAL_CRITERIA.map((c) => ({
    basis: c.basis,
    document: cite({ document: c.source.document, clause: "" }),
    clause: c.source.clause,
    gear: c.kind,
    check: "inspection interval",
    figure: [
      `${everyMonths(c.months)} at most`,
      ...(c.service === undefined ? [] : [c.service === "people" ? "lifting people" : `${c.service} service`]),
      ...(c.usedOn === undefined ? [] : [`used on ${c.usedOn.join(" or ")}`]),
    ].join(", "),
    status: c.status,
    criterion: c.id,
  }));
}
function listLimits(): readonly SourceLine[] {
  return GEAR.flatMap((kind) =>
    kind.criteria.map((c) => ({
      basis: c.basis,
      document: cite({ document: c.source.document, clause: "" }),
      clause: c.source.clause,
      gear: kind.id,
      check: c.check,
      figure: [limitInWords(c.limit), ...wherefor(c)].join(", "),
      status: c.status,
      criterion: c.id,
    })),
  );
}

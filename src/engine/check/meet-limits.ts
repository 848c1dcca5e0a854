/** Every criterion in force against one figure. */
import type { Decision } from "../decision";
import type { Check } from "../gear/kind";
import { toNumber, ZERO } from "../numbers/exact";
import { showFloor } from "../numbers/lengths";
import type { Criterion } from "../rules/criterion";
import { cite } from "../rules/documents";
import { type Allowance, allowanceOf, comesOutText, type Figure } from "./allowance";
import { judge, judgeArea } from "./compare";
import { finding, type Finding } from "./finding";
import type { CheckResult } from "./in-force";
import { capital } from "../words";

/** Why a figure is not judged, and what to do, where no rule set in force has a limit for it. */
export const NO_LIMIT = "the rules in force hold no limit for it";
export const CHOOSE_BASIS = "choose a basis that has one";
/** Every criterion in force against one figure. */
export function against(check: Check, figure: Figure, criteria: readonly Criterion[]): CheckResult {
  const notes: string[] = [];
  const findings: Finding[] = [];
  for (const criterion of criteria) {
    const allowed = allowanceOf(criterion.limit, figure);
    if ("none" in allowed) {
      if (allowed.passOver) notes.push(capital(allowed.none));
      else
        findings.push(
          finding("not in table", "NO VERDICT", check, {
            because: allowed.none,
            basis: criterion.basis,
            source: cite(criterion.source),
            criterion: criterion.id,
            measured: figure.measured,
          }),
        );
      continue;
    }
    findings.push(meet(check, figure, criterion, allowed));
  }
  if (findings.length === 0) {
    // Nothing used is inside any limit; something used without a limit settles nothing.
    const why = notes.length > 0 ? notes.join("; ") : NO_LIMIT;
    const used = judge(figure.used, ZERO, "above").beyond;
    const { measured, original } = figure;
    return {
      findings: [
        used
          ? finding("no limit", "NO VERDICT", check, { because: why, type: CHOOSE_BASIS, measured, original })
          : finding("no change", "KEEP", check, { because: why, measured, original }),
      ],
      notes,
    };
  }
  return { findings, notes };
}
export function meet(check: Check, figure: Figure, criterion: Criterion, allowed: Allowance): Finding {
  const met =
    allowed.area === undefined || figure.base === null
      ? judge(figure.used, allowed.allowance, allowed.word, figure.blur)
      : judgeArea(figure.base, figure.used, allowed.area, allowed.word, figure.blur);
  const comesOut = comesOutText(figure, allowed);
  const source = cite(criterion.source);
  const from = figure.from ?? (figure.original === null ? null : `as new ${figure.original}`);
  const watched = met.nearly && (criterion.beyond === "REMOVE" || criterion.beyond === "EXAMINE") && criterion.inside === undefined;
  const decision: Decision = met.uncertain
    ? criterion.beyond === "WATCH"
      ? "WATCH"
      : "EXAMINE"
    : met.beyond
      ? criterion.beyond
      : watched
        ? "WATCH"
        : (criterion.inside ?? "KEEP");
  const settledBy = met.settledBy === null || figure.unit === null ? null : showFloor(met.settledBy, figure.unit);
  const gauge = met.uncertain && decision === "EXAMINE";
  return {
    why: gauge ? "gauge" : "limit",
    check: check.name,
    label: labelOf(check),
    part: check.part,
    ...(figure.direction && { direction: figure.direction }),
    criterion: criterion.id,
    decision,
    measured: figure.measured,
    original: figure.original,
    ...(from === null ? {} : { countsFrom: from }),
    beyond: criterion.beyond,
    ...(criterion.beyond === "WATCH" && decision === "WATCH" && met.beyond && { watched: true }),
    ...(gauge && { gauge: { reads: figure.gauge, settledBy } }),
    limit: allowed.rule,
    allows: toNumber(allowed.allowance),
    share: met.share,
    comesOut,
    basis: criterion.basis,
    source,
    overload: check.overload === true && (met.beyond || met.past),
  };
}
/** What was measured: "saddle section" for wear at the saddle, else the check's own name. */
export function labelOf(check: Check): string {
  return check.kind === "loss" ? `${check.part} section` : check.name;
}

/** Every criterion in force against one figure. */
import type { Decision } from "../decision";
import type { Check } from "../gear/kind";
import { ZERO } from "../numbers/exact";
import { showFloor } from "../numbers/lengths";
import type { Criterion } from "../rules/criterion";
import { cite } from "../rules/documents";
import { type Allowance, allowanceOf, comesOutText, type Figure } from "./allowance";
import { judge, judgeArea } from "./compare";
import type { Finding } from "./finding";
import type { CheckResult } from "./in-force";
import { plain } from "./read-sizes";
import { tell, tellUncertain, tellWatched, type Told } from "./sentences";
import { capital } from "../words";

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
          plain(check, "NO VERDICT", `${capital(check.name)}: ${allowed.none} [${criterion.basis}: ${cite(criterion.source)}].`, {
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
    const why = notes.length > 0 ? notes.join("; ") : "the rules in force hold no limit for it";
    const used = judge(figure.used, ZERO, "above").beyond;
    const sentence = used
      ? `${capital(check.name)} ${figure.measured} cannot be judged: ${why}; choose a basis that has one.`
      : `${capital(check.name)} ${figure.measured} shows no change; ${why}.`;
    return {
      findings: [plain(check, used ? "NO VERDICT" : "KEEP", sentence, { measured: figure.measured, original: figure.original })],
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
  const told: Told = {
    label: labelOf(check),
    measured: figure.measured,
    from,
    comesOut,
    rule: allowed.rule,
    share: met.share,
    source,
    basis: criterion.basis,
    beyond: criterion.beyond,
  };
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
  const look = criterion.beyond === "WATCH" && decision === "WATCH" && met.beyond;
  const sentence =
    met.uncertain && decision === "EXAMINE"
      ? tellUncertain(told, figure.gauge, settledBy)
      : look
        ? tellWatched(told)
        : tell(decision, told);
  return {
    check: check.name,
    part: check.part,
    criterion: criterion.id,
    decision,
    measured: figure.measured,
    original: figure.original,
    ...(from === null ? {} : { countsFrom: from }),
    beyond: criterion.beyond,
    limit: allowed.rule,
    share: met.share,
    comesOut,
    basis: criterion.basis,
    source,
    sentence,
    overload: check.overload === true && (met.beyond || met.past),
  };
}
/** What was measured: "saddle section" for wear at the saddle, else the check's own name. */
export function labelOf(check: Check): string {
  return check.kind === "loss" ? `${check.part} section` : check.name;
}

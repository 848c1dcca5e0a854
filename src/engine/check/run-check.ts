/** One check of one item: readings from cells, every criterion in force, one finding for each. */
import { outOfUse, worstOf } from "../decision";
import type { Check } from "../gear/kind";
import type { Cells } from "../log/cells";
import { readText } from "../reading/text";
import { finding } from "./finding";
import { asVariant, type CheckResult, dependsOnVariant, inUse, isFor, NOTHING, type Situation } from "./in-force";
import { enough, ratio } from "./kinds/against-size";
import { growth } from "./kinds/growth";
import { least } from "./kinds/least-thickness";
import { loss } from "./kinds/loss";
import { makersFigure } from "./kinds/makers-figure";
import { nick } from "./kinds/nick";
import { seenCheck } from "./kinds/observation";
import { category } from "./kinds/rope-category";
import { single } from "./kinds/single-figure";
import { columnOf } from "./read-sizes";
import { capital } from "../words";

/** Every finding of one check, and what else should be said. */
export function evaluate(check: Check, cells: Cells, situation: Situation): CheckResult {
  const { kind, variant } = situation;
  const open = variant === null && kind.variants !== undefined && kind.variants.blank === undefined && dependsOnVariant(kind, check.name);
  return open ? underEveryVariant(check, cells, situation, kind.variants) : evaluateAs(check, cells, situation);
}
/** Where the variant is not recorded, a decision stands only when it is the same for all of them. */
function underEveryVariant(
  check: Check,
  cells: Cells,
  situation: Situation,
  { names, field: column }: NonNullable<Situation["kind"]["variants"]>,
): CheckResult {
  const results = Object.keys(names)
    .map((variant) => ({ variant, result: evaluateAs(check, cells, asVariant(situation, variant)) }))
    .filter(({ result }) => result.findings.length > 0)
    .map((r) => ({ ...r, decision: worstOf(r.result.findings.map((f) => f.decision)) }));
  const worst = worstOf(results.map((r) => r.decision));
  const agreed = results.every((r) => r.decision === worst || (!outOfUse(worst) && !outOfUse(r.decision)));
  const strictest = results.find((r) => r.decision === worst);
  if (strictest === undefined) return NOTHING;
  if (agreed) return strictest.result;
  const measured = strictest.result.findings[0]?.measured ?? null;
  const each = results.map((r) => `${r.decision} as ${r.variant}`).join(", ");
  return {
    findings: [finding("variant", "NO VERDICT", check, { ...columnOf(cells, column), because: each, measured })],
    notes: [],
    ...(strictest.result.twoWays === true && { twoWays: true }),
  };
}
/** A least number that no source gives for this variant is not judged, and that is said. */
function notFor(check: Check, cells: Cells, variant: string): CheckResult {
  const text = readText(cells.value(check.measured));
  return check.kind !== "enough" || text === ""
    ? NOTHING
    : { findings: [], notes: [`${capital(check.name)} "${text}" was not judged: no published figure for ${variant} was read`] };
}
function evaluateAs(check: Check, cells: Cells, situation: Situation): CheckResult {
  if (!inUse(check, situation.bases)) return NOTHING;
  if (situation.variant !== null && !isFor(check, situation.variant)) return notFor(check, cells, situation.variant);
  switch (check.kind) {
    case "loss":
      return loss(check, cells, situation);
    case "growth":
      return growth(check, cells, situation);
    case "least":
      return least(check, cells, situation);
    case "gap":
    case "angle":
    case "count":
      return single(check, cells, situation);
    case "maker":
      return makersFigure(check, cells, situation);
    case "nick":
      return nick(check, cells, situation);
    case "ratio":
      return ratio(check, cells, situation);
    case "category":
      return category(check, cells, situation);
    case "enough":
      return enough(check, cells, situation);
    case "seen":
      return seenCheck(check, cells, situation);
  }
}

/** A reading that the maker's own figure limits, recorded beside it. */
import type { Check } from "../../gear/kind";
import type { Cells } from "../../log/cells";
import { ZERO } from "../../numbers/exact";
import { showLength } from "../../numbers/lengths";
import type { Figure } from "../allowance";
import { finding } from "../finding";
import { type CheckResult, criteriaFor, NOTHING, type Situation } from "../in-force";
import { CHOOSE_BASIS, meet, NO_LIMIT } from "../meet-limits";
import { blurOf, inUnit, length, lengthShow, typed, unread } from "../read-sizes";

/** Both are asked for where the check is required: no figure of another maker, and none of a table, stands in. */
export function makersFigure(check: Check & { kind: "maker" }, cells: Cells, situation: Situation): CheckResult {
  const measured = length(cells, check.measured, true);
  const figure = length(cells, check.figure);
  if (!check.required && [measured, figure].some((read) => read.kind === "missing") && figure.kind !== "refused") return NOTHING;
  if (measured.kind !== "value" || figure.kind !== "value")
    return { findings: [...unread(check, cells, check.measured, measured), ...unread(check, cells, check.figure, figure)], notes: [] };
  const { unit } = measured.value;
  const most = inUnit(figure.value, unit);
  const has = measured.value.size;
  const met: Figure = {
    used: check.comesOut === "larger" ? has.sub(most) : most.sub(has),
    base: most,
    comesOut: check.comesOut,
    unit,
    show: lengthShow(unit),
    measured: { typed: typed(measured) },
    original: null,
    ...blurOf(situation, unit, 1),
  };
  const criteria = criteriaFor(check, situation, "high", false);
  if (criteria.length === 0)
    return {
      findings: [finding("no limit", "NO VERDICT", check, { because: NO_LIMIT, type: CHOOSE_BASIS, measured: met.measured.typed })],
      notes: [],
    };
  const rule = `the maker's ${showLength(most, unit)}`;
  return { findings: criteria.map((c) => meet(check, met, c, { allowance: ZERO, word: "above", rule })), notes: [] };
}

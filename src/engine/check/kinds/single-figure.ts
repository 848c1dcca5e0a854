/** A clearance, an angle or a count. */
import type { Check } from "../../gear/kind";
import type { Cells } from "../../log/cells";
import { type Exact, ZERO } from "../../numbers/exact";
import { showDecimal, showLength } from "../../numbers/lengths";
import type { Length } from "../../reading/length";
import { readCount, readDegrees } from "../../reading/number";
import { readText } from "../../reading/text";
import type { Figure } from "../allowance";
import { type CheckResult, criteriaFor, NOTHING, type Situation } from "../in-force";
import { meetCriteria } from "../meet-limits";
import { blurOf, length, lengthShow, missingFinding, refusedFinding } from "../read-sizes";

export function single(check: Check & { kind: "gap" | "angle" | "count" }, cells: Cells, situation: Situation): CheckResult {
  const read =
    check.kind === "gap"
      ? length(cells, check.measured, true)
      : check.kind === "angle"
        ? readDegrees(cells.value(check.measured))
        : readCount(cells.value(check.measured));
  if (read.kind === "refused") return { findings: [refusedFinding(check, cells, check.measured, read)], notes: [] };
  if (read.kind === "missing") return check.required ? { findings: [missingFinding(check, cells, check.measured)], notes: [] } : NOTHING;
  const figure = singleFigure(check.kind, read, situation);
  const criteria = criteriaFor(check, situation, "high", false);
  const named = check.kind === "gap" && check.makers !== undefined && readText(cells.value(check.makers)) !== "";
  return meetCriteria(check, figure, named ? criteria.filter((c) => c.yields !== true) : criteria);
}
function singleFigure(
  kind: "gap" | "angle" | "count",
  read: { readonly value: Length | Exact; readonly text: string },
  situation: Situation,
): Figure {
  const common = { base: null, comesOut: "larger", original: null } as const;
  if (kind === "gap") {
    const { size, unit } = read.value as Length;
    return {
      ...common,
      used: size,
      unit,
      show: lengthShow(unit),
      measured: { typed: showLength(size, unit) },
      ...blurOf(situation, unit, 1),
    };
  }
  const used = read.value as Exact;
  const show = (value: Exact): string => (kind === "angle" ? `${showDecimal(value, 2)} degrees` : showDecimal(value, 0));
  return { ...common, used, unit: null, show, measured: { typed: show(used) }, blur: ZERO, gauge: "" };
}

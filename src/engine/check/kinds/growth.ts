/** Growth of an opening. */
import type { Check } from "../../gear/kind";
import type { Cells } from "../../log/cells";
import type { Figure } from "../allowance";
import { type CheckResult, criteriaFor, NOTHING, type Situation } from "../in-force";
import { against } from "../meet-limits";
import { blurOf, changeOf, lengthShow, readPair } from "../read-sizes";

export function growth(check: Check & { kind: "growth" }, cells: Cells, situation: Situation): CheckResult {
  const pair = readPair(check, cells, check.original, check.measured, check.required);
  if (pair === null) return NOTHING;
  if ("inTheWay" in pair) return { findings: pair.inTheWay, notes: [] };
  const change = changeOf(check, cells, pair.original, pair.measured, pair.texts, "growth", check.measured);
  if (!("used" in change)) return { findings: [change], notes: [...pair.notes] };
  const { used, unit, base, note } = change;
  // Readings in two units leave the cap to the unit of the row; without one the smaller cap counts, which is in mm.
  const capUnit = pair.measured.unit === unit ? unit : (cells.unit(check.measured) ?? "mm");
  const figure: Figure = {
    capUnit,
    used,
    base,
    comesOut: "larger",
    unit,
    show: lengthShow(unit),
    measured: pair.texts[1],
    original: pair.texts[0],
    ...blurOf(situation, unit, 2),
  };
  const result = against(check, figure, criteriaFor(check, situation, "high", false));
  return { findings: result.findings, notes: [...result.notes, ...pair.notes, ...(note === null ? [] : [note])] };
}

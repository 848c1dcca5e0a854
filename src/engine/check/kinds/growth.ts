/** Growth of an opening. */
import type { Check } from "../../gear/kind";
import type { Cells } from "../../log/cells";
import type { Figure } from "../allowance";
import type { Finding } from "../finding";
import { type CheckResult, criteriaFor, NOTHING, type Situation } from "../in-force";
import { meetAll } from "../meet-limits";
import { Change, changeOf, isFinding, notesOf, readPair } from "../read-sizes";

type GrowthCheck = Check & { kind: "growth" };
export function growth(check: GrowthCheck, cells: Cells, situation: Situation): CheckResult {
  const pair = readPair(check, cells, check.original, check.measured, check.required);
  if (pair === null) return NOTHING;
  if ("inTheWay" in pair) return { findings: pair.inTheWay, notes: [] };
  const notes: string[] = [];
  notesOf(pair, notes);
  const used = changeOf(check, cells, pair, "growth", check.measured, notes);
  if (isFinding(used)) return { findings: [used], notes };
  // Readings in two units leave the cap to the unit of the row; without one the smaller cap counts, which is in mm.
  const oneUnit = pair.now.unit === pair.was.unit;
  const change = new Change(pair, used, "larger", situation, undefined);
  const figure: Figure = oneUnit ? change : change.capped(cells.unit(check.measured) ?? "mm");
  const findings: Finding[] = [];
  const first: string[] = [];
  meetAll(check, figure, criteriaFor(check, situation, "high", false), findings, first);
  return { findings, notes: first.length === 0 ? notes : [...first, ...notes] };
}

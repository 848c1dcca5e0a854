/** A thickness that must not fall below the least of a published table. */
import { exact, ZERO } from "../exact";
import type { Check } from "../gear/kind";
import { fitOf, judge } from "../judge";
import { tellRefused } from "../sentence";
import { against } from "./against";
import { type Figure, literal } from "./figure";
import { blurOf, capital, type Cells, inUnit, length, lengthShow, plain, readChainSize, typed, unread } from "./readings";
import { type CheckResult, criteriaFor, NOTHING, type Situation } from "./situation";

/** Links may measure somewhat more than their trade size: 3/8 chain is 10 mm. */
const TRADE_SIZE_EXCESS = exact("1.1");

export function least(check: Check & { kind: "least" }, cells: Cells, situation: Situation): CheckResult {
  const size = readChainSize(cells.value(check.size), cells.unit(check.size), cells.times);
  const measured = length(cells, check.measured);
  if (!check.required && measured.kind === "missing" && size.kind !== "refused") return NOTHING;
  if (size.kind !== "value" || measured.kind !== "value")
    return { findings: [...unread(check, cells, check.size, size), ...unread(check, cells, check.measured, measured)], notes: [] };
  const unit = measured.value.unit;
  const nominal = check.asNew === undefined ? inUnit(size.value, unit) : inUnit(size.value, unit).mul(literal(check.asNew));
  const texts = [typed(size), typed(measured)] as const;
  const fit = fitOf(nominal.mul(TRADE_SIZE_EXCESS), measured.value.size, "larger");
  if (fit !== "as it is" && fit !== "noise")
    return { findings: [plain(check, "NO VERDICT", tellRefused(check.name, cells.heading(check.measured), texts[1], `${texts[1]} does not fit size ${texts[0]}; check size and unit`))], notes: [] };
  const used = nominal.sub(measured.value.size);
  const figure: Figure = {
    used: judge(used, ZERO, "above").beyond ? used : ZERO, base: nominal, comesOut: "smaller", unit, show: lengthShow(unit),
    measured: texts[1], original: `${texts[0]} nominal`, size: size.value, ...blurOf(situation, unit, 1),
  };
  const result = against(check, figure, criteriaFor(check, situation, "moderate", false));
  const unjudged = result.findings.every((f) => f.criterion === null);
  return unjudged
    ? { findings: [plain(check, "NO VERDICT", `${capital(check.name)} ${texts[1]} cannot be judged: ${result.notes[0] ?? "the rules in force hold no limit for it"}.`)], notes: result.notes }
    : { findings: result.findings, notes: [...result.notes, ...(measured.note === undefined ? [] : [measured.note])] };
}

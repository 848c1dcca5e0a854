/** Wear of a section, in one or two directions. */
import type { FieldId } from "../../columns";
import type { Check } from "../../gear/kind";
import type { Cells } from "../../log/cells";
import { matchPart } from "../../names/gear-name";
import { type Exact, ZERO } from "../../numbers/exact";
import { showDecimal } from "../../numbers/lengths";
import type { StressClass } from "../../rules/criterion";
import type { Figure } from "../allowance";
import { judge } from "../compare";
import type { Finding } from "../finding";
import { type CheckResult, criteriaFor, type Situation } from "../in-force";
import { against } from "../meet-limits";
import { across, blurOf, changeOf, type InTheWay, length, lengthShow, type Pair, readPair, withoutUnit } from "../read-sizes";
import { capital } from "../../words";

type LossCheck = Check & { kind: "loss" };
interface Sections {
  readonly at: Check;
  readonly stress: StressClass;
  readonly figures: readonly Figure[];
  /** Worn in both directions, each of which then has the smaller allowance. */
  readonly twoWays: boolean;
  readonly findings: readonly Finding[];
  readonly notes: readonly string[];
}
/** Whether both directions were read and both are worn. */
export const wornTwoWays = (check: LossCheck, cells: Cells, situation: Situation): boolean =>
  check.acrossMeasured !== undefined && sections(check, cells, situation).twoWays;
export function loss(check: LossCheck, cells: Cells, situation: Situation): CheckResult {
  const { at, stress, figures, twoWays, findings, notes } = sections(check, cells, situation);
  const results = figures.map((figure) => against(at, figure, criteriaFor(at, situation, stress, twoWays)));
  return { findings: [...findings, ...results.flatMap((r) => r.findings)], notes: [...notes, ...results.flatMap((r) => r.notes)] };
}
/** The loss of each direction that was read. */
function sections(given: LossCheck, asGiven: Cells, situation: Situation): Sections {
  const own = given.ownOriginal;
  const check = own === undefined || length(asGiven, own).kind === "missing" ? given : { ...given, original: own };
  const { acrossOriginal, acrossMeasured } = check;
  const ids = [check.original, check.measured, ...(acrossOriginal && acrossMeasured ? [acrossOriginal, acrossMeasured] : [])];
  const { cells, free } = withoutUnit(asGiven, ids, situation);
  const named = cells.part === undefined || check.original !== "sectionNew" ? null : matchPart(situation.kind, cells.part);
  const part = named ?? { part: check.part, stress: situation.kind.parts[check.part] ?? "high" };
  const at: Check = { ...check, part: part.part };
  const pairs: { readonly read: Pair | InTheWay | null; readonly measured: FieldId; readonly direction?: "across" }[] = [
    { read: readPair(at, cells, check.original, check.measured, check.required), measured: check.measured },
  ];
  // Wear both ways halves the allowance, so one size of the second direction without the other cannot be passed over.
  if (acrossOriginal && acrossMeasured && [acrossOriginal, acrossMeasured].some((id) => length(cells, id).kind !== "missing"))
    pairs.push({ read: readPair(across(at), cells, acrossOriginal, acrossMeasured, true), measured: acrossMeasured, direction: "across" });

  const findings: Finding[] = [];
  const notes: string[] = [];
  const figures: Figure[] = [];
  for (const { read, measured, direction } of pairs) {
    if (read === null) continue;
    if ("inTheWay" in read) {
      findings.push(...(direction ? read.inTheWay.map((f) => ({ ...f, direction })) : read.inTheWay));
      continue;
    }
    const change = changeOf(at, cells, read.original, read.measured, read.texts, "loss", measured);
    if (!("used" in change)) {
      findings.push(direction ? { ...change, direction } : change);
      continue;
    }
    const { used, unit, base, note } = change;
    notes.push(...read.notes, ...(note === null ? [] : [note]));
    const show = free ? (value: Exact): string => showDecimal(value, 4) : lengthShow(unit);
    const [original, now] = free ? [show(read.original.size), show(read.measured.size)] : read.texts;
    figures.push({
      used,
      base,
      comesOut: "smaller",
      unit: free ? null : unit,
      show,
      measured: now,
      original,
      ...(direction && { direction }),
      ...blurOf(situation, unit, 2),
    });
  }
  if (free && figures.length > 0) notes.push(`${capital(check.name)}: no unit is recorded, so the sizes were taken to be in the same one`);
  const worn = figures.filter((figure) => judge(figure.used, ZERO, "above").beyond).length;
  return { at, stress: part.stress, figures, twoWays: worn > 1, findings, notes };
}

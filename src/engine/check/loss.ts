/** Wear of a section, in one or two directions. */
import { type Exact, ZERO } from "../exact";
import type { FieldId } from "../fields";
import type { Check } from "../gear/kind";
import { matchPart } from "../gear/match";
import { judge } from "../judge";
import type { Finding } from "../model";
import { showDecimal } from "../units";
import { against } from "./against";
import type { Figure } from "./figure";
import { across, blurOf, capital, type Cells, changeOf, type InTheWay, length, lengthShow, type Pair, readPair, withoutUnit } from "./readings";
import { type CheckResult, criteriaFor, type Situation } from "./situation";

export function loss(check: Check & { kind: "loss" }, asGiven: Cells, situation: Situation): CheckResult {
  const { acrossOriginal, acrossMeasured } = check;
  const ids = [check.original, check.measured, ...(acrossOriginal && acrossMeasured ? [acrossOriginal, acrossMeasured] : [])];
  const { cells, free } = withoutUnit(asGiven, ids, situation);
  const named = cells.part === undefined || check.original !== "sectionNew" ? null : matchPart(situation.kind, cells.part);
  const part = named ?? { part: check.part, stress: situation.kind.parts[check.part] ?? "high" };
  const at: Check = { ...check, part: part.part };
  const pairs: { readonly read: Pair | InTheWay | null; readonly measured: FieldId }[] = [{ read: readPair(at, cells, check.original, check.measured, check.required), measured: check.measured }];
  // Wear both ways halves the allowance, so one size of the second direction without the other cannot be passed over.
  if (acrossOriginal && acrossMeasured && [acrossOriginal, acrossMeasured].some((id) => length(cells, id).kind !== "missing"))
    pairs.push({ read: readPair(across(at), cells, acrossOriginal, acrossMeasured, true), measured: acrossMeasured });

  const findings: Finding[] = [];
  const notes: string[] = [];
  const figures: Figure[] = [];
  for (const { read, measured } of pairs) {
    if (read === null) continue;
    if ("inTheWay" in read) {
      findings.push(...read.inTheWay);
      continue;
    }
    const change = changeOf(at, cells, read.original, read.measured, read.texts, "loss", measured);
    if (!("used" in change)) {
      findings.push(change);
      continue;
    }
    const { used, unit, base, note } = change;
    notes.push(...read.notes, ...(note === null ? [] : [note]));
    const show = free ? (value: Exact): string => showDecimal(value, 4) : lengthShow(unit);
    const [original, now] = free ? [show(read.original.size), show(read.measured.size)] : read.texts;
    figures.push({ used, base, comesOut: "smaller", unit: free ? null : unit, show, measured: now, original, ...blurOf(situation, unit, 2) });
  }
  if (free && figures.length > 0) notes.push(`${capital(check.name)}: no unit is recorded, so the sizes were taken to be in the same one`);
  const worn = figures.filter((figure) => judge(figure.used, ZERO, "above").beyond).length;
  for (const figure of figures) {
    const result = against(at, figure, criteriaFor(check, situation, part.stress, worn > 1));
    findings.push(...result.findings);
    notes.push(...result.notes);
  }
  return { findings, notes };
}

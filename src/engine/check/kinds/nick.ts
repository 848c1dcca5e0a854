/** Nicks and gouges: what grinding them out would leave. */
import type { FieldId } from "../../columns";
import type { Check, GearKind } from "../../gear/kind";
import type { Cells } from "../../log/cells";
import { matchPart } from "../../names/gear-name";
import { type Exact, lesser, ZERO } from "../../numbers/exact";
import { showLength } from "../../numbers/lengths";
import type { Length } from "../../reading/length";
import { readSeen } from "../../reading/observation";
import { Size } from "../../reading/size";
import { recordedText } from "../../reading/text";
import type { Criterion, StressClass } from "../../rules/criterion";
import { type Figure, literal } from "../allowance";
import { judge } from "../compare";
import { finding } from "../finding";
import { type CheckResult, criteriaFor, NOTHING, type Situation } from "../in-force";
import { meetCriteria } from "../meet-limits";
import { blurOf, changeOf, inUnit, isFinding, length, lengthShow, missingFinding, readPair, refusedFinding, typed } from "../read-sizes";

/** The wear check of a part, else the one whose limits hold at parts without their own. A hook's load pin is told at its body and is no measure of the body. */
export function lossAt(kind: GearKind, part: string | null): (Check & { kind: "loss" }) | undefined {
  const losses = kind.checks.filter((c): c is Check & { kind: "loss" } => c.kind === "loss");
  return losses.find((c) => part !== null && measures(c, part)) ?? losses.find((c) => c.general === true);
}
const measures = (check: Check & { kind: "loss" }, part: string): boolean =>
  check.part === part && (check.original !== "pinNew" || part === "pin");
/** The columns that hold the section at a nick: its own, else those of the part; null where that part is not measured. */
function sectionAt(
  check: Check & { kind: "nick" },
  kind: GearKind,
  part: string | null,
  cells: Cells,
): { readonly part: string; readonly original: FieldId; readonly measured: FieldId } | "not measured" | null {
  const sized = lossAt(kind, part);
  if (sized === undefined) return null;
  if ([check.sectionNew, check.sectionNow].some((id) => recordedText(cells.value(id)) !== ""))
    return { part: part ?? sized.part, original: check.sectionNew, measured: check.sectionNow };
  if (part !== null && !measures(sized, part)) return "not measured";
  return { part: part ?? sized.part, original: sized.original, measured: sized.measured };
}
/** What is ground away is gone like wear: a house limit of wear holds for it as well. */
function houseWear(situation: Situation, part: string, stress: StressClass): readonly Criterion[] {
  const wear = lossAt(situation.kind, part);
  return wear === undefined
    ? []
    : criteriaFor(wear, situation, stress, false)
        .filter((c) => c.basis === "house")
        .map((c) => ({ ...c, inside: "DRESS" }));
}
/** Whether a place is named for a nick: any words but those that say that there is none. */
function placeNamed(check: Check & { kind: "nick" }, cells: Cells): boolean {
  const text = recordedText(cells.value(check.at));
  const none = readSeen(text, "fault");
  return text !== "" && !(none.kind === "missing" || (none.kind === "value" && none.value === "sound"));
}
/** Whether the section at the nick is recorded, and nothing shows that it is as new. */
function thinnerThere(check: Check & { kind: "nick" }, cells: Cells): boolean {
  const was = length(cells, check.sectionNew);
  const is = length(cells, check.sectionNow);
  if (is.kind === "missing") return was.kind === "refused";
  return was.kind !== "value" || is.kind !== "value" || judge(was.value.size.sub(inUnit(is.value, was.value.unit)), ZERO, "above").beyond;
}
/** A nick is ground out to its depth: what is left must stay inside the grinding allowance of its part. */
export function nick(check: Check & { kind: "nick" }, cells: Cells, situation: Situation): CheckResult {
  const depth = length(cells, check.measured, true);
  if (depth.kind === "refused") return { findings: [refusedFinding(check, cells, check.measured, depth)], notes: [] };
  const thinner = thinnerThere(check, cells);
  if (depth.kind === "missing")
    return thinner || placeNamed(check, cells) ? { findings: [missingFinding(check, cells, check.measured)], notes: [] } : NOTHING;
  const gone = !judge(depth.value.size, ZERO, "above").beyond;
  if (gone && !thinner) return { findings: [finding("seen", "KEEP", check, { label: "nicks", measured: depth.text })], notes: [] };
  const text = recordedText(cells.value(check.at));
  const part = text === "" ? null : matchPart(situation.kind, text);
  if (text !== "" && part === null)
    return {
      findings: [
        refusedFinding(check, cells, check.at, {
          text,
          why: `it is no part of a ${situation.kind.id}; the parts are ${Object.keys(situation.kind.parts).join(", ")}`,
        }),
      ],
      notes: [],
    };
  const stress = part?.stress ?? "high";
  const section = sectionAt(check, situation.kind, part?.part ?? null, cells);
  if (section === null) return nickWithoutSection(check, depth);
  if (section === "not measured")
    return {
      findings: [
        finding("no section", "EXAMINE", check, {
          measured: depth.text,
          because: `Nick ${typed(depth)} deep at the ${part?.part ?? ""}: the section there is not recorded, so what grinding would leave cannot be told`,
          type: `fill "${cells.heading(check.sectionNew)}" and "${cells.heading(check.sectionNow)}"`,
        }),
      ],
      notes: [],
    };
  const pair = readPair({ ...check, part: section.part }, cells, section.original, section.measured, true);
  if (pair === null) return NOTHING;
  if ("inTheWay" in pair) return { findings: pair.inTheWay, notes: [] };
  const { unit, size: base } = pair.was;
  const worn = changeOf(check, cells, pair, "loss", section.measured, []);
  if (isFinding(worn)) return { findings: [worn], notes: [] };
  const used = worn.add(inUnit(depth.value, unit));
  const left = base.sub(used);
  const leaves = judge(left, ZERO, "above").beyond ? showLength(left, unit) : "nothing";
  const figure: Figure = {
    used,
    base,
    comesOut: "smaller",
    unit,
    show: lengthShow(unit),
    measured: {
      typed: `${typed(depth)} deep at the ${section.part}, which leaves ${leaves}`,
      brief: `${new Size(depth).brief} leaves ${leaves}`,
    },
    original: pair.original,
    ...blurOf(situation, unit, 2),
  };
  const criteria = [...criteriaFor(check, situation, stress, false), ...houseWear(situation, section.part, stress)];
  // What has been ground out already needs no grinding.
  const result = meetCriteria(
    { ...check, part: section.part },
    figure,
    gone ? criteria.map((c) => ({ ...c, inside: "KEEP" as const })) : criteria,
  );
  const unjudged = result.findings.every((f) => f.criterion === null);
  const note = part === null ? ["Nick: its place is not named, so the allowance of a highly stressed part was used"] : [];
  return unjudged
    ? { ...nickWithoutSection(check, depth), notes: result.notes }
    : { findings: result.findings, notes: [...result.notes, ...note] };
}
const nickWithoutSection = (check: Check, depth: { readonly text: string }): CheckResult => ({
  findings: [finding("no rule", "EXAMINE", check, { measured: depth.text })],
  notes: [],
});
/** Depth that may still be ground off: the least that the criteria in force leave, or null when none sets an allowance. */
export function dressLeft(original: Length, measured: Length, situation: Situation, stress: StressClass): Exact | null {
  const check = situation.kind.checks.find((c) => c.kind === "nick");
  if (check === undefined) return null;
  const lost = original.size.sub(inUnit(measured, original.unit));
  const gone = judge(lost, ZERO, "above").beyond ? lost : ZERO;
  let left: Exact | null = null;
  for (const { limit } of criteriaFor(check, situation, stress, false)) {
    if (!("share" in limit)) continue;
    const here = original.size.mul(literal(limit.share)).sub(gone);
    const depth = judge(here, ZERO, "above").beyond ? here : ZERO;
    left = left === null ? depth : lesser(left, depth);
  }
  return left;
}

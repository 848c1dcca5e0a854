/** Wear of a section, in one or two directions. */
import type { FieldId } from "../../columns";
import { fieldsOf } from "../../gear/columns-of";
import type { Check } from "../../gear/kind";
import type { Cells } from "../../log/cells";
import { matchPart } from "../../names/gear-name";
import { ZERO } from "../../numbers/exact";
import { showDecimal } from "../../numbers/lengths";
import type { Length } from "../../reading/length";
import { capital } from "../../words";
import type { Figure } from "../allowance";
import { judge } from "../compare";
import { type Finding, withFacts } from "../finding";
import { type CheckResult, criteriaFor, type Situation } from "../in-force";
import { meetAll } from "../meet-limits";
import { across, Change, changeOf, isFinding, length, notesOf, type Pair, readPair, withoutUnit } from "../read-sizes";

type LossCheck = Check & { kind: "loss" };
export function loss(given: LossCheck, asGiven: Cells, situation: Situation): CheckResult {
  const own = given.ownOriginal;
  const check = own === undefined || length(asGiven, own).kind === "missing" ? given : { ...given, original: own };
  const { acrossOriginal, acrossMeasured } = check;
  const both = acrossOriginal !== undefined && acrossMeasured !== undefined;
  const free = hasUnit(asGiven, check.original) ? null : withoutUnit(asGiven, fieldsOf(check), situation);
  const cells = free ?? asGiven;
  const named = cells.part === undefined || check.original !== "sectionNew" ? null : matchPart(situation.kind, cells.part);
  const at: LossCheck = named === null ? check : { ...check, part: named.part };
  const into: Into = { at, cells, situation, free: free !== null, findings: [], notes: [] };
  const first = readSection(into, check.original, check.measured);
  // Wear both ways halves the allowance, so one size of the second direction without the other cannot be passed over.
  const second =
    both && (isThere(cells, acrossOriginal) || isThere(cells, acrossMeasured))
      ? readSection(into, acrossOriginal, acrossMeasured, "across")
      : null;
  const { findings, notes } = into;
  if (free !== null && (first ?? second) !== null)
    notes.push(`${capital(check.name)}: no unit is recorded, so the sizes were taken to be in the same one`);
  const twoWays = first !== null && second !== null && isWorn(first) && isWorn(second);
  const stress = named?.stress ?? situation.kind.parts[check.part] ?? "high";
  const criteria = criteriaFor(at, situation, stress, twoWays);
  if (first !== null) meetAll(at, first, criteria, findings, notes);
  if (second !== null) meetAll(at, second, criteria, findings, notes);
  return { findings, notes, twoWays };
}
/** A unit is told for a size that is there. */
const hasUnit = (cells: Cells, id: FieldId): boolean => cells.unit(id) !== null && isThere(cells, id);
const isThere = (cells: Cells, id: FieldId): boolean => length(cells, id).kind !== "missing";
const isWorn = (figure: Figure): boolean => judge(figure.used, ZERO, "above").beyond;
interface Into {
  readonly at: LossCheck;
  readonly cells: Cells;
  readonly situation: Situation;
  readonly free: boolean;
  readonly findings: Finding[];
  readonly notes: string[];
}
/** The loss in one direction; null where it cannot be told, which is then a finding. */
function readSection(into: Into, originalId: FieldId, measuredId: FieldId, direction?: "across"): Figure | null {
  const { at, cells, situation, free, findings, notes } = into;
  const pair = direction
    ? readPair(across(at), cells, originalId, measuredId, true)
    : readPair(at, cells, originalId, measuredId, at.required);
  if (pair === null) return null;
  if ("inTheWay" in pair) {
    for (const found of pair.inTheWay) findings.push(inDirection(found, direction));
    return null;
  }
  const before = notes.length;
  notesOf(pair, notes);
  const used = changeOf(at, cells, pair, "loss", measuredId, notes);
  if (isFinding(used)) {
    notes.length = before;
    findings.push(inDirection(used, direction));
    return null;
  }
  return free ? new BareChange(pair, used, direction) : new Change(pair, used, "smaller", situation, direction);
}
const inDirection = (found: Finding, direction: "across" | undefined): Finding =>
  direction === undefined ? found : withFacts(found, { direction });
const bare = (value: Length["size"]): string => showDecimal(value, 4);
/** Sizes of which no unit is told: they are in the same one. */
class BareChange implements Figure {
  readonly used: Figure["used"];
  readonly base: Length["size"];
  readonly comesOut = "smaller";
  readonly unit = null;
  readonly show = bare;
  readonly measured: Figure["measured"];
  readonly original: Figure["measured"];
  readonly direction: "across" | undefined;
  readonly blur = ZERO;
  readonly gauge = "";
  constructor({ was, now }: Pair, used: Figure["used"], direction: "across" | undefined) {
    this.used = used;
    this.base = was.size;
    this.measured = { typed: bare(now.size) };
    this.original = { typed: bare(was.size) };
    this.direction = direction;
  }
}

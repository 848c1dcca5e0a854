/** Where a part comes out, as a size or in words. */
import type { Check } from "../gear/kind";
import type { Cells } from "../log/cells";
import { matchPart } from "../names/gear-name";
import { exact, type Exact, ZERO } from "../numbers/exact";
import { convert, showDecimal, showLength, type Unit } from "../numbers/lengths";
import { readChainSize } from "../reading/chain-size";
import type { Length } from "../reading/length";
import type { Criterion, StressClass } from "../rules/criterion";
import { allowanceOf, comesOutAt, type Figure, literal } from "./allowance";
import { criteriaFor, inUse, isFor, type Situation } from "./in-force";
import { newLinkWords, newSize } from "./kinds/least-thickness";
import { categoryComesOut } from "./kinds/rope-category";
import { labelOf, Limits } from "./meet-limits";
import { length, lengthShow, sizeOf } from "./read-sizes";

/** Where a part of a given as-new size comes out, by every criterion in force that sets a size. */
export interface ComesOut {
  readonly at: Exact;
  readonly criterion: Criterion;
}
export type ComesOutResult =
  | { readonly ok: true; readonly limits: readonly ComesOut[]; readonly passedOver: readonly string[] }
  | { readonly ok: false; readonly why: string };
/**
 * Sizes at which a part comes out, in `unit`: above them for an opening or a clearance, below them for a section.
 * `base` is the as-new size, the nominal chain size, or null where the limit needs none.
 */
export function comesOutOf(
  check: Check,
  base: Length | null,
  unit: Unit,
  situation: Situation,
  stress: StressClass,
  twoWays = false,
): ComesOutResult {
  const figure = asNewFigure(check, base, unit);
  const limits: ComesOut[] = [];
  const passedOver: string[] = [];
  for (const criterion of criteriaFor(check, situation, stress, twoWays)) {
    if (criterion.beyond === "WATCH") continue;
    const allowed = allowanceOf(criterion.limit, figure);
    if ("none" in allowed) {
      if (!allowed.passOver) return { ok: false, why: allowed.none };
      passedOver.push(allowed.none);
    } else limits.push({ at: comesOutAt(figure, allowed), criterion });
  }
  return { ok: true, limits, passedOver };
}
/** A new part: nothing of it is used. */
function asNewFigure(check: Check, base: Length | null, unit: Unit): Figure {
  return {
    used: ZERO,
    base: base === null ? null : check.kind === "least" ? newSize(check, base, unit) : convert(base.size, base.unit, unit),
    comesOut: check.kind === "growth" || check.kind === "gap" ? "larger" : "smaller",
    unit,
    show: lengthShow(unit),
    measured: NOTHING_TOLD,
    original: null,
    blur: ZERO,
    gauge: "",
    ...(check.kind === "least" && base !== null ? { size: base, ...newLinkWords(check, base) } : {}),
  };
}
const NOTHING_TOLD = { typed: "" };
/** Where a check's part comes out, in words, as far as the as-new size is known; null when no limit can be told. */
export function comesOutWords(check: Check, cells: Cells, situation: Situation, twoWays = false): string | null {
  if (check.kind === "seen" || check.kind === "maker" || check.kind === "nick" || check.kind === "ratio" || check.kind === "enough")
    return null;
  if (!inUse(check, situation.bases) || !isFor(check, situation.variant)) return null;
  if (check.kind === "category") return categoryComesOut(check, cells, situation);
  if (check.kind === "angle" || check.kind === "count") return plainComesOut(check, situation);
  if (check.kind !== "loss") return sizeComesOut(check, cells, situation, false);
  const first = sizeComesOut(check, cells, situation, twoWays);
  const { acrossOriginal: original, acrossMeasured: measured } = check;
  const second = original && measured ? sizeComesOut({ ...check, original, measured }, cells, situation, twoWays, " across") : null;
  return first === null || second === null ? (first ?? second) : `${first}; ${second}`;
}
type SizeCheck = Check & { kind: "loss" | "growth" | "least" | "gap" };
function sizeComesOut(check: SizeCheck, cells: Cells, situation: Situation, twoWays: boolean, direction = ""): string | null {
  const named =
    check.kind === "loss" && cells.part !== undefined && (check.original === "sectionNew" || check.original === "acrossNew")
      ? matchPart(situation.kind, cells.part)
      : null;
  const at = named === null ? check : { ...check, part: named.part };
  const stress = named?.stress ?? situation.kind.parts[check.part] ?? "high";
  const wordsFor = (base: Length | null, unit: Unit): string | null => strictestIn(at, base, unit, situation, stress, twoWays, direction);
  if (check.kind === "loss" || check.kind === "growth") {
    const original = sizeOf(cells, check.original);
    if (original.read.kind !== "value") return null;
    const { value } = original.read;
    const criteria = criteriaFor(check, situation, check.kind === "growth" ? "high" : stress, twoWays);
    const limits = original.once(criteria, value.unit, () => new Limits(asNewFigure(at, value, value.unit), criteria));
    return limits.comesOut(() => wordsFor(value, value.unit));
  }
  const base = check.kind === "gap" ? null : readChainSize(cells.value(check.size), cells.unit(check.size), cells.times);
  if (base !== null && base.kind !== "value") return null;
  const measured = length(cells, check.measured, true);
  return wordsFor(
    base?.value ?? null,
    base?.value.unit ?? (measured.kind === "value" ? measured.value.unit : (cells.unit(check.measured) ?? "in")),
  );
}
/** The strictest limit of a size in words: "saddle section below 0.9 in". */
function strictestIn(
  check: SizeCheck,
  base: Length | null,
  unit: Unit,
  situation: Situation,
  stress: StressClass,
  twoWays: boolean,
  direction: string,
): string | null {
  const result = comesOutOf(check, base, unit, situation, stress, twoWays);
  if (!result.ok || result.limits.length === 0) return null;
  const larger = check.kind === "growth" || check.kind === "gap";
  const [strictest] = [...result.limits].sort(
    (a, b) =>
      (larger ? a.at.compare(b.at) : b.at.compare(a.at)) ||
      Number(b.criterion.limit.word === "from") - Number(a.criterion.limit.word === "from"),
  );
  if (strictest === undefined) return null;
  const from = strictest.criterion.limit.word === "from";
  const size = showLength(strictest.at, unit);
  const where = larger ? (from ? `at ${size} or more` : `above ${size}`) : from ? `at ${size} or less` : `below ${size}`;
  return `${labelOf(check)}${direction} ${where}`;
}
function plainComesOut(check: Check, situation: Situation): string | null {
  const limits = criteriaFor(check, situation, "high", false)
    .map(({ limit }) =>
      "degrees" in limit
        ? { at: literal(limit.degrees), word: limit.word, unit: " degrees" }
        : "count" in limit
          ? { at: exact(limit.count), word: limit.word, unit: "" }
          : null,
    )
    .filter((l) => l !== null)
    .sort((a, b) => a.at.compare(b.at) || Number(b.word === "from") - Number(a.word === "from"));
  const [first] = limits;
  if (first === undefined) return null;
  const figure = `${showDecimal(first.at, 2)}${first.unit}`;
  return `${check.name} ${first.word === "from" ? `at ${figure} or more` : `above ${figure}`}`;
}

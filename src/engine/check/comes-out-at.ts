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
import { wornTwoWays } from "./kinds/loss";
import { categoryComesOut } from "./kinds/rope-category";
import { labelOf } from "./meet-limits";
import { length, lengthShow } from "./read-sizes";

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
  const larger = check.kind === "growth" || check.kind === "gap";
  const figure: Figure = {
    used: ZERO,
    base: base === null ? null : check.kind === "least" ? newSize(check, base, unit) : convert(base.size, base.unit, unit),
    comesOut: larger ? "larger" : "smaller",
    unit,
    show: lengthShow(unit),
    measured: "",
    original: null,
    blur: ZERO,
    gauge: "",
    ...(check.kind === "least" && base !== null ? { size: base, ...newLinkWords(check, base) } : {}),
  };
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
/** Where a check's part comes out, in words, as far as the as-new size is known; null when no limit can be told. */
export function comesOutWords(check: Check, cells: Cells, situation: Situation): string | null {
  if (check.kind === "seen" || check.kind === "maker" || check.kind === "nick" || check.kind === "ratio" || check.kind === "enough")
    return null;
  if (!inUse(check, situation.bases) || !isFor(check, situation.variant)) return null;
  if (check.kind === "category") return categoryComesOut(check, cells, situation);
  if (check.kind === "angle" || check.kind === "count") return plainComesOut(check, situation);
  if (check.kind !== "loss") return sizeComesOut(check, cells, situation, false);
  const twoWays = wornTwoWays(check, cells, situation);
  const { acrossOriginal: original, acrossMeasured: measured, ...first } = check;
  const words = [first, ...(original && measured ? [{ ...first, original, measured }] : [])].map((each) =>
    sizeComesOut(each, cells, situation, twoWays),
  );
  return (
    words
      .map((said, i) => (i === 0 ? said : said?.replace(" section ", " section across ")))
      .filter((said) => said != null)
      .join("; ") || null
  );
}
function sizeComesOut(
  check: Check & { kind: "loss" | "growth" | "least" | "gap" },
  cells: Cells,
  situation: Situation,
  twoWays: boolean,
): string | null {
  const named =
    check.kind === "loss" && cells.part !== undefined && (check.original === "sectionNew" || check.original === "acrossNew")
      ? matchPart(situation.kind, cells.part)
      : null;
  const stress = named?.stress ?? situation.kind.parts[check.part] ?? "high";
  const base =
    check.kind === "gap"
      ? null
      : check.kind === "least"
        ? readChainSize(cells.value(check.size), cells.unit(check.size), cells.times)
        : length(cells, check.original);
  if (base !== null && base.kind !== "value") return null;
  const measured = length(cells, check.measured, true);
  const unit = base?.value.unit ?? (measured.kind === "value" ? measured.value.unit : (cells.unit(check.measured) ?? "in"));
  const result = comesOutOf(check, base?.value ?? null, unit, situation, stress, twoWays);
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
  return `${labelOf(named === null ? check : { ...check, part: named.part })} ${larger ? (from ? `at ${size} or more` : `above ${size}`) : from ? `at ${size} or less` : `below ${size}`}`;
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
    .sort((a, b) => a.at.compare(b.at));
  const [first] = limits;
  if (first === undefined) return null;
  const figure = `${showDecimal(first.at, 2)}${first.unit}`;
  return `${check.name} ${first.word === "from" ? `at ${figure} or more` : `above ${figure}`}`;
}

/** A thickness that must not fall below the least of a published table. */
import type { Check } from "../../gear/kind";
import type { Cells } from "../../log/cells";
import { exact, type Exact, larger, ZERO } from "../../numbers/exact";
import { convert, showLength, type Unit } from "../../numbers/lengths";
import { readChainSize } from "../../reading/chain-size";
import type { Length } from "../../reading/length";
import { metricOf } from "../../tables/chain";
import { mostOf } from "../../tables/look-up";
import { type Figure, literal } from "../allowance";
import { fitOf, judge } from "../compare";
import { finding } from "../finding";
import { type CheckResult, criteriaFor, NOTHING, type Situation } from "../in-force";
import { meetCriteria, NO_LIMIT } from "../meet-limits";
import { blurOf, inUnit, length, lengthShow, refusedFinding, typed, unread } from "../read-sizes";

/** A forged or welded link may be somewhat thicker than its nominal size; a groove may be cut up to 10 % over the rope. */
const LINK_EXCESS = exact("1.1");
const GROOVE_EXCESS = exact("1.1");
/**
 * What a new part of a nominal size measures. Chain is told by its trade size: 3/4 in chain is 20 mm thick when new, and
 * its allowance counts from there.
 */
export function newSize(check: Check & { kind: "least" }, size: Length, unit: Unit): Exact {
  const nominal = inUnit(size, unit);
  if (check.asNew !== undefined) return nominal.mul(literal(check.asNew));
  const metric = metricOf(size.size, size.unit);
  return metric === null ? nominal : larger(nominal, convert(metric, "mm", unit));
}
/** The metric size of a new link, where that is thicker than the size as typed. */
function newLink(check: Check & { kind: "least" }, size: Length): string | null {
  const metric = check.asNew === undefined ? metricOf(size.size, size.unit) : null;
  return metric === null || !judge(metric, inUnit(size, "mm"), "above").beyond ? null : showLength(metric, "mm");
}
/** "a new 20 mm link", where that is not the size as typed. */
export function newLinkWords(check: Check & { kind: "least" }, size: Length): { readonly of?: string } {
  const link = newLink(check, size);
  return link === null ? {} : { of: `a new ${link} link` };
}
/** What the allowance counts from: "nominal 0.375 in (3/8), a new link 0.3937 in (10 mm)". */
function countsFrom(check: Check & { kind: "least" }, size: Length, text: string, base: string): string {
  if (check.asNew !== undefined) return check.asNew === "1" ? `nominal ${text}` : `for rope ${text}, a new groove ${base}`;
  const link = newLink(check, size);
  return link === null ? `nominal ${text}` : `nominal ${text}, a new link ${base}${base === link ? "" : ` (${link})`}`;
}
export function least(check: Check & { kind: "least" }, cells: Cells, situation: Situation): CheckResult {
  const size = readChainSize(cells.value(check.size), cells.unit(check.size), cells.times);
  const measured = length(cells, check.measured);
  if (!check.required && measured.kind === "missing" && size.kind !== "refused") return NOTHING;
  if (size.kind !== "value" || measured.kind !== "value")
    return { findings: [...unread(check, cells, check.size, size), ...unread(check, cells, check.measured, measured)], notes: [] };
  const unit = measured.value.unit;
  const nominal = newSize(check, size.value, unit);
  const most =
    check.asNew === "1"
      ? mostOf(size.value.size, size.value.unit, unit)
      : nominal.mul(check.asNew === undefined ? LINK_EXCESS : GROOVE_EXCESS);
  const texts = [typed(size), typed(measured)] as const;
  const fit = fitOf(most, measured.value.size, "larger");
  if (fit !== "as it is" && fit !== "noise")
    return {
      findings: [
        refusedFinding(check, cells, check.measured, {
          text: texts[1],
          why: `${texts[1]} does not fit size ${texts[0]}; check size and unit`,
        }),
      ],
      notes: [],
    };
  const used = nominal.sub(measured.value.size);
  const figure: Figure = {
    used: judge(used, ZERO, "above").beyond ? used : ZERO,
    base: nominal,
    comesOut: "smaller",
    unit,
    show: lengthShow(unit),
    measured: { typed: texts[1], brief: showLength(measured.value.size, measured.value.unit) },
    original: { typed: texts[0] },
    from: countsFrom(check, size.value, texts[0], showLength(nominal, unit)),
    size: size.value,
    ...newLinkWords(check, size.value),
    ...blurOf(situation, unit, 1),
  };
  const result = meetCriteria(check, figure, criteriaFor(check, situation, "moderate", false));
  const unjudged = result.findings.every((f) => f.criterion === null);
  const [passedOver] = result.notes;
  return unjudged
    ? {
        findings: [
          finding(passedOver === undefined ? "no limit" : "not in table", "NO VERDICT", check, {
            because: passedOver ?? NO_LIMIT,
            measured: texts[1],
            ...(judge(used, ZERO, "above").beyond ? {} : { share: 0 }),
          }),
        ],
        notes: result.notes,
      }
    : { findings: result.findings, notes: [...result.notes, ...(measured.note === undefined ? [] : [measured.note])] };
}

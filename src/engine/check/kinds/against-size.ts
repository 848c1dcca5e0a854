/** A measure held against a size: as a share of it, or as the least that it asks for. */
import { field } from "../../columns";
import type { Check } from "../../gear/kind";
import type { Cells } from "../../log/cells";
import { exact, type Exact, larger, ZERO } from "../../numbers/exact";
import { convert, showDecimal, showLength, type Unit } from "../../numbers/lengths";
import { readChainSize } from "../../reading/chain-size";
import type { Length } from "../../reading/length";
import { readCount } from "../../reading/number";
import type { Read } from "../../reading/read";
import { readTorque, torqueUnitOfHeading } from "../../reading/torque";
import type { Limit } from "../../rules/criterion";
import { cite } from "../../rules/documents";
import { leastNumber, tableName } from "../../tables/look-up";
import { type Figure, literal } from "../allowance";
import { finding, type Finding } from "../finding";
import { type CheckResult, criteriaFor, NOTHING, type Situation } from "../in-force";
import { meetCriteria, CHOOSE_BASIS, meet, NO_LIMIT } from "../meet-limits";
import { blurOf, type InTheWay, inUnit, length, lengthShow, missingFinding, refusedFinding, typed, unread } from "../read-sizes";
import { capital } from "../../words";

/** The size that a measure is held against, or the findings that stand in the way. */
function sizeFor(check: Check & { kind: "ratio" | "enough" }, cells: Cells, measured: Read<unknown>): Read<Length> | InTheWay | null {
  if (measured.kind === "missing" && !check.required) return null;
  const size = readChainSize(cells.value(check.size), cells.unit(check.size), cells.times);
  const unmeasured =
    measured.kind === "refused"
      ? [refusedFinding(check, cells, check.measured, measured)]
      : measured.kind === "missing"
        ? [missingFinding(check, cells, check.measured)]
        : [];
  const inTheWay = [...unread(check, cells, check.size, size), ...unmeasured];
  return inTheWay.length > 0 ? { inTheWay } : size;
}
/** A measure as a share of a size, or how far it exceeds the size. */
export function ratio(check: Check & { kind: "ratio" }, cells: Cells, situation: Situation): CheckResult {
  const measured = length(cells, check.measured, check.over !== true);
  const size = sizeFor(check, cells, measured);
  if (size === null) return NOTHING;
  if ("inTheWay" in size) return { findings: size.inTheWay, notes: [] };
  if (size.kind !== "value" || measured.kind !== "value") throw new Error(`${check.name} has readings that were not told`);
  const { unit } = measured.value;
  const base = inUnit(size.value, unit);
  const used = check.over === true ? measured.value.size.sub(base) : measured.value.size;
  const figure: Figure = {
    used,
    base,
    start: check.over === true ? base : ZERO,
    comesOut: "larger",
    unit,
    show: lengthShow(unit),
    of: check.over === true ? "the rope" : field(check.size).heading.toLowerCase(),
    measured: { typed: typed(measured) },
    original: null,
    ...blurOf(situation, unit, 1),
  };
  return meetCriteria(check, figure, criteriaFor(check, situation, "high", false));
}
/** A measure of its own sort: what it comes to, its unit if it is a length, and how it is shown. */
interface Measure {
  readonly has: Exact;
  readonly unit: Unit | null;
  readonly show: (value: Exact) => string;
  readonly measured: string;
}
function readMeasure(check: Check & { kind: "enough" }, cells: Cells): Read<Measure> {
  const plain =
    (show: (value: Exact) => string) =>
    (read: Read<Exact>): Read<Measure> =>
      read.kind === "value"
        ? { kind: "value", text: read.text, value: { has: read.value, unit: null, show, measured: show(read.value) } }
        : read;
  switch (check.reads) {
    case "count":
      return plain((value) => showDecimal(value, 0))(readCount(cells.value(check.measured)));
    case "torque":
      return plain((value) => `${showDecimal(value, 1)} lb-ft`)(
        readTorque(cells.value(check.measured), torqueUnitOfHeading(cells.heading(check.measured))),
      );
    case "length": {
      const read = length(cells, check.measured);
      if (read.kind !== "value") return read;
      const show = lengthShow(read.value.unit);
      return {
        kind: "value",
        text: read.text,
        value: { has: read.value.size, unit: read.value.unit, show, measured: show(read.value.size) },
      };
    }
  }
}
/** A count, a length or a torque that must not fall short of what the size asks for. */
export function enough(check: Check & { kind: "enough" }, cells: Cells, situation: Situation): CheckResult {
  const measure = readMeasure(check, cells);
  const size = sizeFor(check, cells, measure);
  if (size === null) return NOTHING;
  if ("inTheWay" in size) return { findings: size.inTheWay, notes: [] };
  if (size.kind !== "value" || measure.kind !== "value") throw new Error(`${check.name} has readings that were not told`);
  const { has, unit, show, measured } = measure.value;
  const named = showLength(size.value.size, size.value.unit);
  const counted = check.inProportionTo === undefined ? null : readCount(cells.value(check.inProportionTo));
  const fitted = counted?.kind === "value" ? counted.value : null;
  const findings: Finding[] = [];
  const notes: string[] = [];
  for (const criterion of criteriaFor(check, situation, "high", false)) {
    const { limit } = criterion;
    if (limit.word !== "fewer") throw new Error(`${criterion.id} is no least number`);
    const needed = neededOf(limit, size.value, unit, fitted);
    if (needed === null && !check.required) {
      notes.push(
        `${capital(check.name)} ${measured} was not judged: size ${named} is not in ${"table" in limit ? tableName(limit.table) : "the rule"}`,
      );
      continue;
    }
    if (needed === null) {
      findings.push(
        finding("not in table", "NO VERDICT", check, {
          because: `size ${named} is not in ${"table" in limit ? tableName(limit.table) : "the rule"}; a neighbouring row is never used`,
          basis: criterion.basis,
          source: cite(criterion.source),
          criterion: criterion.id,
          measured,
        }),
      );
      continue;
    }
    const figure: Figure = {
      used: needed.sub(has),
      base: needed,
      comesOut: "smaller",
      unit,
      show,
      measured: { typed: measured },
      original: null,
      ...(unit === null ? { blur: ZERO, gauge: "" } : blurOf(situation, unit, 1)),
    };
    findings.push(meet(check, figure, criterion, { allowance: ZERO, word: "above", rule: `at least ${show(needed)} for size ${named}` }));
  }
  if (findings.length === 0 && notes.length > 0) return { findings: [], notes };
  if (findings.length === 0)
    return { findings: [finding("no limit", "NO VERDICT", check, { because: NO_LIMIT, type: CHOOSE_BASIS, measured })], notes: [] };
  return { findings, notes };
}
/** What a size asks for, in the unit of the reading; null where the table has no row for the size. */
function neededOf(limit: Extract<Limit, { word: "fewer" }>, size: Length, unit: Unit | null, fitted: Exact | null): Exact | null {
  if ("times" in limit) {
    if (unit === null) return null;
    const times = inUnit(size, unit).mul(literal(limit.times));
    return limit.least === undefined ? times : larger(times, convert(literal(limit.least.in), "in", unit));
  }
  const found = leastNumber(limit.table, size.size, size.unit);
  if (found === null) return null;
  const tabled = found.clips === undefined ? null : exact(found.clips);
  const least = tabled === null || fitted === null || larger(tabled, fitted) === tabled ? found.least : found.least.mul(fitted).div(tabled);
  return unit === null ? least : convert(least, found.unit, unit);
}

/**
 * Readings exactly on a limit. The oracle is whole-number arithmetic in BigInt, written without the engine's fractions:
 * sizes and readings are whole multiples of 1/100,000,000 of the unit, and "used x 100 against size x percent" decides.
 */
import { describe, expect, it } from "vitest";
import { evaluate, type Cells } from "../../src/engine/evaluate";
import type { FieldId } from "../../src/engine/fields";
import { GEAR } from "../../src/engine/gear/index";
import type { Criterion, GearKind } from "../../src/engine/gear/kind";
import type { CellValue, Finding } from "../../src/engine/model";
import type { Unit } from "../../src/engine/units";

const SCALE = 100_000_000n;

/** 135000000n is "1.35". */
function decimal(scaled: bigint): string {
  const whole = scaled / SCALE, part = scaled % SCALE;
  return `${String(whole)}.${String(part).padStart(8, "0")}`.replace(/\.?0+$/, "");
}

type ShareLimit = Extract<Criterion["limit"], { share: string }>;

interface Subject {
  readonly kind: GearKind;
  readonly criterion: Criterion;
  readonly limit: ShareLimit;
}

const SUBJECTS: readonly Subject[] = GEAR.flatMap((kind) =>
  kind.criteria.flatMap((criterion) => ("share" in criterion.limit && criterion.limit.share !== "0" ? [{ kind, criterion, limit: criterion.limit }] : [])),
);

/** Percent in whole numbers: "0.05" is 5. */
const percentOf = (limit: ShareLimit): bigint => BigInt(limit.share.replace("0.", "").padEnd(2, "0"));

/** Allowance in scaled units: the percentage, at most 1/4 in or 6 mm where there is a cap. Exact: sizes are multiples of 100. */
function allowanceOf(limit: ShareLimit, size: bigint, unit: Unit): bigint {
  const share = (size * percentOf(limit)) / 100n;
  const cap = limit.cap === undefined ? null : unit === "in" ? SCALE / 4n : SCALE * 6n;
  return cap !== null && cap < share ? cap : share;
}

/** True when the oracle says that the part is out: used against allowance, with the source's word. */
const out = (limit: ShareLimit, size: bigint, used: bigint, unit: Unit): boolean => {
  const overShare = limit.word === "above" ? used * 100n > size * percentOf(limit) : used * 100n >= size * percentOf(limit);
  if (limit.cap === undefined) return overShare;
  const cap = unit === "in" ? SCALE / 4n : SCALE * 6n;
  return overShare || (limit.word === "above" ? used > cap : used >= cap);
};

/** The check's finding by this criterion, for a part of which `used` has gone. */
function findingOf({ kind, criterion }: Subject, size: bigint, used: bigint, unit: Unit, asText: boolean): Finding {
  const check = kind.checks.find((c) => c.name === criterion.check);
  if (!check) throw new Error(`No check ${criterion.check}`);
  const figure = (scaled: bigint): CellValue => (asText ? decimal(scaled) : Number(decimal(scaled)));
  const values: Partial<Record<FieldId, CellValue>> = {};
  const part = partFor(kind, criterion);
  if (check.kind === "loss") {
    Object.assign(values, { [check.original]: figure(size), [check.measured]: figure(size - used) });
    if (criterion.twoWays === true && check.acrossOriginal && check.acrossMeasured) Object.assign(values, { [check.acrossOriginal]: 1000, [check.acrossMeasured]: 999 });
  } else if (check.kind === "growth") Object.assign(values, { [check.original]: figure(size), [check.measured]: figure(size + used) });
  else if (check.kind === "least") Object.assign(values, { [check.size]: decimal(size), [check.measured]: figure(size - used) });
  else if (check.kind === "nick") {
    Object.assign(values, { nickDepth: figure(used), nickPart: part ?? "" });
    for (const loss of kind.checks) if (loss.kind === "loss") Object.assign(values, { [loss.original]: figure(size), [loss.measured]: figure(size) });
  } else throw new Error(`A share cannot limit ${check.kind}`);
  const cells: Cells = { value: (id) => values[id], unit: () => unit, heading: (id) => id, ...(part === undefined ? {} : { part }) };
  const { findings } = evaluate(check, cells, { kind, bases: new Set([criterion.basis]), gauge: null, construction: null });
  const finding = findings.find((f) => f.criterion === criterion.id);
  if (!finding) throw new Error(`No finding by ${criterion.id}: ${findings.map((f) => f.sentence).join(" ")}`);
  return finding;
}

/** A part of the stress class that the criterion is for. */
function partFor(kind: GearKind, criterion: Criterion): string | undefined {
  const { stress } = criterion;
  if (criterion.twoWays === true) return Object.entries(kind.parts).find(([, s]) => s === "moderate")?.[0];
  if (stress === undefined) return undefined;
  return Object.entries(kind.parts).find(([, s]) => stress.includes(s))?.[0];
}

function expectSides(subject: Subject, size: bigint, step: bigint, unit: Unit, asText: boolean): void {
  const allowance = allowanceOf(subject.limit, size, unit);
  for (const used of [allowance - step, allowance, allowance + step]) {
    if (used < 0n) continue;
    const finding = findingOf(subject, size, used, unit, asText);
    const expected = out(subject.limit, size, used, unit) ? "out" : "in";
    const told = finding.decision === subject.criterion.beyond ? "out" : "in";
    if (told !== expected) expect.fail(`${subject.criterion.id}: size ${decimal(size)} ${unit}, used ${decimal(used)}: expected ${expected}, got ${finding.decision}. ${finding.sentence}`);
  }
}

describe("a reading exactly on a percentage limit falls on the side that its word says", () => {
  it("every percentage limit of the catalogue is among the subjects", () => {
    expect(new Set(SUBJECTS.map(({ limit }) => `${limit.word} ${limit.share}`))).toEqual(new Set(["above 0.05", "above 0.10", "above 0.15", "from 0.10"]));
    expect(SUBJECTS.length).toBeGreaterThan(20);
  });

  for (const subject of SUBJECTS)
    it(`${subject.criterion.id}: as-new 1.0 to 100.0 mm in steps of 0.1 mm, read as numbers`, () => {
      // A tenth of a micrometre to either side of the limit.
      for (let tenths = 10n; tenths <= 1000n; tenths += 1n) expectSides(subject, (tenths * SCALE) / 10n, SCALE / 10_000n, "mm", false);
    });

  for (const subject of SUBJECTS)
    it(`${subject.criterion.id}: as-new 1/4 to 8 in in steps of 1/64 in, read as text`, () => {
      // 1/64 in is 1,562,500 of the scale; every allowance is a whole number of it.
      for (let parts = 16n; parts <= 512n; parts += 1n) expectSides(subject, (parts * SCALE) / 64n, 1n, "in", true);
    });
});

describe("binary arithmetic would get these wrong", () => {
  // 2.000 to 2.100 IS 5 %, though (2.1 - 2) / 2 is 0.050000000000000044 in binary.
  it("2.000 in to 2.100 in is not above 5 %", () => {
    expect((2.1 - 2) / 2).toBeGreaterThan(0.05);
    const subject = SUBJECTS.find((s) => s.criterion.id === "hook.throat-opening.standard");
    if (!subject) throw new Error("The throat criterion is gone");
    expect(findingOf(subject, 2n * SCALE, SCALE / 10n, "in", false).decision).toBe("WATCH");
  });
});

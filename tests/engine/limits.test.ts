/**
 * Readings exactly on a limit. The oracle is whole-number arithmetic in BigInt, written without the engine's fractions:
 * sizes and readings are whole multiples of 1/100,000,000 of the unit, and "used x 100 against size x percent" decides.
 */
import { sentenceOf } from "../../src/engine/check/sentences";
import { describe, expect, it } from "vitest";
import { evaluate } from "../../src/engine/check/run-check";
import { type Cells } from "../../src/engine/log/cells";
import { exact } from "../../src/engine/numbers/exact";
import { type FieldId } from "../../src/engine/columns";
import { GEAR } from "../../src/engine/gear/index";
import { type Criterion } from "../../src/engine/rules/criterion";
import { type GearKind } from "../../src/engine/gear/kind";
import { type CellValue } from "../../src/engine/reading/cell-value";
import { type Finding } from "../../src/engine/check/finding";
import { type Unit } from "../../src/engine/numbers/lengths";

const SCALE = 100_000_000n;

/** 135000000n is "1.35". */
function decimal(scaled: bigint): string {
  const whole = scaled / SCALE,
    part = scaled % SCALE;
  return `${String(whole)}.${String(part).padStart(8, "0")}`.replace(/\.?0+$/, "");
}

type ShareLimit = Extract<Criterion["limit"], { share: string }>;

interface Subject {
  readonly kind: GearKind;
  readonly criterion: Criterion;
  readonly limit: ShareLimit;
}

const SUBJECTS: readonly Subject[] = GEAR.flatMap((kind) =>
  kind.criteria.flatMap((criterion) =>
    "share" in criterion.limit && criterion.limit.share !== "0" ? [{ kind, criterion, limit: criterion.limit }] : [],
  ),
);

/** A share as two whole numbers: "0.05" is 5 of 100, "1/240" is 1 of 240. */
function wholeOf(share: string): { readonly part: bigint; readonly of: bigint } {
  const [part = "", of] = share.split("/");
  return of === undefined ? { part: BigInt(share.replace("0.", "").padEnd(2, "0")), of: 100n } : { part: BigInt(part), of: BigInt(of) };
}

/** Allowance in scaled units, rounded down: the share, at most 1/4 in or 6 mm where there is a cap. */
function allowanceOf(limit: ShareLimit, size: bigint, unit: Unit): bigint {
  const { part, of } = wholeOf(limit.share);
  const share = (size * part) / of;
  const cap = limit.cap === undefined ? null : unit === "in" ? SCALE / 4n : SCALE * 6n;
  return cap !== null && cap < share ? cap : share;
}

/** True when the oracle says that the part is out: used against allowance, with the source's word. */
const out = (limit: ShareLimit, size: bigint, used: bigint, unit: Unit): boolean => {
  const { part, of } = wholeOf(limit.share);
  const overShare = limit.word === "above" ? used * of > size * part : used * of >= size * part;
  if (limit.cap === undefined) return overShare;
  const cap = unit === "in" ? SCALE / 4n : SCALE * 6n;
  return overShare || (limit.word === "above" ? used > cap : used >= cap);
};

/** A size with as many digits as keep it from being a trade size of chain, whose new link is thicker: see the tests of chain slings. */
const tradeless = (size: bigint, unit: Unit): string => (unit === "in" ? `${decimal((size * 254n) / 10n)} mm` : decimal(size));

/** The check's finding by this criterion, for a part of which `used` has gone. */
function findingOf(
  { kind, criterion }: Pick<Subject, "kind" | "criterion">,
  size: bigint,
  used: bigint,
  unit: Unit,
  asText: boolean,
): Finding {
  const check = kind.checks.find((c) => c.name === criterion.check);
  if (!check) throw new Error(`No check ${criterion.check}`);
  const figure = (scaled: bigint): CellValue => (asText ? decimal(scaled) : Number(decimal(scaled)));
  const values: Partial<Record<FieldId, CellValue>> = {};
  const part = partFor(kind, criterion);
  if (check.kind === "loss") {
    Object.assign(values, { [check.original]: figure(size), [check.measured]: figure(size - used) });
    if (criterion.twoWays === true && check.acrossOriginal && check.acrossMeasured)
      Object.assign(values, { [check.acrossOriginal]: 1000, [check.acrossMeasured]: 999 });
  } else if (check.kind === "growth") Object.assign(values, { [check.original]: figure(size), [check.measured]: figure(size + used) });
  else if (check.kind === "ratio")
    Object.assign(values, { [check.size]: decimal(size), [check.measured]: figure(check.over === true ? size + used : used) });
  else if (check.kind === "least") Object.assign(values, { [check.size]: tradeless(size, unit), [check.measured]: figure(size - used) });
  else if (check.kind === "nick") {
    Object.assign(values, {
      nickDepth: figure(used),
      nickPart: part ?? "",
      ...(part === undefined ? {} : { nickNew: figure(size), nickNow: figure(size) }),
    });
    for (const loss of kind.checks)
      if (loss.kind === "loss") Object.assign(values, { [loss.original]: figure(size), [loss.measured]: figure(size) });
  } else throw new Error(`A share cannot limit ${check.kind}`);
  const cells: Cells = { value: (id) => values[id], unit: () => unit, heading: (id) => id, ...(part === undefined ? {} : { part }) };
  const { findings } = evaluate(check, cells, { kind, bases: new Set([criterion.basis]), gauge: null, variant: null });
  const finding = findings.find((f) => f.criterion === criterion.id);
  if (!finding) throw new Error(`No finding by ${criterion.id}: ${findings.map(sentenceOf).join(" ")}`);
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
    if (told !== expected)
      expect.fail(
        `${subject.criterion.id}: size ${decimal(size)} ${unit}, used ${decimal(used)}: expected ${expected}, got ${finding.decision}. ${sentenceOf(finding)}`,
      );
  }
}

describe("a reading exactly on a percentage limit falls on the side that its word says", () => {
  it("every percentage limit of the catalogue is among the subjects", () => {
    expect(new Set(SUBJECTS.map(({ limit }) => `${limit.word} ${limit.share}`))).toEqual(
      new Set([
        "above 0.05",
        "above 0.06",
        "above 0.10",
        "above 0.15",
        "above 0.50",
        "above 1/240",
        "from 0.05",
        "from 0.10",
        "from 0.15",
        "from 0.25",
        "from 1/3",
      ]),
    );
    expect(SUBJECTS.length).toBeGreaterThan(70);
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

/** Limits on the area of a round section: the areas stand to each other as the squares of the diameters. */
const AREAS = GEAR.flatMap((kind) =>
  kind.criteria.flatMap((criterion) => ("area" in criterion.limit ? [{ kind, criterion, limit: criterion.limit }] : [])),
);

/** Largest whole number whose square is no larger. */
function root(value: bigint): bigint {
  let low = 0n,
    high = value + 1n;
  while (high - low > 1n) {
    const middle = (low + high) / 2n;
    if (middle * middle <= value) low = middle;
    else high = middle;
  }
  return low;
}

describe("a limit on the area of a round section falls on the side that its word says", () => {
  it("every area limit of the catalogue is among the subjects", () => {
    expect(AREAS.map(({ criterion }) => criterion.id).sort()).toEqual([
      "chain-hoist.hook-section.alberta",
      "headache-ball.section-wear.alberta",
      "hook.eye-wear.alberta",
      "hook.section-wear.alberta",
      "lever-hoist.hook-section.alberta",
      "load-block.section-wear.alberta",
    ]);
  });
  for (const { kind, criterion, limit } of AREAS) {
    // Out when 100 x (size squared less left squared) is past the percentage of size squared.
    const areaOut = (size: bigint, left: bigint): boolean => {
      const lost = (size * size - left * left) * 100n,
        allowed = size * size * wholeOf(limit.area).part;
      return limit.word === "above" ? lost > allowed : lost >= allowed;
    };
    for (const [unit, sizes] of [
      ["mm", Array.from({ length: 991 }, (_, i) => (BigInt(i + 10) * SCALE) / 10n)],
      ["in", Array.from({ length: 497 }, (_, i) => (BigInt(i + 16) * SCALE) / 64n)],
    ] as const)
      it(`${criterion.id}: the two readings nearest to the limit, as-new ${unit === "mm" ? "1.0 to 100.0 mm" : "1/4 to 8 in"}`, () => {
        for (const size of sizes) {
          const least = root((size * size * (100n - wholeOf(limit.area).part)) / 100n);
          for (const left of [least - 1n, least, least + 1n, least + 2n]) {
            const finding = findingOf({ kind, criterion }, size, size - left, unit, true);
            if ((finding.decision === "REMOVE") !== areaOut(size, left))
              expect.fail(`${criterion.id}: ${decimal(size)} to ${decimal(left)} ${unit}: ${sentenceOf(finding)}`);
          }
        }
      });
  }
  it("10 % of the area of 40 mm is 37.947 mm, not 36 mm", () => {
    const hook = AREAS.find(({ criterion }) => criterion.id === "hook.section-wear.alberta");
    if (!hook) throw new Error("The area rule is gone");
    // 37.948 squared is 1440.05 of the 1440 that must be left; 37.947 squared is 1439.97.
    expect(findingOf(hook, 40n * SCALE, (2_052n * SCALE) / 1000n, "mm", false).decision).toBe("WATCH");
    expect(findingOf(hook, 40n * SCALE, (2_053n * SCALE) / 1000n, "mm", false).decision).toBe("REMOVE");
  });
  it("a gauge coarser than the part settles nothing", () => {
    const hook = AREAS.find(({ criterion }) => criterion.id === "hook.section-wear.alberta");
    const check = hook?.kind.checks.find((c) => c.name === "section wear");
    if (!hook || !check) throw new Error("The area rule is gone");
    const cells: Cells = {
      value: (id) => (({ sectionNew: "1 in", sectionNow: "0.5 in" }) as Partial<Record<FieldId, CellValue>>)[id],
      unit: () => "in",
      heading: (id) => id,
    };
    const { findings } = evaluate(check, cells, {
      kind: hook.kind,
      bases: new Set(["alberta"]),
      gauge: { size: exact(5), unit: "in" },
      variant: null,
    });
    expect(findings.map((f) => f.decision)).toEqual(["EXAMINE"]);
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

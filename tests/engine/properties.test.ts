/** What must hold for every gear kind, every rule set and any reading. Seeded, so that a failure can be repeated. */
import { sentenceOf } from "../../src/engine/check/sentences";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { BASIS_IDS, DEFAULT_BASIS, inForce } from "../../src/engine/rules/rule-sets";
import { readCount, readDegrees } from "../../src/engine/reading/number";
import { readDate } from "../../src/engine/reading/date";
import { readLength } from "../../src/engine/reading/length";
import { readText } from "../../src/engine/reading/text";
import { FIELD_IDS, FIELDS, field, type FieldId } from "../../src/engine/columns";
import { GEAR } from "../../src/engine/gear/index";
import { type Check, type GearKind } from "../../src/engine/gear/kind";
import { fieldsOf } from "../../src/engine/gear/columns-of";
import { type CellValue } from "../../src/engine/reading/cell-value";
import { type ItemVerdict } from "../../src/engine/item/verdict";
import { reportOn } from "../../src/engine/report/report";
import { judgeRowsOf } from "../../src/engine/ask/one-row";
import { DECISIONS, outOfUse, rank, worstOf } from "../../src/engine/decision";
import { judge, verdict } from "../../src/functions/functions";
import { good, judged, type CellRecord } from "./helpers";
import { readSeen } from "../../src/engine/reading/observation";

const SEED = 20_261_125;
const runs = (numRuns: number): fc.Parameters<unknown> => ({ seed: SEED, numRuns });

const kindArb = fc.constantFrom(...GEAR);
const basisArb = fc.subarray([...BASIS_IDS], { minLength: 1 }).map((ids) => ids.join(","));

/** A size as thousandths of an inch, so that every reading is a whole number that can be made worse and converted. */
type Sizes = Partial<Record<FieldId, number>>;

interface Item {
  readonly kind: GearKind;
  readonly sizes: Sizes;
  /** Counts, angles in half degrees, observations (true is sound), words. */
  readonly counts: Partial<Record<FieldId, number>>;
  readonly seen: Partial<Record<FieldId, boolean>>;
  readonly words: CellRecord;
}

const SIZES = fc.constantFrom("1/4", "5/16", "3/8", "1/2", "5/8", "3/4", "1 in", "1-3/4", "10 mm");

/** Everything that the kind reads, each plausible: as-new 0.5 to 4 in, worn or grown by up to a third. */
function itemArb(kind: GearKind): fc.Arbitrary<Item> {
  const sizes: Partial<Record<FieldId, fc.Arbitrary<number>>> = {};
  const pairs: (readonly [original: FieldId, measured: FieldId, least: number, most: number])[] = [];
  const counts: Partial<Record<FieldId, fc.Arbitrary<number>>> = {};
  const seen: Partial<Record<FieldId, fc.Arbitrary<boolean>>> = {};
  const words: Partial<Record<FieldId, fc.Arbitrary<CellValue>>> = {};
  for (const check of kind.checks) {
    if (check.kind === "growth") pairs.push([check.original, check.measured, 981, 1300]);
    else if (check.kind === "maker") pairs.push([check.figure, check.measured, 700, 1300]);
    else if (check.kind === "loss") {
      pairs.push([check.original, check.measured, 700, 1019]);
      if (check.acrossOriginal && check.acrossMeasured) pairs.push([check.acrossOriginal, check.acrossMeasured, 700, 1019]);
    } else if (check.kind === "least") {
      words[check.size] = SIZES;
      // Thousandths of the size: see `fitted`.
      sizes[check.measured] =
        kind.id === "sheave"
          ? fc.integer({ min: 1000, max: 1130 })
          : kind.id === "chain sling"
            ? fc.integer({ min: 690, max: 1080 })
            : fc.integer({ min: 920, max: 1050 });
    } else if (check.kind === "ratio") {
      // A groove is sized with its rope below; a bend is up to 1 in on a span of 8 to 20 ft.
      if (check.over !== true) {
        sizes[check.size] = fc.integer({ min: 96_000, max: 240_000 });
        sizes[check.measured] = fc.oneof(fc.constant(0), fc.integer({ min: 0, max: 1000 }));
      }
    } else if (check.kind === "enough") {
      if (check.size === "size") words.size = SIZES;
      if (check.reads === "count") counts[check.measured] = fc.integer({ min: 2, max: 9 });
      else if (check.reads === "torque") counts[check.measured] = fc.integer({ min: 20, max: 800 });
      else sizes[check.measured] = fc.integer({ min: 1000, max: 60_000 });
    } else if (check.kind === "category") {
      counts[check.measured] = fc.oneof(fc.constant(0), fc.integer({ min: 0, max: 45 }));
      words[check.category] = fc.constantFrom("", "01", "4", "RCN 10", "14");
      words[check.lay] = fc.constantFrom("", "ordinary", "Lang");
      words[check.layers] = fc.constantFrom("", "single", "multi");
    } else if (check.kind === "gap") sizes[check.measured] = fc.integer({ min: 0, max: 300 });
    else if (check.kind === "nick") {
      sizes[check.measured] = fc.oneof(fc.constant(0), fc.integer({ min: 0, max: 60 }), fc.integer({ min: 0, max: 250 }));
      words[check.at] = fc.constantFrom("", ...Object.keys(kind.parts));
    } else if (check.kind === "angle" || check.kind === "count")
      counts[check.measured] = fc.oneof(fc.constant(0), fc.integer({ min: 0, max: check.kind === "angle" ? 30 : 45 }));
    else seen[check.measured] = fc.boolean();
  }
  // What a kind does not know as a construction it refuses, so its own are drawn where it has any.
  const known = kind.variants?.field === "construction" ? Object.keys(kind.variants.names) : [];
  words.construction = fc.constantFrom(...(known.length > 0 ? ["", ...known] : ["strand laid", "rotation resistant", "standing rope"]));
  words.clipType = fc.constantFrom("", "drop forged U-bolt", "drop forged fist grip", "other material");
  return fc
    .record({
      sizes: fc.record(sizes),
      pairs: fc.tuple(
        ...pairs.map(([, , least, most]) =>
          fc.tuple(
            fc.integer({ min: 500, max: 4000 }),
            fc.oneof(fc.integer({ min: least, max: most }), fc.integer({ min: Math.max(least, 985), max: Math.min(most, 1015) })),
          ),
        ),
      ),
      counts: fc.record(counts),
      // Mostly in order, so that the other readings decide often enough.
      sound: fc.integer({ min: 0, max: 3 }),
      seen: fc.record(seen),
      words: fc.record(words),
      gauge: fc.constantFrom(null, null, 1, 10, 40),
    })
    .map((made) => {
      const all: Sizes = { ...made.sizes };
      pairs.forEach(([original, measured], i) => {
        const [as, share] = made.pairs[i]!;
        // Two checks of a mesh share the wire's as-new size.
        const base = (all[original] ??= as);
        all[measured] = Math.round((base * share) / 1000);
      });
      if (made.gauge !== null) all.gauge = made.gauge;
      const seenNow = Object.fromEntries(Object.entries(made.seen).map(([id, fine]) => [id, made.sound > 0 ? true : fine]));
      return { kind, sizes: all, counts: made.counts, seen: seenNow, words: made.words };
    });
}

const anyItem = kindArb.chain(itemArb);

const thousandths = (value: number): string => `${String(Math.floor(value / 1000))}.${String(value % 1000).padStart(3, "0")}`;
/** A thousandth of an inch is 0.0254 mm: the millimetre figure has four decimals and is exact. */
const inMillimetres = (value: number): string => {
  const scaled = BigInt(value) * 254n;
  return `${String(scaled / 10_000n)}.${String(scaled % 10_000n).padStart(4, "0")}`;
};

function cellsOfItem(item: Item, unit: "in" | "mm" = "in"): CellRecord {
  const cells: CellRecord = { id: "X-1", gear: item.kind.id, unit, ...item.words };
  for (const [id, size] of Object.entries(item.sizes) as [FieldId, number][])
    cells[id] = unit === "in" ? thousandths(size) : inMillimetres(size);
  for (const [id, count] of Object.entries(item.counts) as [FieldId, number][]) cells[id] = field(id).type === "angle" ? count / 2 : count;
  for (const [id, fine] of Object.entries(item.seen) as [FieldId, boolean][])
    cells[id] = field(id).type === "fault" ? (fine ? "none" : "found") : fine ? "yes" : "no";
  return cells;
}

/** Readings that tell something: a link, a rope and a groove are a share of their size. */
function fitted(item: Item): Item {
  const size = item.words.size;
  const least = item.kind.checks.find((c) => c.kind === "least");
  if (least === undefined || typeof size !== "string") return item;
  const nominal: Record<string, number> = {
    "1/4": 250,
    "5/16": 312,
    "3/8": 375,
    "1/2": 500,
    "5/8": 625,
    "3/4": 750,
    "1 in": 1000,
    "1-3/4": 1750,
    "10 mm": 394,
  };
  return {
    ...item,
    sizes: { ...item.sizes, [least.measured]: Math.round(((item.sizes[least.measured] ?? 1000) * (nominal[size] ?? 250)) / 1000) },
  };
}

const plausible = anyItem.map(fitted);

const told = (v: Pick<ItemVerdict, "decision" | "reason">): string => `${v.decision}: ${v.reason}`;

describe("the items of these properties", () => {
  it("reach every decision and every gear kind", () => {
    const seen = new Map<string, number>();
    for (const item of fc.sample(plausible, { seed: SEED, numRuns: 4500 })) {
      for (const word of [judged(cellsOfItem(item)).decision, item.kind.id]) seen.set(word, (seen.get(word) ?? 0) + 1);
    }
    // NO VERDICT comes from what is missing, and these items are complete.
    for (const word of [...DECISIONS.filter((d) => d !== "NO VERDICT"), ...GEAR.map((k) => k.id)])
      expect(seen.get(word) ?? 0, word).toBeGreaterThan(8);
  });
});

const anyCell: fc.Arbitrary<CellValue> = fc.oneof(
  fc.constantFrom<CellValue>(
    null,
    undefined,
    "",
    " ",
    "n/a",
    "-",
    "?",
    "ok",
    "#REF!",
    "1 7/8",
    '1-7/8"',
    "47,6",
    "1,875",
    "2' 1/2\"",
    "13/64 in",
    "10 mm",
    "none",
    "found",
    "yes",
    "no",
    0,
    -1,
    46089,
    1e300,
    1e-300,
    1e-12,
    1.7976931348623151e308,
    "__proto__",
    "constructor",
    "1 constructor",
    "toString",
    Number.NaN,
    Number.POSITIVE_INFINITY,
    "1/0",
    "5 '",
    "'",
    '"',
    "⅞",
    "³⁄₁₆",
    ".",
    ",",
    "1..2",
    "0 0/0",
  ),
  fc.double(),
  fc.integer({ min: -10, max: 60_000 }),
  fc.boolean(),
  fc.record({ serial: fc.oneof(fc.integer({ min: -100, max: 3_000_000 }), fc.double()) }),
  fc.string({ maxLength: 14 }),
  fc.string({ unit: "grapheme", maxLength: 8 }),
  fc.string({ unit: fc.constantFrom(...Array.from("0123456789 .,/-'\"xmin()½⅞°%?~")), maxLength: 10 }),
);

describe("anything at all may stand in a cell", () => {
  it("no reader throws, and each says what it made of it", () => {
    fc.assert(
      fc.property(
        anyCell,
        fc.constantFrom("in", "mm", null),
        fc.constantFrom(true, false, undefined),
        fc.boolean(),
        (cell, assume, comma, zero) => {
          for (const read of [
            readLength(cell, { assume, zero, ...(comma === undefined ? {} : { decimalComma: comma }) }),
            readCount(cell),
            readDegrees(cell),
            readSeen(cell, "fault"),
            readSeen(cell, "sound"),
            readDate(cell),
          ]) {
            expect(["value", "missing", "refused"]).toContain(read.kind);
            if (read.kind === "refused") expect(read.why).toMatch(/\w/);
          }
          expect(typeof readText(cell)).toBe("string");
        },
      ),
      runs(3000),
    );
  });

  it("a length is never negative", () => {
    fc.assert(
      fc.property(anyCell, (cell) => {
        const read = readLength(cell, { assume: "in", zero: true });
        if (read.kind === "value") expect(read.value.size.compare(0)).toBeGreaterThanOrEqual(0);
      }),
      runs(3000),
    );
  });

  it("no item throws: there is always a decision and a reason", () => {
    fc.assert(
      fc.property(
        fc.oneof(
          kindArb.map((k) => k.id),
          anyCell,
        ),
        fc.dictionary(fc.constantFrom(...FIELD_IDS), anyCell, { maxKeys: 14 }),
        basisArb,
        (gear, cells, basis) => {
          const v = judged({ unit: "in", ...cells, gear }, basis);
          expect(DECISIONS).toContain(v.decision);
          expect(v.reason.length).toBeGreaterThan(10);
        },
      ),
      runs(1500),
    );
  });

  it("no sheet throws, and no filled row under the headings is lost", () => {
    const heading = fc.oneof(
      fc.constantFrom(...FIELD_IDS.map((id) => FIELDS[id].heading)),
      fc.constantFrom("__proto__", "constructor", "Has own property", "toString"),
      fc.string({ maxLength: 20 }),
    );
    fc.assert(
      fc.property(
        fc.array(heading, { maxLength: 8 }),
        fc.array(fc.array(anyCell, { maxLength: 8 }), { maxLength: 6 }),
        fc.boolean(),
        (headings, rows, known) => {
          const head = known ? ["Id", "Gear", "Section now", ...headings] : headings;
          const report = reportOn([head, ...rows], { basis: DEFAULT_BASIS, asOf: 46174 });
          if (report === null) return;
          for (const item of report.items) expect(DECISIONS).toContain(item.verdict.decision);
          expect(Object.values(report.counts).reduce((a, b) => a + b, 0)).toBe(report.items.length);
        },
      ),
      runs(400),
    );
  });
});

/** Cells that are no reading for a field of that type. */
/** Lengths and counts of which 0 or none is a reading. */
const NOTHING_THERE: readonly FieldId[] = ["clearance", "nickDepth", "bend"];

const noReading = (id: FieldId): fc.Arbitrary<CellValue> => {
  const common: CellValue[] = [
    null,
    undefined,
    "",
    " ",
    "n/a",
    "-",
    "?",
    "#REF!",
    "#N/A",
    "not measured",
    "not checked",
    { serial: 46089 },
    "maybe",
  ];
  const { type } = field(id);
  if (type === "sound" || type === "fault")
    return fc.constantFrom<CellValue>(...common, 0, 1, "x", "ok?", "good but check", "tbd", "none, I think", "yes and no");
  if (type === "count" || type === "angle") return fc.constantFrom<CellValue>(...common, true, -1, "3?", "3 or 4", "~2", "some", "about 3");
  return fc.constantFrom<CellValue>(
    ...common,
    NOTHING_THERE.includes(id) ? "nearly 0" : 0,
    true,
    false,
    -1,
    "1.8?",
    "approx 2",
    "1.8 1.9",
    "ok",
    "1,875",
    46089,
    "2 kg",
    "4-Mar",
    "-1.5",
    "1.8-1.9",
  );
};

const requiredOf = (kind: GearKind): readonly FieldId[] =>
  kind.checks
    .filter((c) => c.required && c.under === undefined && (c.onlyFor === undefined || c.onlyFor.includes("strand laid")))
    .flatMap((c) => (c.kind === "loss" ? [c.original, c.measured] : fieldsOf(c)));

describe("a required reading that is missing, unreadable or doubtful", () => {
  it("never ends in KEEP, WATCH or DRESS", () => {
    const missing = plausible.chain((item) =>
      fc.record({
        item: fc.constant(item),
        basis: basisArb,
        bad: fc.constantFrom(...requiredOf(item.kind)).chain((id) => fc.record({ id: fc.constant(id), cell: noReading(id) })),
      }),
    );
    fc.assert(
      fc.property(missing, ({ item, basis, bad }) => {
        const v = judged({ ...cellsOfItem(item), construction: "strand laid", [bad.id]: bad.cell }, basis);
        expect(outOfUse(v.decision), `${item.kind.id}, ${bad.id} ${JSON.stringify(bad.cell)}: ${told(v)}`).toBe(true);
      }),
      runs(2500),
    );
  });

  it("never makes a decision better than the reading did, where that was REMOVE for another reason", () => {
    fc.assert(
      fc.property(plausible, fc.nat(), (item, pick) => {
        const before = judged(cellsOfItem(item));
        const ids = requiredOf(item.kind);
        const id = ids[pick % ids.length]!;
        const others = before.findings.filter(
          (f) =>
            f.decision === "REMOVE" && !item.kind.checks.some((c) => c.name === f.check && fieldsOf(c).includes(id)) && f.check !== "nick",
        );
        if (others.length > 0) expect(judged({ ...cellsOfItem(item), [id]: null }).decision).toBe("REMOVE");
      }),
      runs(1000),
    );
  });
});

/** One reading made worse; null when it cannot be. */
function worsened(item: Item, check: Check, by: number): Item | null {
  const size = (id: FieldId, change: number): Item | null => {
    const now = item.sizes[id];
    return now === undefined || now + change <= 0 ? null : { ...item, sizes: { ...item.sizes, [id]: now + change } };
  };
  switch (check.kind) {
    case "growth":
      return size(check.measured, by);
    case "gap":
    case "ratio":
      return size(check.measured, by);
    case "maker":
      return size(check.measured, check.comesOut === "larger" ? by : -by);
    case "enough": {
      if (check.reads === "length") return size(check.measured, -by);
      const now = item.counts[check.measured] ?? 0;
      return now < 2 ? null : { ...item, counts: { ...item.counts, [check.measured]: now - 1 } };
    }
    case "nick":
      return size(check.measured, by);
    case "loss": {
      // Not below a tenth of the as-new size, where an inch figure in a millimetre column is suspected.
      const original = item.sizes[check.original] ?? 0;
      const made = size(check.measured, -by);
      return made !== null && (made.sizes[check.measured] ?? 0) * 10 > original ? made : null;
    }
    case "least": {
      const made = size(check.measured, -by);
      return made !== null && (made.sizes[check.measured] ?? 0) * 10 > (item.sizes[check.measured] ?? 0) * 3 ? made : null;
    }
    case "angle":
    case "count":
    case "category": {
      const now = item.counts[check.measured];
      return now === undefined ? null : { ...item, counts: { ...item.counts, [check.measured]: now + Math.ceil(by / 40) } };
    }
    case "seen":
      return { ...item, seen: { ...item.seen, [check.measured]: false } };
  }
}

/** A groove is worn when it is narrow and loose when it is wide: what is worse for one check is better for the other. */
const alsoReadBy = (kind: GearKind, check: Check): boolean =>
  kind.checks.some(
    (c) =>
      c.name !== check.name &&
      fieldsOf(c).includes(fieldsOf(check).at(-1)!) &&
      c.kind === (check.kind === "least" ? "ratio" : check.kind === "ratio" ? "least" : ""),
  );

/** The verdict, or what one check says where another reads the same figure the other way. */
function ofCheck(verdict: ItemVerdict, kind: GearKind, check: Check): Pick<ItemVerdict, "decision" | "reason"> {
  if (!alsoReadBy(kind, check)) return verdict;
  const own = verdict.findings.filter((f) => f.check === check.name);
  return { decision: worstOf(own.map((f) => f.decision)), reason: own.map(sentenceOf).join(" ") };
}

describe("a worse reading", () => {
  it("never gives a better decision", () => {
    fc.assert(
      fc.property(plausible, fc.nat(), fc.integer({ min: 1, max: 400 }), basisArb, (item, pick, by, basis) => {
        const check = item.kind.checks[pick % item.kind.checks.length]!;
        const worse = worsened(item, check, by);
        if (worse === null) return;
        const before = ofCheck(judged(cellsOfItem(item), basis), item.kind, check),
          after = ofCheck(judged(cellsOfItem(worse), basis), item.kind, check);
        expect(
          rank(after.decision),
          `${item.kind.id}, ${check.name} worse by ${String(by)}\n${told(before)}\n${told(after)}`,
        ).toBeLessThanOrEqual(rank(before.decision));
      }),
      runs(2500),
    );
  });
  it("in the second direction never gives a better decision", () => {
    fc.assert(
      fc.property(
        plausible.filter((i) => i.sizes.acrossNow !== undefined),
        fc.integer({ min: 1, max: 300 }),
        basisArb,
        (item, by, basis) => {
          const now = item.sizes.acrossNow ?? 0;
          if ((now - by) * 10 <= (item.sizes.acrossNew ?? 0)) return;
          const before = judged(cellsOfItem(item), basis),
            after = judged(cellsOfItem({ ...item, sizes: { ...item.sizes, acrossNow: now - by } }), basis);
          expect(rank(after.decision), `${told(before)}\n${told(after)}`).toBeLessThanOrEqual(rank(before.decision));
        },
      ),
      runs(600),
    );
  });
  it("uses no smaller a share of the allowance", () => {
    fc.assert(
      fc.property(plausible, fc.nat(), fc.integer({ min: 1, max: 200 }), (item, pick, by) => {
        const check = item.kind.checks[pick % item.kind.checks.length]!;
        const worse = check.kind === "seen" ? null : worsened(item, check, by);
        if (worse === null) return;
        if (alsoReadBy(item.kind, check)) return;
        const before = judged(cellsOfItem(item)),
          after = judged(cellsOfItem(worse));
        if (before.share !== null && after.share !== null) expect(after.share).toBeGreaterThanOrEqual(before.share);
      }),
      runs(800),
    );
  });
});

describe("inches and millimetres", () => {
  it("agree: the same sizes, converted exactly, give the same decision", () => {
    // Throats stay below 4.72 in (120 mm), where the caps of 1/4 in and 6 mm do not bite.
    fc.assert(
      fc.property(plausible, basisArb, (item, basis) => {
        const inches = judged(cellsOfItem(item, "in"), basis),
          millimetres = judged(cellsOfItem(item, "mm"), basis);
        expect(millimetres.decision, `${told(inches)}\n${told(millimetres)}`).toBe(inches.decision);
        expect(millimetres.findings.map((f) => [f.criterion, f.decision])).toEqual(inches.findings.map((f) => [f.criterion, f.decision]));
        expect(millimetres.share).toBe(inches.share);
      }),
      runs(1200),
    );
  });
});

describe("sizes without a unit", () => {
  it("give the decision that they give in inches and in millimetres, where only shares of them count", () => {
    const shares = fc.constantFrom(...GEAR.filter((k) => ["shackle", "link", "block"].includes(k.id))).chain(itemArb);
    fc.assert(
      fc.property(shares, basisArb, (item, basis) => {
        const cells = { ...cellsOfItem(item), gauge: "", nickDepth: "", nickPart: "" };
        const free = judged({ ...cells, unit: "" }, basis);
        for (const unit of ["in", "mm"]) expect(judged({ ...cells, unit }, basis).decision, told(free)).toBe(free.decision);
      }),
      runs(500),
    );
  });
  it("are NO VERDICT where a length has a limit of its own: a hook's throat, a swivel's clearance, a chain", () => {
    for (const kind of ["hook", "swivel", "chain sling"]) expect(judged({ ...good(kind), unit: "" }).decision, kind).toBe("NO VERDICT");
  });
});

describe("rule sets", () => {
  it("one more never gives a better decision than a criterion gave before", () => {
    fc.assert(
      fc.property(plausible, fc.subarray([...BASIS_IDS], { minLength: 1 }), fc.constantFrom(...BASIS_IDS), (item, some, one) => {
        const cells = cellsOfItem(item);
        const before = judged(cells, some.join(",")),
          after = judged(cells, [...some, one].join(","));
        if (before.deciding !== null && before.deciding.criterion !== null)
          expect(rank(after.decision), `${some.join(",")} + ${one}\n${told(before)}\n${told(after)}`).toBeLessThanOrEqual(
            rank(before.decision),
          );
      }),
      runs(2000),
    );
  });
  it("a set is never better than a set that it contains: strict than practice", () => {
    const contained = BASIS_IDS.flatMap((id) => [...inForce([id])].filter((other) => other !== id).map((other) => [id, other] as const));
    expect(contained).toEqual([["strict", "practice"]]);
    for (const [set, part] of contained)
      fc.assert(
        fc.property(plausible, (item) => {
          const cells = cellsOfItem(item);
          const whole = judged(cells, set),
            some = judged(cells, part);
          expect(rank(whole.decision), `${told(some)}\n${told(whole)}`).toBeLessThanOrEqual(rank(some.decision));
        }),
        runs(1500),
      );
  });
  it("several together are never better than any one of them that has a limit for what decides", () => {
    fc.assert(
      fc.property(plausible, basisArb, (item, basis) => {
        const cells = cellsOfItem(item),
          all = judged(cells, basis);
        for (const one of basis.split(",")) {
          const alone = judged(cells, one);
          if (alone.deciding !== null && alone.deciding.criterion !== null)
            expect(rank(all.decision), `${one} of ${basis}\n${told(alone)}\n${told(all)}`).toBeLessThanOrEqual(rank(alone.decision));
        }
      }),
      runs(800),
    );
  });
});

/** All columns that items of any kind fill, with a column of remarks that stays blank. */
const COLUMNS: readonly FieldId[] = FIELD_IDS.filter((id) => id !== "overload");
const HEADERS = [COLUMNS.map((id) => FIELDS[id].heading)];
const rowOf = (cells: CellRecord): CellValue[] => COLUMNS.map((id) => cells[id] ?? "");

describe("the rows of a log", () => {
  it("may stand in any order", () => {
    const days = fc.constantFrom<CellValue>("", 46000, 46001, 46002);
    const row = fc.record({
      item: plausible,
      assembly: fc.constantFrom("", "A", "B"),
      inspected: days,
      tagged: fc.constantFrom<CellValue>("", "", "", "yes"),
    });
    const order = fc.array(row, { minLength: 2, maxLength: 6 }).chain((rows) =>
      fc.record({
        rows: fc.constant(rows),
        order: fc.shuffledSubarray(
          rows.map((_, i) => i),
          { minLength: rows.length },
        ),
      }),
    );
    fc.assert(
      fc.property(order, ({ rows, order: turned }) => {
        const grid = rows.map((r, i) =>
          rowOf({ ...cellsOfItem(r.item), id: `X-${String(i)}`, assembly: r.assembly, inspected: r.inspected, tagged: r.tagged }),
        );
        const straight = judgeRowsOf(HEADERS, grid, null),
          shuffled = judgeRowsOf(
            HEADERS,
            turned.map((i) => grid[i] ?? []),
            null,
          );
        expect(shuffled.map((v) => [v.decision, v.reason])).toEqual(turned.map((i) => [straight[i]?.decision, straight[i]?.reason]));
      }),
      runs(250),
    );
  });
});

describe("blank cells, as different hosts hand them over", () => {
  const blanked = plausible.chain((item) =>
    fc.record({ item: fc.constant(item), gone: fc.subarray(COLUMNS.filter((id) => id !== "gear")) }),
  );
  const row = (item: Item, gone: readonly FieldId[], blank: CellValue): CellValue[] => {
    const cells = cellsOfItem(item);
    return COLUMNS.map((id) => (gone.includes(id) || cells[id] === undefined || cells[id] === "" ? blank : cells[id]));
  };

  it("as null, as undefined and as empty text are the same", () => {
    fc.assert(
      fc.property(blanked, ({ item, gone }) => {
        const [guarded, asNull] = [row(item, gone, ""), row(item, gone, null)];
        expect(verdict(HEADERS, [asNull])).toBe(verdict(HEADERS, [guarded]));
        expect(judge(HEADERS, [asNull])).toEqual(judge(HEADERS, [guarded]));
        expect(verdict(HEADERS, [row(item, gone, undefined)])).toBe(verdict(HEADERS, [guarded]));
      }),
      runs(400),
    );
  });
  it("as 0 never keep an item that blank cells do not keep", () => {
    fc.assert(
      fc.property(blanked, ({ item, gone }) => {
        // The remarks are blank, so a 0 stands where none can, and no 0 of the row is trusted.
        const guarded = verdict(HEADERS, [row(item, gone, "")]),
          unguarded = verdict(HEADERS, [row(item, gone, 0)]);
        if (!outOfUse(unguarded as ItemVerdict["decision"]))
          expect(outOfUse(guarded as ItemVerdict["decision"]), `${unguarded} against ${guarded}`).toBe(false);
        expect(judge(HEADERS, [row(item, gone, 0)])[0]?.[0]).toBe(unguarded);
      }),
      runs(600),
    );
  });
  it("a blank row is NO VERDICT in every host", () => {
    for (const blank of [0, null, "", undefined]) {
      expect(verdict(HEADERS, [COLUMNS.map(() => blank)])).toBe("NO VERDICT");
      expect(judge(HEADERS, [COLUMNS.map(() => blank)])[0]?.[0]).toBe("NO VERDICT");
    }
  });
  it("a row of which only the gear is there is NO VERDICT in every host", () => {
    for (const kind of GEAR)
      for (const blank of [0, null, "", undefined])
        expect(verdict(HEADERS, [COLUMNS.map((id) => (id === "gear" ? kind.id : blank))]), `${kind.id}, ${String(blank)}`).toBe(
          "NO VERDICT",
        );
  });
  it("a blank size or observation as 0 is missing even where every text is filled", () => {
    fc.assert(
      fc.property(plausible, fc.nat(), (item, pick) => {
        const ids = requiredOf(item.kind).filter((id) => !["count", "angle"].includes(field(id).type) && !NOTHING_THERE.includes(id));
        const gone = ids[pick % ids.length]!;
        const cells: CellRecord = { ...cellsOfItem(item), construction: "strand laid", [gone]: 0 };
        const columns = COLUMNS.filter((id) => cells[id] !== undefined);
        const result = verdict([columns.map((id) => FIELDS[id].heading)], [columns.map((id) => cells[id])]);
        expect(outOfUse(result as ItemVerdict["decision"]), `${item.kind.id} without ${gone}: ${result}`).toBe(true);
      }),
      runs(600),
    );
  });
});

/** One item from its cells, and tables of cases that must cover every criterion of a gear kind. */
import { sentenceOf } from "../../src/engine/check/sentences";
import { describe, expect, it } from "vitest";
import { DEFAULT_BASIS, type BasisId } from "../../src/engine/rules/rule-sets";
import { readBasis } from "../../src/engine/house/rules-in-force";
import { FIELD_IDS, field, type FieldId } from "../../src/engine/columns";
import { GEAR } from "../../src/engine/gear/index";
import { type GearKind } from "../../src/engine/gear/kind";
import { LogJudge } from "../../src/engine/item/judge";
import { type CellValue } from "../../src/engine/reading/cell-value";
import { type Finding } from "../../src/engine/check/finding";
import { type ItemVerdict } from "../../src/engine/item/verdict";
import { fieldsOf } from "../../src/engine/gear/columns-of";
import { outOfUse, type Decision } from "../../src/engine/decision";
import { REQUIRED_READINGS } from "../fixtures/required-readings";

export type CellRecord = Partial<Record<FieldId, CellValue>>;

export function kindNamed(id: string): GearKind {
  const kind = GEAR.find((k) => k.id === id);
  if (!kind) throw new Error(`No gear kind "${id}"`);
  return kind;
}

export function bases(basis: string): readonly BasisId[] {
  const choice = readBasis(basis);
  if (!choice.ok) throw new Error(choice.why);
  return choice.ids;
}

/** Judges one item by its cells, headings as in the register. `part` is what the section columns stand for. */
export function judged(cells: CellRecord, basis: string = DEFAULT_BASIS.join(","), part?: string, asOf: number | null = null): ItemVerdict {
  const values = new Map(Object.entries(cells) as [FieldId, CellValue][]);
  const columns = { fields: [...values.keys()], units: new Map(), names: new Map(), part };
  return new LogJudge(columns, { basis: bases(basis), asOf }).judgeCells(values);
}

export function fieldOfHeading(heading: string): FieldId {
  const id = FIELD_IDS.find((f) => field(f).heading === heading);
  if (!id) throw new Error(`No field has the heading "${heading}"`);
  return id;
}

const LOAD_CHAIN: CellRecord = {
  unit: "mm",
  sectionNow: 7.1,
  linkLeast: 6.4,
  gaugedNow: 231,
  gaugedMost: 236,
  cracks: "none",
  deformed: "none",
  corrosion: "none",
};
const HOIST: CellRecord = {
  ...LOAD_CHAIN,
  throatNew: 30,
  throatNow: 30,
  hookNew: 20,
  hookNow: 20,
  twist: 0,
  latch: "yes",
  brake: "yes",
  controls: "yes",
  fasteners: "yes",
  tag: "yes",
};
/** Items on which nothing is worn and nothing is wrong, one for each gear kind. */
export const GOOD: Readonly<Record<string, CellRecord>> = {
  hook: {
    gear: "hook",
    unit: "in",
    throatNew: 2,
    throatNow: 2,
    sectionNew: 1.5,
    sectionNow: 1.5,
    twist: 0,
    cracks: "none",
    latch: "yes",
    tag: "yes",
  },
  shackle: {
    gear: "shackle",
    unit: "mm",
    sectionNew: 20,
    sectionNow: 20,
    pinNew: 22,
    pinNow: 22,
    pinSeated: "yes",
    cracks: "none",
    deformed: "none",
    tag: "yes",
  },
  link: { gear: "link", unit: "mm", sectionNew: 30, sectionNow: 30, cracks: "none", deformed: "none", tag: "yes" },
  swivel: {
    gear: "swivel",
    unit: "in",
    turnsFreely: "yes",
    clearance: 0.05,
    sectionNew: 1,
    sectionNow: 1,
    cracks: "none",
    deformed: "none",
    tag: "yes",
  },
  block: {
    gear: "block",
    unit: "mm",
    sectionNew: 12,
    sectionNow: 12,
    sheaveTrue: "yes",
    fasteners: "yes",
    cracks: "none",
    deformed: "none",
    tag: "yes",
  },
  "chain sling": { gear: "chain sling", unit: "in", size: "3/8", sectionNow: 0.375, deformed: "none", cracks: "none", tag: "yes" },
  "wire rope sling": {
    gear: "wire rope sling",
    construction: "strand laid",
    brokenLay: 0,
    brokenStrand: 0,
    kinks: "none",
    endFittings: "yes",
    heat: "none",
    corrosion: "none",
    tag: "yes",
  },
  "web sling": { gear: "web sling", cuts: "none", stitching: "yes", heat: "none", chemical: "none", endFittings: "yes", tag: "yes" },
  roundsling: { gear: "roundsling", cuts: "none", stitching: "yes", heat: "none", chemical: "none", endFittings: "yes", tag: "yes" },
  eyebolt: { gear: "eyebolt", unit: "mm", sectionNew: 20, sectionNow: 20, threads: "yes", cracks: "none", deformed: "none", tag: "yes" },
  "eye nut": { gear: "eye nut", unit: "mm", sectionNew: 20, sectionNow: 20, threads: "yes", cracks: "none", deformed: "none", tag: "yes" },
  "hoist ring": {
    gear: "hoist ring",
    unit: "mm",
    sectionNew: 20,
    sectionNow: 20,
    turnsFreely: "yes",
    threads: "yes",
    cracks: "none",
    deformed: "none",
    tag: "yes",
  },
  turnbuckle: {
    gear: "turnbuckle",
    unit: "mm",
    sectionNew: 20,
    sectionNow: 20,
    threads: "yes",
    fasteners: "yes",
    cracks: "none",
    deformed: "none",
    tag: "yes",
  },
  "wedge socket": {
    gear: "wedge socket",
    unit: "mm",
    sectionNew: 20,
    sectionNow: 20,
    pinNew: 20,
    pinNow: 20,
    wedge: "yes",
    fasteners: "yes",
    cracks: "none",
    deformed: "none",
    tag: "yes",
  },
  "end connection": { gear: "end connection", brokenEnd: 0, corrosion: "none", cracks: "none", deformed: "none", endFittings: "yes" },
  clips: {
    gear: "clips",
    unit: "in",
    size: "3/4",
    clipType: "drop forged U-bolt",
    clips: 4,
    clipSpacing: 5,
    liveEnd: "yes",
    fasteners: "yes",
    cracks: "none",
  },
  sheave: { gear: "sheave", unit: "in", size: "1/2", groove: 0.53, sheaveTrue: "yes", cracks: "none" },
  "load block": {
    gear: "load block",
    unit: "in",
    throatNew: 2,
    throatNow: 2,
    sectionNew: 1.5,
    sectionNow: 1.5,
    pinNew: 2,
    pinNow: 2,
    twist: 0,
    latch: "yes",
    sheaveTrue: "yes",
    fasteners: "yes",
    cracks: "none",
    deformed: "none",
    tag: "yes",
  },
  "running rope": {
    gear: "running rope",
    unit: "in",
    size: "1/2",
    ropeNow: 0.5,
    brokenLay: 0,
    brokenStrand: 0,
    kinks: "none",
    strandBroken: "none",
    heat: "none",
    corrosion: "none",
    endFittings: "yes",
  },
  "rotation resistant rope": {
    gear: "rotation resistant rope",
    unit: "in",
    size: "1/2",
    ropeNow: 0.5,
    broken6d: 0,
    broken30d: 0,
    kinks: "none",
    strandBroken: "none",
    heat: "none",
    corrosion: "none",
    endFittings: "yes",
  },
  "standing rope": {
    gear: "standing rope",
    unit: "in",
    size: "1/2",
    ropeNow: 0.5,
    brokenLay: 0,
    brokenEnd: 0,
    kinks: "none",
    strandBroken: "none",
    heat: "none",
    corrosion: "none",
    endFittings: "yes",
  },
  "mesh sling": {
    gear: "mesh sling",
    unit: "mm",
    wireNew: 2,
    wireNow: 2,
    meshBroken: "none",
    turnsFreely: "yes",
    endFittings: "yes",
    tag: "yes",
  },
  "fibre rope sling": { gear: "fibre rope sling", powder: "none", cuts: "none", heat: "none", endFittings: "yes", tag: "yes" },
  "lifting beam": {
    gear: "lifting beam",
    unit: "in",
    span: 120,
    bend: 0,
    sectionNew: 1,
    sectionNow: 1,
    fasteners: "yes",
    cracks: "none",
    deformed: "none",
    tag: "yes",
  },
  "plate clamp": {
    gear: "plate clamp",
    unit: "mm",
    toothNew: 4,
    toothNow: 4,
    sectionNew: 20,
    sectionNow: 20,
    latch: "yes",
    fasteners: "yes",
    cracks: "none",
    deformed: "none",
    tag: "yes",
  },
  "headache ball": {
    gear: "headache ball",
    unit: "in",
    throatNew: 2,
    throatNow: 2,
    sectionNew: 1.5,
    sectionNow: 1.5,
    twist: 0,
    latch: "yes",
    turnsFreely: "yes",
    fasteners: "yes",
    cracks: "none",
    deformed: "none",
    tag: "yes",
  },
  grommet: {
    gear: "grommet",
    construction: "strand laid",
    brokenLay: 0,
    brokenStrand: 0,
    kinks: "none",
    endFittings: "yes",
    heat: "none",
    corrosion: "none",
    tag: "yes",
  },
  "lifting point": {
    gear: "lifting point",
    unit: "mm",
    sectionNew: 20,
    sectionNow: 20,
    threads: "yes",
    weldSeam: "none required",
    pinSeated: "yes",
    cracks: "none",
    deformed: "none",
    tag: "yes",
  },
  coupling: {
    gear: "coupling",
    unit: "mm",
    sectionNew: 20,
    sectionNow: 20,
    fasteners: "yes",
    lock: "none required",
    cracks: "none",
    deformed: "none",
    tag: "yes",
  },
  "chain hoist": { gear: "chain hoist", ...HOIST },
  "lever hoist": { gear: "lever hoist", ...HOIST },
  "load chain": { gear: "load chain", ...LOAD_CHAIN },
  "beam clamp": {
    gear: "beam clamp",
    unit: "mm",
    sectionNew: 20,
    sectionNow: 20,
    pinSeated: "yes",
    wheels: "none required",
    fasteners: "yes",
    cracks: "none",
    deformed: "none",
    tag: "yes",
  },
  "vacuum lifter": {
    gear: "vacuum lifter",
    deformed: "none",
    cracks: "none",
    attachPoints: "yes",
    seals: "yes",
    vacuumLines: "yes",
    vacuumHolds: "yes",
    indicator: "yes",
    tag: "yes",
  },
  "lifting magnet": {
    gear: "lifting magnet",
    magnetFace: "yes",
    attachPoints: "yes",
    controls: "yes",
    indicator: "yes",
    tag: "yes",
    wiring: "none required",
    cracks: "none",
  },
};

export function good(kind: string): CellRecord {
  return GOOD[kind] ?? sound(kindNamed(kind));
}

/** A good item made from the record, for a kind that has none above: everything as new, nothing found. */
function sound(kind: GearKind): CellRecord {
  const cells: CellRecord = { gear: kind.id };
  for (const check of kind.checks) {
    if (check.kind === "loss" || check.kind === "growth") Object.assign(cells, { [check.original]: "20 mm", [check.measured]: "20 mm" });
    else if (check.kind === "seen") cells[check.measured] = field(check.measured).type === "fault" ? "none" : "yes";
    else if (check.kind === "angle" || check.kind === "count") cells[check.measured] = 0;
    else if (check.required) throw new Error(`A good ${kind.id} needs "${check.name}": give it a line in GOOD`);
  }
  return cells;
}

export type Expected = readonly [cells: CellRecord, decision: Decision];

/** A criterion with a limit: readings inside it, exactly on it, just past it. */
export interface LimitCase {
  readonly criterion: string;
  readonly source: string;
  /** Part that the section columns stand for, where it is not the kind's usual one. */
  readonly part?: string;
  readonly inside: Expected;
  readonly edge: Expected;
  readonly past: Expected;
}

/** A criterion that an observation meets: in order, and at fault. */
export interface SightCase {
  readonly criterion: string;
  readonly source: string;
  readonly sound: CellRecord;
  readonly fault: CellRecord;
  /** What the fault leads to; REMOVE when left out. */
  readonly out?: "EXAMINE";
}

/** Cases of one observation under several rule sets, each with its document. */
export function onSight(
  prefix: string,
  check: string,
  cell: FieldId,
  sources: Readonly<Partial<Record<BasisId, string>>>,
  out?: "EXAMINE",
): readonly SightCase[] {
  const fault = field(cell).type === "fault";
  return Object.entries(sources).map(([basis, source]) => ({
    criterion: `${prefix}.${check.replaceAll(" ", "-")}.${basis}`,
    source,
    sound: { [cell]: fault ? "none" : "yes" },
    fault: { [cell]: fault ? "found" : "no" },
    ...(out === undefined ? {} : { out }),
  }));
}

type SizeField = "sectionNew" | "sectionNow" | "pinNew" | "pinNow" | "eyeNew" | "eyeNow";

/** A part of 20 mm as new that comes out at 10 % loss, 2 mm: at 18 mm by "from", below 18 mm by "above". */
export function tenPercent(
  criterion: string,
  source: string,
  word: "above" | "from",
  original: SizeField = "sectionNew",
  measured: SizeField = "sectionNow",
): LimitCase {
  const as = (now: number): CellRecord => ({ unit: "mm", [original]: 20, [measured]: now });
  return { criterion, source, inside: [as(19), "KEEP"], edge: [as(18), word === "from" ? "REMOVE" : "WATCH"], past: [as(17.99), "REMOVE"] };
}

/** 20 mm one way and 30 mm the other, worn both ways: 5 % each, 1 mm of the first. */
export function twoWays(criterion: string): LimitCase {
  const as = (now: number): CellRecord => ({ unit: "mm", sectionNew: 20, sectionNow: now, acrossNew: 30, acrossNow: 29.9 });
  return { criterion, source: PRACTICE, inside: [as(19.8), "KEEP"], edge: [as(19), "WATCH"], past: [as(18.99), "REMOVE"] };
}

/** A nick in a part of 20 mm: 5 % is 1 mm. */
export function fivePercentNick(criterion: string, part: string): LimitCase {
  const as = (nickDepth: number): CellRecord => ({ unit: "mm", sectionNew: 20, sectionNow: 20, nickDepth, nickPart: part });
  return { criterion, source: PRACTICE, inside: [as(0.5), "DRESS"], edge: [as(1), "DRESS"], past: [as(1.01), "REMOVE"] };
}

/** What Table 19 takes out on sight on every fitting. */
export function onEveryFitting(prefix: string, source: string): readonly SightCase[] {
  return [
    ...onSight(prefix, "cracks", "cracks", { standard: source, practice: PRACTICE }),
    ...onSight(prefix, "deformation", "deformed", { standard: source }),
    ...onSight(prefix, "identification", "tag", { standard: source }),
    ...onSight(prefix, "heat damage", "heat", { standard: source }),
    ...onSight(prefix, "corrosion", "corrosion", { standard: source }),
    ...onSight(prefix, "field weld or change", "fieldChange", { standard: source, practice: PRACTICE }),
  ];
}

export const PRACTICE = "common practice, no source";

const basisOf = (criterion: string, kind: GearKind): string => {
  const record = kind.criteria.find((c) => c.id === criterion);
  if (!record) throw new Error(`${kind.id} has no criterion "${criterion}"; its criteria are ${kind.criteria.map((c) => c.id).join(", ")}`);
  return record.basis;
};

function byCriterion(verdict: ItemVerdict, criterion: string): Finding {
  const finding = verdict.findings.find((f) => f.criterion === criterion);
  if (!finding)
    throw new Error(
      `No finding by ${criterion}; there are ${verdict.findings.map((f) => `${f.check}: ${String(f.criterion)} ${f.decision}`).join("; ")}`,
    );
  return finding;
}

/** Every criterion of a kind must have its cases; what is missing is told by name. */
export function coversEveryCriterion(kind: GearKind, usedIds: readonly string[]): void {
  const missing = kind.criteria.map((c) => c.id).filter((id) => !usedIds.includes(id));
  const twice = usedIds.filter((id, index) => usedIds.indexOf(id) !== index);
  const unknown = usedIds.filter((id) => !kind.criteria.some((c) => c.id === id));
  expect({ missing, twice, unknown }, `criteria of ${kind.id} and their cases`).toEqual({ missing: [], twice: [], unknown: [] });
}

/** Runs the tables of one gear kind, and what holds for every kind. */
export function kindTests(
  id: string,
  limits: readonly LimitCase[],
  sights: readonly SightCase[],
  needs: readonly string[] = REQUIRED_READINGS[id] ?? [],
): void {
  const kind = kindNamed(id);
  const item = good(id);

  if (limits.length > 0)
    describe(`${id}: limits`, () => {
      for (const { criterion, source, part, ...cases } of limits) {
        for (const side of ["inside", "edge", "past"] as const) {
          const [cells, decision] = cases[side];
          it(`${criterion}, ${side}: ${decision} (${source})`, () => {
            const verdict = judged({ ...item, ...cells }, basisOf(criterion, kind), part);
            const finding = byCriterion(verdict, criterion);
            expect(finding.decision, sentenceOf(finding)).toBe(decision);
            expect(finding.measured).not.toBeNull();
            if (outOfUse(decision)) expect(outOfUse(verdict.decision)).toBe(true);
            if (decision === "REMOVE") expect(verdict.decision).toBe("REMOVE");
          });
        }
      }
    });

  describe(`${id}: what is seen`, () => {
    for (const { criterion, source, sound, fault, out = "REMOVE" } of sights) {
      const check = kind.criteria.find((c) => c.id === criterion)?.check;
      it(`${criterion}, sound: stays in service (${source})`, () => {
        const { findings } = judged({ ...item, ...sound }, basisOf(criterion, kind));
        const seen = findings.filter((f) => f.check === check);
        expect(seen.map((f) => f.decision)).toEqual(["KEEP"]);
      });
      it(`${criterion}, fault: ${out} (${source})`, () => {
        const verdict = judged({ ...item, ...fault }, basisOf(criterion, kind));
        expect(byCriterion(verdict, criterion).decision).toBe(out);
        expect(verdict.decision).toBe(out);
        expect(verdict.reason).toContain("takes the item out of service");
      });
    }
  });

  describe(`${id}: the whole item`, () => {
    it("every criterion has cases inside, on and past its limit, or sound and at fault", () => {
      coversEveryCriterion(
        kind,
        [...limits, ...sights].map((c) => c.criterion),
      );
      const seen = new Set(kind.criteria.filter((c) => c.limit.word === "any").map((c) => c.id));
      expect(
        limits.map((c) => c.criterion).filter((c) => seen.has(c)),
        "observations among the limits",
      ).toEqual([]);
      expect(
        sights.map((c) => c.criterion).filter((c) => !seen.has(c)),
        "limits among the observations",
      ).toEqual([]);
    });

    it("a complete good item is KEEP, by the default rule sets", () => {
      const verdict = judged(item);
      expect(verdict.decision, verdict.reason).toBe("KEEP");
      expect(verdict.missing).toEqual([]);
      expect(verdict.reason).toMatch(/^Every required check is in order\./);
    });

    const required = needs;
    it("needs the readings that its test lists, no more and no less", () => {
      const read = kind.checks
        .filter((c) => c.required && c.under === undefined)
        .flatMap((c) => (c.kind === "loss" ? [c.original, c.measured] : fieldsOf(c)));
      expect(required.length, `list the headings that a ${id} needs, as the last argument of kindTests`).toBeGreaterThan(3);
      expect([...new Set(read.map((f) => field(f).heading))].sort()).toEqual([...required].sort());
    });

    for (const heading of required) {
      for (const [name, blank] of [
        ["null", null],
        ["empty text", ""],
        ["undefined", undefined],
        ["a space", " "],
        ["n/a", "n/a"],
      ] as const) {
        it(`without "${heading}" (${name}) it is NO VERDICT, and the reason names the heading`, () => {
          const verdict = judged({ ...item, [fieldOfHeading(heading)]: blank });
          expect(verdict.decision).toBe("NO VERDICT");
          expect(verdict.reason).toContain(`"${heading}"`);
          expect(
            verdict.missing.some((m) => m.includes(`(${heading})`)),
            verdict.missing.join("; "),
          ).toBe(true);
        });
      }
    }

    it("REMOVE stands when every other reading is missing", () => {
      const crack: CellRecord = kind.checks.some((c) => c.name === "cracks" && c.required) ? { cracks: "found" } : { endFittings: "no" };
      const verdict = judged({ gear: id, ...crack });
      expect(verdict.decision).toBe("REMOVE");
      const told = new Set(verdict.missing.map((m) => /\(([^)]*)\)$/.exec(m)?.[1]));
      expect(told.size).toBe(required.length - 1);
    });

    it("an empty row of this kind is NO VERDICT and names everything that is needed", () => {
      const verdict = judged({ gear: id });
      expect(verdict.decision).toBe("NO VERDICT");
      for (const heading of required)
        expect(
          verdict.missing.some((m) => m.includes(`(${heading})`)),
          heading,
        ).toBe(true);
    });
  });
}

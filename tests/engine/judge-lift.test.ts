import { unjudged } from "../../src/engine/item/verdict";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { exact, toNumber } from "../../src/engine/numbers/exact";
import { field, type FieldId } from "../../src/engine/columns";
import { judgeHookup, type HookupRequest, type HookupPlace, type HookupResult } from "../../src/engine/lift/judge-lift";
import { loadUnitOfHeading, readLoad, showLoad, type LoadUnit } from "../../src/engine/reading/load";
import { type CellValue } from "../../src/engine/reading/cell-value";
import { type ItemResult } from "../../src/engine/report/model";
import { SERVICE_TEMPERATURE } from "../../src/engine/lift/service-temperature";
import { ROPE_CHOKE_ROWS, STRICTER_CHOKE_ROWS } from "../fixtures/capacity";
import { judged } from "./helpers";

const AS_OF = 46351;

/** An item in good order whose rated load is typed as given. */
function gear(id: string, kind: string, ratedLoad: CellValue, more: Partial<ItemResult> = {}): ItemResult {
  const cells = new Map<FieldId, CellValue>([
    ["id", id],
    ["gear", kind],
    ["ratedLoad", ratedLoad],
  ]);
  return {
    row: 4,
    id,
    gear: kind,
    gearText: kind,
    place: "",
    assembly: "",
    tagged: false,
    nextDue: AS_OF + 100,
    dueState: "CURRENT",
    dueNote: "",
    cells,
    verdict: { ...unjudged("Sound."), decision: "KEEP" },
    ...more,
  };
}

/** The same with further cells of its row. */
const withCells = (
  id: string,
  kind: string,
  ratedLoad: CellValue,
  cells: Partial<Record<FieldId, CellValue>>,
  gearText = kind,
): ItemResult => {
  const item = gear(id, kind, ratedLoad, { gearText });
  return { ...item, cells: new Map([...item.cells, ...(Object.entries(cells) as [FieldId, CellValue][])]) };
};

const at = (place: HookupPlace, ...items: ItemResult[]): HookupRequest["items"] => items.map((item) => ({ item, place }));
const slings = (count: number, rated: CellValue, kind = "chain sling"): HookupRequest["items"] =>
  at("leg", ...Array.from({ length: count }, (_, i) => gear(`L-${String(i + 1)}`, kind, rated)));

function lift(more: Partial<HookupRequest>): HookupResult {
  return judgeHookup({
    items: slings(2, "7,100 lb"),
    load: "10,000 lb",
    legs: "2",
    angle: "60",
    angleFrom: "horizontal",
    hitch: "vertical",
    asOf: AS_OF,
    ...more,
  });
}

const number = (load: { readonly value: ReturnType<typeof exact> } | null): number => (load === null ? NaN : toNumber(load.value));

describe("reading a load", () => {
  it.each<[CellValue, string, LoadUnit]>([
    ["3.25 t", "3.25", "t"],
    ["3,25 t", "3.25", "t"],
    ["3.25t", "3.25", "t"],
    ["3 1/4 t", "13/4", "t"],
    ["1/2 tonne", "1/2", "t"],
    ["2 metric tons", "2", "t"],
    ["4,750 lb", "4750", "lb"],
    ["4750 lbs", "4750", "lb"],
    ["12,500.5 lb", "12500.5", "lb"],
    ["WLL 2 t", "2", "t"],
    ["SWL: 500 kg", "500", "kg"],
    ["2000 kg", "2000", "kg"],
    ["2 000 kg", "2000", "kg"],
    ["12.500,5 kg", "12500.5", "kg"],
    ["5 short tons", "5", "short ton"],
    [".5 t", "0.5", "t"],
  ])("takes %j exactly", (cell, value, unit) => {
    const read = readLoad(cell);
    expect(read.kind).toBe("value");
    if (read.kind === "value") expect([read.value.value.equals(exact(value)), read.value.unit]).toEqual([true, unit]);
  });

  it.each<[CellValue, RegExp]>([
    ["3 ton", /2,000 lb, 2,240 lb or 1,000 kg/],
    ["3 tons", /short ton or tonne/],
    ["3.25 T", /tonnes or tons of 2,000 lb/],
    ["20 kN", /mass and kN is a force/],
    ["2000 kgf", /is a force/],
    ["3.25", /no unit/],
    [3.25, /no unit/],
    ["3,250 t", /3\.250 or 3250 t/],
    ["2.000 kg", /2000 or 2 kg/],
    ["4.750 lb", /4750 or 4\.75 lb/],
    ["3.25 t at 60 deg", /no unit of load/],
    ["2 x 3 t", /no unit of load/],
    ["~3 t", /not a plain load/],
    ["3 t?", /no unit of load/],
    ["-2 t", /negative/],
    ["heavy", /not a plain load/],
    [true, /yes or no/],
    [{ serial: 46000 }, /date/],
    ["#REF!", /error/],
    ["5/4 t", /not a proper fraction/],
    ["0/5 t", /fraction of 0/],
    ["1.2.3 t", /one number/],
    ["3 stone", /no unit of load/],
  ])("refuses %j", (cell, why) => {
    const read = readLoad(cell);
    expect(read.kind).toBe("refused");
    if (read.kind === "refused") expect(read.why).toMatch(why);
  });

  it.each<CellValue>([null, undefined, "", " ", 0, "0 t", "n/a", "-", "unknown"])("counts %j as missing", (cell) => {
    expect(readLoad(cell).kind).toBe("missing");
  });

  it("gives a bare figure the unit that its heading names", () => {
    const read = readLoad(3.25, "t");
    expect(read.kind === "value" && read.text).toBe("3.25 t");
    expect(
      ["WLL (t)", "SWL kg", "Rated load lbs", "Capacity [short tons]", "Rated load", "Working load limit", "WLL (ton)", "WLL (T)"].map(
        loadUnitOfHeading,
      ),
    ).toEqual(["t", "kg", "lb", "short ton", null, null, null, null]);
  });

  it.each([
    "WLL lbs/kg",
    "WLL kg or lb",
    "Capacity (kg) / (lb)",
    "WLL kg, lb",
    "WLL lb (kg)",
    "WLL T / kg",
    "Rated load, tons or lb",
    "WLL kN kg",
    "WLL short tons/t",
    "SWL lb-kg",
    "WLL cwt/kg",
    "WLL mt (lb)",
    "WLL kg and t",
  ])("takes no unit from a heading that names two: %s", (heading) => {
    expect(loadUnitOfHeading(heading)).toBeNull();
  });

  it("takes the one unit that a heading names twice", () => {
    expect(["WLL, metric tons (t)", "Rated load in pounds (lbs.)", "US short tons"].map(loadUnitOfHeading)).toEqual([
      "t",
      "lb",
      "short ton",
    ]);
  });

  it("shows a need rounded up and a rating rounded down", () => {
    const load = { value: exact("5773.50269"), unit: "lb" as const };
    expect([showLoad(load, "up"), showLoad(load, "down")]).toEqual(["5,774 lb", "5,773 lb"]);
    expect(showLoad({ value: exact("3.25"), unit: "t" }, "up")).toBe("3.25 t");
  });
});

describe("tension in a leg", () => {
  // Published tension factors 1 / sin h (T4), each within 0.0015 (the print rounds 35 degrees down); two legs carry half of it each.
  it.each([
    [90, 1.0],
    [75, 1.035],
    [60, 1.155],
    [50, 1.305],
    [45, 1.414],
    [40, 1.555],
    [35, 1.742],
    [30, 2.0],
  ])("two legs at %d degrees from horizontal carry half of %d times the load each", (angle, factor) => {
    expect(number(lift({ load: "2000 kg", angle: String(angle) }).perLeg) / 1000 - factor).toSatisfy(
      (off: number) => Math.abs(off) <= 0.0015,
    );
  });

  it("takes no angle between two of three or four legs, which depends on which two", () => {
    // Four legs, 60 degrees between neighbours, stand at 45 degrees from horizontal: 1 / sin 45 for each ton, not 1 / sin 60.
    for (const legs of [3, 4]) {
      const between = lift({ items: slings(legs, "9 t"), legs, load: "1 t", angle: "60", angleFrom: "included" });
      expect([between.ok, between.perLeg]).toEqual([false, null]);
      expect(between.refusals[0]).toMatch(/angle between two legs .* measure it from horizontal or vertical/);
      expect(lift({ items: slings(legs, "9 t"), legs, load: "1 t", angle: "30", angleFrom: "vertical" }).ok).toBe(true);
    }
    expect(lift({ items: slings(2, "9 t"), load: "1 t", hitch: "basket", angle: "60", angleFrom: "included" }).refusals[0]).toMatch(
      /measure it from horizontal or vertical/,
    );
    expect(lift({ items: slings(1, "9 t"), legs: 1, load: "1 t", hitch: "basket", angle: "60", angleFrom: "included" }).ok).toBe(true);
    // 120 degrees between two legs is 30 from horizontal, the flattest that is taken.
    expect([
      lift({ load: "7100 lb", angle: "120", angleFrom: "included" }).ok,
      lift({ load: "7101 lb", angle: "120", angleFrom: "included" }).ok,
      lift({ load: "1 lb", angle: "120.1", angleFrom: "included" }).ok,
    ]).toEqual([true, false, false]);
    for (const angleFrom of ["horizontal", "vertical", "included"])
      expect([angleFrom, lift({ load: "1 lb", angle: "-60", angleFrom }).ok]).toEqual([angleFrom, false]);
  });

  it("of one leg that does not hang straight pulls on what is on top of it as well", () => {
    // One leg at 30 degrees under 1 t is pulled by 2 t, and so is the hook that holds it.
    const one = (rated: string, angle: CellValue): HookupResult =>
      lift({ items: [...slings(1, "9 t"), ...at("top", gear("H-1", "hook", rated))], legs: 1, load: "1 t", angle });
    expect([one("2 t", "30").ok, one("1.999 t", "30").ok, one("1 t", "90").ok, one("1 t", "").ok]).toEqual([true, false, true, true]);
    expect(one("2 t", "30").lines[1]?.carries).toEqual({ share: 2, words: "the tension of one leg" });
    expect(lift({ items: at("top", gear("L-1", "chain sling", "1.999 t")), legs: 1, load: "1 t", angle: "30" }).ok).toBe(false);
  });

  it("says that no sling stands in a leg when the only one is on top", () => {
    expect(lift({ items: at("top", gear("L-1", "chain sling", "9 t")), legs: 2, load: "1 t" }).cautions.join(" ")).toMatch(
      /No sling is picked for the legs/,
    );
    expect(lift({}).cautions.join(" ")).not.toMatch(/No sling is picked/);
  });

  it("is the same for 60 from horizontal, 30 from vertical and 60 included", () => {
    const one = lift({});
    expect(number(one.perLeg)).toBeCloseTo(5773.5, 1);
    expect(number(lift({ angle: "30", angleFrom: "vertical" }).perLeg)).toBe(number(one.perLeg));
    expect(number(lift({ angle: "60", angleFrom: "included" }).perLeg)).toBe(number(one.perLeg));
  });

  it("counts three of four legs, and two when only two are trusted", () => {
    expect(number(lift({ items: slings(4, "9 t"), load: "9 t", legs: 4, angle: 90 }).perLeg)).toBe(3);
    expect(number(lift({ items: slings(4, "9 t"), load: "9 t", legs: 4, angle: 90, strict: true }).perLeg)).toBe(4.5);
    expect(lift({ items: slings(4, "9 t"), load: "9 t", legs: 4, angle: 90 }).perLegFrom).toContain("of which 3 are counted");
  });

  it("counts two parts for each sling in a basket hitch", () => {
    // One sling upright: two parts, each half of 4 t.
    const one = lift({ items: slings(1, "2 t", "roundsling"), load: "4 t", legs: 1, angle: 90, hitch: "basket" });
    expect([number(one.perLeg), one.lines[0]?.decision]).toEqual([2, "CARRIES"]);
    expect(lift({ items: slings(1, "2 t", "roundsling"), load: "4.001 t", legs: 1, angle: 90, hitch: "basket" }).lines[0]?.decision).toBe(
      "OVERLOADED",
    );
    expect(lift({ legs: 3, items: slings(3, "2 t"), hitch: "basket" }).refusals[0]).toMatch(/More than two slings in basket hitches/);
  });

  it("hangs straight when one leg has no angle; 0 degrees is no blank", () => {
    const one = (angle: CellValue, more: Partial<HookupRequest> = {}): HookupResult =>
      lift({ items: slings(1, "9 t"), load: "5 t", legs: 1, angle, ...more });
    expect(number(one("").perLeg)).toBe(5);
    for (const angle of [0, "0"]) expect(one(angle).refusals[0]).toMatch(/less than 30 degrees.*type 90/);
    expect(number(one(0, { angleFrom: "vertical" }).perLeg)).toBe(5);
    expect(one(0, { angleFrom: "vertical" }).perLegFrom).toContain("at 0 degrees from vertical");
  });

  it("of both parts of a basket sees the hardware in its leg", () => {
    // One roundsling upright under 4 t: each part 2 t, the shackle that holds both eyes 4 t.
    const held = (rated: string, more: Partial<HookupRequest> = {}): HookupResult =>
      lift({
        items: [...slings(1, "2 t", "roundsling"), ...at("leg", gear("S-1", "shackle", rated))],
        load: "4 t",
        legs: 1,
        angle: 90,
        hitch: "basket",
        ...more,
      });
    expect([held("4 t").ok, held("3.999 t").ok, held("2 t").lines[1]?.decision]).toEqual([true, false, "OVERLOADED"]);
    expect(held("4 t").lines.map((line) => [line.carries?.words, line.carries?.share, number(line.needed)])).toEqual([
      ["one part of the basket", 0.5, 2],
      ["both parts of a basket", 1, 4],
    ]);
    // A sling in a choker or vertical hitch has one part.
    expect(held("4 t", { hitch: "vertical" }).lines[1]?.carries?.words).toBe("the tension of one leg");
  });

  it("says why two of three or four legs may be all that carry", () => {
    const caution = (legs: number, more: Partial<HookupRequest> = {}): string =>
      lift({ items: slings(legs, "9 t"), legs, ...more }).cautions.join(" ");
    expect(caution(4)).toMatch(/Three legs are counted.*Navy handbook.*two-leg sling.*three and four legs/);
    expect(caution(3)).toMatch(/Navy handbook/);
    expect([caution(4, { strict: true }), caution(2)].filter((words) => words.includes("Navy"))).toEqual([]);
  });
});

describe("the rated load", () => {
  // Rated loads of alloy chain slings (T13): [size, grade, single, legs counted, angle, printed]. The print is rounded to 100 lb,
  // so 60 lb below it carries and 60 lb above it does not.
  it.each([
    ["7/32 in grade 80", 2100, 2, 60, 3600],
    ["3/8 in grade 80", 7100, 2, 60, 12300],
    ["3/8 in grade 80", 7100, 2, 45, 10000],
    ["3/8 in grade 80", 7100, 2, 30, 7100],
    ["1/2 in grade 80", 12000, 3, 60, 31200],
    ["1 in grade 80", 47700, 3, 45, 101200],
    ["10 mm grade 100", 8800, 2, 60, 15200],
    ["1/2 in grade 100", 15000, 3, 30, 22500],
  ])("%s, %d lb, %d legs at %d degrees: %d lb as published", (_, single, legs, angle, printed) => {
    const judgeAt = (load: number): boolean =>
      lift({ items: slings(legs, `${String(single)} lb`), legs, angle: String(angle), load: `${String(load)} lb` }).ok;
    expect([judgeAt(printed - 60), judgeAt(printed + 60)]).toEqual([true, false]);
  });

  it("carries exactly its rated load and no pound more", () => {
    expect(lift({ angle: "30", load: "7100 lb" })).toMatchObject({ ok: true, margin: 0 });
    expect(lift({ angle: "30", load: "7100.001 lb" }).lines.map((l) => l.decision)).toEqual(["OVERLOADED", "OVERLOADED"]);
    // 3 x 0.1 t is exactly 0.3 t, though binary arithmetic says 0.30000000000000004.
    expect(lift({ items: slings(3, "0.1 t"), legs: 3, angle: 90, load: "0.3 t" }).ok).toBe(true);
    // 1 lb is 0.45359237 kg exactly.
    expect(lift({ items: slings(1, "2000 lb"), legs: 1, angle: "", load: "907.18474 kg" }).ok).toBe(true);
    expect(lift({ items: slings(1, "2000 lb"), legs: 1, angle: "", load: "907.18475 kg" }).ok).toBe(false);
    expect(lift({ items: slings(1, "1 short ton"), legs: 1, angle: "", load: "2000 lb" }).ok).toBe(true);
  });

  it("takes 30 degrees and refuses 29.9", () => {
    expect(lift({ angle: "30", load: "7000 lb" }).ok).toBe(true);
    const flat = lift({ angle: "29.9", load: "10 lb" });
    expect(flat.ok).toBe(false);
    expect(flat.refusals[0]).toMatch(/less than 30 degrees/);
    expect(flat.lines.every((line) => line.decision === "REFUSED")).toBe(true);
  });

  it("in a choker hitch is 75 %, and less when the choke is tight", () => {
    // 4 t straight: choker 3 t; below 30 degrees 49 % of that: 1.47 t (T6), of web and fibre.
    const choke = (load: string, chokeAngle: CellValue): HookupResult =>
      lift({ items: slings(1, "4 t", "web sling"), legs: 1, angle: "", hitch: "choker", load, chokeAngle });
    expect([choke("3 t", 130).ok, choke("3.001 t", 130).ok]).toEqual([true, false]);
    expect([choke("1.47 t", 29).ok, choke("1.471 t", 29).ok]).toEqual([true, false]);
    expect([choke("2.61 t", 120).ok, choke("2.611 t", 120).ok]).toEqual([true, false]);
    expect(choke("1 t", 45).lines[0]?.ratedFrom).toMatch(
      /^tag: 4 t in column Rated load, read as one leg hanging straight; choker hitch 75 % \(.*\); choke angle 45 degrees 62 % \(/,
    );
    expect(choke("1 t", "").refusals[0]).toMatch(/Still to give: the choke angle/);
    // 0 is no blank: it is the tightest choke.
    expect([choke("1.47 t", 0).ok, choke("1.471 t", 0).ok, choke("1.471 t", "0").ok]).toEqual([true, false, false]);
    for (const bad of [-1, 181, "tight"]) expect(choke("1 kg", bad).refusals[0]).toMatch(/choke angle/);
  });

  it("of a wire rope sling in a choker hitch is 75 % from 120 degrees and 40 % below, the stricter of two published readings", () => {
    for (const [angle, percent] of ROPE_CHOKE_ROWS) {
      const choke = (load: string): HookupResult =>
        lift({ items: slings(1, "10 t", "wire rope sling"), legs: 1, angle: "", hitch: "choker", load, chokeAngle: angle });
      expect([choke(`${String(percent * 100)} kg`).ok, choke(`${String(percent * 100 + 1)} kg`).ok], String(angle)).toEqual([true, false]);
    }
  });
  it("of a chain sling in a choker hitch takes the stricter of the choker table and the chain table", () => {
    for (const [angle, percent] of STRICTER_CHOKE_ROWS) {
      const most = `${String(percent * 100)} kg`;
      const choke = (load: string): HookupResult =>
        lift({ items: slings(1, "10 t"), legs: 1, angle: "", hitch: "choker", load, chokeAngle: angle });
      expect([choke(most).ok, choke(`${String(percent * 100 + 1)} kg`).ok], String(angle)).toEqual([true, false]);
    }
    const tight = (chokeAngle: CellValue): HookupResult =>
      lift({ items: slings(1, "10 t"), legs: 1, angle: "", hitch: "choker", load: "1 kg", chokeAngle });
    for (const angle of [29.9, "29", 0, "0"])
      expect(tight(angle).refusals[0]).toMatch(/L-1 \(chain sling\).*choke angle is less than 30 degrees/);
    expect(tight(45).lines[0]?.ratedFrom).toMatch(
      /; choker hitch, choke angle 45 degrees, 40 % of the straight rating \(chain sling brochure/,
    );
    expect(tight(130).lines[0]?.ratedFrom).toMatch(/; choker hitch 75 % \(typical of US sling tables\)$/);
  });

  it("of a choker or basket hitch needs the sling that stands in it", () => {
    for (const hitch of ["choker", "basket"]) {
      const sling = gear("L-1", "wire rope sling", "9 t");
      const more = { legs: 1, angle: 90, hitch, chokeAngle: 130, load: "1 kg" };
      expect(lift({ items: at("top", sling), ...more }).refusals.join(" ")).toMatch(new RegExp(`${hitch} hitch.*no sling stands in a leg`));
      expect(lift({ items: at("top", gear("S-1", "shackle", "9 t")), ...more }).ok).toBe(false);
      expect(lift({ items: at("leg", sling), ...more }).ok).toBe(true);
    }
    expect(lift({ items: at("top", gear("L-1", "wire rope sling", "9 t")), legs: 1, angle: 90, load: "1 kg" }).ok).toBe(true);
  });

  it("of hot alloy chain follows its grade; without a grade it is refused", () => {
    // Grade 80 at 800 F: 7,100 lb less 40 % is 4,260 lb (T5).
    const hot = (load: string, more: Partial<HookupRequest>): HookupResult =>
      lift({ items: slings(1, "7100 lb"), legs: 1, angle: "", load, temperature: "800", temperatureUnit: "F", grade: "80", ...more });
    expect([hot("4260 lb", {}).ok, hot("4261 lb", {}).ok]).toEqual([true, false]);
    // Between 400 and 500 F grade 100 takes the 500 F row: 75 %.
    expect([hot("5325 lb", { grade: "100", temperature: "450" }).ok, hot("5326 lb", { grade: "100", temperature: "450" }).ok]).toEqual([
      true,
      false,
    ]);
    expect(hot("10 lb", { grade: "" }).refusals[0]).toMatch(/L-1 .*grade is missing/);
    expect(hot("10 lb", { temperatureUnit: "" }).refusals[0]).toMatch(/unit is missing/);
    expect(hot("10 lb", { temperature: "1001" }).refusals[0]).toMatch(/not used at 1001 F/);
  });

  it("of hot alloy chain takes the grade that its row names, and refuses a lift that names another", () => {
    const hot = (
      gearText: string,
      grade: CellValue,
      load: string,
      cells: Partial<Record<FieldId, CellValue>> = {},
      more: Partial<HookupRequest> = {},
    ): HookupResult =>
      lift({
        items: at("leg", withCells("C-1", "chain sling", "4 t", cells, gearText)),
        legs: 1,
        angle: "",
        load,
        temperature: "450",
        temperatureUnit: "F",
        grade,
        ...more,
      });
    const NAMED = "Chain sling single leg grade 100";
    expect(hot(NAMED, "80", "3.3 t").refusals).toEqual([
      'C-1 (chain sling) cannot be judged: The row names grade 100 ("Chain sling single leg grade 100") and the lift grade 80; put the wrong one right.',
    ]);
    // Grade 100 at 450 F keeps 75 % of 4 t (row 500 F), grade 80 keeps 85 %.
    for (const grade of ["", null, "100", "10", 100, "Gr 100"])
      expect([hot(NAMED, grade, "3 t").ok, hot(NAMED, grade, "3.001 t").ok], String(grade)).toEqual([true, false]);
    expect(hot(NAMED, "", "3 t").lines[0]?.ratedFrom).toMatch(
      /; heat at 450 F 75 % \(ASME B30\.9 Table 9-1\.8\.1-1, grade 100 as its row names it\)$/,
    );
    expect(hot(NAMED, "100", "3 t").lines[0]?.ratedFrom).toMatch(/grade 100\)$/);
    for (const name of [
      "chain sling G80",
      "Gr. 8 chain sling",
      "chain sling grade T",
      "80 grade chain sling",
      "chain sling 10 grade 80",
      "chain sling grade 80 10 mm",
      "chain sling GR80",
      "chain sling 8 mm grade-8",
    ]) {
      expect([hot(name, "", "3.4 t").ok, hot(name, "", "3.401 t").ok, hot(name, "100", "1 t").ok], name).toEqual([true, false, false]);
    }
    for (const id of ["remarks", "size"] as const)
      expect([
        hot("chain sling", "", "3 t", { [id]: "10 mm G100" }).ok,
        hot("chain sling", "80", "1 t", { [id]: "10 mm G100" }).ok,
      ]).toEqual([true, false]);
    // Two grades in one row cannot both hold.
    for (const [name, cells] of [
      ["chain sling grade 80", { remarks: "grade 100" }],
      ["chain sling grade 80/100", {}],
      ["chain sling grade 8 or 10", {}],
    ] as const)
      for (const grade of ["", "80", "100"])
        expect(hot(name, grade, "1 t", cells).refusals.join(" ")).toMatch(/The row names grade 80 and grade 100/);
    // Nothing hot: the grade changes nothing.
    expect(hot(NAMED, "80", "4 t", {}, { temperature: "" }).ok).toBe(true);
    expect(hot("chain sling", "", "1 t").refusals.join(" ")).toMatch(/grade is missing/);
    expect(hot(NAMED, "T", "1 t").refusals.join(" ")).toMatch(/no grade in the table/);
  });

  it("of hardware holds inside its published temperatures, typed here again from ASME B30.26-2004", () => {
    expect(SERVICE_TEMPERATURE).toMatchObject({
      shackle: { F: ["-40", "400"], C: ["-40", "204"] },
      "hoist ring": { F: ["-20", "400"], C: ["-29", "204"] },
      eyebolt: { F: ["30", "275"], C: ["-1", "135"] },
    });
    const warm = (kind: string, temperature: string, temperatureUnit: string): HookupResult =>
      lift({ items: at("top", gear("P-1", kind, "9 t")), load: "1 t", temperature, temperatureUnit, sideAngles: { "P-1": 0 } });
    expect([
      warm("shackle", "400", "F").ok,
      warm("shackle", "401", "F").ok,
      warm("shackle", "-40", "C").ok,
      warm("shackle", "-41", "C").ok,
    ]).toEqual([true, false, true, false]);
    expect([
      warm("eyebolt", "135", "C").ok,
      warm("eyebolt", "136", "C").ok,
      warm("hoist ring", "-20", "F").ok,
      warm("hoist ring", "-21", "F").ok,
    ]).toEqual([true, false, true, false]);
    expect(warm("swivel", "20", "C").refusals[0]).toMatch(/no heat figure for a swivel/);
  });

  it("is lowered by a side load; an eyebolt needs its angle", () => {
    const side = (kind: string, load: string, angle: CellValue, gearText = kind): HookupResult =>
      lift({ items: at("top", gear("S-1", kind, "2 t", { gearText })), load, sideAngles: { "S-1": angle } });
    expect([
      side("shackle", "1.4 t", 45).ok,
      side("shackle", "1.401 t", 45).ok,
      side("shackle", "1 t", 90).ok,
      side("shackle", "1.001 t", 90).ok,
    ]).toEqual([true, false, true, false]);
    expect([side("shackle", "2 t", "").ok, side("shackle", "2 t", 0).ok]).toEqual([true, true]);
    // No size: the least listed share, 75 of 400 lb.
    expect(["0.375 t", "0.376 t"].map((load) => side("eyebolt", load, 45, "Eye bolt, shoulder").ok)).toEqual([true, false]);
    // ASME B18.15, restated: 1/2 in carries 850 of 1,840 lb at 30 degrees, 520 to 60, 440 to 90. 1/4 in is not recommended beyond 30.
    const sized = (size: string, rated: string, load: string, angle: CellValue): HookupResult => {
      const bolt = gear("S-1", "eyebolt", rated, { gearText: "shoulder eyebolt" });
      return lift({ items: at("top", { ...bolt, cells: new Map(bolt.cells).set("size", size) }), load, sideAngles: { "S-1": angle } });
    };
    for (const [angle, most] of [
      [30, 850],
      [29, 850],
      [45, 520],
      [90, 440],
    ] as const)
      expect(
        [most, most + 1].map((load) => sized("1/2 in", "1840 lb", `${String(load)} lb`, angle).ok),
        String(angle),
      ).toEqual([true, false]);
    expect(sized("1/4 in", "400 lb", "1 lb", 31).refusals[0]).toMatch(/not recommended/);
    expect(sized("5/8 in", "2000 lb", "376 lb", 20).ok).toBe(false);
    expect(sized("1/2 in", "1840 lb", "100 lb", 21).lines[0]?.ratedFrom).toMatch(/WAC 296-304-07011\(4\)/);
    expect(sized("1/2 in", "1840 lb", "100 lb", 20).lines[0]?.ratedFrom).not.toMatch(/07011/);
    for (const plain of ["non-shoulder eyebolt", "plain eye bolt", "eyebolt without shoulder"]) {
      expect(["0", "5"].map((angle) => side("eyebolt", "2 t", angle, plain).ok)).toEqual([true, true]);
      expect(side("eyebolt", "0.01 t", 20, plain).refusals[0]).toMatch(/^S-1 \(eyebolt\) .*in line only/);
    }
    expect(side("eyebolt", "0.01 t", 20).refusals[0]).toMatch(/^S-1 \(eyebolt\) .*"shoulder eyebolt"/);
    expect(side("eyebolt", "2 t", 0).ok).toBe(true);
    expect(side("eyebolt", "0.1 t", "").refusals[0]).toMatch(/side load angle of the eyebolt is missing/);
    expect(side("shackle", "0.1 t", 91).refusals[0]).toMatch(/beyond 90 degrees/);
    expect(side("hook", "0.1 t", 10).refusals[0]).toMatch(/no side-load table/);
  });

  it("is held against the leg in a leg and against the whole load on top", () => {
    const result = lift({
      items: [...slings(2, "7100 lb"), ...at("leg", gear("S-1", "shackle", "3.25 t")), ...at("top", gear("H-1", "hook", "12,000 lb"))],
    });
    expect(result.lines.map((l) => [l.id, l.carries?.words, l.decision])).toEqual([
      ["L-1", "the tension of one leg", "CARRIES"],
      ["L-2", "the tension of one leg", "CARRIES"],
      ["S-1", "the tension of one leg", "CARRIES"],
      ["H-1", "the whole load", "CARRIES"],
    ]);
    // Hook 10,000 of 12,000 lb: 83.3 %; slings 5,773.5 of 7,100 lb: 81.3 %; shackle 5,773.5 of 7,165 lb: 80.6 %.
    expect(result.weakest).toBe("H-1");
    expect(result.margin).toBeCloseTo(1 / 6, 6);
    expect(result.lines[2]?.sentence).toBe(
      "S-1 (shackle) sees the tension of one leg, 5,774 lb, and carries 7,165 lb [tag: 3.25 t in column Rated load].",
    );
  });
});

describe("refusals name the item and what to do", () => {
  const refusal = (item: ItemResult, more: Partial<HookupRequest> = {}): string =>
    lift({ items: at("leg", item), legs: 1, angle: "", load: "1 kg", ...more }).refusals.join(" ");

  it("out of use, tagged out, late, without a date", () => {
    const verdict = { ...gear("", "hook", "").verdict, decision: "REMOVE" as const, reason: "Cracked." };
    expect(refusal(gear("H-1", "hook", "2 t", { verdict }))).toBe("H-1 (hook) is out of use, REMOVE: Cracked.");
    expect(refusal(gear("H-1", "hook", "2 t", { verdict: { ...verdict, decision: "EXAMINE" } }))).toMatch(/out of use, EXAMINE/);
    expect(refusal(gear("H-1", "hook", "2 t", { verdict: { ...verdict, decision: "NO VERDICT" } }))).toMatch(/out of use, NO VERDICT/);
    expect(refusal(gear("H-1", "hook", "2 t", { verdict: { ...verdict, decision: "DRESS" } }))).toMatch(
      /^H-1 \(hook\) is to be dressed and measured again before it is used/,
    );
    expect(refusal(gear("H-1", "hook", "2 t", { tagged: true }))).toMatch(/H-1 \(hook\) is tagged out/);
    expect(refusal(gear("H-1", "hook", "2 t", { nextDue: AS_OF - 1 }))).toMatch(/H-1 \(hook\) is OVERDUE/);
    expect(refusal(gear("H-1", "hook", "2 t", { nextDue: AS_OF }))).toBe(
      "H-1 (hook) is due for inspection today; inspect it before it is used.",
    );
    expect(
      lift({ items: at("leg", gear("H-1", "hook", "2 t", { nextDue: AS_OF + 1 })), legs: 1, angle: "", load: "1 t" }).lines[0]?.decision,
    ).toBe("CARRIES");
    expect(refusal(gear("H-1", "hook", "2 t", { nextDue: null, dueNote: "no date of the last inspection" }))).toMatch(
      /no date of the last inspection/,
    );
  });

  it("takes the engine's own verdicts", () => {
    const cracked = judged({ gear: "link", unit: "mm", sectionNew: 30, sectionNow: 30, cracks: "found", deformed: "none", tag: "yes" });
    expect(refusal(gear("K-1", "link", "9 t", { verdict: cracked }))).toMatch(/^K-1 \(link\) is out of use, REMOVE: Cracks: "found"/);
  });

  it("no rated load, no unit, a force", () => {
    expect(refusal(gear("H-1", "hook", null))).toMatch(/H-1 \(hook\) has no rated load; fill "Rated load"/);
    expect(refusal(gear("H-1", "hook", 2))).toMatch(/no unit/);
    expect(refusal(gear("H-1", "hook", "20 kN"))).toMatch(/force/);
    expect(
      lift({ items: at("leg", gear("H-1", "hook", 2)), legs: 1, angle: "", load: "2 t", ratedUnit: "t", ratedHeading: "WLL (t)" }).lines[0]
        ?.ratedFrom,
    ).toBe("tag: 2 t in column WLL (t)");
  });

  it.each([
    "Basket WLL",
    "WLL basket (t)",
    "Choker WLL (t)",
    "Choked SWL",
    "SWL bridle",
    "2-leg WLL (t)",
    "WLL 4 leg",
    "WLL, legs together",
    "WLL double",
    "WLL at 45 deg",
    "WLL 60°",
    "Capacity at 0-45",
    "Breaking load (t)",
    "Min. break load",
    "Ultimate load",
    "MBL (t)",
    "MBS",
    "Breaking strength",
    "Proof load (t)",
    "Test load WLL",
    "Tested capacity",
    "Old WLL",
    "Original WLL (t)",
    "Orig. WLL",
    "Previous SWL",
    "Former rated load",
    "Derated WLL",
    "De-rated WLL",
    "WLL reduced",
    "WLL estimated",
    "WLL horizontal",
    "Vertical / choker / basket WLL",
    "Crane SWL",
  ])("a column of another load than that of one leg hanging straight: %s", (ratedHeading) => {
    const result = lift({
      items: [...slings(1, "9 t"), ...at("top", gear("S-1", "shackle", "9 t"))],
      legs: 1,
      angle: "",
      load: "1 kg",
      ratedHeading,
    });
    expect(result.ok).toBe(false);
    expect(result.lines.map((line) => line.decision)).toEqual(["REFUSED", "REFUSED"]);
    expect(result.refusals).toEqual([
      `Rated loads stand under "${ratedHeading}": the lift needs the working load limit of one leg hanging straight; name that column in the Log place.`,
    ]);
  });

  it.each([
    "Rated load",
    "WLL (t)",
    "SWL kg",
    "Working load limit",
    "Safe working load (lb)",
    "Vertical WLL",
    "WLL, vertical hitch",
    "WLL single leg (t)",
    "WLL of one leg",
    "WLL per leg",
    "1-leg WLL",
    "Rated capacity, short tons",
    "WLL on the tag",
    "Capacity",
    "WLL straight pull",
    "WLL metric tons (t)",
    "Max. load WLL",
    "WLL latest",
  ])("no column of the straight rating: %s", (ratedHeading) => {
    expect(lift({ items: slings(1, "9 t"), legs: 1, angle: "", load: "1 kg", ratedHeading }).ok).toBe(true);
  });

  it.each([
    "2 t basket",
    "4 t choker",
    "24 t MBL",
    "MBL 24 t",
    "basket 2 t",
    "2 t (4 leg)",
    "2 t proof",
    "WLL 2 t basket",
    "2 t @ 45",
    "2 basket",
    "2 t at 60 deg",
    "2 t double",
    "4-leg 2 t",
    "2/4 t basket",
    "test load 2 t",
    "was 2 t",
  ])("a rated load that says itself that it is another: %s", (rated) => {
    for (const ratedUnit of [null, "t"] as const)
      expect(refusal(gear("H-1", "hook", rated), { ratedUnit })).toMatch(
        /^H-1 \(hook\): the rated load ".*" in "Rated load" cannot be used/,
      );
  });

  it("gear that is not modelled, a sling with several legs, a kind that is not known", () => {
    expect(refusal(gear("B-1", "block", "2 t"))).toMatch(/pull on a block is not modelled/);
    expect(refusal(gear("L-1", "chain sling", "2 t", { gearText: "2-leg chain sling" }))).toMatch(/rates all of them together/);
    expect(refusal(gear("L-1", "chain sling", "2 t", { gearText: "Chain sling, quad leg" }))).toMatch(/rates all of them together/);
    expect(refusal(gear("X-1", "x", "2 t", { gear: null, gearText: "winch" }))).toMatch(/"winch" is no gear kind/);
  });

  it.each([
    "twin leg chain sling",
    "dual leg chain sling",
    "multi-leg chain sling",
    "multileg sling",
    "chain sling 2L",
    "double chain sling",
    "pair of chain slings",
    "4-lg chain sling",
    "II leg chain sling",
    "Chain sling (4 legs)",
    "two-legged chain sling",
    "chain sling, legs: 3",
    "chain bridle",
    "triple chain sling",
    "quadruple chain sling",
    "2 x chain sling",
    "chain sling x2",
    "2 chain sling",
    "chain sling, three chains",
    "set of chain slings",
    "DOS chain sling",
    "chain sling 3 lgs",
    "2leg chain sling",
    "chain sling IV-leg",
    "5 legged chain sling",
    "chain sling per leg",
    "2-1 leg chain sling",
    "bridle of single leg chain slings",
    "pair of single leg chain slings",
    "chain sling 2/leg",
    "chain sling 2 branch",
    "Two-part chain sling",
    "2-strand chain sling",
    "2 x 3 m chain sling",
    "two single leg chain slings",
  ])("never takes the tag of a sling that can have several legs as that of one: %s", (gearText) => {
    expect(refusal(gear("L-1", "chain sling", "2 t", { gearText }))).toMatch(/rates all of them together/);
  });

  it.each([
    ["chain sling", "single leg chain sling"],
    ["chain sling", "1-leg alloy chain sling 3/8"],
    ["chain sling", "Chain leg"],
    ["chain sling", "chain sling single leg"],
    ["chain sling", "Chain sling, 1 leg"],
    ["wire rope sling", "6-part braided wire rope sling"],
    ["chain sling", "single leg chain sling 2-part"],
    ["chain sling", "7 t chain sling"],
    ["chain sling", "3/8 chain sling"],
    ["web sling", "type 3 web sling"],
    ["chain sling", "chain sling 10 mm, 2 m"],
    ["chain sling", "one leg chain sling"],
    ["chain sling", "I leg chain sling"],
    ["chain sling", "chain sling 6 ft lg"],
    ["web sling", "2-ply web sling"],
    ["web sling", "double ply web sling 2 in x 6 ft"],
    ["wire rope sling", "6 x 36 wire rope sling"],
    ["wire rope sling", "wire rope sling 6x19"],
    ["fibre rope sling", "double braided rope sling"],
    ["roundsling", "roundsling 2 m"],
    ["chain sling", "single leg chain sling, double hook"],
  ])("takes a %s named %s as one leg", (kind, gearText) => {
    expect(refusal(gear("L-1", kind, "2 t", { gearText }))).toBe("");
  });

  it.each([
    "Chain sling ADOS",
    "DOSA chain sling",
    "chain sling QOSA",
    "Chain sling D.O.S.",
    "chain sling d.o.s",
    "dos chain sling",
    "Chain sling Q.O.S",
    "TOG chain sling",
    "chain sling DO-S",
    "chain sling DAS",
    "4LCS chain sling",
    "2LS chain sling",
    "Chain sling II",
    "chain sling, III",
    "chain sling IV 10 mm",
    "Chain sling 4",
    "Chain sling c/w 2 grab hooks",
    "chain sling with 2 hooks",
    "chain sling 10 mm with latch hooks",
    "chain sling, two grab hook",
    "chain sling c/w 4 self locking hooks",
  ])("never takes a short name that can mean several legs as that of one: %s", (gearText) => {
    expect(refusal(gear("L-1", "chain sling", "2 t", { gearText }))).toMatch(/can have several legs.*rates all of them together/);
  });

  it.each([
    ["chain sling", "chain sling with grab hook"],
    ["chain sling", "SOS chain sling"],
    ["chain sling", "chain sling 2 t grab hook"],
    ["chain sling", "single leg chain sling with 2 hooks"],
    ["web sling", "type II web sling"],
    ["chain sling", "chain sling no 4"],
    ["chain sling", "2 tons chain sling"],
    ["chain sling", "chain sling TAG 7"],
    ["chain sling", "chain sling 2 lb"],
    ["chain sling", "chain sling grade 8"],
    ["chain sling", "CHAIN SLING TOOL STORE"],
    ["wire rope sling", "wire rope sling class II"],
  ])("takes a %s with a short name for one leg, or none, as one leg: %s", (kind, gearText) => {
    expect(refusal(gear("L-1", kind, "2 t", { gearText }))).toBe("");
  });

  it.each<[string, CellValue]>([
    ["chain sling", 4],
    ["chain sling", "4"],
    ["wire rope sling", "2"],
    ["web sling", "two"],
    ["chain sling", "2-leg"],
    ["chain sling", "DOS"],
    ["chain sling", 0],
    ["chain sling", "yes"],
    ["roundsling", "1/2"],
    ["chain sling", "1 + 1"],
    ["chain sling", { serial: 46000 }],
  ])("a %s whose row has %j legs", (kind, legs) => {
    expect(refusal(withCells("L-1", kind, "6.7 t", { legs }))).toMatch(
      /^L-1 \(.*\) cannot be judged: its row says ".*" under Legs, .*rates all of them together/,
    );
    expect(refusal(withCells("L-1", kind, "6.7 t", { legs }, `single leg ${kind}`))).toMatch(/rates all of them together/);
  });

  it.each<CellValue>(["", null, undefined, 1, "1", "one", "single", "1 leg", "1-leg", "single leg", "n/a", "-"])(
    "takes a sling whose row has %j legs as one leg, and hardware whatever stands there",
    (legs) => {
      expect(refusal(withCells("L-1", "chain sling", "2 t", { legs }))).toBe("");
      expect(refusal(withCells("K-1", "link", "2 t", { legs: 4 }))).toBe("");
    },
  );

  it("a chain sling rated 6.7 t for 4 legs, legs 1 in the lift, 6 t", () => {
    expect(
      lift({ items: at("leg", withCells("C-1", "chain sling", "6.7 t", { legs: 4 }, "Chain sling")), legs: 1, angle: "", load: "6 t" }),
    ).toMatchObject({ ok: false, lines: [{ decision: "REFUSED" }] });
  });

  it.each([
    "4-leg QOS",
    "2 leg",
    "Two legs, one shortened",
    "4 legs",
    "bridle",
    "QOS",
    "2L",
    "4LCS",
    "left leg worn",
    "double leg",
    "DOS with grab hooks",
    "quad sling",
    "ADOS",
  ])("a sling whose remarks or size tell of several legs: %s", (said) => {
    for (const id of ["remarks", "size"] as const)
      for (const kind of ["chain sling", "wire rope sling"]) {
        expect(refusal(withCells("L-1", kind, "2 t", { [id]: said }))).toBe(
          `L-1 (${kind}) cannot be judged: its row says "${said}" under ${field(id).heading}, so it can have several legs, and the tag of such a sling rates all of them together at the tag's own angle; read the load for this lift off the tag.`,
        );
      }
    expect(refusal(withCells("H-1", "hook", "2 t", { remarks: said }))).toBe("");
  });

  it.each([
    "single leg",
    "1-leg sling, tag sound",
    "double checked",
    "2 nicks dressed",
    "cleaned, 2 links measured",
    "10 mm",
    "5/8",
    "set aside for the crane",
    "multiple scratches",
    "two tags",
    "3 m",
    "see photo 2",
    "2 lb hammer mark",
  ])("takes remarks without a word of legs: %s", (remarks) => {
    expect(refusal(withCells("L-1", "chain sling", "2 t", { remarks }))).toBe("");
  });

  it.each([
    "Grade 43",
    "grade 30 chain",
    "G70",
    "Gr. 70 transport",
    "gr70",
    "grade-43",
    "70 grade",
    "stainless",
    "Stainless steel",
    "transport chain",
    "mild steel",
    "non-alloy",
    "not alloy",
    "proof coil",
    "hi-test",
    "grade unknown",
    "grade 120",
  ])("a chain sling whose remarks say that it is not alloy chain of grade 80 or 100: %s", (remarks) => {
    for (const more of [{}, { temperature: "450", temperatureUnit: "F", grade: "80" }])
      expect(refusal(withCells("L-1", "chain sling", "2 t", { remarks }), more)).toBe(
        `L-1 (chain sling) cannot be judged: its row says "${remarks}" under Remarks, and only alloy chain of grade 80 or 100 is in this catalogue.`,
      );
    expect(refusal(withCells("L-1", "wire rope sling", "2 t", { remarks }))).toBe("");
  });

  it.each(["grade 80", "Gr 100", "G8", "G10", "grade T", "alloy", "8 mm grade 80", "10 grade 80", "80 grade 10 mm"])(
    "takes a chain sling whose remarks name a grade of alloy chain: %s",
    (remarks) => {
      expect(refusal(withCells("L-1", "chain sling", "2 t", { remarks }))).toBe("");
    },
  );

  it("nothing picked, too few slings, one id twice, no id", () => {
    expect(lift({ items: [] })).toMatchObject({ ok: false, weakest: null, margin: null });
    expect(lift({ items: [] }).refusals[0]).toMatch(/Pick the gear/);
    expect(lift({ items: slings(1, "9 t") }).refusals[0]).toMatch(/2 legs and 1 sling is picked/);
    expect(lift({ items: [...slings(2, "9 t"), ...at("top", gear("l-1", "hook", "9 t"))] }).refusals[0]).toMatch(/picked more than once/);
    expect(refusal(gear("", "hook", "2 t"))).toMatch(/row 5 of the log .*has no id/);
  });

  it("a rating of nothing, a force, a unit typed twice", () => {
    for (const rated of ["0", "0 t", "0.00 t", 0])
      expect(refusal(gear("K-1", "link", rated), { ratedUnit: "t" })).toMatch(/K-1 \(link\) has no rated load/);
    for (const rated of ["20 kN", "20kN", "2 daN", "2 tf", "20 kn"])
      expect(refusal(gear("K-1", "link", rated), { ratedUnit: "t" })).toMatch(/K-1 \(link\): the rated load .* cannot be used/);
    for (const load of ["5 t t", "5 t kg", "5 kN t", "-5 t", "0 t"])
      expect(lift({ load }).refusals[0]).toMatch(/^The load ".*" (cannot be used|is none)/);
  });

  it("leaves a choke angle of before out of a basket", () => {
    const held = (chokeAngle: CellValue): HookupResult =>
      lift({ items: slings(1, "2 t", "roundsling"), load: "4 t", legs: 1, angle: 90, hitch: "basket", chokeAngle });
    expect([held("20").ok, held("").ok, held("20").lines[0]?.ratedFrom]).toEqual([true, true, held("").lines[0]?.ratedFrom]);
  });

  it("says that the tag and the maker come first", () => {
    expect(lift({}).cautions[0]).toMatch(/tag and the maker's instructions come first/);
    expect(field("ratedLoad").heading).toBe("Rated load");
  });
});

describe("whatever is asked", () => {
  const request = fc.record({
    rated: fc.integer({ min: 1, max: 20000 }),
    load: fc.integer({ min: 1, max: 40000 }),
    legs: fc.integer({ min: 1, max: 4 }),
    angle: fc.integer({ min: 30, max: 90 }),
    hitch: fc.constantFrom("vertical", "choker"),
    choke: fc.integer({ min: 0, max: 180 }),
    more: fc.integer({ min: 1, max: 5000 }),
    strict: fc.boolean(),
  });
  const asked = (
    r: { rated: number; legs: number; angle: number; hitch: string; choke: number; strict: boolean },
    load: CellValue,
  ): Partial<HookupRequest> => ({
    items: [...slings(r.legs, `${String(r.rated)} kg`), ...at("top", gear("T-1", "link", `${String(r.rated * 3)} kg`))],
    load,
    legs: r.legs,
    angle: r.angle,
    hitch: r.hitch,
    chokeAngle: r.choke,
    strict: r.strict,
  });

  it("more load never turns OVERLOADED into CARRIES", () => {
    fc.assert(
      fc.property(request, (r) => {
        const light = lift(asked(r, `${String(r.load)} kg`));
        const heavy = lift(asked(r, `${String(r.load + r.more)} kg`));
        light.lines.forEach((line, i) => {
          if (line.decision === "OVERLOADED") expect(heavy.lines[i]?.decision).toBe("OVERLOADED");
        });
        expect(heavy.ok && !light.ok).toBe(false);
      }),
      { numRuns: 300 },
    );
  });

  it("kilograms and tonnes give the same decisions", () => {
    fc.assert(
      fc.property(request, (r) => {
        const decisions = (load: string): string[] => lift(asked(r, load)).lines.map((line) => line.decision);
        expect(decisions(`${(r.load / 1000).toFixed(3)} t`)).toEqual(decisions(`${String(r.load)} kg`));
      }),
      { numRuns: 200 },
    );
  });

  it("a missing figure never carries", () => {
    const missing: readonly Partial<HookupRequest>[] = [
      { load: "" },
      { load: "5" },
      { legs: "" },
      { angle: "" },
      { hitch: "" },
      { hitch: "choker" },
      { temperature: "300", temperatureUnit: "F", grade: "" },
      { temperature: "300", temperatureUnit: "" },
      { items: [] },
      { items: slings(2, "") },
      { items: [...slings(1, "9 t"), ...at("leg", gear("L-9", "chain sling", ""))] },
    ];
    for (const gap of missing) {
      const result = lift({ load: "1 kg", ...gap });
      expect([result.ok, result.refusals.length > 0], JSON.stringify(gap)).toEqual([false, true]);
    }
  });

  it("an item waits while the lift is not typed, and only if nothing speaks against it", () => {
    const items = [...slings(1, "9 t"), ...at("leg", gear("L-9", "chain sling", ""))];
    const early = lift({ load: "1 kg", legs: "", items });
    expect(early.lines.map(({ decision, waits, sentence }) => [decision, waits, sentence === ""])).toEqual([
      ["REFUSED", true, true],
      ["REFUSED", false, false],
    ]);
    expect(lift({ load: "1 kg", items: slings(2, "9 t") }).lines.every(({ waits }) => !waits)).toBe(true);
  });
});

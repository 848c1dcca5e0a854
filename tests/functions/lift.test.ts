/** The functions for ropes, grooves and the load before a lift, as a cell calls them. */
import { describe, expect, it } from "vitest";
import { grooveVerdictOf, hotShareOf, legLoadOf, ratedAtOf, ropeVerdictOf, sideShareOf } from "../../src/functions/functions";
import {
  ANGLE_FACTORS,
  CHAIN_CHOKE_ROWS,
  CHOKE_ROWS,
  EYEBOLT_LEAST,
  HEAT_ROWS,
  RATED_100,
  RATED_80,
  SHACKLE_SIDE_ROWS,
  STRICTEST_CHOKE_ROWS,
} from "../fixtures/capacity";
import { GROOVES } from "../fixtures/grooves";

/** Calls what must end in a cell error; returns its sentence. */
function cellError(call: () => unknown, code: "#N/A" | "#VALUE!"): string {
  let caught: unknown;
  try {
    const value = call();
    expect.fail(`gave ${String(value)} instead of ${code}`);
  } catch (error) {
    caught = error;
  }
  expect(caught, String(caught)).toBeInstanceOf(CustomFunctions.Error);
  const { code: got, message } = caught as CustomFunctions.Error & { message: string };
  expect(got, message).toBe(code);
  expect(message).toMatch(/^[A-Z"-].*[.]$/s);
  return message;
}

const thousandths = (value: number): number => Math.round(value * 1000);

const BLANKS = [null, "", undefined];

describe("ROPEVERDICT", () => {
  // 29 CFR 1926.1413, Cal. T8 5036: more than 5 % below nominal. 5 % of 1/2 in is 0.025 in; of 13 mm 0.65 mm.
  const cases: [nominal: unknown, measured: unknown, unit: string, decision: string][] = [
    ["1/2", 0.5, "in", "KEEP"],
    [0.5, 0.49, "in", "KEEP"],
    [0.5, 0.475, "in", "WATCH"],
    [0.5, 0.4749, "in", "REMOVE"],
    [0.5, 0.472, "in", "REMOVE"],
    [0.5, 0.52, "in", "KEEP"],
    ["13 mm", 12.35, "mm", "WATCH"],
    [13, 12.34, "mm", "REMOVE"],
    [1.3, 1.235, "cm", "WATCH"],
    ["1/2", "12.06 mm", "in", "REMOVE"],
  ];
  for (const [nominal, measured, unit, decision] of cases)
    it(`${String(nominal)} to ${String(measured)} ${unit}: ${decision}`, () => {
      expect(ropeVerdictOf(nominal, measured, unit)).toBe(decision);
    });
  it("is NO VERDICT for anything missing, unreadable, or without a limit in force", () => {
    for (const blank of [...BLANKS, 0, "n/a", "ok", "1,875", 46089]) {
      expect(ropeVerdictOf(blank, 0.5, "in"), String(blank)).toBe("NO VERDICT");
      expect(ropeVerdictOf(0.5, blank, "in"), String(blank)).toBe("NO VERDICT");
    }
    for (const unit of [...BLANKS, "kg"]) expect(ropeVerdictOf(0.5, 0.5, unit)).toBe("NO VERDICT");
    expect(ropeVerdictOf(0.5, 0.4, "in", [["standard"]])).toBe("NO VERDICT");
    expect(ropeVerdictOf(0.5, 0.5, "in", [["no such"]])).toBe("NO VERDICT");
    expect(ropeVerdictOf(0.5, 12.7, "in")).toBe("NO VERDICT");
  });
});

describe("GROOVEVERDICT", () => {
  for (const { rope, worn, least, widest } of GROOVES)
    it(`rope ${rope} in: REMOVE below ${String(worn)} in, EXAMINE above ${String(widest)} in, kept as new from +6 to +10 %`, () => {
      expect(grooveVerdictOf(rope, worn, "in")).toBe("WATCH");
      expect(grooveVerdictOf(rope, Number((worn - 0.00001).toFixed(8)), "in")).toBe("REMOVE");
      expect(grooveVerdictOf(rope, widest, "in")).toBe("KEEP");
      expect(grooveVerdictOf(rope, Number((widest + 0.00001).toFixed(8)), "in")).toBe("EXAMINE");
      expect(grooveVerdictOf(rope, least, "in")).toBe("KEEP");
    });
  it("in millimetres: 8 mm rope is worn out below 8.24 mm", () => {
    expect(grooveVerdictOf(8, 8.24, "mm")).toBe("WATCH");
    expect(grooveVerdictOf(8, 8.23, "mm")).toBe("REMOVE");
  });
  it("is NO VERDICT for anything missing or unreadable, and where no rule is in force", () => {
    for (const blank of [...BLANKS, 0, "n/a", "ok"]) {
      expect(grooveVerdictOf(blank, 0.53, "in"), String(blank)).toBe("NO VERDICT");
      expect(grooveVerdictOf(0.5, blank, "in"), String(blank)).toBe("NO VERDICT");
    }
    expect(grooveVerdictOf(0.5, 0.53, "")).toBe("NO VERDICT");
    expect(grooveVerdictOf(0.5, 0.53, "in", [["law"]])).toBe("NO VERDICT");
    expect(grooveVerdictOf(0.5, 0.53, "in", [["practice"]])).toBe("KEEP");
  });
});

describe("LEGLOAD", () => {
  for (const [angle, , tension] of ANGLE_FACTORS)
    it(`one leg at ${String(angle)} degrees carries ${String(tension)} times its share (published with three decimals, some a thousandth off)`, () => {
      expect(thousandths(legLoadOf(1, 1, angle)) - thousandths(tension)).toBeOneOf([-1, 0, 1]);
      expect(legLoadOf(1000, 2, angle)).toBeCloseTo(legLoadOf(1, 1, angle) * 500, 6);
      // The same angle from vertical, and between two legs.
      expect(legLoadOf(1000, 2, 90 - angle, "vertical")).toBeCloseTo(legLoadOf(1000, 2, angle), 9);
      expect(legLoadOf(1000, 2, 180 - 2 * angle, "included")).toBeCloseTo(legLoadOf(1000, 2, angle), 9);
    });
  it("at 30 degrees is exactly the whole load in each of two legs", () => {
    expect(legLoadOf(2000, 2, 30)).toBe(2000);
    expect(legLoadOf(2000, 2, 120, "included")).toBe(2000);
  });
  it("counts three of four legs", () => {
    expect(legLoadOf(3000, 4, 90)).toBe(1000);
    expect(legLoadOf(3000, 3, 90)).toBe(1000);
  });
  it("reads numbers as text, and a blank convention as horizontal in every host", () => {
    expect(legLoadOf("2000", "2", "30°")).toBe(2000);
    for (const blank of [...BLANKS, 0]) expect(legLoadOf(2000, 2, 30, blank)).toBe(2000);
  });
  it("refuses legs flatter than 30 degrees, however the angle is given", () => {
    for (const [angle, from] of [
      [29.999, "horizontal"],
      [60.001, "vertical"],
      [120.1, "included"],
      [0, "horizontal"],
      [15, null],
    ] as const)
      expect(cellError(() => legLoadOf(1000, 2, angle, from), "#N/A")).toContain("less than 30 degrees");
  });
  it("refuses the angle between two of three or four legs", () => {
    for (const legs of [3, 4])
      expect(cellError(() => legLoadOf(1000, legs, 60, "included"), "#N/A")).toContain("measure it from horizontal or vertical");
    expect(cellError(() => ratedAtOf(1000, "basket", 2, 60, "included"), "#N/A")).toContain("measure it from horizontal or vertical");
  });
  it("gives #N/A for what is missing and #VALUE! for what cannot be", () => {
    for (const blank of BLANKS) {
      cellError(() => legLoadOf(blank, 2, 60), "#N/A");
      cellError(() => legLoadOf(1000, blank, 60), "#N/A");
      cellError(() => legLoadOf(1000, 2, blank), "#N/A");
    }
    for (const bad of ["heavy", "2 t", -1, 0, true, "#REF!"]) cellError(() => legLoadOf(bad, 2, 60), "#VALUE!");
    for (const bad of [0, 5, 1.5, "two"]) cellError(() => legLoadOf(1000, bad, 60), "#VALUE!");
    for (const bad of ["steep", "1,5"]) cellError(() => legLoadOf(1000, 2, bad), "#VALUE!");
    cellError(() => legLoadOf(1000, 2, 91), "#VALUE!");
    cellError(() => legLoadOf(1000, 2, -1, "vertical"), "#VALUE!");
    cellError(() => legLoadOf(1000, 2, 60, "sideways"), "#VALUE!");
  });
});

describe("RATEDAT", () => {
  for (const [grade, rows] of [
    [80, RATED_80],
    [100, RATED_100],
  ] as const)
    for (const [size, single, ...printed] of rows)
      it(`grade ${String(grade)} chain ${size} in, ${String(single)} lb: within 60 lb of every printed cell`, () => {
        const worked = [2, 3].flatMap((legs) => [60, 45, 30].map((angle) => ratedAtOf(single, "vertical", legs, angle)));
        expect(worked).toHaveLength(printed.length);
        printed.forEach((pounds, i) => {
          expect(Math.abs((worked[i] ?? 0) - pounds), `${String(i)}: ${String(worked[i])}`).toBeLessThanOrEqual(60);
        });
        // Triple and quadruple share a column; a single basket is two legs.
        expect(ratedAtOf(single, "vertical", 4, 60)).toBe(worked[3]);
        expect(ratedAtOf(single, "basket", 1, 60)).toBe(worked[0]);
      });
  for (const [angle, reduction] of ANGLE_FACTORS)
    it(`one leg at ${String(angle)} degrees keeps ${String(reduction)} of its rating (published with three decimals)`, () => {
      expect(thousandths(ratedAtOf(1, "vertical", 1, angle))).toBe(thousandths(reduction));
    });
  for (const [angle, percent] of STRICTEST_CHOKE_ROWS)
    it(`a choke of ${String(angle)} degrees keeps ${String(percent)} % of the vertical rating: the strictest of chain, wire rope and the rest`, () => {
      expect(ratedAtOf(1000, "choker", 1, null, null, angle)).toBeCloseTo(10 * percent, 9);
    });
  it("a choke never keeps more than either table", () => {
    for (const [angle, percent] of CHOKE_ROWS)
      if (angle >= 30) expect(ratedAtOf(1000, "choker", 1, null, null, angle)).toBeLessThanOrEqual(7.5 * percent + 1e-9);
    for (const [angle, , tonnes] of CHAIN_CHOKE_ROWS)
      expect(ratedAtOf(5, "choker", 1, null, null, angle)).toBeLessThanOrEqual(tonnes + 1e-9);
  });
  it("a choke below 30 degrees is refused: the chain table has no rating there", () => {
    for (const choke of [29.999, 29, 1, "29", "0", 0])
      expect(cellError(() => ratedAtOf(1000, "choker", 1, null, null, choke), "#N/A")).toContain("less than 30 degrees");
  });
  it("a single vertical or choker leg needs no angle; a basket does", () => {
    for (const blank of BLANKS) {
      expect(ratedAtOf(1000, "vertical", 1, blank)).toBe(1000);
      expect(ratedAtOf(1000, "Choker hitch", 1, blank)).toBe(750);
      cellError(() => ratedAtOf(1000, "basket", 1, blank), "#N/A");
      cellError(() => ratedAtOf(1000, "vertical", 2, blank), "#N/A");
    }
  });
  it("a choke angle left out is a free choke; 0, which some hosts hand over for a blank cell, is refused as the text 0 is", () => {
    for (const blank of BLANKS) expect(ratedAtOf(1000, "choker", 1, null, null, blank)).toBe(750);
    expect(cellError(() => ratedAtOf(1, "choker", 1, 90, "", 0), "#N/A")).toBe(
      cellError(() => ratedAtOf(1, "choker", 1, 90, "", "0"), "#N/A"),
    );
  });
  it("an angle of 0 is no blank: one leg at 0 degrees from horizontal is refused, and told how to say that it hangs straight", () => {
    for (const hitch of ["vertical", "choker"])
      for (const angle of [0, "0"]) {
        expect(cellError(() => ratedAtOf(1, hitch, 1, angle, "horizontal", ""), "#N/A")).toMatch(/less than 30 degrees.*type 90/);
        expect(cellError(() => ratedAtOf(1, hitch, 1, angle, null, null), "#N/A")).toMatch(/empty text.*type 90/);
      }
    // From vertical, 0 and a blank both hang straight.
    expect(ratedAtOf(1, "vertical", 1, 0, "vertical")).toBe(1);
  });
  it("never gives more for a flatter leg, a tighter choke or fewer legs", () => {
    const at = (legs: number, angle: number, choke: number): number => ratedAtOf(1000, "choker", legs, angle, "horizontal", choke);
    for (let angle = 31; angle <= 90; angle += 1) expect(at(2, angle - 1, 130)).toBeLessThan(at(2, angle, 130));
    for (let choke = 31; choke <= 180; choke += 1) expect(at(2, 60, choke - 1)).toBeLessThanOrEqual(at(2, 60, choke));
    for (const legs of [2, 3, 4]) expect(at(legs - 1, 60, 130)).toBeLessThanOrEqual(at(legs, 60, 130));
  });
  it("refuses what it cannot answer, each with a sentence", () => {
    expect(cellError(() => ratedAtOf(1000, "vertical", 2, 29), "#N/A")).toContain("30 degrees");
    expect(cellError(() => ratedAtOf(1000, "basket", 3, 60), "#N/A")).toContain("qualified person");
    expect(cellError(() => ratedAtOf(1000, "", 2, 60), "#N/A")).toContain("hitch is missing");
    cellError(() => ratedAtOf(1000, "lasso", 2, 60), "#VALUE!");
    cellError(() => ratedAtOf("3 t", "vertical", 1, 90), "#VALUE!");
    cellError(() => ratedAtOf(null, "vertical", 1, 90), "#N/A");
    for (const choke of [-1, 181, "tight"]) cellError(() => ratedAtOf(1000, "choker", 1, null, null, choke), "#VALUE!");
  });
});

describe("HOTSHARE", () => {
  for (const [fahrenheit, celsius, hot80, after80, hot100, after100] of HEAT_ROWS)
    it(`${String(fahrenheit)} F (${String(celsius)} C): ${String(hot80)} and ${String(hot100)} % off while hot, ${String(after80)} and ${String(after100)} % for good (ASME B30.9 Table 9-1.8.1-1)`, () => {
      const left = (percent: number): number => (100 - percent) / 100;
      for (const [degrees, unit] of [
        [fahrenheit, "F"],
        [celsius, "C"],
        [String(fahrenheit), "°F"],
      ] as const) {
        expect([
          hotShareOf(80, degrees, unit),
          hotShareOf(80, degrees, unit, "after"),
          hotShareOf(100, degrees, unit, "hot"),
          hotShareOf("Grade 100", degrees, unit, "after"),
        ]).toEqual([left(hot80), left(after80), left(hot100), left(after100)]);
      }
    });
  it("between two rows counts the hotter: grade 100 at 450 F is the 500 F row, 25 % off", () => {
    expect(hotShareOf(100, 450, "F")).toBe(0.75);
    expect(hotShareOf(80, 400.5, "F")).toBe(0.85);
  });
  it("7,100 lb of grade 80 at 800 F are 4,260 lb hot and 6,035 lb afterwards", () => {
    expect(7100 * hotShareOf(80, 800, "F")).toBeCloseTo(4260, 6);
    expect(7100 * hotShareOf(80, 800, "F", "after")).toBeCloseTo(6035, 6);
  });
  it("below the first row takes nothing off; above the last leaves nothing", () => {
    for (const [degrees, unit] of [
      [399.9, "F"],
      [203, "C"],
      [68, "F"],
      [-39, "C"],
    ] as const)
      expect(hotShareOf(80, degrees, unit)).toBe(1);
    for (const [degrees, unit] of [
      [1000.1, "F"],
      [538.5, "C"],
      [2000, "F"],
    ] as const)
      for (const state of ["hot", "after"]) expect(hotShareOf(100, degrees, unit, state)).toBe(0);
  });
  it("reads a blank state as hot in every host", () => {
    for (const blank of [...BLANKS, 0]) expect(hotShareOf(80, 800, "F", blank)).toBe(0.6);
  });
  it("refuses the cold and what cannot be read", () => {
    expect(cellError(() => hotShareOf(80, -40, "F"), "#N/A")).toContain("-40");
    for (const blank of BLANKS) {
      cellError(() => hotShareOf(blank, 500, "F"), "#N/A");
      cellError(() => hotShareOf(80, blank, "F"), "#N/A");
      cellError(() => hotShareOf(80, 500, blank), "#N/A");
    }
    cellError(() => hotShareOf(43, 500, "F"), "#VALUE!");
    cellError(() => hotShareOf(80, "hot", "F"), "#VALUE!");
    cellError(() => hotShareOf(80, 500, "K"), "#VALUE!");
    cellError(() => hotShareOf(80, 500, "F", "later"), "#VALUE!");
  });
});

describe("SIDESHARE", () => {
  for (const [angle, percent] of SHACKLE_SIDE_ROWS)
    it(`a shackle ${String(angle)} degrees out of its plane keeps ${String(percent)} %`, () => {
      expect(sideShareOf("shackle", angle)).toBe(percent / 100);
    });
  for (const [angle, share] of EYEBOLT_LEAST)
    it(`a shoulder eyebolt of no known size ${String(angle)} degrees from its axis keeps ${String(share)}, the least listed share (ASME B18.15, restated)`, () => {
      expect(sideShareOf("shoulder eyebolt", angle)).toBe(share);
      expect(sideShareOf("Eyebolts, shouldered, no. 4", angle)).toBe(share);
    });
  for (const plain of [
    "non-shoulder eyebolt",
    "plain eye bolt",
    "Eyebolt without shoulder",
    "eyebolt w/o shoulder",
    "eye bolt, no shoulder",
    "nonshoulder eyebolt",
    "unshouldered eyebolt",
    "shoulderless eyebolt",
    "eyebolt (shoulder: no)",
    "regular eyebolt",
    "eyebolt, shoulder missing",
    "eyebolt, shoulder?",
  ])
    it(`"${plain}" is pulled in line only (WAC 296-155-56110(2)(b))`, () => {
      expect([sideShareOf(plain, 0), sideShareOf(plain, 5)]).toEqual([1, 1]);
      for (const angle of [5.1, 20, 45, 90]) expect(cellError(() => sideShareOf(plain, angle), "#N/A")).toMatch(/in line only/);
    });
  it("an eyebolt that does not say its shoulder is asked for it at an angle", () => {
    for (const gear of ["eyebolt", "machinery eyebolt", "eye bolts 3/8"]) {
      expect(sideShareOf(gear, 5)).toBe(1);
      expect(cellError(() => sideShareOf(gear, 20), "#N/A")).toContain('"shoulder eyebolt"');
    }
  });
  it("4.75 t at 30 degrees is 3.325 t, at 60 degrees 2.375 t", () => {
    expect(4.75 * sideShareOf("anchor shackle", 30)).toBeCloseTo(3.325, 9);
    expect(4.75 * sideShareOf("anchor shackle", 60)).toBeCloseTo(2.375, 9);
  });
  it("refuses what has no table, more than 90 degrees, and what cannot be read", () => {
    expect(cellError(() => sideShareOf("hook", 10), "#N/A")).toContain("no side-load table");
    expect(cellError(() => sideShareOf("", 10), "#N/A")).toMatch(/no side-load table/);
    expect(cellError(() => sideShareOf("shackle", 90.1), "#N/A")).toContain("90 degrees");
    for (const blank of BLANKS) cellError(() => sideShareOf("shackle", blank), "#N/A");
    cellError(() => sideShareOf("shackle", -1), "#VALUE!");
    cellError(() => sideShareOf("shackle", "slight"), "#VALUE!");
  });
});

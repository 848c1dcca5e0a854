/** Cases that ropes of cranes and hoists share. */
import { describe, expect, it } from "vitest";
import { type FieldId } from "../../../src/engine/columns";
import { good, judged, onSight, PRACTICE, type LimitCase, type SightCase } from "../helpers";

export const CATEGORY_II = "law: 29 CFR 1926.1413(a)(2)(ii); standard: ASME B30.5-2011, B30.29-2012, restated";

/** Nothing broken, the count of the source, one more. "from" is out at the count, "above" keeps it with the allowance used up. */
export function counted(
  criterion: string,
  cell: FieldId,
  word: "from" | "above",
  count: number,
  bases: readonly ("law" | "standard")[] = ["law", "standard"],
  source = CATEGORY_II,
): readonly LimitCase[] {
  return bases.map((basis) => ({
    criterion: `${criterion}.${basis}`,
    source,
    inside: [{ [cell]: 0 }, "KEEP"],
    edge: [{ [cell]: count }, word === "from" ? "REMOVE" : "WATCH"],
    past: [{ [cell]: count + 1 }, "REMOVE"],
  }));
}

/** 1/2 in nominal: more than 5 % is below 0.475 in; 0.49 in has used 0.01 of 0.025 in. */
export function slimmer(kind: string): readonly LimitCase[] {
  return (["law", "practice"] as const).map((basis) => ({
    criterion: `${kind}.diameter-loss.${basis}`,
    source: "29 CFR 1926.1413 category II; Cal. T8 5036(a)(2)(B)",
    inside: [{ ropeNow: 0.49 }, "KEEP"],
    edge: [{ ropeNow: 0.475 }, "WATCH"],
    past: [{ ropeNow: 0.4749 }, "REMOVE"],
  }));
}

export function seenOnRopes(kind: string): readonly SightCase[] {
  const one = "29 CFR 1926.1413(a)(2)(i): a competent person decides at once",
    three = "29 CFR 1926.1413(a)(2)(iii); Cal. T8 5036(a)(3)";
  return [
    ...onSight(kind, "kinks or crushing", "kinks", { law: one }, "EXAMINE"),
    ...onSight(kind, "kinks or crushing", "kinks", { practice: PRACTICE }),
    ...onSight(kind, "broken strand", "strandBroken", { law: three, practice: PRACTICE }),
    ...onSight(kind, "power-line contact", "powerLine", { law: three, practice: PRACTICE }),
    ...onSight(kind, "heat damage", "heat", { law: one }, "EXAMINE"),
    ...onSight(kind, "heat damage", "heat", { practice: PRACTICE }),
    ...onSight(kind, "corrosion", "corrosion", { law: one }, "EXAMINE"),
    ...onSight(kind, "corrosion", "corrosion", { practice: PRACTICE }),
    ...onSight(kind, "end fittings", "endFittings", { law: one }, "EXAMINE"),
    ...onSight(kind, "end fittings", "endFittings", { practice: PRACTICE }),
  ];
}

/** Running and standing ropes that turn out to be rotation resistant are not judged by their counts. */
export function refusesResistant(kind: string): void {
  describe(`${kind}: the Construction column`, () => {
    for (const construction of [
      "19x7 rotation resistant",
      "rotation-resistant",
      "non-rotating",
      "Non rotating 18 x 7",
      "spin-resistant",
      "8x25 spin resistant",
      "anti-spin",
      "19x7",
      "18X7",
      "34x7",
      "35x7 compacted",
      "35xK7",
      "19×19",
      "4x39",
      "low rotation",
      "not rotation resistant",
    ])
      it(`"${construction}" is NO VERDICT and says what to name the gear`, () => {
        const verdict = judged({ ...good(kind), construction });
        expect(verdict.decision).toBe("NO VERDICT");
        expect(verdict.reason).toContain(
          `Construction: "${construction}" in "Construction" is a rotation resistant rope; name the gear "rotation resistant rope".`,
        );
      });
    for (const construction of ["", "n/a", "6x36WS-IWRC", "6x19", "8x19S", "8x25", "right hand ordinary lay", "6x36, 13 mm x 100 m"])
      it(`"${construction}" changes nothing`, () => {
        expect(judged({ ...good(kind), construction }).decision).toBe("KEEP");
      });
  });
}

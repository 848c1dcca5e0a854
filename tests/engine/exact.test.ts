/** Exact numbers against whole-number arithmetic written a second time, in BigInt, on small numbers, on those around 2^53 and beyond. */
import { describe, expect, it } from "vitest";
import { exact, Exact, fromCell, larger, lesser, same, shown, toNumber, within, ZERO } from "../../src/engine/numbers/exact";

type Fraction = readonly [top: bigint, under: bigint];
const abs = (whole: bigint): bigint => (whole < 0n ? -whole : whole);
const common = (a: bigint, b: bigint): bigint => (b === 0n ? a : common(b, a % b));
const lowest = ([top, under]: Fraction): Fraction => {
  const sign = under < 0n ? -1n : 1n;
  const by = common(abs(top), abs(under));
  return [(sign * top) / by, (sign * under) / by];
};
const written = (fraction: Fraction): string => {
  const [top, under] = lowest(fraction);
  return under === 1n ? String(top) : `${String(top)}/${String(under)}`;
};
/** Rounded towards minus infinity. */
const floorOf = ([top, under]: Fraction): bigint => top / under - (top % under < 0n ? 1n : 0n);

const LARGE = 2n ** 53n;
const FRACTIONS: readonly Fraction[] = (
  [
    [0n, 1n],
    [1n, 1n],
    [-1n, 1n],
    [2n, 1n],
    [255n, 1n],
    [256n, 1n],
    [-7n, 3n],
    [1n, 3n],
    [13n, 64n],
    [-13n, 64n],
    [21n, 10n],
    [5n, 2n],
    [-5n, 2n],
    [127n, 5n],
    [3n, 1_000_000n],
    [LARGE - 1n, 1n],
    [LARGE, 1n],
    [LARGE + 1n, 1n],
    [-(LARGE + 1n), 1n],
    [1n, LARGE - 1n],
    [1n, LARGE + 1n],
    [LARGE + 1n, LARGE - 1n],
    [94_906_267n, 1n],
    [94_906_267n, 94_906_265n],
    [-94_906_267n, 94_906_265n],
    [10n ** 30n, 7n],
  ] satisfies Fraction[]
).map(lowest);
const of = ([top, under]: Fraction): Exact => Exact.big(top, under);
const PAIRS = FRACTIONS.flatMap((a) => FRACTIONS.map((b) => [a, b] as const));

describe("exact arithmetic", () => {
  it("adds, takes away, multiplies and divides as whole numbers do", () => {
    for (const [a, b] of PAIRS) {
      const [[n, d], [m, e]] = [a, b];
      const name = `${written(a)} and ${written(b)}`;
      expect(of(a).add(of(b)).toFraction(), `${name} added`).toBe(written([n * e + m * d, d * e]));
      expect(of(a).sub(of(b)).toFraction(), `${name} taken away`).toBe(written([n * e - m * d, d * e]));
      expect(of(a).mul(of(b)).toFraction(), `${name} multiplied`).toBe(written([n * m, d * e]));
      if (m === 0n) expect(() => of(a).div(of(b)), name).toThrow("Division by zero");
      else expect(of(a).div(of(b)).toFraction(), `${name} divided`).toBe(written([n * e, d * m]));
    }
  });
  it("compares by the numbers, not by how they are written", () => {
    for (const [a, b] of PAIRS) {
      const difference = a[0] * b[1] - b[0] * a[1];
      const side = difference < 0n ? -1 : difference > 0n ? 1 : 0;
      const name = `${written(a)} and ${written(b)}`;
      expect(Math.sign(of(a).compare(of(b))), name).toBe(side);
      expect(of(a).equals(of(b)), name).toBe(side === 0);
      expect(same(of(a), of(b)), name).toBe(side === 0);
      expect(lesser(of(a), of(b)).toFraction(), name).toBe(written(side <= 0 ? a : b));
      expect(larger(of(a), of(b)).toFraction(), name).toBe(written(side <= 0 ? b : a));
      expect(within(of(a), of(b), null), name).toBe(side >= 0);
      expect(within(of(a), null, of(b)), name).toBe(side <= 0);
      expect(within(of(a), of(b), of(b)), name).toBe(side === 0);
      expect(within(of(a), null, null), name).toBe(true);
      if (b[0] === 0n) continue;
      const share = Number(a[0] * b[1]) / Number(a[1] * b[0]);
      expect(Math.abs(of(a).over(of(b)) - share), `${name} as a share`).toBeLessThanOrEqual(Math.abs(share) * 1e-12);
    }
  });
  it("takes plain numbers as well", () => {
    expect(exact("1/2").add(2).toFraction()).toBe("5/2");
    expect(exact("1/2").sub(0.25).toFraction()).toBe("1/4");
    expect(exact("1/2").mul(300).toFraction()).toBe("150");
    expect(exact("1/2").div(-4).toFraction()).toBe("-1/8");
    expect(exact("5/2").compare(2.5)).toBe(0);
    expect(exact("256").equals(256)).toBe(true);
  });
  it("keeps small numbers small on the way back from large ones", () => {
    expect(
      of([LARGE + 1n, 1n])
        .sub(of([LARGE, 1n]))
        .toFraction(),
    ).toBe("1");
    expect(
      of([10n ** 30n, 7n])
        .div(of([10n ** 29n, 7n]))
        .toFraction(),
    ).toBe("10");
  });
  it("rounds down, up and to the nearest decimal, a half upwards", () => {
    for (const fraction of FRACTIONS)
      for (const places of [0, 1, 3, 4]) {
        const ten = 10n ** BigInt(places);
        const [top, under] = fraction;
        const name = `${written(fraction)} to ${String(places)}`;
        const down = floorOf([top * ten, under]);
        const whole = (top * ten) % under === 0n;
        expect(of(fraction).floor(places).toFraction(), name).toBe(written([down, ten]));
        expect(of(fraction).ceil(places).toFraction(), name).toBe(written([whole ? down : down + 1n, ten]));
        expect(of(fraction).round(places).toFraction(), name).toBe(written([floorOf([2n * top * ten + under, 2n * under]), ten]));
      }
    // Halves, by hand.
    expect(["2.5", "2.4999", "-2.5", "-2.5001", "0.5", "-0.5"].map((text) => exact(text).round().toString())).toEqual([
      "3",
      "2",
      "-2",
      "-3",
      "1",
      "0",
    ]);
    expect([exact("2.7").floor(), exact("-2.1").floor(), exact("2.1").ceil(), exact("-2.7").ceil()].map(toNumber)).toEqual([2, -3, 3, -2]);
  });
  it("knows whole numbers, and sizes without their sign", () => {
    for (const fraction of FRACTIONS) {
      expect(of(fraction).isWhole(), written(fraction)).toBe(fraction[1] === 1n);
      expect(of(fraction).abs().toFraction()).toBe(written([abs(fraction[0]), fraction[1]]));
      expect(toNumber(of(fraction))).toBe(Number(fraction[0]) / Number(fraction[1]));
    }
    expect(exact("6/3").isWhole()).toBe(true);
  });
});

describe("numbers as text", () => {
  it.each([
    ["1/4", "1/4", "0.25"],
    ["1 1/8", "9/8", "1.125"],
    ["0.05", "1/20", "0.05"],
    [".5", "1/2", "0.5"],
    ["5.", "5", "5"],
    ["-0.25", "-1/4", "-0.25"],
    ["25.4", "127/5", "25.4"],
    ["100", "100", "100"],
    ["1e3", "1000", "1000"],
    ["1.5e-3", "3/2000", "0.0015"],
    ["1E+2", "100", "100"],
    ["12.5/5", "5/2", "2.5"],
    ["1e-20", "1/100000000000000000000", "0"],
    ["123456789012345678", "123456789012345678", "123456789012345678"],
    ["1/3", "1/3", "0.333333333333333"],
    ["-1/3", "-1/3", "-0.333333333333333"],
    ["9007199254740993/2", "9007199254740993/2", "4503599627370496.5"],
  ])("%s is %s, shown as %s", (text, fraction, decimal) => {
    expect(exact(text).toFraction()).toBe(fraction);
    expect(exact(text).toString()).toBe(decimal);
  });
  it("are cut after as many decimals as asked for", () => {
    expect(exact("2.6789").toString(2)).toBe("2.67");
    expect(exact("-2.6789").toString(2)).toBe("-2.67");
    expect(exact("2.6").toString(4)).toBe("2.6");
    expect(exact("2.004").toString(2)).toBe("2");
    expect(exact("120").toString(0)).toBe("120");
  });
  it.each(["", ".", "-", "a", "1 1", "1//2", "--1", "1/2/3", "1e", "1,5", "0x10", "1 1/8 "])('"%s" is no number', (text) => {
    expect(() => exact(text)).toThrow("is no number");
  });
  it("nothing is divided by nothing", () => {
    expect(() => exact("1/0")).toThrow("Division by zero");
    expect(() => Exact.of(1, 0)).toThrow("Division by zero");
    expect(() => Exact.big(1n, 0n)).toThrow("Division by zero");
  });
  it("plain numbers are what they are written as", () => {
    expect([0.1, 2.1, 1e21, 12, -3, 0].map((value) => exact(value).toFraction())).toEqual([
      "1/10",
      "21/10",
      "1000000000000000000000",
      "12",
      "-3",
      "0",
    ]);
    expect(Exact.of(3, -4).toFraction()).toBe("-3/4");
    expect(Exact.of(1.5, 2).toFraction()).toBe("3/4");
    expect(ZERO.toFraction()).toBe("0");
  });
});

describe("numbers out of cells", () => {
  it.each([
    [2.1, "21/10"],
    [0.1 + 0.2, "3/10"],
    [1.1 - 1, "1/10"],
    [1.0000001, "10000001/10000000"],
    [0.0001, "1/10000"],
    [0.000001, "1/1000000"],
    [1 / 3, "333333333333333/1000000000000000"],
    // What a subtraction leaves over; no gauge reads a billionth.
    [9.99e-10, "0"],
    [-9.99e-10, "0"],
    [1e-9, "1/1000000000"],
    [0, "0"],
    [-0, "0"],
    [-2.5, "-5/2"],
    [99999999999999, "99999999999999"],
    [123456789012345680, "123456789012346000"],
    [1e14, "100000000000000"],
  ])("%s is %s", (value, fraction) => {
    expect(fromCell(value).toFraction()).toBe(fraction);
  });
  it("the largest one rounds to a number, not to none", () => {
    expect(toNumber(fromCell(Number.MAX_VALUE))).toBe(Number.MAX_VALUE);
  });
  it("are shown by 15 digits", () => {
    expect([2.1, 0.1 + 0.2, 1 / 3, 1e14, 123456789012345680, -0.5].map(shown)).toEqual([
      "2.1",
      "0.3",
      "0.333333333333333",
      "100000000000000",
      "123456789012346000",
      "-0.5",
    ]);
  });
});

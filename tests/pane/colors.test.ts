/** Measures that the colours can be told apart and read. */
import { describe, expect, it } from "vitest";
import { DECISIONS } from "../../src/engine/decision";
import { SHEET_COLORS } from "../../src/excel/kit/tints";
import { DECISION_COLORS } from "../../src/taskpane/shared/decision-colors";

type Triple = readonly [number, number, number];

/** Machado, Oliveira and Fernandes 2009, full severity, on linear light. */
const SIGHT: Record<string, readonly [Triple, Triple, Triple]> = {
  "full colour sight": [
    [1, 0, 0],
    [0, 1, 0],
    [0, 0, 1],
  ],
  "no red": [
    [0.152286, 1.052583, -0.204868],
    [0.114503, 0.786281, 0.099216],
    [-0.003882, -0.048116, 1.051998],
  ],
  "no green": [
    [0.367322, 0.860646, -0.227968],
    [0.280085, 0.672501, 0.047413],
    [-0.01182, 0.04294, 0.968881],
  ],
  "no blue": [
    [1.255528, -0.076749, -0.178779],
    [-0.078411, 0.930809, 0.147602],
    [0.004733, 0.691367, 0.3039],
  ],
};

function light(hex: string): Triple {
  const channel = (at: number): number => {
    const c = parseInt(hex.slice(at, at + 2), 16) / 255;
    return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
  };
  return [channel(1), channel(3), channel(5)];
}

const luminance = ([r, g, b]: Triple): number => 0.2126 * r + 0.7152 * g + 0.0722 * b;

function contrast(one: string, other: string): number {
  const [a, b] = [luminance(light(one)), luminance(light(other))];
  return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
}

/** CIE L*a*b*, D65. */
function lab(hex: string, sight: string): Triple {
  const seen = light(hex);
  const matrix = SIGHT[sight];
  if (matrix === undefined) throw new Error(sight);
  const [r, g, b] = matrix.map((row) => Math.min(1, Math.max(0, row[0] * seen[0] + row[1] * seen[1] + row[2] * seen[2]))) as [
    number,
    number,
    number,
  ];
  const f = (t: number): number => (t > 0.008856 ? Math.cbrt(t) : 7.787 * t + 16 / 116);
  const [x, y, z] = [
    f((0.4124 * r + 0.3576 * g + 0.1805 * b) / 0.95047),
    f(0.2126 * r + 0.7152 * g + 0.0722 * b),
    f((0.0193 * r + 0.1192 * g + 0.9505 * b) / 1.08883),
  ];
  return [116 * y - 16, 500 * (x - y), 200 * (y - z)];
}

function apart(one: string, other: string, sight: string): number {
  const [a, b] = [lab(one, sight), lab(other, sight)];
  return Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);
}

const pairs = <T>(list: readonly T[]): [T, T][] => list.flatMap((a, i) => list.slice(i + 1).map((b): [T, T] => [a, b]));

/** Backgrounds of the light and dark pane, and of a selected line. */
const GROUNDS = { light: ["#ffffff", "#ebebeb"], dark: ["#292929", "#383838"] };

describe.each(["light", "dark"] as const)("the pane's colours, %s", (shade) => {
  it.each(DECISIONS)("%s can be read on its own field: contrast 4.5 or more", (decision) => {
    const { fill, ink } = DECISION_COLORS[shade][decision];
    expect(contrast(fill, ink)).toBeGreaterThanOrEqual(4.5);
  });

  it.each(DECISIONS)("the mark of %s stands out from the pane: contrast 3 or more", (decision) => {
    for (const ground of GROUNDS[shade]) expect(contrast(DECISION_COLORS[shade][decision].mark, ground)).toBeGreaterThanOrEqual(3);
  });

  it.each(Object.keys(SIGHT))("the fields stay apart with %s", (sight) => {
    for (const [a, b] of pairs(DECISIONS))
      expect(apart(DECISION_COLORS[shade][a].fill, DECISION_COLORS[shade][b].fill, sight), `${a} and ${b}`).toBeGreaterThan(12);
  });
});

describe("the register's colours", () => {
  const tints = Object.entries(SHEET_COLORS);

  it.each(tints)("%s can be read: contrast 4.5 or more", (_, { fill, font }) => {
    expect(contrast(fill, font)).toBeGreaterThanOrEqual(4.5);
  });

  it.each(Object.keys(SIGHT))("the tints stay apart with %s", (sight) => {
    for (const [[a, one], [b, other]] of pairs(tints)) expect(apart(one.fill, other.fill, sight), `${a} and ${b}`).toBeGreaterThan(12);
  });

  it("grow lighter step by step in grey print, each step and the white paper 6 or more apart in lightness", () => {
    const steps = [...tints.map(([, { fill }]) => lab(fill, "full colour sight")[0]), 100];
    for (let i = 1; i < steps.length; i += 1) expect((steps[i] ?? 0) - (steps[i - 1] ?? 0)).toBeGreaterThanOrEqual(6);
  });
});

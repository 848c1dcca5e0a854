/** Published tables against an independent typing of the same tables, and what holds between their columns. */
import { describe, expect, it } from "vitest";
import { exact, toNumber } from "../../src/engine/numbers/exact";
import {
  type Band,
  CHAIN_CHOKE,
  CHAIN_CHOKE_LEAST,
  CHOKE,
  CHOKER_SHARE,
  EYEBOLT_IN_LINE,
  EYEBOLT_SHIPYARD,
  EYEBOLT_SIDE,
  HEAT,
  ROPE_CHOKE,
  SHACKLE_SIDE,
} from "../../src/engine/lift/tables";
import { CLIPS_1918, CLIPS_CALIFORNIA } from "../../src/engine/tables/clips";
import { leastNumber, leastOf } from "../../src/engine/tables/look-up";
import { ISO_4309_TABLE_3, ROPE_OVERSIZE, STEPPED_LOSS } from "../../src/engine/tables/rope";
import { BOW, DEE } from "../../src/engine/tables/shackle";
import { CHAIN_CHOKE_ROWS, CHOKE_ROWS, EYEBOLT_TABLE, HEAT_ROWS, ROPE_CHOKE_ROWS, SHACKLE_SIDE_ROWS } from "../fixtures/capacity";
import { CALIFORNIA_8497, FEDERAL_1918 } from "../fixtures/clips";
import { GROOVES } from "../fixtures/grooves";
import { CATEGORIES, STEPPED } from "../fixtures/ropes";
import { BOW_TABLE, DEE_TABLE } from "../fixtures/shackles";

const figure = (text: string): number => toNumber(exact(text));

/** Row by row, so that a failure names the row of the document. */
function sameRows(document: string, rows: readonly (readonly unknown[])[], typed: readonly (readonly unknown[])[]): void {
  typed.forEach((row, at) => {
    expect(rows[at], `${document}, row ${String(row[0])}`).toEqual(row);
  });
  expect(rows.length, `rows of ${document}`).toBe(typed.length);
}

describe("clips", () => {
  it("29 CFR 1918 Appendix II Table 1, all columns", () => {
    sameRows(
      "29 CFR 1918 Appendix II Table 1",
      CLIPS_1918.map((r) => [r.rope, r.clips, r.other, r.spacing, r.metric?.rope, r.metric?.spacing]),
      FEDERAL_1918.map((r) => [r.rope, r.forged, r.other, r.spacing, String(Math.round(r.cm * 10)), String(Math.round(r.spacingCm * 10))]),
    );
  });
  it("its spacing is six rope diameters in every row", () => {
    for (const row of FEDERAL_1918) expect(figure(row.spacing)).toBe(6 * figure(row.rope));
  });
  it("Cal. 8 CCR 8497 Table 1, all columns", () => {
    sameRows(
      "Cal. 8 CCR 8497 Table 1",
      CLIPS_CALIFORNIA.map((r) => [r.rope, r.clips, r.turnBack, r.torque]),
      CALIFORNIA_8497.map((r) => [r.rope, r.clips, r.turnBack, r.torque]),
    );
  });
  it("the two agree on the count at every size that both have", () => {
    for (const row of FEDERAL_1918) expect(CALIFORNIA_8497.find((r) => r.rope === row.rope)?.clips, row.rope).toBe(row.forged);
  });
  it("the Navy's rule of thumb, 3 D + 1 rounded up, gives fewer from 1 in up, so it is not used", () => {
    const thumb = (rope: string): number => Math.ceil(3 * figure(rope) + 1);
    expect(FEDERAL_1918.filter((row) => thumb(row.rope) < row.forged).map((row) => row.rope)).toEqual([
      "1",
      "1 1/8",
      "1 1/4",
      "1 3/8",
      "1 1/2",
    ]);
  });
  it("are looked up by size, never between sizes", () => {
    for (const row of CALIFORNIA_8497) {
      expect(toNumber(leastNumber("clips-california-torque", exact(row.rope), "in")?.least ?? exact(0)), row.rope).toBe(row.torque);
      expect(toNumber(leastNumber("clips-california-turn-back", exact(row.rope), "in")?.least ?? exact(0)), row.rope).toBe(row.inches);
    }
    expect(leastNumber("clips-california-torque", exact("11/16"), "in")).toBeNull();
    expect(leastNumber("clips-1918", exact("9/16"), "in")).toBeNull();
    expect(leastNumber("clips-1918", exact("1 5/8"), "in")).toBeNull();
    expect(leastNumber("clips-california-turn-back", exact("3/8"), "in")).toBeNull();
  });
});

describe("new shackles", () => {
  it.each([
    ["8.5.1, dee", DEE, DEE_TABLE],
    ["8.5.2, bow, first row", BOW, BOW_TABLE],
  ] as const)("Code for Lifting Appliances in a Marine Environment, Table %s, all columns", (name, rows, table) => {
    sameRows(
      `Table ${name}`,
      rows.map(({ load, mild, tensile }) => [Number(load), ...mild, ...tensile]),
      table.map(([load, ...sizes]) => [Number(load), ...sizes]),
    );
  });
});

describe("sheave grooves", () => {
  for (const row of GROOVES)
    it(`rope ${row.rope} in: ${String(row.oversize)} % oversize, worn at ${String(row.worn)} in`, () => {
      expect(toNumber(leastOf("groove", exact(row.rope), "in", "in")?.least ?? exact(0))).toBe(row.worn);
      // The worn groove lies half way between the nominal and the largest new rope.
      expect(row.worn * 2 - figure(row.rope)).toBeCloseTo(row.most, 9);
      expect(row.most).toBeCloseTo(figure(row.rope) * (1 + row.oversize / 100), 9);
      expect(row.least).toBeCloseTo(figure(row.rope) * 1.06, 9);
      expect(row.widest).toBeCloseTo(figure(row.rope) * 1.1, 9);
    });
  it("oversize bands end at 1/8, 3/16 and 5/16 in (3.2, 4.8, 8.0 mm)", () => {
    expect(ROPE_OVERSIZE.map((b) => [b.upTo?.in ?? null, b.upTo?.mm ?? null, Number(b.share)])).toEqual([
      ["1/8", "3.2", 0.08],
      ["3/16", "4.8", 0.07],
      ["5/16", "8", 0.06],
      [null, null, 0.05],
    ]);
  });
});

describe("ropes", () => {
  it("Mich. R 408.40834(1)(d), all bands", () => {
    expect(STEPPED_LOSS.map((b) => [b.from, b.to, b.loss])).toEqual(STEPPED);
  });
  it("0.028 in lost of 1/2 in fails the 5 % rule (0.025 in) and passes the stepped table (1/32 in)", () => {
    expect(0.028).toBeGreaterThan(0.05 * 0.5);
    expect(0.028).toBeLessThan(figure(STEPPED.find(([, to]) => to === "1/2")?.[2] ?? "0"));
  });
  it("ISO 4309:2010 Table 3, copy A, all rows", () => {
    sameRows(
      "ISO 4309:2010 Table 3",
      ISO_4309_TABLE_3.map((r) => [r.rcn, r.wires, r.ordinary6d, r.ordinary30d, r.lang6d, r.lang30d, r.multi6d, r.multi30d]),
      CATEGORIES,
    );
  });
  it("its columns hang together: multi-layer is twice ordinary, Lang 30d is ordinary 6d", () => {
    for (const r of ISO_4309_TABLE_3) {
      expect([r.rcn, r.multi6d, r.multi30d, r.lang30d]).toEqual([r.rcn, 2 * r.ordinary6d, 2 * r.ordinary30d, r.ordinary6d]);
    }
  });
});

describe("capacity", () => {
  it("ASME B30.9 Table 9-1.8.1-1, all columns", () => {
    sameRows(
      "ASME B30.9 Table 9-1.8.1-1",
      HEAT.map((r) => [r.fahrenheit, r.celsius, r.hot["80"], r.after["80"], r.hot["100"], r.after["100"]]),
      HEAT_ROWS,
    );
  });
  it("its Celsius column is its Fahrenheit column, to the degree", () => {
    for (const [fahrenheit, celsius] of HEAT_ROWS) expect(Math.round(((fahrenheit - 32) * 5) / 9)).toBe(celsius);
  });
  /** The first band that an angle falls into, in percent. */
  const percentAt = (bands: readonly Band[], angle: number): number | undefined => {
    const band = bands.find(({ end, closed }) => angle < toNumber(end) || (closed && angle === toNumber(end)));
    return band && Math.round(band.share * 100);
  };
  it.each([
    ["choke angle, share of the choker rating", CHOKE, CHOKE_ROWS, 180],
    ["choke angle of chain, share of the vertical rating", CHAIN_CHOKE, CHAIN_CHOKE_ROWS, 180],
    ["choke angle of wire rope, share of the vertical rating", ROPE_CHOKE, ROPE_CHOKE_ROWS, 180],
    ["side load of a shackle", SHACKLE_SIDE, SHACKLE_SIDE_ROWS, 90],
  ] as const)("%s: every printed row, and nothing beyond the last angle", (_, bands, rows, last) => {
    for (const [angle, percent] of rows) expect([angle, percentAt(bands, angle)]).toEqual([angle, percent]);
    expect(percentAt(bands, last)).toBeDefined();
    expect(percentAt(bands, last + 0.01)).toBeUndefined();
  });
  it("a choker is rated 75 % of a vertical sling, chain not below 30 degrees; an eyebolt is in line to 5 degrees, in shipyards pulled to 20", () => {
    expect([CHOKER_SHARE, ...[CHAIN_CHOKE_LEAST, EYEBOLT_IN_LINE, EYEBOLT_SHIPYARD].map(toNumber)]).toEqual([0.75, 30, 5, 20]);
  });
  it("bands rise to their ends and shares only fall with a worse angle", () => {
    for (const bands of [CHOKE, ROPE_CHOKE, SHACKLE_SIDE]) {
      const ends = bands.map((b) => toNumber(b.end));
      expect(ends).toEqual([...ends].sort((a, b) => a - b));
    }
    const shares = (bands: typeof CHOKE): number[] => bands.map((b) => b.share);
    expect(shares(CHOKE)).toEqual([...shares(CHOKE)].sort((a, b) => a - b));
    expect(shares(SHACKLE_SIDE)).toEqual([...shares(SHACKLE_SIDE)].sort((a, b) => b - a));
  });
  it("ASME B18.15, shoulder eyebolts by size and angle", () => {
    sameRows(
      "ASME B18.15, shoulder pattern",
      EYEBOLT_SIDE.map(({ size, inLine, at }) => [size, inLine, ...at.map(({ pounds }) => pounds)]),
      EYEBOLT_TABLE,
    );
  });
});

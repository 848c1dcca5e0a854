/** Published figures for the load that gear may carry: choke angle, heat, side load. Looked up, never interpolated. */
import { exact, type Exact } from "../numbers/exact";

export interface Band {
  /** Upper end of the band. */
  readonly end: Exact;
  /** Whether the end itself belongs to the band. */
  readonly closed: boolean;
  readonly share: number;
}
/** "5" is up to and including 5; "<30" is up to but not including 30. */
const bands = (rows: readonly (readonly [end: string, percent: number])[]): readonly Band[] =>
  rows.map(([end, percent]) => ({ end: exact(end.replace("<", "")), closed: !end.startsWith("<"), share: percent / 100 }));
/**
 * Choke angle in degrees to the share of the choker rating. Rigging handbooks restating ASME B30.9; the row "over 120"
 * is the full rating, and exactly 120 falls into the row "90 to 120". Printed gaps (89 to 90) count to the lower row.
 */
export const CHOKE = bands([
  ["<30", 49],
  ["<60", 62],
  ["<90", 74],
  ["120", 87],
  ["180", 100],
]);
/**
 * Choke angle in degrees to the share of the VERTICAL rating, chain slings: a chain brochure to the European standard (restated: single leg of 5.0 t is 4.00,
 * 3.25, 2.75, 2.00 t). Printed gaps (119 to 120) count to the lower row. Nothing is printed below 30 degrees, so there a chain sling is refused. Below
 * 120 degrees it is stricter than CHOKER_SHARE times CHOKE, from 120 on that is; the stricter of the two counts.
 */
export const CHAIN_CHOKE = bands([
  ["<60", 40],
  ["<90", 55],
  ["<120", 65],
  ["180", 80],
]);
export const CHAIN_CHOKE_LEAST = exact("30");
/**
 * Choke angle in degrees to the share of the VERTICAL rating, wire rope slings: 75 % from 120 degrees, and as low as 40 % below, the stricter of the two
 * published readings. Sling handbooks, one of them on wire rope; restated on two pages.
 */
export const ROPE_CHOKE = bands([
  ["<120", 40],
  ["180", 75],
]);
/** Choker rating as a share of the vertical rating, typical of US sling tables. */
export const CHOKER_SHARE = 0.75;
/** Angle out of the shackle's plane to the share of its working load limit. Bands: WAC 296-155-33905 Fig. 17; shares: training summary of ASME B30.26. */
export const SHACKLE_SIDE = bands([
  ["5", 100],
  ["45", 70],
  ["90", 50],
]);
/**
 * Shoulder eyebolts of carbon steel by size in inches: pounds in line and at 30, 60 and 90 degrees from the axis (ASME B18.15, restated). Null: not
 * recommended there. Up to 5 degrees count as in line.
 */
export interface EyeboltRow {
  readonly size: string;
  readonly inLine: number;
  readonly at: readonly { readonly degrees: number; readonly pounds: number | null }[];
}
const eyebolt = (size: string, inLine: number, ...pounds: readonly (number | null)[]): EyeboltRow => ({
  size,
  inLine,
  at: pounds.map((load, at) => ({ degrees: 30 * (at + 1), pounds: load })),
});
export const EYEBOLT_SIDE: readonly EyeboltRow[] = [
  eyebolt("1/4", 400, 75, null, null),
  eyebolt("3/8", 1000, 400, 220, 180),
  eyebolt("1/2", 1840, 850, 520, 440),
  eyebolt("3/4", 4340, 2230, 1310, 1140),
  eyebolt("1", 7880, 3850, 2630, 2320),
];
export const EYEBOLT_IN_LINE = exact("5");
/** Off the axis of an eyebolt, shipyard work allows no more: WAC 296-304-07011(4). */
export const EYEBOLT_SHIPYARD = exact("20");
export interface HeatRow {
  readonly fahrenheit: number;
  readonly celsius: number;
  /** Percent taken off, while hot and for good afterwards. */
  readonly hot: Readonly<Record<"80" | "100", number>>;
  readonly after: Readonly<Record<"80" | "100", number>>;
}
/** ASME B30.9 Table 9-1.8.1-1, alloy chain, as restated on three pages that agree. Below the first row nothing is taken off. */
export const HEAT: readonly HeatRow[] = [
  { fahrenheit: 400, celsius: 204, hot: { "80": 10, "100": 15 }, after: { "80": 0, "100": 0 } },
  { fahrenheit: 500, celsius: 260, hot: { "80": 15, "100": 25 }, after: { "80": 0, "100": 5 } },
  { fahrenheit: 600, celsius: 316, hot: { "80": 20, "100": 30 }, after: { "80": 5, "100": 15 } },
  { fahrenheit: 700, celsius: 371, hot: { "80": 30, "100": 40 }, after: { "80": 10, "100": 20 } },
  { fahrenheit: 800, celsius: 427, hot: { "80": 40, "100": 50 }, after: { "80": 15, "100": 25 } },
  { fahrenheit: 900, celsius: 482, hot: { "80": 50, "100": 60 }, after: { "80": 20, "100": 30 } },
  { fahrenheit: 1000, celsius: 538, hot: { "80": 60, "100": 70 }, after: { "80": 25, "100": 35 } },
];

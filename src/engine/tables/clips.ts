/** Wire rope clips: how many, how far apart, how much rope turned back, how tight. */

export interface ClipRow {
  /** Rope diameter in inches. */
  readonly rope: string;
  readonly clips: number;
  /** Clips of other material than drop forged. */
  readonly other?: number;
  /** Inches. */
  readonly spacing?: string;
  /** The table's own column for metric rope, in millimetres. */
  readonly metric?: { readonly rope: string; readonly spacing: string };
  readonly turnBack?: string;
  /** Pound-feet. */
  readonly torque?: number;
}
/** 29 CFR Part 1918 Appendix II, Table 1: mandatory where the maker's figures are missing. The first row is "1/2 or less". */
export const CLIPS_1918: readonly ClipRow[] = [
  { rope: "1/2", clips: 3, other: 4, spacing: "3", metric: { rope: "13", spacing: "76" } },
  { rope: "5/8", clips: 3, other: 4, spacing: "3 3/4", metric: { rope: "16", spacing: "95" } },
  { rope: "3/4", clips: 4, other: 5, spacing: "4 1/2", metric: { rope: "19", spacing: "114" } },
  { rope: "7/8", clips: 4, other: 5, spacing: "5 1/4", metric: { rope: "22", spacing: "133" } },
  { rope: "1", clips: 5, other: 6, spacing: "6", metric: { rope: "25", spacing: "152" } },
  { rope: "1 1/8", clips: 6, other: 6, spacing: "6 3/4", metric: { rope: "29", spacing: "171" } },
  { rope: "1 1/4", clips: 6, other: 7, spacing: "7 1/2", metric: { rope: "32", spacing: "191" } },
  { rope: "1 3/8", clips: 7, other: 7, spacing: "8 1/4", metric: { rope: "35", spacing: "210" } },
  { rope: "1 1/2", clips: 7, other: 8, spacing: "9", metric: { rope: "38", spacing: "229" } },
];
/** Cal. Code Regs. tit. 8 section 8497 Table 1: U-bolt clips with thimble. */
export const CLIPS_CALIFORNIA: readonly ClipRow[] = [
  { rope: "1/2", clips: 3, turnBack: "11 1/2", torque: 65 },
  { rope: "9/16", clips: 3, turnBack: "12", torque: 95 },
  { rope: "5/8", clips: 3, turnBack: "12", torque: 95 },
  { rope: "3/4", clips: 4, turnBack: "18", torque: 130 },
  { rope: "7/8", clips: 4, turnBack: "19", torque: 225 },
  { rope: "1", clips: 5, turnBack: "26", torque: 225 },
  { rope: "1 1/8", clips: 6, turnBack: "34", torque: 225 },
  { rope: "1 1/4", clips: 6, turnBack: "37", torque: 360 },
  { rope: "1 3/8", clips: 7, turnBack: "44", torque: 360 },
  { rope: "1 1/2", clips: 7, turnBack: "48", torque: 360 },
  { rope: "1 5/8", clips: 7, turnBack: "51", torque: 430 },
  { rope: "1 3/4", clips: 7, turnBack: "53", torque: 590 },
  { rope: "2", clips: 8, turnBack: "71", torque: 750 },
  { rope: "2 1/4", clips: 8, turnBack: "73", torque: 750 },
];

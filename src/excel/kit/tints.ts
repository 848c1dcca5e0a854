/**
 * Tints of the register's cells on a light sheet: flag, line of reason and a late date, nothing else. Chosen so that they stay
 * apart for people who see no red, no green or no blue, and in grey print, where each step is a visible step lighter;
 * `tests/pane/colors.test.ts` measures it. The word and its symbol stand in the cell as well.
 */
export const SHEET_COLORS = {
  REMOVE: { fill: "#E0988A", font: "#4A0A06" },
  EXAMINE: { fill: "#C7B6E4", font: "#2E1065" },
  OVERDUE: { fill: "#FBD092", font: "#5A3200" },
  "DUE SOON": { fill: "#EAF1C0", font: "#3A4A00" },
} as const;
/** Tints of the other decisions. */
export const SIGN_COLORS = {
  EXAMINE: SHEET_COLORS.EXAMINE,
  "NO VERDICT": { fill: "#DFE3E8", font: "#1F2933" },
  DRESS: { fill: "#D3E9F6", font: "#0B3A57" },
  WATCH: { fill: "#FFF3C4", font: "#4A3B00" },
} as const;
/** KEEP has no tint, its word only a colour of its own. */
export const KEEP_FONT = "#0B5B2B";
/** An input cell that this kind of gear does not read, and one that it needs and that is blank. */
export const CELL_COLORS = { notNeeded: "#E4E7EB", missing: "#FFF0B3" } as const;

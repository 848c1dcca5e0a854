/**
 * Colours of the decisions in the pane. Out of use is a full field, in use is a light one, so that the two stay apart even
 * without hue; symbol and word always stand beside the colour. Contrast is 4.5 or more; `tests/pane/colors.test.ts` measures it.
 */
import type { Decision } from "../../engine/decision";
import type { DueState } from "../../engine/due/intervals";
import type { Shade } from "./theme";

export interface Tint {
  readonly fill: string;
  /** Text on the fill. */
  readonly ink: string;
  /** Lines, bars and numbers on the pane's own background. */
  readonly mark: string;
}
const LIGHT: Record<Decision, Tint> = {
  REMOVE: { fill: "#9F1D20", ink: "#FFFFFF", mark: "#9F1D20" },
  EXAMINE: { fill: "#5B3A8C", ink: "#FFFFFF", mark: "#5B3A8C" },
  "NO VERDICT": { fill: "#56616C", ink: "#FFFFFF", mark: "#56616C" },
  DRESS: { fill: "#B4D5F2", ink: "#0B4A78", mark: "#1B6BA8" },
  WATCH: { fill: "#FCE3A0", ink: "#6B4700", mark: "#8A5A00" },
  KEEP: { fill: "#E6F5EC", ink: "#0B5345", mark: "#0B6B58" },
};
const DARK: Record<Decision, Tint> = {
  REMOVE: { fill: "#FF9C8A", ink: "#2B0500", mark: "#FF9C8A" },
  EXAMINE: { fill: "#C4A8F5", ink: "#1E0F3A", mark: "#C4A8F5" },
  "NO VERDICT": { fill: "#C9D1D9", ink: "#1B2127", mark: "#C9D1D9" },
  DRESS: { fill: "#1B4F78", ink: "#C6E3FA", mark: "#8CC4F0" },
  WATCH: { fill: "#5A4200", ink: "#FFDF8A", mark: "#F0C04A" },
  KEEP: { fill: "#0E2F24", ink: "#9FE3CF", mark: "#5FC7A8" },
};
export const DECISION_COLORS: Record<Shade, Record<Decision, Tint>> = { light: LIGHT, dark: DARK };
/** A late date looks like what it leads to. */
const DUE_AS: Record<DueState, Decision> = { OVERDUE: "REMOVE", "DUE SOON": "WATCH", CURRENT: "KEEP", "NO DATE": "NO VERDICT" };
export function dueTint(shade: Shade, state: DueState): Tint {
  return DECISION_COLORS[shade][DUE_AS[state]];
}

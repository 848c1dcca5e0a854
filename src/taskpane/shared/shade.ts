/** Tells every part of the pane which shade it stands in. */
import { createContext, useContext } from "react";
import type { Decision } from "../../engine/decision";
import type { DueState } from "../../engine/due/intervals";
import { DECISION_COLORS, dueTint, type Tint } from "./decision-colors";
import type { Shade } from "./theme";

export const ShadeContext = createContext<Shade>("light");
export function useDecisionTints(): Record<Decision, Tint> {
  return DECISION_COLORS[useContext(ShadeContext)];
}
export function useDueTint(state: DueState): Tint {
  return dueTint(useContext(ShadeContext), state);
}

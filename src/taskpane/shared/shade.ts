/** Tells every part of the pane which shade it stands in. */
import { createContext, useContext } from "react";
import type { DueState } from "../../engine/model";
import type { Decision } from "../../engine/verdict";
import { DECISION_COLORS, dueTint, type Tint } from "../decision-colors";
import type { Shade } from "../theme";

export const ShadeContext = createContext<Shade>("light");

export function useDecisionTints(): Record<Decision, Tint> {
  return DECISION_COLORS[useContext(ShadeContext)];
}

export function useDueTint(state: DueState): Tint {
  return dueTint(useContext(ShadeContext), state);
}

/** The six decisions with symbol, word and count. */
import { ACTIONS, type Decision, DECISIONS, SYMBOLS } from "../../engine/decision";
import { CountButtons } from "../shared/CountButtons";
import { useDecisionTints } from "../shared/shade";

interface Props {
  counts: Readonly<Record<Decision, number>>;
  pressed: readonly Decision[];
  onPress: (decision: Decision) => void;
}
export function DecisionButtons({ counts, pressed, onPress }: Props) {
  const tints = useDecisionTints();
  const buttons = DECISIONS.map((decision) => ({
    key: decision,
    count: counts[decision],
    symbol: SYMBOLS[decision],
    word: decision,
    tint: tints[decision],
    title: ACTIONS[decision],
  }));
  return <CountButtons label="Show only these decisions" columns={3} buttons={buttons} pressed={pressed} onPress={onPress} />;
}

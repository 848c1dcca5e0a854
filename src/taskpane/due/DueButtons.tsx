/** The four due states with counts. */
import { useContext } from "react";
import type { DueState } from "../../engine/due/intervals";
import { CountButtons } from "../shared/CountButtons";
import { dueTint } from "../shared/decision-colors";
import { ShadeContext } from "../shared/shade";
import { DUE_NAMES, DUE_STATES, DUE_SYMBOLS } from "../shared/words";

interface Props {
  due: Readonly<Record<DueState, number>>;
  pressed: readonly DueState[];
  onPress: (state: DueState) => void;
}
export function DueButtons({ due, pressed, onPress }: Props) {
  const shade = useContext(ShadeContext);
  const buttons = DUE_STATES.map((state) => ({
    key: state,
    count: due[state],
    symbol: DUE_SYMBOLS[state],
    word: DUE_NAMES[state],
    tint: dueTint(shade, state),
  }));
  return <CountButtons label="Show only these due states" columns={4} buttons={buttons} pressed={pressed} onPress={onPress} />;
}

/** The four due states with counts. Pressed ones narrow the list; none pressed shows all. */
import { makeStyles, mergeClasses, tokens } from "@fluentui/react-components";
import { useContext } from "react";
import type { DueState } from "../../engine/model";
import { dueTint } from "../decision-colors";
import { ShadeContext } from "../shared/shade";
import { DUE_NAMES, DUE_STATES, DUE_SYMBOLS, showNumber } from "../words";

const useStyles = makeStyles({
  group: { display: "grid", gridTemplateColumns: "repeat(4, minmax(0, 1fr))", gap: "6px" },
  button: {
    display: "flex",
    flexDirection: "column",
    alignItems: "flex-start",
    minHeight: "48px",
    padding: "4px 5px 5px 6px",
    font: "inherit",
    textAlign: "left",
    color: tokens.colorNeutralForeground1,
    backgroundColor: tokens.colorNeutralBackground1,
    border: `1px solid ${tokens.colorNeutralStroke1}`,
    borderLeftWidth: "4px",
    borderRadius: tokens.borderRadiusMedium,
    cursor: "pointer",
    ":hover": { backgroundColor: tokens.colorNeutralBackground1Hover },
    ":focus-visible": { outline: `2px solid ${tokens.colorStrokeFocus2}`, outlineOffset: "1px" },
  },
  none: { color: tokens.colorNeutralForeground3 },
  number: { alignSelf: "stretch", display: "flex", justifyContent: "space-between", gap: "4px", fontSize: tokens.fontSizeBase400, lineHeight: tokens.lineHeightBase300, fontWeight: tokens.fontWeightSemibold, fontVariantNumeric: "tabular-nums" },
  word: { fontSize: "11px", lineHeight: "14px", fontWeight: tokens.fontWeightSemibold, whiteSpace: "nowrap" },
});

interface Props {
  due: Readonly<Record<DueState, number>>;
  pressed: readonly DueState[];
  onPress: (state: DueState) => void;
}

export function DueButtons({ due, pressed, onPress }: Props) {
  const styles = useStyles();
  const shade = useContext(ShadeContext);
  return (
    <div role="group" aria-label="Show only these" className={styles.group}>
      {DUE_STATES.map((state) => {
        const on = pressed.includes(state);
        const { fill, ink, mark } = dueTint(shade, state);
        return (
          <button
            key={state}
            type="button"
            aria-pressed={on}
            className={mergeClasses(styles.button, due[state] === 0 && styles.none)}
            style={on ? { backgroundColor: fill, color: ink, borderColor: mark } : { borderLeftColor: mark }}
            onClick={() => onPress(state)}
          >
            <span className={styles.number}>
              {showNumber(due[state])} <span aria-hidden="true">{DUE_SYMBOLS[state]}</span>
            </span>
            <span className={styles.word}>{DUE_NAMES[state]}</span>
          </button>
        );
      })}
    </div>
  );
}

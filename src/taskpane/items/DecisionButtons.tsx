/** The six decisions with symbol, word and count. Pressed ones narrow the list; none pressed shows all. */
import { makeStyles, mergeClasses, tokens } from "@fluentui/react-components";
import { ACTIONS, DECISIONS, SYMBOLS, type Decision } from "../../engine/verdict";
import { useDecisionTints } from "../shared/shade";
import { showNumber } from "../words";

const useStyles = makeStyles({
  group: { display: "grid", gridTemplateColumns: "repeat(3, minmax(0, 1fr))", gap: "6px" },
  button: {
    display: "flex",
    flexDirection: "column",
    alignItems: "flex-start",
    minHeight: "48px",
    padding: "4px 8px 5px",
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
  pressed: { outline: `2px solid ${tokens.colorNeutralForeground1}`, outlineOffset: "-1px" },
  number: { alignSelf: "stretch", display: "flex", justifyContent: "space-between", gap: "4px", fontSize: tokens.fontSizeBase400, lineHeight: tokens.lineHeightBase300, fontWeight: tokens.fontWeightSemibold, fontVariantNumeric: "tabular-nums" },
  word: { fontSize: "11px", lineHeight: "14px", fontWeight: tokens.fontWeightSemibold, whiteSpace: "nowrap" },
});

interface Props {
  counts: Readonly<Record<Decision, number>>;
  pressed: readonly Decision[];
  onPress: (decision: Decision) => void;
}

export function DecisionButtons({ counts, pressed, onPress }: Props) {
  const styles = useStyles();
  const tints = useDecisionTints();
  return (
    <div role="group" aria-label="Show only these decisions" className={styles.group}>
      {DECISIONS.map((decision) => {
        const on = pressed.includes(decision);
        const { fill, ink, mark } = tints[decision];
        const colors = on ? { backgroundColor: fill, color: ink, borderColor: mark } : { borderLeftColor: mark };
        return (
          <button
            key={decision}
            type="button"
            aria-pressed={on}
            title={ACTIONS[decision]}
            className={mergeClasses(styles.button, counts[decision] === 0 && styles.none)}
            style={colors}
            onClick={() => onPress(decision)}
          >
            <span className={styles.number}>
              {showNumber(counts[decision])} <span aria-hidden="true">{SYMBOLS[decision]}</span>
            </span>
            <span className={styles.word}>{decision}</span>
          </button>
        );
      })}
    </div>
  );
}

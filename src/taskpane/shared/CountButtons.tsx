/** A row of buttons that narrow a list: each with its count, symbol and word. None pressed shows all. */
import { makeStyles, mergeClasses, tokens } from "@fluentui/react-components";
import type { Tint } from "../decision-colors";
import { showNumber } from "../words";

const useStyles = makeStyles({
  group: { display: "grid", gap: "6px" },
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
    ":focus-visible": { outline: `2px solid ${tokens.colorStrokeFocus2}`, outlineOffset: "2px" },
  },
  none: { color: tokens.colorNeutralForeground3 },
  // A second line round it, so that a pressed button is also seen where the system sets all colours.
  pressed: { outline: `1px solid ${tokens.colorNeutralForeground1}`, outlineOffset: "0px" },
  number: {
    alignSelf: "stretch",
    display: "flex",
    justifyContent: "space-between",
    gap: "4px",
    fontSize: tokens.fontSizeBase400,
    lineHeight: tokens.lineHeightBase300,
    fontWeight: tokens.fontWeightSemibold,
    fontVariantNumeric: "tabular-nums",
  },
  word: { fontSize: "11px", lineHeight: "14px", fontWeight: tokens.fontWeightSemibold, whiteSpace: "nowrap" },
});

export interface CountButton<Key extends string> {
  readonly key: Key;
  readonly count: number;
  readonly symbol: string;
  readonly word: string;
  readonly tint: Tint;
  readonly title?: string;
}

interface Props<Key extends string> {
  label: string;
  columns: number;
  buttons: readonly CountButton<Key>[];
  pressed: readonly Key[];
  onPress: (key: Key) => void;
}

export function CountButtons<Key extends string>({ label, columns, buttons, pressed, onPress }: Props<Key>) {
  const styles = useStyles();
  return (
    <div role="group" aria-label={label} className={styles.group} style={{ gridTemplateColumns: `repeat(${String(columns)}, minmax(0, 1fr))` }}>
      {buttons.map(({ key, count, symbol, word, tint, title }) => {
        const on = pressed.includes(key);
        return (
          <button
            key={key}
            type="button"
            aria-pressed={on}
            title={title}
            className={mergeClasses(styles.button, count === 0 && styles.none, on && styles.pressed)}
            style={on ? { backgroundColor: tint.fill, color: tint.ink, borderColor: tint.mark } : { borderLeftColor: tint.mark }}
            onClick={() => { onPress(key); }}
          >
            <span className={styles.number}>
              {showNumber(count)} <span aria-hidden="true">{symbol}</span>
            </span>
            <span className={styles.word}>{word}</span>
          </button>
        );
      })}
    </div>
  );
}

/** A row of buttons that narrow a list: each with its count, symbol and word. None pressed shows all. */
import { makeStyles, mergeClasses, tokens } from "@fluentui/react-components";
import { showNumber } from "../../engine/words";
import type { Tint } from "./decision-colors";

const useStyles = makeStyles({
  // Their widths are counted in the size of their words.
  group: { display: "grid", gap: "6px", fontSize: tokens.fontSizeBase200 },
  button: {
    display: "flex",
    flexDirection: "column",
    alignItems: "flex-start",
    minHeight: "48px",
    padding: "4px 5px 5px 6px",
    fontFamily: "inherit",
    fontSize: "inherit",
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
  pressed: {
    outline: `1px solid ${tokens.colorNeutralForeground1}`,
    outlineOffset: "0px",
    // Where the system sets all colours the button's own are gone: there it looks like what is selected.
    "@media (forced-colors: active)": {
      forcedColorAdjust: "none",
      color: "HighlightText !important",
      backgroundColor: "Highlight !important",
      outline: "2px solid Highlight",
      outlineOffset: "1px",
    },
  },
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
  word: { fontSize: "0.92em", lineHeight: "1.27", fontWeight: tokens.fontWeightSemibold },
});
export interface CountButton<Key extends string> {
  readonly key: Key;
  readonly count: number;
  readonly symbol: string;
  readonly word: string;
  readonly tint: Tint;
  readonly title?: string;
}
/** Beside the word of a button, in pixels; and between two buttons. */
const BESIDE = 18;
const GAP = 6;
/** So many columns where the longest word fits each, else two. */
function columnsOf(columns: number, words: readonly string[]): string {
  const longest = Math.max(...words.flatMap((word) => word.split(" ")).map((word) => word.length));
  const gaps = GAP * (columns - 1);
  // A letter is 0.6 of the size at most, on average over a word.
  const needed = `${String(columns * longest * 0.6)}em + ${String(columns * BESIDE + gaps)}px`;
  return `repeat(auto-fit, minmax(min((100% - ${String(GAP)}px) / 2, max((100% - ${String(gaps)}px) / ${String(columns)} - 0.1px, (${needed} - 100%) * 999)), 1fr))`;
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
    <div
      role="group"
      aria-label={label}
      className={styles.group}
      style={{
        gridTemplateColumns: columnsOf(
          columns,
          buttons.map(({ word }) => word),
        ),
      }}
    >
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
            onClick={() => {
              onPress(key);
            }}
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

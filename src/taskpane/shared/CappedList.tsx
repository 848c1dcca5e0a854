/** A list that shows its first lines and more on request, so that thousands of lines do not hold up the pane. */
import { Button, makeStyles, tokens } from "@fluentui/react-components";
import { useState, type ReactNode } from "react";
import { showNumber } from "../words";

const STEP = 50;

const useStyles = makeStyles({
  list: { margin: 0, paddingLeft: "18px", display: "flex", flexDirection: "column", gap: "4px", fontSize: tokens.fontSizeBase200, lineHeight: tokens.lineHeightBase200, overflowWrap: "anywhere" },
  more: { alignSelf: "flex-start" },
});

export function CappedList<T>({ entries, render, label }: { entries: readonly T[]; render: (entry: T) => ReactNode; label: string }) {
  const styles = useStyles();
  const [shown, setShown] = useState(STEP);
  const rest = entries.length - shown;
  return (
    <>
      <ul className={styles.list} aria-label={label}>
        {entries.slice(0, shown).map((entry, index) => (
          <li key={index}>{render(entry)}</li>
        ))}
      </ul>
      {rest > 0 && (
        <Button size="small" className={styles.more} onClick={() => { setShown(shown + STEP * 4); }}>
          Show more ({showNumber(rest)} left)
        </Button>
      )}
    </>
  );
}

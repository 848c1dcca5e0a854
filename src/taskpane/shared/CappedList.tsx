/** A list that shows its first lines and more on request, so that thousands of lines do not hold up the pane. */
import { Button, makeStyles, tokens } from "@fluentui/react-components";
import type { ReactNode } from "react";
import { showNumber } from "../../engine/words";
import { useMore } from "./more";

const STEP = 50;
const useStyles = makeStyles({
  list: {
    margin: 0,
    paddingLeft: "18px",
    display: "flex",
    flexDirection: "column",
    gap: "4px",
    fontSize: tokens.fontSizeBase200,
    lineHeight: tokens.lineHeightBase200,
    overflowWrap: "anywhere",
  },
  line: { ":focus": { outlineStyle: "none" } },
  more: { alignSelf: "flex-start" },
});
export function CappedList<T>({ entries, render, label }: { entries: readonly T[]; render: (entry: T) => ReactNode; label: string }) {
  const styles = useStyles();
  const { shown, list, more } = useMore(STEP, "li");
  const rest = entries.length - shown;
  return (
    <>
      <ul ref={list} className={styles.list} aria-label={label}>
        {entries.slice(0, shown).map((entry, index) => (
          <li key={index} tabIndex={-1} className={styles.line}>
            {render(entry)}
          </li>
        ))}
      </ul>
      {rest > 0 && (
        <Button size="small" className={styles.more} onClick={more}>
          Show more ({showNumber(rest)} left)
        </Button>
      )}
    </>
  );
}

/** What stands where there is no log yet. */
import { Button, makeStyles, tokens } from "@fluentui/react-components";
import type { Intentions } from "../state/actions";
import type { PaneState } from "../state/state";

const useStyles = makeStyles({
  start: {
    display: "flex",
    flexDirection: "column",
    gap: "12px",
    padding: "20px 14px",
    fontSize: tokens.fontSizeBase300,
    lineHeight: tokens.lineHeightBase300,
  },
  title: { margin: 0, fontSize: tokens.fontSizeBase500, lineHeight: tokens.lineHeightBase500, fontWeight: tokens.fontWeightSemibold },
  text: { margin: 0, overflowWrap: "anywhere" },
  steps: { margin: 0, paddingLeft: "20px", display: "flex", flexDirection: "column", gap: "6px" },
  buttons: { display: "flex", flexWrap: "wrap", gap: "8px" },
});
export function Start({ state, intentions }: { state: PaneState; intentions: Intentions }) {
  const styles = useStyles();
  const busy = state.work.kind !== "idle";
  if (busy && state.noLog === "") return <p className={styles.start}>Looking for the log.</p>;
  return (
    <section className={styles.start} aria-labelledby="start-title">
      <h2 id="start-title" className={styles.title}>
        Select your log and press Use selection
      </h2>
      {state.noLog !== "" && <p className={styles.text}>{state.noLog}</p>}
      <ol className={styles.steps}>
        <li>Open the sheet with your readings.</li>
        <li>Select the heading row and every row below it.</li>
        <li>Press Use selection. Nothing is written yet.</li>
      </ol>
      <div className={styles.buttons}>
        <Button appearance="primary" disabledFocusable={busy} onClick={() => void intentions.useSelection()}>
          Use selection
        </Button>
        <Button disabledFocusable={busy} onClick={() => void intentions.find()}>
          Find the log
        </Button>
      </div>
    </section>
  );
}

/** Chooses which log is read, and whether the log or the register is judged. */
import { Button, makeStyles, tokens } from "@fluentui/react-components";
import { showHow, showPlace } from "../shared/words";
import type { Intentions } from "../state/actions";
import type { PaneState } from "../state/state";

const useStyles = makeStyles({
  text: { margin: 0, fontSize: tokens.fontSizeBase200, lineHeight: tokens.lineHeightBase200, overflowWrap: "anywhere" },
  // Plain radio buttons: the component library's would be 2 kB of the pane.
  choice: {
    margin: 0,
    padding: 0,
    border: "none",
    minWidth: 0,
    display: "flex",
    flexDirection: "column",
    fontSize: tokens.fontSizeBase300,
    lineHeight: tokens.lineHeightBase300,
    overflowWrap: "anywhere",
  },
  legend: { padding: "0 0 2px" },
  line: { display: "flex", alignItems: "flex-start", gap: "8px", padding: "6px 8px", cursor: "pointer" },
  radio: { margin: "2px 0 0", width: "16px", height: "16px", flexShrink: 0, accentColor: tokens.colorCompoundBrandBackground },
  buttons: { display: "flex", flexWrap: "wrap", gap: "6px" },
});
interface Props {
  state: PaneState;
  intentions: Intentions;
  busy: boolean;
  close: () => void;
}
export function LogControl({ state, intentions, busy, close }: Props) {
  const styles = useStyles();
  const { log, register } = state;
  const ask = (work: () => Promise<unknown>) => () => {
    close();
    void work();
  };
  return (
    <>
      <p className={styles.text}>
        {log === null
          ? "No log has been read. Let the pane look for it, or select it with its heading row and press Use selection."
          : showHow(log.place)}
      </p>
      <div className={styles.buttons}>
        <Button disabledFocusable={busy} onClick={ask(intentions.find)}>
          Find the log
        </Button>
        <Button disabledFocusable={busy} onClick={ask(intentions.useSelection)}>
          Use selection
        </Button>
      </div>
      {log !== null && register !== null && log.place.how !== "register" && (
        <fieldset className={styles.choice}>
          <legend className={styles.legend}>Items and due dates come from</legend>
          {(
            [
              ["register", register.log.place],
              ["log", log.place],
            ] as const
          ).map(([judged, place]) => (
            <label key={judged} className={styles.line}>
              <input
                type="radio"
                name="judged"
                className={styles.radio}
                checked={state.judged === judged}
                onChange={() => {
                  intentions.judge(judged);
                }}
              />
              <span>
                the {judged}, {showPlace(place)}
              </span>
            </label>
          ))}
        </fieldset>
      )}
    </>
  );
}

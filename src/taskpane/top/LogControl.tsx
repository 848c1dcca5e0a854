/** Chooses which log is read, and whether the log or the register is judged. */
import { Button, Field, makeStyles, Radio, RadioGroup, tokens } from "@fluentui/react-components";
import type { Intentions } from "../intentions";
import type { PaneState } from "../state";
import { showHow, showPlace } from "../words";

const useStyles = makeStyles({
  text: { margin: 0, fontSize: tokens.fontSizeBase200, lineHeight: tokens.lineHeightBase200, overflowWrap: "anywhere" },
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
        {log === null ? "No log has been read. Let the pane look for it, or select it with its heading row and press Use selection." : showHow(log.place)}
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
        <Field label="Items and due dates come from">
          <RadioGroup value={state.judged} onChange={(_, data) => { intentions.judge(data.value === "log" ? "log" : "register"); }}>
            <Radio value="register" label={`the register, ${showPlace(register.log.place)}`} />
            <Radio value="log" label={`the log, ${showPlace(log.place)}`} />
          </RadioGroup>
        </Field>
      )}
    </>
  );
}

/** The button that writes the register: before the headings for the Tab key, and always in sight, at an edge of the log where it would scroll away. */
import { Button, makeStyles, tokens } from "@fluentui/react-components";
import type { ReadLog } from "../../excel/port";
import type { Intentions } from "../state/actions";
import type { PaneState } from "../state/state";

const useStyles = makeStyles({
  bar: {
    position: "sticky",
    top: 0,
    bottom: 0,
    zIndex: 1,
    margin: "0 -12px",
    display: "flex",
    flexWrap: "wrap",
    alignItems: "center",
    columnGap: "10px",
    rowGap: "4px",
    padding: "8px 12px",
    borderTop: `1px solid ${tokens.colorNeutralStroke2}`,
    borderBottom: `1px solid ${tokens.colorNeutralStroke2}`,
    backgroundColor: tokens.colorNeutralBackground1,
  },
  hint: {
    flex: "1 1 130px",
    fontSize: tokens.fontSizeBase200,
    lineHeight: tokens.lineHeightBase200,
    color: tokens.colorNeutralForeground2,
  },
});
export function BuildBar({ state, log, intentions }: { state: PaneState; log: ReadLog; intentions: Intentions }) {
  const styles = useStyles();
  const exists = state.register !== null;
  const blocked = log.report.problems.length > 0;
  const empty = log.report.items.length === 0;
  const hint = blocked
    ? "Put right what stands under “Put right first”, then press Read again."
    : empty
      ? "There is no item to write."
      : exists
        ? "What was typed in the register stays."
        : "Nothing is written until you press it.";
  return (
    <div className={styles.bar} data-build="">
      <Button
        appearance="primary"
        disabledFocusable={blocked || empty || state.work.kind !== "idle"}
        aria-describedby="build-hint"
        onClick={() => void intentions.build()}
      >
        {exists ? "Rebuild register" : "Build register"}
      </Button>
      {(blocked || empty) && <Button onClick={() => void intentions.readAgain()}>Read again</Button>}
      <span id="build-hint" className={styles.hint}>
        {hint}
      </span>
    </div>
  );
}

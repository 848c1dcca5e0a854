/** Stamps the selected rows of the register as inspected today: a name, a look at what is selected, and a confirmation with the count. */
import { Button, Input, Label, makeStyles, tokens } from "@fluentui/react-components";
import { useEffect, useRef } from "react";
import { count } from "../../engine/words";
import { CappedList } from "../shared/CappedList";
import { showDay } from "../shared/days";
import { Folded } from "../shared/Section";
import type { Intentions } from "../state/actions";
import type { PaneState } from "../state/state";

const useStyles = makeStyles({
  text: { margin: 0, fontSize: tokens.fontSizeBase200, lineHeight: tokens.lineHeightBase200, color: tokens.colorNeutralForeground2 },
  row: { display: "flex", flexWrap: "wrap", gap: "6px", alignItems: "center" },
  name: { flexGrow: 1, minWidth: 0 },
  ask: {
    display: "flex",
    flexDirection: "column",
    gap: "6px",
    padding: "8px",
    borderLeft: `3px solid ${tokens.colorBrandStroke1}`,
    overflowWrap: "anywhere",
  },
  question: { margin: 0, fontSize: tokens.fontSizeBase300, lineHeight: tokens.lineHeightBase300 },
});
export function StampRows({ state, intentions }: { state: PaneState; intentions: Intentions }) {
  const styles = useStyles();
  const { name, plan } = state.stamp;
  const busy = state.work.kind !== "idle";
  const nobody = name.trim() === "";
  return (
    <Folded title="Stamp as inspected">
      <p className={styles.text}>
        Select rows in the register. Those with every reading that they need, and not tagged out, get today's date and the name under
        Inspected and Inspected by.
      </p>
      <div className={styles.row}>
        <Label htmlFor="stamp-name">Inspected by</Label>
        <Input
          id="stamp-name"
          size="small"
          className={styles.name}
          value={name}
          onChange={(_, data) => {
            intentions.tell({ kind: "stamp name", name: data.value });
          }}
        />
      </div>
      <div className={styles.row}>
        <Button size="small" disabledFocusable={busy || nobody} onClick={() => void intentions.lookStamp()}>
          Look at the selected rows
        </Button>
        {nobody && <span className={styles.text}>Give a name first.</span>}
      </div>
      {plan !== null && <Confirm state={state} intentions={intentions} />}
    </Folded>
  );
}
function Confirm({ state, intentions }: { state: PaneState; intentions: Intentions }) {
  const styles = useStyles();
  const { name, plan, day } = state.stamp;
  const asked = useRef<HTMLDivElement>(null);
  useEffect(() => {
    asked.current?.querySelector<HTMLElement>(":scope > div:last-child button")?.focus();
  }, [plan]);
  if (plan === null) return null;
  const { rows, left } = plan;
  return (
    <div ref={asked} className={styles.ask} role="group" aria-label="Confirm the stamp">
      <p className={styles.question}>
        {rows.length === 0
          ? "None of the selected rows can be stamped."
          : `${count(rows.length, "row gets", "rows get")} the date ${showDay(day)} and the name ${name.trim()}.`}
      </p>
      {left.length > 0 && (
        <>
          <p className={styles.text}>Left out:</p>
          <CappedList label="Rows that are left out" entries={left} render={({ id, why }) => `${id}: ${why}`} />
        </>
      )}
      <div className={styles.row}>
        {rows.length > 0 && (
          <Button size="small" appearance="primary" disabledFocusable={state.work.kind !== "idle"} onClick={() => void intentions.stamp()}>
            Stamp {count(rows.length, "row")}
          </Button>
        )}
        <Button
          size="small"
          onClick={() => {
            intentions.tell({ kind: "stamp plan", plan: null, day });
          }}
        >
          {rows.length === 0 ? "Close" : "Do not stamp"}
        </Button>
      </div>
    </div>
  );
}

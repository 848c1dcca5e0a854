/** Before the lift: can the gear of one hook-up carry the load? */
import { Button, makeStyles, tokens } from "@fluentui/react-components";
import { useMemo, useRef, useState } from "react";
import { count } from "../../engine/words";
import type { ReadLog } from "../../excel/port";
import { Section } from "../shared/Section";
import type { Intentions } from "../state/actions";
import type { LiftChange } from "../state/lift-form";
import type { PaneState } from "../state/state";
import { AnswerLine } from "./AnswerLine";
import { GearPicker } from "./GearPicker";
import { judgeLift, outcomeOf } from "./judge";
import { LiftInputs } from "./LiftInputs";
import { LiftOutcome } from "./LiftOutcome";
import { PickedGear } from "./PickedGear";

const useStyles = makeStyles({
  view: { display: "flex", flexDirection: "column", gap: "14px", padding: "12px" },
  pick: { alignSelf: "flex-start" },
  row: { display: "flex", flexWrap: "wrap", gap: "8px", alignItems: "center" },
  hint: {
    flex: "1 1 130px",
    fontSize: tokens.fontSizeBase200,
    lineHeight: tokens.lineHeightBase200,
    color: tokens.colorNeutralForeground2,
  },
});
export function LiftView({ state, shown, intentions }: { state: PaneState; shown: ReadLog; intentions: Intentions }) {
  const styles = useStyles();
  const { report } = shown;
  const form = state.lift;
  const gear = useRef<HTMLHeadingElement>(null);
  const asked = useMemo(() => judgeLift(form, report), [form, report]);
  const outcome = outcomeOf(form, asked.result);
  // The picker makes room once gear is picked and the lift is typed.
  const [picking, setPicking] = useState(form.picked.length === 0);
  const [askedFor, setAskedFor] = useState(false);
  const open = picking || form.picked.length === 0;
  const change = (one: LiftChange): void => {
    if (one.kind === "set" || one.kind === "strict") setPicking(false);
    if (one.kind === "start again") {
      setAskedFor(false);
      setPicking(true);
    }
    intentions.tell({ kind: "lift", change: one });
  };
  const blocked = outcome === "nothing picked" || asked.result.refusals.length > 0;
  const hint =
    form.sheet !== ""
      ? `Written on sheet ${form.sheet}, with live formulas.`
      : blocked
        ? "Put right what stands above first."
        : "Writes its own sheet anew; no other sheet is touched.";
  return (
    <div className={styles.view}>
      <Section title="Gear of one hook-up" heading={gear} aside={count(form.picked.length, "item")}>
        {open && <GearPicker form={form} report={report} takeFocus={askedFor} onChange={change} />}
        {form.picked.length > 0 && (
          <Button
            className={styles.pick}
            aria-expanded={open}
            onClick={() => {
              setAskedFor(!open);
              setPicking(!open);
            }}
          >
            {open ? "Done picking" : "Pick more"}
          </Button>
        )}
        <PickedGear form={form} report={report} onChange={change} onNone={() => gear.current?.focus()} />
      </Section>
      <Section title="The lift">
        <LiftInputs form={form} strictRules={report.basis.includes("strict")} onChange={change} />
      </Section>
      <LiftOutcome outcome={outcome} result={asked.result} />
      <div className={styles.row}>
        <Button
          appearance="primary"
          disabledFocusable={blocked || state.work.kind !== "idle"}
          aria-describedby="lift-hint"
          onClick={() => void intentions.writeLift(asked)}
        >
          Put this on a sheet
        </Button>
        <Button
          onClick={() => {
            change({ kind: "start again" });
          }}
        >
          Start again
        </Button>
        <span id="lift-hint" className={styles.hint}>
          {hint}
        </span>
      </div>
      <AnswerLine outcome={outcome} result={asked.result} />
    </div>
  );
}

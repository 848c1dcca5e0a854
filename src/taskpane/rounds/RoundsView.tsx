/** Rounds: a sheet to take into the yard, its readings posted, the history looked at. */
import { makeStyles } from "@fluentui/react-components";
import { useEffect } from "react";
import { Notice } from "../shared/Notice";
import type { Intentions } from "../state/actions";
import type { PaneState } from "../state/state";
import { HistoryPart } from "./HistoryPart";
import { MakeRound } from "./MakeRound";
import { PostRound } from "./PostRound";

const useStyles = makeStyles({
  view: { display: "flex", flexDirection: "column", gap: "18px", padding: "12px" },
});
export function RoundsView({ state, intentions }: { state: PaneState; intentions: Intentions }) {
  const styles = useStyles();
  const { sheets, working } = state.rounds;
  const free = state.started && state.work.kind === "idle" && working === null;
  useEffect(() => {
    if (sheets === null && free && state.failure === null) void intentions.round({ kind: "list" });
  }, [sheets, free, state.failure, intentions]);
  if (state.register === null)
    return (
      <div className={styles.view}>
        <Notice
          intent="info"
          title="A round is made from the register."
          action={{
            label: "Go to Log",
            onClick: () => {
              intentions.tell({ kind: "go", place: "log" });
            },
          }}
        >
          Build the register first; then what is due, and what is missing, can be taken into the yard.
        </Notice>
      </div>
    );
  return (
    <div className={styles.view}>
      <MakeRound report={state.register.log.report} rounds={state.rounds} free={free} intentions={intentions} />
      <PostRound rounds={state.rounds} free={free} intentions={intentions} />
      <HistoryPart rounds={state.rounds} free={free} intentions={intentions} />
    </div>
  );
}

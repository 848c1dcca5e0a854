/** The line that always stands on top: which log, how many items, which rules, as of which date. Each part opens its control. */
import { makeStyles, tokens } from "@fluentui/react-components";
import { count } from "../../engine/words";
import { showDay } from "../shared/days";
import { showBasis, showPlace } from "../shared/words";
import type { Intentions } from "../state/actions";
import { type PaneState, shownLog } from "../state/state";
import { DateControl } from "./DateControl";
import { LogControl } from "./LogControl";
import { Part, PartButton } from "./Part";
import { RulesControl } from "./RulesControl";

const useStyles = makeStyles({
  line: {
    display: "flex",
    flexWrap: "wrap",
    columnGap: "2px",
    padding: "4px 6px",
    borderBottom: `1px solid ${tokens.colorNeutralStroke2}`,
    backgroundColor: tokens.colorNeutralBackground2,
  },
});
export function TopLine({ state, intentions }: { state: PaneState; intentions: Intentions }) {
  const styles = useStyles();
  const shown = shownLog(state);
  const busy = state.work.kind !== "idle";
  const house = shown?.report.basis.includes("house") === true;
  const rules = showBasis(house ? [...state.basis, "house"] : state.basis);
  const day = showDay(state.asOf);
  const items = shown === null ? "no items" : count(shown.report.items.length, "item");
  return (
    <div role="group" aria-label="What is judged" className={styles.line}>
      <Part text={shown === null ? "No log yet" : showPlace(shown.place)} hint="choose the log" title="Which log">
        {(close) => <LogControl state={state} intentions={intentions} busy={busy} close={close} />}
      </Part>
      <PartButton
        text={items}
        hint="go to the items"
        onClick={() => {
          intentions.tell({ kind: "go", place: "items" });
        }}
      />
      <Part text={rules} hint="change the rules in force" title="Rules in force">
        {(close) => (
          <RulesControl
            basis={state.basis}
            house={house}
            onChange={(basis) => void intentions.setBasis(basis)}
            onHouse={() => {
              close();
              void intentions.makeHouseSheet();
            }}
          />
        )}
      </Part>
      <Part text={`as of ${day}`} hint="change the day for due dates" title="Due dates as of">
        {(close) => (
          <DateControl
            asOf={state.asOf}
            chosen={state.asOfChosen}
            onChange={(asOf, chosen) => {
              close();
              void intentions.setAsOf(asOf, chosen);
            }}
          />
        )}
      </Part>
    </div>
  );
}

/** What is late and what comes due, by date; grouped by place or kind when asked. */
import { Label, makeStyles, Select, tokens } from "@fluentui/react-components";
import { useCallback, useMemo } from "react";
import { lateAndOut, serviceNote } from "../../engine/report/fit-for-use";
import type { ItemResult } from "../../engine/report/model";
import { showNumber } from "../../engine/words";
import type { ReadLog } from "../../excel/port";
import { showDay } from "../shared/days";
import { EmptyFilter } from "../shared/list/EmptyFilter";
import type { Grouping } from "../shared/list/entries";
import type { TypeSize } from "../shared/list/type-size";
import { NarrowBy } from "../shared/list/NarrowBy";
import { countDue, narrowed } from "../shared/list/narrowed";
import { PrintList } from "../shared/list/PrintList";
import { WindowedList } from "../shared/list/WindowedList";
import { DUE_NAMES } from "../shared/words";
import type { Intentions } from "../state/actions";
import type { PaneState } from "../state/state";
import { dueEntries } from "./due-entries";
import { DueButtons } from "./DueButtons";
import { DueRow, dueRowHeight } from "./DueRow";

const GROUPINGS: Record<Grouping, string> = { none: "date only", place: "place", kind: "kind of gear" };
const useStyles = makeStyles({
  view: { display: "flex", flexDirection: "column", flexGrow: 1, flexShrink: 0 },
  tools: { display: "flex", flexDirection: "column", gap: "8px", padding: "10px 12px" },
  row: { display: "flex", alignItems: "center", gap: "8px" },
  select: { flexGrow: 1, minWidth: 0 },
  note: { margin: 0, fontSize: tokens.fontSizeBase200, lineHeight: tokens.lineHeightBase200, color: tokens.colorNeutralForeground2 },
});
export function DueView({ state, shown, intentions }: { state: PaneState; shown: ReadLog; intentions: Intentions }) {
  const styles = useStyles();
  const { report } = shown;
  const here = useMemo(() => narrowed(report.items, state.narrowing), [report, state.narrowing]);
  const due = useMemo(() => (here === report.items ? report.due : countDue(here)), [here, report]);
  const entries = useMemo(() => dueEntries(here, state.dueStates, state.grouping), [here, state.dueStates, state.grouping]);
  const service = useMemo(() => serviceNote(report.items), [report]);
  const heightOf = useCallback((item: ItemResult, type: TypeSize) => dueRowHeight(item, report.asOf, type), [report.asOf]);
  const out = useMemo(() => lateAndOut(report.items), [report]);
  const filtered = state.dueStates.length > 0 || here !== report.items;
  const chosen = state.dueStates.map((one) => DUE_NAMES[one].toLowerCase()).join(" or ");
  return (
    <div className={styles.view}>
      <div className={styles.tools}>
        <DueButtons
          due={due}
          pressed={state.dueStates}
          onPress={(one) => {
            intentions.tell({ kind: "due state", state: one });
          }}
        />
        <p className={styles.note}>Next periodic inspection as of {showDay(report.asOf)}. Due soon means within 30 days.</p>
        {out > 0 && (
          <p className={styles.note}>
            {showNumber(out)} of the overdue {out === 1 ? "is" : "are"} out of service anyway: REMOVE or tagged out.
          </p>
        )}
        {service !== "" && <p className={styles.note}>{service}</p>}
        <NarrowBy
          items={report.items}
          narrowing={state.narrowing}
          onNarrow={(narrowing) => {
            intentions.tell({ kind: "narrow", narrowing });
          }}
        />
        <div className={styles.row}>
          <Label htmlFor="grouping">Group by</Label>
          <Select
            id="grouping"
            size="small"
            className={styles.select}
            value={state.grouping}
            onChange={(_, data) => {
              intentions.tell({ kind: "grouping", grouping: data.value as Grouping });
            }}
          >
            {Object.entries(GROUPINGS).map(([value, text]) => (
              <option key={value} value={value}>
                {text}
              </option>
            ))}
          </Select>
        </div>
        <PrintList kinds={["late"]} items={here} disabled={state.work.kind !== "idle"} intentions={intentions} />
      </div>
      {entries.length === 0 ? (
        <EmptyFilter
          takeFocus={state.returning}
          text={filtered ? (chosen === "" ? "No item matches." : `Nothing is ${chosen}.`) : "There is no item in this log."}
          {...(filtered
            ? {
                onClear: () => {
                  intentions.tell({ kind: "all due states" });
                },
              }
            : {})}
        />
      ) : (
        <WindowedList
          label="Due dates, earliest first"
          entries={entries}
          heightOf={heightOf}
          activeRow={state.activeRows.due}
          takeFocus={state.returning}
          onStandOn={(row) => {
            intentions.tell({ kind: "stand on", list: "due", row });
          }}
          onOpen={(row) => void intentions.open(row, "due")}
        >
          {(item, group) => <DueRow item={item} group={group} asOf={report.asOf} />}
        </WindowedList>
      )}
    </div>
  );
}

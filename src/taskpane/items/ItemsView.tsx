/** All items, worst first: six decisions that filter, a search, and the list. */
import { Button, makeStyles, SearchBox, tokens } from "@fluentui/react-components";
import { useDeferredValue, useMemo, useRef } from "react";
import { DECISIONS } from "../../engine/decision";
import { showNumber } from "../../engine/words";
import type { ReadLog } from "../../excel/port";
import { EmptyFilter } from "../shared/list/EmptyFilter";
import { itemEntries, matching } from "../shared/list/entries";
import { NarrowBy } from "../shared/list/NarrowBy";
import { countDecisions, narrowed } from "../shared/list/narrowed";
import { PrintList } from "../shared/list/PrintList";
import { WindowedList } from "../shared/list/WindowedList";
import { StampRows } from "../stamp/StampRows";
import type { Intentions } from "../state/actions";
import type { PaneState } from "../state/state";
import { DecisionButtons } from "./DecisionButtons";
import { ItemRow, itemRowHeight } from "./ItemRow";
import { worstFirst } from "./order";

const useStyles = makeStyles({
  view: { display: "flex", flexDirection: "column", flexGrow: 1, flexShrink: 0 },
  tools: { display: "flex", flexDirection: "column", gap: "8px", padding: "10px 12px" },
  row: { display: "flex", flexWrap: "wrap", gap: "6px", alignItems: "center" },
  search: { width: "100%", maxWidth: "none" },
  shown: { fontSize: tokens.fontSizeBase200, lineHeight: tokens.lineHeightBase200, color: tokens.colorNeutralForeground2 },
});
export function ItemsView({ state, shown, intentions }: { state: PaneState; shown: ReadLog; intentions: Intentions }) {
  const styles = useStyles();
  const { report } = shown;
  const search = useDeferredValue(state.search);
  const here = useMemo(() => narrowed(report.items, state.narrowing), [report, state.narrowing]);
  const counts = useMemo(() => (here === report.items ? report.counts : countDecisions(here)), [here, report]);
  const sorted = useMemo(() => worstFirst(here), [here]);
  const items = useMemo(() => matching(sorted, state.decisions, search), [sorted, state.decisions, search]);
  const entries = useMemo(() => itemEntries(items), [items]);
  const filtered = state.decisions.length > 0 || state.search !== "" || here !== report.items;
  const view = useRef<HTMLDivElement>(null);
  const toList = (): void => {
    (view.current?.querySelector<HTMLElement>("[role=listbox]") ?? view.current?.querySelector("input"))?.focus();
  };
  return (
    <div ref={view} className={styles.view}>
      <div className={styles.tools}>
        <DecisionButtons
          counts={counts}
          pressed={state.decisions}
          onPress={(decision) => {
            intentions.tell({ kind: "decision", decision });
          }}
        />
        <NarrowBy
          items={report.items}
          narrowing={state.narrowing}
          onNarrow={(narrowing) => {
            intentions.tell({ kind: "narrow", narrowing });
          }}
        />
        <SearchBox
          className={styles.search}
          aria-label="Search the items"
          placeholder="Search id, kind, place, reason"
          value={state.search}
          onChange={(_, data) => {
            intentions.tell({ kind: "search", text: data.value });
          }}
        />
        <div className={styles.row}>
          <span role="status" className={styles.shown}>
            {filtered
              ? `${showNumber(items.length)} of ${showNumber(report.items.length)} items, ${state.search === "" ? "worst first" : "those whose id matches first"}`
              : `${showNumber(items.length)} items, worst first`}
          </span>
          <RegisterFilter state={state} none={items.length === 0} intentions={intentions} onAll={toList} />
        </div>
        <PrintList kinds={["out", "examine"]} items={here} disabled={state.work.kind !== "idle"} intentions={intentions} />
        {shown.place.how === "register" && <StampRows state={state} intentions={intentions} />}
      </div>
      {items.length === 0 ? (
        <EmptyFilter
          takeFocus={state.returning}
          text={filtered ? "No item matches." : "There is no item in this log."}
          {...(filtered
            ? {
                onClear: () => {
                  intentions.tell({ kind: "all decisions" });
                },
              }
            : {})}
        />
      ) : (
        <WindowedList
          label="Items, worst first"
          entries={entries}
          heightOf={itemRowHeight}
          activeRow={state.activeRows.items}
          takeFocus={state.returning}
          onStandOn={(row) => {
            intentions.tell({ kind: "stand on", list: "items", row });
          }}
          onOpen={(row) => void intentions.open(row, "items")}
        >
          {(item) => <ItemRow item={item} />}
        </WindowedList>
      )}
    </div>
  );
}
interface FilterProps {
  state: PaneState;
  /** Nothing is listed, so that "these" would name nothing. */
  none: boolean;
  intentions: Intentions;
  /** The button goes when it is pressed, and the focus with it. */
  onAll: () => void;
}
function RegisterFilter({ state, none, intentions, onAll }: FilterProps) {
  const styles = useStyles();
  if (state.register === null || (state.decisions.length === 0 && state.filtered.length === 0)) return null;
  const offered = state.decisions.length > 0 && !none;
  const searched = offered && state.search !== "";
  return (
    <>
      {offered && (
        <Button
          size="small"
          {...(searched ? { "aria-describedby": "register-filter" } : {})}
          onClick={() => void intentions.filterRegister(state.decisions)}
        >
          Show only these in the register
        </Button>
      )}
      {state.filtered.length > 0 && (
        <Button
          size="small"
          onClick={() => {
            onAll();
            void intentions.filterRegister([]);
          }}
        >
          Show all rows
        </Button>
      )}
      {searched && (
        <span id="register-filter" className={styles.shown}>
          The register is filtered to {DECISIONS.filter((decision) => state.decisions.includes(decision)).join(", ")}; the search does not
          narrow it.
        </span>
      )}
    </>
  );
}

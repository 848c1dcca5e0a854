/** Picking the gear of one hook-up from the log: a search, a box for each item. */
import { Button, Checkbox, makeStyles, SearchBox, tokens } from "@fluentui/react-components";
import { useDeferredValue, useEffect, useMemo, useRef } from "react";
import { standsIdle } from "../../engine/report/fit-for-use";
import type { ItemResult, Report } from "../../engine/report/model";
import { showNumber } from "../../engine/words";
import { DecisionChip, IdleChip } from "../shared/Chip";
import { matching } from "../shared/list/entries";
import { useMore } from "../shared/more";
import { kindOf, nameOf } from "../shared/words";
import type { LiftChange, LiftForm } from "../state/lift-form";
import { firstPlace } from "./judge";
import { usableFirst } from "./usable-first";

/** Boxes shown at once; the rest comes on request, so that a log of thousands does not hold up the pane. */
const STEP = 8;
const useStyles = makeStyles({
  search: { width: "100%", maxWidth: "none" },
  list: {
    listStyleType: "none",
    margin: 0,
    padding: "2px 0",
    border: `1px solid ${tokens.colorNeutralStroke2}`,
    borderRadius: tokens.borderRadiusMedium,
  },
  line: { display: "flex", alignItems: "center", gap: "6px", paddingRight: "8px" },
  box: { minWidth: 0, overflowWrap: "anywhere" },
  chips: { marginLeft: "auto", display: "flex", flexWrap: "wrap", justifyContent: "flex-end", gap: "2px 4px" },
  kind: { color: tokens.colorNeutralForeground2 },
  note: { margin: 0, fontSize: tokens.fontSizeBase200, lineHeight: tokens.lineHeightBase200, color: tokens.colorNeutralForeground2 },
  more: { margin: "4px 8px" },
});
interface Props {
  form: LiftForm;
  report: Report;
  /** Take the focus when the picker appears: it was asked for. */
  takeFocus: boolean;
  onChange: (change: LiftChange) => void;
}
export function GearPicker({ form, report, takeFocus, onChange }: Props) {
  const styles = useStyles();
  const box = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (takeFocus) box.current?.querySelector("input")?.focus();
  }, [takeFocus]);
  const { shown, list, more, again } = useMore(STEP, "li input");
  const search = useDeferredValue(form.search);
  const sorted = useMemo(() => usableFirst(report), [report]);
  const items = useMemo(() => matching(sorted, [], search, "gear"), [sorted, search]);
  const picked = new Set(form.picked.map(({ id }) => id));
  const toggle = (item: ItemResult): void => {
    onChange(picked.has(item.id) ? { kind: "drop", id: item.id } : { kind: "pick", id: item.id, place: firstPlace(item) });
  };
  return (
    <>
      <div ref={box}>
        <SearchBox
          className={styles.search}
          aria-label="Search the gear"
          placeholder="Search id, kind, place"
          value={form.search}
          onChange={(_, data) => {
            onChange({ kind: "search", text: data.value });
            again();
          }}
        />
      </div>
      <p role="status" className={styles.note}>
        {items.length === 0
          ? "No item matches. Clear the search to see all."
          : `${showNumber(items.length)} of ${showNumber(report.items.length)} items, ${showNumber(form.picked.length)} picked`}
      </p>
      {items.length > 0 && (
        <ul ref={list} className={styles.list} aria-label="Gear of the log">
          {items.slice(0, shown).map((item) => (
            <li key={item.row} className={styles.line}>
              <Checkbox
                className={styles.box}
                checked={item.id !== "" && picked.has(item.id)}
                disabled={item.id === ""}
                onChange={() => {
                  toggle(item);
                }}
                label={
                  <>
                    {nameOf(item)} <span className={styles.kind}>{kindOf(item)}</span>
                  </>
                }
              />
              <span className={styles.chips}>
                <IdleChip why={standsIdle(item, report.asOf)} />
                <DecisionChip decision={item.verdict.decision} late={item.dueState === "OVERDUE"} />
              </span>
            </li>
          ))}
          {items.length > shown && (
            <li>
              <Button size="small" className={styles.more} onClick={more}>
                Show more ({showNumber(items.length - shown)} left)
              </Button>
            </li>
          )}
        </ul>
      )}
    </>
  );
}

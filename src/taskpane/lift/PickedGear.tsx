/** The gear that is picked: where each item hangs, and its side load where it can have one. */
import { Button, Field, Input, makeStyles, Select, tokens } from "@fluentui/react-components";
import { Dismiss16Regular } from "@fluentui/react-icons/svg/dismiss";
import { useRef } from "react";
import { PLACES } from "../../engine/lift/judge-lift";
import { SIDE_ASKED, SIDE_TAKEN } from "../../engine/lift/reductions";
import type { Report } from "../../engine/report/model";
import { kindOf } from "../shared/words";
import type { LiftChange, LiftForm, Picked } from "../state/lift-form";

const useStyles = makeStyles({
  list: { listStyleType: "none", margin: 0, padding: 0, display: "flex", flexDirection: "column", gap: "6px" },
  item: {
    padding: "6px 8px",
    border: `1px solid ${tokens.colorNeutralStroke2}`,
    borderRadius: tokens.borderRadiusMedium,
    display: "flex",
    flexDirection: "column",
    gap: "4px",
  },
  head: { display: "flex", alignItems: "flex-start", gap: "6px" },
  // The choice goes under the name where both do not fit.
  what: {
    flexGrow: 1,
    minWidth: 0,
    display: "flex",
    flexWrap: "wrap",
    alignItems: "center",
    gap: "4px 6px",
    fontSize: tokens.fontSizeBase200,
  },
  name: { flex: "1 1 9em", minWidth: 0, fontSize: tokens.fontSizeBase300, overflowWrap: "anywhere", fontWeight: tokens.fontWeightSemibold },
  kind: { fontWeight: tokens.fontWeightRegular, color: tokens.colorNeutralForeground2 },
  place: { flex: "1 0 11.5em", maxWidth: "15em", minWidth: 0 },
  narrow: { minWidth: 0, width: "100%" },
});
interface Props {
  form: LiftForm;
  report: Report;
  onChange: (change: LiftChange) => void;
  /** The last one was dropped, and the focus with it. */
  onNone: () => void;
}
export function PickedGear({ form, report, onChange, onNone }: Props) {
  const styles = useStyles();
  const list = useRef<HTMLUListElement>(null);
  if (form.picked.length === 0) return null;
  const drop = (index: number, id: string): void => {
    const buttons = list.current?.querySelectorAll("button");
    const next = buttons?.[index + 1] ?? buttons?.[index - 1];
    if (next === undefined) onNone();
    else next.focus();
    onChange({ kind: "drop", id });
  };
  return (
    <ul ref={list} className={styles.list} aria-label="Gear that is picked">
      {form.picked.map((picked, index) => (
        <PickedItem
          key={picked.id}
          picked={picked}
          report={report}
          onChange={onChange}
          onDrop={() => {
            drop(index, picked.id);
          }}
        />
      ))}
    </ul>
  );
}
interface ItemProps {
  picked: Picked;
  report: Report;
  onChange: (change: LiftChange) => void;
  onDrop: () => void;
}
function PickedItem({ picked, report, onChange, onDrop }: ItemProps) {
  const styles = useStyles();
  const item = report.items.find((one) => one.id === picked.id);
  const gear = item?.gear ?? "";
  const side = gear === "shackle" ? "out of its plane" : "from its shank";
  return (
    <li className={styles.item}>
      <div className={styles.head}>
        <div className={styles.what}>
          <span className={styles.name}>
            {picked.id} <span className={styles.kind}>{item === undefined ? "no longer in the log" : kindOf(item)}</span>
          </span>
          <Select
            size="small"
            className={styles.place}
            aria-label={`Place of ${picked.id}`}
            value={picked.place}
            onChange={(_, data) => {
              onChange({ kind: "place", id: picked.id, place: data.value === "leg" ? "leg" : "top" });
            }}
          >
            <option value="leg">{PLACES.leg}</option>
            <option value="top">{PLACES.top}: whole load</option>
          </Select>
        </div>
        <Button appearance="subtle" size="small" icon={<Dismiss16Regular />} aria-label={`Drop ${picked.id}`} onClick={onDrop} />
      </div>
      {SIDE_TAKEN.includes(gear) && (
        <Field
          size="small"
          label={`Side load, degrees ${side}`}
          hint={SIDE_ASKED.includes(gear) ? "0: pulled straight" : "Blank: loaded in line"}
        >
          <Input
            size="small"
            className={styles.narrow}
            inputMode="decimal"
            value={picked.side}
            onChange={(_, data) => {
              onChange({ kind: "side", id: picked.id, side: data.value });
            }}
          />
        </Field>
      )}
    </li>
  );
}

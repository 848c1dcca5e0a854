/** A decision or a due state as a small coloured field: symbol and word, never colour alone. */
import { makeStyles, mergeClasses, tokens } from "@fluentui/react-components";
import { type Decision, SYMBOLS } from "../../engine/decision";
import type { DueState } from "../../engine/due/intervals";
import { showDay } from "./days";
import { useDecisionTints, useDueTint } from "./shade";
import { DUE_NAMES, DUE_SYMBOLS } from "./words";

const useStyles = makeStyles({
  chip: {
    display: "inline-flex",
    alignItems: "center",
    gap: "4px",
    padding: "1px 6px",
    borderRadius: tokens.borderRadiusMedium,
    border: "1px solid transparent",
    fontSize: tokens.fontSizeBase200,
    lineHeight: tokens.lineHeightBase200,
    fontWeight: tokens.fontWeightSemibold,
    whiteSpace: "nowrap",
    flexShrink: 0,
  },
  quiet: { fontWeight: tokens.fontWeightRegular, color: tokens.colorNeutralForeground2, border: `1px solid ${tokens.colorNeutralStroke2}` },
});
/** With `late` it also says that the inspection is late: "KEEP, late". */
export function DecisionChip({ decision, late = false }: { decision: Decision; late?: boolean }) {
  const styles = useStyles();
  const { fill, ink } = useDecisionTints()[decision];
  return (
    <span className={styles.chip} style={{ backgroundColor: fill, color: ink }}>
      <span aria-hidden="true">{SYMBOLS[decision]}</span>
      {late ? `${decision}, late` : decision}
    </span>
  );
}
/** The due state of one item; beside a decision "later" would say nothing, so it names the day. Quiet on an item that is out of use anyway. */
export function DueChip({ state, day, quiet }: { state: DueState; day: number | null; quiet: boolean }) {
  const styles = useStyles();
  const { fill, ink } = useDueTint(state);
  return (
    <span className={mergeClasses(styles.chip, quiet && styles.quiet)} style={quiet ? {} : { backgroundColor: fill, color: ink }}>
      <span aria-hidden="true">{DUE_SYMBOLS[state]}</span>
      {state === "CURRENT" && day !== null ? `Inspection due ${showDay(day)}` : DUE_NAMES[state]}
    </span>
  );
}
/** Why an item may not be used today, beside its decision; nothing where it may. */
export function IdleChip({ why }: { why: string }) {
  const styles = useStyles();
  const { mark } = useDueTint("OVERDUE");
  if (why === "") return null;
  return (
    <span className={styles.chip} style={{ borderColor: mark, color: mark }}>
      {why}
    </span>
  );
}

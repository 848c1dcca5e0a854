/** One item of the due list: id, kind and decision, when it comes due and where it is, and the short reason. */
import { makeStyles, mergeClasses, tokens } from "@fluentui/react-components";
import type { ItemResult } from "../../engine/report/model";
import { DecisionChip } from "../shared/Chip";
import { dueText } from "../shared/due-text";
import { Heard } from "../shared/Heard";
import { linesOf, rowHeight, type TypeSize } from "../shared/list/type-size";
import { useDueTint } from "../shared/shade";
import { unbroken } from "../shared/unbroken";
import { kindOf, nameOf } from "../shared/words";

/** A date and the short reason take a line each. What is wrong with a date, and how it is to be written, stands in full. */
export function dueRowHeight(item: ItemResult, asOf: number, type: TypeSize): number {
  return rowHeight(type, 1 + (item.nextDue === null ? linesOf(whereAndWhen(item, asOf), type.letters) : 1));
}
function whereAndWhen(item: ItemResult, asOf: number): string {
  const when = dueText(item, asOf);
  return item.place === "" ? when : `${when}, ${item.place}`;
}
const useStyles = makeStyles({
  row: {
    boxSizing: "border-box",
    height: "100%",
    padding: "7px 10px 6px 8px",
    borderLeft: "4px solid transparent",
    display: "flex",
    flexDirection: "column",
    gap: "2px",
  },
  head: { display: "flex", alignItems: "center", gap: "8px", minWidth: 0 },
  line: { flexGrow: 1, flexShrink: 0, minWidth: 0, overflow: "hidden", textOverflow: "ellipsis", whiteSpace: "nowrap" },
  name: { flexShrink: 1, fontSize: tokens.fontSizeBase300, lineHeight: tokens.lineHeightBase300 },
  id: { fontWeight: tokens.fontWeightSemibold },
  whole: { whiteSpace: "normal", overflowWrap: "anywhere" },
  reason: { fontSize: tokens.fontSizeBase200, lineHeight: tokens.lineHeightBase200 },
  quiet: { color: tokens.colorNeutralForeground2, fontSize: tokens.fontSizeBase200, lineHeight: tokens.lineHeightBase200 },
});
interface Props {
  item: ItemResult;
  /** Names of the group headings above it, for people who listen. */
  group: string;
  asOf: number;
}
export function DueRow({ item, group, asOf }: Props) {
  const styles = useStyles();
  const { mark } = useDueTint(item.dueState);
  const where = whereAndWhen(item, asOf);
  return (
    <div className={styles.row} style={{ borderLeftColor: mark }} title={where}>
      <Heard>{group}: </Heard>
      <div className={styles.head}>
        <span className={`${styles.line} ${styles.name}`}>
          <span className={styles.id}>{nameOf(item)}</span> {kindOf(item)}
        </span>
        <DecisionChip decision={item.verdict.decision} late={item.dueState === "OVERDUE"} />
      </div>
      <span className={mergeClasses(styles.line, styles.quiet, item.nextDue === null && styles.whole)}>{where}</span>
      <span className={mergeClasses(styles.line, styles.reason)}>{unbroken(item.verdict.short)}</span>
    </div>
  );
}

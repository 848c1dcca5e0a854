/** One item of the list: id, kind, decision, the short reason, and where it is and whether its inspection is late. */
import { makeStyles, tokens } from "@fluentui/react-components";
import { beforeUse } from "../../engine/report/fit-for-use";
import type { ItemResult } from "../../engine/report/model";
import { DecisionChip } from "../shared/Chip";
import { linesOf, rowHeight, type TypeSize } from "../shared/list/type-size";
import { useDecisionTints } from "../shared/shade";
import { unbroken } from "../shared/unbroken";
import { kindOf, nameOf } from "../shared/words";

/** Lines of the short reason; it is made to fit one, and a narrow pane breaks it. */
const LINES = 2;
/** Room for the name, the short reason and the line on place and date. */
export function itemRowHeight(item: ItemResult, type: TypeSize): number {
  return rowHeight(type, Math.min(LINES, linesOf(item.verdict.short, type.letters)) + (whereAndDue(item) === "" ? 0 : 1));
}
function whereAndDue(item: ItemResult): string {
  return [item.place, dueWords(item)].filter((text) => text !== "").join(" · ");
}
function dueWords({ dueState, tagged }: ItemResult): string {
  const date = dueState === "OVERDUE" ? "inspection late" : dueState === "NO DATE" ? "no date of inspection" : "";
  return [tagged ? "tagged out" : "", date].filter((text) => text !== "").join(", ");
}
const useStyles = makeStyles({
  row: {
    boxSizing: "border-box",
    height: "100%",
    padding: "7px 10px 6px 8px",
    borderLeft: "4px solid transparent",
    display: "flex",
    flexDirection: "column",
    gap: "3px",
  },
  head: { display: "flex", alignItems: "center", gap: "8px", minWidth: 0 },
  name: {
    flexGrow: 1,
    minWidth: 0,
    overflow: "hidden",
    textOverflow: "ellipsis",
    whiteSpace: "nowrap",
    fontSize: tokens.fontSizeBase300,
    lineHeight: tokens.lineHeightBase300,
  },
  id: { fontWeight: tokens.fontWeightSemibold },
  kind: { color: tokens.colorNeutralForeground2 },
  reason: {
    display: "-webkit-box",
    WebkitLineClamp: "2",
    // eslint-disable-next-line @typescript-eslint/no-deprecated -- the only way to cut text after whole lines, and every browser keeps it
    WebkitBoxOrient: "vertical",
    overflow: "hidden",
    flexShrink: 0,
    fontSize: tokens.fontSizeBase200,
    lineHeight: tokens.lineHeightBase200,
    overflowWrap: "anywhere",
  },
  where: {
    overflow: "hidden",
    textOverflow: "ellipsis",
    whiteSpace: "nowrap",
    fontSize: tokens.fontSizeBase200,
    lineHeight: tokens.lineHeightBase200,
    color: tokens.colorNeutralForeground2,
  },
});
export function ItemRow({ item }: { item: ItemResult }) {
  const styles = useStyles();
  const { verdict } = item;
  const { mark } = useDecisionTints()[verdict.decision];
  const first = beforeUse(item);
  const where = whereAndDue(item);
  return (
    <div className={styles.row} style={{ borderLeftColor: mark }} title={first === "" ? verdict.reason : `${first} ${verdict.reason}`}>
      <div className={styles.head}>
        <span className={styles.name}>
          <span className={styles.id}>{nameOf(item)}</span> <span className={styles.kind}>{kindOf(item)}</span>
        </span>
        <DecisionChip decision={verdict.decision} late={item.dueState === "OVERDUE"} />
      </div>
      <span className={styles.reason}>{unbroken(verdict.short)}</span>
      {where !== "" && <span className={styles.where}>{where}</span>}
    </div>
  );
}

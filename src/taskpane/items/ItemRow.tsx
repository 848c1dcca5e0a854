/** One item of the list: id, kind, decision, and the sentence that decides. */
import { makeStyles, tokens } from "@fluentui/react-components";
import { beforeUse } from "../../engine/report/fit-for-use";
import type { ItemResult } from "../../engine/report/model";
import { DecisionChip } from "../shared/Chip";
import { rowHeight, type TypeSize } from "../shared/list/type-size";
import { useDecisionTints } from "../shared/shade";
import { kindOf, nameOf } from "../shared/words";

/** Room for the name line and three lines of the sentence. */
export const itemRowHeight = (_: ItemResult, type: TypeSize): number => rowHeight(type, 3);
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
  tagged: { fontSize: tokens.fontSizeBase200, fontWeight: tokens.fontWeightSemibold, whiteSpace: "nowrap" },
  first: { color: tokens.colorNeutralForeground1 },
  reason: {
    display: "-webkit-box",
    WebkitLineClamp: "3",
    // eslint-disable-next-line @typescript-eslint/no-deprecated -- the only way to cut text after whole lines, and every browser keeps it
    WebkitBoxOrient: "vertical",
    overflow: "hidden",
    fontSize: tokens.fontSizeBase200,
    lineHeight: tokens.lineHeightBase200,
    color: tokens.colorNeutralForeground2,
    overflowWrap: "anywhere",
  },
});
export function ItemRow({ item }: { item: ItemResult }) {
  const styles = useStyles();
  const { mark } = useDecisionTints()[item.verdict.decision];
  const first = beforeUse(item);
  return (
    <div
      className={styles.row}
      style={{ borderLeftColor: mark }}
      title={first === "" ? item.verdict.reason : `${first} ${item.verdict.reason}`}
    >
      <div className={styles.head}>
        <span className={styles.name}>
          <span className={styles.id}>{nameOf(item)}</span> <span className={styles.kind}>{kindOf(item)}</span>
        </span>
        {item.tagged && <span className={styles.tagged}>Tagged out</span>}
        <DecisionChip decision={item.verdict.decision} />
      </div>
      <span className={styles.reason}>
        {first !== "" && <b className={styles.first}>{first} </b>}
        {item.verdict.reason}
      </span>
    </div>
  );
}

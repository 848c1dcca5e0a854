/** Buttons that write a list to hand over on a sheet of its own. */
import { Button, makeStyles, tokens } from "@fluentui/react-components";
import type { ItemResult } from "../../../engine/report/model";
import { showNumber } from "../../../engine/words";
import { itemsOf, type ListKind } from "../../../excel/lists/plan-list";
import type { Intentions } from "../../state/actions";

const useStyles = makeStyles({
  row: { display: "flex", flexWrap: "wrap", gap: "6px", alignItems: "center" },
  label: { fontSize: tokens.fontSizeBase200, lineHeight: tokens.lineHeightBase200, color: tokens.colorNeutralForeground2 },
});
const NAMES: Readonly<Record<ListKind, string>> = { out: "Out", examine: "To examine", late: "Late and due soon" };
interface Props {
  kinds: readonly ListKind[];
  /** What the pane is narrowed to. */
  items: readonly ItemResult[];
  disabled: boolean;
  intentions: Intentions;
}
export function PrintList({ kinds, items, disabled, intentions }: Props) {
  const styles = useStyles();
  return (
    <div className={styles.row} role="group" aria-label="Print list">
      <span className={styles.label}>Print list:</span>
      {kinds.map((kind) => {
        const listed = itemsOf(kind, items).length;
        return (
          <Button key={kind} size="small" disabledFocusable={disabled || listed === 0} onClick={() => void intentions.printList(kind)}>
            {NAMES[kind]} ({showNumber(listed)})
          </Button>
        );
      })}
    </div>
  );
}

/** What stands where a filter leaves nothing. */
import { Button, makeStyles, tokens } from "@fluentui/react-components";

const useStyles = makeStyles({
  empty: { display: "flex", flexDirection: "column", alignItems: "flex-start", gap: "10px", padding: "16px 12px", fontSize: tokens.fontSizeBase300, lineHeight: tokens.lineHeightBase300 },
});

export function EmptyFilter({ text, onClear }: { text: string; onClear?: () => void }) {
  const styles = useStyles();
  return (
    <div className={styles.empty}>
      <span>{text}</span>
      {onClear !== undefined && <Button onClick={onClear}>Show all items</Button>}
    </div>
  );
}

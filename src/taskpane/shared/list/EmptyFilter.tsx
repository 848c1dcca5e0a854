/** What stands where a filter leaves nothing. */
import { Button, makeStyles, tokens } from "@fluentui/react-components";
import { useEffect, useRef } from "react";

const useStyles = makeStyles({
  empty: {
    display: "flex",
    flexDirection: "column",
    alignItems: "flex-start",
    gap: "10px",
    padding: "16px 12px",
    fontSize: tokens.fontSizeBase300,
    lineHeight: tokens.lineHeightBase300,
  },
});
interface Props {
  text: string;
  /** Take the focus where the list would have taken it. */
  takeFocus: boolean;
  onClear?: () => void;
}
export function EmptyFilter({ text, takeFocus, onClear }: Props) {
  const styles = useStyles();
  const box = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (takeFocus) box.current?.querySelector("button")?.focus();
  }, [takeFocus]);
  return (
    <div ref={box} className={styles.empty}>
      <span>{text}</span>
      {onClear !== undefined && <Button onClick={onClear}>Show all items</Button>}
    </div>
  );
}

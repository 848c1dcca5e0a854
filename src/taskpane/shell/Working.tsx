/** Says that work goes on, how far it is, and lets the user stop it. */
import { Button, makeStyles, tokens } from "@fluentui/react-components";
import { useEffect, useState } from "react";
import { showNumber } from "../../engine/words";
import type { Work } from "../state/state";

/** Reading a short log is over before a bar could be seen; only longer work shows one. */
const PATIENCE_MS = 300;
const useStyles = makeStyles({
  box: {
    flexShrink: 0,
    display: "flex",
    flexDirection: "column",
    gap: "6px",
    padding: "8px 10px",
    borderBottom: `1px solid ${tokens.colorNeutralStroke2}`,
  },
  bar: { width: "100%", height: "6px", accentColor: tokens.colorCompoundBrandBackground },
  row: {
    display: "flex",
    alignItems: "center",
    justifyContent: "space-between",
    gap: "8px",
    minHeight: "24px",
    fontSize: tokens.fontSizeBase200,
    lineHeight: tokens.lineHeightBase200,
  },
});
export function Working({ work, waiting, onStop }: { work: Work; waiting: boolean; onStop: () => void }) {
  const styles = useStyles();
  const patient = useLasting(work.kind === "reading", PATIENCE_MS);
  if (work.kind === "reading" ? !patient : work.kind === "idle" && !waiting) return null;
  const progress = work.kind === "building" ? work.progress : null;
  const share = progress !== null && progress.of > 0 ? progress.done / progress.of : undefined;
  return (
    <div className={styles.box}>
      <div className={styles.row}>
        <span>{textOf(work)}</span>
        {work.kind === "building" && (
          <Button size="small" disabledFocusable={work.stopping} onClick={onStop}>
            {work.stopping ? "Stopping" : "Stop"}
          </Button>
        )}
      </div>
      {work.kind !== "idle" && (
        <progress
          className={styles.bar}
          aria-label={work.kind === "building" ? "Building the register" : "Reading the log"}
          {...(share === undefined ? {} : { value: share, "aria-valuenow": share })}
        />
      )}
    </div>
  );
}
function textOf(work: Work): string {
  if (work.kind === "reading") return "Reading the log";
  if (work.kind === "idle") return "A cell is being typed; the pane waits for it";
  if (work.progress === null) return "Building the register";
  return `${work.progress.step}: ${showNumber(work.progress.done)} of ${showNumber(work.progress.of)}`;
}
/** True once something has held for a while. */
function useLasting(holds: boolean, milliseconds: number): boolean {
  const [lasting, setLasting] = useState(false);
  useEffect(() => {
    if (!holds) return;
    const timer = setTimeout(() => {
      setLasting(true);
    }, milliseconds);
    return () => {
      clearTimeout(timer);
      setLasting(false);
    };
  }, [holds, milliseconds]);
  return holds && lasting;
}

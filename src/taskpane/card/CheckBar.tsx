/** A bar from as-new to the limit, with the reading on it and the share of the allowance used. */
import { makeStyles, tokens } from "@fluentui/react-components";
import type { Finding } from "../../engine/check/finding";
import { useDecisionTints } from "../shared/shade";
import { unbroken } from "../shared/unbroken";
import { limitWord, percentUsed } from "./percent";

/** Where the limit stands on the bar, in percent of its width; the rest is beyond. */
const LIMIT_AT = 76;
const useStyles = makeStyles({
  bar: { display: "flex", flexDirection: "column", gap: "3px", fontSize: tokens.fontSizeBase200, lineHeight: tokens.lineHeightBase200 },
  row: { display: "flex", justifyContent: "space-between", gap: "8px", fontVariantNumeric: "tabular-nums" },
  now: { fontWeight: tokens.fontWeightSemibold },
  quiet: { color: tokens.colorNeutralForeground2 },
  out: { color: tokens.colorNeutralForeground2, textAlign: "right" },
  track: {
    position: "relative",
    height: "16px",
    backgroundColor: tokens.colorNeutralBackground6,
    border: `1px solid ${tokens.colorNeutralStrokeAccessible}`,
    borderRadius: tokens.borderRadiusSmall,
    overflow: "hidden",
  },
  used: { position: "absolute", insetBlock: 0, left: 0, forcedColorAdjust: "none" },
  beyond: {
    position: "absolute",
    insetBlock: 0,
    right: 0,
    backgroundImage: `repeating-linear-gradient(135deg, ${tokens.colorNeutralStrokeAccessible} 0 1px, transparent 1px 6px)`,
  },
  limit: { position: "absolute", insetBlock: 0, width: "2px", backgroundColor: tokens.colorNeutralForeground1 },
});
export function CheckBar({ finding }: { finding: Finding }) {
  const styles = useStyles();
  const { mark } = useDecisionTints()[finding.decision];
  if (finding.share === null) return null;
  const used = Math.min(100, Math.max(0, finding.share) * LIMIT_AT);
  const start = finding.countsFrom ?? "0";
  const now = `now ${finding.measured ?? "not known"}`;
  const out = finding.comesOut === null ? "limit" : `${limitWord(finding)} ${finding.comesOut}`;
  const share = percentUsed(finding.share);
  return (
    <div
      className={styles.bar}
      role="img"
      aria-label={`${finding.check}: ${now}, ${finding.countsFrom === undefined ? "" : `${start}, `}${out}; ${share}`}
    >
      <div className={styles.row} aria-hidden="true">
        <span className={styles.now}>{unbroken(now)}</span>
        <span>{unbroken(share)}</span>
      </div>
      <div className={styles.track} aria-hidden="true">
        <div className={styles.beyond} style={{ left: `${String(LIMIT_AT)}%` }} />
        <div className={styles.used} style={{ width: `max(3px, ${String(used)}%)`, backgroundColor: mark }} />
        <div className={styles.limit} style={{ left: `${String(LIMIT_AT)}%` }} />
      </div>
      <div className={styles.row} aria-hidden="true">
        <span className={styles.quiet}>{unbroken(start)}</span>
        <span className={styles.out}>{unbroken(out)}</span>
      </div>
    </div>
  );
}

/** What each item needs and may carry, with a bar; the weakest is marked. */
import { makeStyles, mergeClasses, tokens } from "@fluentui/react-components";
import { Fragment } from "react";
import { type Decision, SYMBOLS } from "../../engine/decision";
import { type HookupDecision, type HookupLine, type HookupResult, marginPercent } from "../../engine/lift/judge-lift";
import { showLoad } from "../../engine/reading/load";
import { useDecisionTints } from "../shared/shade";
import { unbroken } from "../shared/unbroken";

/** Where the rated load stands on the bar, in percent of its width; the rest is beyond. */
const RATED_AT = 76;
/** A line's decision looks like what it leads to. */
const LOOKS: Record<HookupDecision, Decision> = { CARRIES: "KEEP", OVERLOADED: "REMOVE", REFUSED: "NO VERDICT" };
const useStyles = makeStyles({
  table: {
    width: "100%",
    borderCollapse: "collapse",
    fontSize: tokens.fontSizeBase200,
    lineHeight: tokens.lineHeightBase200,
    tableLayout: "fixed",
  },
  head: { textAlign: "right", fontWeight: tokens.fontWeightRegular, color: tokens.colorNeutralForeground2, padding: "2px 0 2px 6px" },
  first: { textAlign: "left", paddingLeft: 0, width: "44%" },
  name: {
    textAlign: "left",
    fontWeight: tokens.fontWeightSemibold,
    overflowWrap: "anywhere",
    padding: "8px 0 2px",
    verticalAlign: "top",
    borderTop: `1px solid ${tokens.colorNeutralStroke2}`,
  },
  cell: {
    textAlign: "right",
    fontVariantNumeric: "tabular-nums",
    padding: "8px 0 2px 6px",
    verticalAlign: "top",
    borderTop: `1px solid ${tokens.colorNeutralStroke2}`,
  },
  kind: { fontWeight: tokens.fontWeightRegular, color: tokens.colorNeutralForeground2 },
  weakest: { fontWeight: tokens.fontWeightSemibold, color: tokens.colorNeutralForeground1, textDecorationLine: "underline" },
  under: { padding: "0 0 8px" },
  bar: { display: "flex", flexDirection: "column", gap: "3px" },
  row: { display: "flex", flexWrap: "wrap", justifyContent: "space-between", gap: "2px 8px", alignItems: "center" },
  chip: {
    display: "inline-flex",
    gap: "4px",
    padding: "1px 6px",
    borderRadius: tokens.borderRadiusMedium,
    fontWeight: tokens.fontWeightSemibold,
    whiteSpace: "nowrap",
  },
  track: {
    position: "relative",
    height: "12px",
    backgroundColor: tokens.colorNeutralBackground6,
    border: `1px solid ${tokens.colorNeutralStrokeAccessible}`,
    borderRadius: tokens.borderRadiusSmall,
    overflow: "hidden",
  },
  used: { position: "absolute", insetBlock: 0, left: 0, forcedColorAdjust: "none" },
  limit: {
    position: "absolute",
    insetBlock: 0,
    width: "2px",
    left: `${String(RATED_AT)}%`,
    backgroundColor: tokens.colorNeutralForeground1,
  },
  quiet: { color: tokens.colorNeutralForeground2, overflowWrap: "anywhere" },
});
interface Props {
  result: HookupResult;
  /** True when the whole hook-up carries: only then does a line say so, never beside "do not lift". */
  carries: boolean;
}
export function LiftTable({ result, carries }: Props) {
  const styles = useStyles();
  return (
    <table className={styles.table} aria-label="What each item needs and may carry">
      <thead>
        <tr>
          <th scope="col" className={mergeClasses(styles.head, styles.first)}>
            Item
          </th>
          <th scope="col" className={styles.head}>
            Needed
          </th>
          <th scope="col" className={styles.head}>
            Rated here
          </th>
        </tr>
      </thead>
      <tbody>
        {result.lines.map((line, index) => (
          <Fragment key={`${line.id}-${String(index)}`}>
            <tr>
              <th scope="row" className={styles.name}>
                {line.id} <span className={styles.kind}>{line.gear}</span>
              </th>
              <td className={styles.cell}>{line.needed === null ? "–" : showLoad(line.needed, "up")}</td>
              <td className={styles.cell}>{line.rated === null ? "–" : showLoad(line.rated, "down")}</td>
            </tr>
            <tr>
              <td colSpan={3} className={styles.under}>
                <LineBar line={line} carries={carries} weakest={line.id === result.weakest && result.lines.length > 1} />
              </td>
            </tr>
          </Fragment>
        ))}
      </tbody>
    </table>
  );
}
/** "18 % left", "12 % too much". */
export function leftWords(used: number): string {
  return unbroken(used > 1 ? `${String(Math.ceil((used - 1) * 100 - 1e-9))} % too much` : `${marginPercent(1 - used)} left`);
}
function LineBar({ line, carries, weakest }: { line: HookupLine; carries: boolean; weakest: boolean }) {
  const styles = useStyles();
  const { fill, ink, mark } = useDecisionTints()[LOOKS[line.decision]];
  const { waits } = line;
  const left = line.used === null ? (waits ? "not judged yet" : "not judged") : leftWords(line.used);
  return (
    <div className={styles.bar}>
      <div className={styles.row}>
        {!waits && (carries || line.decision !== "CARRIES") && (
          <span className={styles.chip} style={{ backgroundColor: fill, color: ink }}>
            <span aria-hidden="true">{SYMBOLS[LOOKS[line.decision]]}</span>
            {line.decision}
          </span>
        )}
        {weakest && <span className={styles.weakest}>weakest</span>}
        <span>{left}</span>
      </div>
      {line.used !== null && (
        <div className={styles.track} role="img" aria-label={`${line.id}: ${left} of its rated load`}>
          <div
            className={styles.used}
            style={{ width: `max(3px, ${String(Math.min(100, line.used * RATED_AT))}%)`, backgroundColor: mark }}
          />
          <div className={styles.limit} />
        </div>
      )}
      <span className={styles.quiet}>
        {[line.carries?.words, line.ratedFrom].filter((part) => part !== undefined && part !== "").join("; ")}
      </span>
    </div>
  );
}

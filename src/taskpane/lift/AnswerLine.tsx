/** The answer in a thin line at the lower edge of the place, in sight while the lift is typed. People who listen hear it from the outcome itself. */
import { makeStyles, tokens } from "@fluentui/react-components";
import { type Decision, SYMBOLS } from "../../engine/decision";
import type { HookupResult } from "../../engine/lift/judge-lift";
import { useDecisionTints } from "../shared/shade";
import type { Outcome } from "./judge";
import { outcomeWords } from "./LiftOutcome";

/** An outcome looks like the decision it amounts to; while the lift is not all there, like none. */
const LOOKS: Record<Outcome, Decision | null> = {
  "nothing picked": null,
  awaited: null,
  refused: "NO VERDICT",
  overloaded: "REMOVE",
  carries: "KEEP",
};
const useStyles = makeStyles({
  line: {
    position: "sticky",
    bottom: 0,
    zIndex: 1,
    display: "flex",
    gap: "6px",
    margin: "0 -12px -12px",
    padding: "6px 12px",
    fontSize: tokens.fontSizeBase200,
    lineHeight: tokens.lineHeightBase200,
    borderTop: `1px solid ${tokens.colorNeutralStroke1}`,
    backgroundColor: tokens.colorNeutralBackground3,
    color: tokens.colorNeutralForeground1,
  },
  text: {
    display: "-webkit-box",
    WebkitLineClamp: "2",
    // eslint-disable-next-line @typescript-eslint/no-deprecated -- the only way to cut text after whole lines, and every browser keeps it
    WebkitBoxOrient: "vertical",
    overflow: "hidden",
    overflowWrap: "anywhere",
  },
});
export function AnswerLine({ outcome, result }: { outcome: Outcome; result: HookupResult }) {
  const styles = useStyles();
  const tints = useDecisionTints();
  const looks = LOOKS[outcome];
  const [title, next] = outcomeWords(outcome, result);
  const tint = looks === null ? {} : { backgroundColor: tints[looks].fill, color: tints[looks].ink };
  return (
    <div aria-hidden="true" data-outcome={outcome} className={styles.line} style={tint}>
      <b>{looks === null ? "…" : SYMBOLS[looks]}</b>
      <span className={styles.text}>
        <b>{title}</b> {next}
      </span>
    </div>
  );
}

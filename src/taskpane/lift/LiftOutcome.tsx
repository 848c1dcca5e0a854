/** The answer: carries, overloaded, or what is missing; then each item. */
import { makeStyles, tokens } from "@fluentui/react-components";
import type { HookupResult } from "../../engine/lift/judge-lift";
import { showLoad } from "../../engine/reading/load";
import { count } from "../../engine/words";
import { Notice } from "../shared/Notice";
import { Section } from "../shared/Section";
import type { Outcome } from "./judge";
import { leftWords, LiftTable } from "./LiftTable";

const useStyles = makeStyles({
  list: {
    margin: 0,
    paddingLeft: "18px",
    display: "flex",
    flexDirection: "column",
    gap: "4px",
    fontSize: tokens.fontSizeBase200,
    lineHeight: tokens.lineHeightBase200,
    overflowWrap: "anywhere",
  },
  tension: { margin: 0, fontSize: tokens.fontSizeBase300, lineHeight: tokens.lineHeightBase300 },
  figure: { fontWeight: tokens.fontWeightSemibold },
  quiet: { color: tokens.colorNeutralForeground2, fontSize: tokens.fontSizeBase200, lineHeight: tokens.lineHeightBase200 },
});
const INTENTS = { "nothing picked": "info", awaited: "info", refused: "warning", overloaded: "error", carries: "success" } as const;
/** Title and next step of an outcome. */
export function outcomeWords(outcome: Outcome, result: HookupResult): readonly [title: string, next: string] {
  const weak = result.lines.find((line) => line.id === result.weakest && line.used !== null);
  const weakest = weak?.used == null ? "" : `${result.lines.length > 1 ? "Weakest: " : ""}${weak.id}, ${leftWords(weak.used)}.`;
  switch (outcome) {
    case "nothing picked":
      return ["Nothing is picked yet.", "Pick the gear that the load hangs on, then type the lift."];
    case "awaited":
      return ["Not judged yet.", result.awaited];
    case "refused":
      return ["Not judged: do not lift on this.", `${count(result.refusals.length, "thing")} to put right, below.`];
    case "overloaded":
      return ["OVERLOADED: do not lift.", weakest];
    case "carries":
      return ["CARRIES.", weakest];
  }
}
export function LiftOutcome({ outcome, result }: { outcome: Outcome; result: HookupResult }) {
  const styles = useStyles();
  const [title, next] = outcomeWords(outcome, result);
  return (
    <Section title="Can it carry the load?">
      <div role="status" aria-live="polite">
        <Notice intent={INTENTS[outcome]} title={title}>
          {next}
        </Notice>
      </div>
      {outcome !== "nothing picked" && (
        <>
          {outcome !== "awaited" && result.refusals.length > 0 && (
            <ul className={styles.list} aria-label="What is to be put right">
              {result.refusals.map((sentence) => (
                <li key={sentence}>{sentence}</li>
              ))}
            </ul>
          )}
          {result.perLeg !== null && (
            <p className={styles.tension}>
              Tension in each leg: <span className={styles.figure}>{showLoad(result.perLeg, "up")}</span>{" "}
              <span className={styles.quiet}>({result.perLegFrom})</span>
            </p>
          )}
          <LiftTable result={result} carries={outcome === "carries"} />
          <ul className={styles.list} aria-label="Cautions">
            {result.cautions.map((sentence) => (
              <li key={sentence}>{sentence}</li>
            ))}
          </ul>
        </>
      )}
    </Section>
  );
}

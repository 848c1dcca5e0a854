/** The seals of the history, and what they say. */
import { Button } from "@fluentui/react-components";
import { isWrong } from "../../engine/programme/seals";
import { count } from "../../engine/words";
import { CappedList } from "../shared/CappedList";
import { Notice } from "../shared/Notice";
import { Section } from "../shared/Section";
import type { Intentions } from "../state/actions";
import type { Rounds } from "../state/rounds";
import { useRoundStyles } from "./styles";

interface Props {
  rounds: Rounds;
  free: boolean;
  intentions: Intentions;
}
export function HistoryPart({ rounds, free, intentions }: Props) {
  const styles = useRoundStyles();
  const check = rounds.said?.kind === "checked" ? rounds.said.check : null;
  const wrong = check?.findings.filter(isWrong) ?? [];
  const known = check?.findings.filter((found) => !isWrong(found)) ?? [];
  return (
    <Section title="History">
      <div className={styles.row}>
        <Button disabledFocusable={!free} aria-describedby="check-hint" onClick={() => void intentions.round({ kind: "check" })}>
          {rounds.working === "check" ? "Checking" : "Check history"}
        </Button>
        <span id="check-hint" className={styles.hint}>
          Names rows that were changed, taken out, put in or moved since they were posted.
        </span>
      </div>
      {check !== null && (
        <>
          {wrong.length > 0 ? (
            <Notice intent="error" title="The history is not as it was posted.">
              <CappedList label="What is wrong with the history" entries={wrong} render={({ sentence }) => sentence} />
            </Notice>
          ) : (
            <p className={styles.text}>
              {check.rows === 0
                ? "Nothing was posted yet."
                : `Every seal fits: ${count(check.rows, "row")} of ${count(check.rounds, "posting")}.`}
            </p>
          )}
          {known.length > 0 && <CappedList label="What else is to be known" entries={known} render={({ sentence }) => sentence} />}
          {check.last.map((seal) => (
            <p key={seal} className={styles.quiet}>
              Last seal, to be printed or mailed: <span className={styles.seal}>{seal}</span>
            </p>
          ))}
        </>
      )}
    </Section>
  );
}

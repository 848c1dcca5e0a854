/** Posting a round sheet, and what came of it. */
import { Button, Label, Select } from "@fluentui/react-components";
import { useState } from "react";
import { outOfUse, SYMBOLS } from "../../engine/decision";
import type { Told } from "../../engine/programme/post";
import { count, showNumber } from "../../engine/words";
import type { PostResult } from "../../excel/programme/rounds";
import { CappedList } from "../shared/CappedList";
import { Folded, Section } from "../shared/Section";
import type { Intentions } from "../state/actions";
import type { Rounds } from "../state/rounds";
import { useRoundStyles } from "./styles";

interface Props {
  rounds: Rounds;
  free: boolean;
  intentions: Intentions;
}
export function PostRound({ rounds, free, intentions }: Props) {
  const styles = useRoundStyles();
  const sheets = rounds.sheets ?? [];
  const [chosen, setChosen] = useState("");
  const sheet = sheets.find((one) => one.sheet === chosen)?.sheet ?? sheets[0]?.sheet ?? "";
  const posted = rounds.said?.kind === "posted" ? rounds.said.posted : null;
  return (
    <Section title="Post a round">
      {sheets.length === 0 ? (
        <p className={styles.quiet}>There is no round sheet in this workbook yet.</p>
      ) : (
        <>
          <div className={styles.row}>
            <Label htmlFor="round-sheet">Sheet</Label>
            <Select
              id="round-sheet"
              size="small"
              className={styles.select}
              value={sheet}
              onChange={(_, data) => {
                setChosen(data.value);
              }}
            >
              {sheets.map((one) => (
                <option key={one.round} value={one.sheet}>
                  {one.sheet}
                </option>
              ))}
            </Select>
          </div>
          <div className={styles.row}>
            <Button disabledFocusable={!free} aria-describedby="post-hint" onClick={() => void intentions.round({ kind: "post", sheet })}>
              {rounds.working === "post" ? "Posting" : "Post readings"}
            </Button>
            <span id="post-hint" className={styles.hint}>
              Adds them to the history, then to the register. Posting again adds nothing twice.
            </span>
          </div>
        </>
      )}
      {sheets.length > 0 && (
        <div className={styles.row}>
          <Button disabledFocusable={!free} aria-describedby="report-hint" onClick={() => void intentions.round({ kind: "report", sheet })}>
            {rounds.working === "report" ? "Writing" : "Write report"}
          </Button>
          <span id="report-hint" className={styles.hint}>
            {rounds.said?.kind === "reported"
              ? `Written on sheet ${rounds.said.sheet}: ${count(rounds.said.items, "item")}, to be completed, signed and printed.`
              : "A report of thorough examination of what was posted from this sheet, with lines to sign."}
          </span>
        </div>
      )}
      {posted !== null && <Posted posted={posted} />}
    </Section>
  );
}
function Posted({ posted }: { posted: PostResult }) {
  const styles = useRoundStyles();
  const out = posted.verdicts.filter(({ decision }) => outOfUse(decision));
  return (
    <>
      <p className={styles.text}>
        {posted.sheet}: {count(posted.posted, "reading")} added to the history, {count(posted.written, "cell")} of the register written,{" "}
        {count(posted.inspected.length, "inspection")} dated.
        {posted.added === 0 && posted.written === 0 && " Nothing was new."}
      </p>
      {out.length > 0 && (
        <Folded title="Out of use" aside={count(out.length, "item")} open>
          <CappedList
            label="Items out of use"
            entries={out}
            render={({ id, decision, short }) => `${SYMBOLS[decision]} ${id} ${decision}: ${short}.`}
          />
        </Folded>
      )}
      <Tellings title="Not posted" list={posted.refused} note="Put these right on the round sheet, then post it again." />
      <Tellings title="Not complete" list={posted.incomplete} note="Their readings are posted; their inspection is not dated." />
      <Tellings
        title="Changed by somebody else"
        list={posted.changedMeanwhile}
        note="The register was left as it is there. Where the round is right, type its reading into the register."
      />
    </>
  );
}
function Tellings({ title, list, note }: { title: string; list: readonly Told[]; note: string }) {
  const styles = useRoundStyles();
  if (list.length === 0) return null;
  return (
    <Folded title={title} aside={showNumber(list.length)} open={list.length <= 5}>
      <p className={styles.quiet}>{note}</p>
      <CappedList label={title} entries={list} render={({ id, line, why }) => `${id}${line === "" ? "" : `, ${line}`}: ${why}.`} />
    </Folded>
  );
}

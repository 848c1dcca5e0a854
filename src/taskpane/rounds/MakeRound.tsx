/** What a round is about, and the button that makes its sheet. */
import { Button, Radio, RadioGroup } from "@fluentui/react-components";
import { useMemo, useState } from "react";
import { itemsFor, type RoundKind } from "../../engine/programme/round";
import type { Report } from "../../engine/report/model";
import { count } from "../../engine/words";
import { CappedList } from "../shared/CappedList";
import { ALL, narrowed, type Narrowing } from "../shared/list/narrowed";
import { NarrowBy } from "../shared/list/NarrowBy";
import { Folded, Section } from "../shared/Section";
import type { Intentions } from "../state/actions";
import type { Rounds } from "../state/rounds";
import { useRoundStyles } from "./styles";

const KINDS: Readonly<Record<RoundKind, string>> = {
  due: "What is late, due within 30 days or undated",
  shared: "What shared an overloaded tackle",
  missing: "What is missing for a verdict",
};
interface Props {
  report: Report;
  rounds: Rounds;
  free: boolean;
  intentions: Intentions;
}
export function MakeRound({ report, rounds, free, intentions }: Props) {
  const styles = useRoundStyles();
  const [kind, setKind] = useState<RoundKind>("due");
  const [narrowing, setNarrowing] = useState<Narrowing>(ALL);
  const about = useMemo(
    () =>
      Object.fromEntries((Object.keys(KINDS) as RoundKind[]).map((one) => [one, itemsFor(one, report.items)])) as Record<
        RoundKind,
        Report["items"]
      >,
    [report],
  );
  const wanted = useMemo(() => narrowed(about[kind], narrowing), [about, kind, narrowing]);
  const where = [narrowing.place, narrowing.gear].filter((text) => text !== null && text !== "").join(", ");
  const made = rounds.said?.kind === "made" ? rounds.said.made : null;
  return (
    <Section title="Make a round">
      <RadioGroup
        aria-label="What the round is about"
        value={kind}
        onChange={(_, data) => {
          setKind(data.value as RoundKind);
        }}
      >
        {(Object.keys(KINDS) as RoundKind[]).map((one) => (
          <Radio key={one} value={one} label={`${KINDS[one]} (${count(about[one].length, "item")})`} />
        ))}
      </RadioGroup>
      <NarrowBy items={about[kind]} narrowing={narrowing} onNarrow={setNarrowing} />
      <div className={styles.row}>
        <Button
          appearance="primary"
          disabledFocusable={!free || wanted.length === 0}
          aria-describedby="make-hint"
          onClick={() => void intentions.round({ kind: "make", wanted: { kind, where, ids: wanted.map(({ id }) => id.toLowerCase()) } })}
        >
          {rounds.working === "make" ? "Making the sheet" : "Make round sheet"}
        </Button>
        <span id="make-hint" className={styles.hint}>
          {wanted.length === 0
            ? "There is no such item."
            : `${count(wanted.length, "item")} on a sheet of its own, to be printed or filled here.`}
        </span>
      </div>
      {made !== null && (
        <>
          <p className={styles.text}>
            {made.sheet} is made: {count(made.items, "item")}, {count(made.checks, "check")}. Fill Now as the gauge reads it; the line of
            each item shows its verdict. Then post it below.
          </p>
          {made.leftOut.length > 0 && (
            <Folded title="Not in it" aside={count(made.leftOut.length, "item")}>
              <CappedList
                label="Items that are not in the round"
                entries={made.leftOut}
                render={({ id, why }) => `${id === "" ? "No id" : id}: ${why}.`}
              />
            </Folded>
          )}
        </>
      )}
    </Section>
  );
}

/** What the history says of the item whose card is open: verdicts of past days, wear, and its tag. */
import { Button, Input, Label } from "@fluentui/react-components";
import { useState } from "react";
import { isDecision, SYMBOLS } from "../../engine/decision";
import type { HistoryRow } from "../../engine/programme/history";
import { type CheckTrend, type PastVerdict, verdictOn } from "../../engine/programme/item-history";
import { YEAR } from "../../engine/programme/trend";
import type { ItemResult } from "../../engine/report/model";
import { count } from "../../engine/words";
import type { ItemHistory } from "../../excel/programme/rounds";
import { CappedList } from "../shared/CappedList";
import { isoOf, serialOfIso, showDay } from "../shared/days";
import { Section } from "../shared/Section";
import type { Intentions } from "../state/actions";
import { useRoundStyles } from "./styles";
import { TagPart } from "./TagPart";
import { TrendPicture } from "./TrendPicture";

interface Props {
  item: ItemResult;
  asOf: number;
  free: boolean;
  intentions: Intentions;
}
export function ItemHistoryPart({ item, asOf, free, intentions }: Props) {
  const styles = useRoundStyles();
  const [history, setHistory] = useState<ItemHistory | null>(null);
  return (
    <div className={styles.card}>
      <Section title="History">
        {history === null ? (
          <div className={styles.row}>
            <Button
              disabledFocusable={!free}
              aria-describedby="history-hint"
              onClick={() =>
                void intentions.history(item.id).then((found) => {
                  if (found !== null) setHistory(found);
                })
              }
            >
              Look it up
            </Button>
            <span id="history-hint" className={styles.hint}>
              Past verdicts as they were recorded, and where the wear leads.
            </span>
          </div>
        ) : (
          <Found history={history} asOf={asOf} />
        )}
      </Section>
      {history !== null && history.trends.length > 0 && (
        <Section title="Wear">
          {history.trends.map((trend) => (
            <TrendLines key={trend.check} trend={trend} />
          ))}
        </Section>
      )}
      <TagPart item={item} free={free} intentions={intentions} />
    </div>
  );
}
function Found({ history, asOf }: { history: ItemHistory; asOf: number }) {
  const styles = useRoundStyles();
  const [day, setDay] = useState(isoOf(asOf));
  const serial = serialOfIso(day);
  if (history.rows.length === 0) return <p className={styles.quiet}>Nothing was posted for this item yet.</p>;
  const past = serial === null ? null : verdictOn(history.rows, history.id, serial);
  return (
    <>
      <div className={styles.row}>
        <Label htmlFor="past-day">Verdict on</Label>
        <Input
          id="past-day"
          type="date"
          size="small"
          value={day}
          onChange={(_, data) => {
            setDay(data.value);
          }}
        />
      </div>
      {past === null ? (
        <p className={styles.text}>{serial === null ? "Choose a day." : "No verdict was recorded up to then."}</p>
      ) : (
        <PastLines past={past} />
      )}
    </>
  );
}
function sourceOf({ Document, Clause }: HistoryRow): string {
  const source = [Document, Clause].filter((text) => text !== "").join(", ");
  return source === "" ? "" : ` [${source}]`;
}
/** As it was recorded: reading, limit, rule and name. */
function PastLines({ past: { verdict, readings } }: { past: PastVerdict }) {
  const styles = useRoundStyles();
  const { Decision, Reading, Date: day, By } = verdict;
  return (
    <>
      <p className={styles.text}>
        <b>
          {isDecision(Decision) ? SYMBOLS[Decision] : ""} {Decision}
        </b>
        : {Reading}. Recorded for {day} by {By}, under {verdict["Rule sets"]}
        {sourceOf(verdict)}.
      </p>
      <CappedList
        label="Readings behind it"
        entries={readings}
        render={(row) => `${row.Check}: ${row.Reading}${row.Limit === "" ? "" : `, out ${row.Limit}`}${sourceOf(row)}`}
      />
    </>
  );
}
function TrendLines({ trend }: { trend: CheckTrend }) {
  const styles = useRoundStyles();
  const { check, perYear, unit, readings, limit, reaches, band, beforeDue, months } = trend;
  const years = ((readings.at(-1)?.day ?? 0) - (readings[0]?.day ?? 0)) / YEAR;
  const noise = band
    ? "within the band that holds 95 % of next readings"
    : "by the line alone: two readings, or readings without noise, tell no band";
  return (
    <div>
      <p className={styles.text}>
        <b>{check}</b>: {perYear < 0 ? "" : "+"}
        {Number(perYear.toPrecision(2))} {unit} a year, from {count(readings.length, "reading")} over {years.toFixed(1)} years.
      </p>
      {limit !== "" && (
        <p className={styles.text}>
          {reaches === null
            ? `It does not lead to its limit, ${limit}.`
            : `It can reach its limit, ${limit}, on ${showDay(reaches)} ${noise}.`}
          {beforeDue &&
            ` That is before the next inspection: watch it, and look at it ${months === null || months < 1 ? "at once" : `within ${count(months, "month")} of the last reading`}.`}
        </p>
      )}
      <TrendPicture trend={trend} />
    </div>
  );
}

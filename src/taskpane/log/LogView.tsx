/** The log as it was read: where it stands, what its headings mean, what it lacks, and the button that writes the register. */
import { Button, makeStyles, tokens } from "@fluentui/react-components";
import { useRef } from "react";
import { lackedColumns } from "../../engine/report/lacking";
import { count } from "../../engine/words";
import { CappedList } from "../shared/CappedList";
import { Notice } from "../shared/Notice";
import { Folded, Section } from "../shared/Section";
import { showCounts, showHow } from "../shared/words";
import type { Intentions } from "../state/actions";
import { type PaneState, shownLog } from "../state/state";
import { BuildBar } from "./BuildBar";
import { BuildResultPanel } from "./BuildResultPanel";
import { HeadingList } from "./HeadingList";
import { sameIds } from "./lacks";
import { Start } from "./NoLog";
import { Questions } from "./Questions";
import { SameIds } from "./SameIds";
import { TypeNotices } from "./TypeNotices";
import { WhatItLacks } from "./WhatItLacks";

const useStyles = makeStyles({
  view: { display: "flex", flexDirection: "column", gap: "14px", padding: "12px", flexGrow: 1 },
  row: { display: "flex", flexWrap: "wrap", gap: "6px" },
  text: { margin: 0, fontSize: tokens.fontSizeBase300, lineHeight: tokens.lineHeightBase300, overflowWrap: "anywhere" },
});
export function LogView({ state, intentions }: { state: PaneState; intentions: Intentions }) {
  const styles = useStyles();
  const { log, result, register } = state;
  const found = useRef<HTMLHeadingElement>(null);
  const close = (): void => {
    found.current?.focus();
    intentions.tell({ kind: "dismiss", what: "result" });
  };
  if (log === null) {
    return (
      <>
        <Start state={state} intentions={intentions} />
        {register !== null && (
          <p className={styles.text + " " + styles.view}>
            There is a register on sheet {register.log.place.sheet}; its items stand under Items and Due.
          </p>
        )}
      </>
    );
  }
  const { report, refusedLimits = [], others = [] } = log;
  const used = report.headings.filter((heading) => heading.field !== null || heading.also !== null).length;
  const twice = report.problems.length > 0 ? sameIds(report.items) : [];
  const unit = state.units[log.place.sheet.toLowerCase()];
  const aside = report.headings.filter(({ state: its }) => its === "set aside").map(({ heading }) => heading);
  const nothing = report.items.length === 0;
  return (
    <div className={styles.view}>
      <TypeNotices types={report.types} />
      {result !== null && <BuildResultPanel result={result} intentions={intentions} onClose={close} />}
      {refusedLimits.length > 0 && (
        <Notice intent="warning" title={`${count(refusedLimits.length, "house limit")} cannot be used.`}>
          <CappedList label="House limits that cannot be used" entries={refusedLimits} render={(row) => row} />
        </Notice>
      )}
      {nothing && (
        <Notice intent="warning" title={used === 0 ? "No gear was found here." : "There is no item yet."}>
          {used === 0
            ? "No heading was understood. Say below what the headings mean, or select the log with its heading row and press Use selection in the line on top."
            : "The headings were read, but no row below them holds an item. Fill in a row, then press Read again."}
        </Notice>
      )}
      {report.questions !== undefined && (
        <Questions
          questions={report.questions}
          lacked={lackedColumns(report)}
          disabled={state.work.kind !== "idle"}
          onAnswer={(answers) => void intentions.setHeadings(answers)}
          onUnit={(given) => void intentions.setUnit(log.place.sheet, given)}
        />
      )}
      {report.problems.length > 0 && (
        <Section title="Put right first">
          <CappedList
            label="What must be put right before the register can be written"
            entries={report.problems}
            render={(problem) => problem}
          />
          <SameIds
            ids={twice}
            numberOf={(row) => rowNumber(log.place.address, row)}
            onShow={shownLog(state) === log ? (row) => void intentions.show(row) : null}
          />
        </Section>
      )}
      <WhatItLacks state={state} log={log} intentions={intentions} />
      <Section title="Log found" heading={found}>
        <p className={styles.text}>{showHow(log.place)}</p>
        {others.length > 0 && (
          <>
            <p className={styles.text}>{showOthers(others)}</p>
            <div className={styles.row}>
              {others.map((sheet) => (
                <Button
                  key={sheet}
                  size="small"
                  disabledFocusable={state.work.kind !== "idle"}
                  onClick={() => void intentions.readSheet(sheet)}
                >
                  Read {sheet}
                </Button>
              ))}
            </div>
          </>
        )}
        {!nothing && (
          <p className={styles.text}>
            {count(report.items.length, "item")}: {showCounts(report)}.
          </p>
        )}
      </Section>
      {aside.length > 0 && <p className={styles.text}>Set aside, so not judged: {aside.join(", ")}.</p>}
      {unit !== undefined && (
        <p className={styles.text}>
          Sizes without a unit are read in {unit}.{" "}
          <Button
            size="small"
            disabledFocusable={state.work.kind !== "idle"}
            onClick={() => void intentions.setUnit(log.place.sheet, null)}
          >
            Ask again
          </Button>
        </p>
      )}
      <BuildBar state={state} log={log} intentions={intentions} />
      <HeadingList
        key={log.place.sheet}
        report={report}
        choices={state.choices}
        used={used}
        disabled={state.work.kind === "building"}
        onChoose={(heading, field) => void intentions.setHeading(heading, field)}
      />
      {report.passedOver.length > 0 && (
        <Folded title="Rows passed over" aside={count(report.passedOver.length, "row")}>
          <CappedList
            label="Rows passed over"
            entries={report.passedOver}
            render={({ row, why }) => `Row ${String(rowNumber(log.place.address, row))}: ${why}`}
          />
        </Folded>
      )}
    </div>
  );
}
/** Sheets that are passed over are named: gear on them is not in these counts. */
function showOthers(others: readonly string[]): string {
  const [last = "", ...first] = [...others].reverse();
  return first.length === 0
    ? `Sheet ${last} also looks like a log. Its gear is not in these counts; read and build one log after the other.`
    : `Sheets ${first.reverse().join(", ")} and ${last} also look like logs. Their gear is not in these counts; read and build one log after the other.`;
}
/** The row's number as the sheet shows it. */
function rowNumber(address: string, row: number): number {
  const first = /\d+/.exec(address);
  return Number(first?.[0] ?? 1) + row;
}

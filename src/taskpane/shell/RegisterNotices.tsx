/** What is wrong with the register's verdict cells: functions not loaded, built without the house limits, or cells that say something else than the readings. */
import { makeStyles } from "@fluentui/react-components";
import { useMemo } from "react";
import type { Report } from "../../engine/report/model";
import { showNumber } from "../../engine/words";
import type { RegisterCheck } from "../../excel/port";
import { CappedList } from "../shared/CappedList";
import { showDay } from "../shared/days";
import { Notice } from "../shared/Notice";
import { showBasis } from "../shared/words";
import type { Intentions } from "../state/actions";
import { newRows, tellNewRows } from "../state/new-rows";
import type { PaneState } from "../state/state";

/** Ids named at once; the rest is folded, so that the list below stays in sight. */
const NAMED = 3;
type Row = RegisterCheck["disagreeing"][number];
const useStyles = makeStyles({
  summary: { cursor: "pointer" },
});
/** What the log holds and says that the register does not, then what is wrong with the register's cells. */
export function RegisterNotices({ state, intentions }: { state: PaneState; intentions: Intentions }) {
  const { register, cellsWrong } = state;
  const rows = useMemo(() => newRows(state), [state]);
  if (register === null) return null;
  return (
    <>
      {rows.length > 0 && (
        <Notice
          intent="info"
          title={`${tellNewRows(rows)}.`}
          action={{ label: "Rebuild register", onClick: () => void intentions.rebuild() }}
        >
          The register does not hold {rows.length === 1 ? "it" : "them"} yet.
        </Notice>
      )}
      <LogNotice check={register.check} intentions={intentions} />
      <CellNotice check={register.check} report={register.log.report} sure={cellsWrong} intentions={intentions} />
    </>
  );
}
function LogNotice({ check: { apart }, intentions }: { check: RegisterCheck; intentions: Intentions }) {
  const styles = useStyles();
  if (apart.length === 0) return null;
  const both = apart.filter((row) => row.both);
  return (
    <Notice
      intent="warning"
      title="The log says something that the register does not."
      action={{ label: "Rebuild register", onClick: () => void intentions.rebuild() }}
    >
      {namesOf(apart)}. The worse of the two counts here.
      {both.length < apart.length && " Rebuild to take over what was typed in the log."}
      {both.length > 0 && ` Changed in both, or emptied in the log: ${namesOf(both)}; make them agree, then rebuild.`}
      <details>
        <summary tabIndex={0} className={styles.summary}>
          What they say
        </summary>
        <CappedList
          label="Where log and register differ"
          entries={apart}
          render={(row) => `${row.id}: register ${row.register}, log ${row.log}. ${row.cells.join("; ")}`}
        />
      </details>
    </Notice>
  );
}
interface CellProps {
  check: RegisterCheck;
  report: Report;
  /** True when a second look found the same: at the first the cells may still be calculating. */
  sure: boolean;
  intentions: Intentions;
}
function CellNotice({ check, report, sure, intentions }: CellProps) {
  if (check.functionsMissing) {
    if (!sure) return null;
    return (
      <Notice
        intent="error"
        title="The verdict cells read #NAME? instead of a word."
        action={{ label: "Write the formulas again", onClick: () => void intentions.rewriteFormulas() }}
      >
        The add-in started after the workbook, so its functions were not there yet. The formulas are being written again. If the cells still
        read #NAME? in a minute, close and open the workbook. The verdicts in this pane are judged from the readings and hold.
      </Notice>
    );
  }
  const rebuild = { label: "Rebuild register", onClick: () => void intentions.rebuild() };
  const rows = check.disagreeing;
  if (check.withoutHouse) {
    return (
      <Notice intent="warning" title="The register was built without the house limits." action={rebuild}>
        Rebuild it. {rows.length > 0 && `The limits change the verdict of ${namesOf(rows)}.`}
        <Cells rows={rows} />
      </Notice>
    );
  }
  if (check.builtUnder !== null) {
    const { rules, asOf } = check.builtUnder;
    return (
      <Notice
        intent="warning"
        title={`The register was built under ${rules === null ? "rules that cannot be read" : showBasis(rules)} as of ${asOf === null ? "no day" : showDay(asOf)}.`}
        action={rebuild}
      >
        Rebuild it. The verdicts in this pane are under {showBasis(report.basis)} as of {showDay(report.asOf)}, as the line on top says.
      </Notice>
    );
  }
  if (rows.length === 0 || !sure) return null;
  return (
    <Notice intent="warning" title="Some verdict cells do not say what the readings say." action={rebuild}>
      {namesOf(rows)}. This pane shows what the readings say.
      <Cells rows={rows} />
    </Notice>
  );
}
function namesOf(rows: readonly { readonly id: string }[]): string {
  const named = rows
    .slice(0, NAMED)
    .map(({ id }) => id)
    .join(", ");
  return rows.length > NAMED ? `${named} and ${showNumber(rows.length - NAMED)} more` : named;
}
function Cells({ rows }: { rows: readonly Row[] }) {
  const styles = useStyles();
  if (rows.length === 0) return null;
  return (
    <details>
      <summary tabIndex={0} className={styles.summary}>
        What they say
      </summary>
      <CappedList
        label="Cells that disagree"
        entries={rows}
        render={({ id, cell, judged }) => `${id}: cell says ${cell === "" ? "nothing" : cell}, readings say ${judged}`}
      />
    </details>
  );
}

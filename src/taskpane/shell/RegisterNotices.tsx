/** What is wrong with the register's verdict cells: functions not loaded, built without the house limits, or cells that say something else than the readings. */
import { makeStyles } from "@fluentui/react-components";
import { showNumber } from "../../engine/words";
import type { RegisterCheck } from "../../excel/port";
import { CappedList } from "../shared/CappedList";
import { showDay } from "../shared/days";
import { Notice } from "../shared/Notice";
import { showBasis } from "../shared/words";
import type { Intentions } from "../state/actions";

/** Ids named at once; the rest is folded, so that the list below stays in sight. */
const NAMED = 3;
type Row = RegisterCheck["disagreeing"][number];
const useStyles = makeStyles({
  cells: { maxHeight: "160px", overflowY: "auto" },
  summary: { cursor: "pointer" },
});
/** What the log says of the register's items, then what is wrong with the register's cells. */
export function RegisterNotices({ check, intentions }: { check: RegisterCheck; intentions: Intentions }) {
  return (
    <>
      <LogNotice check={check} intentions={intentions} />
      <CellNotice check={check} intentions={intentions} />
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
      <details className={styles.cells}>
        <summary className={styles.summary}>What they say</summary>
        <CappedList
          label="Where log and register differ"
          entries={apart}
          render={(row) => `${row.id}: register ${row.register}, log ${row.log}. ${row.cells.join("; ")}`}
        />
      </details>
    </Notice>
  );
}
function CellNotice({ check, intentions }: { check: RegisterCheck; intentions: Intentions }) {
  if (check.functionsMissing) {
    return (
      <Notice
        intent="error"
        title="The verdict cells read #NAME? instead of a word."
        action={{ label: "Read again", onClick: () => void intentions.readAgain() }}
      >
        The worksheet functions are not loaded. Close and open the workbook, let the add-in start, then press Read again. The verdicts in
        this pane are judged from the readings and hold.
      </Notice>
    );
  }
  const rebuild = { label: "Rebuild register", onClick: () => void intentions.rebuild() };
  const rows = check.disagreeing;
  if (check.withoutHouse) {
    return (
      <Notice intent="warning" title="The register was built without the house limits." action={rebuild}>
        Rebuild it. {rows.length > 0 && `Other under the limits: ${namesOf(rows)}.`}
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
        Rebuild it: this pane judges by what its top line says.
      </Notice>
    );
  }
  if (rows.length === 0) return null;
  return (
    <Notice intent="warning" title="Verdict cells disagree with the readings." action={rebuild}>
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
    <details className={styles.cells}>
      <summary className={styles.summary}>What they say</summary>
      <CappedList
        label="Cells that disagree"
        entries={rows}
        render={({ id, cell, judged }) => `${id}: cell says ${cell === "" ? "nothing" : cell}, readings say ${judged}`}
      />
    </details>
  );
}

/** What is wrong with the register's verdict cells: functions not loaded, built without the house limits, or cells that say something else than the readings. */
import { makeStyles } from "@fluentui/react-components";
import type { RegisterCheck } from "../excel/port";
import type { Intentions } from "./intentions";
import { CappedList } from "./shared/CappedList";
import { Notice } from "./shared/Notice";
import { showNumber } from "./words";

/** Ids named at once; the rest is folded, so that the list below stays in sight. */
const NAMED = 3;

type Row = RegisterCheck["disagreeing"][number];

const useStyles = makeStyles({
  rest: { maxHeight: "160px", overflowY: "auto" },
  more: { cursor: "pointer" },
});

export function RegisterNotices({ check, intentions }: { check: RegisterCheck; intentions: Intentions }) {
  if (check.functionsMissing) {
    return (
      <Notice intent="error" title="The verdict cells read #NAME? instead of a word." action={{ label: "Read again", onClick: () => void intentions.readAgain() }}>
        The worksheet functions are not loaded. Close and open the workbook, let the add-in start, then press Read again. The verdicts in this pane are judged from the
        readings and hold.
      </Notice>
    );
  }
  const rebuild = { label: "Rebuild register", onClick: () => void intentions.rebuild() };
  const rows = check.disagreeing;
  if (check.withoutHouse) {
    return (
      <Notice intent="warning" title="The register was built without the house limits." action={rebuild}>
        Rebuild it. {rows.length > 0 && <>Until then its cells do not say what the limits say: <Named rows={rows} /></>}
      </Notice>
    );
  }
  if (rows.length === 0) return null;
  return (
    <Notice intent="warning" title="Verdict cells disagree with the readings." action={rebuild}>
      This pane shows what the readings say. Rebuild the register to put the cells right. <Named rows={rows} />
    </Notice>
  );
}

function Named({ rows }: { rows: readonly Row[] }) {
  const styles = useStyles();
  const rest = rows.slice(NAMED);
  return (
    <>
      {rows.slice(0, NAMED).map(sayRow).join(", ")}.
      {rest.length > 0 && (
        <details className={styles.rest}>
          <summary className={styles.more}>{showNumber(rest.length)} more</summary>
          <CappedList label="More cells that disagree" entries={rest} render={sayRow} />
        </details>
      )}
    </>
  );
}

function sayRow({ id, cell, judged }: Row): string {
  return `${id} (cell says ${cell === "" ? "nothing" : cell}, readings say ${judged})`;
}

/** What is wrong with the register's verdict cells: the functions are not loaded, or cells say something else than the readings. */
import type { RegisterCheck } from "../excel/port";
import type { Intentions } from "./intentions";
import { Notice } from "./shared/Notice";

/** Ids named before the rest is only counted. */
const NAMED = 8;

export function RegisterNotices({ check, intentions }: { check: RegisterCheck; intentions: Intentions }) {
  if (check.functionsMissing) {
    return (
      <Notice intent="error" title="The verdict cells read #NAME? instead of a word." action={{ label: "Read again", onClick: () => void intentions.readAgain() }}>
        The worksheet functions are not loaded. Close and open the workbook, let the add-in start, then press Read again. The verdicts in this pane are judged from the
        readings and hold.
      </Notice>
    );
  }
  if (check.disagreeing.length === 0) return null;
  return (
    <Notice intent="warning" title="Verdict cells disagree with the readings." action={{ label: "Rebuild register", onClick: () => void intentions.rebuild() }}>
      {namesOf(check.disagreeing)}. This pane shows what the readings say. Rebuild the register to put the cells right.
    </Notice>
  );
}

function namesOf(rows: RegisterCheck["disagreeing"]): string {
  const named = rows.slice(0, NAMED).map((row) => `${row.id} (cell says ${row.cell === "" ? "nothing" : row.cell}, readings say ${row.judged})`);
  const rest = rows.length - named.length;
  return rest > 0 ? `${named.join(", ")} and ${String(rest)} more` : named.join(", ");
}

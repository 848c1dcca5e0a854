/** A folded list of what decides nothing: what is left out, or what nobody read. */
import { makeStyles, tokens } from "@fluentui/react-components";
import type { LeftOut } from "../../engine/pages/not-judged";
import { capital, count } from "../../engine/words";
import { Folded } from "../shared/Section";
import { DocumentLines } from "./DocumentLines";

const useStyles = makeStyles({
  text: { margin: 0, fontSize: tokens.fontSizeBase200, lineHeight: tokens.lineHeightBase200, color: tokens.colorNeutralForeground2 },
});
interface Props {
  readonly title: string;
  /** What the list holds, above it. */
  readonly holds: string;
  /** Stands for the list where there is none and nothing is searched for. */
  readonly none: string;
  /** What the search left. */
  readonly entries: readonly LeftOut[];
  readonly searched: boolean;
}
export function Unjudged({ title, holds, none, entries, searched }: Props) {
  const styles = useStyles();
  const found = entries.length > 0;
  return (
    <Folded key={String(searched)} title={title} aside={count(entries.length, "entry", "entries")} open={searched && found}>
      <p className={styles.text}>{found ? holds : searched ? "Nothing in this list matches. Clear the search to see all." : none}</p>
      <DocumentLines
        lines={entries.map(({ document, clause, what, why }) => ({
          document,
          text: what,
          remark: [clause, `${capital(why)}.`].filter((text) => text !== "").join(". "),
        }))}
      />
    </Folded>
  );
}

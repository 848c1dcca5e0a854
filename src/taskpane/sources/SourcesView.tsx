/** The documents behind the limits, rule set by rule set; then what is left out and what nobody read. */
import { makeStyles, SearchBox, tokens } from "@fluentui/react-components";
import { useMemo, useState } from "react";
import { HOLDS } from "../../engine/pages/about-rules";
import { listSources } from "../../engine/pages/figures";
import { LEFT_OUT, type LeftOut, unconfirmed } from "../../engine/pages/not-judged";
import { BASES, BASIS_IDS, type BasisId } from "../../engine/rules/rule-sets";
import { count } from "../../engine/words";
import { Folded } from "../shared/Section";
import { DocumentLines } from "./DocumentLines";
import { figureWords, matching, statusWord } from "./group";
import { Unjudged } from "./Unjudged";

const useStyles = makeStyles({
  view: { display: "flex", flexDirection: "column", gap: "10px", padding: "12px" },
  search: { width: "100%", maxWidth: "none" },
  text: { margin: 0, fontSize: tokens.fontSizeBase200, lineHeight: tokens.lineHeightBase200, color: tokens.colorNeutralForeground2 },
});
/** What the search found, in one sentence. */
function tally(limits: number, entries: number): string {
  if (limits > 0) return `${count(limits, "limit")}. Where nothing else is said, the figure was read in the document named above it.`;
  return entries > 0
    ? `No limit matches, but ${count(entries, "entry below does", "entries below do")}.`
    : "No limit matches. Clear the search to see all.";
}
export function SourcesView({ basis }: { basis: readonly BasisId[] }) {
  const styles = useStyles();
  const [search, setSearch] = useState("");
  // What nobody read stands in a list of its own.
  const limits = useMemo(() => listSources().filter((line) => line.status !== "unconfirmed"), []);
  const unread = useMemo(() => unconfirmed(), []);
  const words = search
    .toLowerCase()
    .split(/\s+/)
    .filter((word) => word !== "");
  const searched = words.length > 0;
  const found = limits.filter((line) => matching(words, [line.document, line.clause, line.gear, line.check, line.figure, line.status]));
  const among = (entries: readonly LeftOut[]): readonly LeftOut[] =>
    entries.filter(({ document, clause, what, why }) => matching(words, [document, clause, what, why]));
  const leftOut = among(LEFT_OUT);
  const notRead = among(unread);
  return (
    <div className={styles.view}>
      <SearchBox
        className={styles.search}
        aria-label="Search the sources"
        placeholder="Search gear, figure, document"
        value={search}
        onChange={(_, data) => {
          setSearch(data.value);
        }}
      />
      <p role="status" className={styles.text}>
        {tally(found.length, leftOut.length + notRead.length)}
      </p>
      {BASIS_IDS.map((id) => {
        const lines = found.filter((line) => line.basis === id);
        if (lines.length === 0) return null;
        const inForce = basis.includes(id);
        return (
          <Folded
            key={`${id}-${String(searched)}-${String(inForce)}`}
            title={BASES[id].name}
            aside={`${count(lines.length, "limit")}, ${inForce ? "in force" : "not in force"}`}
            open={inForce || searched}
          >
            <p className={styles.text}>{HOLDS[id]}.</p>
            <DocumentLines
              lines={lines.map((line) => ({
                document: line.document,
                text: `${line.gear}, ${line.check}: ${figureWords(line.figure)}`,
                remark: [line.clause, statusWord(line.status)].filter((text) => text !== "").join(". "),
              }))}
            />
          </Folded>
        );
      })}
      <Unjudged
        title="Unconfirmed, not used"
        holds="Limits and rows of tables that nobody here has read in a copy of their document. They decide nothing."
        none="Every limit and every row of a table was read."
        entries={notRead}
        searched={searched}
      />
      <Unjudged
        title="Left out"
        holds="What the documents say and no verdict is held to, each with its reason. It may still bind you."
        none="Nothing is left out."
        entries={leftOut}
        searched={searched}
      />
    </div>
  );
}

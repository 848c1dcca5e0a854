/** The documents behind the limits, rule set by rule set. */
import { makeStyles, SearchBox, tokens } from "@fluentui/react-components";
import { useMemo, useState } from "react";
import { BASES, BASIS_IDS, type BasisId } from "../../engine/bases";
import { listSources, type SourceLine } from "../../engine/sources-list";
import { Folded } from "../shared/Section";
import { count } from "../words";
import { byDocument, figureWords, statusWord } from "./group";

const useStyles = makeStyles({
  view: { display: "flex", flexDirection: "column", gap: "10px", padding: "12px" },
  search: { width: "100%", maxWidth: "none" },
  text: { margin: 0, fontSize: tokens.fontSizeBase200, lineHeight: tokens.lineHeightBase200, color: tokens.colorNeutralForeground2 },
  document: { margin: "6px 0 0", fontSize: tokens.fontSizeBase200, lineHeight: tokens.lineHeightBase200, fontWeight: tokens.fontWeightSemibold, overflowWrap: "anywhere" },
  lines: { listStyleType: "none", margin: 0, padding: 0, fontSize: tokens.fontSizeBase200, lineHeight: tokens.lineHeightBase200, overflowWrap: "anywhere" },
  line: { padding: "5px 0 5px 8px", borderLeft: `2px solid ${tokens.colorNeutralStroke2}` },
  quiet: { color: tokens.colorNeutralForeground2 },
});

export function SourcesView({ basis }: { basis: readonly BasisId[] }) {
  const styles = useStyles();
  const [search, setSearch] = useState("");
  const all = useMemo(() => listSources(), []);
  const words = search.toLowerCase().split(/\s+/).filter((word) => word !== "");
  const found = all.filter((line) => words.every((word) => `${line.document} ${line.clause} ${line.gear} ${line.check} ${line.figure} ${line.status}`.toLowerCase().includes(word)));
  return (
    <div className={styles.view}>
      <SearchBox className={styles.search} aria-label="Search the sources" placeholder="Search gear, figure, document" value={search} onChange={(_, data) => { setSearch(data.value); }} />
      <p role="status" className={styles.text}>
        {found.length === 0 ? "No limit matches. Clear the search to see all." : `${count(found.length, "limit")}. Where nothing else is said, the figure was read in the document named above it.`}
      </p>
      {BASIS_IDS.map((id) => {
        const lines = found.filter((line) => line.basis === id);
        if (lines.length === 0) return null;
        const inForce = basis.includes(id);
        return (
          <Folded key={`${id}-${String(words.length > 0)}-${String(inForce)}`} title={BASES[id].name} aside={`${count(lines.length, "limit")}, ${inForce ? "in force" : "not in force"}`} open={inForce || words.length > 0}>
            <p className={styles.text}>{BASES[id].holds}.</p>
            {byDocument(lines).map(([document, group]) => (
              <div key={document}>
                <h3 className={styles.document}>{document}</h3>
                <ul className={styles.lines}>
                  {group.map((line, index) => (
                    <Line key={index} line={line} />
                  ))}
                </ul>
              </div>
            ))}
          </Folded>
        );
      })}
    </div>
  );
}

function Line({ line }: { line: SourceLine }) {
  const styles = useStyles();
  const remark = [line.clause, statusWord(line.status)].filter((text) => text !== "").join(". ");
  return (
    <li className={styles.line}>
      {line.gear}, {line.check}: {figureWords(line.figure)}
      {remark !== "" && <div className={styles.quiet}>{remark}</div>}
    </li>
  );
}

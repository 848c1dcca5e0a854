/** Lines under the document that they come from. */
import { makeStyles, tokens } from "@fluentui/react-components";
import { ABOUT_RULES } from "../../engine/pages/about-rules";
import { cite, type SourceKey, SOURCES } from "../../engine/rules/documents";
import { unbroken } from "../shared/unbroken";
import { byDocument } from "./group";

const useStyles = makeStyles({
  document: {
    margin: "6px 0 0",
    fontSize: tokens.fontSizeBase200,
    lineHeight: tokens.lineHeightBase200,
    fontWeight: tokens.fontWeightSemibold,
    overflowWrap: "anywhere",
  },
  lines: {
    listStyleType: "none",
    margin: 0,
    padding: 0,
    fontSize: tokens.fontSizeBase200,
    lineHeight: tokens.lineHeightBase200,
    overflowWrap: "anywhere",
  },
  line: { padding: "5px 0 5px 8px", borderLeft: `2px solid ${tokens.colorNeutralStroke2}` },
  about: {
    margin: "0 0 2px",
    fontSize: tokens.fontSizeBase200,
    lineHeight: tokens.lineHeightBase200,
    color: tokens.colorNeutralForeground2,
    overflowWrap: "anywhere",
  },
  quiet: { color: tokens.colorNeutralForeground2 },
});
/** What a document is, by how it is cited. */
const ABOUT_CITED = new Map((Object.keys(SOURCES) as SourceKey[]).map((key) => [cite({ document: key, clause: "" }), ABOUT_RULES[key]]));
export interface DocumentLine {
  readonly document: string;
  readonly text: string;
  /** Quieter, below the text; may be empty. */
  readonly remark: string;
}
export function DocumentLines({ lines }: { lines: readonly DocumentLine[] }) {
  const styles = useStyles();
  return byDocument(lines).map(([document, group]) => (
    <div key={document}>
      <h3 className={styles.document}>{document}</h3>
      {ABOUT_CITED.has(document) && <p className={styles.about}>{ABOUT_CITED.get(document)}</p>}
      <ul className={styles.lines}>
        {group.map((line, index) => (
          <li key={index} className={styles.line}>
            {unbroken(line.text)}
            {line.remark !== "" && <div className={styles.quiet}>{unbroken(line.remark)}</div>}
          </li>
        ))}
      </ul>
    </div>
  ));
}
